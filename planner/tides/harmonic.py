"""Water level as a sum of constituents: at any instants, and fast on an even grid."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.constituents import find
from planner.sites.site import HarmonicConstant, NodeRule
from planner.tides.arguments import Constituents, new_year_ms, years_of
from planner.tides.astronomy import MS_PER_HOUR, Floats, Milliseconds
from planner.tides.roots import Evaluation, find_roots
from planner.tides.turns import TurnList

Phasors = NDArray[np.complex128]

# Direct evaluation works on this many instants at a time, to bound memory.
_CHUNK: Final = 16_384
# Within a block of the fast path f and u are held: over 12 hours the fastest of them (u of
# M1, near 0.3 degrees a day) then errs by less than a tenth of a degree.
_LONGEST_BLOCK_MS: Final = 12 * MS_PER_HOUR
# Turns are bracketed on a grid of this step: seven samples to the period of the fastest
# species in the table (14 cycles a day), so that the slope has at most one extremum a cell.
_TURN_STEP_MS: Final = 900_000
# Around New Year the yearly rule jumps from one year's curve to the next one's. Turns are
# sought on slopes that pass over from one to the other within this time on either side, so
# that a high water that the old year puts at 23:58 and the new one at 00:03 is found once.
# An hour keeps turns apart from each other as long as the two years' times of one turn
# differ by less than 80 minutes, and moves no turn more than half their difference.
_HANDOVER_MS: Final = MS_PER_HOUR
_SPANS_KEPT: Final = 8


@dataclass(frozen=True)
class _Span:
    """The arguments of an even grid: phasors at block starts, and within any block."""

    segments: tuple[tuple[int, int, Floats], ...]  # first index, count, (blocks, 2k)
    within: Floats  # (2k, block)


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
        # Lags worked out on a clock east of UTC are smaller than Greenwich lags by speed x hours.
        self._lags = lags - self._speeds * phase_reference_h
        self._radians_per_ms = np.deg2rad(self._speeds) / MS_PER_HOUR
        self._years: dict[int, NDArray[np.complex128]] = {}
        self._spans: OrderedDict[tuple[int, int, int], _Span] = OrderedDict()

    def heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level at instants, shape (n,)."""
        out = np.full(t_ms.shape, self._mean, dtype=np.float64)
        for first in range(0, t_ms.size, _CHUNK):
            part = slice(first, first + _CHUNK)
            out[part] += self._phasors(t_ms[part]).real.sum(axis=1)
        return out

    def smooth_heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level with the step at New Year spread over a few hours, shape (n,)."""
        out = np.full(t_ms.shape, self._mean, dtype=np.float64)
        for first in range(0, t_ms.size, _CHUNK):
            part = slice(first, first + _CHUNK)
            out[part] += self._handed_over(t_ms[part]).real.sum(axis=1)
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
        out += self._mean
        return out

    def breaks(self, start_ms: int, stop_ms: int) -> Milliseconds:
        """Return the instants after start and before stop at which the level may jump."""
        if self._rule == "continuous" or not self._constituents.members:
            return np.empty(0, dtype=np.int64)
        years = years_of(np.array([start_ms, stop_ms]))
        found = [new_year_ms(year) for year in range(int(years[0]) + 1, int(years[1]) + 1)]
        return np.array([t for t in found if start_ms < t < stop_ms], dtype=np.int64)

    def turns(self, start_ms: int, stop_ms: int) -> TurnList:
        """Return every high and low water with start <= time < stop, in order."""
        if not self._constituents.members or stop_ms <= start_ms:
            return TurnList.empty()
        # The grid is anchored to the epoch, so that a turn comes out the same in any span.
        first = start_ms // _TURN_STEP_MS - 1
        count = -(-stop_ms // _TURN_STEP_MS) + 2 - first
        grid = (first + np.arange(count)) * _TURN_STEP_MS
        slopes, curvatures = self._slopes_on_grid(grid)
        times, rising = find_roots(grid, slopes, curvatures, self._slope_evaluation)
        t_ms = np.rint(times).astype(np.int64)
        inside = (t_ms >= start_ms) & (t_ms < stop_ms)
        t_ms, is_high = t_ms[inside], ~rising[inside]
        return TurnList(t_ms, self.heights(t_ms), is_high)

    def _phasors(self, t_ms: Milliseconds, year: int | None = None) -> Phasors:
        """Return A f exp(i(V + u - g)) at instants, shape (n, k).

        year: under the yearly rule, the year whose arguments are carried to all instants;
            by default each instant's own.
        """
        if self._rule == "continuous":
            return self._schureman(t_ms, t_ms)
        own = years_of(t_ms) if year is None else np.full(t_ms.shape, year)
        out = np.empty((t_ms.size, self._speeds.size), dtype=np.complex128)
        for each in np.unique(own):
            rows = own == each
            elapsed = (t_ms[rows] - new_year_ms(int(each))).astype(np.float64)
            out[rows] = self._year(int(each)) * np.exp(
                1j * np.multiply.outer(elapsed, self._radians_per_ms)
            )
        return out

    def _year(self, year: int) -> NDArray[np.complex128]:
        """Return the phasors of a year at its New Year by the yearly rule, shape (k,)."""
        if year not in self._years:
            f, argument = self._constituents.yearly(year)
            turned: Phasors = np.exp(1j * np.deg2rad(argument - self._lags))
            self._years[year] = self._amplitudes * f * turned
        return self._years[year]

    def _handed_over(self, t_ms: Milliseconds) -> Phasors:
        """Return phasors that pass smoothly from one year's to the next one's, shape (n, k)."""
        phasors = self._phasors(t_ms)
        if self._rule == "continuous":
            return phasors
        for border, near in _near_new_years(t_ms):
            year = int(years_of(np.array([border]))[0])
            x = (t_ms[near] - border) / (2 * _HANDOVER_MS) + 0.5
            weight = (x * x * (3 - 2 * x))[:, np.newaxis]
            old, new = (self._phasors(t_ms[near], year + shift) for shift in (-1, 0))
            phasors[near] = (1 - weight) * old + weight * new
        return phasors

    def _slopes_on_grid(self, grid: Milliseconds) -> tuple[Floats, Floats]:
        """Return slope and curvature (per ms, per ms squared) on the grid of turns."""
        step, count = _TURN_STEP_MS, grid.size
        span = self._span(int(grid[0]), step, count)
        k = self._speeds.size
        rate = np.concatenate([self._radians_per_ms, self._radians_per_ms])
        # With columns (Re z, -Im z) against (cos; sin), a derivative turns them a quarter.
        first = np.concatenate([span.within[k:], -span.within[:k]]) * -rate[:, np.newaxis]
        second = span.within * -(rate**2)[:, np.newaxis]
        slopes, curvatures = np.empty(count), np.empty(count)
        for begin, length, starts in span.segments:
            _multiply_blocks(starts, first, slopes[begin : begin + length])
            _multiply_blocks(starts, second, curvatures[begin : begin + length])
        if self._rule == "yearly":
            for _, near in _near_new_years(grid):
                slopes[near], curvatures[near], _ = self._slope_evaluation(grid[near])
        return slopes, curvatures

    def _slope_evaluation(self, t_ms: Floats | Milliseconds) -> Evaluation:
        """Return the first three derivatives of the level at instants, per ms, each (n,)."""
        whole = np.floor(t_ms).astype(np.int64)
        rest = np.multiply.outer(t_ms - whole, self._radians_per_ms)
        phasors = self._handed_over(whole) * np.exp(1j * rest)
        rate = 1j * self._radians_per_ms
        return Evaluation(
            (phasors * rate).real.sum(axis=1),
            (phasors * rate**2).real.sum(axis=1),
            (phasors * rate**3).real.sum(axis=1),
        )

    def _span(self, start_ms: int, step_ms: int, count: int) -> _Span:
        block = max(1, round(np.sqrt(count)))
        if self._rule == "continuous":
            block = max(1, min(block, _LONGEST_BLOCK_MS // step_ms))
        elapsed = np.arange(block) * step_ms
        turning = np.multiply.outer(self._radians_per_ms, elapsed)
        within = np.concatenate([np.cos(turning), np.sin(turning)])
        segments = []
        for first, length in self._segments(start_ms, step_ms, count):
            blocks = -(-length // block)
            t_ms = start_ms + (first + block * np.arange(blocks)) * step_ms
            z = self._block_phasors(t_ms, block * step_ms)
            segments.append((first, length, np.concatenate([z.real, -z.imag], axis=1)))
        return _Span(tuple(segments), within)

    def _segments(self, start_ms: int, step_ms: int, count: int) -> list[tuple[int, int]]:
        """Return first index and length of the stretches without a jump."""
        if count == 0:
            return []
        borders = self.breaks(start_ms, start_ms + (count - 1) * step_ms + 1)
        firsts = [0, *(int(-((start_ms - t) // step_ms)) for t in borders), count]
        return [(first, following - first) for first, following in pairwise(firsts)]

    def _block_phasors(self, t_ms: Milliseconds, length_ms: int) -> Phasors:
        """Return phasors at block starts, with f and u of the middle of each block."""
        if self._rule == "yearly":
            return self._phasors(t_ms)
        return self._schureman(t_ms, t_ms + length_ms // 2)

    def _schureman(self, t_ms: Milliseconds, t_nodes_ms: Milliseconds) -> Phasors:
        """Return phasors with V at one set of instants and f and u at another."""
        f, u = self._constituents.f_and_u(t_nodes_ms)
        angle = np.deg2rad((self._constituents.v_deg(t_ms) + u - self._lags) % 360)
        return np.asarray(self._amplitudes * f * np.exp(1j * angle))


def _multiply_blocks(starts: Floats, within: Floats, out: Floats) -> None:
    """Fill `out` with the rows of starts @ within laid end to end, cut to its length."""
    block = within.shape[1]
    whole = out.size // block
    np.matmul(starts[:whole], within, out=out[: whole * block].reshape(whole, block))
    rest = out.size - whole * block
    if rest:
        np.matmul(starts[whole], within[:, :rest], out=out[whole * block :])


def _near_new_years(t_ms: Milliseconds) -> list[tuple[int, NDArray[np.bool_]]]:
    """Return each New Year that instants are near to, with which of them are."""
    if t_ms.size == 0:
        return []
    years = years_of(np.array([t_ms.min() - _HANDOVER_MS, t_ms.max() + _HANDOVER_MS]))
    found = []
    for year in range(int(years[0]), int(years[1]) + 1):
        border = new_year_ms(year)
        near = np.abs(t_ms - border) < _HANDOVER_MS
        if near.any():
            found.append((border, near))
    return found
