"""The logbook: one file that keeps every trip and haul, written by one window at a time."""

from __future__ import annotations

import json
import sqlite3
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import astuple
from datetime import UTC, datetime
from functools import partial
from itertools import zip_longest
from pathlib import Path
from threading import RLock
from typing import Any, Final, Self
from zoneinfo import ZoneInfo

from planner.assets import user_folder
from planner.errors import Problem
from planner.logbook import journal
from planner.logbook.columns import COLUMNS, TIMES
from planner.logbook.entries import Haul, Trip
from planner.logbook.errors import LogbookError, LogbookInUse, LogError
from planner.logbook.files import damaged, lock_writing, open_reader, open_writer, told
from planner.logbook.journal import Change, Recorder
from planner.logbook.log import HaulKey, Log, haul_key
from planner.logbook.reading import read_table
from planner.logbook.rules import haul_problems

# Columns of the haul table that the trip carries, not the haul.
_OF_TRIP: Final = ("trip", "place")
_TRIP_DETAILS: Final = ("crew", "weather", "water_c", "notes")


def default_logbook() -> Path:
    """Return where this user's logbook is kept; it need not exist."""
    return user_folder() / "hauls.logbook"


class Logbook:
    """An open logbook file; every change is one transaction and can be undone by name.

    Calls may come from any thread and wait for each other. Every call may raise
    LogbookError, after which the file is as it was before the call.
    notice: why the book is read-only although writing was asked for; None otherwise.
    """

    def __init__(
        self,
        path: Path,
        connection: sqlite3.Connection,
        writing: sqlite3.Connection | None,
        notice: LogbookInUse | None,
    ) -> None:
        self.path = path
        self.notice = notice
        self._connection = connection
        self._writing = writing
        self._turn = RLock()

    @classmethod
    def open(cls, path: str | Path, read_only: bool = False) -> Self:
        """Open a logbook, made when there is none; while another window writes, for reading only.

        LogbookError for a file that is damaged, newer, not a logbook, or cannot be reached.
        """
        path = Path(path)
        if read_only:
            return cls(path, open_reader(path), None, None)
        try:
            writing = lock_writing(path)
        except LogbookInUse as notice:
            return cls(path, open_reader(path), None, notice)
        try:
            return cls(path, open_writer(path), writing, None)
        except BaseException:
            writing.close()
            raise

    @property
    def read_only(self) -> bool:
        """Whether changes are refused."""
        return self._writing is None

    def close(self) -> None:
        """Close the file and let another window write; closing twice is harmless."""
        with self._turn:
            self._connection.close()
            if self._writing is not None:
                self._writing.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def read(self) -> Log:
        """Return everything in the book, hauls in the order of entry."""
        with self._turn, told(self.path):
            trips = self._connection.execute("SELECT * FROM trips ORDER BY id").fetchall()
            names = {row["id"]: (row["name"], row["place"]) for row in trips}
            hauls = self._connection.execute("SELECT * FROM hauls ORDER BY id").fetchall()
            try:
                kept = tuple(_haul(row, *names[row["trip_id"]]) for row in hauls)
            except (KeyError, TypeError, ValueError) as error:  # no value the book ever wrote
                raise damaged(self.path) from error
            return Log(kept, tuple(_trip(row) for row in trips))

    def save_trip(
        self, name: str, hauls: Sequence[Haul], details: Trip | None = None, change: str = ""
    ) -> Change:
        """Replace the hauls of a trip; no hauls and no details remove it.

        details: crew, weather and the like of the trip at the place it names; None leaves
        them as they are. change: what undo calls it, such as "keepers of trap A3".
        LogError names every impossible haul by its number.
        """
        _require_possible(name, hauls)
        change = change or f"entry of trip {name}"
        with self._changing(change, [name]) as recorder:
            kept = {haul.place for haul in hauls} | ({details.place} if details else set())
            for row in self._trips_named(name):
                if row["place"] not in kept:
                    self._remove(recorder, row["id"])
            for place in sorted(kept):
                trip_id = self._trip_id(recorder, name, place)
                self._replace(recorder, trip_id, [haul for haul in hauls if haul.place == place])
            if details is not None:
                self._set_details(recorder, self._trip_id(recorder, name, details.place), details)
            return _change(recorder, change, [name])

    def delete_trip(self, name: str) -> Change:
        """Remove a trip and its hauls; undo brings them back."""
        with self._changing(f"delete of trip {name}", [name]) as recorder:
            for row in self._trips_named(name):
                self._remove(recorder, row["id"])
            return _change(recorder, f"delete of trip {name}", [name])

    def import_table(
        self,
        path: str | Path,
        zones: Callable[[str], ZoneInfo | None],
        *,
        skip_bad: bool = False,
        now: datetime | None = None,
    ) -> Change:
        """Add the hauls of a haul table that the book does not have yet.

        All rows or, when any is bad, none (LogError names them); with `skip_bad`, the good
        ones. A haul equal in every value to one in the book is the same haul, so importing
        a file twice adds nothing.
        """
        table = read_table(Path(path), zones, now)
        if table.problems and not (skip_bad and table.hauls):
            raise LogError(str(path), table.problems)
        return self.add_hauls(table.hauls, f"import of {Path(path).name}")

    def add_hauls(self, hauls: Sequence[Haul], name: str) -> Change:
        """Add those hauls that the book does not have yet, as one change of that name."""
        with self._writable():
            missing = _not_yet_in(self.read(), hauls)
            trips = list(dict.fromkeys(haul.trip for haul in missing))
            with self._changing(name, trips) as recorder:
                ids: dict[tuple[str, str], int] = {}
                for haul in missing:
                    key = (haul.trip, haul.place)
                    if key not in ids:
                        ids[key] = self._trip_id(recorder, *key)
                    recorder.insert("hauls", {"trip_id": ids[key], **_haul_values(haul)})
                return _change(recorder, name, trips, added=len(missing))

    def undo(self) -> Change | None:
        """Take back the newest change; None when there is none. Works after a restart too."""
        with self._writable():
            return journal.undo(self._connection)

    def redo(self) -> Change | None:
        """Make the change again that was undone last; None when there is none."""
        with self._writable():
            return journal.redo(self._connection)

    @property
    def undo_name(self) -> str | None:
        """What undo would do, such as "Undo delete of trip 14 Aug"; None when nothing."""
        return self._named("Undo", journal.next_undo)

    @property
    def redo_name(self) -> str | None:
        """What redo would do; None when nothing."""
        return self._named("Redo", journal.next_redo)

    def _named(
        self, verb: str, find: Callable[[sqlite3.Connection], sqlite3.Row | None]
    ) -> str | None:
        with self._turn, told(self.path):
            change = find(self._connection)
            return None if change is None else f"{verb} {change['name']}"

    @contextmanager
    def _writable(self) -> Iterator[None]:
        with self._turn, told(self.path):
            if self.read_only:
                raise self.notice or LogbookError(
                    f"{self.path} was opened for reading only; open it for writing to change it."
                )
            yield

    @contextmanager
    def _changing(self, name: str, trips: Sequence[str]) -> Iterator[Recorder]:
        with self._writable(), journal.recording(self._connection, name, trips) as recorder:
            yield recorder

    def _trips_named(self, name: str) -> list[sqlite3.Row]:
        found = self._connection.execute("SELECT id, place FROM trips WHERE name = ?", (name,))
        return found.fetchall()

    def _trip_id(self, recorder: Recorder, name: str, place: str) -> int:
        """Return the id of a trip, added when there is none."""
        for row in self._trips_named(name):
            if row["place"] == place:
                return int(row["id"])
        return recorder.insert("trips", {"name": name, "place": place})

    def _remove(self, recorder: Recorder, trip_id: int) -> None:
        self._replace(recorder, trip_id, [])
        recorder.delete("trips", trip_id)

    def _replace(self, recorder: Recorder, trip_id: int, hauls: Sequence[Haul]) -> None:
        """Bring a trip's rows to these hauls, touching only the rows that differ."""
        rows = self._connection.execute(
            "SELECT * FROM hauls WHERE trip_id = ? ORDER BY id", (trip_id,)
        ).fetchall()
        for row, haul in zip_longest(rows, hauls):
            if haul is None:
                recorder.delete("hauls", row["id"])
            elif row is None:
                recorder.insert("hauls", {"trip_id": trip_id, **_haul_values(haul)})
            elif haul_key(_haul(row, haul.trip, haul.place)) != haul_key(haul):
                recorder.update("hauls", row["id"], _haul_values(haul))

    def _set_details(self, recorder: Recorder, trip_id: int, details: Trip) -> None:
        row = self._connection.execute("SELECT * FROM trips WHERE id = ?", (trip_id,)).fetchone()
        if astuple(_trip(row)) != astuple(details):
            values = {name: getattr(details, name) for name in _TRIP_DETAILS}
            recorder.update("trips", trip_id, values)


