"""Why a day is or is not worth going out, and two plans side by side."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time
from zoneinfo import ZoneInfo

import pytest
from made_waters import MadeTide, made_outlook, made_site

from planner.estimates import Interval
from planner.phrasing import Style
from planner.sites.site import Closure, FreeTime, Rules, Spot
from planner.trips import (
    LIMIT_WORDS,
    Search,
    Wishes,
    compare_plans,
    explain_day,
    nothing_fits,
)

FIRST, LAST = date(2026, 5, 11), date(2026, 5, 24)
ZONE = ZoneInfo("America/New_York")
FRIDAY, SATURDAY, SUNDAY, MONDAY = (date(2026, 5, day) for day in (15, 16, 17, 18))


def search_of(**changes):
    spots = (Spot("grass edge", 1.6, 0.35), Spot("channel lip", 2.6, 0.35))
    weekend = FreeTime(weekdays=frozenset({4, 5, 6}))
    given = {"spots": spots, "lowest_ramp_level_m": 0.05, "free": weekend, **changes}
    return Search(made_outlook(made_site(**given), FIRST, LAST), tide=MadeTide())


@pytest.mark.parametrize("outing", ["set", "haul"])
def test_the_best_of_a_day_is_on_it_and_no_pair_of_the_day_is_better(outing):
    """Every plan of the whole search with that outing on the day promises no more."""
    search = search_of()
    plans = search.plans(60, Wishes(), Style(), None).plans
    for day in search.outlook.days:
        best = search.best_on(day, outing, Wishes(), Style())
        same = [
            plan
            for plan in plans
            if day == (plan.set_at if outing == "set" else plan.haul_at).astimezone(ZONE).date()
        ]
        if best is None:
            assert not same
            continue
        at = best.set_at if outing == "set" else best.haul_at
        assert at.astimezone(ZONE).date() == day
        assert all(best.full_keepers.mean >= plan.full_keepers.mean - 0.06 for plan in same)


def test_what_rules_out_hauls_is_counted_once_each():
    """By day of the haul the counts add up to those by day of the set: the same pairs."""
    search = search_of()
    by_set = [search.rejected_on(day, "set") for day in search.outlook.days]
    by_haul = [search.rejected_on(day, "haul") for day in search.outlook.days]
    for limit in search.candidates.rejected():
        assert sum(x.get(limit, 0) for x in by_haul) == sum(x.get(limit, 0) for x in by_set)


def test_a_day_says_what_is_in_the_way_or_what_it_costs():
    """The user points at a day and reads why; the day's own reason comes before any limit."""
    search = search_of(closures=(Closure("spawning", SUNDAY, SUNDAY),))
    assert explain_day(search, MONDAY, Style()) == [
        "No set on Mon 18 May: Mondays are not free.",
        "No haul on Mon 18 May: Mondays are not free.",
    ]
    assert explain_day(search, SUNDAY, Style())[0] == "No set on Sun 17 May: closed (spawning)."
    on_friday, _ = explain_day(search, FRIDAY, Style())
    assert "With a set on Fri 15 May the best haul is Sat 16 May" in on_friday
    assert "than the best plan" in on_friday or "as many as the best plan" in on_friday


def test_the_limit_that_stops_what_came_furthest_is_named():
    """Free and light are not the trouble of a day whose ramp is dry all the while."""
    dry = search_of(lowest_ramp_level_m=5.0)
    said, _ = explain_day(dry, SATURDAY, Style())
    assert said.startswith("No set on Sat 16 May: too little water at the ramp, within your free")
    short = search_of(rules=Rules(max_soak_h=6.0), spots=(), lowest_ramp_level_m=None)
    assert "soak too short or too long" in explain_day(short, SATURDAY, Style())[0]
    early = FreeTime(weekdays=frozenset({4, 5}), earliest=time(0), latest=time(4, 30))
    assert "not wholly in daylight" in explain_day(search_of(free=early), SATURDAY, Style())[0]


def test_wishes_move_the_haul_that_is_named():
    """Early and late wishes lead to an earlier and a later haul of the same day."""
    search, wishes = search_of(), [Wishes(haul_time="early"), Wishes(haul_time="late")]
    early, late = (search.best_on(SUNDAY, "haul", wish, Style()) for wish in wishes)
    assert early is not None
    assert late is not None
    assert early.haul_at <= late.haul_at


def test_two_plans_stand_side_by_side_with_what_can_be_told():
    """Within what the estimate can tell no plan is called better; beyond it one is."""
    first, second, *_ = search_of().plans(5, Wishes(), Style(), None).plans
    near = replace(first, full_keepers=Interval(40, 20, 60))
    other = replace(second, full_keepers=Interval(39, 19, 59))
    found = compare_plans(near, other, ZONE, Style(length="ft"))
    assert [row[0] for row in found.rows][:4] == ["Set", "Haul", "Soak", "Full keepers"]
    assert found.rows[3][1:] == ("about 40 (20–60)", "about 39 (19–59)")
    assert "too near to tell apart" in found.sentence
    assert found.rows[5][1].endswith("ft")
    poor = replace(second, full_keepers=Interval(20, 9, 33), light_share=Interval(0.5, 0.4, 0.6))
    said = compare_plans(near, poor, ZONE, Style()).sentence
    assert said.startswith("Plan 1 promises 20 more full keepers. Plan 2 has the more light crabs.")
    assert compare_plans(poor, near, ZONE, Style()).sentence == said


def test_a_search_without_plans_says_what_to_do_about_the_limit_that_came_last() -> None:
    """Pairs are counted at the first limit they fail: the last one stopped the nearest ones."""
    said = nothing_fits({"free": 500_000, "cover": 3})
    assert LIMIT_WORDS["cover"] in said
    assert "deeper spots" in said
    assert "later days" in nothing_fits({})
    assert len({nothing_fits({limit: 1}) for limit in LIMIT_WORDS}) == len(LIMIT_WORDS)
