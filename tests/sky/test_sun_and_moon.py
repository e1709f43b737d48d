"""Rise, set, twilight, phases and age against an independent library and published eclipses."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise

import ephem
import numpy as np
import pytest
from almanac_reference import (
    EVENTS,
    PLACES,
    SPANS,
    ephem_event,
    phase_differences_s,
    place,
    watcher,
)

from planner.clock import day_edges, from_utc64, to_utc64
from planner.errors import RangeError
from planner.sky import PHASE_NAMES, daylight, lunar_age, lunar_phase_angle, phases, sky_days

ONE_MINUTE = np.timedelta64(60, "s")
SYNODIC_MONTH_D = 29.530589


@pytest.mark.parametrize("where", PLACES, ids=lambda where: where[2])
@pytest.mark.parametrize("event", EVENTS)
def test_every_event_is_within_a_minute_of_an_independent_library(
    where: tuple[float, float, str], event: str
) -> None:
    """Guards the horizon conventions, the time scales and which local day an event is put in."""
    site = place(*where)
    kind, body, horizon, centre = EVENTS[event]
    for first, count in SPANS:
        last = first + timedelta(days=count - 1)
        ours = getattr(sky_days(site, first, last), event)
        edges = day_edges(first, last, site.zone)
        for mine, start, stop in zip(ours, edges[:-1], edges[1:], strict=True):
            expected = ephem_event(site, kind, body(), start, horizon, centre)
            if np.isnat(mine):
                # nothing today: the next one is in another day, give or take the tolerance
                assert expected is None or expected > stop - ONE_MINUTE
            else:
                assert expected is not None
                assert abs(mine - expected) < ONE_MINUTE


@pytest.mark.parametrize("zone", ["America/New_York", "Pacific/Kiritimati", "Pacific/Pago_Pago"])
def test_moonrise_is_missing_about_once_a_lunation_and_never_invented(zone: str) -> None:
    """A day without a moonrise is NaT, and every moonrise of the year is in exactly one day."""
    site = place(38.2, -76.1, zone)
    rises = sky_days(site, date(2026, 1, 1), date(2026, 12, 31)).moonrise
    found = rises[~np.isnat(rises)]
    gaps_h = np.diff(found).astype(np.int64) / 3.6e6
    assert 11 <= np.isnat(rises).sum() <= 14  # one in 29.5 days
    assert gaps_h.min() > 24.0
    assert gaps_h.max() < 26.0


def test_the_polar_day_and_night_are_told_apart() -> None:
    """69.65 N: midnight sun from about 20 May to 22 July, no sunrise from late November on."""
    site = place(69.65, 18.96, "Europe/Oslo")
    summer = sky_days(site, date(2026, 6, 10), date(2026, 7, 5))
    winter = sky_days(site, date(2026, 12, 5), date(2027, 1, 5))
    assert summer.sun_up_all_day.all()
    assert not summer.sun_down_all_day.any()
    assert np.isnat(summer.sunrise).all()
    assert np.isnat(summer.sunset).all()
    assert not winter.sun_up_all_day.any()
    assert winter.sun_down_all_day.all()
    assert np.isnat(winter.sunrise).all()
    assert not np.isnat(winter.civil_dawn).any()  # the sun stays above -6 degrees at noon there


@pytest.mark.parametrize("latitude_deg", [66.0, 69.65, 78.2, -70.0])
def test_near_the_poles_every_crossing_is_on_the_horizon(latitude_deg: float) -> None:
    """Where the sun grazes the horizon minutes mean little: the height of its limb must be nil."""
    site = place(latitude_deg, 18.96, "UTC")
    year = sky_days(site, date(2026, 1, 1), date(2026, 12, 31))
    observer = watcher(site, "0")
    crossings = np.concatenate([year.sunrise, year.sunset])
    crossings = crossings[~np.isnat(crossings)]
    assert crossings.size > 200
    for instant in crossings:
        observer.date = ephem.Date(from_utc64(instant).replace(tzinfo=None))
        sun = ephem.Sun(observer)
        height_deg = np.degrees(float(sun.alt)) + 50 / 60
        assert abs(height_deg) < 0.02  # 0.01 degree is ephem's own rounding of the sun's radius


@pytest.mark.parametrize("latitude_deg", [69.65, 78.2, -66.5, 88.0])
def test_daylight_agrees_with_the_suns_height_hour_by_hour(latitude_deg: float) -> None:
    """The polar day is one stretch, the polar night none, and the seams have no holes."""
    site = place(latitude_deg, 18.96, "UTC")
    start, stop = np.datetime64("2026-01-01", "ms"), np.datetime64("2027-01-01", "ms")
    light = daylight(site, start, stop)
    assert (light.begins < light.ends).all()
    assert (light.ends[:-1] < light.begins[1:]).all()
    observer = watcher(site, "0")
    for instant in np.arange(start, stop, np.timedelta64(5 * 3600 + 700, "s")):
        observer.date = ephem.Date(from_utc64(instant).replace(tzinfo=None))
        height_deg = np.degrees(float(ephem.Sun(observer).alt)) + 50 / 60
        if abs(height_deg) > 0.05:
            inside = bool(((light.begins <= instant) & (instant < light.ends)).any())
            assert inside == (height_deg > 0)


@pytest.mark.parametrize(("zone", "twice"), [("UTC", "sunrise"), ("Europe/Oslo", "sunset")])
def test_an_event_twice_in_a_day_is_the_first_rise_and_the_last_set(zone: str, twice: str) -> None:
    """Near the midnight sun a day can have two sunrises, or two sunsets where the clock is ahead
    of the sun: a day's light is told by its first rise and its last set."""
    site = place(69.65, 18.96, zone)
    first, last = date(2026, 4, 1), date(2026, 8, 31)
    sky, edges = sky_days(site, first, last), day_edges(first, last, site.zone)
    light = daylight(site, edges[0], edges[-1])
    for name, times, which in (("sunrise", light.begins, 0), ("sunset", light.ends, -1)):
        of_days = [times[(start <= times) & (times < stop)] for start, stop in pairwise(edges)]
        assert any(of_day.size == 2 for of_day in of_days) == (name == twice)
        expected = [of_day[which] if of_day.size else np.datetime64("NaT") for of_day in of_days]
        np.testing.assert_array_equal(
            getattr(sky, name), np.array(expected, dtype="datetime64[ms]")
        )


