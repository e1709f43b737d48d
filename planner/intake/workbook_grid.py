"""Workbooks (XLSX) as grids: the sheet that looks most like a table of hauls."""

from __future__ import annotations

import io
import posixpath
import re
import warnings
import zipfile
from bisect import bisect_left, bisect_right
from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from typing import IO, Any, Final, NamedTuple
from xml.etree import ElementTree

from planner.errors import PlannerError, Problem
from planner.intake.grid import Grid, Line, heading_at, refused, squared
from planner.intake.meanings import meaning_of
from planner.logbook.columns import COUNTS
from planner.logbook.workbook import from_cell_text
from planner.words import say

# What a workbook unpacks to; beyond it, a small file is made to fill the memory.
_MAX_UNPACKED: Final = 600_000_000
_REMEDY: Final = say("save it anew as .xlsx, or as CSV")
_WORDS: Final = ("other", "notes")
# How a workbook tells where its sheets are and which cells are merged (ECMA-376, parts 1 and 2).
_PARTS: Final = ("xl/workbook.xml", "xl/_rels/workbook.xml.rels")
_MERGED: Final = re.compile(
    rb'<(?:\w+:)?mergeCell\s[^>]{0,99}?ref="([A-Z]{1,3})(\d{1,7}):[A-Z]{1,3}(\d{1,7})"'
)
_LONGEST: Final = 200  # letters of such a tag
# Stands for a formula whose result the file does not hold.
_NO_RESULT: Final = "\ufffc"


class Span(NamedTuple):
    """A cell that stands over several rows: its column from 0 on, its first and last row."""

    column: int
    first: int
    last: int


def workbook_grid(raw: bytes, source: str) -> Grid:
    """Return the grid of a workbook's most likely sheet; LogError when it cannot be read."""
    _require_workbook(raw, source)
    try:
        with warnings.catch_warnings():
            # What openpyxl leaves out (charts, rules of validation) is nothing we read.
            warnings.simplefilter("ignore")
            sheets = {name: lines for name, lines in _sheets(raw).items() if lines}
            name = max(sheets, key=lambda each: _known(sheets[each]), default="")
            spans = _spans(raw, name) if sheets else []
    except PlannerError:
        raise
    except Exception as error:  # noqa: BLE001  (a damaged file may break a reader anywhere)
        what = say("is not a workbook that can be read ({kind})", kind=type(error).__name__)
        raise refused(source, what, _REMEDY) from None
    if not sheets:
        raise refused(source, say("has no sheet with anything in it"), say("name another file"))
    return _grid(sheets[name], spans, name, source, others=len(sheets) - 1)


def _require_workbook(raw: bytes, source: str) -> None:
    try:
        with zipfile.ZipFile(io.BytesIO(raw)) as packed:
            names = packed.namelist()
            unpacked = sum(entry.file_size for entry in packed.infolist())
    except (zipfile.BadZipFile, ValueError, NotImplementedError, OverflowError):
        raise refused(source, say("is a damaged workbook"), _REMEDY) from None
    if unpacked > _MAX_UNPACKED:
        raise refused(source, say("unpacks to more than a table of hauls can hold"), _REMEDY)
    if "xl/workbook.xml" not in names:
        raise refused(source, say("is not an .xlsx workbook"), _REMEDY)


def _sheets(raw: bytes) -> dict[str, list[Line]]:
    found, has_formulas = _read(raw, results=False)
    if not has_formulas:
        return found
    # The results that the spreadsheet program worked out last.
    results, _ = _read(raw, results=True)
    return {
        name: [_with_results(line, results[name]) for line in lines]
        for name, lines in found.items()
    }


def _with_results(line: Line, results: list[Line]) -> Line:
    """Put results where formulas stand; both readings number their lines alike."""
    of = next((each.cells for each in results if each.number == line.number), ())
    cells = tuple(
        (of[at] if at < len(of) and of[at] else _NO_RESULT) if cell == _NO_RESULT else cell
        for at, cell in enumerate(line.cells)
    )
    return Line(line.number, cells)


def _read(raw: bytes, *, results: bool) -> tuple[dict[str, list[Line]], bool]:
    from openpyxl import load_workbook

    book = load_workbook(io.BytesIO(raw), read_only=True, data_only=results)
    try:
        sheets: dict[str, list[Line]] = {}
        for sheet in book.worksheets:
            # Some programs write a wrong size.
            sheet.reset_dimensions()
            sheets[sheet.title] = list(_lines(sheet))
    finally:
        book.close()
    formulas = any(_NO_RESULT in line.cells for lines in sheets.values() for line in lines)
    return sheets, formulas


