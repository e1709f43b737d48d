"""What the tests of the log's views share: a workbench with one trip, keys as a hand presses."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox
from pytestqt.qtbot import QtBot

from planner.assets import demo_place
from planner.estimates import Interval
from planner.logbook import Haul, Logbook
from planner.sites import load_site
from planner.trips import Plan, PlanSet
from planner.ui.hauls.haul_cells import COLUMNS
from planner.ui.hauls.view import HaulsView
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench
from tests.ui.conftest import activate

TODAY = date(2026, 11, 25)
PATIENCE_MS = 30_000  # shared machines have slow moments; a condition that holds ends the wait
AT = {column.field: at for at, column in enumerate(COLUMNS)}
NOW = datetime(2026, 11, 22, 12, 0, tzinfo=UTC)
TRIP = [
    Haul(
        "22 Nov 2026", "Sedge Hollow", trap=label, spot="oyster bar", design=design, bait="mullet",
        set_at=NOW - timedelta(hours=18), hauled_at=NOW + timedelta(minutes=5 * at), depth_m=1.9,
    )
    for at, (label, design) in enumerate([("A1", "bare"), ("A2", "bare"), ("B1", "coated")])
]  # fmt: skip


@pytest.fixture(name="bench")
def made_bench(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Workbench]:
    """Give a workbench with the demo place and a logbook of one trip; nothing is forecast."""
    monkeypatch.setattr(Workbench, "_refresh", lambda self, plans=True: None)
    bench = Workbench(ViewState(today=TODAY, day=TODAY))
    bench.site = load_site(demo_place())
    bench.book = Logbook.open(tmp_path / "hauls.logbook")
    bench.book.save_trip("22 Nov 2026", TRIP)
    reread(qtbot, bench)
    yield bench
    bench.close()


def reread(qtbot: QtBot, bench: Workbench) -> None:
    with qtbot.waitSignal(bench.log_changed, timeout=PATIENCE_MS):
        bench.change_log(lambda book: None)


def made_view(qtbot: QtBot, bench: Workbench) -> HaulsView:
    view = HaulsView(bench)
    # What is still worked out would be shown in a view that is gone.
    qtbot.addWidget(view, before_close_func=lambda _: settled(qtbot, view))
    view.resize(1100, 700)
    view.show()
    qtbot.waitExposed(view)
    activate(qtbot, view)
    qtbot.waitUntil(lambda: bench.clerk.idle, timeout=PATIENCE_MS)
    return view


@pytest.fixture(name="view")
def view_of_bench(qtbot: QtBot, bench: Workbench) -> HaulsView:
    return made_view(qtbot, bench)


def settled(qtbot: QtBot, view: HaulsView) -> None:
    bench, saver = view.bench, view.saver
    qtbot.waitUntil(
        lambda: saver.under_way == 0 and bench.clerk.idle and bench.desk.idle, timeout=PATIENCE_MS
    )


def in_book(view: HaulsView, trip: str = "22 Nov 2026") -> list[Haul]:
    """Return the hauls as another reader of the file finds them."""
    with Logbook.open(view.bench.book.path, read_only=True) as book:
        return [haul for haul in book.read().hauls if haul.trip == trip]


def choose(view: HaulsView, row: int, field: str) -> None:
    view.entry.table.setFocus()
    view.entry.table.setCurrentIndex(view.entry.model.index(row, AT[field]))


def pick(box: QComboBox, value: object) -> None:
    """Choose in a box with the keys, as a person does."""
    box.setFocus()
    steps = box.findData(value) - box.currentIndex()
    for _ in range(abs(steps)):
        QTest.keyClick(box, Qt.Key.Key_Down if steps > 0 else Qt.Key.Key_Up)


def keys(qtbot: QtBot, text: str, *then: Qt.Key) -> None:
    """Press keys where the focus is, as a hand does."""
    for key in (*text, *then):
        focused = QApplication.focusWidget()
        assert focused is not None
        press = qtbot.keyClicks if isinstance(key, str) else qtbot.keyClick
        press(focused, key)


def with_plan(bench: Workbench) -> None:
    begin = datetime(2026, 11, 27, 19, 0, tzinfo=UTC)
    plan = Plan(
        1, begin, begin, begin + timedelta(hours=42), 42.0, Interval(14, 9, 20),
        Interval(0.1, 0.05, 0.2), None, None, None, (), (),
    )  # fmt: skip
    bench.plans = PlanSet((plan,), {})
    bench.state.change(plan=1)
    bench.plans_changed.emit()
