"""Weigh evidence: what do I know, and how sure?"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QPushButton, QStackedWidget, QVBoxLayout, QWidget

from planner.logbook import Log
from planner.molt.evidence_types import Evidence
from planner.sites import Site
from planner.ui.evidence.effects_panel import EffectsPanel
from planner.ui.evidence.record_panel import RecordPanel
from planner.ui.evidence.trial_panel import TrialPanel
from planner.ui.evidence.trips_panel import TripsPanel
from planner.ui.parts import Empty, Late, Tabs, quiet, title
from planner.ui.theme import SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import counted, say

_WILL_BE = say(
    "What your own trips say will stand here: whether moon, season or recent trips move how "
    "full the crabs are, how forecasts did, and which traps catch more. Nothing is logged yet."
)
_NOT_JUDGED = say(
    "No trip logged here says yet how full its crabs were. Judge a few crabs of every haul and "
    "enter how many were light: then what moves that, and how forecasts did, stands here."
)


class EvidenceView(QWidget):
    """Tabs over the log; each is worked out when it is looked at."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.evidence: Evidence | None = None
        self.effects = EffectsPanel(bench.state)
        matters, did = _Learned(self.effects), _Learned(Late(lambda: self.record, bench.turns))
        self._learned_pages = (matters, did)
        self._trips_page = Late(lambda: self.trips, bench.turns)
        self._trials_page = Late(lambda: self.trials, bench.turns)
        self._showing: dict[QWidget, Callable[[Evidence], None]] = {
            matters: self.effects.show_evidence,
            self._trips_page: lambda evidence: self.trips.show_curves(evidence),
            did: self._show_record,
        }
        # Tabs that do not show yet what was learned.
        self._unshown: set[QWidget] = set()
        self.tabs = Tabs(say("Kinds of evidence"))
        self.tabs.addTab(matters, say("What matters"))
        self.tabs.addTab(self._trips_page, say("Moon and season"))
        self.tabs.addTab(did, say("How forecasts did"))
        self.tabs.addTab(self._trials_page, say("Traps compared"))
        self.tabs.currentChanged.connect(lambda _: self._catch_up())
        log = QPushButton(say("Log hauls"))
        log.clicked.connect(lambda _=False: self.state.change(view="hauls"))
        self._stack = QStackedWidget()
        self.nothing = Empty(_WILL_BE, log)
        self._stack.addWidget(self.nothing)
        self._stack.addWidget(self.tabs)
        self.basis = quiet()
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE * 2, SPACE, SPACE * 2, SPACE)
        column.addWidget(title(say("Weigh evidence")))
        column.addWidget(self.basis)
        column.addWidget(self._stack, 1)
        self._stale: set[str] = set()
        bench.site_changed.connect(self.refresh)
        bench.log_changed.connect(self.refresh)
        for desk in (bench.desk, bench.clerk):
            desk.busy.connect(lambda _: self._say_nothing_logged())
        self._say_nothing_logged()
        self.refresh()

    @cached_property
    def trips(self) -> TripsPanel:
        """The trips over moon and year, made when looked at, as is all but the first tab."""
        return TripsPanel(self.bench)

    @cached_property
    def record(self) -> RecordPanel:
        """How past forecasts did."""
        return RecordPanel()

    @cached_property
    def trials(self) -> TrialPanel:
        """Kinds of traps compared."""
        return TrialPanel(self.bench)

    def refresh(self) -> None:
        """Everything shown is of an older log or place now; work out what is looked at."""
        hauls, site = self.bench.log.hauls, self.bench.site
        self._stack.setCurrentIndex(1 if hauls else 0)
        self.basis.setVisible(bool(hauls))
        if site is not None:
            outcomes = self.bench.log.outcomes(site.name)
            judged = sum(outcome.judged or 0 for outcome in outcomes)
            self.basis.setText(
                say(
                    "{name}: {trips}, {crabs} judged for fullness.",
                    name=site.name,
                    trips=counted(len(outcomes), "logged trip"),
                    crabs=counted(judged, "crab"),
                )
            )
        for key in ("evidence", "trip points", "trial"):
            self.bench.desk.stop(key)
        self.evidence, self._unshown = None, set()
        self._stale = {"evidence", "trips", "trials"}
        self._catch_up()

    def _say_nothing_logged(self) -> None:
        self.nothing.words.setText(say("Opening the log…") if self.bench.opening else _WILL_BE)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._catch_up()

    def _catch_up(self) -> None:
        """Work out and show what the tab in front needs, once it has come up."""
        self.bench.turns.take(self, self._work_out, self._show_tab)

    def _work_out(self) -> None:
        """Begin what the shown tab needs and is not of this log and place yet."""
        site, log, shown = self.bench.site, self.bench.log, self.tabs.currentWidget()
        if not self.isVisible() or not log.hauls or site is None:
            return
        if shown is self._trials_page:
            if self._take("trials"):
                self.trials.refresh()
            return
        if shown is self._trips_page and self._take("trips"):
            self.trips.show_curves(None)
            self.trips.refresh()
        if self._take("evidence"):
            self._learn(site, log)

    def _take(self, what: str) -> bool:
        stale = what in self._stale
        self._stale.discard(what)
        return stale

    def _learn(self, site: Site, log: Log) -> None:
        for page in self._learned_pages:
            page.say(say("Learning from the log…"))

        def work(checkpoint: Checkpoint) -> Evidence | None:
            from planner.molt import evidence

            return evidence(site, log, checkpoint=checkpoint)

        self.bench.desk.start("evidence", say("Learning from the log"), work, self._show_learned)

    def _show_learned(self, evidence: Evidence | None) -> None:
        self.evidence = evidence
        if evidence is None:
            for page in self._learned_pages:
                page.say(_NOT_JUDGED)
            return
        self._unshown = set(self._showing)
        for page in self._learned_pages:
            page.show_inside()
        self.bench.turns.then(self, self._show_tab)

    def _show_tab(self) -> None:
        """Show on the tab in front what was learned, if it does not yet."""
        tab = self.tabs.currentWidget()
        if self.evidence is not None and tab in self._unshown:
            self._unshown.discard(tab)
            self._showing[tab](self.evidence)

    def _show_record(self, evidence: Evidence) -> None:
        self.record.show_record(evidence.record, self._promises())

    def _promises(self) -> str:
        from planner.trips.promises import judged_promises, promises_text

        site, log = self.bench.site, self.bench.log
        return "" if site is None or log is None else promises_text(judged_promises(log, site.name))


class _Learned(QStackedWidget):
    """A panel that needs the log to be learned from, or a word on why it is not there."""

    def __init__(self, inside: QWidget) -> None:
        super().__init__()
        self._words = quiet()
        said = QWidget()
        column = QVBoxLayout(said)
        column.addWidget(self._words)
        column.addStretch(1)
        self.addWidget(said)
        self.addWidget(inside)

    def say(self, text: str) -> None:
        """Show words in place of the panel."""
        self._words.setText(text)
        self.setCurrentIndex(0)

    def show_inside(self) -> None:
        """Show the panel."""
        self.setCurrentIndex(1)
