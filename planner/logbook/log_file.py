"""A log from a file: a haul table (CSV) or a logbook (SQLite), told apart by the first bytes."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from planner.logbook.book import Logbook
from planner.logbook.errors import LogError
from planner.logbook.files import SQLITE_HEADER
from planner.logbook.log import Log
from planner.logbook.reading import Zones, read_table, unreadable


def read_log(path: str | Path, zones: Zones, now: datetime | None = None) -> Log:
    """Return the log of a haul table or a logbook file, which is not changed.

    zones: gives the time zone of a place by name, None when it is not known.
    now: aware; when given, a table's hauls later than this are refused.
    LogError lists every bad row by line and column; LogbookError for an unusable logbook.
    """
    path = Path(path)
    try:
        with path.open("rb") as file:
            first_bytes = file.read(len(SQLITE_HEADER))
    except (OSError, ValueError) as error:  # ValueError: a null byte in the name
        raise unreadable(path, error) from None
    if first_bytes == SQLITE_HEADER:
        with Logbook.open(path, read_only=True) as book:
            return book.read()
    table = read_table(path, zones, now)
    if table.problems:
        raise LogError(str(path), table.problems)
    return Log(table.hauls)
