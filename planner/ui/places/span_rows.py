"""What the water does in any span, found year by year so that it can be stopped; no Qt here."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import pairwise
from pathlib import Path
from typing import Final

from planner.clock import from_utc64, local_midnight
from planner.errors import PlannerError
from planner.phrasing import (
    Style,
    clock_text,
    day_text,
    height_text,
    shown_day,
    zone_text,
)
from planner.sites.site import Site
from planner.tides import Tide
from planner.tides.events import Events, Kind, events, joined, kind_text, lags_text
from planner.units import LengthUnit, metres_to
from planner.whole_file import write_whole
from planner.words import counted, say

Advance = Callable[[float], None]  # told the share that is done; raises Cancelled to stop
_PART: Final = timedelta(days=366)
_ROWS_A_PART: Final = 2000


@dataclass(frozen=True)
class SpanWater:
    """High and low waters, the ramp's hours and slack of some local days, both included.

    ramp_at_first: whether the ramp works when the first day begins; None where a place has
    no lowest level.
    """

    site: Site
    first: date
    last: date
    events: Events
    ramp_at_first: bool | None

    def only(self, *, ramp: bool, slack: bool) -> SpanWater:
        """Return the same with the ramp's hours and with slack, or without."""
        return replace(self, events=self.events.only(ramp=ramp, slack=slack))


def span_water(site: Site, first: date, last: date, advance: Advance) -> SpanWater:
    """Return what the water does on local days; a century takes some seconds.

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
        parts.append(events(tide, begin, end))
    level_m = site.lowest_ramp_level_m
    works = None if level_m is None else bool(tide.heights([begins[0]])[0] >= level_m)
    return SpanWater(site, first, last, joined(parts), works)


def event_row(found: SpanWater, at: int, style: Style) -> tuple[str, str, str]:
    """Return one event: when on the clock of the place, how high ("" for slack), what it is."""
    zone, instant = found.site.zone, from_utc64(found.events.times[at])
    day = shown_day(instant, zone)
    clock = f"{clock_text(instant, zone, style)} {zone_text(instant, zone)}"
    height_m = float(found.events.heights[at])
    return (
        f"{day_text(day)} {day.year} {clock}",
        "" if math.isnan(height_m) else height_text(height_m, style),
        kind_text(Kind(found.events.kinds[at]), found.site.slack),
    )


def span_texts(found: SpanWater, style: Style) -> Iterator[str]:
    """Yield how many waters there are, the highest and lowest of them, and what else to know."""
    turns = found.only(ramp=False, slack=False)
    days = (found.last - found.first).days + 1
    highs = int((turns.events.kinds == Kind.HIGH).sum())
    count = len(turns.events.times)
    if count:
        yield say(
            "{highs} and {lows} in {days}.",
            highs=counted(highs, "high water"),
            lows=counted(count - highs, "low water"),
            days=counted(days, "day"),
        )
        for words, at in (
            (say("Highest"), int(turns.events.heights.argmax())),
            (say("Lowest"), int(turns.events.heights.argmin())),
        ):
            when, height, _ = event_row(turns, at, style)
            yield say("{which}: {height}, {when}.", which=words, height=height, when=when)
    else:
        yield say("No high or low water in {days}.", days=counted(days, "day"))


def ramp_span_text(found: SpanWater, style: Style) -> str:
    """Return what the ramp does where nothing in the span changes it, else ""."""
    level_m, kinds = found.site.lowest_ramp_level_m, found.events.kinds
    changes = (kinds == Kind.RAMP_BEGINS) | (kinds == Kind.RAMP_ENDS)
    if level_m is None or changes.any():
        return ""
    level = height_text(level_m, style)
    if found.ramp_at_first:
        return say("The ramp works down to {level}: at any hour of these days.", level=level)
    return say("The ramp works down to {level}: at no hour of these days.", level=level)


def slack_span_text(found: SpanWater) -> str:
    """Return how slack was estimated, "" where the place has no lags."""
    lags = found.site.slack
    return "" if lags is None else say("Slack {when}.", when=lags_text(lags))


def write_events(path: Path, found: SpanWater, style: Style, advance: Advance) -> None:
    """Write the rows as CSV, whole or not at all: UTC, the place's clock, height, kind."""
    unit, zone, rows = style.length, found.site.zone, found.events
    buffer = io.StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")  # as RFC 4180 has it
    writer.writerow(["time", "local_time", f"height_{unit}", "kind"])
    for at, time in enumerate(rows.times):
        if at % _ROWS_A_PART == 0:
            advance(at / len(rows.times))
        instant = from_utc64(time)
        writer.writerow(
            [
                instant.strftime("%Y-%m-%dT%H:%M:%SZ"),
                instant.astimezone(zone).isoformat(timespec="seconds"),
                _plain_height(float(rows.heights[at]), unit),
                Kind(rows.kinds[at]).name.lower(),
            ]
        )
    write_whole(path, buffer.getvalue().encode("utf-8"))


def _plain_height(height_m: float, unit: LengthUnit) -> str:
    # For programs: a decimal point in every language, nothing where there is no height.
    return "" if math.isnan(height_m) else format(metres_to(height_m, unit), ".3f")
