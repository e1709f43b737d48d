"""Another whole log before it is taken in: what it has more, and what it has otherwise."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from planner.logbook.merging import Merged
from planner.logbook.reading import Zones
from planner.ui.hauls.merge_text import DIFFERENCE_COLUMNS, difference_rows, merge_found
from planner.ui.parts import body, button, caution, enter_presses_nothing, open_at
from planner.ui.tables import RowsModel, rows_table
from planner.words import say


class MergeDialog(QDialog):
    """Accepted when what the other log has more is to be taken in."""

    def __init__(self, source: str, merged: Merged, zones: Zones, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Import a whole log"))
        self.found = body(merge_found(source, merged))
        self.unlike = caution(
            say(
                "Both logs hold what is below, but not alike. It stays as it is here. To have the "
                "file's instead, correct it here, or put the row into the bin and import again."
            )
        )
        for words in (self.found, self.unlike):
            words.setMinimumWidth(560)  # or a wrapping label asks for the height of a narrow column
        rows = RowsModel(DIFFERENCE_COLUMNS, numbers=(3, 4), parent=self)
        rows.show(difference_rows(merged.differences, zones))
        self.table = rows_table(rows, say("What both logs hold and not alike"), wide=2)
        for part in (self.unlike, self.table):
            part.setVisible(bool(merged.differences))
        self.take = button(say("Take in the rest"), self.accept)
        if not merged.differences:
            self.take.setText(say("Take it in"))
        self.take.setEnabled(merged.adds)
        self.leave = button(say("Take nothing"), self.reject)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(self.take)
        row.addWidget(self.leave)
        column = QVBoxLayout(self)
        column.addWidget(self.found)
        column.addWidget(self.unlike)
        column.addWidget(self.table, 1)
        column.addStretch(0 if merged.differences else 1)
        column.addLayout(row)
        open_at(self, 640, 420 if merged.differences else 140)
        enter_presses_nothing(self)
