"""The lanes of the strip: each draws the days in view, in pixels, and computes nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QImage, QPainter, QPainterPath, QPen, QPolygonF
from PySide6.QtWidgets import QApplication

from planner.ui import theme
from planner.ui.strip.days import TripMark, day_at, place_of

if TYPE_CHECKING:
    from planner.trips import Outlook

_NUMBERS_FROM_PX: Final = 16  # narrower columns have no room for two digits
_DISCS_FROM_PX: Final = 15
_DAY_LINES_FROM_PX: Final = 7
_MONTH_ROOM_PX: Final = 44
_EVER: Final = 40_000  # days either side of the origin: wider than any outlook


@dataclass
class Canvas:
    """Where a lane draws: x in pixels is `day * width`, y runs down from 0 to `height`."""

    painter: QPainter
    width: float
    height: float
    first: int
    last: int

    def x(self, place: float) -> float:
        """Return the pixel of a place on the strip."""
        return place * self.width

    def cell(self, place: int, top: float = 0.0, height: float | None = None) -> QRectF:
        """Return the rectangle of one day."""
        return QRectF(self.x(place), top, self.width, self.height if height is None else height)

    def font(self, points: float = 0.0, bold: bool = False) -> None:
        """Use the window's font, larger or smaller by some points."""
        font = QFont(QApplication.font())
        font.setPointSizeF(max(6.5, font.pointSizeF() + points))
        font.setBold(bold)
        self.painter.setFont(font)


class Lane(pg.GraphicsObject):  # type: ignore[misc]  # pyqtgraph has no types
    """A horizontal band of the strip; subclasses draw on a canvas."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__()
        self.top, self.height = top, height
        self.setZValue(theme.Z_CURVE)

    def boundingRect(self) -> QRectF:
        return QRectF(-_EVER, self.top, 2 * _EVER, self.height)

    def paint(self, painter: QPainter, *_: Any) -> None:
        view = self.getViewBox()
        if view is None:
            return
        first, last = view.viewRange()[0]
        scale = painter.transform()
        painter.save()
        painter.scale(1 / scale.m11(), 1 / scale.m22())
        painter.translate(0, self.top * scale.m22())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        height = self.height * scale.m22()
        painter.setClipRect(QRectF(first * scale.m11(), 0, (last - first) * scale.m11(), height))
        self.draw(Canvas(painter, scale.m11(), height, int(first) - 1, int(last) + 1))
        painter.restore()

    def draw(self, canvas: Canvas) -> None:
        """Draw the lane; the painter's state is restored afterwards."""
        raise TypeError(f"{type(self).__name__} draws nothing on {canvas}")


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


class GroundLane(Lane):
    """Behind all lanes: weekends, hairlines between days, months."""

    def __init__(self, top: float, height: float, breaks: Sequence[float]) -> None:
        super().__init__(top, height)
        self._breaks = breaks
        self.setZValue(theme.Z_GROUND)

    def draw(self, canvas: Canvas) -> None:
        colours, painter = theme.current(), canvas.painter
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        if canvas.width >= 3:
            for place in range(canvas.first, canvas.last + 1):
                if day_at(place).weekday() >= 5:
                    painter.fillRect(canvas.cell(place), QColor(colours.weekend))
        painter.setPen(QPen(QColor(colours.line), 1))
        for place in range(canvas.first, canvas.last + 1):
            day = day_at(place)
            month = day.day == 1 and (canvas.width >= 0.9 or day.month == 1)
            if month or canvas.width >= _DAY_LINES_FROM_PX:
                top = 0.0 if month else self._breaks[0]
                painter.drawLine(
                    QPointF(canvas.x(place), top), QPointF(canvas.x(place), canvas.height)
                )
        for y in self._breaks:
            painter.drawLine(
                QPointF(canvas.x(canvas.first), y), QPointF(canvas.x(canvas.last + 1), y)
            )


