"""A small form for a new place: its name, where it is and its clock; the file holds the rest."""

from __future__ import annotations

import math

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFormLayout, QHBoxLayout, QLineEdit, QPushButton

from planner.errors import InputError, PlannerError
from planner.phrasing import typed_number
from planner.sites.keeping import new_place
from planner.ui.parts import Card, caution, quiet
from planner.ui.places.zone_field import ZoneField
from planner.ui.workbench import Workbench
from planner.words import say


class NewPlaceForm(Card):
    """Asks for what the file must have, writes it, and says where it is.

    written: the path of the new file.
    """

    written = Signal(object)
    cancelled = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.name = QLineEdit()
        self.latitude = QLineEdit()
        self.latitude.setPlaceholderText(say("38.2, north positive"))
        self.longitude = QLineEdit()
        self.longitude.setPlaceholderText(say("-76.1, east positive"))
        self.zone = ZoneField()
        self.zone.setPlaceholderText("America/New_York")
        form = QFormLayout()
        for label, box in (
            (say("&Name"), self.name),
            (say("&Latitude, degrees"), self.latitude),
            (say("L&ongitude, degrees"), self.longitude),
            (say("Time &zone"), self.zone),
        ):
            box.setMaximumWidth(360)
            form.addRow(label, box)
        self.wrong = caution()
        self.wrong.hide()
        self.write = QPushButton(say("Make the place"))
        self.write.setToolTip(say("Write its file, and go on to its water, spots and rules"))
        self.write.clicked.connect(lambda _=False: self.submit())
        cancel = QPushButton(say("Cancel"))
        cancel.clicked.connect(lambda _=False: self.cancelled.emit())
        for box in (self.name, self.latitude, self.longitude, self.zone):
            box.returnPressed.connect(self.submit)
        buttons = QHBoxLayout()
        buttons.addWidget(self.write)
        buttons.addWidget(cancel)
        buttons.addStretch(1)
        self.column.addWidget(
            quiet(
                say(
                    "A place file is written into your places, with remarks on what to fill in: "
                    "the water from an agency's constants or by offsets from another place, your "
                    "spots, the ramp, the rules. Then you fill in its water here."
                )
            )
        )
        self.column.addLayout(form)
        self.column.addWidget(self.wrong)
        self.column.addLayout(buttons)
        self.column.addStretch(1)

    def begin(self) -> None:
        """Start a new place with an empty form."""
        for box in (self.name, self.latitude, self.longitude):
            box.clear()
        self.wrong.hide()
        self.name.setFocus()

    def submit(self) -> None:
        """Write the file, or say everything that is wrong."""
        name, zone = self.name.text(), self.zone.text().strip()
        latitude, longitude = _number(self.latitude.text()), _number(self.longitude.text())
        self.bench.clerk.start(
            "new place",
            say("Writing the place file"),
            lambda _: new_place(name, latitude, longitude, zone),
            self.written.emit,
            self._refuse,
        )

    def _refuse(self, error: PlannerError) -> None:
        problems = error.problems if isinstance(error, InputError) else (error,)
        self.wrong.setText("\n".join(f"⚠ {problem}" for problem in problems))
        self.wrong.show()


def _number(text: str) -> float:
    """Return the number of degrees written, NaN when it is none."""
    try:
        return float(typed_number(text).replace("°", "").replace(",", ".").strip())
    except ValueError:
        return math.nan
