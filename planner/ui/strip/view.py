"""The strip as a widget: lanes, their names, panning, zooming, choosing a day by mouse or keys."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any, Final
from zoneinfo import ZoneInfo

import pyqtgraph as pg
from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from planner.ui import theme
from planner.ui.strip.calendar_lanes import CursorLane, DateLane, GroundLane
from planner.ui.strip.canvas import grown_text
from planner.ui.strip.catch_lane import CatchLane
from planner.ui.strip.days import Catch, TripMark, day_at, place_of
from planner.ui.strip.moon_lane import MoonLane
from planner.ui.strip.outlook_lanes import DaysLane, FullnessLane, WaterLane
from planner.ui.strip.plans_lane import PlansLane, packed, with_own
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Outlook, Plan

# Name beside the lane, small second line, height in device-independent pixels where text has
# 10 points; larger text makes everything higher.
_LANES: Final = (
    ("", "", 36),
    (say("Moon"), "", 24),
    (say("Water"), say("low to high"), 46),
    (say("Fullness"), say("expected, 0 to 100"), 36),
    (say("Full crabs"), say("forecast and logged"), 66),
    (say("Free days"), "", 18),
    (say("Plans"), say("set to haul"), 58),
)
_HEIGHT: Final = sum(height for _, _, height in _LANES)
_SHIFT: Final = Qt.KeyboardModifier.ShiftModifier
_PARTS: Final[dict[int, str]] = {
    Qt.Key.Key_S: "set",
    Qt.Key.Key_H: "haul",
    Qt.Key.Key_M: "whole",
}
_FIRST_VIEW_DAYS: Final = (-12, 32)
_LEAST_DAYS, _MOST_DAYS = 14, 3653


class StripView(QWidget):
    """Shows days, trips and plans; arrow keys move by day, with shift by week.

    S, H and M take the chosen plan by its set, its haul or as a whole; the arrow keys then move
    it by a quarter hour, with shift by a day.

    day_chosen, plan_chosen: by click or key. day_pointed: the day under the mouse, None when
    it leaves. range_changed: the first and last day in view.
    plan_held: the rank of a plan and its part taken, by hand or key. plan_moved: by days of the
    strip since. plan_stepped: by quarter hours. plan_kept, plan_undone: the end of it.
    """

    day_chosen = Signal(object)
    plan_chosen = Signal(int)
    day_pointed = Signal(object)
    range_changed = Signal(object, object)
    plan_held = Signal(int, str)
    plan_moved = Signal(float)
    plan_stepped = Signal(int)
    plan_kept = Signal()
    plan_undone = Signal()

    def __init__(self, today: date) -> None:
        super().__init__()
        self.today = today
        self.day = today
        # Whether a plan is being moved by keys, and whether a move can be taken back.
        self.moving, self.can_undo = False, False
        self._plot = pg.GraphicsView(background=theme.current().panel)
        self._plot.setFrameShape(pg.GraphicsView.Shape.NoFrame)
        for each in (self._plot, self._plot.viewport()):
            each.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._box = pg.ViewBox(enableMenu=False, defaultPadding=0)
        self._plot.setCentralItem(self._box)
        self._box.setMouseEnabled(x=True, y=False)
        self._box.invertY(True)
        self._box.setYRange(0, _HEIGHT, padding=0)
        self._add_lanes()
        self.show_today(today)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(say("Days: fullness, water, trips and plans"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        self._gutter = _Gutter()
        row.addWidget(self._gutter)
        row.addWidget(self._plot, 1)
        self.grow(1.0)
        # So that undo by key means this move.
        self._brackets.held.connect(lambda *_: self.setFocus(Qt.FocusReason.MouseFocusReason))
        self._brackets.held.connect(self.plan_held)
        self._brackets.moved.connect(self.plan_moved)
        self._brackets.let_go.connect(self.plan_kept)
        self._box.sigXRangeChanged.connect(self._range_changed)
        self._plot.scene().sigMouseClicked.connect(self._clicked)
        self._plot.scene().sigMouseMoved.connect(self._pointed)
        self.show_days(today + timedelta(days=_FIRST_VIEW_DAYS[0]), sum(map(abs, _FIRST_VIEW_DAYS)))

    def _add_lanes(self) -> None:
        tops = [0.0]
        for _, _, height in _LANES:
            tops.append(tops[-1] + height)
        sizes = [(tops[i], _LANES[i][2]) for i in range(len(_LANES))]
        self._ground = GroundLane(0, _HEIGHT, tops[1:-1])
        self._dates = DateLane(*sizes[0], self.today)
        self._moon = MoonLane(*sizes[1])
        self._water = WaterLane(*sizes[2])
        self._fullness = FullnessLane(*sizes[3])
        self._catch = CatchLane(*sizes[4])
        self._free = DaysLane(*sizes[5])
        self._brackets = PlansLane(*sizes[6])
        self._cursor = CursorLane(0, _HEIGHT, self.today)
        self._of_outlook = (self._moon, self._water, self._fullness, self._catch, self._free)
        self._all = (self._ground, self._dates, *self._of_outlook, self._brackets, self._cursor)
        for lane in self._all:
            self._box.addItem(lane, ignoreBounds=True)

    # -- what is shown -----------------------------------------------------------------------

    def show_outlook(self, outlook: Outlook | None) -> None:
        """Show another outlook, or empty lanes while there is none."""
        for lane in self._of_outlook:
            lane.show_outlook(outlook)

    def show_trips(self, marks: Sequence[TripMark]) -> None:
        """Show other logged trips."""
        self._catch.show_marks(marks)

    def show_alike(self, day: date, marks: Sequence[tuple[float, Catch]]) -> None:
        """Show how past trips like a day turned out, at that day."""
        self._catch.show_alike(day, marks)

    def show_today(self, today: date) -> None:
        """Mark another day as today; the days that can be shown lie around it."""
        self.today = today
        here = place_of(today)
        self._box.setLimits(
            xMin=here - _MOST_DAYS,
            xMax=here + _MOST_DAYS,
            minXRange=_LEAST_DAYS,
            maxXRange=_MOST_DAYS,
        )
        for lane in (self._dates, self._cursor):
            lane.today = here
            lane.update()

    def show_plans(
        self, plans: Sequence[Plan], chosen: int | None, zone: ZoneInfo, own: Plan | None = None
    ) -> None:
        """Show other plans, and the user's own; those that overlap go in rows of their own."""
        self._brackets.show_brackets(with_own(packed(plans, zone), own, zone), chosen)

    def choose_day(self, day: date) -> None:
        """Frame a day and bring it into view."""
        self.day = day
        self._cursor.choose(day)
        first, last = self._box.viewRange()[0]
        place = place_of(day)
        if not first <= place <= last - 1:
            self._box.setXRange(place - (last - first) / 2, place + (last - first) / 2, padding=0)

    def show_days(self, first: date, count: int) -> None:
        """Show this many days from a first one."""
        self._box.setXRange(place_of(first), place_of(first) + count, padding=0)

    def zoom(self, factor: float) -> None:
        """Show more days (above 1) or fewer, around the chosen one when it is in view."""
        first, last = self._box.viewRange()[0]
        place = place_of(self.day) + 0.5
        centre = place if first <= place <= last else (first + last) / 2
        share = (centre - first) / (last - first)
        days = min(max((last - first) * factor, _LEAST_DAYS), _MOST_DAYS)
        self._box.setXRange(centre - share * days, centre + (1 - share) * days, padding=0)

    def grow(self, factor: float) -> None:
        """Draw the lanes higher than they need be, or lower, and the words larger with them."""
        scale = factor * theme.text_scale()
        self.setFixedHeight(round(_HEIGHT * scale))
        self._gutter.grow(scale)

    def refresh(self) -> None:
        """Draw everything again, after a change of theme."""
        self._plot.setBackground(theme.current().panel)
        self._fullness.show_outlook(self._fullness.outlook)
        for lane in self._all:
            lane.update()
        self.update()

    def days_in_view(self) -> tuple[date, date]:
        """Return the first and last day in view."""
        first, last = self._box.viewRange()[0]
        return day_at(first), day_at(last - 1e-6)

    # -- what the user does ------------------------------------------------------------------

    def event(self, event: QEvent) -> bool:
        # While a move can be taken back, undoing means that move, not the log.
        if event.type() == QEvent.Type.ShortcutOverride and self._undoes(event):
            event.accept()
            return True
        return super().event(event)

    def _undoes(self, event: Any) -> bool:
        undo = event.key() == Qt.Key.Key_Escape or event.matches(QKeySequence.StandardKey.Undo)
        return bool(self.can_undo and undo)

    def _moved_by_key(self, event: QKeyEvent) -> bool:
        """Take, move and let go the chosen plan; tell whether the key meant that."""
        key, quarters = event.key(), 96 if event.modifiers() & _SHIFT else 1
        chosen = self._brackets.chosen
        if self._undoes(event):
            self.plan_undone.emit()
        elif key in _PARTS and chosen is not None:
            self.plan_held.emit(chosen, _PARTS[key])
            self.moving = True
        elif self.moving and key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.plan_stepped.emit(-quarters if key == Qt.Key.Key_Left else quarters)
        elif self.moving and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Escape):
            self.plan_kept.emit()
        else:
            return False
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._moved_by_key(event):
            return
        step = 7 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
        moves: dict[int, int] = {Qt.Key.Key_Left: -step, Qt.Key.Key_Right: step}
        key = event.key()
        if key in moves:
            most = timedelta(days=_MOST_DAYS)
            day = self.day + timedelta(days=moves[key])
            self.day_chosen.emit(min(max(day, self.today - most), self.today + most))
        elif key == Qt.Key.Key_Home:
            self.day_chosen.emit(self.today)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(1 / 1.5)
        elif key == Qt.Key.Key_Minus:
            self.zoom(1.5)
        else:
            super().keyPressEvent(event)

    def _clicked(self, event: Any) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            return
        at = self._box.mapSceneToView(event.scenePos())
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self.day_chosen.emit(day_at(at.x()))
        bracket = self._brackets.bracket_at(at.x(), at.y())
        if bracket is not None:
            self.plan_chosen.emit(bracket.rank)

    def _pointed(self, position: QPointF) -> None:
        inside = self._box.sceneBoundingRect().contains(position)
        at = self._box.mapSceneToView(position)
        self.day_pointed.emit(day_at(at.x()) if inside else None)

    def leaveEvent(self, event: Any) -> None:
        self.day_pointed.emit(None)
        super().leaveEvent(event)

    def _range_changed(self, *_: Any) -> None:
        self.range_changed.emit(*self.days_in_view())


