"""Reading the logbook file whole, and after a change only the trips that it touched."""

from __future__ import annotations

import sqlite3
from collections import defaultdict
from collections.abc import Sequence
from itertools import groupby
from typing import Final

from planner.logbook.entries import Crab, Haul, Trap
from planner.logbook.log import Log, LoggedTrip
from planner.logbook.rows import crab_of, haul_of, trap_of, trip_of

# Which trips this connection has touched since the last reading. Triggers see every way of
# writing, undo included, and a change that is rolled back takes its marks along.
_WATCH: Final = """
    CREATE TEMP TABLE IF NOT EXISTS touched (trip_id INTEGER PRIMARY KEY);
    CREATE TEMP TRIGGER IF NOT EXISTS trip_in AFTER INSERT ON trips BEGIN
        INSERT OR IGNORE INTO touched VALUES (new.id); END;
    CREATE TEMP TRIGGER IF NOT EXISTS trip_set AFTER UPDATE ON trips BEGIN
        INSERT OR IGNORE INTO touched VALUES (new.id); END;
    CREATE TEMP TRIGGER IF NOT EXISTS trip_out AFTER DELETE ON trips BEGIN
        INSERT OR IGNORE INTO touched VALUES (old.id); END;
    CREATE TEMP TRIGGER IF NOT EXISTS haul_in AFTER INSERT ON hauls BEGIN
        INSERT OR IGNORE INTO touched VALUES (new.trip_id); END;
    CREATE TEMP TRIGGER IF NOT EXISTS haul_set AFTER UPDATE ON hauls BEGIN
        INSERT OR IGNORE INTO touched VALUES (old.trip_id), (new.trip_id); END;
    CREATE TEMP TRIGGER IF NOT EXISTS haul_out AFTER DELETE ON hauls BEGIN
        INSERT OR IGNORE INTO touched VALUES (old.trip_id); END;
    CREATE TEMP TRIGGER IF NOT EXISTS crab_in AFTER INSERT ON crabs BEGIN
        INSERT OR IGNORE INTO touched SELECT trip_id FROM hauls WHERE id = new.haul_id; END;
    CREATE TEMP TRIGGER IF NOT EXISTS crab_set AFTER UPDATE ON crabs BEGIN
        INSERT OR IGNORE INTO touched SELECT trip_id FROM hauls WHERE id = new.haul_id; END;
    CREATE TEMP TRIGGER IF NOT EXISTS crab_out AFTER DELETE ON crabs BEGIN
        INSERT OR IGNORE INTO touched SELECT trip_id FROM hauls WHERE id = old.haul_id; END;
"""
_MANY: Final = 400  # beyond so many touched trips, reading everything is as quick


class Contents:
    """What the file holds; the trips that nobody touched are kept from reading to reading."""

    def __init__(self, connection: sqlite3.Connection, watched: bool) -> None:
        """watched: whether this connection writes; other connections' writes are noticed anyway."""
        self._connection = connection
        self._watched = watched
        self._kept: dict[int, LoggedTrip] = {}
        self._seen: int | None = None

    def read(self) -> Log:
        """Return everything in the file, trip by trip, each trip's hauls in their order.

        KeyError, TypeError, ValueError for a value that no logbook ever wrote.
        """
        if self._watched and self._seen is None:
            self._connection.execute("PRAGMA temp_store = MEMORY")
            self._connection.executescript(_WATCH)
        # One transaction, so that a save of another window does not come in between.
        self._connection.execute("BEGIN")
        try:
            return self._read()
        finally:
            if self._connection.in_transaction:
                self._connection.execute("COMMIT")

    def _read(self) -> Log:
        seen = self._connection.execute("PRAGMA data_version").fetchone()[0]
        touched = self._touched()
        if seen != self._seen or len(touched) > _MANY:
            self._kept = self._trips("")
        else:
            for trip_id in touched:
                self._kept.pop(trip_id, None)
                self._kept.update(self._trips("WHERE trip_id = ?", trip_id))
        if self._watched:
            self._connection.execute("DELETE FROM touched")
        self._seen = seen
        return Log.of_trips([self._kept[key] for key in sorted(self._kept)], self._traps())

    def _touched(self) -> Sequence[int]:
        if not self._watched:
            return ()
        return [row[0] for row in self._connection.execute("SELECT trip_id FROM touched")]

    def _trips(self, where: str, *trip: int) -> dict[int, LoggedTrip]:
        """Return trips by id; where: "" for all, else a condition on `trip_id`."""
        fetch = self._connection.execute
        crabs: dict[int, list[Crab]] = defaultdict(list)
        of_hauls = f"WHERE haul_id IN (SELECT id FROM hauls {where})" if where else ""
        for row in fetch(f"SELECT * FROM crabs {of_hauls} ORDER BY id", trip):
            crabs[row["haul_id"]].append(crab_of(row))
        rows = fetch(f"SELECT * FROM trips {where.replace('trip_id', 'id')}", trip).fetchall()
        trips = {row["id"]: trip_of(row) for row in rows}
        hauls: dict[int, tuple[Haul, ...]] = {}
        in_order = fetch(f"SELECT * FROM hauls {where} ORDER BY trip_id, position, id", trip)
        for trip_id, group in groupby(in_order, lambda row: row["trip_id"]):
            of = trips[trip_id]
            hauls[trip_id] = tuple(
                haul_of(row, of.name, of.place, tuple(crabs.get(row["id"], ()))) for row in group
            )
        return {key: LoggedTrip(trip, hauls.get(key, ())) for key, trip in trips.items()}

    def _traps(self) -> tuple[Trap, ...]:
        fetch = self._connection.execute
        events: dict[int, list[sqlite3.Row]] = defaultdict(list)
        for row in fetch("SELECT * FROM trap_events ORDER BY id"):
            events[row["trap_id"]].append(row)
        rows = fetch("SELECT * FROM traps ORDER BY id").fetchall()
        return tuple(trap_of(row, events[row["id"]]) for row in rows)
