"""Constants pasted from an agency's page: what was understood is shown before it is taken."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from planner.constituents.pasting import Pasted, Role, understand
from planner.phrasing import number_text
from planner.ui.parts import body, button, caution, heading, quiet
from planner.ui.tables import RowsModel, rows_table
from planner.units import M_PER_FT
from planner.words import counted, say

_UNITS: Final = ((say("feet"), "ft"), (say("metres"), "m"), (say("centimetres"), "cm"))
_IN_METRES: Final[Mapping[str, float]] = {"ft": M_PER_FT, "m": 1.0, "cm": 0.01}
_GREAT: Final = frozenset({"M2", "S2", "N2", "K1", "O1"})
_ROLES: Final[Mapping[Role, str]] = {
    "number": say("number"),
    "amplitude": say("amplitude"),
    "lag": say("lag"),
    "speed": say("speed"),
    "other lag": say("other lag"),
    "other": say("other"),
}


@dataclass(frozen=True)
class Taken:
    """Constants taken over: in the unit of the place, with the clock of their lags.

    mean_level: in the same unit, None to keep the one that is there.
    """

    constituents: dict[str, dict[str, float]]
    clock: str
    words: str
    mean_level: float | None = None


def in_unit_of_place(pasted: Pasted, page: str, place: str) -> dict[str, dict[str, float]]:
    """Return pasted constants with their amplitudes in the place's unit, as printed if the same."""
    ratio = _IN_METRES[page] / _IN_METRES[place]
    return {
        each.name: {
            "amplitude": each.amplitude if page == place else round(each.amplitude * ratio, 4),
            "phase": each.phase_lag_deg,
        }
        for each in pasted.constants
    }


def understood_text(pasted: Pasted, text: str) -> str:
    """Return what was made of a paste, in words."""
    if not text.strip():
        return say(
            "Paste the table: names, amplitudes and phase lags, in whatever order they come."
        )
    count = len(pasted.constants)
    if not count:
        return say("No constants understood. A line needs a name, an amplitude and a phase lag.")
    roles = ", ".join(_ROLES[role] for role in pasted.columns)
    words = say(
        "{constituents} understood. Columns of numbers: ",
        constituents=counted(count, "constituent"),
    )
    return " ".join((f"{words}{roles}.", *dict.fromkeys(pasted.notes)))


def size_text(pasted: Pasted, unit: str) -> str:
    """Return what the amplitudes mean when read in a unit: the way to see a wrong one."""
    size = sum(each.amplitude for each in pasted.constants if each.name in _GREAT)
    if not size:
        return ""
    metres = 2 * size * _IN_METRES[unit]
    return say(
        "Read so, the water would move through about {metres:.1f} m "
        "({feet:.1f} ft) from low to high at large springs. If the water "
        "there does not, choose another unit.",
        metres=metres,
        feet=metres / M_PER_FT,
    )


