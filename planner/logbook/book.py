"""The logbook: one file that keeps every trip and haul, written by one window at a time."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from threading import RLock
from typing import Self
from zoneinfo import ZoneInfo

from planner.assets import user_folder
from planner.errors import Problem
from planner.logbook import bin as the_bin
from planner.logbook import journal
from planner.logbook.backups import Backup, backups_of, is_whole, keep_up, take_backup
from planner.logbook.bin import Binned
from planner.logbook.contents import Contents
from planner.logbook.entries import Haul, Trap, Trip
from planner.logbook.errors import LogbookError, LogbookInUse, LogError
from planner.logbook.files import (
    damaged,
    is_there,
    lock_writing,
    mark_closed,
    mark_open,
    open_reader,
    open_writer,
    told,
    was_left_open,
)
from planner.logbook.joining import join
from planner.logbook.journal import Change, Recorder
from planner.logbook.log import Log, TripKey
from planner.logbook.merging import merge
from planner.logbook.reading import read_table
from planner.logbook.rules import haul_problems, trap_problems, trip_problems
from planner.logbook.writing import Writer
from planner.words import say


def default_logbook() -> Path:
    """Return where this user's logbook is kept; it need not exist."""
    return user_folder() / "hauls.logbook"


class Logbook:
    """An open logbook file; every change is one transaction and can be undone by name.

    Calls may come from any thread and wait for each other. Every call may raise
    LogbookError, after which the file is as it was before the call.
    notice: why the book is read-only although writing was asked for; None otherwise.
    remark: what else the user should know of the opening, such as a backup that failed.
    """

    def __init__(
        self,
        path: Path,
        connection: sqlite3.Connection,
        writing: sqlite3.Connection | None,
        notice: LogbookError | None,
    ) -> None:
        self.path = path
        self.notice = notice
        self.remark = ""
        self._connection = connection
        self._writing = writing
        self._contents = Contents(connection, watched=writing is not None)
        self._turn = RLock()

    @classmethod
    def open(cls, path: str | Path, read_only: bool = False) -> Self:
        """Open a logbook, made when there is none.

        For reading only, with a notice, while another window writes or when it cannot be
        written. After an unclean stop the whole file is checked; the day's backup is taken.
        LogbookError for a file that is damaged, newer, not a logbook, or cannot be reached.
        """
        path = Path(path)
        if read_only:
            return cls(path, open_reader(path), None, None)
        try:
            writing = lock_writing(path)
        except LogbookError as notice:
            if not isinstance(notice, LogbookInUse) and not is_there(path):
                raise
            return cls(path, open_reader(path), None, notice)
        try:
            with told(path):
                is_new = not is_there(path) or path.stat().st_size == 0
            book = cls(path, open_writer(path, was_left_open(path)), writing, None)
        except BaseException:
            writing.close()
            raise
        book._begin(is_new)
        return book

    def _begin(self, is_new: bool) -> None:
        """Note that the file is open, and take the day's backup."""
        if is_new and self.backups():
            self.remark = say(
                "There was no log in {path}, so an empty one was begun. Backups of an earlier log "
                "are there: File menu, Backups of the log.",
                path=self.path,
            )
        try:
            with told(self.path):
                mark_open(self.path)
                keep_up(self._connection, self.path, datetime.now(UTC))
        except LogbookError as error:
            self.remark = say("Today's backup of the log could not be made: {error}", error=error)

    @property
    def read_only(self) -> bool:
        """Whether changes are refused."""
        return self._writing is None

    def close(self) -> None:
        """Close the file and let another window write; closing twice is harmless."""
        with self._turn:
            self._connection.close()
            if self._writing is not None:
                mark_closed(self.path)
                self._writing.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def read(self) -> Log:
        """Return everything in the book, trip by trip; of a later reading only what changed."""
        with self._turn, told(self.path):
            try:
                return self._contents.read()
            except (KeyError, TypeError, ValueError) as error:  # no value the book ever wrote
                raise damaged(self.path) from error

    def save_trip(
        self,
        name: str,
        hauls: Sequence[Haul],
        details: Trip | None = None,
        change: str = "",
        place: str | None = None,
    ) -> Change:
        """Replace the hauls of a trip; no hauls and no details remove it.

        place: only the trip there, None the trips of that name at every place. details: crew,
        weather and the like of the trip at the place it names; None leaves them as they are.
        change: what undo calls it, such as "keepers of trap A3". Hauls and trips that are gone
        afterwards are in the bin. LogError names every impossible haul by its number.
        """
        _require_possible(name, hauls, details)
        change = change or say("entry of trip {name}", name=name)
        with self._changing(change, [name]) as recorder:
            writer = Writer(self._connection, recorder)
            kept = {haul.place for haul in hauls} | ({details.place} if details else set())
            for where, trip_id in writer.trips_named(name).items():
                if where not in kept and place in (None, where):
                    writer.remove_trip(name, trip_id)
            for where in sorted(kept):
                rows = [haul for haul in hauls if haul.place == where]
                writer.replace_hauls(name, writer.trip_id(name, where), rows)
            if details is not None:
                writer.set_details(details)
            return _change(recorder, change, [name])

    def delete_trip(self, name: str, place: str | None = None) -> Change:
        """Put a trip and its hauls into the bin; place: only the trip there, None at every one."""
        with self._changing(say("delete of trip {name}", name=name), [name]) as recorder:
            writer = Writer(self._connection, recorder)
            for where, trip_id in writer.trips_named(name).items():
                if place in (None, where):
                    writer.remove_trip(name, trip_id)
            return _change(recorder, say("delete of trip {name}", name=name), [name])

    def save_details(self, details: Trip, change: str = "") -> Change:
        """Set what is known of a trip as a whole, such as its kitchen count."""
        _require_possible(details.name, (), details)
        change = change or say("details of trip {name}", name=details.name)
        with self._changing(change, [details.name]) as recorder:
            Writer(self._connection, recorder).set_details(details)
            return _change(recorder, change, [details.name])

    def kitchen_asked(self, trips: Sequence[TripKey]) -> None:
        """Note that the window has asked for the kitchen counts of trips; nothing to undo."""
        with self._writable(), journal.transaction(self._connection):
            self._connection.executemany(
                "UPDATE trips SET kitchen_asked = 1 WHERE name = ? AND place = ?", trips
            )

    # -- traps -------------------------------------------------------------------------------

    def save_trap(self, trap: Trap, change: str = "") -> Change:
        """Keep a trap with its history; change: what undo calls it."""
        problems = list(trap_problems(trap))
        if problems:
            raise LogError(say("trap {label}", label=trap.label), problems)
        change = change or say("history of trap {label}", label=trap.label)
        with self._changing(change, []) as recorder:
            Writer(self._connection, recorder).set_trap(trap)
            return _change(recorder, change, [])

    # -- the bin -----------------------------------------------------------------------------

    def binned(self) -> tuple[Binned, ...]:
        """Return what was deleted and is still in the bin, newest first."""
        with self._turn, told(self.path):
            return the_bin.listed(self._connection)

    def take_out_of_bin(self, number: int) -> Change:
        """Put a deleted trip or haul back into the log."""
        with self._changing(say("return from the bin"), []) as recorder:
            trip = the_bin.take_out(self._connection, recorder, number)
            return _change(recorder, say("return from the bin"), [] if trip is None else [trip])

    def empty_bin(self) -> Change:
        """Let go of what is in the bin; only the user asks for this."""
        with self._changing(say("emptying of the bin"), []) as recorder:
            the_bin.empty(self._connection, recorder)
            return _change(recorder, say("emptying of the bin"), [])

    # -- backups -----------------------------------------------------------------------------

    def backups(self) -> tuple[Backup, ...]:
        """Return the backups of this book, newest first."""
        return backups_of(self.path)

    def restore(self, backup: str | Path) -> Change:
        """Make the book what a backup holds, after a backup of what it holds now.

        All of it or nothing; what can be undone afterwards is what could be when the backup
        was made. LogbookError for a backup that is not whole or of a later version.
        """
        with self._writable():
            with closing(open_reader(Path(backup))) as source:
                if not is_whole(source, thorough=True):
                    raise damaged(Path(backup))
                take_backup(self._connection, self.path, datetime.now(UTC), say("before restoring"))
                source.backup(self._connection)
            self._contents = Contents(self._connection, watched=True)
            return Change(say("return to a backup"), ())

    # -- tables ------------------------------------------------------------------------------

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
        return self.add_hauls(table.hauls, say("import of {name}", name=Path(path).name))

    def add_hauls(self, hauls: Sequence[Haul], name: str) -> Change:
        """Take in those hauls that the book does not have yet, as one change of that name.

        A row that waited to be counted is filled by the haul of its trap: see `joining.join`.
        """
        with self._writable():
            log = self.read()
            joined = join(log.hauls, hauls)
            trips = joined.trips
            with self._changing(name, trips) as recorder:
                Writer(self._connection, recorder).take_in(log.hauls, joined)
                added, filled = len(joined.new), len(joined.filled)
                return _change(recorder, name, trips, added=added, filled=filled)

    def add_log(self, there: Log, name: str) -> Change:
        """Take in what another log has more than this one, as one change of that name.

        What both hold and not alike stays as it is here: see `merging.merge`.
        """
        with self._writable():
            log = self.read()
            merged = merge(log, there)
            trips = list(
                dict.fromkeys([*merged.hauls.trips, *(trip.name for trip in merged.trips)])
            )
            with self._changing(name, trips) as recorder:
                writer = Writer(self._connection, recorder)
                writer.take_in(log.hauls, merged.hauls)
                for details in merged.trips:
                    writer.set_details(details)
                for trap in merged.traps:
                    writer.set_trap(trap)
                added, filled = len(merged.hauls.new), len(merged.hauls.filled)
                change = _change(recorder, name, trips, added=added, filled=filled)
            # Who was asked on the other machine is not asked here again.
            self.kitchen_asked(
                [key for key, each in there.by_trip.items() if each.trip.kitchen_asked]
            )
            return change

    # -- undo --------------------------------------------------------------------------------

    def undo(self) -> Change | None:
        """Take back the newest change; None when there is none. Works after a restart too."""
        with self._writable():
            return journal.undo(self._connection)

    def redo(self) -> Change | None:
        """Make the change again that was undone last; None when there is none."""
        with self._writable():
            return journal.redo(self._connection)

    def forget_changes(self) -> None:
        """Take the log as it is for its beginning: nothing done so far can be undone."""
        with self._writable():
            journal.forget(self._connection)

    @property
    def undo_name(self) -> str | None:
        """What undo would do, such as "Undo delete of trip 14 Aug"; None when nothing."""
        return self._named(say("Undo"), journal.next_undo)

    @property
    def redo_name(self) -> str | None:
        """What redo would do; None when nothing."""
        return self._named(say("Redo"), journal.next_redo)

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
                    say(
                        "{path} was opened for reading only; open it for writing to change it.",
                        path=self.path,
                    )
                )
            yield

    @contextmanager
    def _changing(self, name: str, trips: Sequence[str]) -> Iterator[Recorder]:
        with self._writable(), journal.recording(self._connection, name, trips) as recorder:
            yield recorder


def _require_possible(name: str, hauls: Sequence[Haul], details: Trip | None) -> None:
    """LogError naming everything about a trip that breaks a rule."""
    problems: list[Problem] = [] if details is None else list(trip_problems(details))
    for number, haul in enumerate(hauls, start=1):
        if haul.trip != name:
            raise ValueError(f"haul {number} belongs to trip {haul.trip!r}, not {name!r}")
        problems += haul_problems(haul, partial(_where, number))
    if problems:
        raise LogError(say("trip {name}", name=name), problems)


def _where(number: int, column: str) -> str:
    return say("haul {number}, {column}", number=number, column=column)


def _change(
    recorder: Recorder, name: str, trips: Sequence[str], added: int = 0, filled: int = 0
) -> Change:
    return Change(name, tuple(trips) if recorder.has_written else (), added, filled)
