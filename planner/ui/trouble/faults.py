"""Where every fault of the program ends up: in the log, and once in front of the user.

Errors on the window's thread, in jobs of a desk and in plain threads all come here; the window
goes on living.
"""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Callable, Mapping
from types import TracebackType
from typing import Final

from PySide6.QtCore import QObject, Qt, Signal

from planner import __version__
from planner.faults import keep, report, signature

_MOST_KEPT: Final = 3  # of one fault: one that comes with every repaint would fill the log

Facts = Callable[[], Mapping[str, str]]


class FaultCatcher(QObject):
    """Catches what nothing else has caught, while it is installed.

    fault: a fault met for the first time, with its report. again: one that was shown before.
    Both are emitted on the thread of this object, after the work at hand has ended.
    facts: what to put into a report beside the versions.
    """

    fault = Signal(object, str)
    again = Signal(object)
    _caught = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.facts: Facts = dict
        self._met: dict[tuple[str, str], int] = {}
        self._before: tuple[object, object] | None = None
        # Queued also on the same thread: a window must not open in the middle of a paint.
        self._caught.connect(self._tell, Qt.ConnectionType.QueuedConnection)

    def install(self) -> None:
        """Take the place of Python's own hooks."""
        self._before = sys.excepthook, threading.excepthook
        sys.excepthook = self._of_this_thread
        threading.excepthook = self._of_a_thread

    def remove(self) -> None:
        """Put the hooks back that were there before."""
        if self._before is not None:
            sys.excepthook, threading.excepthook = self._before  # type: ignore[assignment]
            self._before = None

    def _of_this_thread(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        if not isinstance(error, Exception):  # the user's own Ctrl+C
            sys.__excepthook__(kind, error, trace)
            return
        if "FULLSHELL_TRACEBACK" in os.environ:  # whoever works on the program reads it there
            sys.__excepthook__(kind, error, trace)
        self.meet(error.with_traceback(trace))

    def _of_a_thread(self, found: threading.ExceptHookArgs) -> None:
        if isinstance(found.exc_value, Exception):
            self.meet(found.exc_value.with_traceback(found.exc_traceback))

    def meet(self, error: Exception) -> None:
        """Take in a fault from any thread."""
        self._caught.emit(error)

    def _tell(self, error: Exception) -> None:
        which = signature(error)
        times = self._met[which] = self._met.get(which, 0) + 1
        try:
            text = report(error, self.facts())
        except Exception:  # noqa: BLE001  (a report that fails must not call for another)
            text = f"Fullshell {__version__}: {which[0]} at {which[1]}; no more can be told\n"
        if times <= _MOST_KEPT:
            keep(text)
        if times == 1:
            self.fault.emit(error, text)
        else:
            self.again.emit(error)
