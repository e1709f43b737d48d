"""Log hauls: what each trap gave, typed in cell by cell and saved as it is typed."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QHBoxLayout,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.handouts.layout import TrapLayout, trip_layout
from planner.logbook import Change, Haul, Trip, TripOutcome, book_zone
from planner.phrasing import day_text
from planner.trips import Plan
from planner.ui.deck_button import DeckButton
from planner.ui.haul_cells import Clock
from planner.ui.haul_model import HaulModel
from planner.ui.haul_rows import (
    TripKey,
    doubts,
    hauls_of,
    missing,
    row_after,
    same_named_elsewhere,
    totals,
    trip_like_last,
    trip_of_plan,
    trips_newest_first,
    zone_for,
)
from planner.ui.haul_table import KEYS_IN_WORDS, HaulTable
from planner.ui.log_files import LogFiles
from planner.ui.parts import Empty, body, button, caution, heading, quiet, title
from planner.ui.theme import SPACE
from planner.ui.trip_details import TripDetails
from planner.ui.trip_list import TripList
from planner.ui.workbench import Workbench


class HaulsView(QWidget):
    """Trips on the left, the chosen trip's hauls on the right."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.chosen: TripKey | None = None
        self._zones: dict[str, ZoneInfo | None] = {}
        # Saves on their way: until they are in the log, the screen is ahead of it.
        self._saving = 0
        self.model = HaulModel(self)
        self._lay_out()
        self.model.changed.connect(lambda what: self._save(f"{what}, {self._name()}"))
        self.model.refused.connect(self._refuse)
        self.details.changed.connect(self._save_details)
        self.details.refused.connect(self._refuse)
        self.trips.chosen.connect(lambda name, place: self._choose((name, place)))
        bench.log_changed.connect(self._log_changed)
        bench.site_changed.connect(self.refresh)
        bench.plans_changed.connect(self._offer)
        self.state.listen(self._state_changed)
        self.refresh()

    # -- building ----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self.trips = TripList()
        self.table = HaulTable(self.model, self._words)
        self.details = TripDetails()
        self.locked = caution()
        self.locked.hide()
        self.from_plan = button("", self._start_from_plan)
        self.like_last = button("New trip today", self._start_like_last)
        self.like_last.setToolTip("A trip hauled today, with the traps and spots of the last one")
        self.add_trap = button("Add a trap", self._add_row)
        self.remove_trap = button("Remove trap", self._remove_rows)
        self.delete = button("Delete trip", self._delete)
        self.delete.setToolTip("Delete the trip; Undo in the Edit menu brings it back")
        self.on_deck = DeckButton(self.bench, lambda: self.model.hauls, self._zones)
        self.files = LogFiles(self.bench)
        self.import_first = button("Import a haul table…", self.files.import_table)
        self._top = title("Log hauls")
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE * 2, SPACE, SPACE * 2, SPACE)
        column.setSpacing(SPACE)
        bar = QHBoxLayout()
        bar.addWidget(self._top, 1)
        for each in (self.from_plan, self.like_last):
            bar.addWidget(each)
        column.addLayout(bar)
        column.addWidget(self.locked)
        nothing = Empty(
            "No trip is logged yet. Every trip will be a row here, with what each trap gave: "
            "forecasts, plans and trap comparisons learn from it. Begin with a new trip above, "
            "or bring in a haul table (CSV) that you already keep.",
            self.import_first,
        )
        self._stack = QStackedWidget()
        self._stack.addWidget(nothing)
        self._stack.addWidget(self._halves())
        column.addWidget(self._stack, 1)

    def _halves(self) -> QSplitter:
        halves = QSplitter(Qt.Orientation.Horizontal)
        halves.setChildrenCollapsible(False)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.trips, 1)
        column.addWidget(self.files)
        halves.addWidget(left)
        halves.addWidget(self._trip_side())
        halves.setStretchFactor(1, 1)
        halves.setSizes([300, 800])
        return halves

    def _trip_side(self) -> QWidget:
        self._trip_line = heading("")
        self.refusal = caution()
        self.refusal.setAccessibleName("Why a cell was not saved")
        self.refusal.hide()
        self.totals = body()
        self.missing = quiet()
        self.doubts = caution()
        self.keys = quiet(KEYS_IN_WORDS)
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(SPACE, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        bar = QHBoxLayout()
        bar.addWidget(self._trip_line, 1)
        for each in (self.on_deck, self.add_trap, self.remove_trap, self.delete):
            bar.addWidget(each)
        column.addLayout(bar)
        column.addWidget(self.details)
        column.addWidget(self.table, 1)
        for label in (self.refusal, self.totals, self.missing, self.doubts, self.keys):
            column.addWidget(label)
        return side

    # -- showing -----------------------------------------------------------------------------

    def refresh(self) -> None:
        """Show the log as it is; the trips are added up elsewhere, as a long log takes a while."""
        log = self.bench.log
        self._stack.setCurrentIndex(1 if log.hauls else 0)
        self._offer()
        self._show_trip()
        # On the clerk's thread, where they do not wait for a forecast.
        self.bench.clerk.start("trips", "", lambda _: trips_newest_first(log), self._show_trips)

    def _show_trips(self, trips: list[TripOutcome]) -> None:
        keys = [(trip.trip, trip.place) for trip in trips]
        if self.chosen not in keys and self._saving == 0:
            self.chosen = keys[0] if keys else None
            self._show_trip()
            self._offer()
        self.trips.show_trips(trips, self.chosen)
        self._learn_zones({trip.place for trip in trips})

    def _show_trip(self) -> None:
        if self.chosen is None:
            return
        name, place = self.chosen
        zone = zone_for(place, self.bench.site, self._zones)
        hauls = hauls_of(self.bench.log, self.chosen)
        clock = Clock(zone, self.state.style)
        first_time = self.model.rowCount() == 0
        self.model.show(hauls, clock, self.state.today, self._may_write())
        if first_time:
            self.table.resizeColumnsToContents()
            self.table.setCurrentIndex(self.model.index(0, 0))
        self._trip_line.setText(f"{name}, {place} (times of {zone.key})")
        trips = (trip for trip in self.bench.log.trips if (trip.name, trip.place) == self.chosen)
        trip = next(trips, Trip(name, place))
        self.details.show_trip(trip, self.state.style, self._may_write())
        self._sum_up()

    def _sum_up(self) -> None:
        hauls = self.model.hauls
        self.totals.setText(totals(hauls))
        self.missing.setText(missing(hauls))
        self.missing.setVisible(bool(self.missing.text()))
        found = doubts(hauls, datetime.now(UTC))
        self.doubts.setText("\n".join(f"⚠ {text}" for text in found))
        self.doubts.setVisible(bool(found))

    def _offer(self) -> None:
        """Say what can be begun, and enable what can be done."""
        may = self._may_write()
        book = self.bench.book
        reason = "" if book is None or book.notice is None else f"{book.notice} "
        self.locked.setText(
            f"⚠ {reason}This log is open for reading only, so nothing can be entered here."
        )
        self.locked.setVisible(not may and self.bench.clerk.idle)
        plan, site = self._plan(), self.bench.site
        self.from_plan.setVisible(plan is not None)
        if plan is not None and site is not None:
            day = day_text(plan.haul_at.astimezone(site.zone).date())
            self.from_plan.setText(f"New trip from plan {plan.rank} ({day})")
            self.from_plan.setToolTip("Rows with the plan's times and spots and your traps")
        for each in (self.from_plan, self.like_last):
            each.setEnabled(may and site is not None)
        for each in (self.add_trap, self.delete, self.files.import_, self.import_first):
            each.setEnabled(may)
        self.remove_trap.setEnabled(may and len(self.model.hauls) > 1)
        self.keys.setVisible(may)

    def _may_write(self) -> bool:
        return self.bench.book is not None and not self.bench.book.read_only

    def _plan(self) -> Plan | None:
        plans = self.bench.plans.plans if self.bench.plans else ()
        return next((plan for plan in plans if plan.rank == self.state.plan), None)

    def _learn_zones(self, places: set[str]) -> None:
        """Look up the zones of other places than the open one, once each."""
        site = self.bench.site
        unknown = places - self._zones.keys() - ({site.name} if site else set())
        if not unknown or site is None:
            return

        def done(found: dict[str, ZoneInfo | None]) -> None:
            self._zones.update(found)
            self._show_trip()

        self.bench.desk.start(
            "zones", "", lambda _: {place: book_zone(place) for place in unknown}, done
        )

    # -- following ---------------------------------------------------------------------------

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "plan" in changed:
            self._offer()
        if changed & {"style", "theme"}:
            self._show_trip()

    def _log_changed(self) -> None:
        if self._saving == 0:
            self.refresh()

    def _choose(self, trip: TripKey) -> None:
        self.chosen = trip
        self._refuse("")
        self._show_trip()
        self._offer()

    def _refuse(self, sentence: str) -> None:
        self.refusal.setText(f"⚠ {sentence}" if sentence else "")
        self.refusal.setVisible(bool(sentence))

    def _words(self, field: str) -> Sequence[str]:
        words = {getattr(haul, field): None for haul in reversed(self.bench.log.hauls)}
        return [word for word in words if word]

    # -- saving ------------------------------------------------------------------------------

    def _name(self) -> str:
        assert self.chosen is not None
        return self.chosen[0]

    def _save(self, what: str, details: Trip | None = None) -> None:
        """Save the rows on screen as one change, named for undo."""
        assert self.chosen is not None
        self._refuse("")
        self._sum_up()
        self._save_rows(self.chosen, self.model.hauls, what, details)

    def _save_rows(
        self, trip: TripKey, hauls: Sequence[Haul], what: str, details: Trip | None = None
    ) -> None:
        # Saving a trip replaces all of its name; those at other places are kept as they are.
        rows = [*same_named_elsewhere(self.bench.log, trip), *hauls]
        self._saving += 1
        self.bench.change_log(
            lambda book: book.save_trip(trip[0], rows, details, change=what),
            self._saved,
            self._not_saved,
        )

    def _saved(self, _: Change | None) -> None:
        self._saving -= 1
        if self._saving == 0:
            self.refresh()

    def _not_saved(self, error: PlannerError) -> None:
        """Say why, and show what the log really holds."""
        self._saving = max(self._saving - 1, 0)
        self.refresh()
        self._refuse(f"Not saved. {error}")

    def _save_details(self, trip: Trip, what: str) -> None:
        self._save(f"{what} of trip {trip.name}", trip)

    def _add_row(self) -> None:
        if self.chosen is None:
            return
        hauls = list(self.model.hauls)
        at = max(self.table.currentIndex().row(), 0) if hauls else -1
        hauls.insert(at + 1, row_after(hauls, at, self.chosen))
        self._show_rows(hauls)
        self.table.setCurrentIndex(self.model.index(at + 1, 0))
        self.table.setFocus()
        self._save(f"new trap in trip {self._name()}")

    def _remove_rows(self) -> None:
        rows = {row for row, _ in self.table.chosen_cells()}
        kept = [haul for at, haul in enumerate(self.model.hauls) if at not in rows]
        if rows and kept:
            self._show_rows(kept)
            self.table.setCurrentIndex(self.model.index(min(min(rows), len(kept) - 1), 0))
            self._save(f"removal of a trap from trip {self._name()}")

    def _show_rows(self, hauls: Sequence[Haul]) -> None:
        assert self.chosen is not None
        zone = zone_for(self.chosen[1], self.bench.site, self._zones)
        self.model.show(hauls, Clock(zone, self.state.style), self.state.today, self._may_write())

    def _start_from_plan(self) -> None:
        plan, site = self._plan(), self.bench.site
        if plan is not None and site is not None:
            self._start(lambda traps: trip_of_plan(self.bench.log, site, plan, traps))

    def _start_like_last(self) -> None:
        site, today = self.bench.site, self.state.today
        if site is not None:
            self._start(lambda traps: trip_like_last(self.bench.log, site, today, traps))

    def _start(self, rows: Callable[[TrapLayout], tuple[Haul, ...]]) -> None:
        site, log = self.bench.site, self.bench.log
        assert site is not None

        def done(traps: TrapLayout) -> None:
            hauls = rows(traps)
            trip = (hauls[0].trip, hauls[0].place)
            self.chosen = trip
            self._refuse("")
            self._save_rows(trip, hauls, f"start of trip {trip[0]}")
            self.table.setFocus()

        self.bench.desk.start(
            "new trip", "Laying out the traps", lambda _: trip_layout(site, log), done
        )

    def _delete(self) -> None:
        if self.chosen is None:
            return
        name = self.chosen[0]
        elsewhere = same_named_elsewhere(self.bench.log, self.chosen)
        self._refuse("")
        if elsewhere:
            self._save_rows(self.chosen, (), f"delete of trip {name}")
        else:
            self.bench.change_log(lambda book: book.delete_trip(name))