def test_a_moon_that_sets_twice_in_a_day_is_told_by_the_first() -> None:
    """So far north the moon sets earlier from day to day for half the month, like an independent
    library; where it grazes the horizon two ways of computing differ by minutes, not by hours."""
    site = place(69.65, 18.96, "UTC")
    first, last = date(2026, 4, 1), date(2026, 5, 31)
    sky, edges = sky_days(site, first, last), day_edges(first, last, site.zone)
    kind, body, horizon, centre = EVENTS["moonset"]
    twice = 0
    for ours, start, stop in zip(sky.moonset, edges[:-1], edges[1:], strict=True):
        if np.isnat(ours):
            continue
        expected = ephem_event(site, kind, body(), start, horizon, centre)
        assert expected is not None
        assert abs(ours - expected) < np.timedelta64(20, "m")
        after = ephem_event(site, kind, body(), expected + ONE_MINUTE, horizon, centre)
        twice += after is not None and after < stop
    assert twice > 0


def test_only_what_is_asked_for_is_found() -> None:
    """Left out to save time, an event is unknown: no sunrise asked is no midnight sun."""
    site = place(38.2, -76.1, "America/New_York")
    span = date(2026, 6, 1), date(2026, 6, 30)
    whole, moon = sky_days(site, *span), sky_days(site, *span, ("moonrise",))
    np.testing.assert_array_equal(moon.moonrise, whole.moonrise)
    assert np.isnat([moon.moonset, moon.sunrise, moon.sunset, moon.civil_dawn]).all()
    assert not moon.sun_up_all_day.any()


def test_the_moon_of_a_day_is_that_of_its_noon() -> None:
    """Age and lit part by an independent library, at noon of the place's own clock."""
    site = place(-31.5, 159.1, "Australia/Lord_Howe")
    first = date(2026, 2, 1)
    sky = sky_days(site, first, first + timedelta(days=29))
    for day, age_d, lit in zip(sky.days, sky.lunar_age_d, sky.illuminated, strict=True):
        noon = datetime.combine(day, time(12), tzinfo=site.zone).astimezone(UTC)
        at = ephem.Date(noon.replace(tzinfo=None))
        assert age_d == pytest.approx(at - ephem.previous_new_moon(at), abs=0.001)
        assert lit == pytest.approx(ephem.Moon(at).phase / 100, abs=0.005)


def test_daylight_that_spans_two_years_has_no_seam() -> None:
    """The years are computed one by one; a stretch over New Year must not be cut or doubled."""
    site = place(-78.0, 166.7, "Antarctica/McMurdo")
    light = daylight(site, np.datetime64("2026-12-01", "ms"), np.datetime64("2027-01-31", "ms"))
    assert light.begins.size == 1
    night = place(38.2, -76.1, "America/New_York")
    begins = daylight(
        night, np.datetime64("2026-12-25", "ms"), np.datetime64("2027-01-08", "ms")
    ).begins
    gaps_h = np.diff(begins[1:]).astype(np.int64) / 3.6e6
    assert np.allclose(gaps_h, 24.0, atol=0.05)


