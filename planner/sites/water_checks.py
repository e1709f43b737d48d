"""What must hold within [water] of a place file, and against the tides of the real world."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from planner import constituents
from planner.errors import Problem
from planner.sites.file_values import clock_time
from planner.sites.raw import level_problem, number_in, table_in, tables_in
from planner.sites.wording import field_path, shown
from planner.units import LengthUnit, metres_from
from planner.words import say

# The largest known tide, in the Bay of Fundy, runs 8 to 9 m either side of its mean (common
# knowledge); amplitudes that add up to more than this are feet, centimetres or a slip.
MAX_TOTAL_AMPLITUDE_M = 12.0
MAX_LEVEL_M = 30.0

# Datums that are averages or extremes of low waters, so that the constants bound the mean level.
LOW_WATER_DATUMS = frozenset({"MLLW", "MLW", "LAT"})
# Weather and the years since the datum was fixed move the mean level by less than this.
LEVEL_SLACK_M = 0.15

# A tide twice a day rises, and falls, for about six hours: moved further against high water,
# low water would come after the next one.
MAX_MINUTES_APART = 360


def water_problems(water: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    """Yield what does not make sense in the table [water], heights in the unit."""
    yield from _source_of_tide_problems(water)
    yield from _constituent_problems(water.get("constituents"))
    yield from _water_level_problems(water, unit)
    yield from _offset_problems(table_in(water.get("offsets")), unit)


def _source_of_tide_problems(water: Mapping[str, Any]) -> Iterator[Problem]:
    if not water:
        return
    has_constituents, has_offsets = "constituents" in water, "offsets" in water
    if has_constituents and has_offsets:
        yield Problem(
            "water",
            say("constituents and offsets"),
            say("the tide is given twice"),
            say("keep either [water.constituents] or [water.offsets]"),
        )
    elif not has_constituents and not has_offsets:
        yield Problem(
            "water",
            "",
            say("nothing says what the tide is made of"),
            say("add [water.constituents], or [water.offsets] from another place"),
        )
    if has_constituents and "mean_level" not in water:
        yield Problem(
            "water.mean_level",
            "",
            say("is missing"),
            say("give the mean water level above the datum, such as 0.26"),
        )


def _constituent_problems(entries: Any) -> Iterator[Problem]:
    if not isinstance(entries, dict):
        return
    steps = ("water", "constituents")
    written_as: dict[str, str] = {}
    for name in entries:
        try:
            canonical = constituents.canonical(name)
        except constituents.UnknownConstituent:
            near = constituents.near_names(name[:40])
            hint = say("did you mean {near}? ", near=say(" or ").join(near)) if near else ""
            yield Problem(
                field_path((*steps, name)),
                "",
                say("is not a constituent this program knows"),
                say("{hint}correct the name or take the line out", hint=hint),
            )
            continue
        if canonical in written_as:
            yield Problem(
                field_path((*steps, name)),
                "",
                say("is the same constituent as {written_as}", written_as=written_as[canonical]),
                say("keep one of the two lines"),
            )
        written_as.setdefault(canonical, name)
    if all(number_in(table_in(entry).get("amplitude")) == 0 for entry in entries.values()):
        yield Problem(
            field_path(steps),
            "",
            say("there is no amplitude above zero"),
            say("add the constituents of the place"),
        )


def _water_level_problems(water: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    level = number_in(water.get("mean_level"))
    bounds_m = (-MAX_LEVEL_M, MAX_LEVEL_M)
    impossible = list(
        level_problem("water.mean_level", level, unit, bounds_m, say("the mean level"))
    )
    yield from impossible
    given = {
        name: number_in(table_in(entry).get("amplitude"))
        for name, entry in table_in(water.get("constituents")).items()
    }
    amplitudes = {
        name: abs(metres_from(value, unit)) for name, value in given.items() if value is not None
    }
    # Where one cannot be read the file model says so, and the sum would mean nothing.
    if not amplitudes or len(amplitudes) < len(given):
        return
    total_m = sum(amplitudes.values())
    if total_m > MAX_TOTAL_AMPLITUDE_M:
        yield Problem(
            "water.constituents",
            say("amplitudes adding up to {total_m:.1f} m", total_m=total_m),
            say("no tide on Earth is that large"),
            say('correct water.units (are these feet? then units = "ft") or the amplitudes'),
        )
    elif level is not None and not impossible and _is_low_water_datum(water.get("datum")):
        yield from _datum_problems(metres_from(level, unit), total_m, amplitudes.get("M2", 0.0))


def _is_low_water_datum(datum: Any) -> bool:
    return isinstance(datum, str) and datum.strip().upper() in LOW_WATER_DATUMS


def _datum_problems(level_m: float, total_m: float, m2_m: float) -> Iterator[Problem]:
    """Yield a problem when the mean level and the amplitudes cannot be in one unit.

    Mean low water lies at least about half of M2 under the mean level and never further
    under it than all amplitudes together. A mean level of exactly 0 passes: the place may
    be used for heights about the mean.
    """
    remedy = say("give mean level and amplitudes in one unit, that of water.units")
    if level_m > total_m + LEVEL_SLACK_M:
        yield Problem(
            "water.mean_level",
            say("{level_m:.2f} m", level_m=level_m),
            say(
                "the lowest tide these amplitudes can make stays {level_m:.2f} m above "
                "zero, which a low-water datum does not allow",
                level_m=level_m - total_m,
            ),
            remedy,
        )
    elif level_m != 0 and level_m < m2_m / 2 - LEVEL_SLACK_M / 3:
        yield Problem(
            "water.mean_level",
            say("{level_m:.2f} m", level_m=level_m),
            say("is too low for a low-water datum and an M2 amplitude of {m2_m:.2f} m", m2_m=m2_m),
            remedy,
        )


def _offset_problems(offsets: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    for key in ("high_add", "low_add"):
        where = f"water.offsets.{key}"
        yield from level_problem(where, offsets.get(key), unit, (-10.0, 10.0), say("a difference"))
    if "tabled" in offsets:
        yield from _tabled_problems(offsets)
        return
    for key, example in (("high_minutes", 47), ("low_minutes", 62)):
        if offsets and key not in offsets:
            remedy = say("give the minutes added to the times, such as {example}", example=example)
            yield Problem(f"water.offsets.{key}", "", say("is missing"), remedy)
    high, low = (number_in(offsets.get(key)) for key in ("high_minutes", "low_minutes"))
    if high is not None and low is not None and abs(high - low) > MAX_MINUTES_APART:
        yield Problem(
            "water.offsets.low_minutes",
            f"{low:g}",
            say(
                "differs from high_minutes by {hours:.0f} h, which leaves no tide",
                hours=abs(high - low) / 60,
            ),
            say("check the signs: later is positive, earlier negative"),
        )


def _tabled_problems(offsets: Mapping[str, Any]) -> Iterator[Problem]:
    """Yield what is wrong between the columns of tabled differences."""
    plain = sorted(set(offsets) - {"reference", "tabled"})
    if plain:
        yield Problem(
            f"water.offsets.{plain[0]}",
            shown(offsets[plain[0]]),
            say("is given beside tabled differences, which take its place"),
            say("keep one of the two"),
        )
    tabled = table_in(offsets["tabled"])
    for key, step in (("high_times", "at"), ("low_times", "at")):
        clocks = [clock_time(column.get(step)) for column in tables_in(tabled.get(key))]
        hours = {(each.hour % 12, each.minute) for each in clocks if each is not None}
        if len(clocks) == 2 and None not in clocks and len(hours) == 1:
            yield Problem(
                f"water.offsets.tabled.{key}",
                ", ".join(f"{each:%H:%M}" for each in clocks if each is not None),
                say("both columns hold at the same times, twelve hours apart"),
                say("give two times of day such as 00:00 and 06:00"),
            )
    for key in ("high_heights", "low_heights"):
        there = [number_in(column.get("there")) for column in tables_in(tabled.get(key))]
        if len(there) == 2 and None not in there and there[0] == there[1]:
            yield Problem(
                f"water.offsets.tabled.{key}",
                f"{there[0]:g}",
                say("both columns are for the same height"),
                say("give the heights of mean springs and of mean neaps at the reference place"),
            )
