"""Dates and clocks as people write them, and which of day and month stands first."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, datetime, time
from functools import lru_cache
from typing import Final, Literal

from planner.clock import MONTHS_BEGIN

Order = Literal["dmy", "mdy"]

_NUMBERS: Final = re.compile(r"(\d{1,2})[./\- ](\d{1,2})[./\- ](\d{4}|\d{2})(?!\d)", re.ASCII)
_YEAR_FIRST: Final = re.compile(r"(\d{4})[./](\d{1,2})[./](\d{1,2})(?!\d)", re.ASCII)
_NAMED: Final = re.compile(
    r"(?:(\d{1,2})(?:st|nd|rd|th)?[ .\-]*([A-Za-z]{3,9})"
    r"|([A-Za-z]{3,9})[ .\-]*(\d{1,2})(?:st|nd|rd|th)?)"
    r"[ .,\-]*(\d{4}|\d{2})(?!\d)",
    re.ASCII,
)
_WEEKDAY: Final = re.compile(r"(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[ .,]+", re.IGNORECASE)
_CLOCK: Final = re.compile(
    r"(\d{1,2})(?:[:.h](\d{2})(?:[:.](\d{2}))?)? ?([ap])\.?m\.?|(\d{1,2})[:.h](\d{2})(?::(\d{2}))?"
    r"|(\d{2})(\d{2})",
    re.ASCII | re.IGNORECASE,
)
_CENTURY_TURNS: Final = 69  # as POSIX reads two-digit years: 69 is 1969, 68 is 2068


class NotAMoment(ValueError):  # noqa: N818  (what is said of a cell, not a fault)
    """A cell that holds no date or clock that can be read."""


@lru_cache(maxsize=100_000)
def parse(text: str, order: Order | None) -> tuple[date | None, time | None]:
    """Return the date and the clock that a cell holds, None for what it does not.

    order: whether 3/4 is a day before its month ("dmy") or after ("mdy"). NotAMoment when the
    cell holds neither, or a date that only the order could tell.
    """
    left = _WEEKDAY.sub("", text.strip(), count=1)
    day, left = _date(left, order)
    left = left.strip(" ,T\u00a0")
    if not left:
        if day is None:
            raise NotAMoment(text)
        return day, None
    found = _CLOCK.fullmatch(left)
    if found is None:
        raise NotAMoment(text)
    return day, _clock(found)


def split_numbers(text: str) -> tuple[int, int] | None:
    """Return the two numbers that may be day and month, None where nothing is to be told."""
    found = _NUMBERS.match(_WEEKDAY.sub("", text.strip(), count=1))
    return (int(found[1]), int(found[2])) if found else None


def order_by_numbers(pairs: Sequence[tuple[int, int]]) -> Order | None:
    """Return the order that the numbers prove, None where they prove none or contradict."""
    day_first = any(first > 12 for first, _ in pairs)
    month_first = any(second > 12 for _, second in pairs)
    if day_first == month_first:
        return None
    return "dmy" if day_first else "mdy"


def _date(text: str, order: Order | None) -> tuple[date | None, str]:
    """Return the date at the front of a text, and what follows it."""
    try:
        if iso := re.match(r"(\d{4}-\d{2}-\d{2})(?!\d)", text, re.ASCII):
            return date.fromisoformat(iso[1]), text[iso.end() :]
        if found := _YEAR_FIRST.match(text):
            return date(int(found[1]), int(found[2]), int(found[3])), text[found.end() :]
        if found := _NUMBERS.match(text):
            first, second = int(found[1]), int(found[2])
            if order is None and first != second:
                raise NotAMoment(text)
            day, month = (first, second) if order != "mdy" else (second, first)
            return date(_year(found[3]), month, day), text[found.end() :]
        if found := _NAMED.match(text):
            name = (found[2] or found[3]).lower()[:3]
            if name in MONTHS_BEGIN:
                day = int(found[1] or found[4])
                return date(_year(found[5]), MONTHS_BEGIN.index(name) + 1, day), text[found.end() :]
    except ValueError:
        raise NotAMoment(text) from None
    return None, text


def _year(text: str) -> int:
    year = int(text)
    if len(text) == 4:
        return year
    return year + (1900 if year >= _CENTURY_TURNS else 2000)


def _clock(found: re.Match[str]) -> time:
    hour = int(found[1] or found[5] or found[8])
    minute = int(found[2] or found[6] or found[9] or 0)
    second = int(found[3] or found[7] or 0)
    half = (found[4] or "").lower()
    if half:
        if not 1 <= hour <= 12:
            raise NotAMoment(found[0])
        hour = hour % 12 + (12 if half == "p" else 0)
    try:
        return time(hour, minute, second)
    except ValueError:
        raise NotAMoment(found[0]) from None


def iso_moment(text: str) -> datetime | None:
    """Return a full ISO 8601 date and time, None for anything else."""
    if not re.match(r"\d{4}-\d{2}-\d{2}[T ]\d{2}", text, re.ASCII):
        return None
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        return None
