"""Water temperature day by day: monthly means or a guess by latitude, put right by readings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import Final

import numpy as np

from planner.clock import YEAR_D
from planner.estimates import Floats

_COLDEST_SEA_C: Final = -1.9
# How far the usual water may lie from the monthly means that a user enters: in level, in swing
# and in season; judgement.
_MEANS_SD_C: Final = (0.8, 0.4, 0.4)
# How far a reading strays from the usual water: weather, hour, depth, thermometer; judgement.
_READING_SD_C: Final = 1.5
# Readings this near to one another share their weather and count as one.
_SAME_WEATHER_D: Final = 21
# A warm or cold spell is half forgotten in two weeks: part of what a reading strays by is
# weather that lasts, the rest its hour and thermometer; judgement.
_SPELL_MEMORY_D: Final = 20.0
_SPELL_SHARE: Final = 0.6


@dataclass(frozen=True)
class Reading:
    """A logged water temperature (degrees C) and its local day."""

    day: date
    water_c: float


@dataclass(frozen=True)
class UsualWater:
    """What is believed of a place's water through the year.

    Three coefficients, normal with `mean` (3,) and covariance `spread` (3, 3), of a level, a
    wave that peaks at the warmest time and one a quarter of a year off are added to the curve
    of the monthly means, or stand alone without any.
    """

    monthly_c: tuple[float, ...] | None
    warmest: float
    mean: Floats
    spread: Floats
    readings: tuple[Reading, ...]

    @property
    def known(self) -> bool:
        """Tell whether anything was said of this place's water."""
        return self.monthly_c is not None or bool(self.readings)

    @cached_property
    def key(self) -> tuple[object, ...]:
        """What makes two waters the same."""
        return (self.monthly_c, self.warmest, self.mean.tobytes(), self.spread.tobytes())

    def expected(self, share: Floats) -> Floats:
        """Return the usual temperature at shares of the year, shape (n,)."""
        return np.maximum(self._curve(share) + self.mean @ self._waves(share), _COLDEST_SEA_C)

    def draws(self, share: Floats, scores: Floats) -> Floats:
        """Return possible usual temperatures, shape (draws, n).

        scores: standard normal draws for the three coefficients, shape (draws, 3).
        """
        coefficients = self.mean + scores @ np.linalg.cholesky(self.spread).T
        water_c = self._curve(share) + coefficients @ self._waves(share)
        return np.maximum(water_c, _COLDEST_SEA_C)

    def spell(self, days: Sequence[date]) -> Floats:
        """Return how much warmer than usual each day should be by the last reading before it."""
        ordinals = np.array([day.toordinal() for day in days], dtype=np.float64)
        warmer = np.zeros(ordinals.shape)
        for reading in self.readings:
            gone = ordinals - reading.day.toordinal()
            off = reading.water_c - self.expected(year_share([reading.day]))[0]
            faded = _SPELL_SHARE * off * np.exp(-gone / _SPELL_MEMORY_D)
            warmer = np.where(gone >= 0, faded, warmer)
        return warmer

    def _curve(self, share: Floats) -> Floats:
        if self.monthly_c is None:
            return np.zeros(share.shape)
        return from_monthly_means(self.monthly_c, share)

    def _waves(self, share: Floats) -> Floats:
        return _waves(share, self.warmest)


def usual_water(
    monthly_c: Sequence[float] | None, latitude_deg: float, readings: Sequence[Reading] = ()
) -> UsualWater:
    """Return what to believe of a place's water.

    Without means the guess is a yearly wave whose level falls and whose swing grows with
    latitude; its spread is wide, so that the forecast widens rather than stops (judgement).
    Readings correct either by Bayesian regression on the three coefficients.
    """
    warmest = 0.60 if latitude_deg >= 0 else 0.10
    poleward = abs(latitude_deg)
    if monthly_c is not None:
        mean, sd = np.zeros(3), np.array(_MEANS_SD_C)
    else:
        mean = np.array([29 - 0.36 * poleward, 0.15 * poleward, 0.0])
        sd = np.array([3.0, 0.3 + 0.04 * poleward, 0.3 + 0.03 * poleward])
    ordered = tuple(sorted(readings, key=lambda each: (each.day, each.water_c)))
    months = None if monthly_c is None else tuple(monthly_c)
    prior = UsualWater(months, warmest, mean, np.diag(sd**2), ordered)
    if not ordered:
        return prior
    share = year_share([reading.day for reading in ordered])
    waves = _waves(share, warmest)
    off = np.array([reading.water_c for reading in ordered]) - prior.expected(share)
    ordinals = np.array([reading.day.toordinal() for reading in ordered])
    near = np.abs(ordinals[:, None] - ordinals) <= _SAME_WEATHER_D
    weight = 1 / near.sum(axis=1) / _READING_SD_C**2
    precision = np.diag(1 / sd**2) + (waves * weight) @ waves.T
    spread = np.linalg.inv(precision)
    return UsualWater(months, warmest, mean + spread @ (waves * weight @ off), spread, ordered)


def year_share(days: Sequence[date]) -> Floats:
    """Return how much of the year is gone at the noon of each day, 0 to 1, shape (n,)."""
    gone = [(day.timetuple().tm_yday - 0.5) / YEAR_D for day in days]
    return np.array(gone, dtype=np.float64)


def from_monthly_means(monthly_c: Sequence[float], share: Floats) -> Floats:
    """Return the temperature at shares of the year, shape (n,), smooth and mean-preserving.

    A Fourier series through the twelve means, each harmonic divided by what averaging over a
    twelfth of the year takes from it, so that the mean over each month is the mean given.
    The fastest harmonic is left out: rounded means would only make it ring.
    """
    means = np.asarray(monthly_c, dtype=np.float64)
    coefficients = np.fft.rfft(means) / 12
    middle = 0.5 / 12
    temperature = np.full(share.shape, coefficients[0].real)
    for k in range(1, 6):
        taken = np.sinc(k / 12)
        wave = coefficients[k] / taken * np.exp(2j * np.pi * k * (share - middle))
        temperature += 2 * wave.real
    warmer: Floats = np.maximum(temperature, _COLDEST_SEA_C)
    return warmer


def _waves(share: Floats, warmest: float) -> Floats:
    angle = 2 * np.pi * (share - warmest)
    return np.stack([np.ones(share.shape), np.cos(angle), np.sin(angle)])
