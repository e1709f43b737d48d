"""What belongs to a trip as a whole: crew, weather, water, notes."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QWidget

from planner.logbook import Trip
from planner.logbook.columns import CellError, read_measure
from planner.phrasing import Style
from planner.ui.theme import SPACE
from planner.units import celsius_to

_NAMES: Final = ("crew", "water", "weather", "notes")


class TripDetails(QWidget):
    """A line of fields; each is saved when it is left.

    changed: emitted with the trip and what changed. refused: with a sentence.
    """

    changed = Signal(object, str)
    refused = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._trip: Trip | None = None
        self._style = Style()
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE // 2)
        self._water_label = QLabel("Water")
        self.crew = self._field(row, QLabel("Crew"), "", 1)
        self.water = self._field(row, self._water_label, "", 1)
        self.weather = self._field(row, QLabel("Weather"), "in your words", 3)
        self.notes = self._field(row, QLabel("Notes"), "", 4)

    def _field(self, row: QHBoxLayout, label: QLabel, hint: str, share: int) -> QLineEdit:
        line = QLineEdit()
        line.setPlaceholderText(hint)
        line.setMinimumWidth(48)
        label.setBuddy(line)
        line.editingFinished.connect(self._left)
        row.addWidget(label)
        row.addWidget(line, share)
        return line

    def show_trip(self, trip: Trip, style: Style, editable: bool) -> None:
        """Show a trip's details; a field that is being typed in keeps its text."""
        other = self._trip is None or (trip.name, trip.place) != (self._trip.name, self._trip.place)
        self._trip, self._style = trip, style
        self._water_label.setText(f"Water °{style.temperature}")
        for line, text in self._texts(trip):
            line.setReadOnly(not editable)
            if other or not (line.hasFocus() and line.isModified()):
                line.setText(text)

    def _texts(self, trip: Trip) -> list[tuple[QLineEdit, str]]:
        water = "" if trip.water_c is None else _shown(trip.water_c, self._style)
        crew = "" if trip.crew is None else str(trip.crew)
        return [
            (self.crew, crew),
            (self.water, water),
            (self.weather, trip.weather),
            (self.notes, trip.notes),
        ]

    def _left(self) -> None:
        if self._trip is None:
            return
        was = dict(self._texts(self._trip))
        new = {line: line.text().strip() for line in was}
        if new == was:
            return
        try:
            trip = replace(
                self._trip,
                crew=_crew(new[self.crew]),
                # Typed again as it stood, the reading keeps the digits that are not shown.
                water_c=self._trip.water_c
                if new[self.water] == was[self.water]
                else _water_c(new[self.water], self._style),
                weather=new[self.weather],
                notes=new[self.notes],
            )
        except CellError as error:
            self.refused.emit(f"Not saved. The entry {error.what}; {error.remedy}.")
            return
        names = {
            self.crew: "crew",
            self.water: "water",
            self.weather: "weather",
            self.notes: "notes",
        }
        what = " and ".join(names[line] for line in was if new[line] != was[line])
        self._trip = trip
        self.changed.emit(trip, what)


def _shown(water_c: float, style: Style) -> str:
    return f"{round(celsius_to(water_c, style.temperature), 1):g}"


def _crew(text: str) -> int | None:
    if not text:
        return None
    if not re.fullmatch(r"\d{1,2}", text):
        raise CellError("is no number of people", "write digits such as 2, or leave it empty")
    return int(text)


def _water_c(text: str, style: Style) -> float | None:
    if not text:
        return None
    number = text.replace(",", ".").rstrip("°CFcf ")
    if style.temperature == "F":
        try:
            number = f"{(float(number) - 32) * 5 / 9:.3f}"
        except ValueError:
            raise CellError("is not a number", "write degrees, such as 75") from None
    return read_measure("water_c", number, decimal_comma=True)
