"""A plan's reasons and warnings: the right ones are there, with the right numbers and units."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

import numpy as np
import pytest
from made_waters import MadeTide, made_outlook, made_site

from planner.clock import to_utc64
from planner.phrasing import Style, height_text
from planner.sites.site import Closure, FreeTime, Habits, Rules, Site, Spot
from planner.trips import Outlook, Plan, Wishes, plan_trips
from planner.trips.catch import learn_catch

SPOTS = tuple(Spot(f"spot {name}", 1.6 + depth, 0.35) for depth, name in enumerate("abc"))
FIRST = date(2026, 5, 14)


def site_with(**changes: object) -> Site:
    known = {"spots": SPOTS, "lowest_ramp_level_m": 0.0, "rules": Rules(checked=FIRST)}
    return made_site(**{**known, **changes})


def best(site: Site, outlook: Outlook | None = None, **wishes: object) -> Plan:
    outlook = outlook or made_outlook(site, FIRST, FIRST + timedelta(days=4))
    return plan_trips(outlook, tide=MadeTide(), **wishes).plans[0]


def text(parts: tuple[str, ...]) -> str:
    return "\n".join(parts)


def test_the_reasons_tell_catch_light_cover_ramp_daylight_and_water() -> None:
    """A trapper reads what the plan promises and that every hard limit was looked at."""
    plan = best(site_with())
    words = text(plan.reasons)
    assert f"about {round(plan.full_keepers.mean)} (" in words.lower()
    assert "from 12 traps" in words
    assert "Light crabs about 1 in 7" in words
    assert "All three spots stay covered, the shallowest (spot a) by" in words
    for topic in ("ramp", "daylight left", "while you haul"):
        assert topic in words


def test_a_trip_of_one_day_is_not_told_of_both_days() -> None:
    """Set and haul on one day: the ramp was said to have water to spare "on both days"."""
    short, long = (
        text(best(site_with(habits=Habits(min_soak_h=hours, max_soak_h=hours + 1))).reasons)
        for hours in (5.0, 24.0)
    )
    assert "more water than you need, out and back both times." in short
    assert "both days" not in short
    assert "out and back on both days." in long


def test_of_two_spots_both_stay_covered() -> None:
    """Nobody says all two of anything; of two, the one is the shallower."""
    two = (Spot("edge", 1.8, 0.35), Spot("hole", 2.6, 0.35))
    assert "Both spots stay covered, the shallower (edge) by" in text(
        best(site_with(spots=two)).reasons
    )


@pytest.mark.parametrize("drive", ["any", "long"])
def test_the_ramp_is_judged_by_the_least_of_four_moments(drive: str) -> None:
    """Out and back on both days: the water to spare is that of the lowest of the four."""
    site = site_with(lowest_ramp_level_m=0.05)
    outlook = made_outlook(site, FIRST, FIRST + timedelta(days=4))
    found = plan_trips(outlook, tide=MadeTide(), wishes=Wishes(drive=drive)).plans
    least = set()
    for plan in found:
        begins = (plan.set_at, plan.set_at, plan.haul_at, plan.haul_at)
        minutes = (0, site.habits.set_minutes, 0, site.habits.haul_minutes)
        moments = [
            to_utc64(at + timedelta(minutes=later))
            for at, later in zip(begins, minutes, strict=True)
        ]
        levels = MadeTide().heights(np.array(moments))
        least.add(int(levels.argmin()))
        spare = height_text(float(levels.min()) - 0.05, Style())
        assert f"At the ramp at least {spare} more water" in text(plan.reasons)
    assert len(least) > 1


def test_the_cover_named_is_the_lowest_water_of_the_soak() -> None:
    """Height, place and moment of the least cover agree with the water itself."""
    site = site_with()
    plan = best(site)
    assert plan.lowest_cover_spot == "spot a"
    assert plan.lowest_cover_at is not None
    assert plan.set_at <= plan.lowest_cover_at
    assert plan.lowest_cover_at <= plan.haul_at + timedelta(minutes=site.habits.haul_minutes)
    level_m, _ = MadeTide().lowest(
        *(
            to_utc64(at)
            for at in (plan.set_at, plan.haul_at + timedelta(minutes=site.habits.haul_minutes))
        )
    )
    assert plan.lowest_cover_m == pytest.approx(1.6 - 0.35 + level_m, abs=0.001)


def test_feet_and_a_twelve_hour_clock_are_used_when_asked_for() -> None:
    """Units of the words follow the user's; the numbers inside stay metres."""
    metric, feet = (
        best(site_with(), style=style) for style in (Style(), Style("ft", "F", hours12=True))
    )
    assert " ft " in text(feet.reasons)
    assert " m " not in text(feet.reasons)
    assert "am" in text(feet.reasons) or "pm" in text(feet.reasons)
    assert feet.lowest_cover_m == metric.lowest_cover_m


