"""Rules and free days of one's own place, entered with keys and clicks and read back."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, time
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from planner.assets import demo_place
from planner.sites import load_site
from planner.sites.book import user_places
from planner.ui.places import free_section
from planner.ui.places.place_editor import PlaceEditor
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench

TODAY = date(2026, 11, 25)


class _Desk:
    """The editor on a copy of the demo place."""

    def __init__(self, qtbot: Any) -> None:
        self.qtbot = qtbot
        user_places().mkdir(parents=True, exist_ok=True)
        self.path = user_places() / "my-bight.toml"
        self.path.write_text(demo_place().read_text("utf-8"), "utf-8")
        self.bench = Workbench(ViewState(today=TODAY, day=TODAY))
        self.editor = PlaceEditor(self.bench)
        qtbot.addWidget(self.editor)
        self.editor.resize(1100, 700)
        self.editor.show()
        self.editor.begin(self.path, lambda error: pytest.fail(str(error)))
        qtbot.waitUntil(lambda: self.editor.path is not None, timeout=30_000)
        self.settle()

    def settle(self) -> None:
        """Wait until nothing is worked out any more."""
        self.qtbot.waitUntil(lambda: self.editor.at_rest, timeout=30_000)

    def open_tab(self, words: str) -> None:
        """Open a tab by its words."""
        tabs = self.editor.tabs
        names = [tabs.tabText(at).removesuffix(" ⚠") for at in range(tabs.count())]
        tabs.setCurrentIndex(names.index(words))

    def type_in(self, field: QWidget, text: str) -> None:
        """Replace what a field holds, by keys."""
        field.setFocus()
        self.qtbot.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
        self.qtbot.keyClick(field, Qt.Key.Key_Delete)
        self.qtbot.keyClicks(field, text)

    def save(self) -> None:
        """Save, and wait until the file has changed."""
        self.settle()
        before = self.path.read_bytes()
        self.qtbot.waitUntil(self.editor.save.isEnabled, timeout=30_000)
        self.editor.save.click()
        self.qtbot.waitUntil(lambda: self.path.read_bytes() != before, timeout=30_000)
        self.settle()


@pytest.fixture
def desk(qtbot: Any) -> Iterator[_Desk]:
    """An editor that is closed again."""
    made = _Desk(qtbot)
    yield made
    made.bench.close()


def test_opening_rules_and_free_days_changes_nothing(desk: _Desk) -> None:
    """Whoever only looks has nothing to save."""
    desk.open_tab("Rules")
    desk.open_tab("Free days")
    assert not desk.editor.save.isEnabled()
    assert desk.editor.tabs.wanted()["free", "weekdays"] == ["Fri", "Sat", "Sun"]


def test_rules_are_entered_saved_and_undone(desk: _Desk) -> None:
    """What stands under the agency's headings becomes the place's rules, dated, and back again."""
    before, old = desk.path.read_bytes(), load_site(desk.path).rules
    desk.open_tab("Rules")
    rules = desk.editor.rules
    rules.today.click()
    desk.type_in(rules.where, "harbour office")
    desk.type_in(rules.most_traps, "9")
    desk.type_in(rules.longest_soak, "48")
    table = rules.notes_table.table
    headings = [table.item(at, 0).text() for at in range(table.rowCount())]
    row = headings.index("bag limit")
    table.item(row, 1).setText("two dozen a day, invented")
    # A limit that the user's own habits break is told where it belongs.
    desk.settle()
    assert not desk.editor.save.isEnabled()
    desk.type_in(rules.most_traps, "60")
    desk.type_in(rules.longest_soak, "72")
    desk.save()
    saved = load_site(desk.path).rules
    assert (saved.checked, saved.checked_where) == (TODAY, "harbour office")
    assert (saved.max_traps, saved.max_soak_h) == (60, 72.0)
    added = [(note.category, note.text) for note in saved.notes if note not in old.notes]
    assert added == [("bag limit", "two dozen a day, invented")]
    assert "rules" in desk.editor.said.text()
    desk.editor.undo.click()
    desk.qtbot.waitUntil(lambda: desk.path.read_bytes() == before, timeout=30_000)
    desk.settle()


def test_a_closed_period_that_cannot_be_is_marked_and_not_saved(desk: _Desk) -> None:
    """A period with one end stays unsaved, with the remedy under the table; with both it holds."""
    desk.open_tab("Rules")
    closures = desk.editor.rules.closures
    count = len(load_site(desk.path).closures)
    closures.add.click()
    row = closures.table.rowCount() - 1
    for column, text in ((0, "clean-up"), (1, "02-10")):
        closures.table.item(row, column).setText(text)
    desk.settle()
    note = desk.editor.rules.notes["closures"]
    assert "both ends" in note.text()
    assert not desk.editor.save.isEnabled()
    closures.table.item(row, 2).setText("02-19")
    closures.table.item(row, 3).setText("Sat, Sun")
    desk.save()
    closure = load_site(desk.path).closures[count]
    assert (closure.reason, closure.every_year) == ("clean-up", True)
    assert closure.weekdays == {5, 6}


def test_a_line_is_chosen_before_it_is_taken_out(desk: _Desk) -> None:
    """A button that would do nothing says so by being grey."""
    desk.open_tab("Rules")
    closures = desk.editor.rules.closures
    assert not closures.remove.isEnabled()
    closures.table.setCurrentCell(0, 0)
    closures.remove.click()
    assert closures.table.rowCount() == 0
    assert not closures.remove.isEnabled()
    closures.back.click()
    assert closures.table.rowCount() == 1


def test_high_windows_keep_the_parts_of_the_rules_together(desk: _Desk) -> None:
    """What is over goes to the table of rules, which is long, not between the parts."""
    desk.editor.resize(1100, 1400)
    desk.open_tab("Rules")
    desk.settle()
    closures = desk.editor.rules.closures
    assert closures.height() <= closures.sizeHint().height()
    assert desk.editor.rules.notes_table.height() > closures.height()


def test_a_check_older_than_a_season_is_told(desk: _Desk) -> None:
    """Rules last read in spring are old in November, or without a date; read today they are not."""
    desk.open_tab("Rules")
    rules = desk.editor.rules
    desk.type_in(rules.checked, "2026-04-25")
    assert "7 months ago" in rules.old.text()
    assert rules.old.isVisibleTo(desk.editor)
    rules.today.click()
    assert not rules.old.isVisibleTo(desk.editor)
    desk.type_in(rules.checked, "")
    assert "Enter when you checked the rules" in rules.old.text()
    assert rules.old.isVisibleTo(desk.editor)
    desk.settle()


def test_free_days_are_written_as_files_name_them_in_every_language(
    qtbot: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A day's box is ticked, saved and held against a calendar by the day, not by its name."""
    shown = ("lun", "mar", "mié", "jue", "vie", "sáb", "dom")
    monkeypatch.setattr(free_section, "SHORT_DAYS", shown)
    desk = _Desk(qtbot)
    free = desk.editor.free
    assert [box.text() for box in free.weekdays if box.isChecked()] == ["vie", "sáb", "dom"]
    desk.open_tab("Free days")
    qtbot.mouseClick(free.weekdays[4], Qt.MouseButton.LeftButton)
    calendar = tmp_path / "mine.ics"
    calendar.write_text(
        "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//made up//EN\n"
        "BEGIN:VEVENT\nUID:1@made-up.example\nDTSTART;VALUE=DATE:20261212\n"
        "DTEND;VALUE=DATE:20261213\nEND:VEVENT\nEND:VCALENDAR\n"
    )
    free.take_days(calendar, "never")
    qtbot.waitUntil(lambda: "1 more day" in free.said.text(), timeout=30_000)
    desk.save()
    assert load_site(desk.path).free.weekdays == {5, 6}
    desk.bench.close()


