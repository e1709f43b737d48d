"""Asking once how the last trip's crabs turned out in the kitchen, where fullness is seen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, timedelta, tzinfo
from typing import Final

from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit

from planner.logbook import Log, Trip
from planner.logbook.columns import CellError, read_count
from planner.logbook.rules import trip_problems
from planner.ui.parts import body, button, on_ground
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

# Longer ago nobody knows any more how a pot of crabs was.
_REMEMBERED: Final = timedelta(days=14)


def kitchens_to_ask(log: Log, today: date, zone: tzinfo) -> list[Trip]:
    """Return the trips with crabs to pick, no kitchen count, never asked for; newest first.

    zone: on whose clock trips have their day.
    """
    found = []
    for outcome in reversed(log.outcomes()):
        ago = None if outcome.when is None else today - outcome.when.astimezone(zone).date()
        if ago is None or not timedelta(0) <= ago <= _REMEMBERED:
            continue
        trip = log.by_trip[outcome.trip, outcome.place].trip
        if outcome.keepers and trip.kitchen_picked is None and not trip.kitchen_asked:
            found.append(trip)
    return found


class KitchenAsk(QFrame):
    """A strip over the view: answer, or send it away for good. It never asks for a trip again."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        on_ground(self, "caution")
        self.bench = bench
        self._waiting: Sequence[Trip] = ()
        self._asked_of: object = None
        self.words = body()
        self.picked, self.light = (
            self._field(say("Crabs picked")),
            self._field(say("Light ones of those")),
        )
        self.save = button(say("Save"), self._save)
        self.later = button(
            say("Not counted"), self._next, say("You can fill it in later, in Log hauls")
        )
        row = QHBoxLayout(self)
        row.setContentsMargins(SPACE * 2, SPACE // 2, SPACE * 2, SPACE // 2)
        row.addWidget(self.words, 1)
        for text, field in ((say("picked"), self.picked), (say("light"), self.light)):
            row.addWidget(QLabel(text))
            row.addWidget(field)
        row.addWidget(self.save)
        row.addWidget(self.later)
        for line in (self.picked, self.light):
            line.returnPressed.connect(self._save)
        self.hide()

    def _field(self, name: str) -> QLineEdit:
        line = QLineEdit()
        line.setAccessibleName(name)
        line.setFixedWidth(56)
        return line

    def ask(self) -> None:
        """Ask for what the open log lacks, once for each log that is opened."""
        book = self.bench.book
        if book is self._asked_of:
            return
        self._asked_of, self._waiting = book, ()
        if book is None or book.read_only or self.bench.source.demo:
            self._show()
            return
        zone = UTC if self.bench.site is None else self.bench.site.zone
        self._waiting = kitchens_to_ask(self.bench.log, self.bench.state.today, zone)[:3]
        self._show()
        asked = [(trip.name, trip.place) for trip in self._waiting]
        if asked:
            self.bench.change_log(lambda book: book.kitchen_asked(asked))

    def _show(self) -> None:
        self.setVisible(bool(self._waiting))
        if self._waiting:
            self.words.setText(
                say(
                    "How were the crabs of trip {name} in the kitchen? The count teaches the "
                    "forecast; leave it out when nobody counted.",
                    name=self._waiting[0].name,
                )
            )
            for line in (self.picked, self.light):
                line.clear()

    def _next(self) -> None:
        self._waiting = self._waiting[1:]
        self._show()

    def _save(self) -> None:
        trip = self._waiting[0]
        try:
            picked, light = (read_count(line.text().strip()) for line in (self.picked, self.light))
        except CellError as error:
            self.words.setText(
                say(
                    "⚠ Not saved. The count {what}; {remedy}.", what=error.what, remedy=error.remedy
                )
            )
            return
        logged = self.bench.log.by_trip.get((trip.name, trip.place))
        told = replace(trip if logged is None else logged.trip, kitchen_picked=picked,
                       kitchen_light=light)  # fmt: skip
        problem = next(iter(trip_problems(told)), None)
        if problem is not None:
            self.words.setText(say("⚠ Not saved. Light {what}.", what=problem.what))
            return
        self.bench.change_log(
            lambda book: book.save_details(
                told, say("kitchen count of trip {name}", name=trip.name)
            )
        )
        self._next()
