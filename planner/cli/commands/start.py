"""`fullshell` alone or with a place file: the window, or what can be had without a screen."""

from __future__ import annotations

import os
import sys
from argparse import Namespace
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path

from planner.assets import demo_log, demo_place
from planner.cli.commands.picture import draw_view
from planner.cli.commands.plans import find_plans, plan_lines
from planner.cli.logs import log_of
from planner.cli.spans import today_at
from planner.cli.window_libraries import require_window, window_loading
from planner.errors import PlannerError
from planner.phrasing import Style
from planner.sites import load_site
from planner.words import say

PICTURE = "fullshell-window.png"
_DAYS = 28
_MOST = 5


def run(args: Namespace) -> str:
    """Open the window and leave with its status; without a screen return a place's plans.

    args.place: the place file to open, None for where the user left off (without a screen the
    demo place). A file that cannot be read is reported in the window, which is all there is
    to see after a double click.
    """
    if has_screen(sys.platform, os.environ):
        require_window()
        with window_loading():
            from planner.ui.app import run as open_window
        raise SystemExit(open_window(args.place))
    return without_screen(Path.cwd() / PICTURE, args.place)


def has_screen(platform: str, environment: Mapping[str, str]) -> bool:
    """Tell whether a window can be shown: on Linux and BSD only where a display is named."""
    if platform in ("win32", "cygwin", "darwin"):
        return True
    return bool(environment.get("DISPLAY") or environment.get("WAYLAND_DISPLAY"))


def without_screen(picture: Path, place: str | None = None) -> str:
    """Return a place's ranked plans as text, and draw the window's picture to a file.

    place: a place file, None for the demo place with its log. SiteError when it cannot be read.
    """
    site = load_site(demo_place() if place is None else Path(place))
    today = today_at(site.zone)
    found = find_plans(
        site,
        today,
        today + timedelta(days=_DAYS),
        log=log_of(str(demo_log()), site) if place is None else None,
        most=_MOST,
        style=Style(),
        not_before=datetime.now(UTC),
    )
    lines = [
        say("There is no screen here, so this is the invented demo place in text.")
        if place is None
        else say("There is no screen here, so this is the place in text."),
        "",
        *plan_lines(site, found, Style()),
        "",
        _picture_line(picture, place),
        say("Every job runs without a screen: fullshell --help"),
    ]
    return "\n".join(lines) + "\n"


def _picture_line(picture: Path, place: str | None) -> str:
    try:
        require_window()
        draw_view(picture, place=place, today=None)
    except PlannerError as notice:  # the plans are worth having without it
        return say("No picture of the window: {notice}", notice=notice)
    return say("A picture of the window: {picture}", picture=picture)
