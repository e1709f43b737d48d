"""Cards in columns on a page that scrolls: two, or three where there is room to read in."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain, pairwise

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from planner.ui.load.checklist_cards import SectionCard
from planner.ui.load.trap_card import TrapCard
from planner.ui.parts import Page
from planner.ui.theme import SPACE

_THREE_LETTERS = 220  # average letters side by side: three columns of some seventy each


Columns = Sequence[Sequence[SectionCard | TrapCard]]


class CardPage(Page):
    """The same cards in two arrangements, by the width there is; Tab follows what is seen.

    two, three: the cards of each column, from the top.
    """

    def __init__(self, two: Columns, three: Columns) -> None:
        super().__init__()
        self._two, self._three = two, three
        self._shown: Columns = ()
        self._row = row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        self._columns = [QVBoxLayout() for _ in three]
        for column in self._columns:
            column.addStretch(1)
            row.addLayout(column)
        self._arrange(two)

    @property
    def wide(self) -> bool:
        """Whether the cards stand in three columns."""
        return self._shown is self._three

    def chain(self) -> None:
        """Have Tab go from card to card as they stand, and through each from the top."""
        for before, after in pairwise(stop for card in chain(*self._shown) for stop in card.stops):
            QWidget.setTabOrder(before, after)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        letters = self.width() / self.fontMetrics().averageCharWidth()
        self._arrange(self._three if letters >= _THREE_LETTERS else self._two)

    def _arrange(self, columns: Columns) -> None:
        if columns is self._shown:
            return
        for column, cards in zip(self._columns, self._shown, strict=False):
            for card in cards:
                # Not takeAt: the item it hands to Python lives on as the one that is told of the
                # card's changes, and the new one would remember a height for good.
                column.removeWidget(card)
        self._shown = columns
        for column, cards in zip(self._columns, columns, strict=False):
            for at, card in enumerate(cards):
                column.insertWidget(at, card)
        for at, column in enumerate(self._columns):
            column.setSpacing(2 * SPACE if self.wide else SPACE)
            self._row.setStretch(at, int(at < len(columns)))
        self._row.setSpacing(2 * SPACE if self.wide else SPACE)
        for card in chain(*columns):
            card.make_room(self.wide)
        self.chain()
