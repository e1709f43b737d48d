"""The water from set to haul: levels, night, the two outings, the ramp and the least cover."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from planner.clock import from_utc64, to_utc64
from planner.phrasing import Style, clock_text, height_text
from planner.ui import theme
from planner.ui.charts import LocalTimeAxis, themed_plot
from planner.units import metres_to

if TYPE_CHECKING:
    from planner.sites import Site
    from planner.trips import Plan
    from planner.trips.soak_water import SoakWater


class SoakChart(pg.PlotWidget):  # type: ignore[misc]  # pyqtgraph has no types
    """Draws one plan; heights in the user's unit, times on the place's clock."""

    def __init__(self) -> None:
        self._axis = LocalTimeAxis()
        super().__init__(axisItems={"bottom": self._axis})
        themed_plot(self)
        self.setMouseEnabled(x=False, y=False)
        self.setFixedHeight(190)
        self.setAccessibleName("Water through the soak")

    def show_soak(self, site: Site, plan: Plan, water: SoakWater, style: Style) -> None:
        """Show another plan."""
        colours = theme.current()
        self.clear()
        themed_plot(self)
        self._axis.set_place(site.zone, style)
        self.setLabel("left", f"water, {style.length}")
        seconds = water.times.astype("datetime64[s]").astype(np.int64).astype(float)
        levels = np.array([metres_to(float(level), style.length) for level in water.levels_m])
        self._nights(water, seconds)
        self._outing(plan.set_at, timedelta(minutes=site.habits.set_minutes), "set")
        self._outing(plan.haul_at, timedelta(minutes=site.habits.haul_minutes), "haul")
        self.plot(seconds, levels, pen=pg.mkPen(colours.water, width=2))
        if site.lowest_ramp_level_m is not None:
            ramp = metres_to(site.lowest_ramp_level_m, style.length)
            pen = pg.mkPen(colours.caution, style=Qt.PenStyle.DashLine)
            options = {"color": colours.caution, "position": 0.02, "anchors": [(0, 1), (0, 1)]}
            line = pg.InfiniteLine(ramp, angle=0, pen=pen, label="ramp limit", labelOpts=options)
            self.addItem(line)
        if plan.lowest_cover_at is not None:
            self._least_cover(plan, seconds, levels)
        self.setXRange(seconds[0], seconds[-1], padding=0)
        self.setAccessibleDescription(_in_words(site, plan, water, style))

    def _nights(self, water: SoakWater, seconds: np.ndarray) -> None:
        edges = [seconds[0]]
        for begin, end in zip(water.light_begins, water.light_ends, strict=True):
            edges += [from_utc64(begin).timestamp(), from_utc64(end).timestamp()]
        edges.append(seconds[-1])
        for dark_from, dark_to in zip(edges[0::2], edges[1::2], strict=True):
            if dark_to > dark_from:
                night = pg.LinearRegionItem(
                    (dark_from, dark_to), movable=False, brush=QColor(theme.current().night)
                )
                self._behind(night)

    def _outing(self, start: object, length: timedelta, name: str) -> None:
        begin = start.timestamp()  # type: ignore[attr-defined]
        ink = theme.current().accent
        region = pg.LinearRegionItem(
            (begin, begin + length.total_seconds()), movable=False, brush=theme.colour(ink, 60)
        )
        self._behind(region)
        line = pg.InfiniteLine(begin, angle=90, pen=pg.mkPen(ink, width=2), label=name)
        line.label.setColor(ink)
        line.label.setPosition(0.92)
        self.addItem(line)

    def _behind(self, region: pg.LinearRegionItem) -> None:
        region.setZValue(theme.Z_BAND)
        for line in region.lines:
            line.setPen(pg.mkPen(None))
        self.addItem(region)

    def _least_cover(self, plan: Plan, seconds: np.ndarray, levels: np.ndarray) -> None:
        assert plan.lowest_cover_at is not None
        at = plan.lowest_cover_at.timestamp()
        level = float(np.interp(at, seconds, levels))
        ink = theme.current().text
        self.plot([at], [level], pen=None, symbol="d", symbolSize=9, symbolBrush=ink)
        # Grows towards the middle of the chart, so that it is never cut at an edge; above the
        # curve, which is lowest there.
        right = at > (seconds[0] + seconds[-1]) / 2
        words = "least cover"
        label = pg.TextItem(words, color=ink, anchor=(1 if right else 0, 1))
        label.setPos(at, level)
        self.addItem(label)


def _in_words(site: Site, plan: Plan, water: SoakWater, style: Style) -> str:
    """Return the turns of the soak for a screen reader."""
    begin, end = to_utc64(plan.set_at), to_utc64(plan.haul_at)
    words = [
        f"{'high' if high else 'low'} water {height_text(float(level), style)} at "
        f"{clock_text(from_utc64(instant), site.zone, style)}"
        for instant, level, high in zip(
            water.turns.times, water.turns.heights, water.turns.is_high, strict=True
        )
        if begin <= instant <= end
    ]
    return "During the soak: " + ", ".join(words) if words else "No turn of the tide in the soak"
