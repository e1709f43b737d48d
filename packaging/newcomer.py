"""Somebody who has never seen the program: plans a trip, logs it, finds out why crabs were light.

Real clicks and keys through the real window on the demo place; only what is on the screen is
used, in whatever language it is. A test walks the path and looks at what is read on it, and
`pictures.py` draws it.
"""

from __future__ import annotations

import string
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING, Final, TypeVar

from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QCheckBox, QLabel, QPushButton, QTableView, QTabWidget

from planner.words import say

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from planner.ui.window import MainWindow

BEFORE: Final = date(2026, 11, 25)  # an evening some days before the trip
AFTER: Final = date(2026, 11, 30)  # the evening after it
_PATIENCE_S: Final = 60
_SIZE: Final = (1280, 800)
# Keepers, judged and light of each trap: more than one crab in three is light.
_KEPT, _JUDGED, _LIGHT = 3, 3, (1, 2, 1)

Show = Callable[[str, "MainWindow"], None]
Kind = TypeVar("Kind", bound="QWidget")


@dataclass
class Read:
    """What the newcomer read on the way, by step."""

    plan: str = ""
    ticked: str = ""
    totals: str = ""
    before: str = ""
    day: str = ""
    alike: str = ""
    after: str = ""
    evidence: str = ""
    pictures: list[str] = field(default_factory=list)


def walk(show: Show) -> Read:
    """Walk the whole path; `show` is called with each step's name and window, to draw it.

    The user's folder must be empty, as on a first start.
    """
    read = Read()

    def step(name: str, window: MainWindow) -> None:
        _settle(window)
        read.pictures.append(name)
        show(name, window)

    with _opened(BEFORE) as window:
        read.plan = _shown(window, "full keepers")
        read.before = _words_of_day(window, date(2026, 12, 4))
        _press(window, "Today")
        step("path-1-plan", window)
        _press(window, "Load up for this plan")
        _settle(window)
        first = _seen(window, QCheckBox)[0]
        _click(first, QPoint(8, first.height() // 2))
        read.ticked = _shown(window, "{ticked} of {whole} ticked off for this trip")
        step("path-2-load", window)
        _press(window, "Choose dates")
        _settle(window)
        _press(window, "Log this trip")
        _settle(window)
    with _opened(AFTER) as window:
        _press(window, "Log hauls")
        _settle(window)
        _count(window)
        read.totals = _shown(window, "{keepers} keepers", "{judged} judged, {lights} light{share}")
        step("path-3-log", window)
        _press(window, "Choose dates")
        _settle(window)
        read.day = _words_of_day(window, date(2026, 11, 29))
        _turn_to(window, "Past trips like it")
        _settle(window)
        read.alike = "\n".join(_labels(window))
        step("path-4-day", window)
        read.after = _words_of_day(window, date(2026, 12, 4))
        _press(window, "Weigh evidence")
        _settle(window)
        read.evidence = "\n".join(_labels(window))
        step("path-5-evidence", window)
    return read


# -- what hands do -------------------------------------------------------------------------------


def _count(window: MainWindow) -> None:
    """Type keepers, judged and light of every trap, down the columns, with Enter."""
    # The list of trips has some of these columns too.
    table = next(each for each in _seen(window, QTableView) if say("Shorts") in _heads(each))
    rows = table.model().rowCount()
    for head, count in (("Keepers", [_KEPT]), ("Judged", [_JUDGED]), ("Light", [*_LIGHT])):
        column = _heads(table).index(say(head))
        cell = table.visualRect(table.model().index(0, column))
        _click(table.viewport(), cell.center())
        for row in range(rows):
            for key in str(count[row % len(count)]):
                QTest.keyClicks(_focus(), key)
            QTest.keyClick(_focus(), Qt.Key.Key_Return)
        _settle(window)


def _words_of_day(window: MainWindow, day: date) -> str:
    """Go to a day by the arrow keys, from today, and read the words under the strip."""
    from planner.phrasing import day_text
    from planner.ui.strip import StripView

    _press(window, "Today")
    (strip,) = _seen(window, StripView)
    strip.setFocus(Qt.FocusReason.TabFocusReason)
    steps = (day - window.state.today).days
    for _ in range(abs(steps)):
        QTest.keyClick(strip, Qt.Key.Key_Right if steps > 0 else Qt.Key.Key_Left)
    _settle(window)
    head = "{day} {year}: {mean} full ({range}), light crabs {light}"
    return _shown(window, f"{day_text(day)} {day.year}: ", head)


def _press(window: MainWindow, words: str) -> None:
    """Press the one button with these words that can be seen and pressed."""
    (button,) = (
        each
        for each in _seen(window, QPushButton)
        if each.text().replace("&", "") == say(words) and each.isEnabled()
    )
    _click(button)


def _turn_to(window: MainWindow, words: str) -> None:
    for tabs in _seen(window, QTabWidget):
        for at in range(tabs.count()):
            if tabs.tabText(at) == say(words):
                _click(tabs.tabBar(), tabs.tabBar().tabRect(at).center())


def _click(widget: QWidget, where: QPoint | None = None) -> None:
    at = widget.rect().center() if where is None else where
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    QApplication.processEvents()


def _focus() -> QWidget:
    focused = QApplication.focusWidget()
    if focused is None:
        raise AssertionError("the keys go nowhere")
    return focused


# -- what eyes see -------------------------------------------------------------------------------


def _seen(window: MainWindow, kind: type[Kind]) -> list[Kind]:
    """Return what is not hidden behind another view or scrolled out of sight."""
    return [
        each
        for each in window.findChildren(kind)
        if each.isVisible() and not each.visibleRegion().isEmpty()
    ]


def _labels(window: MainWindow) -> list[str]:
    return [each.text() for each in _seen(window, QLabel)]


def _shown(window: MainWindow, *texts: str) -> str:
    """Return the label that says these texts, whatever their values, waiting until it is there."""
    words = [word for text in texts for word, *_ in string.Formatter().parse(say(text))]

    def found() -> list[str]:
        return [text for text in _labels(window) if all(each in text for each in words)]

    _wait(lambda: bool(found()), f"a text with {words}")
    return found()[0]


def _heads(table: QTableView) -> list[str]:
    model = table.model()
    across = Qt.Orientation.Horizontal
    return [str(model.headerData(at, across)) for at in range(model.columnCount())]


# -- the window ----------------------------------------------------------------------------------


@contextmanager
def _opened(today: date) -> Iterator[MainWindow]:
    """Open the window as a start does, and close it."""
    from planner.ui.sources import demo_source
    from planner.ui.state import ViewState
    from planner.ui.window import MainWindow
    from planner.ui.workbench import Workbench

    window = MainWindow(Workbench(ViewState(today=today, day=today, theme="light")))
    window.resize(*_SIZE)
    window.show()
    window.activateWindow()
    _wait(window.isActiveWindow, "the window")
    window.bench.open(demo_source())
    _settle(window)
    try:
        yield window
    finally:
        window.close()
        window.deleteLater()
        QCoreApplication.sendPostedEvents(window, QEvent.Type.DeferredDelete)


def _settle(window: MainWindow) -> None:
    """Wait until nothing is being worked out, and everything is laid out."""
    _wait(lambda: window.bench.idle, "work to end")
    for _ in range(10):
        QApplication.processEvents()
    _wait(lambda: window.bench.idle, "work to end")


def _wait(true: Callable[[], bool], what: str) -> None:
    deadline = time.monotonic() + _PATIENCE_S
    while not true():
        if time.monotonic() > deadline:
            raise AssertionError(f"waited in vain for {what}")
        QApplication.processEvents()
        time.sleep(0.005)
