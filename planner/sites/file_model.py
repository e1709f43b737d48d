"""The place file, format 1: its tables, and what each value alone may be.

Every field's `description` says what to write, with an example; error messages end in it.
What must hold between fields is in `checks`.
"""

from __future__ import annotations

import re
from datetime import date, datetime, time
from typing import Annotated, Any, Literal
from zoneinfo import ZoneInfo

from pydantic import AfterValidator, BaseModel, ConfigDict, Field, PlainValidator
from pydantic_core import PydanticCustomError

from planner.sites.zones import load_zone, near_zones, phase_reference_hours
from planner.units import LengthUnit

_WEEKDAY_NAMES = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
# Month and day without a year are kept in a leap year, so that 29 February can be written.
EVERY_YEAR = 2000


def refused(what: str, remedy: str = "") -> PydanticCustomError:
    """Return an error with our own words; without a remedy the field's description serves."""
    return PydanticCustomError("refused", "{what}", {"what": what, "remedy": remedy})


def _plain_text(text: str) -> str:
    stripped = text.strip()
    if not stripped:
        raise refused("is empty")
    if not stripped.isprintable():
        raise refused("contains characters that cannot be shown")
    return stripped


def _require_text(value: Any) -> str:
    if not isinstance(value, str):
        raise refused("must be text in quotes")
    return value


def _zone(value: Any) -> ZoneInfo:
    key = _require_text(value)
    try:
        return load_zone(key)
    except KeyError:
        near = near_zones(key)
        hint = f"did you mean {' or '.join(near)}? " if near else ""
        raise refused(
            "is not a known time zone", f'{hint}give its full name, such as "America/New_York"'
        ) from None


def _phase_reference(value: Any) -> float:
    try:
        return phase_reference_hours(_require_text(value))
    except ValueError:
        raise refused("is not a clock with a fixed distance from UTC") from None


def _weekday(value: Any) -> int:
    written = _require_text(value).strip().casefold()
    for number, name in enumerate(_WEEKDAY_NAMES):
        if written in (name, name[:3]):
            return number
    raise refused("is not a day of the week", "give one of Mon, Tue, Wed, Thu, Fri, Sat, Sun")


def _plain_date(value: Any) -> date:
    if isinstance(value, date) and not isinstance(value, datetime):
        return value
    raise refused("must be a date")


def _month_day(text: str) -> date:
    found = re.fullmatch(r"(\d{2})-(\d{2})", text, re.ASCII)
    try:
        if found:
            return date(EVERY_YEAR, int(found[1]), int(found[2]))
    except ValueError:
        pass
    raise refused("is not a day of the year")


def _date_or_month_day(value: Any) -> date:
    if isinstance(value, str):
        return _month_day(value)
    day = _plain_date(value)
    if day.year <= EVERY_YEAR:
        raise refused(f"must be after the year {EVERY_YEAR}")
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
        raise refused("must be a time of day")
    return clock


Text = Annotated[str, Field(max_length=200), AfterValidator(_plain_text)]
Number = Annotated[float, Field(allow_inf_nan=False)]
Minutes = Annotated[float, Field(allow_inf_nan=False, ge=-24 * 60, le=24 * 60)]
Weekday = Annotated[int, PlainValidator(_weekday)]
PlainDate = Annotated[date, PlainValidator(_plain_date)]
PeriodEnd = Annotated[date, PlainValidator(_date_or_month_day)]
Clock = Annotated[time, PlainValidator(_clock)]


class Table(BaseModel):
    """A table of the file: no unknown keys, no silent conversion of types."""

    model_config = ConfigDict(extra="forbid", strict=True, frozen=True)


class ConstituentEntry(Table):
    """One line of [water.constituents]."""

    amplitude: Annotated[Number, Field(ge=0)] = Field(
        description="the amplitude in the units of the file, 0 or more"
    )
    phase: Annotated[Number, Field(ge=-360, le=720)] = Field(
        description="the phase lag in degrees, 0 to 360"
    )


class TimeColumn(Table):
    """One column of tabled time differences: it holds at `at` and twelve hours later."""

    at: Clock = Field(description='a time on the clock of the table, such as "06:00"')
    minutes: Minutes = Field(description="minutes added to the time, such as 23")


class HeightColumn(Table):
    """One column of tabled height differences."""

    there: Number = Field(description="the height at the reference place, such as 4.2")
    add: Number = Field(description="what is added to it, such as 0.3")


