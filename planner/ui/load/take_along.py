"""What is taken along of a trip: sheet, tally, and files for calendar, plotter and table."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QComboBox, QFileDialog, QWidget

from planner.handouts import (
    TripFacts,
    calendar_file,
    no_positions,
    trip_sheet,
    water_csv,
    waypoints_gpx,
)
from planner.handouts.pdf_file import Paper
from planner.logbook import Haul
from planner.ui.flow import Flow, labelled
from planner.ui.load.deck_button import DeckButton
from planner.ui.load.deck_rows import planned_rows
from planner.ui.load.papers import usual_paper
from planner.ui.load.text import trip_key
from planner.ui.parts import button
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.whole_file import write_whole
from planner.words import say


class TakeAlong(QWidget):
    """Buttons that write files of the trip that is shown by then; facts: gives that trip."""

    def __init__(self, bench: Workbench, facts: Callable[[], TripFacts | None]) -> None:
        super().__init__()
        self.bench, self.state, self._facts = bench, bench.state, facts
        self.paper = QComboBox()
        self.paper.addItems([say("Letter"), "A4"])
        self.paper.setAccessibleName(say("Paper of the sheets"))
        self.paper.setCurrentIndex(0 if usual_paper() == "letter" else 1)
        self.sheet = button(
            say("Print or save trip sheet…"),
            self._save_sheet,
            say("One page to take along, as a PDF"),
        )
        self.on_deck = DeckButton(bench, self._deck_rows, paper=self._chosen_paper)
        self.calendar = button(
            say("Calendar…"),
            self._save_calendar,
            say("Check, set and haul with alarms, for any calendar"),
        )
        self.waypoints = button(
            say("Waypoints…"),
            self._save_waypoints,
            say("The spots with their traps, for a plotter (GPX)"),
        )
        self.water = button(
            say("Water table…"),
            self._save_water,
            say("The water at each spot every ten minutes (CSV)"),
        )
        files = (self.calendar, self.waypoints, self.water)
        self.setLayout(Flow(labelled(say("Paper"), self.paper), self.sheet, self.on_deck, *files))

    def _chosen_paper(self) -> Paper:
        return "A4" if self.paper.currentIndex() else "letter"

    def _deck_rows(self) -> tuple[Haul, ...]:
        facts = self._facts()
        if facts is None:
            return ()
        return planned_rows(self.bench.log, facts.site, facts.plan, facts.traps)

    # -- writing -----------------------------------------------------------------------------

    def _save_sheet(self) -> None:
        from planner.handouts.sheet_pdf import write_sheet

        facts, today, style = self._facts(), self.state.today, self.state.style
        paper = self._chosen_paper()
        if facts is None:
            return
        path = self._ask(facts, say("Save the trip sheet"), "pdf", say("PDF (*.pdf)"))
        if path is None:
            return

        def work(_: Checkpoint) -> None:
            write_sheet(trip_sheet(facts, today, style), path, paper)

        def done(_: None) -> None:
            self.bench.notice.emit(
                say("Trip sheet written to {path}. Print it from there.", path=path)
            )
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

        self.bench.desk.start("sheet", say("Writing the trip sheet"), work, done)

    def _save_calendar(self) -> None:
        style, now = self.state.style, datetime.now(UTC)
        self._write(
            say("Save the calendar file"),
            "ics",
            say("Calendar (*.ics)"),
            lambda facts: calendar_file(facts.site, facts.plan, style, now),
        )

    def _save_waypoints(self) -> None:
        facts, style, now = self._facts(), self.state.style, datetime.now(UTC)
        if facts is not None and all(spot.latitude_deg is None for spot in facts.site.spots):
            self.bench.notice.emit(no_positions(facts.site))
            return
        self._write(
            say("Save the waypoints"),
            "gpx",
            say("Waypoints (*.gpx)"),
            lambda facts: waypoints_gpx(facts, style, now),
        )

    def _save_water(self) -> None:
        style = self.state.style
        self._write(
            say("Save the water"),
            "csv",
            say("Table (*.csv)"),
            lambda facts: water_csv(facts.site, facts.plan, style).encode(),
        )

    def _write(
        self, asked: str, suffix: str, kinds: str, content: Callable[[TripFacts], bytes]
    ) -> None:
        facts = self._facts()
        path = None if facts is None else self._ask(facts, asked, suffix, kinds)
        if facts is None or path is None:
            return
        self.bench.desk.start(
            f"write {suffix}",
            say("Writing"),
            lambda _: write_whole(path, content(facts)),
            lambda _: self.bench.notice.emit(say("Written to {path}.", path=path)),
        )

    def _ask(self, facts: TripFacts, asked: str, suffix: str, kinds: str) -> Path | None:
        trip = re.sub(r'[\\/:*?"<>|]', "-", trip_key(facts.site, facts.plan))
        path, _ = QFileDialog.getSaveFileName(self, asked, f"{trip}.{suffix}", kinds)
        return Path(path) if path else None
