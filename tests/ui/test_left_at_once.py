"""Rooms that are left before they are filled: what arrives later has nobody to go to."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QDialog
from rooms import Rooms
from rooms import settle as settled

from planner.ui.sources import demo_source
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench


def test_a_room_left_at_once_gets_no_late_results(empty_bench: Workbench, qtbot: Any) -> None:
    """Protects whoever opens a dialog or a tab by mistake and is out again in an instant: a
    result for widgets that are gone would be a fault of our own."""
    bench = empty_bench
    bench.open(demo_source())
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.resize(1280, 800)
    window.show()

    def hasty(step: str, call: Callable[[], object]) -> None:
        call()
        if step.startswith("open "):
            # A dialog may come up once something is read; a tab is there at once.
            while ":" not in step and not dialog_is_open() and not bench.idle:
                QApplication.processEvents()
            return
        if step.startswith("close "):
            QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        settled(window)

    def dialog_is_open() -> bool:
        return any(dialog.isVisible() for dialog in window.findChildren(QDialog))

    settled(window)
    left = [name for name, _ in Rooms(window, hasty).walk()]
    settled(window)
    assert len(left) > 30
