"""Tables and whole logs, in and out: import with a mapping step, export of everything."""

from __future__ import annotations

from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import Final
from zoneinfo import ZoneInfo

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QWidget

from planner.errors import PlannerError
from planner.intake import Mapping, read_grid
from planner.intake.grid import grid_of
from planner.logbook import Change, Log, book_zone, export_table, read_log
from planner.logbook.merging import Merged, merge
from planner.ui.hauls.intake_dialog import IntakeDialog
from planner.ui.hauls.intake_text import Offer, Read, first_offer, offer, taken_words
from planner.ui.hauls.merge_dialog import MergeDialog
from planner.ui.parts import button
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

_IN: Final = say("Tables and logs (*.csv *.txt *.tsv *.xlsx *.logbook);;All files (*)")
_OUT: Final = say("Haul table (*.csv);;Workbook (*.xlsx);;Whole log to keep or carry (*.logbook)")


class LogFiles(QWidget):
    """The buttons beneath the list of trips."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.import_ = button(
            say("Import…"), self.import_table, say("A table (CSV or XLSX) of any make")
        )
        self.paste = button(
            say("Paste"), self.paste_table, say("Take in the text that the tally page gave")
        )
        self.export = button(say("Export…"), self.export_log, say("CSV, XLSX, or all in one file"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        for each in (self.import_, self.paste, self.export):
            row.addWidget(each)

    def _zone_of(self, place: str) -> ZoneInfo | None:
        site = self.bench.site
        return site.zone if site is not None and site.name == place else book_zone(place)

    # -- in ----------------------------------------------------------------------------------

    def import_table(self) -> None:
        """Let the user pick a file, and show what taking it in would do."""
        path, _ = QFileDialog.getOpenFileName(self, say("Import a table"), "", _IN)
        if path.endswith(".logbook"):
            self.import_log(Path(path))
        elif path:
            self.import_file(Path(path))

    def import_file(self, path: Path) -> None:
        """Show what taking a file in would do."""
        self._understand(partial(read_grid, path))

    def paste_table(self) -> None:
        """Show what taking in the text of the clipboard would do."""
        raw = QGuiApplication.clipboard().text().encode("utf-8", "replace")
        self._understand(lambda _: grid_of(raw, say("pasted text")))

    def _understand(self, read: Read) -> None:
        """Understand a table; one of our own making without a fault is taken at once."""
        log, site, now = self.bench.log, self.bench.site, datetime.now(UTC)
        place = site.name if site is not None else ""

        def work(checkpoint: Checkpoint) -> Offer:
            return first_offer(read, log, self._zone_of, now, place, checkpoint)

        def done(made: Offer) -> None:
            if made.is_own:
                self._take_in(made)
            else:
                self._ask(made, read)

        self.bench.desk.start("intake", say("Reading the table"), work, done)

    def _ask(self, made: Offer, read: Read) -> None:
        dialog = IntakeDialog(made, self)
        dialog.changed.connect(partial(self._again, dialog, read))
        dialog.taken.connect(self._take_in)
        dialog.rejected.connect(lambda: self.bench.desk.stop("intake"))
        dialog.open()

    def _again(self, dialog: IntakeDialog, read: Read, mapping: Mapping) -> None:
        log, now, before = self.bench.log, datetime.now(UTC), dialog.offer

        def work(checkpoint: Checkpoint) -> Offer:
            grid = before.grid
            if mapping.encoding != before.mapping.encoding:
                grid = read(mapping.encoding)
            return offer(grid, mapping, log, self._zone_of, now, checkpoint)

        def failed(error: PlannerError) -> None:
            dialog.show_offer(before)
            self.bench.trouble.emit(str(error))

        self.bench.desk.start("intake", say("Reading the table"), work, dialog.show_offer, failed)

    def _take_in(self, made: Offer) -> None:
        source, hauls = made.grid.source, made.intake.hauls

        def done(change: Change | None) -> None:
            added, filled = (0, 0) if change is None else (change.added, change.filled)
            self.bench.notice.emit(taken_words(source, added, filled))

        self.bench.change_log(
            lambda book: book.add_hauls(hauls, say("import of {source}", source=source)), done
        )

    def import_log(self, path: Path) -> None:
        """Take a whole log over where there is none yet; else show what it has more."""
        book, here = self.bench.book, self.bench.log
        if book is None:
            return

        def work(_: Checkpoint) -> tuple[Log, Merged | None]:
            there = read_log(path, self._zone_of)
            # Nothing but what was deleted is something too.
            empty = not (here.by_trip or here.traps or book.binned())
            return there, None if empty else merge(here, there)

        def done(read: tuple[Log, Merged | None]) -> None:
            there, merged = read
            if merged is None:
                self._take_over(path)
            elif merged.adds or merged.differences:
                dialog = MergeDialog(path.name, merged, self._zone_of, self)
                dialog.accepted.connect(lambda: self._add_log(path.name, there))
                dialog.open()
            else:
                self.bench.notice.emit(taken_words(path.name, 0, 0))

        self.bench.desk.start("intake", say("Reading the log"), work, done)

    def _take_over(self, path: Path) -> None:
        self.bench.change_log(
            lambda book: book.restore(path),
            lambda _: self.bench.notice.emit(say("The log is what {name} holds.", name=path.name)),
        )

    def _add_log(self, name: str, there: Log) -> None:
        self.bench.change_log(
            lambda book: book.add_log(there, say("import of {source}", source=name)),
            lambda _: self.bench.notice.emit(
                say("{source} is taken in. Undo in the Edit menu takes it out again.", source=name)
            ),
        )

    # -- out ---------------------------------------------------------------------------------

    def export_log(self) -> None:
        """Let the user pick a name; its ending says in which form everything is written."""
        chosen, kind = QFileDialog.getSaveFileName(self, say("Export the log"), "hauls.csv", _OUT)
        if not chosen:
            return
        path = Path(chosen)
        if not path.suffix:
            path = path.with_suffix(
                next(s for s in (".xlsx", ".logbook", ".csv") if s in kind or s == ".csv")
            )
        log, book = self.bench.log, self.bench.book
        logbook = None if book is None else book.path
        self.bench.desk.start(
            "export",
            say("Writing the log"),
            lambda _: self._write(log, logbook, path),
            lambda _: self.bench.notice.emit(
                say("{hauls} hauls written to {path}.", hauls=len(log.hauls), path=path)
            ),
        )

    def _write(self, log: Log, logbook: Path | None, path: Path) -> None:
        if path.suffix.lower() == ".xlsx":
            from planner.logbook.workbook import export_workbook

            export_workbook(log, path, self._zone_of)
        elif path.suffix.lower() == ".logbook":
            from planner.logbook.portable import write_portable

            if logbook is None:
                raise PlannerError(say("This log is read from a table: export it as CSV or XLSX."))
            write_portable(logbook, path)
        else:
            export_table(log, path, self._zone_of)
