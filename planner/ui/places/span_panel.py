"""What the water does on any days from 1900 to 2100: worked out elsewhere, with a way to stop."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import Any, Final

from PySide6.QtCore import QDate, QTimer
from PySide6.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QProgressBar,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.phrasing import Style
from planner.sites.site import Site
from planner.tides.tide import FIRST_YEAR, LAST_YEAR
from planner.ui.flow import Flow, labelled
from planner.ui.parts import body, button, quiet, refill, scrolling
from planner.ui.places.span_rows import (
    Advance,
    SpanWater,
    event_row,
    ramp_span_text,
    slack_span_text,
    span_texts,
    span_water,
    write_events,
)
from planner.ui.tables import TextModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

_KEY: Final = "span of turns"
_LEAST_LINES: Final = 12  # of the table's height; where the panel is lower, it scrolls
_LOOK_MS: Final = 100  # how often the bar looks at how far the work is


class SpanModel(TextModel):
    """Waters put into words as they come into sight: a century has 140,000."""

    def __init__(self) -> None:
        super().__init__((say("Local time"), say("Height"), say("Water")), numbers=(1,))
        self._found: SpanWater | None = None
        self._style = Style()

    def show(self, found: SpanWater | None, style: Style) -> None:
        """Show other waters, or none."""
        self.beginResetModel()
        self._found, self._style = found, style
        self.endResetModel()

    def _count(self) -> int:
        return 0 if self._found is None else len(self._found.events.times)

    def _cell(self, row: int, column: int) -> str:
        assert self._found is not None
        return event_row(self._found, row, self._style)[column]


class _Share:
    """How far a job is: written by the thread that works, read by the one that shows."""

    def __init__(self) -> None:
        self.done = 0.0


class SpanPanel(QWidget):
    """Two days, a button, and the waters between them as a table to read or to save."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.site: Site | None = None
        self.found: SpanWater | None = None
        self._share = _Share()
        self._look = QTimer(self, interval=_LOOK_MS)
        self._look.timeout.connect(self._show_share)
        self._build()
        self._propose()
        self._set_working(False)
        self.state.listen(self._state_changed)
        # Whatever ends the work, "Stop" of the status line as well, ends the showing of it.
        bench.desk.busy.connect(self._follow)

    def _build(self) -> None:
        self.first, self.last = QDateEdit(), QDateEdit()
        for field in (self.first, self.last):
            field.setDisplayFormat("yyyy-MM-dd")
            field.setDateRange(QDate(FIRST_YEAR, 1, 1), QDate(LAST_YEAR, 12, 31))
        self.begin = button(
            say("Work out"), self.work_out, say("Every high and low water of these days")
        )
        self.save = button(
            say("Save as a table…"), self.pick_file, say("A CSV file for any spreadsheet")
        )
        self.stop = button(say("Stop"), self.give_up, say("Give up what is being worked out"))
        self.bar = QProgressBar()
        self.bar.setRange(0, 100)
        self.bar.setMaximumWidth(160)
        self.bar.setAccessibleName(say("How much is worked out"))
        named = (labelled(say("F&rom"), self.first), labelled(say("&To"), self.last))
        self.ramp, self.slack = QCheckBox(say("Ra&mp")), QCheckBox(say("S&lack"))
        self.ramp.setToolTip(say("When the water begins and stops being high enough to launch"))
        self.slack.setToolTip(say("By the place's own lags after high and low water: an estimate"))
        for box in (self.ramp, self.slack):
            box.setChecked(True)
            box.hide()
            box.toggled.connect(lambda _: self._show_found())
        days = Flow(*named, self.begin, self.save, self.ramp, self.slack)
        working = QHBoxLayout()
        for each in (self.bar, self.stop):
            working.addWidget(each)
        working.addStretch(1)
        self.words = QVBoxLayout()
        self.model = SpanModel()
        self.table = rows_table(
            self.model,
            say("High and low waters of the days"),
            wraps=False,
            empty=say(
                "Pick the days and press Work out: each high and low water will stand here, "
                "with its time and height."
            ),
        )
        # Rows of one height: asked for its own, each of a century's would be put into words.
        self.table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.table.verticalHeader().setDefaultSectionSize(3 * self.fontMetrics().height() // 2)
        self.table.setMinimumHeight(_LEAST_LINES * self.fontMetrics().lineSpacing())
        column = scrolling(self, say("Any dates"))
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(
            quiet(
                say(
                    "High and low waters of any days from {first} to {last}: next weekend, a year "
                    "for the wall, or a century; with ramp and slack, where the place has them. "
                    "Not for navigation.",
                    first=str(FIRST_YEAR),
                    last=str(LAST_YEAR),
                )
            )
        )
        column.addLayout(days)
        column.addLayout(working)
        column.addLayout(self.words)
        column.addWidget(self.table, 1)

    def _propose(self) -> None:
        today = self.state.today
        self.first.setDate(_shown(today))
        self.last.setDate(_shown(today + timedelta(days=365)))

    def show_site(self, site: Site) -> None:
        """Be ready for a place; what was worked out of another is put away."""
        if site == self.site:
            return
        self.give_up()
        self.site, self.found = site, None
        self.ramp.setVisible(site.lowest_ramp_level_m is not None)
        self.slack.setVisible(site.slack is not None)
        self._show_found()

    # -- working ------------------------------------------------------------------------------

    def work_out(self) -> None:
        """Find the waters, elsewhere than on this thread."""
        site, first, last = self.site, _day(self.first), _day(self.last)
        if site is None:
            return

        def work(advance: Advance) -> SpanWater:
            return span_water(site, first, last, advance)

        def done(found: SpanWater) -> None:
            self.found = found
            self._show_found()

        self._start(say("Working out high and low waters"), work, done)

    def pick_file(self) -> None:
        """Ask where to save the waters."""
        if self.found is None:
            return
        name = f"{self.found.site.name} {self.found.first} {self.found.last}.csv"
        path, _ = QFileDialog.getSaveFileName(
            self, say("Save high and low waters"), name, say("Tables (*.csv)")
        )
        if path:
            self.save_to(Path(path))

    def save_to(self, path: Path) -> None:
        """Write the rows that are shown to a file."""
        found, style = self._wanted(), self.state.style
        if found is None:
            return

        def work(advance: Advance) -> None:
            write_events(path, found, style, advance)

        def done(_: None) -> None:
            self._say(say("Saved as {name}.", name=path.name))

        self._start(say("Saving high and low waters"), work, done)

    def _start(
        self, label: str, work: Callable[[Advance], Any], done: Callable[[Any], None]
    ) -> None:
        share = self._share = _Share()

        def job(checkpoint: Checkpoint) -> Any:
            def advance(part: float) -> None:
                checkpoint()
                share.done = part

            return work(advance)

        self._say("")
        self.bench.desk.start(_KEY, label, job, done, self._refused)
        self._set_working(True)

    def give_up(self) -> None:
        """Stop what is being worked out; what was there before stays."""
        if self.bench.desk.has(_KEY):
            self.bench.desk.stop(_KEY)
            self._say(say("Stopped."))

    def _refused(self, error: PlannerError) -> None:
        self._say(str(error))

    def _follow(self, _: str) -> None:
        if not self.stop.isHidden() and not self.bench.desk.has(_KEY):
            self._set_working(False)

    def _set_working(self, working: bool) -> None:
        self.stop.setVisible(working)
        self.bar.setVisible(working)
        self.bar.setValue(0)
        self.begin.setEnabled(not working)
        self.save.setEnabled(not working and self.found is not None)
        if working:
            self._look.start()
        else:
            self._look.stop()

    def _show_share(self) -> None:
        self.bar.setValue(round(100 * self._share.done))

    # -- showing ------------------------------------------------------------------------------

    def _wanted(self) -> SpanWater | None:
        """Return what was found, of the kinds that are ticked."""
        if self.found is None:
            return None
        return self.found.only(ramp=self.ramp.isChecked(), slack=self.slack.isChecked())

    def _show_found(self) -> None:
        self.model.show(self._wanted(), self.state.style)
        self.save.setEnabled(self.found is not None and not self.bench.desk.has(_KEY))
        self._say("")

    def _say(self, text: str) -> None:
        refill(self.words, [body(each) for each in (*self._found_texts(), text) if each])

    def _found_texts(self) -> Iterator[str]:
        found, style = self.found, self.state.style
        if found is None:
            return
        yield from span_texts(found, style)
        if self.ramp.isChecked():
            yield ramp_span_text(found, style)
        if self.slack.isChecked():
            yield slack_span_text(found)

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "style" in changed:
            self._show_found()


def _shown(day: date) -> QDate:
    return QDate(day.year, day.month, day.day)


def _day(field: QDateEdit) -> date:
    shown = field.date()
    return date(shown.year(), shown.month(), shown.day())
