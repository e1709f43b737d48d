"""Haul tables in and out: import with every problem listed, export of the whole log."""

from __future__ import annotations

from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import Final
from zoneinfo import ZoneInfo

from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QWidget

from planner.errors import PlannerError
from planner.logbook import Change, LogError, book_zone, export_table
from planner.ui.import_problems import ImportProblems
from planner.ui.parts import button
from planner.ui.workbench import Workbench

_TABLES: Final = "Haul tables (*.csv);;All files (*)"


class LogFiles(QWidget):
    """The two buttons beneath the list of trips."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.import_ = button("Import a haul table…", self.import_table)
        self.export = button("Export the log…", self.export_log)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.import_)
        row.addWidget(self.export)

    def _zone_of(self, place: str) -> ZoneInfo | None:
        site = self.bench.site
        return site.zone if site is not None and site.name == place else book_zone(place)

    def import_table(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, "Import a haul table", "", _TABLES)
        if path:
            self._take_in(path, skip_bad=False)

    def _take_in(self, path: str, skip_bad: bool) -> None:
        self.bench.change_log(
            lambda book: book.import_table(
                path, self._zone_of, skip_bad=skip_bad, now=datetime.now(UTC)
            ),
            partial(self._taken_in, path),
            partial(self._not_taken_in, path),
        )

    def _taken_in(self, path: str, change: Change | None) -> None:
        added = 0 if change is None else change.added
        name = Path(path).name
        self.bench.notice.emit(
            f"{name}: {added} hauls added. Undo in the Edit menu takes them out again."
            if added
            else f"{name}: nothing added; every haul in it is in the log already."
        )

    def _not_taken_in(self, path: str, error: PlannerError) -> None:
        if not isinstance(error, LogError):
            self.bench.trouble.emit(str(error))
            return
        dialog = ImportProblems(error, self)
        dialog.take_good.connect(lambda: self._take_in(path, skip_bad=True))
        dialog.open()

    def export_log(self) -> None:
        path, _ = QFileDialog.getSaveFileName(self, "Export the log", "hauls.csv", _TABLES)
        if not path:
            return
        log = self.bench.log
        self.bench.desk.start(
            "export",
            "Writing the log",
            lambda _: export_table(log, path, self._zone_of),
            lambda _: self.bench.notice.emit(f"{len(log.hauls)} hauls written to {path}."),
        )
