"""Which delay and which scale bring a prediction nearest to observed high and low waters."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.clock import Instants, minutes64
from planner.estimates import Floats
from planner.tides.observed import ObservedTurns, compare
from planner.tides.tide import Tide

_STEP_MIN: Final = 30
_WIDEST_MIN: Final = 14 * 60
# Shifts whose mean square is within this factor of the best count as equally good.
_EQUALLY_GOOD: Final = 1.3
_FEWEST_HEIGHTS: Final = 4


@dataclass(frozen=True)
class Alignment:
    """Observed level = scale x (predicted, `shift_min` later) + a constant.

    scale is None where too few heights were seen for one.
    """

    shift_min: float
    scale: float | None


def align(tide: Tide, observed: ObservedTurns) -> Alignment:
    """Return the shift and scale of the prediction that fit observed turns best.

    Heights tell which tide an observation belongs to, so they choose among coarse shifts;
    the times of turns, which are sharper, then place it. Of nearly equal fits the least shift
    is taken. Without heights the shift is known to half a tide at most.
    """
    known = np.isfinite(observed.heights_m)
    if known.sum() < _FEWEST_HEIGHTS:
        return Alignment(_median_delay(tide, observed, 0.0), None)
    times, heights = observed.times[known], observed.heights_m[known]
    shifts = np.arange(-_WIDEST_MIN, _WIDEST_MIN + 1, _STEP_MIN)
    costs = np.array([_line(tide, times, heights, float(shift))[1] for shift in shifts])
    coarse = float(min(shifts[costs <= _EQUALLY_GOOD * costs.min() + 1e-6], key=abs))
    shift = coarse + _median_delay(tide, observed, coarse)
    return Alignment(shift, _line(tide, times, heights, shift)[0])


def levels_shifted(tide: Tide, times: Instants, shift_min: float) -> Floats:
    """Return the predicted levels at instants if everything came `shift_min` later."""
    return tide.heights(times - minutes64(shift_min))


def turns_unshifted(observed: ObservedTurns, shift_min: float) -> ObservedTurns:
    """Return observed turns as they would be without a delay of `shift_min`."""
    moved = observed.times - minutes64(shift_min)
    return ObservedTurns(moved, observed.heights_m, observed.is_high)


def _line(tide: Tide, times: Instants, heights: Floats, shift_min: float) -> tuple[float, float]:
    """Return the slope (not negative) of observed on predicted and the mean square left over."""
    predicted = levels_shifted(tide, times, shift_min)
    varying, seen = predicted - predicted.mean(), heights - heights.mean()
    power = float(varying @ varying)
    slope = max(0.0, float(varying @ seen) / power) if power > 0 else 0.0
    return slope, float(((seen - slope * varying) ** 2).mean())


def _median_delay(tide: Tide, observed: ObservedTurns, shift_min: float) -> float:
    minutes = compare(tide, turns_unshifted(observed, shift_min)).time_min
    known = minutes[np.isfinite(minutes)]
    return float(np.median(known)) if known.size else 0.0
