"""Past trips most like the chosen day, nearest first, and how they turned out."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel

from planner.phrasing import day_text, light_text
from planner.ui.parts import Card, body, heading, quiet, refill
from planner.ui.strip.days import outcome_text
from planner.ui.theme import LINE_GAP, SPACE
from planner.ui.whole_lines import WholeLines
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import SimilarTrip

_SHOWN = 5
_NONE_EVER = say(
    "No trips are logged here yet. Logged trips that had the same moon, season and water as the "
    "chosen day will be listed here, with how full the crabs were."
)
_NONE_BEFORE = say("No trip was logged here before that day.")


class LikeItPanel(Card):
    """A short list of logged trips under the day they are compared with.

    found: the day, and the trips like it that are listed now.
    """

    found = Signal(object, object)

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("Past trips like it"))
        self.bench, self.state = bench, bench.state
        scroll = WholeLines(say("Past trips like the chosen day"))
        self._list = scroll.words
        self._list.setSpacing(LINE_GAP)
        self.column.addWidget(scroll, 1)
        self.state.listen(self._state_changed)
        bench.site_changed.connect(self.refresh)
        bench.outlook_changed.connect(self.refresh)
        bench.log_changed.connect(self.refresh)
        self.refresh()

    def _state_changed(self, changed: frozenset[str]) -> None:
        if changed & {"day", "style"}:
            self.refresh()

    def refresh(self) -> None:
        """Look for trips like the chosen day."""
        site, outlook = self.bench.site, self.bench.outlook
        day, style = self.state.day, self.state.style
        self.bench.desk.stop("like it")
        if site is None or outlook is None:
            self._fill([], "")
            return
        log = self.bench.log
        self.heading.setText(say("Past trips like {day}", day=day_text(day)))
        inside = outlook.days[0] <= day <= outlook.days[-1]
        water_c = float(outlook.forecast.water_c[outlook.index(day)]) if inside else None

        def work(_: Checkpoint) -> list[SimilarTrip] | None:
            from planner.trips import similar_trips

            outcomes = log.outcomes(site.name)
            if not outcomes:
                return None
            return similar_trips(site, day, outcomes, water_c=water_c, limit=_SHOWN, style=style)

        self.bench.desk.start(
            "like it",
            "",
            work,
            lambda trips: self._fill(trips or [], _NONE_EVER if trips is None else _NONE_BEFORE),
        )

    def _fill(self, trips: list[SimilarTrip], nothing: str) -> None:
        lines = [] if trips else [quiet(nothing)]
        for trip in trips:
            lines += _lines(trip)
        self.found.emit(self.state.day, trips)
        refill(self._list, lines)
        self._list.addStretch(1)


def _lines(trip: SimilarTrip) -> list[QLabel]:
    outcome, said = trip.outcome, outcome_text(trip.outcome)
    if trip.light is not None:
        said = say(
            "{light} of {judged} light: {share}",
            light=outcome.light,
            judged=outcome.judged,
            share=light_text(trip.light),
        )
    near = quiet(f"{trip.how_near[:1].upper()}{trip.how_near[1:]}")
    near.setContentsMargins(0, 0, 0, SPACE)
    return [heading(f"{day_text(trip.day)} {trip.day.year}"), body(said), near]
