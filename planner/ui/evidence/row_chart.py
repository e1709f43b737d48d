"""Estimates under one another on a common axis: a dot with its 80% interval as a bar."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt

from planner.phrasing import number_text, numbers_text
from planner.ui import theme
from planner.ui.charts import Chart
from planner.words import say

_LOW_PAGE_PX = 450  # of a page for what is not the chart
_MOST_LINES = 8.0  # a row, where there is room: further apart, rows would not be compared


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
        self._room_px = 0

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
            # Hangs from the chart's upper edge, on the side with room, so that nothing cuts it.
            hung = {"position": 1.0, "anchors": [(0, 0), (1, 0)], "color": colours.caution}
            line = pg.InfiniteLine(guide, angle=90, pen=pen, label=said, labelOpts=hung)
            line.setZValue(theme.Z_BAND)
            self.addItem(line)
        axis = self.getAxis("left")
        axis.setTicks([[(float(y), row.name) for row, y in zip(rows, heights, strict=True)]])
        axis.setStyle(tickLength=0)
        self._take_height()
        self.box.setYRange(-0.7, max(len(rows), 1) - 0.3, padding=0)
        self.box.setXRange(*_span(rows, guide), padding=0)
        self.setAccessibleDescription("; ".join(_row_text(row) for row in rows))

    def redraw(self) -> None:
        if self._shown is not None:
            self.show_rows(*self._shown)

    def give_room(self, room_px: int) -> None:
        """Let the rows stand further apart, up to this height of the whole chart."""
        self._room_px = room_px
        if self._shown is not None:
            self._take_height()

    def _take_height(self) -> None:
        assert self._shown is not None
        rows = self._shown[0]
        least = 3.2 if any(row.points for row in rows) else 2.1
        low_px, high_px = (
            int(self.fontMetrics().height() * (each * max(len(rows), 1) + 4.5))
            for each in (least, _MOST_LINES)
        )
        self.setFixedHeight(max(low_px, min(self._room_px, high_px)))

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
            text = say("{count} more, to {beyond:g} →", count=len(beyond), beyond=max(beyond))
            label = pg.TextItem(text, color=theme.current().quiet, anchor=(1.0, 0.5))
            label.setPos(right, y + 0.24)  # clear of the bar, and of the rings of the row above
            self.addItem(label, ignoreBounds=True)


def room_for_rows(page_px: int) -> int:
    """Return how high a chart of rows may be on a page; on a low one it stays as it is."""
    return (page_px - _LOW_PAGE_PX) * 2 // 3


def _span(rows: Sequence[IntervalRow], guide: float | None) -> tuple[float, float]:
    """Return the ends of the axis: zero, every interval, and most of the single values."""
    ends = [0.0, *([guide] if guide is not None else [])]
    for row in rows:
        ends += [value for value in (row.mean, row.low, row.high) if value is not None]
    singles = [value for row in rows for value in row.points]
    # A few far values would squeeze all intervals into a corner; they are counted at the edge.
    if singles:
        ends.append(min(float(np.quantile(singles, 0.97)), 2.5 * max(ends) or max(singles)))
    least = min(ends)
    spread = (max(ends) - least) or 1.0  # where nothing is known the axis still goes to one
    return least - 0.02 * spread, least + 1.06 * spread


def _row_text(row: IntervalRow) -> str:
    if row.mean is None or row.low is None or row.high is None:
        return say("{name}: nothing known", name=row.name)
    return say(
        "{name}: {mean}, 80% interval {range}",
        name=row.name,
        mean=number_text(row.mean, ".2g"),
        range=numbers_text(row.low, row.high, ".2g"),
    )
