"""What the log says of the causes: swings in the light share, curves, what would settle them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

import numpy as np

from planner.clock import LUNATION_D
from planner.estimates import SD_TO_TAIL, Floats, Interval, band_of_draws, interval_of_draws
from planner.logbook import Log
from planner.molt.curves import PosteriorDraws, share
from planner.molt.evidence_types import Cause, Curve, Effect, Evidence
from planner.molt.learning import Learned, learn, season_only
from planner.molt.profile import judging
from planner.molt.record import record_of
from planner.molt.year import ANSWER_DAYS, DAYS, Indices
from planner.sites.site import Site

_MOON_STEPS: Final = 60
_YEAR_STEP_D: Final = 5
_SEASON_STEP_D: Final = 15
_USUALLY_JUDGED: Final = 12.0
_FEWEST_TO_COUNT_ON: Final = 10


def evidence(
    site: Site,
    log: Log | None,
    seed: int = 0,
    checkpoint: Callable[[], None] = lambda: None,
) -> Evidence | None:
    """Return what the log says of a place, None when no crab was judged there.

    Raises RangeError when a trip is outside the ephemeris.
    """
    learned = learn(site, log, checkpoint)
    trips = learned.trips
    if not trips.counted_here.any():
        return None
    without = season_only(learned, site.species, checkpoint)
    draws = PosteriorDraws(learned, seed)
    checkpoint()
    season = share(draws.season_log_odds(_every(_YEAR_STEP_D)) + draws.level)
    days = molting_days(learned)
    moon = moon_curves(draws, days)
    swings: dict[Cause, Floats] = {
        "season": season.max(axis=1) - season.min(axis=1),
        "moon": moon.max(axis=1) - moon.min(axis=1),
        "runs": _runs_swing(draws, days),
        "place": _place_swing(draws),
    }
    here, crabs = int(trips.counted_here.sum()), trips.crabs_here
    effects = []
    for cause, swing in swings.items():
        interval = _holding(interval_of_draws(swing))
        settling = (
            _moon_settling(learned, draws, days, site.species)
            if cause == "moon"
            else _settling_by_trips(interval, here)
        )
        effects.append(Effect(cause, interval, swing, here, crabs, *settling))
    effects.sort(key=lambda effect: -effect.swing.mean)
    ages = np.arange(_MOON_STEPS + 1) / _MOON_STEPS * LUNATION_D
    return Evidence(
        effects=tuple(effects),
        moon=Curve(ages, band_of_draws(moon)),
        season=Curve(_every(_YEAR_STEP_D).astype(np.float64), band_of_draws(season)),
        record=record_of(learned, without, judging(site.species).alike_size),
        trips=here,
        crabs=crabs,
    )


def molting_days(learned: Learned) -> Indices:
    """Return days among the 365, two weeks apart, of the warmer half of the molting season.

    In cooler water crabs fill more slowly and answer to the moon later: a mean over all of the
    year would blur it. The warmer half of the year where the water never lets crabs shed.
    """
    days = _every(_SEASON_STEP_D)
    year = learned.year
    water_c = learned.weights @ year.water_c[:, days]
    sheds = water_c > learned.weights @ year.parameters.molt_above_c
    season = water_c[sheds] if sheds.any() else water_c
    return days[water_c >= np.median(season)]


def moon_curves(draws: PosteriorDraws, days: Indices) -> Floats:
    """Return the light share over one lunation, averaged over days, shape (draws, 61)."""
    base = draws.season_log_odds(days) + draws.level
    phases = np.arange(_MOON_STEPS + 1) / _MOON_STEPS * 2 * np.pi
    curves = [
        share(base + draws.moon_log_odds(days, np.full(days.size, phase))).mean(axis=1)
        for phase in phases
    ]
    return np.stack(curves, axis=1)


def _runs_swing(draws: PosteriorDraws, days: Indices) -> Floats:
    base = draws.season_log_odds(days) + draws.level
    sd = draws.learned.year.swings.runs_sd[draws.which, None]
    worst = share(base + SD_TO_TAIL * sd - sd**2 / 2)
    swing: Floats = (worst - share(base - SD_TO_TAIL * sd - sd**2 / 2)).mean(axis=1)
    return swing


def _place_swing(draws: PosteriorDraws) -> Floats:
    season = draws.season_log_odds(_every(_YEAR_STEP_D))
    moved = share(season + draws.level) - share(season)
    swing: Floats = np.abs(moved.mean(axis=1))
    return swing


def _moon_settling(
    learned: Learned, draws: PosteriorDraws, days: Indices, species: str
) -> tuple[float, float]:
    """Return the half width of the lunar swing's interval, and what a trip adds to it.

    A trip of n judged crabs tells the log odds with variance
    (1 + (n - 1) / (size + 1)) / (n p (1 - p)) + runs_sd^2, and half of that information goes
    into each of the two coefficients of the first harmonic.
    """
    light = float(share(draws.season_log_odds(days) + draws.level).mean())
    size = judging(species).alike_size
    judged = learned.trips.judged[learned.trips.judged > 0]
    crabs = float(np.median(judged)) if judged.size else _USUALLY_JUDGED
    runs = float(np.mean(learned.year.swings.runs_sd[draws.which] ** 2))
    noise = (1 + (crabs - 1) / (size + 1)) / (crabs * light * (1 - light)) + runs
    answers = np.abs(learned.year.moon_on_light[draws.which[:, None], days // ANSWER_DAYS, 0])
    answer = float(answers.mean())
    half_width_per_sd = SD_TO_TAIL * 2 * answer * light * (1 - light)
    known_sd = float(draws.coefficients[:, 2:4].std(axis=0).mean())
    return known_sd * half_width_per_sd, answer**2 / 2 / noise / half_width_per_sd**2


def _settling_by_trips(swing: Interval, trips: int) -> tuple[float, float]:
    """Return the half width of a swing's interval, and what a trip adds to it.

    As if the interval had narrowed with the root of the trips; what was known before the log is
    counted as theirs, so the figure is a rough one, and none is given for few trips.
    """
    half_width = (swing.high - swing.low) / 2
    if trips < _FEWEST_TO_COUNT_ON or half_width == 0:
        return half_width, 0.0
    return half_width, 1 / (trips * half_width**2)


def _every(step_d: int) -> Indices:
    return np.arange(0, DAYS, step_d)


def _holding(interval: Interval) -> Interval:
    """Return an interval that holds its mean; a long tail can carry the mean past an end."""
    low, high = min(interval.low, interval.mean), max(interval.high, interval.mean)
    return Interval(interval.mean, low, high)
