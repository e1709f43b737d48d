"""When in the year and in the moon's round crabs are light: the model's bands side by side."""

from __future__ import annotations

import numpy as np
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from planner.clock import LUNATION_D, YEAR_D
from planner.estimates import Interval
from planner.molt.evidence_types import Curve, Evidence
from planner.phrasing import interval_text, number_text
from planner.ui.evidence.trip_chart import Points, TripChart
from planner.ui.evidence.trip_points import MONTHS, QUARTERS, Ticks, at_ticks
from planner.ui.parts import Card, quiet
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.words import say


class CurvesRow(QWidget):
    """The light share over the year and over the moon, each all else as on average."""

    def __init__(self) -> None:
        super().__init__()
        self.season = CurveCard(say("When in the year"), MONTHS, YEAR_D)
        self.moon = CurveCard(say("When in the moon's round"), QUARTERS, LUNATION_D)
        cards = QHBoxLayout()
        cards.setSpacing(2 * SPACE)
        for card in (self.season, self.moon):
            cards.addWidget(card, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, SPACE // 2, 0, 0)
        column.addLayout(cards, 1)
        column.addWidget(
            quiet(
                say(
                    "Line: best estimate, all else as on average. Band: its 80% interval. The "
                    "trips themselves stand under Moon and season."
                )
            )
        )

    def show_evidence(self, evidence: Evidence) -> None:
        """Show what another log says, both on one scale: what matters less swings less."""
        curves = (evidence.season, evidence.moon)
        top = max(float(curve.light_share.high.max()) for curve in curves)
        for card, curve in zip((self.season, self.moon), curves, strict=True):
            card.show_curve(curve, top)


class CurveCard(Card):
    """One band, as a picture and as a table of what it is at each tick."""

    def __init__(self, name: str, ticks: Ticks, span_d: float) -> None:
        self._ticks = ticks
        self.chart = TripChart(name, ticks, span_d)
        self.rows = RowsModel((say("When"), say("Light crabs of 100 (80% interval)")), numbers=(1,))
        super().__init__(name, ChartWithTable(self.chart, rows_table(self.rows, name, wide=0)))

    def show_curve(self, curve: Curve, top: float) -> None:
        """Show another band, on an axis up to a share of `top`."""
        self.chart.show_points(Points((), np.empty(0), curve, top))
        self.rows.show(curve_rows(curve, self._ticks))
        share = curve.light_share.mean
        least, most = (number_text(100 * float(end), ".0f") for end in (share.min(), share.max()))
        said = say(
            "from {least} light crabs of 100 to {most}; the table lists them",
            least=least,
            most=most,
        )
        self.chart.setAccessibleDescription(said)


def curve_rows(curve: Curve, ticks: Ticks) -> list[tuple[str, str]]:
    """Return what a band is at each tick, in light crabs of 100."""
    rows = []
    for name, share in at_ticks(curve, ticks):
        of_100 = Interval(100 * share.mean, 100 * share.low, 100 * share.high)
        rows.append((name, interval_text(of_100, ".0f")))
    return rows
