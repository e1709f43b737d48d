"""Nothing keeps the window's thread from the next paint: a session under a watchdog.

    python -m tests.benchmarks.session [--limit 50] [--all] [--calls] [--times 1]

The window is started as the program starts it, and a session is played to it: every view, tab,
chart as a table, form and dialog; another place, day, plan, theme and unit; a trip begun and
hauls typed; a plan moved. Every click, every key and every turn of the event loop is timed: a
turn is all that Qt has to deliver between two looks at the mouse. Those over the limit are
listed, the worst first.

Two times are given. *Wall* is what the user waits, and grows when the machine is busy with
other things; *own* is the processor time of the window's thread alone.

With --times the session is played so often, and of each step the playing counts in which its
longest turn was shortest: what is slow once was held up by the machine, what is always slow by
the program.

With --calls every single event is timed instead, with what it was delivered to. That tells
where a slow turn comes from, but handing each of the many events inside one to Python makes it
about half as slow again.
"""

from __future__ import annotations

import argparse
import os
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date
from functools import partial
from multiprocessing import get_context
from typing import Any, TypeVar

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

Result = TypeVar("Result")

_STARTED_AT = date(2026, 11, 25)
_LISTED = 5


@dataclass
class Call:
    """A click, a key, a turn of the event loop, or one event, on the window's thread."""

    step: str
    what: str
    wall_ms: float
    own_ms: float

    def line(self) -> str:
        return (
            f"{self.wall_ms:6.0f} ms wall {self.own_ms:6.0f} ms own  {self.step}"
            f"{f': {self.what}' if self.what else ''}"
        )


@dataclass
class Watchdog:
    """What took how long, by step of the session; only the outermost calls count."""

    limit_ms: float = 50.0
    step: str = "start"
    slow: list[Call] = field(default_factory=list)
    count: int = 0
    _depth: int = 0

    def time(self, call: Callable[[], Result], what: Callable[[], str] = str) -> Result:
        """Make a call and note how long that took; what: what it was, asked when it was slow."""
        if self._depth:
            return call()
        self._depth += 1
        wall, own = time.perf_counter(), time.thread_time()
        try:
            return call()
        finally:
            wall, own = time.perf_counter() - wall, time.thread_time() - own
            self._depth -= 1
            self.count += 1
            if 1000 * wall > self.limit_ms / 2:
                self.slow.append(Call(self.step, what(), 1000 * wall, 1000 * own))


class WatchedApplication(QApplication):
    """Times every event on its way, once it has a watchdog."""

    def __init__(self) -> None:
        super().__init__([])
        self.watchdog: Watchdog | None = None

    def notify(self, receiver: QObject, event: QEvent) -> bool:
        if self.watchdog is None:
            return super().notify(receiver, event)
        kind = event.type()
        return self.watchdog.time(
            lambda: super(WatchedApplication, self).notify(receiver, event),
            lambda: f"{kind.name} to {_named(receiver)}",
        )


def _named(receiver: QObject) -> str:
    try:
        name = receiver.objectName()
        if isinstance(receiver, QWidget) and receiver.accessibleName():
            name = receiver.accessibleName()
        return f"{type(receiver).__name__}{f' ({name})' if name else ''}"
    except RuntimeError:  # gone by now
        return "something that is gone"


