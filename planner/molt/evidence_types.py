"""What a log says of the causes of light crabs, and how forecasts did, as others see it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from statistics import NormalDist
from typing import Final, Literal

import numpy as np

from planner.estimates import Band, Floats, Interval

# A difference is settled when it is there, or not, with this probability.
SURE: Final = 0.9

_NORMAL: Final = NormalDist()
# However near the difference the estimate is, so many times what is known is always enough.
_MOST_INFORMATION: Final = 8.0

Cause = Literal["season", "moon", "runs", "place"]


@dataclass(frozen=True)
class Effect:
    """How much one cause moves the light share from its best day to its worst.

    swing: in shares (0.10 = 10 light crabs of 100). draws: the swing in draws of what is not
    known, shape (draws,). trips, crabs: judged ones behind it. half_width: of the swing's 80%
    interval. per_trip: what one more trip adds to 1 / half_width^2; 0 when nothing can be said.
    """

    cause: Cause
    swing: Interval
    draws: Floats
    trips: int
    crabs: int
    half_width: float = 0.0
    per_trip: float = 0.0

    def p_matters(self, difference: float) -> float:
        """Return the probability that the swing is at least a difference (a share)."""
        return float(np.mean(self.draws >= difference)) if self.draws.size else 0.0

    def settled(self, difference: float) -> bool:
        """Return whether the swing is known to be at least a difference, or less."""
        return not 1 - SURE < self.p_matters(difference) < SURE

    def trips_to_settle(self, difference: float) -> int | None:
        """Return how many more trips like those logged would settle a difference (a share).

        After so many it is as likely as not settled: the estimate will move, by as much as the
        trips will tell more. 0 when it is settled, None when nothing can be said.
        """
        if self.settled(difference):
            return 0
        if not self.per_trip:
            return None
        times = _information_to_settle(self.p_matters(difference))
        return max(math.ceil((times - 1) / self.half_width**2 / self.per_trip), 1)


@dataclass(frozen=True)
class Curve:
    """The light share over days of the lunation or of the year; x_d of shape (n,)."""

    x_d: Floats
    light_share: Band


@dataclass(frozen=True)
class PastForecast:
    """A judged trip as it was forecast from earlier trips only, beside what came."""

    trip: str
    day: date
    forecast: Interval
    judged: int
    light: int


@dataclass(frozen=True)
class Reliable:
    """Past trips of like forecasts together: what was forecast of their crabs, and what came.

    came: share of light crabs with its 80% interval.
    """

    forecast: float
    came: Interval
    trips: int
    crabs: int


@dataclass(frozen=True)
class Record:
    """How forecasts of past trips did; scores are means over crabs, smaller is better.

    log scores are negative log likelihoods. All NaN when `trips` is empty. reliability: from the
    lowest forecasts to the highest, empty when there are too few trips for two groups.
    """

    trips: tuple[PastForecast, ...]
    reliability: tuple[Reliable, ...]
    brier: float
    brier_season_only: float
    brier_running_mean: float
    log_score: float
    log_score_season_only: float
    log_score_running_mean: float


@dataclass(frozen=True)
class Evidence:
    """Everything learned from a place's log; effects from the largest swing to the smallest."""

    effects: tuple[Effect, ...]
    moon: Curve
    season: Curve
    record: Record
    trips: int
    crabs: int


def _information_to_settle(p: float) -> float:
    """Return how many times what is known now settles a difference as likely as not.

    p: the probability now that the difference is there. With t times the information a normal
    estimate, now z standard deviations from the difference, will have moved by a standard
    deviation of sqrt(1 - 1 / t) of what it has now, and must end 1.28 of the remaining
    1 / sqrt(t) beyond the difference, on either side.
    """
    z, sure = abs(_NORMAL.inv_cdf(p)), _NORMAL.inv_cdf(SURE)
    low, high = 1.0, _MOST_INFORMATION
    for _ in range(40):
        times = (low + high) / 2
        needed, moved = sure / math.sqrt(times), math.sqrt(1 - 1 / times)
        likely = _NORMAL.cdf((z - needed) / moved) + _NORMAL.cdf((-z - needed) / moved)
        low, high = (low, times) if likely >= 0.5 else (times, high)
    return high
