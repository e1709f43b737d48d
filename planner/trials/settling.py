"""How many more hauls would settle it, from the log's own dispersion."""

from __future__ import annotations

import math
from statistics import NormalDist
from typing import Final

POWER: Final = 0.8
ERROR: Final = 0.05


def needed_sd(ratio: float, comparisons: int = 1) -> float:
    """Return the standard deviation of a log ratio with which a true `ratio` shows up.

    With 80% power at 5% error over so many comparisons (Bonferroni).
    """
    return abs(math.log(ratio)) / _reach(comparisons)


def detectable_ratio(sd: float, comparisons: int = 1) -> float:
    """Return the true ratio that shows up with 80% power when the log ratio has this spread."""
    return math.exp(min(sd * _reach(comparisons), 50.0))


def variance_per_haul(mean: float, ratio: float, k: float) -> float:
    """Return n times the variance of the log ratio of two groups of n hauls each.

    1/m1 + 1/m2 + 2/k (delta method; Zhu and Lakkis 2014, Stat. Med. 33, from memory).
    """
    return 1 / mean + 1 / (mean * ratio) + 2 / k


def hauls_for(ratio: float, mean: float, k: float, comparisons: int = 1) -> float:
    """Return the hauls of each group, from none, that bring a true `ratio` to light."""
    return variance_per_haul(mean, ratio, k) / needed_sd(ratio, comparisons) ** 2


def hauls_still_needed(
    ratio: float, mean: float, k: float, sd_now: float, comparisons: int = 1
) -> int:
    """Return the hauls of each group still to add to a log whose log ratio has the spread sd_now.

    The new hauls are taken to be laid out in balance.
    """
    missing = needed_sd(ratio, comparisons) ** -2 - sd_now**-2
    return max(0, math.ceil(variance_per_haul(mean, ratio, k) * missing - 1e-9))


def _reach(comparisons: int) -> float:
    normal = NormalDist()
    return normal.inv_cdf(1 - ERROR / 2 / comparisons) + normal.inv_cdf(POWER)
