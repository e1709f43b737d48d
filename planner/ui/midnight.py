"""A window left open overnight is at the new day in the morning."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Final

from PySide6.QtCore import QObject, QTimer

from planner.ui.state import ViewState

_LOOK_MS: Final = 20_000


class Midnight(QObject):
    """Looks at the calendar now and then; `today` of the state follows it.

    A machine that slept over midnight is at the new day soon after it wakes.
    """

    def __init__(self, state: ViewState, calendar: Callable[[], date] = date.today) -> None:
        super().__init__()
        self._state, self._calendar = state, calendar
        self._timer = QTimer(self, interval=_LOOK_MS)
        self._timer.timeout.connect(self.look)
        self._timer.start()

    def look(self) -> None:
        """Turn to another day if there is one; the chosen day goes along if it was today."""
        before, now = self._state.today, self._calendar()
        if now != before:
            self._state.change(today=now, day=now if self._state.day == before else self._state.day)
