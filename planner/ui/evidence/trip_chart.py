"""Judged trips over the moon or over the year, on the model's band where there is one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF, Signal
from PySide6.QtGui import QPainterPath, QResizeEvent

from planner.estimates import Floats
from planner.molt.evidence_types import Curve
from planner.ui import theme
from planner.ui.charts import Chart
from planner.ui.evidence.trip_points import TripPoint, point_text
from planner.words import say

_NEAR_PX: Final = 18
_GAP_PX: Final = 4
_TOP: Final = 1.03  # of the highest thing drawn


@dataclass(frozen=True)
class Points:
    """What a chart of trips shows: where each trip stands, x of shape (n,), and a band below.

    top: the share up to which the axis reaches at least, for charts to be compared.
    """

    trips: Sequence[TripPoint]
    x: Floats
    curve: Curve | None = None
    top: float = 0.1


class TripChart(Chart):
    """Light crabs of 100 by trip: open marks light, filled ones full, half filled mixed.

    pointed: the trip under the mouse, in words; "" when there is none.
    """

    pointed = Signal(str)
    least_lines = 8

    def __init__(self, name: str, ticks: Sequence[tuple[float, str]], span: float) -> None:
        super().__init__(name)
        self.stand_still()
        self._ticks, self._span = list(ticks), span
        self._shown: Points | None = None
        self.scene().sigMouseMoved.connect(self._point)

    def show_points(self, points: Points) -> None:
        """Show other trips."""
        self._shown = points
        colours = theme.current()
        self.clear()
        self.setLabel("left", say("light crabs of 100 judged"), color=colours.text)
        self.getAxis("bottom").setTicks([self._ticks])
        highest = points.top
        if points.curve is not None:
            highest = max(highest, float(points.curve.light_share.high.max()))
            self._band(points.curve)
        if points.trips:
            highest = max(highest, *(trip.light.high for trip in points.trips))
            self._bars(points)
            self._marks(points)
        self._take_width()
        foot = -4 if points.trips else 0  # half a mark stands below zero
        self.box.setYRange(foot, 100 * min(highest * _TOP, 1.05), padding=0.01)
        self.setAccessibleDescription(
            say("{trips} judged trips; the table lists them", trips=len(points.trips))
        )

    def redraw(self) -> None:
        if self._shown is not None:
            self.show_points(self._shown)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if getattr(self, "_shown", None):
            self._take_width()

    def _take_width(self) -> None:
        """Leave as much beside the first and last tick as half their words take."""
        letters = self.fontMetrics()
        beside = max(letters.horizontalAdvance(self._ticks[at][1]) for at in (0, -1)) / 2 + _GAP_PX
        between = max(self.box.width() - 2 * beside, 1.0)
        self.box.setXRange(0, self._span, padding=max(0.05, beside / between))

    def _band(self, curve: Curve) -> None:
        colours, x, band = theme.current(), curve.x_d, curve.light_share
        low, high = (pg.PlotCurveItem(x, 100 * edge) for edge in (band.low, band.high))
        fill = pg.FillBetweenItem(low, high, brush=theme.colour(colours.forecast_band, 150))
        fill.setZValue(theme.Z_BAND)
        self.addItem(fill)
        self.plot(x, 100 * band.mean, pen=pg.mkPen(colours.forecast, width=2))

    def _bars(self, points: Points) -> None:
        ends = np.array([[100 * t.light.low, 100 * t.light.high] for t in points.trips])
        pen = pg.mkPen(theme.colour(theme.current().logged, 150), width=1.2)
        self.plot(np.repeat(points.x, 2), ends.ravel(), connect="pairs", pen=pen)

    def _marks(self, points: Points) -> None:
        colours = theme.current()
        sizes = np.array([mark_size(trip.judged) for trip in points.trips])
        y = np.array([100 * trip.light.mean for trip in points.trips])
        filled = [trip.catch == "full" for trip in points.trips]
        marks = pg.ScatterPlotItem(
            points.x,
            y,
            size=sizes,
            pen=pg.mkPen(colours.logged, width=1.8),
            brush=[pg.mkBrush(colours.logged if full else colours.panel) for full in filled],
        )
        marks.setZValue(theme.Z_MARK)
        self.addItem(marks)
        mixed = np.array([trip.catch == "mixed" for trip in points.trips])
        if mixed.any():
            halves = pg.ScatterPlotItem(
                points.x[mixed],
                y[mixed],
                size=sizes[mixed],
                symbol=_lower_half(),
                pen=pg.mkPen(None),
                brush=pg.mkBrush(colours.logged),
            )
            halves.setZValue(theme.Z_MARK + 1)
            self.addItem(halves)

    def _point(self, at: QPointF) -> None:
        if self._shown is None or not self._shown.trips:
            return
        view = self.box
        pixels = [
            view.mapViewToScene(QPointF(x, 100 * trip.light.mean))
            for x, trip in zip(self._shown.x, self._shown.trips, strict=True)
        ]
        apart = [(each - at).manhattanLength() for each in pixels]
        nearest = int(np.argmin(apart))
        near = apart[nearest] <= _NEAR_PX
        self.pointed.emit(point_text(self._shown.trips[nearest]) if near else "")


def mark_size(judged: int) -> float:
    """Return the diameter of a trip's mark in pixels: area by crabs judged, within limits."""
    return float(np.clip(2.2 * np.sqrt(judged), 6.0, 22.0))


def _lower_half() -> QPainterPath:
    path = QPainterPath()
    path.moveTo(-0.5, 0)
    path.arcTo(QRectF(-0.5, -0.5, 1, 1), 180, 180)
    path.closeSubpath()
    return path