@pytest.mark.parametrize(
    ("zone", "day", "hours"),
    [
        ("America/New_York", date(2026, 3, 8), 23),
        ("America/New_York", date(2026, 11, 1), 25),
        ("Australia/Lord_Howe", date(2026, 4, 5), 24.5),
    ],
)
def test_short_and_long_days_keep_their_events(zone: str, day: date, hours: float) -> None:
    """On a day the clocks change the events of that local day are found, and inside it."""
    site = place(38.2, -76.1 if zone.startswith("America") else 159.1, zone)
    edges = day_edges(day, day, site.zone)
    assert (edges[1] - edges[0]) == np.timedelta64(int(hours * 60), "m")
    sky = sky_days(site, day, day)
    for times in (sky.sunrise, sky.sunset, sky.civil_dawn, sky.civil_dusk):
        assert edges[0] <= times[0] < edges[1]


def test_phases_are_within_a_minute_of_an_independent_library() -> None:
    """Every principal phase of 1899-2053 is found, named and timed: none lost, none doubled."""
    first, last = datetime(1899, 9, 2, tzinfo=UTC), datetime(2053, 10, 2, tzinfo=UTC)
    found = phases(first, last)
    assert (np.diff(found.times) > np.timedelta64(6, "D")).all()
    assert (np.diff(found.kinds) % 4 == 1).all()
    assert len(found.times) == pytest.approx(4 * (last - first).days / SYNODIC_MONTH_D, abs=1)
    assert max(phase_differences_s(found, every=11)) < 60


def test_phases_at_the_edges_of_a_span_are_kept() -> None:
    """A phase at the first or last instant of the span belongs to it; one outside does not."""
    year = phases(datetime(2026, 1, 1, tzinfo=UTC), datetime(2027, 1, 1, tzinfo=UTC))
    tenth = np.timedelta64(100, "ms")  # the search stops within a tenth of a second
    for instant, kind in zip(year.times[:8], year.kinds[:8], strict=True):
        second = np.timedelta64(1, "s")
        alone = phases(instant - second, instant + second)
        assert alone.kinds.tolist() == [kind]
        assert len(phases(instant + second, instant + 2 * second).times) == 0
    cut = phases(year.times[3] - tenth, year.times[9] + tenth)
    assert cut.kinds.tolist() == year.kinds[3:10].tolist()


def test_eclipses_fall_on_the_published_dates() -> None:
    """New moon of 2024-04-08 and full moon of 2025-03-14: both were eclipses.

    Source: crab/check_datasets.csv, "mean lunation" (eclipse dates; midday ages 29.1 and
    14.7 by the mean formula, which true phases leave by up to about 0.6 d).
    """
    new = phases(datetime(2024, 4, 8, tzinfo=UTC), datetime(2024, 4, 9, tzinfo=UTC))
    full = phases(datetime(2025, 3, 14, tzinfo=UTC), datetime(2025, 3, 15, tzinfo=UTC))
    assert [PHASE_NAMES[kind] for kind in new.kinds] == ["new"]
    assert [PHASE_NAMES[kind] for kind in full.kinds] == ["full"]
    noons = np.array(["2024-04-08T12:00", "2025-03-14T12:00"], dtype="datetime64[ms]")
    mean_age_d = np.array([29.1, 14.7])
    apart_d = (lunar_age(noons) - mean_age_d + SYNODIC_MONTH_D / 2) % SYNODIC_MONTH_D
    assert (np.abs(apart_d - SYNODIC_MONTH_D / 2) < 0.65).all()


def test_the_age_counts_from_the_new_moon_and_the_angle_follows_the_phases() -> None:
    """Age is nil at a new moon; the angle is a multiple of 90 degrees at every phase."""
    year = phases(datetime(2026, 1, 1, tzinfo=UTC), datetime(2027, 1, 1, tzinfo=UTC))
    after = year.times + np.timedelta64(1, "s")
    angle = lunar_phase_angle(after)
    assert np.allclose((angle - 90 * year.kinds + 180) % 360 - 180, 0, atol=1e-3)
    age = lunar_age(after)
    assert (age[year.kinds == 0] < 0.001).all()
    assert age.max() < 29.9
    lunation_d = lunar_age(year.times[year.kinds == 0] - np.timedelta64(1, "s"))
    assert lunation_d.min() > 29.2  # lunations run from 29.27 to 29.84 days
    assert lunation_d.max() < 29.85


