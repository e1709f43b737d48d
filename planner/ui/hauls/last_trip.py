"""What a light last trip means for the days to come, as a line that shows when there was one."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from planner.ui.parts import body
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench


class LastTripLine(QWidget):
    """Hidden unless crabs like those of the last judged trip are still filling today."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.words: QLabel = body()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.words)
        self.hide()
        bench.site_changed.connect(self.refresh)
        bench.outlook_changed.connect(self.refresh)
        self.state.listen(self._state_changed)
        self.refresh()

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "style" in changed:
            self.refresh()

    def refresh(self) -> None:
        """Ask again, once the log has been learned from."""
        site, outlook = self.bench.site, self.bench.outlook
        style, today = self.state.style, self.state.today
        self.bench.desk.stop("last trip")
        if site is None or outlook is None or outlook.forecast.basis == "prior":
            self._say("")
            return
        log = self.bench.log

        def work(_: Checkpoint) -> str:
            from planner.molt import last_trip_text

            return last_trip_text(site, log, style, today)

        self.bench.desk.start("last trip", "", work, self._say)

    def _say(self, text: str) -> None:
        self.words.setText(text)
        self.setVisible(bool(text))
