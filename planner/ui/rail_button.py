"""A button of the rail: the place of work that is shown has a bar at its side."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QStyle

from planner.ui import theme
from planner.ui.theme import SPACE

_BAR_PX = 4
_LEAST_PX = 156


class RailButton(QPushButton):
    """Painted here, so that it follows the theme without a style sheet."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self.setCheckable(True)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)

    def sizeHint(self) -> QSize:
        bold = self.font()
        bold.setBold(True)
        words = QFontMetrics(bold).size(Qt.TextFlag.TextSingleLine, self.text())
        width = max(words.width() + 4 * SPACE, _LEAST_PX)
        return QSize(width, words.height() + 5 * SPACE // 2)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours, whole = theme.current(), self.rect()
        painter = QPainter(self)
        if self.isChecked() or self.underMouse():
            painter.fillRect(whole, QColor(colours.panel if self.isChecked() else colours.weekend))
        bar = QRect(0, 0, _BAR_PX, whole.height())
        if self.isChecked():
            side = QStyle.visualRect(self.layoutDirection(), whole, bar)
            painter.fillRect(side, QColor(colours.accent))
        font = self.font()
        font.setBold(self.isChecked())
        painter.setFont(font)
        painter.setPen(QColor(colours.text))
        side_flag = QStyle.visualAlignment(self.layoutDirection(), Qt.AlignmentFlag.AlignLeft)
        painter.drawText(
            whole.adjusted(2 * SPACE, 0, -2 * SPACE, 0),
            side_flag | Qt.AlignmentFlag.AlignVCenter,
            self.text(),
        )
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.FOCUS), 2))
            painter.drawRect(whole.adjusted(_BAR_PX + 1, 1, -1, -1))
        painter.end()
