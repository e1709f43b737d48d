"""A ring around tables, trees, charts and pages that the keyboard has been moved to.

The style draws one around buttons and boxes, and the sheet around fields; around these neither
does, and which of two tables the arrow keys move in could not be seen.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QRegion
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLineEdit,
    QMenuBar,
    QPlainTextEdit,
    QTabBar,
    QTextEdit,
    QWidget,
)

from planner.ui import theme

_WIDTH_PX = 2
# By the style, by the sheet, or by painting themselves.
_RINGED_ALREADY = (
    QAbstractButton,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QMenuBar,
    QPlainTextEdit,
    QTabBar,
    QTextEdit,
)


class FocusRing(QObject):
    """Follows the keyboard through an application."""

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        app.focusChanged.connect(self._follow)

    def _follow(self, _old: QWidget | None, new: QWidget | None) -> None:
        if (
            new is not None
            and not new.isWindow()
            and not isinstance(new, _RINGED_ALREADY)
            and _by_key(new)
        ):
            _Ring(new)


def _by_key(widget: QWidget) -> bool:
    """Tell whether the keyboard, not the mouse, moves the focus in a window."""
    return widget.window().testAttribute(Qt.WidgetAttribute.WA_KeyboardFocusChange)


class _Ring(QWidget):
    """Lies on the edge of a widget, and on nothing else of it."""

    def __init__(self, around: QWidget) -> None:
        super().__init__(around)
        self._around = around
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        around.installEventFilter(self)
        QApplication.instance().focusChanged.connect(self._leave)  # type: ignore[union-attr]
        self._fit()
        self.show()

    def _leave(self, _old: QWidget | None, _new: QWidget | None) -> None:
        self.hide()
        self.deleteLater()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self._fit()
        return super().eventFilter(watched, event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.FOCUS))
        painter.end()

    def _fit(self) -> None:
        whole = self._around.rect()
        inside = whole.adjusted(_WIDTH_PX, _WIDTH_PX, -_WIDTH_PX, -_WIDTH_PX)
        self.setGeometry(whole)
        self.setMask(QRegion(whole) - QRegion(inside))
        self.raise_()
