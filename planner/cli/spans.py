"""Instants, dates, steps and spans as people type them on the command line."""

from __future__ import annotations

import math
import re
from argparse import ArgumentTypeError
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from planner.cli.errors import UsageError
from planner.clock import parse_instant
from planner.words import say

YEARS = (1, 9998)  # a day either side must still be a date
MAX_DAYS = 3660
MAX_TIDE_DAYS = 73_500  # every year that tides are computed for
MAX_VALUES = 1_000_000

_STEP = re.compile(r"(\d+(?:\.\d+)?) ?(s|sec|m|min|h|hour|hours|d|day|days)")
_SECONDS = {"s": 1, "m": 60, "h": 3600, "d": 86_400}


@dataclass(frozen=True)
class DaySpan:
    """Local days, both included."""

    first: date
    last: date


@dataclass(frozen=True)
class InstantSpan:
    """Aware instants in UTC, start not after stop."""

    start: datetime
    stop: datetime


def instant_text(text: str) -> str:
    """Return the text of an ISO 8601 instant; its clock is the place's, which is read later."""
    try:
        year = datetime.fromisoformat(text).year
    except ValueError:
        raise ArgumentTypeError(
            say(
                '"{given}" is not an instant; write it like 2026-08-14T06:30 (local time '
                "of the place) or 2026-08-14T10:30Z",
                given=text,
            )
        ) from None
    _require_year(year, text)
    return text


def day(text: str) -> date:
    """Return an ISO 8601 date."""
    try:
        found = date.fromisoformat(text)
    except ValueError:
        raise ArgumentTypeError(
            say('"{given}" is not a date; write it like 2026-08-14', given=text)
        ) from None
    _require_year(found.year, text)
    return found


def _require_year(year: int, text: str) -> None:
    if not YEARS[0] < year < YEARS[1]:
        raise ArgumentTypeError(
            say('"{given}" is outside the calendar; give a year such as 2026', given=text)
        )


def step(text: str) -> timedelta:
    """Return a step such as "6m", "15min", "1h" or "1d", one second or longer."""
    found = _STEP.fullmatch(text.strip())
    seconds = float(found[1]) * _SECONDS[found[2][0]] if found else 0.0
    if not 1 <= seconds <= 366 * 86_400:
        raise ArgumentTypeError(
            say(
                '"{given}" is not a step; write a number with s, m, h or d, such as 6m or 1h',
                given=text,
            )
        )
    return timedelta(milliseconds=round(seconds * 1000))  # as fine as the tide is sampled


def today_at(zone: ZoneInfo) -> date:
    """Return today's date on the place's clock."""
    return datetime.now(zone).date()


def day_span(
    first: date | None, last: date | None, zone: ZoneInfo, default_days: int, most: int = MAX_DAYS
) -> DaySpan:
    """Return the days asked for; today, and so many days from the first, where left out."""
    begin = first or today_at(zone)
    end = last or begin + timedelta(days=default_days)
    _require_order(f"{begin}", f"{end}", begin > end, first is None)
    _require_days(f"{begin}", f"{end}", (end - begin).days + 1, most)
    return DaySpan(begin, end)


def instant_span(
    start: str | None, stop: str | None, zone: ZoneInfo, default_days: int
) -> InstantSpan:
    """Return the instants asked for; from today's local midnight where left out."""
    begin = parse_instant(start or today_at(zone).isoformat(), zone)
    if stop is None:
        local = begin.astimezone(zone)
        end = parse_instant(
            (local.replace(tzinfo=None) + timedelta(days=default_days)).isoformat(), zone
        )
    else:
        end = parse_instant(stop, zone)
    first = start or f"{begin.astimezone(zone):%Y-%m-%d}"
    last = stop or f"{end.astimezone(zone):%Y-%m-%d}"
    _require_order(first, last, begin > end, start is None)
    _require_days(first, last, math.ceil((end - begin) / timedelta(days=1)), MAX_TIDE_DAYS)
    return InstantSpan(begin, end)


def require_values(span: InstantSpan, every: timedelta) -> None:
    """UsageError when the step cuts the span into more values than anyone reads."""
    count = int((span.stop - span.start) / every) + 1
    if count > MAX_VALUES:
        raise UsageError(
            say(
                "--every gives {count} values; take a longer step or fewer days, for at "
                "most {max_values}",
                count=count,
                max_values=MAX_VALUES,
            )
        )


def _require_order(begin: str, end: str, reversed_: bool, defaulted: bool) -> None:
    if reversed_:
        today = say(" (today, as it was left out)") if defaulted else ""
        remedy = say("give --from as well") if defaulted else say("exchange them")
        raise UsageError(
            say(
                "--from {begin}{today} is after --to {end}; {remedy}",
                begin=begin,
                today=today,
                end=end,
                remedy=remedy,
            )
        )


def _require_days(begin: str, end: str, days: int, most: int) -> None:
    if days > most:
        raise UsageError(
            say(
                "--from {begin} --to {end} is {days} days; ask for at most {most}",
                begin=begin,
                end=end,
                days=days,
                most=most,
            )
        )
