"""How forecasts of past trips did: scores beside simple forecasts, and forecast against outcome."""

from __future__ import annotations

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.molt.evidence_types import Record
from planner.ui import theme
from planner.ui.charts import Chart
from planner.ui.evidence.evidence_rows import (
    RECORD_COLUMNS,
    RELIABLE_COLUMNS,
    SCORE_COLUMNS,
    record_rows,
    record_text,
    reliable_rows,
    score_rows,
)
from planner.ui.evidence.trip_chart import mark_size
from planner.ui.parts import Card, body, heading, quiet, scrolling
from planner.ui.tables import ChartWithTable, RowsModel, rows_table, show_whole
from planner.ui.theme import SPACE
from planner.words import say


class RecordChart(Chart):
    """Forecast along, outcome up: right forecasts scatter about the line of equals."""

    least_lines = 13

    def __init__(self) -> None:
        super().__init__(say("Forecast against outcome"))
        self.stand_still()
        self._shown: Record | None = None

    def show_record(self, record: Record) -> None:
        """Show other trips."""
        self._shown = record
        colours = theme.current()
        self.clear()
        self.setLabel("bottom", say("light crabs of 100, as forecast"), color=colours.text)
        self.setLabel("left", say("light crabs of 100, as they came"), color=colours.text)
        trips = [trip for trip in record.trips if trip.judged]
        came = np.array([100 * trip.light / trip.judged for trip in trips])
        forecast = np.array([100 * trip.forecast.mean for trip in trips])
        bars = np.array([[100 * t.forecast.low, 100 * t.forecast.high] for t in trips])
        highs = [100 * group.came.high for group in record.reliability]
        right = float(max([20.0, *bars.ravel()])) * 1.04
        top = float(max([20.0, *came, *highs])) * 1.04
        both = [0, min(right, top)]
        self.plot(both, both, pen=pg.mkPen(colours.quiet, width=1, style=Qt.PenStyle.DashLine))
        if trips:
            pen = pg.mkPen(theme.colour(colours.forecast, 140), width=1.2)
            self.plot(bars.ravel(), np.repeat(came, 2), connect="pairs", pen=pen)
            marks = pg.ScatterPlotItem(
                forecast,
                came,
                size=np.array([mark_size(trip.judged) for trip in trips]),
                pen=pg.mkPen(colours.logged, width=1.5),
                brush=pg.mkBrush(theme.colour(colours.logged, 90)),
            )
            marks.setZValue(theme.Z_MARK)
            self.addItem(marks)
        self._draw_groups(record)
        self.box.setXRange(0, right, padding=0.02)
        self.box.setYRange(0, top, padding=0.04)
        groups = len(record.reliability)
        self.setAccessibleDescription(
            say(
                "{trips} past trips{words}; the tables list them",
                trips=len(trips),
                words=say(", in {groups} groups", groups=groups) if groups else "",
            )
        )

    def _draw_groups(self, record: Record) -> None:
        """Draw trips of like forecasts together, with what came and its interval upwards."""
        if not record.reliability:
            return
        colours = theme.current()
        x = np.array([100 * group.forecast for group in record.reliability])
        y = np.array([100 * group.came.mean for group in record.reliability])
        ends = np.array([[100 * g.came.low, 100 * g.came.high] for g in record.reliability])
        pen = pg.mkPen(colours.text, width=2)
        self.plot(np.repeat(x, 2), ends.ravel(), connect="pairs", pen=pen)
        marks = pg.ScatterPlotItem(x, y, size=11, symbol="s", pen=pen, brush=colours.panel)
        marks.setZValue(theme.Z_MARK + 1)
        self.addItem(marks)

    def redraw(self) -> None:
        if self._shown is not None:
            self.show_record(self._shown)


class RecordPanel(QWidget):
    """The verdict on top, scores, and every past forecast."""

    def __init__(self) -> None:
        super().__init__()
        self.sentence = heading("")
        self.promises = body()
        self.scores = RowsModel(SCORE_COLUMNS, numbers=(1, 2))
        scores = rows_table(self.scores, say("Scores of the forecasts"), wide=0)
        show_whole(scores)
        self.rows = RowsModel(RECORD_COLUMNS, numbers=(1, 2, 3))
        self.groups = RowsModel(RELIABLE_COLUMNS, numbers=(1, 2, 3))
        self.chart = RecordChart()
        column = scrolling(self, say("How forecasts did"))
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(self.sentence)
        column.addWidget(self.promises)
        column.addWidget(scores)
        column.addWidget(
            quiet(
                say(
                    "Both scores measure how far forecasts were off, as a mean over judged crabs: "
                    "smaller is better, 0 would be right every time. Each past trip was forecast "
                    "from earlier trips only."
                )
            )
        )
        tables = QWidget()
        both = QVBoxLayout(tables)
        both.setContentsMargins(0, 0, 0, 0)
        groups = rows_table(self.groups, say("Trips of like forecasts together"), wide=0)
        show_whole(groups)
        both.addWidget(groups)
        both.addWidget(rows_table(self.rows, say("Past forecasts"), wide=0), 1)
        column.addWidget(
            Card(
                say("Forecast against outcome"),
                ChartWithTable(self.chart, tables),
                quiet(
                    say(
                        "On the dashed line forecast and outcome are equal. Discs: trips, larger "
                        "with more crabs judged, and the forecast's 80% interval. Squares: trips "
                        "of like forecasts together, and the 80% interval of what came; forecasts "
                        "can be relied on where those reach the dashed line."
                    )
                ),
            ),
            1,
        )

    def show_record(self, record: Record, promises: str = "") -> None:
        """Show another record; promises: how the plans' own forecasts did, in words."""
        self.promises.setText(promises)
        self.sentence.setText(record_text(record))
        self.scores.show(score_rows(record))
        self.rows.show(record_rows(record))
        self.groups.show(reliable_rows(record))
        self.chart.show_record(record)
