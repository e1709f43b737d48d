"""A field for the name of a time zone, which offers the names there are."""

from __future__ import annotations

from zoneinfo import available_timezones

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QCompleter, QLineEdit


class ZoneField(QLineEdit):
    """Offers every zone with the typed letters anywhere in its name; picked: one was chosen."""

    picked = Signal()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if self.completer() is None:
            # Only now: the names are read from some hundred files.
            zones = QCompleter(sorted(available_timezones()), self)
            zones.setFilterMode(Qt.MatchFlag.MatchContains)
            zones.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            zones.activated.connect(lambda _: self.picked.emit())
            self.setCompleter(zones)
