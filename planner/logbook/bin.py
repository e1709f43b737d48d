"""The bin: deleted trips and hauls, kept whole in the logbook until the user empties it."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from planner.logbook.journal import Recorder

_Row = dict[str, Any]


@dataclass(frozen=True)
class Binned:
    """Something in the bin.

    number: what to ask for it by. name: such as "trip 14 Aug". at: when it was deleted, UTC.
    """

    number: int
    name: str
    at: datetime
    hauls: int


def put(
    connection: sqlite3.Connection,
    recorder: Recorder,
    name: str,
    trip_id: int,
    haul_ids: Sequence[int],
    now: datetime,
) -> None:
    """Remove hauls with their crabs and keep them in the bin, with the trip they belong to."""
    trip = _row(connection, "trips", trip_id)
    hauls = [_row(connection, "hauls", haul_id) for haul_id in haul_ids]
    crabs = [crab for haul_id in haul_ids for crab in _crabs(connection, haul_id)]
    content = {"trip": trip, "hauls": hauls, "crabs": crabs}
    recorder.insert(
        "binned",
        {
            "name": name,
            "binned_at": now.isoformat(),
            "hauls": len(hauls),
            "content": json.dumps(content, ensure_ascii=False),
        },
    )
    for table, rows in (("crabs", crabs), ("hauls", hauls)):
        for row in rows:
            recorder.delete(table, row["id"])


def take_out(connection: sqlite3.Connection, recorder: Recorder, number: int) -> str | None:
    """Put something of the bin back and return its trip's name; None when it is not there.

    Hauls go to the trip of their name and place, which is made again when it is gone.
    """
    row = connection.execute("SELECT content FROM binned WHERE id = ?", (number,)).fetchone()
    if row is None:
        return None
    content = json.loads(row["content"])
    trip = content["trip"]
    found = connection.execute(
        "SELECT id FROM trips WHERE name = ? AND place = ?", (trip["name"], trip["place"])
    ).fetchone()
    trip_id = recorder.insert("trips", _without_id(trip)) if found is None else found["id"]
    new_ids = {
        haul["id"]: recorder.insert("hauls", {**_without_id(haul), "trip_id": trip_id})
        for haul in content["hauls"]
    }
    for crab in content["crabs"]:
        recorder.insert("crabs", {**_without_id(crab), "haul_id": new_ids[crab["haul_id"]]})
    recorder.delete("binned", number)
    return str(trip["name"])


def empty(connection: sqlite3.Connection, recorder: Recorder) -> None:
    """Let go of everything in the bin."""
    for row in connection.execute("SELECT id FROM binned ORDER BY id").fetchall():
        recorder.delete("binned", row["id"])


def listed(connection: sqlite3.Connection) -> tuple[Binned, ...]:
    """Return what is in the bin, newest first."""
    rows = connection.execute("SELECT id, name, binned_at, hauls FROM binned ORDER BY id DESC")
    return tuple(
        Binned(row["id"], row["name"], datetime.fromisoformat(row["binned_at"]), row["hauls"])
        for row in rows
    )


def _row(connection: sqlite3.Connection, table: str, row_id: int) -> _Row:
    return dict(connection.execute(f"SELECT * FROM {table} WHERE id = ?", (row_id,)).fetchone())


def _crabs(connection: sqlite3.Connection, haul_id: int) -> list[_Row]:
    rows = connection.execute("SELECT * FROM crabs WHERE haul_id = ? ORDER BY id", (haul_id,))
    return [dict(row) for row in rows]


def _without_id(row: _Row) -> _Row:
    return {name: value for name, value in row.items() if name != "id"}