TimeColumns = Annotated[list[TimeColumn], Field(min_length=2, max_length=2)]
HeightColumns = Annotated[list[HeightColumn], Field(min_length=2, max_length=2)]


class TabledTable(Table):
    """[water.offsets.tabled]: differences by time of day and by height at the reference."""

    clock: Annotated[float, PlainValidator(_phase_reference)] = Field(
        description='the clock of the table, "UTC" or such as "UTC+01:00", never summer time'
    )
    high_times: TimeColumns = Field(
        description='two columns such as { at = "00:00", minutes = 35 }'
    )
    low_times: TimeColumns = Field(description='two columns such as { at = "06:00", minutes = 23 }')
    high_heights: HeightColumns = Field(
        description="two columns such as { there = 4.2, add = 1.1 }"
    )
    low_heights: HeightColumns = Field(description="two columns such as { there = 0.4, add = 0.1 }")


class OffsetsTable(Table):
    """[water.offsets]: high and low waters as those of a reference place, shifted."""

    reference: Text = Field(
        description='the place file (or place name) of the reference, such as "other-place.toml"'
    )
    high_minutes: Minutes | None = Field(
        default=None, description="minutes added to the times of high water, such as 47"
    )
    low_minutes: Minutes | None = Field(
        default=None, description="minutes added to the times of low water, such as 62"
    )
    high_factor: Annotated[Number, Field(gt=0, le=10)] = Field(
        default=1.0, description="the ratio of the heights of high water, such as 0.86"
    )
    low_factor: Annotated[Number, Field(gt=0, le=10)] = Field(
        default=1.0, description="the ratio of the heights of low water, such as 0.90"
    )
    high_add: Number = Field(
        default=0.0, description="what is added to the heights of high water, such as -0.12"
    )
    low_add: Number = Field(
        default=0.0, description="what is added to the heights of low water, such as -0.05"
    )
    tabled: TabledTable | None = Field(
        default=None, description="a table with clock, high_times, low_times and the heights"
    )


class WaterTable(Table):
    """[water]: what the tide is made of."""

    units: LengthUnit = Field(description='the unit of every height in this file, "m" or "ft"')
    datum: Text = Field(description='what zero means, such as "MLLW"')
    mean_level: Number | None = Field(
        default=None, description="the mean water level above the datum, such as 0.26"
    )
    phase_reference: Annotated[float, PlainValidator(_phase_reference)] = Field(
        default=0.0,
        description='the clock the phase lags were worked out in, "UTC" or such as "UTC-05:00"',
    )
    node_factors: Literal["yearly", "continuous"] = Field(
        default="yearly", description='"yearly" (as agency tables do) or "continuous"'
    )
    constants_state: str = Field(
        default="", max_length=200, description='when the constants were issued, such as "2022"'
    )
    source: str = Field(
        default="", max_length=1000, description="where the constants are from, in quotes"
    )
    constituents: dict[str, ConstituentEntry] | None = Field(
        default=None,
        description="lines such as M2 = { amplitude = 0.21, phase = 61.0 }",
    )
    offsets: OffsetsTable | None = Field(
        default=None, description="a table with reference, high_minutes and low_minutes"
    )


class RampTable(Table):
    """[ramp]: when the boat can be launched."""

    lowest_level: Number = Field(
        description="the lowest water level at which the boat launches, such as -0.1"
    )


class SpotTable(Table):
    """[[spots]]: where traps stand."""

    name: Text = Field(description='the name of the spot, such as "grass edge"')
    depth: Number = Field(description="the charted depth below the datum, such as 1.8")
    trap_height: Number = Field(description="the height of the trap, such as 0.35 m")


class TemperatureTable(Table):
    """[temperature]: water temperature by month."""

    monthly: Annotated[
        list[Annotated[Number, Field(ge=-2, le=40)]], Field(min_length=12, max_length=12)
    ] = Field(
        description="twelve water temperatures, January to December, in degrees Celsius (-2 to 40)"
    )


class ClosureTable(Table):
    """[[closures]]: when no trap may be in the water."""

    reason: Text = Field(description='why it is closed, such as "trap clean-up"')
    first: PeriodEnd | None = Field(
        default=None,
        alias="from",
        description='a date such as 2026-02-11, or "02-11" for every year',
    )
    last: PeriodEnd | None = Field(
        default=None,
        alias="to",
        description='a date such as 2026-02-20, or "02-20" for every year',
    )
    weekdays: list[Weekday] = Field(
        default=[], max_length=7, description='days of the week, such as ["Sun"]'
    )


