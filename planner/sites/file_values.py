"""The kinds of value in a place file, and what is said of one that cannot be."""

from __future__ import annotations

import re
from datetime import date, datetime, time
from typing import Annotated, Any
from zoneinfo import ZoneInfo

from pydantic import AfterValidator, Field, PlainValidator
from pydantic_core import PydanticCustomError

from planner.sites.zones import load_zone, near_zones, phase_reference_hours
from planner.words import say

_WEEKDAY_NAMES = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
# Month and day without a year are kept in a leap year, so that 29 February can be written.
EVERY_YEAR = 2000
LONGEST_NAME = 80  # of a place


def refused(what: str, remedy: str = "") -> PydanticCustomError:
    """Return an error with our own words; without a remedy the field's description serves."""
    return PydanticCustomError("refused", "{what}", {"what": what, "remedy": remedy})


def _plain_text(text: str) -> str:
    stripped = text.strip()
    if not stripped:
        raise refused(say("is empty"))
    if not stripped.isprintable():
        raise refused(say("contains characters that cannot be shown"))
    return stripped


def _require_text(value: Any) -> str:
    if not isinstance(value, str):
        raise refused(say("must be text in quotes"))
    return value


def _zone(value: Any) -> ZoneInfo:
    key = _require_text(value)
    try:
        return load_zone(key)
    except KeyError:
        near = near_zones(key)
        hint = say("did you mean {near}? ", near=say(" or ").join(near)) if near else ""
        raise refused(
            say("is not a known time zone"),
            say('{hint}give its full name, such as "America/New_York"', hint=hint),
        ) from None


def _phase_reference(value: Any) -> float:
    try:
        return phase_reference_hours(_require_text(value))
    except ValueError:
        raise refused(say("is not a clock with a fixed distance from UTC")) from None


def _weekday(value: Any) -> int:
    written = _require_text(value).strip().casefold()
    for number, name in enumerate(_WEEKDAY_NAMES):
        if written in (name, name[:3]):
            return number
    raise refused(
        say("is not a day of the week"), say("give one of Mon, Tue, Wed, Thu, Fri, Sat, Sun")
    )


def _plain_date(value: Any) -> date:
    if isinstance(value, date) and not isinstance(value, datetime):
        return value
    raise refused(say("must be a date"))


def _month_day(text: str) -> date:
    found = re.fullmatch(r"(\d{2})-(\d{2})", text, re.ASCII)
    try:
        if found:
            return date(EVERY_YEAR, int(found[1]), int(found[2]))
    except ValueError:
        pass
    raise refused(say("is not a day of the year"))


def _date_or_month_day(value: Any) -> date:
    if isinstance(value, str):
        return _month_day(value)
    day = _plain_date(value)
    if day.year <= EVERY_YEAR:
        raise refused(say("must be after the year {every_year}", every_year=EVERY_YEAR))
    return day


def clock_time(value: Any) -> time | None:
    """Return a time of day written as TOML's own type or as "HH:MM"; None for anything else."""
    if isinstance(value, time):
        return value
    if not isinstance(value, str) or not re.fullmatch(r"\d{2}:\d{2}", value, re.ASCII):
        return None
    hour, minute = (int(part) for part in value.split(":"))
    return time(hour, minute) if hour < 24 and minute < 60 else None


def _clock(value: Any) -> time:
    clock = clock_time(value)
    if clock is None:
        raise refused(say("must be a time of day"))
    return clock


Plain = AfterValidator(_plain_text)
Text = Annotated[str, Field(max_length=200), Plain]
Number = Annotated[float, Field(allow_inf_nan=False)]
Minutes = Annotated[float, Field(allow_inf_nan=False, ge=-24 * 60, le=24 * 60)]
Weekday = Annotated[int, PlainValidator(_weekday)]
PlainDate = Annotated[date, PlainValidator(_plain_date)]
PeriodEnd = Annotated[date, PlainValidator(_date_or_month_day)]
Clock = Annotated[time, PlainValidator(_clock)]
Zone = Annotated[ZoneInfo, PlainValidator(_zone)]
PhaseReference = Annotated[float, PlainValidator(_phase_reference)]
