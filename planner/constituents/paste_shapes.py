"""Pastes of another shape than a line a constituent, turned into that; used by `paste_lines`."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any, Final

from planner.constituents.names import known

_NUMBER: Final = re.compile(r"[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)")


def one_a_line(text: str) -> str:
    """Return a table with a line a constituent; other text as it is.

    Understands the JSON answers of agencies' services, and tables whose constituents stand in
    a row of their own over amplitudes and lags.
    """
    return _of_json(text) or _upright(text) or text


def _of_json(text: str) -> str | None:
    if text.lstrip()[:1] not in ("{", "["):
        return None
    try:
        found = json.loads(text)
    except (ValueError, RecursionError):
        return None
    for entries in _lists(found):
        first = entries[0]
        name = next((key for key in first if known(str(first[key])) is not None), None)
        if name is None:
            continue
        keys = [key for key in first if key != name and _NUMBER.fullmatch(str(first[key]))]
        rows = [[str(each.get(key, "")) for key in (name, *keys)] for each in entries]
        units = found.get("units", "") if isinstance(found, dict) else ""
        heads = ["name", *(key.replace("_", " ") for key in keys)]
        return "\n".join([f"units: {units}", *("\t".join(row) for row in (heads, *rows))])
    return None


def _lists(found: Any) -> Iterator[list[dict[str, Any]]]:
    """Yield the lists of tables anywhere in what JSON held."""
    if isinstance(found, list) and found and all(isinstance(each, dict) for each in found):
        yield found
    inside = found.values() if isinstance(found, dict) else found
    for each in inside if isinstance(found, (dict, list)) else ():
        yield from _lists(each)


def _upright(text: str) -> str | None:
    rows = [_cells(line) for line in text.splitlines()]
    for names in rows:
        called = [cell for cell in names if known(cell) is not None]
        if len(called) < 2 or any(_NUMBER.fullmatch(cell) for cell in names):
            continue
        figures = [row for row in rows if len(row) == len(names) and _mostly_numbers(row)]
        if len(figures) >= 2:
            turned = zip(names, *figures, strict=True)
            return "\n".join("\t".join(column) for column in turned)
    return None


def _cells(line: str) -> list[str]:
    parts = re.split(
        r"[\t;|]" if re.search(r"[\t;|]", line) else r"\s{2,}", line.strip().strip("|")
    )
    return [cell.strip() for cell in parts]


def _mostly_numbers(row: list[str]) -> bool:
    # The first cell may say what the row holds.
    return len(row) > 2 and all(_NUMBER.fullmatch(cell) for cell in row[1:])
