"""When the level passes a height, and how low it gets in a window."""

from __future__ import annotations

from datetime import date
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tide_reference import constants, offset_place, place, station, utc

from planner.clock import day_edges
from planner.estimates import Floats
from planner.tides import Tide
from planner.tides.astronomy import Milliseconds
from planner.tides.crossings import find_crossings

SUBORDINATE = Tide(
    offset_place(
        place(constants("8443970"), 1.588), high_minutes=25.0, low_minutes=50.0, high_factor=0.8
    )
)
TIDES = {
    "Boston, yearly": station("8443970"),
    "Seattle, continuous": station("9447130", "continuous"),
    "Vaca Key, yearly": station("8723970"),
    "by offsets": SUBORDINATE,
}
STEP = np.timedelta64(60_000, "ms")


@pytest.mark.parametrize("name", sorted(TIDES))
@pytest.mark.parametrize("share", [0.05, 0.4, 0.5, 0.93])
def test_crossings_are_those_of_the_minutes(name: str, share: float) -> None:
    """Every passage of a level within two months over New Year, in its minute and direction."""
    tide = TIDES[name]
    start, stop = utc("2026-12-01"), utc("2027-02-01")
    times, heights = tide.series(start, stop, STEP)
    level = float(np.quantile(heights, share))
    above = tide.heights(times) >= level
    flips = np.flatnonzero(above[1:] != above[:-1])
    found = tide.crossings(level, start, times[-1] + np.timedelta64(1, "ms"))
    assert len(found.times) == len(flips) > 0
    assert (found.times > times[flips]).all()
    assert (found.times <= times[flips + 1]).all()
    assert (found.rising == above[flips + 1]).all()


@pytest.mark.parametrize("name", sorted(TIDES))
def test_the_level_at_a_crossing_is_the_level(name: str) -> None:
    """To the hundredth of a millimetre, away from the step of New Year."""
    tide = TIDES[name]
    level = float(tide.heights([np.datetime64("2026-05-03T04:00")])[0])
    found = tide.crossings(level, utc("2026-05-01"), utc("2026-06-01"))
    assert np.abs(tide.heights(found.times) - level).max() < 1e-5


def test_a_level_out_of_reach_is_never_crossed() -> None:
    """Empty arrays of the right kinds, not an error."""
    found = station("8443970").crossings(99.0, utc("2026-01-01"), utc("2027-01-01"))
    assert found.times.shape == found.rising.shape == (0,)
    assert found.times.dtype == np.dtype("datetime64[ms]")


def test_a_level_that_is_only_touched_from_above_is_not_crossed() -> None:
    """A low water that just reaches the ramp's limit does not cut the launch in two."""
    t_ms, heights = np.array([0, 1000, 2000]), np.array([1.0, 0.5, 1.0])

    def levels(t_ms: Milliseconds) -> Floats:
        return 0.5 + np.abs(t_ms - 1000) / 2000

    at, _ = find_crossings(t_ms, heights, 0.5, levels)
    assert at.size == 0
    at, rising = find_crossings(t_ms, heights, 0.75, levels)
    # The first milliseconds on the other side: 0.75 itself counts as above.
    assert (at.tolist(), rising.tolist()) == ([501, 1500], [False, True])


@settings(max_examples=60)
@given(
    name=st.sampled_from(sorted(TIDES)),
    starts=st.lists(st.integers(0, 40 * 24 * 60), min_size=1, max_size=12),
    lengths=st.lists(st.integers(0, 4 * 24 * 60), min_size=12, max_size=12),
)
def test_window_minima_are_the_lowest_of_the_minutes(
    name: str, starts: list[int], lengths: list[int]
) -> None:
    """No window's lowest level is missed by more than a minute's curvature, nor undercut."""
    tide = TIDES[name]
    begin = utc("2026-12-10") + np.array(starts) * STEP
    end = begin + np.array(lengths[: len(starts)]) * STEP
    found = tide.window_minima(begin, end)
    for first, last, lowest, when in zip(begin, end, found.heights, found.times, strict=True):
        minutes = np.arange(first, last + STEP, STEP)
        seen = tide.heights(minutes).min()
        assert lowest <= seen + 1e-9
        assert lowest >= seen - 0.001
        assert first <= when <= last
        assert tide.heights([when])[0] == pytest.approx(lowest, abs=1e-9)


def test_lowest_of_a_span_is_that_of_a_window() -> None:
    """One span and one window are the same question."""
    tide = station("9447130")
    height, when = tide.lowest(utc("2026-06-01"), utc("2026-07-01"))
    turns = tide.turns(utc("2026-06-01"), utc("2026-07-01"))
    assert height == turns.heights.min()
    assert when == turns.times[turns.heights.argmin()]


def test_a_window_that_stops_before_it_starts_is_refused() -> None:
    """A reversed soak is a mistake of the caller, not a level."""
    with pytest.raises(ValueError, match="before it starts"):
        station("8443970").window_minima(
            np.array([utc("2026-06-02")]), np.array([utc("2026-06-01")])
        )
    assert station("8443970").window_minima(
        np.array([], dtype="datetime64[ms]"), np.array([], dtype="datetime64[ms]")
    ).heights.shape == (0,)


def test_daily_range_of_a_year_brackets_every_turn() -> None:
    """Springs and neaps breathe: each day's extremes are those of its turns and its ends."""
    tide = station("8443970")
    edges = day_edges(date(2026, 1, 1), date(2026, 12, 31), ZoneInfo("America/New_York"))
    found = tide.daily_range(edges)
    assert found.lowest.shape == found.highest.shape == (365,)
    turns = tide.turns(edges[0], edges[-1])
    day = np.searchsorted(edges, turns.times, side="right") - 1
    assert (turns.heights >= found.lowest[day]).all()
    assert (turns.heights <= found.highest[day]).all()
    assert tide.daily_range(edges[:1]).lowest.shape == (0,)
