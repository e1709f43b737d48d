"""What a command found, and how it is written: text for people, JSON and CSV for programs."""

from __future__ import annotations

import csv
import io
import json
import math
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal

import numpy as np

from planner.clock import Instants, from_utc64, require_aware
from planner.estimates import Interval

Format = Literal["text", "json", "csv"]
Cell = str | int | float | bool | None


@dataclass(frozen=True)
class Sheet:
    """Rows under named columns; None becomes an empty cell."""

    columns: Sequence[str]
    rows: Iterable[Sequence[Cell]]


@dataclass(frozen=True)
class Answer:
    """One result in three forms, each worked out only when asked for."""

    data: Callable[[], Mapping[str, Any]]
    sheet: Callable[[], Sheet]
    text: Callable[[], Iterable[str]]

    def written(self, form: Format) -> str:
        """Return the whole output, ending in a line end."""
        if form == "json":
            return json.dumps(self.data(), ensure_ascii=False, allow_nan=False) + "\n"
        if form == "csv":
            return _csv_text(self.sheet())
        return "\n".join(line.rstrip() for line in self.text()) + "\n"


def _csv_text(sheet: Sheet) -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(sheet.columns)
    writer.writerows(sheet.rows)
    return out.getvalue()


def iso(instant: datetime) -> str:
    """Return an aware instant as UTC, to the second: "2026-08-14T10:30:00Z"."""
    # Half a second on, so that the cut below rounds.
    seconds = math.floor(require_aware(instant).timestamp() + 0.5)
    return str(np.datetime64(seconds, "s")) + "Z"


def iso_all(instants: Instants) -> list[str | None]:
    """Return UTC instants as text to the second, None for NaT."""
    seconds = (instants.astype("datetime64[ms]") + np.timedelta64(500, "ms")).astype(
        "datetime64[s]"
    )
    return [None if np.isnat(second) else f"{second}Z" for second in seconds]


def moments(instants: Instants) -> list[datetime]:
    """Return UTC instants, none of them NaT, as aware datetimes."""
    return [from_utc64(instant) for instant in instants]


def moment_or_none(instant: np.datetime64) -> datetime | None:
    """Return a UTC instant as an aware datetime, None for NaT."""
    return None if np.isnat(instant) else from_utc64(instant)


def number(value: float | None, decimals: int = 6) -> float | None:
    """Return a number for JSON: rounded, None when it is missing or not finite."""
    if value is None or not math.isfinite(value):
        return None
    return round(float(value), decimals) + 0.0


def interval(estimate: Interval) -> dict[str, float | None]:
    """Return a mean and its 80% interval for JSON."""
    return {
        "mean": number(estimate.mean),
        "low": number(estimate.low),
        "high": number(estimate.high),
    }


def table_lines(heads: Sequence[str], rows: Sequence[Sequence[str]], right: str = "") -> list[str]:
    """Return rows of text in aligned columns; `right` has an r for each column set right."""
    widths = [max(len(row[i]) for row in [heads, *rows]) for i in range(len(heads))]

    def line(row: Sequence[str]) -> str:
        cells = [
            cell.rjust(width) if right[i : i + 1] == "r" else cell.ljust(width)
            for i, (cell, width) in enumerate(zip(row, widths, strict=True))
        ]
        return "  ".join(cells).rstrip()

    return [line(row) for row in [heads, *rows]]
