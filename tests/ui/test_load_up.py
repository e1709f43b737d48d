"""The load-up view: follows the chosen plan, remembers ticks, and writes what is taken along."""

from __future__ import annotations

import csv
import os
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from icalendar import Calendar
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QDesktopServices, QFont
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QPushButton, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from planner.assets import demo_log, demo_place
from planner.estimates import Interval
from planner.logbook import book_zone, read_log
from planner.phrasing import Style
from planner.sites import load_site
from planner.trips import Plan, PlanSet
from planner.ui.load.layout_editor import LayoutEditor
from planner.ui.load.text import layout_lines, water_lines
from planner.ui.load.ticks import read_ticks, ticks_file, write_ticks
from planner.ui.load.view import LoadView
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench

TODAY = date(2026, 11, 25)
BEGIN = datetime(2026, 11, 27, 19, 0, tzinfo=UTC)


def made_plan(rank: int, begin: datetime) -> Plan:
    return Plan(
        rank, begin, begin, begin + timedelta(hours=42), 42.0, Interval(14, 9, 20),
        Interval(0.1, 0.05, 0.2), 0.7, "ramp flat", begin, (), ("Little daylight left.",),
    )  # fmt: skip


@pytest.fixture
def bench() -> Iterator[Workbench]:
    """Give a workbench with the demo place, its log and two plans; nothing is forecast."""
    bench = Workbench(ViewState(today=TODAY, day=TODAY))
    bench.site = load_site(demo_place())
    bench._log = read_log(demo_log(), book_zone)
    bench.plans = PlanSet((made_plan(1, BEGIN), made_plan(2, BEGIN + timedelta(days=7))), {})
    bench.state.change(plan=1)
    yield bench
    bench.close()


@pytest.fixture
def view(qtbot: QtBot, bench: Workbench) -> LoadView:
    view = LoadView(bench)
    qtbot.addWidget(view)
    view.resize(1100, 700)
    view.show()
    ready(qtbot, view)
    return view


def ready(qtbot: QtBot, view: LoadView) -> None:
    qtbot.waitUntil(lambda: view.facts is not None and view.bench.idle)


def text_of(view: LoadView) -> str:
    return "\n".join(label.text() for label in view.findChildren(QLabel) if label.isVisible())


def line(view: LoadView, key: str):
    return next(line for card in view.cards for line in card.lines if line.key == key)


def test_it_shows_the_chosen_plan(qtbot: QtBot, view: LoadView) -> None:
    """Protects the list from another trip's: head, rules, lines, layout, and it follows."""
    text = text_of(view)
    assert "Set Fri 27 Nov 14:00, haul Sun 29 Nov 08:00 EST" in text
    assert "9 months ago" in text
    assert "ramp flat, 2 traps" in text
    assert "A life jacket that fits for everybody, worn" in text
    assert "common practice" in text.casefold()
    view.state.change(plan=2)
    qtbot.waitUntil(lambda: "Set Fri 4 Dec" in text_of(view))


def test_units_follow_the_user(qtbot: QtBot, view: LoadView) -> None:
    """Protects from a list in the wrong unit: metres become feet."""
    assert " m of line" in text_of(view)
    view.state.change(style=Style("ft", "F", True))
    qtbot.waitUntil(lambda: " ft of line" in text_of(view))
    assert " m of line" not in text_of(view)
    assert "2:00 pm" in text_of(view)


def test_ticks_are_remembered_for_the_trip(qtbot: QtBot, view: LoadView) -> None:
    """Protects the work of packing: ticks come back for their trip, and only for it."""
    assert not ticks_file().exists()
    line(view, "jackets").box.click()
    assert "1 of " in text_of(view)
    assert read_ticks("Sedge Hollow 2026-11-27") == {"jackets"}
    view.state.change(plan=2)
    qtbot.waitUntil(lambda: "Set Fri 4 Dec" in text_of(view))
    assert not line(view, "jackets").box.isChecked()
    view.state.change(plan=1)
    qtbot.waitUntil(lambda: "Set Fri 27 Nov" in text_of(view))
    assert line(view, "jackets").box.isChecked()
    line(view, "jackets").box.click()
    assert not ticks_file().exists()


