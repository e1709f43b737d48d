"""The log added up as in a spreadsheet: catch a haul and share of light crabs, by anything."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from functools import cached_property
from typing import Final, Literal
from zoneinfo import ZoneInfo

import numpy as np
from numpy.typing import NDArray

from planner.estimates import INTERVAL_TAILS, Interval
from planner.logbook.log import Log
from planner.phrasing import SHORT_MONTHS, range_text
from planner.words import say

By = Literal["month", "year", "trip", "place", "design", "spot", "bait"]
LABELS: Final = ("place", "design", "spot", "bait")
QUARTERS: Final = {
    range_text(SHORT_MONTHS[first - 1], SHORT_MONTHS[(first + 1) % 12]): (
        first,
        first % 12 + 1,
        (first + 1) % 12 + 1,
    )
    for first in (3, 6, 9, 12)
}
_IN_TIME: Final = ("month", "year", "trip")
_NOT_TOLD: Final = {
    "place": say("no place told"),
    "design": say("no design told"),
    "spot": say("no spot told"),
    "bait": say("no bait told"),
}

Ints = NDArray[np.int64]
Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Filters:
    """What to look at; None takes all. quarter: one of QUARTERS. year: of the local haul day."""

    place: str | None = None
    design: str | None = None
    spot: str | None = None
    bait: str | None = None
    year: int | None = None
    quarter: str | None = None


@dataclass(frozen=True)
class Frame:
    """The hauls of a log as columns, shape (n,); made once for a log.

    codes, names: for each of LABELS, which name a haul has. trip: which of trip_names, of which
    `light` and `judged` are given by trip too, kitchen counts included. month: months since
    year 0 of the local haul day, -1 without a day. Counts are NaN where not recorded.
    """

    codes: dict[str, Ints]
    names: dict[str, tuple[str, ...]]
    trip: Ints
    trip_names: tuple[str, ...]
    trip_order: Ints
    trip_judged: Floats
    trip_light: Floats
    month: Ints
    keepers: Floats
    judged: Floats
    light: Floats

    @cached_property
    def trips_in_time(self) -> Ints:
        """Which trip is the first, the second, and so on."""
        return np.argsort(self.trip_order)

    @property
    def years(self) -> tuple[int, ...]:
        """The years with hauls, newest first."""
        return tuple(int(year) for year in np.unique(self.month[self.month >= 0] // 12)[::-1])


@dataclass(frozen=True)
class Group:
    """One line: what a group of hauls gave.

    keepers, judged, light: totals of what is recorded. rate: keepers a haul; share: of the
    judged that were light; both with 80% intervals, as wide as trips differ or chance alone would
    make them, and None where nothing is recorded. One trip alone says nothing of how trips
    differ: its rate has no interval (both ends NaN).
    """

    name: str
    trips: int
    hauls: int
    keepers: int
    rate: Interval | None
    judged: int
    light: int
    share: Interval | None


def frame_of(log: Log, zones: Callable[[str], ZoneInfo | None]) -> Frame:
    """Return the columns of a log; `zones` gives the zone of a place, UTC where None."""
    hauls = log.hauls
    codes, names = {}, {}
    for label in LABELS:
        names[label], codes[label] = _coded([getattr(haul, label) for haul in hauls])
    trips = {key: at for at, key in enumerate(dict.fromkeys((h.trip, h.place) for h in hauls))}
    outcomes = {(each.trip, each.place): each for each in log.outcomes()}
    known = {place: zones(place) or UTC for place in names["place"]}
    when = [outcomes[key].when or datetime.max.replace(tzinfo=UTC) for key in trips]
    of_trips = [outcomes[key] for key in trips]
    several = len(names["place"]) > 1
    return Frame(
        codes=codes,
        names=names,
        trip=np.array([trips[haul.trip, haul.place] for haul in hauls], dtype=np.int64),
        trip_names=tuple(f"{t}, {place}" if several else t for t, place in trips),
        trip_order=np.argsort(np.argsort(np.array([each.timestamp() for each in when]))),
        trip_judged=_floats([each.judged for each in of_trips]),
        trip_light=_floats([each.light for each in of_trips]),
        month=np.array(
            [_month(haul.hauled_at or haul.set_at, known[haul.place]) for haul in hauls],
            dtype=np.int64,
        ),
        keepers=_floats([haul.keepers for haul in hauls]),
        judged=_floats([haul.judged for haul in hauls]),
        light=_floats([haul.light for haul in hauls]),
    )


def look_back(frame: Frame, filters: Filters, by: By) -> tuple[Group, ...]:
    """Return the groups that the filtered hauls fall into, in the order of time or by name.

    Light crabs are those of whole trips, the kitchen's counts included, where trips are kept
    whole; a filter or a grouping that cuts through trips leaves those judged on deck.
    """
    keys = _keys(frame, by)
    kept = np.flatnonzero(_chosen(frame, filters) & (keys >= 0))
    if kept.size == 0:
        return ()
    key = keys[kept]
    found, group = np.unique(key, return_inverse=True)
    # One cell for each trip in each group: trips are what differs by chance.
    cells, cell = np.unique(group * len(frame.trip_names) + frame.trip[kept], return_inverse=True)
    of_group = cells // len(frame.trip_names)
    of_trip = cells % len(frame.trip_names)
    hauls = np.bincount(cell)
    keepers, counted = _sums(frame.keepers[kept], cell)
    whole = not (filters.design or filters.spot or filters.bait) and by in (*_IN_TIME, "place")
    if whole:
        judged, light = frame.trip_judged[of_trip], frame.trip_light[of_trip]
    else:
        both = np.isfinite(frame.judged[kept]) & np.isfinite(frame.light[kept])
        judged, _ = _sums(np.where(both, frame.judged[kept], np.nan), cell)
        light, _ = _sums(np.where(both, frame.light[kept], np.nan), cell)
    judged = np.where(np.isfinite(judged) & np.isfinite(light), judged, 0.0)
    light = np.where(judged > 0, np.nan_to_num(light), 0.0)
    rates = _ratios(keepers, counted, of_group, found.size)
    shares = _shares(light, judged, of_group, found.size)
    trips, total = np.bincount(of_group), np.bincount(of_group, hauls)
    sums = [np.bincount(of_group, each, found.size) for each in (keepers, judged, light)]
    return tuple(
        Group(
            _name(frame, by, int(found[at])), int(trips[at]), int(total[at]),
            int(sums[0][at]), rates[at], int(sums[1][at]), int(sums[2][at]), shares[at],
        )
        for at in range(found.size)
    )  # fmt: skip


def everything(frame: Frame, filters: Filters) -> Group | None:
    """Return all that is filtered as one group, None when there is nothing."""
    one = replace(frame, codes={**frame.codes, "place": np.zeros_like(frame.codes["place"])})
    chosen = _chosen(frame, filters)
    if filters.place is not None:
        filters = replace(filters, place=None)
        if not chosen.any():
            return None
        one = _part(one, chosen)
    groups = look_back(one, filters, "place")
    return replace(groups[0], name="all") if groups else None


# -- columns ---------------------------------------------------------------------------------


def _part(frame: Frame, chosen: NDArray[np.bool_]) -> Frame:
    return replace(
        frame,
        codes={label: codes[chosen] for label, codes in frame.codes.items()},
        trip=frame.trip[chosen],
        month=frame.month[chosen],
        keepers=frame.keepers[chosen],
        judged=frame.judged[chosen],
        light=frame.light[chosen],
    )


def _coded(values: Sequence[str]) -> tuple[tuple[str, ...], Ints]:
    names = sorted(set(values), key=lambda name: (name.casefold(), name))
    at = {name: number for number, name in enumerate(names)}
    return tuple(names), np.array([at[value] for value in values], dtype=np.int64)


def _floats(values: Sequence[int | None]) -> Floats:
    return np.array([np.nan if value is None else value for value in values], dtype=np.float64)


def _month(when: datetime | None, zone: ZoneInfo | object) -> int:
    if when is None:
        return -1
    local = when.astimezone(zone)  # type: ignore[arg-type]
    return local.year * 12 + local.month - 1


def _chosen(frame: Frame, filters: Filters) -> NDArray[np.bool_]:
    chosen = np.ones(frame.month.size, dtype=bool)
    for label in LABELS:
        name = getattr(filters, label)
        if name is not None:
            known = name in frame.names[label]
            code = frame.names[label].index(name) if known else -1
            chosen &= frame.codes[label] == code
    if filters.year is not None:
        chosen &= frame.month // 12 == filters.year
    if filters.quarter is not None:
        months = np.array(QUARTERS[filters.quarter]) - 1
        chosen &= (frame.month >= 0) & np.isin(frame.month % 12, months)
    return chosen


def _keys(frame: Frame, by: By) -> Ints:
    if by == "month":
        return frame.month
    if by == "year":
        return np.where(frame.month >= 0, frame.month // 12, -1)
    if by == "trip":
        return frame.trip_order[frame.trip]
    return frame.codes[by]


def _name(frame: Frame, by: By, key: int) -> str:
    if by == "month":
        return f"{SHORT_MONTHS[key % 12]} {key // 12}"
    if by == "year":
        return str(key)
    if by == "trip":
        return frame.trip_names[int(frame.trips_in_time[key])]
    return frame.names[by][key] or _NOT_TOLD[by]


# -- sums and intervals ----------------------------------------------------------------------


def _sums(values: Floats, cell: Ints) -> tuple[Floats, Floats]:
    """Return the sum and the number of the recorded values of each cell."""
    known = np.isfinite(values)
    size = int(cell.max()) + 1
    return (
        np.bincount(cell, np.where(known, values, 0.0), size).astype(np.float64),
        np.bincount(cell, known, size).astype(np.float64),
    )


def _spread(
    top: Floats, bottom: Floats, group: Ints, size: int
) -> tuple[Floats, Floats, Floats, Floats]:
    """Return for each group its ratio, the ratio's variance by trips, its trips, its bottom.

    The usual linearised variance of a ratio of sums over clusters (Cochran 1977, from memory).
    """
    used = bottom > 0
    top, bottom, group = top[used], bottom[used], group[used]
    tops: Floats = np.bincount(group, top, size).astype(np.float64)
    bottoms: Floats = np.bincount(group, bottom, size).astype(np.float64)
    with np.errstate(divide="ignore", invalid="ignore"):
        ratio: Floats = tops / bottoms
        trips = np.bincount(group, minlength=size).astype(np.float64)
        left = np.square(top - ratio[group] * bottom)
        variance = trips / (trips - 1) * np.bincount(group, left, size) / np.square(bottoms)
    return ratio, variance, trips, bottoms


def _ratios(keepers: Floats, counted: Floats, group: Ints, size: int) -> list[Interval | None]:
    """Return rates with t intervals over trips, no narrower than counts by chance alone have.

    A count by chance (Poisson) has its own size as variance, here one crab at least: trips that
    happen to be alike say no more.
    """
    from scipy.special import ndtri, stdtrit

    ratio, variance, trips, hauls = _spread(keepers, counted, group, size)
    with np.errstate(divide="ignore", invalid="ignore"):
        half = stdtrit(trips - 1, INTERVAL_TAILS[1]) * np.sqrt(variance)
        by_chance = ndtri(INTERVAL_TAILS[1]) * np.sqrt(np.maximum(ratio * hauls, 1.0)) / hauls
    half = np.where(trips > 1, np.maximum(half, by_chance), np.nan)
    return _intervals(ratio, np.maximum(ratio - half, 0.0), ratio + half, hauls > 0)


def _shares(light: Floats, judged: Floats, group: Ints, size: int) -> list[Interval | None]:
    """Return shares with Jeffreys intervals on as many crabs as the trips are worth.

    Crabs of a trip are alike, so many crabs of few trips are worth fewer: the number is divided
    by how much more the trips differ than chance alone would have them.
    """
    from scipy.special import betaincinv

    share, variance, trips, crabs = _spread(light, judged, group, size)
    with np.errstate(divide="ignore", invalid="ignore"):
        by_chance = share * (1 - share) / crabs
        excess = np.where((trips > 1) & (by_chance > 0), variance / by_chance, 1.0)
    worth = crabs / np.maximum(excess, 1.0)
    low, high = (
        betaincinv(share * worth + 0.5, (1 - share) * worth + 0.5, tail) for tail in INTERVAL_TAILS
    )
    lower: Floats = np.where(share == 0, 0.0, np.minimum(low, share))
    upper: Floats = np.where(share == 1, 1.0, np.maximum(high, share))
    return _intervals(share, lower, upper, crabs > 0)


def _intervals(
    mean: Floats, low: Floats, high: Floats, told: NDArray[np.bool_]
) -> list[Interval | None]:
    return [
        Interval(*ends) if is_told else None
        for *ends, is_told in zip(
            mean.tolist(), low.tolist(), high.tolist(), told.tolist(), strict=True
        )
    ]