class DateLane(Lane):
    """Months and years; days and weekdays when there is room."""

    def __init__(self, top: float, height: float, today: date) -> None:
        super().__init__(top, height)
        self.today = place_of(today)

    def draw(self, canvas: Canvas) -> None:
        colours, painter = theme.current(), canvas.painter
        half = canvas.height / 2
        self._months(canvas, half)
        if canvas.width < 16:
            return
        for place in range(canvas.first, canvas.last + 1):
            day = day_at(place)
            today = place == self.today
            canvas.font(-1, bold=today)
            painter.setPen(QColor(colours.accent if today else colours.quiet))
            text = f"{day:%a} {day.day}" if canvas.width >= 52 else str(day.day)
            painter.drawText(canvas.cell(place, half, half), Qt.AlignmentFlag.AlignCenter, text)

    def _months(self, canvas: Canvas, height: float) -> None:
        painter = canvas.painter
        painter.setPen(QColor(theme.current().text))
        canvas.font(0, bold=True)
        first = day_at(canvas.first + 1)
        by_year = canvas.width * 30 < _MONTH_ROOM_PX
        begin = first.replace(day=1, month=1) if by_year else first.replace(day=1)
        while (place := place_of(begin)) <= canvas.last:
            months = 12 if by_year else 1
            following = _months_on(begin, months)
            # The name of a month that began before the view stays at the view's edge.
            left = max(canvas.x(place), canvas.x(canvas.first + 1)) + 4
            room = canvas.x(place_of(following)) - left
            if canvas.width * 30 * months >= 110:
                text = f"{begin:%B} {begin.year}"
            elif by_year:
                text = str(begin.year)
            else:
                text = f"{begin:%b} {begin.year}" if begin.month == 1 else f"{begin:%b}"
            if painter.fontMetrics().horizontalAdvance(text) <= room:
                painter.drawText(QPointF(left, height - 4), text)
            begin = following


def _months_on(day: date, months: int) -> date:
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return date(year, month + 1, 1)


class MoonLane(OutlookLane):
    """A disc a day where there is room, else the principal phases."""

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
        zone, days = self.outlook.site.zone, self.outlook.days
        edges = np.array([day.toordinal() for day in days])
        principal = canvas.width * 29.5 >= 60
        for instant, kind in zip(self.outlook.phases.times, self.outlook.phases.kinds, strict=True):
            if (not principal and kind != 2) or (kind in (1, 3) and canvas.width * 29.5 < 120):
                continue
            seconds = instant.astype("datetime64[s]").astype(int)
            place = start + int(np.searchsorted(edges, _local_ordinal(seconds, zone)))
            if canvas.first <= place <= canvas.last:
                centre = QPointF(canvas.x(place + 0.5), canvas.height / 2)
                lit = {0: 0.0, 1: 0.5, 2: 1.0, 3: 0.5}[int(kind)]
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


def _local_ordinal(utc_seconds: int, zone: Any) -> int:
    from datetime import UTC, datetime

    return datetime.fromtimestamp(utc_seconds, tz=UTC).astimezone(zone).toordinal()


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

        def y(level_m: float) -> float:
            return 4 + (high - level_m) * scale

        tops = [QPointF(canvas.x(start + i + 0.5), y(self.outlook.highest_m[i])) for i in span]
        feet = [QPointF(canvas.x(start + i + 0.5), y(self.outlook.lowest_m[i])) for i in span]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.water_fill))
        painter.drawPolygon(QPolygonF(tops + feet[::-1]))
        painter.setPen(QPen(QColor(colours.water), 1.4))
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
        for index in self.span(canvas):
            cell = canvas.cell(start + index, 2, inner)
            ink = theme.ink_on(theme.fullness_colour(float(fullness.mean[index])))
            if fullness.high[index] - fullness.low[index] > theme.UNSURE_WIDTH:
                painter.fillRect(cell, QBrush(theme.colour(ink.name(), 90), _HATCH))
            painter.setPen(QPen(QColor(theme.current().panel), 1))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(cell)
            if canvas.width >= _NUMBERS_FROM_PX:
                canvas.font(0 if canvas.width >= 21 else -1.5)
                painter.setPen(ink)
                number = round(100 * float(fullness.mean[index]))
                painter.drawText(cell, Qt.AlignmentFlag.AlignCenter, str(number))


_HATCH: Final = Qt.BrushStyle.BDiagPattern


