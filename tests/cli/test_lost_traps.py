"""The next trip's layout of `trials` deals no trap that is lost."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

from planner.logbook import Haul, Logbook, Trap, TrapEvent

LOST = date(2026, 11, 20)


def test_a_trap_lost_in_the_evening_is_not_laid_out(run, tmp_path):
    """Days go by the clock of the place: that evening in UTC is the next day, as if it was back."""
    path = tmp_path / "boat.logbook"
    evening = datetime(2026, 11, 20, 21, tzinfo=ZoneInfo("America/New_York")).astimezone(UTC)
    assert evening.date() > LOST
    hauls = [
        Haul(
            trip=f"trip {hauled_at.day}", place="Sedge Hollow", spot="ramp flat", trap=label,
            design="bare", set_at=hauled_at - timedelta(days=1), hauled_at=hauled_at, keepers=1,
        )
        for hauled_at in (evening - timedelta(days=2), evening)
        for label in ("A1", "A2")
    ]  # fmt: skip
    with Logbook.open(path) as book:
        book.add_hauls(hauls, "two trips")
        all_there = run("trials --format json --log", str(path)).data
        book.save_trap(Trap("A1", "bare", events=(TrapEvent("lost", LOST),)))
    one_lost = run("trials --format json --log", str(path)).data
    assert [placed["trap"] for placed in all_there["layout"]] == ["A1", "A2"]
    assert [placed["trap"] for placed in one_lost["layout"]] == ["A2"]
