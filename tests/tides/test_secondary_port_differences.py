"""The interpolated differences of secondary ports, and the curve between turns."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime

import numpy as np
import pytest
from tide_reference import constants, offset_place, place, rows, utc

from planner.sites.site import HeightDifferences, TabledDifferences, TimeDifferences
from planner.tides import Tide
from planner.tides.differences import addition_by_height, minutes_by_clock

EXAMPLES = {row["example"]: row for row in rows("secondary_port_examples_uk_style.csv")}
TIMES = TimeDifferences(0.0, 35.0, 6.0, 23.0)
HIGHS = HeightDifferences(4.2, 1.1, 3.4, 0.8)
LOWS = HeightDifferences(0.4, 0.1, 1.1, 0.2)


def _at(table: TimeDifferences, clock: str) -> float:
    moment = datetime.strptime(clock, "%H:%M")  # noqa: DTZ007 (a clock time, no instant)
    return float(minutes_by_clock(table, np.array([moment.hour + moment.minute / 60]))[0])


def _added(table: HeightDifferences, there_m: float) -> float:
    return float(addition_by_height(table, np.array([there_m]))[0])


def _result(example: str) -> list[float]:
    return [float(n) for n in re.findall(r"[+-]?\d+\.?\d*", EXAMPLES[example]["result"])]


def test_time_difference_by_time_of_day() -> None:
    """+51 min at 15:00, +44 at 21:00, high water 18:46: 46.6 minutes (read, training page)."""
    table = TimeDifferences(15.0, 51.0, 21.0, 44.0)
    assert _result("time difference by time of day")[1] == 46.6
    assert _at(table, "18:46") == pytest.approx(46.6, abs=0.05)


def test_time_difference_half_way() -> None:
    """+35 (0000 and 1200) and +23 (0600 and 1800) at 03:00: +29 (read)."""
    assert _at(TIMES, "03:00") == pytest.approx(_result("time difference half way")[0])
    assert _at(TIMES, "15:00") == _at(TIMES, "03:00")
    assert _at(TIMES, "12:00") == _at(TIMES, "00:00") == 35.0
    assert _at(TIMES, "18:00") == 23.0


def test_time_and_height_at_a_tabulated_height() -> None:
    """06:38 of 4.2 m: +24.3 min, +1.1 m."""
    minutes, metres = _result("time and height at a tabulated height")[0], 1.1
    assert _at(TIMES, "06:38") == pytest.approx(minutes, abs=0.05)
    assert _added(HIGHS, 4.2) == pytest.approx(metres)


def test_height_between_neaps_and_springs_and_beyond() -> None:
    """Half way 0.95 m; low water 0.75 m has +0.15 m; beyond springs along the same line."""
    assert _added(HIGHS, 3.8) == pytest.approx(_result("height between neaps and springs")[0])
    assert _added(LOWS, 0.75) == pytest.approx(_result("low water height")[0])
    assert _added(HIGHS, 4.6) == pytest.approx(1.25)
    assert _added(HIGHS, 3.0) == pytest.approx(0.65)


def test_the_sign_trap() -> None:
    """+15 and -10 at 03:00 make +2.5 minutes, that is later."""
    assert _at(TimeDifferences(0.0, 15.0, 6.0, -10.0), "03:00") == pytest.approx(
        _result("sign trap")[0]
    )


def test_a_place_by_tables_follows_them_turn_by_turn() -> None:
    """On the table's clock (here UTC+1), and the curve meets every turn."""
    reference = place(constants("8443970"), 1.588)
    tables = TabledDifferences(1.0, TIMES, TimeDifferences(0.0, -10.0, 6.0, 20.0), HIGHS, LOWS)
    site = offset_place(reference)
    assert site.water.offsets is not None
    water = replace(site.water, offsets=replace(site.water.offsets, tabled=tables))
    tide = Tide(replace(site, water=water))
    span = (utc("2026-03-01"), utc("2026-03-08"))
    here = tide.turns(*span)
    assert np.allclose(tide.heights(here.times), here.heights)
    hour = np.timedelta64(3_600_000, "ms")
    for when, height, high in zip(here.times, here.heights, here.is_high, strict=True):
        there = Tide(reference).turns(when - hour, when + hour)
        assert there.is_high.tolist() == [high]
        local = (there.times[0] + hour).astype("datetime64[m]").item()
        clock = f"{local.hour:02d}:{local.minute:02d}"
        minutes = _at(tables.high_times if high else tables.low_times, clock)
        assert (when - there.times[0]) / hour * 60 == pytest.approx(minutes, abs=0.1)
        table = HIGHS if high else LOWS
        added = _added(table, float(there.heights[0]))
        assert height == pytest.approx(there.heights[0] + added)


def test_between_turns_of_a_single_wave_the_curve_is_the_published_cosine() -> None:
    """For one constituent the stretched shape is the cosine of the rule between turns.

    Twelfths agree with it to 0.017 of the range (README of the reference, section 4).
    """
    from planner.sites.site import HarmonicConstant

    single = place((HarmonicConstant("S2", 1.0, 0.0),))
    tide = Tide(offset_place(single, high_minutes=40.0, low_minutes=65.0, high_factor=0.8))
    turns = tide.turns(utc("2026-05-01"), utc("2026-05-02"))
    low = int(np.flatnonzero(~turns.is_high)[0])
    length = turns.times[low + 1] - turns.times[low]
    for row in rows("interpolation_between_turns.csv"):
        share = float(row["elapsed_fraction_of_rise_or_fall"])
        when = turns.times[low] + np.timedelta64(round(share * length.astype(int)), "ms")
        rise = float(tide.heights([when])[0]) - turns.heights[low]
        fraction = rise / (turns.heights[low + 1] - turns.heights[low])
        assert fraction == pytest.approx(float(row["cosine_fraction_of_range"]), abs=1e-5)
        if row["rule_of_twelfths_fraction"]:
            assert fraction == pytest.approx(float(row["rule_of_twelfths_fraction"]), abs=0.0171)


def test_slack_is_turns_and_a_lag() -> None:
    """Each slack lies the given minutes from its turn, in order, whole span covered."""
    tide = Tide(place(constants("8443970"), 1.588))
    span = (utc("2026-12-30"), utc("2027-01-03"))
    slacks = tide.slacks(*span, after_high_min=45.0, after_low_min=-20.0)
    turns = tide.turns(span[0] - np.timedelta64(1, "h"), span[1] + np.timedelta64(1, "h"))
    minutes = np.where(turns.is_high, 45, -20).astype("timedelta64[m]")
    expected = np.sort(turns.times + minutes)
    assert (slacks.times == expected[(expected >= span[0]) & (expected < span[1])]).all()
    assert set(slacks.after_high.tolist()) == {True, False}
    assert len(tide.slacks(span[0], span[0], 0.0, 0.0).times) == 0
