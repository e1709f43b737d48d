"""The rows of a trip in the log view: which there are, how a trip begins, what is typed; no Qt."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from planner.handouts.layout import TrapLayout
from planner.logbook import Haul, Log, TripKey, TripOutcome
from planner.phrasing import date_text
from planner.sites import Site
from planner.trips import Plan
from planner.ui.hauls.haul_cells import NUDGE, Clock, Column, TypedError, refusal, with_texts
from planner.words import say

_OLDEST: Final = datetime.min.replace(tzinfo=UTC)


def trips_newest_first(log: Log) -> list[TripOutcome]:
    """Return the trips of a log; those without any time first, as they wait for it."""
    outcomes = list(log.outcomes())
    undated = [trip for trip in outcomes if trip.when is None]
    dated = [trip for trip in outcomes if trip.when is not None]
    return [*reversed(undated), *sorted(dated, key=lambda t: t.when or _OLDEST, reverse=True)]


def hauls_of(log: Log, trip: TripKey) -> tuple[Haul, ...]:
    """Return the hauls of a trip in the order of entry."""
    logged = log.by_trip.get(trip)
    return () if logged is None else logged.hauls


# -- a new trip ------------------------------------------------------------------------------


def trip_begun_for(log: Log, site: Site, plan: Plan) -> TripKey | None:
    """Return the trip that was begun from a plan, by its first time; None when there is none."""
    for key in reversed(log.by_trip):
        if key[1] == site.name and any(haul.set_at == plan.set_at for haul in hauls_of(log, key)):
            return key
    return None


def trip_of_plan(log: Log, site: Site, plan: Plan, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return the rows of a planned trip: traps as laid out, times dealt over both outings."""
    day = plan.haul_at.astimezone(site.zone).date()
    rows = _dealt(_free_name(log, day), site, traps)
    sets = _spread(plan.set_at, site.habits.set_minutes, len(rows))
    hauls = _spread(plan.haul_at, site.habits.haul_minutes, len(rows))
    return tuple(
        replace(row, set_at=set_at, hauled_at=hauled_at)
        for row, set_at, hauled_at in zip(rows, sets, hauls, strict=True)
    )


def trip_as_laid_out(log: Log, site: Site, day: date, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return the rows of a trip hauled that day, with the traps as laid out; times left open."""
    return _dealt(_free_name(log, day), site, traps)


def trip_like_last(log: Log, site: Site, day: date, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return the rows of a trip hauled that day, with the last trip's traps where they stood.

    Times are left open: a guess would look like a record.
    """
    name = _free_name(log, day)
    last = next((t for t in trips_newest_first(log) if t.place == site.name), None)
    rows = () if last is None else hauls_of(log, (last.trip, last.place))
    gone = log.gone(site.zone)
    still_there = [haul for haul in rows if haul.trap not in gone]
    if not still_there:
        return _dealt(name, site, traps)
    return tuple(
        Haul(
            name,
            site.name,
            spot=haul.spot,
            trap=haul.trap,
            design=haul.design,
            bait=haul.bait,
            depth_m=haul.depth_m,
        )
        for haul in still_there
    )


def _dealt(name: str, site: Site, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return one row a trap, in the order in which they are set."""
    depths = {spot.name: spot.depth_m for spot in site.spots}
    baits = {kit.label: kit.bait for kit in traps.kits}
    return tuple(
        Haul(
            name,
            site.name,
            spot=placed.spot,
            trap=placed.trap,
            design=placed.design,
            bait=baits.get(placed.trap, ""),
            depth_m=depths.get(placed.spot),
        )
        for placed in traps.placed
    )


def row_after(hauls: Sequence[Haul], at: int, trip: TripKey) -> Haul:
    """Return a new row to follow one: where and how as the row before, nothing counted."""
    if not hauls:
        return Haul(*trip)
    above = hauls[at]
    return Haul(
        *trip,
        spot=above.spot,
        design=above.design,
        bait=above.bait,
        set_at=above.set_at and above.set_at + NUDGE,
        hauled_at=above.hauled_at and above.hauled_at + NUDGE,
        depth_m=above.depth_m,
    )


def _free_name(log: Log, day: date) -> str:
    taken = {name for name, _ in log.by_trip}
    name = date_text(day)
    number = 2
    found = name
    while found in taken:
        found = f"{name} ({number})"
        number += 1
    return found


def _spread(begin: datetime, minutes: float, count: int) -> list[datetime]:
    """Return times of `count` traps over an outing, in steps of five minutes."""
    step = minutes / max(count, 1)
    return [begin + timedelta(minutes=5 * round(at * step / 5)) for at in range(count)]


# -- typing ----------------------------------------------------------------------------------


class Refused(Exception):  # noqa: N818  (what the user typed, not a fault)
    """A cell that was not taken; its text is the sentence for the user."""


def typed(
    hauls: Sequence[Haul], at: int, texts: Mapping[Column, str], clock: Clock, today: date
) -> tuple[Haul, ...]:
    """Return the hauls with some cells of one as typed; Refused when that cannot be."""
    try:
        made = with_texts(
            hauls[at], texts, clock, lambda column: meant_day(hauls, at, column, clock, today)
        )
    except TypedError as error:
        raise Refused(refusal(hauls[at], error)) from None
    return (*hauls[:at], made, *hauls[at + 1 :])


def nudged(hauls: Sequence[Haul], at: int, column: Column, steps: int) -> tuple[Haul, ...]:
    """Return the hauls with one time moved by steps of five minutes.

    An empty time starts from the nearest row above that has one. Refused when a trap would
    come up before it went in.
    """
    haul = hauls[at]
    value = getattr(haul, column.field)
    if value is None:
        above = [getattr(other, column.field) for other in hauls[:at]]
        value = next((time for time in reversed(above) if time is not None), None)
    if value is None:
        raise Refused(say("No time above to start from: type one, such as 7:40."))
    made = replace(haul, **{column.field: value + steps * NUDGE})
    if made.set_at and made.hauled_at and made.hauled_at <= made.set_at:
        raise Refused(
            say("Not saved. Trap {trap} would come up before it went in.", trap=haul.trap)
        )
    return (*hauls[:at], made, *hauls[at + 1 :])


def meant_day(hauls: Sequence[Haul], at: int, column: Column, clock: Clock, today: date) -> date:
    """Return the local day that a clock without a date means in a cell.

    That of the cell itself, else of the nearest row above, else of any row; else a set is on
    the day before its haul and a haul today, a trap being left overnight.
    """
    if column.kind != "time":
        return today
    order = [at, *range(at - 1, -1, -1), *range(at + 1, len(hauls))]
    for row in order:
        time = getattr(hauls[row], column.field)
        if time is not None:
            day: date = time.astimezone(clock.zone).date()
            return day
    if column.field == "hauled_at":
        return today
    hauled = next((haul.hauled_at for haul in hauls if haul.hauled_at is not None), None)
    return (hauled.astimezone(clock.zone).date() if hauled else today) - timedelta(days=1)


def zone_for(place: str, site: Site | None, known: dict[str, ZoneInfo | None]) -> ZoneInfo:
    """Return the zone that a trip's times are shown in: its place's, UTC where unknown."""
    if site is not None and site.name == place:
        return site.zone
    return known.get(place) or ZoneInfo("UTC")
