"""The place book's two pictures: a month of water, and the spots against a year of it."""

from __future__ import annotations

from datetime import datetime
from typing import Any, Protocol

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QResizeEvent
from PySide6.QtWidgets import QGraphicsRectItem

from planner.clock import Instants
from planner.estimates import Floats
from planner.phrasing import Style, day_clock_text, height_text, zone_text
from planner.sites.site import Site
from planner.tides import Turns
from planner.tides.checks import ObservedTurns
from planner.ui import theme
from planner.ui.charts import Chart, LocalTimeAxis, seconds
from planner.ui.places.places_text import PlaceReport, bare_text
from planner.ui.theme import SPACE
from planner.units import metres_to
from planner.words import say

_AROUND_WORDS_PX = 8  # that a label leaves around its words
_SPOT_PX = 84  # room for a spot's name under its trap, with letters of 10 points
_FIRST_SPOT = 1.3  # spots: how far the first stands from the left edge


class Month(Protocol):
    """A month of a place's water with its turns."""

    @property
    def site(self) -> Site: ...
    @property
    def times(self) -> Instants: ...
    @property
    def levels_m(self) -> Floats: ...
    @property
    def turns(self) -> Turns: ...


class MonthChart(Chart):
    """A month of water with its turns; drag along it, zoom with Ctrl and the wheel.

    pointed: what is under the mouse, in words; "" when it is elsewhere.
    """

    pointed = Signal(str)

    def __init__(self) -> None:
        self._axis = LocalTimeAxis()
        super().__init__(say("Water of the coming month"), self._axis)
        self.box.setMouseEnabled(x=True, y=False)
        self.setMinimumHeight(200)
        self._shown: tuple[Month, Style, Month | None, ObservedTurns | None] | None = None
        self._drawn = (0.0, 1.0)  # the lowest and highest height
        self._ramp_words: Any = None
        self.scene().sigMouseMoved.connect(self._point)

    def show_report(
        self,
        report: Month,
        style: Style,
        before: Month | None = None,
        seen: ObservedTurns | None = None,
    ) -> None:
        """Show another month; behind it the water as it was before, over it what was seen."""
        self._shown = (report, style, before, seen)
        colours = theme.current()
        self.clear()
        self._axis.set_place(report.site.zone, style)
        self.setLabel(
            "left",
            say(
                "water above {datum}, {length}", datum=report.site.water.datum, length=style.length
            ),
        )
        x, turns = seconds(report.times), report.turns
        y = _in_unit(report.levels_m, style)
        drawn = [y]
        if before is not None:
            drawn.append(_in_unit(before.levels_m, style))
            quiet = pg.mkPen(colours.quiet, width=1, style=Qt.PenStyle.DotLine)
            self.plot(seconds(before.times), drawn[-1], pen=quiet)
        self.plot(x, y, pen=pg.mkPen(colours.water, width=1))
        for high, symbol in ((True, "t1"), (False, "t")):
            of_kind = turns.is_high == high
            self.plot(
                seconds(turns.times[of_kind]),
                _in_unit(turns.heights[of_kind], style),
                pen=None,
                symbol=symbol,
                symbolSize=6,
                symbolPen=None,
                symbolBrush=colours.water,
            )
        if seen is not None:
            drawn.append(self._draw_seen(seen, (x[0], x[-1]), style))
        ramp = report.site.lowest_ramp_level_m
        view = self.box
        view.setLimits(xMin=x[0], xMax=x[-1], minXRange=6 * 3600)
        self.box.setXRange(x[0], x[-1], padding=0)
        every = np.concatenate(drawn)
        self._drawn = (float(every.min()), float(every.max()))
        self._ramp_words = None
        if ramp is not None:
            level, words = metres_to(ramp, style.length), say("- - ramp works above this")
            self._ramp_words = _level_line(self, level, words, 0.01, self._drawn[0])
        self._take_height()
        self.setAccessibleDescription(
            say(
                "{turns} high and low waters in {days} days, from {lowest} to "
                "{highest}; the table lists them",
                turns=len(turns.times),
                days=len(x) // 144,
                lowest=height_text(float(report.levels_m.min()), style),
                highest=height_text(float(report.levels_m.max()), style),
            )
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if getattr(self, "_shown", None):
            self._take_height()

    def _take_height(self) -> None:
        """Leave room around what is drawn, and below it a line for the words on the ramp."""
        lowest, highest = self._drawn
        span = highest - lowest or 1.0
        pad, foot = 0.08 * span, lowest - 0.08 * span
        if self._ramp_words is not None:
            line_px = self.fontMetrics().lineSpacing() + _AROUND_WORDS_PX
            foot -= line_px * (highest - foot + pad) / max(self.box.height() - line_px, line_px)
            self._ramp_words.setValue(foot)
        self.box.setYRange(foot, highest + pad, padding=0)

    def _draw_seen(self, seen: ObservedTurns, span: tuple[float, float], style: Style) -> Any:
        """Draw what was seen within a span as open marks; return their heights."""
        at = seconds(seen.times)
        inside = (at >= span[0]) & (at <= span[1]) & np.isfinite(seen.heights_m)
        heights = _in_unit(seen.heights_m[inside], style)
        for high, symbol in ((True, "t1"), (False, "t")):
            of_kind = seen.is_high[inside] == high
            marks = pg.ScatterPlotItem(
                at[inside][of_kind],
                heights[of_kind],
                symbol=symbol,
                size=12,
                pen=pg.mkPen(theme.current().logged, width=2),
                brush=None,
            )
            marks.setZValue(theme.Z_MARK)
            self.addItem(marks)
        return heights

    def _point(self, at: QPointF) -> None:
        view = self.box
        if self._shown is None or not view.sceneBoundingRect().contains(at):
            self.pointed.emit("")
            return
        report, style = self._shown[:2]
        x = float(view.mapSceneToView(at).x())
        level = float(np.interp(x, seconds(report.times), report.levels_m))
        zone = report.site.zone
        instant = datetime.fromtimestamp(x, tz=zone)
        self.pointed.emit(
            say(
                "{day_clock} {zone}: about {height}",
                day_clock=day_clock_text(instant, zone, style),
                zone=zone_text(instant, zone),
                height=height_text(level, style),
            )
        )

    def redraw(self) -> None:
        if self._shown is not None:
            self.show_report(*self._shown)


class SpotChart(Chart):
    """Each spot as a trap on its ground, against the lowest and highest water of a year."""

    def __init__(self) -> None:
        super().__init__(say("Spots against the year's water"))
        self.box.setMouseEnabled(x=True, y=False)
        self.setMinimumHeight(160)
        self._shown: tuple[PlaceReport, Style] | None = None

    def show_report(self, report: PlaceReport, style: Style) -> None:
        """Show the spots of another place."""
        self._shown = (report, style)
        colours, year = theme.current(), report.year
        self.clear()
        self.setLabel(
            "left",
            say(
                "height above {datum}, {length}", datum=report.site.water.datum, length=style.length
            ),
        )
        self.getAxis("bottom").setTicks([[]])
        self.getAxis("bottom").setStyle(tickLength=0)
        lowest, highest = (metres_to(v, style.length) for v in (year.lowest_m, year.highest_m))
        band = pg.LinearRegionItem(
            (lowest, highest),
            orientation="horizontal",
            movable=False,
            brush=QColor(colours.water_fill),
            pen=pg.mkPen(colours.water),
        )
        band.setZValue(theme.Z_GROUND)
        self.addItem(band)
        edges = [lowest, highest]
        for at, each in enumerate(year.spots):
            ground = metres_to(-each.spot.depth_m, style.length)
            top = metres_to(each.spot.trap_top_m, style.length)
            edges += [ground, top]
            self._trap(at, ground, top, each.least_cover_m > 0)
            covered = each.bare_h == 0
            words = say("covered") if covered else say("bare {bare} a year", bare=bare_text(each))
            self._word(words, at, top, 1.0, colours.text if covered else colours.caution)
            self._word(each.spot.name, at, ground, 0.0, colours.text)
        left, right = self._shown_span()
        # The names of the two waters stand in a column of their own beside the first trap.
        for value, words, anchor in (
            (highest, say("highest water"), 1.0),
            (lowest, say("lowest water"), 0.0),
        ):
            self._word(words, left + 0.05, value, anchor, colours.water, centred=False)
        ramp = report.site.lowest_ramp_level_m
        if ramp is not None:
            level = metres_to(ramp, style.length)
            edges.append(level)
            _level_line(self, level, say("ramp"), 0.97)
        spread = max(edges) - min(edges)
        self.box.setYRange(min(edges) - 0.14 * spread, max(edges) + 0.1 * spread, padding=0)
        self.box.setLimits(xMin=left, xMax=max(right, len(year.spots)))
        self.box.setXRange(left, right, padding=0)
        self.setAccessibleDescription(
            say("The table tells each spot's depth and hours bare in a year")
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if getattr(self, "_shown", None):
            self.box.setXRange(*self._shown_span(), padding=0)

    def redraw(self) -> None:
        if self._shown is not None:
            self.show_report(*self._shown)

    def _shown_span(self) -> tuple[float, float]:
        """Return the span of spots that has room for their names; the rest is dragged into view."""
        assert self._shown is not None
        fit = max(2.0, self.width() / self._spot_px() - 1.9)
        return -_FIRST_SPOT, min(max(len(self._shown[0].year.spots) - 0.4, 1.0), fit)

    def _spot_px(self) -> float:
        """Return the room of a spot: for its name, and for the waters' names beside the first."""
        width = self.fontMetrics().horizontalAdvance
        waters = max(width(say("highest water")), width(say("lowest water")))
        # They begin at the left edge and end before what is said over the trap at 0.
        beside = (waters + width(say("covered")) / 2 + SPACE) / _FIRST_SPOT
        return float(max(_SPOT_PX * max(theme.text_scale(), 1.0), beside))

    def _trap(self, at: int, ground: float, top: float, covered: bool) -> None:
        colours = theme.current()
        trap = QGraphicsRectItem(QRectF(at - 0.17, ground, 0.34, top - ground))
        ink = QColor(colours.text if covered else colours.caution)
        trap.setPen(pg.mkPen(ink, width=2))
        trap.setBrush(QColor(colours.raised))
        trap.setZValue(theme.Z_MARK)
        self.addItem(trap)
        self.plot([at - 0.45, at + 0.45], [ground, ground], pen=pg.mkPen(colours.quiet, width=2))

    def _word(
        self, text: str, x: float, y: float, anchor_y: float, ink: str, *, centred: bool = True
    ) -> None:
        label = pg.TextItem(text, color=ink, anchor=(0.5 if centred else 0.0, anchor_y))
        label.setPos(x, y)
        label.setZValue(theme.Z_CHOSEN)
        self.addItem(label, ignoreBounds=True)


def _in_unit(values_m: Any, style: Style) -> Any:
    return values_m * metres_to(1.0, style.length)


def _level_line(
    plot: Chart, level: float, words: str, position: float, foot: float | None = None
) -> Any:
    """Draw a dashed line at a level, its words on it or, given a foot, above that height.

    Return the line that the words hang on.
    """
    ink, ground = theme.current().caution, theme.colour(theme.current().panel, 215)
    pen = pg.mkPen(ink, style=Qt.PenStyle.DashLine)
    if foot is not None:
        plot.addItem(pg.InfiniteLine(level, angle=0, pen=pen))
    line = pg.InfiniteLine(
        level if foot is None else foot,
        angle=0,
        pen=pen if foot is None else pg.mkPen(None),
        label=words,
        labelOpts={
            "color": ink,
            "position": position,
            "fill": ground,
            # Begins or ends at its place on the line, so that no narrow chart cuts it off.
            "anchors": [(round(position), 0 if foot is None else 1), (round(position), 1)],
        },
    )
    plot.addItem(line)
    return line