class CatchLane(OutlookLane):
    """The share of full crabs: forecast as a band, and the trips' outcomes on the same scale."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self.marks: Sequence[TripMark] = ()

    def show_marks(self, marks: Sequence[TripMark]) -> None:
        """Show other trips."""
        self.marks = marks
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
        xs = [(i, canvas.x(start + i + 0.5)) for i in self.span(canvas)]
        tops = [QPointF(x, y(1 - light.low[i])) for i, x in xs]
        feet = [QPointF(x, y(1 - light.high[i])) for i, x in xs]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.forecast_band))
        painter.drawPolygon(QPolygonF(tops + feet[::-1]))
        painter.setPen(QPen(QColor(colours.forecast), 1.6))
        painter.drawPolyline(QPolygonF([QPointF(x, y(1 - light.mean[i])) for i, x in xs]))


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

    def draw(self, canvas: Canvas) -> None:
        if self.outlook is None:
            return
        colours, painter, start = theme.current(), canvas.painter, self.start()
        for index in self.span(canvas):
            cell = canvas.cell(start + index)
            if self.outlook.why_closed[index]:
                painter.setPen(QPen(QColor(colours.closed), 1.4))
                inner = cell.adjusted(3, 4, -3, -4) if canvas.width > 12 else cell
                painter.drawLine(inner.topLeft(), inner.bottomRight())
                painter.drawLine(inner.bottomLeft(), inner.topRight())
            elif not self.outlook.why_not_free[index]:
                painter.setPen(QPen(QColor(colours.free), 3, c=Qt.PenCapStyle.FlatCap))
                y = canvas.height - 4
                gap = 2 if canvas.width > 12 else 0
                painter.drawLine(QPointF(cell.left() + gap, y), QPointF(cell.right() - gap, y))


@dataclass(frozen=True)
class Bracket:
    """A plan on the strip, from set to haul, in a row of its lane."""

    rank: int
    begin: float
    end: float
    row: int


class PlansLane(Lane):
    """Plans as brackets from set to haul, the chosen one strong."""

    ROWS: Final = 3

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self.brackets: Sequence[Bracket] = ()
        self.chosen: int | None = None

    def show_brackets(self, brackets: Sequence[Bracket], chosen: int | None) -> None:
        """Show other plans."""
        self.brackets, self.chosen = brackets, chosen
        self.update()

    def draw(self, canvas: Canvas) -> None:
        colours, painter = theme.current(), canvas.painter
        row_height = canvas.height / self.ROWS
        for bracket in sorted(self.brackets, key=lambda b: b.rank == self.chosen):
            if bracket.end < canvas.first or bracket.begin > canvas.last + 1:
                continue
            chosen = bracket.rank == self.chosen
            left, right = canvas.x(bracket.begin), canvas.x(bracket.end)
            middle = (bracket.row + 0.5) * row_height
            ink = QColor(colours.accent if chosen else colours.text)
            painter.setPen(QPen(ink, 3 if chosen else 1.6, c=Qt.PenCapStyle.FlatCap))
            reach = row_height / 2 - 2
            painter.drawLine(QPointF(left, middle), QPointF(right, middle))
            for x in (left, right):
                painter.drawLine(QPointF(x, middle - reach), QPointF(x, middle + reach))
            if canvas.width >= 9:
                canvas.font(-1.5, bold=chosen)
                text = str(bracket.rank)
                metrics = painter.fontMetrics()
                box = QRectF(0, 0, metrics.horizontalAdvance(text) + 6, metrics.height() - 2)
                box.moveCenter(QPointF((left + right) / 2, middle))
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(colours.panel))
                painter.drawRoundedRect(box, 3, 3)
                painter.setPen(ink)
                painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


class CursorLane(Lane):
    """Over all lanes: today's line and the selected day's frame."""

    def __init__(self, top: float, height: float, today: date) -> None:
        super().__init__(top, height)
        self.today = place_of(today)
        self.day = self.today
        self.setZValue(theme.Z_CHOSEN)

    def choose(self, day: date) -> None:
        """Frame another day."""
        self.day = place_of(day)
        self.update()

    def draw(self, canvas: Canvas) -> None:
        colours, painter = theme.current(), canvas.painter
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(colours.text), 1, Qt.PenStyle.DashLine))
        x = canvas.x(self.today)
        painter.drawLine(QPointF(x, 0), QPointF(x, canvas.height))
        painter.setPen(QPen(QColor(colours.accent), 2))
        frame = canvas.cell(self.day)
        if frame.width() < 4:
            frame = QRectF(frame.center().x() - 2, frame.top(), 4, frame.height())
        painter.drawRect(frame.adjusted(0, 1, 0, -1))
