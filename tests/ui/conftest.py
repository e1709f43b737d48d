"""What the tests of the window share: an app in fixed colours and the demo on the workbench."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from datetime import date
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QWidget

import planner.trips
from planner.assets import demo_log, demo_place
from planner.logbook import Log
from planner.trips import Outlook, Search
from planner.ui import theme
from planner.ui.sources import Source
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench

TODAY = date(2026, 11, 25)
PATIENCE_MS = 20_000  # shared machines have slow moments; a condition that holds ends the wait

Settle = Callable[[Workbench], None]


def activate(qtbot: Any, window: QWidget) -> None:
    """Make a window the active one, asking again: one that is closing may take that away."""

    def is_active() -> bool:
        window.activateWindow()
        return window.isActiveWindow()

    qtbot.waitUntil(is_active, timeout=PATIENCE_MS)


class _WorkedOut:
    """Real outlooks and searches, each worked out once: like asks have like answers."""

    def __init__(self) -> None:
        self._kept: dict[Any, Any] = {}
        self._outlook, self._search = planner.trips.outlook, planner.trips.Search

    def outlook(
        self, site: Any, first: date, last: date, log: Log | None = None, **options: Any
    ) -> Outlook:
        sun = options.get("sun", True)
        key = ("outlook", repr(site), first, last, log and log.fingerprint, sun)
        if key not in self._kept:
            self._kept[key] = self._outlook(site, first, last, log, **options)
        return self._kept[key]

    def search(self, ahead: Outlook, log: Log | None = None, **options: Any) -> Search:
        key = ("search", repr(ahead.site), ahead.days, log and log.fingerprint, str(options))
        if key not in self._kept:
            self._kept[key] = self._search(ahead, log=log, **options)
        return self._kept[key]


@pytest.fixture(autouse=True)
def _nothing_left() -> Iterator[None]:
    """Delete what a test has closed: it would be styled and painted along with what follows.

    As in the program itself, no cycle is collected on a worker: Qt hangs when a thread pool or
    a widget of an earlier test ends there.
    """
    gc.disable()
    yield
    if QCoreApplication.instance() is not None:
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.enable()


@pytest.fixture(scope="session")
def _worked_out() -> _WorkedOut:
    return _WorkedOut()


@pytest.fixture(autouse=True)
def worked_out(_worked_out: _WorkedOut, monkeypatch: pytest.MonkeyPatch) -> None:
    """Let workbenches share what others have worked out from the same place, days and log."""
    monkeypatch.setattr(planner.trips, "outlook", _worked_out.outlook)
    monkeypatch.setattr(planner.trips, "Search", _worked_out.search)


@pytest.fixture(scope="session")
def _light(qapp: QApplication) -> QApplication:
    theme.apply(qapp, "light")
    return qapp


@pytest.fixture
def app(_light: QApplication) -> Iterator[QApplication]:
    """The application in the light theme, whatever the machine's own; put back afterwards."""
    yield _light
    if theme.current() is not theme.LIGHT:
        theme.apply(_light, "light")


@pytest.fixture
def settle(qtbot: Any) -> Settle:
    """Wait until a workbench has nothing left to read or work out."""
    return lambda bench: qtbot.waitUntil(lambda: bench.idle, timeout=PATIENCE_MS)


@pytest.fixture
def empty_bench(app: QApplication, worked_out: None) -> Iterator[Workbench]:
    """A workbench on which nothing is open yet; closed after the test."""
    made = Workbench(ViewState(today=TODAY, day=TODAY, theme="light"))
    yield made
    made.close()


@pytest.fixture
def bench(empty_bench: Workbench, settle: Settle) -> Workbench:
    """The demo place with its invented log, read and worked out."""
    empty_bench.open(Source(str(demo_place()), log=demo_log(), demo=True))
    settle(empty_bench)
    return empty_bench