class Session:
    """Plays a session to the window; each act is an event of its own."""

    def __init__(self, window: Any, watchdog: Watchdog, by_call: bool = False) -> None:
        self.window, self.watchdog = window, watchdog
        # With single events timed, a turn is only what they come in.
        self._turn_once: Callable[[], object] = (
            QApplication.processEvents
            if by_call
            else partial(watchdog.time, QApplication.processEvents)
        )
        self.bench, self.state = window.bench, window.state

    def turn(self, done: Callable[[], bool] = lambda: True) -> None:
        """Run the event loop until something is true, and a little longer."""
        rest = 0
        while rest < 3:
            self._turn_once()
            rest = rest + 1 if done() else 0
            if not done():
                time.sleep(0.001)

    def settle(self) -> None:
        for _ in range(2):
            self.turn(lambda: self.bench.idle)

    def act(self, step: str, act: Callable[[], object]) -> None:
        """Make a call, as the event loop does for a click, then wait for what follows."""
        self.watchdog.step = step
        self.watchdog.time(act)
        self.turn()
        self.settle()

    def keys(self, step: str, widget: QWidget, *pressed: Any) -> None:
        self.watchdog.step = step
        for key in pressed:
            press = partial(
                QTest.keyClicks if isinstance(key, str) else QTest.keyClick,
                QApplication.focusWidget() or widget,
                key,
            )
            self.watchdog.time(press)
            self.turn()
        self.settle()

    # -- the session ---------------------------------------------------------------------------

    def play(self) -> None:
        from planner.ui.sources import demo_source
        from tests.ui.rooms import Rooms

        self.act("open the demo", lambda: self.bench.open(demo_source()))
        self._dates()
        self._hauls()
        self._themes_and_units()
        self._places()
        for _ in Rooms(self.window, self.act).walk():
            pass

    def _dates(self) -> None:
        view = self.window._views["dates"]
        strip = view.strip
        strip.setFocus()
        self.keys("arrow keys over days", strip, *[Qt.Key.Key_Right] * 6, *[Qt.Key.Key_Left] * 3)
        self.keys("zoom by keys", strip, *[Qt.Key.Key_Minus] * 5, *[Qt.Key.Key_Plus] * 5)
        for days in (14, 44, 185, 366):
            self.act(f"show {days} days", lambda days=days: view._show_span(days))
        self.act("show 44 days", lambda: view._show_span(44))
        table = view.plans.table
        table.setFocus()
        self.keys("choose other plans", table, *[Qt.Key.Key_Down] * 4)
        strip.setFocus()
        self.keys("move a plan", strip, Qt.Key.Key_M, *[Qt.Key.Key_Right] * 6, Qt.Key.Key_Return)
        self.act("take the move back", view.moves.undo)
        self.act("strip as a table", lambda: self.state.change(as_table=True))
        self.keys("arrow keys in the table", view.table, *[Qt.Key.Key_Down] * 4)
        self.act("strip again", lambda: self.state.change(as_table=False))

    def _hauls(self) -> None:
        self.act("show the log", lambda: self.state.change(view="hauls"))
        view = self.window._views["hauls"]
        self.act("begin a trip", view.like_last.click)
        table = view.entry.table
        table.setFocus()
        self.keys(
            "type counts",
            table,
            *("5", Qt.Key.Key_Tab, "3", Qt.Key.Key_Tab, "4", Qt.Key.Key_Return),
        )
        self.act("undo", self.bench.undo)
        self.act("delete the trip", view.delete.click)
        self.act("undo the deletion", self.bench.undo)
        other = self.bench.log.by_trip
        self.act("another trip", lambda: view.choose(next(iter(other))))

    def _themes_and_units(self) -> None:
        from dataclasses import replace

        from planner.ui.window import VIEWS

        for name, *_ in VIEWS:
            self.act(f"show {name}", lambda name=name: self.state.change(view=name))
        for name, *_ in VIEWS:
            self.act(f"show {name} again", lambda name=name: self.state.change(view=name))
            self.act(f"dark on {name}", lambda: self.state.change(theme="dark"))
            self.act(f"light on {name}", lambda: self.state.change(theme="light"))
            feet = replace(self.state.style, length="ft")
            self.act(f"feet on {name}", lambda feet=feet: self.state.change(style=feet))
            metres = replace(self.state.style, length="m")
            self.act(f"metres on {name}", lambda m=metres: self.state.change(style=m))

    def _places(self) -> None:
        from planner.sites import list_places
        from planner.ui.sources import Source, demo_source

        other = next(e for e in list_places() if "demo" not in str(e.path))
        for name in ("places", "dates"):
            self.act(f"show {name}", lambda name=name: self.state.change(view=name))
            self.act(f"another place on {name}", lambda: self.bench.open(Source(str(other.path))))
            self.act(f"the demo on {name}", lambda: self.bench.open(demo_source()))


