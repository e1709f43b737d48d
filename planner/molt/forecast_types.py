"""The forecast of how full the crabs will be, as others see it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal

from planner.estimates import Band, Floats

Basis = Literal["prior", "log"]


@dataclass(frozen=True)
class Why:
    """What moves the light share on each day, in shares (0.03 = 3 points); arrays (n,).

    season + moon + runs + place = light_share.mean - yearly average, day by day.
    """

    season: Floats
    moon: Floats
    runs: Floats
    place: Floats


@dataclass(frozen=True)
class Forecast:
    """Fullness (0 empty to 1 full) and share of light crabs on consecutive local days.

    basis: "prior" when no logged trip speaks, "log" when the log was learned from.
    trips: number of logged trips behind it.
    water_c: expected water temperature, NaN where unknown.
    """

    days: tuple[date, ...]
    fullness: Band
    light_share: Band
    why: Why
    yearly_light_share: float
    lunar_age_d: Floats
    water_c: Floats
    basis: Basis
    trips: int
