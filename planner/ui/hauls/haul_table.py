"""The haul table under the keyboard: Tab, Enter, arrows, digits, + and −, Delete, Ctrl+D."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QTableView,
    QWidget,
)

from planner.ui.hauls.haul_cells import COLUMNS
from planner.ui.hauls.haul_model import HaulModel
from planner.ui.hauls.typing_table import ENTER, CellEditor
from planner.words import say

KEYS_IN_WORDS = say(
    "Tab: next cell. Enter: next trap. Digits: type. + and −: five minutes. Delete: not "
    "recorded. Ctrl+D: as the trap above. Ctrl+Enter: add a trap. Ctrl+K: single crabs. "
    "Ctrl+C and Ctrl+V: cells to and from a spreadsheet. Ctrl+Tab: leave the table."
)
_MORE = (Qt.Key.Key_Plus, Qt.Key.Key_Equal)  # the same key, with and without shift
_LESS = (Qt.Key.Key_Minus, Qt.Key.Key_Underscore)
_AWAY = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)
_EDIT = Qt.ItemDataRole.EditRole
_KNOWN_WORDS = ("spot", "design", "bait", "other")


class HaulTable(QTableView):
    """Shows a HaulModel; cells are edited in place.

    words: gives what was written before in a column of text, to complete what is typed.
    """

    def __init__(self, model: HaulModel, words: Callable[[str], Sequence[str]]) -> None:
        super().__init__()
        self.hauls, self._words = model, words
        self._was_refused = False
        model.refused.connect(self._stay)
        self.setModel(model)
        self.setItemDelegate(CellEditor(self._known_words, self))
        self.setAccessibleName(say("Hauls of the trip, one row a trap"))
        self.setAccessibleDescription(KEYS_IN_WORDS)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
        )
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.horizontalHeader().setStretchLastSection(True)
        self.setTabKeyNavigation(True)
        self.setWordWrap(False)

    def chosen_cells(self) -> list[tuple[int, int]]:
        """Return row and column of the chosen cells, else of the current one."""
        cells = [(index.row(), index.column()) for index in self.selectedIndexes()]
        current = self.currentIndex()
        return cells or ([(current.row(), current.column())] if current.isValid() else [])

    def first_open_column(self) -> int:
        """Return where typing goes on in the first row: at the first count not recorded."""
        first = self.hauls.hauls[0]
        counts = (at for at, column in enumerate(COLUMNS) if column.kind == "count")
        return next((at for at in counts if getattr(first, COLUMNS[at].field) is None), 0)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        current = self.currentIndex()
        in_time = current.isValid() and COLUMNS[current.column()].kind == "time"
        control = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        if in_time and key in (*_MORE, *_LESS) and not control:
            self.hauls.nudge(self.chosen_cells(), 1 if key in _MORE else -1)
        elif key in _AWAY:
            self.hauls.type_into(self.chosen_cells(), "")
        elif key in ENTER and not control:
            self._go_down()
        elif event.matches(QKeySequence.StandardKey.Copy):
            self._copy()
        elif event.matches(QKeySequence.StandardKey.Paste):
            self._paste()
        elif control and key == Qt.Key.Key_D:
            self.hauls.copy_down(self.chosen_cells())
        elif control and key in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab):
            # The view's own would go from cell to cell.
            QWidget.focusNextPrevChild(self, key == Qt.Key.Key_Tab)
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        hints = QAbstractItemDelegate.EndEditHint
        moves = {
            hints.EditNextItem: QAbstractItemView.CursorAction.MoveNext,
            hints.EditPreviousItem: QAbstractItemView.CursorAction.MovePrevious,
        }
        # The next cell is chosen, not opened: + and − go on to work in it.
        super().closeEditor(editor, hints.NoHint)
        refused, self._was_refused = self._was_refused, False
        if refused:
            return  # the cell waits to be typed again
        if hint in moves:
            self.setCurrentIndex(self.moveCursor(moves[hint], Qt.KeyboardModifier.NoModifier))
        elif hint == hints.SubmitModelCache:
            self._go_down()

    def _copy(self) -> None:
        """Put the chosen cells on the clipboard as a spreadsheet does: tabs between them."""
        cells = self.chosen_cells()
        columns = sorted({column for _, column in cells})
        lines = (
            "\t".join(self.hauls.index(row, column).data(_EDIT) for column in columns)
            for row in sorted({row for row, _ in cells})
        )
        QGuiApplication.clipboard().setText("\n".join(lines))

    def _paste(self) -> None:
        """Take a block of cells from the clipboard; a single one goes into every chosen cell."""
        block = [line.split("\t") for line in QGuiApplication.clipboard().text().splitlines()]
        cells = self.chosen_cells()
        if not block or not cells:
            return
        if len(block) == len(block[0]) == 1:
            self.hauls.type_into(cells, block[0][0])
        else:
            self.hauls.paste(min(cells), block)

    def _known_words(self, column: int) -> Sequence[str]:
        field = COLUMNS[column].field
        return self._words(field) if field in _KNOWN_WORDS else ()

    def _stay(self, _sentence: str) -> None:
        self._was_refused = self.state() == QAbstractItemView.State.EditingState

    def _go_down(self) -> None:
        """Choose the same column of the next trap; from the last, the next column of the first."""
        current = self.currentIndex()
        if not current.isValid():
            return
        row, column = current.row() + 1, current.column()
        if row == self.hauls.rowCount():
            row, column = 0, (column + 1) % len(COLUMNS)
        self.setCurrentIndex(self.hauls.index(row, column))
