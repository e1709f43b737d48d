"""What the forecast makes of simulated worlds: python -m tests.benchmarks.molt_worlds [worlds].

Individual crabs (tests/molt/crab_world.py) in worlds of a known nature, four seasons of 20 trips
each. At several lengths of the log the light share of the next days is forecast and scored by
the expected log score under the true share, beside forecasters that know more or less.
"""

from __future__ import annotations

import sys
from collections import defaultdict
from dataclasses import dataclass, replace
from datetime import date, timedelta
from pathlib import Path

import numpy as np

from planner.assets import demo_place
from planner.clock import day_edges, days_between
from planner.molt.belief import Belief, Trip
from planner.molt.curves import PosteriorDraws, share, span_of
from planner.molt.forecasting import forecast_learned
from planner.molt.learning import Learned, learn_outcomes, season_only
from planner.molt.profile import Judging
from planner.molt.trips_judged import days_of, judged_trips
from planner.molt.weighing import moon_curves
from planner.molt.year import usual_year
from planner.sites import load_site
from planner.sky import lunar_phase_angle

sys.path.insert(0, str(Path(__file__).parents[1] / "molt"))
from crab_world import drawn_nature, logged, simulate, trip_days

NATURES = {
    "no moon, no runs": {},
    "strong moon": {"moon": 1.0, "refill_d": 18.0},
    "no moon, runs": {"runs_sd": 0.8},
    "as the prior has it": None,
}
CUTS = (4, 15, 30, 45, 60, 67, 75)
SEASONS, A_SEASON = 4, 20
AHEAD_D, SOON_D = 14, 5
SITE = load_site(demo_place())
LUNATION_D = 29.530589
# In cooler water crabs fill more slowly and the lightest days come later: compare like with like.
SUMMER = np.arange(120, 300, 15)


@dataclass(frozen=True)
class Told:
    """The true season: mean light share of many calm years on each of 365 days, (365,)."""

    light: np.ndarray

    def on(self, days):
        return self.light[[min(day.timetuple().tm_yday, 365) - 1 for day in days]]


@dataclass(frozen=True)
class Moon:
    """After 60 trips: probability of 10 points or more, days off the lightest age, true swing."""

    matters: float
    days_off: float
    swing: float


def main(worlds: int) -> None:
    for name, fixed in NATURES.items():
        found = [weigh(number, fixed) for number in range(worlds)]
        show(name, found)


def weigh(number, fixed):
    """Return the scores of one world by length of log, and what its log says of the moon."""
    rng = np.random.default_rng(500 + number)
    if fixed is None:
        fixed = {"moon": abs(rng.normal(0, 0.3)), "runs_sd": abs(rng.normal(0, 0.5))}
    nature = drawn_nature(rng, moon_age_d=rng.uniform(0, LUNATION_D), **fixed)
    world = simulate(nature, SITE.monthly_water_c, SEASONS + 1, rng)
    calm = simulate(replace(nature, moon=0.0, runs_sd=0.0), SITE.monthly_water_c, 10, rng).light
    day_of = (np.arange(calm.size) % 365.25).astype(int)
    told = Told(np.array([calm[day_of == day].mean() for day in range(365)]))
    outcomes = logged(world, trip_days(SEASONS, A_SEASON, rng), rng, SITE.name)
    lightest, true_swing = lightest_age(world)
    prior = learn_outcomes(SITE, ())
    scores = {}
    for cut in CUTS:
        known = tuple(outcomes[:cut])
        learned = learn_outcomes(SITE, known)
        span = span_after(learned.trips.days[-1])
        true = np.array([world.share(day) for day in span.days])
        still = season_only(learned, SITE.species, lambda: None)
        light, judged = learned.trips.light.sum(), learned.trips.judged.sum()
        forecasts = {
            "model": means(learned, span),
            "season only": means(still, span),
            "prior": means(prior, span),
            "told season": told.on(span.days),
            "running mean": np.full(AHEAD_D, (light + 0.2) / (judged + 2)),
            "knows all": all_knowing(nature, world, told, known, span),
        }
        for forecaster, mean in forecasts.items():
            scores[forecaster, cut, AHEAD_D] = score(true, mean)
            scores[forecaster, cut, SOON_D] = score(true[:SOON_D], mean[:SOON_D])
        if cut == 60:
            draws = PosteriorDraws(learned, 0)
            curves = moon_curves(draws, SUMMER)
            swing = curves.max(axis=1) - curves.min(axis=1)
            matters = float(np.mean(swing >= 0.10))
            age = phase_of(curves.mean(axis=0)[:-1], np.arange(60) / 60 * LUNATION_D)
            off = (age - lightest + LUNATION_D / 2) % LUNATION_D - LUNATION_D / 2
    return scores, Moon(matters, off, true_swing)


def span_after(last: date):
    days = days_between(last + timedelta(days=1), last + timedelta(days=AHEAD_D))
    edges = day_edges(days[0], days[-1], SITE.zone)
    noons = edges[:-1] + (edges[1:] - edges[:-1]) // 2
    return span_of(days, days_of(noons), np.radians(lunar_phase_angle(noons)))


def means(learned: Learned, span):
    return forecast_learned(learned, span, np.zeros(len(span.days))).light_share.mean


