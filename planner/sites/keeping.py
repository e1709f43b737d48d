"""Putting files into the user's place book: a copy of a sample, or a new place to fill in.

Nothing that is there is ever written over.
"""

from __future__ import annotations

import itertools
import json
import math
import re
import unicodedata
from pathlib import Path
from typing import Final

from planner.assets import sample_sites
from planner.errors import Problem
from planner.sites.book import user_places
from planner.sites.file_values import LONGEST_NAME
from planner.sites.positions import distance_km
from planner.sites.reading import SiteError, read_tables, read_top
from planner.sites.saving import read_text, write_whole
from planner.sites.zones import load_zone, near_zones
from planner.words import say

_TEMPLATE: Final = """\
# {plain_name}: fill in what you know, save, and choose "Read again" in the place book.
# Lines that begin with # are remarks. docs/place-file.md explains every table.
format = 1
name = {name}
latitude = {latitude}            # degrees, north positive
longitude = {longitude}          # degrees, east positive
timezone = {zone}

[water]
units = "m"                     # of every height in this file: "m" or "ft"
datum = "MLLW"                  # what zero means: the zero of your chart and of the constants
source = ""                     # where the constants or offsets come from

# EITHER the constants of a station here, as its agency lists them. Take the # away:
# mean_level = 0.62             # mean water level above the zero
# phase_reference = "UTC"       # the clock of the phase lags, often UTC or local standard time
# constants_state = "2026"      # when the agency issued them
# [water.constituents]          # amplitude in units, phase lag in degrees
# M2 = {{ amplitude = 0.40, phase = 74.0 }}
# S2 = {{ amplitude = 0.14, phase = 95.0 }}

# OR how much later and higher the water comes here than at another place of the book:
# [water.offsets]
# reference = {reference}       # {reference_note}
# high_minutes = 40             # later than there; negative is earlier
# low_minutes = 55
# high_factor = 0.90            # heights there times this
# low_factor = 0.90

# [ramp]
# lowest_level = 0.1            # below this level the boat cannot launch

# [slack]                       # how long after a turn the current rests, as you watched it
# after_high_minutes = 40       # negative is before
# after_low_minutes = 25

# [[spots]]
# name = "grass edge"
# depth = 1.5                   # charted: below the zero of [water]
# trap_height = 0.35

# [temperature]
# monthly = {monthly}   # water, degrees C, January first

# [rules]
# checked = 2026-01-31          # when you last checked them with the agency
# where = "the agency's page"
"""
# An example of twelve months, January first; in the south its summer is that of the south.
_NORTHERN_C: Final = [4, 4, 7, 13, 19, 24, 27, 26, 23, 17, 11, 6]


def copy_to_own(path: Path) -> Path:
    """Copy a place file into the user's places, byte for byte, and return the copy.

    SiteError when a file of that name is there already or the folder cannot be written.
    """
    return _write(user_places() / path.name, read_text(path))


def new_place(name: str, latitude_deg: float, longitude_deg: float, zone: str) -> Path:
    """Write the file of a new place, its water still to fill in, and return it.

    SiteError, with every problem, when a value cannot be (a coordinate that is no number is
    NaN) or the file cannot be written.
    """
    name = name.strip()
    problems = [*_name_problems(name), *_position_problems(latitude_deg, longitude_deg)]
    try:
        load_zone(zone)
    except KeyError:
        near = near_zones(zone)
        hint = say("did you mean {near}? ", near=say(" or ").join(near)) if near else ""
        remedy = say("{hint}give its full name, such as America/New_York", hint=hint)
        problems.append(Problem(say("time zone"), zone, say("is not a known time zone"), remedy))
    if problems:
        raise SiteError(say("new place"), problems)
    reference, note = _nearest_sample(latitude_deg, longitude_deg)
    text = _TEMPLATE.format(
        plain_name=name,
        name=json.dumps(name, ensure_ascii=False),
        latitude=latitude_deg,
        longitude=longitude_deg,
        zone=json.dumps(zone),
        reference=json.dumps(reference),
        reference_note=note,
        monthly=_NORTHERN_C if latitude_deg >= 0 else _NORTHERN_C[6:] + _NORTHERN_C[:6],
    )
    return _write(_file_for(name), text)


def _file_for(name: str) -> Path:
    """Return the file for a new place: numbered where another place has the plain one."""
    stem = file_stem(name)
    files = (f"{stem}{'' if number == 1 else f'-{number}'}.toml" for number in itertools.count(1))
    paths = (user_places() / file for file in files)
    return next(path for path in paths if not path.exists() or _name_in(path) in (name, None))


def _name_in(path: Path) -> object:
    """Return the name that a place file gives, None where it cannot be read."""
    try:
        return read_top(path).get("name")
    except SiteError:
        return None


def file_stem(name: str) -> str:
    """Return a file name for a place, in small letters, digits and hyphens."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:60] or "place"


def _nearest_sample(latitude_deg: float, longitude_deg: float) -> tuple[str, str]:
    """Return the file of the nearest published station, and a remark on how far it is."""
    found = []
    for path in sorted(sample_sites().glob("*.toml")):
        tables = read_tables(path)
        if not tables.get("invented"):
            there = (float(tables["latitude"]), float(tables["longitude"]))
            found.append((distance_km((latitude_deg, longitude_deg), there), path.name))
    km, name = min(found)
    return name, say("the nearest sample, {km:.0f} km away; or a file beside this one", km=km)


def _name_problems(name: str) -> list[Problem]:
    remedy = say(
        "give a name of 1 to {longest_name} ordinary characters", longest_name=LONGEST_NAME
    )
    if not name:
        return [Problem("name", "", say("is missing"), remedy)]
    if len(name) > LONGEST_NAME or not name.isprintable():
        return [Problem("name", name[:60], say("cannot be used as a name"), remedy)]
    return []


def _position_problems(latitude_deg: float, longitude_deg: float) -> list[Problem]:
    return [
        Problem(
            where,
            "" if math.isnan(value) else f"{value:g}",
            say("must be from {least} to {most}", least=-most, most=most),
            remedy,
        )
        for where, value, most, remedy in (
            ("latitude", latitude_deg, 90, say("give degrees, north positive, such as 38.2")),
            ("longitude", longitude_deg, 180, say("give degrees, east positive, such as -76.1")),
        )
        if not -most <= value <= most
    ]


def _write(path: Path, text: str) -> Path:
    if path.exists():
        problem = Problem(
            "file",
            path.name,
            say("your places already hold a file of that name"),
            say("open that one, or rename it first; nothing was written over"),
        )
        raise SiteError(str(path), [problem])
    write_whole(path, text)
    return path
