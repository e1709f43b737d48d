"""What a log says of the causes of light crabs, and how forecasts did, as others see it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal

import numpy as np

from planner.estimates import Band, Floats, Interval

Cause = Literal["season", "moon", "runs", "place"]


@dataclass(frozen=True)
class Effect:
    """How much one cause moves the light share from its best day to its worst.

    swing: in shares (0.10 = 10 light crabs of 100). draws: the swing in draws of what is not
    known, shape (draws,). trips, crabs: judged ones behind it. trips_to_settle: how many more
    like those logged would settle a difference worth caring about; None when nothing can be said.
    """

    cause: Cause
    swing: Interval
    draws: Floats
    trips: int
    crabs: int
    trips_to_settle: int | None = None

    def p_matters(self, difference: float) -> float:
        """Return the probability that the swing is at least a difference (a share)."""
        return float(np.mean(self.draws >= difference)) if self.draws.size else 0.0


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
class Record:
    """How forecasts of past trips did; scores are means over crabs, smaller is better.

    log scores are negative log likelihoods. All NaN when `trips` is empty.
    """

    trips: tuple[PastForecast, ...]
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
