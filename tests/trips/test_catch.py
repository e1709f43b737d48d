"""Expected keepers: the saturating curve, pooling with the log, honest intervals."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from made_waters import made_site

from planner.estimates import Interval
from planner.logbook.entries import Haul
from planner.trips.catch import learn_catch, saturation
from planner.trips.catch_record import TripCatch, activity_at, trip_catches

DAY_SOAK = np.array([24.0])
LIGHT = Interval(0.15, 0.08, 0.25)


def logged(rates: float, trips: int, traps: int = 12, soak_h: float = 24.0) -> list[TripCatch]:
    return [counted(round(rates * traps), soak_h, 1.0, traps) for _ in range(trips)]


def counted(keepers: int, soak_h: float, activity: float = 1.0, traps: int = 12) -> TripCatch:
    """Return a trip whose keepers fell to its traps as evenly as can be."""
    each = np.array([keepers // traps + (at < keepers % traps) for at in range(traps)], float)
    return TripCatch(each, np.full(traps, soak_h), activity)


def test_the_prior_is_the_published_rate() -> None:
    """Without a log a trap and day give what pots gave in Maryland and Delaware.

    Source: crab/trap_facts.csv: 2.39-2.69 crabs a pot and day (Roosenburg and Green 2000),
    2.7 legal crabs a pot and set (Cole and Helser 2001).
    """
    expected = learn_catch([], seed=1).per_trap(DAY_SOAK)
    assert expected[0] == pytest.approx(2.55, abs=0.12)


def test_catch_saturates_and_is_never_divided_by_hours() -> None:
    """A longer soak gives more, but less and less more: never in proportion to the hours.

    Source: crab/trap_facts.csv: N(t) = (E/r)(1 - exp(-rt)) (Munro 1974), an asymptotic curve
    fits king crab (Briand and others).
    """
    soaks = np.arange(1.0, 121.0)
    catch = learn_catch([], seed=1).per_trap(soaks)
    gains = np.diff(catch)
    assert (gains > 0).all()
    assert (np.diff(gains) < 0).all()
    assert catch[47] < 1.5 * catch[23]
    assert saturation(np.array([24.0]), np.array([7.0]))[0] == pytest.approx(1.0)


@pytest.mark.parametrize("rate", [0.5, 1.0, 5.0, 9.0])
def test_the_log_pulls_the_rate_from_the_prior_and_more_trips_pull_harder(rate: float) -> None:
    """Partial pooling: one trip moves the expectation part of the way, forty nearly all of it."""
    prior = float(learn_catch([], seed=1).per_trap(DAY_SOAK)[0])
    after = [
        float(learn_catch(logged(rate, trips), seed=1).per_trap(DAY_SOAK)[0])
        for trips in (1, 5, 40)
    ]
    gaps = [abs(value - rate) for value in (prior, *after)]
    assert gaps == sorted(gaps, reverse=True)
    assert gaps[-1] < 0.1 * abs(prior - rate)
    assert gaps[1] > 0.1 * abs(prior - rate)


def test_intervals_hold_what_a_trip_really_gives() -> None:
    """80% prediction intervals hold 75-85% of new trips simulated from the same beliefs."""
    rng = np.random.default_rng(5)
    truth = learn_catch([], seed=2)
    inside = 0
    trials = 400
    for trial in range(trials):
        rate, half_h, k = (values[trial] for values in (truth.rate, truth.half_h, truth.k))
        soaks_h = rng.uniform(12, 50, size=7)
        trips = []
        for soak_h in soaks_h[:-1]:
            mean = 12 * rate * saturation(np.array([soak_h]), np.array([half_h]))[0]
            count = rng.poisson(mean * rng.gamma(k, 1 / k))
            trips.append(counted(int(count), soak_h))
        model = learn_catch(trips, seed=trial)
        mean = 12 * rate * saturation(soaks_h[-1:], np.array([half_h]))[0]
        caught = rng.poisson(mean * rng.gamma(k, 1 / k))
        full = rng.binomial(caught, 0.85)
        exact = Interval(0.15, 0.1499, 0.1501)
        said = model.full_keepers(float(soaks_h[-1]), 12, 1.0, exact, seed=trial)
        inside += said.low <= full <= said.high
    # a whole-number interval holds a little more than it promises
    assert 0.75 <= inside / trials <= 0.88


@given(st.floats(0.0, 0.9), st.floats(0.0, 0.09))
def test_more_light_crabs_never_mean_more_full_ones(share: float, more: float) -> None:
    """The expected count falls as the light share rises, all else alike."""
    model = learn_catch([], seed=1)
    few, many = (
        model.full_keepers(24.0, 12, 1.0, Interval(s, s * 0.8, min(1.0, s * 1.1)), seed=3)
        for s in (share, share + more)
    )
    assert many.mean <= few.mean
    for said in (few, many):
        assert said.low <= said.mean <= said.high


def test_one_seed_gives_one_interval_and_other_seeds_hardly_another() -> None:
    """What is shown must not flicker, and must not hang on the luck of the draws."""
    answers = [
        learn_catch(logged(2.0, 8), seed).full_keepers(24.0, 12, 1.0, LIGHT, seed)
        for seed in (1, 1, 2, 3)
    ]
    assert answers[0] == answers[1]
    for other in answers[2:]:
        assert other.mean == pytest.approx(answers[0].mean, rel=0.01)
        assert other.low == pytest.approx(answers[0].low, abs=2)
        assert other.high == pytest.approx(answers[0].high, rel=0.1)


def test_cold_water_stops_the_catch_smoothly_and_unknown_water_does_not() -> None:
    """Dormant crabs enter no trap; a temperature nobody knows must not invent a cold winter."""
    active = activity_at(np.array([2.0, 8.0, 10.0, 12.0, 16.0, 25.0, np.nan]), "blue-crab")
    assert active[0] < 0.01
    assert active[1] < 0.1
    assert active[4] > 0.95
    assert active[6] == 1.0
    assert (np.diff(active[:6]) > 0).all()
    assert activity_at(np.array([6.0]), "cool-annual")[0] > 0.9  # a crab of cold water


def test_the_water_of_a_haul_is_that_of_the_month_where_it_was() -> None:
    """In New Zealand the first morning of October is still September in UTC."""
    months_c = (18.0, 18.0, 17.0, 16.0, 14.0, 12.0, 11.0, 11.0, 8.0, 20.0, 20.0, 17.0)
    site = made_site("Pacific/Auckland", -36.8, 174.8, monthly_water_c=months_c)
    at = datetime(2026, 10, 1, 7, tzinfo=ZoneInfo("Pacific/Auckland")).astimezone(UTC)
    haul = Haul("t", site.name, set_at=at - timedelta(days=1), hauled_at=at, keepers=3)
    (trip,) = trip_catches(site, [haul])
    assert trip.activity == activity_at(np.array([20.0]), site.species)[0]


def test_a_light_share_that_may_be_nothing_does_not_empty_the_traps() -> None:
    """An interval from 0 is a skewed one: most draws lie low, few near its upper end."""
    model = learn_catch(logged(2.5, 30), seed=1)
    none, skewed = (
        model.full_keepers(24.0, 12, 1.0, light, seed=3)
        for light in (Interval(0.0, 0.0, 0.0), Interval(0.09, 0.0, 0.24))
    )
    assert skewed.low > 0.65 * none.low
    assert skewed.high < none.high


def haul(**changes: object) -> Haul:
    out = datetime(2026, 5, 16, 12, tzinfo=UTC)
    known = {"trip": "one", "place": "Made Water", "set_at": out - timedelta(hours=20)}
    return Haul(**{**known, "hauled_at": out, "keepers": 3, "water_c": 22.0, **changes})


def test_only_hauls_with_a_count_and_a_soak_speak() -> None:
    """An empty count is not zero; another place's haul is not this place's."""
    hauls = [
        haul(),
        haul(keepers=0),
        haul(keepers=None),
        haul(set_at=None),
        haul(place="Elsewhere", keepers=50),
        haul(trip="two", hauled_at=None),
    ]
    trips = trip_catches(made_site(), hauls)
    assert len(trips) == 1
    assert trips[0].total == 3
    assert trips[0].soaks_h.tolist() == [20.0, 20.0]
    turned = trip_catches(made_site(), hauls[::-1])
    assert turned[0].total == 3


def test_a_winter_trip_without_crabs_does_not_condemn_the_summer() -> None:
    """A poor catch in cold water is put down to the cold, not to the place."""
    cold = [counted(0, 24.0, 0.02) for _ in range(3)]
    warm = [counted(0, 24.0) for _ in range(3)]
    after_cold, after_warm = (
        learn_catch(trips, seed=1).per_trap(DAY_SOAK)[0] for trips in (cold, warm)
    )
    assert after_cold > 1.5
    assert after_warm < 1.0
