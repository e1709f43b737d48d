"""What stands around the log: kitchen, single crabs, traps, bin, backups, a damaged file."""

from __future__ import annotations

import time
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from log_desk import (
    PATIENCE_MS,
    TRIP,
    choose,
    in_book,
    keys,
    made_bench,  # noqa: F401
    settled,
    view_of_bench,  # noqa: F401
)
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QMessageBox
from pytestqt.qtbot import QtBot

from planner.assets import demo_place, user_folder
from planner.handouts.layout import TrapKit, kits_aboard, trip_layout
from planner.logbook import Crab, Haul, Log, Logbook, Trap, TrapEvent, Trip, default_logbook
from planner.sites.book import user_places
from planner.ui.hauls.backups_dialog import BackupsDialog, made_text
from planner.ui.hauls.bin_dialog import BinDialog
from planner.ui.hauls.crabs_dialog import CrabsDialog
from planner.ui.hauls.haul_rows import trip_like_last
from planner.ui.hauls.kitchen_ask import KitchenAsk, kitchens_to_ask
from planner.ui.hauls.traps_window import TrapsWindow
from planner.ui.hauls.view import HaulsView
from planner.ui.sources import Source, demo_source, open_log
from planner.ui.workbench import Workbench
from tests.ui.conftest import activate

ENTER = Qt.Key.Key_Return
NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)


def _waited(qtbot: QtBot, what: Any) -> None:
    qtbot.waitUntil(what, timeout=PATIENCE_MS)


def test_which_kitchens_are_asked_for() -> None:
    """Only a recent trip that kept crabs, has no count and was not asked for."""
    hauls = (
        Haul("now", "x", hauled_at=NOW - timedelta(days=1), keepers=4),
        Haul("empty", "x", hauled_at=NOW - timedelta(days=1), keepers=0),
        Haul("old", "x", hauled_at=NOW - timedelta(days=40), keepers=4),
        Haul("ahead", "x", hauled_at=NOW + timedelta(days=1), keepers=4),
        Haul("told", "x", hauled_at=NOW - timedelta(days=2), keepers=4),
        Haul("asked", "x", hauled_at=NOW - timedelta(days=2), keepers=4),
    )
    trips = (
        Trip("told", "x", kitchen_picked=4, kitchen_light=1),
        Trip("asked", "x", kitchen_asked=True),
    )
    assert [trip.name for trip in kitchens_to_ask(Log(hauls, trips), NOW.date(), UTC)] == ["now"]


def test_a_kitchen_is_asked_for_by_the_days_of_the_place() -> None:
    """An evening on the west coast is no trip of tomorrow, a morning in New Zealand none of the
    day before: asked from the day of the trip to two weeks after it."""
    for zone, hour in (("America/Los_Angeles", 19), ("Pacific/Auckland", 6)):
        here = ZoneInfo(zone)
        hauled = datetime(2026, 11, 20, hour, tzinfo=here).astimezone(UTC)
        assert hauled.date() != date(2026, 11, 20)
        log = Log((Haul("one", "x", hauled_at=hauled, keepers=4),))
        asked = [
            bool(kitchens_to_ask(log, date(2026, 11, 20) + timedelta(days=ago), here))
            for ago in (-1, 0, 14, 15)
        ]
        assert asked == [False, True, True, False]


def test_the_kitchen_is_asked_for_once_and_answered(qtbot: QtBot, bench: Workbench) -> None:
    """Protects the one moment when fullness is seen: a strip at the next start, answered by two
    numbers, that never comes back for the same trip."""
    recent = [
        replace(haul, keepers=4, set_at=None, hauled_at=NOW - timedelta(days=1)) for haul in TRIP
    ]
    with qtbot.waitSignal(bench.log_changed, timeout=PATIENCE_MS):
        bench.change_log(lambda book: book.save_trip("22 Nov 2026", recent))
    bench.source = Source(str(demo_place()))
    strip = KitchenAsk(bench)
    qtbot.addWidget(strip)
    strip.ask()
    strip.show()
    assert "22 Nov 2026" in strip.words.text()
    _waited(qtbot, lambda: bench.clerk.idle)
    strip.picked.setFocus()
    qtbot.keyClicks(strip.picked, "5")
    qtbot.keyClicks(strip.light, "6")
    qtbot.keyClick(strip.light, ENTER)
    assert "more than were picked (5)" in strip.words.text()
    strip.light.clear()
    qtbot.keyClicks(strip.light, "2")
    qtbot.keyClick(strip.light, ENTER)
    assert not strip.isVisible()
    _waited(qtbot, lambda: bench.clerk.idle)
    (outcome,) = bench.log.outcomes()
    assert (outcome.judged, outcome.light, outcome.in_kitchen) == (5, 2, True)
    assert bench.undo_name == "Undo kitchen count of trip 22 Nov 2026"
    again = KitchenAsk(bench)
    qtbot.addWidget(again)
    again.ask()
    assert not again.isVisible()


