"""The user's judged trips over the moon and over the year."""

from __future__ import annotations

import numpy as np
from PySide6.QtWidgets import QWidget

from planner.clock import LUNATION_D, YEAR_D
from planner.molt.evidence_types import Curve, Evidence
from planner.phrasing import interval_text
from planner.ui.evidence.trip_chart import Points, TripChart
from planner.ui.evidence.trip_points import (
    MONTHS,
    QUARTERS,
    Ticks,
    TripPoint,
    at_ticks,
    point_rows,
    trip_points,
)
from planner.ui.parts import Card, quiet, scrolling
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

_COLUMNS = (say("When"), say("Moon"), say("Light"), say("Share (80% interval)"), say("Kind"))
_MODEL = say("the model")
_MARKS = say(
    "Filled marks: full trips. Open: light ones. Half filled: mixed. Larger: more crabs judged. "
    "Lines: 80% interval of the trip's own count."
)

_BAND = say("Band: 80% interval of what the model makes of the log, all else as on average.")


class TripsPanel(QWidget):
    """Two pictures of the same trips."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.moon = TripChart(say("Trips over the moon"), QUARTERS, LUNATION_D)
        self.season = TripChart(say("Trips over the year"), MONTHS, YEAR_D)
        self._points: tuple[TripPoint, ...] = ()
        self._moon_curve: Curve | None = None
        self._season_curve: Curve | None = None
        self.moon_rows, self.season_rows = RowsModel(_COLUMNS), RowsModel(_COLUMNS)
        self.said = quiet()
        self.pointed = quiet(_MARKS)
        for chart in (self.moon, self.season):
            chart.pointed.connect(lambda text: self.pointed.setText(text or self._legend()))
        column = scrolling(self, say("Moon and season"))
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(self.said)
        column.addWidget(self.pointed)
        for heading, chart, rows in (
            (say("Over the moon"), self.moon, self.moon_rows),
            (say("Over the year"), self.season, self.season_rows),
        ):
            name = say("Judged trips, {heading}", heading=heading.lower())
            table = rows_table(rows, name, wraps=False)
            column.addWidget(Card(heading, ChartWithTable(chart, table)), 1)

    def refresh(self) -> None:
        """Show the trips of the open place."""
        site, log = self.bench.site, self.bench.log
        if site is None:
            return
        outcomes = log.outcomes(site.name)

        def done(points: tuple[TripPoint, ...]) -> None:
            self._points = points
            self.said.setText(_said(len(points), len(outcomes) - len(points)))
            self._show()

        self.bench.desk.start(
            "trip points",
            say("Placing the trips"),
            lambda _: trip_points(outcomes, site.zone),
            done,
        )

    def show_curves(self, evidence: Evidence | None) -> None:
        """Lay what was learned from the same log under the trips."""
        self._moon_curve = evidence.moon if evidence is not None else None
        self._season_curve = evidence.season if evidence is not None else None
        self._show()

    def _legend(self) -> str:
        return _MARKS if self._moon_curve is None else f"{_MARKS} {_BAND}"

    def _show(self) -> None:
        self.pointed.setText(self._legend())
        points = self._points
        moon_d = np.array([point.moon_d for point in points])
        year_d = np.array([point.year_d for point in points])
        self.moon.show_points(Points(points, moon_d, self._moon_curve))
        self.season.show_points(Points(points, year_d, self._season_curve))
        self.bench.turns.take(self, self._show_rows)  # behind the charts, to be flipped to

    def _show_rows(self) -> None:
        trips = point_rows(self._points)
        moon, season = _band(self._moon_curve, QUARTERS), _band(self._season_curve, MONTHS)
        self.moon_rows.show([*(("", name, "", share, _MODEL) for name, share in moon), *trips])
        self.season_rows.show([*((name, "", "", share, _MODEL) for name, share in season), *trips])


def _band(curve: Curve | None, ticks: Ticks) -> list[tuple[str, str]]:
    """Return what the model's band is at each tick; none before it has learned."""
    found = [] if curve is None else at_ticks(curve, ticks)
    return [(name, interval_text(share, ".0%")) for name, share in found]


def _said(judged: int, unjudged: int) -> str:
    if not unjudged:
        return say("{judged} trips with judged crabs.", judged=judged)
    return say(
        "{judged} trips with judged crabs; {unjudged} without, which say nothing of fullness.",
        judged=judged,
        unjudged=unjudged,
    )
