"""Weigh evidence: what do I know, and how sure?"""

from __future__ import annotations

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QPushButton,
    QStackedWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from planner.ui.parts import Empty, quiet, title
from planner.ui.theme import SPACE
from planner.ui.trial_panel import TrialPanel
from planner.ui.trips_panel import TripsPanel
from planner.ui.workbench import Workbench


class EvidenceView(QWidget):
    """Tabs over the log; each is worked out when it is looked at."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self._stale: set[TripsPanel | TrialPanel] = set()
        self.trips = TripsPanel(bench)
        self.trials = TrialPanel(bench)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.tabBar().setAccessibleName("Kinds of evidence")
        self.tabs.addTab(self.trips, "Moon and season")
        self.tabs.addTab(self.trials, "Traps compared")
        self.tabs.currentChanged.connect(lambda _: self._catch_up())
        log = QPushButton("Log hauls")
        log.clicked.connect(lambda _=False: self.state.change(view="hauls"))
        self._stack = QStackedWidget()
        self._stack.addWidget(
            Empty(
                "What your own trips say will stand here: whether moon, season or recent trips "
                "move how full the crabs are, how forecasts did, and which traps catch more. "
                "Nothing is logged yet.",
                log,
            )
        )
        self._stack.addWidget(self.tabs)
        self.basis = quiet()
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE * 2, SPACE, SPACE * 2, SPACE)
        column.addWidget(title("Weigh evidence"))
        column.addWidget(self.basis)
        column.addWidget(self._stack, 1)
        bench.site_changed.connect(self.refresh)
        bench.log_changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Everything shown is of an older log or place now; work out what is looked at."""
        hauls, site = self.bench.log.hauls, self.bench.site
        self._stack.setCurrentIndex(1 if hauls else 0)
        self.basis.setVisible(bool(hauls))
        if site is not None:
            outcomes = self.bench.log.outcomes(site.name)
            judged = sum(outcome.judged or 0 for outcome in outcomes)
            self.basis.setText(
                f"{site.name}: {len(outcomes)} logged trips, {judged} crabs judged for fullness."
            )
        self._stale = {self.trips, self.trials}
        self._catch_up()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._catch_up()

    def _catch_up(self) -> None:
        if not self.isVisible() or not self.bench.log.hauls:
            return
        for panel in tuple(self._stale):
            if panel is self.tabs.currentWidget():
                self._stale.discard(panel)
                panel.refresh()
