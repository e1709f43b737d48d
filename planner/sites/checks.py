"""What must hold between the values of a place file, and against the real world.

The checks read the raw tables, so that they also speak when the file model has refused
other fields; a value of the wrong type is left to the file model.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import UTC, date, datetime
from statistics import fmean
from typing import Any

from planner.assets import resource
from planner.errors import Problem
from planner.sites.file_values import clock_time
from planner.sites.positions import distance_km
from planner.sites.raw import level_problem, number_in, table_in, tables_in
from planner.sites.water_checks import MAX_LEVEL_M, water_problems
from planner.sites.wording import near_words, shown
from planner.sites.zones import load_zone
from planner.units import LengthUnit
from planner.words import say

DEPTHS_M = (-10.0, 200.0)  # a drying bank, and more line than a small boat carries
# Crab traps stand 0.2 to 0.7 m high (common practice); lower is a height in the wrong unit.
TRAP_HEIGHTS_M = (0.05, 1.5)
MAX_COVER_MARGIN_M = 10.0
# Further than a small boat goes to its traps in a day; a wrong sign is hundreds of kilometres.
MAX_SPOT_KM = 150.0

# Nearer to the equator monsoons can make the water coldest in summer (from memory).
SEASONS_FROM_DEG = 25.0
SEASONS_SLACK_C = 3.0

# No civil clock is further than about four hours from the sun.
MAX_HOURS_FROM_SUN = 6.0


def sense_problems(tables: Mapping[str, Any]) -> list[Problem]:
    """Return what does not make sense in the tables of a place file."""
    water = table_in(tables.get("water"))
    unit: LengthUnit = "ft" if water.get("units") == "ft" else "m"
    return [
        *_position_problems(tables),
        *water_problems(water, unit),
        *_ramp_problems(table_in(tables.get("ramp")), unit),
        *_slack_problems(tables.get("slack")),
        *_spot_problems(tables.get("spots"), unit),
        *_spot_position_problems(tables),
        *_season_problems(tables),
        *_closure_problems(tables.get("closures")),
        *_free_problems(table_in(tables.get("free"))),
        *_trip_problems(table_in(tables.get("trip")), table_in(tables.get("rules")), unit),
        *_species_problems(tables.get("species")),
    ]


def _position_problems(tables: Mapping[str, Any]) -> Iterator[Problem]:
    longitude, key = number_in(tables.get("longitude")), tables.get("timezone")
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
            say("is {apart:.0f} hours from the clock of {key}", apart=apart, key=key),
            say("correct one of them; west longitudes are negative"),
        )


def _ramp_problems(ramp: Mapping[str, Any], unit: LengthUnit) -> Iterator[Problem]:
    yield from level_problem(
        "ramp.lowest_level",
        ramp.get("lowest_level"),
        unit,
        (-MAX_LEVEL_M, MAX_LEVEL_M),
        say("the lowest level"),
    )


def _slack_problems(slack: Any) -> Iterator[Problem]:
    if slack == {}:
        yield Problem(
            "slack",
            "",
            say("does not say when"),
            say("give after_high_minutes, after_low_minutes or both, or take the table out"),
        )


def _spot_problems(value: Any, unit: LengthUnit) -> Iterator[Problem]:
    seen: dict[str, int] = {}
    for number, spot in enumerate(tables_in(value), start=1):
        where = f"spots[{number}]"
        name = spot.get("name")
        if isinstance(name, str):
            first = seen.setdefault(name.strip().casefold(), number)
            if first != number:
                yield Problem(
                    f"{where}.name",
                    shown(name),
                    say("is also the name of spot {first}", first=first),
                    say("rename one"),
                )
        yield from level_problem(
            f"{where}.depth", spot.get("depth"), unit, DEPTHS_M, say("a depth")
        )
        yield from level_problem(
            f"{where}.trap_height",
            spot.get("trap_height"),
            unit,
            TRAP_HEIGHTS_M,
            say("a trap's height"),
        )
        given = [key for key in ("latitude", "longitude") if spot.get(key) is not None]
        if len(given) == 1:
            lacking = "longitude" if given == ["latitude"] else "latitude"
            yield Problem(
                f"{where}.{lacking}",
                "nothing",
                say("is missing beside {given}", given=given[0]),
                say("give both in degrees, or neither"),
            )


def _spot_position_problems(tables: Mapping[str, Any]) -> Iterator[Problem]:
    here = _position_of(tables)
    for number, spot in enumerate(tables_in(tables.get("spots")), start=1):
        there = _position_of(spot)
        if here is None or there is None:
            continue
        km = distance_km(here, there)
        if km > MAX_SPOT_KM:
            yield Problem(
                f"spots[{number}]",
                say(
                    "latitude {latitude:g}, longitude {longitude:g}",
                    latitude=there[0],
                    longitude=there[1],
                ),
                say("lies {km:.0f} km from the place", km=km),
                say("correct the position; west longitudes and south latitudes are negative"),
            )


def _position_of(table: Mapping[str, Any]) -> tuple[float, float] | None:
    """Return (latitude, longitude) in degrees, None where either is no possible number."""
    latitude, longitude = number_in(table.get("latitude")), number_in(table.get("longitude"))
    if latitude is None or longitude is None or abs(latitude) > 90 or abs(longitude) > 180:
        return None
    return latitude, longitude


def _season_problems(tables: Mapping[str, Any]) -> Iterator[Problem]:
    """Yield a problem when the water is warm in the winter of its latitude."""
    latitude = number_in(tables.get("latitude"))
    monthly = table_in(tables.get("temperature")).get("monthly")
    values = [number_in(each) for each in monthly] if isinstance(monthly, list) else []
    known = [each for each in values if each is not None]
    if latitude is None or not SEASONS_FROM_DEG <= abs(latitude) <= 90 or len(known) != 12:
        return
    first, third = fmean(known[:3]), fmean(known[6:9])
    warmer = third - first if latitude > 0 else first - third
    if warmer < -SEASONS_SLACK_C:
        yield Problem(
            "temperature.monthly",
            say(
                "{first:.0f} in January to March, {third:.0f} in July to September",
                first=first,
                third=third,
            ),
            say("the water is warm in the winter of latitude {latitude:g}", latitude=latitude),
            say("begin with January, or correct the latitude; south is negative"),
        )


def _closure_problems(value: Any) -> Iterator[Problem]:
    for number, closure in enumerate(tables_in(value), start=1):
        where = f"closures[{number}]"
        first, last = closure.get("from"), closure.get("to")
        if (first is None) != (last is None):
            given, lacking = ("from", "to") if last is None else ("to", "from")
            yield Problem(
                f"{where}.{lacking}",
                "",
                say("is missing beside {given}", given=given),
                say("give both ends of the period"),
            )
        elif first is None and not closure.get("weekdays"):
            yield Problem(
                where,
                "",
                say("does not say when"),
                say("give from and to, or weekdays, or all of them"),
            )
        elif first is not None and isinstance(first, str) != isinstance(last, str):
            yield Problem(
                where,
                say("{first} to {last}", first=shown(first), last=shown(last)),
                say("mixes a date with a day of every year"),
                say('write both like 2026-02-11, or both like "02-11"'),
            )
        elif type(first) is date and type(last) is date and first > last:
            yield Problem(
                where,
                say("{first} to {last}", first=first, last=last),
                say("ends before it begins"),
                say("exchange from and to"),
            )


def _free_problems(free: Mapping[str, Any]) -> Iterator[Problem]:
    if free.get("weekdays") == [] and not free.get("also"):
        yield Problem(
            "free.weekdays",
            "[]",
            say("leaves no day free"),
            say('give days such as ["Fri", "Sat", "Sun"], or dates in also'),
        )
    earliest, latest = clock_time(free.get("from")), clock_time(free.get("to"))
    if earliest is not None and latest is not None and earliest >= latest:
        yield Problem(
            "free.to",
            f"{latest:%H:%M}",
            say("is not after from ({earliest:%H:%M})", earliest=earliest),
            say("give the hours of one day, such as 05:30 to 20:30"),
        )


def _trip_problems(
    trip: Mapping[str, Any], rules: Mapping[str, Any], unit: LengthUnit
) -> Iterator[Problem]:
    soak = trip.get("soak_hours")
    shortest, longest = (
        (number_in(soak[0]), number_in(soak[1]))
        if isinstance(soak, list) and len(soak) == 2
        else (None, None)
    )
    if shortest is not None and longest is not None and shortest > longest:
        yield Problem(
            "trip.soak_hours",
            f"[{shortest:g}, {longest:g}]",
            say("the shortest soak is longer than the longest"),
            say("exchange the two"),
        )
    allowed = number_in(rules.get("max_soak_hours"))
    if shortest is not None and allowed is not None and shortest > allowed:
        yield Problem(
            "trip.soak_hours",
            f"[{shortest:g}, ...]",
            say(
                "the shortest soak is over the {allowed:g} hours that rules.max_soak_hours allows",
                allowed=allowed,
            ),
            say("shorten it, or check the rule"),
        )
    traps, most = number_in(trip.get("traps")), number_in(rules.get("max_traps"))
    if traps is not None and most is not None and traps > most:
        yield Problem(
            "trip.traps",
            f"{traps:g}",
            say("is more than the {most:g} that rules.max_traps allows", most=most),
            say("set fewer traps, or check the rule"),
        )
    yield from level_problem(
        "trip.cover_margin",
        trip.get("cover_margin"),
        unit,
        (0.0, MAX_COVER_MARGIN_M),
        say("the margin"),
    )


def _species_problems(species: Any) -> Iterator[Problem]:
    known = sorted(path.stem for path in resource("species").glob("*.toml"))
    if not isinstance(species, str) or not known or species.strip() in known:
        return
    near = near_words(species.strip(), known)
    hint = (
        say("did you mean {near}?", near=say(" or ").join(near))
        if near
        else say("give one of {known}", known=", ".join(known))
    )
    yield Problem("species", shown(species), say("there is no profile of that name"), hint)
