"""The fast path, and how instants and spans may be given."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tide_reference import constants, place, station, utc, vlissingen

from planner.clock import day_edges
from planner.errors import RangeError
from planner.sites.site import HarmonicConstant
from planner.tides import FIRST_YEAR, LAST_YEAR, Tide

ONE_MM = 0.001
SPAN_MS = 200 * 365 * 86_400_000
TIDES = {
    (number, rule): station(number, rule)
    for number in ("8443970", "9447130", "8726724")
    for rule in ("yearly", "continuous")
} | {("VLISSGN", rule): vlissingen(rule) for rule in ("yearly", "continuous")}


@settings(max_examples=150)
@given(
    which=st.sampled_from(sorted(TIDES)),
    start=st.integers(0, SPAN_MS - 40 * 365 * 86_400_000),
    step=st.one_of(st.integers(1, 4_000_000), st.integers(1, 40 * 86_400_000)),
    count=st.integers(0, 330),
)
def test_the_fast_path_is_direct_evaluation(
    which: tuple[str, str], start: int, step: int, count: int
) -> None:
    """Any start, step and length: within 1 mm, over New Years and leap days too."""
    tide = TIDES[which]
    begin = utc("1900-01-01") + np.timedelta64(start, "ms")
    every = np.timedelta64(step, "ms")
    times, heights = tide.series(begin, begin + count * every, every)
    assert len(times) == len(heights) == count
    assert (times == begin + np.arange(count) * every).all()
    assert np.abs(heights - tide.heights(times)).max(initial=0.0) <= ONE_MM


@pytest.mark.parametrize("rule", ["yearly", "continuous"])
def test_the_fast_path_holds_over_long_spans(rule: str) -> None:
    """Three years at six minutes, blocks of every kind, against every 1,009th value."""
    tide = station("9447130", rule)
    times, heights = tide.series(utc("2023-06-01"), utc("2026-06-01"), np.timedelta64(6, "m"))
    picked = slice(None, None, 1009)
    assert np.abs(heights[picked] - tide.heights(times[picked])).max() <= ONE_MM


def test_cached_and_fresh_arguments_agree() -> None:
    """A span asked for again gives the same values, as does another Tide."""
    span = (utc("2026-12-20"), utc("2027-01-10"), np.timedelta64(60, "s"))
    tide = station("8443970")
    first = tide.series(*span)[1].copy()
    assert (tide.series(*span)[1] == first).all()
    assert (station("8443970").series(*span)[1] == first).all()


def test_a_result_belongs_to_the_caller() -> None:
    """Changing a returned series does not change the next one."""
    span = (utc("2026-01-01"), utc("2026-01-02"), np.timedelta64(60, "s"))
    tide = station("8443970")
    first = tide.series(*span)[1]
    kept = first.copy()
    first += 1.0
    assert (tide.series(*span)[1] == kept).all()


def test_the_yearly_rule_steps_at_new_year_and_the_continuous_one_does_not() -> None:
    """The step is 0 to 7 cm (Boston, Seattle); without it the rule would not be the agency's."""
    around = np.array([utc("2027-01-01") - np.timedelta64(1, "ms"), utc("2027-01-01")])
    for number, most in (("8443970", 0.04), ("9447130", 0.08)):
        assert 1e-4 < abs(np.diff(station(number).heights(around))[0]) < most
        assert abs(np.diff(station(number, "continuous").heights(around))[0]) < 1e-5


def test_lags_on_a_local_clock_give_the_same_water() -> None:
    """Seattle's constants with lags in UTC and in standard time (UTC-8), as NOAA prints both."""
    state = "9447130_2026"
    greenwich = Tide(place(constants(state)))
    local = Tide(
        place(constants(state, "phase_lag_local_standard_time_deg"), phase_reference_h=-8.0)
    )
    times = np.arange(utc("2026-01-01"), utc("2026-03-01"), np.timedelta64(3_600_000, "ms"))
    # Both columns are rounded to 0.1 degree.
    assert np.abs(greenwich.heights(times) - local.heights(times)).max() < 0.003


@pytest.mark.parametrize("unit", ["s", "m", "h", "D", "ms", "us", "ns"])
def test_instants_of_any_unit_are_taken(unit: str) -> None:
    """datetime64 comes in many units; the level is the same."""
    tide = station("8443970")
    at = np.array(["2026-02-28", "2026-03-01"], dtype=f"datetime64[{unit}]")
    expected = tide.heights(np.array(["2026-02-28", "2026-03-01"], dtype="datetime64[ms]"))
    assert (tide.heights(at) == expected).all()


def test_aware_datetimes_of_any_zone_are_taken() -> None:
    """An instant is an instant: UTC, a fixed offset and a named zone agree."""
    tide = station("8443970")
    clock = [
        datetime(2026, 7, 4, 12, tzinfo=UTC),
        datetime(2026, 7, 4, 8, tzinfo=ZoneInfo("America/New_York")),
        datetime(2026, 7, 5, 1, tzinfo=timezone(timedelta(hours=13))),
    ]
    assert np.ptp(tide.heights(clock)) == 0.0
    spans = [tide.turns(moment, moment + timedelta(days=2)).times for moment in clock]
    assert (spans[0] == spans[1]).all()
    assert (spans[0] == spans[2]).all()


