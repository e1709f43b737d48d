"""Local days and instants, on the nights on which clocks change.

The changes are those of the IANA time zone database, which is read back here.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from planner.clock import day_edges, local_midnight, parse_instant, to_utc64

SAO_PAULO = ZoneInfo("America/Sao_Paulo")  # clocks were put forward at 00:00
HAVANA = ZoneInfo("America/Havana")  # clocks are put back at 01:00, so 00:30 comes twice
NEW_YORK = ZoneInfo("America/New_York")


def test_a_day_without_a_midnight_begins_with_its_first_instant() -> None:
    """Protects the strip and the plans of such a day from an hour of the day before."""
    day = date(2018, 11, 4)
    begin = local_midnight(day, SAO_PAULO)
    assert begin == datetime(2018, 11, 4, 3, tzinfo=UTC)
    assert begin.astimezone(SAO_PAULO).date() == day
    assert (begin - timedelta(milliseconds=1)).astimezone(SAO_PAULO).date() < day


def test_a_midnight_that_comes_twice_is_the_first() -> None:
    """Protects the hour between the two, which belongs to the day as well."""
    begin = local_midnight(date(2026, 11, 1), HAVANA)
    assert begin == datetime(2026, 11, 1, 4, tzinfo=UTC)
    hours = np.diff(day_edges(date(2026, 10, 31), date(2026, 11, 1), HAVANA)).astype(int) / 3.6e6
    assert hours.tolist() == [24, 25]


def test_a_local_time_that_is_skipped_or_comes_twice() -> None:
    """Protects a typed time on those nights from meaning two things."""
    skipped = parse_instant("2026-03-08T02:30", NEW_YORK)
    assert skipped == datetime(2026, 3, 8, 7, 30, tzinfo=UTC)  # by the offset before, UTC-5
    twice = parse_instant("2026-11-01T01:30", NEW_YORK)
    assert twice == datetime(2026, 11, 1, 5, 30, tzinfo=UTC)  # the first, by UTC-4


def test_an_instant_without_an_offset_is_refused() -> None:
    """A naive instant would be read on the clock of whatever machine it is."""
    with pytest.raises(ValueError, match="no UTC offset"):
        to_utc64(datetime(2026, 11, 1))  # noqa: DTZ001
