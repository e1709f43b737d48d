"""Showing what changed once somebody sees it: what is hidden costs the window nothing."""

from __future__ import annotations

from abc import abstractmethod

from PySide6.QtGui import QShowEvent

from planner.ui.workbench import Workbench


class WhenSeen:
    """A widget's other base: it is refreshed at once while it is seen, else when it comes up.

    Then in a turn of its own, as several parts may come up together.
    """

    bench: Workbench
    _stale = False

    @abstractmethod
    def refresh(self) -> None:
        """Show everything as it is now."""

    def refresh_when_seen(self) -> None:
        """Ask for a refresh."""
        if self.isVisible():  # type: ignore[attr-defined]
            self._stale = False
            self.refresh()
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)  # type: ignore[misc]
        if self._stale:
            self.bench.turns.take(self, self._catch_up)  # type: ignore[arg-type]

    def _catch_up(self) -> None:
        if self._stale:
            self.refresh_when_seen()
