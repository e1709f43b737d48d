"""The usual year at a place: what each draw of the unknown parameters makes of its water.

The molting chain is run once over three years of the usual water; from the settled year come the
light share and fullness of each day, and how each answers to a moon or a run of molting. The
answers are those of a linear system in steady water, in closed form:

- ready crabs that shed at hazard h follow a hazard swinging at rate w by i w / (i w + h), for a
  good week empties the pool of ready crabs;
- the light share averages molting over ages a..b, which answers by
  (exp(-i w a) - exp(-i w b)) / (i w (b - a));
- the deficit of fullness averages it over ages beyond a with weights exp(-(age - a) / tau),
  which answers by exp(-i w a) / (1 + i w tau);
- crabs younger than a are not caught, and their number swings too.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import LUNATION_D
from planner.estimates import Floats
from planner.molt.dynamics import (
    Window,
    catch_quality,
    fresh_clocks,
    light_window,
    refill_clock,
    run_clocks,
    shedding,
)
from planner.molt.profile import (
    Parameters,
    SignDraws,
    Swings,
    judging,
    parameters_of,
    signs_of,
    swings_of,
)
from planner.molt.recent import Recent
from planner.molt.temperature import UsualWater, year_share
from planner.molt.unknowns import WATER, Unknowns, unknowns

Complexes = NDArray[np.complex128]
Indices = NDArray[np.intp]

DAYS: Final = 365
# Answers to the moon change slowly over the year and are kept for spans of so many days.
ANSWER_DAYS: Final = 5
DRAWS: Final = 512
LUNAR_RATE: Final = 2 * np.pi / LUNATION_D  # radians a day
# The chain forgets where it began in two years, the catch in eight months,
# winter counted in.
_SETTLE_YEARS: Final = 2
_CATCH_DAYS: Final = 240
_LEAST_DEFICIT: Final = 1e-4
_MOST_MISSING: Final = 0.9
_MOST_LIGHT: Final = 0.9
_SEED: Final = 20


@dataclass(frozen=True)
class UsualYear:
    """A settled year in draws: arrays of shape (draws, 365) unless said otherwise.

    log_odds: of a caught legal crab being called light. log_deficit: of 1 - fullness.
    moon_on_light, moon_on_deficit: complex answers of these two to the lunar harmonics of the
    log hazard, shape (draws, 73, 2), one for each five days. runs_on_deficit: how much of what
    a run does to the log odds it does to the log deficit. signs: of single crabs.
    drawn: what all of it was made from.
    """

    drawn: Unknowns
    parameters: Parameters
    swings: Swings
    water_c: Floats
    log_odds: Floats
    log_deficit: Floats
    moon_on_light: Complexes
    moon_on_deficit: Complexes
    runs_on_deficit: Floats
    signs: SignDraws


def day_of_year(days: Sequence[date]) -> Indices:
    """Return where days fall among the 365 of the usual year, shape (n,)."""
    return np.minimum((year_share(days) * DAYS).astype(np.intp), DAYS - 1)


def usual_year(species: str, water: UsualWater, draws: int = DRAWS, seed: int = _SEED) -> UsualYear:
    """Return the usual year of a species in a place's water; kept for the next call."""
    key = (species, draws, seed, *water.key)
    return _YEARS.get(
        key, lambda: settled_year(species, water, unknowns(draws, np.random.default_rng(seed)))
    )


@dataclass(frozen=True)
class Settled:
    """The last year of the run: water, molting a day, light share, memory of the deficit."""

    water_c: Floats
    molts: Floats
    light: Floats
    deficit_d: Floats


