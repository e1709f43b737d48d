"""When the level passes a given height: bracketed by turns, then narrowed down."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.estimates import Floats
from planner.tides.astronomy import Milliseconds
from planner.tides.extremes import Levels

# Halvings that bring half a year down to a millisecond.
_HALVINGS: Final = 34


def find_crossings(
    t_ms: Milliseconds, heights_m: Floats, level_m: float, levels: Levels
) -> tuple[Milliseconds, NDArray[np.bool_]]:
    """Return when the level is crossed, to the millisecond, and whether it rises then.

    t_ms, heights_m: instants between which the level is monotone, shape (n,). A crossing is
    the first millisecond on the other side; touching the level from above is none.
    """
    above = heights_m >= level_m
    cells = np.flatnonzero(above[1:] != above[:-1])
    before, after = t_ms[cells].copy(), t_ms[cells + 1].copy()
    rising = above[cells + 1]
    for _ in range(_HALVINGS):
        open_ = np.flatnonzero(after - before > 1)
        if open_.size == 0:
            break
        middle = (before[open_] + after[open_]) // 2
        crossed = (levels(middle) >= level_m) == rising[open_]
        after[open_] = np.where(crossed, middle, after[open_])
        before[open_] = np.where(crossed, before[open_], middle)
    return after, rising
