"""Memory over a thousand changes of view, theme, day, unit and place: it stays where it was.

    python -m tests.benchmarks.leaks [--changes 1000]

After two rounds of them, when everything has been built and caches are full, and at the end:
objects of Qt, listeners and what Python holds (tracemalloc sees numpy too), and the memory of the
process as the system counts it.
"""

from __future__ import annotations

import argparse
import contextlib
import ctypes
import gc
import os
import sys
import tempfile
import tracemalloc
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import cycle, islice
from pathlib import Path
from typing import Final

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QAbstractAnimation, QCoreApplication, QEvent, QObject
from PySide6.QtWidgets import QApplication, QGraphicsView

from planner.sites import list_places
from planner.ui import theme
from planner.ui.app import make_app
from planner.ui.sources import Source, demo_source
from planner.ui.state import ViewState
from planner.ui.window import VIEWS, MainWindow
from planner.ui.workbench import Workbench
from tests.ui.rooms import settle

_TODAY = date(2026, 11, 25)
ROUND: Final = 84  # changes after which the same view, place, day, unit and theme are shown


@dataclass(frozen=True)
class Kept:
    """What Qt and the view's state hold at some moment."""

    widgets: int
    qt_objects: int
    scene_items: int
    listeners: int


@dataclass(frozen=True)
class Held:
    """What is held at some moment, and what that takes."""

    kept: Kept
    python_mb: float
    process_mb: float

    def line(self) -> str:
        return (
            f"{self.kept.widgets} widgets, {self.kept.qt_objects} Qt objects, "
            f"{self.kept.scene_items} items in charts, {self.kept.listeners} listeners, "
            f"Python {self.python_mb:.1f} MB, process {self.process_mb:.0f} MB"
        )


def changes(bench: Workbench) -> Iterator[Callable[[], object]]:
    """Yield changes of view, theme, day, unit and place without end, the same every round."""
    state, demo = bench.state, demo_source()
    others = [str(e.path) for e in list_places() if str(e.path) != demo.place][:2]
    views = cycle(name for name, *_ in VIEWS)
    places = cycle([Source(others[0]), demo, Source(others[1]), demo])
    for at in cycle(range(20)):
        yield lambda: state.change(view=next(views))
        yield lambda at=at: state.change(theme=("dark", "light")[at % 2])
        yield lambda at=at: state.change(day=_TODAY + timedelta(days=at))
        unit = ("ft", "m")[at % 2]
        yield lambda unit=unit: state.change(style=replace(state.style, length=unit))
        if at % 5 == 4:
            yield lambda: bench.open(next(places))


def rest(window: MainWindow) -> None:
    """Let all be worked out, and let go of what is to be deleted.

    The program's own loop does that; turning it by hand does not.
    """
    settle(window)
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def kept(window: MainWindow) -> Kept:
    """Count what is there."""
    gc.collect()
    bench = window.bench
    objects = (each for owner in (window, bench) for each in owner.findChildren(QObject))
    return Kept(
        len(QApplication.allWidgets()),
        # A bar's own motion ends with its next tick after the bar is hidden: now or in a moment.
        sum(not isinstance(each, QAbstractAnimation) for each in objects),
        sum(len(view.items()) for view in window.findChildren(QGraphicsView)),
        len(bench.state._listeners),
    )


def measure(count: int, where: bool = False) -> tuple[Held, Held]:
    """Return what is held after two rounds and after all; print what grew most if asked to."""
    app = make_app()
    theme.apply(app, "light")
    bench = Workbench(ViewState(today=_TODAY, day=_TODAY, theme="light"))
    window = MainWindow(bench)
    window.resize(1280, 800)
    window.show()
    bench.open(demo_source())
    settle(window)

    def held() -> Held:
        return Held(kept(window), tracemalloc.get_traced_memory()[0] / 1e6, _process_mb())

    early, before = None, None
    tracemalloc.start()
    for number, change in enumerate(islice(changes(bench), count), start=1):
        change()
        rest(window)
        if number == _settled(count):
            early = held()
            before = tracemalloc.take_snapshot() if where else None
    late = held()
    if before is not None:
        for line in tracemalloc.take_snapshot().compare_to(before, "lineno")[:12]:
            print(line)
    tracemalloc.stop()
    window.close()
    bench.close()
    assert early is not None
    return early, late


def _settled(count: int) -> int:
    """Return after how many changes everything has been built and caches are full."""
    return min(2 * ROUND, count // 2)


def _process_mb() -> float:
    """Return the memory of the process once the C library has given back what it kept for later."""
    if sys.platform == "linux":
        with contextlib.suppress(AttributeError):  # another C library than GNU's
            ctypes.CDLL(None).malloc_trim(0)
    status = Path("/proc/self/status")
    if not status.exists():
        return float("nan")
    line = next(x for x in status.read_text().splitlines() if x.startswith("VmRSS"))
    return int(line.split()[1]) / 1000


def main() -> None:
    """Print what is held early and late."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--changes", type=int, default=1000)
    parser.add_argument("--where", action="store_true", help="tell what grew most")
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as home:
        os.environ["FULLSHELL_HOME"] = home
        early, late = measure(options.changes, options.where)
    print(f"after {_settled(options.changes)} changes: {early.line()}")
    print(f"after {options.changes}: {late.line()}")


if __name__ == "__main__":
    main()
