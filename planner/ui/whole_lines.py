"""A column of words that scrolls, and never shows half a line at its edges."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout

from planner.ui.parts import Page, on_ground, set_margins, show_through
from planner.ui.theme import SPACE


class WholeLines(QScrollArea):
    """Scrolls labels downwards; a line that does not fit whole is covered.

    words: the column to fill.
    """

    def __init__(self, name: str) -> None:
        super().__init__()
        self._inside = Page()
        self.words = QVBoxLayout(self._inside)
        set_margins(self.words, 0, 0, SPACE, 0)
        self.words.setSpacing(SPACE // 2)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidget(self._inside)
        show_through(self)
        self.setAccessibleName(name)
        self._covers = tuple(QFrame(self) for _ in range(2))
        for cover in self._covers:
            on_ground(cover, "panel")
            cover.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        # Labels get their places after the column has got its own.
        self._later = QTimer(self, singleShot=True, interval=0)
        self._later.timeout.connect(self.cover_halves)
        self.verticalScrollBar().valueChanged.connect(lambda _: self.cover_halves())
        self.verticalScrollBar().setSingleStep(self.fontMetrics().lineSpacing())
        self._inside.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.Resize, QEvent.Type.LayoutRequest):
            self._later.start()
        return super().eventFilter(watched, event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._later.start()

    def cover_halves(self) -> None:
        """Cover the lines that the upper and the lower edge cut through."""
        height, width = self.viewport().height(), self.viewport().width()
        head, foot = 0, height
        for top, bottom in self._lines():
            if top < 0 < bottom:
                head = max(head, bottom)
            if top < height < bottom:
                foot = min(foot, top)
        upper, lower = self._covers
        at = self.viewport().pos()
        upper.setGeometry(at.x(), at.y(), width, head)
        lower.setGeometry(at.x(), at.y() + foot, width, height - foot)
        for cover, tall in ((upper, head), (lower, height - foot)):
            cover.setVisible(tall > 0)
            cover.raise_()

    def _lines(self) -> list[tuple[int, int]]:
        """Return the top and the bottom of each line of words, from the viewport's top."""
        lines = []
        for label in self._inside.findChildren(QLabel):
            if label.isHidden():
                continue
            top = label.mapTo(self._inside, label.contentsRect().topLeft()).y()
            top -= self.verticalScrollBar().value()
            high = label.fontMetrics().lineSpacing()
            count = max(1, round(label.contentsRect().height() / high))
            lines += [(top + i * high, top + (i + 1) * high) for i in range(count)]
        return lines
