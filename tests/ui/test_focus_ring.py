"""Where the keyboard is can be seen: a ring around tables, trees, charts and on tabs."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QLabel, QTableWidget, QVBoxLayout, QWidget

from planner.ui import theme
from planner.ui.focus_ring import FocusRing
from planner.ui.parts import Tabs
from tests.ui.conftest import activate


@pytest.fixture
def window(app: QApplication, qtbot: Any) -> QWidget:
    ring = FocusRing(app)
    made = QWidget()
    qtbot.addWidget(made)
    made.table, made.other, made.tabs = QTableWidget(3, 2), QTableWidget(3, 2), Tabs("Kinds")
    made.tabs.addTab(QLabel("one"), "One")
    column = QVBoxLayout(made)
    for each in (made.table, made.other, made.tabs):
        column.addWidget(each)
    for table in (made.table, made.other):
        table.setTabKeyNavigation(False)
    made.resize(400, 500)
    made.show()
    activate(qtbot, made)
    made.table.setFocus()
    yield made
    app.focusChanged.disconnect(ring._follow)
    ring.deleteLater()


def _ringed(widget: QWidget) -> bool:
    """Tell whether the widget's own edge is drawn in the colour of the focus."""
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    QApplication.processEvents()
    image = widget.grab().toImage()
    middle = image.height() // 2
    return all(image.pixelColor(x, middle) == QColor(theme.FOCUS) for x in (0, image.width() - 1))


def test_the_ring_follows_the_keyboard(window: Any, qtbot: Any) -> None:
    """Of two tables the one that the arrow keys move in has the ring, also when it grows."""
    qtbot.keyClick(window.table, Qt.Key.Key_Tab)
    assert window.other.hasFocus()
    assert _ringed(window.other)
    assert not _ringed(window.table)
    window.resize(600, 700)
    assert _ringed(window.other)
    qtbot.keyClick(window.other, Qt.Key.Key_Backtab)
    assert _ringed(window.table)
    assert not _ringed(window.other)


def test_a_tab_under_the_keyboard_is_seen(window: Any, qtbot: Any) -> None:
    """The style's tint alone cannot be seen on dark ground."""
    bar = window.tabs.tabBar()

    def inked() -> bool:
        image = bar.grab(bar.tabRect(0)).toImage()
        places = ((x, y) for x in range(image.width()) for y in range(image.height()))
        return any(image.pixelColor(x, y) == QColor(theme.FOCUS) for x, y in places)

    assert not inked()
    qtbot.keyClick(window.table, Qt.Key.Key_Tab)
    qtbot.keyClick(window.other, Qt.Key.Key_Tab)
    assert bar.hasFocus()
    assert inked()
