"""`fullshell take`: what is taken along for a plan: trip sheet, calendar, waypoints or water."""

from __future__ import annotations

from argparse import Namespace
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Final

from planner.cli.arguments import add_days, add_log, add_place, place_of
from planner.cli.commands.plans import DEFAULT_DAYS, MOST_DAYS, count
from planner.cli.errors import UsageError
from planner.cli.out_files import add_out, add_paper, add_units, require_folder, style_of_units
from planner.cli.spans import day_span, today_at
from planner.cli.window_libraries import require_window, window_loading
from planner.phrasing import Style, day_clock_text
from planner.words import counted, say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.handouts import TripFacts
    from planner.handouts.pdf_file import Paper

_KINDS: Final = {
    ".pdf": say("the trip sheet"),
    ".ics": say("the calendar file"),
    ".gpx": say("the waypoints"),
    ".csv": say("the water at the spots"),
}


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say(
        "Write what is taken along for a plan: the trip sheet (.pdf), a calendar file (.ics), "
        "waypoints (.gpx) or the water at the spots (.csv)."
    )
    parser = jobs.add_parser("take", help=summary, description=summary, allow_abbrev=False)
    add_place(parser)
    add_out(parser, tuple(_KINDS), say("the file to write; its ending says which"))
    add_days(parser, counted(8, "week"))
    add_log(parser)
    parser.add_argument(
        "--plan",
        type=count,
        default=1,
        metavar="N",
        help=say(
            "which of the ranked plans of these days, as `fullshell plans` ranks them (default: 1)"
        ),
    )
    add_paper(parser)
    add_units(parser)
    parser.set_defaults(run=_run)


def _run(args: Namespace) -> str:
    out: Path = args.out
    require_folder(out)
    kind = out.suffix.lower()
    if kind == ".pdf":
        require_window()
    style = style_of_units(args)
    facts = _facts(args, style)
    if kind == ".pdf":
        _write_sheet(facts, out, style, args.paper)
    else:
        from planner.whole_file import write_whole

        write_whole(out, _content(kind, facts, style))
    zone = facts.site.zone
    begin, end = (day_clock_text(at, zone, style) for at in (facts.plan.set_at, facts.plan.haul_at))
    return say(
        "{out}: {kinds} of plan {plan}, set {begin}, haul {end}\n",
        out=out,
        kinds=_KINDS[kind],
        plan=args.plan,
        begin=begin,
        end=end,
    )


def _facts(args: Namespace, style: Style) -> TripFacts:
    """Return the facts of the plan asked for."""
    from planner.cli.logs import log_of
    from planner.handouts import trip_facts
    from planner.trips import outlook, plan_trips

    site = place_of(args)
    span = day_span(args.start, args.stop, site.zone, DEFAULT_DAYS, most=MOST_DAYS)
    not_before = datetime.now(UTC) if args.start is None else None
    log = log_of(args.log, site)
    days = outlook(site, span.first, span.last, log)
    found = plan_trips(
        days,
        log=log,
        limit=args.plan,
        style=style,
        not_before=not_before,
        today=today_at(site.zone),  # as the sheet counts the age of the rules
    ).plans
    plan = next((plan for plan in found if plan.rank == args.plan), None)
    if plan is None:
        raise UsageError(
            say(
                "--plan {plan}: there are {found} plans at {name} from {first} to "
                "{last}; see fullshell plans, or give other days",
                plan=args.plan,
                found=len(found),
                name=site.name,
                first=span.first,
                last=span.last,
            )
        )
    day = plan.haul_at.astimezone(site.zone).date()
    return trip_facts(site, plan, log, float(days.forecast.water_c[days.index(day)]))


def _content(kind: str, facts: TripFacts, style: Style) -> bytes:
    from planner.handouts import calendar_file, water_csv, waypoints_gpx

    if kind == ".ics":
        return calendar_file(facts.site, facts.plan, style, datetime.now(UTC))
    if kind == ".gpx":
        return waypoints_gpx(facts, style, datetime.now(UTC))
    return water_csv(facts.site, facts.plan, style).encode()


def _write_sheet(facts: TripFacts, out: Path, style: Style, paper: Paper) -> None:
    from planner.handouts import trip_sheet

    with window_loading():
        from planner.handouts.pdf_file import fonts
        from planner.handouts.sheet_pdf import write_sheet
    app = fonts()
    sheet = trip_sheet(facts, today_at(facts.site.zone), style)
    write_sheet(sheet, out, paper)
    del app