def test_single_crabs_are_typed_in(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the crabs of a haul: words cut short, refusals beside the table, each cell saved,
    and a trap added above does not take them."""
    choose(view, 1, "trap")
    qtbot.keyClick(view.entry.table, Qt.Key.Key_K, Qt.KeyboardModifier.ControlModifier)
    _waited(qtbot, lambda: view.entry.findChild(CrabsDialog) is not None)
    dialog = view.entry.findChild(CrabsDialog)
    assert isinstance(dialog, CrabsDialog)
    qtbot.waitExposed(dialog)
    activate(qtbot, dialog)
    dialog.table.setFocus()
    for text in ("male", "142", "point", "171", "pap", "none", "wh", "lig", "21"):
        keys(qtbot, text, ENTER)
    assert dialog.model.rowCount() == 2
    dialog.table.setCurrentIndex(dialog.model.index(1, 1))
    keys(qtbot, "9999", ENTER)
    assert "outside" in dialog.refusal.text()
    settled(qtbot, view)
    crab = Crab(
        "male", 142.0, "point to point", 171.0, "papershell", "none", "white", "light", 21.0
    )
    assert in_book(view)[1].crabs == (crab,)
    assert view.bench.undo_name == "Undo picked meat of crab 1 of trap A2, 22 Nov 2026"
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    choose(view, 0, "trap")
    view.entry.remove_trap.click()
    settled(qtbot, view)
    assert [(haul.trap, len(haul.crabs)) for haul in in_book(view)] == [("A2", 1), ("B1", 0)]


def test_no_trap_leaves_nothing_to_press(qtbot: QtBot, view: HaulsView) -> None:
    """Where there is no trap yet, no button offers to take something from its history."""
    view.bench._log = Log(())
    view.traps.click()
    window = view.findChild(TrapsWindow)
    assert isinstance(window, TrapsWindow)
    assert window.name.text() == "No trap yet"
    for each in (window.remove, window.add, window.design, window.notes):
        assert not each.isEnabled()
    assert window.new.isEnabled()


def test_a_trap_has_a_history(qtbot: QtBot, view: HaulsView) -> None:
    """Protects a trap's identity: its hauls, what befell it, saved at once and undone by name."""
    view.traps.click()
    window = view.findChild(TrapsWindow)
    assert isinstance(window, TrapsWindow)
    assert [window.list.item(at).text() for at in range(window.list.count())] == ["A1", "A2", "B1"]
    assert window.design.text() == "bare"
    assert "1 haul" in window.sums.text()
    window.kind.setCurrentText("lost")
    window.event_notes.setText("buoy cut")
    window.add.click()
    _waited(qtbot, lambda: bool(view.bench.log.traps))
    (trap,) = view.bench.log.traps
    assert (trap.label, trap.design) == ("A1", "bare")
    assert (trap.events[0].kind, trap.events[0].on) == ("lost", date(2026, 11, 25))
    assert view.bench.undo_name == "Undo history of trap A1"
    assert window.events.model().index(0, 1).data() == "lost"
    assert not window.remove.isEnabled(), "no line of the history is chosen"
    window.events.selectRow(0)
    assert window.remove.isEnabled()
    window.new.setText("Z10")
    qtbot.keyClick(window.new, ENTER)
    _waited(qtbot, lambda: window.list.count() == 4)
    with qtbot.waitSignal(view.bench.log_changed, timeout=PATIENCE_MS):
        view.bench.undo()
    assert window.list.count() == 3
    window.close()


def test_a_lost_trap_is_not_on_the_next_trip(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the skipper from looking for it: neither the next trip nor its layout, which deals
    no second trap by that label, has a trap that is lost or retired, until it is found or comes
    up counted."""
    log = view.bench.log
    site = view.bench.site
    day = date(2026, 11, 25)

    def next_trip() -> tuple[list[str], list[str]]:
        layout = trip_layout(site, view.bench.log)
        rows = trip_like_last(view.bench.log, site, day, layout)
        return [row.trap for row in rows], [kit.label for kit in layout.kits]

    assert next_trip()[0] == ["A1", "A2", "B1"]
    history = (TrapEvent("lost", day), TrapEvent("found", day), TrapEvent("retired", day))
    for told, gone in enumerate((True, False, True), start=1):
        trap = Trap("A1", "bare", events=history[:told])
        view.bench.change_log(lambda book, trap=trap: book.save_trap(trap))
        settled(qtbot, view)
        rows, kits = next_trip()
        assert ("A1" not in rows, "A1" not in kits) == (gone, gone)
        assert {"A2", "B1"} <= set(rows) & set(kits)
    assert view.bench.log.gone(site.zone) == {"A1"}

    def gone_after(hauled_at: datetime) -> frozenset[str]:
        pulled = replace(log.hauls[0], trip="later", hauled_at=hauled_at, keepers=3)
        return replace(view.bench.log, hauls=(*log.hauls, pulled)).gone(site.zone)

    # On the very day, and on the evening of it, which in UTC is the next; then the day after.
    evening = datetime(day.year, day.month, day.day, 21, tzinfo=site.zone)
    assert evening.astimezone(UTC).date() > day
    assert gone_after(evening) == {"A1"}
    assert not gone_after(evening + timedelta(hours=9))
    numbered = [TrapKit(str(number)) for number in (1, 2)]
    assert [kit.label for kit in kits_aboard(numbered, 4, frozenset("3"))] == ["1", "2", "4", "5"]


def test_the_bin_gives_back_and_is_emptied_by_the_user(
    qtbot: QtBot, view: HaulsView, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects what was deleted: listed, put back whole, and let go of only when asked twice."""
    view.delete.click()
    settled(qtbot, view)
    view.bin.click()
    dialog = view.findChild(BinDialog)
    assert isinstance(dialog, BinDialog)
    _waited(qtbot, dialog.back.isEnabled)
    assert dialog.table.model().index(0, 0).data() == "trip 22 Nov 2026"
    dialog.back.click()
    _waited(qtbot, lambda: not dialog.back.isEnabled())
    said = [each.text() for each in dialog.findChildren(QLabel) if each.isVisible()]
    assert said == ["The bin is empty. Deleted trips and traps would wait here until you empty it."]
    settled(qtbot, view)
    assert len(in_book(view)) == 3
    view.choose(("22 Nov 2026", "Sedge Hollow"))
    view.delete.click()
    _waited(qtbot, lambda: dialog.empty.isEnabled())
    answer = QMessageBox.StandardButton
    monkeypatch.setattr(QMessageBox, "question", lambda *_: answer.No)
    dialog.empty.click()
    settled(qtbot, view)
    assert len(view.bench.book.binned()) == 1
    monkeypatch.setattr(QMessageBox, "question", lambda *_: answer.Yes)
    dialog.empty.click()
    _waited(qtbot, lambda: not dialog.empty.isEnabled())
    assert view.bench.book.binned() == ()
    assert view.bench.undo_name == "Undo emptying of the bin"
    dialog.close()


@pytest.mark.skipif(not hasattr(time, "tzset"), reason="the system's zone cannot be set here")
def test_a_backup_is_told_by_the_clock_at_hand(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nobody works out from Greenwich whether a copy is from before the last trip."""
    monkeypatch.setenv("TZ", "America/New_York")
    time.tzset()
    try:
        assert made_text(datetime(2026, 11, 25, 3, 30, tzinfo=UTC)) == "24 Nov 2026 22:30"
    finally:
        monkeypatch.undo()
        time.tzset()


def test_the_window_goes_back_to_a_backup(qtbot: QtBot, view: HaulsView) -> None:
    """Protects restoring: chosen from a list, shown in every view, and itself to be taken back."""
    path = view.bench.book.path
    view.bench.book.close()
    view.bench.book = Logbook.open(path)  # takes the day's backup
    view.delete.click()
    settled(qtbot, view)
    dialog = BackupsDialog(view.bench, view)
    _waited(qtbot, lambda: dialog.table.model().rowCount() == 1)
    assert dialog.table.model().index(0, 1).data() == "day of use"
    with qtbot.waitSignal(view.bench.notice, timeout=PATIENCE_MS):
        dialog.back.click()
    settled(qtbot, view)
    assert len(in_book(view)) == 3
    assert [haul.trap for haul in view.bench.log.hauls] == ["A1", "A2", "B1"]
    assert view.bench.book.backups()[0].why == "before restoring"


def test_a_damaged_log_opens_with_what_can_be_read() -> None:
    """Protects the start after a disk fault: the window opens, says what happened, and the
    damaged file is kept as it was."""
    path = default_logbook()
    path.parent.mkdir(parents=True, exist_ok=True)
    with Logbook.open(path) as book:
        for day in range(30):
            book.save_trip(f"{day}", [Haul(f"{day}", "x", trap="A", notes="n" * 200)] * 5)
    raw = bytearray(path.read_bytes())
    raw[-5 * 4096 : -4 * 4096] = b"\xa5" * 4096
    path.write_bytes(raw)
    book, log = open_log(Source(str(demo_place())), None)
    assert book is not None
    with book:
        assert not book.read_only
        assert log.hauls
        assert "set aside" in book.remark
    (aside,) = path.parent.glob("*-damaged-*.logbook")
    assert aside.read_bytes() == bytes(raw)


def test_the_demo_begins_with_nothing_to_undo(empty_bench: Workbench, settle: Any) -> None:
    """Protects a newcomer's first Ctrl+Z: it took the whole demo log away."""
    bench = empty_bench
    bench.open(demo_source())
    settle(bench)
    hauls = len(bench.log.hauls)
    assert hauls > 100
    assert bench.undo_name is None
    bench.undo()
    settle(bench)
    assert len(bench.log.hauls) == hauls
    trip = next(iter(bench.log.by_trip))
    bench.change_log(lambda book: book.delete_trip(*trip))
    settle(bench)
    assert bench.undo_name is not None
    bench.undo()
    settle(bench)
    assert len(bench.log.hauls) == hauls


def test_a_start_tells_of_the_rescue_and_closing_is_clean(
    empty_bench: Workbench, qtbot: QtBot, settle: Any
) -> None:
    """Protects the sentence: what happened to the log reaches the message line of the window."""
    place = user_places() / "otter-bight.toml"
    place.parent.mkdir(parents=True, exist_ok=True)
    text = demo_place().read_text(encoding="utf-8").replace('"Sedge Hollow"', '"Otter Bight"')
    place.write_text(text, encoding="utf-8")
    path = default_logbook()
    with Logbook.open(path) as book:
        book.save_trip("a", [Haul("a", "Otter Bight", trap="A1")])
    path.write_bytes(path.read_bytes()[:-4096])
    said: list[str] = []
    empty_bench.notice.connect(said.append)
    empty_bench.open(Source(str(place)))
    settle(empty_bench)
    assert any("damaged" in each for each in said)
    empty_bench.close()
    assert not path.with_name(f"{path.name}.open").exists()
    assert Path(user_folder()) in path.parents


def test_the_second_window_may_write_once_the_first_is_closed(
    empty_bench: Workbench, qtbot: QtBot, settle: Any
) -> None:
    """Protects the way on: told that another window writes, then one press and it writes here."""
    place = user_places() / "otter-bight.toml"
    place.parent.mkdir(parents=True, exist_ok=True)
    text = demo_place().read_text(encoding="utf-8").replace('"Sedge Hollow"', '"Otter Bight"')
    place.write_text(text, encoding="utf-8")
    first = Logbook.open(default_logbook())
    first.save_trip("a", [Haul("a", "Otter Bight", trap="A1")])
    empty_bench.open(Source(str(place)))
    settle(empty_bench)
    view = HaulsView(empty_bench)
    qtbot.addWidget(view)
    view.show()
    settle(empty_bench)
    assert "another window" in view.locked.text()
    assert not view.entry.add_trap.isEnabled()
    first.close()
    view.unlock.click()
    settle(empty_bench)
    assert not view.locked.isVisible()
    assert not view.unlock.isVisible()
    assert view.entry.add_trap.isEnabled()