def test_the_words_can_be_clicked_too(qtbot: QtBot, view: LoadView) -> None:
    """Protects cold hands: the text beside a box ticks it as the box does, and Space as well."""
    check = line(view, "gloves")
    qtbot.mouseClick(check._words, Qt.MouseButton.LeftButton)
    assert check.box.isChecked()
    check.box.setFocus()
    qtbot.keyClick(check.box, Qt.Key.Key_Space)
    assert not check.box.isChecked()


def test_without_a_plan_it_leads_to_the_dates(qtbot: QtBot, bench: Workbench) -> None:
    """Protects from a dead end: the empty view says what will be here and opens Choose dates."""
    bench.plans = PlanSet((), {})
    bench.state.change(view="load")
    view = LoadView(bench)
    qtbot.addWidget(view)
    view.show()
    assert "Choose dates first" in text_of(view)
    view.to_dates.click()
    assert bench.state.view == "dates"


def test_a_place_whose_water_cannot_be_computed_says_so(qtbot: QtBot, bench: Workbench) -> None:
    """Protects from a blank page: a plan beyond the tables is told in a sentence."""
    bench.plans = PlanSet((made_plan(1, datetime(2150, 1, 1, tzinfo=UTC)),), {})
    view = LoadView(bench)
    qtbot.addWidget(view)
    view.show()
    qtbot.waitUntil(lambda: bench.idle)
    assert "2100" in text_of(view) or "2053" in text_of(view)
    assert view.facts is None


@pytest.mark.parametrize(("paper", "height"), [("Letter", 792), ("A4", 842)])
def test_the_sheet_is_written_and_opened(
    qtbot: QtBot,
    view: LoadView,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    paper: str,
    height: int,
) -> None:
    """Protects the sheet: one page of the paper chosen, with the plan's words, opened to print."""
    out = tmp_path / "sheet.pdf"
    opened: list[str] = []
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(out), ""))
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: opened.append(url.toLocalFile()))
    view.take.paper.setCurrentText(paper)
    with qtbot.waitSignal(view.bench.notice, timeout=20000):
        view.take.sheet.click()
    (page,) = PdfReader(out).pages
    assert float(page.mediabox.height) == pytest.approx(height, abs=1.5)
    assert "Little daylight left." in " ".join(page.extract_text().split())
    assert opened == [str(out)]


def test_calendar_and_water_are_written(
    qtbot: QtBot, view: LoadView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects the three files: a calendar reads its events, a plotter the spots, a spreadsheet
    the water."""
    out = tmp_path / "out"
    names: list[str] = []

    def ask(_parent: object, _asked: str, name: str, _kinds: str) -> tuple[str, str]:
        names.append(name)
        return str(out), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", ask)
    with qtbot.waitSignal(view.bench.notice):
        view.take.calendar.click()
    events = Calendar.from_ical(out.read_bytes()).walk("VEVENT")
    check, begin, end = (event["dtstart"].dt for event in events)
    assert (begin, end) == (BEGIN, BEGIN + timedelta(hours=42))
    assert check < begin - timedelta(hours=24)
    with qtbot.waitSignal(view.bench.notice):
        view.take.waypoints.click()
    assert out.read_bytes().count(b"<wpt ") == 6
    with qtbot.waitSignal(view.bench.notice):
        view.take.water.click()
    rows = list(csv.reader(out.read_text().splitlines()))
    assert rows[1][0] == "2026-11-27T19:00:00Z"
    assert names == [f"Sedge Hollow 2026-11-27.{kind}" for kind in ("ics", "gpx", "csv")]


def test_spots_without_positions_say_what_to_enter(qtbot: QtBot, view: LoadView) -> None:
    """Protects from a button that does nothing: where the positions belong is told."""
    assert view.facts is not None
    bare = tuple(
        replace(spot, latitude_deg=None, longitude_deg=None) for spot in view.facts.site.spots
    )
    view.facts = replace(view.facts, site=replace(view.facts.site, spots=bare))
    with qtbot.waitSignal(view.bench.notice) as said:
        view.take.waypoints.click()
    assert "place book" in said.args[0]


def test_a_folder_that_is_not_there_is_told(
    qtbot: QtBot, view: LoadView, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects from a silent nothing: what cannot be written is said."""
    out = tmp_path / "nowhere" / "file"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(out), ""))
    for act in (view.take.calendar, view.take.waypoints, view.take.water, view.take.sheet):
        with qtbot.waitSignal(view.bench.trouble, timeout=20000) as said:
            act.click()
        assert "cannot be written" in said.args[0]


