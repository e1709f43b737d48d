"""Tables and tabs as they look: headings over their cells, words where rows are missing."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QVBoxLayout, QWidget

from planner.logbook import TripOutcome
from planner.ui.dates.plans_panel import PlansModel
from planner.ui.evidence.row_chart import IntervalRow, RowChart, room_for_rows
from planner.ui.flow import Flow
from planner.ui.hauls.trip_list import TripList
from planner.ui.parts import Tabs, body, scrolled
from planner.ui.place_box import PlaceBox
from planner.ui.places.rows_editor import RowsEditor
from planner.ui.tables import RowsModel, rows_table, show_whole

_ALIGNMENT = Qt.ItemDataRole.TextAlignmentRole


def test_a_table_without_rows_says_what_will_stand_there(qtbot: Any) -> None:
    """An empty white box tells a newcomer nothing; its words give way to the first row."""
    model = RowsModel(("When", "What"))
    table = rows_table(model, "Waters", empty="Press Work out")
    qtbot.addWidget(table)
    table.show()
    (words,) = table.viewport().findChildren(QLabel)
    assert words.text() == "Press Work out"
    assert words.isVisible()
    model.show([("today", "high")])
    assert not words.isVisible()
    model.show([])
    assert words.isVisible()


def test_a_short_table_is_as_high_as_its_rows(qtbot: Any) -> None:
    """Three scores need no box for ten."""
    model = RowsModel(("Forecast by", "Score"), numbers=(1,))
    table = rows_table(model, "Scores", wide=0)
    show_whole(table)
    qtbot.addWidget(table)
    table.show()
    model.show([("this", "1"), ("that", "2"), ("other", "3")])
    qtbot.waitUntil(lambda: table.viewport().height() == table.verticalHeader().length())
    assert not table.verticalScrollBar().isVisible()


def test_a_table_measures_its_cells_once_and_again_when_they_change(qtbot: Any) -> None:
    """Qt asks three times over while a table comes up, which held the window up; but longer
    words, words that need more lines and larger letters still get their room."""
    model = _Counting(("Trip", "Notes"))
    table = rows_table(model, "Trips", wide=1)
    qtbot.addWidget(table)
    table.resize(400, 900)
    model.show([("22 Nov", "calm")] * 20)
    model.asked = 0
    table.show()
    QApplication.processEvents()
    # Once for its column, which is not the wide one, and twice for its row: the wide column is
    # narrower while the table comes up.
    assert model.asked <= 20 + 2 * 2 * 20
    before = (table.columnWidth(0), table.rowHeight(0))
    model.show([("22 November 2026", "a word or two more " * 12)] * 20)
    QApplication.processEvents()
    assert table.columnWidth(0) > before[0]
    assert table.rowHeight(0) > 2 * before[1]
    before = (table.columnWidth(0), table.rowHeight(0))
    table.resize(300, 900)
    QApplication.processEvents()
    assert table.rowHeight(0) > before[1]
    larger = table.font()
    larger.setPointSize(2 * larger.pointSize())
    table.setFont(larger)
    QApplication.processEvents()
    assert table.columnWidth(0) > before[0]


def test_rows_of_short_words_are_all_as_high_as_one(qtbot: Any) -> None:
    """Where nothing wraps one row is measured for all, and they are no lower or higher than rows
    that are each measured; larger letters make all of them higher."""
    heights, asked = [], []
    for wraps in (True, False):
        model = _Counting(("Trip", "Bait"))
        table = rows_table(model, "Hauls", wide=1, wraps=wraps)
        qtbot.addWidget(table)
        table.resize(400, 900)
        model.show([("22 Nov", "mullet")] * 20)
        model.asked = 0
        table.show()
        QApplication.processEvents()
        heights.append({table.rowHeight(at) for at in range(20)})
        asked.append(model.asked)
    assert heights[0] == heights[1]
    assert len(heights[1]) == 1
    assert asked[1] <= 20 + 2 * 2 < asked[0]
    larger = table.font()
    larger.setPointSize(3 * larger.pointSize())
    table.setFont(larger)
    QApplication.processEvents()
    assert min(table.rowHeight(at) for at in range(20)) > max(heights[1])


class _Counting(RowsModel):
    """Counts how often a cell is measured."""

    asked = 0

    def data(self, index: Any, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        self.asked += role == Qt.ItemDataRole.SizeHintRole
        return super().data(index, role)


def test_headings_stand_over_their_cells(qtbot: Any) -> None:
    """A heading in the middle over cells at the side is read as that of the next column."""
    plans = PlansModel()
    sides = [plans.headerData(at, Qt.Orientation.Horizontal, _ALIGNMENT) for at in range(6)]
    assert [bool(side & Qt.AlignmentFlag.AlignRight) for side in sides] == [
        True, False, False, False, True, True,
    ]  # fmt: skip
    rows = RowsEditor("Spots", "Add", ("Spot", "Depth"))
    qtbot.addWidget(rows)
    rows.show_rows([("flat", "1.2")])
    rows.set_columns(("Spot", "Depth, ft"))
    for at in range(2):
        head, cell = rows.table.horizontalHeaderItem(at), rows.table.item(0, at)
        assert head.textAlignment() == cell.textAlignment()


@pytest.mark.parametrize("points", [8, 9, 11, 16])
def test_no_tab_cuts_the_feet_of_its_letters(qtbot: Any, points: int) -> None:
    """The last row of ink of "gjpy" is there on a tab that is not chosen, as on a label."""
    tabs = Tabs("Kinds")
    qtbot.addWidget(tabs)
    font = tabs.font()
    font.setPointSize(points)
    tabs.setFont(font)
    for text in ("one", "gjpy", "aaaa"):
        tabs.addTab(QWidget(), text)
    label = QLabel("gjpy")
    label.setFont(font)
    qtbot.addWidget(label)
    tabs.show()
    label.show()
    feet = [
        _ink_below(tabs.tabBar(), tabs.tabBar().tabRect(1).adjusted(6, 4, -6, -3)),
        _ink_below(label, label.rect()),
    ]
    assert feet[0] >= feet[1]


def _ink_below(widget: QWidget, box: Any) -> int:
    """Return how many rows lie from the first to the last that holds dark ink."""
    image = widget.grab(box).toImage()
    dark = [
        any(image.pixelColor(x, y).lightness() < 140 for x in range(image.width()))
        for y in range(image.height())
    ]
    return len(dark) - dark[::-1].index(True) - dark.index(True)


def test_a_long_name_of_a_place_is_told_whole(qtbot: Any) -> None:
    """The rail is narrow: what the box cuts, the pointer and a screen reader are told."""
    box = PlaceBox()
    qtbot.addWidget(box)
    name = "Chesapeake Bay Bridge Tunnel, Virginia"
    box.addItems(["Boston", name])
    box.setCurrentIndex(1)
    assert box.toolTip().startswith(name)
    assert box.currentText() == name


@pytest.mark.parametrize("width", [1280, 2400])
def test_words_stay_short_enough_to_be_read(qtbot: Any, width: int) -> None:
    """A paragraph keeps to a reading width in a wide window and to the window in a small one; a
    line that fits is not broken, and the place asked for is as high as the words are written."""
    holder, column = QWidget(), QVBoxLayout()
    long, short = body("A word or two more. " * 40), body("One line of the foot of a window. " * 3)
    column.addWidget(long)
    column.addWidget(short)
    column.addStretch(1)
    holder.setLayout(column)
    qtbot.addWidget(holder)
    holder.resize(width, 600)
    holder.show()
    letter = long.fontMetrics().averageCharWidth()
    used = long.contentsRect().width()
    assert used == (long.width() if width == 1280 else 110 * letter)
    assert short.contentsRect().width() == short.width()
    flags = Qt.TextFlag.TextWordWrap
    written = long.fontMetrics().boundingRect(0, 0, used, 10_000, flags, long.text())
    assert abs(long.heightForWidth(long.width()) - written.height()) <= 2
    long.setText("now short")
    assert long.contentsRect().width() == long.width()


@pytest.mark.parametrize("points", [10, 16])
def test_every_column_of_the_trips_is_in_sight(
    app: QApplication, qtbot: Any, request: pytest.FixtureRequest, points: int
) -> None:
    """How full the crabs were stands in the last column: scrolled away, nobody would look."""
    before, larger = app.font(), app.font()
    request.addfinalizer(lambda: app.setFont(before))
    larger.setPointSize(points)
    app.setFont(larger)
    trips = TripList()
    qtbot.addWidget(trips)
    trips.resize(120, 400)
    trips.show()
    trip = TripOutcome("22 Nov 2026", "Sedge Hollow", None, 11, 33, 31, 2, None)
    trips.show_trips([trip] * 30, None)
    qtbot.waitUntil(lambda: trips.table.viewport().width() > 120)
    assert trips.table.horizontalScrollBar().maximum() == 0


def test_a_row_of_buttons_gets_another_line_as_soon_as_it_needs_one(qtbot: Any) -> None:
    """What was worked out for a width holds until a button grows, goes or comes."""
    holder, buttons = QWidget(), [QPushButton("one"), QPushButton("two"), QPushButton("three")]
    column = QVBoxLayout(holder)
    column.addLayout(Flow(*buttons))
    column.addStretch(1)
    qtbot.addWidget(holder)
    holder.resize(400, 300)
    holder.show()

    def lines() -> int:
        QApplication.processEvents()
        return len({button.y() for button in buttons if button.isVisible()})

    assert lines() == 1
    buttons[1].setText("two " * 20)
    assert lines() > 1
    buttons[1].hide()
    assert lines() == 1
    buttons[1].show()
    assert lines() > 1
    low = column.minimumHeightForWidth(400)
    buttons[1].setText("two")
    assert lines() == 1
    assert column.minimumHeightForWidth(400) < low


def test_rows_of_a_chart_stand_apart_where_there_is_room(qtbot: Any) -> None:
    """A high page gives its height to the chart, up to a distance that can be compared."""
    chart = RowChart("Effects")
    qtbot.addWidget(chart)
    chart.show_rows([IntervalRow("Moon", 5.0, 2.0, 9.0)] * 4, "swing")
    low = chart.height()
    chart.give_room(room_for_rows(600))
    assert chart.height() == low
    chart.give_room(room_for_rows(1250))
    assert 2 * low < chart.height() < 600


@pytest.mark.parametrize("with_words", [False, True])
def test_a_low_page_scrolls_before_its_parts_overlap(qtbot: Any, with_words: bool) -> None:
    """Large letters in the place editor put its buttons over the table of constants."""
    rows, column = RowsEditor("Constants", "Add", ("Constituent", "Amplitude")), QVBoxLayout()
    column.addWidget(rows)
    if with_words:
        column.addWidget(body("Words that go on in the next line."))
    page = scrolled(column, "Water")
    qtbot.addWidget(page)
    page.resize(400, 90)
    page.show()
    assert rows.add.y() >= rows.table.geometry().bottom()
    assert page.verticalScrollBar().maximum() > 0
