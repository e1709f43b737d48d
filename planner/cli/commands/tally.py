"""`fullshell tally`: what a trip is tallied on, on deck: a sheet to print, or a page to tap."""

from __future__ import annotations

from argparse import Namespace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from planner.cli.arguments import add_log, add_place, place_of
from planner.cli.errors import UsageError
from planner.cli.out_files import add_out, add_paper, add_units, require_folder, style_of_units
from planner.cli.spans import day, today_at
from planner.cli.window_libraries import require_window, window_loading
from planner.phrasing import Style
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.handouts.deck import DeckTrip
    from planner.handouts.pdf_file import Paper
    from planner.logbook import Haul, Log
    from planner.sites import Site


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("Write what a trip is tallied on: a sheet to print, or a page for a phone.")
    parser = jobs.add_parser("tally", help=summary, description=summary, allow_abbrev=False)
    add_place(parser)
    add_out(parser, (".pdf", ".html"), say("the file to write; its ending says which of the two"))
    add_log(parser)
    parser.add_argument("--trip", metavar="NAME", help=say("a trip of the log, with its own rows"))
    parser.add_argument(
        "--day",
        type=day,
        metavar="D",
        help=say(
            "the day of hauling, for the traps of the last trip or of the next (default: today)"
        ),
    )
    add_paper(parser)
    add_units(parser)
    parser.set_defaults(run=_run)


def _run(args: Namespace) -> str:
    from planner.cli.logs import log_of
    from planner.handouts.deck import deck_trip
    from planner.logbook import Log

    out: Path = args.out
    require_folder(out)
    site = place_of(args)
    log = log_of(args.log, site) or Log(())
    today = today_at(site.zone)
    rows = _rows(log, site, args.trip, args.day or today)
    trip = deck_trip(rows, site.zone, invented=site.invented)
    style = style_of_units(args)
    if out.suffix.lower() == ".html":
        from planner.handouts.tally_page import tally_page
        from planner.whole_file import write_whole

        write_whole(out, tally_page(trip, style).encode())
    else:
        _write_sheet(trip, out, today, style, args.paper)
    return say("{out}: {rows} traps of trip {name}\n", out=out, rows=len(rows), name=trip.name)


def _rows(log: Log, site: Site, trip: str | None, on: date) -> tuple[Haul, ...]:
    from planner.handouts.layout import trip_layout
    from planner.ui.hauls.haul_rows import hauls_of
    from planner.ui.load.deck_rows import rows_of_day

    if trip is None:
        return rows_of_day(log, site, on, trip_layout(site, log))
    found = hauls_of(log, (trip, site.name))
    if not found:
        raise UsageError(
            say(
                'the log has no trip "{trip}" at {name}; leave --trip out for a new trip',
                trip=trip,
                name=site.name,
            )
        )
    return found


def _write_sheet(trip: DeckTrip, out: Path, today: date, style: Style, paper: Paper) -> None:
    require_window()
    from planner.handouts.tally import tally_sheet

    with window_loading():
        from planner.handouts.pdf_file import fonts
        from planner.handouts.tally_pdf import write_tally
    app = fonts()
    write_tally(tally_sheet(trip, today, style), out, paper)
    del app
