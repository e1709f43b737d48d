"""What an edit would mean: a month of water beside the old one, the kind of tide, suspicions."""

from __future__ import annotations

from typing import Final

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.clock import from_utc64
from planner.phrasing import day_text
from planner.tides.checks import WaterCheck
from planner.ui.parts import body, caution, heading, quiet, refill, scrolling
from planner.ui.places.edit_preview import (
    MONTH_DAYS,
    Preview,
    check,
    check_texts,
    next_turns_text,
    same_water,
)
from planner.ui.places.observed_rows import comparison_texts
from planner.ui.places.place_charts import MonthChart
from planner.ui.places.places_text import turn_rows
from planner.ui.tables import ChartWithTable, RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.when_seen import WhenSeen
from planner.ui.workbench import Workbench
from planner.words import counted, say

_MONTH_PX: Final = 200  # of the month's least height, where the pane has it
_LEAST_LINES: Final = 5  # lower, it would be all axis


class EditPane(WhenSeen, QWidget):
    """Follows an edit: the month at once, the checks a second later."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self._shown: Preview | None = None
        self._check: WaterCheck | None = None
        self._checked_of: Preview | None = None
        self.month = MonthChart()
        self.month.setAccessibleName(say("Month of water of the edited place"))
        self._turns = RowsModel((say("Local time"), say("Water"), say("Height")), numbers=(2,))
        table = rows_table(self._turns, say("High and low waters of the edited place"), wide=0)
        self.picture = ChartWithTable(self.month, table)
        self.about = quiet()
        self.pointed, self.first = quiet(), body()
        self.month.pointed.connect(lambda text: self.pointed.setText(text or " "))
        self.facts, self.suspected = QVBoxLayout(), QVBoxLayout()
        for each in (self.facts, self.suspected):
            each.setSpacing(SPACE // 2)
        column = self._column = scrolling(self, say("The water this makes"))
        column.setContentsMargins(0, SPACE, 0, 0)
        self._heading = heading(say("The water this makes"))
        column.addWidget(self._heading)
        column.addLayout(self.suspected)
        column.addWidget(self.picture, 1)
        column.addWidget(self.about)
        column.addWidget(self.pointed)
        column.addWidget(self.first)
        column.addLayout(self.facts)
        column.addStretch(0)
        self.state.listen(self._state_changed)

    def show_preview(self, found: Preview) -> None:
        """Show an edit; the checks of an older one hold on while the water is the same."""
        month, self._shown = found.month, found
        if self._checked_of is not None and same_water(found, self._checked_of):
            self.refresh()
            return
        self._check = self._checked_of = None
        self.bench.desk.stop("edit check")
        self.refresh()
        if month is None:
            return
        refill(self.facts, [quiet(say("Working out range, kind and extremes…"))])

        def done(check: WaterCheck) -> None:
            self._check, self._checked_of = check, found
            self._show_check()

        self.bench.desk.start(
            "edit check", say("Checking the water"), lambda _: check(month.site, found.seen), done
        )

    def refresh(self) -> None:
        """Show the edit anew, in the units and clock of the user."""
        found, style = self._shown, self.state.style
        if found is None:
            return
        month = found.month
        self.picture.setVisible(month is not None)
        # Without the chart the words stand together at the top.
        self._column.setStretch(self._column.count() - 1, 0 if month is not None else 1)
        self.pointed.setVisible(month is not None)
        self.first.setVisible(month is not None)
        if month is None:
            count = len(found.problems)
            self.about.setText(
                say(
                    "No water yet: {things} to put right, marked with ⚠ beside "
                    "the fields. Nothing is saved until then.",
                    things=counted(count, "thing"),
                )
            )
            refill(self.suspected, [])
            refill(self.facts, [])
            return
        self.month.show_report(month, style, found.before, found.seen)
        self._turns.show(turn_rows(month.turns, month.site.zone, style))
        first = from_utc64(month.times[0]).astimezone(month.site.zone).date()
        words = say(
            "{month_days} days from {day} {first.year}, {key}.",
            month_days=MONTH_DAYS,
            day=day_text(first),
            first=first,
            key=month.site.zone.key,
        )
        if found.before is not None:
            words += say(" Dotted: as saved. Line: as edited.")
        if found.seen is not None:
            words += say(" Open marks: what you saw.")
        self.about.setText(words)
        self.pointed.setText(" ")
        self.first.setText(next_turns_text(month, style))
        self._show_check()

    def _show_check(self) -> None:
        found, style = self._shown, self.state.style
        if self._check is None or found is None:
            return
        facts = [body(text) for text in check_texts(self._check, style)]
        if found.seen is not None:
            rows = len(found.seen.times)
            facts += [body(t) for t in comparison_texts(self._check.comparison, rows, style)]
        refill(self.facts, facts)
        refill(
            self.suspected,
            [caution(f"{each.text} {each.remedy}") for each in self._check.suspicions],
        )

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "style" in changed:
            self.refresh_when_seen()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_month()

    def _fit_month(self) -> None:
        """Let the picture stand whole under the heading, also in a low pane of large letters."""
        said = self._heading.heightForWidth(self.width())
        above = self._column.contentsMargins().top() + said + self._column.spacing()
        below = self.picture.button.sizeHint().height() + SPACE // 2
        least = _LEAST_LINES * self.fontMetrics().lineSpacing()
        room = self.height() - above - below
        self.month.setMinimumHeight(max(least, min(room, _MONTH_PX)))
