"""Observed high and low waters: kept in a file, compared, put into words; no Qt here."""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final, Literal

import numpy as np

from planner.assets import user_folder
from planner.clock import from_utc64
from planner.errors import InputError
from planner.phrasing import Style, clock_text, day_text, shown_day
from planner.sites.keeping import file_stem
from planner.sites.site import Site
from planner.tides import Tide
from planner.tides.checks import Comparison, Suspicion, compare, read_observed_turns, suspicions
from planner.ui.places.places_text import Rows
from planner.units import LengthUnit, metres_to
from planner.whole_file import replacing
from planner.words import say

Cells = tuple[str, str, str]
_FEW_TURNS: Final = 4
_HEADER: Final = ("time", "height", "kind")


@dataclass(frozen=True)
class Checked:
    """The observed waters of a place as written, and what they say of its prediction."""

    rows: tuple[Cells, ...]
    found: Comparison | None = None
    suspicions: tuple[Suspicion, ...] = ()
    problems: tuple[str, ...] = ()


def observed_file(site: Site) -> Path:
    """Return where a place's observed waters are kept; the file need not exist."""
    return seen_file(site.name)


def seen_file(name: str) -> Path:
    """Return where the waters seen at a place of that name are kept."""
    return user_folder() / "observed" / f"{file_stem(name)}.csv"


def carry_over(before: str, after: str) -> None:
    """Let what was seen at a place follow its new name, unless that name has some of its own."""
    old, new = seen_file(before), seen_file(after)
    if old != new and old.exists() and not new.exists():
        os.replace(old, new)


def check_observed(site: Site, rows: Sequence[Cells] | None) -> Checked:
    """Keep the rows (None: take those kept before) and compare them with the prediction.

    Rows are text: local or ISO 8601 time, height in the unit of the place file, kind.
    """
    path = observed_file(site)
    if rows is None:
        rows = read_cells(path)
    else:
        write_cells(path, rows)
    if not rows:
        return Checked(())
    try:
        observed = read_observed_turns(path, site.zone, site.water.file_units)
    except InputError as error:
        # The header is line 1 of the file, the first row of the table its line 2.
        return Checked(tuple(rows), problems=tuple(_by_row(str(p)) for p in error.problems))
    tide = Tide(site)
    return Checked(tuple(rows), compare(tide, observed), suspicions(tide, None, observed))


def cells_of_file(site: Site, path: Path) -> tuple[Cells, ...]:
    """Return the observed waters of a CSV file as rows of text; InputError lists bad lines."""
    observed = read_observed_turns(path, site.zone, site.water.file_units)
    unit = site.water.file_units
    return tuple(
        (
            from_utc64(at).astimezone(site.zone).strftime("%Y-%m-%dT%H:%M%z"),
            "" if height != height else f"{metres_to(float(height), unit):.2f}",
            "high" if high else "low",
        )
        for at, height, high in zip(
            observed.times, observed.heights_m, observed.is_high, strict=True
        )
    )


def _by_row(problem: str) -> str:
    first, _, rest = problem.partition(",")
    number = first.removeprefix("line ")
    return (
        say("Row {number},{rest}", number=int(number) - 1, rest=rest)
        if number.isdigit()
        else problem
    )


def read_cells(path: Path) -> tuple[Cells, ...]:
    """Return the rows that were kept, none where there is no file."""
    try:
        lines = path.read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError):
        return ()
    found = [[*row, "", "", ""][:3] for row in csv.reader(lines[1:])]
    return tuple((row[0], row[1], row[2]) for row in found)


def write_cells(path: Path, rows: Sequence[Cells]) -> None:
    """Keep rows, whole or not at all."""
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerows([_HEADER, *rows])
    path.parent.mkdir(parents=True, exist_ok=True)
    with replacing(path) as partial:
        partial.write_text(text.getvalue(), encoding="utf-8")


def comparison_texts(found: Comparison | None, rows: int, style: Style) -> Iterator[str]:
    """Yield how observed high and low waters compare with the predicted, with their number."""
    if rows == 0 or found is None:
        yield say(
            "Enter a few high or low waters that you saw or read off a gauge. How far the "
            "prediction is off, and how steadily, will be said here."
        )
        return
    if found.matched == 0:
        yield say(
            "None of {rows} observed waters is within eight hours of a predicted one "
            "of its kind. Check dates and kinds.",
            rows=rows,
        )
        return
    yield say(
        "{matched} of {rows} observed waters found their predicted one.",
        matched=found.matched,
        rows=rows,
    )
    yield _bias_text(
        say("Times"),
        found.time_bias_min,
        found.time_scatter_min,
        lambda value: say("{value:d} min", value=round(abs(value))),
        (say("later"), say("earlier")),
    )
    if np.isfinite(found.height_bias_m):
        yield _bias_text(
            say("Heights"),
            found.height_bias_m,
            found.height_scatter_m,
            lambda value: _small_height(abs(value), style.length),
            (say("higher"), say("lower")),
        )
    if found.matched < _FEW_TURNS:
        yield say(
            "{few_turns} or more are needed before anything is said about what may "
            "be wrong: wind alone moves single waters by decimetres and half an hour.",
            few_turns=_FEW_TURNS,
        )


def _bias_text(
    what: str, bias: float, scatter: float, shown: Callable[[float], str], sides: tuple[str, str]
) -> str:
    text = say(
        "{what}: on average {shown} {sides} than predicted",
        what=what,
        shown=shown(bias),
        sides=sides[0] if bias > 0 else sides[1],
    )
    if np.isfinite(scatter):
        return say(
            "{given}; single ones scatter about that by {shown}.", given=text, shown=shown(scatter)
        )
    return say("{given}; one alone shows no scatter.", given=text)


def _small_height(value_m: float, unit: LengthUnit, sign: Literal["", "+"] = "") -> str:
    if unit == "m":
        return say("{value_m:{sign}.0f} cm", value_m=value_m * 100, sign=sign)
    return say("{value_ft:{sign}.1f} ft", value_ft=metres_to(value_m, "ft"), sign=sign)


def difference_rows(site: Site, found: Comparison, style: Style) -> Rows:
    """Return each observed turn with how it differs from its predicted one."""
    rows: Rows = []
    seen = found.observed
    for at, high, minutes, height in zip(
        seen.times, seen.is_high, found.time_min, found.height_m, strict=True
    ):
        when = from_utc64(at)
        day = shown_day(when, site.zone)
        rows.append(
            (
                f"{day_text(day)} {day.year} {clock_text(when, site.zone, style)}",
                say("high") if high else say("low"),
                say("no match")
                if np.isnan(minutes)
                else say("{minutes:+.0f} min", minutes=minutes),
                "" if np.isnan(height) else _small_height(height, style.length, "+"),
            )
        )
    return rows
