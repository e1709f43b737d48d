"""How many more hauls would settle it, from the log's own dispersion."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta, tzinfo
from statistics import NormalDist
from typing import Final

from planner.logbook import Haul

POWER: Final = 0.8
ERROR: Final = 0.05
# One good day is not a law: a trip or two never settle anything.
TRIPS_TO_SETTLE: Final = 3
_YEAR_D: Final = 365


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


@dataclass(frozen=True)
class Settling:
    """What a log says about a typical pair of its groups, and what it lacks.

    mean: counts a haul; k: their dispersion; sd_now: standard deviation of the pair's log ratio
    by the hauls so far, infinite when they say nothing; comparisons: how many share the error.
    """

    mean: float
    k: float
    sd_now: float
    comparisons: int = 1

    def hauls_needed(self, ratio: float, k: float | None = None) -> int:
        """Return the hauls of each group still to add to bring a true `ratio` to light.

        The new hauls are taken to be laid out in balance. k: another dispersion than the
        likeliest; hauls are then worth as much as it makes them, those so far too.
        """
        so_far = variance_per_haul(self.mean, ratio, self.k) / self.sd_now**2
        in_all = hauls_for(ratio, self.mean, self.k if k is None else k, self.comparisons)
        return max(0, math.ceil(in_all - so_far - 1e-9))

    @property
    def detectable_ratio(self) -> float | None:
        """Return the true ratio that the hauls so far bring to light; None when none."""
        return detectable_ratio(self.sd_now, self.comparisons) if self.sd_now < 1e3 else None


def trip_days(hauls: Iterable[Haul], zone: tzinfo) -> tuple[date, ...]:
    """Return the local days on which hauls were made, one for each trip, in order."""
    last: dict[tuple[str, str], datetime] = {}
    for haul in hauls:
        if haul.hauled_at is not None:
            trip = (haul.place, haul.trip)
            last[trip] = max(last.get(trip, haul.hauled_at), haul.hauled_at)
    return tuple(sorted(moment.astimezone(zone).date() for moment in last.values()))


def next_trip_days(
    past: Sequence[date], trips: int, today: date, planned: Sequence[date] = ()
) -> tuple[date, ...]:
    """Return the days on which so many further trips should end, at the pace of those past.

    past: days of trips, in order; empty without two of them, as they then have no pace.
    planned: days on which plans end: a trip falls on the first one that its turn allows,
    where there is one within a pace of it.
    """
    if len(past) < 2 or trips < 1:
        return ()
    year = [day for day in past if (past[-1] - day).days < _YEAR_D]
    # A log of more than a year knows the months without trips; a shorter one only its own.
    span = _YEAR_D if len(year) < len(past) else (year[-1] - year[0]).days
    pace = timedelta(days=max(1.0, span / max(len(year) - (len(year) == len(past)), 1)))
    due = max(today, past[-1] + pace)
    days: list[date] = []
    for _ in range(trips):
        fitting = (day for day in sorted(planned) if due <= day < due + pace)
        days.append(next(fitting, due))
        due = _later(days[-1], pace)
    return tuple(days)


def _later(day: date, pace: timedelta) -> date:
    try:
        return day + pace
    except OverflowError:
        return date.max


def _reach(comparisons: int) -> float:
    normal = NormalDist()
    return normal.inv_cdf(1 - ERROR / 2 / comparisons) + normal.inv_cdf(POWER)