def _spans(raw: bytes, title: str) -> list[Span]:
    """Return the cells of a sheet that stand over several rows.

    What openpyxl reads line by line leaves them out, and what it reads whole makes a cell of each
    that is covered: a column merged to its end would fill the memory.
    """
    from openpyxl.utils import column_index_from_string

    with zipfile.ZipFile(io.BytesIO(raw)) as packed:
        book, links = (ElementTree.fromstring(packed.read(name)) for name in _PARTS)
        ids = {each.get("name"): each for each in book.iterfind(".//{*}sheet")}
        link = next(value for key, value in ids[title].items() if key.endswith("}id"))
        target = next(each.get("Target", "") for each in links if each.get("Id") == link)
        with packed.open(posixpath.join("/xl", target).lstrip("/")) as sheet:
            spans = {
                Span(column_index_from_string(column) - 1, int(first), int(last))
                for column, first, last in _merged(sheet)
            }
    return sorted(span for span in spans if span.last > span.first)


def _merged(sheet: IO[bytes]) -> Iterator[tuple[str, str, str]]:
    """Yield first column, first and last row of each merged cell; some of them twice."""
    left = b""
    while piece := sheet.read(1 << 20):
        text = left + piece
        for found in _MERGED.finditer(text):
            yield found[1].decode(), found[2].decode(), found[3].decode()
        left = text[-_LONGEST:]


def _lines(sheet: Any) -> Iterator[Line]:
    for number, row in enumerate(sheet.iter_rows(), start=1):
        cells = tuple(_text(cell) for cell in row)
        if any(cells):
            yield Line(number, cells)


def _text(cell: Any) -> str:
    """Return what a cell holds as text that is read like any other."""
    value = cell.value
    if value is None:
        return ""
    if cell.data_type == "f":
        return _NO_RESULT
    if isinstance(value, str):
        return from_cell_text(value)
    if isinstance(value, bool):
        return "TRUE" if value else "FALSE"
    if isinstance(value, float) and value.is_integer() and abs(value) < 1e15:
        return str(int(value))
    if isinstance(value, datetime):
        shows_clock = "h" in str(cell.number_format).lower() or value.time() != time()
        return value.isoformat(" ", "minutes") if shows_clock else value.date().isoformat()
    if isinstance(value, date | time):
        return value.isoformat() if isinstance(value, date) else value.isoformat("minutes")
    if isinstance(value, timedelta):
        minutes = round(value / timedelta(minutes=1))
        return f"{minutes // 60}:{minutes % 60:02d}"
    return str(value)


def _known(lines: list[Line]) -> int:
    cells = [line.cells for line in lines]
    return sum(bool(meaning_of(cell)) for cell in cells[heading_at(cells)])


def _filled(lines: list[Line], at: int, spans: list[Span]) -> tuple[list[Line], list[Problem]]:
    """Return the lines with a cell that stands over several rows in each, where it may be.

    A name or a time is that of every row; a count is not, and makes its rows a problem.
    """
    cells = {line.number: list(line.cells) for line in lines}
    numbers = sorted(cells)
    head = lines[at]
    problems: dict[int, Problem] = {}
    for span in spans:
        name = head.cells[span.column] if span.column < len(head.cells) else ""
        meaning = meaning_of(name)
        rows = numbers[bisect_left(numbers, span.first) : bisect_right(numbers, span.last)]
        if not meaning or meaning in _WORDS or not rows or rows[0] <= head.number:
            continue
        for row in rows:
            if meaning in COUNTS:
                what = say("is one cell over several rows")
                remedy = say("give each haul a cell of its own")
                problems[row] = Problem(
                    say("row {number}, {heading}", number=row, heading=name), "", what, remedy
                )
            else:
                cells[row] += [""] * (span.column + 1 - len(cells[row]))
                cells[row][span.column] = cells[rows[0]][span.column]
    good = [Line(number, tuple(each)) for number, each in cells.items() if number not in problems]
    return good, list(problems.values())


def _grid(lines: list[Line], spans: list[Span], name: str, source: str, others: int) -> Grid:
    at = heading_at([line.cells for line in lines])
    lines, spanned = _filled(lines, at, spans)
    heading, below, problems = squared(lines, at, "row", ragged=False)
    problems += spanned
    kept = []
    for line in below:
        at_formula = [i for i, cell in enumerate(line.cells) if cell == _NO_RESULT]
        if at_formula:
            where = say(
                "row {number}, {heading}", number=line.number, heading=heading[at_formula[0]]
            )
            what = say("holds a formula without its result")
            remedy = say("open the workbook in a spreadsheet program and save it there")
            problems.append(Problem(where, "", what, remedy))
        else:
            kept.append(line)
    left = say(", of {others} sheets", others=others + 1) if others else ""
    return Grid(
        source=source,
        made_of=say('workbook, sheet "{name}"{left}', name=name, left=left),
        heading=heading,
        lines=tuple(kept),
        problems=tuple(problems),
        unit="row",
        decimal_comma=True,
    )
