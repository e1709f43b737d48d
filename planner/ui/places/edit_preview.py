"""What an edited place would be: its month of water, beside the old one, and its checks; no Qt."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from typing import Final

import numpy as np

from planner.clock import Instants, from_utc64, local_midnight
from planner.errors import InputError, PlannerError, Problem
from planner.estimates import Floats
from planner.phrasing import Style, day_clock_text, height_text, zone_text
from planner.sites.editing import Wanted, changed_fields, edited, site_of_text
from planner.sites.site import Site
from planner.tides import Tide, Turns
from planner.tides.checks import ObservedTurns, WaterCheck, check_water, read_observed_turns
from planner.tides.summary import type_text
from planner.ui.places.observed_rows import seen_file
from planner.words import say

MONTH_DAYS: Final = 30
_STEP: Final = timedelta(minutes=10)
_FIRST: Final = 4  # a day's high and low waters


@dataclass(frozen=True)
class MonthWater:
    """Thirty days of a place's water from a local day on."""

    site: Site
    times: Instants
    levels_m: Floats
    turns: Turns


@dataclass(frozen=True)
class Preview:
    """An edit as it stands.

    text: the whole edited file. changed: what differs from the saved one, in words. problems:
    why it cannot be saved. month, before: the water as edited and as saved, None where there
    is none. seen: what the user saw, in the month or not.
    """

    text: str
    changed: tuple[str, ...]
    problems: tuple[Problem, ...] = ()
    month: MonthWater | None = None
    before: MonthWater | None = None
    seen: ObservedTurns | None = None


def preview(saved: str, wanted: Wanted, path: Path, today: date) -> Preview:
    """Return what the edit would be; takes a few milliseconds.

    SiteError when the saved text itself cannot be edited.
    """
    text = edited(saved, wanted)
    changed = changed_fields(saved, text)
    try:
        site = site_of_text(text, path)
    except InputError as error:
        return Preview(text, changed, error.problems)
    old = _site_or_none(saved, path)
    seen = seen_at(old or site)
    begin = month_begin(site, today, seen)
    try:
        return Preview(
            text,
            changed,
            month=month_water(site, begin),
            before=month_water(old, begin) if old is not None and changed else None,
            seen=seen,
        )
    except PlannerError as error:
        problem = Problem("water", "", str(error).rstrip("."), say("choose another day"))
        return Preview(text, changed, (problem,))


def check(site: Site, seen: ObservedTurns | None) -> WaterCheck:
    """Return every check of an edited place; takes about a second."""
    return check_water(site, seen)


def same_water(one: Preview, other: Preview) -> bool:
    """Tell whether two edits have the same checks: only names, spots and the like differ."""
    if one.month is None or other.month is None:
        return False
    here, there = (
        (each.water, each.latitude_deg, each.longitude_deg, each.zone.key)
        for each in (one.month.site, other.month.site)
    )
    return here == there and _same_seen(one.seen, other.seen)


def _same_seen(one: ObservedTurns | None, other: ObservedTurns | None) -> bool:
    if one is None or other is None:
        return one is other
    return (
        np.array_equal(one.times, other.times)
        and np.array_equal(one.heights_m, other.heights_m, equal_nan=True)
        and np.array_equal(one.is_high, other.is_high)
    )


def month_water(site: Site, begin: date) -> MonthWater:
    """Return thirty days of water from a local day on; RangeError outside the years known."""
    tide = Tide(site)
    first = local_midnight(begin, site.zone)
    last = local_midnight(begin + timedelta(days=MONTH_DAYS), site.zone)
    times, levels = tide.series(first, last, _STEP)
    return MonthWater(site, times, levels, tide.turns(first, last))


def month_begin(site: Site, today: date, seen: ObservedTurns | None) -> date:
    """Return the first day to show: today, or earlier so that the latest waters seen are there."""
    if seen is None or not len(seen.times):
        return today
    latest = seen.times.max()
    recent = seen.times[seen.times > latest - np.timedelta64(MONTH_DAYS - 2, "D")]
    first = from_utc64(recent.min()).astimezone(site.zone).date() - timedelta(days=1)
    last = from_utc64(latest).astimezone(site.zone).date()
    inside = today <= first and last < today + timedelta(days=MONTH_DAYS)
    return today if inside else first


def seen_at(site: Site) -> ObservedTurns | None:
    """Return the waters kept for a place, None where there are none that can be read."""
    path = seen_file(site.name)
    if not path.exists():
        return None
    try:
        found = read_observed_turns(path, site.zone, site.water.file_units)
    except InputError:
        return None  # the table they are typed in says what is wrong with them
    return found if len(found.times) else None


def _site_or_none(text: str, path: Path) -> Site | None:
    try:
        return site_of_text(text, path)
    except InputError:
        return None


def next_turns_text(month: MonthWater, style: Style) -> str:
    """Return the first high and low waters of the month, to hold against another table."""
    zone, turns = month.site.zone, month.turns
    first = [
        say(
            "{kind} {when} {clock} ({height})",
            kind=say("high") if high else say("low"),
            when=day_clock_text(from_utc64(at), zone, style),
            clock=zone_text(from_utc64(at), zone),
            height=height_text(float(height), style),
        )
        for at, height, high in zip(
            turns.times[:_FIRST], turns.heights[:_FIRST], turns.is_high[:_FIRST], strict=True
        )
    ]
    if not first:
        return ""
    return say(
        "First waters: {first}. Compare them with the agency's own table: hours apart means "
        "a wrong clock of the lags, heights of a third or of three times a wrong unit.",
        first=", ".join(first),
    )


def check_texts(found: WaterCheck, style: Style) -> Iterator[str]:
    """Yield the kind of tide, its range and its extremes, in words."""
    summary = found.summary
    if summary is None:
        yield say("The water never turns here.")
        return
    yield say("Tide: {kind}.", kind=type_text(summary))
    yield say(
        "Range {mean} on average, springs {springs}, neaps {neaps}.",
        mean=height_text(summary.mean_range_m, style),
        springs=height_text(summary.springs_range_m, style),
        neaps=height_text(summary.neaps_range_m, style),
    )
    yield say(
        "Highest {highest}, lowest {lowest} in the 19 years from {first_year}.",
        highest=height_text(summary.highest_m, style),
        lowest=height_text(summary.lowest_m, style),
        first_year=summary.first_year,
    )
