"""One trip under the keyboard: its rows, what belongs to the whole of it, sums, gaps, doubts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime, time
from functools import partial
from itertools import islice
from zoneinfo import ZoneInfo

from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QWidget

from planner.logbook import Crab, Haul, Trip, TripKey
from planner.ui.flow import Flow
from planner.ui.hauls.crabs_dialog import CrabsDialog
from planner.ui.hauls.haul_cells import Clock
from planner.ui.hauls.haul_model import HaulModel
from planner.ui.hauls.haul_rows import hauls_of, row_after, zone_for
from planner.ui.hauls.haul_saving import HaulSaver
from planner.ui.hauls.haul_table import KEYS_IN_WORDS, HaulTable
from planner.ui.hauls.haul_words import doubts, missing, promised, totals
from planner.ui.hauls.trip_details import TripDetails
from planner.ui.load.deck_button import DeckButton
from planner.ui.parts import body, button, caution, heading, quiet, scrolling, set_margins
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

_TRIPS_OF_WORDS = 300  # what was written longer ago is not offered while typing


class TripEntry(QWidget):
    """Shows the trip `chosen`; every cell is saved as it is left.

    zones: of places other than the open one, filled by the owner.
    """

    def __init__(
        self, bench: Workbench, saver: HaulSaver, zones: Mapping[str, ZoneInfo | None]
    ) -> None:
        super().__init__()
        self.bench, self.state, self.saver, self._zones = bench, bench.state, saver, zones
        self.chosen: TripKey | None = None
        self._trip: Trip | None = None
        self.model = HaulModel(self)
        self._lay_out()
        self.model.changed.connect(self._save_cells)
        self.model.refused.connect(self.refuse)
        self.details.changed.connect(self._save_details)
        self.details.refused.connect(self.refuse)
        saver.kept.connect(self._say_kept)
        saver.refused.connect(lambda why: self.refuse(say("Not saved. {why}", why=why)))
        saver.settled.connect(self._say_saved)

    # -- building ----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self.table = HaulTable(self.model, self._words)
        self.details = TripDetails()
        self.add_trap = button(
            say("Add a trap"), self._add_row, say("A row after this one (Ctrl+Return)")
        )
        self.remove_trap = button(
            say("Remove trap"), self._remove_rows, say("Into the bin, with its counts")
        )
        self.crabs = button(
            say("Single crabs…"),
            self.show_crabs,
            say("Crabs of this trap looked at one by one (Ctrl+K)"),
        )
        self.on_deck = DeckButton(self.bench, lambda: self.model.hauls, self._zones)
        self.line = heading("")
        self.refusal = caution()
        self.refusal.setAccessibleName(say("Why a cell was not saved"))
        self.refusal.hide()
        self.again = button(say("Try again"), self.saver.retry, say("Save what is kept here"))
        self.again.hide()
        self.totals = body()
        self.missing = quiet()
        self.doubts = caution()
        self.keys = quiet(KEYS_IN_WORDS)
        for keys, act in (("Ctrl+Return", self._add_row), ("Ctrl+K", self.show_crabs)):
            QShortcut(QKeySequence(keys), self, act)
        self.bar = Flow(self.on_deck, self.crabs, self.add_trap, self.remove_trap)
        refused = QHBoxLayout()
        refused.addWidget(self.refusal, 1)
        refused.addWidget(self.again)
        column = scrolling(self, say("The trip"))
        set_margins(column, SPACE, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addWidget(self.line)
        column.addLayout(self.bar)
        column.addWidget(self.details)
        column.addWidget(self.table, 1)
        column.addLayout(refused)
        for label in (self.totals, self.missing, self.doubts, self.keys):
            column.addWidget(label)

    # -- showing -----------------------------------------------------------------------------

    def show_trip(self, trip: TripKey | None) -> None:
        """Show a trip as the log has it, or as it waits to be saved."""
        other, self.chosen = trip != self.chosen, trip
        if trip is None:
            return
        if other:
            self.refuse("")
        waiting = self.saver.unsaved.get(trip)
        hauls = hauls_of(self.bench.log, trip) if waiting is None else waiting.hauls
        self._show_rows(hauls)
        if other and hauls:
            self.table.resizeColumnsToContents()
            self.table.setCurrentIndex(self.model.index(0, self.table.first_open_column()))
        logged = self.bench.log.by_trip.get(trip)
        self._trip = Trip(*trip) if logged is None else logged.trip
        if waiting is not None and waiting.details is not None:
            self._trip = waiting.details
        self.line.setText(
            say(
                "{trip}, {place} (times of {zone})",
                trip=trip[0],
                place=trip[1],
                zone=self._zone().key,
            )
        )
        self.details.show_trip(self._trip, self.state.style, self._may_write())
        self._sum_up()

    def enable(self) -> None:
        """Offer what can be done to the trip."""
        may = self._may_write() and self.chosen is not None
        self.add_trap.setEnabled(may)
        self.remove_trap.setEnabled(may and len(self.model.hauls) > 1)
        self.crabs.setEnabled(bool(self.model.hauls))
        self.keys.setVisible(may)

    def refuse(self, sentence: str) -> None:
        """Say why something was not taken; "" takes the sentence away."""
        self.refusal.setText(f"⚠ {sentence}" if sentence else "")
        self.refusal.setVisible(bool(sentence))
        self.again.hide()

    def _say_kept(self, why: str) -> None:
        self.refuse(
            say("Not in the log yet. {why} What you typed stays here and is tried again.", why=why)
        )
        self.again.show()

    def _say_saved(self) -> None:
        if not self.again.isHidden() and not self.saver.unsaved:
            self.refuse("")

    def _now(self) -> datetime:
        """Return the present, or the end of another day that the window shows itself as on."""
        now, today = datetime.now(self._zone()), self.bench.state.today
        return now if now.date() == today else datetime.combine(today, time.max, now.tzinfo)

    def _sum_up(self) -> None:
        hauls = self.model.hauls
        parts = (totals(hauls, self._trip), promised(self._trip))
        self.totals.setText(". ".join(part for part in parts if part))
        self.missing.setText(missing(hauls, self._trip))
        self.missing.setVisible(bool(self.missing.text()))
        found = doubts(hauls, self._now(), self._trip)
        self.doubts.setText("\n".join(f"⚠ {text}" for text in found))
        self.doubts.setVisible(bool(found))

    def _show_rows(self, hauls: Sequence[Haul]) -> None:
        clock = Clock(self._zone(), self.state.style)
        self.model.show(hauls, clock, self.state.today, self._may_write())

    def _zone(self) -> ZoneInfo:
        assert self.chosen is not None
        return zone_for(self.chosen[1], self.bench.site, dict(self._zones))

    def _may_write(self) -> bool:
        return self.bench.book is not None and not self.bench.book.read_only

    def _words(self, field: str) -> Sequence[str]:
        newest = islice(reversed(self.bench.log.by_trip), _TRIPS_OF_WORDS)
        rows = (haul for key in newest for haul in reversed(hauls_of(self.bench.log, key)))
        return [word for word in {getattr(haul, field): None for haul in rows} if word]

    # -- saving ------------------------------------------------------------------------------

    def _name(self) -> str:
        assert self.chosen is not None
        return self.chosen[0]

    def _save(self, what: str, details: Trip | None = None) -> None:
        """Save the rows on screen as one change, named for undo."""
        assert self.chosen is not None
        self._sum_up()
        self.saver.save(self.chosen, self.model.hauls, what, details)

    def _save_cells(self, what: str) -> None:
        self.refuse("")
        self._save(f"{what}, {self._name()}")

    def _save_details(self, trip: Trip, what: str) -> None:
        self.refuse("")
        self._trip = trip
        self._save(say("{what} of trip {name}", what=what, name=trip.name), trip)

    def _add_row(self) -> None:
        if self.chosen is None or not self._may_write():
            return
        self.table.setFocus()  # a cell that is open is left, and so saved
        hauls = list(self.model.hauls)
        at = max(self.table.currentIndex().row(), 0) if hauls else -1
        hauls.insert(at + 1, row_after(hauls, at, self.chosen))
        self._show_rows(hauls)
        self.table.setCurrentIndex(self.model.index(at + 1, 0))
        self._save(say("new trap in trip {name}", name=self._name()))

    def _remove_rows(self) -> None:
        rows = {row for row, _ in self.table.chosen_cells()}
        kept = [haul for at, haul in enumerate(self.model.hauls) if at not in rows]
        if rows and kept:
            self._show_rows(kept)
            self.table.setCurrentIndex(self.model.index(min(min(rows), len(kept) - 1), 0))
            self._save(say("removal of a trap from trip {name}", name=self._name()))

    # -- single crabs ------------------------------------------------------------------------

    def show_crabs(self) -> None:
        """Open the crabs of the trap under the cursor."""
        row = self.table.currentIndex().row()
        if self.chosen is None or not 0 <= row < len(self.model.hauls):
            return
        haul = self.model.hauls[row]
        dialog = CrabsDialog(haul, self._may_write(), self)
        dialog.changed.connect(partial(self._save_crabs, self.chosen, row))
        dialog.open()

    def _save_crabs(self, trip: TripKey, row: int, crabs: tuple[Crab, ...], what: str) -> None:
        if trip == self.chosen and row < len(self.model.hauls):
            self.model.set_crabs(row, crabs)
            self._save(
                say(
                    "{what} of trap {trap}, {name}",
                    what=what,
                    trap=self.model.hauls[row].trap,
                    name=self._name(),
                )
            )
