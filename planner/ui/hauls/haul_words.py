"""What the rows of a trip say: totals, what is missing, what is hardly likely; no Qt."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from datetime import datetime, timedelta
from typing import Final

from planner.logbook import Haul, Trip, TripOutcome
from planner.logbook.log import haul_judged
from planner.phrasing import count_text, light_text, one_in
from planner.ui.hauls.haul_cells import COLUMNS, NOT_RECORDED, Column
from planner.words import counted, say

# Judgements: beyond these a slip of the finger is likelier than the catch.
_MANY_CRABS: Final = 40
_LONG_SOAK: Final = timedelta(days=5)
_SHORT_SOAK: Final = timedelta(minutes=45)
_NAMED_AT_MOST: Final = 4


def light_words(
    judged: int | None, light: int | None, in_words: Callable[[float], str] = one_in
) -> str:
    """Return "about 1 in 8" for the light crabs of a trip; a dash when none was judged."""
    if not judged or light is None:
        return NOT_RECORDED
    return say("none") if light == 0 else in_words(light / judged)


def totals(hauls: Sequence[Haul], trip: Trip | None = None) -> str:
    """Return the sums of what is recorded so far, and the kitchen's count of the trip."""
    traps = counted(len(hauls), "trap")
    sums = {field: _sum(hauls, field) for field in (column.field for column in _COUNTED)}
    parts = []
    if sums["keepers"] is not None:
        parts.append(say("{keepers} keepers", keepers=sums["keepers"]))
    if sums["shorts"] is not None:
        parts.append(say("{shorts} shorts", shorts=sums["shorts"]))
    if sums["females"] is not None:
        sponge = say(" ({sponge} sponge)", sponge=sums["sponge"]) if sums["sponge"] else ""
        parts.append(say("{females} females{sponge}", females=sums["females"], sponge=sponge))
    told = [pair for pair in map(haul_judged, hauls) if pair is not None]
    judged, lights = sum(pair[0] for pair in told), sum(pair[1] for pair in told)
    if judged:
        share = f": {light_words(judged, lights)}" if lights else ""
        parts.append(
            say("{judged} judged, {lights} light{share}", judged=judged, lights=lights, share=share)
        )
    if trip is not None and trip.kitchen_picked is not None:
        light = NOT_RECORDED if trip.kitchen_light is None else str(trip.kitchen_light)
        parts.append(
            say(
                "in the kitchen {kitchen_picked} picked, {light} light",
                kitchen_picked=trip.kitchen_picked,
                light=light,
            )
        )
    return (
        f"{traps}: {', '.join(parts)}"
        if parts
        else say("{traps}, nothing counted yet", traps=traps)
    )


_COUNTED: Final = tuple(column for column in COLUMNS if column.kind == "count")
_WANTED: Final = tuple(
    column
    for column in COLUMNS
    if column.field in ("trap", "spot", "set_at", "hauled_at", "keepers", "judged", "light")
)


def promised(trip: Trip | None) -> str:
    """Return what the plan of a trip forecast, "" for a trip begun without one."""
    if trip is None or trip.promise is None:
        return ""
    keepers = count_text(trip.promise.full_keepers)
    light = light_text(trip.promise.light_share)
    return say(
        "The plan forecast {keepers} full keepers; light crabs {light}.",
        keepers=keepers,
        light=light,
    )


def missing(hauls: Sequence[Haul], trip: Trip | None = None) -> str:
    """Return what is not recorded yet, "" when all that forecasts and trials need is there."""
    parts = []
    in_kitchen = trip is not None and trip.kitchen_light is not None
    for column in _WANTED:
        if in_kitchen and column.field in ("judged", "light"):
            continue
        empty = [
            haul.trap or say("row {number}", number=number)
            for number, haul in enumerate(hauls, start=1)
            if getattr(haul, column.field) in (None, "") and not _needless(haul, column)
        ]
        if empty:
            parts.append(
                say(
                    "{heading} of {named}",
                    heading=column.heading.lower(),
                    named=_named(empty, len(hauls)),
                )
            )
    return say("Not recorded yet: {parts}.", parts="; ".join(parts)) if parts else ""


