"""The haul table's columns and what a cell of each may hold."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from typing import Final
from zoneinfo import ZoneInfo

from planner.phrasing import typed_number
from planner.units import (
    LengthUnit,
    TemperatureUnit,
    celsius_from,
    celsius_to,
    metres_from,
    metres_to,
)
from planner.words import say

Unit = LengthUnit | TemperatureUnit

LABELS: Final = ("trip", "place", "spot", "trap", "design", "bait")
TIMES: Final = ("set_at", "hauled_at")
COUNTS: Final = ("keepers", "shorts", "females", "sponge", "judged", "light")
# Bounds far outside what a small boat meets: they catch slipped digits and wrong units.
MEASURES: Final = {"depth_m": (0.0, 300.0), "water_c": (-3.0, 45.0)}
_UNITS: Final[dict[Unit, str]] = {
    "m": say("metres"),
    "ft": say("feet"),
    "C": say("degrees Celsius"),
    "F": say("degrees Fahrenheit"),
}
MAX_COUNT: Final = 9999
YEARS: Final = (1950, 2100)

COLUMNS: Final = (
    "trip",
    "place",
    "spot",
    "trap",
    "design",
    "bait",
    "set_at",
    "hauled_at",
    "depth_m",
    "keepers",
    "shorts",
    "females",
    "sponge",
    "other",
    "judged",
    "light",
    "water_c",
    "notes",
)

_COUNT = re.compile(r"(\d{1,9})(?:\.0+)?", re.ASCII)
_NUMBER = re.compile(r"-?(?:\d{1,9}(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?", re.ASCII)
_DECIMAL_COMMA = re.compile(r"-?\d+,\d+", re.ASCII)
_HAS_CLOCK = re.compile(r"[T ]\d\d", re.ASCII)
# What a spreadsheet takes for the beginning of a formula, in plain and full-width signs.
_FORMULA = r"(?:[ ]*[=+\-@＝＋－＠]|[\t\r\n])"
_GUARD_NEEDED = re.compile(rf"'*{_FORMULA}")
_GUARDED = re.compile(rf"'+{_FORMULA}")


class CellError(ValueError):
    """A cell that its column cannot hold: what is wrong, and the remedy."""

    def __init__(self, what: str, remedy: str) -> None:
        super().__init__(what)
        self.what = what
        self.remedy = remedy


def guard_formula(text: str) -> str:
    """Return text that no spreadsheet runs as a formula; `unguard_formula` takes it back."""
    return f"'{text}" if _GUARD_NEEDED.match(text) else text


def unguard_formula(text: str) -> str:
    """Return the text that was guarded; any other text as it is."""
    return text[1:] if _GUARDED.match(text) else text


def read_count(text: str) -> int:
    """Return a whole number that is not negative; CellError for anything else."""
    found = _COUNT.fullmatch(text)
    if found is None:
        raise CellError(
            say("is not a whole number of crabs, zero or more"),
            say("write digits such as 3, or leave it empty when it was not recorded"),
        )
    if int(found[1]) > MAX_COUNT:
        raise CellError(
            say("is more than one trap can hold ({max_count})", max_count=MAX_COUNT),
            say("check the digits"),
        )
    return int(found[1])


def read_depth(text: str, *, decimal_comma: bool, unit: LengthUnit = "m") -> float:
    """Return a depth in metres; CellError when it is no number or is out of bounds.

    decimal_comma: take "1,5" for 1.5, as tables separated by semicolons write it.
    unit: that of the text, and of what is said of it.
    """
    value_m = metres_from(_number(text, unit, decimal_comma=decimal_comma), unit)
    low_m, high_m = MEASURES["depth_m"]
    if not low_m <= value_m <= high_m:
        raise _outside(metres_to(low_m, unit), metres_to(high_m, unit), unit)
    return value_m


def read_water(text: str, *, decimal_comma: bool, unit: TemperatureUnit = "C") -> float:
    """Return a temperature in degrees Celsius; otherwise as `read_depth`."""
    value_c = celsius_from(_number(text, unit, decimal_comma=decimal_comma), unit)
    low_c, high_c = MEASURES["water_c"]
    if not low_c <= value_c <= high_c:
        raise _outside(celsius_to(low_c, unit), celsius_to(high_c, unit), unit)
    return value_c


def _number(text: str, unit: Unit, *, decimal_comma: bool) -> float:
    text = typed_number(text)
    if decimal_comma and _DECIMAL_COMMA.fullmatch(text):
        text = text.replace(",", ".")
    if not _NUMBER.fullmatch(text):
        remedy = say("write a plain number in {unit}, such as 1.5", unit=_UNITS[unit])
        raise CellError(say("is not a number"), remedy)
    return float(text)


def _outside(low: float, high: float, unit: Unit) -> CellError:
    return CellError(
        say("is outside {low:g} to {high:g}", low=round(low), high=round(high)),
        say("give it in {unit}", unit=_UNITS[unit]),
    )


def read_time(text: str, zone: ZoneInfo | None) -> datetime:
    """Return an instant in UTC from ISO 8601, local to the zone when it has no offset.

    A local time that happens twice is its first occurrence; one that the clocks skip is
    refused, as is a bare date. CellError says what is wrong.
    """
    try:
        written = datetime.fromisoformat(text)
    except ValueError:
        raise CellError(
            say("is not a time"),
            say("write it as year-month-day and clock, such as 2026-08-14 06:40"),
        ) from None
    if not _HAS_CLOCK.search(text):
        raise CellError(say("has no time of day"), say("add the clock time, such as 06:40"))
    if not YEARS[0] <= written.year <= YEARS[1]:
        raise CellError(
            say("is not in the years {first} to {last}", first=YEARS[0], last=YEARS[1]),
            say("check the year"),
        )
    if written.tzinfo is not None:
        return written.astimezone(UTC)
    if zone is None:
        raise CellError(
            say("is a local time at a place whose time zone is not known"),
            say("add the offset from UTC, such as -04:00, or add the place to the place book"),
        )
    local = written.replace(tzinfo=zone, fold=0)
    instant = local.astimezone(UTC)
    if instant.astimezone(zone).replace(tzinfo=None) != written:
        raise CellError(
            say("does not exist in {key}: the clocks were put forward over it", key=zone.key),
            # Of a clock that was not put forward, as one may have been aboard.
            say(
                "correct the time, or add the offset from UTC, such as {offset}",
                offset=local.isoformat()[-len("+00:00") :],
            ),
        )
    return instant
