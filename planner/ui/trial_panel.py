"""Traps compared: rates with intervals, the verdict, what would settle it, the next layout."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QHBoxLayout,
    QLabel,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.logbook import Haul
from planner.trials import settle_texts
from planner.ui.parts import Card, Halves, body, caution, heading, quiet, refill, scrolled
from planner.ui.row_chart import IntervalRow, RowChart
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.trial_rows import (
    COLUMNS,
    MEASURE_WORDS,
    Comparison,
    axis_label,
    group_rows,
    groupings,
    layout_rows,
    scale,
    weigh_traps,
)
from planner.ui.workbench import Workbench

_LAYOUT_PX = 460
_NOTHING = "No two kinds of anything are logged yet: give your traps a design, a bait or a spot."


class TrialPanel(QWidget):
    """Compares the hauls of the log by what the user chooses."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.found: Comparison | None = None
        self._build()

    def _build(self) -> None:
        self.by = QComboBox()
        self.measure = QComboBox()
        for name, words in MEASURE_WORDS.items():
            self.measure.addItem(words, name)
        self.care = QDoubleSpinBox()
        self.care.setRange(1.1, 5.0)
        self.care.setSingleStep(0.1)
        self.care.setDecimals(1)
        self.care.setValue(1.5)
        self.care.setSuffix(" times")
        self.here = QCheckBox("This place only")
        which, care = QHBoxLayout(), QHBoxLayout()
        for row, text, box in (
            (which, "Compare &by", self.by),
            (which, "Co&unt", self.measure),
            (care, "&Worth knowing", self.care),
        ):
            label = QLabel(text)
            label.setBuddy(box)
            box.setAccessibleName(text.replace("&", ""))
            row.addWidget(label)
            row.addWidget(box)
        which.addStretch(1)
        care.addWidget(self.here)
        care.addStretch(1)
        for box in (self.by, self.measure):
            box.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            box.setMinimumContentsLength(16)
        self.by.currentIndexChanged.connect(lambda _: self._weigh())
        self.measure.currentIndexChanged.connect(lambda _: self._weigh())
        self.care.valueChanged.connect(lambda _: self._weigh())
        self.here.toggled.connect(lambda _: self.refresh())
        self.sentence = heading("")
        self._warnings = QVBoxLayout()
        self.chart = RowChart("Rates of each group")
        self.groups = RowsModel(COLUMNS, numbers=(1, 2, 3, 4))
        table = rows_table(self.groups, "Rates of each group", wide=0)
        picture = ChartWithTable(self.chart, table)
        legend = quiet(
            "Dot: what a haul gives, brought to the same trips, spots and soak. Bar: its 80% "
            "interval. Faint rings: single hauls as counted."
        )
        self.settle = body()
        self.layout_words = quiet()
        self.layout_rows = RowsModel(("Spot", "Trap", "Design"))
        layout_table = rows_table(self.layout_rows, "Layout of the next trip")
        layout_table.setSizeAdjustPolicy(QTableView.SizeAdjustPolicy.AdjustToContents)
        layout_table.setMaximumHeight(_LAYOUT_PX)
        left = QVBoxLayout()
        left.addWidget(Card("", self.sentence, _holder(self._warnings), picture, legend))
        left.addStretch(1)
        next_trip = Card("Next trip: which trap goes where", layout_table, self.layout_words)
        right = QVBoxLayout()
        right.addWidget(Card("What would settle it", self.settle))
        right.addWidget(next_trip)
        right.addStretch(1)
        column = QVBoxLayout()
        column.setContentsMargins(0, SPACE, SPACE, 0)
        column.addWidget(Halves(which, care, (3, 2)))
        column.addWidget(Halves(left, right, (5, 3)), 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(column, "Traps compared"))

    # -- showing -----------------------------------------------------------------------------

    def refresh(self) -> None:
        """Offer what the log can be grouped by, keep the user's choice, and compare."""
        hauls = self._hauls()
        places = {haul.place for haul in self.bench.log.hauls}
        self.here.setVisible(len(places) > 1)
        chosen = self.by.currentData()
        self.by.blockSignals(True)
        self.by.clear()
        for name, words in groupings(hauls):
            self.by.addItem(words, name)
        self.by.setCurrentIndex(max(0, self.by.findData(chosen)))
        self.by.blockSignals(False)
        self._weigh()

    def _hauls(self) -> Sequence[Haul]:
        site, hauls = self.bench.site, self.bench.log.hauls
        if self.here.isChecked() and site is not None:
            return [haul for haul in hauls if haul.place == site.name]
        return hauls

    def _weigh(self) -> None:
        hauls, by, measure = self._hauls(), self.by.currentData(), self.measure.currentData()
        care = self.care.value()
        if by is None:
            self.bench.desk.stop("trial")
            self._show(None)
            return
        self.sentence.setText("Comparing…")
        self.bench.desk.start(
            "trial",
            "Comparing traps",
            lambda _: weigh_traps(hauls, by, measure, care),
            self._show,
            self._refuse,
        )

    def _refuse(self, error: PlannerError) -> None:
        self._show(None)
        self.sentence.setText(str(error))

    def _show(self, found: Comparison | None) -> None:
        self.found = found
        if found is None:
            self.sentence.setText(_NOTHING)
            refill(self._warnings, [])
            self.chart.show_rows([], "")
            self.groups.show([])
            self.settle.setText("")
            self.layout_rows.show([])
            self.layout_words.setText("")
            return
        trial, times = found.trial, scale(found.trial.measure)
        self.sentence.setText(trial.sentence)
        refill(self._warnings, [caution(each.text) for each in trial.warnings])
        rows = [
            IntervalRow(
                group.name,
                None if group.rate is None else group.rate * times,
                None if group.low is None else group.low * times,
                None if group.high is None else group.high * times,
                tuple(value * times for value in found.singles.get(group.name, ())),
            )
            for group in trial.groups
        ]
        self.chart.show_rows(rows, axis_label(trial.measure))
        self.groups.show(group_rows(trial), (self.by.currentText().capitalize(), *COLUMNS[1:]))
        self.settle.setText("\n".join(settle_texts(trial)))
        self.layout_rows.show(layout_rows(found.layout))
        self.layout_words.setText(
            found.layout.sentence
            if found.layout
            else "Log traps with their design and spot, and a layout for the next trip stands here."
        )


def _holder(layout: QVBoxLayout) -> QWidget:
    layout.setContentsMargins(0, 0, 0, 0)
    holder = QWidget()
    holder.setLayout(layout)
    return holder
