"""A damaged logbook: set aside as it is, what can be read taken over, and a report of both."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator
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

# In the order in which they refer to each other. The journal is let go: an undo from a damaged
# file could put back what never was.
_TABLES: Final = ("trips", "hauls", "crabs", "traps", "trap_events", "binned")
_WORDS: Final = {
    "trips": "trips",
    "hauls": "hauls",
    "crabs": "single crabs",
    "traps": "traps",
    "trap_events": "entries of trap histories",
    "binned": "entries of the bin",
}
_SMALLEST_ROW: Final = 8  # bytes; bounds the ids of a table whose end cannot be read
_UNKNOWN_PLACE: Final = "unknown place"


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
        missing = "parts of it could not be read" if self.lost else "nothing seems to be lost"
        newest = (
            f" A backup of {self.newest_backup:%d %b %Y} can be restored from the File menu."
            if self.newest_backup
            else ""
        )
        return (
            f"The log was damaged. It was set aside whole as {self.aside.name}, and what could be "
            f"read was taken over: {self.taken['hauls']} hauls of {self.taken['trips']} trips; "
            f"{missing}. The report is {self.report}.{newest}"
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
    with told(path), closing(lock_writing(path)):
        try:
            with closing(open_writer(made)) as new:
                taken, lost = _take_over(path, new)
                if not is_whole(new, thorough=True):
                    raise sqlite3.DatabaseError("the rescued log is not whole")
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
    return found


def _take_over(path: Path, new: sqlite3.Connection) -> tuple[dict[str, int], list[str]]:
    """Copy the rows that can be read and say which could not."""
    # Immutable: not even a journal beside the file is touched.
    uri = f"{path.absolute().as_uri()}?mode=ro&immutable=1"
    taken = dict.fromkeys(_TABLES, 0)
    lost: list[str] = []
    with closing(sqlite3.connect(uri, uri=True, isolation_level=None)) as old:
        old.row_factory = sqlite3.Row
        old.text_factory = lambda raw: raw.decode("utf-8", "replace")
        new.execute("BEGIN IMMEDIATE")
        for table in _TABLES:
            known = {row[1] for row in new.execute(f"PRAGMA table_info({table})")}
            for low, high, row in _rows(old, table, path.stat().st_size):
                if isinstance(row, str):
                    numbers = f"{low}" if low == high else f"{low} to {high}"
                    lost.append(f"{table} {numbers}: {row}")
                    continue
                values = {name: row[name] for name in row.keys() if name in known}  # noqa: SIM118
                try:
                    _insert(new, table, values)
                except (sqlite3.Error, ValueError, TypeError, KeyError) as error:
                    lost.append(f"{table} {low}: {error}; it read {_shown(values)}")
                else:
                    taken[table] += 1
        new.execute("COMMIT")
    return taken, lost


def _rows(
    old: sqlite3.Connection, table: str, size: int
) -> Iterator[tuple[int, int, sqlite3.Row | str]]:
    """Yield each row of a table by its id, and spans of ids with why they cannot be read."""
    try:
        last = int(old.execute(f"SELECT coalesce(max(id), 0) FROM {table}").fetchone()[0])
    except (sqlite3.Error, TypeError, ValueError) as error:
        if "no such table" in str(error):
            return
        last = size // _SMALLEST_ROW
    spans = [(1, last)] if last else []
    bad: tuple[int, int, str] | None = None
    while spans:
        low, high = spans.pop()
        try:
            found = old.execute(
                f"SELECT * FROM {table} WHERE id BETWEEN ? AND ? ORDER BY id", (low, high)
            ).fetchall()
        except sqlite3.Error as error:
            # The halves that can be read are read; the rest comes down to single rows.
            if low < high:
                middle = (low + high) // 2
                spans += [(middle + 1, high), (low, middle)]
            elif bad is not None and bad[1:] == (low - 1, str(error)):
                bad = (bad[0], low, bad[2])
            else:
                if bad is not None:
                    yield bad
                bad = (low, low, str(error))
        else:
            yield from ((row["id"], row["id"], row) for row in found)
    if bad is not None:
        yield bad


def _insert(new: sqlite3.Connection, table: str, values: dict[str, Any]) -> None:
    """Add a row that makes sense; a haul whose trip is lost gets one that says so."""
    if table == "hauls":
        _require_sense(values)
        trip_id = values["trip_id"]
        if not new.execute("SELECT 1 FROM trips WHERE id = ?", (trip_id,)).fetchone():
            new.execute(
                "INSERT INTO trips (id, name, place) VALUES (?, ?, ?)",
                (trip_id, f"rescued trip {trip_id}", _UNKNOWN_PLACE),
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
        f"The log {path} was found damaged on {now:%d %b %Y %H:%M} UTC.",
        f"The damaged file is kept as it was: {found.aside}",
        "",
        "Taken over into a new log:",
        *(f"  {count} {_WORDS[table]}" for table, count in found.taken.items() if count),
        "What could be undone before can be undone no more.",
        "",
    ]
    if found.lost:
        lines += ["Could not be read (some of these may never have been there):", ""]
        lines += [f"  {line}" for line in found.lost[:1000]]
    else:
        lines.append("Every row could be read.")
    if found.newest_backup:
        lines += ["", f"The newest backup is of {found.newest_backup:%d %b %Y %H:%M} UTC."]
    return "\n".join(lines) + "\n"
