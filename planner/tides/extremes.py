"""The lowest and highest level in any window, from turns and the ends of the window."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from planner.estimates import Floats
from planner.tides.astronomy import Milliseconds

Levels = Callable[[Milliseconds], Floats]


class Lowest(NamedTuple):
    """Lowest levels and when they are reached, each of shape (n,)."""

    heights_m: Floats
    t_ms: Milliseconds


class Knots:
    """Instants between which the level only rises or only falls, ready for range queries.

    t_ms: turns, and both sides of each jump, increasing, shape (n,); heights_m: levels there.
    """

    def __init__(self, t_ms: Milliseconds, heights_m: Floats) -> None:
        self._t_ms = t_ms
        self._heights = heights_m
        self._table = _range_argmin(heights_m)

    def lowest(self, starts: Milliseconds, stops: Milliseconds, levels: Levels) -> Lowest:
        """Return the lowest level in each closed window [start, stop]."""
        ends, where = np.unique(np.concatenate([starts, stops]), return_inverse=True)
        at_ends = levels(ends)[where]
        at_start, at_stop = at_ends[: starts.size], at_ends[starts.size :]
        later = at_stop < at_start
        heights, times = np.where(later, at_stop, at_start), np.where(later, stops, starts)

        first = np.searchsorted(self._t_ms, starts, side="left")
        count = np.searchsorted(self._t_ms, stops, side="right") - first
        some = np.flatnonzero(count > 0)
        if some.size:
            knot = self._argmin(first[some], count[some])
            lower = self._heights[knot] < heights[some]
            heights[some[lower]] = self._heights[knot[lower]]
            times[some[lower]] = self._t_ms[knot[lower]]
        return Lowest(heights, times)

    def _argmin(self, first: NDArray[np.int64], count: NDArray[np.int64]) -> NDArray[np.int64]:
        """Return the index of the lowest knot among `count` from `first` on (count > 0)."""
        level = np.floor(np.log2(count)).astype(np.int64)
        left = self._table[level, first]
        right = self._table[level, first + count - (1 << level)]
        return np.where(self._heights[right] < self._heights[left], right, left)


def _range_argmin(values: Floats) -> NDArray[np.int64]:
    """Return a sparse table: row r holds the argmin of each run of 2**r values."""
    rows = [np.arange(values.size)]
    width = 1
    while 2 * width <= values.size:
        last = rows[-1]
        left, right = last[: values.size - width], last[width:]
        lower = np.where(values[right] < values[left], right, left)
        rows.append(np.concatenate([lower, last[values.size - width :]]))
        width *= 2
    return np.stack(rows)
