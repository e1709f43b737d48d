"""High and low waters: none lost, none doubled, at the right minute."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tide_reference import WINDOW_STATIONS, constants, place, rows, station, utc, vlissingen

from planner.sites.site import HarmonicConstant
from planner.tides import Tide, Turns

MINUTE = np.timedelta64(60_000, "ms")
HOUR = np.timedelta64(3_600_000, "ms")
DAY = np.timedelta64(86_400_000, "ms")


def _place(*triples: tuple[str, float, float], rule: str = "yearly") -> Tide:
    return Tide(place(tuple(HarmonicConstant(*triple) for triple in triples), rule=rule))


def _assert_sound(tide: Tide, turns: Turns) -> None:
    """Kinds alternate, times increase, heights are the curve's."""
    assert (turns.is_high[1:] != turns.is_high[:-1]).all()
    assert (np.diff(turns.times) > np.timedelta64(0, "ms")).all()
    assert np.abs(tide.heights(turns.times) - turns.heights).max(initial=0.0) < 1e-9


# In the San Francisco window the two years' curves as printed make a high and a low water
# forty seconds apart in the last minute of 2026: the step of New Year, not a turn.
PHANTOMS = {("9414290", "2026-12-31T23:59:10Z"), ("9414290", "2026-12-31T23:59:50Z")}


@pytest.mark.parametrize("number", WINDOW_STATIONS)
@pytest.mark.parametrize(
    ("rule", "when", "height"),
    [
        ("yearly", "time_utc_yearly_arguments", "h_m_MLLW"),
        ("continuous", "time_utc_instant_schureman", "h_m_MLLW_instant"),
    ],
)
def test_computed_turns_are_met(number: str, rule: str, when: str, height: str) -> None:
    """Times to a minute and heights to 3 mm by the same rule, against hatyan 2.14.0."""
    tide = station(number, rule)
    checked = 0
    for row in rows(f"predictions/turning_points_computed_{number}_windows.csv"):
        if not row[when] or (rule == "yearly" and (number, row[when]) in PHANTOMS):
            continue
        theirs = utc(row[when].rstrip("Z"))
        ours = tide.turns(theirs - HOUR, theirs + HOUR)
        same = np.flatnonzero(ours.is_high == (row["type"] == "H"))
        nearest = same[np.abs(ours.times[same] - theirs).argmin()]
        assert np.abs(ours.times[nearest] - theirs) <= MINUTE, row[when]
        assert ours.heights[nearest] == pytest.approx(float(row[height]), abs=0.003)
        checked += 1
    assert checked > 50


def test_the_step_of_new_year_makes_no_turn() -> None:
    """At San Francisco the level steps up in the last minute of 2026; that is no high water."""
    tide = station("9414290")
    turns = tide.turns(utc("2026-12-31T20:00"), utc("2027-01-01T08:00"))
    assert [str(time)[:16] for time in turns.times] == [
        "2026-12-31T20:21", "2027-01-01T02:32", "2027-01-01T07:24",
    ]  # fmt: skip


def test_dutch_official_turns_are_met() -> None:
    """Vlissingen, January 2019, with fifteen shallow-water species: heights to 5 cm.

    Times to three minutes: the agency's are multiples of one minute from ten-minute levels.
    """
    file = "predictions/turning_points_rws_VLISSGN_201901.csv"
    tide = vlissingen()
    ours = tide.turns(utc("2019-01-01"), utc("2019-02-01"))
    _assert_sound(tide, ours)
    for row in rows(file):
        theirs = utc(row["time_utc"].rstrip("Z"))
        same = np.flatnonzero(ours.is_high == (row["type"] == "H"))
        nearest = same[np.abs(ours.times[same] - theirs).argmin()]
        assert np.abs(ours.times[nearest] - theirs) <= 6 * MINUTE
        assert ours.heights[nearest] == pytest.approx(
            float(row["height_cm_above_NAP"]) / 100, abs=0.05
        )


@pytest.mark.parametrize("number", [*WINDOW_STATIONS, "8723970", "8720503", "8726724"])
@pytest.mark.parametrize("rule", ["yearly", "continuous"])
def test_turns_are_those_of_a_dense_curve(number: str, rule: str) -> None:
    """Each turn of the 20-second curve of three weeks is found, and nothing else."""
    tide = station(number, rule)
    times = np.arange(utc("2026-03-01"), utc("2026-03-22"), np.timedelta64(20_000, "ms"))
    heights = tide.heights(times)
    slope = np.sign(np.diff(heights))
    places = np.flatnonzero(slope[1:] != slope[:-1]) + 1
    turns = tide.turns(times[0], times[-1])
    _assert_sound(tide, turns)
    assert len(turns.times) == len(places)
    assert np.abs(turns.times - times[places]).max() <= np.timedelta64(30, "s")
    assert (turns.is_high == (slope[places] < 0)).all()


@pytest.mark.parametrize("rule", ["yearly", "continuous"])
def test_double_high_waters_are_found(rule: str) -> None:
    """M4 a third of M2 makes two high waters with a dip between, every tide."""
    double = _place(("M2", 1.0, 0.0), ("M4", 0.4, 180.0), rule=rule)
    turns = double.turns(utc("2026-06-01"), utc("2026-06-29"))
    _assert_sound(double, turns)
    assert len(turns.times) == pytest.approx(4 * 28 * 24 / 12.42, abs=2)