def test_a_damaged_file_of_ticks_is_no_end(tmp_path: Path) -> None:
    """Protects the start: ticks that cannot be read are none, and ticking goes on."""
    path = tmp_path / "ticks.json"
    for content in ("", "[1]", '{"trip": 3}', '{"trip": [1, "a"]}', "\x00"):
        path.write_text(content)
        assert read_ticks("trip", path) <= {"a"}
        write_ticks("trip", frozenset({"b"}), path)
        assert read_ticks("trip", path) == {"b"}
    for at in range(60):
        write_ticks(f"trip {at}", frozenset({"b"}), path)
    assert read_ticks("trip 59", path) == {"b"}
    assert read_ticks("trip 1", path) == frozenset()
    if os.name == "posix":
        write_ticks("trip", frozenset({"b"}), Path("/proc/ticks.json"))


def test_every_widget_that_tab_reaches_has_a_name(view: LoadView) -> None:
    """Protects who cannot see the screen: each box is read with its text."""
    for widget in view.findChildren(QWidget):
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.isVisible():
            found = QAccessible.queryAccessibleInterface(widget)
            assert found.text(QAccessible.Text.Name), type(widget).__name__


def test_no_button_is_cut_with_large_letters(
    qtbot: QtBot, bench: Workbench, qapp: QApplication
) -> None:
    """Protects who needs large letters: every button has the width of its words, in a small
    window too; what does not fit in one line goes on in the next."""
    before, large = qapp.font(), QFont(qapp.font())
    large.setPointSize(16)
    qapp.setFont(large)
    try:
        view = LoadView(bench)
        qtbot.addWidget(view)
        view.resize(860, 640)
        view.show()
        ready(qtbot, view)
        for each in view.findChildren(QPushButton):
            if each.isVisible():
                assert each.width() >= each.sizeHint().width(), each.text()
    finally:
        qapp.setFont(before)


def test_a_spot_that_goes_dry_is_told(view: LoadView) -> None:
    """Protects a trap from the air: the layout says where the water does not reach."""
    assert view.facts is not None
    shallow = replace(view.facts.spots[0], over_trap_least_m=-0.1)
    facts = replace(view.facts, spots=(shallow, *view.facts.spots[1:]))
    said = [water for traps, water in layout_lines(facts, Style()) if shallow.spot in traps]
    assert "stands dry" in said[0]


def test_the_list_scrolls_no_further_than_it_reaches(qtbot: QtBot, view: LoadView) -> None:
    """No stretch of nothing under the last card: it was taken for a list that failed to load."""
    view.resize(2400, 1400)
    bar = view.findChild(QScrollArea).verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() == 0)


def test_other_units_leave_the_place_and_the_focus(qtbot: QtBot, view: LoadView) -> None:
    """Protects who is half way through the list: it stays where it is, in the new words."""
    view.resize(1100, 400)
    bar = view.findChild(QScrollArea).verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 200)
    line(view, "gloves").box.click()
    line(view, "hook").box.setFocus()
    bar.setValue(150)
    view.state.change(style=Style("ft", "F", True))
    qtbot.waitUntil(lambda: " ft of line" in text_of(view) and view.bench.idle)
    assert view.focusWidget() is line(view, "hook").box
    assert bar.value() == 150
    assert line(view, "gloves").box.isChecked()
    deep = line(view, "line deep bend")
    assert " ft deep" in deep._words.text()
    assert deep.box.accessibleName() == deep._words.text()


def test_units_changed_while_the_cards_come_up_are_in_all_of_them(
    qtbot: QtBot, bench: Workbench
) -> None:
    """Protects from a list in two units: what still waited for its turn gives way."""
    view = LoadView(bench)
    qtbot.addWidget(view)
    view.show()
    qtbot.waitUntil(lambda: view.facts is not None)
    assert not bench.turns.idle
    view.state.change(style=Style("ft", "F", True))
    qtbot.waitUntil(lambda: bench.idle)
    assert text_of(view).count(" ft of line") == 12
    assert " m of line" not in text_of(view)
    assert all(card.isVisible() for card in (*view.cards, view.traps))


