"""`fullshell plans`: ranked set-and-haul plans."""

from __future__ import annotations

import argparse
from argparse import Namespace
from collections.abc import Iterator
from datetime import UTC, date, datetime
from typing import TYPE_CHECKING, Any

from planner.cli.answers import Answer, Sheet, interval, iso, number, table_lines
from planner.cli.arguments import (
    add_days,
    add_job,
    add_log,
    add_place,
    heading,
    place_of,
    style_of,
)
from planner.cli.errors import UsageError
from planner.cli.spans import day as a_day
from planner.cli.spans import day_span
from planner.phrasing import RULES_CAUTION, TIDE_CAUTION, Style, day_clock_text, zone_text
from planner.phrasing import soak_text as soak
from planner.sites import Site
from planner.words import counted, say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.logbook import Log
    from planner.trips import Plan, PlanSet, Search

DEFAULT_DAYS = 8 * 7
MOST_DAYS = 400
_DEFAULT_MOST = 10
_COLUMNS = (
    *("rank", "set", "haul", "soak_h"),
    *("full_keepers_mean", "full_keepers_low", "full_keepers_high"),
    *("light_share_mean", "light_share_low", "light_share_high"),
    *("lowest_cover_m", "reasons", "warnings"),
)


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    parser = add_job(jobs, "plans", say("Ranked plans: when to set and when to haul."), _answer)
    add_place(parser)
    add_days(parser, counted(8, "week"))
    add_log(parser)
    parser.add_argument(
        "--most",
        type=count,
        default=_DEFAULT_MOST,
        metavar="N",
        help=say("how many plans at most (default: {default_most})", default_most=_DEFAULT_MOST),
    )
    parser.add_argument(
        "--water",
        choices=("any", "rising", "falling", "turning"),
        default="any",
        help=say("the water wished for at the haul; decides between plans of the same catch"),
    )
    parser.add_argument(
        "--time",
        choices=("any", "early", "late"),
        default="any",
        help=say("when in the day to haul; decides between plans of the same catch"),
    )
    parser.add_argument(
        "--soak",
        choices=("any", "short"),
        default="any",
        help=say("short: rank as if each day of soak took a fifth of the keepers"),
    )
    parser.add_argument(
        "--drive",
        choices=("any", "long"),
        default="any",
        help=say(
            "long: rank by the keepers of a drive, two drives for a haul on another day than the "
            "set"
        ),
    )
    parser.add_argument(
        "--why",
        type=a_day,
        metavar="D",
        help=say("a day within the span: say what rules a set or haul out, or what it lacks"),
    )


def count(text: str) -> int:
    """Return a whole number from 1 to 1000 of the command line."""
    if not text.isdecimal() or not 1 <= int(text[:9]) <= 1000:
        raise argparse.ArgumentTypeError(
            say('"{given}" is not a number from 1 to 1000', given=text)
        )
    return int(text)


def _answer(args: Namespace) -> Answer:
    from planner.cli.logs import log_of
    from planner.trips import Wishes

    site = place_of(args)
    span = day_span(args.start, args.stop, site.zone, DEFAULT_DAYS, most=MOST_DAYS)
    style = style_of(args, site)
    # Left out, the span begins now: a set this morning is no plan any more.
    not_before = datetime.now(UTC) if args.start is None else None
    _require_why(args, span.first, span.last)
    search = _search(site, span.first, span.last, log_of(args.log, site), not_before)
    wishes = Wishes(args.water, args.time, soak=args.soak, drive=args.drive)
    found = search.plans(args.most, wishes, style, None)

    def why() -> list[str]:
        from planner.trips import explain_day

        return [] if args.why is None else explain_day(search, args.why, style, wishes)

    def data() -> dict[str, Any]:
        return {
            "place": site.name,
            "plans": [_plan(plan) for plan in found.plans],
            "rejected": dict(found.rejected),
            **({} if args.why is None else {"why": {"date": str(args.why), "texts": why()}}),
        }

    def sheet() -> Sheet:
        return Sheet(_COLUMNS, [_row(_plan(plan)) for plan in found.plans])

    def text() -> Iterator[str]:
        yield from why()
        yield from plan_lines(site, found, style)

    return Answer(data, sheet, text)


