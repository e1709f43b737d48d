"""What changes together is painted together: a chart does not hurry the window."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from paints import Paints
from PySide6.QtWidgets import QApplication, QGraphicsView

from planner.ui.dates.view import DatesView
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench


@pytest.fixture
def window(bench: Workbench, qtbot: Any, settle: Any) -> MainWindow:
    made = MainWindow(bench)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    qtbot.waitExposed(made)
    settle(bench)
    return made


def test_words_that_grow_beside_a_chart_cost_one_painting(window: MainWindow) -> None:
    """Painted before its words have their places, the window is painted all over again."""
    view = window.findChild(DatesView)
    paints = Paints(view.strip.findChild(QGraphicsView).viewport())
    heights = []
    for day, lines in ((3, 9), (5, 1)):
        paints.count = 0
        view.strip.choose_day(view.state.today + timedelta(days=day))
        view.move_line.setText("\n".join(["words"] * lines))
        for _ in range(12):
            QApplication.processEvents()
        assert paints.count == 1
        heights.append(view.plans.height())
    assert heights[0] < heights[1]  # the words did take their places
