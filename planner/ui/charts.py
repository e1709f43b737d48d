"""What every chart shares: theme, an axis on a place's own clock, and rows of dots with bars.

Times on charts are seconds since 1970 in UTC; only labels and ticks know the local clock.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from typing import Any, Final
from zoneinfo import ZoneInfo

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QWheelEvent

from planner.clock import Instants, days_between, local_midnight
from planner.estimates import Floats
from planner.phrasing import Style
from planner.ui import theme

_DAY_S: Final = 86_400.0
_MONTH_S: Final = 30 * _DAY_S  # stands for "months" among spacings
_LABEL_PX: Final = 72  # room for one label, so that neighbours never touch
_HOUR_STEPS: Final = (1, 2, 3, 6, 12)
_DAY_STEPS: Final = (1, 2, 7, 14)
_MONTH_STEPS: Final = (1, 2, 3, 6, 12, 24, 60, 120)


def seconds(times: Instants) -> Floats:
    """Return instants (`datetime64`, UTC) as seconds since 1970, for the x of a chart."""
    return times.astype("datetime64[ms]").astype(np.int64) / 1000


def themed_plot(plot: pg.PlotWidget | None = None, **options: Any) -> pg.PlotWidget:
    """Give a plot, or a new one made with the options, the colours and habits of the window.

    Call it again when the theme has changed. Titles and pens of what is drawn on the plot are
    its owner's.
    """
    if plot is None:
        plot = Chart(**options)
    colours = theme.current()
    plot.setBackground(colours.panel)
    plot.setAntialiasing(True)
    plot.setMenuEnabled(False)
    plot.hideButtons()
    plot.setFrameShape(pg.PlotWidget.Shape.NoFrame)
    for side in ("bottom", "left"):
        axis = plot.getAxis(side)
        axis.enableAutoSIPrefix(False)
        axis.setPen(colours.line)
        axis.setTextPen(colours.text)
    return plot


class Chart(pg.PlotWidget):  # type: ignore[misc]  # pyqtgraph has no types
    """A plot that takes up the theme by itself and lets the page around it scroll."""

    def __init__(self, name: str = "", **options: Any) -> None:
        super().__init__(**options)
        themed_plot(self)
        if name:
            self.setAccessibleName(name)

    def sizeHint(self) -> QSize:
        # A plot would ask for more than a small window has; it grows with the room there is.
        return QSize(320, max(self.minimumHeight(), 140))

    def stand_still(self) -> None:
        """Show the whole picture: no dragging and no zooming."""
        self.setMouseEnabled(x=False, y=False)

    def wheelEvent(self, event: QWheelEvent) -> None:
        # A plain turn of the wheel scrolls the page around the picture.
        zooms = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if zooms and any(self.getViewBox().state["mouseEnabled"]):
            super().wheelEvent(event)
        else:
            event.ignore()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and getattr(self, "plotItem", None):
            themed_plot(self)


class LocalTimeAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph has no types
    """An axis whose ticks stand on full hours, days or months of a place's own clock.

    Every tick is placed by the offset in force there and then, so days of 23 and 25 hours
    come out right.
    """

    def __init__(
        self, zone: ZoneInfo | None = None, style: Style | None = None, orientation: str = "bottom"
    ) -> None:
        super().__init__(orientation)
        self.enableAutoSIPrefix(False)
        self._zone, self._style = zone or ZoneInfo("UTC"), style or Style()

    def set_place(self, zone: ZoneInfo, style: Style) -> None:
        """Show the clock of another place, or the same in 12 or 24 hours."""
        self._zone, self._style = zone, style
        self.picture = None
        self.update()

    def tickValues(self, first: float, last: float, size: float) -> list[Any]:
        return [(step, at) for step, at in local_ticks(first, last, size, self._zone) if at]

    def tickStrings(self, values: Sequence[float], _scale: float, spacing: float) -> list[str]:
        return [tick_text(value, spacing, self._zone, self._style) for value in values]


def local_ticks(
    first: float, last: float, width_px: float, zone: ZoneInfo
) -> list[tuple[float, list[float]]]:
    """Return ticks between two instants (seconds since 1970) as (spacing in s, instants).

    Major ticks come first: midnights before hours, months before days. None is listed twice.
    """
    span, room = last - first, max(1, int(width_px // _LABEL_PX))
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
    days: list[tuple[date, float]], span: float, room: int, zone: ZoneInfo
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
        return f"{local:%a} {local.day}"
    if spacing_s < _MONTH_S:
        return f"{local.day} {local:%b}"
    if local.month == 1:
        return str(local.year)
    return f"{local.day} {local:%b}" if spacing_s == _MONTH_S else f"{local:%b}"


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


@dataclass(frozen=True)
class IntervalRow:
    """One row: an estimate as a dot with its 80% interval as a bar, single values as faint points.

    mean, low, high: None for a row with nothing to show but its points. chosen: drawn in the
    accent colour.
    """

    name: str
    mean: float | None
    low: float | None
    high: float | None
    points: tuple[float, ...] = ()
    chosen: bool = False


class RowChart(Chart):
    """Estimates under one another on a common axis; the rows keep their order from the top."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.stand_still()
        self._shown: tuple[Sequence[IntervalRow], str, float | None, str] | None = None

    def show_rows(
        self, rows: Sequence[IntervalRow], label: str, guide: float | None = None, said: str = ""
    ) -> None:
        """Show rows; `label` names the axis with its unit, `guide` draws a line at a value."""
        self._shown = (rows, label, guide, said)
        colours = theme.current()
        self.clear()
        self.setLabel("bottom", label, color=colours.text)
        heights = len(rows) - 1 - np.arange(len(rows), dtype=np.float64)
        right = _span(rows, guide)[1]
        for row, y in zip(rows, heights, strict=True):
            self._draw(row, float(y))
            self._count_beyond(row, float(y), right)
        if guide is not None:
            pen = pg.mkPen(colours.caution, style=Qt.PenStyle.DashLine)
            line = pg.InfiniteLine(guide, angle=90, pen=pen, label=said)
            line.label.setColor(colours.caution)
            line.label.setPosition(0.97)
            line.setZValue(theme.Z_BAND)
            self.addItem(line)
        axis = self.getAxis("left")
        axis.setTicks([[(float(y), row.name) for row, y in zip(rows, heights, strict=True)]])
        axis.setStyle(tickLength=0)
        line_px = self.fontMetrics().height()
        each = 3.2 if any(row.points for row in rows) else 2.1
        self.setFixedHeight(int(line_px * (each * max(len(rows), 1) + 4.5)))
        self.setYRange(-0.7, max(len(rows), 1) - 0.3, padding=0)
        self.setXRange(*_span(rows, guide), padding=0)
        self.setAccessibleDescription("; ".join(_row_text(row) for row in rows))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if (
            event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange)
            and getattr(self, "_shown", None) is not None
        ):
            self.show_rows(*self._shown)  # type: ignore[misc]

    def _draw(self, row: IntervalRow, y: float) -> None:
        colours = theme.current()
        ink = colours.accent if row.chosen else colours.forecast
        if row.points:
            faint = pg.mkPen(theme.colour(colours.quiet, 130))
            # Equal values would hide each other: they hang below the bar, one under the other.
            values = np.sort(np.array(row.points, dtype=np.float64))
            repeats = np.arange(values.size) - np.searchsorted(values, values)
            drop = 0.04 if repeats.max() < 10 else 0.4 / repeats.max()
            self.plot(
                values,
                y - 0.2 - drop * repeats,
                pen=None,
                symbol="o",
                symbolSize=4,
                symbolPen=faint,
                symbolBrush=None,
            )
        if row.low is not None and row.high is not None:
            bar = pg.mkPen(ink, width=3, cosmetic=True)
            bar.setCapStyle(Qt.PenCapStyle.FlatCap)
            self.plot([row.low, row.high], [y, y], pen=bar)
        if row.mean is not None:
            self.plot(
                [row.mean], [y], pen=None, symbol="o", symbolSize=9, symbolPen=ink, symbolBrush=ink
            )

    def _count_beyond(self, row: IntervalRow, y: float, right: float) -> None:
        beyond = [value for value in row.points if value > right]
        if beyond:
            text = f"{len(beyond)} more, to {max(beyond):g} →"
            label = pg.TextItem(text, color=theme.current().quiet, anchor=(1.0, 0.5))
            label.setPos(right, y)
            self.addItem(label, ignoreBounds=True)


def _span(rows: Sequence[IntervalRow], guide: float | None) -> tuple[float, float]:
    """Return the ends of the axis: zero, every interval, and most of the single values."""
    ends = [0.0, *([guide] if guide is not None else [])]
    for row in rows:
        ends += [value for value in (row.mean, row.low, row.high) if value is not None]
    singles = [value for row in rows for value in row.points]
    # A few far values would squeeze all intervals into a corner; they are counted at the edge.
    if singles:
        ends.append(min(float(np.quantile(singles, 0.97)), 2.5 * max(ends) or max(singles)))
    spread = (max(ends) - min(ends)) or 1.0
    return min(ends) - 0.02 * spread, max(ends) + 0.06 * spread


def _row_text(row: IntervalRow) -> str:
    if row.mean is None or row.low is None or row.high is None:
        return f"{row.name}: nothing known"
    return f"{row.name}: {row.mean:.2g}, 80% interval {row.low:.2g} to {row.high:.2g}"
