"""The outlook puts sun, water, forecast and free and closed days side by side."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise

import numpy as np
import pytest
from made_waters import made_outlook, made_site

import planner.molt
from planner.assets import demo_place
from planner.clock import day_edges
from planner.errors import Cancelled
from planner.sites import load_site
from planner.sites.site import Closure, FreeTime, Site
from planner.tides import Tide
from planner.trips import outlook, plan_trips

FIRST, LAST = date(2026, 10, 25), date(2026, 11, 7)


@pytest.fixture
def demo() -> Site:
    return load_site(demo_place())


@pytest.fixture
def plain_forecast(monkeypatch: pytest.MonkeyPatch) -> None:
    """Stand in for the forecast, which has its own tests."""

    def forecast(site: Site, first: date, last: date, *rest: object) -> object:
        return made_outlook(site, first, last).forecast

    monkeypatch.setattr(planner.molt, "forecast", forecast, raising=False)


@pytest.mark.usefixtures("plain_forecast")
def test_every_part_tells_of_the_same_days(demo: Site) -> None:
    """The strip draws the parts one under the other: day i must be day i in each."""
    whole = outlook(demo, FIRST, LAST)
    count = (LAST - FIRST).days + 1
    assert whole.days == whole.sky.days == whole.forecast.days
    for values in (whole.lowest_m, whole.highest_m, whole.free, whole.closed):
        assert len(values) == count
    edges = day_edges(FIRST, LAST, demo.zone)
    at = whole.index(date(2026, 11, 1))  # a day of 25 hours
    levels = Tide(demo).heights(np.arange(edges[at], edges[at + 1], np.timedelta64(5, "m")))
    assert whole.lowest_m[at] == pytest.approx(levels.min(), abs=0.005)
    assert whole.highest_m[at] == pytest.approx(levels.max(), abs=0.005)
    assert ((whole.phases.times >= edges[0]) & (whole.phases.times <= edges[-1])).all()


@pytest.mark.usefixtures("plain_forecast")
def test_days_say_why_they_are_closed_or_not_free() -> None:
    """A crossed-out day must be able to name its reason."""
    site = made_site(
        closures=(Closure("clean-up", date(2026, 2, 11), date(2026, 2, 20), every_year=True),),
        free=FreeTime(weekdays=frozenset({5, 6}), never=frozenset({date(2026, 2, 14)})),
    )
    days = outlook(site, date(2026, 2, 10), date(2026, 2, 16))
    assert days.why_closed == ("", *["clean-up"] * 6)
    assert days.why_not_free[4] == "marked as not free"  # Saturday the 14th
    assert days.why_not_free[5] == ""
    assert days.why_not_free[6] == "Mondays are not free"
    assert days.closed.tolist() == [False] + [True] * 6


@pytest.mark.usefixtures("plain_forecast")
def test_work_stops_where_the_checkpoint_says_so(demo: Site) -> None:
    """A result nobody wants any more is not computed to its end."""
    calls = []

    def stop_at_second() -> None:
        calls.append(1)
        if len(calls) == 2:
            raise Cancelled

    with pytest.raises(Cancelled):
        outlook(demo, FIRST, LAST, checkpoint=stop_at_second)
    assert len(calls) == 2


@pytest.mark.usefixtures("plain_forecast")
def test_a_part_is_the_outlook_of_its_days(demo: Site) -> None:
    """Cutting a long outlook gives what a short one would have given."""
    first, last = FIRST + timedelta(days=3), LAST - timedelta(days=2)
    part, alone = outlook(demo, FIRST, LAST).part(first, last), outlook(demo, first, last)
    assert part.days == alone.days
    assert part.why_not_free == alone.why_not_free
    assert part.phases.times.tolist() == alone.phases.times.tolist()
    np.testing.assert_allclose(part.lowest_m, alone.lowest_m, atol=1e-6)
    np.testing.assert_array_equal(part.sky.sunrise, alone.sky.sunrise)
    assert plan_trips(part).plans == plan_trips(alone).plans


@pytest.mark.usefixtures("plain_forecast")
def test_a_day_outside_the_outlook_is_refused(demo: Site) -> None:
    """An index from before the first day would silently be one from the end."""
    whole = outlook(demo, FIRST, LAST)
    with pytest.raises(ValueError, match="not among"):
        whole.index(FIRST - timedelta(days=1))


def test_the_real_forecast_carries_through_to_the_plans(demo: Site) -> None:
    """From the demo place to ranked plans with every part real."""
    whole = outlook(demo, FIRST, LAST)
    plans = plan_trips(whole).plans
    assert plans
    assert [plan.rank for plan in plans] == list(range(1, len(plans) + 1))
    means = [plan.full_keepers.mean for plan in plans]
    assert all(later <= earlier + 0.1 for earlier, later in pairwise(means))
    for plan in plans:
        day = plan.haul_at.astimezone(demo.zone).date()
        assert plan.light_share == whole.forecast.light_share.at(whole.index(day))