def settled_year(species: str, water: UsualWater, drawn: Unknowns) -> UsualYear:
    """Return the usual year that draws of what is not known make."""
    parameters, swings = parameters_of(species, drawn), swings_of(species, drawn)
    scores = np.stack([drawn.score(name) for name in WATER], axis=-1)
    year = water.draws((np.arange(DAYS) + 0.5) / DAYS, scores)
    water_c = np.tile(year, (1, _SETTLE_YEARS + 1))
    molts, _ = run_clocks(parameters, water_c, np.ones(water_c.shape), fresh_clocks(parameters))
    last = slice(_SETTLE_YEARS * DAYS - _CATCH_DAYS, None)
    refill = refill_clock(parameters, water_c[:, last])
    window = light_window(parameters, refill)
    fullness, light = catch_quality(parameters, molts[:, last], refill, window)
    shown = slice(_CATCH_DAYS, None)
    pace = np.diff(refill, axis=1, prepend=0.0)[:, shown]
    settled = Settled(
        water_c=year,
        molts=molts[:, -DAYS:],
        light=light[:, shown],
        deficit_d=parameters.refill_d[:, None] / pace,
    )
    ages = ages_caught_light(window, shown)
    moon_on_light, moon_on_deficit = moon_answers(parameters, settled, ages)
    mistaken = judging(species).mistaken
    called_light = mistaken + (1 - 2 * mistaken) * settled.light
    return UsualYear(
        drawn=drawn,
        parameters=parameters,
        swings=swings,
        water_c=year,
        log_odds=np.log(called_light / (1 - called_light)),
        log_deficit=np.log(np.maximum(1 - fullness[:, shown], _LEAST_DEFICIT)),
        moon_on_light=moon_on_light,
        moon_on_deficit=moon_on_deficit,
        runs_on_deficit=_runs_on_deficit(swings, ages, settled.deficit_d),
        signs=signs_of(species, drawn),
    )


def ages_caught_light(window: Window, shown: slice) -> tuple[Floats, Floats]:
    """Return the least and the greatest age (days) of crabs caught light."""
    noons = np.arange(window.caught_from.shape[1]) + 0.5
    youngest, oldest = noons - window.caught_from, noons - window.light_from
    # A window of no width still answers like a narrow one.
    return youngest[:, shown], np.maximum(oldest, youngest + 0.1)[:, shown]


def moon_answers(
    parameters: Parameters, year: Settled, ages: tuple[Floats, Floats]
) -> tuple[Complexes, Complexes]:
    middles = slice(ANSWER_DAYS // 2, None, ANSWER_DAYS)
    youngest, oldest = (each[:, middles] for each in ages)
    deficit_d, light = year.deficit_d[:, middles], year.light[:, middles]
    molts = year.molts[:, middles]
    hazard = parameters.ready_per_day[:, None] * shedding(parameters, year.water_c[:, middles])
    # Crabs still refused are missing from the catch that shares are taken of.
    missing = molts / (1 - np.minimum(molts * youngest, _MOST_MISSING))
    on_light, on_deficit = [], []
    for harmonic in (1, 2):
        turn = 1j * LUNAR_RATE * harmonic
        molting = turn / (turn + hazard)
        caught, full = np.exp(-turn * youngest), np.exp(-turn * oldest)
        refused = missing * (1 - caught) / turn
        averaged = (caught - full) / (turn * (oldest - youngest))
        # Log odds move faster than the log of a share, the more so the larger it is.
        on_light.append(molting * (averaged + refused) / (1 - np.minimum(light, _MOST_LIGHT)))
        on_deficit.append(molting * (caught / (1 + turn * deficit_d) + refused))
    return np.stack(on_light, axis=-1), np.stack(on_deficit, axis=-1)


def _runs_on_deficit(swings: Swings, ages: tuple[Floats, Floats], deficit_d: Floats) -> Floats:
    """Return the spread of runs averaged over the deficit's memory, to that over light ages.

    The variance of an Ornstein-Uhlenbeck process of memory m averaged over exponential weights
    of memory tau is m / (m + tau); over a span s, nearly 1 / (1 + s / (3 m)).
    """
    memory = swings.runs_memory_d[:, None]
    over_deficit = memory / (memory + deficit_d)
    over_light = 1 / (1 + (ages[1] - ages[0]) / (3 * memory))
    return np.sqrt(np.minimum(over_deficit / over_light, 1.0))


_YEARS: Final[Recent[UsualYear]] = Recent(keep=6)
