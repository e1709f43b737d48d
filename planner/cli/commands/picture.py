"""`fullshell picture`: a view of the window, drawn to a file without a screen."""

from __future__ import annotations

import argparse
import re
from argparse import Namespace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from planner.cli.out_files import add_out, add_units, require_folder, style_of_units
from planner.cli.spans import day
from planner.cli.window_libraries import require_window, window_loading
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs

_VIEWS = ("dates", "load", "hauls", "evidence", "places")
_SMALLEST, _LARGEST = (640, 480), (7680, 4320)


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("Draw a view of the window to a PNG file; no screen is needed.")
    parser = jobs.add_parser("picture", help=summary, description=summary, allow_abbrev=False)
    add_out(parser, (".png",), say("the file to write"), "OUT.png")
    parser.add_argument("--view", choices=_VIEWS, default="dates", help=say("(default: dates)"))
    parser.add_argument(
        "--place", metavar="PLACE", help=say("a place file or name (default: the demo place)")
    )
    parser.add_argument("--log", metavar="LOG", type=Path, help=say("a logbook file or haul table"))
    parser.add_argument("--theme", choices=("light", "dark"), default="light")
    parser.add_argument(
        "--size", type=_size, default=(1280, 800), metavar="WxH", help=say("(default: 1280x800)")
    )
    parser.add_argument(
        "--today", type=day, metavar="D", help=say("the day the window is opened on")
    )
    add_units(parser)
    parser.set_defaults(run=_run)


def _size(text: str) -> tuple[int, int]:
    found = re.fullmatch(r"(\d{1,5})x(\d{1,5})", text, re.ASCII)
    width, height = (int(found[1]), int(found[2])) if found else (0, 0)
    fits_width = _SMALLEST[0] <= width <= _LARGEST[0]
    fits_height = _SMALLEST[1] <= height <= _LARGEST[1]
    if not (fits_width and fits_height):
        raise argparse.ArgumentTypeError(
            say(
                '"{given}" is not a size; write it like 1280x800, from 640x480 to 7680x4320',
                given=text,
            )
        )
    return width, height


def _run(args: Namespace) -> str:
    require_window()
    require_folder(args.out)
    draw_view(
        args.out,
        view=args.view,
        place=args.place,
        log=args.log,
        theme=args.theme,
        size=args.size,
        today=args.today,
        style=style_of_units(args),
    )
    return say(
        "{out}: the view {view}, {width}x{height}\n",
        out=args.out,
        view=args.view,
        width=args.size[0],
        height=args.size[1],
    )


def draw_view(out: Path, **shot: Any) -> None:
    """Draw a view to a file; the fields of `shot` are those of `planner.ui.picture.Shot`."""
    with window_loading():
        from planner.ui.picture import Shot, draw
    draw(out, Shot(**shot))
