"""Shares, clocks, soaks and measures in words, rounded to what is known."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime
from fractions import Fraction
from zoneinfo import ZoneInfo

import pytest

from planner.phrasing import (
    Style,
    clock_text,
    daylight_text,
    degrees_apart_text,
    height_text,
    one_in,
    shown_day,
    soak_text,
    temperature_text,
)

NEW_YORK = ZoneInfo("America/New_York")


@pytest.mark.parametrize(
    ("share", "words"),
    [
        (0.0, "fewer than 1 in 50"),
        (0.02, "about 1 in 50"),
        (0.077, "about 1 in 15"),
        (0.125, "about 1 in 8"),
        (0.34, "about 1 in 3"),
        (0.36, "about 4 in 10"),
        (0.44, "about 4 in 10"),
        (0.5, "about half"),
        (0.69, "about 7 in 10"),
        (0.94, "about 9 in 10"),
        (0.96, "nearly all"),
    ],
)
def test_a_share_is_so_many_of_a_few(share: float, words: str) -> None:
    """Protects the one figure that a trapper reads as a count of crabs."""
    assert one_in(share) == words


def test_more_light_crabs_are_never_fewer_in_words() -> None:
    """Protects the order: 41 of 100 must not read as more than 44 of 100 do."""
    said = [one_in(share / 100) for share in range(2, 95)]
    numbers = ([int(number) for number in re.findall(r"\d+", each)] for each in said)
    known = [float(Fraction(*each)) if each else 0.5 for each in numbers]
    assert known == sorted(known)
    assert known == pytest.approx([share / 100 for share in range(2, 95)], abs=0.051)


@pytest.mark.parametrize(
    ("at", "day_long", "halves"),
    [
        ((4, 2), "00:00", "12:00 am"),
        ((16, 3), "12:05", "12:05 pm"),
        ((17, 58), "14:00", "2:00 pm"),
    ],
)
def test_a_clock_is_to_five_minutes_by_day_and_by_halves(
    at: tuple[int, int], day_long: str, halves: str
) -> None:
    """Noon and midnight are 12, not 0; what is nearest is shown, not what is past."""
    instant = datetime(2026, 8, 14, *at, tzinfo=UTC)
    assert clock_text(instant, NEW_YORK, Style()) == day_long
    assert clock_text(instant, NEW_YORK, Style(hours12=True)) == halves


def test_a_day_is_that_of_the_clock_that_is_shown() -> None:
    """23:58 reads 00:00, which is of the next day."""
    late = datetime(2026, 8, 15, 3, 58, tzinfo=UTC)
    assert shown_day(late, NEW_YORK) == date(2026, 8, 15)


def test_soaks_and_daylight_are_as_exact_as_they_are_known() -> None:
    """Days from a day and a half on; quarter hours of daylight."""
    assert [soak_text(hours) for hours in (14.4, 35.9, 36.0)] == ["14 h", "36 h", "36 h (1.5 days)"]
    assert [daylight_text(hours) for hours in (0.05, 0.5, 7.3, 25)] == [
        "Minutes", "30 min", "7 h 15 min", "A day or more",
    ]  # fmt: skip


def test_measures_are_in_the_readers_units() -> None:
    """Feet with a decimal, metres to 5 cm; a difference of degrees has no 32 in it."""
    feet = Style(length="ft", temperature="F")
    assert (height_text(1.02, Style()), height_text(1.02, feet)) == ("1.00 m", "3.3 ft")
    assert (temperature_text(20.0, Style()), temperature_text(20.0, feet)) == ("20 °C", "68 °F")
    assert degrees_apart_text(2.0, Style()) == "2 °C warmer"
    assert degrees_apart_text(-2.0, feet) == "4 °F colder"
    assert degrees_apart_text(0.2, feet) == "as warm"
