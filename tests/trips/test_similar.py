"""Past trips like a date: nearest first, near in moon and season going round."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from made_waters import made_site
from scipy import stats

from planner.logbook.entries import TripOutcome
from planner.phrasing import Style
from planner.trips import similar_trips
from planner.trips.similar import light_interval

SITE = made_site()


def trip(
    name: str,
    when: datetime | None,
    *,
    judged: int | None = 20,
    light: int | None = 2,
    water_c: float | None = 22.0,
    place: str = "Made Water",
) -> TripOutcome:
    return TripOutcome(name, place, when, 12, 30, judged, light, water_c)


def noon(day: date) -> datetime:
    return datetime(day.year, day.month, day.day, 12, tzinfo=ZoneInfo("America/New_York"))


def test_the_same_moon_and_season_a_lunar_year_and_a_bit_ago_come_first() -> None:
    """372 days are twelve lunations and eighteen days: the moon tells two trips apart."""
    day = date(2026, 9, 12)
    outcomes = [
        trip("thirteen lunations", noon(day - timedelta(days=384))),
        trip("half a lunation off", noon(day - timedelta(days=369))),
        trip("the other season", noon(day - timedelta(days=177))),
    ]
    found = similar_trips(SITE, day, outcomes, water_c=22.0)
    assert [one.outcome.trip for one in found] == [
        "thirteen lunations",
        "half a lunation off",
        "the other season",
    ]
    assert found[0].moon_d < 1.0
    assert found[1].moon_d == pytest.approx(14.8, abs=1.5)
    assert found[2].season_d == pytest.approx(177, abs=0.1)


def test_moon_and_season_go_round() -> None:
    """Late December is near early January, and the day before new moon near the day after."""
    day = date(2026, 1, 3)
    found = similar_trips(SITE, day, [trip("new year", noon(date(2024, 12, 29)))])
    assert found[0].season_d == pytest.approx(5, abs=0.6)
    after_new = date(2026, 5, 17)  # new moon 2026-05-16 20:01 UTC
    found = similar_trips(SITE, after_new, [trip("before new", noon(date(2026, 5, 16)))])
    assert found[0].moon_d < 1.2


def test_warmer_water_and_a_recent_light_trip_count() -> None:
    """Of trips alike in moon and season the one in like water, after like trips, is nearer."""
    day = date(2026, 9, 12)
    then = day - timedelta(days=384)
    same = trip("same water", noon(then), water_c=24.0)
    cold = trip("cold water", noon(then) + timedelta(hours=1), water_c=15.0)
    found = similar_trips(SITE, day, [cold, same], water_c=24.0)
    assert [one.outcome.trip for one in found] == ["same water", "cold water"]
    assert "9 °C colder" in found[1].how_near
    fahrenheit = similar_trips(SITE, day, [cold], water_c=24.0, style=Style(temperature="F"))
    assert "16 °F colder" in fahrenheit[0].how_near
    lately = trip("light", noon(day - timedelta(days=6)), light=9)
    before = trip("light then", noon(then - timedelta(days=6)), light=9)
    names = [t.outcome.trip for t in similar_trips(SITE, day, [same, lately, before], water_c=24.0)]
    alone = similar_trips(SITE, day, [same, lately], water_c=24.0)
    assert names[0] == "same water"
    both = similar_trips(SITE, day, [same, lately, before], water_c=24.0)
    assert both[0].since_light_d == pytest.approx(6)
    assert both[0].distance < next(t for t in alone if t.outcome.trip == "same water").distance


@pytest.mark.parametrize(("ago_d", "told"), [(59, True), (61, False)])
def test_a_light_trip_is_forgotten_after_two_months(ago_d: int, told: bool) -> None:
    """Crabs have refilled by then: an older light trip is neither said nor counted as near."""
    day = date(2026, 9, 12)
    alike = trip("alike", noon(day - timedelta(days=384)))
    light = trip("light", noon(day - timedelta(days=ago_d)), light=9)
    found = next(one for one in similar_trips(SITE, day, [alike, light]) if one.outcome == alike)
    assert (f"one {ago_d} days before now" in found.how_near) == told
    (alone,) = similar_trips(SITE, day, [alike])
    assert (found.distance == alone.distance) == (not told)


def test_only_earlier_trips_of_this_place_with_a_time_are_compared() -> None:
    """The future, another water and a trip without a time say nothing about the day."""
    day = date(2026, 9, 12)
    outcomes = [
        trip("untimed", None),
        trip("elsewhere", noon(day - timedelta(days=30)), place="Elsewhere"),
        trip("the day itself", noon(day)),
        trip("later", noon(day + timedelta(days=1))),
    ]
    assert similar_trips(SITE, day, outcomes) == []
    assert similar_trips(SITE, day, []) == []


@given(st.permutations(range(6)), st.integers(1, 6))
def test_the_order_of_the_log_does_not_matter(order: list[int], limit: int) -> None:
    """Nearest first, whatever the order of rows; a limit cuts the end off."""
    day = date(2026, 9, 12)
    outcomes = [
        trip(f"t{i}", datetime(2025, 4 + i, 3 + 3 * i, 13, tzinfo=UTC), light=i) for i in range(6)
    ]
    whole = similar_trips(SITE, day, outcomes, limit=6)
    found = similar_trips(SITE, day, [outcomes[i] for i in order], limit=limit)
    assert found == whole[:limit]
    distances = [one.distance for one in whole]
    assert distances == sorted(distances)


@given(st.integers(1, 60).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_the_interval_is_the_jeffreys_one(counts: tuple[int, int]) -> None:
    """80% of a beta with half a crab added of each kind, by an independent library."""
    light, judged = counts
    said = light_interval(trip("any", None, judged=judged, light=light))
    assert said is not None
    beta = stats.beta(light + 0.5, judged - light + 0.5)
    assert said.low == (0.0 if light == 0 else pytest.approx(beta.ppf(0.1)))
    assert said.high == (1.0 if light == judged else pytest.approx(beta.ppf(0.9)))
    assert said.low <= said.mean <= said.high


@pytest.mark.parametrize(("judged", "light"), [(None, None), (0, 0), (8, None), (None, 2)])
def test_a_trip_that_was_not_judged_has_no_share(judged: int | None, light: int | None) -> None:
    """Not recorded is not zero light crabs."""
    assert light_interval(trip("any", None, judged=judged, light=light)) is None


def test_unknown_water_is_neither_near_nor_far() -> None:
    """A trip whose temperature is unknown stands between one alike and one far off."""
    day = date(2026, 9, 12)
    then = noon(day - timedelta(days=384))
    outcomes = [
        trip("alike", then, water_c=22.0),
        trip("unknown", then, water_c=None),
        trip("far", then, water_c=12.0),
    ]
    found = similar_trips(SITE, day, outcomes, water_c=22.0)
    assert [one.outcome.trip for one in found] == ["alike", "unknown", "far"]
    assert found[1].warmer_c is None
    nowhere = similar_trips(SITE, day, outcomes, water_c=float("nan"))
    assert len({one.distance for one in nowhere}) == 1
    assert not np.isnan(nowhere[0].distance)
