"""The log added up by time and kind: totals to the crab, intervals as wide as trips differ."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from planner.assets import demo_log
from planner.logbook import Haul, Log, Trip, book_zone, read_log
from planner.trips.looking_back import LABELS, Filters, everything, frame_of, look_back

ZONE = ZoneInfo("America/New_York")
AT = datetime(2026, 8, 14, 10, 40, tzinfo=UTC)
HAUL = Haul(
    "14 Aug", "Otter Bight", "edge", "A1", "bare", "menhaden", hauled_at=AT, keepers=2, judged=2,
    light=1,
)  # fmt: skip


def frame(*hauls: Haul, trips: tuple[Trip, ...] = ()):
    return frame_of(Log(hauls, trips), lambda _: ZONE)


@pytest.mark.parametrize("by", ["month", "year", "trip", *LABELS])
def test_groups_add_up_to_the_log(by):
    """However the demo's hauls are grouped, no crab is lost and none counted twice."""
    log = read_log(demo_log(), book_zone)
    groups = look_back(frame_of(log, book_zone), Filters(), by)
    assert sum(group.hauls for group in groups) == len(log.hauls)
    assert sum(group.keepers for group in groups) == sum(haul.keepers or 0 for haul in log.hauls)
    judged = [haul for haul in log.hauls if haul.judged is not None and haul.light is not None]
    assert sum(group.judged for group in groups) == sum(haul.judged for haul in judged)
    assert sum(group.light for group in groups) == sum(haul.light for haul in judged)
    for group in groups:
        for each in (group.rate, group.share):
            assert each is None or np.isnan(each.low) or each.low <= each.mean <= each.high


def test_filters_are_what_a_loop_over_the_hauls_finds():
    """Two roads meet: masks over columns, and a plain walk through the log."""
    log = read_log(demo_log(), book_zone)
    columns = frame_of(log, book_zone)
    for filters in (
        Filters(design="bare wire, 2 doors", year=2026),
        Filters(spot="grass edge", bait="menhaden", quarter="Sep–Nov"),
        Filters(place="Sedge Hollow", quarter="Dec–Feb"),
    ):
        months = {"Sep–Nov": (9, 10, 11), "Dec–Feb": (12, 1, 2), None: range(1, 13)}
        walked = [
            haul
            for haul in log.hauls
            if all(getattr(filters, n) in (None, getattr(haul, n)) for n in LABELS)
            and filters.year in (None, haul.hauled_at.astimezone(ZONE).year)
            and haul.hauled_at.astimezone(ZONE).month in months[filters.quarter]
        ]
        whole = everything(columns, filters)
        assert (whole.hauls if whole else 0) == len(walked)
        if whole:
            assert whole.keepers == sum(haul.keepers or 0 for haul in walked)


def test_not_recorded_is_not_zero():
    """A haul without a count lowers no rate; a group without any has none."""
    (group,) = look_back(frame(HAUL, replace(HAUL, trap="A2", keepers=None)), Filters(), "year")
    assert (group.hauls, group.rate.mean) == (2, 2.0)
    (bare,) = look_back(
        frame(replace(HAUL, keepers=None, judged=None, light=None)), Filters(), "trip"
    )
    assert (bare.rate, bare.share) == (None, None)


def test_one_trip_says_nothing_of_how_trips_differ():
    """A dozen traps of one lucky day are one trip: no interval is made up for it."""
    one = [replace(HAUL, trap=f"A{n}", keepers=n) for n in range(6)]
    (group,) = look_back(frame(*one), Filters(), "year")
    assert np.isnan(group.rate.low)
    more = [replace(haul, trip="15 Aug", hauled_at=AT + timedelta(days=1)) for haul in one]
    (both,) = look_back(frame(*one, *more), Filters(), "year")
    assert np.isfinite(both.rate.high)


def test_trips_that_differ_widen_the_light_share():
    """Thirty crabs of two unlike trips are worth fewer than thirty of two like ones."""

    def trip(name, light):
        return replace(HAUL, trip=name, judged=15, light=light)

    (alike,) = look_back(frame(trip("a", 5), trip("b", 5)), Filters(), "year")
    (unlike,) = look_back(frame(trip("a", 0), trip("b", 10)), Filters(), "year")
    assert alike.share.mean == unlike.share.mean
    assert unlike.share.high - unlike.share.low > 1.5 * (alike.share.high - alike.share.low)


def test_the_rate_interval_by_hand():
    """Two trips of one haul, 1 and 3 keepers: 2 plus or minus t(1, 0.9) = 3.0777 times 1.

    The variance of the ratio is 2/1 x (1 + 1) / 4 = 1; Student's t from a printed table.
    """
    hauls = (replace(HAUL, keepers=1), replace(HAUL, trip="b", keepers=3))
    (group,) = look_back(frame(*hauls), Filters(), "year")
    assert group.rate.mean == 2
    assert group.rate.high == pytest.approx(5.0777, abs=1e-4)
    assert group.rate.low == 0  # no catch is negative


def test_trips_alike_are_no_certainty():
    """Two trips of ten hauls and 20 keepers each: 2 plus or minus what chance alone does to 40
    crabs, z(0.9) = 1.2816 times their root, over 20 hauls; no crab at all may have been one.

    The variance of a Poisson count is its mean; z from a printed table.
    """
    hauls = [replace(HAUL, trip=trip, trap=f"A{at}") for trip in "ab" for at in range(10)]
    (group,) = look_back(frame(*hauls), Filters(), "year")
    half = 1.2816 * 40**0.5 / 20
    assert (group.rate.low, group.rate.high) == pytest.approx((2 - half, 2 + half), abs=1e-4)
    (none,) = look_back(frame(*(replace(haul, keepers=0) for haul in hauls)), Filters(), "year")
    assert (none.rate.low, none.rate.high) == pytest.approx((0, 1.2816 / 20), abs=1e-4)


def test_months_are_the_places_own():
    """A haul late on the last of the month in local time is not of the next month."""
    late = replace(HAUL, hauled_at=datetime(2026, 9, 1, 2, 0, tzinfo=UTC))
    (group,) = look_back(frame(late), Filters(), "month")
    assert group.name == "Aug 2026"


def test_the_kitchens_count_stands_for_whole_trips():
    """What was seen when picking counts by trip and time; a kind of trap knows only the deck."""
    picked = Trip("14 Aug", "Otter Bight", kitchen_picked=20, kitchen_light=10)
    columns = frame(HAUL, trips=(picked,))
    assert look_back(columns, Filters(), "month")[0].judged == 20
    assert look_back(columns, Filters(), "design")[0].judged == 2


def test_an_empty_log_and_an_empty_choice():
    """Nothing in, nothing out."""
    assert look_back(frame(), Filters(), "month") == ()
    assert everything(frame(HAUL), Filters(place="nowhere")) is None
    undated = replace(HAUL, hauled_at=None)
    assert look_back(frame(undated), Filters(), "month") == ()
