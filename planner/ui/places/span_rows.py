"""High and low waters of any span, found year by year so that it can be stopped; no Qt here."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from pathlib import Path
from typing import Final

import numpy as np

from planner.clock import from_utc64, local_midnight
from planner.errors import PlannerError
from planner.phrasing import Style, clock_text, day_text, height_text, zone_text
from planner.sites.site import Site
from planner.tides import Tide, Turns
from planner.units import metres_to
from planner.whole_file import write_whole
from planner.words import counted, say

Advance = Callable[[float], None]  # told the share that is done; raises Cancelled to stop
_PART: Final = timedelta(days=366)
_ROWS_A_PART: Final = 2000


@dataclass(frozen=True)
class SpanTurns:
    """Every high and low water of some local days, both included."""

    site: Site
    first: date
    last: date
    turns: Turns


def span_turns(site: Site, first: date, last: date, advance: Advance) -> SpanTurns:
    """Return the high and low waters of local days; a century takes some seconds.

    PlannerError where the days are in the wrong order; RangeError outside 1900 to 2100.
    """
    if last < first:
        raise PlannerError(
            say("The last day, {last}, is before the first, {first}.", last=last, first=first)
        )
    tide = Tide(site)
    edges = [first + k * _PART for k in range(-(-((last - first).days + 1) // _PART.days))]
    begins = [local_midnight(day, site.zone) for day in (*edges, last + timedelta(days=1))]
    parts = []
    for done, (begin, end) in enumerate(pairwise(begins)):
        advance(done / len(edges))
        parts.append(tide.turns(begin, end))
    return SpanTurns(
        site,
        first,
        last,
        Turns(
            np.concatenate([each.times for each in parts]),
            np.concatenate([each.heights for each in parts]),
            np.concatenate([each.is_high for each in parts]),
        ),
    )


def turn_row(found: SpanTurns, at: int, style: Style) -> tuple[str, str, str]:
    """Return one water: when on the clock of the place, which, how high."""
    zone, instant = found.site.zone, from_utc64(found.turns.times[at])
    day = instant.astimezone(zone).date()
    clock = f"{clock_text(instant, zone, style)} {zone_text(instant, zone)}"
    kind = say("high") if found.turns.is_high[at] else say("low")
    return (
        f"{day_text(day)} {day.year} {clock}",
        kind,
        height_text(float(found.turns.heights[at]), style),
    )


def span_texts(found: SpanTurns, style: Style) -> Iterator[str]:
    """Yield how many waters there are, and the highest and lowest of them."""
    turns = found.turns
    days = (found.last - found.first).days + 1
    highs = int(turns.is_high.sum())
    if not len(turns.times):
        yield say("No high or low water in {days}.", days=counted(days, "day"))
        return
    yield say(
        "{highs} and {lows} in {days}.",
        highs=counted(highs, "high water"),
        lows=counted(len(turns.times) - highs, "low water"),
        days=counted(days, "day"),
    )
    for words, at in (
        (say("Highest"), int(turns.heights.argmax())),
        (say("Lowest"), int(turns.heights.argmin())),
    ):
        when, _, height = turn_row(found, at, style)
        yield say("{which}: {height}, {when}.", which=words, height=height, when=when)


def write_turns(path: Path, found: SpanTurns, style: Style, advance: Advance) -> None:
    """Write the waters as CSV, whole or not at all: UTC, the place's clock, height, kind."""
    unit, zone, turns = style.length, found.site.zone, found.turns
    buffer = io.StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")  # as RFC 4180 has it
    writer.writerow(["time", "local_time", f"height_{unit}", "kind"])
    for at, time in enumerate(turns.times):
        if at % _ROWS_A_PART == 0:
            advance(at / len(turns.times))
        instant = from_utc64(time)
        writer.writerow(
            [
                instant.strftime("%Y-%m-%dT%H:%M:%SZ"),
                instant.astimezone(zone).isoformat(timespec="seconds"),
                # For programs: a decimal point in every language.
                format(metres_to(float(turns.heights[at]), unit), ".3f"),
                "high" if turns.is_high[at] else "low",
            ]
        )
    write_whole(path, buffer.getvalue().encode("utf-8"))
