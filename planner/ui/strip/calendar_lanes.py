"""Lanes that need no forecast: days and months, plans, and what is chosen; they only draw."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, Final
from zoneinfo import ZoneInfo

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPen

from planner.ui import theme
from planner.ui.strip.canvas import Canvas, Lane
from planner.ui.strip.days import day_at, place_of, place_of_instant
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Plan

_DAY_LINES_FROM_PX: Final = 7
_MONTH_ROOM_PX: Final = 44
_NUMBER_PX: Final = 16  # room for the number of a day
_LEAST_ROWS: Final = 3  # so that a lone bracket is not as high as the lane
_NUMBERED_ROW_PX: Final = 10  # lower rows have no room for a number
_HEAD_ROOM: Final = 4  # of the lane's height: a number is higher than the line it stands on
_APART_D: Final = 0.1  # brackets in a row are told apart
_GRIP_PX: Final = 7  # how near a press must be to an end to take that end
_REACH_D: Final = 0.05  # how far beside a bracket a click still means it


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


@dataclass(frozen=True)
class Bracket:
    """A plan on the strip, from set to haul, in a row of its lane."""

    rank: int
    begin: float
    end: float
    row: int


def packed(plans: Sequence[Plan], zone: ZoneInfo) -> list[Bracket]:
    """Return plans as brackets, each in the first row that is free there; best plans first."""
    rows: list[list[tuple[float, float]]] = []
    brackets = []
    for plan in plans:
        begin, end = place_of_instant(plan.set_at, zone), place_of_instant(plan.haul_at, zone)
        row = 0
        while row < len(rows) and any(
            begin - _APART_D < other_end and end + _APART_D > other_begin
            for other_begin, other_end in rows[row]
        ):
            row += 1
        if row == len(rows):
            rows.append([])
        rows[row].append((begin, end))
        brackets.append(Bracket(plan.rank, begin, end, row))
    return brackets


def with_own(brackets: Sequence[Bracket], own: Plan | None, zone: ZoneInfo) -> list[Bracket]:
    """Return the brackets with the user's own plan under them, so that none moves with it."""
    if own is None:
        return list(brackets)
    row = max((bracket.row + 1 for bracket in brackets), default=0)
    begin, end = place_of_instant(own.set_at, zone), place_of_instant(own.haul_at, zone)
    return [*brackets, Bracket(own.rank, begin, end, row)]


class PlansLane(Lane):
    """Plans as brackets from set to haul, the chosen one strong; each can be dragged.

    held: the rank of a plan and which part of it is taken. moved: by how many days since.
    let_go: at the end.
    """

    held = Signal(int, str)
    moved = Signal(float)
    let_go = Signal()

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self.brackets: Sequence[Bracket] = ()
        self.chosen: int | None = None

    def show_brackets(self, brackets: Sequence[Bracket], chosen: int | None) -> None:
        """Show other plans."""
        self.brackets, self.chosen = brackets, chosen
        self.update()

    @property
    def rows(self) -> int:
        """How many rows the lane is divided into."""
        return max(_LEAST_ROWS, *(bracket.row + 1 for bracket in self.brackets), 0)

    def bracket_at(self, x: float, y: float) -> Bracket | None:
        """Return the bracket at a place of the strip and a height of it, None between them."""
        row = self._row_at(y)
        near = (
            bracket
            for bracket in self.brackets
            if bracket.row == row and bracket.begin - _REACH_D <= x <= bracket.end + _REACH_D
        )
        return next(near, None)

    def part_at(self, x: float, y: float) -> tuple[Bracket, str] | None:
        """Return the bracket at a place, and what of it a hand would take there."""
        reach = _GRIP_PX * self.getViewBox().viewPixelSize()[0]
        row = self._row_at(y)
        ends = [
            (abs(x - at), bracket, part)
            for bracket in self.brackets
            for at, part in ((bracket.begin, "set"), (bracket.end, "haul"))
            if bracket.row == row and abs(x - at) <= reach
        ]
        if ends:
            _, bracket, part = min(ends, key=lambda end: end[0])
            return bracket, part
        found = self.bracket_at(x, y)
        return None if found is None else (found, "whole")

    def mouseDragEvent(self, event: Any) -> None:
        """Take a bracket along; anywhere else the strip itself is dragged."""
        start = event.buttonDownPos()
        if event.isStart():
            taken = self.part_at(start.x(), start.y())
            if taken is None or event.button() != Qt.MouseButton.LeftButton:
                event.ignore()
                return
            self.held.emit(taken[0].rank, taken[1])
        event.accept()
        self.moved.emit(event.pos().x() - start.x())
        if event.isFinish():
            self.let_go.emit()

    def hoverEvent(self, event: Any) -> None:
        """Show by the pointer what a press would take."""
        taken = None if event.isExit() else self.part_at(event.pos().x(), event.pos().y())
        if taken is None:
            self.unsetCursor()
        else:
            whole = taken[1] == "whole"
            shape = Qt.CursorShape.OpenHandCursor if whole else Qt.CursorShape.SizeHorCursor
            self.setCursor(shape)
            event.acceptDrags(Qt.MouseButton.LeftButton)

    def _row_at(self, y: float) -> int:
        return int((y - self.top - _HEAD_ROOM) / (self.height - 2 * _HEAD_ROOM) * self.rows)

    def draw(self, canvas: Canvas) -> None:
        colours, painter = theme.current(), canvas.painter
        head = _HEAD_ROOM * canvas.height / self.height
        row_height = (canvas.height - 2 * head) / self.rows
        for bracket in sorted(self.brackets, key=lambda b: b.rank == self.chosen):
            if bracket.end < canvas.first or bracket.begin > canvas.last + 1:
                continue
            chosen = bracket.rank == self.chosen
            left, right = canvas.x(bracket.begin), canvas.x(bracket.end)
            middle = head + (bracket.row + 0.5) * row_height
            ink = QColor(colours.accent if chosen else colours.text)
            painter.setPen(QPen(ink, 3 if chosen else 1.6, c=Qt.PenCapStyle.FlatCap))
            reach = row_height / 2 - 2
            painter.drawLine(QPointF(left, middle), QPointF(right, middle))
            for x in (left, right):
                painter.drawLine(QPointF(x, middle - reach), QPointF(x, middle + reach))
            if canvas.has_room(9) and (chosen or row_height >= _NUMBERED_ROW_PX * canvas.scale):
                canvas.font(-1.5, bold=chosen)
                text = str(bracket.rank) if bracket.rank else "own"
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
