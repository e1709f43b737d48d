"""The water at a place: levels, high and low waters, crossings and extremes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_DAY, MS_PER_MINUTE, Instants, to_utc64
from planner.errors import RangeError
from planner.estimates import Floats
from planner.sites.site import NodeRule, Site, Water
from planner.tides.arguments import new_year_ms
from planner.tides.astronomy import Milliseconds
from planner.tides.crossings import find_crossings
from planner.tides.extremes import Knots
from planner.tides.harmonic import HarmonicCurve
from planner.tides.offset import Curve, OffsetCurve
from planner.words import say

Bools = NDArray[np.bool_]
Moment = datetime | np.datetime64
Times = NDArray[np.datetime64] | Sequence[datetime]

FIRST_YEAR: Final = 1900
LAST_YEAR: Final = 2100
# A day wider at both ends, so that the first and the last local day of every zone are whole.
_FIRST_MS: Final = new_year_ms(FIRST_YEAR) - MS_PER_DAY
_LAST_MS: Final = new_year_ms(LAST_YEAR + 1) + MS_PER_DAY


@dataclass(frozen=True)
class Turns:
    """High and low waters in order of time; kinds alternate.

    times: `datetime64[ms]` UTC; heights: metres above the datum; is_high; all of shape (n,).
    """

    times: Instants
    heights: Floats
    is_high: Bools


@dataclass(frozen=True)
class Crossings:
    """When the level passes a height; times `datetime64[ms]` UTC, both of shape (n,)."""

    times: Instants
    rising: Bools


@dataclass(frozen=True)
class Slacks:
    """Estimated slack waters; times `datetime64[ms]` UTC, after_high, both of shape (n,)."""

    times: Instants
    after_high: Bools


@dataclass(frozen=True)
class DailyRange:
    """Lowest and highest level of each local day, metres above the datum, shape (n,)."""

    lowest: Floats
    highest: Floats


@dataclass(frozen=True)
class LowestLevels:
    """The lowest level of each window and when it is reached, both of shape (n,)."""

    heights: Floats
    times: Instants


class Tide:
    """The astronomical tide at a place, from 1900 to 2100.

    Wind, rain and air pressure move real water: this is the part that moon and sun make.
    Spans are half open: a turn or sample at `start` belongs to the span, one at `stop` to
    the next. Every method raises RangeError outside 1900 to 2100 and ValueError for an
    instant without an offset.
    """

    def __init__(self, site: Site, node_factors: NodeRule | None = None) -> None:
        """Prepare the tide of a place; `node_factors` overrides the place's own rule."""
        self.site = site
        self.node_factors: NodeRule = node_factors or _rule_of(site.water)
        self._curve = _curve(site.water, node_factors)

    def heights(self, times: Times) -> Floats:
        """Return the level at instants: metres above the datum, the shape of `times`."""
        t_ms = _instants(times)
        return self._curve.heights(t_ms.ravel()).reshape(t_ms.shape)

    def series(
        self, start: Moment, stop: Moment, step: timedelta | np.timedelta64
    ) -> tuple[Instants, Floats]:
        """Return evenly spaced instants from start, before stop, and the level at each.

        step: whole milliseconds, at least one.
        """
        first, last, every = _instant(start), _instant(stop), _milliseconds(step)
        count = max(0, -((first - last) // every))
        times = np.arange(first, first + count * every, every, dtype=np.int64)
        return times.view("datetime64[ms]"), self._curve.series(first, every, count)

    def turns(self, start: Moment, stop: Moment) -> Turns:
        """Return every high and low water of the span."""
        found = self._curve.turns(_instant(start), _instant(stop))
        return Turns(found.t_ms.astype("datetime64[ms]"), found.heights_m, found.is_high)

    def crossings(self, level_m: float, start: Moment, stop: Moment) -> Crossings:
        """Return when the level passes `level_m`, and whether it is rising then."""
        first, last = _instant(start), _instant(stop)
        knots = self._knots(first - 1, last)  # or a crossing just at the start is in no span
        t_ms, rising = find_crossings(*knots, level_m, self._curve.heights)
        inside = t_ms < last
        return Crossings(t_ms[inside].astype("datetime64[ms]"), rising[inside])

    def slacks(
        self,
        start: Moment,
        stop: Moment,
        after_high_min: float | None,
        after_low_min: float | None,
    ) -> Slacks:
        """Return slack waters of the span, estimated as so many minutes after each turn.

        The current is not predicted: the lags are the user's own for the place, may be
        negative, and change with the range and the weather. Without a lag a kind of turn has
        no slack.
        """
        first, last = _instant(start), _instant(stop)
        high, low = (round((lag or 0) * MS_PER_MINUTE) for lag in (after_high_min, after_low_min))
        reach = max(abs(high), abs(low))
        found = self._curve.turns(first - reach, last + reach)
        known = np.where(found.is_high, after_high_min is not None, after_low_min is not None)
        t_ms, after_high = found.t_ms[known], found.is_high[known]
        t_ms = t_ms + np.where(after_high, high, low)
        order = np.argsort(t_ms, kind="stable")
        t_ms, after_high = t_ms[order], after_high[order]
        inside = (t_ms >= first) & (t_ms < last)
        return Slacks(t_ms[inside].astype("datetime64[ms]"), after_high[inside])

    def daily_range(self, day_edges: Instants) -> DailyRange:
        """Return lowest and highest level of each day between neighbouring edges.

        day_edges: increasing instants, shape (n + 1,), as from `planner.clock.day_edges`.
        """
        edges = _instants(day_edges)
        if edges.size < 2:
            return DailyRange(np.empty(0), np.empty(0))
        t_ms, heights = self._knots(int(edges[0]), int(edges[-1]))
        curve = self._curve

        def upside_down(at: Milliseconds) -> Floats:
            return -curve.heights(at)

        lowest = Knots(t_ms, heights).lowest(edges[:-1], edges[1:], curve.heights)
        highest = Knots(t_ms, -heights).lowest(edges[:-1], edges[1:], upside_down)
        return DailyRange(lowest.heights_m, -highest.heights_m)

    def window_minima(self, starts: Instants, stops: Instants) -> LowestLevels:
        """Return the lowest level within each closed window [start, stop], exactly.

        Made for many overlapping windows at once: turns are found once for all of them.
        """
        begin, end = _instants(starts), _instants(stops)
        if begin.size == 0:
            return LowestLevels(np.empty(0), np.empty(0, dtype="datetime64[ms]"))
        if (end < begin).any():
            raise ValueError("a window stops before it starts")
        knots = Knots(*self._knots(int(begin.min()), int(end.max())))
        found = knots.lowest(begin, end, self._curve.heights)
        return LowestLevels(found.heights_m, found.t_ms.astype("datetime64[ms]"))

    def lowest(self, start: Moment, stop: Moment) -> tuple[float, np.datetime64]:
        """Return the lowest level of the closed span and when it is reached."""
        ends = np.array([[_instant(start)], [_instant(stop)]]).astype("datetime64[ms]")
        found = self.window_minima(ends[0], ends[1])
        return float(found.heights[0]), found.times[0]

    def _knots(self, start_ms: int, stop_ms: int) -> tuple[Milliseconds, Floats]:
        """Return instants between which the level is monotone, ends included, and levels."""
        turns = self._curve.turns(start_ms, stop_ms)
        jumps = self._curve.breaks(start_ms, stop_ms)
        ends = np.array([start_ms, max(start_ms, stop_ms)], dtype=np.int64)
        t_ms = np.unique(np.concatenate([ends, turns.t_ms, jumps - 1, jumps]))
        return t_ms, self._curve.heights(t_ms)


def _rule_of(water: Water) -> NodeRule:
    return _rule_of(water.offsets.reference.water) if water.offsets else water.node_factors


def _curve(water: Water, node_factors: NodeRule | None) -> Curve:
    if water.offsets is not None:
        return OffsetCurve(_curve(water.offsets.reference.water, node_factors), water.offsets)
    return HarmonicCurve(
        water.constants,
        water.mean_level_m,
        water.phase_reference_h,
        node_factors or water.node_factors,
    )


def _instants(times: Times) -> Milliseconds:
    """Return instants in ms since 1970, checked for range."""
    array: NDArray[Any] = np.asarray(times)
    if array.size == 0:
        return np.empty(array.shape, dtype=np.int64)
    if array.dtype == object:
        flat = [
            moment if isinstance(moment, np.datetime64) else to_utc64(moment)
            for moment in array.ravel()
        ]
        array = np.array(flat, dtype="datetime64[ms]").reshape(array.shape)
    if array.dtype.kind != "M":
        raise TypeError(f"instants are datetime64 or aware datetimes, not {array.dtype}")
    if np.isnat(array).any():
        raise ValueError("an instant is missing (NaT)")
    t_ms = array.astype("datetime64[ms]").astype(np.int64)
    _require_range(int(t_ms.min()), int(t_ms.max()))
    return t_ms


def _instant(moment: Moment) -> int:
    if isinstance(moment, datetime):
        moment = to_utc64(moment)
    if np.isnat(moment):
        raise ValueError("an instant is missing (NaT)")
    t_ms = int(moment.astype("datetime64[ms]").astype(np.int64))
    _require_range(t_ms, t_ms)
    return t_ms


def _require_range(first_ms: int, last_ms: int) -> None:
    for t_ms in (first_ms, last_ms):
        if not _FIRST_MS <= t_ms <= _LAST_MS:
            year = str(np.datetime64(t_ms, "ms"))[:10]
            raise RangeError(
                say(
                    "{year} is outside the years that tides are computed for; choose dates "
                    "from {first_year} to {last_year}",
                    year=year,
                    first_year=FIRST_YEAR,
                    last_year=LAST_YEAR,
                )
            )


def _milliseconds(step: timedelta | np.timedelta64) -> int:
    exact = np.timedelta64(step, "us") if isinstance(step, timedelta) else step
    whole = exact.astype("timedelta64[ms]")
    if np.isnat(whole) or whole != exact or whole <= np.timedelta64(0, "ms"):
        raise ValueError(f"a step is a positive number of whole milliseconds, not {step}")
    return int(whole.astype(np.int64))
