"""Every field of a place file, on tabs: what they show, what they say, what is wrong in them."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout

from planner.errors import Problem
from planner.sites.editing import Wanted
from planner.ui.parts import Tabs, scrolled
from planner.ui.places.edit_section import Section
from planner.ui.places.free_section import FreeSection
from planner.ui.places.place_sections import PlaceSection, SpotsSection, TemperatureSection
from planner.ui.places.rules_section import RulesSection
from planner.ui.places.water_section import WaterSection
from planner.ui.workbench import Workbench
from planner.units import LengthUnit
from planner.words import say


class EditFields(Tabs):
    """A tab for each section, made by `steps`; edited: after every change by the user."""

    edited = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("What to edit"))
        self._bench = bench
        self._sections: list[tuple[str, Section]] = []

    def steps(self) -> tuple[Callable[[], object], ...]:
        """Return what makes the fields, a section each: at once they would hold up the window.

        In the order of the tabs, which is the one that the Tab key follows.
        """
        return (
            self._make_water,
            self._make_place,
            self._make_spots,
            self._make_temperature,
            self._make_rules,
            self._make_free,
        )

    def _make_water(self) -> None:
        self.water = WaterSection(self._bench, lambda: self.place.latitude_deg())
        self._add(say("Water"), self.water)

    def _make_place(self) -> None:
        self.place = PlaceSection()
        self.place.units.currentIndexChanged.connect(lambda _: self._show_unit())
        self.place.zone.textChanged.connect(self.water.show_zone)
        self._add(say("Place"), self.place)

    def _make_spots(self) -> None:
        self.spots = SpotsSection()
        self._add(say("Spots and ramp"), self.spots)

    def _make_temperature(self) -> None:
        self.temperature = TemperatureSection()
        self._add(say("Temperature"), self.temperature)

    def _make_rules(self) -> None:
        self.rules = RulesSection(self._bench.state)
        self._add(say("Rules"), self.rules)

    def _make_free(self) -> None:
        self.free = FreeSection(self._bench)
        self.place.zone.textChanged.connect(self.free.show_zone)
        self._add(say("Free days"), self.free)

    def _add(self, words: str, section: Section) -> None:
        self._sections.append((words, section))
        section.changed.connect(self.edited)
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        self.addTab(scrolled(column, words), words)
        column.addWidget(section)

    @property
    def unit(self) -> LengthUnit:
        """The unit of every height of the place."""
        return "ft" if self.place.unit == "ft" else "m"

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        """Fill every field from the tables of a place file."""
        for _, section in self._sections:
            section.blockSignals(True)
            section.show_tables(tables)
            section.blockSignals(False)
        self._show_unit()

    def wanted(self) -> Wanted:
        """Return what every field holds, by its path in the file."""
        found: dict[tuple[str, ...], object] = {}
        for _, section in self._sections:
            found.update(section.wanted())
        return found

    def show_problems(self, problems: Sequence[Problem]) -> list[Problem]:
        """Show each problem under its field and mark its tab; return those of no field."""
        left = list(problems)
        for at, (words, section) in enumerate(self._sections):
            rest = section.show_problems(left)
            self.setTabText(at, f"{words} ⚠" if len(rest) < len(left) else words)
            left = rest
        return left

    def _show_unit(self) -> None:
        self.water.show_unit(self.place.unit)
        self.spots.show_unit(self.place.unit)
