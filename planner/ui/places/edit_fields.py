"""Every field of a place file, on tabs: what they show, what they say, what is wrong in them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

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
    """A tab for each section; edited: after every change by the user."""

    edited = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("What to edit"))
        self.place = PlaceSection()
        self.water = WaterSection(bench, self.place.latitude_deg)
        self.spots, self.temperature = SpotsSection(), TemperatureSection()
        self.rules, self.free = RulesSection(bench.state), FreeSection(bench)
        self._sections: tuple[tuple[str, Section], ...] = (
            (say("Water"), self.water),
            (say("Place"), self.place),
            (say("Spots and ramp"), self.spots),
            (say("Temperature"), self.temperature),
            (say("Rules"), self.rules),
            (say("Free days"), self.free),
        )
        for words, section in self._sections:
            section.changed.connect(self.edited)
            self.addTab(_page(section, words), words)
        self.place.units.currentIndexChanged.connect(lambda _: self._show_unit())
        self.place.zone.textChanged.connect(self.water.show_zone)
        self.place.zone.textChanged.connect(self.free.show_zone)

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


def _page(section: Section, words: str) -> QWidget:
    column = QVBoxLayout()
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(section)
    return scrolled(column, words)