def _require_possible(name: str, hauls: Sequence[Haul]) -> None:
    """LogError naming every haul that breaks a rule."""
    problems: list[Problem] = []
    for number, haul in enumerate(hauls, start=1):
        if haul.trip != name:
            raise ValueError(f"haul {number} belongs to trip {haul.trip!r}, not {name!r}")
        problems += haul_problems(haul, partial(_where, number))
    if problems:
        raise LogError(f"trip {name}", problems)


def _where(number: int, column: str) -> str:
    return f"haul {number}, {column}"


def _change(recorder: Recorder, name: str, trips: Sequence[str], added: int = 0) -> Change:
    return Change(name, tuple(trips) if recorder.has_written else (), added)


def _not_yet_in(log: Log, hauls: Sequence[Haul]) -> list[Haul]:
    """Return the hauls that the log lacks; of hauls alike in everything, as many as it lacks."""
    there: Counter[HaulKey] = Counter(haul_key(haul) for haul in log.hauls)
    missing = []
    for haul in hauls:
        key = haul_key(haul)
        if there[key] > 0:
            there[key] -= 1
        else:
            missing.append(haul)
    return missing


def _haul_values(haul: Haul) -> dict[str, object]:
    values = {name: getattr(haul, name) for name in COLUMNS if name not in _OF_TRIP}
    for name in TIMES:
        instant = values[name]
        values[name] = None if instant is None else instant.astimezone(UTC).isoformat()
    extra = json.dumps(dict(haul.extra), ensure_ascii=False)
    return {**values, "extra": extra}


def _haul(row: sqlite3.Row, trip: str, place: str) -> Haul:
    values: dict[str, Any] = {name: row[name] for name in COLUMNS if name not in _OF_TRIP}
    for name in TIMES:
        written = values[name]
        values[name] = None if written is None else datetime.fromisoformat(written)
    extra = {} if row["extra"] == "{}" else json.loads(row["extra"])
    return Haul(trip=trip, place=place, **values, extra=extra)


def _trip(row: sqlite3.Row) -> Trip:
    return Trip(row["name"], row["place"], *(row[name] for name in _TRIP_DETAILS))
