"""Dates and clocks as people write them, and which of day and month stands first."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from contextlib import suppress
from datetime import date, datetime, time, timedelta
from functools import cache, lru_cache
from typing import Final, Literal

from planner.intake.vocabulary import month_of, plain, vocabulary

Order = Literal["dmy", "mdy"]

_NUMBERS: Final = re.compile(r"(\d{1,2})[./\- ](\d{1,2})[./\- ](\d{4}|\d{2})(?!\d)", re.ASCII)
_YEAR_FIRST: Final = re.compile(r"(\d{4})[./-](\d{1,2})[./-](\d{1,2})(?!\d)", re.ASCII)
# A spreadsheet keeps a moment as days since 1899-12-30, whose fraction is the clock (ECMA-376
# part 1, 18.17.4.1), and writes that where the cell has lost its format. Here from 1954 to 2119.
_DAY_NUMBER: Final = re.compile(r"([2-7]\d{4})(?:[.,](\d+))?", re.ASCII)
_DAY_ZERO: Final = datetime(1899, 12, 30)  # noqa: DTZ001  (a local clock, like all of a table)
_CLOCK: Final = re.compile(
    r"(\d{1,2})(?:[:.h](\d{2})(?:[:.](\d{2}))?)? ?([ap])\.? ?m\.?"
    r"|(\d{1,2})[:.h](\d{2})(?::(\d{2}))?"
    r"|(\d{2})(\d{2})",
    re.ASCII,
)
_CENTURY_TURNS: Final = 69  # as POSIX reads two-digit years: 69 is 1969, 68 is 2068


class NotAMoment(ValueError):  # noqa: N818  (what is said of a cell, not a fault)
    """A cell that holds no date or clock that can be read."""


@lru_cache(maxsize=100_000)
def parse(text: str, order: Order | None) -> tuple[date | None, time | None]:
    """Return the date and the clock that a cell holds, None for what it does not.

    order: whether 3/4 is a day before its month ("dmy") or after ("mdy"). NotAMoment when the
    cell holds neither, or what could be two days.
    """
    written = plain(text)
    if found := _DAY_NUMBER.fullmatch(written):
        minutes = round(float(f"0.{found[2] or 0}") * 24 * 60)
        moment = _DAY_ZERO + timedelta(days=int(found[1]), minutes=minutes)
        return moment.date(), moment.time() if minutes else None
    readings = set()
    # "mar" begins a month in one language and a day of the week in another.
    for each in {written, _without_weekday(written)}:
        with suppress(NotAMoment):
            readings.add(_moment(each, order))
    if len(readings) != 1:
        raise NotAMoment(text)
    return readings.pop()


def _moment(text: str, order: Order | None) -> tuple[date | None, time | None]:
    day, left = _date(text, order)
    left = _around_clock().sub("", _without_weekday(left.strip(" ,t")))
    if not left:
        if day is None:
            raise NotAMoment(text)
        return day, None
    found = _CLOCK.fullmatch(left)
    if found is None:
        raise NotAMoment(text)
    return day, _clock(found)


def is_day_number(text: str) -> bool:
    """Tell whether a cell holds a moment as a spreadsheet's number of days."""
    return _DAY_NUMBER.fullmatch(plain(text)) is not None


def split_numbers(text: str) -> tuple[int, int] | None:
    """Return the two numbers that may be day and month, None where nothing is to be told."""
    found = _NUMBERS.match(_without_weekday(plain(text)))
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
        if found := _named().match(text):
            month = month_of(found[2] or found[3]) or 0
            return date(_year(found[5]), month, int(found[1] or found[4])), text[found.end() :]
    except ValueError:
        raise NotAMoment(text) from None
    return None, text


@cache
def _named() -> re.Pattern[str]:
    """Return what finds a date with its month in words: 21st of August 2026, Aug 21, 2026."""
    words = vocabulary()
    day = rf"(\d{{1,2}})(?:\.?(?:{_any(words.ordinals)}))?"
    of = rf"(?:(?:{_any(words.of)}) )?"
    month = rf"((?:{_any(words.months)})[a-z]*)"
    day_first, month_first = rf"{day}[ .\-]*{of}{month}[ .,\-]*", rf"{month}[ .\-]*{day}[ .,\-]+"
    return re.compile(rf"(?:{day_first}|{month_first}){of}(\d{{4}}|\d{{2}})(?!\d)", re.ASCII)


@cache
def _weekday() -> re.Pattern[str]:
    return re.compile(rf"(?:{_any(vocabulary().weekdays)})[a-z]*[ .,]+")


def _without_weekday(text: str) -> str:
    found = _weekday().match(text)
    return text[found.end() :] if found else text


@cache
def _around_clock() -> re.Pattern[str]:
    """Return what finds the words before and after a clock: at 7:40 hours."""
    words = vocabulary()
    return re.compile(rf"^(?:{_any(words.at)}) +|(?<=\d) *(?:{_any(words.hours)})\.?$")


def _any(words: Iterable[str]) -> str:
    return "|".join(re.escape(word) for word in sorted(words, key=len, reverse=True))


def _year(text: str) -> int:
    year = int(text)
    if len(text) == 4:
        return year
    return year + (1900 if year >= _CENTURY_TURNS else 2000)


def _clock(found: re.Match[str]) -> time:
    hour = int(found[1] or found[5] or found[8])
    minute = int(found[2] or found[6] or found[9] or 0)
    second = int(found[3] or found[7] or 0)
    half = found[4] or ""
    if half:
        if not 1 <= hour <= 12:
            raise NotAMoment(found[0])
        hour = hour % 12 + (12 if half == "p" else 0)
    try:
        return time(hour, minute, second)
    except ValueError:
        raise NotAMoment(found[0]) from None


def is_date_only(moment: datetime) -> bool:
    """Tell whether a time is the midnight that programs write behind a date."""
    return moment.tzinfo is None and moment.time() == time()


def iso_moment(text: str) -> datetime | None:
    """Return a full ISO 8601 date and time, None for anything else."""
    if not re.match(r"\d{4}-\d{2}-\d{2}[T ]\d{2}", text, re.ASCII):
        return None
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        return None
