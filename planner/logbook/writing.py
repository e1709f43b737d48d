"""Bringing the rows of trips, hauls, crabs and traps to what the user has now."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from datetime import UTC, datetime
from functools import cache
from itertools import zip_longest
from operator import itemgetter

from planner.logbook import bin as the_bin
from planner.logbook.entries import Crab, Haul, Trap, Trip
from planner.logbook.joining import Joined
from planner.logbook.journal import Recorder
from planner.logbook.log import haul_key
from planner.logbook.rows import (
    Values,
    crab_of,
    crab_values,
    event_values,
    haul_of,
    haul_values,
    trap_values,
    trip_details,
    trip_of,
)
from planner.words import say


class Writer:
    """Writes within one recorded change, touching only rows that differ."""

    def __init__(self, connection: sqlite3.Connection, recorder: Recorder) -> None:
        self._connection, self._recorder = connection, recorder

    # -- trips -------------------------------------------------------------------------------

    def trips_named(self, name: str) -> dict[str, int]:
        """Return the ids of the trips of a name, by place."""
        rows = self._connection.execute("SELECT id, place FROM trips WHERE name = ?", (name,))
        return {row["place"]: row["id"] for row in rows}

    def trip_id(self, name: str, place: str) -> int:
        """Return the id of a trip, added when there is none."""
        found = self.trips_named(name).get(place)
        if found is None:
            return self._recorder.insert("trips", {"name": name, "place": place})
        return found

    def set_details(self, details: Trip) -> None:
        """Set what is known of a trip as a whole; it is added when there is none."""
        trip_id = self.trip_id(details.name, details.place)
        row = self._connection.execute("SELECT * FROM trips WHERE id = ?", (trip_id,)).fetchone()
        if trip_of(row) != details:
            self._recorder.update("trips", trip_id, trip_details(details))

    def remove_trip(self, name: str, trip_id: int) -> None:
        """Put a trip with its hauls into the bin."""
        hauls = [row["id"] for row in self._hauls(trip_id)]
        self._bin(say("trip {name}", name=name), trip_id, hauls)
        self._recorder.delete("trips", trip_id)

    # -- hauls -------------------------------------------------------------------------------

    def add_haul(self, trip_id: int, haul: Haul) -> None:
        """Add a haul at the end of a trip."""
        last = self._connection.execute(
            "SELECT coalesce(max(position), 0) FROM hauls WHERE trip_id = ?", (trip_id,)
        ).fetchone()[0]
        self._insert_haul(trip_id, haul, last)

    def take_in(self, there: Sequence[Haul], joined: Joined) -> None:
        """Fill the rows of the log's hauls that lacked something, and add those that are new."""
        for trip, place in {(haul.trip, haul.place) for haul in joined.filled.values()}:
            rows = joined.trip_filled(there, trip, place)
            self.replace_hauls(trip, self.trip_id(trip, place), rows)
        trip_id = cache(self.trip_id)
        for haul in joined.new:
            self.add_haul(trip_id(haul.trip, haul.place), haul)

    def replace_hauls(self, name: str, trip_id: int, hauls: Sequence[Haul]) -> None:
        """Bring a trip's rows to these hauls, in this order; rows left over go into the bin.

        A haul that names its row keeps it, and with it what hangs on the row.
        """
        rows = self._hauls(trip_id)
        held = _matched(rows, hauls)
        positions = _positions(rows, held)
        kept = {row["id"] for row in held if row is not None}
        for left in rows:
            if left["id"] not in kept:
                label = say("trap {trap}", trap=left["trap"]) if left["trap"] else say("a trap")
                self._bin(
                    say("{label} of trip {name}", label=label, name=name), trip_id, [left["id"]]
                )
        for haul, row, position in zip(hauls, held, positions, strict=True):
            if row is None:
                self._insert_haul(trip_id, haul, position)
            else:
                self._update_haul(row, haul, position)

    def _insert_haul(self, trip_id: int, haul: Haul, position: int) -> None:
        values: Values = {"trip_id": trip_id, **haul_values(haul), "position": position}
        self._set_crabs(self._recorder.insert("hauls", values), haul.crabs)

    def _update_haul(self, row: sqlite3.Row, haul: Haul, position: int) -> None:
        if haul_key(haul_of(row, haul.trip, haul.place)) != haul_key(haul):
            self._recorder.update("hauls", row["id"], {**haul_values(haul), "position": position})
        elif row["position"] != position:
            self._recorder.update("hauls", row["id"], {"position": position})
        self._set_crabs(row["id"], haul.crabs)

    def _hauls(self, trip_id: int) -> list[sqlite3.Row]:
        return self._connection.execute(
            "SELECT * FROM hauls WHERE trip_id = ? ORDER BY position, id", (trip_id,)
        ).fetchall()

    def _set_crabs(self, haul_id: int, crabs: Sequence[Crab]) -> None:
        rows = self._connection.execute(
            "SELECT * FROM crabs WHERE haul_id = ? ORDER BY id", (haul_id,)
        ).fetchall()
        for row, crab in zip_longest(rows, crabs):
            if crab is None:
                self._recorder.delete("crabs", row["id"])
            elif row is None:
                self._recorder.insert("crabs", {"haul_id": haul_id, **crab_values(crab)})
            elif crab_of(row) != crab:
                self._recorder.update("crabs", row["id"], crab_values(crab))

    def _bin(self, name: str, trip_id: int, hauls: Sequence[int]) -> None:
        now = datetime.now(UTC)
        the_bin.put(self._connection, self._recorder, name, trip_id, hauls, now)

    # -- traps -------------------------------------------------------------------------------

    def set_trap(self, trap: Trap) -> None:
        """Bring the trap of its label, added when there is none, to what it is now."""
        values = trap_values(trap)
        row = self._trap(trap.label)
        if row is None:
            trap_id = self._recorder.insert("traps", values)
        else:
            trap_id = row["id"]
            if any(row[name] != value for name, value in values.items()):
                self._recorder.update("traps", trap_id, values)
        new = [event_values(event) for event in trap.events]
        for old, event in zip_longest(self._events(trap_id), new):
            if event is None:
                self._recorder.delete("trap_events", old["id"])
            elif old is None:
                self._recorder.insert("trap_events", {"trap_id": trap_id, **event})
            elif any(old[name] != value for name, value in event.items()):
                self._recorder.update("trap_events", old["id"], event)

    def _trap(self, label: str) -> sqlite3.Row | None:
        found: sqlite3.Row | None = self._connection.execute(
            "SELECT * FROM traps WHERE label = ?", (label,)
        ).fetchone()
        return found

    def _events(self, trap_id: int) -> list[sqlite3.Row]:
        return self._connection.execute(
            "SELECT * FROM trap_events WHERE trap_id = ? ORDER BY id", (trap_id,)
        ).fetchall()


