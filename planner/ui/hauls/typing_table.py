"""Tables that are typed into: a line to type in, completed from known words, and Enter at once."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import (
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QCompleter,
    QHeaderView,
    QLineEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_AWAY = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)

Words = Callable[[int], Sequence[str]]


class CellEditor(QStyledItemDelegate):
    """A line to type in; words: gives what a column is completed from, none for no completion."""

    def __init__(self, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        self._words = words

    def createEditor(
        self,
        parent: QWidget,
        _option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> QWidget:
        line = QLineEdit(parent)
        line.setFrame(False)
        heading = index.model().headerData(index.column(), Qt.Orientation.Horizontal)
        line.setAccessibleName(str(heading))
        words = self._words(index.column())
        if words:
            completer = QCompleter(list(words), line)
            completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            line.setCompleter(completer)
        return line

    def eventFilter(self, editor: QObject, event: QEvent) -> bool:
        """Take Enter at once: Qt would let it through to the table and close the editor later."""
        entered = isinstance(event, QKeyEvent) and event.key() in ENTER
        if entered and event.type() == QEvent.Type.KeyPress and isinstance(editor, QWidget):
            self.commitData.emit(editor)
            self.closeEditor.emit(editor, self.EndEditHint.SubmitModelCache)
            return True
        return super().eventFilter(editor, event)


class TypingTable(QTableView):
    """Rows told from left to right: Tab and Enter go on, Delete empties, Ctrl+Delete removes.

    remove_row: emitted with the row that the user wants gone.
    """

    remove_row = Signal(int)

    def __init__(self, model: QAbstractTableModel, name: str, words: Words) -> None:
        super().__init__()
        self.setModel(model)
        self.setItemDelegate(CellEditor(words, self))
        self.setAccessibleName(name)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed | triggers.EditKeyPressed | triggers.DoubleClicked
        )
        self.setTabKeyNavigation(True)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, current = event.key(), self.currentIndex()
        control = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        if key in _AWAY and control:
            self.remove_row.emit(current.row())
        elif key in _AWAY:
            self.model().setData(current, "")
        elif key in ENTER:
            self._go_on()
        elif control and key in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab):
            QWidget.focusNextPrevChild(self, key == Qt.Key.Key_Tab)
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        hints = QAbstractItemDelegate.EndEditHint
        super().closeEditor(editor, hints.NoHint)
        if hint in (hints.EditNextItem, hints.SubmitModelCache):
            self._go_on()

    def _go_on(self) -> None:
        move = QAbstractItemView.CursorAction.MoveNext
        self.setCurrentIndex(self.moveCursor(move, Qt.KeyboardModifier.NoModifier))