def record(limit_ms: float = 50.0, by_call: bool = False) -> Watchdog:
    """Play the session in a home of its own and return what was slow."""
    with tempfile.TemporaryDirectory() as home:
        os.environ["FULLSHELL_HOME"] = home
        import gc

        from pyqtgraph.util.garbage_collector import GarbageCollector

        from planner.ui import theme
        from planner.ui.state import ViewState
        from planner.ui.window import MainWindow
        from planner.ui.workbench import Workbench

        app = WatchedApplication() if by_call else QApplication([])
        theme.apply(app, "light")
        bench = Workbench(ViewState(today=_STARTED_AT, day=_STARTED_AT, theme="light"))
        collector = GarbageCollector()
        window = MainWindow(bench)
        window.resize(1280, 800)
        window.show()
        app.processEvents()
        gc.freeze()
        window.activateWindow()
        watchdog = Watchdog(limit_ms)
        if isinstance(app, WatchedApplication):
            app.watchdog = watchdog
        Session(window, watchdog, by_call).play()
        if isinstance(app, WatchedApplication):
            app.watchdog = None
        window.close()
        bench.close()
        del collector
        return watchdog


def play_over(times: int, limit_ms: float) -> list[Watchdog]:
    """Play the session several times, each in a process of its own."""
    with get_context("spawn").Pool(1, maxtasksperchild=1) as pool:
        return pool.starmap(record, [(limit_ms,)] * times, chunksize=1)


def print_least(played: list[Watchdog], limit_ms: float) -> None:
    """Print the longest turn of each step, in the playing where it was shortest."""
    steps = {call.step for each in played for call in each.slow}

    def least(step: str, ms: Callable[[Call], float]) -> float:
        return min(
            max((ms(call) for call in each.slow if call.step == step), default=0.0)
            for each in played
        )

    own = {step: least(step, lambda call: call.own_ms) for step in steps}
    wall = {step: least(step, lambda call: call.wall_ms) for step in steps}
    for step in sorted(steps, key=lambda step: -wall[step])[:_LISTED]:
        print(f"{wall[step]:6.0f} ms wall {own[step]:6.0f} ms own  {step}")
    print(
        f"{played[0].count} turns in a session, played {len(played)} times; steps with a turn "
        f"over {limit_ms:.0f} ms in all of them: {sum(ms > limit_ms for ms in own.values())} by "
        f"the thread's own time, {sum(ms > limit_ms for ms in wall.values())} by the wall; "
        f"longest {max(own.values(), default=0):.0f} ms own, "
        f"{max(wall.values(), default=0):.0f} ms wall"
    )


def main() -> None:
    """Print what was over the limit."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--limit", type=float, default=50.0)
    parser.add_argument("--all", action="store_true", help="list those from half the limit too")
    parser.add_argument("--calls", action="store_true", help="time single events, with names")
    parser.add_argument("--times", type=int, default=1, help="play it so often, and tell the least")
    options = parser.parse_args()
    if options.times > 1:
        print_least(play_over(options.times, options.limit), options.limit)
        return
    found = record(options.limit, options.calls)
    calls = sorted(found.slow, key=lambda call: -call.wall_ms)
    over = [call for call in calls if call.wall_ms > options.limit]
    by_own = [call for call in calls if call.own_ms > options.limit]
    for call in calls if options.all else over:
        print(call.line())
    counted = "calls" if options.calls else "turns"
    print(
        f"{found.count} {counted} in the session; over {options.limit:.0f} ms: {len(by_own)} by "
        f"the thread's own time, {len(over)} by the wall; longest "
        f"{max((c.own_ms for c in calls), default=0):.0f} ms own, "
        f"{max((c.wall_ms for c in calls), default=0):.0f} ms wall"
    )


if __name__ == "__main__":
    main()
