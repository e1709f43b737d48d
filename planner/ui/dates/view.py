"""Choose dates: the strip, the ranked plans, the chosen plan, and past trips like it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.phrasing import count_text, day_clock_text
from planner.ui.dates.like_it import LikeItPanel
from planner.ui.dates.panels import Panels
from planner.ui.dates.plan_moves import PlanMoves
from planner.ui.dates.plan_panel import PlanPanel
from planner.ui.dates.plan_words import day_verdict, move_hint, own_text
from planner.ui.dates.plans_panel import PlansPanel
from planner.ui.hauls.last_trip import LastTripLine
from planner.ui.parts import Panel, body, button, quiet, scrolled, title
from planner.ui.strip import StripView
from planner.ui.strip.days import (
    TripMark,
    alike_marks,
    day_sentences,
    trip_marks,
    why_text,
)
from planner.ui.strip.legend import Legend
from planner.ui.strip.table import DaysTable
from planner.ui.theme import LINE_GAP, SPACE
from planner.ui.when_seen import WhenSeen
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Plan

_WIDE_EM = 150
# The strip grows from its least with every line of text that the window is higher.
_LEAST_LINES, _LINES_A_SCALE = 45, 55
_LEAST_GROWTH, _MOST_GROWTH = 0.8, 1.7
# Days are passed over quickly; the one that is stayed at is told why.
_REST_MS = 120
_SPANS = ((say("2 weeks"), 14), (say("6 weeks"), 44), (say("Season"), 185), (say("Year"), 366))


class DatesView(WhenSeen, QWidget):
    """The start of the program: when to set and pull."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self._marks: list[TripMark] = []
        self._pointed: date | None = None
        self.headline = title(say("No place is open yet"))
        self.basis = quiet()
        self.strip = StripView(self.state.today)
        self.day_line = body()
        self.day_line.setAccessibleName(say("The chosen day in words"))
        self.moves = PlanMoves(bench)
        self.move_line = quiet()
        self.move_line.setAccessibleName(say("Moving a plan"))
        self.take_back = button(
            say("Undo move"), self.moves.undo, say("Have the plan before back  (Ctrl+Z)")
        )
        self.plans = PlansPanel(bench)
        self.plan = PlanPanel(bench)
        self.like_it = LikeItPanel(bench)
        self.last_trip = LastTripLine(bench)
        self.table = DaysTable()
        self._lay_out()
        # A wheel turned once asks for many ranges: ask for more days when it rests.
        self._range_timer = QTimer(self, singleShot=True, interval=250)
        self._range_timer.timeout.connect(self._want_days)
        for days in (self.strip, self.table):
            days.day_chosen.connect(lambda day: self.state.change(day=day))
        self.strip.plan_chosen.connect(lambda rank: self.state.change(plan=rank))
        self.strip.day_pointed.connect(self._point)
        self.strip.plan_held.connect(self.moves.hold)
        self.strip.plan_moved.connect(self.moves.drag)
        self.strip.plan_stepped.connect(self.moves.step)
        self.strip.plan_kept.connect(self.moves.keep)
        self.strip.plan_undone.connect(self.moves.undo)
        self.moves.changed.connect(self._say_move)
        self.strip.range_changed.connect(lambda *_: self._range_timer.start())
        self.like_it.found.connect(
            lambda day, trips: self.strip.show_alike(day, alike_marks(trips))
        )
        self.state.listen(self._state_changed)
        bench.site_changed.connect(self._show_site)
        for signal, show in (
            (bench.outlook_changed, self._show_outlook),
            (bench.plans_changed, self._show_plans),
            (bench.log_changed, self._show_log),
        ):
            signal.connect(partial(self._follow, show))
        for desk in (bench.desk, bench.clerk):
            desk.busy.connect(lambda _: self._say_nothing_open())
        self.refresh()

    def _lay_out(self) -> None:
        column = QVBoxLayout()
        column.setContentsMargins(SPACE * 2, SPACE, SPACE * 2, SPACE)
        column.setSpacing(SPACE // 2)
        column.addWidget(self.headline)
        top = QHBoxLayout()
        top.setSpacing(SPACE * 2)
        top.addWidget(self.basis, 1)
        top.addLayout(self._span_buttons())
        column.addLayout(top)
        column.addWidget(self.last_trip)
        column.addWidget(self._strip_card())
        column.addWidget(Panels(self.plans, self.plan, self.like_it), 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(column, say("Days and plans"), apart=False))

    def _strip_card(self) -> Panel:
        card = Panel()
        column = QVBoxLayout(card)
        column.setContentsMargins(1, 1, 1, SPACE // 2)
        column.setSpacing(LINE_GAP)
        self._stack = QStackedWidget()
        self._stack.addWidget(self.strip)
        self._stack.addWidget(self.table)
        self._stack.setCurrentIndex(int(self.state.as_table))
        self._grow_strip()
        column.addWidget(self._stack)
        column.addWidget(Legend())
        line = QHBoxLayout()
        line.setContentsMargins(SPACE, 0, SPACE, LINE_GAP)
        self.day_line.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        line.addWidget(self.day_line)
        column.addLayout(line)
        foot = QHBoxLayout()
        foot.setContentsMargins(SPACE, 0, SPACE, LINE_GAP)
        foot.addWidget(self.move_line, 1)
        foot.addWidget(self.take_back)
        column.addLayout(foot)
        return card

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._grow_strip()
        # So many lines are kept free that the plans do not jump as the mouse moves.
        letters = self.width() / self.fontMetrics().averageCharWidth()
        lines = 2 if letters >= 2 * _WIDE_EM else 3 if letters >= _WIDE_EM else 4
        self.day_line.setMinimumHeight(lines * self.day_line.fontMetrics().lineSpacing() + 2)

    def _grow_strip(self) -> None:
        lines = self.height() / self.fontMetrics().lineSpacing()
        growth = _LEAST_GROWTH + (lines - _LEAST_LINES) / _LINES_A_SCALE
        self.strip.grow(min(max(growth, _LEAST_GROWTH), _MOST_GROWTH))
        self.table.setFixedHeight(self.strip.height())
        self._stack.setFixedHeight(self.strip.height())

    def _span_buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(SPACE // 2)
        row.addWidget(QLabel(say("Show")))
        for label, days in _SPANS:
            button = QPushButton(label)
            button.setToolTip(say("Show {label} from just before today", label=label.lower()))
            button.clicked.connect(lambda _=False, count=days: self._show_span(count))
            row.addWidget(button)
        today = QPushButton(say("Today"))
        today.setToolTip(say("Choose today  (Home)"))
        today.clicked.connect(lambda: self.state.change(day=self.state.today))
        row.addWidget(today)
        return row

    # -- showing -----------------------------------------------------------------------------

    def _show_site(self) -> None:
        self._marks = []
        self.strip.show_trips([])
        self.refresh_when_seen()
        # A place opens with the days around today; the strip may stand elsewhere.
        self._range_timer.start()

    def _follow(self, show: Callable[[], None]) -> None:
        """Show a part of what changed, or all of it when the view comes up again."""
        if self.isVisible():
            show()
        else:
            self.refresh_when_seen()

    def refresh(self) -> None:
        self._show_outlook()
        self._show_log()
        self._show_plans()

    def _show_outlook(self) -> None:
        outlook = self.bench.outlook
        self.strip.show_outlook(outlook)
        if not self._marks:
            self._show_log()
        self._say_basis()
        self._say_day()
        self._fill_table()

    def _show_log(self) -> None:
        site = self.bench.site
        # Past catches come after the days: what reads them takes time that the days need.
        if site is not None and self.bench.outlook is not None:
            log = self.bench.log
            self.bench.desk.start(
                "trip marks",
                "",
                lambda _: trip_marks(log.outcomes(site.name), site.zone),
                self._show_marks,
            )

    def _show_marks(self, marks: list[TripMark]) -> None:
        self._marks = marks
        self.strip.show_trips(marks)
        self._say_day()
        self._fill_table()

    def _show_plans(self) -> None:
        site = self.bench.site
        if site is not None:
            self.strip.show_plans(self._plans(), self.state.plan, site.zone, self.bench.own_plan)
        self._say_all()

    def _say_all(self) -> None:
        self._say_move()
        self._say_headline()
        self._say_basis()
        self._say_day()
        self._fill_table()

    def _plans(self) -> Sequence[Plan]:
        return self.bench.plans.plans if self.bench.plans else ()

    def _say_nothing_open(self) -> None:
        """Ask for a place only when none is on its way."""
        if self.bench.site is not None:
            return
        opening = self.bench.opening
        self.headline.setText(say("Opening the place…") if opening else say("No place is open yet"))
        self.basis.setText(
            "" if opening else say("Pick a place at the top left, or make one in the place book.")
        )

    def _say_headline(self) -> None:
        site, plans = self.bench.site, self._plans()
        if site is None:
            return
        if self.bench.plans is None:
            self.headline.setText(site.name)
        elif not plans:
            self.headline.setText(say("No set and haul in the next 12 weeks keeps every limit"))
        else:
            from planner.trips import soonest_as_good

            # Differences smaller than the estimate can tell are no reason to wait for weeks.
            best, style = soonest_as_good(plans), self.state.style
            self.headline.setText(
                say(
                    "Set {set_at}, haul {haul_at}, {count} full keepers",
                    set_at=day_clock_text(best.set_at, site.zone, style),
                    haul_at=day_clock_text(best.haul_at, site.zone, style),
                    count=count_text(best.full_keepers),
                )
            )

    def _say_basis(self) -> None:
        outlook, plans = self.bench.outlook, self._plans()
        if self.bench.site is None:
            self._say_nothing_open()
            return
        if outlook is None:
            self.basis.setText(say("The days are not worked out yet."))
            return
        forecast = outlook.forecast
        if forecast.basis == "prior":
            basis = say("Fullness from published biology alone")
        else:
            basis = say("Fullness learned from {trips} logged trips", trips=forecast.trips)
        ahead = say("The soonest of the dates as good as any in 12 weeks. ") if plans else ""
        self.basis.setText(
            say("{ahead}{basis}; ranges hold 8 times in 10.", ahead=ahead, basis=basis)
        )

    def _say_day(self) -> None:
        outlook = self.bench.outlook
        if outlook is None:
            self.day_line.setText("")
            return
        day = self._pointed or self.state.day
        text = day_sentences(outlook, day, self._marks, self.bench.every_plan, self.state.style)
        if self._pointed is None and outlook.days[0] <= day <= outlook.days[-1]:
            text += f" {why_text(outlook, day)}"
        self._explain(day, text)

    def _explain(self, day: date, text: str) -> None:
        """Say of a day what a set or haul on it would give, or what rules it out."""
        search, wishes = self.bench.search, self.bench.wishes
        style, today = self.state.style, self.state.today
        self._show_day(text)
        self.bench.desk.stop("explain")
        ahead = () if search is None else search.outlook.days
        if search is None or self.bench.plans is None or not ahead[0] <= day <= ahead[-1]:
            return

        def work(_: Checkpoint) -> list[str]:
            from planner.trips import explain_day

            return explain_day(search, day, style, wishes, today)

        closed = search.outlook.why_closed[search.outlook.index(day)]
        self.bench.desk.start(
            "explain",
            "",
            work,
            lambda found: self._show_day(day_verdict(text, found, closed)),
            rest_ms=_REST_MS,
        )

    def _show_day(self, text: str) -> None:
        self.day_line.setText(text)
        self.strip.setAccessibleDescription(text)

    def _say_move(self) -> None:
        moves, plan, site = self.moves, self.bench.plan, self.bench.site
        self.strip.moving = moves.part is not None
        self.strip.can_undo = moves.can_undo
        self.take_back.setVisible(moves.can_undo)
        text = "" if plan is None else move_hint(moves.part)
        if plan is not None and site is not None and plan is self.bench.own_plan:
            best = self._plans()[0] if self._plans() else None
            text = f"{own_text(plan, best, site.zone, self.state.style)} {text}"
        self.move_line.setText(text)

    def _fill_table(self) -> None:
        if self.state.as_table:
            self.table.days.show(self.bench.outlook, self._marks, self._plans(), self.state.style)
            self.table.choose_day(self.state.day)
            self.table.resizeColumnsToContents()

    # -- following the user ------------------------------------------------------------------

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "today" in changed:
            self.strip.show_today(self.state.today)
            self._range_timer.start()  # the days worked out lie around today; others may be shown
        if "day" in changed:
            self.strip.choose_day(self.state.day)
            self.table.choose_day(self.state.day)
            self._follow(self._say_day)
        if "plan" in changed:
            self._follow(self._show_plans)
        if "style" in changed:
            self._follow(self._say_all)
        if "theme" in changed:
            self.strip.refresh()
        if "as_table" in changed:
            self._stack.setCurrentIndex(int(self.state.as_table))
            self._fill_table()

    def _point(self, day: date | None) -> None:
        if day != self._pointed:
            self._pointed = day
            self._say_day()

    def _show_span(self, days: int) -> None:
        before = min(12, days // 4) if days <= 60 else days // 2
        self.strip.show_days(self.state.today - timedelta(days=before), days)

    def _want_days(self) -> None:
        self.bench.show_span(*self.strip.days_in_view())
