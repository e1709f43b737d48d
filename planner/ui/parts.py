"""Small pieces that every view is put together from."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Literal

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QEnterEvent,
    QFont,
    QGuiApplication,
    QPainter,
    QPaintEvent,
    QPalette,
    QPen,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QLabel,
    QLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QTabBar,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from planner.ui import theme
from planner.ui.theme import SPACE
from planner.ui.turns import Turns

Role = Literal["title", "heading", "quiet", "caution", "body"]

_INKS = {"quiet": QPalette.ColorRole.PlaceholderText, "caution": QPalette.ColorRole.BrightText}
_HALVES_EM = 100  # letters: narrower than this, two columns would be too narrow each
# In a window wider than this, words too long for one line of the first many letters are written
# in lines of the second; from the end of longer ones the eye would not find back.
_LARGE_WINDOW_PX = 1500
_WIDE_EM, _READING_EM = 150, 110
_SHORT_EM = 70  # letters to a line of the few words in the middle of an empty view


def title(text: str = "") -> QLabel:
    """Return the large line at the top of a view."""
    return _label(text, "title")


def heading(text: str) -> QLabel:
    """Return the line over a card."""
    return _label(text, "heading")


def quiet(text: str = "") -> QLabel:
    """Return secondary text that wraps."""
    return _label(text, "quiet")


def caution(text: str = "") -> QLabel:
    """Return a warning, with its sign, that wraps."""
    return _label(f"⚠ {text}" if text else "", "caution")


def body(text: str = "") -> QLabel:
    """Return plain text that wraps and can be selected."""
    label = _label(text, "body")
    label.selectable = True
    return label


def plain(text: str = "") -> QLabel:
    """Return plain text that wraps and lets clicks through to what it stands in."""
    return _label(text, "body")


class _Words(QLabel):
    """Words whose lines stay short enough to be read, however wide their place is.

    most_em: letters to a line at most; 0 where only the window decides.
    selectable: whether the mouse can select them.
    """

    most_em = 0
    selectable = False

    def __init__(self, text: str) -> None:
        super().__init__(text)
        # How high the words are at a width: a layout asks for the same several times over.
        self._heights: dict[int, int] = {}

    def heightForWidth(self, width: int) -> int:
        used = self._used(width)
        if used not in self._heights:
            margins = self.contentsMargins()
            self._heights[used] = super().heightForWidth(used + margins.left() + margins.right())
        return self._heights[used]

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        if self.selectable:
            # Words that can be selected take ten times as long to lay out: only those pointed at.
            self.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._keep_width()

    def setText(self, text: str) -> None:
        super().setText(text)
        self._heights.clear()
        self._keep_width()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        self._heights.clear()
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.LayoutDirectionChange):
            self._keep_width()

    def _keep_width(self) -> None:
        spare = self.width() - self._used(self.width())
        if self.alignment() & Qt.AlignmentFlag.AlignHCenter:
            self.setContentsMargins(spare // 2, 0, spare // 2, 0)
        elif self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            self.setContentsMargins(spare, 0, 0, 0)
        else:
            self.setContentsMargins(0, 0, spare, 0)

    def _used(self, width: int) -> int:
        # First what costs nothing: this is asked hundreds of times while a window is put together.
        if not self.most_em and self.window().width() <= _LARGE_WINDOW_PX:
            return width
        metrics = self.fontMetrics()
        letter = metrics.averageCharWidth()
        if self.most_em:
            return min(width, self.most_em * letter)
        if metrics.size(0, self.text()).width() <= _WIDE_EM * letter:
            return width
        return min(width, _READING_EM * letter)


def _label(text: str, role: Role) -> _Words:
    label = _Words(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    # Without this a wrapping label asks for the width of its longest line.
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    label.setMinimumWidth(40)
    give_role(label, role)
    return label


def give_role(label: QLabel, role: Role) -> None:
    """Give a label the letters of its role; colours come from the palette, which has the theme."""
    font = theme.title_font() if role == "title" else QFont()
    if role == "heading":
        font.setWeight(QFont.Weight.DemiBold)
    label.setFont(font)
    label.setForegroundRole(_INKS.get(role, QPalette.ColorRole.WindowText))


def button(text: str, act: Callable[[], object], tip: str = "") -> QPushButton:
    """Return a button that does something, with what a pointer resting on it is told."""
    made = QPushButton(text)
    made.setToolTip(tip)
    # Qt would pass whether the button is checked; the acts here take nothing.
    made.clicked.connect(lambda _=False: act())
    return made


def refill(column: QVBoxLayout, widgets: Sequence[QWidget]) -> None:
    """Put other widgets into a column in place of those that are there."""
    while (item := column.takeAt(0)) is not None:
        old = item.widget()
        if old is not None:
            old.hide()
            old.deleteLater()
    for widget in widgets:
        column.addWidget(widget)
        if widget.parentWidget() is not None:
            widget.show()  # now, not at the next turn of the event loop


class Page(QWidget):
    """The inside of a scrolling column, as high as its words need at the width they get."""

    def minimumSizeHint(self) -> QSize:
        least, layout = super().minimumSizeHint(), self.layout()
        # A wrapping label's own minimum is its height in the narrowest column, far too high; the
        # scrolling area asks how high the words are at its width, but only where there are any.
        wraps = layout is not None and layout.hasHeightForWidth()
        return QSize(least.width(), 0) if wraps else least


def scrolled(layout: QVBoxLayout, name: str, *, apart: bool = True) -> QScrollArea:
    """Return a column that scrolls down; sideways only where its fields cannot be narrower.

    apart: whether its bar is kept apart from it; not where the column has a margin of its own.
    """
    inside = Page()
    inside.setLayout(layout)
    scroll = QScrollArea()
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QScrollArea.Shape.NoFrame)
    scroll.setWidget(inside)
    show_through(scroll)
    if apart:
        keep_bar_apart(scroll)
    scroll.setAccessibleName(name)
    return scroll


def keep_bar_apart(scroll: QScrollArea) -> None:
    """Leave a gap beside the bar of a scrolling area while it has one.

    Without a bar its page ends where everything above and below it does.
    """

    def keep(_least: int, most: int) -> None:
        gap = SPACE if most else 0
        # Qt mirrors the bar, and not the margins.
        left, right = (gap, 0) if scroll.isRightToLeft() else (0, gap)
        scroll.setViewportMargins(left, 0, right, 0)

    scroll.verticalScrollBar().rangeChanged.connect(keep)


def set_margins(layout: QLayout, begin: int, top: int, end: int, bottom: int) -> None:
    """Set margins from the side where a line of the script begins, which Qt does not mirror."""
    if QGuiApplication.layoutDirection() == Qt.LayoutDirection.RightToLeft:
        begin, end = end, begin
    layout.setContentsMargins(begin, top, end, bottom)


def scrolling(widget: QWidget, name: str) -> QVBoxLayout:
    """Return the empty column of a widget that scrolls as a whole.

    It is filled from the outside in: whatever is taken in takes all that it holds along, at a
    price.
    """
    whole, column = QVBoxLayout(widget), QVBoxLayout()
    whole.setContentsMargins(0, 0, 0, 0)
    whole.addWidget(scrolled(column, name))
    return column


class Late(QWidget):
    """A page of tabs that is made when it is first shown, in a turn of its own."""

    def __init__(self, make: Callable[[], QWidget], turns: Turns) -> None:
        super().__init__()
        self._make: Callable[[], QWidget] | None = make
        self._turns = turns
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)

    def fill(self) -> None:
        """Make what is in it, unless that is done."""
        if self._make is not None:
            make, self._make = self._make, None
            made = make()
            self._column.addWidget(made)
            made.show()  # now, not at the next turn of the event loop

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._make is not None:
            self._turns.take(self, self.fill)


def show_through(scroll: QScrollArea) -> None:
    """Let what a scrolling area stands on show through it and its page."""
    scroll.viewport().setAutoFillBackground(False)
    page = scroll.widget()
    assert page is not None
    page.setAutoFillBackground(False)


class Halves(QWidget):
    """Two columns side by side, or one under the other where the window or the font says so.

    letters: how wide it must be for the two to stand side by side.
    """

    def __init__(
        self,
        left: QLayout,
        right: QLayout,
        shares: tuple[int, int] = (1, 1),
        letters: int = _HALVES_EM,
    ) -> None:
        super().__init__()
        self._halves, self._letters = (left, right), letters
        self._box = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(SPACE * 2)
        for half in self._halves:
            # Or it would take over the gap between the columns.
            half.setSpacing(SPACE)
        self._box.addLayout(left, shares[0])
        self._box.addLayout(right, shares[1])

    def minimumSizeHint(self) -> QSize:
        # Of one half: were it of both, there would never be too little room for both.
        widest = max(half.minimumSize().width() for half in self._halves)
        return QSize(widest, self._box.minimumSize().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        both = sum(half.minimumSize().width() for half in self._halves) + self._box.spacing()
        room = max(both, self._letters * self.fontMetrics().averageCharWidth())
        side, under = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
        self._box.setDirection(side if self.width() >= room else under)


def open_at(window: QWidget, width: int, height: int) -> None:
    """Give a window its first size: larger where letters are, as far as the screen goes."""
    usual, scale = QSize(width, height), max(theme.text_scale(), 1.0)
    room = window.screen().availableSize().expandedTo(usual)
    window.resize((usual * scale).boundedTo(room))


def enter_presses_nothing(dialog: QWidget) -> None:
    """Keep Enter in a field or table of a dialog from pressing whichever button comes first."""
    for each in dialog.findChildren(QPushButton):
        each.setAutoDefault(False)
        each.setDefault(False)


def on_ground(widget: QWidget, name: Literal["panel", "raised", "caution"]) -> None:
    """Put a widget on a ground of the theme, which follows the theme by itself."""
    roles = QPalette.ColorRole
    widget.setBackgroundRole(
        {"panel": roles.Base, "raised": roles.Button, "caution": roles.Midlight}[name]
    )
    widget.setAutoFillBackground(True)


class Panel(QFrame):
    """A ground with round corners that lifts what is on it off the window."""

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = theme.current()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QColor(colours.line))
        painter.setBrush(QColor(colours.panel))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        painter.end()


class Card(Panel):
    """A panel with a heading and a column of widgets."""

    def __init__(self, text: str = "", *inside: QWidget) -> None:
        super().__init__()
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(3 * SPACE // 2, SPACE, 3 * SPACE // 2, SPACE)
        self.column.setSpacing(SPACE // 2)
        self.heading = heading(text)
        self.heading.setVisible(bool(text))
        self.column.addWidget(self.heading)
        for widget in inside:
            self.column.addWidget(widget)


class Tabs(QTabWidget):
    """Tabs over pages; name: what they are tabs of, for a screen reader."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setTabBar(_TabBar())
        self.setDocumentMode(True)
        self.setAccessibleName(name)
        self.tabBar().setAccessibleName(name)


class _TabBar(QTabBar):
    """Tabs with room for letters that reach below the line: the style cuts their feet off."""

    def tabSizeHint(self, index: int) -> QSize:
        return super().tabSizeHint(index) + QSize(0, SPACE // 2)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.hasFocus():
            # The style only tints the tab, which is not seen on dark ground.
            painter = QPainter(self)
            painter.setPen(QPen(QColor(theme.FOCUS), 2))
            edge = SPACE // 2
            painter.drawRect(self.tabRect(self.currentIndex()).adjusted(edge, edge, -edge, -edge))
            painter.end()


class Empty(QFrame):
    """Says what will be here, and holds the button for the step that fills it."""

    def __init__(self, text: str, *buttons: QWidget) -> None:
        super().__init__()
        column = QVBoxLayout(self)
        column.addStretch(1)
        self.words = _label(text, "quiet")
        self.words.most_em = _SHORT_EM
        self.words.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.addWidget(self.words)
        for button in buttons:
            column.addWidget(button, alignment=Qt.AlignmentFlag.AlignCenter)
        column.addStretch(2)