def test_turns_minutes_apart_are_found() -> None:
    """Three turns around a low water, each nearer to the next than a step of the search."""
    # The slope sin x + 2 r sin 2x of S2 + r S4 has a double root at r = 1/4 and, above it,
    # three roots near x = pi; at 0.252 the outer ones are 14.5 minutes from the middle one.
    flat = _place(("S2", 1.0, 0.0), ("S4", 0.252, 0.0))
    turns = flat.turns(utc("2026-06-01"), utc("2026-06-02"))
    times = np.arange(utc("2026-06-01"), utc("2026-06-02"), np.timedelta64(10_000, "ms"))
    slope = np.sign(np.diff(flat.heights(times)))
    assert len(turns.times) == np.count_nonzero(slope[1:] != slope[:-1]) + 1  # one at 00:00
    assert np.diff(turns.times).min() < 15 * MINUTE
    _assert_sound(flat, turns)


@pytest.mark.parametrize("scale", [1e-6, 1e-3, 30.0])
def test_the_size_of_the_tide_does_not_matter(scale: float) -> None:
    """A thousandth of a millimetre turns at the same instants as thirty metres."""
    triples = (("M2", 0.5, 40.0), ("K1", 0.3, 10.0), ("O1", 0.2, 250.0), ("SA", 0.1, 0.0))
    plain = _place(*triples).turns(utc("2026-01-01"), utc("2027-01-01"))
    scaled = _place(*((n, a * scale, g) for n, a, g in triples)).turns(
        utc("2026-01-01"), utc("2027-01-01")
    )
    assert len(plain.times) == len(scaled.times)
    assert np.abs(plain.times - scaled.times).max() <= np.timedelta64(2, "ms")


def test_long_period_and_diurnal_waters_turn_as_often_as_they_should() -> None:
    """SA alone turns twice a year, K1 twice a day; no tide at all never turns."""
    year = (utc("2026-01-01"), utc("2027-01-01"))
    assert len(_place(("SA", 0.1, 30.0)).turns(*year).times) == 2
    assert len(_place(("K1", 0.3, 10.0)).turns(*year).times) == pytest.approx(732, abs=1)
    assert len(_place(("M2", 0.0, 0.0)).turns(*year).times) == 0


def test_an_empty_span_has_no_turns() -> None:
    """Empty in, empty out, same kinds of arrays."""
    tide = station("8443970")
    turns = tide.turns(utc("2026-01-01"), utc("2026-01-01"))
    assert turns.times.shape == turns.heights.shape == turns.is_high.shape == (0,)
    assert turns.times.dtype == np.dtype("datetime64[ms]")
    assert len(tide.turns(utc("2026-01-02"), utc("2026-01-01")).times) == 0


@settings(max_examples=40)
@given(
    cuts=st.lists(st.integers(0, 10 * 86_400_000), min_size=1, max_size=6),
    first=st.sampled_from(["2024-02-26", "2026-12-27", "2038-01-15", "1999-12-28"]),
    number=st.sampled_from(WINDOW_STATIONS),
    rule=st.sampled_from(["yearly", "continuous"]),
)
def test_a_span_cut_anywhere_has_the_same_turns(
    cuts: list[int], first: str, number: str, rule: str
) -> None:
    """No turn is doubled or lost where spans meet, over leap days and New Year too."""
    tide = station(number, rule)
    start, stop = utc(first), utc(first) + 10 * DAY
    edges = [start, *(start + np.timedelta64(cut, "ms") for cut in sorted(cuts)), stop]
    parts = [tide.turns(a, b) for a, b in pairwise(edges)]
    whole = tide.turns(start, stop)
    _assert_sound(tide, whole)
    assert (np.concatenate([part.times for part in parts]) == whole.times).all()


def test_a_cut_at_the_very_millisecond_of_a_turn_keeps_it_once() -> None:
    """The turn belongs to the span that it begins."""
    tide = station("8443970")
    turn = tide.turns(utc("2026-05-01"), utc("2026-05-02")).times[0]
    assert turn in tide.turns(turn, turn + DAY).times
    assert turn not in tide.turns(turn - DAY, turn).times


@pytest.mark.parametrize("number", [*WINDOW_STATIONS, "8723970", "8726724", "1612340_2023"])
def test_every_new_year_of_two_centuries_is_passed_without_a_phantom(number: str) -> None:
    """Kinds alternate and no two turns crowd into the two hours around midnight.

    A doubled or phantom turn would leave a pair there.
    """
    tide = Tide(place(constants(number)))
    for year in range(1901, 2101):
        border = utc(f"{year}-01-01")
        turns = tide.turns(border - DAY, border + DAY)
        assert (turns.is_high[1:] != turns.is_high[:-1]).all()
        assert np.count_nonzero(np.abs(turns.times - border) < HOUR) <= 1, year


@pytest.mark.slow
def test_a_hundred_years_of_turns() -> None:
    """1,411 turns a year for a century, alternating throughout, the same as year by year."""
    tide = station("8443970")
    turns = tide.turns(utc("1950-01-01"), utc("2050-01-01"))
    _assert_sound(tide, turns)
    years = [utc(f"{year}-01-01") for year in range(1950, 2051)]
    apart = Tide(tide.site)
    assert (
        np.concatenate([apart.turns(*pair).times for pair in pairwise(years)]) == turns.times
    ).all()
    assert len(turns.times) == pytest.approx(100 * 1411.5, abs=60)
