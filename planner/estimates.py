"""An estimate and how sure it is; every interval in the program is an 80% interval."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

INTERVAL_TAILS = (0.10, 0.90)
# Standard deviations from the middle of a normal distribution to either tail.
SD_TO_TAIL: Final = 1.2816


@dataclass(frozen=True)
class Interval:
    """A mean with the ends of its 80% interval."""

    mean: float
    low: float
    high: float


@dataclass(frozen=True)
class Band:
    """Means with the ends of their 80% intervals; three arrays of one shape (n,)."""

    mean: Floats
    low: Floats
    high: Floats

    def at(self, index: int) -> Interval:
        """Return the estimate at one index."""
        return Interval(float(self.mean[index]), float(self.low[index]), float(self.high[index]))


def band_of_draws(draws: Floats) -> Band:
    """Return mean and 80% interval over draws of shape (draws, n)."""
    low, high = np.quantile(draws, INTERVAL_TAILS, axis=0)
    return Band(draws.mean(axis=0), low, high)


def interval_of_draws(draws: Floats) -> Interval:
    """Return mean and 80% interval over draws of shape (draws,)."""
    low, high = np.quantile(draws, INTERVAL_TAILS)
    return Interval(float(draws.mean()), float(low), float(high))
