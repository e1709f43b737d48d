"""Offsets from a reference place: typed, or fitted from a handful of waters that were seen."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.sites import list_places
from planner.sites.book import PlaceEntry
from planner.sites.editing import number_or_text
from planner.tides.offset_fit import FittedOffsets
from planner.ui.parts import body, button, caution, heading, quiet, refill
from planner.ui.places.edit_section import table_in, text_of
from planner.ui.places.observed_rows import read_cells, seen_file, write_cells
from planner.ui.places.offset_fits import fit_from_seen, fit_texts, fitted_fields
from planner.ui.places.rows_editor import RowsEditor
from planner.ui.places.tabled_form import KINDS, TabledForm
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.units import LengthUnit
from planner.words import say

# row, words, and what stands in an empty field
_ROWS: Final = (
    ("minutes", say("Later than there, minutes"), ""),
    ("factor", say("Height there times"), "1"),
    ("add", say("then plus"), "0"),
)


@dataclass(frozen=True)
class Whose:
    """The place that is edited, as far as a fit needs it."""

    folder: Path
    zone: str
    unit: LengthUnit


class OffsetsForm(QWidget):
    """Which place, and how much later and higher; beside it the fit, taken or not.

    Differences are one for every tide (minutes, then a factor, then an addition), or tabled by
    time of day and height. changed: after every change by the user.
    """

    changed = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.whose: Callable[[], Whose] | None = None
        self._fit: FittedOffsets | None = None
        self._seen_name = ""
        self.reference = QComboBox()
        self.reference.setAccessibleName(say("Reference place"))
        self.reference.activated.connect(lambda _: self.changed.emit())
        self.reference.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.wrong = caution()
        self.wrong.hide()
        self.alike = QRadioButton(say("One diff&erence for every tide"))
        self.by_table = QRadioButton(say("By time of day and hei&ght (interpolated)"))
        group = QButtonGroup(self)
        for each in (self.alike, self.by_table):
            group.addButton(each)
        group.buttonClicked.connect(lambda _: self._choose())
        self.form = QFormLayout()
        self.form.addRow(say("&Reference place"), self.reference)
        self.fields: dict[str, QLineEdit] = {}
        self.labels: list[QLabel] = []
        self.grid = QWidget()
        grid = QGridLayout(self.grid)
        grid.setContentsMargins(0, 0, 0, 0)
        for column, kind in enumerate(("high", "low"), start=1):
            grid.addWidget(QLabel(KINDS[kind]), 0, column)
        for row, (key, words, empty) in enumerate(_ROWS, start=1):
            label = QLabel(words)
            self.labels.append(label)
            grid.addWidget(label, row, 0)
            for column, kind in enumerate(("high", "low"), start=1):
                field = QLineEdit()
                field.setAccessibleName(f"{KINDS[kind]}: {words.lower()}")
                field.setPlaceholderText(empty)
                field.textEdited.connect(lambda _: self.changed.emit())
                grid.addWidget(field, row, column)
                self.fields[f"{kind}_{key}"] = field
        column_box = QVBoxLayout(self)
        column_box.setContentsMargins(0, 0, 0, 0)
        column_box.addLayout(self.form)
        column_box.addWidget(self.alike)
        column_box.addWidget(self.by_table)
        column_box.addWidget(self.grid)
        self.tabled = TabledForm()
        self.tabled.changed.connect(self.changed)
        column_box.addWidget(self.tabled)
        column_box.addWidget(self.wrong)
        column_box.addWidget(self._make_fit())
        column_box.addStretch(1)

    def _make_fit(self) -> QWidget:
        self.seen = RowsEditor(
            say("Waters seen"),
            say("Add a water"),
            (say("Local time"), say("Height"), say("High or low")),
        )
        self.seen.changed.connect(self._keep_seen)
        self.begin_fit = button(say("Fit offsets to these"), self.fit)
        self.fit_said = QVBoxLayout()
        self.take = button(say("Take these offsets"), self._take)
        self.leave = button(
            say("Leave them"), self._put_away, say("Keep the offsets that are there")
        )
        buttons = QHBoxLayout()
        buttons.addWidget(self.begin_fit)
        buttons.addWidget(self.take)
        buttons.addWidget(self.leave)
        buttons.addStretch(1)
        self.seen_hint = quiet()
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(heading(say("Or fit them to waters you saw here")))
        column.addWidget(self.seen_hint)
        column.addWidget(self.seen)
        column.addLayout(self.fit_said)
        column.addLayout(buttons)
        self._put_away()
        return holder

    # -- fields ------------------------------------------------------------------------------

    def show_table(self, offsets: Mapping[str, Any]) -> None:
        """Fill the fields from [water.offsets]."""
        self._show_kind(tabled="tabled" in offsets)
        self.tabled.show_table(table_in(offsets, "tabled"))
        for key, field in self.fields.items():
            field.setText(text_of(offsets.get(key)))
        self._show_reference(text_of(offsets.get("reference")))
        self._put_away()

    def _show_kind(self, *, tabled: bool) -> None:
        (self.by_table if tabled else self.alike).setChecked(True)
        self.grid.setVisible(not tabled)
        self.tabled.setVisible(tabled)

    def _choose(self) -> None:
        self._show_kind(tabled=self.by_table.isChecked())
        self.changed.emit()

    def _show_reference(self, wanted: str) -> None:
        def fill(entries: list[PlaceEntry]) -> None:
            self.reference.clear()
            self.reference.addItem(say("choose a place"), "")
            for entry in entries:
                self.reference.addItem(entry.name, entry.path.name)
            known = {entry.name.casefold(): entry.path.name for entry in entries}
            at = self.reference.findData(wanted)
            if at < 0 and known.get(wanted.casefold()):
                at = self.reference.findData(known[wanted.casefold()])
                self.reference.setItemData(at, wanted)  # as the file writes it
            elif at < 0 and wanted:
                self.reference.addItem(wanted, wanted)
                at = self.reference.count() - 1
            self.reference.setCurrentIndex(max(0, at))

        fill([])
        self.bench.desk.start("references", "", lambda _: list_places(), fill)

    def show_unit(self, unit: str) -> None:
        """Name the unit of additions and of heights seen."""
        for kind in ("high", "low"):
            self.fields[f"{kind}_add"].setPlaceholderText(f"0 {unit}")
        self.tabled.show_unit(unit)
        self.seen.set_columns(
            (say("Local time"), say("Height, {unit}", unit=unit), say("High or low"))
        )
        self.seen_hint.setText(
            say(
                "Three or more of each kind: times on the clock here, such as 2026-07-04 "
                "06:12, heights in {unit} above the datum of this place. They are kept "
                "for the check, too.",
                unit=unit,
            )
        )

    def show_seen(self, name: str) -> None:
        """Show the waters that are kept for the place."""
        self._seen_name = name
        self.seen.show_rows(read_cells(seen_file(name)))

    def table(self) -> dict[str, Any]:
        """Return [water.offsets] as the fields say."""
        reference = self.reference.currentData() or ""
        if self.by_table.isChecked():
            return {"reference": reference, "tabled": self.tabled.table()}
        values = {key: number_or_text(field.text()) for key, field in self.fields.items()}
        return {"reference": reference, **values}

    # -- fitting -----------------------------------------------------------------------------

    def _keep_seen(self) -> None:
        name = self._seen_name
        rows = [(time, height, kind) for time, height, kind in self.seen.rows()]
        self.bench.clerk.start(
            "seen",
            say("Keeping the waters"),
            lambda _: write_cells(seen_file(name), rows),
            _nothing,
        )
        self._put_away()
        self.changed.emit()

    def fit(self) -> None:
        """Fit offsets to the waters seen, elsewhere than on this thread."""
        whose, reference = self.whose, str(self.reference.currentData() or "")
        if whose is None:
            return
        if not reference:
            self._say([caution(say("Choose the reference place first."))])
            return
        place, name = whose(), self._seen_name
        # On the one thread that also keeps the rows, so that a fit never reads older ones.
        self.bench.clerk.start(
            "fit offsets",
            say("Fitting the offsets"),
            lambda _: fit_from_seen(name, reference, place.folder, place.zone, place.unit),
            self._fitted,
            self._not_fitted,
        )

    def _fitted(self, fit: FittedOffsets) -> None:
        self._fit = fit
        self._say([body(text) for text in fit_texts(fit, self.bench.state.style)])
        self.take.show()
        self.leave.show()

    def _not_fitted(self, error: PlannerError) -> None:
        self._put_away()
        self._say([caution(str(error))])

    def _say(self, words: Sequence[QWidget]) -> None:
        refill(self.fit_said, words)

    def _put_away(self) -> None:
        self._fit = None
        self._say([])
        self.take.hide()
        self.leave.hide()

    def _take(self) -> None:
        fit, whose = self._fit, self.whose
        if fit is None or whose is None:
            return
        self._show_kind(tabled=False)
        fitted = fitted_fields(fit, whose().unit)
        for key, field in self.fields.items():
            field.setText(text_of(fitted.get(key)))
        self._put_away()
        self._say([quiet(say("Taken over. Nothing is saved yet."))])
        self.changed.emit()


def _nothing(_: object) -> None:
    """Rows that are kept change nothing on screen."""
