"""Letters of 8 to 16 points, and the window mirrored for languages read from the right: nothing
is cut, and nothing lies outside what holds it, in any room."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, QRect, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QApplication,
    QLabel,
    QScrollArea,
    QTabBar,
    QWidget,
)
from rooms import Rooms

from planner.ui.charts import Chart
from planner.ui.places.edit_pane import EditPane
from planner.ui.places.place_list import PlaceList
from planner.ui.rail_button import RailButton
from planner.ui.sources import demo_source
from planner.ui.tables import ChartWithTable
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench

_SLACK_PX = 2  # styles round
_MARGIN_PX = 6  # that is left around drawn words


@pytest.fixture
def letters(app: QApplication) -> Iterator[QApplication]:
    """The application, whose font and direction a test may change."""
    before = app.font()
    yield app
    app.setFont(before)
    app.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def _cut(root: QWidget) -> Iterator[str]:
    """Give the words that have less room than they need."""
    for widget in root.findChildren(QWidget):
        if not widget.isVisible() or widget.window() is not root or _in_cells(widget):
            continue
        if isinstance(widget, QLabel) and widget.text():
            room, needed = widget.contentsRect(), widget.sizeHint()
            if widget.wordWrap():
                high = widget.heightForWidth(widget.width())
                if widget.height() < high - _SLACK_PX:
                    yield f"{widget.height()} of {high} px high: {widget.text()[:60]!r}"
            elif room.width() < needed.width() - 2 * widget.margin() - _SLACK_PX:
                yield f"{room.width()} of {needed.width()} px wide: {widget.text()[:60]!r}"
        elif isinstance(widget, QAbstractButton) and widget.text():
            needed = widget.minimumSizeHint()
            if widget.width() < needed.width() - _SLACK_PX:
                yield f"{widget.width()} of {needed.width()} px wide: {widget.text()!r}"
            if widget.height() < needed.height() - _SLACK_PX:
                yield f"{widget.height()} of {needed.height()} px high: {widget.text()!r}"


def _outside(root: QWidget) -> Iterator[str]:
    """Give the widgets that reach out of what holds them where nothing scrolls."""
    for widget in root.findChildren(QWidget):
        parent = widget.parentWidget()
        if (
            parent is None
            or not widget.isVisible()
            or widget.window() is not root
            or _in_cells(widget)
            or isinstance(parent, QTabBar)  # it scrolls by its own arrows
            or isinstance(parent.parentWidget(), QAbstractScrollArea)  # what is scrolled
            or isinstance(widget, QAbstractItemView)
        ):
            continue
        room = parent.rect().adjusted(-_SLACK_PX, -_SLACK_PX, _SLACK_PX, _SLACK_PX)
        if not room.contains(widget.geometry()):
            said = widget.accessibleName() or getattr(widget, "text", str)()
            yield f"{type(widget).__name__} {said[:40]!r} reaches out of {type(parent).__name__}"


def _sideways(root: QWidget) -> Iterator[str]:
    """Give the pages that are wider than the column they scroll in, which only goes down."""
    for scroll in root.findChildren(QScrollArea):
        page, port = scroll.widget(), scroll.viewport()
        never = scroll.horizontalScrollBarPolicy() == Qt.ScrollBarPolicy.ScrollBarAlwaysOff
        if scroll.isVisible() and page is not None and never and page.width() > port.width() + 1:
            yield f"{scroll.accessibleName()!r}: {page.width()} px in {port.width()}"


def _names_of_axes(root: QWidget) -> Iterator[str]:
    """Give the charts that do not show the whole name of an axis: names are drawn, not widgets."""
    for chart in root.findChildren(Chart):
        if not chart.isVisible():
            continue
        picture = QRectF(chart.viewport().rect()).adjusted(
            -_MARGIN_PX, -_MARGIN_PX, _MARGIN_PX, _MARGIN_PX
        )
        for side in ("left", "bottom"):
            axis = chart.getAxis(side)
            drawn = [label for label in (axis.label, chart._head) if label.isVisible()]
            drawn = [label for label in drawn if label.toPlainText().strip() == axis.labelText]
            if axis.labelText and not any(
                picture.contains(label.mapRectToScene(label.boundingRect())) for label in drawn
            ):
                yield f"{chart.accessibleName()!r}: {axis.labelText!r} at {chart.size().toTuple()}"


def _pictures(root: QWidget) -> Iterator[str]:
    """Give charts under their own button, and the month of an edited place where it is cut."""
    for each in root.findChildren(ChartWithTable):
        if each.isVisible() and each._stack.geometry().intersects(each.button.geometry()):
            yield f"{each.chart.accessibleName()!r} lies under its button"
    for pane in root.findChildren(EditPane):
        picture = QRect(pane.picture.mapTo(pane, QPoint()), pane.picture.size())
        if pane.picture.isVisible() and not pane.rect().contains(picture):
            yield f"{pane.height()} px of a month to {picture.bottom()} px"


def _names_of_places(root: QWidget) -> Iterator[str]:
    """Give the names of the place book that need more lines than their row has, or more width."""
    for book in root.findChildren(PlaceList):
        for item in book.items() if book.isVisible() else ():
            row, letters = book.tree.visualItemRect(item), QFontMetrics(item.font(0))
            words = letters.boundingRect(
                QRect(0, 0, row.width() - _MARGIN_PX, 0), Qt.TextFlag.TextWordWrap, item.text(0)
            )
            if words.height() > row.height() or words.width() > row.width():
                yield f"{row.size().toTuple()} for {words.size().toTuple()}: {item.text(0)!r}"


def _in_cells(widget: QWidget) -> bool:
    """Tell whether a widget is part of a table or of a box, which clip and scroll by themselves."""
    parent = widget.parentWidget()
    while parent is not None:
        if isinstance(parent, QAbstractItemView):
            return True
        parent = parent.parentWidget()
    return False


LOOKS = (_cut, _outside, _sideways, _names_of_axes, _pictures, _names_of_places)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("points", "size", "mirrored"),
    [
        (8, (1100, 700), False),
        (16, (1280, 800), False),
        (16, (1100, 700), False),
        (10, (1100, 700), True),
    ],
    ids=["8 points", "16 points", "16 points, small", "mirrored"],
)
def test_nothing_is_cut_in_any_room(
    letters: QApplication, empty_bench: Workbench, qtbot: Any,
    points: int, size: tuple[int, int], mirrored: bool,
) -> None:  # fmt: skip
    """Protects those who need large letters, have a small screen, or read from the right."""
    font = QFont(letters.font())
    font.setPointSize(points)
    letters.setFont(font)
    if mirrored:
        letters.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    window = MainWindow(empty_bench)
    qtbot.addWidget(window)
    window.resize(*size)
    window.show()
    empty_bench.open(demo_source())
    qtbot.waitUntil(lambda: empty_bench.idle, timeout=60_000)
    wrong: dict[str, str] = {}
    for name, room in Rooms(window).walk():
        for looked in LOOKS:
            for each in looked(room):
                wrong.setdefault(each, name)
    if mirrored:
        rail = window.findChild(RailButton)
        assert rail.mapTo(window, rail.rect().center()).x() > window.width() / 2
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert not wrong, "\n".join(f"{each}  [{room}]" for each, room in wrong.items())


@pytest.mark.slow
def test_nothing_is_cut_at_three_times_the_size() -> None:
    """A scale is fixed when a program starts, so the walk is made by a program of its own."""
    walk = subprocess.run(
        [sys.executable, "-m", "pytest", "-q", "-k", "8 and points", __file__],
        env={**os.environ, "QT_SCALE_FACTOR": "3"}, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert walk.returncode == 0, walk.stdout[-3000:]


@pytest.mark.slow
def test_nothing_is_cut_in_the_longer_words_of_spanish() -> None:
    """A language is set when a program starts too."""
    walk = subprocess.run(
        [sys.executable, "-m", "tests.benchmarks.access", "--language", "es", "--points", "16",
         "--size", "1100x700"],
        cwd=Path(__file__).parents[2], capture_output=True, text=True, check=True,
    )  # fmt: skip
    counts = re.findall(r"(\d+) (without|that|letters|cut)", walk.stdout)
    assert len(counts) == 5, walk.stdout
    assert {int(count) for count, _ in counts} == {0}, walk.stdout