def test_what_was_not_checked_is_said() -> None:
    """No spots, no ramp, no temperature, no date of the rules: each is owned up to."""
    site = site_with(spots=(), lowest_ramp_level_m=None, rules=Rules())
    outlook = made_outlook(site, FIRST, FIRST + timedelta(days=4), water_c=float("nan"))
    words = text(best(site, outlook).warnings)
    for topic in ("No spots entered", "No ramp level", "temperature unknown", "No date entered"):
        assert topic in words
    assert best(site, outlook).lowest_cover_m is None
    assert "covered" not in text(best(site, outlook).reasons)


def test_rules_checked_long_ago_are_named_with_their_age() -> None:
    """After a season the check is stale; within it nothing is said."""
    old = site_with(rules=Rules(checked=date(2025, 9, 14)))
    assert "8 months ago" in text(best(old).warnings)
    assert "months ago" not in text(best(site_with()).warnings)
    assert "14 months ago" in text(best(old, today=date(2026, 11, 14)).warnings)


def test_a_check_of_the_rules_that_is_still_to_come_is_no_check() -> None:
    """A slip in the year must not silence for years the reminder to check the rules."""
    slip = site_with(rules=Rules(checked=date(2036, 3, 2)))
    assert "which is still to come" in text(best(slip).warnings)
    assert "still to come" not in text(best(site_with()).warnings)


def test_a_closure_soon_after_is_pointed_out() -> None:
    """Traps left a day longer than planned would be in closed water."""
    shut = Closure("spawning closure", date(2026, 5, 19), date(2026, 5, 30))
    words = text(best(site_with(closures=(shut,))).warnings)
    assert "Closed from Tue 19 May (spawning closure)" in words


def test_a_change_of_clocks_between_set_and_haul_is_pointed_out() -> None:
    """On that weekend times by the old and the new clock are an hour apart."""
    site = site_with()
    outlook = made_outlook(site, date(2026, 10, 31), date(2026, 11, 1))
    assert "The clocks change between set and haul: set by EDT, haul by EST." in (
        best(site, outlook).warnings
    )
    assert "clocks change" not in text(best(site).warnings)


def test_long_soaks_in_warm_water_and_thin_cover_are_cautioned_against() -> None:
    """Crabs die in warm traps; wind takes a thin cover away."""
    site = site_with(habits=Habits(min_soak_h=40.0, cover_margin_m=0.0))
    shallow = replace(site, spots=(Spot("bank", 0.65, 0.35),))
    tide = MadeTide(amplitudes_m=(0.4, 0.1, 0.1))
    outlook = made_outlook(shallow, FIRST, FIRST + timedelta(days=4), water_c=28.0)
    plan = plan_trips(outlook, tide=tide).plans[0]
    words = text(plan.warnings)
    assert "Water about 28 °C" in words
    assert "over the shallowest trap" in words
    assert "The spot stays covered" in text(plan.reasons)


def test_wishes_break_ties_and_are_reported() -> None:
    """A wish picks among plans as good as the best and never overrides the catch by much."""
    site = site_with()
    outlook = made_outlook(site, FIRST, FIRST + timedelta(days=9))
    plain = plan_trips(outlook, tide=MadeTide()).plans
    for water in ("rising", "falling", "turning"):
        wished = plan_trips(outlook, tide=MadeTide(), wishes=Wishes(haul_water=water)).plans
        assert wished[0].full_keepers.mean > 0.94 * plain[0].full_keepers.mean
        assert f"Wish for {water} water at the haul: met." in wished[0].reasons
    early = plan_trips(outlook, tide=MadeTide(), wishes=Wishes(haul_time="early")).plans
    late = plan_trips(outlook, tide=MadeTide(), wishes=Wishes(haul_time="late")).plans
    hours = [sum(p.haul_at.astimezone(site.zone).hour for p in plans) for plans in (early, late)]
    assert hours[0] < hours[1]


