"""The arguments that jobs share."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from collections.abc import Callable
from typing import TYPE_CHECKING

from planner.cli.answers import Answer
from planner.cli.spans import day, instant_text
from planner.phrasing import Style
from planner.sites import Site, find_place, load_site
from planner.units import LengthUnit
from planner.words import say

if TYPE_CHECKING:
    from argparse import _SubParsersAction

    Jobs = _SubParsersAction[ArgumentParser]


def add_job(
    jobs: Jobs, name: str, summary: str, answer: Callable[[Namespace], Answer]
) -> ArgumentParser:
    """Add a job whose answer is written in the format asked for."""
    parser = jobs.add_parser(name, help=summary, description=summary, allow_abbrev=False)
    parser.add_argument(
        "--format",
        choices=("text", "json", "csv"),
        default="text",
        help=say("text is for people, JSON and CSV for programs (default: text)"),
    )
    parser.add_argument(
        "--units",
        choices=("m", "ft"),
        help=say("metres or feet (default: in text as the place file has it, else metres)"),
    )
    parser.set_defaults(run=lambda args: answer(args).written(args.format))
    return parser


def add_place(parser: ArgumentParser) -> None:
    """Add PLACE."""
    parser.add_argument("place", metavar="PLACE", help=say("a place file, or a name of your book"))


def add_instants(parser: ArgumentParser, days: int) -> None:
    """Add --from T and --to T, as text."""
    parser.add_argument(
        "--from", dest="start", type=instant_text, metavar="T", help=say("default: today, 00:00")
    )
    parser.add_argument(
        "--to",
        dest="stop",
        type=instant_text,
        metavar="T",
        help=say(
            "default: {days} days later; ISO 8601, without an offset the place's local time",
            days=days,
        ),
    )


def add_days(parser: ArgumentParser, default: str) -> None:
    """Add --from D and --to D."""
    parser.add_argument("--from", dest="start", type=day, metavar="D", help=say("default: today"))
    parser.add_argument(
        "--to",
        dest="stop",
        type=day,
        metavar="D",
        help=say("included; default: {default} later", default=default),
    )


def add_log(parser: ArgumentParser, *, required: bool = False) -> None:
    """Add --log LOG."""
    parser.add_argument(
        "--log", metavar="LOG", required=required, help=say("a logbook file or a haul table (CSV)")
    )


def place_of(args: Namespace) -> Site:
    """Return the place asked for."""
    return load_site(find_place(args.place))


def unit_of(args: Namespace, site: Site) -> LengthUnit:
    """Return the unit of heights: as asked, else the file's in text, metres for programs."""
    if args.units is not None:
        unit: LengthUnit = args.units
        return unit
    return site.water.file_units if args.format == "text" else "m"


def style_of(args: Namespace, site: Site) -> Style:
    """Return how to word numbers: with feet goes Fahrenheit."""
    unit = unit_of(args, site)
    return Style(length=unit, temperature="F" if unit == "ft" else "C")


def heading(site: Site, what: str) -> str:
    """Return the first line of a text: the place, whether it is invented, and what follows."""
    invented = say(" (invented)") if site.invented else ""
    return f"{site.name}{invented}: {what}"
