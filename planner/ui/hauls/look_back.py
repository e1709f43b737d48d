"""Look back: what hauls gave over time and by kind, as a picture and as a table."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import Any, Final
from zoneinfo import ZoneInfo

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QLabel,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from planner.estimates import Interval
from planner.logbook import book_zone
from planner.trips.looking_back import (
    QUARTERS,
    By,
    Filters,
    Frame,
    Group,
    everything,
    frame_of,
    look_back,
)
from planner.ui import theme
from planner.ui.charts import Chart
from planner.ui.flow import Flow
from planner.ui.hauls.look_back_text import (
    BY_CHOICES,
    COLUMNS,
    NUMBERS,
    choices,
    filters_of,
    rows,
    summary,
)
from planner.ui.parts import body, enter_presses_nothing, give_role, open_at
from planner.ui.tables import RowsModel, rows_table
from planner.ui.theme import LINE_GAP, SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

_FILTERS: Final = (
    ("place", say("Place")),
    ("year", say("Year")),
    ("quarter", say("Season")),
    ("design", say("Kind of trap")),
    ("spot", say("Spot")),
    ("bait", say("Bait")),
)
_NOTHING: Final = say("No trip is logged yet. What hauls gave over time and by kind will be here.")
_TICK_EM: Final = 12  # letters: what the name of a group takes under a chart
_APART_PX: Final = 20
_ROOM: Final = 0.04  # of the height, above and below the marks
_MANY: Final = 200  # groups: beyond, marks are drawn small, or they hide each other


class GroupChart(Chart):
    """Estimates beside one another, each a dot with its 80% interval as a bar."""

    def __init__(self, name: str, label: str, *, percent: bool) -> None:
        super().__init__(name)
        self.stand_still()
        # Nothing to do there with keys; the table tells the same.
        for each in (self, self.viewport()):
            each.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._label, self._percent = label, percent
        self._names: Sequence[str] = ()
        self._values: Sequence[Interval | None] = ()

    def show_values(self, names: Sequence[str], values: Sequence[Interval | None]) -> None:
        """Show other groups; one with nothing recorded leaves its place empty."""
        self._names, self._values = names, values
        self._draw()

    def _draw(self) -> None:
        colours = theme.current()
        self.clear()
        self.setLabel("left", self._label, color=colours.text)
        # Charts under one another begin at one line, however long their numbers are.
        self.getAxis("left").setStyle(
            autoExpandTextSpace=False, tickTextWidth=self.fontMetrics().horizontalAdvance("0.00")
        )
        shown = [(x, value) for x, value in enumerate(self._values) if value is not None]
        # An axis without marks would count something that is not there.
        for side in ("left", "bottom"):
            self.getAxis(side).setStyle(showValues=bool(shown))
        if not shown:
            return
        scale = 100.0 if self._percent else 1.0
        x = np.array([at for at, _ in shown], dtype=np.float64)
        mean, low, high = (
            scale * np.array([getattr(value, end) for _, value in shown], dtype=np.float64)
            for end in ("mean", "low", "high")
        )
        told = np.isfinite(low)
        if told.any():
            # Separate lines: one path of thousands takes a second to stroke.
            bars = pg.PlotCurveItem(
                np.repeat(x[told], 2),
                np.column_stack([low[told], high[told]]).ravel(),
                connect="pairs",
                pen=pg.mkPen(colours.forecast, width=2 if x.size < _MANY else 1),
                antialias=False,
            )
            bars.setSegmentedLineMode("on")
            self.addItem(bars)
        dots = pg.ScatterPlotItem(
            x,
            mean,
            size=8 if x.size < _MANY else 3,
            brush=pg.mkBrush(colours.logged),
            pen=pg.mkPen(colours.panel) if x.size < _MANY else None,
        )
        self.addItem(dots)
        top = float(np.nanmax(np.where(told, high, mean)))
        self.box.setXRange(-0.6, len(self._values) - 0.4, padding=0)
        most = min(top, 100.0) if self._percent else max(top, 1)
        self.box.setYRange(0, most, padding=_ROOM)  # so that no mark is cut at either end
        self._tick()

    def _tick(self) -> None:
        """Name as many groups as there is room for."""
        metrics = self.fontMetrics()
        letters_px = _TICK_EM * metrics.averageCharWidth()
        longest_px = max((metrics.horizontalAdvance(name) for name in self._names), default=0)
        # A name that is a little longer than usual is written whole, on fewer marks.
        each_px = max(letters_px, min(longest_px + _APART_PX, 2 * letters_px))
        room = max(self.width() // each_px, 1)
        step = max(-(-len(self._names) // room), 1)
        wide = step * self.width() / max(len(self._names), 1) - _APART_PX
        ticks = [
            (at, metrics.elidedText(self._names[at], Qt.TextElideMode.ElideRight, int(wide)))
            for at in range((step - 1) // 2, len(self._names), step)
        ]
        self.getAxis("bottom").setTicks([ticks])

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if getattr(self, "_names", None):
            self._tick()

    def redraw(self) -> None:
        self._draw()


class LookBackWindow(QDialog):
    """Filters above, the picture beside the table; follows the log."""

    def __init__(self, bench: Workbench, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Look back"))
        open_at(self, 1060, 660)
        self.bench = bench
        self.frame: Frame | None = None
        self.groups: tuple[Group, ...] = ()
        self._lay_out()
        # Results are handed over in turns too, and so find both charts made.
        bench.turns.take(self, self._make_catch, self._make_light)
        bench.log_changed.connect(self.refresh)
        self.finished.connect(self._leave)
        self.refresh()

    def _lay_out(self) -> None:
        self.by = self._box(say("Group by"))
        for key, words in BY_CHOICES:
            self.by.addItem(words, key)
        self.filters = {name: self._box(words) for name, words in _FILTERS}
        self.filters["quarter"].addItem(say("all"), "")
        for quarter in QUARTERS:
            self.filters["quarter"].addItem(quarter, quarter)
        named = [(say("Group by"), self.by), *((words, self.filters[n]) for n, words in _FILTERS)]
        self.summary = body()
        self._model = RowsModel((say("Month"), *COLUMNS), NUMBERS, self)
        self.table = rows_table(self._model, say("What each group gave"), wraps=False)
        column, pictures = QVBoxLayout(self), QWidget()
        halves = QSplitter(Qt.Orientation.Horizontal)
        # From the outside in: whatever is taken in takes all that it holds along, at a price.
        column.setSpacing(SPACE)
        column.addLayout(Flow(*(_labelled(words, box) for words, box in named)))
        column.addWidget(self.summary)
        column.addWidget(halves, 1)
        halves.setChildrenCollapsible(False)
        halves.addWidget(pictures)
        self._charts = QVBoxLayout(pictures)
        self._charts.setContentsMargins(0, 0, 0, 0)
        halves.addWidget(self.table)
        halves.setSizes([480, 560])
        enter_presses_nothing(self)

    def _make_catch(self) -> None:
        self.catch = GroupChart(say("Keepers a haul"), say("keepers a haul"), percent=False)
        self._charts.addWidget(self.catch, 1)

    def _make_light(self) -> None:
        self.light = GroupChart(
            say("Light crabs of 100 judged"), say("light, of 100 judged"), percent=True
        )
        self._charts.addWidget(self.light, 1)

    def _box(self, name: str) -> QComboBox:
        box = QComboBox()
        box.setAccessibleName(name)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        box.activated.connect(lambda _: self._work_out())
        return box

    # -- showing -----------------------------------------------------------------------------

    def refresh(self) -> None:
        """Read the log anew, elsewhere: a long one takes a second."""
        log, site = self.bench.log, self.bench.site

        @cache
        def zone(place: str) -> ZoneInfo | None:
            return site.zone if site is not None and site.name == place else book_zone(place)

        self.bench.desk.start(
            "look back", say("Looking back"), lambda _: frame_of(log, zone), self._got
        )

    def _got(self, frame: Frame) -> None:
        self.frame = frame
        for name, values in choices(frame).items():
            box = self.filters[name]
            before = box.currentData() or ""
            box.clear()
            box.addItem(say("all"), "")
            for value in values:
                box.addItem(value, value)
            box.setCurrentIndex(max(box.findData(before), 0))
        self._work_out()

    def _chosen(self) -> tuple[Filters, By]:
        values = {name: box.currentData() or "" for name, box in self.filters.items()}
        return filters_of(values), self.by.currentData()

    def _work_out(self) -> None:
        frame, (filters, by) = self.frame, self._chosen()
        if frame is None:
            return

        def work(_: Checkpoint) -> tuple[tuple[Group, ...], Group | None]:
            return look_back(frame, filters, by), everything(frame, filters)

        def done(found: tuple[tuple[Group, ...], Group | None]) -> None:
            self._show(*found, by)

        self.bench.desk.start("look back groups", "", work, done)

    def _show(self, groups: tuple[Group, ...], whole: Group | None, by: By) -> None:
        self.groups = groups
        logged = bool(self.bench.log.hauls)
        self.summary.setText(summary(whole, groups, by) if logged else _NOTHING)
        names = [group.name for group in groups]
        self.catch.show_values(names, [group.rate for group in groups])
        self.light.show_values(names, [group.share for group in groups])
        self._model.show(rows(groups), (dict(BY_CHOICES)[by], *COLUMNS))
        if by in ("month", "year", "trip"):
            self.table.scrollToBottom()  # the newest

    def _leave(self, *_: Any) -> None:
        self.bench.log_changed.disconnect(self.refresh)
        for job in ("look back", "look back groups"):
            self.bench.desk.stop(job)


def _labelled(words: str, box: QComboBox) -> QWidget:
    """Return a box under its label."""
    label = QLabel(words)
    label.setBuddy(box)
    give_role(label, "quiet")
    both = QWidget()
    column = QVBoxLayout(both)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(LINE_GAP)
    column.addWidget(label)
    column.addWidget(box)
    return both
