"""Look back: filters by clicks and keys, picture and table of the same groups."""

from __future__ import annotations

from dataclasses import replace

import pytest
from log_desk import made_bench, pick, settled, view_of_bench  # noqa: F401
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from planner.assets import demo_log
from planner.logbook import Log, book_zone, read_log
from planner.ui import theme
from planner.ui.hauls.look_back import LookBackWindow
from planner.ui.hauls.view import HaulsView

LONG_MS = 30_000


@pytest.fixture
def looking(qtbot: QtBot, view: HaulsView) -> LookBackWindow:
    view.bench._log = read_log(demo_log(), book_zone)
    view.look_back.click()
    found = view.findChild(LookBackWindow)
    assert isinstance(found, LookBackWindow)
    qtbot.waitUntil(lambda: len(found.groups) > 5, timeout=LONG_MS)
    return found


def cells(window: LookBackWindow, row: int) -> list[str]:
    model = window.table.model()
    return [model.index(row, column).data() for column in range(model.columnCount())]


def test_a_season_is_told_as_picture_and_table(qtbot: QtBot, looking: LookBackWindow) -> None:
    """Protects the spreadsheet one need not build: months with catch a haul and light share."""
    assert "355 hauls" in looking.summary.text()
    model = looking.table.model()
    assert model.rowCount() == len(looking.groups)
    first = looking.groups[0]
    assert cells(looking, 0)[:3] == [first.name, str(first.trips), str(first.hauls)]
    assert len(looking.catch._values) == len(looking.light._values) == model.rowCount()


def test_an_empty_log_is_told_as_such(qtbot: QtBot, view: HaulsView) -> None:
    """Nobody looks for a filter to take away, or reads numbers on the axes of empty charts."""
    view.bench._log = Log(())
    view.look_back.click()
    found = view.findChild(LookBackWindow)
    assert isinstance(found, LookBackWindow)
    qtbot.waitUntil(lambda: bool(found.summary.text()), timeout=LONG_MS)
    assert found.summary.text().startswith("No trip is logged yet")
    for chart in (found.catch, found.light):
        assert not chart.getAxis("left").style["showValues"]


def test_filters_narrow_and_grouping_changes(qtbot: QtBot, looking: LookBackWindow) -> None:
    """Protects each box: what is shown is what was asked for, by keys alone."""
    pick(looking.filters["year"], "2026")
    qtbot.waitUntil(lambda: "182 hauls" in looking.summary.text(), timeout=LONG_MS)
    pick(looking.by, "design")
    qtbot.waitUntil(lambda: len(looking.groups) == 3, timeout=LONG_MS)
    assert "Weigh evidence tells" in looking.summary.text()
    pick(looking.filters["design"], "bare wire, 2 doors")
    qtbot.waitUntil(lambda: len(looking.groups) == 1, timeout=LONG_MS)
    pick(looking.filters["quarter"], "Dec–Feb")
    qtbot.waitUntil(lambda: "choose “all”" in looking.summary.text(), timeout=LONG_MS)
    assert looking.table.model().rowCount() == 0


def test_it_follows_the_log_and_keeps_the_filters(
    qtbot: QtBot, view: HaulsView, looking: LookBackWindow
) -> None:
    """Protects from looking at yesterday's log: an import shows at once, the filter stays."""
    pick(looking.filters["year"], "2026")
    qtbot.waitUntil(lambda: "182 hauls" in looking.summary.text(), timeout=LONG_MS)
    log = view.bench.log
    view.bench._log = replace(log, hauls=(*log.hauls, replace(log.hauls[-1], trap="new")))
    view.bench.log_changed.emit()
    qtbot.waitUntil(lambda: "183 hauls" in looking.summary.text(), timeout=LONG_MS)
    assert looking.filters["year"].currentData() == "2026"
    looking.close()
    view.bench.log_changed.emit()  # nobody follows any more
    qtbot.waitUntil(lambda: view.bench.idle, timeout=LONG_MS)


def test_the_charts_are_made_one_after_the_other(qtbot: QtBot, view: HaulsView) -> None:
    """Protects quick fingers: the boxes answer before the charts are there, whose results then
    show what was chosen; closed before that, nothing is left to do."""
    view.bench._log = read_log(demo_log(), book_zone)
    view.look_back.click()
    found = view.findChild(LookBackWindow)
    assert isinstance(found, LookBackWindow)
    assert not hasattr(found, "catch")
    pick(found.by, "design")
    qtbot.waitUntil(lambda: len(found.groups) == 3, timeout=LONG_MS)
    assert len(found.catch._values) == len(found.light._values) == 3
    assert found.catch.y() < found.light.y()
    found.close()
    view.look_back.click()
    (again,) = [each for each in view.findChildren(LookBackWindow) if each.isVisible()]
    again.close()
    view.bench.log_changed.emit()
    qtbot.waitUntil(lambda: view.bench.idle, timeout=LONG_MS)


def test_names_of_trips_are_written_whole(qtbot: QtBot, looking: LookBackWindow) -> None:
    """A date that is a little longer than its share of the axis takes more room on fewer marks."""
    looking.by.setCurrentIndex(looking.by.findText("Trip"))
    looking.by.activated.emit(looking.by.currentIndex())
    qtbot.waitUntil(lambda: looking.groups[0].name == "9 Mar 2025", timeout=LONG_MS)
    names = {group.name for group in looking.groups}
    (ticks,) = looking.catch.getAxis("bottom")._tickLevels
    assert len(ticks) >= 3
    assert {name for _, name in ticks} <= names


def test_names_theme_and_size(app: QApplication, qtbot: QtBot, looking: LookBackWindow) -> None:
    """Protects who tabs, who listens, who works in the dark and on a small screen."""
    nameless = [
        type(widget).__name__
        for widget in looking.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.isVisible()
        and not QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
    ]
    assert nameless == []
    lefts = {chart.getAxis("left").width() for chart in (looking.catch, looking.light)}
    assert len(lefts) == 1  # the same months stand under one another
    looking.resize(1000, 620)
    assert (looking.width(), looking.height()) == (1000, 620)
    theme.apply(app, "dark")
    panel = theme.current().panel
    qtbot.waitUntil(
        lambda: looking.catch.backgroundBrush().color().name() == panel, timeout=LONG_MS
    )
