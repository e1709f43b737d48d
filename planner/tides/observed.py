"""Observed high and low waters: reading them, and setting them beside the prediction."""

from __future__ import annotations

import csv
import math
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Final
from zoneinfo import ZoneInfo

import numpy as np
from numpy.typing import NDArray

from planner.clock import Instants, parse_instant, to_utc64
from planner.errors import InputError, Problem
from planner.estimates import Floats
from planner.tides.tide import Tide
from planner.units import LengthUnit, metres_from

# An observed turn is compared with the nearest predicted one of its kind within this time.
_SEARCH: Final = np.timedelta64(8 * 3_600_000, "ms")
_MS_PER_MINUTE: Final = 60_000
_KINDS: Final = {"high": True, "h": True, "low": False, "l": False}


@dataclass(frozen=True)
class ObservedTurns:
    """High and low waters that somebody saw, in order of time.

    times: `datetime64[ms]` UTC; heights_m: above the place's datum, NaN where only the time
    was seen; is_high; all of shape (n,).
    """

    times: Instants
    heights_m: Floats
    is_high: NDArray[np.bool_]


@dataclass(frozen=True)
class Comparison:
    """Observed less predicted at matching turns.

    time_min, height_m: difference of each turn, shape (n,), NaN where there is no match or no
    height. Biases are means, scatters standard deviations about them (NaN for fewer than two).
    """

    observed: ObservedTurns
    time_min: Floats
    height_m: Floats
    matched: int
    time_bias_min: float
    time_scatter_min: float
    height_bias_m: float
    height_scatter_m: float


def compare(tide: Tide, observed: ObservedTurns) -> Comparison:
    """Return how observed high and low waters differ from the predicted ones."""
    times, heights = _differences(tide, observed)
    return Comparison(
        observed,
        times,
        heights,
        int(np.isfinite(times).sum()),
        *_mean_and_scatter(times),
        *_mean_and_scatter(heights),
    )


def _differences(tide: Tide, observed: ObservedTurns) -> tuple[Floats, Floats]:
    minutes = np.full(observed.times.shape, np.nan)
    heights = np.full(observed.times.shape, np.nan)
    if observed.times.size == 0:
        return minutes, heights
    turns = tide.turns(observed.times.min() - _SEARCH, observed.times.max() + _SEARCH)
    for kind in (True, False):
        ours, theirs = observed.is_high == kind, turns.is_high == kind
        if not ours.any() or not theirs.any():
            continue
        apart = observed.times[ours][:, np.newaxis] - turns.times[theirs]
        nearest = np.abs(apart).argmin(axis=1)
        gap = apart[np.arange(nearest.size), nearest]
        near = np.abs(gap) <= _SEARCH
        minutes[ours] = np.where(near, gap.astype(np.float64) / _MS_PER_MINUTE, np.nan)
        predicted = turns.heights[theirs][nearest]
        heights[ours] = np.where(near, observed.heights_m[ours] - predicted, np.nan)
    return minutes, heights


def _mean_and_scatter(values: Floats) -> tuple[float, float]:
    known = values[np.isfinite(values)]
    mean = float(known.mean()) if known.size else math.nan
    return mean, float(known.std(ddof=1)) if known.size > 1 else math.nan


def read_observed_turns(path: Path, zone: ZoneInfo, unit: LengthUnit) -> ObservedTurns:
    """Read observed high and low waters from a CSV file with the header time,height,kind.

    time: ISO 8601, with an offset or on the clock of `zone`. height: above the place's datum
    in `unit`, may be empty. kind: high or low. InputError lists every bad line.
    """
    try:
        text = path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise InputError(
            str(path), [Problem("file", "", f"cannot be read ({error})", "give a CSV file")]
        ) from error
    reader = csv.DictReader(text.splitlines())
    missing = {"time", "height", "kind"} - {name.strip() for name in reader.fieldnames or ()}
    if missing:
        first = text.splitlines()[0] if text else ""
        what = f"has no column {', '.join(sorted(missing))}"
        remedy = "begin the file with the line time,height,kind"
        raise InputError(str(path), [Problem("line 1", first, what, remedy)])
    problems: list[Problem] = []
    found: list[tuple[np.datetime64, float, bool]] = []
    for row in reader:
        line = f"line {reader.line_num}"
        cells = {str(key).strip(): (value or "").strip() for key, value in row.items() if key}
        moment = _moment(cells["time"], zone, line, problems)
        height = _height(cells["height"], unit, line, problems)
        kind = _KINDS.get(cells["kind"].casefold())
        if kind is None:
            remedy = 'write "high" or "low"'
            problems.append(Problem(f"{line}, kind", cells["kind"], "is neither", remedy))
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


def _moment(text: str, zone: ZoneInfo, line: str, problems: list[Problem]) -> datetime | None:
    try:
        return parse_instant(text, zone)
    except ValueError:
        remedy = "write it like 2026-07-04T06:12 (local) or 2026-07-04T10:12Z"
        problems.append(Problem(f"{line}, time", text, "is not a time", remedy))
        return None


def _height(text: str, unit: LengthUnit, line: str, problems: list[Problem]) -> float | None:
    if not text:
        return math.nan
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        remedy = f"give a number in {unit}, or nothing when only the time was seen"
        problems.append(Problem(f"{line}, height", text, "is not a height", remedy))
        return None
    return metres_from(value, unit)
