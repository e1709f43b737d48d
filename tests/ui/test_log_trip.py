"""A whole trip from plan to log, by keys alone, as on an evening at the kitchen table."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from log_desk import (
    AT,
    PATIENCE_MS,
    in_book,
    keys,
    made_bench,  # noqa: F401
    made_view,
    settled,
    view_of_bench,  # noqa: F401
    with_plan,
)
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from planner.logbook import Promise, TripOutcome
from planner.phrasing import count_text
from planner.ui.dates.plan_panel import PlanPanel
from planner.ui.hauls.trip_list import TripList
from planner.ui.hauls.view import HaulsView
from planner.ui.workbench import Workbench

ENTER = Qt.Key.Key_Return
# Three minutes at the pace of a slow typist who reads each number from a sheet.
MOST_KEYS = 180 / 1.6


def test_twelve_traps_from_the_plan_by_keys_alone(qtbot: QtBot, bench: Workbench) -> None:
    """Protects the promise of three minutes: the planned trip opens with traps, spots and times;
    keepers, shorts, judged and light of twelve traps go in by digits and Enter; every cell is
    in the file; totals and gaps follow; and the whole is undone by name."""
    begin = datetime(2026, 11, 27, 19, 0, tzinfo=UTC)
    with_plan(bench)
    panel = PlanPanel(bench)
    qtbot.addWidget(panel)
    panel.log.click()
    view = made_view(qtbot, bench)
    trip = ("29 Nov 2026", "Sedge Hollow")
    qtbot.waitUntil(lambda: view.chosen == trip, timeout=PATIENCE_MS)
    settled(qtbot, view)
    rows = len(view.entry.model.hauls)
    assert view.entry.table.hasFocus()
    assert view.entry.table.currentIndex().column() == AT["keepers"]
    assert all(row.trap and row.spot for row in view.entry.model.hauls)
    assert view.entry.model.hauls[0].set_at == begin
    assert "keepers of every trap" in view.entry.missing.text()
    assert bench.log is not None
    assert bench.plans is not None
    plan = bench.plans.plans[0]
    promise = Promise(plan.full_keepers, plan.light_share)
    assert bench.log.by_trip[trip].trip.promise == promise
    assert f"The plan forecast {count_text(plan.full_keepers)}" in view.entry.totals.text()

    # Traps that the plan has no row for are added by key, until there are twelve.
    view.entry.table.setCurrentIndex(view.entry.model.index(rows - 1, AT["keepers"]))
    for number in range(rows, 12):
        qtbot.keyClick(view.entry.table, ENTER, Qt.KeyboardModifier.ControlModifier)
        keys(qtbot, f"Z{number}", ENTER)
        settled(qtbot, view)
    traps = len(view.entry.model.hauls)
    pressed = 0
    caught = [(at * 3) % 8 for at in range(traps)]
    light = [count // 3 for count in caught]
    at = view.entry.model.index(0, AT["keepers"])
    view.entry.table.setCurrentIndex(at)
    for column, counts in (("keepers", caught), ("shorts", caught)):
        assert view.entry.table.currentIndex().column() == AT[column]
        for count in counts:
            keys(qtbot, str(count), ENTER)
            pressed += len(str(count)) + 1
    view.entry.table.setCurrentIndex(view.entry.model.index(0, AT["judged"]))
    for counts in (caught, light):
        for count in counts:
            keys(qtbot, str(count), ENTER)
            pressed += len(str(count)) + 1
    view.entry.table.setCurrentIndex(view.entry.model.index(0, AT["hauled_at"]))
    keys(qtbot, "++")
    settled(qtbot, view)

    hauls = in_book(view, trip[0])
    assert [haul.keepers for haul in hauls] == caught
    assert [haul.shorts for haul in hauls] == caught
    assert [haul.judged for haul in hauls] == caught
    assert [haul.light for haul in hauls] == light
    assert hauls[0].hauled_at == begin + timedelta(hours=42, minutes=10)
    assert f"{sum(caught)} keepers" in view.entry.totals.text()
    assert view.entry.missing.text() == ""
    assert pressed <= MOST_KEYS * traps / 12
    bench.undo()
    qtbot.waitUntil(
        lambda: view.entry.model.hauls[0].hauled_at == begin + timedelta(hours=42, minutes=5),
        timeout=PATIENCE_MS,
    )


def test_a_planned_trip_is_begun_once(qtbot: QtBot, view: HaulsView) -> None:
    """Protects from the same trip twice: the plan's button shows the trip that it began."""
    with_plan(view.bench)
    view.from_plan.click()
    qtbot.waitUntil(lambda: view.chosen == ("29 Nov 2026", "Sedge Hollow"), timeout=PATIENCE_MS)
    settled(qtbot, view)
    view.choose(("22 Nov 2026", "Sedge Hollow"))
    view.from_plan.click()
    settled(qtbot, view)
    assert view.chosen == ("29 Nov 2026", "Sedge Hollow")
    assert len(view.bench.log.by_trip) == 2


