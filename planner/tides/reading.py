"""Reading what people and gauges observed: high and low waters, and levels, from CSV."""

from __future__ import annotations

import csv
import math
from collections.abc import Iterator
from datetime import datetime, tzinfo
from pathlib import Path
from typing import Final
from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import Instants, parse_instant, to_utc64
from planner.errors import InputError, Problem
from planner.estimates import Floats
from planner.phrasing import typed_number
from planner.tides.observed import ObservedTurns
from planner.units import LengthUnit, metres_from
from planner.words import say

# Headings that gauges' files give the columns, read as ours.
_COLUMNS: Final = {
    "date time": "time", "datetime": "time", "date/time": "time", "water level": "height",
    "level": "height", "sea level": "height", "time": "time", "height": "height", "kind": "kind",
}  # fmt: skip
_KINDS: Final = {"high": True, "h": True, "low": False, "l": False}


def read_observed_turns(path: Path, zone: ZoneInfo, unit: LengthUnit) -> ObservedTurns:
    """Read observed high and low waters from a CSV file with the header time,height,kind.

    time: ISO 8601, with an offset or on the clock of `zone`. height: above the place's datum
    in `unit`, may be empty. kind: high or low. InputError lists every bad line.
    """
    problems: list[Problem] = []
    found: list[tuple[np.datetime64, float, bool]] = []
    for line, cells in _rows(path, ("time", "height", "kind")):
        moment = _moment(cells["time"], zone, line, problems)
        height = _height(cells["height"], unit, line, problems)
        kind = _KINDS.get(cells["kind"].casefold())
        if kind is None:
            remedy = say('write "high" or "low"')
            problems.append(Problem(f"{line}, kind", cells["kind"], say("is neither"), remedy))
        if moment is not None and height is not None and kind is not None:
            found.append((to_utc64(moment), height, kind))
    if problems:
        raise InputError(str(path), problems)
    found.sort(key=lambda turn: turn[0])
    return ObservedTurns(
        np.array([turn[0] for turn in found], dtype="datetime64[ms]"),
        np.array([turn[1] for turn in found], dtype=np.float64),
        np.array([turn[2] for turn in found], dtype=np.bool_),
    )


def read_levels(path: Path, zone: tzinfo, unit: LengthUnit) -> tuple[Instants, Floats]:
    """Read a record of levels from a CSV file with the header time,height.

    Times as in `read_observed_turns`; an empty height is a gap. Headings as gauges' own files
    have them ("Date Time", "Water Level") are understood, other columns passed over. Returns
    instants in order and levels in metres, NaN in gaps, both of shape (n,). InputError lists
    every bad line.
    """
    problems: list[Problem] = []
    found: list[tuple[np.datetime64, float]] = []
    for line, cells in _rows(path, ("time", "height")):
        moment = _moment(cells["time"], zone, line, problems)
        height = _height(cells["height"], unit, line, problems)
        if moment is not None and height is not None:
            found.append((to_utc64(moment), height))
    if problems:
        raise InputError(str(path), problems)
    times = np.array([level[0] for level in found], dtype="datetime64[ms]")
    levels = np.array([level[1] for level in found], dtype=np.float64)
    order = np.argsort(times, kind="stable")
    return times[order], levels[order]


def _rows(path: Path, columns: tuple[str, ...]) -> Iterator[tuple[str, dict[str, str]]]:
    """Yield the name of each line and its cells, stripped; InputError without the columns."""
    lines = _lines(path)
    missing = set(columns) - set(_header(lines))
    if missing:
        what = say("has no column {listed}", listed=", ".join(sorted(missing)))
        remedy = say("begin the file with the line {columns}", columns=",".join(columns))
        raise InputError(str(path), [Problem("line 1", "".join(lines[:1]), what, remedy)])
    reader = csv.DictReader(lines[1:], _header(lines))
    try:
        for row in reader:
            cells = {str(key).strip(): (value or "").strip() for key, value in row.items() if key}
            yield say("line {line_num}", line_num=reader.line_num + 1), cells
    except csv.Error as error:
        line = say("line {line_num}", line_num=reader.line_num + 1)
        problem = Problem(
            line, "", say("is not CSV: {error}", error=error), say("look for a quote left open")
        )
        raise InputError(str(path), [problem]) from error


def _lines(path: Path) -> list[str]:
    try:
        return path.read_text(encoding="utf-8-sig").splitlines()
    except (OSError, ValueError) as error:  # ValueError: not UTF-8, or no possible file name
        known = error.strerror if isinstance(error, OSError) else say("it is not text in UTF-8")
        problem = Problem(
            "file", "", say("cannot be read: {known}", known=known), say("give a CSV file in UTF-8")
        )
        raise InputError(str(path), [problem]) from error


def _header(lines: list[str]) -> list[str]:
    try:
        names = [name.strip() for name in next(csv.reader(lines), [])]
    except csv.Error:  # a cell of endless length
        return []
    return [_COLUMNS.get(name.casefold(), name) for name in names]


def _moment(text: str, zone: tzinfo, line: str, problems: list[Problem]) -> datetime | None:
    try:
        return parse_instant(text, zone)
    except ValueError:
        remedy = say("write it like 2026-07-04T06:12 (local) or 2026-07-04T10:12Z")
        problems.append(Problem(f"{line}, time", text, say("is not a time"), remedy))
        return None


def _height(text: str, unit: LengthUnit, line: str, problems: list[Problem]) -> float | None:
    if not text:
        return math.nan
    try:
        value = float(typed_number(text))
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        remedy = say("give a number in {unit}, or nothing when only the time was seen", unit=unit)
        problems.append(Problem(f"{line}, height", text, say("is not a height"), remedy))
        return None
    return metres_from(value, unit)
