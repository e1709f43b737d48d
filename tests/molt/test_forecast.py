"""The forecast that everybody calls: its shape, its sums, its seeds and its honesty."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest

from planner.assets import demo_place, resource
from planner.errors import RangeError
from planner.molt import forecast
from planner.molt.profile import parameters_of
from planner.molt.unknowns import unknowns
from planner.sites import load_site

FIRST, LAST = date(2026, 3, 1), date(2026, 6, 30)


@pytest.fixture(scope="module")
def site():
    return load_site(demo_place())


@pytest.fixture(scope="module")
def spring(site):
    return forecast(site, FIRST, LAST)


def test_one_entry_a_day(spring):
    """Every array has the days asked for, both ends included."""
    assert spring.days[0] == FIRST
    assert spring.days[-1] == LAST
    for band in (spring.fullness, spring.light_share):
        assert band.mean.shape == band.low.shape == band.high.shape == (len(spring.days),)
    assert spring.lunar_age_d.shape == spring.water_c.shape == (len(spring.days),)


def test_the_parts_of_why_add_up(spring):
    """Season, moon, runs and place together are the mean less the yearly average."""
    why = spring.why
    total = why.season + why.moon + why.runs + why.place
    np.testing.assert_allclose(
        total, spring.light_share.mean - spring.yearly_light_share, atol=1e-12
    )


def test_ends_hold_the_mean(spring):
    """An interval that does not hold its own mean would puzzle anyone."""
    for band in (spring.fullness, spring.light_share):
        assert (band.low <= band.mean).all()
        assert (band.mean <= band.high).all()


def test_without_a_log_it_says_so(spring):
    """The prior is called the prior, with no trip behind it and nothing from runs or place."""
    assert (spring.basis, spring.trips) == ("prior", 0)
    assert not spring.why.runs.any()
    assert not spring.why.place.any()


def test_one_seed_one_answer(site, spring):
    """The same call gives the same numbers, another seed nearly the same."""
    again = forecast(site, FIRST, LAST)
    np.testing.assert_array_equal(again.light_share.mean, spring.light_share.mean)
    other = forecast(site, FIRST, LAST, seed=1)
    assert np.abs(other.light_share.mean - spring.light_share.mean).max() < 0.06


def test_a_day_does_not_hang_on_the_span(site, spring):
    """A day's forecast is the same whether asked for alone or within months.

    The spans spin up from other days of the year, which may cost a tenth of a point.
    """
    alone = forecast(site, date(2026, 5, 10), date(2026, 5, 10))
    index = spring.days.index(date(2026, 5, 10))
    assert alone.light_share.mean[0] == pytest.approx(spring.light_share.mean[index], abs=0.01)
    assert alone.fullness.mean[0] == pytest.approx(spring.fullness.mean[index], abs=0.01)


def test_spring_run_is_the_lightest_time(site):
    """Crabs held ready by cold water shed together once it warms: the lightest weeks are then."""
    year = forecast(site, date(2026, 1, 1), date(2026, 12, 31))
    lightest = year.days[int(np.argmax(year.why.season))]
    assert date(2026, 3, 1) <= lightest <= date(2026, 4, 15)


def test_unknown_water_widens_instead_of_stopping(site):
    """Without temperatures the forecast still comes, wider, and says the water is unknown."""
    summer = (date(2026, 7, 1), date(2026, 7, 31))
    known = forecast(site, *summer)
    guessed = forecast(replace(site, monthly_water_c=None), *summer)
    width = guessed.fullness.high - guessed.fullness.low
    assert width.mean() > (known.fullness.high - known.fullness.low).mean()
    assert np.isnan(guessed.water_c).all()


def test_south_of_the_equator_the_year_turns_round(site):
    """With the months of the other hemisphere the lightest time moves by half a year."""
    monthly = site.monthly_water_c
    south = replace(site, latitude_deg=-29.6, monthly_water_c=monthly[6:] + monthly[:6])
    year = forecast(south, date(2026, 1, 1), date(2026, 12, 31))
    assert 8 <= year.days[int(np.argmax(year.why.season))].month <= 10


def test_outside_the_ephemeris_is_a_sentence(site):
    """Days the moon cannot be computed for are a RangeError, not a crash."""
    with pytest.raises(RangeError):
        forecast(site, date(2060, 1, 1), date(2060, 1, 3))


def test_last_before_first_is_refused(site):
    """A span that ends before it begins is a slip of the caller."""
    with pytest.raises(ValueError, match="precedes"):
        forecast(site, FIRST, FIRST - timedelta(days=1))


@pytest.mark.parametrize("path", sorted(resource("species").glob("*.toml")))
def test_profiles_draw(path, site):
    """Every species profile can be drawn from and forecast with, by name alone."""
    drawn = parameters_of(path.stem, unknowns(50, np.random.default_rng(0)))
    assert (drawn.f0 < drawn.light_below).mean() > 0.95
    found = forecast(replace(site, species=path.stem), date(2026, 9, 1), date(2026, 9, 10))
    assert np.isfinite(found.fullness.mean).all()


def test_moon_without_evidence_stays_small(site):
    """The cool-water profile leaves the moon next to no room."""
    found = forecast(replace(site, species="cool-annual"), FIRST, LAST)
    assert np.abs(found.why.moon).max() < 0.02
