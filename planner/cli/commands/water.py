"""`fullshell water`: heights at a step, or high and low waters."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from datetime import datetime, timedelta
from itertools import groupby
from typing import TYPE_CHECKING, Any

from planner.cli.answers import Answer, Sheet, iso_all, moments, number
from planner.cli.arguments import (
    add_instants,
    add_job,
    add_place,
    heading,
    place_of,
    style_of,
    unit_of,
)
from planner.cli.spans import InstantSpan, instant_span, require_values, step
from planner.phrasing import (
    TIDE_CAUTION,
    clock_text,
    day_text,
    height_text,
    shown_day,
    zone_text,
)
from planner.sites import Site
from planner.units import metres_to
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs

_DEFAULT_DAYS = 14
_DEFAULT_STEP = timedelta(hours=1)
_TO_INCLUDED = timedelta(milliseconds=1)  # spans of the tide are half open, --to is not


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    parser = add_job(
        jobs, "water", say("Water heights at a step, or high and low waters."), _answer
    )
    add_place(parser)
    add_instants(parser, _DEFAULT_DAYS)
    how = parser.add_mutually_exclusive_group()
    how.add_argument(
        "--every",
        type=step,
        metavar="STEP",
        default=_DEFAULT_STEP,
        help=say("such as 6m, 1h or 1d (default: 1h)"),
    )
    how.add_argument("--turns", action="store_true", help=say("high and low waters instead"))


def _answer(args: Namespace) -> Answer:
    site = place_of(args)
    span = instant_span(args.start, args.stop, site.zone, _DEFAULT_DAYS)
    return _turns(args, site, span) if args.turns else _heights(args, site, span)


def _head(args: Namespace, site: Site) -> dict[str, Any]:
    return {
        "place": site.name,
        "datum": site.water.datum,
        "units": unit_of(args, site),
        "zone": site.zone.key,
    }


def _heights(args: Namespace, site: Site, span: InstantSpan) -> Answer:
    from planner.tides import Tide

    require_values(span, args.every)
    times, heights_m = Tide(site).series(span.start, span.stop + _TO_INCLUDED, args.every)
    unit = unit_of(args, site)
    heights = [number(metres_to(float(height), unit), 4) for height in heights_m]

    def data() -> dict[str, Any]:
        return {**_head(args, site), "times": iso_all(times), "heights": heights}

    def sheet() -> Sheet:
        local = _local_stamps(moments(times), site)
        return Sheet(
            ("time", "local_time", f"height_{unit}"),
            zip(iso_all(times), local, heights, strict=True),
        )

    def text() -> Iterator[str]:
        style = style_of(args, site)
        whole_minutes = not (span.start.second or args.every % timedelta(minutes=1))
        clock = "%H:%M" if whole_minutes else "%H:%M:%S"
        yield heading(site, say("water above {datum}", datum=site.water.datum))
        for moment, height_m in zip(moments(times), heights_m, strict=True):
            local = moment.astimezone(site.zone)
            stamp = f"{day_text(local.date())} {local.year} {local.strftime(clock)} {local:%Z}"
            yield f"  {stamp:<29} {height_text(float(height_m), style):>9}"
        yield TIDE_CAUTION

    return Answer(data, sheet, text)


def _turns(args: Namespace, site: Site, span: InstantSpan) -> Answer:
    from planner.tides import Tide

    turns = Tide(site).turns(span.start, span.stop)
    unit = unit_of(args, site)
    instants = moments(turns.times)
    kinds = ["high" if is_high else "low" for is_high in turns.is_high]
    heights = [number(metres_to(float(height), unit), 4) for height in turns.heights]

    def data() -> dict[str, Any]:
        rows = zip(iso_all(turns.times), heights, kinds, strict=True)
        keys = ("time", "height", "kind")
        return {**_head(args, site), "turns": [dict(zip(keys, row, strict=True)) for row in rows]}

    def sheet() -> Sheet:
        local = _local_stamps(instants, site)
        return Sheet(
            ("time", "local_time", f"height_{unit}", "kind"),
            zip(iso_all(turns.times), local, heights, kinds, strict=True),
        )

    def text() -> Iterator[str]:
        style = style_of(args, site)
        yield heading(site, say("high and low water above {datum}", datum=site.water.datum))
        rows = list(zip(instants, kinds, turns.heights, strict=True))
        # By the day of the clock that is shown: two minutes to midnight reads 00:00.
        for day, of_day in groupby(rows, key=lambda row: shown_day(row[0], site.zone)):
            yield f"{day_text(day)} {day.year}"
            for moment, kind, height_m in of_day:
                clock = f"{clock_text(moment, site.zone, style)} {zone_text(moment, site.zone)}"
                yield f"  {clock:<10} {kind:<4} {height_text(float(height_m), style):>9}"
        if not rows:
            yield say("  no high or low water in this span")
        yield TIDE_CAUTION

    return Answer(data, sheet, text)


def _local_stamps(instants: list[datetime], site: Site) -> list[str]:
    return [moment.astimezone(site.zone).isoformat(timespec="seconds") for moment in instants]
