"""The haul table under the keyboard: Tab, Enter, arrows, digits, + and −, Delete, Ctrl+D."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QCompleter,
    QLineEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from planner.ui.haul_cells import COLUMNS
from planner.ui.haul_model import HaulModel

KEYS_IN_WORDS = (
    "Tab: next cell. Enter: next trap. Digits: type. + and −: five minutes. Delete: not "
    "recorded. Ctrl+D: as the trap above. Ctrl+Tab: leave the table."
)
_MORE = (Qt.Key.Key_Plus, Qt.Key.Key_Equal)  # the same key, with and without shift
_LESS = (Qt.Key.Key_Minus, Qt.Key.Key_Underscore)
_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_AWAY = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)
_KNOWN_WORDS = ("spot", "design", "bait", "other")


class HaulTable(QTableView):
    """Shows a HaulModel; cells are edited in place.

    words: gives what was written before in a column of text, to complete what is typed.
    """

    def __init__(self, model: HaulModel, words: Callable[[str], Sequence[str]]) -> None:
        super().__init__()
        self.hauls = model
        self._was_refused = False
        model.refused.connect(self._stay)
        self.setModel(model)
        self.setItemDelegate(_CellEditor(words, self))
        self.setAccessibleName("Hauls of the trip, one row a trap")
        self.setAccessibleDescription(KEYS_IN_WORDS)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
        )
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.setTabKeyNavigation(True)
        self.setWordWrap(False)

    def chosen_cells(self) -> list[tuple[int, int]]:
        """Return row and column of the chosen cells, else of the current one."""
        cells = [(index.row(), index.column()) for index in self.selectedIndexes()]
        current = self.currentIndex()
        return cells or ([(current.row(), current.column())] if current.isValid() else [])

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        current = self.currentIndex()
        in_time = current.isValid() and COLUMNS[current.column()].kind == "time"
        control = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        if in_time and key in (*_MORE, *_LESS) and not control:
            self.hauls.nudge(self.chosen_cells(), 1 if key in _MORE else -1)
        elif key in _AWAY:
            self.hauls.type_into(self.chosen_cells(), "")
        elif key in _ENTER:
            self._go_down()
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


class _CellEditor(QStyledItemDelegate):
    """A line to type in, completed from what the log already says."""

    def __init__(self, words: Callable[[str], Sequence[str]], parent: QWidget) -> None:
        super().__init__(parent)
        self._words = words

    def createEditor(
        self,
        parent: QWidget,
        _option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> QWidget:
        column = COLUMNS[index.column()]
        line = QLineEdit(parent)
        line.setFrame(False)
        line.setAccessibleName(column.heading)
        if column.field in _KNOWN_WORDS:
            completer = QCompleter(list(self._words(column.field)), line)
            completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            line.setCompleter(completer)
        return line

    def eventFilter(self, editor: QObject, event: QEvent) -> bool:
        """Take Enter at once: Qt would let it through to the table and close the editor later."""
        entered = isinstance(event, QKeyEvent) and event.key() in _ENTER
        if entered and event.type() == QEvent.Type.KeyPress and isinstance(editor, QWidget):
            self.commitData.emit(editor)
            self.closeEditor.emit(editor, self.EndEditHint.SubmitModelCache)
            return True
        return super().eventFilter(editor, event)
