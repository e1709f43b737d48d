"""What a log says of the causes of light crabs, and how forecasts did, as others see it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from typing import Final, Literal

import numpy as np

from planner.estimates import Band, Floats, Interval

# A difference is settled when it is there, or not, with this probability.
SURE: Final = 0.9

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

        Enough are those that bring the 80% interval of the swing to one side of the difference
        if the estimate stays, or else to half the difference to either side. 0 when it is
        settled, None when nothing can be said.
        """
        if self.settled(difference):
            return 0
        if not self.per_trip:
            return None
        wanted = max(abs(self.swing.mean - difference), difference / 2)
        missing = 1 / wanted**2 - 1 / self.half_width**2
        return max(math.ceil(missing / self.per_trip), 1)


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
