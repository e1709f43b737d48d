"""One cell of the haul table: what it shows, what may be typed, and what that means; no Qt."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import Any, Final, Literal
from zoneinfo import ZoneInfo

from planner.errors import Problem
from planner.intake.moments import NotAMoment, parse
from planner.intake.vocabulary import month_of
from planner.logbook import Haul
from planner.logbook.columns import CellError, read_count, read_depth, read_time
from planner.logbook.rules import haul_problems
from planner.phrasing import Style, number_text
from planner.units import LengthUnit, metres_to
from planner.words import say

NOT_RECORDED: Final = "–"
NUDGE: Final = timedelta(minutes=5)

Kind = Literal["text", "count", "time", "depth"]


@dataclass(frozen=True)
class Column:
    """A column of the table: the field of a haul, its heading and what it means."""

    field: str
    heading: str
    kind: Kind
    help: str


# In the order in which a haul is told on deck; what seldom changes comes last.
COLUMNS: Final = (
    Column("trap", say("Trap"), "text", say("The trap's label")),
    Column("spot", say("Spot"), "text", say("Where it stood")),
    Column("set_at", say("Set"), "time", say("When it went in; + and − move it by five minutes")),
    Column(
        "hauled_at", say("Hauled"), "time", say("When it came up; + and − move it by five minutes")
    ),
    Column("keepers", say("Keepers"), "count", say("Legal crabs")),
    Column("shorts", say("Shorts"), "count", say("Undersize crabs, freed")),
    Column("females", say("Females"), "count", say("Every female")),
    Column("sponge", say("Sponge"), "count", say("Those of the females with eggs")),
    Column("judged", say("Judged"), "count", say("Legal crabs looked at for fullness")),
    Column("light", say("Light"), "count", say("Those of the judged that were light")),
    Column("design", say("Design"), "text", say("The kind of trap")),
    Column("bait", say("Bait"), "text", say("What it was baited with")),
    Column("depth_m", say("Depth"), "depth", say("Depth of water where it stood")),
    Column("other", say("Other kinds"), "text", say("Other species, as you would write them")),
    Column("notes", say("Notes"), "text", say("Anything else")),
)


@dataclass(frozen=True)
class Clock:
    """How instants and lengths are read: the place's zone, and the user's style."""

    zone: ZoneInfo
    style: Style


def heading(column: Column, clock: Clock) -> str:
    """Return a column's heading, with its unit where it has one."""
    return f"{column.heading} ({clock.style.length})" if column.kind == "depth" else column.heading


def written(haul: Haul, column: Column, clock: Clock) -> str:
    """Return the text that a person would type for the cell; "" for not recorded."""
    value = getattr(haul, column.field)
    if value is None:
        return ""
    if column.kind == "time":
        local = value.astimezone(clock.zone)
        return say("{local.day} {local:%b} {clock}", local=local, clock=_clock(local, clock.style))
    if column.kind == "depth":
        return number_text(round(metres_to(value, clock.style.length), 2))
    return str(value)


class TypedError(CellError):
    """A text that its column cannot hold, or not beside the others of its haul."""

    def __init__(self, column: Column, text: str, what: str, remedy: str) -> None:
        super().__init__(what, remedy)
        self.column, self.text = column, text


def with_texts(
    haul: Haul, texts: Mapping[Column, str], clock: Clock, day_of: Callable[[Column], date]
) -> Haul:
    """Return the haul with cells as typed, judged together; "" means not recorded.

    day_of: gives the local day meant by a clock without a date. TypedError when it cannot be meant.
    """
    # Typed again as it stood: seconds and the second 01:30 of a night stay.
    new = {each: text for each, text in texts.items() if text.strip() != written(haul, each, clock)}
    values = {}
    for column, text in new.items():
        try:
            values[column.field] = _value(column, text.strip(), clock, day_of(column))
        except CellError as error:
            raise TypedError(column, text, error.what, error.remedy) from None
    if not new:
        return haul
    made = replace(haul, **values)
    for problem in haul_problems(made, lambda field: field, zone=clock.zone):
        column = next((each for each in new if each.field == problem.where), next(iter(new)))
        raise TypedError(column, new[column], problem.what, problem.remedy)
    return made