def score(true, forecast):
    """Return the expected negative log likelihood of a crab."""
    p = np.clip(forecast, 1e-3, 1 - 1e-3)
    return float(-np.mean(true * np.log(p) + (1 - true) * np.log(1 - p)))


def all_knowing(nature, world, told, outcomes, span):
    """Return the forecast of a filter told everything but what is still to come.

    Without runs that is the true share. With them it is the true season and a run filtered from
    the same trips, whose spread and memory in the light share were measured in long simulations.
    """
    if nature.runs_sd == 0:
        return np.array([world.share(day) for day in span.days])
    learned = learn_outcomes(SITE, ())
    year = usual_year(SITE.species, learned.water, draws=2)
    nothing = np.zeros(2)
    swings = replace(
        year.swings,
        moon=nothing,
        moon_twice=nothing,
        runs_sd=np.full(2, 0.65 * nature.runs_sd),
        runs_memory_d=np.full(2, 5.0),
    )
    odds = np.log(told.light / (1 - told.light))
    year = replace(year, swings=swings, log_odds=np.tile(odds, (2, 1)))
    belief = Belief(year, Judging(25.0, 0.005, 1e-4, 1e-4, 1e-4), elsewhere=False)
    trips = judged_trips(SITE, outcomes)
    for i in range(len(trips.days)):
        if i:
            belief.drift(trips.at_d[i] - trips.at_d[i - 1])
        day = min(trips.days[i].timetuple().tm_yday, 365) - 1
        belief.absorb(Trip(day, 0.0, trips.judged[i], trips.light[i], True))
    run, variance = belief.mean[0, 8], belief.covariance[0, 8, 8]
    gone = span.at_d - trips.at_d[-1]
    keep, sd = np.exp(-gone / 5.0), 0.65 * nature.runs_sd
    spread = keep**2 * variance + (1 - keep**2) * sd**2
    nodes, weights = np.polynomial.hermite_e.hermegauss(15)
    base = np.log(told.on(span.days) / (1 - told.on(span.days))) + keep * run - sd**2 / 2
    return share(base[:, None] + np.sqrt(spread)[:, None] * nodes) @ (weights / weights.sum())


def lightest_age(world):
    """Return the moon's age on a world's lightest days, by its first harmonic, and its swing."""
    days = np.arange(world.light.size)
    summer = (days % 365.25 > SUMMER[0]) & (days % 365.25 < SUMMER[-1])
    # The trips of a day are at 16 UTC; the first new moon was on day 12 at 5 UTC.
    age = (days[summer] - 12 + 11 / 24) % LUNATION_D
    light = world.light[summer]
    by_age = [light[(age // 1) == each].mean() for each in range(29)]
    return phase_of(np.log(light), age), max(by_age) - min(by_age)


def phase_of(values, age):
    wave = np.mean((values - values.mean()) * np.exp(2j * np.pi * age / LUNATION_D))
    return float(np.angle(wave) / (2 * np.pi) * LUNATION_D % LUNATION_D)


def show(name, found):
    total = defaultdict(list)
    for scores, _ in found:
        for (forecaster, cut, days), value in scores.items():
            group = "4 trips" if cut == 4 else "15-45" if cut < 60 else "60-75"
            total[forecaster, group, days].append(value)

    def mean(*key):
        return float(np.mean(total[key]))

    print(f"\n{name}: {len(found)} worlds")
    forecasters = ("knows all", "told season", "model", "season only", "running mean", "prior")
    print(f"{'log score x 1000':18s}", *(f"{each:>13s}" for each in forecasters))
    for group in ("4 trips", "15-45", "60-75"):
        for days in (AHEAD_D, SOON_D):
            row = (f"{1000 * mean(each, group, days):13.1f}" for each in forecasters)
            print(f"{group:8s} {days:3d} days ", *row)
    model, told, best = (
        mean(each, "60-75", AHEAD_D) for each in ("model", "told season", "knows all")
    )
    print(f"60-75 trips against the told season: {100 * (model / told - 1):+.2f}%", end="")
    # Where a season tells nearly all, a share of what is left means nothing.
    if told - best > 0.005:
        print(
            f"; closes {100 * (told - model) / (told - best):.0f}% of the gap to knowing all",
            end="",
        )
    soon = [
        np.array(total["season only", group, SOON_D]) - np.array(total["model", group, SOON_D])
        for group in ("15-45", "60-75")
    ]
    gain = np.concatenate(soon)
    error = gain.std() / np.sqrt(gain.size)
    print(f"\nnext 5 days, gain on season only: {1000 * gain.mean():+.2f} (+-{1000 * error:.2f})")
    moons = sorted((moon for _, moon in found), key=lambda moon: moon.swing)
    print("60 trips and the moon, worlds by their true swing in points:")
    print("  true swing:   ", *(f"{100 * moon.swing:5.0f}" for moon in moons))
    print("  P(10 or more):", *(f"{moon.matters:5.2f}" for moon in moons))
    print("  lightest, d:  ", *(f"{moon.days_off:+5.1f}" for moon in moons))
    for least in (10, 14):
        worth = [moon for moon in moons if round(100 * moon.swing) >= least]
        if worth:
            said = sum(moon.matters > 0.5 for moon in worth)
            near = sum(abs(moon.days_off) <= 3 for moon in worth)
            print(f"  {least} or more in {len(worth)}: said in {said}, within three days in {near}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 12)
