"""A damaged logbook: set aside as it is, what can be read taken over, and a report of both."""

from __future__ import annotations

import os
import shutil
import sqlite3
from collections import deque
from collections.abc import Iterable, Iterator
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any, Final

from planner.logbook.backups import backups_of, is_whole
from planner.logbook.columns import COUNTS
from planner.logbook.files import lock_writing, open_writer, told
from planner.logbook.rows import haul_of
from planner.logbook.rules import haul_problems
from planner.phrasing import range_text
from planner.words import say

# In the order in which they refer to each other. The journal is let go: an undo from a damaged
# file could put back what never was.
_TABLES: Final = ("trips", "hauls", "crabs", "traps", "trap_events", "binned")
_WORDS: Final = {
    "trips": "trips",
    "hauls": "hauls",
    "crabs": say("single crabs"),
    "traps": "traps",
    "trap_events": say("entries of trap histories"),
    "binned": say("entries of the bin"),
}
_SMALLEST_ROW: Final = 24  # bytes; bounds the ids of a table whose end cannot be read
# Python cannot even read SQLite's message where it quotes text that is no UTF-8 any more.
_UNREADABLE: Final = (sqlite3.Error, UnicodeDecodeError)
_MOST_TRIES: Final = 10_000  # about half a second for each table
_MOST_TIMES_CUT: Final = 1000  # a number of pages beyond this is damage itself
_UNKNOWN_PLACE: Final = say("unknown place")


@dataclass(frozen=True)
class Rescue:
    """What came of it.

    aside: the damaged file, as it was. report: a text file that tells the same at length.
    taken: rows taken over, by table. lost: rows that could not be, as words.
    """

    aside: Path
    report: Path
    taken: dict[str, int]
    lost: tuple[str, ...]
    newest_backup: datetime | None

    @property
    def sentence(self) -> str:
        """What to tell the user."""
        missing = (
            say("parts of it could not be read") if self.lost else say("nothing seems to be lost")
        )
        newest = (
            say(
                " A backup of {newest_backup:%d %b %Y} can be restored from the File menu.",
                newest_backup=self.newest_backup,
            )
            if self.newest_backup
            else ""
        )
        return say(
            "The log was damaged. It was set aside whole as {name}, and what could be read "
            "was taken over: {hauls} hauls of {trips} trips; {missing}. The report is "
            "{report}.{newest}",
            name=self.aside.name,
            hauls=self.taken["hauls"],
            trips=self.taken["trips"],
            missing=missing,
            report=self.report,
            newest=newest,
        )


def rescue(path: Path, now: datetime | None = None) -> Rescue:
    """Set a damaged logbook aside and put a whole one with all that can be read in its place.

    The damaged file is renamed, never written. LogbookError when a window has it open or the
    folder cannot be written; then everything is as it was.
    """
    now = now or datetime.now(UTC)
    made = path.with_name(f"{path.stem}-rescued-{now:%Y%m%d-%H%M%S}{path.suffix}")
    aside = path.with_name(f"{path.stem}-damaged-{now:%Y%m%d-%H%M%S}{path.suffix}")
    report = aside.with_suffix(".txt")
    scratch = made.with_suffix(".scratch")
    with told(path), closing(lock_writing(path)):
        try:
            with closing(open_writer(made)) as new:
                taken, lost = _take_over(path, scratch, new)
                if not is_whole(new, thorough=True):
                    raise sqlite3.DatabaseError(say("the rescued log is not whole"))
            newest = next((backup.at for backup in backups_of(path)), None)
            found = Rescue(aside, report, taken, tuple(lost), newest)
            report.write_text(_told(found, path, now), encoding="utf-8")
            for suffix in ("-journal", ""):
                if path.with_name(f"{path.name}{suffix}").exists():
                    os.replace(f"{path}{suffix}", f"{aside}{suffix}")
            os.replace(made, path)
        except BaseException:
            for leftover in (made, made.with_name(f"{made.name}-journal")):
                with suppress(OSError):
                    leftover.unlink(missing_ok=True)
            raise
        finally:
            with suppress(OSError):
                scratch.unlink(missing_ok=True)
    return found


def _opened_anyway(path: Path, scratch: Path) -> sqlite3.Connection:
    """Return a connection to a copy that SQLite will look into however damaged it is.

    A file that was cut short gets empty pages for those that are gone, as otherwise none of it
    would be read; tables that cannot be understood leave the others alone.
    """
    shutil.copyfile(path, scratch)
    with path.open("rb") as file:
        head = file.read(32).ljust(32, b"\0")
    page_size = int.from_bytes(head[16:18]) or 4096
    whole = int.from_bytes(head[28:32]) * page_size
    if scratch.stat().st_size < whole <= _MOST_TIMES_CUT * scratch.stat().st_size:
        os.truncate(scratch, whole)
    connection = sqlite3.connect(scratch, isolation_level=None)
    with suppress(*_UNREADABLE):  # no logbook at all any more: every table will say so
        connection.execute("PRAGMA writable_schema = ON")
    return connection


