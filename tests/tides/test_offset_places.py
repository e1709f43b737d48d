"""Places known by offsets from a reference place."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tide_reference import constants, offset_place, place, rows, utc

from planner.errors import PlannerError
from planner.sites.site import HarmonicConstant
from planner.tides import Tide
from planner.tides.offset import OffsetCurve
from planner.tides.turns import TurnList

M_PER_FT = 0.3048
BOSTON = place(constants("8443970"), 1.588)
SEATTLE = place(constants("9447130"), 2.024)
SPAN = (utc("2026-12-20"), utc("2027-01-12"))


class _Listed:
    """A reference place that is no more than a list of turns."""

    def __init__(self, turns: TurnList) -> None:
        self._turns = turns

    def turns(self, start_ms: int, stop_ms: int) -> TurnList:
        return self._turns.within(start_ms, stop_ms)


def test_the_worked_day_of_a_subordinate_station() -> None:
    """Roque Bluffs from Eastport, 5 August 2020: NOAA's offsets, ratio first, then addition."""
    day = rows("subordinate_examples_noaa.csv")
    by_kind = {row["type"]: row for row in day}
    reference = TurnList(
        np.array([utc(row["reference_time_local"]).astype(np.int64) for row in day]),
        np.array([float(row["reference_height_ft_MLLW"]) * M_PER_FT for row in day]),
        np.array([row["type"] == "H" for row in day]),
    )
    offsets = offset_place(
        BOSTON,
        high_minutes=float(by_kind["H"]["minutes"]),
        low_minutes=float(by_kind["L"]["minutes"]),
        high_factor=float(by_kind["H"]["ratio"]),
        low_factor=float(by_kind["L"]["ratio"]),
        high_add_m=float(by_kind["H"]["increment_ft"]) * M_PER_FT,
        low_add_m=float(by_kind["L"]["increment_ft"]) * M_PER_FT,
    ).water.offsets
    assert offsets is not None
    found = OffsetCurve(_Listed(reference), offsets).turns(  # type: ignore[arg-type]
        int(utc("2020-08-05").astype(np.int64)), int(utc("2020-08-06").astype(np.int64))
    )
    for index, row in enumerate(day):
        assert found.t_ms[index] == utc(row["station_time_local"]).astype(np.int64)
        # The example prints heights to 0.001 ft.
        height_ft = found.heights_m[index] / M_PER_FT
        assert height_ft == pytest.approx(float(row["station_height_ft_MLLW"]), abs=6e-4)


@settings(max_examples=25)
@given(
    high=st.floats(-180, 180), later=st.floats(-120, 120),
    high_factor=st.floats(0.5, 1.5), low_factor=st.floats(0.8, 1.2),
    high_add_m=st.floats(-0.3, 0.3), low_add_m=st.floats(-0.3, 0.3),
)  # fmt: skip
def test_the_curve_meets_each_shifted_turn(
    high: float,
    later: float,
    high_factor: float,
    low_factor: float,
    high_add_m: float,
    low_add_m: float,
) -> None:
    """At each turn the curve has the turn's height and no slope; between two it is monotone."""
    low = high + later
    tide = Tide(
        offset_place(
            BOSTON, high_minutes=high, low_minutes=low, high_factor=high_factor,
            low_factor=low_factor, high_add_m=high_add_m, low_add_m=low_add_m,
        )
    )  # fmt: skip
    turns = tide.turns(*SPAN)
    there = Tide(BOSTON).turns(SPAN[0] - np.timedelta64(8, "h"), SPAN[1] + np.timedelta64(8, "h"))
    minutes = np.where(there.is_high, high, low)
    times = there.times + np.rint(minutes * 60_000).astype("timedelta64[ms]")
    heights = there.heights * np.where(there.is_high, high_factor, low_factor)
    heights += np.where(there.is_high, high_add_m, low_add_m)
    inside = (times >= SPAN[0]) & (times < SPAN[1])
    assert (turns.times == times[inside]).all()
    assert np.allclose(turns.heights, heights[inside])
    assert np.allclose(tide.heights(turns.times), turns.heights, atol=1e-9)

    dense_times, dense = tide.series(*SPAN, np.timedelta64(2, "m"))
    cell = np.searchsorted(turns.times, dense_times, side="right")
    rising = np.where(cell[1:] == cell[:-1], np.sign(np.diff(dense)), 0)
    expected = np.where(turns.is_high[np.clip(cell[1:], 0, len(turns.times) - 1)], 1, -1)
    known = (cell[1:] < len(turns.times)) & (rising != 0)
    assert (rising[known] == expected[known]).all()


