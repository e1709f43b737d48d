"""Log hauls: what each trap gave, typed in cell by cell and saved as it is typed."""

from __future__ import annotations

from collections.abc import Callable
from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMessageBox,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.handouts.layout import TrapLayout, trip_layout
from planner.logbook import Haul, Promise, Trip, TripKey, TripOutcome, book_zone
from planner.phrasing import day_text
from planner.trips import Plan
from planner.ui.flow import Flow
from planner.ui.hauls.bin_dialog import BinDialog
from planner.ui.hauls.haul_rows import (
    trip_begun_for,
    trip_like_last,
    trip_of_plan,
    trips_newest_first,
)
from planner.ui.hauls.haul_saving import HaulSaver
from planner.ui.hauls.log_files import LogFiles
from planner.ui.hauls.look_back import LookBackWindow
from planner.ui.hauls.traps_window import TrapsWindow
from planner.ui.hauls.trip_entry import TripEntry
from planner.ui.hauls.trip_list import TripList
from planner.ui.parts import Empty, button, caution, title
from planner.ui.strip.days import plan_name
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

_NOTHING = say(
    "No trip is logged yet. Every trip will be a row here, with what each trap gave: "
    "forecasts, plans and trap comparisons learn from it. Begin with a new trip above, "
    "or bring in a haul table (CSV) that you already keep."
)


