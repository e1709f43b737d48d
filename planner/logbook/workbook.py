"""The log as a workbook (XLSX): a haul table that opens in any spreadsheet and comes back whole."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import datetime
from functools import lru_cache
from pathlib import Path
from typing import Any, Final
from zoneinfo import ZoneInfo

from planner.logbook.columns import COLUMNS, COUNTS, MEASURES, guard_formula
from planner.logbook.errors import LogbookError
from planner.logbook.log import Log
from planner.whole_file import whole_file
from planner.words import say

# Set by the format: what a cell may hold, and how many rows a sheet has.
_MOST_LETTERS: Final = 32_767
_MOST_ROWS: Final = 1_048_576
# Letters that XML cannot hold, or changes, and the format's own way of writing them.
_UNSAFE: Final = re.compile(r"[\x00-\x08\x0b-\x1f\ufffe\uffff]|_(?=x[0-9A-Fa-f]{4}_)")
_ESCAPED: Final = re.compile(r"_x([0-9A-Fa-f]{4})_")


def to_cell_text(text: str) -> str:
    """Return a text as a workbook's cell can hold it; `from_cell_text` takes it back."""
    return _UNSAFE.sub(lambda found: f"_x{ord(found[0]):04X}_", text)


def from_cell_text(text: str) -> str:
    """Return the text that a workbook's cell stands for."""
    return _ESCAPED.sub(lambda found: chr(int(found[1], 16)), text)


def export_workbook(
    log: Log, path: str | Path, zones: Callable[[str], ZoneInfo | None] = lambda _: None
) -> None:
    """Write the log as a workbook of one sheet, whole or not at all.

    Columns as in the haul table; counts and measures are numbers, all else is text: no cell is
    a formula. LogbookError when it cannot be written, or holds what no workbook can.
    """
    from openpyxl import Workbook

    path = Path(path)
    if len(log.hauls) >= _MOST_ROWS:
        raise LogbookError(
            say(
                "{path}: a sheet ends at {most_rows} rows; export the log as CSV.",
                path=path,
                most_rows=_MOST_ROWS,
            )
        )
    unknown = list(dict.fromkeys(name for haul in log.hauls for name in haul.extra))
    zone = lru_cache(maxsize=None)(zones)
    book = Workbook(write_only=True)
    sheet = book.create_sheet(say("Hauls"))
    sheet.freeze_panes = "A2"
    sheet.append([_text(sheet, name, path) for name in (*COLUMNS, *unknown)])
    for haul in log.hauls:
        row: list[Any] = []
        for name in COLUMNS:
            value = getattr(haul, name)
            if value is None or name in COUNTS:
                row.append(value)
            elif name in MEASURES:
                # A workbook keeps fifteen digits of a number; the rare longer one is text.
                exact = float(f"{value:.15g}") == value
                row.append(value if exact else _cell(sheet, repr(value)))
            elif isinstance(value, datetime):
                local = value.astimezone(zone(haul.place) or value.tzinfo)
                row.append(_text(sheet, local.isoformat(), path))
            else:
                row.append(_text(sheet, value, path))
        row += [_text(sheet, haul.extra.get(name, ""), path) for name in unknown]
        sheet.append(row)
    with whole_file(path, LogbookError) as partial:
        book.save(partial)


def _text(sheet: Any, text: str, path: Path) -> Any:
    written = to_cell_text(guard_formula(text))
    if len(written) > _MOST_LETTERS:
        raise LogbookError(
            say(
                '{path}: a text is longer than a cell can hold ("{given}..."); export the log '
                "as CSV.",
                path=path,
                given=text[:30],
            )
        )
    return _cell(sheet, written) if written else None


def _cell(sheet: Any, written: str) -> Any:
    from openpyxl.cell import WriteOnlyCell

    cell = WriteOnlyCell(sheet, value=written)
    cell.data_type = "s"  # text, whatever it begins with
    return cell
