"""Counting how often a widget is painted."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication, QWidget


class Paints(QObject):
    """Counts from when it is made on."""

    def __init__(self, widget: QWidget) -> None:
        super().__init__(widget)
        self.count = 0
        widget.installEventFilter(self)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        self.count += event.type() == QEvent.Type.Paint
        return False

    def wait(self) -> None:
        """Turn the event loop until the widget has been painted once more."""
        before = self.count
        while self.count == before:
            QApplication.processEvents()
