"""What is open: one place, log, outlook and set of plans, and the only way to change them.

Views never read files or compute: they ask here and follow the signals.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from itertools import count
from pathlib import Path
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QObject, QTimer, Signal

from planner.assets import demo_log, demo_place, user_folder
from planner.errors import PlannerError
from planner.ui.state import ViewState
from planner.ui.work import Checkpoint, Desk

if TYPE_CHECKING:
    from planner.logbook import Change, Log, Logbook
    from planner.sites import Site
    from planner.trips import Outlook, PlanSet, Search, Wishes

PLAN_DAYS: Final = 84  # twelve weeks ahead: as far as a trapper picks dates
PLANS_SHOWN: Final = 12
_PAST_DAYS: Final = 180
_AHEAD_DAYS: Final = 185
_MOST_DAYS_EACH_WAY: Final = 3653
_LOG_REST_MS: Final = 700


@dataclass(frozen=True)
class Source:
    """Where the place and the log come from.

    place: file or name of a place. log: a haul table or logbook to show without changing it;
    None for the user's own logbook (the demo's own for the demo place), or, unless `keep`,
    for no log at all.
    """

    place: str
    log: Path | None = None
    demo: bool = False
    keep: bool = True


def demo_source() -> Source:
    """Return the invented demo place with its invented log."""
    return Source(str(demo_place()), demo=True)


def demo_book() -> Path:
    """Return where the demo's copy of the log is kept, apart from the user's own."""
    return user_folder() / "demo.logbook"


class Workbench(QObject):
    """Holds what is open; everything slow happens on the desk.

    site: the open place, None until it is read. log: every haul known. outlook, plans: None
    while they are being worked out.
    """

    site_changed = Signal()
    log_changed = Signal()
    outlook_changed = Signal()
    plans_changed = Signal()
    trouble = Signal(str)
    notice = Signal(str)

    def __init__(self, state: ViewState, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.state = state
        self.source = demo_source()
        self.site: Site | None = None
        self._log: Log | None = None
        self.outlook: Outlook | None = None
        self.plans: PlanSet | None = None
        self.search: Search | None = None
        self.wishes: Wishes | None = None
        self.book: Logbook | None = None
        self.undo_name: str | None = None
        self.redo_name: str | None = None
        self.desk = Desk(self)
        # One writer: changes to the log run one after the other, in the order they were asked.
        self.clerk = Desk(self, threads=1)
        self._ticket = count()
        # A row of cells typed one after the other is learned from once, when typing rests.
        self._log_rest = QTimer(self, singleShot=True, interval=_LOG_REST_MS)
        self._log_rest.timeout.connect(self._refresh)
        for desk in (self.desk, self.clerk):
            desk.failed.connect(self.trouble)
            desk.crashed.connect(self._crashed)
        self.first, self.last = self._year_around_today()

    # -- opening ---------------------------------------------------------------------------

    def open(self, source: Source) -> None:
        """Open a place and its log; what was open stays until the new place is read."""
        self.source = source
        self.desk.start(
            "place",
            "Reading the place",
            lambda _: _read_place(source.place),
            self._arrive,
        )
        self.clerk.start(
            "open", "Opening the log", lambda _: self._open_log(source), self._take_log
        )

    def _arrive(self, site: Site) -> None:
        self.site, self.outlook, self.plans, self.search = site, None, None, None
        self.first, self.last = self._year_around_today()
        self.site_changed.emit()
        self._refresh()

    @property
    def log(self) -> Log:
        """Every haul known; empty until the log is read."""
        from planner.logbook import Log

        return Log(()) if self._log is None else self._log

    def _open_log(self, source: Source) -> tuple[Logbook | None, Log]:
        from planner.logbook import Log, Logbook, book_zone, default_logbook, read_log

        if source.log is not None:
            return None, read_log(source.log, book_zone)
        if not source.keep:
            return None, Log(())
        path = demo_book() if source.demo else default_logbook()
        path.parent.mkdir(parents=True, exist_ok=True)
        if self.book is not None and self.book.path == path:
            return self.book, _read_whole(self.book)
        fresh = source.demo and not path.exists()
        book = Logbook.open(path)
        if fresh:
            book.import_table(demo_log(), book_zone)
        return book, _read_whole(book)

    def _take_log(self, opened: tuple[Logbook | None, Log]) -> None:
        book, log = opened
        if self.book is not None and self.book is not book:
            self.book.close()
        self.book = book
        if book is not None and book.notice is not None:
            self.notice.emit(str(book.notice))
        self._set_log(log)

    # -- the outlook and the plans -----------------------------------------------------------

    def show_span(self, first: date, last: date) -> None:
        """Have the outlook cover these days too; it grows by half years, to ten years each way."""
        today = self.state.today
        most = timedelta(days=_MOST_DAYS_EACH_WAY)
        half = timedelta(days=_PAST_DAYS)
        wanted_first = self.first if first >= self.first else max(first - half, today - most)
        wanted_last = self.last if last <= self.last else min(last + half, today + most)
        if (wanted_first, wanted_last) != (self.first, self.last):
            self.first, self.last = wanted_first, wanted_last
            self._refresh(plans=False)

    def wish(self, wishes: Wishes) -> None:
        """Rank the plans by other wishes."""
        self.wishes = wishes
        self._rank()

    def _year_around_today(self) -> tuple[date, date]:
        today = self.state.today
        return today - timedelta(days=_PAST_DAYS), today + timedelta(days=_AHEAD_DAYS)

    def _refresh(self, plans: bool = True) -> None:
        site, log, first, last = self.site, self.log, self.first, self.last
        if site is None:
            return

        def work(checkpoint: Checkpoint) -> Outlook:
            from planner.trips import outlook

            return outlook(site, first, last, log if log.hauls else None, checkpoint=checkpoint)

        def done(found: Outlook) -> None:
            self.outlook = found
            self.outlook_changed.emit()
            if plans:
                self._find_plans()

        self.desk.start("outlook", "Working out the water, the moon and the crabs", work, done)

    def _find_plans(self) -> None:
        outlook, log, today = self.outlook, self.log, self.state.today
        if outlook is None:
            return
        last = min(today + timedelta(days=PLAN_DAYS), outlook.days[-1])
        now = datetime.combine(today, time(4), tzinfo=outlook.site.zone)
        if date.today() == today:  # noqa: DTZ011  (the user's own day, not an instant)
            now = max(now, datetime.now(outlook.site.zone))

        def work(checkpoint: Checkpoint) -> Search:
            from planner.trips import Search

            ahead = outlook.part(today, last)
            checkpoint()
            return Search(ahead, log=log if log.hauls else None, not_before=now)

        def done(search: Search) -> None:
            self.search = search
            self._rank()

        self.desk.start("search", "Looking for set and haul times", work, done)

    def _rank(self) -> None:
        search, wishes, style, today = self.search, self.wishes, self.state.style, self.state.today
        if search is None:
            return

        def work(_: Checkpoint) -> PlanSet:
            from planner.trips import Wishes

            return search.plans(PLANS_SHOWN, wishes or Wishes(), style, today)

        def done(plans: PlanSet) -> None:
            from planner.trips import soonest_as_good

            self.plans = plans
            if plans.plans and self.state.plan not in {plan.rank for plan in plans.plans}:
                self.state.change(plan=soonest_as_good(plans.plans).rank)
            self.plans_changed.emit()

        self.desk.start("rank", "Ranking the plans", work, done)

    # -- changing the log --------------------------------------------------------------------

    def change_log(
        self,
        change: Callable[[Logbook], Change | None],
        then: Callable[[Change | None], None] | None = None,
        failed: Callable[[PlannerError], None] | None = None,
    ) -> None:
        """Make a change to the log, one after the other, then show everything anew.

        failed: what to do when it cannot be made; by default the window says why.
        """

        def work(_: Checkpoint) -> tuple[Change | None, Log]:
            from planner.logbook import LogbookError

            if self.book is None:
                raise LogbookError("This log is open for reading only; open the place itself.")
            made = change(self.book)
            return made, _read_whole(self.book)

        def done(result: tuple[Change | None, Log]) -> None:
            made, log = result
            self._set_log(log, typed=True)
            if then is not None:
                then(made)

        self.clerk.start(f"change {next(self._ticket)}", "Saving", work, done, failed)

    def undo(self) -> None:
        """Take back the newest change of the log."""
        self.change_log(lambda book: book.undo())

    def redo(self) -> None:
        """Make the undone change again."""
        self.change_log(lambda book: book.redo())

    def _set_log(self, log: Log, typed: bool = False) -> None:
        unchanged = log.fingerprint == self.log.fingerprint
        self._log = log
        self.undo_name = self.book.undo_name if self.book else None
        self.redo_name = self.book.redo_name if self.book else None
        self.log_changed.emit()
        if not unchanged:
            # Opened at once; typed cell by cell, when the typing rests.
            (self._log_rest.start if typed else self._refresh)()

    # -- the end -----------------------------------------------------------------------------

    def close(self) -> None:
        """Finish what was being saved, stop the rest and close the log."""
        self._log_rest.stop()
        self.desk.stop_all()
        self.clerk.finish()
        if self.book is not None:
            self.book.close()
            self.book = None

    @property
    def idle(self) -> bool:
        """Whether nothing is being read or worked out."""
        return self.desk.idle and self.clerk.idle and not self._log_rest.isActive()

    def _crashed(self, error: BaseException) -> None:
        raise error


def _read_place(name: str) -> Site:
    from planner.sites import find_place, load_site

    return load_site(find_place(name))


def _read_whole(book: Logbook) -> Log:
    """Return the log of a book with its fingerprint worked out: a long log takes seconds."""
    log = book.read()
    _ = log.fingerprint
    return log
