"""The box of the rail that holds the place which every view shows."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QComboBox, QStyle, QStyleOptionComboBox, QStylePainter

from planner.words import say


class PlaceBox(QComboBox):
    """Ends a name that is too long in dots, and tells the whole of it to the pointer."""

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("Place"))
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(12)
        self.currentTextChanged.connect(self._tell)
        self._tell("")

    def _tell(self, name: str) -> None:
        meaning = say("The place that every view shows")
        self.setToolTip(f"{name}\n{meaning}" if name else meaning)

    def paintEvent(self, _event: QPaintEvent) -> None:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        part = QStyle.SubControl.SC_ComboBoxEditField
        control = QStyle.ComplexControl.CC_ComboBox
        room = self.style().subControlRect(control, option, part, self).width()
        metrics, end = self.fontMetrics(), Qt.TextElideMode.ElideRight
        # Less a letter: the style keeps some room at either side of the name.
        room -= metrics.averageCharWidth()
        option.currentText = metrics.elidedText(option.currentText, end, room)
        painter = QStylePainter(self)
        painter.drawComplexControl(control, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.end()
