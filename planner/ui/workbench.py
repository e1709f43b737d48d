"""What is open: one place, log, outlook and set of plans, and the only way to change them.

Views never read files or compute: they ask here and follow the signals.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import UTC, date, datetime, time, timedelta
from itertools import count
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QObject, QTimer, Signal

from planner.errors import PlannerError
from planner.ui.sources import Source, demo_source, open_log, read_hashed, read_place
from planner.ui.state import ViewState
from planner.ui.turns import Turns
from planner.ui.work import Checkpoint, Desk
from planner.words import say

if TYPE_CHECKING:
    from planner.logbook import Change, Log, Logbook, TripKey
    from planner.sites import Site
    from planner.trips import Outlook, Plan, PlanSet, Search, Wishes

PLAN_DAYS: Final = 84  # twelve weeks ahead: as far as a trapper picks dates
PLANS_SHOWN: Final = 12
OWN: Final = 0  # the rank of the user's own plan; ranked ones begin with 1
_PAST_DAYS: Final = 180
_AHEAD_DAYS: Final = 185
_MOST_DAYS_EACH_WAY: Final = 3653
_LOG_REST_MS: Final = 700


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
        # The user's own set and haul, drawn by hand; chosen when the rank in the state is OWN.
        self.own_plan: Plan | None = None
        self.search: Search | None = None
        self.wishes: Wishes | None = None
        self.book: Logbook | None = None
        # A plan whose trip the log is to begin as soon as it is shown.
        self.plan_to_log: Plan | None = None
        # A trip that was begun elsewhere, to be filled as soon as the log is shown.
        self.trip_to_fill: TripKey | None = None
        self.undo_name: str | None = None
        self.redo_name: str | None = None
        self.turns = Turns(self)
        self.desk = Desk(self, turns=self.turns)
        # One writer: changes to the log run one after the other, in the order they were asked.
        self.clerk = Desk(self, threads=1, turns=self.turns)
        self._ticket = count()
        # A row of cells typed one after the other is learned from once, when typing rests.
        self._log_rest = QTimer(self, singleShot=True, interval=_LOG_REST_MS)
        self._log_rest.timeout.connect(self._refresh)
        for desk in (self.desk, self.clerk):
            desk.failed.connect(self.trouble)
            desk.crashed.connect(self._crashed)
        self.first, self.last = self._year_around_today()
        # Whether the outlook that is being worked out is to be followed by plans.
        self._plans_due = False
        # A place's first look, from before the place has arrived with its log.
        self._looking_at: Site | None = None
        self._first_look: Outlook | None = None
        state.listen(self._state_changed)

    # -- opening ---------------------------------------------------------------------------

    def open(self, source: Source, otherwise: Source | None = None) -> None:
        """Open a place with its log; what was open stays until both are read.

        A place that cannot be read leaves everything as it was, or opens `otherwise`; a log
        that cannot be read leaves the place without one.
        """

        def then_the_log(site: Site) -> None:
            self._look(site)

            def without(error: PlannerError) -> None:
                self._arrive(source, site, None, None)
                self.trouble.emit(str(error))

            self.clerk.start(
                "open",
                say("Opening the log"),
                lambda _: open_log(source, self.book),
                lambda opened: self._arrive(source, site, *opened),
                without,
            )

        def not_read(error: PlannerError) -> None:
            self.trouble.emit(str(error))
            if otherwise is not None:
                self.open(otherwise)

        self.desk.start(
            "place",
            say("Reading the place"),
            lambda _: read_place(source.place),
            then_the_log,
            not_read,
        )

    @property
    def opening(self) -> bool:
        """Whether the first place is on its way; `busy` of the desks tells when that changes."""
        return self.site is None and (self.desk.has("place") or self.clerk.has("open"))

    def _arrive(self, source: Source, site: Site, book: Logbook | None, log: Log | None) -> None:
        for job in ("search", "rank"):
            self.desk.stop(job)
        self.source, self.site = source, site
        self.outlook, self.plans, self.search = None, None, None
        self.own_plan = None
        self.first, self.last = self._year_around_today()
        if self.book is not None and self.book is not book:
            self.book.close()
        self.book, self._log = book, log
        self.state.plan = None
        self.site_changed.emit()
        self._tell_log()
        if log is not None:
            # The hash of a long log takes a second; after the views, and before any change.
            self.clerk.start("hash", "", lambda _: log.fingerprint, lambda _: None)
        if book is not None and book.notice is not None:
            self.notice.emit(str(book.notice))
        elif book is not None and book.remark:
            self.notice.emit(book.remark)
            book.remark = ""
        if self._looking_at is site and self._first_look is not None:
            self._show_first_look(self._first_look)

    @property
    def log(self) -> Log:
        """Every haul known; empty until the log is read."""
        from planner.logbook import Log

        return Log(()) if self._log is None else self._log

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

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "today" in changed:
            self.first, self.last = self._year_around_today()
            self._refresh()
        elif "style" in changed:
            self._rank()  # the reasons and warnings of plans are sentences with units

    def _look(self, site: Site) -> None:
        """Begin a place's first look while its log is opened: at what is known in general.

        What the log teaches, and the sun, take a second more and follow.
        """
        self._looking_at, self._first_look = site, None

        def done(found: Outlook) -> None:
            self._first_look = found
            if self.site is site:
                self._show_first_look(found)

        def failed(error: PlannerError) -> None:
            self._looking_at = None
            self.trouble.emit(str(error))

        first, last = self._year_around_today()
        self._work_out(site, first, last, None, done, failed, sun=False)

    def _show_first_look(self, found: Outlook) -> None:
        self._looking_at = self._first_look = None
        self.outlook = found
        self.outlook_changed.emit()
        self._refresh()

    def _refresh(self, plans: bool = True) -> None:
        if self.site is None or self._looking_at is self.site:
            return  # what the first look shows is followed by all that has come since
        self._plans_due = self._plans_due or plans

        def done(found: Outlook) -> None:
            self.outlook = found
            self.outlook_changed.emit()
            if self._plans_due:
                self._plans_due = False
                self._find_plans()

        log = self.log if self.log.hauls else None
        self._work_out(self.site, self.first, self.last, log, done)

    def _work_out(
        self,
        site: Site,
        first: date,
        last: date,
        log: Log | None,
        done: Callable[[Outlook], None],
        failed: Callable[[PlannerError], None] | None = None,
        sun: bool = True,
    ) -> None:
        def work(checkpoint: Checkpoint) -> Outlook:
            from planner.trips import outlook

            return outlook(site, first, last, log, sun=sun, checkpoint=checkpoint)

        label = say("Working out the water, the moon and the crabs")
        self.desk.start(
            "outlook", label if log is None else say("Learning from the log"), work, done, failed
        )

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

        self.desk.start("search", say("Looking for set and haul times"), work, done)

    def _rank(self) -> None:
        search, wishes, style, today = self.search, self.wishes, self.state.style, self.state.today
        if search is None:
            return

        def work(_: Checkpoint) -> PlanSet:
            from planner.trips import Wishes

            return search.plans(PLANS_SHOWN, wishes or Wishes(), style, today)

        def done(plans: PlanSet) -> None:
            own = self.own_plan
            self.own_plan = self._near(own.set_at, own.haul_at) if own is not None else None
            chosen = self._chosen_among(plans.plans)
            self.plans = plans
            # All who follow the choice follow the plans too: they are told once.
            self.state.plan = chosen
            self.plans_changed.emit()

        self.desk.start("rank", say("Ranking the plans"), work, done)

    @property
    def plan(self) -> Plan | None:
        """The chosen plan, None when there is none."""
        if self.state.plan == OWN:
            return self.own_plan
        plans = self.plans.plans if self.plans else ()
        return next((plan for plan in plans if plan.rank == self.state.plan), None)

    @property
    def every_plan(self) -> tuple[Plan, ...]:
        """The user's own plan, where there is one, and the ranked ones."""
        own = () if self.own_plan is None else (self.own_plan,)
        return (*own, *(self.plans.plans if self.plans else ()))

    def draw_plan(self, set_at: datetime, haul_at: datetime) -> None:
        """Choose the allowed plan nearest to a set and haul drawn by hand, as the user's own."""
        near = self._near(set_at, haul_at)
        if near is not None:
            self.choose_own(near, OWN)

    def choose_own(self, own: Plan | None, rank: int | None) -> None:
        """Have these own times, or none, and choose a plan by its rank."""
        self.own_plan = own
        self.state.plan = rank
        self.state.tell("plan")

    def _near(self, set_at: datetime, haul_at: datetime) -> Plan | None:
        # Two milliseconds: soon enough to follow a mouse.
        if self.search is None:
            return None
        return self.search.plan_near(
            set_at, haul_at, self.wishes, self.state.style, self.state.today
        )

    def _chosen_among(self, plans: Sequence[Plan]) -> int | None:
        """Return the rank of what was chosen, by its days; else of the soonest as good as any."""
        from planner.trips import soonest_as_good

        def days(plan: Plan) -> tuple[date, date]:
            zone = self.site.zone if self.site else UTC
            return plan.set_at.astimezone(zone).date(), plan.haul_at.astimezone(zone).date()

        if self.state.plan == OWN and self.own_plan is not None:
            return OWN
        if not plans:
            return None
        before = self.plan
        same = (plan.rank for plan in plans if before and days(plan) == days(before))
        return next(same, soonest_as_good(plans).rank)

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

        def work(_: Checkpoint) -> tuple[Logbook, Change | None, Log]:
            from planner.logbook import LogbookError

            book = self.book
            if book is None:
                raise LogbookError(say("This log is open for reading only; open the place itself."))
            return book, change(book), read_hashed(book)

        def done(result: tuple[Logbook, Change | None, Log]) -> None:
            book, made, log = result
            if book is self.book:
                self._set_log(log)
            if then is not None:
                then(made)

        self.clerk.start(f"change {next(self._ticket)}", say("Saving"), work, done, failed)

    def undo(self) -> None:
        """Take back the newest change of the log."""
        self.change_log(lambda book: book.undo())

    def redo(self) -> None:
        """Make the undone change again."""
        self.change_log(lambda book: book.redo())

    def _set_log(self, log: Log) -> None:
        unchanged = log.fingerprint == self.log.fingerprint
        self._log = log
        self._tell_log()
        if not unchanged:
            self._log_rest.start()

    def _tell_log(self) -> None:
        self.undo_name = self.book.undo_name if self.book else None
        self.redo_name = self.book.redo_name if self.book else None
        self.log_changed.emit()

    # -- the end -----------------------------------------------------------------------------

    def close(self) -> None:
        """Finish what was being saved, stop the rest and close the log."""
        self.state.forget(self._state_changed)
        self._log_rest.stop()
        self.desk.stop_all()
        self.clerk.finish()
        if self.book is not None:
            self.book.close()
            self.book = None

    @property
    def idle(self) -> bool:
        """Whether nothing is being read, worked out or put up."""
        desks = self.desk.idle and self.clerk.idle
        return desks and self.turns.idle and not self._log_rest.isActive()

    def _crashed(self, error: BaseException) -> None:
        raise error  # to where every fault of our own is shown
