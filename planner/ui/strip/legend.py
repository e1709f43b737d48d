"""What the colours and marks of the strip mean, drawn small under it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import Final, NamedTuple

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QLinearGradient,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from planner.ui import theme
from planner.ui.strip.catch_lane import draw_mark
from planner.words import say

_GAP: Final = 13  # between entries
_EDGE: Final = 8
_FILLING: Final = say("filling", sense="middle of the scale of fullness")


class _Entry(NamedTuple):
    """Words before a mark, the mark (its width and how it is drawn), words after it.

    The mark is drawn into a box that is as wide as the mark and as high as the line.
    """

    before: str
    width: float
    draw: Callable[[QPainter, QRectF], None]
    after: str


class Legend(QWidget):
    """The fixed scale of fullness in words, hatching, marks, free and closed days.

    One line where there is room, more where there is not.
    """

    def __init__(self) -> None:
        super().__init__()
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setAccessibleName(
            say(
                "Legend: pale is light, middle is filling, deep blue is full; hatched is unsure; "
                "logged trips are open circles when light, half filled when mixed, filled when "
                "full; "
                "small ones at the chosen day are past trips like it; "
                "free days are underlined, closed days crossed; the dashed line is the ramp's limit"
            )
        )

    def sizeHint(self) -> QSize:
        return QSize(600, self.heightForWidth(max(self.width(), 600)))

    def heightForWidth(self, width: int) -> int:
        *_, last = self._flow(width)
        return round(last[1] + self._line_height() + 4)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._font())
        # At its mark in every script: mirrored, the words would lie out of the picture.
        painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        metrics, height = QFontMetricsF(self._font()), self._line_height()
        for x, y, entry in self._flow(self.width()):
            lead = metrics.horizontalAdvance(entry.before)
            mark = QRectF(x + lead, y, entry.width, height)
            entry.draw(painter, mark)
            painter.setPen(QColor(theme.current().quiet))
            line = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
            painter.drawText(QRectF(x, y, lead, height), line, entry.before)
            after = QRectF(mark.right(), y, self.width(), height)
            painter.drawText(after, line, entry.after)
        painter.end()

    def _font(self) -> QFont:
        return theme.smaller(self.font())

    def _line_height(self) -> float:
        return QFontMetricsF(self._font()).height() + 6

    def _flow(self, width: float) -> Iterator[tuple[float, float, _Entry]]:
        """Return where each entry begins, in lines no longer than a width."""
        metrics = QFontMetricsF(self._font())
        x, y = float(_EDGE), 2.0
        for entry in self._entries(metrics):
            long = metrics.horizontalAdvance(entry.before + entry.after) + entry.width
            if x > _EDGE and x + long > width - _EDGE:
                x, y = float(_EDGE), y + self._line_height()
            yield x, y, entry
            x += long + _GAP

    def _entries(self, metrics: QFontMetricsF) -> Iterator[_Entry]:
        scale = 3 * metrics.horizontalAdvance(_FILLING)
        yield _Entry(say("Fullness: light "), scale, _draw_scale, say(" full"))
        yield _Entry("", 18, _draw_unsure, say(" unsure"))
        for catch, words in (
            ("full", say(" logged full")),
            ("mixed", say(" mixed")),
            ("light", say(" light (from 1 in 4)")),
        ):
            yield _Entry("", 10, partial(_draw_catch, catch), words)
        yield _Entry("", 14, _draw_alike, say(" trips like this day"))
        yield _Entry("", 18, _draw_free, say(" free day"))
        yield _Entry("", 10, _draw_closed, say(" closed"))
        yield _Entry("", 18, _draw_ramp, say(" ramp limit"))


def _draw_scale(painter: QPainter, box: QRectF) -> None:
    bar = box.adjusted(0, 2, 0, -2)
    ramp = QLinearGradient(bar.topLeft(), bar.topRight())
    for share in (0.0, 0.25, 0.5, 0.75, 1.0):
        ramp.setColorAt(share, theme.fullness_colour(share))
    painter.fillRect(bar, QBrush(ramp))
    painter.setPen(QPen(QColor(theme.current().line), 1))
    painter.drawRect(bar)
    # The word lies on a third of the scale; its ink suits the middle of it.
    painter.setPen(theme.ink_on(theme.fullness_colour(0.5)))
    painter.drawText(bar, Qt.AlignmentFlag.AlignCenter, _FILLING)


def _draw_unsure(painter: QPainter, box: QRectF) -> None:
    ground = theme.fullness_colour(0.8)
    ink = theme.colour(theme.ink_on(ground).name(), 120)
    small = box.adjusted(0, 3, 0, -3)
    painter.fillRect(small, ground)
    painter.fillRect(small, QBrush(ink, Qt.BrushStyle.BDiagPattern))


def _draw_catch(catch: str, painter: QPainter, box: QRectF) -> None:
    draw_mark(painter, box.center(), 4.5, catch)


def _draw_alike(painter: QPainter, box: QRectF) -> None:
    for x, catch in ((3.0, "full"), (11.0, "light")):
        draw_mark(painter, QPointF(box.left() + x, box.center().y()), 3.0, catch)


def _draw_free(painter: QPainter, box: QRectF) -> None:
    painter.setPen(QPen(QColor(theme.current().free), 3))
    y = box.center().y() + 4
    painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y))


def _draw_closed(painter: QPainter, box: QRectF) -> None:
    painter.setPen(QPen(QColor(theme.current().closed), 1.4))
    middle = box.center().y()
    cross = QRectF(box.left(), middle - 5, 10, 10)
    painter.drawLine(cross.topLeft(), cross.bottomRight())
    painter.drawLine(cross.bottomLeft(), cross.topRight())


def _draw_ramp(painter: QPainter, box: QRectF) -> None:
    painter.setPen(QPen(QColor(theme.current().caution), 1, Qt.PenStyle.DashLine))
    y = box.center().y()
    painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y))
