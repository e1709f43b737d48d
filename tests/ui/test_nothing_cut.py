"""The days view in the sizes it is used in: no half line, no half row, no scrolling page."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QEnterEvent, QFont, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QScrollArea, QVBoxLayout

from planner.ui.dates.plan_panel import PlanPanel
from planner.ui.dates.view import DatesView
from planner.ui.parts import body, open_at, scrolled
from planner.ui.strip import StripView
from planner.ui.theme import SPACE
from planner.ui.whole_lines import WholeLines
from planner.ui.whole_rows import WholeRows, WideTable
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench


@pytest.mark.parametrize("size", [(1100, 700), (1280, 800), (2560, 1440)])
def test_the_page_never_scrolls_and_no_row_is_cut(
    bench: Workbench, qtbot: Any, settle: Any, size: tuple[int, int]
) -> None:
    """Panels scroll inside, if at all: the page itself fits, and the table ends with a row.

    So it does with the question of the kitchen above it.
    """
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.resize(*size)
    window.show()
    settle(bench)
    view = window.findChild(DatesView)
    page = view.findChild(QScrollArea)
    qtbot.waitUntil(lambda: page.verticalScrollBar().maximum() == 0, timeout=30_000)
    table = view.plans.table
    assert table.viewport().height() % table.rowHeight(0) == 0
    assert table.horizontalScrollBar().maximum() == 0
    assert table.viewport().height() // table.rowHeight(0) >= 4
    columns = sum(table.columnWidth(at) for at in range(view.plans.model.columnCount()))
    assert columns > table.viewport().width() - 10
    panel = view.findChild(PlanPanel)
    assert panel.chart.height() >= 110
    window._ask_kitchen()
    window.kitchen.words.setText("How were they in the kitchen? " * 4)
    window.kitchen.show()
    QApplication.processEvents()
    assert window.kitchen.height() > 0
    qtbot.waitUntil(lambda: page.verticalScrollBar().maximum() == 0, timeout=5_000)
    window.close()


def test_the_strip_grows_with_the_window(bench: Workbench, qtbot: Any, settle: Any) -> None:
    """A high window gives its height to the strip and its words."""
    view = DatesView(bench)
    qtbot.addWidget(view)
    view.resize(1100, 600)
    view.show()
    settle(bench)
    strip = view.findChild(StripView)
    low, words = strip.height(), strip._gutter._large.pointSizeF()
    view.resize(2400, 1400)
    QApplication.processEvents()
    assert strip.height() > 1.5 * low
    assert strip._gutter._large.pointSizeF() > 1.2 * words
    assert view.table.height() == strip.height()


@pytest.mark.parametrize("scrolled", [0.0, 0.37, 1.0])
def test_half_lines_are_covered(app: QApplication, qtbot: Any, scrolled: float) -> None:
    """Whatever is scrolled to, each line is shown whole or not at all; the last can be reached."""
    area = WholeLines("words")
    qtbot.addWidget(area)
    for number in range(12):
        area.words.addWidget(body(f"Line {number} is so long that it is written over several."))
    area.words.addStretch(1)
    area.resize(150, 101)
    area.show()
    qtbot.waitUntil(lambda: area.verticalScrollBar().maximum() > 0)
    bar = area.verticalScrollBar()
    bar.setValue(round(scrolled * bar.maximum()))
    area.cover_halves()
    upper, lower = area._covers
    head = upper.geometry().bottom() + 1 if upper.isVisible() else 0
    foot = lower.geometry().top() if lower.isVisible() else area.viewport().height()
    whole = 0
    for top, bottom in area._lines():
        in_sight = min(bottom, foot) - max(top, head)
        assert in_sight <= 0 or in_sight == bottom - top
        whole += in_sight > 0
    assert whole >= 3
    if scrolled == 1.0:
        assert not lower.isVisible()


def test_words_that_change_are_measured_again(app: QApplication, qtbot: Any) -> None:
    """A height kept from other words or letters would cut them."""
    words = body("one line")
    qtbot.addWidget(words)
    line = words.heightForWidth(300)
    words.setText("many words " * 20)
    many = words.heightForWidth(300)
    assert many > 3 * line
    assert words.heightForWidth(600) < many
    font = words.font()
    font.setPointSizeF(2 * font.pointSizeF())
    words.setFont(font)
    assert words.heightForWidth(300) > 2 * many


@pytest.mark.parametrize("width", [120, 333, 700])
def test_words_do_not_move_when_they_become_selectable(
    app: QApplication, qtbot: Any, width: int
) -> None:
    """They do under the pointer; Qt lays them out by other means then, to the same height."""
    words = body("Set 19 Nov 06:40, haul 21 Nov 07:15: 9–20 keepers (8 times in 10), −0.20 m. " * 3)
    qtbot.addWidget(words)
    words.resize(width, words.heightForWidth(width))
    words.show()
    drawn = words.grab().toImage()
    at = QPointF(5, 5)
    QApplication.sendEvent(words, QEnterEvent(at, at, at))
    assert words.textInteractionFlags() & Qt.TextInteractionFlag.TextSelectableByMouse
    assert QLabel.heightForWidth(words, width) == words.height()
    assert words.grab().toImage() == drawn


def test_a_table_ends_with_a_row_and_takes_the_width(app: QApplication, qtbot: Any) -> None:
    """Any height, few rows or many."""
    model = QStandardItemModel(7, 3)
    table = WideTable()
    table.setModel(model)
    holder = WholeRows(table)
    qtbot.addWidget(holder)
    holder.show()
    for height in (130, 181, 233, 700):
        holder.resize(400, height)
        QApplication.processEvents()
        assert table.viewport().height() % table.rowHeight(0) == 0
        assert table.height() <= height
    table.fill_width()
    narrow = table.columnWidth(0)
    model.setItem(0, 0, QStandardItem("a long word in the first column"))
    table.fill_width()
    assert table.columnWidth(0) > 2 * narrow
    assert sum(table.columnWidth(at) for at in range(3)) > table.viewport().width() - 4


@pytest.mark.parametrize("mirrored", [False, True])
def test_a_page_ends_where_its_view_does_until_it_has_a_bar(
    app: QApplication, qtbot: Any, mirrored: bool
) -> None:
    """What stands above and below a scrolling page ends at one line with it; a bar keeps a gap."""
    column = QVBoxLayout()
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(body("words"))
    area = scrolled(column, "page")
    qtbot.addWidget(area)
    area.setLayoutDirection(
        Qt.LayoutDirection.RightToLeft if mirrored else Qt.LayoutDirection.LeftToRight
    )
    area.resize(300, 200)
    area.show()
    assert area.viewport().width() == 300
    page, bar = area.widget(), area.verticalScrollBar()
    page.setMinimumHeight(500)
    qtbot.waitUntil(bar.isVisible)
    qtbot.waitUntil(lambda: area.viewport().width() == 300 - bar.width() - SPACE)
    shown, beside = area.viewport().geometry(), bar.geometry()
    beside.moveTopLeft(bar.mapTo(area, beside.topLeft() - bar.pos()))
    assert not shown.adjusted(1 - SPACE, 0, SPACE - 1, 0).intersects(beside)
    page.setMinimumHeight(0)
    qtbot.waitUntil(lambda: area.viewport().width() == 300)


def test_windows_open_larger_where_letters_are(app: QApplication, qtbot: Any) -> None:
    """As large as the screen lets them; never smaller than at the usual letters."""
    font = app.font()
    large = QFont(font)
    large.setPointSize(16)
    window = QDialog()
    qtbot.addWidget(window)
    screen = window.screen().availableSize()
    try:
        app.setFont(large)
        open_at(window, 400, 5000)
        assert window.width() == min(640, screen.width())
        assert window.height() == 5000
        large.setPointSize(8)
        app.setFont(large)
        open_at(window, 400, 300)
        assert (window.width(), window.height()) == (400, 300)
    finally:
        app.setFont(font)
