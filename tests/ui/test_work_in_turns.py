"""Work in turns: the window comes in between, order holds, nothing is done for what is gone."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QObject, QTimer
from shiboken6 import delete

from planner.ui.places.view import PlacesView
from planner.ui.turns import Turns
from planner.ui.workbench import Workbench


def test_between_two_pieces_the_event_loop_turns(qtbot: Any) -> None:
    """Pieces done in one turn would hold the window as long as their sum."""
    turns, done = Turns(), []
    ticks = QTimer(interval=0)
    ticks.timeout.connect(lambda: done.append("tick"))
    ticks.start()
    owner = QObject()
    turns.take(owner, *[lambda at=at: done.append(at) for at in range(3)])
    qtbot.waitUntil(lambda: turns.idle)
    assert [each for each in done if each != "tick"] == [0, 1, 2]
    for first, second in ((0, 1), (1, 2)):
        assert "tick" in done[done.index(first) : done.index(second)]


def test_a_piece_gives_way_to_painting_once(qtbot: Any) -> None:
    """A turn that paints is long enough; yet a window that always paints must not starve work."""
    turns, done, owner = Turns(), [], QObject()
    turns.then(owner, lambda: done.append("first"), lambda: done.append("second"))
    for at in range(4):
        turns.give_way()
        turns._next()
        assert done == [[], ["first"], ["first"], ["first", "second"]][at]


def test_new_pieces_of_an_owner_replace_the_old(qtbot: Any) -> None:
    """What is shown for a plan chosen a moment ago must not follow what is shown for the next."""
    turns, done, owner, other = Turns(), [], QObject(), QObject()
    turns.take(owner, lambda: done.append("old"))
    turns.take(other, lambda: done.append("of another"))
    turns.take(owner, lambda: done.append("new"))
    qtbot.waitUntil(lambda: turns.idle)
    assert done == ["of another", "new"]


def test_nothing_is_done_for_an_owner_that_is_gone(qtbot: Any) -> None:
    """A dialog that was closed while it was still being filled has no widgets to fill."""
    turns, done, owner, other = Turns(), [], QObject(), QObject()
    turns.take(owner, lambda: done.append("gone"))
    turns.take(other, lambda: done.append("there"))
    delete(owner)
    qtbot.waitUntil(lambda: turns.idle)
    assert done == ["there"]


@pytest.mark.parametrize("turns_before", [0, 1, 4])
def test_an_editor_left_while_it_is_made_opens_whole_the_next_time(
    qtbot: Any, bench: Workbench, settle: Any, tmp_path: Path, turns_before: int
) -> None:
    """Going back before all fields are there must leave none out, and none twice."""
    view = PlacesView(bench)
    qtbot.addWidget(view)
    view.show()
    settle(bench)
    view.edit_chosen()
    for _ in range(turns_before):
        bench.turns._next()
    assert not bench.turns.idle
    view.editor.leave()
    settle(bench)
    assert view.editor.path is None
    view.edit_chosen()
    settle(bench)
    tabs = view.editor.tabs
    words = ["Water", "Place", "Spots and ramp", "Temperature", "Rules", "Free days"]
    assert [tabs.tabText(at) for at in range(tabs.count())] == words
    assert bench.site is not None
    assert view.editor.place.name.text() == bench.site.name
