"""From the bytes of a CSV file to named cells by line, before any cell is understood."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Final

from planner.errors import Problem
from planner.logbook.columns import COLUMNS, unguard_formula
from planner.words import say

_SEPARATORS: Final = (",", ";", "\t")
_REQUIRED: Final = ("trip", "place")


@dataclass(frozen=True)
class Row:
    """One row: the line it begins on, and its cells by column; known columns by their names."""

    line: int
    cells: dict[str, str]


@dataclass(frozen=True)
class Table:
    """The rows that could be told apart, and what was wrong with the others."""

    rows: tuple[Row, ...]
    unknown: tuple[str, ...]
    separator: str
    problems: tuple[Problem, ...]


def split_table(raw: bytes) -> Table:
    """Return the rows of a haul table; what is wrong with the file or a row is in `problems`."""
    text, problem = _decode(raw)
    if problem is not None:
        return _nothing(problem)
    separator = _separator(text.splitlines()[0])
    lines = numbered_rows(text, separator)
    first = next(lines)
    if isinstance(first, Problem):
        return _nothing(first)
    header = [_column(cell) for cell in first[1]]
    problems = list(_header_problems(header))
    if problems:
        return _nothing(*problems)
    rows: list[Row] = []
    nameless = False
    for entry in lines:
        if isinstance(entry, Problem):
            problems.append(entry)
            continue
        line, cells = entry
        if not any(cell.strip() for cell in cells):
            continue
        filled = len(cells) - next(i for i, cell in enumerate(reversed(cells)) if cell.strip())
        if len(cells) < len(header) or filled > len(header):
            problems.append(_ragged(line, len(cells), len(header), separator))
            continue
        named = dict(zip(header, cells, strict=False))
        if named.pop("", "").strip() and not nameless:
            nameless = True
            what = say("a column without a name holds values")
            problems.append(
                Problem(say("line 1"), "", what, say("give the column a name in the header"))
            )
        rows.append(Row(line, named))
    unknown = tuple(name for name in header if name and name not in COLUMNS)
    return Table(tuple(rows), unknown, separator, tuple(problems))


def _nothing(*problems: Problem) -> Table:
    return Table((), (), ",", problems)


def _decode(raw: bytes) -> tuple[str, Problem | None]:
    remedy = say("save it as CSV in UTF-8")
    if raw.startswith((b"\xff\xfe", b"\xfe\xff")):
        return "", Problem("file", "", say("is UTF-16 text"), remedy)
    nul = raw.find(b"\0")
    if nul >= 0:
        line = raw[:nul].count(b"\n") + 1
        return "", Problem(
            say("line {line}", line=line), "", say("holds a zero byte; this is no text"), remedy
        )
    try:
        # Spreadsheets put a byte-order mark in front; utf-8-sig takes it away.
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = raw[: error.start].count(b"\n") + 1
        return "", Problem(say("line {line}", line=line), "", say("is not UTF-8 text"), remedy)
    if not text.strip():
        first = say("begin it with the header trip,place,spot,trap,...")
        return "", Problem("file", "", say("is empty"), first)
    return text, None


def _separator(header: str) -> str:
    """Return the separator that finds most known columns; a comma unless another does better."""

    def known(separator: str) -> int:
        return sum(_column(cell) in COLUMNS for cell in header.replace('"', "").split(separator))

    return max(_SEPARATORS, key=known)


def _column(cell: str) -> str:
    """Return a known column's own name however it is capitalised; any other name as written."""
    name = unguard_formula(cell).strip()
    return name.casefold() if name.casefold() in COLUMNS else name


def numbered_rows(
    text: str, separator: str, first: int = 1
) -> Iterator[tuple[int, list[str]] | Problem]:
    """Yield rows with the line that each begins on; a row that is not CSV ends the table.

    first: the number of the text's first line.
    """
    # strict: a stray quote is an error, not a guess at what was meant.
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    line = first
    while True:
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error as error:
            remedy = say("check the quotation marks from this line on; double those inside a text")
            yield Problem(
                say("line {line}", line=line), "", say("is not CSV: {error}", error=error), remedy
            )
            return
        yield line, cells
        line = first + reader.line_num


def _header_problems(header: Sequence[str]) -> Iterator[Problem]:
    for name in _REQUIRED:
        if name not in header:
            near = get_close_matches(name, [column.casefold() for column in header], n=1)
            hint = say('; is "{near}" meant?', near=near[0]) if near else ""
            what = say('the header has no column "{name}"{hint}', name=name, hint=hint)
            remedy = say("name the columns as in trip,place,spot,trap,design,bait,...")
            yield Problem(say("line 1"), ", ".join(header), what, remedy)
    for name in sorted({name for name in header if name and header.count(name) > 1}):
        yield Problem(
            say("line 1, {name}", name=name),
            "",
            say("the column is there twice"),
            say("remove or rename one"),
        )


def _ragged(line: int, cells: int, columns: int, separator: str) -> Problem:
    shown = "tabs" if separator == "\t" else f'"{separator}"'
    return Problem(
        say("line {line}", line=line),
        "",
        say(
            "has {cells} cells where the header has {columns} columns", cells=cells, columns=columns
        ),
        say(
            "put texts that hold {shown} in quotation marks, and one cell for each column",
            shown=shown,
        ),
    )
