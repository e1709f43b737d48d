"""What stands over a chosen place: where its file is and what can be done with it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.errors import Problem
from planner.sites.book import PlaceEntry
from planner.ui.flow import Flow
from planner.ui.parts import Card, body, button, caution, quiet, refill, scrolled
from planner.ui.places.place_list import kind_text
from planner.ui.theme import SPACE
from planner.words import counted, say

Act = Callable[[], object]


class PlaceHead(QWidget):
    """The kind of a place, the buttons for it, and a line for what came of pressing one."""

    def __init__(
        self, *, open_it: Act, copy_it: Act, edit_it: Act, edit_file: Act, read_again: Act
    ) -> None:
        super().__init__()
        self.kind = quiet()
        self.open = button(say("Open this place"), open_it, say("Show this place in every view"))
        self.copy = button(
            say("Copy to my places"), copy_it, say("Put a copy among your own places")
        )
        self.edit = button(say("Edit"), edit_it, say("Change name, water, spots and more here"))
        self.file = button(
            say("Edit the file"), edit_file, say("Open the place file in your text editor")
        )
        self.again = button(say("Read again"), read_again, say("Read the place file anew"))
        self.said = quiet()
        self.said.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.kind)
        column.addLayout(Flow(self.open, self.copy, self.edit, self.file, self.again))
        column.addWidget(self.said)

    def show_entry(self, entry: PlaceEntry) -> None:
        """Show what kind of place it is, and the buttons that fit."""
        kind = kind_text(entry)
        self.kind.setText(kind if entry.shipped else f"{kind}: {entry.path}")
        self.copy.setVisible(entry.shipped)
        # A sample belongs to the program: its copy is what the user edits.
        self.edit.setVisible(not entry.shipped)
        self.file.setVisible(not entry.shipped)

    def name_open(self, *, opened: bool, readable: bool) -> None:
        """Say whether the place is the one that every view shows, or could be."""
        self.open.setText(say("Open in every view now") if opened else say("Open this place"))
        self.open.setEnabled(readable and not opened)

    def tell(self, text: str) -> None:
        """Say what came of a button; nothing for ""."""
        self.said.setText(text)
        self.said.setVisible(bool(text))


class PlaceProblems(Card):
    """Every problem of a place file that cannot be used: where, what, and what to do."""

    def __init__(self) -> None:
        self._refused, self._problems = caution(), QVBoxLayout()
        self._problems.setContentsMargins(0, SPACE // 2, 0, 0)
        self._problems.setSpacing(SPACE)
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._problems)
        column.addStretch(1)
        super().__init__(
            say("This place cannot be used yet"),
            self._refused,
            body(say("Every problem of the file is listed. Put them right, then read it again.")),
            scrolled(column, say("Problems of the place file")),
        )

    def show_problems(self, file_name: str, problems: Sequence[Problem]) -> None:
        """Show the problems of another file."""
        count = counted(len(problems), "problem")
        self._refused.setText(say("⚠ {problems} in {name}", problems=count, name=file_name))
        # As sentences: in columns, large letters push what to do out of sight.
        refill(self._problems, [body(str(each)) for each in problems])
