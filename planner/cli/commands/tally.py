"""`fullshell tally`: what a trip is tallied on, on deck: a sheet to print, or a page to tap."""

from __future__ import annotations

import argparse
from argparse import Namespace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from planner.cli.arguments import add_log, add_place, place_of
from planner.cli.commands.picture import require_window, window_loading
from planner.cli.errors import UsageError
from planner.cli.spans import day, today_at
from planner.phrasing import Style
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.handouts.deck import DeckTrip
    from planner.logbook import Haul, Log
    from planner.sites import Site


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("Write what a trip is tallied on: a sheet to print, or a page for a phone.")
    parser = jobs.add_parser("tally", help=summary, description=summary, allow_abbrev=False)
    add_place(parser)
    parser.add_argument(
        "out",
        metavar="OUT",
        type=_out,
        help=say("the file to write; its ending says which of the two"),
    )
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
    parser.add_argument("--paper", choices=("letter", "A4"), default="letter")
    parser.add_argument("--units", choices=("m", "ft"), default="m", help=say("(default: m)"))
    parser.set_defaults(run=_run)


def _out(text: str) -> Path:
    path = Path(text)
    if path.suffix.lower() not in (".pdf", ".html"):
        raise argparse.ArgumentTypeError(
            say('"{given}" is not a .pdf or .html file name', given=text)
        )
    return path


def _run(args: Namespace) -> str:
    from planner.cli.logs import log_of
    from planner.handouts.deck import deck_trip
    from planner.logbook import Log

    out: Path = args.out
    if not out.parent.is_dir():
        raise UsageError(
            say("{out}: there is no folder {parent}; make it first", out=out, parent=out.parent)
        )
    site = place_of(args)
    log = log_of(args.log, site) or Log(())
    today = today_at(site.zone)
    rows = _rows(log, site, args.trip, args.day or today)
    trip = deck_trip(rows, site.zone, invented=site.invented)
    style = Style(length=args.units, temperature="F" if args.units == "ft" else "C")
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


def _write_sheet(trip: DeckTrip, out: Path, today: date, style: Style, paper: str) -> None:
    require_window()
    from planner.handouts.tally import tally_sheet

    with window_loading():
        from planner.handouts.pdf_file import fonts
        from planner.handouts.tally_pdf import write_tally
    app = fonts()
    write_tally(tally_sheet(trip, today, style), out, paper)  # type: ignore[arg-type]
    del app
