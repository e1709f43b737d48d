"""Which turn of a reference place an observed turn belongs to."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import minutes64
from planner.estimates import Floats
from planner.tides.observed import ObservedTurns
from planner.tides.tide import Tide

_SEARCH: Final = minutes64(5 * 60)


@dataclass(frozen=True)
class MatchedTurns:
    """Observed turns with the reference's; all of shape (n,), heights above each own datum."""

    delay_min: Floats
    there_m: Floats
    here_m: Floats
    is_high: NDArray[np.bool_]


def match(reference: Tide, observed: ObservedTurns, delay_min: float) -> MatchedTurns:
    """Return observed turns with a height beside the reference's turn of the same kind.

    delay_min: about how much later all turns come here; the nearest turn to that is taken,
    within five hours.
    """
    delay = minutes64(delay_min)
    expected = observed.times - delay
    empty = np.empty(0)
    if expected.size == 0:
        return MatchedTurns(empty, empty, empty, np.empty(0, dtype=np.bool_))
    turns = reference.turns(expected.min() - _SEARCH, expected.max() + _SEARCH)
    rows = []
    for when, at, height, high in zip(
        expected, observed.times, observed.heights_m, observed.is_high, strict=True
    ):
        same = np.flatnonzero(turns.is_high == high)
        if same.size == 0 or not np.isfinite(height):
            continue
        nearest = same[np.abs(turns.times[same] - when).argmin()]
        if np.abs(turns.times[nearest] - when) <= _SEARCH:
            minutes = (at - turns.times[nearest]) / minutes64(1)
            rows.append((minutes, turns.heights[nearest], height, high))
    columns = np.array(rows, dtype=np.float64).reshape(-1, 4).T
    return MatchedTurns(columns[0], columns[1], columns[2], columns[3].astype(np.bool_))
