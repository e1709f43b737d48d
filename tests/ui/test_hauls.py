"""The log view under real keys: a whole trip typed in, saved cell by cell, undone by name."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from log_desk import (
    AT,
    NOW,
    choose,
    in_book,
    keys,
    made_bench,  # noqa: F401
    made_view,
    settled,
    view_of_bench,  # noqa: F401
    with_plan,
)
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QGuiApplication
from PySide6.QtWidgets import QApplication, QFileDialog, QLineEdit, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from planner.assets import demo_log
from planner.logbook import Haul, Logbook, LogbookError, book_zone, read_log
from planner.phrasing import Style
from planner.ui.hauls.intake_dialog import IntakeDialog
from planner.ui.hauls.view import HaulsView
from planner.ui.workbench import Workbench


def test_a_trip_is_typed_with_tab_enter_and_digits(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the main job: three traps down a column by Enter, across a row by Tab, every cell
    in the file when the next is begun."""
    choose(view, 0, "keepers")
    for count in ("6", "12", "0"):
        keys(qtbot, count, Qt.Key.Key_Return)
    assert view.entry.table.currentIndex().column() == AT["shorts"]
    assert view.entry.table.currentIndex().row() == 0
    for count in ("2", "3", "1", "6", "2"):
        keys(qtbot, count, Qt.Key.Key_Tab)
    settled(qtbot, view)
    first, second, third = in_book(view)
    assert [haul.keepers for haul in (first, second, third)] == [6, 12, 0]
    counts = (first.shorts, first.females, first.sponge, first.judged, first.light)
    assert counts == (2, 3, 1, 6, 2)
    assert (
        "18 keepers, 2 shorts, 3 females (1 sponge), 6 judged, 2 light" in view.entry.totals.text()
    )
    assert "judged of A2" in view.entry.missing.text()


