"""Lines of a pasted table cut into cells, whatever parts them; used by `pasting`."""

from __future__ import annotations

import csv
import html
import re
import unicodedata
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from planner.constituents.names import known
from planner.constituents.paste_shapes import one_a_line
from planner.words import MINUS

_TYPED: Final = str.maketrans({"º": "°", "˚": "°", MINUS: "-", "–": "-", "’": "'", "′": "'"})
_UNIT: Final = re.compile(r"m|ft|cm|met(?:er|re)s?|feet|foot")
_NUMBER: Final = r"[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)"
_VALUE: Final = re.compile(
    rf"({_NUMBER})\s*(m|ft|cm|met(?:er|re)s?|feet|foot|'|deg(?:rees?)?\.?|°)?", re.IGNORECASE
)
_UNIT_WORDS: Final = {"'": "ft"}
_ENDS_ROW: Final = re.compile(r"</tr\s*>|<br\s*/?>|</p\s*>", re.IGNORECASE)
_ENDS_CELL: Final = re.compile(r"</t[dh]\s*>", re.IGNORECASE)
_TAG: Final = re.compile(r"</?[a-z][^<>]*>", re.IGNORECASE)


@dataclass(frozen=True)
class Line:
    """One line of a table: its number, its cells, and what name and numbers stand in them.

    units: what follows the numbers, such as "m" or "ft".
    """

    number: int
    cells: tuple[str, ...]
    name: str | None
    values: tuple[float, ...]
    units: tuple[str, ...]

    @property
    def whole(self) -> bool:
        """Whether the line has all that a constant needs: a name and two numbers."""
        return self.name is not None and len(self.values) > 1


def lines_of(text: str) -> list[Line]:
    """Return the lines of a paste; where every cell has a line of its own, they are joined."""
    lines = [
        _line(at, each) for at, each in enumerate(one_a_line(_plain(text)).splitlines(), start=1)
    ]
    if any(line.whole for line in lines):
        return lines
    joined = list(_joined(lines))
    return joined if any(line.whole for line in joined) else lines


def _plain(text: str) -> str:
    """Return a text without marks of HTML, with figures and signs as they are typed."""
    if _ENDS_CELL.search(text) or _ENDS_ROW.search(text):
        parted = _ENDS_CELL.sub("\t", _ENDS_ROW.sub("\n", text.replace("\n", " ")))
        text = html.unescape(_TAG.sub(" ", parted))
    # NFKC: small figures (M with a low 2), hard spaces and wide letters become plain ones.
    return unicodedata.normalize("NFKC", text.translate(_TYPED)).translate(_TYPED)


def _line(number: int, text: str) -> Line:
    """Return a line by the first way of parting it that gives a name and two numbers."""
    ways = [_read(number, cells) for cells in _ways(text)]
    return next((line for line in ways if line.whole), ways[0])


def _ways(text: str) -> Iterator[Sequence[str]]:
    bare = text.strip()
    if re.search(r"[\t;|]", bare):
        yield re.split(r"[\t;|]", bare)
    elif '"' in bare:
        yield next(csv.reader([bare], skipinitialspace=True), [])
    elif "," not in bare:
        wide = re.split(r"\s{2,}", bare)
        yield wide if len(wide) > 2 else bare.split()
    elif re.search(r"\d,\d.*\s", bare) and re.search(r"\s", bare):
        yield [each.rstrip(",") for each in bare.split()]  # a comma is a decimal point here
    yield bare.split(",")
    yield [each.rstrip(",") for each in bare.split()]
    yield re.split(r"[\s:=;|]+|,(?!\d)", bare)
    yield re.split(r"[\s,:=;|]+", bare)


def _read(number: int, cells: Sequence[str]) -> Line:
    kept = tuple(cell.strip() for cell in cells if cell.strip())
    values, units = [], []
    for cell in kept:
        found = _VALUE.fullmatch(cell)
        if found:
            values.append(float(found[1].replace(",", ".")))
            units += [_UNIT_WORDS.get(found[2], found[2])] if found[2] else []
        elif values and _UNIT.fullmatch(cell):
            units.append(cell)
    name = next((called for cell in kept if (called := _name(cell)) is not None), None)
    return Line(number, kept, name, tuple(values), tuple(units))


@lru_cache(maxsize=4096)  # cells are tried in several ways of parting a line
def _name(cell: str) -> str | None:
    if _VALUE.fullmatch(cell):
        return None
    for written in (cell, re.sub(r"[()\[\]*:]", "", cell)):
        if found := known(written):
            return found.name
    return None


def _joined(lines: Sequence[Line]) -> Iterator[Line]:
    """Yield one line for each name with the numbers that follow on lines of their own."""
    lead, open_line = 0, None
    for line in lines:
        if line.name is not None:
            if open_line is not None:
                yield _without_last(open_line, lead)
            open_line = line
        elif open_line is None:
            # Numbers before the first name are running numbers: each stands before its name.
            lead = lead + 1 if line.values else 0
            yield line if not line.values else _read(line.number, ())
        else:
            open_line = Line(
                open_line.number,
                open_line.cells + line.cells,
                open_line.name,
                open_line.values + line.values,
                open_line.units + line.units,
            )
    if open_line is not None:
        yield open_line


def _without_last(line: Line, count: int) -> Line:
    values = line.values[: len(line.values) - count] if count else line.values
    return Line(line.number, line.cells, line.name, values, line.units)
