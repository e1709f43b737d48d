"""Ticks on a place's own clock and of plain numbers, and rows of dots with bars."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from planner.phrasing import Style
from planner.ui import theme
from planner.ui.app import make_app
from planner.ui.charts import (
    Chart,
    LocalTimeAxis,
    NumberAxis,
    local_ticks,
    number_spacing,
    tick_text,
)
from planner.ui.evidence.row_chart import IntervalRow, RowChart
from planner.ui.strip.legend import Legend

NEW_YORK = ZoneInfo("America/New_York")
ZONES = st.sampled_from(
    ["America/New_York", "UTC", "Australia/Lord_Howe", "Asia/Kathmandu", "America/Santiago"]
)


def _labels(first: str, last: str, width: float, zone: ZoneInfo = NEW_YORK) -> list[str]:
    begin, end = (datetime.fromisoformat(text).timestamp() for text in (first, last))
    ticks = local_ticks(begin, end, width, zone)
    flat = sorted((at, spacing) for spacing, instants in ticks for at in instants)
    return [tick_text(at, spacing, zone, Style()) for at, spacing in flat]


def test_the_day_clocks_go_forward_skips_the_hour_that_is_not_there() -> None:
    """One offset for the whole axis would label a 02:00 that no clock showed."""
    assert _labels("2026-03-08T00:00-05:00", "2026-03-08T05:00-04:00", 900) == [
        "Sun 8", "01:00", "03:00", "04:00", "05:00",
    ]  # fmt: skip


def test_the_day_clocks_go_back_shows_the_repeated_hour_twice() -> None:
    """The axis must not hide that this day has 25 hours."""
    assert _labels("2026-11-01T00:00-04:00", "2026-11-01T03:00-05:00", 900) == [
        "Sun 1", "01:00", "01:00", "02:00", "03:00",
    ]  # fmt: skip


def test_a_span_over_the_change_keeps_its_midnights_and_noons() -> None:
    """Ticks after the change stand on the new local hours, not an hour beside them."""
    assert _labels("2026-03-07T00:00-05:00", "2026-03-09T12:00-04:00", 500) == [
        "Sat 7", "12:00", "Sun 8", "12:00", "Mon 9", "12:00",
    ]  # fmt: skip


def test_months_and_years_take_over_when_days_have_no_room() -> None:
    """A wide span reads as dates, with years where they begin."""
    month = _labels("2026-11-25T00:00-05:00", "2026-12-25T00:00-05:00", 700)
    assert month == ["1 Dec", "7 Dec", "14 Dec", "21 Dec"]
    assert _labels("2025-12-01T00:00-05:00", "2026-03-01T00:00-05:00", 300) == [
        "1 Dec", "2026", "1 Feb", "1 Mar",
    ]  # fmt: skip


@given(
    begin=st.integers(0, 4_000_000_000),
    span=st.floats(60, 3e8),
    width=st.floats(50, 2500),
    zone=ZONES,
)
def test_ticks_stand_inside_the_span_once_and_on_the_local_clock(
    begin: int, span: float, width: float, zone: str
) -> None:
    """Whatever the span and zone: no tick twice, none outside, each on a full local hour or day."""
    ticks = local_ticks(begin, begin + span, width, ZoneInfo(zone))
    flat = [at for _, instants in ticks for at in instants]
    assert len(flat) == len(set(flat))
    # Room for the finest level, and as many midnights or months above it at most.
    assert len(flat) <= 2 * (width / 72 + 2)
    for spacing, instants in ticks:
        for at in instants:
            assert begin <= at <= begin + span
            local = datetime.fromtimestamp(at, tz=ZoneInfo(zone))
            assert local.minute == 0 or spacing >= 86_400
            if spacing >= 86_400:
                before = datetime.fromtimestamp(at - 1, tz=ZoneInfo(zone))
                assert before.date() != local.date()


def test_nonsense_spans_give_no_ticks() -> None:
    """A plot not laid out yet asks for empty or endless spans; it must not raise."""
    assert local_ticks(0.0, 0.0, 100, NEW_YORK) == []
    assert local_ticks(float("nan"), 1.0, 100, NEW_YORK) == []
    assert [t for _, t in local_ticks(-1e15, 1e15, 100, NEW_YORK) if t] == []


def test_the_clock_of_the_axis_follows_the_users_hours() -> None:
    """Twelve-hour users read pm."""
    at = datetime(2026, 7, 4, 17, tzinfo=UTC).timestamp()
    assert tick_text(at, 3600.0, ZoneInfo("UTC"), Style(hours12=True)) == "5 pm"


@pytest.mark.usefixtures("qtbot")
def test_an_axis_takes_another_place() -> None:
    """The same axis serves every place that is opened."""
    axis = LocalTimeAxis()
    noon = datetime(2026, 7, 4, 12, tzinfo=UTC).timestamp()
    assert axis.tickStrings([noon], 1.0, 3600.0) == ["12:00"]
    axis.set_place(NEW_YORK, Style())
    assert axis.tickStrings([noon], 1.0, 3600.0) == ["08:00"]


def test_a_row_chart_says_its_rows_and_takes_up_the_theme(qtbot) -> None:  # type: ignore[no-untyped-def]
    """A screen reader hears each estimate; colours follow the theme while it is open."""
    chart = RowChart("Rates")
    qtbot.addWidget(chart)
    rows = [
        IntervalRow("wire", 2.0, 1.0, 3.0, (1.0, 1.0, 4.0)),
        IntervalRow("coated", None, None, None),
    ]
    chart.show_rows(rows, "keepers a haul", guide=2.5, said="care")
    assert chart.accessibleDescription() == "wire: 2, 80% interval 1–3; coated: nothing known"
    low, high = chart.box.viewRange()[0]
    assert low <= 0 < 4.0 < high
    chart.show()
    try:
        theme.apply(make_app(), "dark")
        assert chart.backgroundBrush().color().name() == theme.DARK.panel
    finally:
        theme.apply(make_app(), "light")


def test_no_rows_are_no_error(qtbot) -> None:  # type: ignore[no-untyped-def]
    """An empty comparison still draws its axis."""
    chart = RowChart("Rates")
    qtbot.addWidget(chart)
    chart.show_rows([], "keepers a haul")
    assert chart.accessibleDescription() == ""


@given(span=st.floats(1e-3, 1e4), size=st.floats(40.0, 3000.0), label=st.floats(10.0, 200.0))
def test_numbers_have_room_and_are_round(span: float, size: float, label: float) -> None:
    """Labels of an axis never touch, are no ruler, and are 1, 2 or 5 times a power of ten."""
    spacing = number_spacing(span, size, label)
    assert spacing / span * size >= min(label, size) * (1 - 1e-6)
    assert span / spacing <= 12 * (1 + 1e-6)
    mantissa = f"{spacing:.1e}"[0]
    assert mantissa in "125"


def test_numbers_of_an_axis_have_the_same_decimals(qtbot) -> None:  # type: ignore[no-untyped-def]
    """An axis reads 0.0, 0.5, 1.0, never 0, 0.5, 1, and knows no minus zero."""
    axis = NumberAxis("left")
    levels = axis.tickValues(-0.3, 1.9, 240)
    assert len(levels) == 1, "labels of two spacings would differ in their decimals"
    spacing, values = levels[0]
    assert axis.tickStrings(values, 1.0, spacing) == ["0.0", "0.5", "1.0", "1.5"]
    assert axis.tickStrings([-1e-17], 1.0, 0.5) == ["0.0"]


def test_mirrored_windows_keep_axis_and_legend_readable(app, qtbot) -> None:  # type: ignore[no-untyped-def]
    """Where a script runs from the right, the axis lies on no curve and marks keep their words."""
    pictures = []
    for direction in (Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft):
        app.setLayoutDirection(direction)
        try:
            chart, legend = Chart("Water"), Legend()
            for each in (chart, legend):
                qtbot.addWidget(each)
                each.resize(900, 200)
                each.show()
            app.processEvents()
            axis, box = chart.getAxis("left").geometry(), chart.box.geometry()
            assert axis.right() <= box.left() + 1
            pictures.append(legend.grab().toImage())
        finally:
            app.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    assert pictures[0] == pictures[1]


def test_the_name_of_a_low_chart_stands_above_it(qtbot: Any) -> None:
    """Beside the axis where it fits there; else above, and beside again when there is room."""
    chart = Chart("low")
    qtbot.addWidget(chart)
    chart.setLabel("left", "water above the zero of the chart, m")
    chart.resize(500, 100)
    chart.show()
    QApplication.processEvents()
    assert (chart.getAxis("left").label.isVisible(), chart._head.isVisible()) == (False, True)
    assert chart._head.toPlainText() == chart.getAxis("left").labelText
    assert chart.getAxis("left").geometry().top() >= chart._head.boundingRect().bottom()
    chart.resize(500, 600)
    QApplication.processEvents()
    assert (chart.getAxis("left").label.isVisible(), chart._head.isVisible()) == (True, False)


def test_rows_of_which_nothing_is_known_stand_on_a_plain_axis(app: QApplication) -> None:
    """Before anything is counted the axis goes to one; it read −0.01 to 0.05 keepers a haul."""
    chart = RowChart("rows")
    chart.show_rows([IntervalRow("one", None, None, None)], "keepers a haul")
    (left, right), _ = chart.box.viewRange()
    assert -0.1 < left < 0
    assert right > 1
