"""Plans as brackets on the strip, which can be dragged."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final
from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPen

from planner.ui import theme
from planner.ui.strip.canvas import Canvas, Lane
from planner.ui.strip.days import place_of_instant
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Plan

_LEAST_ROWS: Final = 3  # so that a lone bracket is not as high as the lane
_NUMBERED_ROW_PX: Final = 10  # lower rows have no room for a number
_HEAD_ROOM: Final = 4  # of the lane's height: a number is higher than the line it stands on
_APART_D: Final = 0.1  # brackets in a row are told apart
_GRIP_PX: Final = 7  # how near a press must be to an end to take that end
_REACH_D: Final = 0.05  # how far beside a bracket a click still means it


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
                text = str(bracket.rank) if bracket.rank else say("own")
                metrics = painter.fontMetrics()
                box = QRectF(0, 0, metrics.horizontalAdvance(text) + 6, metrics.height() - 2)
                box.moveCenter(QPointF((left + right) / 2, middle))
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(colours.panel))
                painter.drawRoundedRect(box, 3, 3)
                painter.setPen(ink)
                painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
