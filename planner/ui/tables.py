"""Tables of ready-made text, and a chart that can be read as a table instead."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLabel,
    QPushButton,
    QSizePolicy,
    QStackedLayout,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.ui.parts import quiet
from planner.ui.theme import SPACE
from planner.words import say

Index = QModelIndex | QPersistentModelIndex
NOWHERE = QModelIndex()
_FITTED_ROWS = 40
# A table asks for eight roles of every cell; to look up their names in Qt each time would be felt.
_SIDE = Qt.ItemDataRole.TextAlignmentRole
_TEXTS = frozenset(
    (
        Qt.ItemDataRole.DisplayRole,
        Qt.ItemDataRole.AccessibleTextRole,
        Qt.ItemDataRole.ToolTipRole,
    )
)
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class TextModel(QAbstractTableModel):
    """Cells of text under headings; columns named in `numbers` stand to the right.

    Each kind says how many rows it has and what a cell says, which is asked for only when it is
    seen.
    """

    def __init__(
        self,
        columns: Sequence[str],
        numbers: Sequence[int] = (),
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._columns, self._numbers = tuple(columns), frozenset(numbers)

    @abstractmethod
    def _count(self) -> int: ...

    @abstractmethod
    def _cell(self, row: int, column: int) -> str: ...

    def rowCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else self._count()

    def columnCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal:
            return None
        if role == _SIDE:
            return self._alignment(section)
        return self._columns[section] if role == Qt.ItemDataRole.DisplayRole else None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role in _TEXTS:
            return self._cell(index.row(), index.column())
        return self._alignment(index.column()) if role == _SIDE else None

    def _alignment(self, column: int) -> Qt.AlignmentFlag:
        return alignment(column in self._numbers)


class RowsModel(TextModel):
    """Rows of ready-made text."""

    _rows: Sequence[Sequence[str]] = ()

    def show(self, rows: Sequence[Sequence[str]], columns: Sequence[str] | None = None) -> None:
        """Show other rows, under other headings when the units have changed."""
        self.beginResetModel()
        self._rows = tuple(rows)
        self._columns = self._columns if columns is None else tuple(columns)
        self.endResetModel()

    def _count(self) -> int:
        return len(self._rows)

    def _cell(self, row: int, column: int) -> str:
        return self._rows[row][column]


def alignment(figures: bool) -> Qt.AlignmentFlag:
    """Return where a cell's text stands: figures at the right, words at the left."""
    return _RIGHT if figures else _LEFT


class _MeasuredOnce(QTableView):
    """Keeps how wide its columns and how high its rows are to be, until something changes that.

    While a table comes up Qt asks for each of them three times over.
    """

    def __init__(self, model: QAbstractTableModel) -> None:
        super().__init__()
        self._widths: dict[int, int] = {}
        self._heights: dict[int, int] = {}
        self._seen: tuple[QSize, int] | None = None
        # Before the view and its headers follow the model: they may ask at once.
        for changed in (
            model.modelReset,
            model.dataChanged,
            model.rowsInserted,
            model.rowsRemoved,
            model.layoutChanged,
        ):
            changed.connect(self._forget)
        self.horizontalHeader().sectionResized.connect(self._forget_heights)
        self.setModel(model)

    def sizeHintForColumn(self, column: int) -> int:
        # Of a long table Qt measures what is seen, and some rows more.
        seen = (self.size(), self.rowAt(0))
        if seen != self._seen:
            self._seen = seen
            self._forget()
        if column not in self._widths:
            self._widths[column] = super().sizeHintForColumn(column)
        return self._widths[column]

    def sizeHintForRow(self, row: int) -> int:
        at = row if self.wordWrap() else 0  # lines are all of one height
        if at not in self._heights:
            self._heights[at] = super().sizeHintForRow(at)
        return self._heights[at]

    def changeEvent(self, event: QEvent) -> None:
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._forget()
        super().changeEvent(event)

    def _forget(self) -> None:
        self._widths.clear()
        self._heights.clear()

    def _forget_heights(self) -> None:
        # Words are wrapped at the width of their column.
        self._heights.clear()


