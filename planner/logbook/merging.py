"""Two whole logs made one: what the other has more is taken, and what it has otherwise is named."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any, Final

from planner.logbook.entries import Haul, Trap, Trip
from planner.logbook.joining import Joined, differing, join
from planner.logbook.log import Log
from planner.logbook.rows import TRIP_DETAILS

# Known together or not at all.
_KITCHEN: Final = ("kitchen_picked", "kitchen_light")


@dataclass(frozen=True)
class Difference:
    """Something that both logs hold and not alike; nothing of it is taken.

    trip, place: empty for a trap's own description. trap: empty for a trip as a whole. values:
    what this log and the other hold, by the name of the column.
    """

    trip: str
    place: str
    trap: str
    values: Mapping[str, tuple[Any, Any]]


@dataclass(frozen=True)
class Merged:
    """What taking another log in would do.

    hauls: new, known and filled. trips, traps: as they will be, those alone that change.
    """

    hauls: Joined
    trips: tuple[Trip, ...]
    traps: tuple[Trap, ...]
    differences: tuple[Difference, ...]

    @property
    def adds(self) -> bool:
        """Whether there is anything to take."""
        return bool(self.hauls.new or self.hauls.filled or self.trips or self.traps)


def merge(here: Log, there: Log) -> Merged:
    """Return what another log adds to this one, whose every record stays as it is.

    Taken are trips and hauls that are not here, what rows, trips and traps here do not say, and
    what befell a trap. A haul of a trap that stands in the same trip with other values is not a
    second haul but a difference, for the user to settle.
    """
    differences: list[Difference] = []
    hauls = _hauls(here, there, differences)
    trips = tuple(_trips(here, there, differences))
    traps = tuple(_traps(here, there, differences))
    return Merged(hauls, trips, traps, tuple(differences))


def _hauls(here: Log, there: Log, differences: list[Difference]) -> Joined:
    joined = join(here.hauls, there.hauls)
    filled = dict(joined.filled)
    for number, at in joined.met.items():
        row, crabs = filled.get(at, here.hauls[at]), there.hauls[number].crabs
        if crabs and not row.crabs:
            filled[at] = replace(row, crabs=crabs)
        elif crabs and crabs != row.crabs:
            counts = {"crabs": (len(row.crabs), len(crabs))}
            differences.append(Difference(row.trip, row.place, row.trap, counts))
    new: list[Haul] = []
    for number, haul in enumerate(there.hauls):
        if number in joined.met:
            continue
        if number not in joined.beside:
            new.append(haul)
            continue
        row = here.hauls[joined.beside[number]]
        values = {name: (_value(row, name), _value(haul, name)) for name in differing(row, haul)}
        differences.append(Difference(haul.trip, haul.place, haul.trap, values))
    known = joined.known - len(filled.keys() - joined.filled.keys())
    return replace(joined, new=tuple(new), filled=filled, known=known)


def _value(haul: Haul, name: str) -> Any:
    return haul.extra[name] if name in haul.extra else getattr(haul, name)


def _trips(here: Log, there: Log, differences: list[Difference]) -> Iterator[Trip]:
    for key, each in there.by_trip.items():
        logged = here.by_trip.get(key)
        ours = Trip(*key) if logged is None else logged.trip
        told = {
            name: value
            for name in (*TRIP_DETAILS, "promise")
            if (value := getattr(each.trip, name)) not in (None, "")
        }
        # Of two promises the first was made before the trip; nobody need be asked.
        values: dict[str, tuple[Any, Any]] = {
            name: (mine, told[name])
            for name in TRIP_DETAILS
            if name in told and (mine := getattr(ours, name)) not in (None, "", told[name])
        }
        kept = {*values, *(_KITCHEN if values.keys() & set(_KITCHEN) else ())}
        lacking = {
            name: value
            for name, value in told.items()
            if name not in kept and getattr(ours, name) in (None, "")
        }
        if lacking:
            yield replace(ours, **lacking)
        if values:
            differences.append(Difference(*key, "", values))


def _traps(here: Log, there: Log, differences: list[Difference]) -> Iterator[Trap]:
    by_label = {trap.label: trap for trap in here.traps}
    for trap in there.traps:
        ours = by_label.get(trap.label, Trap(trap.label))
        events = [*ours.events, *_lacking(ours, trap)]
        made = replace(
            ours,
            design=ours.design or trap.design,
            notes=ours.notes or trap.notes,
            events=tuple(events),
        )
        values = {
            name: (mine, other)
            for name in ("design", "notes")
            if (other := getattr(trap, name)) and (mine := getattr(made, name)) != other
        }
        if values:
            differences.append(Difference("", "", trap.label, values))
        if made != by_label.get(trap.label):
            yield made


def _lacking(ours: Trap, trap: Trap) -> Iterator[Any]:
    """Return what befell a trap in the other log and not in this one, in its order."""
    left = list(ours.events)
    for event in trap.events:
        if event in left:
            left.remove(event)
        else:
            yield event