def test_the_curve_is_smooth_at_turns_and_at_new_year() -> None:
    """No kink: the slope over one minute changes by less than a millimetre a minute."""
    tide = Tide(offset_place(BOSTON, high_minutes=47.0, low_minutes=62.0, high_factor=0.86))
    _, heights = tide.series(*SPAN, np.timedelta64(1, "m"))
    assert np.abs(np.diff(heights, 2)).max() < 0.001


def test_no_offsets_give_the_reference_back() -> None:
    """Zero minutes, ratio 1, nothing added: the same water, away from New Year's step."""
    same = Tide(offset_place(SEATTLE))
    times = np.arange(utc("2026-05-01"), utc("2026-06-01"), np.timedelta64(600_000, "ms"))
    assert np.abs(same.heights(times) - Tide(SEATTLE).heights(times)).max() < 1e-6


def test_offsets_on_offsets_add_up() -> None:
    """A place by offsets may itself be the reference."""
    first = offset_place(BOSTON, high_minutes=20.0, low_minutes=20.0, high_factor=0.9)
    second = Tide(offset_place(first, high_minutes=10.0, low_minutes=10.0, high_factor=0.5))
    direct = Tide(offset_place(BOSTON, high_minutes=30.0, low_minutes=30.0, high_factor=0.45))
    ours, theirs = second.turns(*SPAN), direct.turns(*SPAN)
    assert (ours.times == theirs.times).all()
    assert np.allclose(ours.heights, theirs.heights)


def test_turns_that_change_places_are_left_out_in_pairs() -> None:
    """The small dip of a double high water vanishes when its offsets would turn it over."""
    double = place(
        (HarmonicConstant("M2", 1.0, 0.0), HarmonicConstant("M4", 0.4, 180.0)), mean_level_m=2.0
    )
    there = Tide(double).turns(*SPAN)
    here = Tide(offset_place(double, high_minutes=0.0, low_minutes=300.0)).turns(*SPAN)
    assert len(here.times) < len(there.times)
    assert (here.is_high[1:] != here.is_high[:-1]).all()
    rise = np.diff(here.heights)
    assert (np.sign(rise) == np.where(here.is_high[1:], 1, -1)).all()


def test_a_reference_without_turns_is_a_clear_error() -> None:
    """Offsets from still water mean nothing, and the message says what to do."""
    still = offset_place(place((HarmonicConstant("M2", 0.0, 0.0),)))
    with pytest.raises(PlannerError, match="choose a reference place with a tide"):
        Tide(still).heights([np.datetime64("2026-01-01T00:00")])


def test_offsets_that_leave_no_tide_are_told_as_such() -> None:
    """The cause is the offsets, not the reference place, and the message says so."""
    for made in (
        offset_place(BOSTON, high_minutes=1440.0, low_minutes=-1440.0),
        offset_place(BOSTON, high_factor=0.01, low_factor=1.0, low_add_m=5.0),
    ):
        with pytest.raises(PlannerError, match="correct the minutes, factors and additions"):
            Tide(made).heights([np.datetime64("2026-01-01T00:00")])


def test_the_rule_of_the_reference_is_the_rule_here() -> None:
    """Offsets carry no constants of their own, so the node factors are the reference's."""
    assert Tide(offset_place(place(constants("8443970"), rule="continuous"))).node_factors == (
        "continuous"
    )


@pytest.mark.parametrize("when", ["1900-01-01T00:00", "2100-12-31T23:59"])
def test_the_ends_of_the_range_have_turns_on_both_sides(when: str) -> None:
    """The reference is asked a little beyond 1900 and 2100, never out of its own reach."""
    tide = Tide(offset_place(BOSTON, high_minutes=-200.0, low_minutes=-200.0))
    assert np.isfinite(tide.heights([np.datetime64(when)])).all()
    annual = place((HarmonicConstant("SA", 0.1, 0.0),))
    assert np.isfinite(Tide(offset_place(annual)).heights([np.datetime64(when)])).all()
