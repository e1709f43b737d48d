"""Draws made near what a log says are still weighed as they are believed in."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from crab_world import drawn_nature, logged, simulate, trip_days

from planner.assets import demo_place
from planner.logbook import TripOutcome
from planner.molt.curves import PosteriorDraws
from planner.molt.learning import learn_outcomes
from planner.molt.unknowns import unknowns, unknowns_near
from planner.molt.weighing import moon_curves
from planner.molt.year import usual_year
from planner.sites import load_site

SITE = load_site(demo_place())
PRIORS = {
    "base_c": ({"mean": 10.0, "sd": 2.0}, 10.0, 2.0),
    "degree_days": ({"median": 600.0, "sd_log": 0.2}, 600 * np.exp(0.02), 121.2),
    # A half normal has mean sd sqrt(2 / pi) and variance sd^2 (1 - 2 / pi).
    "amplitude": ({"half_sd": 0.3}, 0.3 * 0.79788, 0.3 * 0.60281),
    "kept": ({"low": 0.9, "high": 1.0}, 0.95, 0.1 / np.sqrt(12)),
}


def moments(drawn, name, prior):
    weights = np.exp(drawn.log_weight - drawn.log_weight.max())
    weights /= weights.sum()
    values = drawn.value(name, prior)
    mean = weights @ values
    return mean, np.sqrt(weights @ (values - mean) ** 2), 1 / (weights**2).sum()


@pytest.mark.parametrize("name", PRIORS)
def test_draws_have_the_moments_of_their_prior(name):
    """Wherever draws are made, weighed they have the mean and spread that are believed in.

    Both of the first draws and of draws made near a corner of what is possible; to five standard
    errors of as many draws as the weighed ones are worth.
    """
    prior, mean, sd = PRIORS[name]
    rng = np.random.default_rng(4)
    first = unknowns(40_000, rng)
    corner = np.exp(first.log_weight) * (first.score("amplitude") > 1) * (first.score("kept") > 0)
    near = unknowns_near(first, corner / corner.sum(), rng)
    for drawn in (first, near):
        found_mean, found_sd, worth = moments(drawn, name, prior)
        assert worth > 2000
        assert found_mean == pytest.approx(mean, abs=5 * sd / np.sqrt(worth))
        assert found_sd == pytest.approx(sd, rel=5 / np.sqrt(worth))


def test_draws_near_lie_near():
    """New draws go where the old ones weigh most: that is what they are for."""
    rng = np.random.default_rng(4)
    first = unknowns(2000, rng)
    corner = np.exp(first.log_weight) * (first.score("degree_days") > 1.5)
    near = unknowns_near(first, corner / corner.sum(), rng)
    assert near.score("degree_days").mean() > 1.2
    assert abs(near.score("q10").mean()) < 0.3


@pytest.fixture(scope="module")
def moonstruck():
    """Trips in a world of single crabs with a moon far stronger than is believed likely."""
    rng = np.random.default_rng(505)
    nature = drawn_nature(rng, moon=1.0, refill_d=18.0, moon_age_d=4.0)
    world = simulate(nature, SITE.monthly_water_c, 4, rng, crabs=1500)
    return tuple(logged(world, trip_days(3, 20, rng), rng, SITE.name))


def test_a_log_unlike_the_prior_still_has_draws_to_speak_for_it(moonstruck):
    """Of the 512 first draws hardly five would count; those made anew see the moon."""
    learned = learn_outcomes(SITE, moonstruck)
    assert 1 / (learned.weights**2).sum() > 20
    first = usual_year(SITE.species, learned.water)
    assert learned.year is not first
    days = np.arange(150, 270, 20)
    curve = moon_curves(PosteriorDraws(learned, 0), days)
    swing = curve.max(axis=1) - curve.min(axis=1)
    assert swing.mean() > 0.10


def test_earlier_forecasts_stay_when_draws_are_made_anew(moonstruck):
    """Draws hang on earlier trips only: what came later cannot have been known."""
    shorter = learn_outcomes(SITE, moonstruck[:45]).foreseen
    assert learn_outcomes(SITE, moonstruck).foreseen[:45] == shorter


def test_the_last_trip_moves_no_draws():
    """New draws are made before a trip is taken in, never by what it says.

    So a light crab more on the last trip cannot lower the share by other draws' chance.
    """
    when = [datetime(2025, 6, 1, 16, tzinfo=UTC) + timedelta(days=9 * i) for i in range(12)]
    lights = [15, 1, 14, 2, 15, 0, 13, 1, 15, 2, 14]

    def learned(last):
        return learn_outcomes(
            SITE,
            tuple(
                TripOutcome(str(i), SITE.name, each, 9, 16, 16, light, None)
                for i, (each, light) in enumerate(zip(when, [*lights, last], strict=True))
            ),
        )

    one, other = learned(0), learned(16)
    assert one.year.log_odds is not usual_year(SITE.species, one.water).log_odds
    np.testing.assert_array_equal(one.year.log_odds, other.year.log_odds)
