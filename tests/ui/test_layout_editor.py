"""Moving traps about in the layout: by keys, by mouse, undone, printed, and into the log."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt
from PySide6.QtGui import QDropEvent
from PySide6.QtWidgets import QStackedWidget
from pytestqt.qtbot import QtBot

from planner.assets import demo_log, demo_place
from planner.estimates import Interval
from planner.handouts import trip_facts, trip_sheet
from planner.handouts.layout import trip_layout
from planner.handouts.moved_traps import moves_file
from planner.logbook import Haul, Log, Logbook, book_zone, read_log
from planner.phrasing import Style
from planner.sites import load_site
from planner.trips import Plan
from planner.ui.hauls.view import HaulsView
from planner.ui.load.layout_desk import LayoutDesk
from planner.ui.load.layout_editor import LayoutEditor
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench

TODAY = date(2026, 11, 25)
PATIENCE_MS = 30_000
SET = datetime(2026, 11, 27, 19, 0, tzinfo=UTC)
PLAN = Plan(
    1, SET, SET, SET + timedelta(hours=42), 42.0, Interval(14, 9, 20), Interval(0.1, 0.05, 0.2),
    0.7, "ramp flat", SET, (), (),
)  # fmt: skip


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Give a workbench with the demo place and a log that can be written; nothing is forecast."""
    monkeypatch.setattr(Workbench, "_refresh", lambda self, plans=True: None)
    bench = Workbench(ViewState(today=TODAY, day=TODAY, view="evidence"))
    bench.site = load_site(demo_place())
    bench.book = Logbook.open(tmp_path / "hauls.logbook")
    bench.book.import_table(str(demo_log()), book_zone)
    with qtbot.waitSignal(bench.log_changed, timeout=PATIENCE_MS):
        bench.change_log(lambda book: None)
    yield bench
    bench.close()


@pytest.fixture
def editor(qtbot: QtBot, bench: Workbench) -> LayoutEditor:
    editor = LayoutEditor(bench)
    qtbot.addWidget(editor)
    editor.resize(480, 700)
    editor.show()
    settled(qtbot, editor)
    return editor


def settled(qtbot: QtBot, editor: LayoutEditor) -> None:
    qtbot.waitUntil(
        lambda: editor.layouts.layout is not None and editor.bench.desk.idle, timeout=PATIENCE_MS
    )


def choose(editor: LayoutEditor, trap: str) -> None:
    for top in range(editor.tree.topLevelItemCount()):
        spot = editor.tree.topLevelItem(top)
        for at in range(spot.childCount()):
            if spot.child(at).data(0, Qt.ItemDataRole.UserRole) == trap:
                editor.tree.setCurrentItem(spot.child(at))
                return
    raise AssertionError(f"{trap} is not in the layout")


def some_trap(editor: LayoutEditor) -> tuple[str, str]:
    """Return a trap at the shallowest spot, and that spot."""
    assert editor.layouts.layout is not None
    first = editor.layouts.layout.placed[0]
    return first.trap, first.spot


