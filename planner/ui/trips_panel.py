"""The user's judged trips over the moon and over the year."""

from __future__ import annotations

import numpy as np
from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.ui.parts import Card, quiet
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.trip_chart import Points, TripChart
from planner.ui.trip_points import (
    LUNATION_D,
    MONTH_BEGINS,
    MONTHS,
    MOONS,
    YEAR_D,
    TripPoint,
    point_rows,
    trip_points,
)
from planner.ui.workbench import Workbench

_COLUMNS = ("Trip", "Moon", "Light", "Share (80% interval)", "Kind")
_MARKS = (
    "Filled marks: full trips. Open: light ones. Half filled: mixed. Larger: more crabs judged. "
    "Lines: 80% interval of the trip's own count."
)


class TripsPanel(QWidget):
    """Two pictures of the same trips."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        quarters = [(LUNATION_D * i / 4, f"{MOONS[i % 4]}") for i in range(5)]
        months = list(zip(map(float, MONTH_BEGINS), MONTHS, strict=True))
        self.moon = TripChart("Trips over the moon", quarters, LUNATION_D)
        self.season = TripChart("Trips over the year", months, YEAR_D)
        self.rows = RowsModel(_COLUMNS)
        self.said = quiet()
        self.pointed = quiet(_MARKS)
        for chart in (self.moon, self.season):
            chart.pointed.connect(lambda text: self.pointed.setText(text or _MARKS))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(self.said)
        column.addWidget(self.pointed)
        for heading, chart in (("Over the moon", self.moon), ("Over the year", self.season)):
            table = rows_table(self.rows, f"Judged trips, {heading.lower()}")
            column.addWidget(Card(heading, ChartWithTable(chart, table)), 1)

    def refresh(self) -> None:
        """Show the trips of the open place."""
        site, log = self.bench.site, self.bench.log
        if site is None:
            return
        outcomes = log.outcomes(site.name)
        self._outcomes = len(outcomes)
        self.bench.desk.start(
            "trip points",
            "Placing the trips",
            lambda _: trip_points(outcomes, site.zone),
            self._show,
        )

    def _show(self, points: tuple[TripPoint, ...]) -> None:
        unjudged = self._outcomes - len(points)
        self.said.setText(
            f"{len(points)} trips with judged crabs"
            + (f"; {unjudged} without, which say nothing of fullness." if unjudged else ".")
        )
        self.rows.show(point_rows(points))
        self.moon.show_points(Points(points, np.array([p.moon_d for p in points])))
        self.season.show_points(Points(points, np.array([p.year_d for p in points])))
