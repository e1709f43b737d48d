"""Numbers and ranges as a person reads them; what is copied from the screen is read again."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.cli.entry import _encodable
from planner.estimates import Interval
from planner.logbook.columns import read_water
from planner.phrasing import (
    Style,
    height_text,
    interval_text,
    light_text,
    natural_order,
    number_text,
    numbers_text,
    range_text,
    typed_number,
    zone_text,
)
from planner.sites.editing import number_or_text
from planner.words import MINUS

FORMS = (".0f", ".1f", ".2f", ".0%", "+.0f", ".6g")
NUMBERS = st.floats(-1e5, 1e5, allow_nan=False)


@pytest.mark.parametrize(
    ("zone", "name"),
    [
        ("America/New_York", "EST"),
        ("Australia/Adelaide", "ACDT"),
        ("Pacific/Chatham", "UTC+13:45"),
        ("America/Sao_Paulo", "UTC-03:00"),
        ("Atlantic/Azores", "UTC-01:00"),
        ("UTC", "UTC"),
    ],
)
def test_a_clock_without_letters_is_named_by_what_it_is_ahead_of_utc(zone: str, name: str) -> None:
    """After an hour "-03" reads like the end of a range, and "+1345" like nothing at all."""
    assert zone_text(datetime(2026, 12, 24, 12, tzinfo=UTC), ZoneInfo(zone)) == name


@given(value=NUMBERS, form=st.sampled_from(FORMS))
def test_below_zero_stands_a_minus_and_nowhere_a_hyphen(value: float, form: str) -> None:
    """A minus before every number that is shown below zero, before no other, and no minus zero."""
    shown = number_text(value, form)
    assert "-" not in shown.removeprefix(MINUS)
    zero = not re.search("[1-9]", shown)
    assert shown.startswith(MINUS) == (value < 0 and not zero)
    assert not (zero and shown[0] in f"+-{MINUS}")


@given(ends=st.tuples(NUMBERS, NUMBERS), form=st.sampled_from(FORMS))
def test_a_range_can_be_read_in_one_way_only(ends: tuple[float, float], form: str) -> None:
    """A dash joins bare numbers; beside any sign of a number a word does, so that none doubles."""
    low, high = sorted(ends)
    shown = numbers_text(low, high, form)
    one, other = number_text(low, form), number_text(high, form)
    bare = not {"+", MINUS, "-"} & {*one, *other}
    assert shown == (f"{one}–{other}" if bare else f"{one} to {other}")
    assert not re.search(f"[–+{MINUS}-]{{2}}", shown)
    assert interval_text(Interval(low, low, high), form) == f"{one} ({shown})"


def test_ends_of_several_words_are_joined_by_a_word() -> None:
    """A dash between "1 in 20" and "1 in 4" would bind 20 and 1."""
    assert range_text("1 in 20", "1 in 4") == "1 in 20 to 1 in 4"
    assert range_text("2026-07-04", "2026-07-11") == "2026-07-04 to 2026-07-11"
    assert range_text("Mar", "May") == "Mar–May"
    assert range_text("20%", "49%") == "20%–49%"


@given(value=st.floats(-30, 40).map(lambda value: round(value, 2)))
def test_a_number_copied_from_the_screen_is_read_again(value: float) -> None:
    """Both the minus that is shown and the hyphen that a keyboard has are taken."""
    for shown in (number_text(value), f"{value:.6g}"):
        assert float(typed_number(shown)) == value
        assert number_or_text(shown) == value
    inside = max(value, -2.0)
    assert read_water(number_text(inside), decimal_comma=True) == inside


def test_a_narrow_terminal_gets_a_hyphen_and_no_question_mark() -> None:
    """A question mark before a height would turn low water into high."""
    said = f"{height_text(-0.2, Style())}, {numbers_text(9, 20)}"
    assert _encodable(said, "cp437") == "-0.20 m, 9-20"
    assert _encodable(said, "cp1252") == "-0.20 m, 9–20"
    assert _encodable(said, None) == said


def test_an_interval_that_says_the_same_twice_is_left_out() -> None:
    """ "fewer than 1 in 50 (fewer than 1 in 50 to fewer than 1 in 50)" tells nothing more."""
    assert light_text(Interval(0.005, 0.001, 0.015)) == "fewer than 1 in 50"
    assert light_text(Interval(0.1, 0.04, 0.2)) == "about 1 in 10 (1 in 25 to 1 in 5)"


def test_labels_stand_as_a_person_sorts_them() -> None:
    """A2 before A10, and C3 before C4 whatever trip they came from."""
    assert sorted(["C4", "A10", "C3", "A2", "12", "2"], key=natural_order) == [
        "2", "12", "A2", "A10", "C3", "C4",
    ]  # fmt: skip
