"""The checklist on screen: one card a category, each item with its box."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QWidget

from planner.handouts import Item, Section
from planner.ui import theme
from planner.ui.load.kept_column import KeptColumn, line_gap, words_column
from planner.ui.parts import Card, caution, plain, quiet
from planner.ui.theme import SPACE
from planner.words import say

_BASIS = {
    "rule": say("a rule you entered for this place"),
    "plan": say("worked out for this plan"),
    "practice": say("common practice"),
}


class TickBox(QCheckBox):
    """A box whose edge and tick keep their contrast in both themes, as the style's do not."""

    def sizeHint(self) -> QSize:
        side = self.fontMetrics().height() + 2
        return QSize(side, side)

    def hitButton(self, _pos: QPoint) -> bool:
        return True

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = theme.current()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        edge = colours.accent if self.hasFocus() else colours.quiet
        painter.setPen(QPen(QColor(edge), 2 if self.hasFocus() else 1))
        painter.setBrush(QColor(colours.ground))
        painter.drawRoundedRect(box, 3, 3)
        if self.isChecked():
            painter.setPen(QPen(QColor(colours.text), max(box.width() / 7, 1.5)))
            at = [(0.22, 0.52), (0.42, 0.74), (0.80, 0.26)]
            points = [box.topLeft() + QPointF(x * box.width(), y * box.height()) for x, y in at]
            painter.drawPolyline(QPolygonF(points))


class CheckLine(QWidget):
    """A box with text that wraps beside it; the text can be clicked as well.

    ticked: emitted with the item's key and whether the user ticked it.
    """

    ticked = Signal(str, bool)

    def __init__(self) -> None:
        super().__init__()
        self.key = ""
        self.box = TickBox()
        self.box.clicked.connect(self._clicked)
        self._words: QLabel = plain()
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE)
        row.addWidget(self.box, alignment=Qt.AlignmentFlag.AlignTop)
        row.addWidget(self._words, 1)

    def tell(self, content: tuple[Item, bool]) -> None:
        """Stand for an item, ticked or not."""
        item, ticked = content
        self.key = item.key
        self.box.setChecked(ticked)
        self.box.setAccessibleName(item.text)
        self.box.setAccessibleDescription(_BASIS[item.basis])
        self.setToolTip(_BASIS[item.basis].capitalize())
        self._words.setText(item.text)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self.rect().contains(event.position().toPoint()):
            self.box.click()
        event.accept()

    def _clicked(self, on: bool) -> None:
        self.ticked.emit(self.key, on)


class SectionCard(Card):
    """One category; ticked: emitted with an item's key and whether the user ticked it."""

    ticked = Signal(str, bool)

    def __init__(self) -> None:
        super().__init__()
        self._cautions = words_column(caution)
        self._items = KeptColumn(self._new_line, CheckLine.tell)
        self._notes = words_column(quiet)
        for column in (self._cautions, self._items, self._notes):
            self.column.addLayout(column)

    @property
    def lines(self) -> list[CheckLine]:
        """The lines to tick, from the top."""
        return self._items.lines

    @property
    def stops(self) -> list[QWidget]:
        """Where Tab stops, from the top."""
        return [line.box for line in self.lines]

    def tell(self, section: Section, ticks: frozenset[str]) -> None:
        """Show a category; what it has in common with the one shown before stays in its place."""
        self.heading.setText(section.name)
        self.heading.setVisible(True)
        self._cautions.fill(enumerate(f"⚠ {text}" for text in section.cautions))
        self._items.fill((item.key, (item, item.key in ticks)) for item in section.items)
        self._notes.fill(enumerate(section.notes))
        self.show()

    def make_room(self, roomy: bool) -> None:
        """Put air between the lines to tick, or no longer."""
        for column in (self.column, self._items):
            column.setSpacing(line_gap(roomy))

    def _new_line(self) -> CheckLine:
        line = CheckLine()
        line.ticked.connect(self.ticked)
        return line
