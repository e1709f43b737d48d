"""From a haul table (CSV) to hauls, with every bad cell named by line and column."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from functools import lru_cache
from pathlib import Path
from typing import Any, Final
from zoneinfo import ZoneInfo

from planner.errors import Problem
from planner.logbook.columns import (
    COUNTS,
    LABELS,
    TIMES,
    CellError,
    read_count,
    read_depth,
    read_time,
    read_water,
    unguard_formula,
)
from planner.logbook.entries import Haul
from planner.logbook.errors import LogError
from planner.logbook.rules import haul_problems
from planner.logbook.table import Row, Table, split_table
from planner.words import say

Zones = Callable[[str], ZoneInfo | None]

# Stands in where the place is missing, which is a problem of its own.
_ANY_ZONE: Final = ZoneInfo("UTC")
# A hundred thousand hauls have about twenty megabytes.
_MAX_TABLE_BYTES: Final = 200_000_000


@dataclass(frozen=True)
class ReadTable:
    """The good rows of a haul table, and every problem of the others."""

    hauls: tuple[Haul, ...]
    problems: tuple[Problem, ...]


def read_table(path: Path, zones: Zones, now: datetime | None = None) -> ReadTable:
    """Return the good rows of a haul table beside the problems of the bad ones.

    LogError only when the file cannot be read at all.
    """
    table = split_table(_bytes(path))
    hauls: list[Haul] = []
    problems = list(table.problems)
    zone = lru_cache(maxsize=None)(zones)
    for row in table.rows:
        haul, wrong = read_row(row, table, zone, now)
        if wrong:
            problems.extend(wrong)
        else:
            hauls.append(haul)
    return ReadTable(tuple(hauls), tuple(sorted(problems, key=_line)))


def _line(problem: Problem) -> int:
    found = re.match(r"\D*(\d+)", problem.where)
    return int(found[1]) if found else 0


def read_row(
    row: Row, table: Table, zones: Zones, now: datetime | None
) -> tuple[Haul, list[Problem]]:
    """Return the haul of a row, and everything wrong with it; a wrong one is not to be used.

    table: says which columns are unknown, and by its separator whether 1,5 is a number.
    """

    def where(column: str) -> str:
        return say("line {line}, {column}", line=row.line, column=column)

    values: dict[str, Any] = {}
    problems: list[Problem] = []
    place = unguard_formula(row.cells["place"].strip()).strip()
    zone = zones(place) if place else _ANY_ZONE
    decimal_comma = table.separator != ","
    for column, cell in row.cells.items():
        if column in table.unknown:
            continue
        try:
            values[column] = _value(column, cell, zone, decimal_comma)
        except CellError as error:
            problems.append(Problem(where(column), cell.strip(), error.what, error.remedy))
    extra = {name: unguard_formula(row.cells[name]) for name in table.unknown}
    haul = Haul(**values, extra=extra)
    unread = {problem.where for problem in problems}
    written = {where(column): cell.strip() for column, cell in row.cells.items()}
    rules = (
        replace(problem, value=written.get(problem.where, problem.value))
        for problem in haul_problems(haul, where, now, zone or UTC)
    )
    # A rule about a cell that could not be read has nothing to add.
    if where("judged") in unread:
        rules = (problem for problem in rules if problem.where != where("light"))
    return haul, [*problems, *rules]


# A season's cells repeat: names, spots, small counts.
@lru_cache(maxsize=50_000)
def _value(column: str, cell: str, zone: ZoneInfo | None, decimal_comma: bool) -> object:
    written = cell.strip()
    if column in LABELS:
        return unguard_formula(written).strip()
    if column in TIMES:
        return read_time(written, zone) if written else None
    if column in COUNTS:
        return read_count(written) if written else None
    if column == "depth_m":
        return read_depth(written, decimal_comma=decimal_comma) if written else None
    if column == "water_c":
        return read_water(written, decimal_comma=decimal_comma) if written else None
    return unguard_formula(cell)


def _bytes(path: Path) -> bytes:
    try:
        if path.stat().st_size > _MAX_TABLE_BYTES:
            what = say(
                "is larger than a haul table can be ({max_table_bytes} MB)",
                max_table_bytes=_MAX_TABLE_BYTES // 1000000,
            )
            raise LogError(str(path), [Problem("file", "", what, say("name a haul table (CSV)"))])
        return path.read_bytes()
    except (OSError, ValueError) as error:
        raise unreadable(path, error) from None


def unreadable(path: Path, error: OSError | ValueError) -> LogError:
    """Return the error that says why a file cannot be read."""
    if isinstance(error, FileNotFoundError):
        what, remedy = say("there is no such file"), say("check the name and the folder")
    elif isinstance(error, IsADirectoryError):
        what, remedy = say("is a folder, not a file"), say("name a haul table or logbook in it")
    else:
        reason = getattr(error, "strerror", None) or str(error)
        what, remedy = (
            say("cannot be read: {reason}", reason=reason),
            say("check the name and the permissions"),
        )
    return LogError(str(path), [Problem("file", "", what, remedy)])