def _take_over(
    path: Path, scratch: Path, new: sqlite3.Connection
) -> tuple[dict[str, int], list[str]]:
    """Copy the rows that can be read and say which could not."""
    taken = dict.fromkeys(_TABLES, 0)
    lost: list[str] = []
    with closing(_opened_anyway(path, scratch)) as old:
        old.row_factory = sqlite3.Row
        old.text_factory = lambda raw: raw.decode("utf-8", "replace")
        new.execute("BEGIN IMMEDIATE")
        for table in _TABLES:
            known = {row[1] for row in new.execute(f"PRAGMA table_info({table})")}
            for low, high, row in _rows(old, table, path.stat().st_size):
                if isinstance(row, str):
                    numbers = f"{low}" if low == high else range_text(f"{low}", f"{high}")
                    lost.append(f"{table} {numbers}: {row}")
                    continue
                values = {name: row[name] for name in row.keys() if name in known}  # noqa: SIM118
                try:
                    _insert(new, table, values)
                except (sqlite3.Error, ValueError, TypeError, KeyError) as error:
                    lost.append(
                        say(
                            "{table} {low}: {error}; it read {shown}",
                            table=table,
                            low=low,
                            error=error,
                            shown=_shown(values),
                        )
                    )
                else:
                    taken[table] += 1
        new.execute("COMMIT")
    return taken, lost


def _rows(
    old: sqlite3.Connection, table: str, size: int
) -> Iterator[tuple[int, int, sqlite3.Row | str]]:
    """Yield each row of a table by its id, and spans of ids with why they cannot be read."""
    bad: list[tuple[int, int, str]] = []
    # Halves that can be read are read; the rest comes down to single rows, widest spans first,
    # so that a long stretch without any row does not use up the tries.
    spans = deque(_spans(old, table, size))
    tries = _MOST_TRIES
    while spans:
        low, high = spans.popleft()
        try:
            found = old.execute(
                f"SELECT * FROM {table} WHERE id BETWEEN ? AND ? ORDER BY id", (low, high)
            ).fetchall()
        except _UNREADABLE as error:
            tries -= 1
            if low == high or tries < 0:
                bad.append((low, high, str(error)))
            else:
                middle = (low + high) // 2
                spans += [(low, middle), (middle + 1, high)]
        else:
            yield from ((row["id"], row["id"], row) for row in found)
    yield from _joined(sorted(bad))


def _spans(old: sqlite3.Connection, table: str, size: int) -> list[tuple[int, int]]:
    """Return the ids to look at: up to the last that the table knows of, and all that may be.

    A damaged end may name a last id that is too low. Empty where there is no such table.
    """
    most = size // _SMALLEST_ROW
    try:
        last = int(old.execute(f"SELECT coalesce(max(id), 0) FROM {table}").fetchone()[0])
    except (*_UNREADABLE, TypeError) as error:
        return [] if "no such table" in str(error) else [(1, most)]
    return [(1, last), (last + 1, most)] if 0 < last < most else [(1, most)]


def _joined(bad: Iterable[tuple[int, int, str]]) -> Iterator[tuple[int, int, str]]:
    """Yield neighbouring spans that cannot be read for the same reason as one."""
    joined: tuple[int, int, str] | None = None
    for low, high, why in bad:
        if joined is not None and joined[1:] == (low - 1, why):
            joined = (joined[0], high, why)
        else:
            if joined is not None:
                yield joined
            joined = (low, high, why)
    if joined is not None:
        yield joined


def _insert(new: sqlite3.Connection, table: str, values: dict[str, Any]) -> None:
    """Add a row that makes sense; a haul whose trip is lost gets one that says so."""
    if table == "hauls":
        _require_sense(values)
        trip_id = values["trip_id"]
        if not new.execute("SELECT 1 FROM trips WHERE id = ?", (trip_id,)).fetchone():
            new.execute(
                "INSERT INTO trips (id, name, place) VALUES (?, ?, ?)",
                (trip_id, say("rescued trip {trip_id}", trip_id=trip_id), _UNKNOWN_PLACE),
            )
    marks = ", ".join("?" * len(values))
    new.execute(
        f"INSERT INTO {table} ({', '.join(values)}) VALUES ({marks})", tuple(values.values())
    )


def _require_sense(values: dict[str, Any]) -> None:
    """ValueError for a haul that no user could have entered."""
    for name in COUNTS:
        if not isinstance(values[name], int | None):
            raise ValueError(f"{name} is no count")
    haul = haul_of({"extra": "{}", **values}, "trip", "place")  # type: ignore[arg-type]
    for problem in haul_problems(haul, lambda column: column):
        raise ValueError(str(problem))


def _shown(values: dict[str, Any]) -> str:
    return ", ".join(f"{name} {value}" for name, value in values.items() if value not in (None, ""))


def _told(found: Rescue, path: Path, now: datetime) -> str:
    lines = [
        say("The log {path} was found damaged on {now:%d %b %Y %H:%M} UTC.", path=path, now=now),
        say("The damaged file is kept as it was: {aside}", aside=found.aside),
        "",
        say("Taken over into a new log:"),
        *(f"  {count} {_WORDS[table]}" for table, count in found.taken.items() if count),
        say("What could be undone before can be undone no more."),
        "",
    ]
    if found.lost:
        lines += [say("Could not be read (some of these may never have been there):"), ""]
        lines += [f"  {line}" for line in found.lost[:1000]]
    else:
        lines.append(say("Every row could be read."))
    if found.newest_backup:
        lines += [
            "",
            say(
                "The newest backup is of {newest_backup:%d %b %Y %H:%M} UTC.",
                newest_backup=found.newest_backup,
            ),
        ]
    return "\n".join(lines) + "\n"
