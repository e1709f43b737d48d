"""The days of the strip as a table: the same facts, in rows for whoever prefers them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QObject, Qt, Signal
from PySide6.QtWidgets import QTableView

from planner.phrasing import Style, day_text, height_text, interval_text, light_text, range_text
from planner.ui.strip.days import TripMark, moon_text, outcome_text, plan_name
from planner.ui.tables import TextModel
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Outlook, Plan

_COLUMNS = (
    say("Day"),
    say("Fullness"),
    say("Light crabs"),
    say("Water"),
    say("Moon"),
    say("Logged"),
    say("Plans"),
    say("Free or closed"),
)


class DaysModel(TextModel):
    """One row a day of the outlook."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(_COLUMNS, parent=parent)
        self._outlook: Outlook | None = None
        self._marks: Sequence[TripMark] = ()
        self._plans: Sequence[Plan] = ()
        self._style = Style()

    def show(
        self,
        outlook: Outlook | None,
        marks: Sequence[TripMark],
        plans: Sequence[Plan],
        style: Style,
    ) -> None:
        """Show other days, trips and plans."""
        self.beginResetModel()
        self._outlook, self._marks, self._plans, self._style = outlook, marks, plans, style
        self.endResetModel()

    def day(self, row: int) -> date:
        """Return the day of a row."""
        assert self._outlook is not None
        return self._outlook.days[row]

    def row(self, day: date) -> int | None:
        """Return the row of a day, None when it is not among them."""
        if self._outlook is None or not self._outlook.days[0] <= day <= self._outlook.days[-1]:
            return None
        return self._outlook.index(day)

    def _count(self) -> int:
        return 0 if self._outlook is None else len(self._outlook.days)

    def _cell(self, row: int, column: int) -> str:
        outlook = self._outlook
        assert outlook is not None
        day, style = outlook.days[row], self._style
        fullness, light = outlook.forecast.fullness.at(row), outlook.forecast.light_share.at(row)
        zone = outlook.site.zone
        match column:
            case 0:
                return f"{day_text(day)} {day.year}"
            case 1:
                return interval_text(fullness, ".0%")
            case 2:
                return light_text(light)
            case 3:
                low, high = float(outlook.lowest_m[row]), float(outlook.highest_m[row])
                return range_text(height_text(low, style), height_text(high, style))
            case 4:
                return moon_text(outlook, row)
            case 5:
                return "; ".join(outcome_text(m.outcome) for m in self._marks if m.day == day)
            case 6:
                return "; ".join(
                    plan_name(plan.rank)
                    for plan in self._plans
                    if plan.set_at.astimezone(zone).date()
                    <= day
                    <= plan.haul_at.astimezone(zone).date()
                )
            case _:
                closed, busy = outlook.why_closed[row], outlook.why_not_free[row]
                return say("closed: {closed}", closed=closed) if closed else (busy or say("free"))


class DaysTable(QTableView):
    """The table as a widget; its current row is the chosen day.

    day_chosen: by click or key.
    """

    day_chosen = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.days = DaysModel(self)
        self.setModel(self.days)
        self.setAccessibleName(say("Days as a table"))
        self.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QTableView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        # Columns are as wide as the rows in view want: ten years of rows would take seconds.
        header = self.horizontalHeader()
        header.setResizeContentsPrecision(0)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setHighlightSections(False)
        header.setStretchLastSection(True)
        self.selectionModel().currentRowChanged.connect(self._row_chosen)

    def choose_day(self, day: date) -> None:
        """Make a day the current row and bring it into view."""
        row = self.days.row(day)
        if row is not None and row != self.currentIndex().row():
            index = self.days.index(row, 0)
            flags = QItemSelectionModel.SelectionFlag
            self.selectionModel().setCurrentIndex(index, flags.ClearAndSelect | flags.Rows)
            self.scrollTo(index, QTableView.ScrollHint.PositionAtCenter)

    def _row_chosen(self, current: QModelIndex, _previous: QModelIndex) -> None:
        if current.isValid():
            self.day_chosen.emit(self.days.day(current.row()))
