"""The whole log in memory: what forecasts, plans and trials read."""

from __future__ import annotations

import hashlib
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import asdict, astuple, dataclass
from datetime import UTC, datetime, tzinfo
from functools import cached_property
from itertools import chain
from operator import attrgetter
from typing import Self

from planner.logbook.columns import COLUMNS, COUNTS, MEASURES, TIMES
from planner.logbook.entries import Haul, Trap, Trip, TripOutcome

HaulKey = tuple[object, ...]
TripKey = tuple[str, str]  # name and place

_VALUES = attrgetter(*COLUMNS)
_MEASURES_AT = tuple(map(COLUMNS.index, MEASURES))
_TIMES_AT = tuple(map(COLUMNS.index, TIMES))
_LAST = datetime.max.replace(tzinfo=UTC)


def haul_key(haul: Haul) -> HaulKey:
    """Return what makes two hauls of haul tables the same: every value of a table's row.

    An empty extra column says nothing; single crabs are no part of a haul table.
    """
    values = list(_VALUES(haul))
    for at in _MEASURES_AT:
        # One form of each number: 1 is 1.0, and minus zero is zero, as files have them.
        values[at] = None if values[at] is None else values[at] + 0.0
    extra = sorted((name, text) for name, text in haul.extra.items() if text)
    return (*values, tuple(extra))


@dataclass(frozen=True)
class LoggedTrip:
    """One trip with its hauls in the order of entry; what is worked out of it is kept."""

    trip: Trip
    hauls: tuple[Haul, ...]

    @cached_property
    def outcome(self) -> TripOutcome:
        """The trip added up; it has at least one haul."""
        return _outcome(self.hauls, self.trip)

    @cached_property
    def digest(self) -> int:
        """A hash of the content as a number: the same for the same hauls in any order."""
        details = {**vars(self.trip), "kitchen_asked": None}
        told = [_hash(details)] if _says(self.trip) else []
        return sum([*told, *map(_haul_hash, self.hauls)])


@dataclass(frozen=True)
class Log:
    """Every haul of a log, in the order of entry, and what is known of trips and traps as such."""

    hauls: tuple[Haul, ...]
    trips: tuple[Trip, ...] = ()
    traps: tuple[Trap, ...] = ()

    @classmethod
    def of_trips(cls, logged: Sequence[LoggedTrip], traps: tuple[Trap, ...] = ()) -> Self:
        """Return the log of trips with their hauls, trip by trip.

        A trip that an earlier log held keeps what was worked out of it, so that a change costs
        what it changes, however long the log is.
        """
        log = cls(
            tuple(chain.from_iterable(each.hauls for each in logged)),
            tuple(each.trip for each in logged),
            traps,
        )
        by_trip = {(each.trip.name, each.trip.place): each for each in logged}
        vars(log)["by_trip"] = by_trip  # where the cached property would keep it
        return log

    @cached_property
    def by_trip(self) -> dict[TripKey, LoggedTrip]:
        """The trips with their hauls, by name and place, in the order of entry."""
        hauls: dict[TripKey, list[Haul]] = defaultdict(list)
        for haul in self.hauls:
            hauls[haul.trip, haul.place].append(haul)
        trips = {key: Trip(*key) for key in hauls}
        trips.update({(trip.name, trip.place): trip for trip in self.trips})
        return {key: LoggedTrip(trip, tuple(hauls.get(key, ()))) for key, trip in trips.items()}

    def gone(self, zone: tzinfo) -> frozenset[str]:
        """Return the labels of traps lost or retired, with nothing counted in them since that day.

        zone: on whose clock hauls have their day; in UTC an evening would be of the next one.
        """
        since = {trap.label: trap.gone_since for trap in self.traps if trap.gone_since}
        back = {
            haul.trap
            for haul in self.hauls
            if haul.trap in since
            and haul.hauled_at is not None
            and haul.hauled_at.astimezone(zone).date() > since[haul.trap]
            and any(getattr(haul, name) is not None for name in COUNTS)
        }
        return frozenset(since.keys() - back)

    @cached_property
    def fingerprint(self) -> str:
        """A hash of the content: the same for the same hauls in any order."""
        whole = sum(each.digest for each in self.by_trip.values()) + sum(
            map(_trap_hash, self.traps)
        )
        return hashlib.sha256(str(whole).encode()).hexdigest()

    def outcomes(self, place: str | None = None) -> tuple[TripOutcome, ...]:
        """Return the trips added up, by time; those without a time come last, by name.

        place: take only trips there; None takes all.
        """
        if place is None:
            return self._outcomes
        return tuple(outcome for outcome in self._outcomes if outcome.place == place)

    @cached_property
    def _outcomes(self) -> tuple[TripOutcome, ...]:
        outcomes = [each.outcome for each in self.by_trip.values() if each.hauls]
        return tuple(sorted(outcomes, key=lambda o: (o.when or _LAST, o.trip, o.place)))


