"""A row that goes on in the next line where the window is narrow or the font large."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLayout, QLayoutItem, QStyle, QWidget

from planner.ui.parts import set_margins
from planner.ui.theme import LINE_GAP, SPACE


class Flow(QLayout):
    """Lays widgets out like words: side by side, in as many lines as they need."""

    def __init__(self, *widgets: QWidget) -> None:
        super().__init__()
        self._items: list[QLayoutItem] = []
        self._heights: dict[int, int] = {}  # by width, until something changes
        self.setContentsMargins(0, 0, 0, 0)
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
        # While a view is put together Qt asks for the same again and again.
        if width not in self._heights:
            self._heights[width] = self._place(QRect(0, 0, width, 0), move=False)
        return self._heights[width]

    def invalidate(self) -> None:
        self._heights.clear()
        super().invalidate()

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
        gap, y = SPACE // 2, rect.y()
        for line in self._lines(rect.width()):
            # Each gets the height of its line, so that what is lower stands in its middle.
            x, height = rect.x(), max(item.sizeHint().height() for item in line)
            for item in line:
                width = min(item.sizeHint().width(), rect.width())
                if move:
                    item.setGeometry(self._mirrored(QRect(x, y, width, height), rect))
                x += width + gap
            y += height + gap
        return max(y - gap - rect.y(), 0)

    def _mirrored(self, place: QRect, rect: QRect) -> QRect:
        """Return a place counted from where a line of the script begins."""
        holder = self.parentWidget()
        return place if holder is None else QStyle.visualRect(holder.layoutDirection(), rect, place)

    def _lines(self, width: int) -> list[list[QLayoutItem]]:
        lines: list[list[QLayoutItem]] = []
        left = 0
        for item in self._shown():
            needed = item.sizeHint().width()
            if not lines or needed > left:
                lines.append([])
                left = width
            lines[-1].append(item)
            left -= needed + SPACE // 2
        return lines


def label_of(text: str, field: QWidget) -> QLabel:
    """Return the label of a field, to which its underlined letter leads."""
    label = QLabel(text)
    label.setBuddy(field)
    # An underlined letter is drawn wider than the label reckons: "To" would lose its end.
    label.setMinimumWidth(label.sizeHint().width() + LINE_GAP)
    return label


def labelled(text: str, field: QWidget, gap: int = 0) -> QWidget:
    """Return a field that stays beside its label wherever the line breaks.

    gap: pixels after it, before what follows in its line.
    """
    label = label_of(text, field)
    field.setAccessibleName(field.accessibleName() or text.replace("&", ""))
    pair = QWidget()
    row = QHBoxLayout(pair)
    set_margins(row, 0, 0, gap, 0)
    row.addWidget(label)
    row.addWidget(field)
    return pair
