"""A small table to type in: rows of text that are added, changed, taken out and put back."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.ui.parts import button
from planner.ui.tables import alignment
from planner.words import say

Row = tuple[str, ...]


class RowsEditor(QWidget):
    """Rows of text under headings; whoever shows it says what they mean.

    changed: after every change by the user. words: whether the last column holds sentences,
    which wrap, instead of figures.
    """

    changed = Signal()

    def __init__(self, name: str, add: str, columns: Sequence[str], words: bool = False) -> None:
        super().__init__()
        self._filling = False
        self._words = words
        self._removed: list[tuple[int, Row]] = []
        self.table = QTableWidget(0, len(columns))
        self.table.setAccessibleName(name)
        self.set_columns(columns)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setMinimumHeight(8 * self.fontMetrics().height())
        self.table.verticalHeader().hide()
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        wide = len(columns) - 1 if words else 0
        header.setSectionResizeMode(wide, QHeaderView.ResizeMode.Stretch)
        if words:
            rows = self.table.verticalHeader()
            rows.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.table.itemChanged.connect(lambda _: self._tell())
        self.add = button(add, self.add_row)
        self.remove = button(say("Take out"), self.remove_row, say("Take the chosen line out"))
        self.remove.setEnabled(False)
        self.table.currentCellChanged.connect(lambda row, *_: self.remove.setEnabled(row >= 0))
        self.back = button(say("Put back"), self.put_back, say("Put back the line taken out last"))
        self.back.setEnabled(False)
        self.buttons = QHBoxLayout()
        for each in (self.add, self.remove, self.back):
            self.buttons.addWidget(each)
        self.buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.table, 1)
        column.addLayout(self.buttons)

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show other rows; nothing can be put back any more."""
        self._removed.clear()
        self.back.setEnabled(False)
        self._filling = True
        self.table.setRowCount(0)
        for row in rows:
            self._insert(self.table.rowCount(), row)
        self._filling = False

    def set_columns(self, columns: Sequence[str]) -> None:
        """Change the headings, when the unit has changed."""
        for at, text in enumerate(columns):
            head = QTableWidgetItem(text)
            head.setTextAlignment(self._alignment(at))
            self.table.setHorizontalHeaderItem(at, head)

    def rows(self) -> list[Row]:
        """Return the rows that hold anything."""
        every = [self._row(at) for at in range(self.table.rowCount())]
        return [row for row in every if any(row)]

    def add_row(self) -> None:
        """Add an empty row at the end and begin typing in it."""
        at = self.table.rowCount()
        self._filling = True
        self._insert(at, ("",) * self.table.columnCount())
        self._filling = False
        self.table.setCurrentCell(at, 0)
        self.table.edit(self.table.currentIndex())

    def remove_row(self) -> None:
        """Take the chosen row out; it can be put back."""
        at = self.table.currentRow()
        if at < 0:
            return
        self._removed.append((at, self._row(at)))
        self.back.setEnabled(True)
        self.table.removeRow(at)
        self._tell()

    def put_back(self) -> None:
        """Put the row taken out last back where it was."""
        at, row = self._removed.pop()
        self.back.setEnabled(bool(self._removed))
        self._filling = True
        self._insert(min(at, self.table.rowCount()), row)
        self._filling = False
        self._tell()

    def _insert(self, at: int, row: Row) -> None:
        self.table.insertRow(at)
        for column, text in enumerate(row):
            item = QTableWidgetItem(text)
            item.setTextAlignment(self._alignment(column))
            self.table.setItem(at, column, item)

    def _alignment(self, column: int) -> Qt.AlignmentFlag:
        return alignment(column > 0 and not self._words)

    def _row(self, at: int) -> Row:
        items = [self.table.item(at, column) for column in range(self.table.columnCount())]
        return tuple(item.text().strip() if item is not None else "" for item in items)

    def _tell(self) -> None:
        if not self._filling:
            self.changed.emit()
