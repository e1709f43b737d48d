"""Forecast and outcome on one scale: the share of full crabs of each day and each trip."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any, Final

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from planner.ui import theme
from planner.ui.strip.canvas import Canvas
from planner.ui.strip.days import Catch, TripMark, place_of
from planner.ui.strip.outlook_lane import THIN_PX, OutlookLane, line_of

_ALIKE_SIZE: Final = 3.0  # trips of other days, smaller than those of their own


class CatchLane(OutlookLane):
    """The share of full crabs: forecast as a band, and the trips' outcomes on the same scale."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self.marks: Sequence[TripMark] = ()
        self._alike: tuple[int, Sequence[tuple[float, Catch]]] = (0, ())

    def show_marks(self, marks: Sequence[TripMark]) -> None:
        """Show other trips."""
        self.marks = marks
        self.update()

    def show_alike(self, day: date, marks: Sequence[tuple[float, Catch]]) -> None:
        """Show share of full crabs and kind of catch of past trips like a day, at that day."""
        self._alike = (place_of(day), marks)
        self.update()

    def draw(self, canvas: Canvas) -> None:
        painter = canvas.painter
        room = canvas.height - 14

        def y(share: float) -> float:
            return 7 + (1 - share) * room

        self._scale(canvas, y)
        if self.outlook is not None:
            self._band(canvas, y)
        size = 5.0 if canvas.width >= 8 else 4.0
        for mark in self.marks:
            if not canvas.first <= mark.x <= canvas.last + 1:
                continue
            x = canvas.x(mark.x)
            if mark.full_share is None:
                painter.setPen(QPen(QColor(theme.current().logged), 1.5))
                painter.drawLine(QPointF(x - 4, y(0)), QPointF(x + 4, y(0)))
                continue
            if canvas.width >= 2:
                painter.setPen(QPen(theme.colour(theme.current().logged, 150), 1.2))
                painter.drawLine(
                    QPointF(x, y(mark.full_share.low)), QPointF(x, y(mark.full_share.high))
                )
            draw_mark(painter, QPointF(x, y(mark.full_share.mean)), size, mark.catch)
        self._draw_alike(canvas, y)

    def _draw_alike(self, canvas: Canvas, y: Any) -> None:
        """Draw them small and side by side, nearest first, so that none covers another."""
        place, marks = self._alike
        step = max(canvas.width / (len(marks) + 1), 2 * _ALIKE_SIZE)
        left = canvas.x(place + 0.5) - step * (len(marks) - 1) / 2
        for i, (share, catch) in enumerate(marks):
            draw_mark(canvas.painter, QPointF(left + i * step, y(share)), _ALIKE_SIZE, catch)

    def _scale(self, canvas: Canvas, y: Any) -> None:
        painter = canvas.painter
        painter.setPen(QPen(QColor(theme.current().line), 1, Qt.PenStyle.DotLine))
        for share in (0.0, 0.5, 1.0):
            painter.drawLine(
                QPointF(canvas.x(canvas.first), y(share)),
                QPointF(canvas.x(canvas.last + 1), y(share)),
            )

    def _band(self, canvas: Canvas, y: Any) -> None:
        assert self.outlook is not None
        colours, painter, start = theme.current(), canvas.painter, self.start()
        light = self.outlook.forecast.light_share
        span = self.span(canvas)
        if not span:
            return
        at = slice(span.start, span.stop)
        tops = line_of(canvas, start, span, y(1 - light.low[at]), np.minimum)
        feet = line_of(canvas, start, span, y(1 - light.high[at]), np.maximum)
        means = line_of(canvas, start, span, y(1 - light.mean[at]), np.add)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.forecast_band))
        painter.drawPolygon(QPolygonF(tops + feet[::-1]))
        painter.setPen(QPen(QColor(colours.forecast), 1.6 if canvas.width > THIN_PX else 1))
        painter.drawPolyline(QPolygonF(means))


def draw_mark(painter: QPainter, centre: QPointF, size: float, catch: str) -> None:
    """Draw a trip: a filled disc for full, an open one for light, half filled between."""
    colours = theme.current()
    painter.setPen(QPen(QColor(colours.logged), 1.8))
    painter.setBrush(QColor(colours.logged if catch == "full" else colours.panel))
    painter.drawEllipse(centre, size, size)
    if catch == "mixed":
        box = QRectF(centre.x() - size, centre.y() - size, 2 * size, 2 * size)
        painter.setBrush(QColor(colours.logged))
        painter.drawPie(box, 180 * 16, 180 * 16)
