"""Observed high and low waters, set beside the predicted ones."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_MINUTE, Instants, minutes64
from planner.estimates import Floats
from planner.tides.tide import Tide

# An observed turn is compared with the nearest predicted one of its kind within this time.
_SEARCH: Final = minutes64(8 * 60)


@dataclass(frozen=True)
class ObservedTurns:
    """High and low waters that somebody saw, in order of time.

    times: `datetime64[ms]` UTC; heights_m: above the place's datum, NaN where only the time
    was seen; is_high; all of shape (n,).
    """

    times: Instants
    heights_m: Floats
    is_high: NDArray[np.bool_]


@dataclass(frozen=True)
class Comparison:
    """Observed less predicted at matching turns.

    time_min, height_m: difference of each turn, shape (n,), NaN where there is no match or no
    height. Biases are means, scatters standard deviations about them (NaN for fewer than two).
    """

    observed: ObservedTurns
    time_min: Floats
    height_m: Floats
    matched: int
    time_bias_min: float
    time_scatter_min: float
    height_bias_m: float
    height_scatter_m: float


def compare(tide: Tide, observed: ObservedTurns) -> Comparison:
    """Return how observed high and low waters differ from the predicted ones."""
    times, heights = _differences(tide, observed)
    return Comparison(
        observed,
        times,
        heights,
        int(np.isfinite(times).sum()),
        *_mean_and_scatter(times),
        *_mean_and_scatter(heights),
    )


def _differences(tide: Tide, observed: ObservedTurns) -> tuple[Floats, Floats]:
    minutes = np.full(observed.times.shape, np.nan)
    heights = np.full(observed.times.shape, np.nan)
    if observed.times.size == 0:
        return minutes, heights
    turns = tide.turns(observed.times.min() - _SEARCH, observed.times.max() + _SEARCH)
    for kind in (True, False):
        ours, theirs = observed.is_high == kind, turns.is_high == kind
        if not ours.any() or not theirs.any():
            continue
        apart = observed.times[ours][:, np.newaxis] - turns.times[theirs]
        nearest = np.abs(apart).argmin(axis=1)
        gap = apart[np.arange(nearest.size), nearest]
        near = np.abs(gap) <= _SEARCH
        minutes[ours] = np.where(near, gap.astype(np.float64) / MS_PER_MINUTE, np.nan)
        predicted = turns.heights[theirs][nearest]
        heights[ours] = np.where(near, observed.heights_m[ours] - predicted, np.nan)
    return minutes, heights


def _mean_and_scatter(values: Floats) -> tuple[float, float]:
    known = values[np.isfinite(values)]
    mean = float(known.mean()) if known.size else math.nan
    return mean, float(known.std(ddof=1)) if known.size > 1 else math.nan
