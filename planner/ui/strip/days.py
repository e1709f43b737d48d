"""What the strip shows, day by day, as plain data and in words; no Qt here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Final, Literal
from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import day_edges
from planner.estimates import Interval
from planner.phrasing import (
    MOON_NAMES,
    Style,
    count_text,
    day_clock_text,
    day_text,
    height_text,
    light_text,
    number_text,
    numbers_text,
    one_in,
    range_text,
    temperature_text,
)
from planner.words import say

if TYPE_CHECKING:
    from planner.logbook import TripOutcome
    from planner.trips import Outlook, Plan, SimilarTrip

# Days are drawn at their distance from this one, so that pixels stay within what floats hold.
_ORIGIN: Final = date(2000, 1, 1).toordinal()
# At most this share of light crabs and a trip counts as full; between the two it is mixed.
FULL_TRIP_SHARE: Final = 0.10

Catch = Literal["full", "mixed", "light", "not judged"]


def place_of(day: date) -> int:
    """Return where a day begins on the strip."""
    return day.toordinal() - _ORIGIN


def day_at(x: float) -> date:
    """Return the day drawn at a position of the strip."""
    return date.fromordinal(int(x // 1) + _ORIGIN)


def place_of_instant(instant: datetime, zone: ZoneInfo) -> float:
    """Return where an instant falls on the strip: its local day and the share of it gone."""
    local = instant.astimezone(zone)
    return place_of(local.date()) + (local.hour + local.minute / 60) / 24


def instant_at(x: float, zone: ZoneInfo) -> datetime:
    """Return the instant at a position of the strip, to the minute; UTC.

    An hour that the clock skips is taken as if it had not yet been put forward.
    """
    minutes = timedelta(minutes=round((x % 1) * 24 * 60))
    midnight = datetime.combine(day_at(x), time())
    return (midnight + minutes).replace(tzinfo=zone).astimezone(UTC)


def plan_name(rank: int) -> str:
    """Return what a plan is called: by its rank, or as the user's own."""
    return say("plan {rank}", rank=rank) if rank else say("your own plan")


_WHY: Final = {
    "season": say("season and water"),
    "moon": say("moon"),
    "runs": say("recent trips"),
    "place": say("place"),
}


@dataclass(frozen=True)
class TripMark:
    """A logged trip on the strip. full_share: share of full crabs with its interval, or None."""

    day: date
    x: float
    catch: Catch
    full_share: Interval | None
    outcome: TripOutcome


def trip_marks(outcomes: Sequence[TripOutcome], zone: ZoneInfo) -> list[TripMark]:
    """Return the trips that have a time, as marks."""
    from planner.trips.similar import light_interval

    marks = []
    for outcome in outcomes:
        if outcome.when is None:
            continue
        light = light_interval(outcome)
        full = None if light is None else Interval(1 - light.mean, 1 - light.high, 1 - light.low)
        marks.append(
            TripMark(
                day=outcome.when.astimezone(zone).date(),
                x=place_of_instant(outcome.when, zone),
                catch=_catch(light),
                full_share=full,
                outcome=outcome,
            )
        )
    return marks


def alike_marks(trips: Sequence[SimilarTrip]) -> list[tuple[float, Catch]]:
    """Return share of full crabs and kind of catch of the judged ones among similar trips."""
    return [(1 - trip.light.mean, _catch(trip.light)) for trip in trips if trip.light is not None]


def _catch(light: Interval | None) -> Catch:
    if light is None:
        return "not judged"
    from planner.logbook.entries import LIGHT_TRIP_SHARE

    if light.mean >= LIGHT_TRIP_SHARE:
        return "light"
    return "full" if light.mean <= FULL_TRIP_SHARE else "mixed"


def outcome_text(outcome: TripOutcome) -> str:
    """Return what a trip gave, in a few words."""
    words = []
    if outcome.keepers is not None:
        words.append(
            say(
                "{keepers} keepers from {hauls} hauls", keepers=outcome.keepers, hauls=outcome.hauls
            )
        )
    if outcome.judged and outcome.light is not None:
        words.append(
            say("{light} of {judged} judged were light", light=outcome.light, judged=outcome.judged)
        )
    else:
        words.append(say("fullness not judged"))
    return ", ".join(words)