class PasteForm(QWidget):
    """A box to paste into, a table of what it says, and the choice of unit and clock.

    taken: a `Taken`. cancelled: nothing is to be taken.
    """

    taken = Signal(object)
    cancelled = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._pasted, self._place_unit = understand(""), "m"
        self.box = QPlainTextEdit()
        self.box.setAccessibleName(say("Table of constants from an agency's page"))
        self.box.setPlaceholderText(
            say("Name   Amplitude   Phase\nM2     3.49        10.8\nK1     2.74        276.8")
        )
        self.box.setTabChangesFocus(True)
        self.box.setMinimumHeight(5 * self.fontMetrics().height())
        self.box.textChanged.connect(self._read)
        self.unit, self.clock = QComboBox(), QComboBox()
        self.unit.addItem(say("choose: the page does not say"), "")
        for words, unit in _UNITS:
            self.unit.addItem(words, unit)
        self.unit.currentIndexChanged.connect(lambda _: self._say())
        form = QFormLayout()
        form.addRow(say("Amplitudes on the &page are in"), self.unit)
        form.addRow(say("Phase &lags are on the clock"), self.clock)
        self.said, self.meaning = body(), body()
        self.left_out = caution()
        self.model = RowsModel(
            (say("Constituent"), say("Amplitude"), say("Phase lag, °")), numbers=(1, 2)
        )
        table = rows_table(self.model, say("What was understood"), wide=0)
        table.setMinimumHeight(7 * self.fontMetrics().height())
        self.take = button(say("Take these constants"), self._take)
        cancel = button(
            say("Leave it"), self.cancelled.emit, say("Keep the constants that are there")
        )
        buttons = QHBoxLayout()
        buttons.addWidget(self.take)
        buttons.addWidget(cancel)
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(heading(say("Paste constants from an agency's page")))
        column.addWidget(self.box, 1)
        column.addWidget(self.said)
        column.addWidget(self.left_out)
        # What has to be settled, what it means and the button stand over the long table, where
        # nobody has to look for them.
        column.addLayout(form)
        column.addWidget(self.meaning)
        column.addLayout(buttons)
        column.addWidget(table, 2)
        column.addWidget(
            quiet(
                say(
                    "Lags called G or Greenwich are on UTC; lags called local or kappa prime on "
                    "the station's standard time. A wrong clock moves every tide by hours."
                )
            )
        )

    def begin(self, place_unit: str, clocks: Mapping[str, str], clock: str) -> None:
        """Start with an empty box. clocks: words by what the file says; clock: the one in use."""
        self._place_unit = place_unit
        self.clock.clear()
        for value, words in clocks.items():
            self.clock.addItem(words, value)
        self.clock.setCurrentIndex(max(0, self.clock.findData(clock)))
        self.box.clear()
        self.unit.setCurrentIndex(0)
        self._read()
        self.box.setFocus()

    def _read(self) -> None:
        before = self._pasted.unit
        self._pasted = understand(self.box.toPlainText())
        if self._pasted.unit != before:
            self.unit.setCurrentIndex(max(0, self.unit.findData(self._pasted.unit or "")))
        if "local" in " ".join(self._pasted.notes) and self.clock.count() > 1:
            self.clock.setCurrentIndex(1)
        self._say()

    def _say(self) -> None:
        pasted, unit = self._pasted, str(self.unit.currentData())
        heading_text = say("Amplitude, {unit}", unit=unit) if unit else say("Amplitude")
        self.model.show(
            [
                (c.name, number_text(c.amplitude), number_text(c.phase_lag_deg))
                for c in pasted.constants
            ],
            (say("Constituent"), heading_text, say("Phase lag, °")),
        )
        self.said.setText(understood_text(pasted, self.box.toPlainText()))
        some = [*pasted.left_out[:5]]
        if len(pasted.left_out) > len(some):
            some.append(say("and {left_out} more lines", left_out=len(pasted.left_out) - len(some)))
        self.left_out.setText(say("⚠ Left out: {some}.", some="; ".join(some)) if some else "")
        self.left_out.setVisible(bool(some))
        self.meaning.setText(size_text(pasted, unit) if unit else "")
        self.meaning.setVisible(bool(self.meaning.text()))
        self.take.setEnabled(bool(pasted.constants) and bool(unit))
        self.take.setToolTip(
            "" if unit else say("Choose the unit of the amplitudes first: the page does not say it")
        )

    def _take(self) -> None:
        page, place = str(self.unit.currentData()), self._place_unit
        found = in_unit_of_place(self._pasted, page, place)
        changed = (
            ""
            if page == place
            else say(", amplitudes turned from {page} into {place}", page=page, place=place)
        )
        words = say(
            "{found} constituents taken over{changed}. Nothing is saved yet.",
            found=len(found),
            changed=changed,
        )
        self.taken.emit(Taken(found, str(self.clock.currentData()), words))


def as_rows(constituents: Mapping[str, Any]) -> list[tuple[str, ...]]:
    """Return constituents as rows of text."""
    from planner.ui.places.edit_section import text_of

    found: list[tuple[str, ...]] = []
    for name, entry in constituents.items():
        inside = entry if isinstance(entry, Mapping) else {}
        found.append((name, text_of(inside.get("amplitude")), text_of(inside.get("phase"))))
    return found
