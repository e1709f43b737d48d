"""Work of the window's own thread, cut in pieces: between two it paints and takes keys."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer
from shiboken6 import isValid

Piece = Callable[[], object]


class Turns(QObject):
    """Does pieces of work one a turn of the event loop, in the order they were asked for."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._waiting: deque[tuple[QObject, Piece]] = deque()
        self._busy = self._gave_way = False
        # Not a single shot of no time: Qt would do all of those in one turn.
        self._timer = QTimer(self, interval=0)
        self._timer.timeout.connect(self._next)

    def take(self, owner: QObject, *pieces: Piece) -> None:
        """Do pieces for an owner, in place of those it still waits for; not once it is gone."""
        self.drop(owner)
        self.then(owner, *pieces)

    def then(self, owner: QObject, *pieces: Piece) -> None:
        """Do pieces for an owner after all that waits."""
        self._waiting.extend((owner, piece) for piece in pieces)
        self._timer.start()

    def drop(self, owner: QObject) -> None:
        """Give up what an owner still waits for."""
        self._waiting = deque(each for each in self._waiting if each[0] is not owner)

    def give_way(self) -> None:
        """Leave this turn to painting, unless the turn before was left to it."""
        self._busy = True

    @property
    def idle(self) -> bool:
        """Whether nothing waits for its turn."""
        return not self._waiting

    def _next(self) -> None:
        if not self._waiting:
            self._timer.stop()
            return
        self._gave_way = self._busy and not self._gave_way
        self._busy = False
        if self._gave_way:
            return
        owner, piece = self._waiting.popleft()
        if isValid(owner):
            piece()
