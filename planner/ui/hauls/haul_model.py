"""The hauls of one trip as a table model: typed cells in, quiet dashes for what is not recorded."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor

from planner.logbook import Crab, Haul
from planner.ui import theme
from planner.ui.hauls.haul_cells import COLUMNS, Clock, Column, heading, shown, written
from planner.ui.hauls.haul_rows import Refused, nudged, typed
from planner.words import say

Index = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


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

    def show(self, hauls: Sequence[Haul], clock: Clock, today: date, editable: bool) -> None:
        """Show the hauls of a trip; the chosen cell stays where the rows stay as many."""
        as_many = len(hauls) == len(self.hauls)
        if not as_many:
            self.beginResetModel()
        self.hauls, self.today, self.editable, self._clock = tuple(hauls), today, editable, clock
        if not as_many:
            self.endResetModel()
        else:
            self._tell(range(len(self.hauls)), range(len(COLUMNS)))
        self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(COLUMNS) - 1)

    # -- reading -----------------------------------------------------------------------------

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.hauls)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal or self._clock is None:
            return None
        column = COLUMNS[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return heading(column, self._clock)
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.help
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _alignment(column)
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid() or self._clock is None:
            return None
        haul, column = self.hauls[index.row()], COLUMNS[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return shown(haul, column, self._clock)
        if role == Qt.ItemDataRole.EditRole:
            return written(haul, column, self._clock)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _alignment(column)
        if role == Qt.ItemDataRole.ForegroundRole and not written(haul, column, self._clock):
            return QColor(theme.current().quiet)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            text = written(haul, column, self._clock) or say("not recorded")
            return say(
                "{heading} of trap {trap}: {given}",
                heading=column.heading,
                trap=haul.trap,
                given=text,
            )
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        flags = super().flags(index)
        return flags | Qt.ItemFlag.ItemIsEditable if self.editable else flags

    # -- changing ----------------------------------------------------------------------------

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role != Qt.ItemDataRole.EditRole:
            return False
        return self.type_into([(index.row(), index.column())], str(value))

    def type_into(self, cells: Sequence[tuple[int, int]], text: str) -> bool:
        """Give cells (row, column) a text, all of them or none; one change for all."""
        assert self._clock is not None
        hauls = self.hauls
        try:
            for row, column in cells:
                hauls = typed(hauls, row, COLUMNS[column], text, self._clock, self.today)
        except Refused as refusal:
            self.refused.emit(str(refusal))
            return False
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
                hauls = list(typed(hauls, row, COLUMNS[column], text, self._clock, self.today))
        except Refused as refusal:
            self.refused.emit(str(refusal))
            return False
        return self._take(tuple(hauls), below)

    def set_crabs(self, row: int, crabs: tuple[Crab, ...]) -> None:
        """Give a haul its single crabs."""
        made = replace(self.hauls[row], crabs=crabs)
        self.hauls = (*self.hauls[:row], made, *self.hauls[row + 1 :])

    def _take(self, hauls: tuple[Haul, ...], cells: Sequence[tuple[int, int]]) -> bool:
        if not self.editable or not cells:
            return False
        if hauls != self.hauls:
            self.hauls = hauls
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
        if self.hauls:
            self.dataChanged.emit(
                self.index(min(rows), min(columns)), self.index(max(rows), max(columns))
            )


def _alignment(column: Column) -> Qt.AlignmentFlag:
    return _RIGHT if column.kind in ("count", "depth") else _LEFT
