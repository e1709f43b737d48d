"""The water from set to haul: levels, night, the two outings, the ramp and the least cover."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor

from planner.clock import from_utc64, to_utc64
from planner.phrasing import Style, clock_text, day_clock_text, height_text
from planner.ui import theme
from planner.ui.charts import Chart, LocalTimeAxis
from planner.ui.theme import LINE_GAP
from planner.units import metres_to
from planner.words import say

if TYPE_CHECKING:
    from planner.sites import Site
    from planner.trips import Plan
    from planner.trips.soak_water import SoakWater

_LEAST_HEIGHT = 90
_WORDS_SHARE = 0.22  # of the height of the curve, above and below it


class SoakChart(Chart):
    """Draws one plan; heights in the user's unit, times on the place's clock."""

    def __init__(self) -> None:
        self._axis = LocalTimeAxis()
        super().__init__(say("Water through the soak"), self._axis)
        self.stand_still()
        self.setMinimumHeight(_LEAST_HEIGHT)
        self.setToolTip(
            say(
                "Shaded: night. Upright lines: the first trap set, and the haul begun; the tint "
                "beside them is how long that takes.\nDashed: the lowest water at which the ramp "
                "works. Diamond: least water over the shallowest trap."
            )
        )
        # The word of the ramp, and what stands in its line, from the left to the right.
        self._ramp_word: pg.TextItem | None = None
        self._outing_words: list[pg.TextItem] = []
        self.box.sigResized.connect(lambda _: self._spare_ramp_word())
        self._shown: tuple[Site, Plan, SoakWater, Style] | None = None

    def sizeHint(self) -> QSize:
        # A plot would ask for more than a small window has; it grows with the room there is.
        return QSize(180, _LEAST_HEIGHT)

    def show_soak(self, site: Site, plan: Plan, water: SoakWater, style: Style) -> None:
        """Show another plan."""
        self._shown = (site, plan, water, style)
        colours = theme.current()
        self.clear()
        self._axis.set_place(site.zone, style)
        self.setLabel("left", say("water, {length}", length=style.length))
        seconds = water.times.astype("datetime64[s]").astype(np.int64).astype(float)
        levels = np.array([metres_to(float(level), style.length) for level in water.levels_m])
        self._nights(water, seconds)
        ramp = site.lowest_ramp_level_m
        drawn = [levels.min(), levels.max()]
        if ramp is not None:
            drawn.append(metres_to(ramp, style.length))
        bottom, top = min(drawn), max(drawn)
        # The words stand above and below all that is drawn, so that none lies on the curve.
        room = (top - bottom or 1.0) * _WORDS_SHARE
        self.box.setXRange(seconds[0], seconds[-1], padding=0)
        self.box.setYRange(bottom - room, top + room, padding=0)
        self._outing(plan.set_at, timedelta(minutes=site.habits.set_minutes))
        self._outing(plan.haul_at, timedelta(minutes=site.habits.haul_minutes))
        self._outing_words = [
            self._word(name, at.timestamp(), top + room, 0, colours.accent, beside=beside)
            for name, at, beside in ((say("set"), plan.set_at, 0), (say("haul"), plan.haul_at, 1))
        ]
        self.plot(seconds, levels, pen=pg.mkPen(colours.water, width=2))
        least_at = None if plan.lowest_cover_at is None else plan.lowest_cover_at.timestamp()
        if least_at is not None:
            self._least_cover(least_at, float(np.interp(least_at, seconds, levels)), bottom - room)
        if ramp is not None:
            pen = pg.mkPen(colours.caution, style=Qt.PenStyle.DashLine)
            self.addItem(pg.InfiniteLine(metres_to(ramp, style.length), angle=0, pen=pen))
            # Between the words of the outings, as a legend of its own.
            middle = (plan.set_at.timestamp() + plan.haul_at.timestamp()) / 2
            words, ink = say("- - ramp limit"), colours.caution
            self._ramp_word = self._word(words, middle, top + room, 0, ink, beside=0.5)
        else:
            self._ramp_word = None
        self._spare_ramp_word()
        self.setAccessibleDescription(_in_words(site, plan, water, style))

    def _spare_ramp_word(self) -> None:
        """Leave the word of the ramp out where it would touch the others."""
        if self._ramp_word is None:
            return
        set_word, haul_word = self._outing_words
        pixels = self.box.width() / max(np.ptp(self.box.viewRange()[0]), 1.0)
        between = (haul_word.pos().x() - set_word.pos().x()) * pixels
        widest = max(word.boundingRect().width() for word in self._outing_words)
        # The word stands in the middle, so that the wider neighbour decides.
        taken = self._ramp_word.boundingRect().width() + 2 * (widest + LINE_GAP)
        self._ramp_word.setVisible(bool(taken <= between))

    def redraw(self) -> None:
        if self._shown is not None:
            self.show_soak(*self._shown)

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

    def _outing(self, start: datetime, length: timedelta) -> None:
        begin = start.timestamp()
        ink = theme.current().accent
        region = pg.LinearRegionItem(
            (begin, begin + length.total_seconds()), movable=False, brush=theme.colour(ink, 60)
        )
        self._behind(region)
        self.addItem(pg.InfiniteLine(begin, angle=90, pen=pg.mkPen(ink, width=2)))

    def _behind(self, region: pg.LinearRegionItem) -> None:
        region.setZValue(theme.Z_BAND)
        for line in region.lines:
            line.setPen(pg.mkPen(None))
        self.addItem(region)

    def _least_cover(self, at: float, level: float, foot: float) -> None:
        ink = theme.current().text
        self.plot([at, at], [level, foot], pen=pg.mkPen(ink, style=Qt.PenStyle.DotLine))
        self.plot([at], [level], pen=None, symbol="d", symbolSize=9, symbolBrush=ink)
        first, last = self.box.viewRange()[0]
        self._word(say("least cover"), at, foot, 1, ink, beside=at > (first + last) / 2)

    def _word(
        self, text: str, at: float, level: float, below: int, ink: str, *, beside: float
    ) -> pg.TextItem:
        """Write a word under (0) or over (1) a level.

        beside: how much of the word lies left of the instant, from none (0) to all of it (1).
        """
        # Its ground keeps the word readable on night, outing and grid alike.
        ground = theme.colour(theme.current().panel, 230)
        word = pg.TextItem(text, color=ink, anchor=(beside, below), fill=ground)
        word.setFont(theme.smaller(self.font()))
        word.setPos(at, level)
        word.setZValue(theme.Z_CHOSEN)
        self.addItem(word)
        return word


def soak_rows(site: Site, plan: Plan, water: SoakWater, style: Style) -> list[tuple[str, str, str]]:
    """Return what the chart shows, in the order of time: when, what, and the water then."""
    seconds = water.times.astype("datetime64[s]").astype(np.int64)

    def level(at: datetime) -> str:
        return height_text(float(np.interp(at.timestamp(), seconds, water.levels_m)), style)

    turns = zip(water.turns.times, water.turns.heights, water.turns.is_high, strict=True)
    found = [
        (from_utc64(at), say("high water") if high else say("low water"), height_text(h, style))
        for at, h, high in turns
    ]
    marked = [(plan.set_at, say("set")), (plan.haul_at, say("haul"))]
    if plan.lowest_cover_at is not None:
        marked.append((plan.lowest_cover_at, say("least cover")))
    for light, words in (
        (water.light_begins, say("sunlight begins")),
        (water.light_ends, say("sunlight ends")),
    ):
        # Light that is cut where the chart begins or ends does not begin or end there.
        inside = (light > water.times[0]) & (light < water.times[-1])
        marked += [(from_utc64(at), words) for at in light[inside]]
    found += [(at, words, level(at)) for at, words in marked]
    return [
        (day_clock_text(at, site.zone, style), words, height) for at, words, height in sorted(found)
    ]


def _in_words(site: Site, plan: Plan, water: SoakWater, style: Style) -> str:
    """Return the turns of the soak for a screen reader."""
    begin, end = to_utc64(plan.set_at), to_utc64(plan.haul_at)
    words = [
        say(
            "{turn} {height} at {clock}",
            turn=say("high water") if high else say("low water"),
            height=height_text(float(level), style),
            clock=clock_text(from_utc64(instant), site.zone, style),
        )
        for instant, level, high in zip(
            water.turns.times, water.turns.heights, water.turns.is_high, strict=True
        )
        if begin <= instant <= end
    ]
    return (
        say("During the soak: ") + ", ".join(words)
        if words
        else say("No turn of the tide in the soak")
    )
