"""Which days and hours the user and the rules of the place allow."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
from numpy.typing import NDArray

from planner.clock import Instants, day_edges, days_between, require_aware, to_utc64
from planner.phrasing import WEEKDAYS
from planner.sites.site import Closure, FreeTime
from planner.words import say


def why_closed(closures: Sequence[Closure], day: date) -> str:
    """Return the reason of the first closure that holds on the day, "" when it is open."""
    for closure in closures:
        if _holds(closure, day):
            return closure.reason or say("closed")
    return ""


def _holds(closure: Closure, day: date) -> bool:
    if closure.weekdays and day.weekday() not in closure.weekdays:
        return False
    first, last = closure.first, closure.last
    if closure.every_year and first is not None and last is not None:
        at, begin, end = ((d.month, d.day) for d in (day, first, last))
        return begin <= at <= end if begin <= end else at >= begin or at <= end
    return (first is None or first <= day) and (last is None or day <= last)


def why_not_free(free: FreeTime, day: date) -> str:
    """Return why the user cannot go out on the day, "" when they can."""
    if day in free.never:
        return say("marked as not free")
    if day in free.also or day.weekday() in free.weekdays:
        return ""
    return say("{weekdays} are not free", weekdays=WEEKDAYS[day.weekday()])


def free_stretches(
    free: FreeTime, first: date, last: date, zone: ZoneInfo
) -> tuple[Instants, Instants]:
    """Return begins and ends (k,) of the stretches in which the user can be on the water.

    Free days that touch, hours from midnight to midnight, make one stretch. On a night the
    clocks change an hour that exists twice, or not at all, is left out at that end.
    """
    days = [day for day in days_between(first, last) if not why_not_free(free, day)]
    begins = [max(_readings(day, free.earliest, zone)) for day in days]
    # `latest` is the last minute that is still free.
    ends = [min(_readings(day, free.latest, zone)) + timedelta(minutes=1) for day in days]
    return _joined(begins, ends)


def closed_stretches(
    closures: Sequence[Closure], first: date, last: date, zone: ZoneInfo
) -> tuple[Instants, Instants]:
    """Return begins and ends (k,) of the stretches in which no trap may be in the water."""
    edges = day_edges(first, last, zone)
    shut = np.array([bool(why_closed(closures, day)) for day in days_between(first, last)])
    steps = np.diff(np.concatenate([[0], shut.astype(np.int8), [0]]))
    return edges[np.flatnonzero(steps == 1)], edges[np.flatnonzero(steps == -1)]


def within(
    starts: Instants, stops: Instants, begins: Instants, ends: Instants
) -> NDArray[np.bool_]:
    """Return, shape (n,), whether each start..stop lies whole in one of the ordered stretches."""
    if begins.size == 0:
        return np.zeros(starts.size, dtype=bool)
    at = np.searchsorted(begins, starts, side="right") - 1
    inside: NDArray[np.bool_] = (at >= 0) & (stops <= ends[np.maximum(at, 0)])
    return inside


def _readings(day: date, clock: time, zone: ZoneInfo) -> list[datetime]:
    """Return the two readings of a local time in UTC; they differ only when the clocks change."""
    return [
        require_aware(datetime.combine(day, clock.replace(fold=fold), tzinfo=zone))
        for fold in (0, 1)
    ]


def _joined(begins: Sequence[datetime], ends: Sequence[datetime]) -> tuple[Instants, Instants]:
    joined: list[list[datetime]] = []
    for begin, end in zip(begins, ends, strict=True):
        if joined and begin <= joined[-1][1]:
            joined[-1][1] = max(end, joined[-1][1])
        elif begin < end:
            joined.append([begin, end])
    return (
        np.array([to_utc64(begin) for begin, _ in joined], dtype="datetime64[ms]"),
        np.array([to_utc64(end) for _, end in joined], dtype="datetime64[ms]"),
    )
