"""The backups of the log, and the way back to one of them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QFileDialog, QHBoxLayout, QVBoxLayout, QWidget

from planner.logbook import Backup, Change
from planner.logbook.backups import backup_folder
from planner.phrasing import date_text
from planner.ui.parts import button, enter_presses_nothing, open_at, quiet
from planner.ui.tables import RowsModel, rows_table
from planner.ui.workbench import Workbench
from planner.words import say


class BackupsDialog(QDialog):
    """Lists the backups of the open log; going back makes a backup of today's first."""

    def __init__(self, bench: Workbench, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Backups of the log"))
        open_at(self, 560, 400)
        self.bench = bench
        self._backups: Sequence[Backup] = ()
        self._rows = RowsModel((say("Made"), say("Why"), say("Size")), numbers=(2,), parent=self)
        self.table = rows_table(
            self._rows,
            say("Backups of the log, newest first"),
            wide=1,
            empty=say("No backup yet. The first is made on the next day of use."),
        )
        self.words = quiet()
        self.words.setMinimumWidth(500)
        self.back = button(
            say("Go back to this one"), self._go_back, say("Today's log is backed up first")
        )
        self.other = button(
            say("Another file…"), self._choose_file, say("A backup that you keep elsewhere")
        )
        self.close_ = button(say("Close"), self.reject)
        row = QHBoxLayout()
        for each in (self.back, self.other, self.close_):
            row.addWidget(each)
        column = QVBoxLayout(self)
        column.addWidget(self.words)
        column.addWidget(self.table, 1)
        column.addLayout(row)
        enter_presses_nothing(self)
        self.refresh()

    def refresh(self) -> None:
        """Show the backups there are."""
        book = self.bench.book
        may = book is not None and not book.read_only
        for each in (self.back, self.other):
            each.setEnabled(may)
        if book is None:
            self.words.setText(say("This log is shown from a file that Fullshell does not change."))
            return
        self.words.setText(
            say(
                "A backup is made on each day of use, and before anything that changes "
                "the whole log. Going back first makes a backup of the log as it is now, "
                "so that you can return. They are in {backup_folder}: copy that folder "
                "elsewhere now and then.",
                backup_folder=backup_folder(book.path),
            )
        )
        self.bench.clerk.start("backups", "", lambda _: _sized(book.backups()), self._show)

    def _show(self, found: Sequence[tuple[Backup, int]]) -> None:
        self._backups = [backup for backup, _ in found]
        self._rows.show(
            [
                (
                    made_text(b.at),
                    b.why or say("day of use"),
                    say("{size:.1f} MB", size=size / 1000000.0),
                )
                for b, size in found
            ]
        )
        if found:
            self.table.selectRow(0)
        self.back.setEnabled(self.back.isEnabled() and bool(found))

    def _go_back(self) -> None:
        row = self.table.currentIndex().row()
        if 0 <= row < len(self._backups):
            self._restore(str(self._backups[row].path))

    def _choose_file(self) -> None:
        path, _ = QFileDialog.getOpenFileName(
            self, say("Go back to a backup"), "", say("Logs (*.logbook)")
        )
        if path:
            self._restore(path)

    def _restore(self, path: str) -> None:
        def done(_: Change | None) -> None:
            self.bench.notice.emit(
                say(
                    "The log is again what the backup holds. What it was until now is the newest "
                    "backup, should you want it back."
                )
            )

        self.bench.change_log(lambda book: book.restore(path), done)
        self.accept()


def made_text(at: datetime) -> str:
    """Return "24 Nov 2026 22:30" for an instant, by the clock of this computer."""
    here = at.astimezone()
    return f"{date_text(here)} {here:%H:%M}"


def _sized(backups: Sequence[Backup]) -> list[tuple[Backup, int]]:
    return [(backup, backup.path.stat().st_size) for backup in backups if backup.path.exists()]
