"""Saving a trip's rows as they are typed; what cannot be saved now is kept until it can."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QObject, QTimer, Signal

from planner.errors import PlannerError
from planner.logbook import Change, Haul, Logbook, LogbookError, Trip, TripKey
from planner.ui.workbench import Workbench

_RETRY_MS = 20_000


@dataclass(frozen=True)
class Unsaved:
    """A trip as it is on screen and not yet in the file; details: None where untouched."""

    hauls: tuple[Haul, ...]
    details: Trip | None
    change: str


class HaulSaver(QObject):
    """Sends trips to the log, in the order of the changes.

    settled: everything on its way is in the log or known not to be. kept: emitted with why
    something could not be written; it is kept here, tried again, and lost only on quitting.
    refused: emitted with why the log does not take something; the log's own rows hold.
    """

    settled = Signal()
    kept = Signal(str)
    refused = Signal(str)

    def __init__(self, bench: Workbench, parent: QObject) -> None:
        super().__init__(parent)
        self.bench = bench
        self.under_way = 0
        self.unsaved: dict[TripKey, Unsaved] = {}
        # A disk that was full or a drive that was away may be back without anybody's doing.
        self._again = QTimer(self, interval=_RETRY_MS)
        self._again.timeout.connect(self.retry)

    def save(
        self, trip: TripKey, hauls: Sequence[Haul], change: str, details: Trip | None = None
    ) -> None:
        """Save a trip's rows as one change with a name; they are the newest from now on."""
        before = self.unsaved.get(trip)
        if details is None and before is not None:
            details = before.details
        entry = Unsaved(tuple(hauls), details, change)
        self.unsaved[trip] = entry
        self._send(trip, entry)

    def retry(self) -> None:
        """Try again to save what could not be saved."""
        if self.under_way == 0:
            for trip, entry in tuple(self.unsaved.items()):
                self._send(trip, entry)

    def forget(self, trip: TripKey) -> None:
        """Let go of what could not be saved of a trip, as when it is deleted."""
        self.unsaved.pop(trip, None)

    def _send(self, trip: TripKey, entry: Unsaved) -> None:
        self.under_way += 1
        self.bench.change_log(
            partial(_written, trip, entry),
            lambda _: self._done(trip, entry),
            lambda error: self._failed(trip, entry, error),
        )

    def _done(self, trip: TripKey, entry: Unsaved) -> None:
        self.under_way = max(self.under_way - 1, 0)
        if self.unsaved.get(trip) is entry:
            del self.unsaved[trip]
        self._settle()

    def _failed(self, trip: TripKey, entry: Unsaved, error: PlannerError) -> None:
        self.under_way = max(self.under_way - 1, 0)
        if isinstance(error, LogbookError):
            self._settle()
            self.kept.emit(str(error))
            return
        if self.unsaved.get(trip) is entry:
            del self.unsaved[trip]
        self._settle()
        self.refused.emit(str(error))

    def _settle(self) -> None:
        if self.unsaved and not self._again.isActive():
            self._again.start()
        elif not self.unsaved:
            self._again.stop()
        if self.under_way == 0:
            self.settled.emit()


def _written(trip: TripKey, entry: Unsaved, book: Logbook) -> Change:
    name, place = trip
    return book.save_trip(name, entry.hauls, entry.details, change=entry.change, place=place)
