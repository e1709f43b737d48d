"""Load up: what goes aboard for the chosen plan, the rules there, and what to take along."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QStackedWidget, QVBoxLayout, QWidget

from planner.errors import PlannerError
from planner.handouts import Section, TripFacts, checklist, trip_facts
from planner.sites import Site
from planner.trips import Plan
from planner.ui.load.card_page import CardPage
from planner.ui.load.checklist_cards import SectionCard
from planner.ui.load.layout_desk import LayoutDesk
from planner.ui.load.take_along import TakeAlong
from planner.ui.load.text import headline, summary, trip_key
from planner.ui.load.ticks import read_ticks, write_ticks
from planner.ui.load.trap_card import TrapCard
from planner.ui.parts import Empty, body, button, keep_bar_apart, quiet, title
from planner.ui.theme import SPACE
from planner.ui.when_seen import WhenSeen
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say


class LoadView(WhenSeen, QWidget):
    """Follows the chosen plan; while it is hidden it only remembers that something changed."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.facts: TripFacts | None = None
        self.ticks: frozenset[str] = frozenset()
        self._keys: frozenset[str] = frozenset()
        self._lay_out()
        for signal in (
            bench.site_changed,
            bench.log_changed,
            bench.outlook_changed,
            bench.plans_changed,
        ):
            signal.connect(self.refresh_when_seen)
        LayoutDesk.of(bench).changed.connect(self.refresh_when_seen)
        self.state.listen(self._state_changed)
        self.refresh()

    # -- building ----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self._headline = title()
        self._summary = quiet()
        self._done = body()
        self.cards = [SectionCard() for _ in range(5)]
        for card in self.cards:
            card.ticked.connect(self._tick)
        self.traps = TrapCard(self.bench)
        self.take = TakeAlong(self.bench, lambda: self.facts)
        self.on_deck = self.take.on_deck
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
        column.addWidget(self.take)
        column.addWidget(self._scroll(), 1)
        return full

    def _scroll(self) -> QScrollArea:
        rules, gear, bait, safety, food = self.cards
        traps = self.traps
        self.page = CardPage(
            two=((gear, traps, bait), (rules, safety, food)),
            three=((gear, bait, food), (traps,), (rules, safety)),
        )
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(self.page)
        keep_bar_apart(scroll)
        scroll.setAccessibleName(say("Checklist"))
        return scroll

    # -- showing -----------------------------------------------------------------------------

    def _state_changed(self, changed: frozenset[str]) -> None:
        if changed == {"style"} and self.facts is not None and self.isVisible():
            self._show(self.facts)
        elif changed & {"plan", "style", "today"}:
            self.refresh_when_seen()

    def chosen(self) -> Plan | None:
        """Return the chosen plan, None when there is none."""
        return self.bench.plan

    def refresh(self) -> None:
        """Work out what the chosen plan needs, and show it."""
        site, plan, log = self.bench.site, self.chosen(), self.bench.log
        if site is None or plan is None:
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
        self.facts = None
        self.bench.turns.drop(self.page)
        self._waiting.words.setText(text)
        self._stack.setCurrentIndex(0)

    def _failed(self, error: PlannerError) -> None:
        self._wait(str(error))

    def _water_c(self, site: Site, plan: Plan) -> float | None:
        outlook = self.bench.outlook
        day = plan.haul_at.astimezone(site.zone).date()
        if outlook is None or not outlook.days[0] <= day <= outlook.days[-1]:
            return None
        return float(outlook.forecast.water_c[outlook.index(day)])

    def _show(self, facts: TripFacts) -> None:
        pieces = self._pieces(facts)
        if self.facts is None:
            # Nothing is to be seen yet, and lines take long to make: the cards come up one a turn.
            for card in (*self.cards, self.traps):
                card.hide()
            self.bench.turns.take(self.page, *pieces)
        else:
            self.bench.turns.drop(self.page)
            for piece in pieces:
                piece()

    def _pieces(self, facts: TripFacts) -> list[Callable[[], object]]:
        style, ticks = self.state.style, read_ticks(trip_key(facts.site, facts.plan))
        sections = checklist(facts, self.state.today, style)
        rules, gear, *others = (
            partial(card.tell, section, ticks)
            for card, section in zip(self.cards, sections, strict=True)
        )
        traps = partial(self.traps.tell, facts, style)
        put_up = partial(self._put_up, facts, ticks, sections)
        return [put_up, gear, rules, traps, *others, self.page.chain]

    def _put_up(self, facts: TripFacts, ticks: frozenset[str], sections: Sequence[Section]) -> None:
        self.facts, self.ticks = facts, ticks
        self._keys = frozenset(item.key for section in sections for item in section.items)
        self._headline.setText(headline(facts.site, facts.plan, self.state.style))
        self._summary.setText(summary(facts, self.state.style))
        self._count()
        self._stack.setCurrentIndex(1)

    # -- ticking -----------------------------------------------------------------------------

    def _tick(self, key: str, on: bool) -> None:
        assert self.facts is not None
        self.ticks = self.ticks | {key} if on else self.ticks - {key}
        write_ticks(trip_key(self.facts.site, self.facts.plan), self.ticks)
        self._count()

    def _count(self) -> None:
        self._done.setText(
            say(
                "{ticked} of {whole} ticked off for this trip",
                ticked=len(self._keys & self.ticks),
                whole=len(self._keys),
            )
        )

    def _to_dates(self) -> None:
        self.state.change(view="dates")
