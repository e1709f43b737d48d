"""Lanes that show an outlook: moon, water, fullness, outcomes, free days; they only draw."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any, Final

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPainterPath, QPen, QPolygonF

from planner.clock import from_utc64
from planner.estimates import Floats
from planner.ui import theme
from planner.ui.strip.canvas import Canvas, Lane
from planner.ui.strip.days import Catch, TripMark, place_of

if TYPE_CHECKING:
    from planner.trips import Outlook

_ALIKE_SIZE: Final = 3.0  # trips of other days, smaller than those of their own
_NUMBERS_FROM_PX: Final = 16  # narrower columns have no room for two digits
_DISCS_FROM_PX: Final = 15
_APART_PX: Final = 2.0  # points of a line, at least
_THIN_PX: Final = 4  # narrower days are drawn with thin lines, which are drawn much faster
_HATCH: Final = Qt.BrushStyle.BDiagPattern


class OutlookLane(Lane):
    """A lane that shows an outlook."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self.outlook: Outlook | None = None

    def show_outlook(self, outlook: Outlook | None) -> None:
        """Show another outlook, or none."""
        self.outlook = outlook
        self.update()

    def span(self, canvas: Canvas) -> range:
        """Return the indices of the outlook's days in view."""
        if self.outlook is None:
            return range(0)
        start = place_of(self.outlook.days[0])
        return range(
            max(0, canvas.first - start), min(len(self.outlook.days), canvas.last - start + 1)
        )

    def start(self) -> int:
        """Return the place of the outlook's first day."""
        assert self.outlook is not None
        return place_of(self.outlook.days[0])


