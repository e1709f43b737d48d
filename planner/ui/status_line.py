"""The line at the foot of the window: which place, the tide's caution, what is worked on."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QProgressBar, QPushButton, QSizePolicy

from planner.phrasing import TIDE_CAUTION
from planner.ui.parts import plain, quiet
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

if TYPE_CHECKING:
    from planner.sites import Site

_BUSY_SHOWN_AFTER_MS: Final = 200
_STOP_SHOWN_AFTER_MS: Final = 2000


class StatusLine(QFrame):
    """Follows the work of a workbench; short work is not shown, long work can be stopped.

    stopped: the user gave up what was being worked out.
    """

    stopped = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        # A status bar of Qt's own would cut the caution short where it cannot be whole.
        row = QHBoxLayout(self)
        row.setContentsMargins(SPACE * 2, SPACE // 2, SPACE * 2, SPACE // 2)
        # Before a place is open too: places are looked at in the place book by then.
        self.where = plain(TIDE_CAUTION)
        row.addWidget(self.where, 1)
        self.working = quiet()
        self.working.setWordWrap(False)
        self.working.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        self.working.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.progress = QProgressBar()
        self.progress.setRange(0, 0)
        self.progress.setMaximumWidth(120)
        self.progress.setTextVisible(False)
        # As high as the words: a higher one would push the whole window up with every saved cell.
        self.progress.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Ignored)
        self.progress.setAccessibleName(say("Working"))
        self.stop = QPushButton(say("Stop"))
        self.stop.setToolTip(say("Give up what is being worked out"))
        self.stop.clicked.connect(self._give_up)
        for widget in (self.working, self.progress, self.stop):
            row.addWidget(widget)
            widget.hide()
        self._busy_timer = QTimer(self, singleShot=True, interval=_BUSY_SHOWN_AFTER_MS)
        self._busy_timer.timeout.connect(lambda: self._show_busy(True))
        self._stop_timer = QTimer(self, singleShot=True, interval=_STOP_SHOWN_AFTER_MS)
        self._stop_timer.timeout.connect(self._offer_stop)
        for desk in (bench.desk, bench.clerk):
            desk.busy.connect(self._follow)

    def name_place(self, site: Site) -> None:
        """Say which place is open."""
        self.where.setText(f"{site.name} · {site.zone.key} · {TIDE_CAUTION}")

    def _follow(self, _label: str) -> None:
        label = self.bench.desk.label or self.bench.clerk.label
        self.working.setText(f"{label}…" if label else "")
        if not label:
            self._busy_timer.stop()
            self._stop_timer.stop()
            self._show_busy(False)
        elif not self._busy_timer.isActive() and self.working.isHidden():
            self._busy_timer.start()
            self._stop_timer.start()

    def _show_busy(self, shown: bool) -> None:
        self.working.setVisible(shown)
        self.progress.setVisible(shown)
        if not shown:
            self.stop.hide()

    def _offer_stop(self) -> None:
        # What is being saved is never given up half way.
        self.stop.setVisible(bool(self.bench.desk.label))

    def _give_up(self) -> None:
        self.bench.desk.give_up()
        self.stopped.emit()
