"""What must hold between the values of a place file, and against the real world.

The checks read the raw tables, so that they also speak when the file model has refused
other fields; a value of the wrong type is left to the file model.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from datetime import UTC, date, datetime
from typing import Any

from planner import constituents
from planner.assets import resource
from planner.errors import Problem
from planner.sites.file_model import clock_time
from planner.sites.wording import field_path, near_words, shown
from planner.sites.zones import load_zone
from planner.units import LengthUnit, metres_from

# The largest known tide, in the Bay of Fundy, runs 8 to 9 m either side of its mean (common
# knowledge); amplitudes that add up to more than this are feet, centimetres or a slip.
MAX_TOTAL_AMPLITUDE_M = 12.0
MAX_LEVEL_M = 30.0
DEPTHS_M = (-10.0, 200.0)  # a drying bank, and more line than a small boat carries
# Crab traps stand 0.2 to 0.7 m high (common practice); lower is a height in the wrong unit.
TRAP_HEIGHTS_M = (0.05, 1.5)
MAX_COVER_MARGIN_M = 10.0

# Datums that are averages or extremes of low waters, so that the constants bound the mean level.
LOW_WATER_DATUMS = frozenset({"MLLW", "MLW", "LAT"})
# Weather and the years since the datum was fixed move the mean level by less than this.
LEVEL_SLACK_M = 0.15

# No civil clock is further than about four hours from the sun.
MAX_HOURS_FROM_SUN = 6.0


def sense_problems(tables: Mapping[str, Any]) -> list[Problem]:
    """Return what does not make sense in the tables of a place file."""
    water = _table(tables.get("water"))
    unit: LengthUnit = "ft" if water.get("units") == "ft" else "m"
    return [
        *_position_problems(tables),
        *_source_of_tide_problems(water),
        *_constituent_problems(water.get("constituents")),
        *_water_level_problems(water, unit),
        *_offset_problems(_table(water.get("offsets")), unit),
        *_ramp_problems(_table(tables.get("ramp")), unit),
        *_spot_problems(tables.get("spots"), unit),
        *_closure_problems(tables.get("closures")),
        *_free_problems(_table(tables.get("free"))),
        *_trip_problems(_table(tables.get("trip")), _table(tables.get("rules")), unit),
        *_species_problems(tables.get("species")),
    ]


def _table(value: Any) -> Mapping[str, Any]:
    return value if isinstance(value, dict) else {}


def _tables(value: Any) -> list[Mapping[str, Any]]:
    return [_table(entry) for entry in value] if isinstance(value, list) else []


def _number(value: Any) -> float | None:
    """Return a finite number, None for anything else."""
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return None
    try:
        number = float(value)
    except OverflowError:
        return None
    return number if math.isfinite(number) else None


def _level_problem(
    where: str, value: Any, unit: LengthUnit, bounds_m: tuple[float, float], what: str
) -> Iterator[Problem]:
    """Yield a problem when a height is outside what is possible, in the unit of the file."""
    number = _number(value)
    if number is None:
        return
    height_m = metres_from(number, unit)
    if not bounds_m[0] <= height_m <= bounds_m[1]:
        yield Problem(
            where,
            f"{number:g} {unit}",
            f"{what} cannot be {height_m:.2f} m",
            f"give {bounds_m[0]:g} to {bounds_m[1]:g} m, or correct water.units",
        )


def _position_problems(tables: Mapping[str, Any]) -> Iterator[Problem]:
    longitude, key = _number(tables.get("longitude")), tables.get("timezone")
    if longitude is None or abs(longitude) > 180 or not isinstance(key, str):
        return
    if key.startswith("Etc/") or "/" not in key:
        return  # not the clock of a region
    try:
        offset = datetime(2026, 1, 1, tzinfo=UTC).astimezone(load_zone(key)).utcoffset()
    except KeyError:
        return
    hours = offset.total_seconds() / 3600 if offset is not None else 0.0
    apart = abs((hours - longitude / 15 + 12) % 24 - 12)
    if apart > MAX_HOURS_FROM_SUN:
        yield Problem(
            "longitude",
            f"{longitude:g}",
            f"is {apart:.0f} hours from the clock of {key}",
            "correct one of them; west longitudes are negative",
        )


def _source_of_tide_problems(water: Mapping[str, Any]) -> Iterator[Problem]:
    if not water:
        return
    has_constituents, has_offsets = "constituents" in water, "offsets" in water
    if has_constituents and has_offsets:
        yield Problem(
            "water",
            "constituents and offsets",
            "the tide is given twice",
            "keep either [water.constituents] or [water.offsets]",
        )
    elif not has_constituents and not has_offsets:
        yield Problem(
            "water",
            "",
            "nothing says what the tide is made of",
            "add [water.constituents], or [water.offsets] from another place",
        )
    if has_constituents and "mean_level" not in water:
        yield Problem(
            "water.mean_level",
            "",
            "is missing",
            "give the mean water level above the datum, such as 0.26",
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
            hint = f"did you mean {' or '.join(near)}? " if near else ""
            yield Problem(
                field_path((*steps, name)),
                "",
                "is not a constituent this program knows",
                f"{hint}correct the name or take the line out",
            )
            continue
        if canonical in written_as:
            yield Problem(
                field_path((*steps, name)),
                "",
                f"is the same constituent as {written_as[canonical]}",
                "keep one of the two lines",
            )
        written_as.setdefault(canonical, name)
    if all(_number(_table(entry).get("amplitude")) == 0 for entry in entries.values()):
        yield Problem(
            field_path(steps),
            "",
            "there is no amplitude above zero",
            "add the constituents of the place",
        )


def _water_level_problems(water: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    level = _number(water.get("mean_level"))
    bounds_m = (-MAX_LEVEL_M, MAX_LEVEL_M)
    impossible = list(_level_problem("water.mean_level", level, unit, bounds_m, "the mean level"))
    yield from impossible
    amplitudes = {
        name: abs(metres_from(_number(_table(entry).get("amplitude")) or 0.0, unit))
        for name, entry in _table(water.get("constituents")).items()
    }
    if not amplitudes:
        return
    total_m = sum(amplitudes.values())
    if total_m > MAX_TOTAL_AMPLITUDE_M:
        yield Problem(
            "water.constituents",
            f"amplitudes adding up to {total_m:.1f} m",
            "no tide on Earth is that large",
            'correct water.units (are these feet? then units = "ft") or the amplitudes',
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
    remedy = "give mean level and amplitudes in one unit, that of water.units"
    if level_m > total_m + LEVEL_SLACK_M:
        yield Problem(
            "water.mean_level",
            f"{level_m:.2f} m",
            f"the lowest tide these amplitudes can make stays {level_m - total_m:.2f} m above zero,"
            " which a low-water datum does not allow",
            remedy,
        )
    elif level_m != 0 and level_m < m2_m / 2 - LEVEL_SLACK_M / 3:
        yield Problem(
            "water.mean_level",
            f"{level_m:.2f} m",
            f"is too low for a low-water datum and an M2 amplitude of {m2_m:.2f} m",
            remedy,
        )


def _offset_problems(offsets: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    for key in ("high_add", "low_add"):
        where = f"water.offsets.{key}"
        yield from _level_problem(where, offsets.get(key), unit, (-10.0, 10.0), "a difference")
    if "tabled" in offsets:
        yield from _tabled_problems(offsets)
        return
    for key, example in (("high_minutes", 47), ("low_minutes", 62)):
        if offsets and key not in offsets:
            remedy = f"give the minutes added to the times, such as {example}"
            yield Problem(f"water.offsets.{key}", "", "is missing", remedy)


def _tabled_problems(offsets: Mapping[str, Any]) -> Iterator[Problem]:
    """Yield what is wrong between the columns of tabled differences."""
    plain = sorted(set(offsets) - {"reference", "tabled"})
    if plain:
        yield Problem(
            f"water.offsets.{plain[0]}",
            shown(offsets[plain[0]]),
            "is given beside tabled differences, which take its place",
            "keep one of the two",
        )
    tabled = _table(offsets["tabled"])
    for key, step in (("high_times", "at"), ("low_times", "at")):
        clocks = [clock_time(column.get(step)) for column in _tables(tabled.get(key))]
        hours = {(each.hour % 12, each.minute) for each in clocks if each is not None}
        if len(clocks) == 2 and None not in clocks and len(hours) == 1:
            yield Problem(
                f"water.offsets.tabled.{key}",
                ", ".join(f"{each:%H:%M}" for each in clocks if each is not None),
                "both columns hold at the same times, twelve hours apart",
                "give two times of day such as 00:00 and 06:00",
            )
    for key in ("high_heights", "low_heights"):
        there = [_number(column.get("there")) for column in _tables(tabled.get(key))]
        if len(there) == 2 and None not in there and there[0] == there[1]:
            yield Problem(
                f"water.offsets.tabled.{key}",
                f"{there[0]:g}",
                "both columns are for the same height",
                "give the heights of mean springs and of mean neaps at the reference place",
            )


def _ramp_problems(ramp: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    yield from _level_problem(
        "ramp.lowest_level",
        ramp.get("lowest_level"),
        unit,
        (-MAX_LEVEL_M, MAX_LEVEL_M),
        "the lowest level",
    )


def _spot_problems(value: Any, unit: LengthUnit) -> Iterator[Problem]:
    seen: dict[str, int] = {}
    for number, spot in enumerate(_tables(value), start=1):
        where = f"spots[{number}]"
        name = spot.get("name")
        if isinstance(name, str):
            first = seen.setdefault(name.strip().casefold(), number)
            if first != number:
                yield Problem(
                    f"{where}.name", shown(name), f"is also the name of spot {first}", "rename one"
                )
        yield from _level_problem(f"{where}.depth", spot.get("depth"), unit, DEPTHS_M, "a depth")
        yield from _level_problem(
            f"{where}.trap_height", spot.get("trap_height"), unit, TRAP_HEIGHTS_M, "a trap's height"
        )


def _closure_problems(value: Any) -> Iterator[Problem]:
    for number, closure in enumerate(_tables(value), start=1):
        where = f"closures[{number}]"
        first, last = closure.get("from"), closure.get("to")
        if (first is None) != (last is None):
            given, lacking = ("from", "to") if last is None else ("to", "from")
            yield Problem(
                f"{where}.{lacking}",
                "",
                f"is missing beside {given}",
                "give both ends of the period",
            )
        elif first is None and not closure.get("weekdays"):
            yield Problem(
                where, "", "does not say when", "give from and to, or weekdays, or all of them"
            )
        elif first is not None and isinstance(first, str) != isinstance(last, str):
            yield Problem(
                where,
                f"{shown(first)} to {shown(last)}",
                "mixes a date with a day of every year",
                'write both like 2026-02-11, or both like "02-11"',
            )
        elif type(first) is date and type(last) is date and first > last:
            yield Problem(
                where, f"{first} to {last}", "ends before it begins", "exchange from and to"
            )


def _free_problems(free: Mapping[str, Any]) -> Iterator[Problem]:
    earliest, latest = clock_time(free.get("from")), clock_time(free.get("to"))
    if earliest is not None and latest is not None and earliest >= latest:
        yield Problem(
            "free.to",
            f"{latest:%H:%M}",
            f"is not after from ({earliest:%H:%M})",
            "give the hours of one day, such as 05:30 to 20:30",
        )


def _trip_problems(
    trip: Mapping[str, Any], rules: Mapping[str, Any], unit: LengthUnit
) -> Iterator[Problem]:
    soak = trip.get("soak_hours")
    shortest, longest = (
        (_number(soak[0]), _number(soak[1]))
        if isinstance(soak, list) and len(soak) == 2
        else (None, None)
    )
    if shortest is not None and longest is not None and shortest > longest:
        yield Problem(
            "trip.soak_hours",
            f"[{shortest:g}, {longest:g}]",
            "the shortest soak is longer than the longest",
            "exchange the two",
        )
    allowed = _number(rules.get("max_soak_hours"))
    if shortest is not None and allowed is not None and shortest > allowed:
        yield Problem(
            "trip.soak_hours",
            f"[{shortest:g}, ...]",
            f"the shortest soak is over the {allowed:g} hours that rules.max_soak_hours allows",
            "shorten it, or check the rule",
        )
    traps, most = _number(trip.get("traps")), _number(rules.get("max_traps"))
    if traps is not None and most is not None and traps > most:
        yield Problem(
            "trip.traps",
            f"{traps:g}",
            f"is more than the {most:g} that rules.max_traps allows",
            "set fewer traps, or check the rule",
        )
    yield from _level_problem(
        "trip.cover_margin", trip.get("cover_margin"), unit, (0.0, MAX_COVER_MARGIN_M), "the margin"
    )


def _species_problems(species: Any) -> Iterator[Problem]:
    known = sorted(path.stem for path in resource("species").glob("*.toml"))
    if not isinstance(species, str) or not known or species.strip() in known:
        return
    near = near_words(species.strip(), known)
    hint = f"did you mean {' or '.join(near)}?" if near else f"give one of {', '.join(known)}"
    yield Problem("species", shown(species), "there is no profile of that name", hint)
