"""Between the rows of the logbook file and what they mean."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import asdict, fields
from datetime import UTC, date, datetime
from sys import intern
from typing import Any, Final

from planner.estimates import Interval
from planner.logbook.columns import COLUMNS, LABELS, TIMES
from planner.logbook.entries import Crab, Haul, Promise, Trap, TrapEvent, Trip

Values = dict[str, object]

# Columns of the haul table that the trip carries, not the haul.
_OF_TRIP: Final = ("trip", "place")
_OF_HAUL: Final = tuple(name for name in COLUMNS if name not in _OF_TRIP)
_TIMES_AT: Final = tuple(map(_OF_HAUL.index, TIMES))
_LABELS_AT: Final = tuple(_OF_HAUL.index(name) for name in LABELS if name not in _OF_TRIP)
_OF_CRAB: Final = tuple(field.name for field in fields(Crab))
TRIP_DETAILS: Final = ("crew", "weather", "water_c", "notes", "kitchen_picked", "kitchen_light")
_NO_EXTRA: Final[Mapping[str, str]] = {}  # one for all, as nearly every haul has none


def haul_values(haul: Haul) -> Values:
    """Return what the haul's row holds, its trip and place apart."""
    values: Values = {name: getattr(haul, name) for name in _OF_HAUL}
    for name in TIMES:
        instant = getattr(haul, name)
        values[name] = None if instant is None else instant.astimezone(UTC).isoformat()
    return {**values, "extra": json.dumps(dict(haul.extra), ensure_ascii=False)}


def haul_of(row: sqlite3.Row, trip: str, place: str, crabs: tuple[Crab, ...] = ()) -> Haul:
    """Return the haul of a row; ValueError or TypeError for values the book never wrote."""
    values: list[Any] = [row[name] for name in _OF_HAUL]
    for at in _TIMES_AT:
        written = values[at]
        values[at] = None if written is None else datetime.fromisoformat(written)
    for at in _LABELS_AT:
        values[at] = intern(values[at])  # a long log repeats its labels
    extra = _NO_EXTRA if row["extra"] == "{}" else json.loads(row["extra"])
    # In the order of the haul's fields, which is that of the haul table.
    fields = (trip, place, *values, extra, crabs, row["id"])
    return Haul(*fields)


def crab_values(crab: Crab) -> Values:
    """Return what the crab's row holds, its haul apart."""
    return {name: getattr(crab, name) for name in _OF_CRAB}


def crab_of(row: sqlite3.Row) -> Crab:
    """Return the crab of a row."""
    return Crab(**{name: row[name] for name in _OF_CRAB})


def trip_details(trip: Trip) -> Values:
    """Return what the user told of a trip as a whole."""
    details: Values = {name: getattr(trip, name) for name in TRIP_DETAILS}
    promise = "" if trip.promise is None else json.dumps(asdict(trip.promise))
    return {**details, "promise": promise}


def trip_of(row: sqlite3.Row) -> Trip:
    """Return the trip of a row."""
    details = {name: row[name] for name in TRIP_DETAILS}
    promise = _promise_of(row["promise"]) if row["promise"] else None
    asked = bool(row["kitchen_asked"])
    return Trip(row["name"], row["place"], **details, promise=promise, kitchen_asked=asked)


def _promise_of(text: str) -> Promise | None:
    """Return what was forecast; one that cannot be read must not keep the trip from being read."""
    try:
        written = json.loads(text)
        return Promise(
            **{
                name: Interval(*(float(written[name][end]) for end in ("mean", "low", "high")))
                for name in ("full_keepers", "light_share")
            }
        )
    except (KeyError, TypeError, ValueError):
        return None


def trap_values(trap: Trap) -> Values:
    """Return what the trap's row holds, its history apart."""
    return {"label": trap.label, "design": trap.design, "notes": trap.notes}


def event_values(event: TrapEvent) -> Values:
    """Return what the row of a trap's event holds, its trap apart."""
    return {"kind": event.kind, "on_day": event.on.isoformat(), "notes": event.notes}


def trap_of(row: sqlite3.Row, events: Sequence[sqlite3.Row]) -> Trap:
    """Return the trap of a row with its history; ValueError for a day that is none."""
    told = tuple(
        TrapEvent(event["kind"], date.fromisoformat(event["on_day"]), event["notes"])
        for event in events
    )
    return Trap(row["label"], row["design"], row["notes"], told)