def test_a_heavier_day_ranks_above_a_lighter_one() -> None:
    """All else alike, the plan hauled when fewer crabs are light comes first."""
    site = site_with(habits=Habits(min_soak_h=20.0, max_soak_h=26.0))
    light = [0.5, 0.5, 0.5, 0.05, 0.5, 0.5, 0.5]
    outlook = made_outlook(site, FIRST, FIRST + timedelta(days=6), light_share=light)
    plan = best(site, outlook)
    assert plan.haul_at.astimezone(site.zone).date() == FIRST + timedelta(days=3)
    assert plan.light_share.mean == pytest.approx(0.05)


def test_keepers_are_those_of_the_traps_that_are_set() -> None:
    """As many as the place says, which the rules bound where it is read."""
    few = best(site_with(habits=Habits(traps=4)))
    many = best(site_with())
    assert "from 4 traps" in text(few.reasons)
    assert few.full_keepers.mean == pytest.approx(many.full_keepers.mean / 3, rel=0.01)


def test_instants_are_aware_utc() -> None:
    """A plan's times carry their zone, so that no reader has to guess."""
    plan = best(site_with())
    instants: list[datetime | None] = [plan.set_at, plan.latest_set_at, plan.haul_at]
    assert all(at is not None and at.tzinfo is UTC for at in [*instants, plan.lowest_cover_at])


def test_the_set_window_is_told_with_what_its_end_costs() -> None:
    """Folding pairs into one plan must not hide how long the set may begin, or the price."""
    plan = best(site_with())
    assert plan.latest_set_at > plan.set_at
    assert "Set any time from" in text(plan.reasons)
    assert "would cost" in text(plan.reasons)


def test_cold_water_is_named_as_the_reason_for_a_poor_catch() -> None:
    """A plan for winter must not look like a plan for summer with fewer crabs."""
    site = site_with()
    cold = made_outlook(site, FIRST, FIRST + timedelta(days=4), water_c=9.0)
    assert "Water about 9 °C: crabs hardly move" in text(best(site, cold).warnings)
    assert best(site, cold).full_keepers.mean < 0.2 * best(site).full_keepers.mean
    days_c = np.array([5.0, 6.0, 7.0, 8.0, 9.0])
    warming = replace(cold, forecast=replace(cold.forecast, water_c=days_c))
    plan = best(site, warming)
    hauled_c = days_c[warming.index(plan.haul_at.astimezone(site.zone).date())]
    assert hauled_c > 5.0
    assert f"Water about {hauled_c:.0f} °C: crabs" in text(plan.warnings)


def test_a_set_at_the_last_light_is_cautioned_against() -> None:
    """Floats and other boats are hard to see: the set deserves the same word as the haul."""
    late = Habits(bait_minutes=0.0, set_minutes=60.0, haul_minutes=30.0)
    evenings = site_with(habits=late, free=FreeTime(earliest=time(19, 0)))
    plan = best(evenings)
    assert 0 <= plan.set_daylight_h < 0.5
    assert "Little daylight left after the set" in text(plan.warnings)
    assert "Little daylight left after the set" not in text(best(site_with()).warnings)


def test_a_long_soak_says_what_its_last_hours_bring() -> None:
    """The ranking likes long soaks; the trapper reads how little the wait beyond a day adds."""
    site = site_with(habits=Habits(min_soak_h=44.0, max_soak_h=48.0))
    plan = best(site)
    (said,) = (reason for reason in plan.reasons if "more and more slowly" in reason)
    day, whole = (int(number) for number in re.findall(r"about (\d+) of these (\d+)", said)[0])
    assert whole == round(plan.full_keepers.mean)
    catch = learn_catch([], seed=0).per_trap(np.array([24.0, plan.soak_h]))
    assert day == pytest.approx(plan.full_keepers.mean * catch[0] / catch[1], abs=1)
    assert whole / 2 < day < whole
    short = best(site_with(habits=Habits(min_soak_h=4.0, max_soak_h=20.0)))
    assert "more and more slowly" not in text(short.reasons)
