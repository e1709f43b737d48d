"""Water temperature day by day, from twelve monthly means or from a guess by latitude."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

import numpy as np

from planner.estimates import Floats

_YEAR_D: Final = 365.2425
_COLDEST_SEA_C: Final = -1.9
# How far a year's water strays from the monthly means that a user enters; judgement.
_ANOMALY_SD_C: Final = 0.8


def year_share(days: Sequence[date]) -> Floats:
    """Return how much of the year is gone at the noon of each day, 0 to 1, shape (n,)."""
    gone = [(day.timetuple().tm_yday - 0.5) / _YEAR_D for day in days]
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


def draw_temperatures(
    monthly_c: Sequence[float] | None,
    latitude_deg: float,
    share: Floats,
    draws: int,
    rng: np.random.Generator,
) -> Floats:
    """Return possible temperatures, shape (draws, n): near the means, or anything plausible.

    Without means the guess is a yearly wave whose level falls with latitude; its spread is
    wide, so that the forecast widens rather than stops (judgement).
    """
    if monthly_c is not None:
        anomaly = rng.normal(0, _ANOMALY_SD_C, (draws, 1))
        return np.maximum(from_monthly_means(monthly_c, share) + anomaly, _COLDEST_SEA_C)
    poleward = abs(latitude_deg)
    level = rng.normal(29 - 0.36 * poleward, 3.0, (draws, 1))
    swing = rng.uniform(0.08, 0.22, (draws, 1)) * poleward
    warmest = (0.60 if latitude_deg >= 0 else 0.10) + rng.normal(0, 0.03, (draws, 1))
    wave = level + swing * np.cos(2 * np.pi * (share - warmest))
    return np.maximum(wave, _COLDEST_SEA_C)