def _needless(haul: Haul, column: Column) -> bool:
    """Tell whether an empty cell lacks nothing: no crab to judge, or each judged by itself."""
    judged = haul.judged is None and haul_judged(haul) is not None
    return column.field in ("judged", "light") and (haul.keepers == 0 or judged)


def _named(traps: list[str], of: int) -> str:
    if len(traps) == of and of > 1:
        return say("every trap")
    if len(traps) <= _NAMED_AT_MOST:
        return ", ".join(traps)
    return counted(len(traps), "trap")


def doubts(hauls: Sequence[Haul], now: datetime, trip: Trip | None = None) -> list[str]:
    """Return sentences on what is possible but hardly likely; nothing is refused for it."""
    found = [*_many(hauls), *_soaks(hauls), *_doubled(hauls), *_ahead(hauls, now)]
    return [*found, *_kitchen(hauls, trip)]


def _kitchen(hauls: Sequence[Haul], trip: Trip | None) -> Iterator[str]:
    keepers = _sum(hauls, "keepers")
    picked = None if trip is None else trip.kitchen_picked
    if picked is not None and keepers is not None and picked > keepers:
        yield say(
            "{picked} crabs were picked in the kitchen, but {keepers} were kept. Is that right?",
            picked=picked,
            keepers=keepers,
        )


def _many(hauls: Sequence[Haul]) -> Iterator[str]:
    for haul in hauls:
        for column in _COUNTED:
            count = getattr(haul, column.field)
            if count is not None and count > _MANY_CRABS:
                yield say(
                    "Trap {trap}: {count} {kind} in one trap. Is that right?",
                    trap=haul.trap,
                    count=count,
                    kind=column.heading.lower(),
                )


def _soaks(hauls: Sequence[Haul]) -> Iterator[str]:
    odd: dict[str, list[str]] = {}
    for haul in hauls:
        if haul.set_at is None or haul.hauled_at is None:
            continue
        soak = haul.hauled_at - haul.set_at
        if soak > _LONG_SOAK:
            odd.setdefault(
                say("a soak of {days:.0f} days", days=soak / timedelta(days=1)), []
            ).append(haul.trap)
        elif soak < _SHORT_SOAK:
            minutes = round(soak / timedelta(minutes=1))
            odd.setdefault(say("a soak of {minutes} minutes", minutes=minutes), []).append(
                haul.trap
            )
    for what, traps in odd.items():
        yield say("Trap {named}: {what}. Are the dates right?", named=_named(traps, 0), what=what)


def _doubled(hauls: Sequence[Haul]) -> Iterator[str]:
    times = Counter((haul.trap, haul.hauled_at) for haul in hauls if haul.trap)
    for (trap, _), count in times.items():
        if count > 1:
            yield say(
                "Trap {trap} is there {count} times with the same haul time.",
                trap=trap,
                count=count,
            )


def _ahead(hauls: Sequence[Haul], now: datetime) -> Iterator[str]:
    ahead = [haul for haul in hauls if haul.hauled_at is not None and haul.hauled_at > now]
    if ahead:
        counted = any(haul.keepers is not None for haul in ahead)
        yield (
            say("Crabs are counted for a haul that lies ahead. Are the dates right?")
            if counted
            else say(
                "The times are the plan's and still lie ahead: correct them as you set and haul."
            )
        )


def trips_words(trips: Sequence[TripOutcome]) -> str:
    """Return the sums of several trips, such as those that a filter leaves."""
    hauls = sum(trip.hauls for trip in trips)
    keepers = [trip.keepers for trip in trips if trip.keepers is not None]
    judged = [trip for trip in trips if trip.judged and trip.light is not None]
    crabs = sum(trip.judged or 0 for trip in judged)
    light = sum(trip.light or 0 for trip in judged)
    parts = [
        counted(len(trips), "trip"),
        say("{hauls:,} hauls", hauls=hauls),
    ]
    if keepers:
        parts.append(say("{keepers:,} keepers", keepers=sum(keepers)))
    if crabs:
        parts.append(
            say(
                "{crabs:,} judged, light {light_words}",
                crabs=crabs,
                light_words=light_words(crabs, light),
            )
        )
    return ", ".join(parts)


def _sum(hauls: Sequence[Haul], field: str) -> int | None:
    counts = [getattr(haul, field) for haul in hauls if getattr(haul, field) is not None]
    return sum(counts) if counts else None
