"""A window that stays open overnight: today, the plans and a new trip are of the new day."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from planner.ui.midnight import Midnight
from planner.ui.sources import demo_source
from planner.ui.strip.days import place_of
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench
from tests.ui.conftest import TODAY, Settle


def test_the_window_is_at_the_new_day_in_the_morning(
    qtbot: Any, empty_bench: Workbench, settle: Settle
) -> None:
    """Protects against a trip logged on yesterday's date, and plans for a day that is gone."""
    bench, state = empty_bench, empty_bench.state
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.show()
    bench.open(demo_source())
    settle(bench)
    calendar = [TODAY]
    midnight = Midnight(state, lambda: calendar[0])
    midnight.look()
    assert state.today == TODAY
    calendar[0] = TODAY + timedelta(days=3)
    midnight.look()
    settle(bench)
    strip = window._views["dates"].strip  # type: ignore[attr-defined]
    assert state.day == strip.today == calendar[0]
    assert strip._cursor.today == strip._dates.today == place_of(calendar[0])
    assert bench.plans is not None
    assert bench.site is not None
    for plan in bench.plans.plans:
        assert plan.set_at.astimezone(bench.site.zone).date() >= calendar[0]
    state.change(view="hauls")
    settle(bench)
    hauls = window._views["hauls"]
    hauls.like_last.click()  # type: ignore[attr-defined]
    settle(bench)
    assert hauls.chosen == (f"{calendar[0].day} Nov 2026", bench.site.name)  # type: ignore[attr-defined]


def test_another_chosen_day_stays_chosen(empty_bench: Workbench) -> None:
    """Midnight must not take the user's eyes off the day they were looking at."""
    state = empty_bench.state
    state.change(day=TODAY + timedelta(days=9))
    Midnight(state, lambda: TODAY + timedelta(days=1)).look()
    assert state.today == TODAY + timedelta(days=1)
    assert state.day == TODAY + timedelta(days=9)
