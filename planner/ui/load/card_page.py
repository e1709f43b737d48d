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
        row.setContentsMargins(0, 0, SPACE, 0)
        row.setSpacing(SPACE)
        self._columns = [QVBoxLayout() for _ in three]
        for column in self._columns:
            column.setSpacing(SPACE)
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
        self._shown = columns
        for column in self._columns:
            while column.takeAt(0) is not None:
                pass
        for column, cards in zip(self._columns, columns, strict=False):
            for card in cards:
                column.addWidget(card)
            column.addStretch(1)
        for at in range(len(self._columns)):
            self._row.setStretch(at, int(at < len(columns)))
        self.chain()
