"""Trips and their hauls as the log view shows them: lists, totals, gaps, doubts; no Qt."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from planner.handouts.layout import TrapLayout
from planner.logbook import Haul, Log, TripOutcome
from planner.logbook.columns import CellError
from planner.phrasing import one_in
from planner.sites import Site
from planner.trips import Plan
from planner.ui.haul_cells import COLUMNS, NOT_RECORDED, NUDGE, Clock, Column, refusal, with_text

# Judgements: beyond these a slip of the finger is likelier than the catch.
_MANY_CRABS: Final = 40
_LONG_SOAK: Final = timedelta(days=5)
_SHORT_SOAK: Final = timedelta(minutes=45)
_NAMED_AT_MOST: Final = 4

TripKey = tuple[str, str]  # name and place
_OLDEST: Final = datetime.min.replace(tzinfo=UTC)


def trips_newest_first(log: Log) -> list[TripOutcome]:
    """Return the trips of a log; those without any time first, as they wait for it."""
    outcomes = list(log.outcomes())
    undated = [trip for trip in outcomes if trip.when is None]
    dated = [trip for trip in outcomes if trip.when is not None]
    return [*reversed(undated), *sorted(dated, key=lambda t: t.when or _OLDEST, reverse=True)]


def hauls_of(log: Log, trip: TripKey) -> tuple[Haul, ...]:
    """Return the hauls of a trip in the order of entry."""
    return tuple(haul for haul in log.hauls if (haul.trip, haul.place) == trip)


def same_named_elsewhere(log: Log, trip: TripKey) -> tuple[Haul, ...]:
    """Return the hauls of trips of the same name at other places."""
    return tuple(haul for haul in log.hauls if haul.trip == trip[0] and haul.place != trip[1])


# -- a new trip ------------------------------------------------------------------------------


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


def trip_like_last(log: Log, site: Site, day: date, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return the rows of a trip hauled that day, with the last trip's traps where they stood.

    Times are left open: a guess would look like a record.
    """
    name = _free_name(log, day)
    last = next((t for t in trips_newest_first(log) if t.place == site.name), None)
    if last is None:
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
        for haul in hauls_of(log, (last.trip, last.place))
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
    taken = {haul.trip for haul in log.hauls} | {trip.name for trip in log.trips}
    name = f"{day.day} {day:%b %Y}"
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
    hauls: Sequence[Haul], at: int, column: Column, text: str, clock: Clock, today: date
) -> tuple[Haul, ...]:
    """Return the hauls with one cell as typed; Refused when it cannot be."""
    haul = hauls[at]
    try:
        made = with_text(haul, column, text, clock, meant_day(hauls, at, column, clock, today))
    except CellError as error:
        raise Refused(refusal(haul, column, text, error)) from None
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
        raise Refused("No time above to start from: type one, such as 7:40.")
    made = replace(haul, **{column.field: value + steps * NUDGE})
    if made.set_at and made.hauled_at and made.hauled_at <= made.set_at:
        raise Refused(f"Not saved. Trap {haul.trap} would come up before it went in.")
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


# -- what the rows say -----------------------------------------------------------------------


def light_words(judged: int | None, light: int | None) -> str:
    """Return "about 1 in 8" for the light crabs of a trip; a dash when none was judged."""
    if not judged or light is None:
        return NOT_RECORDED
    return "none" if light == 0 else one_in(light / judged)


def totals(hauls: Sequence[Haul]) -> str:
    """Return the sums of what is recorded so far."""
    traps = f"{len(hauls)} {'trap' if len(hauls) == 1 else 'traps'}"
    sums = {field: _sum(hauls, field) for field in _COUNTS}
    parts = [f"{sums[field]} {field}" for field in ("keepers", "shorts") if sums[field] is not None]
    if sums["females"] is not None:
        sponge = f" ({sums['sponge']} sponge)" if sums["sponge"] else ""
        parts.append(f"{sums['females']} females{sponge}")
    told = [haul for haul in hauls if haul.judged is not None and haul.light is not None]
    judged, light = _sum(told, "judged"), _sum(told, "light")
    if judged:
        share = f": {light_words(judged, light)}" if light else ""
        parts.append(f"{judged} judged, {light} light{share}")
    return f"{traps}: {', '.join(parts)}" if parts else f"{traps}, nothing counted yet"


