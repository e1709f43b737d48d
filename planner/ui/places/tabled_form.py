"""Differences tabled by time of day and by height, as for secondary ports: two columns each."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFormLayout, QGridLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from planner.sites.editing import number_or_text
from planner.ui.parts import body, quiet
from planner.ui.places.edit_section import text_of
from planner.ui.places.kept_fields import Kept, clock_of
from planner.words import say

KINDS: Final = {"high": say("High water"), "low": say("Low water")}
_SIDES: Final = (0, 1)


@dataclass(frozen=True)
class _Grid:
    """One kind of table: its name in the file, its two keys, and the words around them."""

    name: str
    one: str
    words: str
    keys: tuple[str, str]
    heads: tuple[str, str]
    examples: tuple[tuple[str, str], tuple[str, str]]


_GRIDS: Final = (
    _Grid(
        "times",
        say("time"),
        say("Time: by the clock time of high or low water at the reference place"),
        ("at", "minutes"),
        (say("there at"), say("minutes later")),
        (("00:00", "35"), ("06:00", "23")),
    ),
    _Grid(
        "heights",
        say("height"),
        say("Height: by the height of that water there, at springs and at neaps"),
        ("there", "add"),
        (say("height there"), say("plus")),
        (("4.2", "1.1"), ("3.4", "0.8")),
    ),
)
_Key = tuple[str, int, str]  # such as ("high_times", 0, "minutes")


class TabledForm(QWidget):
    """Fields of [water.offsets.tabled]; changed: after every change by the user."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.fields: dict[_Key, QLineEdit] = {}
        self._heads: dict[str, list[QLabel]] = {}
        self._kept = Kept()
        self.clock = self._field(say("Clock of the table"), say("UTC, or such as UTC+01:00"))
        form = QFormLayout()
        form.addRow(say("Clock of the &table, never summer time"), self.clock)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(form)
        for grid in _GRIDS:
            column.addWidget(body(grid.words))
            column.addLayout(self._make(grid))
        column.addWidget(
            quiet(
                say(
                    "Each time holds twelve hours later too. Between the two columns a "
                    "difference goes in a straight line. Earlier and lower are written with a "
                    "minus."
                )
            )
        )

    def _make(self, grid: _Grid) -> QGridLayout:
        made = QGridLayout()
        for side in _SIDES:
            for at, (key, head) in enumerate(zip(grid.keys, grid.heads, strict=True)):
                label = quiet(head)
                self._heads.setdefault(key, []).append(label)
                made.addWidget(label, 0, 1 + 2 * side + at)
        for row, (kind, water) in enumerate(KINDS.items(), start=1):
            made.addWidget(QLabel(water), row, 0)
            for side in _SIDES:
                for at, (key, head) in enumerate(zip(grid.keys, grid.heads, strict=True)):
                    name = say(
                        "{water}, column {column}: {head}", water=water, column=side + 1, head=head
                    )
                    field = self._field(name, grid.examples[side][at])
                    self.fields[f"{kind}_{grid.name}", side, key] = field
                    made.addWidget(field, row, 1 + 2 * side + at)
        return made

    def _field(self, name: str, example: str) -> QLineEdit:
        field = QLineEdit()
        field.setAccessibleName(name)
        field.setPlaceholderText(example)
        field.textEdited.connect(lambda _: self.changed.emit())
        return field

    def show_unit(self, unit: str) -> None:
        """Name the unit of heights."""
        heights = _GRIDS[1]
        for key, head in zip(heights.keys, heights.heads, strict=True):
            for label in self._heads[key]:
                label.setText(f"{head}, {unit}")

    def show_table(self, table: Mapping[str, Any]) -> None:
        """Fill the fields from [water.offsets.tabled]."""
        self.clock.setText(text_of(table.get("clock")))
        for key, field in self.fields.items():
            written = _column_of(table, key).get(key[2])
            field.setText(clock_of(written) if key[2] == "at" else text_of(written))
            self._kept.show(_path(key), written, field.text())

    def table(self) -> dict[str, Any]:
        """Return [water.offsets.tabled] as the fields say; what is empty is left out."""
        found: dict[str, Any] = {"clock": self.clock.text().strip() or None}
        for name in dict.fromkeys(name for name, _, _ in self.fields):
            columns: list[dict[str, Any]] = [{}, {}]
            for key, field in self.fields.items():
                if key[0] == name:
                    columns[key[1]][key[2]] = self._value(key, field.text())
            some = any(value is not None for column in columns for value in column.values())
            found[name] = columns if some else None
        return found

    def _value(self, key: _Key, text: str) -> Any:
        meant = (text.strip() or None) if key[2] == "at" else number_or_text(text)
        return self._kept.value(_path(key), text, meant)


def _column_of(table: Mapping[str, Any], key: _Key) -> Mapping[str, Any]:
    columns = table.get(key[0])
    inside = columns[key[1]] if isinstance(columns, list) and len(columns) > key[1] else None
    return inside if isinstance(inside, Mapping) else {}


def _path(key: _Key) -> tuple[str, ...]:
    return (key[0], str(key[1]), key[2])


def words_of_field(where: str) -> str | None:
    """Return a field of [water.offsets.tabled] by the words beside it, None for another."""
    _, is_tabled, inner = where.partition("water.offsets.tabled")
    if not is_tabled:
        return None
    for kind, water in KINDS.items():
        for grid in _GRIDS:
            for side in _SIDES:
                for key, head in zip(grid.keys, grid.heads, strict=True):
                    if inner == f".{kind}_{grid.name}[{side + 1}].{key}":
                        return say(
                            "{water}, {one} in column {column}, {head}",
                            water=water,
                            one=grid.one,
                            column=side + 1,
                            head=head,
                        )
            if inner.startswith(f".{kind}_{grid.name}"):
                return f"{water}, {grid.one}"
    return say("Clock of the table") if inner == ".clock" else say("Differences")
