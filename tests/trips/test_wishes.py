"""Wishes that cost crabs: the price is stated, the ranks follow it, and no limit gives way."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise, product
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from made_waters import MadeTide, made_outlook, made_site

from planner.phrasing import Style
from planner.sites.site import Habits, Spot
from planner.trips import Plan, Search, Wishes, compare_plans, soonest_as_good

ZONE = ZoneInfo("America/New_York")
FIRST = date(2026, 6, 1)
SPOTS = (Spot("grass edge", 1.8, 0.35), Spot("channel lip", 2.6, 0.35))


@pytest.fixture(scope="module")
def search() -> Search:
    site = made_site(spots=SPOTS, habits=Habits(min_soak_h=4.0, max_soak_h=60.0))
    return Search(made_outlook(site, FIRST, FIRST + timedelta(days=9)), tide=MadeTide())


def plans_of(search: Search, wishes: Wishes) -> tuple[Plan, ...]:
    return search.plans(12, wishes, Style(), None).plans


def is_one_day(plan: Plan) -> bool:
    return plan.set_at.astimezone(ZONE).date() == plan.haul_at.astimezone(ZONE).date()


def test_a_wish_for_a_short_soak_no_longer_favours_the_longest(search: Search) -> None:
    """Without it the longest soak is first; with it about a day, by the stated price."""
    longest, short = (plans_of(search, Wishes(soak=soak)) for soak in ("any", "short"))
    assert longest[0].soak_h >= 58
    # twice half-filled after 10 h: a fifth a day is dearer than what a trap gains from 30 h on
    assert 24 <= short[0].soak_h <= 36
    for plan in short:
        left = plan.full_keepers.mean * 0.8 ** (plan.soak_h / 24)
        assert plan.ranked_keepers == pytest.approx(left)
        assert plan.set_daylight_h >= 0.5  # not at the last light, where the day has more
    ranked = [plan.ranked_keepers for plan in short]
    assert all(one >= other - 0.1 for one, other in pairwise(ranked))


def test_a_long_drive_brings_set_and_haul_onto_one_day(search: Search) -> None:
    """One drive instead of two, where a day of light gives half of what two drives would."""
    any_drive, long_drive = (plans_of(search, Wishes(drive=drive)) for drive in ("any", "long"))
    assert not is_one_day(any_drive[0])
    assert is_one_day(long_drive[0])
    for plan in long_drive:
        left = plan.full_keepers.mean * (1.0 if is_one_day(plan) else 0.5)
        assert plan.ranked_keepers == pytest.approx(left)


def test_the_plan_says_what_the_wish_cost(search: Search) -> None:
    """A trade-off is stated: the soak, the price, and how many keepers fewer than the most."""
    most = round(plans_of(search, Wishes())[0].full_keepers.mean)
    plan = plans_of(search, Wishes(soak="short", drive="long"))[0]
    words = " ".join(plan.reasons)
    assert "Wish for a short soak:" in words
    assert "as if each day of soak took 20% of the keepers" in words
    assert "Wish for one long drive, not two:" in words
    fewer = most - round(plan.full_keepers.mean)
    assert fewer > 1
    assert f"it has {fewer} fewer full keepers." in words
    assert "Wish for" not in " ".join(plans_of(search, Wishes())[0].reasons)


def test_the_first_plan_offered_is_by_the_wish_too(search: Search) -> None:
    """What the window chooses of itself must not be the long soak that was not wished for."""
    assert soonest_as_good(plans_of(search, Wishes(soak="short"))).soak_h <= 40


@pytest.mark.parametrize("haul_water", ["rising", "falling", "turning"])
def test_two_plans_show_their_daylight_and_which_wishes_they_meet(
    search: Search, haul_water: str
) -> None:
    """Side by side stands the light left at either outing, and each wish as met or not."""
    wishes = Wishes(haul_water=haul_water, soak="short")
    first, second, *_ = plans_of(search, wishes)
    rows = {what: of for what, *of in compare_plans(first, second, ZONE, Style()).rows}
    assert rows["Daylight left after the set"][0].endswith(("h", "min"))
    assert rows["Daylight left after the haul"][1].endswith(("h", "min"))
    assert set(rows[f"Wish for {haul_water} water at the haul"]) <= {"met", "not met"}
    assert rows["Wish for 30 min of daylight after the haul"] == ["met", "met"]
    assert all("h" in text for text in rows["Wish for a short soak"])


def test_the_daylight_is_that_between_outing_and_sunset(search: Search) -> None:
    """The numbers are those of the sky's own sunset."""
    site, sky = search.outlook.site, search.outlook.sky
    for plan in plans_of(search, Wishes()):
        for begin, minutes, hours in (
            (plan.set_at, site.habits.set_minutes, plan.set_daylight_h),
            (plan.haul_at, site.habits.haul_minutes, plan.haul_daylight_h),
        ):
            day = search.outlook.index(begin.astimezone(ZONE).date())
            over = np.datetime64(begin.replace(tzinfo=None)) + np.timedelta64(int(minutes), "m")
            left_h = (sky.sunset[day] - over) / np.timedelta64(1, "h")
            assert hours == pytest.approx(left_h, abs=0.05)


def test_the_light_of_the_midnight_sun_does_not_end_with_the_days_looked_at() -> None:
    """A haul late on the last of them had three hours of daylight left, and a caution of dusk."""
    site = made_site("Europe/Oslo", 69.65, 18.96, habits=Habits(haul_minutes=90.0))
    north = Search(made_outlook(site, date(2026, 6, 19), date(2026, 6, 20)), tide=MadeTide())
    late = north.plans(1, Wishes(haul_time="late"), Style(), None).plans[0]
    assert late.haul_at.astimezone(site.zone).date() == date(2026, 6, 20)
    assert late.haul_daylight_h >= 24.0
    assert not any("daylight" in text for text in late.warnings)


def test_every_wish_ranks_every_plan_within_the_limits(search: Search) -> None:
    """No combination of wishes loses the plans or brings a soak beyond the bounds."""
    for soak, drive, time in product(("any", "short"), ("any", "long"), ("any", "early", "late")):
        plans = plans_of(search, Wishes(haul_time=time, soak=soak, drive=drive))
        assert [plan.rank for plan in plans] == list(range(1, len(plans) + 1))
        assert all(4.0 <= plan.soak_h <= 60.0 for plan in plans)