def test_each_cell_is_one_change_with_a_name(qtbot: QtBot, view: HaulsView) -> None:
    """Protects undo and redo: by name, one cell at a time, shown in the table."""
    choose(view, 1, "keepers")
    keys(qtbot, "7", Qt.Key.Key_Return)
    choose(view, 1, "shorts")
    keys(qtbot, "4", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert view.bench.undo_name == "Undo shorts of trap A2, 22 Nov 2026"
    for expected in ((7, None), (None, None)):
        with qtbot.waitSignal(view.bench.log_changed):
            view.bench.undo()
        assert (view.entry.model.hauls[1].keepers, view.entry.model.hauls[1].shorts) == expected
    with qtbot.waitSignal(view.bench.log_changed):
        view.bench.redo()
    assert view.entry.model.hauls[1].keepers == 7


def test_times_are_nudged_by_keys(qtbot: QtBot, view: HaulsView) -> None:
    """Protects + and −, with and without shift, on one cell and on a chosen column."""
    choose(view, 0, "hauled_at")
    keys(qtbot, "+=+-")
    settled(qtbot, view)
    assert in_book(view)[0].hauled_at == NOW + timedelta(minutes=10)
    view.entry.table.selectColumn(AT["set_at"])
    view.entry.table.selectionModel().setCurrentIndex(
        view.entry.model.index(0, AT["set_at"]),
        view.entry.table.selectionModel().SelectionFlag.NoUpdate,
    )
    keys(qtbot, "-")
    settled(qtbot, view)
    assert {haul.set_at for haul in in_book(view)} == {NOW - timedelta(hours=18, minutes=5)}
    assert view.bench.undo_name == "Undo set of 3 traps, 22 Nov 2026"


def test_a_plus_in_a_count_is_no_nudge(qtbot: QtBot, view: HaulsView) -> None:
    """Protects counts from the keys of times: a plus is refused as a count, nothing is saved."""
    choose(view, 0, "keepers")
    keys(qtbot, "+", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert in_book(view)[0].keepers is None
    assert view.entry.refusal.isVisible()


def test_delete_means_not_recorded(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the difference of nothing and zero, to the eye and in the file."""
    choose(view, 0, "keepers")
    keys(qtbot, "0", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert in_book(view)[0].keepers == 0
    index = view.entry.model.index(0, AT["keepers"])
    assert index.data() == "0"
    choose(view, 0, "keepers")
    keys(qtbot, "", Qt.Key.Key_Delete)
    settled(qtbot, view)
    assert in_book(view)[0].keepers is None
    assert index.data() == "–"
    assert index.data(Qt.ItemDataRole.AccessibleTextRole) == "Keepers of trap A1: not recorded"


def test_a_block_of_cells_goes_to_and_from_a_spreadsheet(qtbot: QtBot, view: HaulsView) -> None:
    """Protects who counts in a spreadsheet: a block goes in as one change, whole or not at all,
    and comes out as it went in; a single value fills what is chosen."""
    clipboard, table = QGuiApplication.clipboard(), view.entry.table
    control = Qt.KeyboardModifier.ControlModifier
    choose(view, 0, "keepers")
    clipboard.setText("3\t4\r\n5\t\r\n7\t8\r\n")
    qtbot.keyClick(table, Qt.Key.Key_V, control)
    settled(qtbot, view)
    assert [(haul.keepers, haul.shorts) for haul in in_book(view)] == [(3, 4), (5, None), (7, 8)]
    assert view.bench.book.undo_name == "Undo 6 cells of 3 traps, 22 Nov 2026"
    clipboard.setText("1\t2\n3\tx\n")
    qtbot.keyClick(table, Qt.Key.Key_V, control)
    assert "found x" in view.entry.refusal.text()
    keys(qtbot, "", Qt.Key.Key_Down, Qt.Key.Key_Down)
    qtbot.keyClick(table, Qt.Key.Key_V, control)
    assert "no room for 2 by 2" in view.entry.refusal.text()
    settled(qtbot, view)
    assert [haul.keepers for haul in in_book(view)] == [3, 5, 7]
    keys(qtbot, "", Qt.Key.Key_Up, Qt.Key.Key_Up)
    for _ in range(2):
        qtbot.keyClick(table, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClick(table, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClick(table, Qt.Key.Key_C, control)
    assert clipboard.text() == "3\t4\n5\t\n7\t8"
    clipboard.setText("0")
    qtbot.keyClick(table, Qt.Key.Key_V, control)
    settled(qtbot, view)
    assert [(haul.keepers, haul.shorts) for haul in in_book(view)] == [(0, 0)] * 3


def test_ctrl_d_takes_the_cell_above(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the quick copy from the row before."""
    choose(view, 0, "bait")
    keys(qtbot, "menhaden", Qt.Key.Key_Return)
    choose(view, 1, "bait")
    qtbot.keyClick(view.entry.table, Qt.Key.Key_D, Qt.KeyboardModifier.ControlModifier)
    settled(qtbot, view)
    assert [haul.bait for haul in in_book(view)] == ["menhaden", "menhaden", "mullet"]


def test_words_are_completed_from_the_log(qtbot: QtBot, view: HaulsView) -> None:
    """Protects from two spellings of one bait: the rest of a known word is offered."""
    choose(view, 0, "bait")
    keys(qtbot, "mul")
    editor = QApplication.focusWidget()
    assert isinstance(editor, QLineEdit)
    assert editor.text() == "mullet"


def test_more_light_than_judged_is_refused_beside_the_table(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the share of light crabs: the cell keeps what it had, the sentence says why and
    goes with the next entry."""
    choose(view, 0, "judged")
    keys(qtbot, "5", Qt.Key.Key_Return)
    choose(view, 0, "light")
    keys(qtbot, "6", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert "more than were judged (5)" in view.entry.refusal.text()
    assert view.entry.refusal.isVisible()
    assert in_book(view)[0].light is None
    at = view.entry.table.currentIndex()
    assert (at.row(), at.column()) == (0, AT["light"])
    keys(qtbot, "4", Qt.Key.Key_Return)
    assert view.entry.table.currentIndex().row() == 1
    settled(qtbot, view)
    assert not view.entry.refusal.isVisible()
    assert in_book(view)[0].light == 4


def test_the_improbable_is_asked_about(qtbot: QtBot, view: HaulsView) -> None:
    """Protects from a slipped digit without standing in the way: saved, and asked about."""
    choose(view, 0, "keepers")
    keys(qtbot, "60", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert in_book(view)[0].keepers == 60
    assert "60 keepers in one trap" in view.entry.doubts.text()


def test_typing_faster_than_saving_loses_nothing(qtbot: QtBot, view: HaulsView) -> None:
    """Protects what is on screen from older news of the log: a burst of cells all stay."""
    for field in ("keepers", "shorts", "females"):
        choose(view, 0, field)
        for count in ("1", "2", "3"):
            keys(qtbot, count, Qt.Key.Key_Return)
            assert view.entry.model.hauls[int(count) - 1].__getattribute__(field) == int(count)
    settled(qtbot, view)
    for at, haul in enumerate(in_book(view), start=1):
        assert (haul.keepers, haul.shorts, haul.females) == (at, at, at)


def test_news_of_the_log_leaves_alone_what_is_being_typed(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the second digit: the first cell is saved while the next is half typed."""
    choose(view, 0, "keepers")
    keys(qtbot, "5", Qt.Key.Key_Tab)
    keys(qtbot, "1")
    settled(qtbot, view)
    view.bench.change_log(lambda book: book.save_trip("later", [Haul("later", "Sedge Hollow")]))
    settled(qtbot, view)
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    assert line.text() == "1"
    keys(qtbot, "2", Qt.Key.Key_Tab)
    settled(qtbot, view)
    assert (in_book(view)[0].keepers, in_book(view)[0].shorts) == (5, 12)


def test_only_rows_that_differ_are_drawn_anew(qtbot: QtBot, view: HaulsView) -> None:
    """Protects quick typing: the log that comes back as it is on screen costs the table nothing;
    other units and a change made elsewhere are shown."""
    model = view.entry.model
    told: list[tuple[int, int]] = []
    model.dataChanged.connect(lambda first, last, *_: told.append((first.row(), last.row())))
    view.refresh()
    settled(qtbot, view)
    assert told == []
    hauls = list(model.hauls)
    hauls[1] = replace(hauls[1], keepers=8)
    view.bench.change_log(lambda book: book.save_trip("22 Nov 2026", hauls))
    settled(qtbot, view)
    assert told == [(1, 1)]
    assert model.data(model.index(1, AT["keepers"])) == "8"
    view.bench.state.change(style=Style(length="ft"))
    assert told == [(1, 1), (0, 2)]
    assert model.data(model.index(0, AT["depth_m"])) == "6.23"


def test_what_cannot_be_saved_stays_and_is_tried_again(
    qtbot: QtBot, view: HaulsView, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects entries from a full disk: a sentence, everything stays on screen, another trip may
    be looked at meanwhile, and all of it is saved when there is room."""

    def full(*_: object, **__: object) -> None:
        raise LogbookError("The disk is full; make room.")

    other = Haul("20 Nov 2026", "Sedge Hollow", trap="Z")
    with qtbot.waitSignal(view.bench.log_changed):
        view.bench.change_log(lambda book: book.add_hauls([other], "import of x"))
    settled(qtbot, view)
    with monkeypatch.context() as patch:
        patch.setattr(view.bench.book, "save_trip", full)
        choose(view, 0, "keepers")
        keys(qtbot, "6", Qt.Key.Key_Return)
        keys(qtbot, "7", Qt.Key.Key_Return)
        view.entry.details.crew.setFocus()
        keys(qtbot, "2", Qt.Key.Key_Return)
        settled(qtbot, view)
        assert "disk is full" in view.entry.refusal.text()
        assert view.entry.again.isVisible()
        view.choose(("20 Nov 2026", "Sedge Hollow"))
        view.choose(("22 Nov 2026", "Sedge Hollow"))
        assert [haul.keepers for haul in view.entry.model.hauls] == [6, 7, None]
        assert view.entry.details.crew.text() == "2"
        asked: list[object] = []
        cancel = QMessageBox.StandardButton.Cancel
        patch.setattr(QMessageBox, "warning", lambda *_: asked.append(1) or cancel)
        assert not view.may_close()
        assert asked
    assert view.entry.again.isVisible()
    view.entry.again.click()
    settled(qtbot, view)
    assert [haul.keepers for haul in in_book(view)] == [6, 7, None]
    assert view.bench.log.by_trip["22 Nov 2026", "Sedge Hollow"].trip.crew == 2
    assert not view.entry.refusal.isVisible()
    assert view.may_close()


def test_a_new_trip_starts_from_the_chosen_plan(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the way from plan to log: one click, the rows are there and in the file."""
    assert not view.from_plan.isVisible()
    with_plan(view.bench)
    assert view.from_plan.text() == "New trip from plan 1 (Sun 29 Nov)"
    view.from_plan.click()
    qtbot.waitUntil(lambda: view.chosen == ("29 Nov 2026", "Sedge Hollow"))
    settled(qtbot, view)
    rows = in_book(view, "29 Nov 2026")
    assert len(rows) == view.bench.site.habits.traps
    assert {"A1", "A2", "B1"} <= {row.trap for row in rows}
    assert rows[0].set_at == datetime(2026, 11, 27, 19, 0, tzinfo=UTC)
    assert "lie ahead" in view.entry.doubts.text()
    assert view.trips.table.currentIndex().data() == "29 Nov 2026"
    assert view.bench.undo_name == "Undo start of trip 29 Nov 2026"


def test_a_new_trip_today_has_the_last_traps(qtbot: QtBot, view: HaulsView) -> None:
    """Protects a trip without a plan; a clock alone then means today, and the eve for the set."""
    view.like_last.click()
    qtbot.waitUntil(lambda: view.chosen == ("25 Nov 2026", "Sedge Hollow"))
    settled(qtbot, view)
    choose(view, 0, "set_at")
    keys(qtbot, "1710", Qt.Key.Key_Tab)
    keys(qtbot, "740", Qt.Key.Key_Return)
    settled(qtbot, view)
    row = in_book(view, "25 Nov 2026")[0]
    zone = view.bench.site.zone
    assert row.trap == "A1"
    assert row.set_at == datetime(2026, 11, 24, 17, 10, tzinfo=zone)
    assert row.hauled_at == datetime(2026, 11, 25, 7, 40, tzinfo=zone)


def test_rows_are_added_and_removed(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the trap that was forgotten, and the one that was not aboard."""
    choose(view, 0, "trap")
    view.entry.add_trap.click()
    keys(qtbot, "A9", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert [haul.trap for haul in in_book(view)] == ["A1", "A9", "A2", "B1"]
    choose(view, 2, "trap")
    view.entry.remove_trap.click()
    settled(qtbot, view)
    assert [haul.trap for haul in in_book(view)] == ["A1", "A9", "B1"]


def test_what_is_being_typed_is_taken_before_a_trap_is_added(qtbot: QtBot, view: HaulsView) -> None:
    """Protects digits that no Enter has left yet: Ctrl+Return takes them in, and what they cannot
    be stays told beside the new row."""
    choose(view, 0, "keepers")
    keys(qtbot, "7")
    editor = QApplication.focusWidget()
    qtbot.keyClick(editor, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    settled(qtbot, view)
    assert [haul.keepers for haul in in_book(view)] == [7, None, None, None]
    choose(view, 0, "shorts")
    keys(qtbot, "99999")
    view.entry.add_trap.setFocus()
    view.entry.add_trap.click()
    settled(qtbot, view)
    assert len(in_book(view)) == 5
    assert "more than one trap can hold" in view.entry.refusal.text()


def test_a_trip_is_deleted_at_once_and_undone(qtbot: QtBot, view: HaulsView) -> None:
    """Protects delete: no question, an empty view that says what will be here, and undo."""
    with qtbot.waitSignal(view.bench.log_changed):
        view.delete.click()
    assert in_book(view) == []
    assert view.import_first.isVisible()
    assert view.bench.undo_name == "Undo delete of trip 22 Nov 2026"
    with qtbot.waitSignal(view.bench.log_changed):
        view.bench.undo()
    assert len(in_book(view)) == 3
    assert view.entry.table.isVisible()


def test_trips_of_one_name_at_two_places_keep_apart(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the other place: neither typing nor deleting touches a trip of the same name."""
    other = Haul("22 Nov 2026", "Otter Bight", trap="Z", keepers=9)
    with qtbot.waitSignal(view.bench.log_changed):
        view.bench.change_log(lambda book: book.add_hauls([other], "import of x"))
    settled(qtbot, view)
    view.choose(("22 Nov 2026", "Sedge Hollow"))
    choose(view, 0, "keepers")
    keys(qtbot, "5", Qt.Key.Key_Return)
    settled(qtbot, view)
    assert {(haul.trap, haul.keepers) for haul in in_book(view)} >= {("Z", 9), ("A1", 5)}
    view.delete.click()
    settled(qtbot, view)
    assert in_book(view) == [other]


def test_details_of_the_trip_are_saved(qtbot: QtBot, view: HaulsView) -> None:
    """Protects crew, water and weather; a wrong reading is refused with a sentence."""
    view.bench.state.change(style=Style("ft", "F", True))
    view.entry.details.crew.setFocus()
    keys(qtbot, "2", Qt.Key.Key_Tab)
    keys(qtbot, "68", Qt.Key.Key_Tab)
    keys(qtbot, "9", Qt.Key.Key_Tab)
    keys(qtbot, "4", Qt.Key.Key_Tab)
    keys(qtbot, "fog", Qt.Key.Key_Return)
    settled(qtbot, view)
    (trip,) = view.bench.log.trips
    assert (trip.crew, trip.water_c, trip.weather) == (2, 20.0, "fog")
    assert (trip.kitchen_picked, trip.kitchen_light) == (9, 4)
    assert "in the kitchen 9 picked, 4 light" in view.entry.totals.text()
    assert "judged" not in view.entry.missing.text()
    view.entry.details.light.setFocus()
    view.entry.details.light.setText("10")
    keys(qtbot, "", Qt.Key.Key_Return)
    assert "more than were picked (9)" in view.entry.refusal.text()
    settled(qtbot, view)
    assert view.bench.log.trips[0].kitchen_light == 4
    view.entry.details.water.setFocus()
    view.entry.details.water.setText("mild")
    keys(qtbot, "", Qt.Key.Key_Return)
    assert "Not saved" in view.entry.refusal.text()
    assert len(in_book(view)) == 3


def test_a_log_for_reading_only_says_so(qtbot: QtBot, bench: Workbench) -> None:
    """Protects a second window: it reads, says why it does not write, and no key edits."""
    path = bench.book.path
    second = Workbench(bench.state)
    second.site = bench.site
    second.book = Logbook.open(path)
    try:
        second._set_log(second.book.read())
        view = made_view(qtbot, second)
        assert view.locked.isVisible()
        assert "reading only" in view.locked.text()
        choose(view, 0, "keepers")
        keys(qtbot, "6", Qt.Key.Key_Return)
        keys(qtbot, "", Qt.Key.Key_Delete)
        assert view.entry.model.hauls[0].keepers is None
        assert not view.delete.isEnabled()
        assert not view.like_last.isEnabled()
        assert view.files.export.isEnabled()
    finally:
        second.close()


def test_a_table_is_taken_in_and_given_out(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects the way in and out: the demo's table comes in once, and goes out whole."""
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(demo_log()), ""))
    with qtbot.waitSignal(view.bench.notice) as said:
        view.files.import_.click()
    assert "352 hauls added" in said.args[0]  # three fill the rows that wait for them
    with qtbot.waitSignal(view.bench.notice) as said:
        view.files.import_.click()
    assert "nothing added" in said.args[0]
    settled(qtbot, view)
    out = tmp_path / "out.csv"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(out), ""))
    with qtbot.waitSignal(view.bench.notice):
        view.files.export.click()
    assert read_log(out, book_zone).fingerprint == view.bench.log.fingerprint


def test_a_bad_table_is_listed_whole_and_the_good_rows_offered(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects from half a table: nothing is taken, all problems are shown, the user decides."""
    table = tmp_path / "mine.csv"
    table.write_text(
        "trip,place,trap,keepers,judged,light\n1 Oct,Sedge Hollow,A,3,,\n"
        "1 Oct,Sedge Hollow,B,many,,\n1 Oct,Sedge Hollow,C,3,2,5\n"
    )
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(table), ""))
    view.files.import_.click()
    qtbot.waitUntil(lambda: view.findChild(IntakeDialog) is not None)
    dialog = view.findChild(IntakeDialog)
    assert isinstance(dialog, IntakeDialog)
    assert "line 3, keepers" in dialog.problems.toPlainText()
    assert "line 4, light" in dialog.problems.toPlainText()
    assert in_book(view, "1 Oct") == []
    with qtbot.waitSignal(view.bench.notice):
        dialog.take.click()
    assert [haul.trap for haul in in_book(view, "1 Oct")] == ["A"]


def unnamed(view: QWidget) -> list[str]:
    """Return the widgets that Tab reaches and a screen reader has no name for."""
    return [
        f"{type(widget).__name__} {widget.objectName()}"
        for widget in view.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.isVisible()
        and not QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
    ]


def test_every_widget_that_tab_reaches_has_a_name(view: HaulsView) -> None:
    """Protects who cannot see the screen: no nameless stop."""
    assert unnamed(view) == []
