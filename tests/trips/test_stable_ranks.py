"""Ranks hang on the place and the log alone: not on the computer, the rows or the draws."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta

import pytest
from made_waters import MadeTide, made_outlook, made_site

from planner.assets import demo_place
from planner.logbook import Log
from planner.logbook.entries import Haul
from planner.phrasing import Style
from planner.sites.site import Spot
from planner.trips import Plan, Search, Wishes

FIRST, LAST = date(2026, 6, 1), date(2026, 6, 21)
SPOTS = (Spot("grass edge", 1.8, 0.35), Spot("channel lip", 2.6, 0.35))


def search_with(hauls: Sequence[Haul]) -> Search:
    outlook = made_outlook(made_site(spots=SPOTS), FIRST, LAST)
    return Search(outlook, log=Log(tuple(hauls)), tide=MadeTide())


def plans_with(hauls: Sequence[Haul]) -> tuple[Plan, ...]:
    return search_with(hauls).plans(8, Wishes(), Style(), None).plans


def hauls_of(trips: int) -> list[Haul]:
    """Return invented trips of six traps, three to five keepers each."""
    hauls = []
    for number in range(trips):
        out = datetime(2025, 6, 1, 14, tzinfo=UTC) + timedelta(days=9 * number)
        hauls += [
            Haul(
                trip=f"trip {number}",
                place="Made Water",
                trap=str(trap),
                design="square" if trap % 2 else "round",
                spot=SPOTS[trap % 2].name,
                set_at=out - timedelta(hours=20 + number % 3),
                hauled_at=out,
                keepers=3 + (number + trap) % 3,
                water_c=22.0,
            )
            for trap in range(6)
        ]
    return hauls


def test_the_zone_of_the_computer_changes_no_plan() -> None:
    """Plans are in the place's own time wherever the computer believes itself to be."""
    command = [sys.executable, "-m", "planner", "plans", str(demo_place())]
    command += ["--from", "2026-10-28", "--to", "2026-11-08", "--format", "json"]
    answers = [
        json.loads(
            subprocess.run(
                command, capture_output=True, check=True, env={**os.environ, "TZ": zone}
            ).stdout
        )
        for zone in ("Pacific/Auckland", "America/St_Johns")
    ]
    assert answers[0]["plans"]
    assert answers[0] == answers[1]


def test_the_order_of_the_rows_of_a_log_changes_no_plan() -> None:
    """A log sorted another way is the same log."""
    hauls = hauls_of(7)
    assert plans_with(hauls) == plans_with(hauls[::-1])


def test_one_more_trip_like_the_others_moves_no_rank_and_no_number_much() -> None:
    """The seed stays, so a log that grows moves plans by what it says and not by new draws.

    Plans that no one could tell apart, by half a crab of dozens, may change places.
    """
    before, after = plans_with(hauls_of(11)), plans_with(hauls_of(12))
    search = search_with(hauls_of(12))
    for one, in_its_place in zip(before, after, strict=True):
        now = search.plan_near(one.set_at, one.haul_at)
        assert now is not None
        assert (now.set_at, now.haul_at) == (one.set_at, one.haul_at)
        assert now.full_keepers.mean == pytest.approx(in_its_place.full_keepers.mean, abs=0.5)
        assert one.full_keepers.mean == pytest.approx(now.full_keepers.mean, rel=0.05)
        assert one.full_keepers.low == pytest.approx(now.full_keepers.low, rel=0.1, abs=2)
        assert one.full_keepers.high == pytest.approx(now.full_keepers.high, rel=0.1, abs=2)
