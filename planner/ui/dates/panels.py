"""Where the plans, the chosen plan and past trips stand: as many beside each other as fit."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QWidget

from planner.ui.parts import Tabs
from planner.words import say

_BESIDE_EM = 120  # with less room the three panels lie under each other
_THREE_EM = 200  # and with less than this, past trips are a tab of the chosen plan's panel
_PANEL_LINES = 15.25
_PANEL_SHARES = (44, 32, 24)  # of 100 of the width


class Panels(QSplitter):
    """Panels beside each other where there is room: three, or two of which one has tabs."""

    def __init__(self, plans: QWidget, plan: QWidget, like_it: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self.setChildrenCollapsible(False)
        self._beside: bool | None = None  # not known before there is a width
        self._three: bool | None = None
        self._high = round(_PANEL_LINES * self.fontMetrics().lineSpacing())
        self._like_it = like_it
        self._tabs = Tabs(say("The chosen plan, and past trips like the day"))
        self._tabs.addTab(plan, say("Chosen plan"))
        for panel in (plans, self._tabs):
            panel.setMinimumHeight(self._high)
            self.addWidget(panel)
        like_it.setMinimumHeight(self._high - self._tabs.tabBar().sizeHint().height())
        self._part(three=False)

    def sizeHint(self) -> QSize:
        # Their words wrap and scroll; they must not claim the height.
        return QSize(600, self.minimumHeight())

    def resizeEvent(self, event: QResizeEvent) -> None:
        letters = self.width() / self.fontMetrics().averageCharWidth()
        self._part(three=letters >= _THREE_EM)
        beside = letters >= _BESIDE_EM
        if beside != self._beside:
            self._beside = beside
            gaps = (self.count() - 1) * self.handleWidth()
            self.setMinimumHeight(self._high if beside else self.count() * self._high + gaps)
            self.setOrientation(Qt.Orientation.Horizontal if beside else Qt.Orientation.Vertical)
        super().resizeEvent(event)

    def _part(self, *, three: bool) -> None:
        """Give past trips a panel of their own, or a tab."""
        if three == self._three:
            return
        self._three = three
        if three:
            self.addWidget(self._like_it)
            self._like_it.show()
        else:
            self._tabs.addTab(self._like_it, say("Past trips like it"))
        bar, policies = self._tabs.tabBar(), Qt.FocusPolicy
        bar.setVisible(not three)
        # The tabs would hand the focus to a bar that is hidden: Tab would go no further.
        bar.setFocusPolicy(policies.NoFocus if three else policies.TabFocus)
        for at in range(self.count()):
            self.setStretchFactor(at, _PANEL_SHARES[at])
        self.setSizes([self.width() * share // 100 for share in _PANEL_SHARES[: self.count()]])
