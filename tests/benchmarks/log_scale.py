"""The log view over 100,000 hauls: how long the user waits, and the memory it takes.

    python -m tests.benchmarks.log_scale [--hauls 100000] [--patience 1]

An invented log is made once in a temporary home. A window's workbench then opens it, without
forecasts, which have their own benchmarks. Each step is the time from the user's act to the
painted answer on the window's thread; saving a cell also counts the clerk's work. Memory is
what the process holds beyond a window with an empty log. Of three
runs, each a process of its own, the least of each step counts, since a busy machine only ever
adds. Exits with 1 when a step takes longer than 0.2 s or the memory is over 300 MB.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any

MOST_S = 0.2
MOST_MB = 300
TRAPS = 12


def made_log(path: Path, hauls: int) -> None:
    """Write an invented log: trips of twelve traps, years upon years."""
    from planner.logbook import Haul, Logbook

    rng = random.Random(8)
    begin = datetime(1960, 4, 1, 12, tzinfo=UTC)
    rows = []
    for number in range(hauls):
        trip, trap = divmod(number, TRAPS)
        hauled = begin + timedelta(days=2.5 * trip, minutes=5 * trap)
        keepers = rng.randrange(9)
        rows.append(
            Haul(
                f"{hauled.day} {hauled:%b %Y}" + (f" ({trip})" if trip % 7 == 0 else ""),
                ("Sedge Hollow", "Otter Bight", "Mill Reach")[trip % 3],
                spot=f"spot {trap % 6}",
                trap=f"A{trap}",
                design=("bare wire, 2 doors", "coated wire, 4 doors")[trap % 2],
                bait=("mullet", "menhaden", "")[trip % 3],
                set_at=hauled - timedelta(hours=17),
                hauled_at=hauled,
                depth_m=1.5 + trap / 10,
                keepers=keepers,
                shorts=rng.randrange(6),
                females=rng.randrange(4) or None,
                judged=keepers,
                light=rng.randrange(keepers + 1),
                notes="" if rng.random() < 0.8 else f"note {number}",
            )
        )
    with Logbook.open(path) as book:
        book.add_hauls(rows, "made")


def held_mb(which: str = "VmRSS") -> float:
    """Return the memory this process holds, or held at most (VmHWM)."""
    status = Path("/proc/self/status").read_text(encoding="utf-8")
    line = next(line for line in status.splitlines() if line.startswith(which))
    return int(line.split()[1]) / 1024


def measured() -> dict[str, float]:
    """Open the log of this home in a view and return seconds by step, and the memory."""
    from pyqtgraph.util.garbage_collector import GarbageCollector
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    from planner.assets import demo_place
    from planner.sites import load_site
    from planner.ui import theme
    from planner.ui.app import make_app
    from planner.ui.hauls.view import HaulsView
    from planner.ui.sources import Source, open_log
    from planner.ui.state import ViewState
    from planner.ui.workbench import Workbench

    app = make_app()
    theme.apply(app, "light")
    collector = GarbageCollector()  # as the program has it
    today = date(2026, 11, 25)
    Workbench._refresh = lambda *_: None  # type: ignore[method-assign,assignment]
    bench = Workbench(ViewState(today=today, day=today))
    bench.site = load_site(demo_place())
    found: dict[str, float] = {}

    def wait(until: Callable[[], Any]) -> None:
        while not until():
            app.processEvents()
            time.sleep(0.0005)

    def step(name: str, act: Callable[[], Any], until: Callable[[], Any] = lambda: True) -> None:
        begun = time.perf_counter()
        act()
        wait(until)
        app.processEvents()
        found[name] = max(time.perf_counter() - begun, found.get(name, 0.0))

    begun = time.perf_counter()
    bench.book, bench._log = open_log(Source(str(demo_place())), None)
    found["read in the background"] = time.perf_counter() - begun
    begun = time.perf_counter()
    _ = bench._log.fingerprint
    found["hashed in the background"] = time.perf_counter() - begun
    trips = len(bench.log.by_trip)
    made: list[HaulsView] = []

    def open_view() -> None:
        made.append(HaulsView(bench))
        made[0].resize(1280, 800)
        made[0].show()

    step(
        "open",
        open_view,
        lambda: made[0].trips.table.model().rowCount() == trips and bench.clerk.idle,
    )
    view = made[0]
    if trips:
        bar = view.trips.table.verticalScrollBar()
        for at in range(20):
            step("scroll", lambda at=at: bar.setValue(bar.maximum() * at // 19))  # type: ignore[misc]
        for text in ("2", "20", "2007 otter", "aug", ""):
            step("filter and total", lambda text=text: view.trips.search.setText(text))  # type: ignore[misc]
        for row in (5, trips // 2, trips - 1):
            step("choose a trip", lambda row=row: view.trips.table.selectRow(row))  # type: ignore[misc]
        table = view.entry.table
        for row in range(TRAPS):
            table.setCurrentIndex(view.entry.model.index(row, 4))

            def type_count(row: int = row) -> None:
                QTest.keyClicks(table, str(90 + row))
                editor = app.focusWidget() or table
                QTest.keyClick(editor, Qt.Key.Key_Return)

            view.activateWindow()
            table.setFocus()
            step("type a cell", type_count)
            step(
                "save it and show",
                lambda: None,
                lambda: view.saver.under_way == 0 and bench.clerk.idle,
            )
        assert bench.undo_name is not None
        step("undo", bench.undo, lambda: bench.clerk.idle and view.saver.under_way == 0)
    found["memory"] = held_mb()
    found["memory at most"] = held_mb("VmHWM")
    bench.close()
    del collector
    return found


def in_a_process(home: str) -> dict[str, float]:
    """Return what is measured in a process of its own, with that home."""
    env = {**os.environ, "FULLSHELL_HOME": home, "QT_QPA_PLATFORM": "offscreen"}
    run = subprocess.run(
        [sys.executable, "-m", "tests.benchmarks.log_scale", "--inside"],
        env=env, stdout=subprocess.PIPE, text=True, check=True,
    )  # fmt: skip
    made: dict[str, float] = json.loads(run.stdout.splitlines()[-1])
    return made


def main() -> int:
    words = argparse.ArgumentParser(description=__doc__.split("\n")[0] if __doc__ else None)
    words.add_argument("--hauls", type=int, default=100_000)
    words.add_argument("--patience", type=float, default=1.0, help="how many times 0.2 s to allow")
    words.add_argument("--inside", action="store_true", help=argparse.SUPPRESS)
    asked = words.parse_args()
    if asked.inside:
        print(json.dumps(measured()))
        return 0
    with tempfile.TemporaryDirectory() as empty, tempfile.TemporaryDirectory() as full:
        os.environ["FULLSHELL_HOME"] = full
        from planner.logbook import default_logbook

        path = default_logbook()
        path.parent.mkdir(parents=True, exist_ok=True)
        made_log(path, asked.hauls)
        size = path.stat().st_size / 1e6
        nothing = in_a_process(empty)
        runs = [in_a_process(full) for _ in range(3)]
        found = {name: min(run[name] for run in runs) for name in runs[0]}
    print(f"{asked.hauls} hauls, {size:.0f} MB on disk")
    slow = []
    for name, value in found.items():
        if name.startswith("memory"):
            more = value - nothing[name]
            print(f"  {name:24} {more:7.0f} MB above an empty log")
            slow += [name] if more > MOST_MB else []
        else:
            print(f"  {name:24} {value:7.3f} s")
            slow += [name] if value > MOST_S * asked.patience and "background" not in name else []
    print("too slow: " + ", ".join(slow) if slow else "all within bounds")
    return 1 if slow else 0


if __name__ == "__main__":
    sys.exit(main())
