"""The guide in a window of its own: contents at the left, a page at the right; all offline."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QFont, QKeySequence, QShortcut, QTextCursor, QTextDocument
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QSplitter,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.ui.guide.help_page import HelpPage
from planner.ui.guide.help_pages import CONTENTS, contents, pages_with, path_of
from planner.ui.parts import button, open_at, quiet
from planner.ui.state import ViewState
from planner.ui.theme import SPACE
from planner.words import say

_PAGE: Final = Qt.ItemDataRole.UserRole


class HelpWindow(QWidget):
    """Shows pages of the guide; follows the colours of the main window's state."""

    def __init__(self, state: ViewState) -> None:
        super().__init__()
        self.state = state
        self.setWindowTitle(say("Guide - Fullshell"))
        open_at(self, 1100, 760)
        self.page = HelpPage()
        self.tree = self._make_tree()
        self.said = quiet()
        self.said.setAccessibleName(say("Message"))
        self.words = QLineEdit()
        self.words.setPlaceholderText(say("Find in the guide"))
        self.words.setAccessibleName(say("Find in the guide"))
        self.words.setClearButtonEnabled(True)
        self.words.returnPressed.connect(self.find_next)
        self.words.textChanged.connect(self._may_find)
        split = QSplitter()
        split.addWidget(self.tree)
        split.addWidget(self.page)
        split.setSizes([330, 760])
        split.setStretchFactor(1, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE, SPACE, SPACE, SPACE)
        column.addLayout(self._make_top())
        column.addWidget(split, 1)
        column.addWidget(self.said)
        self.said.hide()
        self._bind_keys()
        self.page.sourceChanged.connect(self._arrived)
        self.page.outside.connect(self._leads_outside)
        state.listen(self._state_changed)

    def _make_top(self) -> QHBoxLayout:
        self.back = button(say("Back"), self.page.backward, say("The page before (Alt+Left)"))
        self.forward = button(
            say("Forward"), self.page.forward, say("The page after it (Alt+Right)")
        )
        self.home = button(say("Contents"), lambda: self.open_page(CONTENTS), say("The first page"))
        self.next = button(say("Find next"), self.find_next, say("Further down, or on (F3)"))
        self.before = button(say("Find previous"), self.find_before, say("Further up (Shift+F3)"))
        row = QHBoxLayout()
        for each in (self.back, self.forward, self.home):
            row.addWidget(each)
        row.addStretch(1)
        row.addWidget(self.words, 2)
        row.addWidget(self.next)
        row.addWidget(self.before)
        for each in (self.back, self.forward, self.next, self.before):
            each.setEnabled(False)
        self.page.backwardAvailable.connect(self.back.setEnabled)
        self.page.forwardAvailable.connect(self.forward.setEnabled)
        return row

    def _make_tree(self) -> QTreeWidget:
        self._items: list[QTreeWidgetItem] = []
        tree = QTreeWidget()
        strong = QFont(self.font())
        strong.setWeight(QFont.Weight.DemiBold)
        tree.setHeaderHidden(True)
        tree.setAccessibleName(say("Contents of the guide"))
        tree.setWordWrap(True)
        tree.setIndentation(SPACE * 2)
        for group in contents():
            head = QTreeWidgetItem([group.text])
            head.setFlags(Qt.ItemFlag.ItemIsEnabled)
            head.setFont(0, strong)
            tree.addTopLevelItem(head)
            for entry in group.entries:
                item = QTreeWidgetItem([entry.text])
                item.setToolTip(0, entry.text)
                item.setData(0, _PAGE, entry.page)
                head.addChild(item)
                self._items.append(item)
        tree.expandAll()
        tree.itemActivated.connect(self._picked)
        tree.itemClicked.connect(self._picked)
        return tree

    def _bind_keys(self) -> None:
        for keys, act in (
            (QKeySequence.StandardKey.Back, self.page.backward),
            (QKeySequence.StandardKey.Forward, self.page.forward),
            (QKeySequence.StandardKey.Find, self._go_to_find),
            (QKeySequence.StandardKey.FindNext, self.find_next),
            (QKeySequence.StandardKey.FindPrevious, self.find_before),
            (Qt.Key.Key_Escape, self.close),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.activated.connect(act)

    # -- going about -------------------------------------------------------------------------

    def open_page(self, page: str) -> None:
        """Show a page, "page.md" or "page.md#heading", and come to the front."""
        name, _, heading = page.partition("#")
        url = QUrl.fromLocalFile(str(path_of(name)))
        if heading:
            url.setFragment(heading)
        # First, or the heading would be looked for in lines of another width.
        self.show()
        self.page.setSource(url)
        self.raise_()
        self.activateWindow()
        self.page.setFocus()

    def _picked(self, item: QTreeWidgetItem) -> None:
        page = item.data(0, _PAGE)
        if page:
            self.open_page(page)

    def _arrived(self, url: QUrl) -> None:
        self.said.hide()
        # The page itself names what it shows only after it has told of it.
        name = url.fileName()
        for wanted in (f"{name}#{url.fragment()}", name):
            for item in self._items:
                if item.data(0, _PAGE) == wanted:
                    self.tree.setCurrentItem(item)
                    return

    def _leads_outside(self, address: str) -> None:
        self._say(
            say("{address} is outside the guide; Fullshell opens nothing there.", address=address)
        )

    def _say(self, text: str) -> None:
        self.said.setText(text)
        self.said.show()

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "theme" in changed:
            self.page.read_again()

    # -- finding -----------------------------------------------------------------------------

    def _go_to_find(self) -> None:
        self.words.setFocus()
        self.words.selectAll()

    def _may_find(self, text: str) -> None:
        for each in (self.next, self.before):
            each.setEnabled(bool(text.strip()))

    def find_next(self) -> None:
        """Go to the next place with the words, on this page or on one after it."""
        self._find(QTextDocument.FindFlag(0), backwards=False)

    def find_before(self) -> None:
        """Go to the place before."""
        self._find(QTextDocument.FindFlag.FindBackward, backwards=True)

    def _find(self, flag: QTextDocument.FindFlag, *, backwards: bool) -> None:
        words = self.words.text().strip()
        self.said.hide()
        if not words or self.page.find(words, flag):
            return
        edge = QTextCursor.MoveOperation.End if backwards else QTextCursor.MoveOperation.Start
        for page in (*pages_with(words, self.page.name, backwards=backwards), self.page.name):
            if page != self.page.name:
                self.page.setSource(QUrl.fromLocalFile(str(path_of(page))))
            self.page.moveCursor(edge)
            if self.page.find(words, flag):
                return
        self._say(say("“{words}” is nowhere in the guide.", words=words))

    def let_go(self) -> None:
        """Close for good, along with the main window."""
        self.state.forget(self._state_changed)
        self.close()
        self.deleteLater()
