"""Fields of a place file that go back as they were written unless the user changes them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, time
from typing import Any

from planner.sites.editing import FieldPath

_Seen = Any  # what a field shows: a text, a set of days, rows


class Kept:
    """What stood in the file and what was shown of it.

    A time may be written in several ways and an empty list may stand there: opening a place
    and changing nothing must change nothing.
    """

    def __init__(self) -> None:
        self._written: dict[FieldPath, Any] = {}
        self._shown: dict[FieldPath, _Seen] = {}

    def show(self, path: FieldPath, written: Any, shown: _Seen) -> None:
        """Remember what is written at a path and what a field now shows of it."""
        self._written[path], self._shown[path] = written, shown

    def value(self, path: FieldPath, shown: _Seen, meant: Any) -> Any:
        """Return what was written while the field shows the same, else what it now means."""
        return self._written[path] if shown == self._shown.get(path) else meant


def date_or_text(text: str) -> date | str | None:
    """Return the date that was typed; None for nothing, the text itself for anything else."""
    plain = text.strip()
    try:
        return date.fromisoformat(plain)
    except ValueError:
        return plain or None


def dates_or_texts(text: str) -> list[date | str] | None:
    """Return the dates in a list typed with commas, spaces or lines between them."""
    words = text.replace(",", " ").replace(";", " ").split()
    return [found for word in words if (found := date_or_text(word)) is not None] or None


def dates_text(dates: Any) -> str:
    """Return dates as they stand in a field."""
    return ", ".join(str(each) for each in dates) if isinstance(dates, Sequence) else ""


def clock_of(value: Any) -> str:
    """Return a time of day as it stands in a field."""
    return f"{value:%H:%M}" if isinstance(value, time) else str(value or "")


def rows_of(tables: Any, keys: Sequence[str]) -> list[tuple[str, ...]]:
    """Return tables of a file as rows of text."""
    found = tables if isinstance(tables, list) else []
    return [tuple(_cell(row.get(key)) for key in keys) for row in found if isinstance(row, Mapping)]


def _cell(value: Any) -> str:
    return ", ".join(map(str, value)) if isinstance(value, list) else str(value or "")
