"""Constants fitted to a gauge's record: read elsewhere, shown with intervals, then taken."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta, timezone, tzinfo
from pathlib import Path
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QFileDialog, QFormLayout, QHBoxLayout, QVBoxLayout, QWidget

from planner.errors import PlannerError
from planner.sites.zones import load_zone, phase_reference_hours
from planner.tides.fit import FittedWater, fit_constants
from planner.tides.fit_words import fitted_rows, fitted_texts
from planner.tides.reading import read_levels
from planner.ui.parts import body, button, caution, heading, quiet, refill
from planner.ui.places.paste_form import Taken
from planner.ui.tables import RowsModel, rows_table
from planner.ui.workbench import Workbench
from planner.units import LengthUnit, metres_to
from planner.words import say

_KEY: Final = "fit record"
_PLACES: Final = 4


class RecordForm(QWidget):
    """Choice of a file, its unit and its clock; what was found in it; take it or leave it.

    taken: a `Taken`. cancelled: nothing is to be taken. latitude_deg: asks for the latitude of
    the place that is edited, None while it has none.
    """

    taken = Signal(object)
    cancelled = Signal()

    def __init__(self, bench: Workbench, latitude_deg: Callable[[], float | None]) -> None:
        super().__init__()
        self.bench, self.latitude_deg = bench, latitude_deg
        self._path: Path | None = None
        self._found: FittedWater | None = None
        self._place_unit: LengthUnit = "m"
        self.unit, self.clock = QComboBox(), QComboBox()
        self.unit.addItem(say("metres"), "m")
        self.unit.addItem(say("feet"), "ft")
        form = QFormLayout()
        form.addRow(say("Heights in the &file are in"), self.unit)
        form.addRow(say("Times &without an offset are on"), self.clock)
        for box in (self.unit, self.clock):
            box.activated.connect(lambda _: self._again())
        self.pick = button(
            say("Choose the file…"), self.pick_file, say("A table of observed levels, CSV")
        )
        self.take = button(say("Take these constants"), self._take)
        self.leave = button(say("Leave it"), self._cancel, say("Keep the constants that are there"))
        buttons = QHBoxLayout()
        for each in (self.pick, self.take, self.leave):
            buttons.addWidget(each)
        buttons.addStretch(1)
        self.words = QVBoxLayout()
        self.model = RowsModel(
            (say("Constituent"), say("Amplitude"), say("Phase lag, °"), say("Use")), numbers=(1, 2)
        )
        self.table = rows_table(self.model, say("Constants found in the record"), wide=3)
        self.table.setMinimumHeight(8 * self.fontMetrics().height())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(heading(say("Fit constants to a gauge's record")))
        column.addWidget(
            quiet(
                say(
                    "A CSV file with the header time,height: levels every hour or every six "
                    "minutes, 15 days at least, best a whole year. Gaps may stay empty."
                )
            )
        )
        column.addLayout(form)
        column.addLayout(self.words)
        column.addWidget(self.table, 1)
        column.addLayout(buttons)
        column.addStretch(0)

    def begin(self, place_unit: LengthUnit, zone: str, clocks: dict[str, str]) -> None:
        """Start without a file. clocks: words by fixed clock, as the file may be written."""
        self._place_unit, self._path = place_unit, None
        self.unit.setCurrentIndex(max(0, self.unit.findData(place_unit)))
        self.clock.clear()
        for value, words in clocks.items():
            self.clock.addItem(words, value)
        if zone and _known(zone):
            self.clock.addItem(say("the clock of {zone}, with its summer time", zone=zone), zone)
        self._show(None, [])
        self.pick.setFocus()

    def pick_file(self) -> None:
        """Let the user pick the record."""
        path, _ = QFileDialog.getOpenFileName(
            self, say("Observed levels"), "", say("Tables (*.csv *.txt)")
        )
        if path:
            self.read(Path(path))

    def read(self, path: Path) -> None:
        """Read a record and fit it, elsewhere than on this thread."""
        self._path = path
        latitude = self.latitude_deg()
        if latitude is None:
            words = say("Give the latitude of the place first, on the tab Place: the fit needs it.")
            self._show(None, [caution(words)])
            return
        unit: LengthUnit = "ft" if self.unit.currentData() == "ft" else "m"
        zone = _zone(str(self.clock.currentData()))
        self._show(None, [quiet(say("Fitting the tide in {name}…", name=path.name))])

        def work(_: object) -> FittedWater:
            return fit_constants(*read_levels(path, zone, unit), latitude)

        self.bench.desk.start(
            _KEY, say("Fitting the tide in the record"), work, self._fitted, self._no
        )

    def _again(self) -> None:
        if self._path is not None:
            self.read(self._path)

    def _fitted(self, found: FittedWater) -> None:
        self._show(found, [body(text) for text in fitted_texts(found, self._place_unit)])

    def _no(self, error: PlannerError) -> None:
        lines = str(error).splitlines()
        more = (
            [say("and {lines} more lines like these", lines=len(lines) - 6)]
            if len(lines) > 6
            else []
        )
        self._show(None, [caution("\n".join([*lines[:6], *more]))])

    def _show(self, found: FittedWater | None, words: list[QWidget]) -> None:
        self._found = found
        refill(self.words, words)
        self.table.setVisible(found is not None)
        self.take.setVisible(found is not None)
        if found is not None:
            columns = (
                say("Constituent"),
                say("Amplitude, {place_unit}", place_unit=self._place_unit),
                say("Phase lag, °"),
                say("Use"),
            )
            self.model.show(fitted_rows(found, self._place_unit), columns)
            self.take.setFocus()

    def _take(self) -> None:
        found, unit = self._found, self._place_unit
        if found is None or self._path is None:
            return
        constants = {
            each.constituent: {
                "amplitude": round(metres_to(each.amplitude_m, unit), _PLACES),
                "phase": round(each.phase_lag_deg, 1) % 360,
            }
            for each in found.constants()
        }
        level = round(metres_to(found.mean_level_m, unit), 3)
        words = say(
            "{constants} constituents and the mean level taken over from {name}; "
            "their lags are on UTC. The datum is now the zero of that record. "
            "Nothing is saved yet.",
            constants=len(constants),
            name=self._path.name,
        )
        self.taken.emit(Taken(constants, "UTC", words, level))

    def _cancel(self) -> None:
        self.bench.desk.stop(_KEY)
        self.cancelled.emit()


def _zone(clock: str) -> tzinfo:
    try:
        return timezone(timedelta(hours=phase_reference_hours(clock)))
    except ValueError:
        return load_zone(clock)


def _known(zone: str) -> bool:
    try:
        return bool(load_zone(zone))
    except KeyError:
        return False
