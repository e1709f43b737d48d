"""The moon on the strip: a disc a day, or the principal phases."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen

from planner.clock import from_utc64
from planner.ui import theme
from planner.ui.strip.canvas import Canvas
from planner.ui.strip.days import place_of
from planner.ui.strip.outlook_lane import OutlookLane

if TYPE_CHECKING:
    from planner.trips import Outlook

_DISCS_FROM_PX: Final = 15


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
