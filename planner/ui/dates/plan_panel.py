"""The chosen plan: its water and light as a chart, why it is ranked there, what to mind."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QPushButton, QWidget

from planner.phrasing import TIDE_CAUTION, clock_text, day_clock_text, soak_text, zone_text
from planner.ui.dates.compare_dialog import CompareDialog
from planner.ui.dates.plan_words import against_the_best
from planner.ui.dates.soak_chart import SoakChart, soak_rows
from planner.ui.parts import Card, body, caution, quiet, refill
from planner.ui.strip.days import plan_name
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.when_seen import WhenSeen
from planner.ui.whole_lines import WholeLines
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

if TYPE_CHECKING:
    from planner.trips.soak_water import SoakWater

_STACKED_LINES = 26
_BESIDE_EM = 50


class PlanPanel(WhenSeen, Card):
    """Follows the chosen plan."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("Chosen plan"))
        self.bench, self.state = bench, bench.state
        self.compare = QPushButton(say("Com&pare…"))
        self.compare.setToolTip(say("See this plan and another side by side  (Alt+P)"))
        self.compare.clicked.connect(self._compare)
        top = QHBoxLayout()
        self.column.removeWidget(self.heading)
        top.addWidget(self.heading, 1)
        top.addWidget(self.compare)
        self.column.addLayout(top)
        self.when = body()
        self.chart = SoakChart()
        self._rows = RowsModel((say("When"), say("What"), say("Water")), numbers=(2,))
        self.picture = ChartWithTable(self.chart, rows_table(self._rows, say("The soak"), wide=1))
        scroll = self._reasons = WholeLines(say("Why this plan, and what to mind"))
        self._words = scroll.words
        self.picture.flipped.connect(self._arrange)
        self._halves = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._halves.setSpacing(SPACE)
        self._halves.addWidget(self.picture, 4)
        self._halves.addWidget(scroll, 3)
        self.column.addWidget(self.when)
        self.column.addLayout(self._halves, 1)
        self.load = QPushButton(say("Load up for this plan"))
        self.load.setToolTip(say("Open the checklist and the trip sheet for the chosen plan"))
        self.load.clicked.connect(lambda: self.state.change(view="load"))
        self.log = QPushButton(say("Log this trip"))
        self.log.setToolTip(
            say("Open the trip's rows in Log hauls, with the plan's times and traps")
        )
        self.log.clicked.connect(self._log_trip)
        steps = QHBoxLayout()
        steps.addWidget(self.load)
        steps.addWidget(self.log)
        # Beside the others: under the chart it would take the chart's height.
        steps.addWidget(self.picture.button)
        steps.addStretch(1)
        self.column.addLayout(steps)
        QWidget.setTabOrder(self.log, self.picture.button)
        bench.plans_changed.connect(self.refresh_when_seen)
        bench.site_changed.connect(self.refresh_when_seen)
        self.state.listen(self._state_changed)
        self.refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        # A low panel has no room for the words under the chart, a narrow one none beside it.
        lines = self.height() / self.fontMetrics().lineSpacing()
        letters = self.width() / self.fontMetrics().averageCharWidth()
        low = lines < _STACKED_LINES and letters > _BESIDE_EM
        side, under = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
        self._halves.setDirection(side if low else under)
        # Beside them a table would be too narrow for its words.
        self._reasons.setVisible(not (low and self.picture.as_table))

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "plan" in changed:  # another style has the plans ranked anew, in its words
            self.refresh_when_seen()

    def refresh(self) -> None:
        """Show the chosen plan."""
        plan, site, style = self.bench.plan, self.bench.site, self.state.style
        book = self.bench.book
        self.load.setEnabled(plan is not None)
        self.log.setEnabled(plan is not None and book is not None and not book.read_only)
        self.compare.setEnabled(len(self.bench.every_plan) > 1)
        self.picture.setVisible(plan is not None)
        self.picture.button.setVisible(plan is not None)
        if plan is None or site is None:
            self.bench.desk.stop("soak water")
            self.heading.setText(say("Chosen plan"))
            self.when.setText("")
            self._say_why_none()
            return
        zone = site.zone
        self.heading.setText(say("Chosen: {plan_name}", plan_name=plan_name(plan.rank)))
        begin = day_clock_text(plan.set_at, zone, style)
        if plan.latest_set_at > plan.set_at:
            begin += say(
                " (any time to {clock})", clock=clock_text(plan.latest_set_at, zone, style)
            )
        self.when.setText(
            say(
                "Set {begin}, haul {day_clock} {zone}; soak {soak}",
                begin=begin,
                day_clock=day_clock_text(plan.haul_at, zone, style),
                zone=zone_text(plan.haul_at, zone),
                soak=soak_text(plan.soak_h),
            )
        )
        cost = against_the_best(plan, self.bench.plans, zone, style)
        self._say([*plan.reasons, cost], [TIDE_CAUTION], list(plan.warnings))

        def work(_: Checkpoint) -> SoakWater:
            from planner.trips.soak_water import soak_water

            return soak_water(site, plan)

        def done(water: SoakWater) -> None:
            self.chart.show_soak(site, plan, water, style)
            self._rows.show(soak_rows(site, plan, water, style))

        self.bench.desk.start("soak water", "", work, done)

    def _say_why_none(self) -> None:
        found = self.bench.plans
        if found is not None and not found.plans:
            from planner.trips import nothing_fits

            why = nothing_fits(found.rejected)
            how = say("Click a day on the strip to read what stands in its way.")
            self._say([why, how], [], [])
        else:
            self._say([], [say("Pick a plan to see its water, its light and its reasons.")], [])

    def _compare(self) -> None:
        CompareDialog(self.bench, self).show()

    def _log_trip(self) -> None:
        self.bench.plan_to_log = self.bench.plan
        self.state.change(view="hauls")

    def _say(self, reasons: list[str], asides: list[str], warnings: list[str]) -> None:
        words = [*map(caution, warnings), *map(body, reasons), *map(quiet, asides)]
        refill(self._words, words)
        self._words.addStretch(1)
