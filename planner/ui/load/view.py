"""Load up: what goes aboard for the chosen plan, the rules there, and what to take along."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QDesktopServices, QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.handouts import (
    TripFacts,
    calendar_file,
    checklist,
    no_positions,
    trip_facts,
    trip_sheet,
    water_csv,
    waypoints_gpx,
)
from planner.handouts.writing import write_whole
from planner.logbook import Haul
from planner.sites import Site
from planner.trips import Plan
from planner.ui.flow import Flow
from planner.ui.load.checklist_cards import SectionCard
from planner.ui.load.deck_button import DeckButton
from planner.ui.load.deck_rows import planned_rows
from planner.ui.load.layout_desk import LayoutDesk
from planner.ui.load.layout_editor import LayoutEditor
from planner.ui.load.papers import Paper, usual_paper
from planner.ui.load.text import headline, layout_lines, summary, trip_key
from planner.ui.load.ticks import read_ticks, write_ticks
from planner.ui.parts import Card, Empty, Page, body, button, quiet, refill, scrolled, title
from planner.ui.theme import SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say


class LoadView(QWidget):
    """Follows the chosen plan; while it is hidden it only remembers that something changed."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.facts: TripFacts | None = None
        self.ticks: frozenset[str] = frozenset()
        self.cards: list[SectionCard] = []
        self._stale = True
        self._lay_out()
        for signal in (
            bench.site_changed,
            bench.log_changed,
            bench.outlook_changed,
            bench.plans_changed,
        ):
            signal.connect(self._changed)
        LayoutDesk.of(bench).changed.connect(self._changed)
        self.state.listen(self._state_changed)
        self.refresh()

    # -- building ----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self._headline = title()
        self._summary = quiet()
        self._done = body()
        self.paper = QComboBox()
        self.paper.addItems([say("Letter"), "A4"])
        self.paper.setAccessibleName(say("Paper of the sheets"))
        self.paper.setCurrentIndex(0 if usual_paper() == "letter" else 1)
        self.sheet = button(
            say("Print or save trip sheet…"),
            self._save_sheet,
            say("One page to take along, as a PDF"),
        )
        self.calendar = button(
            say("Calendar…"),
            self._save_calendar,
            say("Check, set and haul with alarms, for any calendar"),
        )
        self.waypoints = button(
            say("Waypoints…"),
            self._save_waypoints,
            say("The spots with their traps, for a plotter (GPX)"),
        )
        self.water = button(
            say("Water table…"),
            self._save_water,
            say("The water at each spot every ten minutes (CSV)"),
        )
        self.on_deck = DeckButton(self.bench, self._deck_rows, paper=self._chosen_paper)
        self.other = button(
            say("Another plan"),
            self._to_dates,
            say("Choose dates: pick another plan to load up for"),
        )
        self.to_dates = button(say("Choose dates"), self._to_dates)
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE * 2, SPACE, SPACE * 2, SPACE)
        self._waiting = Empty("", self.to_dates)
        self._stack = QStackedWidget()
        self._stack.addWidget(self._waiting)
        self._stack.addWidget(self._full())
        column.addWidget(self._stack)

    def _full(self) -> QWidget:
        full = QWidget()
        column = QVBoxLayout(full)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        top = QHBoxLayout()
        top.addWidget(self._headline, 1)
        top.addWidget(self.other)
        column.addLayout(top)
        column.addWidget(self._summary)
        column.addWidget(self._done)
        paper = QHBoxLayout()
        paper.setContentsMargins(0, 0, 0, 0)
        label = QLabel(say("Paper"))
        label.setBuddy(self.paper)
        paper.addWidget(label)
        paper.addWidget(self.paper)
        kept = QWidget()
        kept.setLayout(paper)
        files = (self.calendar, self.waypoints, self.water)
        column.addLayout(Flow(kept, self.sheet, self.on_deck, *files))
        column.addWidget(self._scroll(), 1)
        return full

    def _scroll(self) -> QScrollArea:
        self._left, self._right = QVBoxLayout(), QVBoxLayout()
        inside = Page()
        halves = QHBoxLayout(inside)
        halves.setContentsMargins(0, 0, SPACE, 0)
        halves.setSpacing(SPACE)
        for half in (self._left, self._right):
            half.setSpacing(SPACE)
            whole = QVBoxLayout()
            whole.addLayout(half)
            whole.addStretch(1)
            halves.addLayout(whole, 1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(inside)
        scroll.setAccessibleName(say("Checklist"))
        return scroll

    # -- showing -----------------------------------------------------------------------------

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self.refresh()

    def _changed(self) -> None:
        self._stale = True
        if self.isVisible():
            self.refresh()

    def _state_changed(self, changed: frozenset[str]) -> None:
        if changed & {"plan", "style", "today"}:
            self._changed()

    def chosen(self) -> Plan | None:
        """Return the chosen plan, None when there is none."""
        return self.bench.plan

    def refresh(self) -> None:
        """Work out what the chosen plan needs, and show it."""
        self._stale = False
        site, plan, log = self.bench.site, self.chosen(), self.bench.log
        if site is None or plan is None:
            self.facts = None
            self.bench.desk.stop("load up")
            self._wait(self._why_none())
            return
        water_c = self._water_c(site, plan)

        def work(_: Checkpoint) -> TripFacts:
            return trip_facts(site, plan, log, water_c)

        self.bench.desk.start("load up", say("Packing the list"), work, self._show, self._failed)

    def _why_none(self) -> str:
        if self.bench.plans is None:
            return say(
                "The plans are being worked out. What goes aboard for the chosen one will be "
                "here: traps and lines, bait, rules of the place, safety, and the trip sheet."
            )
        return say(
            "No plan is chosen. Choose dates first; what goes aboard for that trip will be here: "
            "traps and lines, bait, rules of the place, safety, and the trip sheet to print."
        )

    def _wait(self, text: str) -> None:
        self._waiting.words.setText(text)
        self._stack.setCurrentIndex(0)

    def _failed(self, error: PlannerError) -> None:
        self.facts = None
        self._wait(str(error))

    def _water_c(self, site: Site, plan: Plan) -> float | None:
        outlook = self.bench.outlook
        day = plan.haul_at.astimezone(site.zone).date()
        if outlook is None or not outlook.days[0] <= day <= outlook.days[-1]:
            return None
        return float(outlook.forecast.water_c[outlook.index(day)])

    def _show(self, facts: TripFacts) -> None:
        site, plan, style = facts.site, facts.plan, self.state.style
        self.facts = facts
        self.ticks = read_ticks(trip_key(site, plan))
        self._headline.setText(headline(site, plan, style))
        self._summary.setText(summary(facts, style))
        sections = checklist(facts, self.state.today, style)
        self.cards = [SectionCard(section, self.ticks) for section in sections]
        for card in self.cards:
            card.ticked.connect(self._tick)
        rules, gear, bait, safety, food = self.cards
        refill(self._left, [gear, self._layout_card(facts), bait])
        refill(self._right, [rules, safety, food])
        self._count()
        self._stack.setCurrentIndex(1)

    def _layout_card(self, facts: TripFacts) -> Card:
        lines: list[QWidget] = []
        for traps, water in layout_lines(facts, self.state.style):
            lines += [body(traps), quiet(water)]
        if facts.traps.sentence:
            lines.append(quiet(facts.traps.sentence))
        if len(facts.traps.spots) > 1:
            move = button(say("Move traps…"), self._move_traps, say("Put traps at other spots"))
            move.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
            lines.append(move)
        return Card(say("Where the traps go, in the order of setting"), *lines)

    def _move_traps(self) -> None:
        dialog = QDialog(self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(say("Where the traps go"))
        column, inside = QVBoxLayout(dialog), QVBoxLayout()
        editor = LayoutEditor(self.bench)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addWidget(editor)
        inside.addStretch(1)
        column.addWidget(scrolled(inside, say("Where the traps go")))
        done = button(say("Done"), dialog.accept)
        column.addWidget(done, alignment=Qt.AlignmentFlag.AlignRight)
        QWidget.setTabOrder(editor.log, done)
        dialog.resize(520, 560)
        dialog.open()

    # -- ticking -----------------------------------------------------------------------------

    def _tick(self, key: str, on: bool) -> None:
        assert self.facts is not None
        self.ticks = self.ticks | {key} if on else self.ticks - {key}
        write_ticks(trip_key(self.facts.site, self.facts.plan), self.ticks)
        self._count()

    def _count(self) -> None:
        keys = {line.key for card in self.cards for line in card.lines}
        self._done.setText(
            say(
                "{ticked} of {whole} ticked off for this trip",
                ticked=len(keys & self.ticks),
                whole=len(keys),
            )
        )

    # -- taking along ------------------------------------------------------------------------

    def _chosen_paper(self) -> Paper:
        return "A4" if self.paper.currentIndex() else "letter"

    def _deck_rows(self) -> tuple[Haul, ...]:
        facts = self.facts
        if facts is None:
            return ()
        return planned_rows(self.bench.log, facts.site, facts.plan, facts.traps)

    def _to_dates(self) -> None:
        self.state.change(view="dates")

    def _save_sheet(self) -> None:
        from planner.handouts.sheet_pdf import write_sheet

        facts, today, style = self.facts, self.state.today, self.state.style
        path = self._ask(say("Save the trip sheet"), "pdf", say("PDF (*.pdf)"))
        if facts is None or path is None:
            return
        paper = self._chosen_paper()

        def work(_: Checkpoint) -> None:
            write_sheet(trip_sheet(facts, today, style), path, paper)

        def done(_: None) -> None:
            self.bench.notice.emit(
                say("Trip sheet written to {path}. Print it from there.", path=path)
            )
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

        self.bench.desk.start("sheet", say("Writing the trip sheet"), work, done)

    def _save_calendar(self) -> None:
        facts, style = self.facts, self.state.style
        if facts is not None:
            site, plan, now = facts.site, facts.plan, datetime.now(UTC)
            self._write(
                say("Save the calendar file"),
                "ics",
                say("Calendar (*.ics)"),
                lambda: calendar_file(site, plan, style, now),
            )

    def _save_waypoints(self) -> None:
        facts, style = self.facts, self.state.style
        if facts is not None:
            now = datetime.now(UTC)
            if all(spot.latitude_deg is None for spot in facts.site.spots):
                self.bench.notice.emit(no_positions(facts.site))
                return
            self._write(
                say("Save the waypoints"),
                "gpx",
                say("Waypoints (*.gpx)"),
                lambda: waypoints_gpx(facts, style, now),
            )

    def _save_water(self) -> None:
        facts, style = self.facts, self.state.style
        if facts is not None:
            site, plan = facts.site, facts.plan
            self._write(
                say("Save the water"),
                "csv",
                say("Table (*.csv)"),
                lambda: water_csv(site, plan, style).encode(),
            )

    def _write(self, asked: str, suffix: str, kinds: str, content: Callable[[], bytes]) -> None:
        path = self._ask(asked, suffix, kinds)
        if path is None:
            return
        self.bench.desk.start(
            f"write {suffix}",
            say("Writing"),
            lambda _: write_whole(path, content()),
            lambda _: self.bench.notice.emit(say("Written to {path}.", path=path)),
        )

    def _ask(self, asked: str, suffix: str, kinds: str) -> Path | None:
        assert self.facts is not None
        trip = re.sub(r'[\\/:*?"<>|]', "-", trip_key(self.facts.site, self.facts.plan))
        path, _ = QFileDialog.getSaveFileName(self, asked, f"{trip}.{suffix}", kinds)
        return Path(path) if path else None
