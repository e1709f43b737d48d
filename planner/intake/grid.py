"""A file of any make as a grid of text: a heading, and lines of cells below it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from planner.errors import Problem
from planner.intake.meanings import meaning_of
from planner.logbook.columns import unguard_formula
from planner.logbook.errors import LogError
from planner.logbook.reading import unreadable
from planner.words import say

# A hundred thousand hauls have about twenty megabytes as text.
MAX_BYTES: Final = 200_000_000
_HEADING_WITHIN: Final = 20  # lines: titles and dates above a heading are fewer
_OLD_WORKBOOK: Final = b"\xd0\xcf\x11\xe0"
_ZIP: Final = b"PK\x03\x04"


@dataclass(frozen=True)
class Line:
    """One line: the number by which the user finds it, and its cells."""

    number: int
    cells: tuple[str, ...]


@dataclass(frozen=True)
class Grid:
    """What a file holds, before any of it is understood.

    made_of: the form of the file in words. heading: the columns' names, each once. lines: those
    below it, blank ones left out, each as wide as the heading. problems: of lines that are not
    among them. unit: what a line is called in this kind of file. decimal_comma: whether 1,5 can
    only mean one and a half here. guessed_letters: whether letters beyond ASCII were guessed.
    """

    source: str
    made_of: str
    heading: tuple[str, ...]
    lines: tuple[Line, ...]
    problems: tuple[Problem, ...] = ()
    unit: str = "line"
    decimal_comma: bool = False
    guessed_letters: bool = False

    def column(self, name: str) -> list[str]:
        """Return the cells below a name."""
        at = self.heading.index(name)
        return [line.cells[at] for line in self.lines]


def read_grid(path: Path, encoding: str | None = None) -> Grid:
    """Return the grid of a CSV file or XLSX workbook; LogError when it is neither.

    encoding: what the letters of a text file are to be read as, None to find out.
    """
    try:
        if path.stat().st_size > MAX_BYTES:
            raise refused(
                str(path),
                say(
                    "is larger than a table can be ({max_bytes} MB)", max_bytes=MAX_BYTES // 1000000
                ),
                say("name a table of hauls"),
            )
        raw = path.read_bytes()
    except (OSError, ValueError) as error:
        raise unreadable(path, error) from None
    return grid_of(raw, path.name, encoding)


def grid_of(raw: bytes, source: str, encoding: str | None = None) -> Grid:
    """Return the grid of a file's bytes; LogError when they are no table."""
    if raw.startswith(_OLD_WORKBOOK):
        raise refused(
            source,
            say("is a workbook of the old kind, or one behind a password"),
            say("save it as .xlsx without a password, or as CSV"),
        )
    if raw.startswith(_ZIP):
        from planner.intake.workbook_grid import workbook_grid

        return workbook_grid(raw, source)
    from planner.intake.text_grid import text_grid

    return text_grid(raw, source, encoding)


def refused(source: str, what: str, remedy: str) -> LogError:
    """Return the error of a file of which nothing can be used."""
    return LogError(source, [Problem("file", "", what, remedy)])


def heading_at(lines: Sequence[Sequence[str]]) -> int:
    """Return which of the lines is the heading: where most names are known, the first of equals."""
    known = [sum(bool(meaning_of(cell)) for cell in cells) for cells in lines[:_HEADING_WITHIN]]
    if max(known, default=0) > 0:
        return known.index(max(known))
    return next((at for at, cells in enumerate(lines) if any(cell.strip() for cell in cells)), 0)


def column_names(cells: Sequence[str]) -> tuple[str, ...]:
    """Return a name for each column: as written, numbered where it is empty or there twice."""
    names: list[str] = []
    for number, cell in enumerate(cells, start=1):
        name = unguard_formula(cell).strip() or say("column {number}", number=number)
        found, again = name, 2
        while found in names:
            found, again = f"{name} ({again})", again + 1
        names.append(found)
    return tuple(names)


def squared(
    lines: Sequence[Line], at: int, unit: str, *, ragged: bool
) -> tuple[tuple[str, ...], tuple[Line, ...], list[Problem]]:
    """Return heading, lines and problems of what stands from the heading on.

    ragged: whether a line with too few cells is a problem; where the file knows its columns, it
    only ends in empty ones. Columns without a name and without a value are left out.
    """
    if not lines:
        return (), (), []
    below = [line for line in lines[at + 1 :] if any(cell.strip() for cell in line.cells)]
    head = list(lines[at].cells)
    while head and not head[-1].strip():
        head.pop()
    width = len(head)
    good: list[Line] = []
    problems: list[Problem] = []
    for line in below:
        filled = max(i for i, cell in enumerate(line.cells, start=1) if cell.strip())
        if filled > width or (ragged and len(line.cells) < width):
            what = say(
                "has {filled} cells where the heading has {width} columns",
                filled=max(filled, len(line.cells)),
                width=width,
            )
            remedy = say("put texts that hold the separator in quotation marks, one cell a column")
            problems.append(Problem(f"{unit} {line.number}", "", what, remedy))
        else:
            padded = (*line.cells, *[""] * width)[:width]
            good.append(Line(line.number, padded))
    used = [
        i for i in range(width) if head[i].strip() or any(line.cells[i].strip() for line in good)
    ]
    names = column_names(head)
    kept = tuple(Line(line.number, tuple(line.cells[i] for i in used)) for line in good)
    return tuple(names[i] for i in used), kept, problems
