"""`fullshell water`: heights at a step, or high and low waters with the ramp's hours and slack."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from datetime import datetime, timedelta
from itertools import groupby
from math import isnan
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
from planner.cli.errors import UsageError
from planner.cli.spans import InstantSpan, instant_span, require_values, step
from planner.errors import PlannerError
from planner.phrasing import (
    TIDE_CAUTION,
    clock_name,
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
    parser.add_argument(
        "--ramp",
        action="store_true",
        help=say("with --turns: also when the ramp begins and stops working"),
    )
    parser.add_argument(
        "--slack",
        action="store_true",
        help=say("with --turns: also slack, estimated by the place's own lags"),
    )


def _answer(args: Namespace) -> Answer:
    site = place_of(args)
    _require_sense(args, site)
    span = instant_span(args.start, args.stop, site.zone, _DEFAULT_DAYS)
    return _turns(args, site, span) if args.turns else _heights(args, site, span)


def _require_sense(args: Namespace, site: Site) -> None:
    """UsageError for rows without --turns; PlannerError where the place says nothing of them."""
    for option, asked, known, table in (
        ("--ramp", args.ramp, site.lowest_ramp_level_m is not None, "[ramp]"),
        ("--slack", args.slack, site.slack is not None, "[slack]"),
    ):
        if asked and not args.turns:
            raise UsageError(
                say("{option} goes with --turns; add it, or leave {option} out", option=option)
            )
        if asked and not known:
            raise PlannerError(
                say(
                    "{place}: the place file has no {table}; add it, or leave {option} out",
                    place=site.name,
                    table=table,
                    option=option,
                )
            )


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
            stamp = (
                f"{day_text(local.date())} {local.year} {local.strftime(clock)} {clock_name(local)}"
            )
            yield f"  {stamp:<31} {height_text(float(height_m), style):>9}"
        yield TIDE_CAUTION

    return Answer(data, sheet, text)


def _turns(args: Namespace, site: Site, span: InstantSpan) -> Answer:
    from planner.tides import Tide
    from planner.tides.events import Kind, events, kind_text, lags_text

    found = events(Tide(site), span.start, span.stop, ramp=args.ramp, slack=args.slack)
    unit = unit_of(args, site)
    instants = moments(found.times)
    kinds = [Kind(kind) for kind in found.kinds]
    heights = [number(metres_to(float(height), unit), 4) for height in found.heights]

    names = [kind.name.lower() for kind in kinds]

    def data() -> dict[str, Any]:
        rows = zip(iso_all(found.times), heights, names, strict=True)
        keys = ("time", "height", "kind")
        return {**_head(args, site), "turns": [dict(zip(keys, row, strict=True)) for row in rows]}

    def sheet() -> Sheet:
        local = _local_stamps(instants, site)
        return Sheet(
            ("time", "local_time", f"height_{unit}", "kind"),
            zip(iso_all(found.times), local, heights, names, strict=True),
        )

    def text() -> Iterator[str]:
        style = style_of(args, site)
        yield heading(site, say("high and low water above {datum}", datum=site.water.datum))
        words = [kind_text(kind, site.slack) for kind in kinds]
        wide = max(map(len, words), default=0)
        rows = list(zip(instants, words, found.heights, strict=True))
        # By the day of the clock that is shown: two minutes to midnight reads 00:00.
        for day, of_day in groupby(rows, key=lambda row: shown_day(row[0], site.zone)):
            yield f"{day_text(day)} {day.year}"
            for moment, kind, height_m in of_day:
                height = "" if isnan(height_m) else height_text(float(height_m), style)
                clock = f"{clock_text(moment, site.zone, style)} {zone_text(moment, site.zone)}"
                yield f"  {clock:<10} {kind:<{wide}} {height:>9}"
        if not rows:
            yield say("  no high or low water in this span")
        if args.slack and site.slack is not None:
            yield say("Slack {when}.", when=lags_text(site.slack))
        yield TIDE_CAUTION

    return Answer(data, sheet, text)


def _local_stamps(instants: list[datetime], site: Site) -> list[str]:
    return [moment.astimezone(site.zone).isoformat(timespec="seconds") for moment in instants]