def _haul_hash(haul: Haul) -> int:
    values = list(haul_key(haul))
    for at in _TIMES_AT:  # an instant is the same whatever offset it carries
        values[at] = None if values[at] is None else values[at].timestamp()  # type: ignore[attr-defined]
    return _hash((values, sorted(map(astuple, haul.crabs), key=repr)))


def _trap_hash(trap: Trap) -> int:
    return _hash(asdict(trap))


def _hash(value: object) -> int:
    """Return a hash of plain values by how Python writes them."""
    return int.from_bytes(hashlib.sha256(repr(value).encode()).digest())


def _says(trip: Trip) -> bool:
    """Tell whether a trip holds anything that its hauls do not."""
    return trip != Trip(trip.name, trip.place)


def _outcome(hauls: Sequence[Haul], trip: Trip) -> TripOutcome:
    times = [haul.hauled_at.timestamp() for haul in hauls if haul.hauled_at is not None]
    middle = (min(times) + max(times)) / 2 if times else None
    judged, light, in_kitchen = _judged(hauls, trip)
    # Summed in one order, so that the last digit does not hang on the order of the rows.
    water_c = sorted(haul.water_c for haul in hauls if haul.water_c is not None)
    return TripOutcome(
        trip=hauls[0].trip,
        place=hauls[0].place,
        when=None if middle is None else datetime.fromtimestamp(middle, tz=UTC),
        hauls=len(hauls),
        keepers=_total(haul.keepers for haul in hauls),
        judged=judged,
        light=light,
        water_c=sum(water_c) / len(water_c) if water_c else trip.water_c,
        in_kitchen=in_kitchen,
        crabs=tuple(crab for haul in hauls for crab in haul.crabs),
    )


def _judged(hauls: Sequence[Haul], trip: Trip) -> tuple[int | None, int | None, bool]:
    """Return how many crabs a trip judged, how many were light, and whether in the kitchen.

    Deck and kitchen look at the same crabs, so the larger count stands for the trip and the two
    are never added; of equal ones the kitchen's, where the meat is seen. The larger one also is
    the safer: light crabs freed on deck never reach the kitchen.
    """
    pairs = [pair for pair in map(haul_judged, hauls) if pair is not None]
    judged = sum(pair[0] for pair in pairs)
    picked, light = trip.kitchen_picked, trip.kitchen_light
    if picked and light is not None and picked >= judged:
        return picked, light, True
    return (judged, sum(pair[1] for pair in pairs), False) if pairs else (None, None, False)


def haul_judged(haul: Haul) -> tuple[int, int] | None:
    """Return crabs judged and those of them light; of crabs graded singly where only they were.

    A haul judged without saying how many were light says nothing of the share.
    """
    if haul.judged is None:
        grades = [crab.grade for crab in haul.crabs if crab.grade]
        return (len(grades), grades.count("light")) if grades else None
    return None if haul.light is None else (haul.judged, haul.light)


def _total(counts: Iterable[int | None]) -> int | None:
    """Return the sum of the recorded counts; None when none was recorded."""
    recorded = [count for count in counts if count is not None]
    return sum(recorded) if recorded else None