def test_free_days_come_from_clicks_and_from_a_calendar(desk: _Desk, tmp_path: Path) -> None:
    """Days of the week by clicks, hours by keys, and what the calendar has on is not free."""
    desk.open_tab("Free days")
    free = desk.editor.free
    desk.qtbot.mouseClick(free.weekdays[4], Qt.MouseButton.LeftButton)
    desk.type_in(free.earliest, "06:15")
    calendar = tmp_path / "mine.ics"
    calendar.write_text(
        "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//made up//EN\n"
        "BEGIN:VEVENT\nUID:1@made-up.example\nDTSTART;VALUE=DATE:20261212\n"
        "DTEND;VALUE=DATE:20261215\nEND:VEVENT\nEND:VCALENDAR\n"
    )
    free.take_days(calendar, "never")
    desk.qtbot.waitUntil(lambda: "2 more days" in free.said.text(), timeout=30_000)
    desk.save()
    saved = load_site(desk.path).free
    assert saved.weekdays == {5, 6}
    assert saved.earliest == time(6, 15)
    assert {date(2026, 12, 12), date(2026, 12, 13)} <= saved.never
    calendar.write_text("no calendar")
    free.take_days(calendar, "never")
    desk.qtbot.waitUntil(lambda: "mine.ics" in free.said.text(), timeout=30_000)
    assert "is not a calendar" in free.said.text()
