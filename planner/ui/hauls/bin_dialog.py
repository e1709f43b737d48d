"""The bin: what was deleted, to put back or to let go of."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QMessageBox, QVBoxLayout, QWidget

from planner.logbook import Binned
from planner.phrasing import date_text
from planner.ui.parts import button, enter_presses_nothing, open_at, quiet
from planner.ui.tables import RowsModel, rows_table
from planner.ui.workbench import Workbench
from planner.words import counted, say

_NOTHING = say("The bin is empty. Deleted trips and traps would wait here until you empty it.")


class BinDialog(QDialog):
    """Lists the bin of the open log; nothing leaves it but by these buttons."""

    def __init__(self, bench: Workbench, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Bin of the log"))
        open_at(self, 560, 380)
        self.bench = bench
        self._binned: tuple[Binned, ...] = ()
        self._rows = RowsModel(
            (say("What"), say("Hauls"), say("Deleted")), numbers=(1, 2), parent=self
        )
        self.table = rows_table(
            self._rows, say("Deleted trips and hauls, newest first"), wide=0, empty=_NOTHING
        )
        self.words = quiet(
            say("Deleted trips and traps wait here, with all they held, until you empty the bin.")
        )
        self.words.setMinimumWidth(500)
        self.back = button(
            say("Put back"), self._put_back, say("Back into the log, with all it held")
        )
        self.empty = button(say("Empty the bin…"), self._empty)
        self.close_ = button(say("Close"), self.reject)
        row = QHBoxLayout()
        for each in (self.back, self.empty, self.close_):
            row.addWidget(each)
        column = QVBoxLayout(self)
        column.addWidget(self.words)
        column.addWidget(self.table, 1)
        column.addLayout(row)
        for each in (self.back, self.empty):
            each.setEnabled(False)
        enter_presses_nothing(self)
        bench.log_changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Show what the bin holds now."""
        book = self.bench.book
        if book is None:
            return
        self.bench.clerk.start("bin", "", lambda _: book.binned(), self._show)

    def _show(self, binned: tuple[Binned, ...]) -> None:
        self._binned = binned
        self._rows.show([(each.name, str(each.hauls), date_text(each.at)) for each in self._binned])
        if binned and not self.table.currentIndex().isValid():
            self.table.selectRow(0)
        self.words.setVisible(bool(binned))
        may = bool(binned) and self.bench.book is not None and not self.bench.book.read_only
        self.back.setEnabled(may)
        self.empty.setEnabled(may)

    def _put_back(self) -> None:
        row = self.table.currentIndex().row()
        if 0 <= row < len(self._binned):
            number = self._binned[row].number
            self.bench.change_log(lambda book: book.take_out_of_bin(number))

    def _empty(self) -> None:
        buttons = QMessageBox.StandardButton
        answer = QMessageBox.question(
            self,
            say("Empty the bin"),
            say(
                "Let go of {entries} for good?",
                entries=counted(len(self._binned), "deleted entry", "deleted entries"),
            ),
            buttons.Yes | buttons.No,
            buttons.No,
        )
        if answer == buttons.Yes:
            self.bench.change_log(lambda book: book.empty_bin())
