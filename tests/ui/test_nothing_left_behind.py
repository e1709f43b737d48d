"""A window that is used all day is as large in the evening: changes leave nothing behind.

`tests.benchmarks.leaks` plays a thousand of the same changes and tells megabytes too.
"""

from __future__ import annotations

from itertools import islice
from typing import Any

from planner.ui.sources import demo_source
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench
from tests.benchmarks.leaks import ROUND, changes, kept, rest


def test_a_round_of_changes_leaves_nothing_behind(qtbot: Any, empty_bench: Workbench) -> None:
    """Widgets, other objects, items of charts and listeners are as many as a round before."""
    window = MainWindow(empty_bench)
    qtbot.addWidget(window)
    window.resize(1280, 800)
    window.show()
    empty_bench.open(demo_source())
    rest(window)
    endless, counts = changes(empty_bench), []
    for _ in range(2):
        for change in islice(endless, ROUND):
            change()
            rest(window)
        counts.append(kept(window))
    assert counts[0] == counts[1]
    assert counts[0].scene_items > 100  # charts were there to be counted