def test_nothing_in_nothing_out() -> None:
    """Empty arrays of instants give empty arrays, not an error deep in the library."""
    empty = np.empty(0, dtype="datetime64[ms]")
    assert lunar_age(empty).shape == (0,)
    assert lunar_phase_angle(empty).shape == (0,)


@pytest.mark.parametrize(
    ("first", "last"),
    [
        (date(1899, 7, 1), date(1900, 1, 1)),
        (date(2053, 1, 1), date(2053, 12, 31)),
        (date(2026, 1, 1), date(2101, 1, 1)),
        (date(1, 1, 1), date(1, 1, 2)),
        (date(9999, 12, 30), date(9999, 12, 31)),
    ],
)
def test_dates_outside_the_ephemeris_name_the_range_that_works(first: date, last: date) -> None:
    """The message carries both ends, so that the user need not guess."""
    site = place(38.2, -76.1, "America/New_York")
    with pytest.raises(RangeError, match=r"from 1899-\d\d-\d\d to 2053-\d\d-\d\d"):
        sky_days(site, first, last)
    with pytest.raises(RangeError, match=r"from 1899-\d\d-\d\d to 2053-\d\d-\d\d"):
        phases(np.datetime64(first, "ms"), np.datetime64(last, "ms"))


@pytest.mark.parametrize("zone", ["Pacific/Kiritimati", "Etc/GMT+12"])
def test_the_range_that_the_message_names_does_work(zone: str) -> None:
    """Both ends of the promised range can be computed in the most extreme zones."""
    site = place(38.2, -76.1, zone)
    with pytest.raises(RangeError) as refusal:
        sky_days(site, date(2053, 1, 1), date(2053, 12, 31))
    words = str(refusal.value).rstrip(".").split()
    first, last = date.fromisoformat(words[-3]), date.fromisoformat(words[-1])
    for begin, end in ((first, first + timedelta(days=40)), (last - timedelta(days=40), last)):
        sky = sky_days(site, begin, end)
        assert not np.isnat(sky.sunrise).any()
        assert not np.isnat(sky.sunset).any()
        assert np.isnat(sky.moonrise).sum() <= 2


def test_a_naive_instant_is_refused() -> None:
    """An instant without an offset would be guessed at; it is refused instead."""
    with pytest.raises(ValueError, match="offset"):
        phases(datetime(2026, 1, 1), datetime(2026, 2, 1, tzinfo=UTC))  # noqa: DTZ001


def test_years_computed_apart_join_without_a_gap() -> None:
    """A span over New Year is the same as its two years side by side."""
    site = place(38.2, -76.1, "America/New_York")
    whole = sky_days(site, date(2026, 12, 28), date(2027, 1, 4))
    parts = [
        sky_days(site, date(2026, 12, 28), date(2026, 12, 31)),
        sky_days(site, date(2027, 1, 1), date(2027, 1, 4)),
    ]
    close = np.timedelta64(1, "s")
    for name in EVENTS:
        joined = np.concatenate([getattr(part, name) for part in parts])
        apart = np.abs(getattr(whole, name) - joined)
        assert (apart[~np.isnat(apart)] < close).all()
        assert (np.isnat(getattr(whole, name)) == np.isnat(joined)).all()


def test_a_backward_span_is_refused() -> None:
    """An empty strip of days would hide a mistake in the caller."""
    site = place(38.2, -76.1, "America/New_York")
    with pytest.raises(ValueError, match="before"):
        sky_days(site, date(2026, 1, 2), date(2026, 1, 1))


def test_a_moment_survives_the_change_of_clocks() -> None:
    """UTC instants go into the library and come back to the millisecond."""
    from planner.sky.ephemeris import sky_time, utc_instants

    moments = np.array([to_utc64(datetime(1972, 7, 1, tzinfo=UTC)), to_utc64(datetime.now(UTC))])
    assert (np.abs(utc_instants(sky_time(moments)) - moments) <= np.timedelta64(1, "ms")).all()


def test_threads_that_ask_at_once_share_one_reading(monkeypatch: pytest.MonkeyPatch) -> None:
    """Two readings at once left a file open, which the window's first seconds could do."""
    import time
    from concurrent.futures import ThreadPoolExecutor
    from functools import lru_cache

    from planner.sky import ephemeris as module

    readings = []

    @lru_cache(maxsize=1)
    def slow_reading() -> object:
        readings.append(1)
        time.sleep(0.05)  # long enough for the other threads to ask meanwhile
        return object()

    monkeypatch.setattr(module, "_read", slow_reading)
    with ThreadPoolExecutor(4) as pool:
        found = list(pool.map(lambda _: module.ephemeris(), range(4)))
    assert len(readings) == 1
    assert all(each is found[0] for each in found)
