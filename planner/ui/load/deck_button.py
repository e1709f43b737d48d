"""The button that takes a trip on deck: a tally sheet to print, or a page for a phone."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from zoneinfo import ZoneInfo

from PySide6.QtCore import QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFileDialog, QMenu, QPushButton

from planner.errors import PlannerError
from planner.handouts.deck import DeckTrip, deck_trip
from planner.handouts.pdf_file import Paper
from planner.logbook import Haul
from planner.ui.hauls.haul_rows import zone_for
from planner.ui.load.papers import usual_paper
from planner.ui.workbench import Workbench
from planner.words import say

Rows = Callable[[], Sequence[Haul]]


class DeckButton(QPushButton):
    """Writes what the trip is tallied on; `rows` gives the trip's hauls as they are by then."""

    def __init__(
        self,
        bench: Workbench,
        rows: Rows,
        zones: Mapping[str, ZoneInfo | None] | None = None,
        paper: Callable[[], Paper] = usual_paper,
    ) -> None:
        super().__init__(say("To tally on deck"))
        self.bench, self._rows, self._paper = bench, rows, paper
        self._zones = zones if zones is not None else {}
        self.setToolTip(say("Take this trip's traps along, to count crabs on paper or on a phone"))
        menu = QMenu(self)
        self.sheet = menu.addAction(say("Tally sheet to print…"), self.save_sheet)
        self.page = menu.addAction(say("Tally page for a phone…"), self.save_page)
        self.setMenu(menu)

    def save_sheet(self) -> None:
        """Ask where, and write the sheet to print."""
        from planner.handouts.tally import tally_sheet
        from planner.handouts.tally_pdf import write_tally

        today, style, paper = self.bench.state.today, self.bench.state.style, self._paper()

        def write(trip: DeckTrip, path: Path) -> None:
            write_tally(tally_sheet(trip, today, style), path, paper)

        self._save(
            say("Save the tally sheet"),
            "pdf",
            say("PDF (*.pdf)"),
            write,
            say("Tally sheet written to {}. Print it from there."),
        )

    def save_page(self) -> None:
        """Ask where, and write the page that a phone opens without a network."""
        from planner.handouts.tally_page import tally_page
        from planner.whole_file import write_whole

        style = self.bench.state.style

        def write(trip: DeckTrip, path: Path) -> None:
            write_whole(path, tally_page(trip, style).encode())

        self._save(
            say("Save the tally page"),
            "html",
            say("Web page (*.html)"),
            write,
            say(
                "Tally page written to {}. Send that file to the phone and open it there, at "
                "home: it needs no network afterwards. What it counts comes back through Import "
                "in Log hauls."
            ),
        )

    def _save(
        self,
        asked: str,
        suffix: str,
        kinds: str,
        write: Callable[[DeckTrip, Path], None],
        said: str,
    ) -> None:
        trip = self._trip()
        if trip is None:
            return
        name = re.sub(r'[\\/:*?"<>|]', "-", f"{trip.place} {trip.name} tally")
        chosen, _ = QFileDialog.getSaveFileName(self, asked, f"{name}.{suffix}", kinds)
        if not chosen:
            return
        path = Path(chosen)

        def done(_: None) -> None:
            self.bench.notice.emit(said.format(path))
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

        self.bench.desk.start("tally", say("Writing the tally"), lambda _: write(trip, path), done)

    def _trip(self) -> DeckTrip | None:
        site, hauls = self.bench.site, self._rows()
        place = hauls[0].place if hauls else ""
        invented = site is not None and site.name == place and site.invented
        try:
            return deck_trip(hauls, zone_for(place, site, dict(self._zones)), invented=invented)
        except PlannerError as error:
            self.bench.trouble.emit(str(error))
            return None
