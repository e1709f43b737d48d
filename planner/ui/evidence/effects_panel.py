"""What moves the share of light crabs, how much, and whether that is worth caring about."""

from __future__ import annotations

from functools import cached_property
from typing import Final

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSpinBox, QVBoxLayout, QWidget

from planner.molt.evidence_types import Evidence
from planner.ui.evidence.curves_row import CurvesRow
from planner.ui.evidence.evidence_rows import CAUSE_WORDS, EFFECT_COLUMNS, effect_rows, effect_text
from planner.ui.evidence.row_chart import IntervalRow, RowChart, room_for_rows
from planner.ui.parts import Card, Halves, body, quiet, refill, scrolling
from planner.ui.state import ViewState
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.words import say

_CURVES_LINES: Final = 18  # of letters: lower, there would be more axis than curve


class EffectsPanel(QWidget):
    """Effects on a common axis against the user's own difference, and a sentence for each."""

    def __init__(self, state: ViewState) -> None:
        super().__init__()
        self.state = state
        self.evidence: Evidence | None = None
        self._curves_of: Evidence | None = None  # what the curves show
        self.care = QSpinBox()
        self.care.setRange(1, 50)
        self.care.setValue(state.care_points)
        self.care.setSuffix(say(" of 100"))
        self.care.setAccessibleName(say("Worth caring about, light crabs of 100"))
        self.care.setToolTip(say("The smallest difference for which you would choose another day"))
        self.care.valueChanged.connect(lambda points: state.change(care_points=points))
        label = QLabel(say("A difference &worth caring about, in light crabs"))
        label.setBuddy(self.care)
        controls = self._controls = QHBoxLayout()
        controls.addWidget(label)
        controls.addWidget(self.care)
        controls.addStretch(1)
        self.chart = RowChart(say("What moves the share of light crabs"))
        self.rows = RowsModel(EFFECT_COLUMNS, numbers=(1, 2, 3, 4, 5))
        table = rows_table(self.rows, say("What moves the share of light crabs"), wide=0)
        column = scrolling(self, say("What matters"))
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addLayout(controls)
        left, right = QVBoxLayout(), QVBoxLayout()
        self._halves = Halves(left, right, (3, 2), letters=200)
        column.addWidget(self._halves)
        rest = QWidget()  # takes what is left of a page, with curves or without
        column.addWidget(rest, 1)
        self._below = QVBoxLayout(rest)
        self._below.setContentsMargins(0, 0, 0, 0)
        left.addWidget(
            Card(
                say("From the best day to the worst"),
                ChartWithTable(self.chart, table),
                quiet(
                    say("Dot: best estimate. Bar: its 80% interval. Dashed: worth caring about.")
                ),
            )
        )
        said = Card(say("In words"))
        right.addWidget(said)
        self.sentences = QVBoxLayout()
        said.column.addLayout(self.sentences)
        for half in (left, right):
            half.addStretch(1)
        state.listen(self._state_changed)

    @cached_property
    def curves(self) -> CurvesRow:
        """When crabs are light, made once a page has the height for it."""
        made = CurvesRow()
        self._below.addWidget(made)
        return made

    def show_evidence(self, evidence: Evidence) -> None:
        """Show what another log says."""
        self.evidence = evidence
        care = self.state.care_points
        rows = [
            IntervalRow(
                CAUSE_WORDS[effect.cause],
                100 * effect.swing.mean,
                100 * effect.swing.low,
                100 * effect.swing.high,
            )
            for effect in evidence.effects
        ]
        self.chart.show_rows(
            rows, say("swing in light crabs of 100"), care, say("worth caring about")
        )
        self.rows.show(effect_rows(evidence, care))
        refill(self.sentences, [body(effect_text(each, care)) for each in evidence.effects])
        self._share_height()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share_height()

    def _share_height(self) -> None:
        """Let the curves have what a high page leaves; on a lower one the rows have it."""
        self.chart.give_room(0)
        taken = self._controls.sizeHint().height() + self._halves.heightForWidth(self.width())
        room = self.height() - taken
        with_curves = room >= _CURVES_LINES * self.fontMetrics().lineSpacing()
        if not with_curves:
            self.chart.give_room(room_for_rows(self.height()))
        elif self.evidence is not None and self._curves_of is not self.evidence:
            self._curves_of = self.evidence
            self.curves.show_evidence(self.evidence)
        if self._curves_of is not None:
            self.curves.setVisible(with_curves)

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "care_points" in changed:
            self.care.setValue(self.state.care_points)
            if self.evidence is not None:
                self.show_evidence(self.evidence)
