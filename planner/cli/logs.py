"""The log asked for on the command line."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Final
from zoneinfo import ZoneInfo

from planner.logbook import Log, book_zone, read_log
from planner.sites import Site

# A clock that says earlier is wrong: the program, and its demo log, are not older than this.
_MADE: Final = datetime(2026, 11, 23, tzinfo=UTC)


def log_of(path: str | None, site: Site | None = None) -> Log | None:
    """Return the log of a file, None when none was given; times without offset go by the place.

    LogError lists every bad row, hauls yet to come among them. A place other than the one asked
    for is looked up in the book.
    """
    if path is None:
        return None

    def zone(place: str) -> ZoneInfo | None:
        if site is not None and place == site.name:
            return site.zone
        return book_zone(place)

    return read_log(path, zone, now=max(datetime.now(UTC), _MADE))
