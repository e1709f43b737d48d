"""Which place a start opens: a file that was handed over, else what the user left."""

from __future__ import annotations

import os
import sys

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QFileOpenEvent
from PySide6.QtWidgets import QApplication

from planner.ui.sources import Source, source_of
from planner.ui.workbench import Workbench


class Opening(QObject):
    """Opens the first place, and every file that macOS hands to the running program.

    There a double click on a file comes as an event, before or after the window is up;
    elsewhere it is an argument of a program of its own.
    """

    def __init__(self, bench: Workbench, left_off: Source, place: str | None = None) -> None:
        super().__init__(bench)
        self._bench = bench
        self._left_off = left_off
        self._handed = place
        self._begun = False
        app = QApplication.instance()
        # Only where such events come: a filter is asked about every event of the program.
        if sys.platform == "darwin" and app is not None:
            app.installEventFilter(self)

    def begin(self) -> None:
        """Open the file that was handed over; what the user left when there is none.

        A file that cannot be read is reported, and what the user left is opened instead.
        """
        self._begun = True
        if self._handed is None:
            self._bench.open(self._left_off)
        else:
            # Remembered between starts, which may have another working folder.
            place = os.path.abspath(self._handed)
            self._bench.open(source_of(place), otherwise=self._left_off)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if not isinstance(event, QFileOpenEvent) or not event.file():
            return super().eventFilter(watched, event)
        self._handed = event.file()
        if self._begun:
            self._bench.open(source_of(self._handed))
        return True
