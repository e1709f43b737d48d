"""What every chart shares: theme, and an axis on a place's own clock.

Times on charts are seconds since 1970 in UTC; only labels and ticks know the local clock.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import UTC, date, datetime
from typing import Any, Final, Literal
from zoneinfo import ZoneInfo

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QResizeEvent, QShowEvent, QWheelEvent
from PySide6.QtWidgets import (
    QApplication,
    QGraphicsGridLayout,
    QGraphicsTextItem,
    QGraphicsWidget,
    QSizePolicy,
)

from planner.clock import Instants, days_between, local_midnight
from planner.estimates import Floats
from planner.phrasing import Style, number_text
from planner.ui import theme
from planner.words import say

_DAY_S: Final = 86_400.0
_MONTH_S: Final = 30 * _DAY_S  # stands for "months" among spacings
_EDGE_PX: Final = 1
_LABEL_PX: Final = 72  # room for one label, so that neighbours never touch
_LABEL_EM: Final = 9  # letters of a label and the gap beside it
_LABEL_LINES: Final = 2  # a label above another, in lines
_MOST_LABELS: Final = 12  # more on an axis are a ruler, not a help
_HOUR_STEPS: Final = (1, 2, 3, 6, 12)
_DAY_STEPS: Final = (1, 2, 7, 14)
_MONTH_STEPS: Final = (1, 2, 3, 6, 12, 24, 60, 120)


def seconds(times: Instants) -> Floats:
    """Return instants (`datetime64`, UTC) as seconds since 1970, for the x of a chart."""
    return times.astype("datetime64[ms]").astype(np.int64) / 1000


class Chart(pg.GraphicsView):  # type: ignore[misc]  # pyqtgraph has no types
    """Two axes and what is drawn between them.

    It takes up the theme by itself and lets the page around it scroll. A plot widget of pyqtgraph
    would do, but makes a form of options with every plot, which takes eight times as long as all
    the rest and is never shown.
    """

    least_lines = 0  # of letters in its height: ticks and names of the axes, and a picture

    def __init__(self, name: str = "", bottom: pg.AxisItem | None = None) -> None:
        # Whether theme or font has changed since it was drawn: hidden charts wait until they show.
        self._faded = False
        # What is drawn on, with its ranges; there before the first event comes.
        self.box = pg.ViewBox(enableMenu=False)
        super().__init__()
        self._axes = {"left": NumberAxis("left"), "bottom": bottom or NumberAxis("bottom")}
        self._lay_out()
        self._dress()
        # The chart itself takes the focus, and tells what it shows.
        self.viewport().setFocusPolicy(Qt.FocusPolicy.NoFocus)
        if name:
            self.setAccessibleName(name)

    def _lay_out(self) -> None:
        inside = QGraphicsWidget()
        # Numbers and time run this way in every script; mirrored, the axis would lie on the curve.
        inside.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        grid = self._grid = QGraphicsGridLayout(inside)
        grid.setContentsMargins(_EDGE_PX, _EDGE_PX, _EDGE_PX, _EDGE_PX)
        grid.setSpacing(0)
        self._head = QGraphicsTextItem(inside)
        self._head.document().setDocumentMargin(0)
        grid.addItem(self.box, 0, 1)
        grid.addItem(self._axes["left"], 0, 0)
        grid.addItem(self._axes["bottom"], 1, 1)
        for axis in self._axes.values():
            axis.linkToView(self.box)
        self.setCentralItem(inside)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    # -- what is drawn -----------------------------------------------------------------------

    def getAxis(self, side: Literal["left", "bottom"]) -> pg.AxisItem:
        """Return the axis of a side."""
        return self._axes[side]

    def setLabel(self, side: Literal["left", "bottom"], text: str, **style: Any) -> None:
        """Say what an axis measures, with its unit."""
        self._axes[side].setLabel(text, **style)
        self._place_name()

    def plot(self, x: Any, y: Any, **style: Any) -> None:
        """Draw a line, or marks with `pen=None` and a symbol."""
        # Steep water drawn without smoothing would look like a broken line.
        self.addItem(pg.PlotDataItem(x, y, **{"antialias": True, **style}))

    def addItem(self, item: Any, *, ignoreBounds: bool = False) -> None:  # noqa: N803
        """Draw an item."""
        self.box.addItem(item, ignoreBounds=ignoreBounds)

    def clear(self) -> None:
        """Take away all that is drawn."""
        self.box.clear()

    def _place_name(self) -> None:
        """Write what the upright axis measures beside it or, where it is too short, above it."""
        axis, letters = self._axes["left"], _letters()
        name = axis.labelText
        needed = letters.horizontalAdvance(name) + letters.averageCharWidth()
        lies = bool(name) and needed > self.height() - self._axes["bottom"].minimumHeight()
        axis.showLabel(bool(name) and not lies)
        self._head.setVisible(lies)
        self._head.setPlainText(name)
        self._head.setFont(QApplication.font())
        self._head.setDefaultTextColor(theme.current().text)
        above = math.ceil(letters.lineSpacing()) if lies else 0
        self._grid.setContentsMargins(_EDGE_PX, _EDGE_PX + above, _EDGE_PX, _EDGE_PX)

    # -- how it behaves ----------------------------------------------------------------------

    def sizeHint(self) -> QSize:
        # A plot would ask for more than a small window has; it grows with the room there is.
        return QSize(320, self.minimumHeight() or max(self.minimumSizeHint().height(), 140))

    def minimumSizeHint(self) -> QSize:
        least: QSize = super().minimumSizeHint()
        return least.expandedTo(QSize(0, self.least_lines * self.fontMetrics().lineSpacing()))

    def stand_still(self) -> None:
        """Show the whole picture: no dragging and no zooming."""
        self.box.setMouseEnabled(x=False, y=False)

    def wheelEvent(self, event: QWheelEvent) -> None:
        # A plain turn of the wheel scrolls the page around the picture.
        zooms = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if zooms and any(self.box.state["mouseEnabled"]):
            super().wheelEvent(event)
        else:
            event.ignore()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if getattr(self, "_axes", None):
            self._place_name()

    def redraw(self) -> None:
        """Draw what is shown in the colours of the theme; charts that draw say how."""

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        changed = event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange)
        if changed and getattr(self, "_axes", None):
            self._faded = True
            if self.isVisible():
                self._take_up()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._faded:
            self._take_up()

    def _take_up(self) -> None:
        self._faded = False
        self._dress()
        self.redraw()

    def _dress(self) -> None:
        """Take the colours and habits of the window; what is drawn has its own."""
        colours = theme.current()
        self.setBackground(colours.panel)
        self.setAntialiasing(True)
        self.setFrameShape(pg.GraphicsView.Shape.NoFrame)
        for axis in self._axes.values():
            axis.enableAutoSIPrefix(False)
            axis.setPen(colours.line)
            axis.setTextPen(colours.text)
        # By itself the axis leaves four fifths of a line, which cuts the feet of large letters.
        self._axes["bottom"].setStyle(
            autoExpandTextSpace=False, tickTextHeight=math.ceil(_letters().height())
        )
        self._place_name()


class NumberAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph has no types
    """An axis whose numbers are written as the reader's language has them, all to one decimal."""

    def tickSpacing(self, least: float, most: float, size: float) -> list[tuple[float, float]]:
        lies = self.orientation in ("top", "bottom")
        room = _label_room() if lies else _LABEL_LINES * _letters().lineSpacing()
        return [(number_spacing(most - least, size, room), 0.0)]

    def tickStrings(self, values: Sequence[float], scale: float, spacing: float) -> list[str]:
        places = max(0, math.ceil(-math.log10(spacing * scale)))
        return [number_text(value * scale, f".{places}f") for value in values]