class RuleNoteTable(Table):
    """[[rules.notes]]: a rule as the user wrote it down."""

    category: Text = Field(description='the heading it stands under, such as "minimum size"')
    text: Annotated[str, Field(max_length=1000), AfterValidator(_plain_text)] = Field(
        description="the rule in your own words, in quotes"
    )


class RulesTable(Table):
    """[rules]: the rules of the place and when they were checked."""

    checked: PlainDate | None = Field(
        default=None, description="the date you last checked the rules, such as 2026-03-02"
    )
    where: Text | None = Field(default=None, description="where you checked them, in quotes")
    max_traps: Annotated[int, Field(ge=1, le=10_000)] | None = Field(
        default=None, description="the most traps allowed, a whole number"
    )
    max_soak_hours: Annotated[Number, Field(gt=0, le=2000)] | None = Field(
        default=None, description="the longest soak allowed in hours, such as 72"
    )
    notes: list[RuleNoteTable] = Field(default=[], description="tables headed [[rules.notes]]")


class FreeTable(Table):
    """[free]: when the user can be on the water."""

    weekdays: list[Weekday] | None = Field(
        default=None,
        min_length=1,
        max_length=7,
        description='the days you are free, such as ["Fri", "Sat", "Sun"]',
    )
    earliest: Clock | None = Field(
        default=None, alias="from", description='a time of day such as "05:30"'
    )
    latest: Clock | None = Field(
        default=None, alias="to", description='a time of day such as "20:30"'
    )
    also: list[PlainDate] = Field(default=[], description="dates such as [2026-05-25]")
    never: list[PlainDate] = Field(default=[], description="dates such as [2026-07-04]")


class TripTable(Table):
    """[trip]: how the user fishes here."""

    traps: Annotated[int, Field(ge=1, le=10_000)] | None = Field(
        default=None, description="how many traps you set, a whole number"
    )
    soak_hours: (
        Annotated[list[Annotated[Number, Field(gt=0, le=1000)]], Field(min_length=2, max_length=2)]
        | None
    ) = Field(default=None, description="the shortest and the longest soak, such as [14, 50]")
    bait_minutes: Annotated[Number, Field(ge=0, le=600)] | None = Field(
        default=None, description="minutes from fetching bait to the first set, 0 to 600"
    )
    set_minutes: Annotated[Number, Field(gt=0, le=1440)] | None = Field(
        default=None, description="minutes it takes to set all traps, up to 1440"
    )
    haul_minutes: Annotated[Number, Field(gt=0, le=1440)] | None = Field(
        default=None, description="minutes it takes to haul all traps, up to 1440"
    )
    cover_margin: Annotated[Number, Field(ge=0)] | None = Field(
        default=None, description="least water to keep over every trap, such as 0.3 m"
    )


class PlaceFile(Table):
    """A whole place file."""

    format: Literal[1] = Field(description="format = 1; a later number needs a later Fullshell")
    name: Annotated[str, Field(max_length=80), AfterValidator(_plain_text)] = Field(
        description='the name of the place, such as "Otter Bight"'
    )
    latitude: Annotated[Number, Field(ge=-90, le=90)] = Field(
        description="degrees from -90 to 90, north positive, such as 38.2"
    )
    longitude: Annotated[Number, Field(ge=-180, le=180)] = Field(
        description="degrees from -180 to 180, east positive, such as -76.1"
    )
    timezone: Annotated[ZoneInfo, PlainValidator(_zone)] = Field(
        description='the name of the time zone, such as "America/New_York"'
    )
    species: Text | None = Field(default=None, description='a species profile, such as "blue-crab"')
    invented: bool = Field(default=False, description="true or false")
    water: WaterTable = Field(description="a table headed [water]")
    ramp: RampTable | None = Field(default=None, description="a table headed [ramp]")
    spots: Annotated[list[SpotTable], Field(max_length=1000)] = Field(
        default=[], description="tables headed [[spots]]"
    )
    temperature: TemperatureTable | None = Field(
        default=None, description="a table headed [temperature]"
    )
    closures: Annotated[list[ClosureTable], Field(max_length=200)] = Field(
        default=[], description="tables headed [[closures]]"
    )
    rules: RulesTable = Field(default=RulesTable(), description="a table headed [rules]")
    free: FreeTable = Field(default=FreeTable(), description="a table headed [free]")
    trip: TripTable = Field(default=TripTable(), description="a table headed [trip]")
