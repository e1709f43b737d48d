"""Panning and zooming over ten years of days: frames of the real window, painted one by one.

    python -m tests.benchmarks.frames [--frames 120]

The window stands at 1280x800 on the demo with an outlook of ten years. The strip is panned at
six weeks, a season, a year and ten years wide, then zoomed from two weeks to ten years and back;
every frame is a change of range and all the painting that follows from it. *Wall* is what the
eye sees on this machine as busy as it is; *own* is the processor time of the window's thread.
The frame that nineteen of twenty keep to counts, beside the mean.
"""

from __future__ import annotations

import argparse
import os
import tempfile
import time
from collections.abc import Iterator
from datetime import date, timedelta

import numpy as np

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

_TODAY = date(2026, 11, 25)
_YEARS = timedelta(days=1826)  # each way
_GOAL_MS = 20.0  # 50 frames a second


def ranges(frames: int) -> Iterator[tuple[str, float, float]]:
    """Yield what is done with the first day in view and the days in view, for every frame."""
    for days in (44.0, 185.0, 366.0, 3000.0):
        room = min(2 * _YEARS.days - days, 20 * days)
        for at in range(frames):
            yield f"pan {days:.0f} days", -room / 2 - days / 2 + room * at / frames, days
    for at in range(frames):
        days = 14 * (3650 / 14) ** (1 - abs(1 - 2 * at / frames))
        yield "zoom 2 weeks to 10 years", -days / 2, days


def measure(frames: int) -> dict[str, list[tuple[float, float]]]:
    """Return wall and own milliseconds of every frame, by what was done."""
    from PySide6.QtWidgets import QGraphicsView

    from planner.assets import demo_log, demo_place
    from planner.trips import outlook
    from planner.ui import theme
    from planner.ui.app import make_app
    from planner.ui.sources import Source
    from planner.ui.state import ViewState
    from planner.ui.strip.days import place_of
    from planner.ui.window import MainWindow
    from planner.ui.workbench import Workbench
    from tests.ui.paints import Paints
    from tests.ui.rooms import settle

    app = make_app()
    theme.apply(app, "light")
    bench = Workbench(ViewState(today=_TODAY, day=_TODAY, theme="light"))
    window = MainWindow(bench)
    window.resize(1280, 800)
    window.show()
    bench.open(Source(str(demo_place()), log=demo_log(), demo=True))
    settle(window)
    assert bench.site is not None
    bench.first, bench.last = _TODAY - _YEARS, _TODAY + _YEARS
    bench.outlook = outlook(bench.site, bench.first, bench.last, bench.log)
    bench.outlook_changed.emit()
    settle(window)
    strip = window._views["dates"].strip  # type: ignore[attr-defined]
    paints = Paints(strip.findChild(QGraphicsView).viewport())
    found: dict[str, list[tuple[float, float]]] = {}
    for name, first, days in ranges(frames):
        begin = place_of(_TODAY) + first
        wall, own = time.perf_counter(), time.thread_time()
        strip._box.setXRange(begin, begin + days, padding=0)
        paints.wait()
        taken = (1000 * (time.perf_counter() - wall), 1000 * (time.thread_time() - own))
        found.setdefault(name, []).append(taken)
    window.close()
    bench.close()
    return found


def main() -> None:
    """Print mean and 95th percentile of each movement."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--frames", type=int, default=120)
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as home:
        os.environ["FULLSHELL_HOME"] = home
        found = measure(options.frames)
    for name, taken in found.items():
        wall, own = np.array(taken).T
        print(
            f"{name}: mean {wall.mean():.1f} ms, 95 of 100 within {np.percentile(wall, 95):.1f} ms "
            f"(own {own.mean():.1f} and {np.percentile(own, 95):.1f} ms): "
            f"{1000 / wall.mean():.0f} frames a second (goal 50)"
        )
    every = np.array([pair for taken in found.values() for pair in taken])
    over = (every > _GOAL_MS).mean(axis=0)
    print(f"frames over 20 ms: {over[0]:.1%} by the wall, {over[1]:.1%} by the thread's own time")


if __name__ == "__main__":
    main()