class MoonLane(OutlookLane):
    """A disc a day where there is room, else the principal phases."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self._phases: list[tuple[int, int]] = []

    def show_outlook(self, outlook: Outlook | None) -> None:
        self._phases = []
        if outlook is not None:
            found, zone = outlook.phases, outlook.site.zone
            self._phases = [
                (place_of(from_utc64(instant).astimezone(zone).date()), int(kind))
                for instant, kind in zip(found.times, found.kinds, strict=True)
            ]
        super().show_outlook(outlook)

    def draw(self, canvas: Canvas) -> None:
        if self.outlook is None:
            return
        start, radius = self.start(), canvas.height / 2 - 4
        sky = self.outlook.sky
        if canvas.width >= _DISCS_FROM_PX:
            radius = min(radius, canvas.width / 2 - 2)
            for index in self.span(canvas):
                centre = QPointF(canvas.x(start + index + 0.5), canvas.height / 2)
                lit, age = float(sky.illuminated[index]), float(sky.lunar_age_d[index])
                self.disc(canvas.painter, centre, radius, lit, age < 14.77)
            return
        principal = canvas.width * 29.5 >= 60
        for place, kind in self._phases:
            if (not principal and kind != 2) or (kind in (1, 3) and canvas.width * 29.5 < 120):
                continue
            if canvas.first <= place <= canvas.last:
                centre = QPointF(canvas.x(place + 0.5), canvas.height / 2)
                lit = {0: 0.0, 1: 0.5, 2: 1.0, 3: 0.5}[kind]
                size = radius if principal else min(radius, 3.0)
                self.disc(canvas.painter, centre, size, lit, kind == 1)

    def disc(
        self, painter: QPainter, centre: QPointF, radius: float, lit: float, waxing: bool
    ) -> None:
        """Draw the moon as seen from the place: lit on the right when waxing, north of the tropic.

        South of the equator the lit side is the other one.
        """
        colours = theme.current()
        assert self.outlook is not None
        bright = QColor("#f7efd2") if not colours.dark else QColor("#f2e7bf")
        shade = QColor("#59626b") if not colours.dark else QColor("#3c464e")
        painter.setPen(QPen(QColor(colours.quiet), 1))
        painter.setBrush(QBrush(shade))
        painter.drawEllipse(centre, radius, radius)
        if lit < 0.01:
            return
        right = waxing == (self.outlook.site.latitude_deg >= 0)
        box = QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius)
        path = QPainterPath()
        path.moveTo(centre.x(), centre.y() - radius)
        path.arcTo(box, 90, -180 if right else 180)
        # The edge of the light is half an ellipse, on the dark side before half moon.
        bulge = (2 * lit - 1) * radius * (-1 if right else 1)
        inner = QRectF(centre.x() - abs(bulge), centre.y() - radius, 2 * abs(bulge), 2 * radius)
        path.arcTo(inner, 270, 180 if bulge > 0 else -180)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(bright))
        painter.drawPath(path)


class WaterLane(OutlookLane):
    """From each day's lowest to its highest water; the ramp's level as a dashed line."""

    def draw(self, canvas: Canvas) -> None:
        span = self.span(canvas)
        if self.outlook is None or not span:
            return
        colours, painter, start = theme.current(), canvas.painter, self.start()
        low = float(np.min(self.outlook.lowest_m))
        high = float(np.max(self.outlook.highest_m))
        room = canvas.height - 8
        scale = room / max(high - low, 1e-6)

        def y(level_m: Any) -> Any:
            return 4 + (high - level_m) * scale

        at = slice(span.start, span.stop)
        tops = line_of(canvas, start, span, y(self.outlook.highest_m[at]), np.minimum)
        feet = line_of(canvas, start, span, y(self.outlook.lowest_m[at]), np.maximum)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.water_fill))
        painter.drawPolygon(QPolygonF(tops + feet[::-1]))
        painter.setPen(QPen(QColor(colours.water), 1.4 if canvas.width > _THIN_PX else 1))
        painter.drawPolyline(QPolygonF(tops))
        painter.drawPolyline(QPolygonF(feet))
        ramp = self.outlook.site.lowest_ramp_level_m
        if ramp is not None:
            painter.setPen(QPen(QColor(colours.caution), 1, Qt.PenStyle.DashLine))
            painter.drawLine(
                QPointF(canvas.x(canvas.first), y(ramp)),
                QPointF(canvas.x(canvas.last + 1), y(ramp)),
            )


class FullnessLane(OutlookLane):
    """Expected fullness as colour, the number in the cell when there is room."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self._image: QImage | None = None

    def show_outlook(self, outlook: Outlook | None) -> None:
        self._image = None
        if outlook is not None:
            fullness = np.clip(outlook.forecast.fullness.mean, 0, 1)
            table = np.array(theme.fullness_table(), dtype=np.uint32)
            cells = np.ascontiguousarray(table[np.rint(fullness * 100).astype(int)])
            self._image = QImage(
                cells.tobytes(), cells.size, 1, cells.size * 4, QImage.Format.Format_RGB32
            ).copy()
        super().show_outlook(outlook)

    def draw(self, canvas: Canvas) -> None:
        if self.outlook is None or self._image is None:
            return
        painter, start = canvas.painter, self.start()
        days = len(self.outlook.days)
        inner = canvas.height - 4
        painter.drawImage(
            QRectF(canvas.x(start), 2, days * canvas.width, inner),
            self._image,
            QRectF(0, 0, days, 1),
        )
        if canvas.width < 5:
            return
        fullness = self.outlook.forecast.fullness
        cells = [(index, canvas.cell(start + index, 2, inner)) for index in self.span(canvas)]
        numbers = [min(max(round(100 * float(fullness.mean[i])), 0), 100) for i, _ in cells]
        for (index, cell), number in zip(cells, numbers, strict=True):
            if fullness.high[index] - fullness.low[index] > theme.UNSURE_WIDTH:
                ink = theme.ink_of_fullness(number)
                painter.fillRect(cell, QBrush(theme.colour(ink.name(), 90), _HATCH))
        painter.setPen(QPen(QColor(theme.current().panel), 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRects([cell for _, cell in cells])
        if canvas.has_room(_NUMBERS_FROM_PX):
            canvas.font(0 if canvas.has_room(21) else -1.5)
            for (_, cell), number in zip(cells, numbers, strict=True):
                painter.setPen(theme.ink_of_fullness(number))
                painter.drawText(cell, Qt.AlignmentFlag.AlignCenter, str(number))


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
        painter.setPen(QPen(QColor(colours.forecast), 1.6 if canvas.width > _THIN_PX else 1))
        painter.drawPolyline(QPolygonF(means))


def line_of(canvas: Canvas, start: int, span: range, y: Floats, joined: np.ufunc) -> list[QPointF]:
    """Return a line through the middles of days; where days are narrow, through groups of them.

    y: pixels of every day of the span. joined: which of a group is drawn, the least or greatest;
    their mean for `np.add`. No two points are nearer than two pixels: the eye sees no more.
    """
    many = max(1, round(_APART_PX / canvas.width))
    begins = np.arange(0, len(span), many)
    ends = np.minimum(begins + many, len(span))
    found = joined.reduceat(y, begins)
    if joined is np.add:
        found = found / (ends - begins)
    x = (start + span.start + (begins + ends) / 2) * canvas.width
    return [QPointF(*point) for point in zip(x.tolist(), found.tolist(), strict=True)]


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


class DaysLane(OutlookLane):
    """The user's free days underlined, closed days crossed."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        # Days that follow on each other, as (first index, index after the last).
        self._free: list[tuple[int, int]] = []
        self._closed: list[tuple[int, int]] = []

    def show_outlook(self, outlook: Outlook | None) -> None:
        if outlook is not None:
            closed = np.array([bool(why) for why in outlook.why_closed])
            busy = np.array([bool(why) for why in outlook.why_not_free])
            self._closed, self._free = _runs(closed), _runs(~closed & ~busy)
        super().show_outlook(outlook)

    def draw(self, canvas: Canvas) -> None:
        if self.outlook is None:
            return
        colours, painter, span = theme.current(), canvas.painter, self.span(canvas)
        painter.setPen(QPen(QColor(colours.closed), 1.4))
        for cell in self._cells(canvas, self._closed, span):
            inner = cell.adjusted(3, 4, -3, -4) if canvas.width > 12 else cell
            painter.drawLine(inner.topLeft(), inner.bottomRight())
            painter.drawLine(inner.bottomLeft(), inner.topRight())
        painter.setPen(QPen(QColor(colours.free), 3, c=Qt.PenCapStyle.FlatCap))
        y, gap = canvas.height - 4, 2 if canvas.width > 12 else 0
        # One call for all: there are thousands where ten years are in view.
        painter.drawLines(
            [
                QLineF(cell.left() + gap, y, cell.right() - gap, y)
                for cell in self._cells(canvas, self._free, span)
            ]
        )

    def _cells(
        self, canvas: Canvas, runs: Sequence[tuple[int, int]], span: range
    ) -> Iterator[QRectF]:
        """Yield each day in view; where days are narrow, each run of days as one."""
        for first, after in runs:
            if after <= span.start or first >= span.stop:
                continue
            if canvas.width > _THIN_PX:
                for index in range(max(first, span.start), min(after, span.stop)):
                    yield canvas.cell(self.start() + index)
            else:
                left = canvas.cell(self.start() + first)
                yield left.united(canvas.cell(self.start() + after - 1))


def _runs(marked: NDArray[np.bool_]) -> list[tuple[int, int]]:
    """Return where marked days begin and end, each as (first index, index after the last)."""
    edges = np.flatnonzero(np.diff(np.concatenate([[False], marked, [False]]).astype(np.int8)))
    return [(int(first), int(after)) for first, after in edges.reshape(-1, 2)]
