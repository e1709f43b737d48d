"""What becomes of a reference place's turns at a secondary place, by either convention.

US: minutes, then a factor, then an addition, each kind of turn with its own. UK: minutes
interpolated by the time of day, additions by the height at the reference place.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.clock import MS_PER_HOUR, MS_PER_MINUTE
from planner.estimates import Floats
from planner.sites.site import HeightDifferences, Offsets, TabledDifferences, TimeDifferences
from planner.tides.astronomy import Milliseconds
from planner.tides.turns import TurnList

_CYCLE_H: Final = 12.0


def minutes_by_clock(table: TimeDifferences, clock_h: Floats) -> Floats:
    """Return the minutes to add at hours of the day on the table's clock, shape (n,)."""
    hours = np.array([table.first_h, table.second_h])
    minutes = np.array([table.first_minutes, table.second_minutes])
    return np.asarray(np.interp(clock_h, hours, minutes, period=_CYCLE_H))


def addition_by_height(table: HeightDifferences, there_m: Floats) -> Floats:
    """Return the metres to add to heights at the reference place, shape (n,)."""
    gap_m = table.springs_there_m - table.neaps_there_m
    slope = (table.springs_add_m - table.neaps_add_m) / gap_m
    return table.neaps_add_m + slope * (there_m - table.neaps_there_m)


def longest_shift_ms(offsets: Offsets) -> int:
    """Return the most that a turn is moved in time, either way."""
    minutes = [offsets.high_minutes, offsets.low_minutes]
    if offsets.tabled is not None:
        tables = (offsets.tabled.high_times, offsets.tabled.low_times)
        minutes = [m for each in tables for m in (each.first_minutes, each.second_minutes)]
    return round(max(abs(each) for each in minutes) * MS_PER_MINUTE)


def shifted(offsets: Offsets, there: TurnList) -> tuple[Milliseconds, Floats]:
    """Return times and heights here of the reference's turns, each of shape (n,)."""
    if offsets.tabled is not None:
        minutes, heights = _by_tables(offsets.tabled, there)
    else:
        minutes = np.where(there.is_high, offsets.high_minutes, offsets.low_minutes)
        factor = np.where(there.is_high, offsets.high_factor, offsets.low_factor)
        added = np.where(there.is_high, offsets.high_add_m, offsets.low_add_m)
        heights = there.heights_m * factor + added
    return there.t_ms + np.rint(minutes * MS_PER_MINUTE).astype(np.int64), heights


def _by_tables(tables: TabledDifferences, there: TurnList) -> tuple[Floats, Floats]:
    clock_h = (there.t_ms / MS_PER_HOUR + tables.clock_h) % 24
    minutes = np.where(
        there.is_high,
        minutes_by_clock(tables.high_times, clock_h),
        minutes_by_clock(tables.low_times, clock_h),
    )
    added = np.where(
        there.is_high,
        addition_by_height(tables.high_heights, there.heights_m),
        addition_by_height(tables.low_heights, there.heights_m),
    )
    return minutes, there.heights_m + added