def test_keys_move_a_trap_and_take_it_back(qtbot: QtBot, editor: LayoutEditor) -> None:
    """Alt with an arrow moves, what it costs is said, Ctrl+Z undoes, Ctrl+Shift+Z redoes."""
    layouts = editor.layouts
    trap, spot = some_trap(editor)
    before = editor.worth.text()
    assert "as you moved" not in before
    choose(editor, trap)
    assert not editor.above.isEnabled()
    qtbot.keyClick(editor.tree, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert layouts.spot_of(trap) == editor.layouts.layout.spots[1]
    assert editor.tree.chosen == trap
    assert editor.tree.currentItem().text(0) == f"{trap} (moved)"
    settled(qtbot, editor)
    assert "with the traps as you moved them" in editor.worth.text()
    assert "as proposed" in editor.worth.text()
    assert editor.undo.toolTip() == f"Undo: {trap} to {layouts.layout.spots[1]}"
    qtbot.keyClick(editor.tree, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert layouts.spot_of(trap) == spot
    settled(qtbot, editor)
    assert editor.worth.text() == before
    editor.redo.click()
    assert layouts.spot_of(trap) == layouts.layout.spots[1]
    editor.proposed.click()
    assert layouts.spot_of(trap) == spot
    assert not editor.proposed.isEnabled()
    settled(qtbot, editor)
    assert not moves_file().exists()


def test_a_trap_is_dropped_on_another_spot(qtbot: QtBot, editor: LayoutEditor) -> None:
    """The mouse does what the keys do; a drop on nothing does nothing."""
    trap, spot = some_trap(editor)
    choose(editor, trap)
    target = editor.tree.topLevelItem(3)
    where = editor.tree.visualItemRect(target.child(0)).center()
    for point, expected in ((QPointF(-50, -50), spot), (QPointF(where), target.text(0))):
        drop = QDropEvent(
            point,
            Qt.DropAction.MoveAction,
            QMimeData(),
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        editor.tree.dropEvent(drop)
        assert editor.layouts.spot_of(trap) == expected
    settled(qtbot, editor)


def test_moves_are_printed_kept_and_logged(
    qtbot: QtBot, bench: Workbench, editor: LayoutEditor
) -> None:
    """What was moved stands on the trip sheet, outlives the window, and fills the trip's rows."""
    trap, _ = some_trap(editor)
    editor.layouts.move(trap, "deep bend")
    settled(qtbot, editor)
    facts = trip_facts(bench.site, PLAN, bench.log)
    printed = dict(trip_sheet(facts, TODAY, Style()).layout)
    assert trap in printed["deep bend"]
    assert trap not in printed["ramp flat"]
    other = Workbench(ViewState(today=TODAY, day=TODAY))
    other.site, other._log = bench.site, bench.log
    again = LayoutDesk.of(other)
    again.refresh()
    qtbot.waitUntil(lambda: again.layout is not None, timeout=PATIENCE_MS)
    assert again.spot_of(trap) == "deep bend"
    other.close()
    with qtbot.waitSignal(bench.notice, timeout=PATIENCE_MS):
        editor.log.click()
    started = [haul for haul in bench.log.hauls if haul.trip == "25 Nov 2026"]
    assert len(started) == 12
    assert next(haul.spot for haul in started if haul.trap == trap) == "deep bend"
    assert all(haul.keepers is None and haul.hauled_at is None for haul in started)
    assert bench.state.view == "hauls"
    qtbot.waitUntil(lambda: editor.layouts.moves == {} and bench.desk.idle, timeout=PATIENCE_MS)
    assert bench.undo_name is not None
    assert "25 Nov 2026" in bench.undo_name


def test_a_trip_begun_here_stands_ready_in_a_log_that_was_open(
    qtbot: QtBot, bench: Workbench, editor: LayoutEditor
) -> None:
    """Protects the next key press: without the jump, counts go into the trip that was on show."""
    log = HaulsView(bench)
    rooms = QStackedWidget()
    for room in (log, editor):
        rooms.addWidget(room)
    qtbot.addWidget(rooms)
    rooms.show()
    qtbot.waitUntil(lambda: log.chosen is not None and bench.clerk.idle, timeout=PATIENCE_MS)
    older = next(iter(bench.log.by_trip))
    log.choose(older)
    rooms.setCurrentWidget(editor)
    bench.state.listen(lambda _: rooms.setCurrentWidget(log))
    with qtbot.waitSignal(bench.notice, timeout=PATIENCE_MS):
        editor.log.click()
    qtbot.waitUntil(lambda: bench.clerk.idle and bench.desk.idle, timeout=PATIENCE_MS)
    assert log.isVisible()
    assert log.chosen == ("25 Nov 2026", "Sedge Hollow")
    table = log.entry.table
    assert table.hasFocus()
    assert (table.currentIndex().row(), table.currentIndex().column()) == (
        0, table.first_open_column(),
    )  # fmt: skip
    log.choose(older)
    rooms.setCurrentWidget(editor)
    rooms.setCurrentWidget(log)
    assert log.chosen == older  # it jumps once


def test_moves_are_for_one_trip_only() -> None:
    """After a further trip, or with a damaged file, the proposal stands."""
    site, log = load_site(demo_place()), read_log(demo_log(), book_zone)
    moved = {"A1": "deep bend"}
    assert next(p.spot for p in trip_layout(site, log, moved).placed if p.trap == "A1") == (
        "deep bend"
    )
    from planner.handouts.moved_traps import read_moves, write_moves

    write_moves(site.name, log, moved)
    assert read_moves(site.name, log) == moved
    later = Haul("later", site.name, hauled_at=log.hauls[-1].hauled_at + timedelta(days=3))
    assert read_moves(site.name, Log((*log.hauls, later))) == {}
    moves_file().write_text("{", "utf-8")
    assert read_moves(site.name, log) == {}


def test_without_spots_it_says_what_will_be_here(qtbot: QtBot, bench: Workbench) -> None:
    """A place without spots has no layout, and no button that does nothing."""
    from dataclasses import replace

    bench.site = replace(bench.site, spots=())
    editor = LayoutEditor(bench)
    qtbot.addWidget(editor)
    editor.show()
    qtbot.waitUntil(lambda: bench.desk.idle, timeout=PATIENCE_MS)
    assert "will stand here" in editor.worth.text()
    assert not editor.tree.isVisible()
    assert not editor.log.isVisible()
