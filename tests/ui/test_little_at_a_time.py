"""The window is put up a little at a time: a watchdog over a whole session.

What a turn of the event loop costs is mostly the widgets that it makes and puts in their place.
They can be counted, which tells the same on every machine; `tests.benchmarks.session` plays the
same session by the clock.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench
from tests.benchmarks.session import Result, Session, Watchdog
from tests.ui.conftest import activate

# The fields of a place's water with all their forms: the largest part that is made as a whole.
_MOST_MADE = 170


class _Counting(Watchdog):
    """Counts the widgets that a turn or a key leaves behind, by step of the session."""

    def __init__(self) -> None:
        super().__init__()
        self.made: list[tuple[int, str]] = []

    def time(self, call: Callable[[], Result], *_: object) -> Result:
        before = QApplication.allWidgets()
        result = call()
        after = QApplication.allWidgets()
        made = len(after) - len(before)
        if made > _MOST_MADE:  # looked at more closely only then: there are thousands of turns
            made = _on_windows(after) - _on_windows(before)
        self.made.append((made, self.step))
        return result


def _on_windows(widgets: Sequence[QWidget]) -> int:
    """Count widgets but for the lists that drop down from boxes, which are put up when asked."""
    popup = Qt.WindowType.Popup
    return sum(isValid(each) and each.window().windowType() != popup for each in widgets)


def test_no_turn_of_a_session_puts_up_more_than_a_part(qtbot: Any, empty_bench: Workbench) -> None:
    """A view or a form that is built in one go holds the window: no paint, no key meanwhile."""
    window = MainWindow(empty_bench)
    qtbot.addWidget(window)
    window.resize(1280, 800)
    window.show()
    activate(qtbot, window)
    counting = _Counting()
    Session(window, counting).play()
    steps = {step for _, step in counting.made}
    assert {"edit a place", "open Traps", "dark on evidence"} <= steps  # it was played whole
    over = sorted((each for each in counting.made if each[0] > _MOST_MADE), reverse=True)
    assert not over
