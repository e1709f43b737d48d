"""What belongs to a trip as a whole: crew, water, kitchen count, weather, notes."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from planner.logbook import Trip
from planner.logbook.columns import CellError, read_count, read_water
from planner.logbook.rules import trip_problems
from planner.phrasing import Style, number_text
from planner.ui.flow import Flow
from planner.ui.parts import set_margins
from planner.ui.theme import SPACE
from planner.units import TemperatureUnit, celsius_to
from planner.words import say

_NUMBER_EM: Final = 7  # letters
_WORDS_EM: Final = 90  # letters: a longer field would hold no more that can be read at once
_NAMES: Final = (
    say("crew"),
    say("water"),
    say("kitchen count"),
    say("kitchen count"),
    say("weather"),
    say("notes"),
)


class TripDetails(QWidget):
    """Two lines of fields; each is saved when it is left.

    changed: emitted with the trip and what changed. refused: with a sentence.
    """

    changed = Signal(object, str)
    refused = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._trip: Trip | None = None
        self._style = Style()
        self._labels: dict[QLineEdit, QLabel] = {}
        numbers, words = Flow(), QHBoxLayout()
        words.setSpacing(SPACE // 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addLayout(numbers)
        column.addLayout(words)
        self._water_label = QLabel(say("Water"))
        self.crew = self._number(numbers, QLabel(say("Crew")))
        self.water = self._number(numbers, self._water_label)
        self.picked = self._number(numbers, QLabel(say("Kitchen: picked")))
        self.light = self._number(numbers, QLabel(say("light")))
        self.light.setAccessibleName(say("Light ones of those picked in the kitchen"))
        self.picked.setToolTip(say("Crabs of the whole catch that were picked or cracked open"))
        self.light.setToolTip(say("How many of the picked were light"))
        self.weather, self.notes = (
            self._field(QLabel(say("Weather"))),
            self._field(QLabel(say("Notes"))),
        )
        self.weather.setPlaceholderText(say("in your words"))
        for line, share in ((self.weather, 3), (self.notes, 4)):
            words.addWidget(self._labels[line])
            words.addWidget(line, share)
            line.setMaximumWidth(_WORDS_EM * line.fontMetrics().averageCharWidth())
        words.addStretch(0)

    def _number(self, row: Flow, label: QLabel) -> QLineEdit:
        """Return a short field that stays beside its label wherever the line breaks."""
        line = self._field(label)
        line.setFixedWidth(_NUMBER_EM * line.fontMetrics().averageCharWidth())
        pair = QWidget()
        inside = QHBoxLayout(pair)
        set_margins(inside, 0, 0, SPACE // 2, 0)
        inside.addWidget(label)
        inside.addWidget(line)
        row.addWidget(pair)
        return line

    def _field(self, label: QLabel) -> QLineEdit:
        line = QLineEdit()
        line.setMinimumWidth(48)
        label.setBuddy(line)
        self._labels[line] = label
        line.editingFinished.connect(self._left)
        return line

    def show_trip(self, trip: Trip, style: Style, editable: bool) -> None:
        """Show a trip's details; a field that is being typed in keeps its text."""
        other = self._trip is None or (trip.name, trip.place) != (self._trip.name, self._trip.place)
        self._trip, self._style = trip, style
        self._water_label.setText(say("Water °{temperature}", temperature=style.temperature))
        for line, text in self._texts(trip):
            line.setReadOnly(not editable)
            if other or not (line.hasFocus() and line.isModified()):
                line.setText(text)

    def _texts(self, trip: Trip) -> list[tuple[QLineEdit, str]]:
        water = "" if trip.water_c is None else _shown(trip.water_c, self._style)
        return [
            (self.crew, _count(trip.crew)),
            (self.water, water),
            (self.picked, _count(trip.kitchen_picked)),
            (self.light, _count(trip.kitchen_light)),
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
                kitchen_picked=_read(new[self.picked]),
                kitchen_light=_read(new[self.light]),
                weather=new[self.weather],
                notes=new[self.notes],
            )
            for problem in trip_problems(trip):
                if problem.where == "kitchen_light":
                    raise CellError(problem.what, problem.remedy)
        except CellError as error:
            self.refused.emit(
                say("Not saved. The entry {what}; {remedy}.", what=error.what, remedy=error.remedy)
            )
            return
        names = dict(zip(was, _NAMES, strict=True))
        changed = dict.fromkeys(names[line] for line in was if new[line] != was[line])
        what = say(" and ").join(changed)
        self._trip = trip
        self.changed.emit(trip, what)


def _count(number: int | None) -> str:
    return "" if number is None else str(number)


def _read(text: str) -> int | None:
    return read_count(text) if text else None


def _shown(water_c: float, style: Style) -> str:
    return number_text(round(celsius_to(water_c, style.temperature), 1))


def _crew(text: str) -> int | None:
    if not text:
        return None
    if not re.fullmatch(r"\d{1,2}", text):
        raise CellError(
            say("is no number of people"), say("write digits such as 2, or leave it empty")
        )
    return int(text)


def _water_c(text: str, style: Style) -> float | None:
    if not text:
        return None
    said: tuple[TemperatureUnit, ...] = ("C", "F")
    unit = next((each for each in said if text.upper().endswith(each)), style.temperature)
    water_c = read_water(text.rstrip("°CFcf "), decimal_comma=True, unit=unit)
    return water_c if unit == "C" else round(water_c, 3)
