"""The list of the place book: the user's own places first, then samples; searched by name.

A name longer than the list is wide goes on in a second line: of a name cut short nobody knows
which place it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Final

from PySide6.QtCore import QRect, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import (
    QLineEdit,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.sites.book import PlaceEntry
from planner.ui.tables import Index
from planner.ui.theme import SPACE
from planner.words import say

_ENTRY: Final = Qt.ItemDataRole.UserRole


class _Lines(QStyledItemDelegate):
    """Gives a name the height of its lines; by itself the tree takes all names for one line."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        tree = self.parent()
        assert isinstance(tree, QTreeWidget)
        indent = tree.indentation() if index.parent().isValid() else 0
        option.rect = QRect(0, 0, tree.viewport().width() - indent, 1)
        # With a gap, so that it is seen where the next name begins.
        return super().sizeHint(option, index) + QSize(0, SPACE // 2)


class _Names(QTreeWidget):
    """Names in as many lines as they need."""

    def __init__(self) -> None:
        super().__init__()
        self.setWordWrap(True)
        self.setIndentation(SPACE)
        self.setItemDelegate(_Lines(self))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()  # rows of another width may need other heights
        if (chosen := self.currentItem()) is not None:
            self.scrollToItem(chosen)


class PlaceList(QWidget):
    """A search box over the places; the open one is marked.

    picked: the entry of the place that was chosen. activated: it was double clicked or entered.
    """

    picked = Signal(object)
    activated = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Search places"))
        self.search.setAccessibleName(say("Search places"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._filter)
        self.tree = _Names()
        self.tree.setAccessibleName(say("Places"))
        self.tree.setHeaderHidden(True)
        self.tree.setRootIsDecorated(False)
        self.tree.currentItemChanged.connect(self._picked)
        self.tree.itemActivated.connect(lambda *_: self.activated.emit())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.search)
        column.addWidget(self.tree, 1)

    def fill(self, entries: Sequence[PlaceEntry], elsewhere: Sequence[Path]) -> None:
        """List the places of the book, and files from elsewhere; nothing is chosen then."""
        self.tree.blockSignals(True)
        self.tree.clear()
        self._group(
            say("Your places"), [entry for entry in entries if not entry.shipped], say("none yet")
        )
        others = [PlaceEntry(path.stem, path, shipped=False) for path in elsewhere]
        if others:
            self._group(say("Elsewhere"), others, "")
        self._group(say("Samples"), [entry for entry in entries if entry.shipped], "")
        self.tree.blockSignals(False)
        self._filter(self.search.text())

    def items(self) -> list[QTreeWidgetItem]:
        """Return the items that stand for a place, without headings."""
        every = self.tree.findItems("", Qt.MatchFlag.MatchContains | Qt.MatchFlag.MatchRecursive)
        return [item for item in every if item.data(0, _ENTRY) is not None]

    def entry(self, path: Path | None) -> PlaceEntry | None:
        """Return the entry of a file, None when it is not listed."""
        found: list[PlaceEntry] = [item.data(0, _ENTRY) for item in self.items()]
        return next((entry for entry in found if entry.path == path), None)

    def choose(self, path: Path) -> None:
        """Choose the place of a file, where it is listed."""
        for item in self.items():
            if item.data(0, _ENTRY).path == path:
                self.tree.setCurrentItem(item)
                return

    def mark_open(self, path: Path | None) -> None:
        """Mark the place that every view shows."""
        for item in self.items():
            entry: PlaceEntry = item.data(0, _ENTRY)
            opened = entry.path == path
            remarks = [
                *([say("open")] if opened else []),
                *([say("invented")] if entry.invented else []),
            ]
            item.setText(0, " · ".join([entry.name, *remarks]))
            font = item.font(0)
            font.setBold(opened)
            item.setFont(0, font)
            item.setToolTip(0, f"{entry.name}\n{kind_text(entry)}\n{entry.path}")

    def whole_width(self) -> int:
        """Return the width at which every name stands in one line."""
        tree = self.tree
        names = max(
            (QFontMetrics(i.font(0)).horizontalAdvance(i.text(0)) for i in self.items()), default=0
        )
        beside = tree.style().pixelMetric(QStyle.PixelMetric.PM_FocusFrameHMargin, None, tree) + 1
        bar = tree.verticalScrollBar().sizeHint().width()
        return names + 2 * beside + tree.indentation() + bar + 2 * tree.frameWidth()

    def _group(self, text: str, entries: Sequence[PlaceEntry], nothing: str) -> None:
        group = QTreeWidgetItem(self.tree, [text])
        font = group.font(0)
        font.setBold(True)
        group.setFont(0, font)
        group.setFlags(Qt.ItemFlag.ItemIsEnabled)
        group.setExpanded(True)
        for entry in entries:
            item = QTreeWidgetItem(group, [entry.name])
            item.setData(0, _ENTRY, entry)
        if not entries and nothing:
            QTreeWidgetItem(group, [nothing]).setFlags(Qt.ItemFlag.NoItemFlags)

    def _filter(self, text: str) -> None:
        wanted = text.strip().casefold()
        for item in self.items():
            entry: PlaceEntry = item.data(0, _ENTRY)
            item.setHidden(wanted not in entry.name.casefold() and wanted not in entry.path.stem)

    def _picked(self, item: QTreeWidgetItem | None, _before: QTreeWidgetItem | None) -> None:
        entry = item.data(0, _ENTRY) if item is not None else None
        if entry is not None:
            self.picked.emit(entry)


def kind_text(entry: PlaceEntry) -> str:
    """Return what kind of place an entry is, in words."""
    if entry.invented:
        return say("An invented sample") if entry.shipped else say("Your place, marked as invented")
    return say("A published station") if entry.shipped else say("Your place")