def number_spacing(span: float, size_px: float, label_px: float) -> float:
    """Return 1, 2 or 5 times a power of ten: the closest ticks whose labels have room."""
    closest = span * max(label_px / max(size_px, 1.0), 1 / _MOST_LABELS)
    if not math.isfinite(closest) or closest <= 0:
        return 1.0
    power = 10.0 ** math.floor(math.log10(closest))
    return next(step * power for step in (1, 2, 5, 10) if step * power >= closest * (1 - 1e-9))


def _letters() -> QFontMetricsF:
    return QFontMetricsF(QApplication.font())


def _label_room() -> float:
    """Return the width of a label and the gap beside it, in the letters of the window."""
    return _LABEL_EM * _letters().averageCharWidth()


class LocalTimeAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph has no types
    """An axis whose ticks stand on full hours, days or months of a place's own clock.

    Every tick is placed by the offset in force there and then, so days of 23 and 25 hours
    come out right.
    """

    def __init__(self) -> None:
        super().__init__("bottom")
        self.enableAutoSIPrefix(False)
        self._zone, self._style = ZoneInfo("UTC"), Style()

    def set_place(self, zone: ZoneInfo, style: Style) -> None:
        """Show the clock of another place, or the same in 12 or 24 hours."""
        self._zone, self._style = zone, style
        self.picture = None
        self.update()

    def tickValues(self, first: float, last: float, size: float) -> list[Any]:
        ticks = local_ticks(first, last, size, self._zone, _label_room())
        return [(step, at) for step, at in ticks if at]

    def tickStrings(self, values: Sequence[float], _scale: float, spacing: float) -> list[str]:
        return [tick_text(value, spacing, self._zone, self._style) for value in values]


