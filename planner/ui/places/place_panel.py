"""One place of the book: facts and water, spots, constants, rules, a check against sight."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property
from typing import TypeVar

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QFormLayout,
    QLabel,
    QVBoxLayout,
    QWidget,
)

from planner.phrasing import RULES_CAUTION
from planner.ui.parts import Late, Tabs, body, caution, give_role, quiet, refill, scrolled
from planner.ui.places.observed_panel import ObservedPanel
from planner.ui.places.place_charts import MonthChart, SpotChart
from planner.ui.places.places_text import (
    MONTH_DAYS,
    PlaceReport,
    constituent_columns,
    constituent_rows,
    fact_rows,
    ramp_text,
    spot_columns,
    spot_rows,
    turn_rows,
)
from planner.ui.places.rules_text import rules_texts
from planner.ui.places.span_panel import SpanPanel
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

_OfSite = TypeVar("_OfSite", SpanPanel, ObservedPanel)


class PlacePanel(Tabs):
    """Tabs over one report; it follows the user's units and clock."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("What is known of the place"))
        self.report: PlaceReport | None = None
        self._stale: set[Late] = set()
        self._bench, self.state = bench, bench.state
        # The tabs made so far that follow the place but not the user's units.
        self._of_site: list[SpanPanel | ObservedPanel] = []
        self._showing: dict[Late, Callable[[PlaceReport], None]] = {}
        for words, make, show in (
            (say("Water"), self._make_water, self._show_water),
            (say("Spots"), self._make_spots, self._show_spots),
            (say("Constants"), self._make_constants, self._show_constants),
            (say("Rules"), self._make_rules, self._show_rules),
        ):
            page = Late(make, bench.turns)
            self.addTab(page, words)
            self._showing[page] = show
        self.addTab(Late(lambda: self.span, bench.turns), say("Any dates"))
        self.addTab(Late(lambda: self.observed, bench.turns), say("Check against what you saw"))
        self.currentChanged.connect(lambda _: self._catch_up())
        self.state.listen(self._state_changed)

    @cached_property
    def span(self) -> SpanPanel:
        """High and low waters of any dates."""
        return self._follow_site(SpanPanel(self._bench))

    @cached_property
    def observed(self) -> ObservedPanel:
        """What was seen, against what was predicted."""
        return self._follow_site(ObservedPanel(self._bench))

    def _follow_site(self, made: _OfSite) -> _OfSite:
        self._of_site.append(made)
        if self.report is not None:
            made.show_site(self.report.site)
        return made

    def _make_water(self) -> QWidget:
        self.facts = QFormLayout()
        self.facts.setHorizontalSpacing(SPACE * 2)
        self.facts.setVerticalSpacing(SPACE // 2)
        self.facts.setContentsMargins(0, 0, 0, 0)
        self.suspected = QVBoxLayout()
        self.suspected.setSpacing(SPACE // 2)
        self.month = MonthChart()
        self.turns = RowsModel((say("Local time"), say("Water"), say("Height")), numbers=(2,))
        self.pointed = quiet()
        self.month.pointed.connect(lambda text: self.pointed.setText(text or self._month_text()))
        chart = ChartWithTable(
            self.month,
            rows_table(self.turns, say("High and low waters of the coming month"), wide=0),
        )
        column = QVBoxLayout()
        # From the outside in: whatever is taken in takes all that it holds along, at a price.
        page = scrolled(column, say("Facts and water of the place"))
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addLayout(self.suspected)
        column.addLayout(self.facts)
        column.addSpacing(SPACE)
        column.addWidget(self.pointed)
        column.addWidget(chart, 1)
        return page

    def _make_spots(self) -> QWidget:
        column = QVBoxLayout()
        # The picture needs more height than a low window of large letters has.
        page = scrolled(column, say("Spots of the place"))
        column.setContentsMargins(0, SPACE, 0, 0)
        self.spots = SpotChart()
        self.spot_rows = RowsModel((say("Spot"),), numbers=(1, 2, 3, 4))
        self.spots_said = body()
        chart = ChartWithTable(
            self.spots, rows_table(self.spot_rows, say("Spots against the year's water"), wide=0)
        )
        legend = quiet(
            say(
                "Each box is a trap on its ground. The band is what the coming year's "
                "astronomical tide reaches; wind and pressure go beyond it. "
                "Drag the picture sideways when there are more."
            )
        )
        column.addWidget(self.spots_said)
        column.addWidget(chart, 1)
        column.addWidget(legend)
        return page

    def _make_constants(self) -> QWidget:
        self.constants = RowsModel((say("Constituent"),), numbers=(1, 2, 3))
        self.constants_said = quiet()
        table = rows_table(self.constants, say("Tidal constituents"), wide=0)
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(self.constants_said)
        column.addWidget(table, 1)
        return page

    def _make_rules(self) -> QWidget:
        self.rules = QVBoxLayout()
        self.rules.setContentsMargins(0, SPACE, 0, 0)
        self.rules.setSpacing(SPACE)
        return scrolled(self.rules, say("Rules and closures"))

    # -- showing -----------------------------------------------------------------------------

    def show_report(self, report: PlaceReport) -> None:
        """Show another place."""
        self.report = report
        for tab in self._of_site:
            tab.show_site(report.site)
        self.refresh()

    def refresh(self) -> None:
        """Show the place anew, in the units and clock of the user."""
        # Only what is seen at once: the rest when somebody turns to it.
        self._stale = set(self._showing)
        self._catch_up()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._catch_up()

    def _catch_up(self) -> None:
        """Make the tab in front, then show the place on it, unless that is done."""
        self._bench.turns.take(self, self._tab.fill, self._show_tab)

    @property
    def _tab(self) -> Late:
        tab = self.currentWidget()
        assert isinstance(tab, Late)
        return tab

    def _show_tab(self) -> None:
        tab = self._tab
        if self.report is not None and tab in self._stale and self.isVisible():
            self._stale.discard(tab)
            tab.fill()
            self._showing[tab](self.report)

    def _show_water(self, report: PlaceReport) -> None:
        style = self.state.style
        self._show_facts(fact_rows(report, style))
        refill(
            self.suspected, [caution(f"{each.text} {each.remedy}") for each in report.suspicions]
        )
        self.month.show_report(report, style)
        self.turns.show(turn_rows(report.turns, report.site.zone, style))
        self.pointed.setText(self._month_text())

    def _show_facts(self, rows: Sequence[tuple[str, ...]]) -> None:
        # Other words for rows that stay: with rows that go and come, the chart below them would
        # be given many heights in turn.
        while self.facts.rowCount() > len(rows):
            self.facts.removeRow(self.facts.rowCount() - 1)
        while self.facts.rowCount() < len(rows):
            name = QLabel()
            give_role(name, "quiet")
            name.setAlignment(Qt.AlignmentFlag.AlignTop)
            self.facts.addRow(name, body())
        roles = QFormLayout.ItemRole
        for at, words in enumerate(rows):
            for role, text in zip((roles.LabelRole, roles.FieldRole), words, strict=True):
                item = self.facts.itemAt(at, role)
                label = None if item is None else item.widget()
                assert isinstance(label, QLabel)
                label.setText(text)

    def _show_rules(self, report: PlaceReport) -> None:
        words = [body(text) for text in rules_texts(report.site, report.today)]
        give_role(words[0], "heading")
        refill(self.rules, [caution(RULES_CAUTION), *words])
        self.rules.addStretch(1)

    def _month_text(self) -> str:
        zone = self.report.site.zone.key if self.report else ""
        return say(
            "The coming {month_days} days on the clock of {zone}. Point at the curve "
            "to read it; drag along it, and zoom with Ctrl and the wheel.",
            month_days=MONTH_DAYS,
            zone=zone,
        )

    def _show_spots(self, report: PlaceReport) -> None:
        style = self.state.style
        self.spot_rows.show(spot_rows(report, style), spot_columns(style))
        self.spots.show_report(report, style)
        nothing = "" if report.year.spots else say("No spots entered in the place file yet. ")
        self.spots_said.setText(nothing + ramp_text(report, style))

    def _show_constants(self, report: PlaceReport) -> None:
        style, offsets = self.state.style, report.site.water.offsets
        self.constants.show(constituent_rows(report.site, style), constituent_columns(style))
        self.constants_said.setText(
            say("The constants of the reference place, {name}.", name=offsets.reference.name)
            if offsets is not None
            else say("Amplitudes and phase lags as the place file gives them, largest first.")
        )

    def _state_changed(self, changed: frozenset[str]) -> None:
        if changed & {"style"}:
            self.refresh()
