"""Where a smooth function crosses zero: an event search that knows nothing of tides."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

# Newton's steps, kept inside the bracket: two or three reach the tolerance; the rest are for
# flat places, where a step falls back to halving.
_ITERATIONS: Final = 60


class Evaluation(NamedTuple):
    """A function with its first and second derivatives at the same points, each (n,)."""

    value: Floats
    slope: Floats
    curvature: Floats


Function = Callable[[Floats], Evaluation]


def find_roots(
    grid: NDArray[np.int64], values: Floats, slopes: Floats, function: Function, tolerance: float
) -> tuple[Floats, Bools]:
    """Return the roots within the grid in order, and whether the function rises there.

    grid: increasing, shape (n,), fine enough that a cell holds at most one extremum.
    values, slopes: the function and its derivative on the grid, shape (n,).
    tolerance: the search ends with a step shorter than this; the root is then much nearer.

    A pair of roots between two grid points of the same sign shows by an extremum between
    them that points towards zero:

        o           o        the slope changes sign, so the bottom is found first,
          .       .          and if it lies on the other side of zero the cell is
        ----.---.----- 0     cut there in two brackets
              '
    """
    points = grid.astype(np.float64)
    positive = values >= 0
    flips = np.flatnonzero(positive[1:] != positive[:-1])
    rising = positive[flips + 1]
    share = values[flips] / (values[flips] - values[flips + 1])
    guess = points[flips] + share * (points[flips + 1] - points[flips])
    roots = _solve(function, points[flips], points[flips + 1], guess, rising, tolerance)

    towards = np.where(positive[:-1], slopes[:-1] < 0, slopes[:-1] > 0)
    away = np.where(positive[1:], slopes[1:] > 0, slopes[1:] < 0)
    dips = np.flatnonzero((positive[1:] == positive[:-1]) & towards & away)
    if dips.size:
        lower, upper, over = points[dips], points[dips + 1], positive[dips]
        halves = (lower + upper) / 2
        bottoms = _solve(_derivative(function), lower, upper, halves, over, tolerance)
        across = (function(bottoms).value >= 0) != over
        lower, bottoms, upper, over = (x[across] for x in (lower, bottoms, upper, over))
        first = _solve(function, lower, bottoms, (lower + bottoms) / 2, ~over, tolerance)
        second = _solve(function, bottoms, upper, (bottoms + upper) / 2, over, tolerance)
        roots = np.concatenate([roots, first, second])
        rising = np.concatenate([rising, ~over, over])

    order = np.argsort(roots, kind="stable")
    return roots[order], rising[order]


def _derivative(function: Function) -> Function:
    def slope(points: Floats) -> Evaluation:
        found = function(points)
        return Evaluation(found.slope, found.curvature, np.zeros_like(found.curvature))

    return slope


def _solve(
    function: Function, lower: Floats, upper: Floats, guess: Floats, rising: Bools, tolerance: float
) -> Floats:
    """Return one root in each bracket: Newton's steps, halving where one would leave it."""
    low, high, x = lower.copy(), upper.copy(), guess.copy()
    active = np.arange(x.size)
    for _ in range(_ITERATIONS):
        if active.size == 0:
            break
        at = x[active]
        value, slope, _unused = function(at)
        before = (value >= 0) != rising[active]
        low[active] = np.where(before, at, low[active])
        high[active] = np.where(before, high[active], at)
        with np.errstate(divide="ignore", invalid="ignore"):
            newton = at - value / slope
        inside = (newton >= low[active]) & (newton <= high[active])
        x[active] = np.where(inside, newton, (low[active] + high[active]) / 2)
        active = active[np.abs(x[active] - at) > tolerance]
    return x
