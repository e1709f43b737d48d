"""What past trips say beside planned dates: how alike ones turned out, and how long to wait."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtWidgets import QApplication

from planner.assets import demo_log, demo_place
from planner.ui.dates.view import DatesView
from planner.ui.hauls.last_trip import LastTripLine
from planner.ui.sources import Source
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench


@pytest.fixture
def after_a_light_trip(tmp_path: Path, app: QApplication) -> Path:
    """The demo log up to the trip of 8 November 2026, when 15 of 51 crabs were light."""
    lines = demo_log().read_text("utf-8").splitlines(keepends=True)
    path = tmp_path / "hauls.csv"
    path.write_text("".join(x for x in lines if not x.startswith("22 Nov 2026")), "utf-8")
    return path


@pytest.fixture
def bench_on(app: QApplication, settle: Any) -> Iterator[Any]:
    """Open the demo place with a log as of a day."""
    made: list[Workbench] = []

    def opened(log: Path, today: date) -> Workbench:
        made.append(Workbench(ViewState(today=today, day=today, theme="light")))
        made[-1].open(Source(str(demo_place()), log=log, demo=True))
        settle(made[-1])
        return made[-1]

    yield opened
    for bench in made:
        bench.close()


@pytest.mark.parametrize(
    ("today", "shown"), [(date(2026, 11, 12), True), (date(2027, 6, 1), False)]
)
def test_a_light_last_trip_says_how_long_such_crabs_take_to_fill(
    after_a_light_trip: Path, bench_on: Any, settle: Any, qtbot: Any, today: date, shown: bool
) -> None:
    """The sentence a trapper needs after a light trip stands by the days; not for ever."""
    bench = bench_on(after_a_light_trip, today)
    line = LastTripLine(bench)
    qtbot.addWidget(line)
    settle(bench)
    assert line.isVisibleTo(line.parentWidget()) == shown
    if shown:
        said = line.words.text()
        assert "Sun 8 Nov 2026, was about 1 in 3 light" in said
        assert "light crabs fill in about" in said
        bench.state.change(style=bench.state.style.__class__(temperature="F"))
        settle(bench)
        assert "°F" in line.words.text()


def test_how_alike_trips_turned_out_stands_on_the_strip_at_the_chosen_day(
    bench: Workbench, settle: Any, qtbot: Any
) -> None:
    """Planned dates meet past light outcomes: the panel's trips are drawn at its day."""
    view = DatesView(bench)
    qtbot.addWidget(view)
    view.show()
    settle(bench)
    place, marks = view.strip._catch._alike
    listed = [each for each in marks if each[1] in ("full", "mixed", "light")]
    assert listed
    bench.state.change(day=date(2026, 12, 5))
    settle(bench)
    moved, _ = view.strip._catch._alike
    assert moved == place + 10
