"""Judged trips as points over the moon and over the year; no Qt here."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final
from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import LUNATION_D, to_utc64
from planner.estimates import Interval
from planner.logbook import TripOutcome
from planner.molt.evidence_types import Curve
from planner.phrasing import MOON_NAMES, SHORT_MONTHS, day_text, interval_text, light_text
from planner.ui.strip.days import Catch, trip_marks
from planner.words import say

# The middle month of the year's days at which each month begins, for the axis of the season.
MONTH_BEGINS: Final = (0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334)

Ticks = Sequence[tuple[float, str]]
MONTHS: Final[Ticks] = tuple(zip(map(float, MONTH_BEGINS), SHORT_MONTHS, strict=True))
QUARTERS: Final[Ticks] = tuple((LUNATION_D * i / 4, MOON_NAMES[i % 4]) for i in range(5))

_KINDS: Final[Mapping[Catch, str]] = {
    "full": say("full", sense="of a trip"),
    "mixed": say("mixed", sense="of a trip"),
    "light": say("light", sense="of a trip"),
    "not judged": say("not judged"),
}


@dataclass(frozen=True)
class TripPoint:
    """A judged trip: days into the lunation and into the year, its light share with interval."""

    name: str
    moon_d: float
    year_d: float
    light: Interval
    catch: Catch
    judged: int


def trip_points(outcomes: Sequence[TripOutcome], zone: ZoneInfo) -> tuple[TripPoint, ...]:
    """Return the trips that have a time and judged crabs, in order of time.

    Raises RangeError when a trip is outside the ephemeris.
    """
    from planner.sky import lunar_phase_angle
    from planner.trips.similar import light_interval

    marks = [mark for mark in trip_marks(outcomes, zone) if mark.outcome.judged]
    if not marks:
        return ()
    instants = [to_utc64(mark.outcome.when) for mark in marks if mark.outcome.when is not None]
    # By the phase rather than days since new moon: quarters then stand where they belong.
    moon_d = lunar_phase_angle(np.array(instants, dtype="datetime64[ms]")) / 360 * LUNATION_D
    points = []
    for mark, age_d in zip(marks, moon_d, strict=True):
        light = light_interval(mark.outcome)
        if light is None:
            continue
        points.append(
            TripPoint(
                name=f"{day_text(mark.day)} {mark.day.year}",
                moon_d=float(age_d),
                year_d=float(mark.day.timetuple().tm_yday - 1),
                light=light,
                catch=mark.catch,
                judged=mark.outcome.judged or 0,
            )
        )
    return tuple(points)


def moon_words(moon_d: float) -> str:
    """Return how far a moon is from its nearest quarter, in words."""
    quarter = LUNATION_D / 4
    nearest = round(moon_d / quarter)
    apart = round(moon_d - nearest * quarter)
    name = MOON_NAMES[nearest % 4]
    if apart == 0:
        return name
    if apart > 0:
        return say("{days} d after {moon}", days=apart, moon=name)
    return say("{days} d before {moon}", days=-apart, moon=name)


def point_text(point: TripPoint) -> str:
    """Return a trip in words."""
    light = round(point.light.mean * point.judged)
    return say(
        "{name}, {moon_words}: {light} of {judged} light, {share}",
        name=point.name,
        moon_words=moon_words(point.moon_d),
        light=light,
        judged=point.judged,
        share=light_text(point.light),
    )


def at_ticks(curve: Curve, ticks: Ticks) -> list[tuple[str, Interval]]:
    """Return the share of light crabs that a curve has at each tick."""
    return [
        (name, curve.light_share.at(int(np.argmin(np.abs(curve.x_d - x))))) for x, name in ticks
    ]


def point_rows(points: Sequence[TripPoint]) -> list[tuple[str, ...]]:
    """Return the trips as rows: when, moon, light of judged, share with interval, kind."""
    return [
        (
            point.name,
            moon_words(point.moon_d),
            say(
                "{mean} of {judged}",
                mean=round(point.light.mean * point.judged),
                judged=point.judged,
            ),
            interval_text(point.light, ".0%"),
            _KINDS[point.catch],
        )
        for point in points
    ]
