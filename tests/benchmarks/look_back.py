"""Looking back over 100,000 hauls: how long each choice takes until it is painted.

    python -m tests.benchmarks.look_back [--hauls 100000]

An invented log is made in a temporary home. Least of five choices each, since a busy machine
only ever adds. The columns are made off the window's thread, once for a log.
"""

from __future__ import annotations

import argparse
import os
import tempfile
import time
from collections.abc import Callable
from datetime import date
from pathlib import Path

from tests.benchmarks.log_scale import made_log


def main() -> None:
    """Make the log, open the window on it, and print the time of each step."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--hauls", type=int, default=100_000)
    hauls = parser.parse_args().hauls
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    with tempfile.TemporaryDirectory() as home:
        os.environ["FULLSHELL_HOME"] = home
        _measure(Path(home), hauls)


def _measure(home: Path, hauls: int) -> None:
    from PySide6.QtWidgets import QWidget

    from planner.assets import demo_place
    from planner.logbook import Logbook
    from planner.sites import load_site
    from planner.ui import theme
    from planner.ui.app import make_app
    from planner.ui.hauls.look_back import LookBackWindow
    from planner.ui.state import ViewState
    from planner.ui.workbench import Workbench

    made_log(home / "hauls.logbook", hauls)
    app = make_app()
    theme.apply(app, "light")
    today = date(2026, 11, 25)
    bench = Workbench(ViewState(today=today, day=today))
    bench.site = load_site(demo_place())
    with Logbook.open(home / "hauls.logbook", read_only=True) as book:
        bench._log = book.read()
    parent = QWidget()

    def until(done: Callable[[], bool]) -> None:
        while not done():
            app.processEvents()

    begun = time.perf_counter()
    window = LookBackWindow(bench, parent)
    window.show()
    until(lambda: bool(window.groups) and bench.desk.idle)
    print(f"open, columns made: {time.perf_counter() - begun:.2f} s")
    for by in ("month", "year", "trip", "design"):
        took = []
        for value in ("", "spot 1", "spot 2", "", "spot 3"):
            window.by.setCurrentIndex(window.by.findData(by))
            box = window.filters["spot"]
            box.setCurrentIndex(max(box.findData(value), 0))
            begun = time.perf_counter()
            window._work_out()
            until(lambda: bench.desk.idle)
            window.grab()
            took.append(time.perf_counter() - begun)
        print(f"by {by}: {min(took):.3f} s, {len(window.groups)} groups")
    window.close()
    bench.close()


if __name__ == "__main__":
    main()
