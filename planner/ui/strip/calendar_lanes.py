"""Lanes that need no forecast: days and months, and what is chosen; they only draw."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from planner.ui import theme
from planner.ui.strip.canvas import Canvas, Lane
from planner.ui.strip.days import day_at, place_of
from planner.words import say

_DAY_LINES_FROM_PX: Final = 7
_MONTH_ROOM_PX: Final = 44
_NUMBER_PX: Final = 16  # room for the number of a day


class GroundLane(Lane):
    """Behind all lanes: weekends, hairlines between days, months.

    breaks: where other lanes begin, in the units of the height.
    """

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
        breaks = [y * canvas.height / self.height for y in self._breaks]
        begins = set(_month_begins(canvas, 1 if canvas.width >= 0.9 else 12))
        lined = canvas.width >= _DAY_LINES_FROM_PX
        painter.drawLines(
            [
                QLineF(x, 0.0 if place in begins else breaks[0], x, canvas.height)
                for place in (range(canvas.first, canvas.last + 1) if lined else sorted(begins))
                for x in (canvas.x(place),)
            ]
        )
        for y in breaks:
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
        every_day = canvas.has_room(_NUMBER_PX)
        if not canvas.has_room(_NUMBER_PX / 7):
            return
        for place in range(canvas.first, canvas.last + 1):
            day = day_at(place)
            if not every_day and day.weekday() != 0:
                continue
            today = place == self.today
            canvas.font(-1, bold=today)
            painter.setPen(QColor(colours.accent if today else colours.quiet))
            text = say("{day:%a} {day.day}", day=day) if canvas.has_room(52) else str(day.day)
            cell = canvas.cell(place, half, half)
            room = 0 if every_day else 3 * canvas.width
            painter.drawText(cell.adjusted(-room, 0, room, 0), Qt.AlignmentFlag.AlignCenter, text)

    def _months(self, canvas: Canvas, height: float) -> None:
        painter = canvas.painter
        painter.setPen(QColor(theme.current().text))
        canvas.font(0, bold=True)
        first = day_at(canvas.first + 1)
        by_year = not canvas.has_room(_MONTH_ROOM_PX / 30)
        begin = first.replace(day=1, month=1) if by_year else first.replace(day=1)
        while (place := place_of(begin)) <= canvas.last:
            months = 12 if by_year else 1
            following = _months_on(begin, months)
            # The name of a month that began before the view stays at the view's edge.
            left = max(canvas.x(place), canvas.x(canvas.first + 1)) + 4
            room = canvas.x(place_of(following)) - left
            if by_year:
                text = str(begin.year)
            elif canvas.has_room(110 / 30):
                text = say("{begin:%B} {begin.year}", begin=begin)
            else:
                text = (
                    say("{begin:%b} {begin.year}", begin=begin)
                    if begin.month == 1
                    else say("{begin:%b}", begin=begin)
                )
            if painter.fontMetrics().horizontalAdvance(text) <= room:
                painter.drawText(QPointF(left, height - 4 * canvas.scale), text)
            begin = following


def _month_begins(canvas: Canvas, months: int) -> Iterator[int]:
    """Yield where months begin in view, or years where `months` is 12."""
    begin = day_at(canvas.first).replace(day=1)
    begin = begin.replace(month=1) if months == 12 else begin
    while (place := place_of(begin)) <= canvas.last:
        if place >= canvas.first:
            yield place
        begin = _months_on(begin, months)


def _months_on(day: date, months: int) -> date:
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return date(year, month + 1, 1)


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
