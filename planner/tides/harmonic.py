"""Water level as a sum of constituents: at any instants, and fast on an even grid."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_HOUR
from planner.constituents import find
from planner.estimates import Floats
from planner.sites.site import HarmonicConstant, NodeRule
from planner.tides.arguments import Constituents, new_years_ms, years_of
from planner.tides.astronomy import MS_PER_YEAR, FineMilliseconds, Milliseconds
from planner.tides.roots import Evaluation, find_roots
from planner.tides.turns import TurnList

# Direct evaluation works on this many instants at a time, to bound memory.
_CHUNK: Final = 16_384
# Within a block of the fast path f and u are held: over 12 hours the fastest of them (u of
# M1, near 0.3 degrees a day) then errs by less than a tenth of a degree.
_LONGEST_BLOCK_MS: Final = 12 * MS_PER_HOUR
# Turns are bracketed on a grid of this step: seven samples to the period of the fastest
# species in the table (14 cycles a day), so that the slope has at most one extremum a cell.
_TURN_STEP_MS: Final = 900_000
# The grid is anchored to the epoch, so that a turn comes out the same in any span, and to an
# odd instant, since solar tides like to turn on the hour and a root on a grid point is both
# of its neighbours' and neither's.
_TURN_ANCHOR_MS: Final = 433_579
# Around New Year the yearly rule jumps from one year's curve to the next one's. Turns are
# sought on slopes that pass over from one to the other within this time on either side, so
# that a high water that the old year puts at 23:58 and the new one at 00:03 is found once.
# An hour keeps turns apart from each other as long as the two years' times of one turn
# differ by less than 80 minutes, and moves no turn more than half their difference.
_HANDOVER_MS: Final = MS_PER_HOUR
# Turns of a longer span are sought a part at a time, to bound memory: 200 years have seven
# million points of the grid.
_LONGEST_SEARCH_MS: Final = 20 * MS_PER_YEAR
_SPANS_KEPT: Final = 8


@dataclass(frozen=True)
class _Span:
    """The arguments of an even grid, so that the level is a product of two real matrices.

    segments: first index, count and, per block, (Re z, -Im z, mean level) at its start, with
        shape (blocks, 2k + 1); blocks restart where the level jumps.
    within: cosine and sine of each constituent's advance within a block, and 1; (2k + 1, block).
    """

    segments: tuple[tuple[int, int, Floats], ...]
    within: Floats


class HarmonicCurve:
    """The level at a place with constituents, in metres above its datum.

    Instants are ms since 1970 UTC. Nothing here checks the range of years.
    """

    def __init__(
        self,
        constants: Sequence[HarmonicConstant],
        mean_level_m: float,
        phase_reference_h: float,
        rule: NodeRule,
    ) -> None:
        present = [c for c in constants if c.amplitude_m != 0.0]
        self._constituents = Constituents([find(c.constituent) for c in present])
        self._mean = mean_level_m
        self._rule = rule
        self._speeds = self._constituents.speeds_deg_per_h
        self._amplitudes = np.array([c.amplitude_m for c in present], dtype=np.float64)
        lags = np.array([c.phase_lag_deg for c in present], dtype=np.float64)
        # Lags worked out on a clock east of UTC exceed Greenwich lags by speed x hours.
        self._lags = lags - self._speeds * phase_reference_h
        self._rates = np.deg2rad(self._speeds) / MS_PER_HOUR  # radians per ms
        self._years: dict[int, tuple[Floats, Floats]] = {}
        self._spans: OrderedDict[tuple[int, int, int], _Span] = OrderedDict()
        self._turns_kept = (0, 0, TurnList.empty())

    def heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level at instants, shape (n,)."""
        out = np.full(t_ms.shape, self._mean, dtype=np.float64)
        for first in range(0, t_ms.size, _CHUNK):
            part = slice(first, first + _CHUNK)
            amplitudes, angles = self._arguments(t_ms[part])
            out[part] += (amplitudes * np.cos(angles)).sum(axis=1)
        return out

    def smooth_heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level with the step at New Year spread over two hours, shape (n,)."""
        out = np.full(t_ms.shape, self._mean, dtype=np.float64)
        for first in range(0, t_ms.size, _CHUNK):
            part = slice(first, first + _CHUNK)
            out[part] += self._handed_over(t_ms[part])[0].sum(axis=1)
        return out

    def series(self, start_ms: int, step_ms: int, count: int) -> Floats:
        """Return the level on an even grid, shape (count,); arguments are kept per span."""
        key = (start_ms, step_ms, count)
        span = self._spans.pop(key, None) or self._span(*key)
        self._spans[key] = span
        while len(self._spans) > _SPANS_KEPT:
            self._spans.popitem(last=False)
        out = np.empty(count)
        for first, length, starts in span.segments:
            _multiply_blocks(starts, span.within, out[first : first + length])
        return out

    def breaks(self, start_ms: int, stop_ms: int) -> Milliseconds:
        """Return the instants after start and before stop at which the level may jump."""
        if self._rule == "continuous" or not self._constituents.members:
            return np.empty(0, dtype=np.int64)
        first, last = years_of(np.array([start_ms, stop_ms - 1]))
        return new_years_ms(np.arange(first + 1, last + 1))

    def turns(self, start_ms: int, stop_ms: int) -> TurnList:
        """Return every high and low water with start <= time < stop, in order.

        Those of the last span that was searched are kept: levels, crossings and extremes of
        one span all ask for them.
        """
        first, last, kept = self._turns_kept
        if not (first <= start_ms and stop_ms <= last):
            kept = self._find_turns(start_ms, stop_ms)
            self._turns_kept = (start_ms, stop_ms, kept)
        return kept.within(start_ms, stop_ms)

    def _find_turns(self, start_ms: int, stop_ms: int) -> TurnList:
        if not self._constituents.members or stop_ms <= start_ms:
            return TurnList.empty()
        edges = [*range(start_ms, stop_ms, _LONGEST_SEARCH_MS), stop_ms]
        return TurnList.joined([self._search(*pair) for pair in pairwise(edges)])

    def _search(self, start_ms: int, stop_ms: int) -> TurnList:
        first = (start_ms - _TURN_ANCHOR_MS) // _TURN_STEP_MS
        last = -((_TURN_ANCHOR_MS - stop_ms) // _TURN_STEP_MS)
        grid = _TURN_ANCHOR_MS + np.arange(first - 1, last + 2) * _TURN_STEP_MS
        slopes, curvatures = self._slopes_on_grid(grid)
        times, rising = find_roots(grid, slopes, curvatures, self._slope_evaluation, tolerance=1.0)
        t_ms = np.rint(times).astype(np.int64)
        return TurnList(t_ms, self.heights(t_ms), ~rising).within(start_ms, stop_ms)

    def _arguments(
        self, t_ms: FineMilliseconds, years: NDArray[np.int64] | None = None
    ) -> tuple[Floats, Floats]:
        """Return A f and V + u - g (radians) at instants, each of shape (n, k).

        years: under the yearly rule, whose arguments are carried to each instant; by default
            those of the year it lies in.
        """
        if self._rule == "continuous":
            return self._schureman(t_ms, t_ms)
        own = years_of(t_ms) if years is None else years
        needed, row = np.unique(own, return_inverse=True)
        table = [self._year(int(year)) for year in needed]
        shape = (needed.size, self._rates.size)
        amplitudes = np.array([each[0] for each in table]).reshape(shape)[row]
        angles = np.array([each[1] for each in table]).reshape(shape)[row]
        elapsed = np.asarray(t_ms - new_years_ms(own), dtype=np.float64)
        angles += np.multiply.outer(elapsed, self._rates)
        return amplitudes, angles

    def _schureman(
        self, t_ms: FineMilliseconds, t_nodes_ms: FineMilliseconds
    ) -> tuple[Floats, Floats]:
        """Return A f and V + u - g with V at one set of instants, f and u at another."""
        f, u = self._constituents.f_and_u(t_nodes_ms)
        angles = (self._constituents.v_deg(t_ms) + u - self._lags) % 360
        return self._amplitudes * f, np.deg2rad(angles)

    def _year(self, year: int) -> tuple[Floats, Floats]:
        """Return A f and V0 + u - g (radians) of a year by the yearly rule, each (k,)."""
        if year not in self._years:
            f, argument = self._constituents.yearly(year)
            self._years[year] = self._amplitudes * f, np.deg2rad(argument - self._lags)
        return self._years[year]

    def _handed_over(self, t_ms: FineMilliseconds) -> tuple[Floats, Floats]:
        """Return A f cos and A f sin of V + u - g, each (n, k), passing over at New Year."""
        cosines, sines = _waves(*self._arguments(t_ms))
        if self._rule == "yearly":
            year = _nearest_new_year(t_ms)
            since = t_ms - new_years_ms(year)
            near = np.flatnonzero(np.abs(since) < _HANDOVER_MS)
            x = since[near, np.newaxis] / (2 * _HANDOVER_MS) + 0.5
            weight = x * x * (3 - 2 * x)
            old = _waves(*self._arguments(t_ms[near], year[near] - 1))
            new = _waves(*self._arguments(t_ms[near], year[near]))
            cosines[near] = (1 - weight) * old[0] + weight * new[0]
            sines[near] = (1 - weight) * old[1] + weight * new[1]
        return cosines, sines

    def _slopes_on_grid(self, grid: Milliseconds) -> tuple[Floats, Floats]:
        """Return slope and curvature (per ms, per ms squared) on the grid of turns."""
        span = self._span(int(grid[0]), _TURN_STEP_MS, grid.size)
        k = self._rates.size
        cosines, sines, rates = span.within[:k], span.within[k : 2 * k], self._rates[:, np.newaxis]
        nothing = np.zeros((1, cosines.shape[1]))
        # The level is Re z cos - Im z sin; each derivative turns the pair a quarter.
        first = np.concatenate([-sines * rates, cosines * rates, nothing])
        second = np.concatenate([-cosines * rates**2, -sines * rates**2, nothing])
        slopes, curvatures = np.empty(grid.size), np.empty(grid.size)
        for begin, length, starts in span.segments:
            _multiply_blocks(starts, first, slopes[begin : begin + length])
            _multiply_blocks(starts, second, curvatures[begin : begin + length])
        if self._rule == "yearly":
            since = grid - new_years_ms(_nearest_new_year(grid))
            near = np.flatnonzero(np.abs(since) < _HANDOVER_MS)
            slopes[near], curvatures[near], _ = self._slope_evaluation(grid[near])
        return slopes, curvatures

    def _slope_evaluation(self, t_ms: FineMilliseconds) -> Evaluation:
        """Return the first three derivatives of the level at instants, per ms, each (n,)."""
        cosines, sines = self._handed_over(t_ms)
        return Evaluation(
            -(sines @ self._rates), -(cosines @ self._rates**2), sines @ self._rates**3
        )

    def _span(self, start_ms: int, step_ms: int, count: int) -> _Span:
        block = max(1, round(np.sqrt(count)))
        if self._rule == "continuous":
            block = max(1, min(block, _LONGEST_BLOCK_MS // step_ms))
        turning = np.multiply.outer(self._rates, np.arange(block) * step_ms)
        within = np.concatenate([np.cos(turning), np.sin(turning), np.ones((1, block))])
        segments = []
        for first, length in self._segments(start_ms, step_ms, count):
            blocks = -(-length // block)
            t_ms = start_ms + (first + block * np.arange(blocks)) * step_ms
            if self._rule == "yearly":
                cosines, sines = _waves(*self._arguments(t_ms))
            else:
                cosines, sines = _waves(*self._schureman(t_ms, t_ms + (block - 1) * step_ms // 2))
            mean = np.full((blocks, 1), self._mean)
            segments.append((first, length, np.concatenate([cosines, -sines, mean], axis=1)))
        return _Span(tuple(segments), within)

    def _segments(self, start_ms: int, step_ms: int, count: int) -> list[tuple[int, int]]:
        """Return first index and length of the stretches without a jump."""
        if count == 0:
            return []
        borders = self.breaks(start_ms, start_ms + (count - 1) * step_ms + 1)
        firsts = [0, *(int(-((start_ms - t) // step_ms)) for t in borders), count]
        return [(first, following - first) for first, following in pairwise(firsts)]


def _waves(amplitudes: Floats, angles: Floats) -> tuple[Floats, Floats]:
    """Return amplitude x cosine and amplitude x sine."""
    return amplitudes * np.cos(angles), amplitudes * np.sin(angles)


def _multiply_blocks(starts: Floats, within: Floats, out: Floats) -> None:
    """Fill `out` with the rows of starts @ within laid end to end, cut to its length."""
    block = within.shape[1]
    whole = out.size // block
    np.matmul(starts[:whole], within, out=out[: whole * block].reshape(whole, block))
    rest = out.size - whole * block
    if rest:
        np.matmul(starts[whole], within[:, :rest], out=out[whole * block :])


def _nearest_new_year(t_ms: FineMilliseconds) -> NDArray[np.int64]:
    """Return the year whose 1 January is nearest to each instant."""
    return years_of(t_ms + MS_PER_YEAR // 2)