def test_a_naive_datetime_is_refused() -> None:
    """Nobody knows which clock a naive time was read from."""
    tide = station("8443970")
    naive = datetime(2026, 7, 4, 12)  # noqa: DTZ001
    aware = datetime(2026, 7, 5, tzinfo=UTC)
    for ask in (
        lambda: tide.heights([naive]),
        lambda: tide.turns(naive, aware),
        lambda: tide.series(naive, aware, timedelta(minutes=6)),
        lambda: tide.lowest(aware, naive),
    ):
        with pytest.raises(ValueError, match="offset"):
            ask()


def test_shapes_are_kept_and_empty_gives_empty() -> None:
    """Empty in, empty out; a matrix of instants gives a matrix of levels."""
    tide = station("8443970")
    assert tide.heights(np.empty(0, dtype="datetime64[ms]")).shape == (0,)
    assert tide.heights([]).shape == (0,)
    grid = utc("2026-01-01") + np.arange(6).reshape(2, 3) * np.timedelta64(1, "h")
    assert tide.heights(grid).shape == (2, 3)
    times, heights = tide.series(utc("2026-01-02"), utc("2026-01-01"), np.timedelta64(1, "h"))
    assert times.shape == heights.shape == (0,)


def test_a_place_without_tide_stands_at_its_mean_level() -> None:
    """All amplitudes zero: flat water, no turns, no crossings."""
    tide = Tide(place((HarmonicConstant("M2", 0.0, 0.0),), mean_level_m=0.7))
    times, heights = tide.series(utc("2026-01-01"), utc("2026-01-03"), np.timedelta64(1, "h"))
    assert (heights == 0.7).all()
    assert (tide.heights(times) == 0.7).all()
    assert len(tide.crossings(0.6, times[0], times[-1]).times) == 0


@pytest.mark.parametrize("when", ["1899-12-30T23:59", "2101-01-03", "0001-01-01", "9999-12-31"])
def test_years_outside_the_range_are_refused_with_the_range(when: str) -> None:
    """Schureman's formulas are trusted from 1900 to 2100, and the message says so."""
    tide = station("8443970")
    with pytest.raises(RangeError, match="1900 to 2100"):
        tide.heights(np.array([when], dtype="datetime64[ms]"))
    with pytest.raises(RangeError, match=f"{FIRST_YEAR} to {LAST_YEAR}"):
        tide.turns(utc("2000-01-01"), utc(when))


def test_the_whole_range_can_be_asked_for() -> None:
    """The first and the last local day of 1900-2100 work in any zone, with turns at both ends."""
    tide = station("8443970")
    for start, stop in (("1899-12-31", "1900-01-02"), ("2100-12-31", "2101-01-02")):
        assert len(tide.turns(utc(start), utc(stop)).times) >= 3
        assert len(tide.series(utc(start), utc(stop), np.timedelta64(1, "h"))[0]) == 48


@pytest.mark.parametrize(
    "step",
    [
        timedelta(0), timedelta(minutes=-6), timedelta(microseconds=500),
        np.timedelta64(0, "s"), np.timedelta64("NaT", "ms"), np.timedelta64(1500, "us"),
    ],
)  # fmt: skip
def test_a_step_that_is_no_step_is_refused(step: object) -> None:
    """Zero, negative, missing and sub-millisecond steps say so instead of hanging."""
    with pytest.raises(ValueError, match="step"):
        station("8443970").series(utc("2026-01-01"), utc("2026-01-02"), step)  # type: ignore[arg-type]


def test_missing_instants_are_refused() -> None:
    """NaT has no water level."""
    with pytest.raises(ValueError, match="NaT"):
        station("8443970").heights(np.array(["2026-01-01", "NaT"], dtype="datetime64[ms]"))


def test_a_leap_day_has_its_own_tide() -> None:
    """29 February is a day: the tide an hour across its midnights is continuous."""
    tide = station("8443970")
    for border in ("2024-02-29", "2024-03-01"):
        near = utc(border) + np.array([-1, 0, 1]) * np.timedelta64(60_000, "ms")
        assert np.abs(np.diff(tide.heights(near), 2)).max() < 1e-4


@pytest.mark.parametrize(
    ("zone", "first", "hours"),
    [
        ("America/New_York", "2026-03-08", 23),
        ("America/New_York", "2026-11-01", 25),
        ("Pacific/Auckland", "2026-09-27", 23),
        ("Pacific/Pago_Pago", "2026-09-27", 24),
    ],
)
def test_days_of_23_and_25_hours_are_covered_whole(zone: str, first: str, hours: int) -> None:
    """A local day on either side of the date line and at a clock change is seen to its end."""
    day = datetime.fromisoformat(first).date()
    edges = day_edges(day, day, ZoneInfo(zone))
    assert (edges[1] - edges[0]) == np.timedelta64(hours, "h")
    tide = station("8443970")
    found = tide.daily_range(edges)
    _, heights = tide.series(edges[0], edges[1], np.timedelta64(10, "s"))
    assert found.lowest[0] == pytest.approx(heights.min(), abs=ONE_MM)
    assert found.highest[0] == pytest.approx(heights.max(), abs=ONE_MM)