def moon_text(outlook: Outlook, index: int) -> str:
    """Return the moon of a day: its phase by name, or its age and how much of it is lit."""
    day = outlook.days[index]
    first, after = np.searchsorted(
        outlook.phases.times, day_edges(day, day, outlook.site.zone), side="left"
    )
    if first < after:
        return MOON_NAMES[int(outlook.phases.kinds[first])]
    age, lit = outlook.sky.lunar_age_d[index], outlook.sky.illuminated[index]
    way = say("waxing") if age < 14.77 else say("waning")
    return say("moon {way}, {lit:.0%} lit", way=way, lit=lit)


def day_sentences(
    outlook: Outlook,
    day: date,
    marks: Sequence[TripMark],
    plans: Sequence[Plan],
    style: Style,
) -> str:
    """Return a day in words: fullness, water, sky, what is logged, planned or in the way."""
    from planner.sky.sun_words import sun_text  # the first paint reads nothing of the core

    try:
        index = outlook.index(day)
    except ValueError:
        return say("{day} {year}: not worked out yet.", day=day_text(day), year=day.year)
    forecast, zone = outlook.forecast, outlook.site.zone
    fullness = forecast.fullness.at(index)
    parts = [
        say(
            "{day} {year}: {mean} full ({range}), light crabs {light}",
            day=day_text(day),
            year=day.year,
            mean=number_text(fullness.mean, ".0%"),
            range=numbers_text(fullness.low, fullness.high, ".0%"),
            light=light_text(forecast.light_share.at(index)),
        ),
        say(
            "water {range}",
            range=range_text(
                height_text(float(outlook.lowest_m[index]), style),
                height_text(float(outlook.highest_m[index]), style),
            ),
        ),
        moon_text(outlook, index),
    ]
    water_c = float(forecast.water_c[index])
    if water_c == water_c:
        parts.insert(2, temperature_text(water_c, style))
    parts.append(sun_text(outlook.sky, index, zone, style))
    sentences = [", ".join(filter(None, parts)) + "."]
    sentences += [
        say("Logged {trip}: {outcome}.", trip=mark.outcome.trip, outcome=outcome_text(mark.outcome))
        for mark in marks
        if mark.day == day
    ]
    for plan in plans:
        if plan.set_at.astimezone(zone).date() <= day <= plan.haul_at.astimezone(zone).date():
            sentences.append(
                say(
                    "{plan_name}: set {set_at}, haul {haul_at}, {count} full keepers.",
                    plan_name=plan_name(plan.rank).capitalize(),
                    set_at=day_clock_text(plan.set_at, zone, style),
                    haul_at=day_clock_text(plan.haul_at, zone, style),
                    count=count_text(plan.full_keepers),
                )
            )
    if outlook.why_closed[index]:
        sentences.append(say("Closed: {why_closed}.", why_closed=outlook.why_closed[index]))
    elif outlook.why_not_free[index]:
        sentences.append(say("Not free: {why_not_free}.", why_not_free=outlook.why_not_free[index]))
    return " ".join(sentences)


def why_text(outlook: Outlook, day: date) -> str:
    """Return what moves the light share on a day against the yearly average, in points of 100."""
    index = outlook.index(day)
    forecast = outlook.forecast
    parts = []
    for name, label in _WHY.items():
        points = 100 * float(getattr(forecast.why, name)[index])
        if abs(points) >= 0.05:
            parts.append(say("{label} {points:+.1f}", label=label, points=points))
    if not parts:
        return say("No difference from the year's average.")
    yearly = one_in(forecast.yearly_light_share)
    return say(
        "Against the year's average ({yearly}), in light crabs of 100: {parts}.",
        yearly=yearly,
        parts=", ".join(parts),
    )
