"""What jobs share that write a file: its name and folder, its units and its paper."""

from __future__ import annotations

from argparse import ArgumentParser, ArgumentTypeError, Namespace
from collections.abc import Sequence
from pathlib import Path

from planner.cli.errors import UsageError
from planner.phrasing import Style
from planner.words import say


def add_out(
    parser: ArgumentParser, endings: Sequence[str], words: str, metavar: str = "OUT"
) -> None:
    """Add the file to write, whose name has one of the endings."""

    def out(text: str) -> Path:
        path = Path(text)
        if path.suffix.lower() in endings:
            return path
        *others, last = endings
        known = say("{others} or {last}", others=", ".join(others), last=last) if others else last
        raise ArgumentTypeError(
            say('"{given}" is not a {known} file name', given=text, known=known)
        )

    parser.add_argument("out", metavar=metavar, type=out, help=words)


def add_units(parser: ArgumentParser) -> None:
    """Add --units, metres when left out."""
    parser.add_argument("--units", choices=("m", "ft"), default="m", help=say("(default: m)"))


def add_paper(parser: ArgumentParser) -> None:
    """Add --paper, letter when left out."""
    parser.add_argument("--paper", choices=("letter", "A4"), default="letter")


def style_of_units(args: Namespace) -> Style:
    """Return how to word numbers: with feet goes Fahrenheit."""
    return Style(length=args.units, temperature="F" if args.units == "ft" else "C")


def require_folder(out: Path) -> None:
    """UsageError unless the folder of a file to write is there."""
    if not out.parent.is_dir():
        raise UsageError(
            say("{out}: there is no folder {parent}; make it first", out=out, parent=out.parent)
        )
