"""Two plans side by side."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QGridLayout,
    QLabel,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from planner.phrasing import day_text
from planner.ui.parts import body, button, heading, open_at, quiet
from planner.ui.strip.days import plan_name
from planner.ui.theme import SPACE
from planner.ui.workbench import OWN, Workbench
from planner.words import say

_LEAST_PX = 200  # of a column
_SIDES = (say("First plan"), say("Second plan"))


class CompareDialog(QDialog):
    """Any two of the plans, the chosen one first; it stays open while others are tried."""

    def __init__(self, bench: Workbench, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench, self.state = bench, bench.state
        self.setWindowTitle(say("Compare two plans"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.boxes = (QComboBox(), QComboBox())
        self.sentence = body()
        self.sentence.setMinimumWidth(2 * _LEAST_PX)
        self._cells: list[QLabel] = []
        self.grid = QGridLayout()
        self.grid.setHorizontalSpacing(SPACE * 2)
        self.grid.setVerticalSpacing(SPACE // 2)
        self.grid.setColumnStretch(1, 1)
        self.grid.setColumnStretch(2, 1)
        bold = quiet(say("In bold: what differs"))
        bold.setWordWrap(False)
        self.grid.addWidget(bold, 0, 0)
        for side, (box, name) in enumerate(zip(self.boxes, _SIDES, strict=True)):
            box.setAccessibleName(name)
            box.activated.connect(self._show)
            self.grid.addWidget(box, 0, side + 1)
        column = QVBoxLayout(self)
        column.addLayout(self.grid)
        column.addWidget(self.sentence)
        column.addStretch(1)
        column.addWidget(button(say("Close"), self.accept), alignment=Qt.AlignmentFlag.AlignRight)
        open_at(self, 640, 340)
        bench.plans_changed.connect(self.refresh)
        self.state.listen(self._state_changed)
        self.finished.connect(lambda _: self.state.forget(self._state_changed))
        self.refresh()

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "plan" in changed and self.state.plan == OWN:
            self.refresh()

    def refresh(self) -> None:
        """Offer the plans that there are now; the chosen one and the best other are shown."""
        site = self.bench.site
        plans = self.bench.every_plan if site is not None else ()
        kept = [box.currentData() for box in self.boxes]
        chosen = self.state.plan
        others = [plan.rank for plan in plans if plan.rank != chosen]
        usual = (chosen, next((rank for rank in others if rank != OWN), None))
        for box, before, first in zip(self.boxes, kept, usual, strict=True):
            box.clear()
            for plan in plans:
                day = day_text(plan.set_at.astimezone(site.zone if site else None).date())
                box.addItem(f"{plan_name(plan.rank).capitalize()}, {day}", plan.rank)
            wanted = box.findData(before)
            box.setCurrentIndex(wanted if wanted >= 0 else box.findData(first))
        self._show()

    def _show(self) -> None:
        from planner.trips import compare_plans

        for cell in self._cells:
            self.grid.removeWidget(cell)
            cell.hide()
            cell.deleteLater()
        self._cells = []
        ranks = [box.currentData() for box in self.boxes]
        by_rank = {plan.rank: plan for plan in self.bench.every_plan}
        if self.bench.site is None or any(rank not in by_rank for rank in ranks):
            self.sentence.setText(say("There are no two plans to compare."))
            return
        first, second = (by_rank[rank] for rank in ranks)
        found = compare_plans(first, second, self.bench.site.zone, self.state.style)
        for row, (what, one, other) in enumerate(found.rows, start=1):
            name = quiet(what)
            name.setWordWrap(False)
            name.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Minimum)
            differ = one != other
            cells = [name, *((heading if differ else body)(text) for text in (one, other))]
            for column, cell in enumerate(cells):
                cell.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
                cell.setMinimumWidth(cell.sizeHint().width() if column == 0 else _LEAST_PX)
                self.grid.addWidget(cell, row, column)
            self._cells += cells
        self.sentence.setText(found.sentence)