class HaulsView(QWidget):
    """Trips on the left, the chosen trip's hauls on the right."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self._zones: dict[str, ZoneInfo | None] = {}
        self.saver = HaulSaver(bench, self)
        self.entry = TripEntry(bench, self.saver, self._zones)
        self.on_deck = self.entry.on_deck
        self._lay_out()
        self.trips.chosen.connect(lambda name, place: self.choose((name, place)))
        self.saver.settled.connect(self.refresh)
        bench.log_changed.connect(self._log_changed)
        bench.site_changed.connect(self.refresh)
        bench.plans_changed.connect(self._plans_changed)
        self.state.listen(self._state_changed)
        for desk in (bench.desk, bench.clerk):
            desk.busy.connect(lambda _: self._say_nothing_logged())
        self._say_nothing_logged()
        self.refresh()

    # -- building ----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self.trips = TripList()
        self.locked = caution()
        self.locked.hide()
        self.unlock = button(
            say("Try again"),
            lambda: self.bench.open(self.bench.source),
            say("Open the log for writing, if the other window is closed by now"),
        )
        self.unlock.hide()
        self.from_plan = button("", self._start_from_plan)
        self.like_last = button(say("New trip today"), self._start_like_last)
        self.like_last.setToolTip(
            say("A trip hauled today, with the traps and spots of the last one")
        )
        self.traps = button(
            say("Traps…"), self._show_traps, say("Every trap, what befell it, what it gave")
        )
        self.bin = button(say("Bin…"), self._show_bin, say("What was deleted, until you empty it"))
        self.look_back = button(
            say("Look back…"),
            self._show_look_back,
            say("Catch and light crabs over time and by kind"),
        )
        self.delete = button(say("Delete trip"), self._delete)
        self.delete.setToolTip(say("Into the bin; Undo in the Edit menu brings it back at once"))
        self.entry.bar.addWidget(self.delete)
        QWidget.setTabOrder(self.entry.remove_trap, self.delete)
        self.files = LogFiles(self.bench)
        self.import_first = button(say("Import a haul table…"), self.files.import_table)
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE * 2, SPACE, SPACE * 2, SPACE)
        column.setSpacing(SPACE)
        top = title(say("Log hauls "))
        top.setWordWrap(False)
        top.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        begin = (self.from_plan, self.like_last)
        column.addLayout(Flow(top, *begin, self.traps, self.bin, self.look_back))
        locked = QHBoxLayout()
        locked.addWidget(self.locked, 1)
        locked.addWidget(self.unlock)
        column.addLayout(locked)
        self.nothing = Empty(_NOTHING, self.import_first)
        self._stack = QStackedWidget()
        # From the outside in: whatever is taken in takes all that it holds along, at a price.
        column.addWidget(self._stack, 1)
        self._stack.addWidget(self.nothing)
        halves, left = QSplitter(Qt.Orientation.Horizontal), QWidget()
        self._stack.addWidget(halves)
        halves.setChildrenCollapsible(False)
        halves.addWidget(left)
        inside = QVBoxLayout(left)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addWidget(self.trips, 1)
        inside.addWidget(self.files)
        halves.addWidget(self.entry)
        halves.setStretchFactor(1, 1)
        halves.setSizes([250, 850])

    # -- showing -----------------------------------------------------------------------------

    @property
    def chosen(self) -> TripKey | None:
        """The trip on show, by name and place."""
        return self.entry.chosen

    def refresh(self) -> None:
        """Show the log as it is; the trips are added up elsewhere, as a long log takes a while."""
        log = self.bench.log
        self._stack.setCurrentIndex(1 if log.hauls else 0)
        self._show_trip(self.chosen)
        # On the clerk's thread, where they do not wait for a forecast.
        self.bench.clerk.start("trips", "", lambda _: trips_newest_first(log), self._show_trips)

    def _show_trips(self, trips: list[TripOutcome]) -> None:
        keys = {(trip.trip, trip.place): None for trip in trips}
        if self.chosen not in keys and self.saver.under_way == 0 and not self.saver.unsaved:
            self._show_trip(next(iter(keys), None))
        self.trips.show_trips(trips, self.chosen)
        self._learn_zones({trip.place for trip in trips})

    def _show_trip(self, trip: TripKey | None) -> None:
        self.entry.show_trip(trip)
        self._offer()

    def _offer(self) -> None:
        """Say what can be begun, and enable what can be done."""
        book, plan, site = self.bench.book, self.bench.plan, self.bench.site
        may = book is not None and not book.read_only
        reason = "" if book is None or book.notice is None else f"{book.notice} "
        self.locked.setText(
            say(
                "⚠ {reason}This log is open for reading only, so nothing can be entered here.",
                reason=reason,
            )
        )
        self.locked.setVisible(not may and site is not None and self.bench.clerk.idle)
        self.unlock.setVisible(self.locked.isVisibleTo(self) and book is not None)
        self.from_plan.setVisible(plan is not None)
        if plan is not None and site is not None:
            day = day_text(plan.haul_at.astimezone(site.zone).date())
            self.from_plan.setText(
                say("New trip from {plan_name} ({day})", plan_name=plan_name(plan.rank), day=day)
            )
            self.from_plan.setToolTip(say("Rows with the plan's times and spots and your traps"))
        for each in (self.from_plan, self.like_last):
            each.setEnabled(may and site is not None)
        for each in (self.delete, self.files.import_, self.files.paste, self.import_first):
            each.setEnabled(may)
        for each in (self.traps, self.bin):
            each.setEnabled(book is not None)
        self.entry.enable()

    def _learn_zones(self, places: set[str]) -> None:
        """Look up the zones of other places than the open one, once each."""
        site = self.bench.site
        unknown = places - self._zones.keys() - ({site.name} if site else set())
        if not unknown or site is None:
            return

        def done(found: dict[str, ZoneInfo | None]) -> None:
            self._zones.update(found)
            self._show_trip(self.chosen)

        self.bench.desk.start(
            "zones", "", lambda _: {place: book_zone(place) for place in unknown}, done
        )

    def _say_nothing_logged(self) -> None:
        self.nothing.words.setText(say("Opening the log…") if self.bench.opening else _NOTHING)

    # -- following ---------------------------------------------------------------------------

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "plan" in changed:
            self._offer()
        if changed & {"style", "theme", "today"}:
            self._show_trip(self.chosen)

    def _plans_changed(self) -> None:
        self._offer()

    def _log_changed(self) -> None:
        if self.saver.under_way == 0:
            self.refresh()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        plan, self.bench.plan_to_log = self.bench.plan_to_log, None
        trip, self.bench.trip_to_fill = self.bench.trip_to_fill, None
        if plan is not None:
            self._start_plan(plan)
        elif trip is not None:
            self._open_to_fill(trip)

    def choose(self, trip: TripKey) -> None:
        """Show a trip."""
        self._show_trip(trip)

    # -- trips -------------------------------------------------------------------------------

    def _start_from_plan(self) -> None:
        if self.bench.plan is not None:
            self._start_plan(self.bench.plan)

    def _start_plan(self, plan: Plan) -> None:
        """Show the trip of a plan, ready to fill; begun when the log has none of it yet."""
        site, log = self.bench.site, self.bench.log
        if site is None:
            return
        begun = trip_begun_for(log, site, plan)
        if begun is None:
            promise = Promise(plan.full_keepers, plan.light_share)
            self._start(lambda traps: trip_of_plan(log, site, plan, traps), promise)
        else:
            self._open_to_fill(begun)

    def _open_to_fill(self, trip: TripKey) -> None:
        self._show_trip(trip)
        self.refresh()
        self.entry.table.setFocus()

    def _start_like_last(self) -> None:
        site, today = self.bench.site, self.state.today
        if site is not None:
            self._start(lambda traps: trip_like_last(self.bench.log, site, today, traps))

    def _start(
        self, rows: Callable[[TrapLayout], tuple[Haul, ...]], promise: Promise | None = None
    ) -> None:
        site, log = self.bench.site, self.bench.log
        assert site is not None

        def done(traps: TrapLayout) -> None:
            self.entry.table.setFocus()  # a cell that is open is left, and so saved
            hauls = rows(traps)
            trip = (hauls[0].trip, hauls[0].place)
            self._stack.setCurrentIndex(1)
            details = None if promise is None else Trip(*trip, promise=promise)
            self.saver.save(trip, hauls, say("start of trip {trip}", trip=trip[0]), details)
            self._show_trip(trip)

        self.bench.desk.start(
            "new trip", say("Laying out the traps"), lambda _: trip_layout(site, log), done
        )

    def _delete(self) -> None:
        if self.chosen is not None:
            name, place = self.chosen
            self.saver.forget(self.chosen)
            self.entry.refuse("")
            self.bench.change_log(lambda book: book.delete_trip(name, place))

    def _show_traps(self) -> None:
        TrapsWindow(self.bench, self).show()

    def _show_look_back(self) -> None:
        LookBackWindow(self.bench, self).show()

    def _show_bin(self) -> None:
        BinDialog(self.bench, self).open()

    # -- the end -----------------------------------------------------------------------------

    def may_close(self) -> bool:
        """Save what is being typed; ask before entries are lost that no disk has taken."""
        self.entry.setFocus()  # a cell that is open is left, and so saved
        self.saver.retry()
        self.bench.clerk.settle()
        if not self.saver.unsaved:
            return True
        buttons = QMessageBox.StandardButton
        answer = QMessageBox.warning(
            self,
            say("Entries are not in the log yet"),
            say(
                "The log could not be written, and these trips hold entries that are "
                "only here: {listed}. Quit and lose them?",
                listed=", ".join((name for name, _ in self.saver.unsaved)),
            ),
            buttons.Discard | buttons.Cancel,
            buttons.Cancel,
        )
        return answer == buttons.Discard
