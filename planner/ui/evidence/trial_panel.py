"""Traps compared: rates with intervals, the verdict, what would settle it, the next layout."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QFileDialog,
    QHBoxLayout,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.logbook import Haul
from planner.ui.evidence.row_chart import IntervalRow, RowChart, room_for_rows
from planner.ui.evidence.trial_rows import (
    COLUMNS,
    MEASURE_WORDS,
    Comparison,
    axis_label,
    comparison_csv,
    group_rows,
    groupings,
    legend_text,
    scale,
    settle_words,
    weigh_traps,
)
from planner.ui.flow import Flow, labelled
from planner.ui.load.layout_editor import LayoutEditor
from planner.ui.parts import Card, Halves, body, button, caution, heading, quiet, refill, scrolling
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.whole_file import write_whole
from planner.words import say

_TABLE, _PICTURE = say("Table (*.csv)"), say("Picture (*.png)")
_KINDS = f"{_TABLE};;{_PICTURE}"
_BY_TIP = say(
    "What differs somewhere in the log. Entrances and colour are read from the trap's design, "
    'such as "red wire, 4 doors", or from a column of that name in an imported table'
)
_NOTHING = say(
    "No two kinds of anything are logged yet: give your traps a design, a bait or a spot."
)


class TrialPanel(QWidget):
    """Compares the hauls of the log by what the user chooses."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.found: Comparison | None = None
        self._build()
        self.bench.plans_changed.connect(self._say_what_settles)

    def _build(self) -> None:
        self.by = QComboBox()
        self.by.setToolTip(_BY_TIP)
        self.measure = QComboBox()
        for name, words in MEASURE_WORDS.items():
            self.measure.addItem(words, name)
        self.care = QDoubleSpinBox()
        self.care.setRange(1.1, 5.0)
        self.care.setSingleStep(0.1)
        self.care.setDecimals(1)
        self.care.setValue(1.5)
        self.care.setSuffix(say(" times"))
        self.care.setToolTip(say("How many times as much a trap must take to be worth its price"))
        self.here = QCheckBox(say("This place only"))
        self.save = button(
            say("Export…"),
            self.export,
            say("The comparison as a table (CSV) or as a picture (PNG)"),
        )
        self.save.setEnabled(False)
        asked = Flow(
            *(
                labelled(text, box, 2 * SPACE)
                for text, box in (
                    (say("Compare &by"), self.by),
                    (say("Co&unt"), self.measure),
                    (say("&Worth knowing"), self.care),
                )
            ),
            self.here,
        )
        controls = QHBoxLayout()
        controls.addLayout(asked, 1)
        controls.addWidget(self.save, alignment=Qt.AlignmentFlag.AlignTop)
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
        self.chart = RowChart(say("Rates of each group"))
        self.groups = RowsModel(COLUMNS, numbers=(1, 2, 3, 4, 5))
        table = rows_table(self.groups, say("Rates of each group"), wide=0)
        picture = ChartWithTable(self.chart, table)
        self.legend = quiet()
        self.settle = body()
        self.layout_editor = LayoutEditor(self.bench)
        column = scrolling(self, say("Traps compared"))
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addLayout(controls)
        left, right = QVBoxLayout(), QVBoxLayout()
        column.addWidget(Halves(left, right, (5, 3)), 1)
        self.compared = Card("", self.sentence, _holder(self._warnings), picture, self.legend)
        left.addWidget(self.compared)
        left.addStretch(1)
        right.addWidget(Card(say("What would settle it"), self.settle))
        right.addWidget(Card(say("Next trip: which trap goes where"), self.layout_editor))
        right.addStretch(1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.chart.give_room(room_for_rows(self.height()))

    # -- showing -----------------------------------------------------------------------------

    def refresh(self) -> None:
        """Offer what the log can be grouped by, keep the user's choice, and compare."""
        hauls, every = self._hauls(), self.bench.log.hauls

        def work(_: Checkpoint) -> tuple[list[tuple[str, str]], int]:
            return groupings(hauls), len({haul.place for haul in every})

        self.bench.desk.stop("trial")
        self.bench.desk.start("groupings", say("Comparing traps"), work, self._offer)

    def _offer(self, found: tuple[list[tuple[str, str]], int]) -> None:
        ways, places = found
        self.here.setVisible(places > 1)
        chosen = self.by.currentData()
        self.by.blockSignals(True)
        self.by.clear()
        for name, words in ways:
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
        care, site = self.care.value(), self.bench.site
        zone = UTC if site is None else site.zone
        if by is None:
            self.bench.desk.stop("trial")
            self._show(None)
            return
        self.sentence.setText(say("Comparing…"))
        self.bench.desk.start(
            "trial",
            say("Comparing traps"),
            lambda _: weigh_traps(hauls, by, measure, care, zone),
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
            self.save.setEnabled(False)
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
        self.save.setEnabled(True)
        self.legend.setText(legend_text(trial, found.thinned))
        self._say_what_settles()

    def _say_what_settles(self) -> None:
        if self.found is not None:
            today, planned = self.state.today, self._planned_days()
            self.settle.setText("\n".join(settle_words(self.found, today, planned)))

    def _planned_days(self) -> list[date]:
        site, plans = self.bench.site, self.bench.plans
        if site is None or plans is None:
            return []
        return [plan.haul_at.astimezone(site.zone).date() for plan in plans.plans]

    # -- taking along ------------------------------------------------------------------------

    def export(self) -> None:
        """Ask for a file, and write the comparison to it: a table, or a picture."""
        found = self.found
        if found is None:
            return
        name = say("traps by {by}.csv", by=found.trial.by)
        path, kind = QFileDialog.getSaveFileName(self, say("Export the comparison"), name, _KINDS)
        if not path:
            return
        out = Path(path)
        if out.suffix.casefold() == ".png" or (not out.suffix and kind == _PICTURE):
            out = out.with_suffix(".png")
            self._save_picture(out)
            return
        self.bench.desk.start(
            "export trial",
            say("Writing the comparison"),
            lambda _: write_whole(out, comparison_csv(found.trial).encode()),
            lambda _: self.bench.notice.emit(say("Comparison written to {out}.", out=out)),
        )

    def _save_picture(self, out: Path) -> None:
        if self.compared.grab().save(str(out)):
            self.bench.notice.emit(say("Picture of the comparison written to {out}.", out=out))
        else:
            self.bench.trouble.emit(say("{out} cannot be written; choose another folder.", out=out))


def _holder(layout: QVBoxLayout) -> QWidget:
    layout.setContentsMargins(0, 0, 0, 0)
    holder = QWidget()
    holder.setLayout(layout)
    return holder