def local_ticks(
    first: float, last: float, width_px: float, zone: ZoneInfo, label_px: float = _LABEL_PX
) -> list[tuple[float, list[float]]]:
    """Return ticks between two instants (seconds since 1970) as (spacing in s, instants).

    Major ticks come first: midnights before hours, months before days. None is listed twice.
    """
    span, room = last - first, max(1.0, width_px / label_px)
    if not np.isfinite(span) or span <= 0:
        return []
    days = _days(first, last, zone, firsts_only=span > _DAY_STEPS[-1] * _DAY_S * room)
    shown: set[float] = set()
    found = []
    for spacing, instants in _levels(days, span, room, zone):
        kept = [at for at in instants if first <= at <= last and at not in shown]
        shown.update(kept)
        found.append((spacing, kept))
    return found


def _levels(
    days: list[tuple[date, float]], span: float, room: float, zone: ZoneInfo
) -> list[tuple[float, list[float]]]:
    """Return the finest ticks of which no more than `room` fit, with those above them."""
    for hours in _HOUR_STEPS:
        if span <= hours * 3600 * room:
            midnights = [at for _, at in days]
            return [(_DAY_S, midnights), (hours * 3600.0, _hour_ticks(days, hours, zone))]
    months = [(day.year * 12 + day.month - 1, at) for day, at in days if day.day == 1]
    for step in _DAY_STEPS:
        if span <= step * _DAY_S * room:
            firsts = [at for _, at in months]
            # From a Monday on; a day's name beside the first of a month would run into it.
            fine = [
                at
                for day, at in days
                if (day.toordinal() - 1) % step == 0
                and all(abs(at - begin) >= 0.7 * step * _DAY_S for begin in firsts)
            ]
            return [(_MONTH_S, firsts), (step * _DAY_S, fine)]
    for many in _MONTH_STEPS:
        if span <= many * _MONTH_S * room or many == _MONTH_STEPS[-1]:
            return [(many * _MONTH_S, [at for number, at in months if number % many == 0])]
    return []


def tick_text(at: float, spacing_s: float, zone: ZoneInfo, style: Style) -> str:
    """Return the label of a tick: an hour, a day or a month, as its spacing asks."""
    local = datetime.fromtimestamp(at, tz=zone)
    if spacing_s < _DAY_S:
        if style.hours12:
            return f"{local.hour % 12 or 12} {'am' if local.hour < 12 else 'pm'}"
        return f"{local:%H:%M}"
    if spacing_s == _DAY_S:
        return say("{local:%a} {local.day}", local=local)
    if spacing_s < _MONTH_S:
        return say("{local.day} {local:%b}", local=local)
    if local.month == 1:
        return str(local.year)
    return (
        say("{local.day} {local:%b}", local=local)
        if spacing_s == _MONTH_S
        else say("{local:%b}", local=local)
    )


def _days(
    first: float, last: float, zone: ZoneInfo, *, firsts_only: bool
) -> list[tuple[date, float]]:
    """Return the local days that touch a span, or firsts of months, and when each begins.

    Empty for years that the calendar does not know.
    """
    try:
        begin = datetime.fromtimestamp(first, tz=UTC).astimezone(zone).date()
        end = datetime.fromtimestamp(last, tz=UTC).astimezone(zone).date()
        days = [day for day in days_between(begin, end) if day.day == 1 or not firsts_only]
        return [(day, local_midnight(day, zone).timestamp()) for day in days]
    except (ValueError, OverflowError, OSError):
        return []


def _hour_ticks(days: list[tuple[date, float]], hours: int, zone: ZoneInfo) -> list[float]:
    """Return when the local clock shows each multiple of `hours`; a repeated hour counts twice."""
    found = []
    for _, begin in days:
        # Quarters of an hour: some clocks are half an hour off, and shift by that.
        for quarter in range(25 * 4):
            at = begin + quarter * 900
            if quarter % 4 and hours > 1:
                continue
            local = datetime.fromtimestamp(at, tz=zone)
            if local.minute == 0 and local.hour % hours == 0:
                found.append(at)
    return sorted(set(found))
