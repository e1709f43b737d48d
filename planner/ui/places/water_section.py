"""What the tide of a place is made of: constants, typed or pasted, or offsets from elsewhere."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from functools import cached_property
from typing import Any, Final

from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from planner.errors import Problem
from planner.phrasing import from_utc_text
from planner.sites.editing import Wanted, number_or_text, under_names_in_use
from planner.sites.zones import load_zone
from planner.ui.parts import button, quiet
from planner.ui.places.edit_section import Section, Unit, align_fields, table_in, text_of
from planner.ui.places.offsets_form import OffsetsForm
from planner.ui.places.paste_form import PasteForm, Taken, as_rows
from planner.ui.places.record_form import RecordForm
from planner.ui.places.rows_editor import RowsEditor
from planner.ui.places.tabled_form import KINDS, words_of_field
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.units import LengthUnit
from planner.words import say

_IN_WORDS: Final = {
    f"water.offsets.{kind}_{key}": f"water.offsets.{water.lower()}, {words}"
    for kind, water in KINDS.items()
    for key, words in (
        ("minutes", say("minutes")),
        ("factor", say("times")),
        ("add", say("plus")),
    )
}
_RULES: Final = (
    (say("held at mid-year, as agency tables do"), "yearly"),
    (say("worked out for every instant"), "continuous"),
)


class WaterSection(Section):
    """Constants with their mean level, clock and node rule, or offsets.

    latitude_deg: tells where the place is.
    """

    def __init__(self, bench: Workbench, latitude_deg: Callable[[], float | None]) -> None:
        super().__init__()
        self._bench, self._latitude_deg = bench, latitude_deg
        self._unit, self._zone = "m", ""
        self._written: frozenset[str] = frozenset()
        self.by_constants = QRadioButton(say("&Constants of a station here"))
        self.by_offsets = QRadioButton(say("&Offsets from another place"))
        self.by_constants.setToolTip(
            say("You have amplitudes and phase lags for this place, from an agency or a gauge")
        )
        self.by_offsets.setToolTip(
            say("You know how much later and higher the water is here than at another place")
        )
        group = QButtonGroup(self)
        for each in (self.by_constants, self.by_offsets):
            group.addButton(each)
        group.buttonClicked.connect(lambda _: self._choose())
        # From the outside in: whatever is taken in takes all that it holds along, at a price.
        self._whole = QVBoxLayout(self)
        self._whole.setContentsMargins(0, SPACE, 0, 0)
        self.plain = QWidget()
        self._whole.addWidget(self.plain, 1)
        # The fields themselves and the forms over them: one is shown.
        self._one_shown: list[QWidget] = [self.plain]
        column, choice, level = QVBoxLayout(self.plain), QHBoxLayout(), QFormLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(choice)
        column.addWidget(self.note("water"))
        column.addLayout(level)
        choice.addWidget(self.by_constants)
        choice.addWidget(self.by_offsets)
        choice.addStretch(1)
        self.level, self._level_unit = QLineEdit(), Unit()
        self.level.setPlaceholderText(say("0.26: mean sea level above the datum"))
        words = say("&Mean level")
        self.add_field(level, words, self.level, "water.mean_level", self._level_unit)
        self.offsets = OffsetsForm(bench)
        self.offsets.changed.connect(self.changed)
        self.notes["water.offsets"] = self.offsets.wrong
        self._of_constants = QWidget()
        # One is shown; stacked, both would ask for the height of the higher.
        column.addWidget(self._of_constants, 1)
        column.addWidget(self.offsets, 1)
        self._fill_constants()
        align_fields(level, self._form, self.offsets.form, beside=self.offsets.labels)

    @cached_property
    def paste(self) -> PasteForm:
        """The form for a pasted table, made when asked for, as is the one for a record."""
        form = PasteForm()
        self._add_over(form)
        return form

    @cached_property
    def record(self) -> RecordForm:
        """The form for a gauge's record."""
        form = RecordForm(self._bench, self._latitude_deg)
        self._add_over(form)
        return form

    def _add_over(self, form: PasteForm | RecordForm) -> None:
        form.taken.connect(self._taken)
        form.cancelled.connect(lambda: self._show_over(self.plain))
        self._whole.addWidget(form, 1)
        self._one_shown.append(form)

    def _fill_constants(self) -> None:
        self.clock, self.rule = QComboBox(), QComboBox()
        for words, rule in _RULES:
            self.rule.addItem(words, rule)
        self.clock.setToolTip(
            say("As the table says: GMT, UTC or local. The wrong one shifts every tide by hours")
        )
        self.rule.setToolTip(
            say("Slow changes over 18.6 years. Agencies' own tables hold them through each year")
        )
        column, form = QVBoxLayout(self._of_constants), QFormLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(form)
        self._form = form
        self.add_field(
            form, say("Phase &lags are on the clock"), self.clock, "water.phase_reference"
        )
        self.add_field(form, say("&Node factors"), self.rule, "water.node_factors")
        self.constants = RowsEditor(
            say("Constituents"),
            say("Add a constituent"),
            (say("Constituent"), say("Amplitude"), say("Phase lag, °")),
        )
        self.constants.changed.connect(self.changed)
        self.begin_paste = button(
            say("Paste from an agency's page…"),
            self._begin_paste,
            say("Put a whole table of constants in at once"),
        )
        self.begin_record = button(
            say("Fit to a gauge's record…"),
            self._begin_record,
            say("Work constants out from hourly or six-minute levels in a CSV file"),
        )
        self.said = quiet()
        row = QHBoxLayout()
        column.addLayout(row)
        row.addWidget(self.begin_paste)
        row.addWidget(self.begin_record)
        row.addStretch(1)
        column.addWidget(self.said)
        column.addWidget(self.note("water.constituents"))
        column.addWidget(self.constants, 1)

    # -- fields ------------------------------------------------------------------------------

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        water = table_in(tables, "water")
        self._written = frozenset(water)
        self._in_use = dict(table_in(water, "constituents"))
        zone = tables.get("timezone")
        self._zone = zone if isinstance(zone, str) else ""
        self.level.setText(text_of(water.get("mean_level")))
        self._show_clock(text_of(water.get("phase_reference")) or "UTC")
        self.rule.setCurrentIndex(max(0, self.rule.findData(water.get("node_factors"))))
        self.constants.show_rows(as_rows(self._in_use))
        self.offsets.show_table(table_in(water, "offsets"))
        (self.by_offsets if "offsets" in water else self.by_constants).setChecked(True)
        self.said.setText(
            ""
            if self._in_use or "offsets" in water
            else say(
                "No constants yet. Copy the table of harmonic constituents from the agency's page "
                "of the nearest station and paste it here."
            )
        )
        self.said.setVisible(bool(self.said.text()))
        self._show_over(self.plain)
        self._show_page()

    def show_unit(self, unit: str) -> None:
        """Name the unit that amplitudes and mean level are in."""
        self._unit = unit
        self._level_unit.setText(unit)
        self.constants.set_columns(
            (say("Constituent"), say("Amplitude, {unit}", unit=unit), say("Phase lag, °"))
        )
        self.level.setPlaceholderText(say("in {unit}: mean sea level less the datum", unit=unit))
        self.offsets.show_unit(unit)

    def wanted(self) -> Wanted:
        by_offsets = self.by_offsets.isChecked()
        fields: dict[tuple[str, ...], Any] = {
            ("water", "mean_level"): number_or_text(self.level.text()),
            ("water", "constituents"): None if by_offsets else self._constituents(),
            ("water", "offsets"): self.offsets.table() if by_offsets else None,
        }
        for key, box, usual in (
            ("phase_reference", self.clock, "UTC"),
            ("node_factors", self.rule, "yearly"),
        ):
            value = box.currentData()
            needed = value != usual or key in self._written
            fields[("water", key)] = value if needed else None
        return fields

    def _constituents(self) -> dict[str, Any] | None:
        found: dict[str, Any] = {}
        for name, amplitude, lag in self.constants.rows():
            entry = {"amplitude": number_or_text(amplitude), "phase": number_or_text(lag)}
            # A name given twice must not hide the first: the checks name the second.
            found[f"{name} again" if name in found else name or "?"] = entry
        return found or None

    def show_problems(self, problems: Sequence[Problem]) -> list[Problem]:
        return super().show_problems([_as_here(each) for each in problems])

    # -- acts --------------------------------------------------------------------------------

    def _show_page(self) -> None:
        by_offsets = self.by_offsets.isChecked()
        self._of_constants.setVisible(not by_offsets)
        self.offsets.setVisible(by_offsets)

    def _choose(self) -> None:
        self._show_page()
        self.changed.emit()

    def show_zone(self, zone: str) -> None:
        """Offer the standard time of another zone as the clock of the lags."""
        self._zone = zone
        self._show_clock(str(self.clock.currentData()))

    def _clocks(self, in_use: str) -> dict[str, str]:
        clocks = {"UTC": say("UTC (Greenwich)")}
        standard = standard_clock(self._zone)
        if standard is not None:
            clocks.setdefault(standard, say("{clock}, the standard time here", clock=standard))
        clocks.setdefault(in_use, in_use)
        return clocks

    def _show_clock(self, value: str) -> None:
        self.clock.blockSignals(True)
        self.clock.clear()
        for each, words in self._clocks(value).items():
            self.clock.addItem(words, each)
        self.clock.setCurrentIndex(self.clock.findData(value))
        self.clock.blockSignals(False)

    def _show_over(self, shown: QWidget) -> None:
        for each in self._one_shown:
            each.setVisible(each is shown)

    def _begin_paste(self) -> None:
        clock = str(self.clock.currentData())
        self._show_over(self.paste)
        self.paste.begin(self._unit, self._clocks(clock), clock)

    def _begin_record(self) -> None:
        self._show_over(self.record)
        unit: LengthUnit = "ft" if self._unit == "ft" else "m"
        self.record.begin(unit, self._zone, self._clocks("UTC"))

    def _taken(self, taken: Taken) -> None:
        named = under_names_in_use(taken.constituents, self._in_use)
        self.constants.show_rows(as_rows(named))
        self._show_clock(taken.clock)
        if taken.mean_level is not None:
            self.level.setText(text_of(taken.mean_level))
        self.said.setText(taken.words)
        self.said.show()
        self._show_over(self.plain)
        # What is still missing comes next.
        (self.constants.table if self.level.text() else self.level).setFocus()
        self.changed.emit()


def _as_here(problem: Problem) -> Problem:
    """Return a problem of the file in the words of these fields."""
    if problem.where == "water" and not problem.value:
        remedy = say("paste or add constants, or choose offsets from another place")
        return replace(problem, remedy=remedy)
    if where := _IN_WORDS.get(problem.where):
        return replace(problem, where=where)
    if words := words_of_field(problem.where):
        remedy = say("fill in both columns") if "{" in problem.remedy else problem.remedy
        return replace(problem, where=f"water.offsets.{words}", remedy=remedy)
    return problem


def standard_clock(zone: str) -> str | None:
    """Return the standard time of a zone as a fixed clock, None for an unknown zone."""
    try:
        found = load_zone(zone)
    except KeyError:
        return None
    offsets = [datetime(2025, month, 1, tzinfo=found).utcoffset() for month in (1, 7)]
    return from_utc_text(min(each for each in offsets if each is not None))