_COUNTS: Final = tuple(column.field for column in COLUMNS if column.kind == "count")
_WANTED: Final = tuple(
    column
    for column in COLUMNS
    if column.field in ("trap", "spot", "set_at", "hauled_at", "keepers", "judged", "light")
)


def missing(hauls: Sequence[Haul]) -> str:
    """Return what is not recorded yet, "" when all that forecasts and trials need is there."""
    parts = []
    for column in _WANTED:
        empty = [
            haul.trap or f"row {number}"
            for number, haul in enumerate(hauls, start=1)
            if getattr(haul, column.field) in (None, "") and not _needless(haul, column)
        ]
        if empty:
            parts.append(f"{column.heading.lower()} of {_named(empty, len(hauls))}")
    return f"Not recorded yet: {'; '.join(parts)}." if parts else ""


def _needless(haul: Haul, column: Column) -> bool:
    """Tell whether an empty cell lacks nothing: there was no crab to judge."""
    return column.field in ("judged", "light") and haul.keepers == 0


def _named(traps: list[str], of: int) -> str:
    if len(traps) == of and of > 1:
        return "every trap"
    if len(traps) <= _NAMED_AT_MOST:
        return ", ".join(traps)
    return f"{len(traps)} traps"


def doubts(hauls: Sequence[Haul], now: datetime) -> list[str]:
    """Return sentences on what is possible but hardly likely; nothing is refused for it."""
    return [*_many(hauls), *_soaks(hauls), *_doubled(hauls), *_ahead(hauls, now)]


def _many(hauls: Sequence[Haul]) -> Iterator[str]:
    for haul in hauls:
        for field in _COUNTS:
            count = getattr(haul, field)
            if count is not None and count > _MANY_CRABS:
                yield f"Trap {haul.trap}: {count} {field} in one trap. Is that right?"


def _soaks(hauls: Sequence[Haul]) -> Iterator[str]:
    odd: dict[str, list[str]] = {}
    for haul in hauls:
        if haul.set_at is None or haul.hauled_at is None:
            continue
        soak = haul.hauled_at - haul.set_at
        if soak > _LONG_SOAK:
            odd.setdefault(f"a soak of {soak / timedelta(days=1):.0f} days", []).append(haul.trap)
        elif soak < _SHORT_SOAK:
            minutes = round(soak / timedelta(minutes=1))
            odd.setdefault(f"a soak of {minutes} minutes", []).append(haul.trap)
    for what, traps in odd.items():
        yield f"Trap {_named(traps, 0)}: {what}. Are the dates right?"


def _doubled(hauls: Sequence[Haul]) -> Iterator[str]:
    times = Counter((haul.trap, haul.hauled_at) for haul in hauls if haul.trap)
    for (trap, _), count in times.items():
        if count > 1:
            yield f"Trap {trap} is there {count} times with the same haul time."


def _ahead(hauls: Sequence[Haul], now: datetime) -> Iterator[str]:
    ahead = [haul for haul in hauls if haul.hauled_at is not None and haul.hauled_at > now]
    if ahead:
        counted = any(haul.keepers is not None for haul in ahead)
        yield (
            "Crabs are counted for a haul that lies ahead. Are the dates right?"
            if counted
            else "The times are the plan's and still lie ahead: correct them as you set and haul."
        )


def _sum(hauls: Sequence[Haul], field: str) -> int | None:
    counts = [getattr(haul, field) for haul in hauls if getattr(haul, field) is not None]
    return sum(counts) if counts else None


def zone_for(place: str, site: Site | None, known: dict[str, ZoneInfo | None]) -> ZoneInfo:
    """Return the zone that a trip's times are shown in: its place's, UTC where unknown."""
    if site is not None and site.name == place:
        return site.zone
    return known.get(place) or ZoneInfo("UTC")
