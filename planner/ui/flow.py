"""A row that goes on in the next line where the window is narrow or the font large."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget

from planner.ui.theme import SPACE


class Flow(QLayout):
    """Lays widgets out like words: side by side, in as many lines as they need."""

    def __init__(self, *widgets: QWidget) -> None:
        super().__init__()
        self.setContentsMargins(0, 0, 0, 0)
        self._items: list[QLayoutItem] = []
        for widget in widgets:
            self.addWidget(widget)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._place(QRect(0, 0, width, 0), move=False)

    def sizeHint(self) -> QSize:
        widths = [item.sizeHint().width() for item in self._shown()]
        heights = [item.sizeHint().height() for item in self._shown()]
        gaps = SPACE // 2 * max(len(widths) - 1, 0)
        return QSize(sum(widths) + gaps, max(heights, default=0))

    def minimumSize(self) -> QSize:
        sizes = [item.minimumSize() for item in self._shown()]
        widest = max((size.width() for size in sizes), default=0)
        return QSize(widest, max((size.height() for size in sizes), default=0))

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._place(rect, move=True)

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _place(self, rect: QRect, move: bool) -> int:
        """Put the items into lines of a width, and return the height of all lines."""
        gap = SPACE // 2
        x, y, line = rect.x(), rect.y(), 0
        for item in self._shown():
            size = item.sizeHint()
            if x > rect.x() and x + size.width() > rect.x() + rect.width():
                x, y, line = rect.x(), y + line + gap, 0
            if move:
                width = min(size.width(), rect.width())
                item.setGeometry(QRect(QPoint(x, y), QSize(width, size.height())))
            x, line = x + size.width() + gap, max(line, size.height())
        return y + line - rect.y()
