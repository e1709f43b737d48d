"""What the colours and marks of the strip mean, drawn small under it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetrics, QLinearGradient, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from planner.ui import theme
from planner.ui.strip.outlook_lanes import draw_mark

_BAR_PX = 120
_GAP = 18


class Legend(QWidget):
    """One line: the fixed scale of fullness in words, hatching, marks, free and closed days."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(
            "Legend: pale is light, middle is filling, deep blue is full; hatched is unsure; "
            "logged trips are open circles when light, half filled when mixed, filled when full; "
            "free days are underlined, closed days crossed"
        )

    def sizeHint(self) -> QSize:
        return QSize(600, self.fontMetrics().height() + 10)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        font = self.font()
        font.setPointSizeF(max(6.5, font.pointSizeF() - 1))
        painter.setFont(font)
        x, middle = 8.0, self.height() / 2
        x = self._scale(painter, x, middle)
        box = QRectF(x, middle - 6, 18, 12)
        painter.fillRect(box, theme.fullness_colour(0.8))
        painter.fillRect(box, QBrush(QColor(255, 255, 255, 120), Qt.BrushStyle.BDiagPattern))
        x = self._words(painter, x + 24, middle, "unsure")
        for catch, words in (
            ("full", "logged full"),
            ("mixed", "mixed"),
            ("light", "light (1 in 4 or more)"),
        ):
            draw_mark(painter, QPointF(x + 5, middle), 4.5, catch)
            x = self._words(painter, x + 15, middle, words)
        colours = theme.current()
        painter.setPen(QPen(QColor(colours.free), 3))
        painter.drawLine(QPointF(x, middle + 4), QPointF(x + 16, middle + 4))
        x = self._words(painter, x + 21, middle, "free day")
        painter.setPen(QPen(QColor(colours.closed), 1.4))
        painter.drawLine(QPointF(x, middle - 5), QPointF(x + 10, middle + 5))
        painter.drawLine(QPointF(x, middle + 5), QPointF(x + 10, middle - 5))
        x = self._words(painter, x + 15, middle, "closed")
        painter.setPen(QPen(QColor(colours.caution), 1, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(x, middle), QPointF(x + 18, middle))
        self._words(painter, x + 23, middle, "ramp limit")
        painter.end()

    def _scale(self, painter: QPainter, x: float, middle: float) -> float:
        x = self._words(painter, x, middle, "Fullness: light", gap=6)
        bar = QRectF(x, middle - 6, _BAR_PX, 12)
        ramp = QLinearGradient(bar.topLeft(), bar.topRight())
        for share in (0.0, 0.25, 0.5, 0.75, 1.0):
            ramp.setColorAt(share, theme.fullness_colour(share))
        painter.fillRect(bar, QBrush(ramp))
        painter.setPen(QPen(QColor(theme.current().line), 1))
        painter.drawRect(bar)
        painter.setPen(theme.ink_on(theme.fullness_colour(0.5)))
        painter.drawText(bar, Qt.AlignmentFlag.AlignCenter, "filling")
        return self._words(painter, x + _BAR_PX + 6, middle, "full")

    def _words(
        self, painter: QPainter, x: float, middle: float, text: str, gap: float = _GAP
    ) -> float:
        metrics = QFontMetrics(painter.font())
        painter.setPen(QColor(theme.current().quiet))
        painter.drawText(QPointF(x, middle + metrics.ascent() / 2 - 1), text)
        return x + metrics.horizontalAdvance(text) + gap