def _matched(rows: Sequence[sqlite3.Row], hauls: Sequence[Haul]) -> list[sqlite3.Row | None]:
    """Return the row of each haul: the one it names, else one alike, else the next left over."""
    free = {row["id"]: row for row in rows}
    held = [None if haul.row is None else free.pop(haul.row, None) for haul in hauls]
    keys = {
        row_id: haul_key(haul_of(row, hauls[0].trip, hauls[0].place))
        for row_id, row in (free.items() if None in held else ())
    }
    for at, haul in enumerate(hauls):
        alike = (row_id for row_id in free if held[at] is None and keys[row_id] == haul_key(haul))
        found = next(alike, None)
        if found is not None:
            held[at] = free.pop(found)
    left = list(free.values())
    return [left.pop(0) if row is None and left else row for row in held]


def _positions(rows: Sequence[sqlite3.Row], held: Sequence[sqlite3.Row | None]) -> list[int]:
    """Return where each haul stands; as the rows have it already where they are in order."""
    order = [row["id"] for row in rows]
    kept = [row for row in held if row is not None]
    # Rows keep their order and new ones follow them: their ids then put them last.
    follows = held[: len(kept)] == kept and [order.index(row["id"]) for row in kept] == sorted(
        order.index(row["id"]) for row in kept
    )
    if not follows:
        return list(range(len(held)))
    last = max(map(itemgetter("position"), kept), default=0)
    return [last if row is None else row["position"] for row in held]