class _Gutter(QWidget):
    """The names of the lanes."""

    def __init__(self) -> None:
        super().__init__()
        self.grow(theme.text_scale())

    def grow(self, scale: float) -> None:
        """Take up another scale of the lanes."""
        self._scale = scale
        points = self.font().pointSizeF() * grown_text(scale) / theme.text_scale()
        self._large = QFont(self.font())
        self._large.setPointSizeF(points)
        self._small = theme.smaller(self._large, 2)
        widest = max(
            QFontMetricsF(font).horizontalAdvance(text)
            for name, second, _ in _LANES
            for font, text in ((self._large, name), (self._small, second))
        )
        self.setFixedSize(round(widest) + 16, round(_HEIGHT * scale))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        colours = theme.current()
        top = 0.0
        flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        for name, second, lane_height in _LANES:
            height = lane_height * self._scale
            box = QRectF(8, top, self.width() - 16, height)
            lines = 14 * self._scale if second else 0
            painter.setFont(self._large)
            painter.setPen(QColor(colours.text))
            painter.drawText(box.adjusted(0, 0, 0, -lines), flags, name)
            painter.setFont(self._small)
            painter.setPen(QColor(colours.quiet))
            painter.drawText(box.adjusted(0, lines, 0, 0), flags, second)
            top += height
            if name and top < self.height() - 1:
                painter.setPen(QColor(colours.line))
                painter.drawLine(QPointF(0, top), QPointF(self.width(), top))
        painter.end()
