"""What must hold within one haul, wherever it comes from: a table, a key press, a script."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta, tzinfo
from functools import partial
from typing import Final

from planner.errors import Problem
from planner.logbook.columns import COUNTS, LABELS, MAX_COUNT, MEASURES, YEARS
from planner.logbook.entries import (
    ABDOMENS,
    GRADES,
    PEELER_SIGNS,
    SEXES,
    SHELLS,
    TRAP_EVENTS,
    WIDTHS_BY,
    Crab,
    Haul,
    Trap,
    Trip,
)
from planner.words import say

# A phone and a computer may disagree by this much about what time it is.
_CLOCK_SLACK = timedelta(minutes=10)
# Bounds far outside any crab of the kinds that traps catch: slipped digits and wrong units.
CRAB_MEASURES: Final = {
    "width_mm": (5.0, 400.0),
    "weight_g": (1.0, 5000.0),
    "meat_g": (0.0, 2000.0),
}
_CORRECT_IT: Final = say("correct it")
_CRAB_WORDS: Final = {
    "sex": SEXES,
    "width_by": WIDTHS_BY,
    "shell": SHELLS,
    "peeler_sign": PEELER_SIGNS,
    "abdomen": ABDOMENS,
    "grade": GRADES,
}


def haul_problems(
    haul: Haul, where: Callable[[str], str], now: datetime | None = None, zone: tzinfo = UTC
) -> Iterator[Problem]:
    """Yield every problem of a haul; `where` names a column of it for the user.

    now: aware; when given, later times are refused. zone: in which times are told.
    """
    yield from _missing(haul, where)
    yield from _values(haul, where)
    yield from _times(haul, where, now, zone)
    yield from _counts(haul, where)
    for number, crab in enumerate(haul.crabs, start=1):
        yield from crab_problems(crab, partial(_of_crab, where, number))


def _of_crab(where: Callable[[str], str], number: int, name: str) -> str:
    return where(say("crab {number}, {name}", number=number, name=name))


def crab_problems(crab: Crab, where: Callable[[str], str]) -> Iterator[Problem]:
    """Yield every problem of a single crab."""
    for name, words in _CRAB_WORDS.items():
        word = getattr(crab, name)
        if word and word not in words:
            yield Problem(
                where(name),
                word,
                say("is no known word"),
                say("use one of {words}", words=", ".join(words)),
            )
    for name, bounds in CRAB_MEASURES.items():
        yield from _outside(where, name, getattr(crab, name), bounds)
    if crab.meat_g is not None and crab.weight_g is not None and crab.meat_g >= crab.weight_g:
        what = say("is not less than the whole crab ({weight_g:g} g)", weight_g=crab.weight_g)
        yield Problem(
            where("meat_g"), f"{crab.meat_g:g}", what, say("correct one of the two weights")
        )
    yield from _unstorable(where, "notes", crab.notes)


def trip_problems(trip: Trip) -> Iterator[Problem]:
    """Yield every problem of what is known of a trip as a whole."""
    for name in ("crew", "kitchen_picked", "kitchen_light"):
        count = getattr(trip, name)
        if count is not None and not 0 <= count <= MAX_COUNT:
            yield Problem(
                name,
                str(count),
                say("is not a possible count"),
                say("give 0 to {max_count}", max_count=MAX_COUNT),
            )
    picked, light = trip.kitchen_picked, trip.kitchen_light
    if light is not None and picked is None:
        remedy = say("fill in how many were picked, or leave both empty")
        yield Problem("kitchen_light", str(light), say("needs the number of crabs picked"), remedy)
    elif light is not None and picked is not None and light > picked:
        remedy = say("light counts those of the picked that were light")
        yield Problem(
            "kitchen_light",
            str(light),
            say("is more than were picked ({picked})", picked=picked),
            remedy,
        )
    for name in ("name", "place"):
        if not getattr(trip, name).strip():
            yield Problem(name, "", say("is empty"), say("name the trip and its place"))
    yield from _outside(
        str, "water_c", trip.water_c, MEASURES["water_c"], say("give degrees Celsius")
    )
    for name in ("name", "place", "weather", "notes"):
        yield from _unstorable(str, name, getattr(trip, name))


def trap_problems(trap: Trap) -> Iterator[Problem]:
    """Yield every problem of a trap and its history."""
    if not trap.label.strip():
        yield Problem(
            "label", "", say("is empty"), say("give the trap the label it carries, such as A3")
        )
    for event in trap.events:
        if event.kind not in TRAP_EVENTS:
            remedy = say("use one of {trap_events}", trap_events=", ".join(TRAP_EVENTS))
            yield Problem(f"history, {event.on}", event.kind, say("is no known word"), remedy)
        if not YEARS[0] <= event.on.year <= YEARS[1]:
            yield Problem("history", event.on.isoformat(), say("is not a likely year"), _CORRECT_IT)
    texts = (trap.label, trap.design, trap.notes, *(event.notes for event in trap.events))
    yield from _unstorable(str, "notes", "".join(texts))


def _missing(haul: Haul, where: Callable[[str], str]) -> Iterator[Problem]:
    if not haul.trip.strip():
        remedy = say("give every haul its trip's name, such as 14 Aug")
        yield Problem(where("trip"), "", say("is empty"), remedy)
    if not haul.place.strip():
        yield Problem(where("place"), "", say("is empty"), say("give the name of the place"))


def _values(haul: Haul, where: Callable[[str], str]) -> Iterator[Problem]:
    for name in COUNTS:
        count = getattr(haul, name)
        if count is not None and not 0 <= count <= MAX_COUNT:
            remedy = say(
                "give a count from 0 to {max_count}, or none when it was not recorded",
                max_count=MAX_COUNT,
            )
            yield Problem(where(name), str(count), say("is not a possible count"), remedy)
    for name, bounds in MEASURES.items():
        yield from _outside(where, name, getattr(haul, name), bounds)
    texts = {name: getattr(haul, name) for name in (*LABELS, "other", "notes")}
    texts.update(haul.extra)
    if _is_storable("".join(texts.values())):
        return
    for name, text in texts.items():
        yield from _unstorable(where, name, text)


def _times(
    haul: Haul, where: Callable[[str], str], now: datetime | None, zone: tzinfo
) -> Iterator[Problem]:
    def told(instant: datetime) -> str:
        return instant.astimezone(zone).isoformat(" ", "minutes")

    for name in ("set_at", "hauled_at"):
        instant = getattr(haul, name)
        if instant is None:
            continue
        if not YEARS[0] - 1 <= instant.year <= YEARS[1] + 1:
            yield Problem(where(name), told(instant), say("is not a likely year"), _CORRECT_IT)
        if now is not None and instant > now + _CLOCK_SLACK:
            yield Problem(
                where(name), told(instant), say("is in the future"), say("correct the date")
            )
    if haul.set_at and haul.hauled_at and haul.hauled_at <= haul.set_at:
        yield Problem(
            where("hauled_at"),
            told(haul.hauled_at),
            say("is not after the trap was set ({set_at})", set_at=told(haul.set_at)),
            say("correct one of the two times"),
        )


def _counts(haul: Haul, where: Callable[[str], str]) -> Iterator[Problem]:
    if haul.light is not None and haul.judged is None:
        yield Problem(
            where("light"),
            str(haul.light),
            say("needs the number of crabs looked at"),
            say("fill in judged, or leave both empty"),
        )
    elif haul.light is not None and haul.judged is not None and haul.light > haul.judged:
        yield Problem(
            where("light"),
            str(haul.light),
            say("is more than were judged ({judged})", judged=haul.judged),
            say("light counts those of the judged that were light"),
        )
    if haul.sponge is not None and haul.females is not None and haul.sponge > haul.females:
        yield Problem(
            where("sponge"),
            str(haul.sponge),
            say("is more than the females ({females})", females=haul.females),
            say("females counts every female, sponge those of them with eggs"),
        )


def _outside(
    where: Callable[[str], str],
    name: str,
    value: float | None,
    bounds: tuple[float, float],
    remedy: str = _CORRECT_IT,
) -> Iterator[Problem]:
    """Yield what is wrong with a measure that is no number within its bounds."""
    low, high = bounds
    if value is not None and not (math.isfinite(value) and low <= value <= high):
        what = say("is outside {low:g} to {high:g}", low=low, high=high)
        yield Problem(where(name), str(value), what, remedy)


def _unstorable(where: Callable[[str], str], name: str, text: str) -> Iterator[Problem]:
    """Yield what is wrong with a text that no UTF-8 file can hold."""
    if not _is_storable(text):
        yield Problem(where(name), "", say("holds a character no file can keep"), say("remove it"))


def _is_storable(text: str) -> bool:
    """Tell whether a UTF-8 text file can hold the text."""
    if "\0" in text:
        return False
    try:
        text.encode("utf-8")
    except UnicodeEncodeError:
        return False
    return True
