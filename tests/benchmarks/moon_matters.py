"""Is the probability that the moon matters honest? python -m tests.benchmarks.moon_matters [worlds]

First over logs from what the model believes: of the worlds that are given a probability, in how
many does the moon make so many light crabs of 100? Then over worlds of single crabs by the
strength of their moon and how fast they fill, which no forecaster was told.
"""

from __future__ import annotations

import itertools
import sys
from pathlib import Path

import numpy as np

from planner.assets import demo_place
from planner.molt.belief import HERE, MOON, USER, YEAR, moon_row, year_row
from planner.molt.curves import PosteriorDraws, share
from planner.molt.learning import learn_outcomes
from planner.molt.weighing import molting_days, moon_curves
from planner.molt.year import ANSWER_DAYS
from planner.sites import load_site
from tests.benchmarks.molt_worlds import LUNATION_D, lightest_age, phase_of

sys.path.insert(0, str(Path(__file__).parents[1] / "molt"))
from crab_world import drawn_nature, logged, simulate, trip_days
from test_molt_calibration import PriorWorlds

SITE = load_site(demo_place())
WORTH_CARING = (0.10, 0.05)
GROUPS = (0, 0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 1.001)
# Strength of the moon, log hazard; its modulation of molting is 0.40, 0.77 and 1.31 in the
# reference table, 33, 43 and 61% of molts in the best week.
MOONS = (0.5, 1.0, 2.0)
REFILLS_D = (10.0, 18.0)
SEASONS, A_SEASON = 3, 20
PHASES = np.arange(60) / 60 * 2 * np.pi


def main(worlds: int) -> None:
    honest(worlds)
    by_strength(max(worlds // 40, 4))


def honest(worlds):
    """Print probabilities against how often it was so, over logs of 40 to 80 trips."""
    makers = [PriorWorlds(SITE, seed=900 + k) for k in range(4)]
    rng = np.random.default_rng(1)
    found = []
    for number in range(worlds):
        maker = makers[number % len(makers)]
        outcomes, true, _, _ = maker.draw(int(rng.integers(40, 81)), strong_too=True)
        learned = learn_outcomes(SITE, outcomes)
        days = molting_days(learned)
        curves = moon_curves(PosteriorDraws(learned, number), days)
        swings = curves.max(axis=1) - curves.min(axis=1)
        swing = swing_of(maker.year, true, days)
        row = [(np.mean(swings >= worth), swing >= worth) for worth in WORTH_CARING]
        found.append((true["weight"], *np.ravel(row)))
    table = np.array(found, dtype=float)
    print(f"{worlds} logs of 40 to 80 trips from what the model believes")
    for k, worth in enumerate(WORTH_CARING):
        said, was = table[:, 1 + 2 * k], table[:, 2 + 2 * k]
        print(f"\na moon that makes {100 * worth:.0f} light crabs of 100:")
        print(f"{'said':12s}{'worlds':>8s}{'said, mean':>12s}{'it was so':>12s}{'+-':>7s}")
        for low, high in itertools.pairwise(GROUPS):
            group = (said >= low) & (said < high)
            if not group.any():
                continue
            weight = table[group, 0] / table[group, 0].sum()
            mean, share_so = weight @ said[group], weight @ was[group]
            error = np.sqrt(max(mean * (1 - mean), 1e-6) * (weight**2).sum())
            label = f"{low:.2f}-{min(high, 1):.2f}"
            print(f"{label:12s}{group.sum():8d}{mean:12.2f}{share_so:12.2f}{error:7.2f}")


def swing_of(year, true, days):
    """Return the true swing of the light share over a lunation, averaged over days."""
    draw, truth = true["draw"], true["coefficients"]
    base = year.log_odds[draw, days] + truth[USER] + truth[HERE] + year_row(days) @ truth[YEAR]
    answers = year.moon_on_light[draw, days // ANSWER_DAYS]
    curve = [
        share(base + moon_row(answers, np.full(days.size, phase)) @ truth[MOON]).mean()
        for phase in PHASES
    ]
    return max(curve) - min(curve)


def by_strength(worlds):
    """Print what logs of 60 trips say of moons of known strength, in worlds of single crabs."""
    print(f"\n{SEASONS * A_SEASON} trips in worlds of single crabs, {worlds} of each kind")
    print("true swing: mean and range; of the worlds where it is 10 or more, and where it is")
    print("less, those whose P(10) is above one half; days off the lightest age where 5 or more")
    print(f"{'moon':>5s}{'refill':>7s}{'swing':>14s}{'10, said':>10s}{'less, said':>12s}", end="")
    print(f"{'off':>6s}{'within 3':>10s}")
    for moon in MOONS:
        for refill_d in REFILLS_D:
            found = np.array([strong(moon, refill_d, number) for number in range(worlds)])
            swing, said, off = 100 * found[:, 0], found[:, 1] > 0.5, np.abs(found[:, 2])
            much, felt = swing >= 9.5, swing >= 4.5
            span = f"{swing.mean():.0f} ({swing.min():.0f}-{swing.max():.0f})"
            print(f"{moon:5.1f}{refill_d:7.0f}{span:>14s}", end="")
            print(f"{f'{said[much].sum()} of {much.sum()}':>10s}", end="")
            print(f"{f'{said[~much].sum()} of {(~much).sum()}':>12s}", end="")
            print(f"{off[felt].mean():6.1f}{f'{(off[felt] <= 3).sum()} of {felt.sum()}':>10s}")


def strong(moon, refill_d, number):
    """Return true swing, the probability of 10 points, and days off the lightest age."""
    rng = np.random.default_rng(7000 + number)
    age = rng.uniform(0, LUNATION_D)
    nature = drawn_nature(rng, moon=moon, refill_d=refill_d, moon_age_d=age)
    world = simulate(nature, SITE.monthly_water_c, SEASONS + 1, rng)
    outcomes = logged(world, trip_days(SEASONS, A_SEASON, rng), rng, SITE.name)
    learned = learn_outcomes(SITE, tuple(outcomes))
    curves = moon_curves(PosteriorDraws(learned, 0), molting_days(learned))
    swings = curves.max(axis=1) - curves.min(axis=1)
    lightest, true = lightest_age(world)
    found = phase_of(curves.mean(axis=0)[:-1], PHASES / (2 * np.pi) * LUNATION_D)
    off = (found - lightest + LUNATION_D / 2) % LUNATION_D - LUNATION_D / 2
    return true, np.mean(swings >= 0.10), off


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 400)
