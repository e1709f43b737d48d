"""A table of any make through the mapping step, by clicks and keys; whole logs in and out."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from log_desk import made_bench, pick, reread, settled, view_of_bench  # noqa: F401
from openpyxl import load_workbook
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from planner.intake import recall
from planner.intake.meanings import IN_WORDS, MEANINGS, meaning_of
from planner.logbook import Logbook
from planner.ui.hauls.intake_dialog import IntakeDialog
from planner.ui.hauls.merge_dialog import MergeDialog
from planner.ui.hauls.view import HaulsView
from planner.ui.language_choice import codes
from planner.ui.languages import use
from planner.words import say

LONG_MS = 30_000
AGENCY = (
    "Pot No.,Date pulled,Legal males,Fathoms,Mood\n"
    "Z1,03/04/2026,4,1.5,good\nZ2,05/06/2026,many,2,bad\nZ3,05/06/2026,-,2,bad\n"
)


def dialog_of(qtbot: QtBot, view: HaulsView, path: Path, monkeypatch: Any) -> IntakeDialog:
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    view.files.import_.click()
    qtbot.waitUntil(lambda: view.findChild(IntakeDialog) is not None, timeout=LONG_MS)
    found = view.findChild(IntakeDialog)
    assert isinstance(found, IntakeDialog)
    qtbot.waitUntil(found.isVisible, timeout=LONG_MS)
    return found


def test_a_foreign_table_is_asked_about_and_remembered(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nothing is guessed: dates that may be two days and hauls without a clock are asked for."""
    path = tmp_path / "agency.csv"
    path.write_text(AGENCY)
    before = view.bench.log.hauls
    dialog = dialog_of(qtbot, view, path, monkeypatch)
    assert not dialog.take.isEnabled()
    assert dialog.order_box.isVisible()
    assert dialog.haul_clock.isVisible()
    assert not dialog.set_clock.isVisible()
    assert dialog.place.text() == "Sedge Hollow"
    told = [dialog.columns.item(at, 1).text() for at in range(5)]
    assert told == [
        "Z1 | Z2 | Z3",
        "03/04/2026 | 05/06/2026",
        "4 | many | -",
        "1.5 | 2",
        "good | bad",
    ]
    pick(dialog.order_box, "mdy")
    QTest.keyClicks(dialog.haul_clock, "7:30")
    dialog.haul_clock.setFocus()
    QTest.keyClick(dialog.haul_clock, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "2 new hauls" in dialog.found.text(), timeout=LONG_MS)
    assert "not recorded" in dialog.found.text()
    assert "line 3, Legal males" in dialog.problems.toPlainText()
    assert dialog.take.text() == "Take in 2 good hauls"
    assert view.bench.log.hauls == before
    with qtbot.waitSignal(view.bench.notice, timeout=LONG_MS) as said:
        dialog.take.click()
    assert "2 hauls added" in said.args[0]
    hauls = {haul.trap: haul for haul in view.bench.log.hauls}
    zone = view.bench.site.zone
    assert hauls["Z1"].hauled_at.astimezone(zone).strftime("%d %b %H:%M") == "04 Mar 07:30"
    assert (hauls["Z1"].trip, hauls["Z1"].extra) == (
        "4 Mar 2026",
        {"Fathoms": "1.5", "Mood": "good"},
    )
    assert hauls["Z3"].keepers is None
    kept = recall(("Pot No.", "Date pulled", "Legal males", "Fathoms", "Mood"))
    assert kept is not None
    assert (kept.order, f"{kept.haul_clock:%H:%M}") == ("mdy", "07:30")
    qtbot.waitUntil(lambda: view.findChild(IntakeDialog) is None, timeout=LONG_MS)
    again = dialog_of(qtbot, view, path, monkeypatch)
    assert "2 in the log already" in again.found.text()
    assert not again.take.isEnabled()
    again.leave.click()


