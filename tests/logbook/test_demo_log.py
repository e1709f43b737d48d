"""The demo log: says that it is invented, fits its place, and shows what the views need."""

from __future__ import annotations

from collections import defaultdict
from datetime import UTC, datetime

import numpy as np
import pytest

from planner.assets import demo_log, demo_place
from planner.clock import to_utc64
from planner.logbook import Log, read_log
from planner.sites import load_site
from planner.sky.horizon import sun_is_up


@pytest.fixture(scope="module")
def log() -> Log:
    """Return the demo log, refused if any haul lay after the day it was made for."""
    site = load_site(demo_place())
    return read_log(demo_log(), lambda _: site.zone, now=datetime(2026, 11, 23, tzinfo=UTC))


def test_says_that_it_is_invented(log: Log) -> None:
    """The first row and the note beside the file say so."""
    assert log.hauls[0].notes.startswith("INVENTED")
    assert "**invented**" in demo_log().with_name("README.md").read_text("utf-8")


def test_fits_the_demo_place(log: Log) -> None:
    """Spots and depths are those of the place file, and all work is done in daylight."""
    site = load_site(demo_place())
    depths = {spot.name: spot.depth_m for spot in site.spots}
    assert all(haul.place == site.name for haul in log.hauls)
    assert all(depths[haul.spot] == haul.depth_m for haul in log.hauls)
    times = [t for haul in log.hauls for t in (haul.set_at, haul.hauled_at) if t is not None]
    assert len(times) == 2 * len(log.hauls)
    assert sun_is_up(site, np.array([to_utc64(t) for t in times])).all()


def test_has_two_seasons_with_gaps(log: Log) -> None:
    """About three dozen trips, light ones among them, and values missing as in a real log."""
    trips = log.outcomes()
    assert 30 <= len(trips) <= 38
    assert {trip.when.year for trip in trips if trip.when} == {2025, 2026}
    shares = [trip.light / trip.judged for trip in trips if trip.judged and trip.light is not None]
    assert sum(share > 0.27 for share in shares) >= 2
    assert sum(share < 0.1 for share in shares) >= 8
    assert any(trip.judged is None for trip in trips)
    assert any(haul.keepers is None for haul in log.hauls)


def test_traps_move_in_the_second_season_only(log: Log) -> None:
    """In 2025 a design keeps to two spots or so, in 2026 it visits them all."""
    visited: dict[tuple[int, str], list[str]] = defaultdict(list)
    for haul in log.hauls:
        assert haul.hauled_at is not None
        visited[haul.hauled_at.year, haul.design].append(haul.spot)
    for (year, _), spots in visited.items():
        commonest = sum(sorted((spots.count(s) for s in set(spots)), reverse=True)[:2]) / len(spots)
        assert commonest > 0.8 if year == 2025 else commonest < 0.6
