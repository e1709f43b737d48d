"""What plans forecast for the trips begun from them, beside what those trips gave."""

from __future__ import annotations

from dataclasses import dataclass

from planner.estimates import Interval
from planner.logbook import Log
from planner.words import say


@dataclass(frozen=True)
class Judged:
    """A trip begun from a plan: its forecast of full keepers, and the full keepers that came."""

    trip: str
    forecast: Interval
    came: float

    @property
    def within(self) -> bool:
        """Whether what came lies within the forecast's 80% interval, to the whole crab."""
        return round(self.forecast.low) <= round(self.came) <= round(self.forecast.high)


def judged_promises(log: Log, place: str) -> tuple[Judged, ...]:
    """Return the trips at a place that were begun from a plan and have come to a count.

    What came is the keepers times the share of the judged crabs that was not light; a trip
    without either says nothing yet.
    """
    found = []
    for outcome in log.outcomes(place):
        promise = log.by_trip[outcome.trip, place].trip.promise
        if promise is None or outcome.keepers is None:
            continue
        if outcome.keepers and (not outcome.judged or outcome.light is None):
            continue
        full = 1 - (outcome.light or 0) / outcome.judged if outcome.judged else 1.0
        found.append(Judged(outcome.trip, promise.full_keepers, outcome.keepers * full))
    return tuple(found)


def promises_text(judged: tuple[Judged, ...]) -> str:
    """Return how the plans' forecasts did, in words, with the number of trips behind it."""
    if not judged:
        return say(
            "No trip begun from a plan has been counted and judged yet. What its plan forecast "
            "is kept with it, and will be held here against what came."
        )
    n = len(judged)
    trips = (
        say("1 trip begun from a plan was")
        if n == 1
        else say("{n} trips begun from plans were", n=n)
    )
    inside = sum(each.within for each in judged)
    forecast = round(sum(each.forecast.mean for each in judged))
    came = round(sum(each.came for each in judged))
    return say(
        "{trips} forecast {forecast} full keepers in all; {came} came. {inside} "
        "of {n} came within the range forecast; in the long run 8 of 10 should.",
        trips=trips,
        forecast=forecast,
        came=came,
        inside=inside,
        n=n,
    )
