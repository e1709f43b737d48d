"""The backups of the log, and the way back to one of them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QFileDialog, QHBoxLayout, QVBoxLayout, QWidget

from planner.logbook import Backup, Change
from planner.logbook.backups import backup_folder
from planner.ui.parts import button, enter_presses_nothing, quiet
from planner.ui.tables import RowsModel, rows_table
from planner.ui.workbench import Workbench


class BackupsDialog(QDialog):
    """Lists the backups of the open log; going back makes a backup of today's first."""

    def __init__(self, bench: Workbench, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle("Backups of the log")
        self.resize(560, 400)
        self.bench = bench
        self._backups: Sequence[Backup] = ()
        self._rows = RowsModel(("Made (UTC)", "Why", "Size"), numbers=(2,), parent=self)
        self.table = rows_table(self._rows, "Backups of the log, newest first", wide=1)
        self.words = quiet()
        self.words.setMinimumWidth(500)
        self.back = button("Go back to this one", self._go_back)
        self.other = button("Another file…", self._choose_file, "A backup that you keep elsewhere")
        self.close_ = button("Close", self.reject)
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
            self.words.setText("This log is shown from a file that Fullshell does not change.")
            return
        self.words.setText(
            "A backup is made on each day of use, and before anything that changes the whole log. "
            "Going back first makes a backup of the log as it is now, so that you can return. "
            f"They are in {backup_folder(book.path)}: copy that folder elsewhere now and then."
        )
        self.bench.clerk.start("backups", "", lambda _: _sized(book.backups()), self._show)

    def _show(self, found: Sequence[tuple[Backup, int]]) -> None:
        self._backups = [backup for backup, _ in found]
        self._rows.show(
            [
                (f"{b.at.day} {b.at:%b %Y %H:%M}", b.why or "day of use", f"{size / 1e6:.1f} MB")
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
        path, _ = QFileDialog.getOpenFileName(self, "Go back to a backup", "", "Logs (*.logbook)")
        if path:
            self._restore(path)

    def _restore(self, path: str) -> None:
        def done(_: Change | None) -> None:
            self.bench.notice.emit(
                "The log is again what the backup holds. What it was until now is the newest "
                "backup, should you want it back."
            )

        self.bench.change_log(lambda book: book.restore(path), done)
        self.accept()


def _sized(backups: Sequence[Backup]) -> list[tuple[Backup, int]]:
    return [(backup, backup.path.stat().st_size) for backup in backups if backup.path.exists()]
