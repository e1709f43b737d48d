"""A table whose columns take the width there is, and that never shows half a row."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTableView, QWidget

_LEAST_ROWS = 3
_COMFORT = 1.6  # times the usual height of a row
_PAD_PX = 2  # beside the text of a cell


class WideTable(QTableView):
    """Gives every column what its words need, and shares what is left among all but the first.

    Call `fill_width` when the rows have changed.
    """

    def __init__(self) -> None:
        super().__init__()
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.horizontalHeader().setHighlightSections(False)
        self._needed: list[int] = []  # the width of each column's words

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._needed:
            self._share_width()
        else:
            self.fill_width()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.fill_width()

    def fill_width(self) -> None:
        """Measure the words and share the width out again."""
        header = self.horizontalHeader()
        self._needed = [
            max(self.sizeHintForColumn(at) + _PAD_PX, header.sectionSizeHint(at))
            for at in range(header.count())
        ]
        self._share_width()

    def _share_width(self) -> None:
        spare = max(self.viewport().width() - sum(self._needed), 0)
        for at, width in enumerate(self._needed):
            share = spare // max(len(self._needed) - 1, 1) if at else 0
            self.setColumnWidth(at, width + share)


class WholeRows(QWidget):
    """Holds a table at a height that ends with a row."""

    def __init__(self, table: QTableView) -> None:
        super().__init__()
        self._table = table
        self._usual = table.verticalHeader().defaultSectionSize()
        table.setParent(self)
        table.model().modelReset.connect(self.fit)
        self.setMinimumHeight(self._height(_LEAST_ROWS))

    def sizeHint(self) -> QSize:
        return QSize(self._table.sizeHint().width(), self._height(self._table.model().rowCount()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()

    def fit(self) -> None:
        """Give the table as many rows as it has, or as there is room for."""
        most = max(self._table.model().rowCount(), _LEAST_ROWS)
        room = self.height() - self._height(0)
        # Rows take the height there is, up to a comfortable one.
        each = min(max(room // most, self._usual), round(_COMFORT * self._usual))
        self._table.verticalHeader().setDefaultSectionSize(each)
        rows = min(max(room // each, 1), most)
        # An empty height the layout may give to what stands below.
        self.setMaximumHeight(self._height(0) + most * round(_COMFORT * self._usual))
        self._table.setGeometry(0, 0, self.width(), self._height(rows))

    def _height(self, rows: int) -> int:
        frame = 2 * self._table.frameWidth()
        head = self._table.horizontalHeader().sizeHint().height()
        bar = self._table.horizontalScrollBar()
        under = bar.sizeHint().height() if bar.maximum() > 0 else 0
        return rows * self._table.verticalHeader().defaultSectionSize() + head + frame + under