def test_a_meaning_can_be_changed_and_belongs_to_one_column(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What was misunderstood is put right in the dialog, and never counted twice."""
    path = tmp_path / "mine.csv"
    path.write_text("trip,trap,good,kept\nx,A,5,3\n")
    dialog = dialog_of(qtbot, view, path, monkeypatch)
    at = dialog.offer.grid.heading.index("good")
    pick(dialog.choices[at], "keepers")
    qtbot.waitUntil(lambda: dialog.offer.mapping.columns.get("good") == "keepers", timeout=LONG_MS)
    assert "kept" not in dialog.offer.mapping.columns
    qtbot.waitUntil(dialog.take.isEnabled, timeout=LONG_MS)
    assert "kept is kept as it is" in dialog.found.text()
    assert dialog.offer.intake.hauls[0].trip == "x"  # the keys went over its meaning
    assert dialog.offer.intake.hauls[0].keepers == 5
    assert dialog.offer.intake.hauls[0].extra == {"kept": "3"}
    dialog.reject()


def test_guessed_letters_can_be_set_right(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An old machine's accents are shown as they were read, and can be read otherwise."""
    path = tmp_path / "old.csv"
    path.write_bytes("trip,trap,spot\nx,A,crépe\n".encode("mac_roman"))
    dialog = dialog_of(qtbot, view, path, monkeypatch)
    assert dialog.encoding_box.isVisible()
    assert [dialog.columns.item(at, 1).text() for at in range(2)] == ["x", "A"]
    assert dialog.columns.item(2, 1).text() != "crépe"
    pick(dialog.encoding_box, "mac_roman")
    qtbot.waitUntil(lambda: dialog.offer.intake.hauls[0].spot == "crépe", timeout=LONG_MS)
    qtbot.waitUntil(lambda: dialog.columns.item(2, 1).text() == "crépe", timeout=LONG_MS)
    dialog.reject()


def test_what_is_no_table_is_said(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A picture picked by mistake is a sentence, not an empty dialog."""
    path = tmp_path / "picture.xlsx"
    path.write_bytes(b"PK\x03\x04 no workbook")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    with qtbot.waitSignal(view.bench.trouble, timeout=LONG_MS) as said:
        view.files.import_.click()
    assert "damaged workbook" in said.args[0]
    assert view.findChild(IntakeDialog) is None


def test_every_stop_of_tab_has_a_name(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Who cannot see the screen can answer every question of the dialog."""
    path = tmp_path / "agency.csv"
    path.write_text(AGENCY)
    dialog = dialog_of(qtbot, view, path, monkeypatch)
    nameless = [
        type(widget).__name__
        for widget in dialog.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.isVisible()
        and not QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
    ]
    assert nameless == []
    assert dialog.minimumSizeHint().height() <= 700
    dialog.reject()


def test_the_whole_log_goes_out_and_comes_back(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One file carries everything to another machine; a workbook opens in any spreadsheet."""
    bench = view.bench
    for name in ("all.logbook", "all.xlsx"):
        monkeypatch.setattr(
            QFileDialog, "getSaveFileName", lambda *_, n=name: (str(tmp_path / n), "")
        )
        with qtbot.waitSignal(bench.notice, timeout=LONG_MS):
            view.files.export.click()
    with Logbook.open(tmp_path / "all.logbook", read_only=True) as copy:
        whole = copy.read()
    assert whole.fingerprint == bench.log.fingerprint
    assert [trip.weather for trip in whole.trips] == [trip.weather for trip in bench.log.trips]
    sheet = load_workbook(tmp_path / "all.xlsx", read_only=True).active
    assert sum(1 for _ in sheet.iter_rows()) == len(bench.log.hauls) + 1
    monkeypatch.setattr(
        QFileDialog, "getOpenFileName", lambda *_: (str(tmp_path / "all.logbook"), "")
    )
    with qtbot.waitSignal(bench.notice, timeout=LONG_MS) as said:
        view.files.import_.click()
    assert "nothing added" in said.args[0]
    for trip in {haul.trip for haul in bench.log.hauls}:
        bench.change_log(lambda book, trip=trip: book.delete_trip(trip))
    qtbot.waitUntil(lambda: not bench.log.hauls and bench.clerk.idle, timeout=LONG_MS)
    deleted = bench.book.binned()
    view.files.import_.click()
    merge_dialog(qtbot, view).take.click()
    qtbot.waitUntil(lambda: bench.log.fingerprint == whole.fingerprint, timeout=LONG_MS)
    assert bench.book.binned() == deleted  # which a log that takes another's place would lose


def merge_dialog(qtbot: QtBot, view: HaulsView) -> MergeDialog:
    def shown() -> list[MergeDialog]:
        return [each for each in view.findChildren(MergeDialog) if each.isVisible()]

    qtbot.waitUntil(lambda: bool(shown()), timeout=LONG_MS)
    return shown()[0]


def test_another_log_is_taken_in_beside_what_is_there(
    qtbot: QtBot, view: HaulsView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Two machines' logs become one: new trips come in as one step, other values are shown."""
    bench = view.bench
    before = bench.log.hauls
    changed = replace(before[0], keepers=(before[0].keepers or 0) + 3)
    bench.book.save_trip(before[0].trip, [replace(before[0], keepers=1), *before[1:]])
    reread(qtbot, bench)
    here = bench.log.fingerprint
    with Logbook.open(tmp_path / "boat.logbook") as boat:
        boat.save_trip(before[0].trip, [changed, *before[1:]])
        boat.save_trip("20 Nov 2026", [replace(before[1], trip="20 Nov 2026", keepers=2)])
    path = str(tmp_path / "boat.logbook")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (path, ""))
    view.files.import_.click()
    dialog = merge_dialog(qtbot, view)
    assert "1 new haul in 1 trip" in dialog.found.text()
    model = dialog.table.model()
    shown = [model.index(0, column).data() for column in range(model.columnCount())]
    assert shown == ["22 Nov 2026", "A1", "keepers", "1", "3"]
    dialog.leave.click()
    assert bench.log.fingerprint == here
    view.files.import_.click()
    dialog = merge_dialog(qtbot, view)
    with qtbot.waitSignal(bench.notice, timeout=LONG_MS):
        dialog.take.click()
    trips = {key[0]: each for key, each in bench.log.by_trip.items()}
    assert [haul.keepers for haul in trips["20 Nov 2026"].hauls] == [2]
    assert trips["22 Nov 2026"].hauls[0].keepers == 1
    assert bench.undo_name == "Undo import of boat.logbook"
    view.files.import_.click()
    dialog = merge_dialog(qtbot, view)
    assert not dialog.take.isEnabled()  # the second time there is nothing to take
    dialog.reject()
    with qtbot.waitSignal(bench.log_changed, timeout=LONG_MS):
        bench.undo()
    assert bench.log.fingerprint == here


def test_the_phones_text_is_pasted(qtbot: QtBot, view: HaulsView) -> None:
    """Where the phone could give no file, its text comes in from a message."""
    trap = view.bench.log.hauls[0].trap
    text = f"trip,place,trap,keepers\r\n30 Nov 2026,Sedge Hollow,{trap},5\r\n"
    QGuiApplication.clipboard().setText(text)
    with qtbot.waitSignal(view.bench.notice, timeout=LONG_MS) as said:
        view.files.paste.click()
    assert "pasted text: 1 haul added" in said.args[0]
    assert view.bench.log.hauls[-1].keepers == 5
    QGuiApplication.clipboard().setText("")
    with qtbot.waitSignal(view.bench.trouble, timeout=LONG_MS) as said:
        view.files.paste.click()
    assert "is empty" in said.args[0]


@pytest.mark.parametrize("code", codes())
def test_the_programs_own_words_for_columns_are_understood(code: str) -> None:
    """What a trapper reads in the window is what stands above the columns of a spreadsheet."""
    use(code)
    try:
        whole = {"set_date": "set_at", "set_clock": "set_at", "haul_date": "hauled_at",
                 "haul_clock": "hauled_at"}  # fmt: skip
        for meaning in MEANINGS:
            words = say(IN_WORDS[meaning])
            assert meaning_of(words) == whole.get(meaning, meaning), words
    finally:
        use("en")
