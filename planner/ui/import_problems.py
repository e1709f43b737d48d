"""The dialog that lists everything wrong with a haul table, and offers the good rows."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPlainTextEdit, QVBoxLayout, QWidget

from planner.logbook import LogError
from planner.ui.parts import body


class ImportProblems(QDialog):
    """Nothing was taken in; take_good: emitted when the user wants the good rows anyway."""

    take_good = Signal()

    def __init__(self, error: LogError, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle("The table was not taken in")
        self.resize(640, 420)
        count = len(error.problems)
        self.list = QPlainTextEdit("\n".join(str(problem) for problem in error.problems))
        self.list.setReadOnly(True)
        self.list.setAccessibleName("Every problem of the table")
        buttons = QDialogButtonBox()
        # A problem of the file itself, or of its header, leaves no good row.
        if any(problem.where.startswith("line ") for problem in error.problems):
            good = buttons.addButton(
                "Take the good rows only", QDialogButtonBox.ButtonRole.AcceptRole
            )
            good.clicked.connect(self.take_good)
        buttons.addButton("Take nothing", QDialogButtonBox.ButtonRole.RejectRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(
            body(
                f"{error.source} has {count} {'problem' if count == 1 else 'problems'}, and "
                "nothing of it was taken into the log. Mend the table and import it again: "
                "hauls that are in the log already are not doubled."
            )
        )
        column.addWidget(self.list, 1)
        column.addWidget(buttons)
