"""Text files as grids: whatever the encoding, the separator, and the lines above the heading."""

from __future__ import annotations

import csv
import re
from typing import Final

from planner.errors import Problem
from planner.intake.grid import Grid, Line, heading_at, refused, squared
from planner.intake.meanings import meaning_of
from planner.logbook.table import numbered_rows
from planner.words import say

SEPARATORS: Final = {
    ",": say("commas"),
    ";": say("semicolons"),
    "\t": say("tabs"),
    "|": say("upright strokes"),
}
ENCODINGS: Final = {
    "utf-8-sig": "UTF-8",
    "utf-16": "UTF-16",
    "utf-16-le": "UTF-16",
    "utf-16-be": "UTF-16",
    "cp1252": "Windows-1252",
    "mac_roman": "Mac Roman",
    "cp850": "DOS (850)",
}
_SAMPLE_LETTERS: Final = 20_000
_MARKS: Final = ((b"\xef\xbb\xbf", "utf-8-sig"), (b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"))
# Bytes that no text has, whatever its letters.
_CONTROLS: Final = re.compile(rb"[\x00-\x08\x0e-\x1f\x7f]")
_SAYS_SEPARATOR: Final = re.compile(r"sep=(.)\r?\n", re.IGNORECASE)
_REMEDY: Final = say("save it as CSV in UTF-8, or as .xlsx")


def text_grid(raw: bytes, source: str, encoding: str | None = None) -> Grid:
    """Return the grid of a text file; LogError when it is no text or no table."""
    found = encoding or _encoding(raw, source)
    try:
        text = raw.decode(found)
    except UnicodeDecodeError:
        raise refused(
            source, say("is not {encodings} text", encodings=ENCODINGS.get(found, found)), _REMEDY
        ) from None
    text = text.removeprefix("\ufeff")
    if "\0" in text:
        raise refused(source, say("holds zero bytes; this is no text"), _REMEDY)
    if not text.strip():
        raise refused(
            source, say("is empty"), say("begin it with a heading: trip, place, trap, keepers...")
        )
    said = _SAYS_SEPARATOR.match(text)
    skipped = 1 if said else 0
    separator = said[1] if said else _separator(text)
    lines, broken = _lines(text[said.end() :] if said else text, separator, skipped)
    at = heading_at([line.cells for line in lines])
    heading, below, problems = squared(lines, at, "line", ragged=True)
    shown = SEPARATORS.get(separator, f'"{separator}"')
    above = say(", {at} lines above the heading left out", at=at) if at else ""
    return Grid(
        source=source,
        made_of=say(
            "{encodings} text separated by {shown}{above}",
            encodings=ENCODINGS.get(found, found),
            shown=shown,
            above=above,
        ),
        heading=heading,
        lines=below,
        problems=(*problems, *broken),
        decimal_comma=separator != ",",
        guessed_letters=encoding is None and not found.startswith("utf"),
    )


def _encoding(raw: bytes, source: str) -> str:
    for mark, name in _MARKS:
        if raw.startswith(mark):
            return name
    if b"\0" in raw:
        wide = _wide(raw)
        if wide is None:
            raise refused(source, say("holds zero bytes; this is no text"), _REMEDY)
        return wide
    try:
        raw.decode("utf-8")
    except UnicodeDecodeError:
        if _CONTROLS.search(raw):
            raise refused(source, say("is no text"), _REMEDY) from None
        return _single_byte(raw)
    return "utf-8-sig"


def _single_byte(raw: bytes) -> str:
    """Return the likelier letters of a text of one byte each; five bytes are none in Windows."""
    try:
        raw.decode("cp1252")
    except UnicodeDecodeError:
        return "mac_roman"
    return "cp1252"


def _wide(raw: bytes) -> str | None:
    """Return which way round two-byte text without a mark is: plain letters have one zero each."""
    sample = raw[:_SAMPLE_LETTERS]
    even, odd = sample[0::2].count(0), sample[1::2].count(0)
    half = len(sample) // 2
    if len(raw) % 2 == 0 and odd > 0.5 * half and even == 0:
        return "utf-16-le"
    if len(raw) % 2 == 0 and even > 0.5 * half and odd == 0:
        return "utf-16-be"
    return None


def _separator(text: str) -> str:
    """Return the separator under which most names are known; then that which cuts most evenly."""
    sample = text[:_SAMPLE_LETTERS].splitlines()[:100]

    def merit(separator: str) -> tuple[int, int, int]:
        rows = list(csv.reader(sample, delimiter=separator)) if sample else []
        rows = [row for row in rows if row]
        if not rows:
            return (0, 0, 0)
        widths = [len(row) for row in rows]
        usual = max(set(widths), key=widths.count)
        head = rows[heading_at(rows)]
        known = sum(bool(meaning_of(cell)) for cell in head)
        return (known, widths.count(usual) if usual > 1 else 0, usual)

    try:
        return max(SEPARATORS, key=merit)
    except csv.Error:
        return ","


def _lines(text: str, separator: str, skipped: int) -> tuple[list[Line], list[Problem]]:
    """Return the lines by the number each begins on; a line that is not CSV ends the table."""
    lines: list[Line] = []
    problems: list[Problem] = []
    for entry in numbered_rows(text, separator, 1 + skipped):
        if isinstance(entry, Problem):
            problems.append(entry)
        else:
            number, cells = entry
            lines.append(Line(number, tuple(cells)))
    return lines, problems