def test_lines_come_and_go_with_the_spots(qtbot: QtBot, view: LoadView) -> None:
    """Protects the order of the list, on screen and for Tab, when another trip has other lines."""
    facts = view.facts
    assert facts is not None
    whole = [each.key for each in view.cards[1].lines]
    view._show(replace(facts, spots=facts.spots[1:]))
    assert [each.key for each in view.cards[1].lines] == [
        key for key in whole if key != f"line {facts.spots[0].spot}"
    ]
    view._show(facts)
    lines = view.cards[1].lines
    assert [each.key for each in lines] == whole
    qtbot.waitUntil(lambda: all(each.isVisible() and each.height() > 5 for each in lines))
    assert sorted(lines, key=lambda each: each.y()) == lines
    assert stops(view, len(whole)) == [each.box for each in lines]


def stops(view: LoadView, count: int) -> list[QWidget | None]:
    """Return where Tab stops, from the first line on."""
    first = view.cards[1].lines[0].box
    first.setFocus()
    found: list[QWidget | None] = [first]
    for _ in range(count - 1):
        view.focusNextChild()
        found.append(view.focusWidget())
    return found


def test_two_rules_under_one_heading_both_stand_there(qtbot: QtBot, view: LoadView) -> None:
    """Protects a rule from being lost behind another that the user filed under the same word."""
    facts = view.facts
    assert facts is not None
    rules = facts.site.rules
    twice = replace(rules, notes=(*rules.notes, replace(rules.notes[0], text="another rule")))
    before = len(view.cards[0].lines)
    view._show(replace(facts, site=replace(facts.site, rules=twice)))
    said = [each._words.text().partition(": ")[2] for each in view.cards[0].lines]
    assert len(said) == before + 1
    assert {"another rule", rules.notes[0].text} <= set(said)


def test_a_wide_window_has_three_columns_and_traps_are_moved_in_it(
    qtbot: QtBot, view: LoadView
) -> None:
    """Protects large windows from a blank half, and small ones from columns too narrow to read."""
    assert view.page.wide is False
    assert view.traps.move_traps.isVisible()
    gear, traps, rules = view.cards[1], view.traps, view.cards[0]
    assert gear.x() == traps.x() < rules.x()
    view.resize(2400, 1400)
    qtbot.waitUntil(lambda: view.bench.idle and len({each.x() for each in view.cards}) == 2)
    assert gear.x() < traps.x() < rules.x()
    assert not traps.move_traps.isVisible()
    cards = (*view.cards, traps)
    qtbot.waitUntil(lambda: all(c.height() == c.heightForWidth(c.width()) for c in cards))
    editor = view.findChild(LayoutEditor)
    assert editor.isVisible()
    view.resize(1100, 700)
    qtbot.waitUntil(traps.move_traps.isVisible)
    assert not editor.isVisible()
    assert "ramp flat: " in text_of(view)
    assert gear.x() == traps.x() < rules.x()


def test_each_spot_has_its_water_where_traps_are_moved(qtbot: QtBot, view: LoadView) -> None:
    """Protects what the words say in a small window from being lost in a large one."""
    view.resize(2400, 1400)
    editor = view.findChild(LayoutEditor)
    qtbot.waitUntil(lambda: view.bench.idle and editor.tree.topLevelItemCount() == 6)

    def said() -> list[tuple[str, str]]:
        tops = [editor.tree.topLevelItem(at) for at in range(6)]
        return [(top.text(0), top.text(1)) for top in tops]

    assert view.facts is not None
    assert said() == list(water_lines(view.facts, Style()).items())
    feet = Style("ft", "F", True)
    view.state.change(style=feet)
    qtbot.waitUntil(lambda: said() == list(water_lines(view.facts, feet).items()))


def test_tab_follows_the_columns(qtbot: QtBot, view: LoadView) -> None:
    """Protects who goes by keyboard: down one column, then the next, in either arrangement."""
    rules, gear, bait, safety, food = ([each.box for each in card.lines] for card in view.cards)
    wanted = [*gear, view.traps.move_traps, *bait, *rules, *safety, *food]
    assert stops(view, len(wanted)) == wanted
    view.resize(2400, 1400)
    editor = view.findChild(LayoutEditor)
    qtbot.waitUntil(lambda: view.bench.idle and editor.tree.topLevelItemCount() == 6)
    wanted = [*gear, *bait, *food, editor.tree, *rules, *safety]
    assert stops(view, len(wanted)) == wanted
