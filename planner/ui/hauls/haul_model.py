"""The hauls of one trip as a table model: typed cells in, quiet dashes for what is not recorded."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QObject,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor

from planner.logbook import Crab, Haul
from planner.ui import theme
from planner.ui.hauls.haul_cells import COLUMNS, NOT_RECORDED, Clock, Column, heading, written
from planner.ui.hauls.haul_rows import Refused, nudged, typed
from planner.ui.tables import NOWHERE, Index, alignment
from planner.words import say

# A table asks for eight roles of every cell; to look up their names in Qt each time would be felt.
_DISPLAY, _EDIT = Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole
_SIDE, _INK = Qt.ItemDataRole.TextAlignmentRole, Qt.ItemDataRole.ForegroundRole
_TOLD = Qt.ItemDataRole.AccessibleTextRole
_ROLES = frozenset((_DISPLAY, _EDIT, _SIDE, _INK, _TOLD))
_READ_ONLY = (
    Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemNeverHasChildren
)
_EDITABLE = _READ_ONLY | Qt.ItemFlag.ItemIsEditable


class HaulModel(QAbstractTableModel):
    """Holds the hauls as they are on screen; whoever follows `changed` saves them.

    changed: emitted with what changed in words, such as "keepers of trap A3", after the user
    changed cells. refused: emitted with a sentence when a cell was not taken.
    """

    changed = Signal(str)
    refused = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.hauls: tuple[Haul, ...] = ()
        self.today = date.min
        self.editable = False
        self._clock: Clock | None = None
        self._written: dict[int, tuple[str, ...]] = {}  # rows in words, from when they are asked

    def show(self, hauls: Sequence[Haul], clock: Clock, today: date, editable: bool) -> None:
        """Show the hauls of a trip; the chosen cell stays where the rows stay as many.

        What is shown already is left alone, and with it what is being typed there.
        """
        before, as_many = self.hauls, len(hauls) == len(self.hauls)
        alike = (clock, editable) == (self._clock, self.editable)
        if not as_many:
            self.beginResetModel()
        self.today, self.editable, self._clock = today, editable, clock
        if not alike:
            self._written.clear()
        self._have(tuple(hauls))
        if not as_many:
            self.endResetModel()
        else:
            rows = [at for at, haul in enumerate(hauls) if not alike or haul != before[at]]
            self._tell(rows, range(len(COLUMNS)))
        if not alike:
            self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(COLUMNS) - 1)

    def _have(self, hauls: tuple[Haul, ...]) -> None:
        """Hold these hauls; what differs is put into words anew."""
        before, self.hauls = self.hauls, hauls
        self._written = {
            at: words
            for at, words in self._written.items()
            if at < len(hauls) and hauls[at] == before[at]
        }

    # -- reading -----------------------------------------------------------------------------

    def rowCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.hauls)

    def columnCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> Any:
        if orientation != Qt.Orientation.Horizontal or self._clock is None:
            return None
        column = COLUMNS[section]
        if role == _DISPLAY:
            return heading(column, self._clock)
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.help
        return _alignment(column) if role == _SIDE else None

    def data(self, index: Index, role: int = _DISPLAY) -> Any:
        if role not in _ROLES or self._clock is None or not index.isValid():
            return None
        row, at = index.row(), index.column()
        if role == _SIDE:
            return _alignment(COLUMNS[at])
        text = self._words(row)[at]
        if role == _DISPLAY:
            return text or NOT_RECORDED
        if role == _EDIT:
            return text
        if role == _INK:
            return None if text else QColor(theme.current().quiet)
        return say(
            "{heading} of trap {trap}: {given}",
            heading=COLUMNS[at].heading,
            trap=self.hauls[row].trap,
            given=text or say("not recorded"),
        )

    def _words(self, row: int) -> tuple[str, ...]:
        """Return what a person would type for each cell of a row."""
        found = self._written.get(row)
        if found is None:
            assert self._clock is not None
            found = tuple(written(self.hauls[row], column, self._clock) for column in COLUMNS)
            self._written[row] = found
        return found

    def flags(self, index: Index) -> Qt.ItemFlag:
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        return _EDITABLE if self.editable else _READ_ONLY

    # -- changing ----------------------------------------------------------------------------

    def setData(self, index: Index, value: Any, role: int = _EDIT) -> bool:
        if role != _EDIT:
            return False
        return self.type_into([(index.row(), index.column())], str(value))

    def type_into(self, cells: Sequence[tuple[int, int]], text: str) -> bool:
        """Give cells (row, column) a text, all of them or none; one change for all."""
        assert self._clock is not None
        hauls = self.hauls
        try:
            for row, column in cells:
                hauls = typed(hauls, row, {COLUMNS[column]: text}, self._clock, self.today)
        except Refused as refusal:
            self.refused.emit(str(refusal))
            return False
        return self._take(hauls, cells)

    def paste(self, first: tuple[int, int], block: Sequence[Sequence[str]]) -> bool:
        """Give the cells from one on, right and down, the texts of a block, all of them or none."""
        assert self._clock is not None
        row, column = first
        height, width = len(block), max(map(len, block))
        if row + height > len(self.hauls) or column + width > len(COLUMNS):
            self.refused.emit(
                say(
                    "Not pasted. From here the table has no room for {height} by {width} cells: "
                    "add traps first, or choose another cell.",
                    height=height,
                    width=width,
                )
            )
            return False
        hauls = self.hauls
        try:
            for at, line in enumerate(block, start=row):
                texts = dict(zip(COLUMNS[column:], line, strict=False))
                hauls = typed(hauls, at, texts, self._clock, self.today)
        except Refused as refusal:
            self.refused.emit(str(refusal))
            return False
        cells = [(row + i, column + j) for i, line in enumerate(block) for j in range(len(line))]
        return self._take(hauls, cells)

    def nudge(self, cells: Sequence[tuple[int, int]], steps: int) -> bool:
        """Move the times among the cells by steps of five minutes, all of them or none."""
        times = [cell for cell in cells if COLUMNS[cell[1]].kind == "time"]
        hauls = self.hauls
        try:
            for row, column in times:
                hauls = nudged(hauls, row, COLUMNS[column], steps)
        except Refused as refusal:
            self.refused.emit(str(refusal))
            return False
        return self._take(hauls, times)

    def copy_down(self, cells: Sequence[tuple[int, int]]) -> bool:
        """Give each cell what the one above it holds, from the top down."""
        hauls = list(self.hauls)
        below = sorted(cell for cell in cells if cell[0] > 0)
        try:
            for row, column in below:
                assert self._clock is not None
                text = written(hauls[row - 1], COLUMNS[column], self._clock)
                hauls = list(typed(hauls, row, {COLUMNS[column]: text}, self._clock, self.today))
        except Refused as refusal:
            self.refused.emit(str(refusal))
            return False
        return self._take(tuple(hauls), below)

    def set_crabs(self, row: int, crabs: tuple[Crab, ...]) -> None:
        """Give a haul its single crabs."""
        made = replace(self.hauls[row], crabs=crabs)
        self._have((*self.hauls[:row], made, *self.hauls[row + 1 :]))

    def _take(self, hauls: tuple[Haul, ...], cells: Sequence[tuple[int, int]]) -> bool:
        if not self.editable or not cells:
            return False
        if hauls != self.hauls:
            self._have(hauls)
            self._tell(*zip(*cells, strict=True))
            self.changed.emit(self._named(cells))
        return True

    def _named(self, cells: Sequence[tuple[int, int]]) -> str:
        """Return what a change of these cells is called."""
        headings = {COLUMNS[column].heading.lower() for _, column in cells}
        traps = {self.hauls[row].trap for row, _ in cells}
        what = headings.pop() if len(headings) == 1 else say("{cells} cells", cells=len(cells))
        return say(
            "{what} of {words}",
            what=what,
            words=say("trap {pop}", pop=traps.pop())
            if len(traps) == 1
            else say("{traps} traps", traps=len(traps)),
        )

    def _tell(self, rows: Sequence[int], columns: Sequence[int]) -> None:
        if rows:
            self.dataChanged.emit(
                self.index(min(rows), min(columns)), self.index(max(rows), max(columns))
            )


def _alignment(column: Column) -> Qt.AlignmentFlag:
    return alignment(column.kind in ("count", "depth"))
