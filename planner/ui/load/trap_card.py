"""Where the traps go on the trip, spot by spot, with the way to move them."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QSizePolicy, QVBoxLayout, QWidget

from planner.handouts import TripFacts
from planner.phrasing import Style
from planner.ui.load.kept_column import KeptColumn, line_gap
from planner.ui.load.layout_editor import LayoutEditor
from planner.ui.load.text import layout_lines, water_lines
from planner.ui.parts import Card, body, button, open_at, quiet, scrolled
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say


class SpotLine(QWidget):
    """A spot with its traps, and under it the water and line there."""

    def __init__(self) -> None:
        super().__init__()
        self._traps, self._water = body(), quiet()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addWidget(self._traps)
        column.addWidget(self._water)

    def tell(self, content: tuple[str, str]) -> None:
        """Say where which traps go, and what is needed there."""
        traps, water = content
        self._traps.setText(traps)
        self._water.setText(water)


class TrapCard(Card):
    """The layout of the trip in words, and traps are moved in a dialog; or both in one where
    there is room."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("Where the traps go, in the order of setting"))
        self.bench = bench
        self._shown: tuple[TripFacts, Style] | None = None
        self._roomy = False
        self._editor: LayoutEditor | None = None
        self._spots = KeptColumn(SpotLine, SpotLine.tell)
        self._worth = quiet()
        self.move_traps = button(
            say("Move traps…"), self._move_traps, say("Put traps at other spots")
        )
        self.move_traps.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.column.addLayout(self._spots)
        self.column.addWidget(self._worth)
        self.column.addWidget(self.move_traps)

    @property
    def stops(self) -> list[QWidget]:
        """Where Tab stops, from the top."""
        return [self.move_traps, *([] if self._editor is None else self._editor.stops)]

    def tell(self, facts: TripFacts, style: Style) -> None:
        """Show the layout of a trip; spots that stay keep their lines."""
        self._shown = facts, style
        movable = len(facts.traps.spots) > 1
        edited = movable and self._roomy
        self._spots.fill([] if edited else enumerate(layout_lines(facts, style)))
        self._worth.setText(facts.traps.sentence)
        self._worth.setVisible(bool(facts.traps.sentence) and not edited)
        self.move_traps.setVisible(movable and not edited)
        if edited:
            self._made_editor().tell_waters(water_lines(facts, style))
        if self._editor is not None:
            self._editor.setVisible(edited)
        self.show()

    def make_room(self, roomy: bool) -> None:
        """Have the traps moved here rather than in a dialog, or no longer."""
        self._roomy = roomy
        for column in (self.column, self._spots):
            column.setSpacing(line_gap(roomy))
        if self._shown is not None:
            self.tell(*self._shown)

    def _made_editor(self) -> LayoutEditor:
        if self._editor is None:
            self._editor = LayoutEditor(self.bench, roomy=True)
            self.column.addWidget(self._editor)
        return self._editor

    def _move_traps(self) -> None:
        dialog = QDialog(self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(say("Where the traps go"))
        column, inside = QVBoxLayout(dialog), QVBoxLayout()
        editor = LayoutEditor(self.bench)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addWidget(editor)
        inside.addStretch(1)
        column.addWidget(scrolled(inside, say("Where the traps go")))
        done = button(say("Done"), dialog.accept)
        column.addWidget(done, alignment=Qt.AlignmentFlag.AlignRight)
        QWidget.setTabOrder(editor.log, done)
        open_at(dialog, 520, 560)
        dialog.open()
