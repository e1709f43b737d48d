"""The crabs of one haul that were looked at one by one: a table to type in."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    Qt,
    Signal,
)
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from planner.logbook import Crab, Haul
from planner.logbook.columns import CellError
from planner.ui.hauls.crab_cells import (
    CRAB_COLUMNS,
    crab_as_above,
    crab_text,
    crab_with,
    says_something,
)
from planner.ui.hauls.typing_table import TypingTable
from planner.ui.parts import caution, enter_presses_nothing, open_at, quiet
from planner.ui.tables import NOWHERE, Index
from planner.words import say


class CrabsDialog(QDialog):
    """Edits the crabs of a haul; changed: emitted with all of them and what changed, by cell."""

    changed = Signal(object, str)

    def __init__(self, haul: Haul, editable: bool, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(
            say("Single crabs of trap {trap}", trap=haul.trap) if haul.trap else say("Single crabs")
        )
        open_at(self, 960, 420)
        self.model = CrabModel(haul.crabs, editable, self)
        self.table = TypingTable(self.model, say("Single crabs, one row each"), self._words)
        self.refusal = caution()
        self.refusal.setAccessibleName(say("Why a cell was not saved"))
        self.refusal.hide()
        self.model.refused.connect(self._refuse)
        self.model.changed.connect(self._tell)
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        close.rejected.connect(self.reject)
        words = quiet(
            say(
                "Whatever you looked at; the rest stays empty. Words may be cut short: pap for "
                "papershell. An empty row at the end takes the next crab; Ctrl+Delete takes one "
                "out. Where the trap has no count of judged crabs, those graded here are counted."
            )
        )
        words.setMinimumWidth(600)
        column = QVBoxLayout(self)
        column.addWidget(words)
        column.addWidget(self.table, 1)
        column.addWidget(self.refusal)
        column.addWidget(close)
        enter_presses_nothing(self)
        self.table.setCurrentIndex(self.model.index(self.model.rowCount() - 1, 0))
        self.table.remove_row.connect(self.model.remove)
        self.table.setFocus()

    def _words(self, column: int) -> Sequence[str]:
        return CRAB_COLUMNS[column].words

    def _refuse(self, sentence: str) -> None:
        self.refusal.setText(f"⚠ {sentence}")
        self.refusal.show()

    def _tell(self, what: str) -> None:
        self.refusal.hide()
        self.changed.emit(self.model.kept(), what)


class CrabModel(QAbstractTableModel):
    """The crabs and, where they may be edited, one empty row for the next."""

    changed = Signal(str)
    refused = Signal(str)

    def __init__(self, crabs: tuple[Crab, ...], editable: bool, parent: QObject) -> None:
        super().__init__(parent)
        self.editable = editable
        self.crabs = list(crabs)
        self._add_empty()

    def kept(self) -> tuple[Crab, ...]:
        """Return the crabs that say something."""
        return tuple(crab for crab in self.crabs if says_something(crab))

    def _add_empty(self) -> None:
        if self.editable and (not self.crabs or says_something(self.crabs[-1])):
            at = len(self.crabs)
            self.beginInsertRows(QModelIndex(), at, at)
            self.crabs.append(crab_as_above(self.crabs[-1] if self.crabs else None))
            self.endInsertRows()

    def remove(self, row: int) -> None:
        """Take a crab out."""
        if self.editable and 0 <= row < len(self.crabs):
            self.beginRemoveRows(QModelIndex(), row, row)
            del self.crabs[row]
            self.endRemoveRows()
            self._add_empty()
            self.changed.emit(say("removal of a crab"))

    def rowCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.crabs)

    def columnCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(CRAB_COLUMNS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        if orientation == Qt.Orientation.Horizontal:
            return CRAB_COLUMNS[section].heading
        return str(section + 1)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        column = CRAB_COLUMNS[index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return crab_text(self.crabs[index.row()], column)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            text = crab_text(self.crabs[index.row()], column) or say("not recorded")
            return say(
                "{heading} of crab {row}: {given}",
                heading=column.heading,
                row=index.row() + 1,
                given=text,
            )
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        flags = super().flags(index)
        return flags | Qt.ItemFlag.ItemIsEditable if self.editable else flags

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role != Qt.ItemDataRole.EditRole:
            return False
        row, column = index.row(), CRAB_COLUMNS[index.column()]
        try:
            made = crab_with(self.crabs[row], column, str(value))
        except CellError as error:
            self.refused.emit(
                say(
                    "Not saved. {value} {what}: {remedy}.",
                    value=value,
                    what=error.what,
                    remedy=error.remedy,
                )
            )
            return False
        if made != self.crabs[row]:
            self.crabs[row] = made
            self.dataChanged.emit(index, index)
            self._add_empty()
            self.changed.emit(
                say(
                    "{split} of crab {row}",
                    split=column.heading.split(" (")[0].lower(),
                    row=row + 1,
                )
            )
        return True
