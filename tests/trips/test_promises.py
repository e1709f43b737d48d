"""What plans promised is held against what came, and only where that can be told."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from planner.estimates import Interval
from planner.logbook import Haul, Log, Promise, Trip
from planner.trips.promises import judged_promises, promises_text

BEGIN = datetime(2026, 8, 1, 12, tzinfo=UTC)
PROMISE = Promise(Interval(14, 9, 20), Interval(0.1, 0.05, 0.2))


def log_of(*caught: tuple[int | None, int | None, int | None], begun: bool = True) -> Log:
    """Return a log of one haul a trip: keepers, judged, light; begun from plans or not."""
    hauls, trips = [], []
    for day, (keepers, judged, light) in enumerate(caught):
        when = BEGIN + timedelta(days=7 * day)
        hauls.append(
            Haul(f"trip {day}", "x", hauled_at=when, keepers=keepers, judged=judged, light=light)
        )
        trips.append(Trip(f"trip {day}", "x", promise=PROMISE if begun else None))
    return Log(tuple(hauls), tuple(trips))


@pytest.mark.parametrize(
    ("caught", "came", "within"),
    [
        ((20, 10, 3), 14, True),
        ((10, 10, 1), 9, True),
        ((10, 10, 2), 8, False),
        ((24, 12, 0), 24, False),
        ((0, None, None), 0, False),
    ],
)
def test_full_keepers_that_came(caught: tuple, came: float, within: bool) -> None:
    """Keepers count as far as they were full; an empty trip was wholly judged."""
    (found,) = judged_promises(log_of(caught), "x")
    assert found.came == pytest.approx(came)
    assert found.within is within


def test_what_cannot_be_told_is_left_out() -> None:
    """Trips not counted yet, not judged, begun without a plan, or elsewhere say nothing."""
    log = log_of((None, None, None), (12, None, None), (12, 6, None))
    assert judged_promises(log, "x") == ()
    assert judged_promises(log_of((12, 6, 1), begun=False), "x") == ()
    assert judged_promises(log_of((12, 6, 1)), "y") == ()
    assert "kept with it" in promises_text(())


def test_the_sentence_adds_up() -> None:
    """Forecast, outcome, trips within their range, and how many trips there are."""
    log = log_of((20, 10, 3), (30, 10, 1))
    assert promises_text(judged_promises(log, "x")) == (
        "2 trips begun from plans were forecast 28 full keepers in all; 41 came. 1 of 2 came "
        "within the range forecast; in the long run 8 of 10 should."
    )
