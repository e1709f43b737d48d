"""What must hold within one haul, wherever it comes from: a table, a key press, a script."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta

from planner.errors import Problem
from planner.logbook.columns import COUNTS, LABELS, MAX_COUNT, MEASURES, YEARS
from planner.logbook.entries import Haul

# A phone and a computer may disagree by this much about what time it is.
_CLOCK_SLACK = timedelta(minutes=10)


def haul_problems(
    haul: Haul, where: Callable[[str], str], now: datetime | None = None
) -> Iterator[Problem]:
    """Yield every problem of a haul; `where` names a column of it for the user.

    now: aware; when given, later times are refused.
    """
    yield from _missing(haul, where)
    yield from _values(haul, where)
    yield from _times(haul, where, now)
    yield from _counts(haul, where)


def _missing(haul: Haul, where: Callable[[str], str]) -> Iterator[Problem]:
    if not haul.trip.strip():
        remedy = "give every haul its trip's name, such as 14 Aug"
        yield Problem(where("trip"), "", "is empty", remedy)
    if not haul.place.strip():
        yield Problem(where("place"), "", "is empty", "give the name of the place")


def _values(haul: Haul, where: Callable[[str], str]) -> Iterator[Problem]:
    for name in COUNTS:
        count = getattr(haul, name)
        if count is not None and not 0 <= count <= MAX_COUNT:
            remedy = f"give a count from 0 to {MAX_COUNT}, or none when it was not recorded"
            yield Problem(where(name), str(count), "is not a possible count", remedy)
    for name, (low, high) in MEASURES.items():
        value = getattr(haul, name)
        if value is not None and not (math.isfinite(value) and low <= value <= high):
            yield Problem(where(name), str(value), f"is outside {low:g} to {high:g}", "correct it")
    texts = {name: getattr(haul, name) for name in (*LABELS, "other", "notes")}
    texts.update(haul.extra)
    if _is_storable("".join(texts.values())):
        return
    for name, text in texts.items():
        if not _is_storable(text):
            yield Problem(where(name), "", "holds a character no file can keep", "remove it")


def _times(haul: Haul, where: Callable[[str], str], now: datetime | None) -> Iterator[Problem]:
    for name in ("set_at", "hauled_at"):
        instant = getattr(haul, name)
        if instant is None:
            continue
        if not YEARS[0] - 1 <= instant.year <= YEARS[1] + 1:
            yield Problem(where(name), instant.isoformat(), "is not a likely year", "correct it")
        if now is not None and instant > now + _CLOCK_SLACK:
            shown = instant.astimezone(UTC).strftime("%Y-%m-%d %H:%M UTC")
            yield Problem(where(name), shown, "is in the future", "correct the date")
    if haul.set_at and haul.hauled_at and haul.hauled_at <= haul.set_at:
        yield Problem(
            where("hauled_at"),
            haul.hauled_at.isoformat(),
            f"is not after the trap was set ({haul.set_at.isoformat()})",
            "correct one of the two times",
        )


def _counts(haul: Haul, where: Callable[[str], str]) -> Iterator[Problem]:
    if haul.light is not None and haul.judged is None:
        yield Problem(
            where("light"),
            str(haul.light),
            "needs the number of crabs looked at",
            "fill in judged, or leave both empty",
        )
    elif haul.light is not None and haul.judged is not None and haul.light > haul.judged:
        yield Problem(
            where("light"),
            str(haul.light),
            f"is more than were judged ({haul.judged})",
            "light counts those of the judged that were light",
        )
    if haul.sponge is not None and haul.females is not None and haul.sponge > haul.females:
        yield Problem(
            where("sponge"),
            str(haul.sponge),
            f"is more than the females ({haul.females})",
            "females counts every female, sponge those of them with eggs",
        )


def _is_storable(text: str) -> bool:
    """Tell whether a UTF-8 text file can hold the text."""
    if "\0" in text:
        return False
    try:
        text.encode("utf-8")
    except UnicodeEncodeError:
        return False
    return True