def refusal(haul: Haul, error: TypedError) -> str:
    """Return the sentence that tells why a cell was not taken."""
    trap = say("Trap {trap}, ", trap=haul.trap) if haul.trap else ""
    place = f"{trap}{error.column.heading.lower()}"
    found = Problem(place, error.text.strip(), error.what, error.remedy)
    return say("Not saved. {problem}.", problem=found)


def _value(column: Column, text: str, clock: Clock, day: date) -> Any:
    if column.kind == "text":
        return text
    if not text or text == NOT_RECORDED:
        return None
    if column.kind == "count":
        return read_count(text)
    if column.kind == "depth":
        return _depth(text, clock.style)
    return read_time(_iso(text, day), clock.zone)


def _depth(text: str, style: Style) -> float:
    number = text.casefold()
    said: tuple[LengthUnit, ...] = ("ft", "m")
    unit = next((each for each in said if number.endswith(each)), style.length)
    depth_m = read_depth(number.removesuffix(unit).strip(), decimal_comma=True, unit=unit)
    return depth_m if unit == "m" else round(depth_m, 4)


_CLOCK: Final = r"(?P<hour>\d{1,2}):?(?P<minute>\d\d)\s*(?P<half>[ap]m?)?"
_YEAR: Final = re.compile(r".*[a-z]{3}\.?\s+(?:19|20)\d\d", re.IGNORECASE)
_TYPED: Final = re.compile(
    rf"(?:(?P<day>\d{{1,2}})\.?\s+(?:(?P<month>[a-z]{{3,10}})\.?\s+)?)?{_CLOCK}", re.IGNORECASE
)


def _iso(text: str, day: date) -> str:
    """Return local ISO time for "740", "7:40 pm", "22 7:40" or "22 Nov 7:40".

    A date without its month or year is the one nearest to `day`. Other texts are read as in a
    table that is taken in; those that are no time there are left as they are.
    """
    found = _TYPED.fullmatch(text)
    if found is None:
        return _iso_of_table(text, day)
    if _YEAR.fullmatch(text):
        remedy = say("write the clock with a colon, such as 20:26")
        raise CellError(say("may end in a year"), remedy)
    hour = int(found["hour"])
    if found["half"]:
        if not 1 <= hour <= 12:
            raise CellError(say("is not a time"), say("write a clock such as 7:40 pm or 19:40"))
        hour = hour % 12 + (12 if found["half"].casefold().startswith("p") else 0)
    on = _nearest(day, found["day"], found["month"])
    return f"{on.isoformat()} {hour:02d}:{found['minute']}"


def _iso_of_table(text: str, day: date) -> str:
    try:
        on, clock = parse(text, None)
    except NotAMoment:
        return text  # such as ISO 8601 with an offset
    if clock is None:
        return str(on)
    return f"{on or day} {clock}"


def _nearest(day: date, number: str | None, month: str | None) -> date:
    if number is None:
        return day
    months = range(1, 13) if month is None else (month_of(month),)
    dates = [
        date(year, at, int(number))
        for year in (day.year - 1, day.year, day.year + 1)
        for at in months
        if at is not None and _exists(year, at, int(number))
    ]
    if not dates:
        raise CellError(
            say("is no date"), say("write it as day, month and clock, such as 22 Nov 7:40")
        )
    return min(dates, key=lambda other: abs(other - day))


def _exists(year: int, month: int, day: int) -> bool:
    try:
        date(year, month, day)
    except ValueError:
        return False
    return True


def _clock(local: datetime, style: Style) -> str:
    if not style.hours12:
        return f"{local:%H:%M}"
    return f"{local.hour % 12 or 12}:{local:%M} {'am' if local.hour < 12 else 'pm'}"