def test_nine_days_are_asked_about(qtbot: QtBot, view: HaulsView) -> None:
    """Protects from a wrong date: a soak of nine days is saved, and asked about."""
    view.entry.table.setFocus()
    view.entry.table.setCurrentIndex(view.entry.model.index(0, AT["set_at"]))
    keys(qtbot, "13 Nov 7:05", ENTER)
    settled(qtbot, view)
    assert "a soak of 9 days" in view.entry.doubts.text()
    assert in_book(view)[0].set_at == datetime(2026, 11, 13, 12, 5, tzinfo=UTC)


def test_trips_are_found_and_added_up(qtbot: QtBot, view: HaulsView) -> None:
    """Protects the line above the list: every word must fit, the sums are of what is left."""
    from planner.logbook import Haul

    others = [
        Haul("1 Oct 2025", "Otter Bight", trap="A1", keepers=4, judged=4, light=1),
        Haul("9 Oct 2025", "Sedge Hollow", trap="A1", keepers=5),
    ]
    with qtbot.waitSignal(view.bench.log_changed, timeout=PATIENCE_MS):
        view.bench.change_log(lambda book: book.add_hauls(others, "import of x"))
    settled(qtbot, view)
    view.trips.search.setFocus()
    keys(qtbot, "oct 2025 otter")
    assert view.trips.table.model().rowCount() == 1
    assert view.trips.sums.text() == "1 trip, 1 hauls, 4 keepers, 4 judged, light about 1 in 4"
    keys(qtbot, "x")
    assert view.trips.sums.text() == "No trip fits."
    view.trips.search.clear()
    assert view.trips.table.model().rowCount() == 3


@pytest.mark.parametrize("points", [8, 12, 16])
def test_no_button_or_field_is_cut_at_any_font(qtbot: QtBot, bench: Workbench, points: int) -> None:
    """Protects large fonts in the smallest window: what has no room goes to the next line, and
    the trip scrolls."""
    with_plan(bench)
    view = made_view(qtbot, bench)
    font = view.font()
    font.setPointSize(points)
    for widget in (view, *view.findChildren(QWidget)):
        widget.setFont(font)
    view.resize(1100 - 170, 640)  # beside the window's rail
    QApplication.processEvents()
    settled(qtbot, view)
    cut = [
        f"{widget.text()}: {widget.width()} of {widget.sizeHint().width()}"
        for widget in view.findChildren(QPushButton)
        if widget.isVisible() and widget.width() < widget.minimumSizeHint().width()
    ]
    assert cut == []
    fields = view.entry.details.findChildren(QLineEdit)
    assert all(field.height() >= field.minimumSizeHint().height() for field in fields)
    assert view.entry.table.height() >= 4 * view.entry.table.rowHeight(0)


def test_a_count_leaves_the_list_of_trips_where_it_was(qtbot: QtBot) -> None:
    """Protects the eye: the trip scrolled to stays there and chosen while counts come in, and no
    trip looks chosen where the one on show is not in the list."""
    trips = TripList()
    qtbot.addWidget(trips)
    trips.resize(300, 300)
    trips.show()
    shown = [
        TripOutcome(f"trip {at}", "Sedge Hollow", None, 11, 33, 31, 2, None) for at in range(60)
    ]
    trips.show_trips(list(shown), ("trip 3", "Sedge Hollow"))
    bar = trips.table.verticalScrollBar()
    bar.setValue(bar.maximum())
    asked: list[tuple[str, str]] = []
    trips.chosen.connect(lambda *key: asked.append(key))
    shown[59] = replace(shown[59], keepers=99)
    trips.show_trips(list(shown), ("trip 3", "Sedge Hollow"))
    model = trips.table.model()
    assert model.data(model.index(59, 1)) == "99"
    assert bar.value() == bar.maximum() > 0
    assert [row.row() for row in trips.table.selectionModel().selectedRows()] == [3]
    trips.show_trips(list(shown), ("just begun", "Sedge Hollow"))
    assert not trips.table.selectionModel().hasSelection()
    assert asked == []
    trips.show_trips(shown[:10], ("trip 2", "Sedge Hollow"))
    assert [row.row() for row in trips.table.selectionModel().selectedRows()] == [2]
    trips.table.selectRow(3)
    assert asked == [("trip 3", "Sedge Hollow")]
