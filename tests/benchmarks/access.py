"""How much of the window was looked at by the rules of access, and how much breaks one.

    python -m tests.benchmarks.access [--points 9] [--size 1280x800] [--mirrored] [--scale 1]
        [--language es]

Every room is opened, as in tests/ui/test_access_*.py, and looked at by the same rules: each
control has a name and is led to by a key, no letter of Alt stands for two, each chart can be
read as a table, no words are cut and nothing lies outside what holds it.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from datetime import date
from pathlib import Path

_TODAY = date(2026, 11, 25)


def look(points: int, size: tuple[int, int], mirrored: bool) -> str:
    """Return what was looked at and what was found, in a line."""
    sys.path.insert(0, str(Path(__file__).parents[1] / "ui"))
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QFont
    from rooms import Rooms, settle
    from test_access_names import (
        charts_without_tables,
        controls,
        letters_taken_twice,
        nameless,
        unreachable,
    )
    from test_access_room import LOOKS

    from planner.ui import theme
    from planner.ui.app import make_app
    from planner.ui.charts import Chart
    from planner.ui.sources import demo_source
    from planner.ui.state import ViewState
    from planner.ui.window import MainWindow
    from planner.ui.workbench import Workbench

    app = make_app()
    theme.apply(app, "light")
    font = QFont(app.font())
    font.setPointSize(points)
    app.setFont(font)
    if mirrored:
        app.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    bench = Workbench(ViewState(today=_TODAY, day=_TODAY, theme="light"))
    window = MainWindow(bench)
    window.resize(*size)
    window.show()
    window.activateWindow()
    bench.open(demo_source())
    settle(window)
    rooms, shown = 0, 0
    charts: set[str] = set()
    rules = {
        "without a name": nameless,
        "that no key leads to": unreachable,
        "letters taken twice": letters_taken_twice,
        "without a table": charts_without_tables,
        "cut": lambda room: [each for looked in LOOKS for each in looked(room)],
    }
    broken = dict.fromkeys(rules, 0)
    for _, room in Rooms(window).walk():
        rooms += 1
        shown += len(list(controls(room)))
        charts |= {each.accessibleName() for each in room.findChildren(Chart)}
        for what, found in rules.items():
            broken[what] += len(found(room))
    window.close()
    bench.close()
    counts = ", ".join(f"{count} {what}" for what, count in broken.items())
    return f"{rooms} rooms, {shown} controls shown in them, {len(charts)} charts: {counts}"


def main() -> None:
    """Print a line."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--points", type=int, default=9)
    parser.add_argument("--size", default="1280x800")
    parser.add_argument("--mirrored", action="store_true")
    parser.add_argument("--scale", type=int, default=1)
    parser.add_argument("--language", default="en")
    options = parser.parse_args()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ["QT_SCALE_FACTOR"] = str(options.scale)  # fixed when a program starts
    width, height = (int(each) for each in options.size.split("x"))
    with tempfile.TemporaryDirectory() as home:
        os.environ["FULLSHELL_HOME"] = home
        from planner.ui.languages import use

        use(options.language)  # before what says texts is imported
        found = look(options.points, (width, height), options.mirrored)
    how = f"{options.language}, {options.points} pt, {options.size}, {options.scale}00%"
    print(f"{how}{', mirrored' if options.mirrored else ''}: {found}")


if __name__ == "__main__":
    main()
