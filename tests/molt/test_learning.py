"""Learning from a log: what moves the forecast, what must not, and honesty about little data."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from statistics import NormalDist

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.assets import demo_log, demo_place
from planner.estimates import Interval
from planner.logbook import Haul, Log, book_zone, read_log
from planner.molt import days_to_fill, evidence, forecast, last_trip_text
from planner.molt.evidence_types import SURE, Effect, PastForecast
from planner.molt.filling import Filling
from planner.molt.learning import learn
from planner.molt.record import reliability_of, scores_of
from planner.molt.temperature import Reading, usual_water
from planner.phrasing import Style
from planner.sites import load_site

SPAN = (date(2025, 9, 1), date(2025, 9, 30))


@pytest.fixture(scope="module")
def site():
    return load_site(demo_place())


@pytest.fixture(scope="module")
def demo():
    return read_log(demo_log(), book_zone)


def trips(site, lights, judged=20, place=None, every_d=10, water_c=None):
    """A log of trips from June on, each with one haul and so many light crabs."""
    return Log(
        tuple(
            Haul(
                trip=f"trip {i}",
                place=place or site.name,
                hauled_at=datetime(2025, 6, 1, 14, tzinfo=UTC) + timedelta(days=every_d * i),
                keepers=judged,
                judged=judged,
                light=light,
                water_c=water_c,
            )
            for i, light in enumerate(lights)
        )
    )


def light_share(site, log, span=SPAN):
    return float(forecast(site, *span, log=log).light_share.mean.mean())


def test_a_log_of_light_trips_raises_the_forecast(site):
    """Ten trips a third light move the forecast well above the prior; ten full ones below it."""
    prior = light_share(site, None)
    assert light_share(site, trips(site, [7] * 10)) > prior + 0.05
    assert light_share(site, trips(site, [0] * 10)) < prior - 0.01


def test_one_trip_moves_it_less_than_ten(site):
    """A single striking trip is not taken for a law."""
    prior = light_share(site, None)
    one = light_share(site, trips(site, [10])) - prior
    ten = light_share(site, trips(site, [10] * 10)) - prior
    assert 0 < one < 0.7 * ten


@settings(max_examples=40)
@given(
    lights=st.lists(st.integers(0, 12), min_size=0, max_size=5),
    last=st.integers(0, 11),
    more=st.integers(1, 12),
)
def test_more_light_crabs_yesterday_never_lower_tomorrow(lights, last, more):
    """Whatever was logged before, another light crab yesterday never lowers the next days' share.

    To 0.001: of finitely many draws those that foresaw the trip weigh more.
    """
    site = load_site(demo_place())
    more = min(last + more, 12)
    yesterday = date(2025, 6, 1) + timedelta(days=10 * len(lights))
    span = (yesterday + timedelta(days=1), yesterday + timedelta(days=3))
    less, light = (
        light_share(site, trips(site, [*lights, each], judged=12), span) for each in (last, more)
    )
    assert light >= less - 0.001


def test_a_light_trip_speaks_of_next_week_and_fades(site):
    """What a trip says of a run of molting goes into the days after it, less and less."""
    lights = [2, 2, 2, 2, 2, 2, 2, 10]
    newest = date(2025, 6, 1) + timedelta(days=70)
    found = forecast(
        site, newest - timedelta(days=1), newest + timedelta(days=60), trips(site, lights)
    )
    runs = found.why.runs
    assert runs[2] > 0.01
    assert runs[2] > runs[10] > runs[40]
    # The day of the trip itself was forecast before anyone knew.
    assert abs(runs[1]) < runs[2]
    width = found.light_share.high - found.light_share.low
    relative = width / found.light_share.mean
    assert relative[40:].mean() > relative[2:6].mean()


def test_the_interval_widens_with_the_distance_from_the_last_evidence(site):
    """What a trip tells of its days is forgotten: the interval returns towards that without it.

    Against the prior on the same days, for their season and water set a width of their own; on
    log odds, since a share near zero has little room.
    """
    log = trips(site, [1, 8, 6, 0, 1, 9, 7, 1, 0, 6, 8, 5])
    last = log.outcomes()[-1].when.date()
    days = last + timedelta(days=1), last + timedelta(days=40)

    def widths(known):
        band = forecast(site, *days, known).light_share
        odds = [np.log(each / (1 - each)) for each in (band.low, band.high)]
        return odds[1] - odds[0]

    told = widths(log) / widths(None)
    weeks = [told[day - 1] for day in (1, 4, 10, 20, 40)]
    assert all(later > earlier - 0.02 for earlier, later in itertools.pairwise(weeks))
    assert weeks[0] < weeks[-1] - 0.05, weeks
    assert weeks[-1] < 1


def test_basis_count_and_sums(site, demo):
    """Judged trips count, others do not; the parts of why add up."""
    found = forecast(site, *SPAN, log=demo)
    assert found.basis == "log"
    assert found.trips == sum(bool(each.judged) for each in demo.outcomes(site.name))
    total = found.why.season + found.why.moon + found.why.runs + found.why.place
    np.testing.assert_allclose(total, found.light_share.mean - found.yearly_light_share, atol=1e-12)
    for band in (found.fullness, found.light_share):
        assert ((band.low <= band.mean) & (band.mean <= band.high)).all()
        assert ((band.low >= 0) & (band.high <= 1)).all()


def test_unjudged_trips_are_the_prior(site):
    """A log without a judged crab leaves the prior, and says so."""
    unjudged = forecast(site, *SPAN, log=trips(site, [0] * 3, judged=0))
    prior = forecast(site, *SPAN)
    assert unjudged.basis == "prior"
    np.testing.assert_array_equal(unjudged.light_share.mean, prior.light_share.mean)
    assert evidence(site, trips(site, [])) is None


def test_other_places_speak_weakly(site):
    """Trips elsewhere move the forecast the same way as trips here, and less."""
    prior = light_share(site, None)
    here = light_share(site, trips(site, [8] * 6)) - prior
    elsewhere = light_share(site, trips(site, [8] * 6, place="Another Creek")) - prior
    assert 0.005 < elsewhere < here
    assert evidence(site, trips(site, [8] * 6, place="Another Creek")) is None


def test_row_order_does_not_matter(site, demo):
    """The same hauls in another order give the very same numbers."""
    turned = Log(demo.hauls[::-1], demo.trips)
    one, other = (forecast(site, *SPAN, log=log) for log in (demo, turned))
    np.testing.assert_array_equal(one.light_share.mean, other.light_share.mean)


def test_same_log_same_answer(site, demo):
    """The answer hangs on the content of the log and the seed, on nothing else."""
    copy = Log(tuple(replace(haul) for haul in demo.hauls), demo.trips)
    assert learn(site, demo) is learn(site, copy)
    one, other = (forecast(site, *SPAN, log=demo, seed=seed) for seed in (1, 2))
    assert np.abs(one.light_share.mean - other.light_share.mean).max() < 0.03


def test_without_amplitudes_moon_and_runs_are_nothing(site, demo):
    """No amplitude, no swing: a model that forbids moon and runs shows none, to the last digit."""
    from planner.clock import day_edges, days_between
    from planner.molt.curves import span_of
    from planner.molt.forecasting import forecast_learned
    from planner.molt.learning import season_only
    from planner.molt.trips_judged import days_of

    still = season_only(learn(site, demo), site.species, lambda: None)
    noons = day_edges(*SPAN, site.zone)[:-1] + np.timedelta64(12, "h")
    phases = np.linspace(0, 2 * np.pi, noons.size)
    span = span_of(days_between(*SPAN), days_of(noons), phases)
    why = forecast_learned(still, span, np.zeros(noons.size)).why
    assert np.abs(why.moon).max() < 1e-4
    assert np.abs(why.runs).max() < 1e-4


def test_evidence_of_the_demo_log(site, demo):
    """Effects rest on all judged trips, curves are shares, the record scores earlier trips only."""
    found = evidence(site, demo)
    count = sum(bool(each.judged) for each in demo.outcomes(site.name))
    assert {effect.cause for effect in found.effects} == {"season", "moon", "runs", "place"}
    for effect in found.effects:
        assert effect.swing.low <= effect.swing.mean <= effect.swing.high
        assert effect.trips == count
        assert 0 <= effect.p_matters(0.1) <= effect.p_matters(0.01) <= 1
    for curve in (found.moon, found.season):
        assert curve.x_d.shape == curve.light_share.mean.shape
        assert ((curve.light_share.mean >= 0) & (curve.light_share.mean <= 1)).all()
    assert len(found.record.trips) == count - 1
    assert all(0 < score < 1 for score in (found.record.brier, found.record.brier_running_mean))


def test_a_late_trip_leaves_earlier_forecasts_of_the_record_alone(site):
    """Each past trip is forecast from earlier trips: what came later cannot have been known."""
    short = evidence(site, trips(site, [2, 6, 0, 4, 2]))
    longer = evidence(site, trips(site, [2, 6, 0, 4, 2, 18]))
    assert short.record.trips == longer.record.trips[:-1]


@pytest.mark.parametrize("count", [1, 2, 4, 40, 400])
def test_any_number_of_trips_reads_sensibly(site, count):
    """Nothing divides by zero with few trips or overflows with many; a record needs two."""
    log = trips(site, [i % 4 for i in range(count)], every_d=6)
    found = evidence(site, log)
    assert found.trips == count
    assert len(found.record.trips) == count - 1
    assert np.isnan(found.record.brier) == (count == 1)
    assert all(np.isfinite(effect.draws).all() for effect in found.effects)
    ahead = forecast(site, date(2026, 1, 1), date(2026, 1, 10), log)
    assert np.isfinite(ahead.light_share.mean).all()


def test_many_full_trips_settle_the_moon(site):
    """Where hardly a crab is light the moon cannot make ten of a hundred: nothing to settle."""
    found = evidence(site, trips(site, [0] * 30))
    moon = next(effect for effect in found.effects if effect.cause == "moon")
    assert moon.p_matters(0.1) < 0.1
    assert moon.trips_to_settle(0.10) == 0


def test_scores_by_hand():
    """Brier and log score of two crabs forecast at a quarter, one of them light.

    (1 - 1/4)^2 + (1/4)^2 over two; -(ln 1/4 + ln 3/4) over two.
    """
    brier, log = scores_of(np.array([0.25]), np.array([2.0]), np.array([1.0]))
    assert brier == pytest.approx(0.3125)
    assert log == pytest.approx(0.83699, abs=1e-5)


def test_warm_water_fills_sooner(site):
    """Crabs caught light fill in a week or so in summer and in weeks in late autumn."""
    summer, autumn = (days_to_fill(site, date(2026, month, 10)) for month in (7, 11))
    assert summer.days.mean < autumn.days.mean
    assert summer.days.low <= summer.days.mean <= summer.days.high
    assert "days" in summer.sentence(Style())


@pytest.mark.parametrize(("water_c", "days"), [(25.0, 10.9), (15.0, 27.3)])
def test_light_crabs_fill_in_the_days_of_the_closed_form(site, water_c, days):
    """In steady water: from the mean emptiness of what is caught light to nine tenths of full.

    By hand, at the centre of the blue crab's prior (emptiness 0.477 after the molt, refused for 3
    days, called light from 0.25 on, refilled by a factor e in 10 days): caught at 0.477 exp(-0.3) =
    0.353, on average at (0.353 - 0.25) / ln(0.353 / 0.25) = 0.298, and 10 ln(0.298 / 0.1) = 10.9
    days at 25 C; times 2.5 in water 10 C colder. Draws about that centre leave a sixth.
    """
    steady = replace(site, monthly_water_c=(water_c,) * 12)
    assert days_to_fill(steady, date(2026, 7, 10)).days.mean == pytest.approx(days, rel=1 / 6)


def test_days_to_fill_are_told_no_finer_than_they_are_known():
    """Whole days below twenty, fives from there on."""
    found = Filling(Interval(19.6, 8.4, 27.4), date(2026, 9, 2), math.nan)
    assert "about 20 days (8 to 25)" in found.sentence(Style())
    found = Filling(Interval(22.4, 19.4, 33.0), date(2026, 9, 2), math.nan)
    assert "about 20 days (19 to 35)" in found.sentence(Style())


def test_without_means_the_warmest_water_is_late_in_the_summer_of_its_side():
    """A guess by latitude for a place without temperatures: August in the north, February south."""
    share = (np.arange(12) + 0.5) / 12
    north, south = (usual_water(None, latitude).expected(share) for latitude in (38.0, -38.0))
    assert (int(north.argmax()), int(south.argmax())) == (7, 1)
    assert north == pytest.approx(np.roll(south, 6), abs=0.2)


def test_a_light_last_trip_is_spoken_of(site):
    """After a light trip the words say how long such crabs take; after a full one, nothing."""
    assert last_trip_text(site, trips(site, [0, 10]), Style()).startswith("Your last judged trip")
    assert last_trip_text(site, trips(site, [10, 0]), Style()) == ""
    assert last_trip_text(site, None, Style()) == ""


def test_in_cold_water_crabs_wait_for_half_a_year(site):
    """Where the cold stops refill, the words say so instead of giving a figure.

    Water that is cold all summer too does not fill them by spring, whatever month it is.
    """
    cold = replace(site, monthly_water_c=(2, 2, 3, 4, 5, 6, 7, 7, 6, 5, 4, 3))
    for month in (1, 6, 11):
        told = days_to_fill(cold, date(2026, month, 1)).sentence(Style())
        assert told.endswith("light crabs take half a year or more to fill.")


def test_readings_correct_the_monthly_means():
    """Readings through a year three degrees above the means lift the usual water by most of it."""
    monthly = [14, 15, 18, 22, 26, 29, 30, 30, 28, 24, 19, 15]
    share = (np.arange(365) + 0.5) / 365
    days = [date(2025, month, 15) for month in range(1, 13)]
    plain = usual_water(monthly, 30.0)
    usual = plain.expected(share)
    readings = [Reading(day, float(usual[day.timetuple().tm_yday - 1]) + 3) for day in days]
    lifted = usual_water(monthly, 30.0, readings).expected(share) - usual
    assert 1.5 < lifted.mean() < 3.0
    one = usual_water(monthly, 30.0, readings[:1]).expected(share) - usual
    assert one.mean() < 0.5 * lifted.mean()


def test_readings_of_one_spell_count_as_one():
    """Ten readings of a warm fortnight share its weather: they say no more than one of it."""
    share = (np.arange(365) + 0.5) / 365
    days = [date(2026, 6, 1) + timedelta(days=day) for day in range(10)]
    one, ten = (
        usual_water([20.0] * 12, 30.0, [Reading(day, 24.0) for day in some]).expected(share)
        for some in (days[5:6], days)
    )
    assert ten.mean() - 20 == pytest.approx(one.mean() - 20, rel=0.02)


def test_a_warm_spell_fades():
    """The last reading above the usual water lifts the next weeks, less and less, not the past."""
    water = usual_water([20.0] * 12, 30.0, [Reading(date(2026, 6, 10), 24.0)])
    spell = water.spell([date(2026, 6, 9), date(2026, 6, 10), date(2026, 6, 30), date(2026, 12, 1)])
    assert spell[0] == 0
    assert spell[1] > spell[2] > spell[3] >= 0
    assert spell[1] > 1


def test_trips_of_like_forecasts_are_put_together_with_an_honest_interval():
    """The reliability picture: nothing lost, ordered, and wider where crabs of a trip are alike."""
    rng = np.random.default_rng(3)
    past = [
        PastForecast(f"t{i}", date(2026, 1, 1), Interval(p, p / 2, p), 30, int(rng.binomial(30, p)))
        for i, p in enumerate(rng.uniform(0.02, 0.6, 23))
    ]
    groups = reliability_of(past, 25.0)
    assert len(groups) == 5
    assert sum(group.trips for group in groups) == 23
    assert sum(group.crabs for group in groups) == 690
    forecasts = [group.forecast for group in groups]
    assert forecasts == sorted(forecasts)
    # As rightly forecast as these are, at least three of five 80% intervals hold the forecast.
    assert sum(g.came.low <= g.forecast <= g.came.high for g in groups) >= 3
    apart = reliability_of(past, 1e9)
    assert all(
        a.came.high - a.came.low < g.came.high - g.came.low
        for a, g in zip(apart, groups, strict=True)
    )
    assert reliability_of(past[:7], 25.0) == ()


@pytest.mark.parametrize("p", [0.12, 0.3, 0.5, 0.88])
def test_trips_to_settle_are_enough_one_time_in_two(p):
    """Against a simulation of normal estimates that go on learning: an interval just short of
    settling it is not one more trip away, nor is one about the difference for ever open."""
    rng = np.random.default_rng(5)
    now = NormalDist().inv_cdf(p)  # the estimate, counted from the difference, its sd being 1
    draws = 0.1 + 0.01 * rng.normal(now, 1, 100_000)
    swing = Interval(0.1 + 0.01 * now, 0.09, 0.11)
    effect = Effect("moon", swing, draws, 20, 200, half_width=0.0128, per_trip=0.05 / 0.0128**2)
    more = 0.05 * effect.trips_to_settle(0.1)  # in what is known now
    truth = rng.normal(now, 1, 100_000)
    told = (now + more * rng.normal(truth, more**-0.5)) / (1 + more)
    beyond = np.abs(told) * (1 + more) ** 0.5 >= NormalDist().inv_cdf(SURE)
    assert beyond.mean() == pytest.approx(0.5, abs=0.1)
