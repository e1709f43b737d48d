"""The list of the place book: the user's own places first, then samples; searched by name."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLineEdit, QTreeWidget, QTreeWidgetItem, QVBoxLayout, QWidget

from planner.sites.book import PlaceEntry
from planner.words import say

_ENTRY: Final = Qt.ItemDataRole.UserRole


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
        self.tree = QTreeWidget()
        self.tree.setAccessibleName(say("Places"))
        self.tree.setHeaderHidden(True)
        self.tree.setRootIsDecorated(False)
        self.tree.setUniformRowHeights(True)
        self.tree.setTextElideMode(Qt.TextElideMode.ElideMiddle)
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
        """Return the width at which no name is cut."""
        bar = self.tree.verticalScrollBar().sizeHint().width()
        return self.tree.sizeHintForColumn(0) + bar + 2 * self.tree.frameWidth()

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
