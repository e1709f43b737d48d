"""The whole log in memory: what forecasts, plans and trials read."""

from __future__ import annotations

import hashlib
import json
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import cached_property

from planner.logbook.columns import COLUMNS, MEASURES
from planner.logbook.entries import Haul, Trip, TripOutcome

HaulKey = tuple[object, ...]

_LAST = datetime.max.replace(tzinfo=UTC)


def haul_key(haul: Haul) -> HaulKey:
    """Return what makes two hauls the same: every value; an empty extra column says nothing."""
    values = vars(haul)
    # One form of each number: 1 is 1.0, and minus zero is zero, as files have them.
    measures = {name: None if values[name] is None else values[name] + 0.0 for name in MEASURES}
    extra = sorted((name, text) for name, text in haul.extra.items() if text)
    known = {**values, **measures}
    return (*(known[name] for name in COLUMNS), tuple(extra))


@dataclass(frozen=True)
class Log:
    """Every haul of a log, in the order of entry, and what is known of its trips as a whole."""

    hauls: tuple[Haul, ...]
    trips: tuple[Trip, ...] = ()

    @cached_property
    def fingerprint(self) -> str:
        """A hash of the content: the same for the same hauls in any order."""
        rows = sorted(json.dumps(haul_key(haul), default=_plain) for haul in self.hauls)
        trips = sorted(json.dumps(list(vars(trip).values())) for trip in self.trips if _says(trip))
        return hashlib.sha256("\n".join([*rows, "", *trips]).encode()).hexdigest()

    def outcomes(self, place: str | None = None) -> tuple[TripOutcome, ...]:
        """Return the trips added up, by time; those without a time come last, by name.

        place: take only trips there; None takes all.
        """
        by_trip: dict[tuple[str, str], list[Haul]] = defaultdict(list)
        for haul in self.hauls:
            if place is None or haul.place == place:
                by_trip[haul.trip, haul.place].append(haul)
        water_c = {(trip.name, trip.place): trip.water_c for trip in self.trips}
        outcomes = [_outcome(hauls, water_c.get(key)) for key, hauls in by_trip.items()]
        return tuple(sorted(outcomes, key=lambda o: (o.when or _LAST, o.trip, o.place)))


def _plain(value: object) -> str:
    """Return an instant as text, the same whatever offset it carries."""
    if not isinstance(value, datetime):
        raise TypeError(f"{value!r} does not belong in a log")
    return value.astimezone(UTC).isoformat()


def _says(trip: Trip) -> bool:
    """Tell whether a trip holds anything that its hauls do not."""
    return trip != Trip(trip.name, trip.place)


def _outcome(hauls: Sequence[Haul], trip_water_c: float | None) -> TripOutcome:
    times = [haul.hauled_at.timestamp() for haul in hauls if haul.hauled_at is not None]
    middle = (min(times) + max(times)) / 2 if times else None
    # A haul judged without saying how many were light says nothing of the share.
    judged = [haul for haul in hauls if haul.judged is not None and haul.light is not None]
    # Summed in one order, so that the last digit does not hang on the order of the rows.
    water_c = sorted(haul.water_c for haul in hauls if haul.water_c is not None)
    return TripOutcome(
        trip=hauls[0].trip,
        place=hauls[0].place,
        when=None if middle is None else datetime.fromtimestamp(middle, tz=UTC),
        hauls=len(hauls),
        keepers=_total(haul.keepers for haul in hauls),
        judged=_total(haul.judged for haul in judged),
        light=_total(haul.light for haul in judged),
        water_c=sum(water_c) / len(water_c) if water_c else trip_water_c,
    )


def _total(counts: Iterable[int | None]) -> int | None:
    """Return the sum of the recorded counts; None when none was recorded."""
    recorded = [count for count in counts if count is not None]
    return sum(recorded) if recorded else None