def find_plans(
    site: Site,
    first: date,
    last: date,
    *,
    log: Log | None,
    most: int,
    style: Style,
    not_before: datetime | None = None,
) -> PlanSet:
    """Return the ranked plans of a place for local days, both included."""
    from planner.trips import Wishes

    return _search(site, first, last, log, not_before).plans(most, Wishes(), style, None)


def _search(
    site: Site, first: date, last: date, log: Log | None, not_before: datetime | None
) -> Search:
    from planner.trips import Search, outlook

    return Search(outlook(site, first, last, log), log=log, not_before=not_before)


def _require_why(args: Namespace, first: date, last: date) -> None:
    if args.why is None:
        return
    if args.format == "csv":
        raise UsageError(say("--why has no place in a table; ask for --format text or json"))
    if not first <= args.why <= last:
        raise UsageError(
            say(
                "--why {why} is outside {first} to {last}; give --from and --to around it",
                why=args.why,
                first=first,
                last=last,
            )
        )


def plan_lines(site: Site, found: PlanSet, style: Style) -> Iterator[str]:
    """Yield the plans as text, best first, and what ruled out the rest."""
    from planner.trips import LIMIT_WORDS, nothing_fits

    yield heading(site, say("set-and-haul plans, most full keepers first"))
    for plan in found.plans:
        yield say(
            "{rank:>3}  set {set_at}, haul {haul_at}, soak {soak}",
            rank=plan.rank,
            set_at=_when(plan.set_at, site, style),
            haul_at=_when(plan.haul_at, site, style),
            soak=soak(plan.soak_h),
        )
        yield from (f"       {reason}" for reason in plan.reasons)
        yield from (f"     ! {warning}" for warning in plan.warnings)
    if not found.plans:
        yield nothing_fits(found.rejected)
    ruled_out = [(str(n), LIMIT_WORDS[limit]) for limit, n in found.rejected.items() if n]
    if ruled_out:
        yield from table_lines(
            (say("ruled out"), say("pairs of set and haul")), ruled_out, right="rl"
        )
    yield TIDE_CAUTION
    yield RULES_CAUTION


def _when(instant: datetime, site: Site, style: Style) -> str:
    return f"{day_clock_text(instant, site.zone, style)} {zone_text(instant, site.zone)}"


def _plan(plan: Plan) -> dict[str, Any]:
    return {
        "rank": plan.rank,
        "set": iso(plan.set_at),
        "latest_set": iso(plan.latest_set_at),
        "haul": iso(plan.haul_at),
        "soak_h": number(plan.soak_h, 3),
        "full_keepers": interval(plan.full_keepers),
        "light_share": interval(plan.light_share),
        "lowest_cover_m": number(plan.lowest_cover_m, 4),
        "lowest_cover_spot": plan.lowest_cover_spot,
        "lowest_cover_at": None if plan.lowest_cover_at is None else iso(plan.lowest_cover_at),
        "set_daylight_h": number(plan.set_daylight_h, 2),
        "haul_daylight_h": number(plan.haul_daylight_h, 2),
        "wishes": dict(plan.wishes),
        "reasons": list(plan.reasons),
        "warnings": list(plan.warnings),
    }


def _row(plan: dict[str, Any]) -> list[Any]:
    return [
        *(plan[name] for name in ("rank", "set", "haul", "soak_h")),
        *plan["full_keepers"].values(),
        *plan["light_share"].values(),
        plan["lowest_cover_m"],
        " ".join(plan["reasons"]),
        " ".join(plan["warnings"]),
    ]
