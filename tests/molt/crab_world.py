"""A world of individual crabs, written apart from the model, for checking forecasts against.

Every crab has its own readiness, shedding temperature, growth, refill and refusal; nothing here
comes from `planner.molt`. A world gives the true share of light crabs among those a trap could
catch on each day, and logs of trips that count some of them.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

import numpy as np

from planner.logbook import TripOutcome

FIRST = date(2021, 1, 1)
_LUNATION_D = 29.530589
_NEW_MOON = date(2021, 1, 13)  # the nearest day; mean lunations from there


@dataclass(frozen=True)
class Nature:
    """What a world is made of, at 25 C where it hangs on temperature."""

    refill_d: float = 12.0
    light_below: float = 0.77
    degree_days: float = 550.0
    shed_above_c: float = 15.5
    growth: float = 1.22
    refused_d: float = 3.3
    molting_share: float = 0.9
    moon: float = 0.0
    moon_age_d: float = 14.8
    runs_sd: float = 0.0
    runs_memory_d: float = 10.0
    colder_c: float = 0.0


@dataclass(frozen=True)
class World:
    """Days from FIRST and the true light share on each, shape (n,)."""

    nature: Nature
    light: np.ndarray

    def share(self, day: date) -> float:
        return float(self.light[(day - FIRST).days])


def drawn_nature(rng: np.random.Generator, **fixed: float) -> Nature:
    """Return a nature at random, of the spread that the literature leaves."""
    values = {
        "refill_d": 11 * np.exp(rng.normal(0, 0.35)),
        "light_below": rng.uniform(0.72, 0.80),
        "degree_days": 600 * np.exp(rng.normal(0, 0.3)),
        "shed_above_c": rng.normal(15.5, 0.8),
        "growth": rng.normal(1.22, 0.04),
        "refused_d": rng.uniform(2.5, 4.5),
        "molting_share": min(0.8 * np.exp(rng.normal(0, 0.3)), 1.0),
        "colder_c": rng.normal(0, 0.6),
        **fixed,
    }
    return Nature(**values)


def water_c(monthly_c, days: int) -> np.ndarray:
    """Return daily water, straight lines between mid-months."""
    day = np.arange(days) % 365.25
    middles = (np.arange(-1, 13) + 0.5) * 365.25 / 12
    around = np.array([monthly_c[-1], *monthly_c, monthly_c[0]])
    return np.interp(day, middles, around)


def simulate(nature: Nature, monthly_c, years: int, rng, crabs: int = 2500) -> World:
    """Follow crabs one by one through the years after one that settles them."""
    spin = 365
    days = spin + 365 * years + 60
    water = np.roll(water_c(monthly_c, days), spin % 365) - nature.colder_c
    age = (np.arange(days) - spin - (_NEW_MOON - FIRST).days) % _LUNATION_D
    moon = np.exp(nature.moon * np.cos(2 * np.pi * (age - nature.moon_age_d) / _LUNATION_D))
    moon /= np.i0(nature.moon)
    run = np.zeros(days)
    keep = np.exp(-1 / nature.runs_memory_d)
    for day in range(1, days):
        run[day] = keep * run[day - 1] + np.sqrt(1 - keep**2) * rng.normal(0, nature.runs_sd)
    runs = np.exp(run - nature.runs_sd**2 / 2)

    tau = nature.refill_d * np.exp(rng.normal(0, 0.15, crabs))
    shed_above = nature.shed_above_c + rng.normal(0, 0.4, crabs)
    refused = nature.refused_d * np.exp(rng.normal(0, 0.12, crabs))
    judged_light = nature.light_below + rng.normal(0, 0.015, crabs)
    molts = rng.random(crabs) < nature.molting_share
    need = nature.degree_days * rng.gamma(11, 1 / 11, crabs)
    warmth = rng.uniform(0, 1, crabs) * need
    clock = np.full(crabs, 100.0)  # days at 25 C since the molt
    fullness = np.ones(crabs)
    light = np.zeros(days)
    for day in range(days):
        warm = max(water[day] - 10.0, 0.0)
        pace = 2.5 ** ((water[day] - 25) / 10) if warm > 0 else 0.0
        warmth += warm
        clock += pace
        fullness += (1 - fullness) * (1 - np.exp(-pace / tau))
        ready = molts & (warmth >= need) & (water[day] > shed_above)
        chance = 1 - np.exp(-0.14 * moon[day] * runs[day])
        shed = ready & (rng.random(crabs) < chance)
        count = int(shed.sum())
        if count:
            kept = rng.uniform(0.9, 1.0, count) / rng.normal(nature.growth, 0.03, count) ** 3
            fullness[shed] *= kept
            clock[shed] = 0
            warmth[shed] = 0
            need[shed] = nature.degree_days * rng.gamma(11, 1 / 11, count)
        caught = clock > refused
        light[day] = np.mean(fullness[caught] < judged_light[caught])
    return World(nature, np.clip(light[spin:], 0.003, 1))


def trip_days(years: int, a_year: int, rng) -> list[date]:
    """Return the days of trips: weekends from April to November at random."""
    days = []
    for year in range(years):
        saturdays = [
            day
            for day in (date(FIRST.year + year, 4, 1) + timedelta(i) for i in range(235))
            if day.weekday() == 5
        ]
        days += [saturdays[i] for i in sorted(rng.choice(len(saturdays), a_year, replace=False))]
    return days


def logged(world: World, days: list[date], rng, place: str, size: float = 30.0):
    """Return the outcomes of trips: 8 to 30 crabs judged, those of one trip alike."""
    outcomes = []
    for day in days:
        judged = int(rng.integers(8, 31))
        share = np.clip(world.share(day), 0.002, 0.998)
        light = rng.binomial(judged, rng.beta(size * share, size * (1 - share)))
        when = datetime(day.year, day.month, day.day, 16, tzinfo=UTC)
        outcomes.append(TripOutcome(str(day), place, when, 12, judged, judged, int(light), None))
    return outcomes