def rows_table(
    model: QAbstractTableModel,
    name: str,
    wide: int | None = None,
    empty: str = "",
    *,
    wraps: bool = True,
) -> QTableView:
    """Return a read-only table of a model; the column `wide` takes the room that is left.

    empty: what the table says while it has no row. wraps: whether long words go on in another
    line; where they are short by nature, one row is measured for all.
    """
    table = _MeasuredOnce(model)
    table.setAccessibleName(name)
    table.setWordWrap(wraps)
    table.setShowGrid(False)
    table.setAlternatingRowColors(True)
    table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    table.setTabKeyNavigation(False)
    table.verticalHeader().hide()
    header = table.horizontalHeader()
    header.setHighlightSections(False)
    header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
    header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    if wide is None:
        header.setStretchLastSection(True)
    else:
        header.setSectionResizeMode(wide, QHeaderView.ResizeMode.Stretch)

    def fit_rows() -> None:
        # To fit hundreds of rows to their words would keep the window waiting; long tables are
        # of short words, and what is cut short is told by the pointer.
        few = model.rowCount() <= _FITTED_ROWS
        mode = QHeaderView.ResizeMode.ResizeToContents if few else QHeaderView.ResizeMode.Fixed
        table.verticalHeader().setSectionResizeMode(mode)

    header.setResizeContentsPrecision(_FITTED_ROWS)
    model.modelReset.connect(fit_rows)
    fit_rows()
    if empty:
        say_when_empty(table, empty)
    return table


def say_when_empty(table: QTableView, text: str) -> None:
    """Let a table without rows say what will stand there, and the step that brings it."""
    words = quiet(text)
    words.setAlignment(Qt.AlignmentFlag.AlignCenter)
    words.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    QVBoxLayout(table.viewport()).addWidget(words)
    _WhileEmpty(words, table.model())


class _WhileEmpty(QObject):
    """Shows words while a model has no row; goes with the words, which the model may outlive."""

    def __init__(self, words: QLabel, model: QAbstractItemModel) -> None:
        super().__init__(words)
        self._words, self._model = words, model
        for changed in (model.modelReset, model.rowsInserted, model.rowsRemoved):
            changed.connect(self._follow)
        self._follow()

    def _follow(self) -> None:
        self._words.setVisible(self._model.rowCount() == 0)


def show_whole(table: QTableView) -> None:
    """Make a table as high as its rows, which are few by nature."""
    rows, header = table.verticalHeader(), table.horizontalHeader()

    def fit() -> None:
        # One row at least, so that an empty table is seen to be one.
        height = max(rows.length(), rows.defaultSectionSize())
        table.setFixedHeight(height + header.sizeHint().height() + 2 * table.frameWidth())

    rows.geometriesChanged.connect(fit)
    table.model().modelReset.connect(fit)
    fit()


class ChartWithTable(QWidget):
    """A chart, and at the press of a button the same facts as a table.

    flipped: after the one has taken the place of the other.
    """

    flipped = Signal()

    def __init__(self, chart: QWidget, table: QWidget) -> None:
        super().__init__()
        self.chart, self.table = chart, table
        self.button = QPushButton()
        self.button.setToolTip(say("The same facts in rows and columns, and back"))
        self.button.clicked.connect(self._flip)
        # The chart says how high both are; a long table scrolls.
        table.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self._stack = QStackedLayout()
        self._stack.addWidget(chart)
        self._stack.addWidget(table)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addLayout(self._stack, 1)
        column.addWidget(self.button, alignment=Qt.AlignmentFlag.AlignRight)
        self._name_button()

    @property
    def as_table(self) -> bool:
        """Whether the table is shown."""
        return self._stack.currentWidget() is self.table

    def _flip(self) -> None:
        self._stack.setCurrentWidget(self.chart if self.as_table else self.table)
        self._name_button()
        self.flipped.emit()

    def _name_button(self) -> None:
        """Let the button say what it leads to: a pressed one would hardly be told from another."""
        chart = self.chart.accessibleName()
        if self.as_table:
            self.button.setText(say("As a picture"))
            self.button.setAccessibleName(say("{chart} as a picture", chart=chart))
        else:
            self.button.setText(say("As a table"))
            self.button.setAccessibleName(say("{chart} as a table", chart=chart))
