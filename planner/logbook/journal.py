"""Changes to the logbook that can be undone: each row's state before and after, in the file.

Rows are written through a `Recorder`, which notes what it does; undo and redo put the noted
states back. It knows no table in particular, so a new table needs nothing here.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Final

from planner.words import say

KEPT_CHANGES: Final = 50

Values = Mapping[str, object]


@dataclass(frozen=True)
class Change:
    """What an operation did, for the views that must refresh.

    name: in words, such as "delete of trip 14 Aug"; trips: names of the trips touched, empty
    when nothing had to change. added: hauls that are new in the log. filled: rows that waited
    for their counts and have them now.
    """

    name: str
    trips: tuple[str, ...]
    added: int = 0
    filled: int = 0


class Recorder:
    """Writes rows within one change and keeps what they were before."""

    def __init__(self, connection: sqlite3.Connection, change_id: int) -> None:
        self._connection = connection
        self._change_id = change_id
        self.has_written = False

    def insert(self, table: str, values: Values) -> int:
        """Add a row and return its id."""
        row_id = _insert(self._connection, table, values)
        self._note(table, row_id, None, values)
        return row_id

    def update(self, table: str, row_id: int, values: Values) -> None:
        """Set columns of a row."""
        before = self._state(table, row_id)
        _update(self._connection, table, row_id, values)
        self._note(table, row_id, before, {**before, **values})

    def delete(self, table: str, row_id: int) -> None:
        """Remove a row."""
        before = self._state(table, row_id)
        _delete(self._connection, table, row_id)
        self._note(table, row_id, before, None)

    def _state(self, table: str, row_id: int) -> Values:
        row = self._connection.execute(f"SELECT * FROM {table} WHERE id = ?", (row_id,)).fetchone()
        return {name: row[name] for name in row.keys() if name != "id"}  # noqa: SIM118 - sqlite3.Row

    def _note(self, table: str, row_id: int, before: Values | None, after: Values | None) -> None:
        self.has_written = True
        self._connection.execute(
            "INSERT INTO changed_rows (change_id, in_table, row_id, before, after)"
            " VALUES (?, ?, ?, ?, ?)",
            (self._change_id, table, row_id, _to_json(before), _to_json(after)),
        )


@contextmanager
def transaction(connection: sqlite3.Connection) -> Iterator[None]:
    """Do everything inside in one transaction, or nothing of it."""
    connection.execute("BEGIN IMMEDIATE")
    try:
        yield
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise


@contextmanager
def recording(
    connection: sqlite3.Connection, name: str, trips: Sequence[str]
) -> Iterator[Recorder]:
    """Record one named change in one transaction; a change that wrote nothing leaves no trace.

    A new change ends what could be redone, and the oldest beyond the limit are forgotten.
    """
    with transaction(connection):
        newest = connection.execute("SELECT coalesce(max(id), 0) FROM changes").fetchone()[0]
        change_id = newest + 1
        connection.execute(
            "INSERT INTO changes (id, name, trips) VALUES (?, ?, ?)",
            (change_id, name, json.dumps(list(trips))),
        )
        recorder = Recorder(connection, change_id)
        yield recorder
        if recorder.has_written:
            connection.execute("DELETE FROM changes WHERE undone = 1")
            connection.execute(
                "DELETE FROM changes WHERE id NOT IN"
                " (SELECT id FROM changes ORDER BY id DESC LIMIT ?)",
                (KEPT_CHANGES,),
            )
        else:
            connection.execute("DELETE FROM changes WHERE id = ?", (change_id,))


def next_undo(connection: sqlite3.Connection) -> sqlite3.Row | None:
    """Return the change that undo would take back: its id, name and trips."""
    return _first(connection, "WHERE undone = 0 ORDER BY id DESC")


def next_redo(connection: sqlite3.Connection) -> sqlite3.Row | None:
    """Return the change that redo would make again."""
    return _first(connection, "WHERE undone = 1 ORDER BY id")


def forget(connection: sqlite3.Connection) -> None:
    """Forget every change: none of them can be undone or made again."""
    with transaction(connection):
        connection.execute("DELETE FROM changes")


def undo(connection: sqlite3.Connection) -> Change | None:
    """Take the newest change back and return it by name; None when there is none."""
    with transaction(connection):
        change = next_undo(connection)
        if change is None:
            return None
        for row in _rows(connection, change["id"], "DESC"):
            _put(connection, row["in_table"], row["row_id"], row["after"], row["before"])
        connection.execute("UPDATE changes SET undone = 1 WHERE id = ?", (change["id"],))
    return Change(say("Undo {change}", change=change["name"]), tuple(json.loads(change["trips"])))


def redo(connection: sqlite3.Connection) -> Change | None:
    """Make again the change that was undone last; None when there is none."""
    with transaction(connection):
        change = next_redo(connection)
        if change is None:
            return None
        for row in _rows(connection, change["id"], "ASC"):
            _put(connection, row["in_table"], row["row_id"], row["before"], row["after"])
        connection.execute("UPDATE changes SET undone = 0 WHERE id = ?", (change["id"],))
    return Change(say("Redo {change}", change=change["name"]), tuple(json.loads(change["trips"])))


def _first(connection: sqlite3.Connection, where: str) -> sqlite3.Row | None:
    row: sqlite3.Row | None = connection.execute(
        f"SELECT id, name, trips FROM changes {where} LIMIT 1"
    ).fetchone()
    return row


def _rows(connection: sqlite3.Connection, change_id: int, order: str) -> list[sqlite3.Row]:
    return connection.execute(
        f"SELECT * FROM changed_rows WHERE change_id = ? ORDER BY id {order}", (change_id,)
    ).fetchall()


def _put(
    connection: sqlite3.Connection, table: str, row_id: int, now: str | None, then: str | None
) -> None:
    """Bring one row from the state it has now to the state it shall have."""
    if then is None:
        _delete(connection, table, row_id)
    elif now is None:
        _insert(connection, table, {"id": row_id, **json.loads(then)})
    else:
        _update(connection, table, row_id, json.loads(then))


def _insert(connection: sqlite3.Connection, table: str, values: Values) -> int:
    marks = ", ".join("?" * len(values))
    cursor = connection.execute(
        f"INSERT INTO {table} ({', '.join(values)}) VALUES ({marks})", tuple(values.values())
    )
    return cursor.lastrowid or 0


def _update(connection: sqlite3.Connection, table: str, row_id: int, values: Values) -> None:
    sets = ", ".join(f"{name} = ?" for name in values)
    connection.execute(f"UPDATE {table} SET {sets} WHERE id = ?", (*values.values(), row_id))


def _delete(connection: sqlite3.Connection, table: str, row_id: int) -> None:
    connection.execute(f"DELETE FROM {table} WHERE id = ?", (row_id,))


def _to_json(values: Values | None) -> str | None:
    return None if values is None else json.dumps(values)
