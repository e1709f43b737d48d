"""The log as a haul table that any spreadsheet opens and Fullshell reads back whole."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from datetime import UTC, datetime
from functools import lru_cache
from pathlib import Path
from zoneinfo import ZoneInfo

from planner.logbook.columns import COLUMNS, guard_formula
from planner.logbook.errors import LogbookError
from planner.logbook.log import Log
from planner.whole_file import whole_file


def table_text(log: Log, zones: Callable[[str], ZoneInfo | None] | None = None) -> str:
    """Return the log as CSV: the haul table's columns, then the unknown ones of its hauls.

    Times carry an offset: the place's own where its zone is known, else +00:00. Cells that
    begin like a formula get an apostrophe, which reading takes away again.
    """
    unknown = list(dict.fromkeys(name for haul in log.hauls for name in haul.extra))
    zone = lru_cache(maxsize=None)(zones or _no_zone)
    buffer = io.StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")  # as RFC 4180 has it
    writer.writerow([*COLUMNS, *map(guard_formula, unknown)])
    for haul in log.hauls:
        known = [_cell(getattr(haul, name), zone(haul.place)) for name in COLUMNS]
        writer.writerow([*known, *(guard_formula(haul.extra.get(name, "")) for name in unknown)])
    return buffer.getvalue()


def _no_zone(place: str) -> None:
    """Know no place's zone."""


def export_table(
    log: Log, path: str | Path, zones: Callable[[str], ZoneInfo | None] | None = None
) -> None:
    """Write the log as a haul table in UTF-8; a file of that name is replaced whole or not at all.

    LogbookError when it cannot be written.
    """
    with whole_file(Path(path), LogbookError) as partial:
        partial.write_text(table_text(log, zones), encoding="utf-8", newline="")


def _cell(value: object, zone: ZoneInfo | None) -> str:
    if value is None:
        return ""
    if isinstance(value, datetime):
        return value.astimezone(zone or UTC).isoformat()
    if isinstance(value, str):
        return guard_formula(value)
    return str(value)  # the shortest digits that give the same number back
