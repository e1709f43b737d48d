"""Past trips most like a planned date: how near, and how they turned out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Final

import numpy as np

from planner.clock import LUNATION_D, YEAR_D, to_utc64
from planner.estimates import INTERVAL_TAILS, Interval
from planner.logbook.entries import LIGHT_TRIP_SHARE, TripOutcome
from planner.phrasing import Style, degrees_apart_text
from planner.sites.site import Site
from planner.words import counted, say

# How far apart counts as one step away. All judgement: each changes what a trapper would
# expect about as much as the others.
_MOON_STEP_D: Final = 4.0
_SEASON_STEP_D: Final = 25.0
_WATER_STEP_C: Final = 3.0
_LIGHT_STEP_D: Final = 10.0
# A light trip longer ago than this says nothing any more: crabs have refilled.
_LIGHT_FORGOTTEN_D: Final = 60.0
# What an unknown temperature adds: neither near nor far.
_UNKNOWN_STEPS: Final = 1.0


@dataclass(frozen=True)
class SimilarTrip:
    """A past trip and how near it is to the planned date.

    distance: 0 is alike in every trait; 1 is about one step away in each.
    moon_d, season_d: days apart, moon and season going round.
    warmer_c: how much warmer (degrees C) the water was then, None where either is unknown.
    since_light_d: days then since the last light trip, None without one in two months.
    how_near: the same in words.
    light: share of light crabs with its 80% interval, None when nothing was judged.
    """

    outcome: TripOutcome
    day: date
    distance: float
    moon_d: float
    season_d: float
    warmer_c: float | None
    since_light_d: float | None
    how_near: str
    light: Interval | None


def similar_trips(
    site: Site,
    day: date,
    outcomes: Sequence[TripOutcome],
    *,
    water_c: float | None = None,
    limit: int = 5,
    style: Style | None = None,
) -> list[SimilarTrip]:
    """Return the place's trips before a day that are most like it, nearest first.

    water_c: temperature expected on the day, None or NaN where unknown.
    Trips of other places, without a time, or on or after the day are left out.
    Raises RangeError when the day or a trip is outside the ephemeris.
    """
    past = _past_trips(site, day, outcomes)
    if not past:
        return []
    noon = datetime.combine(day, time(12), tzinfo=site.zone)
    ages_d = _lunar_place_d([noon, *(when for when, _ in past)])
    light_trips = [when for when, outcome in past if _was_light(outcome)]
    planned_since = _since_light_d(noon, light_trips)
    expected_c = None if water_c is None or np.isnan(water_c) else water_c
    found = []
    for (when, outcome), age_d in zip(past, ages_d[1:], strict=True):
        then = when.astimezone(site.zone).date()
        moon_d = _around(age_d - ages_d[0], LUNATION_D)
        season_d = _around((day - then).days, YEAR_D)
        known = expected_c is not None and outcome.water_c is not None
        warmer_c = outcome.water_c - expected_c if known else None  # type: ignore[operator]
        since = _since_light_d(when, light_trips)
        found.append(
            SimilarTrip(
                outcome=outcome,
                day=then,
                distance=_distance(moon_d, season_d, warmer_c, since, planned_since),
                moon_d=moon_d,
                season_d=season_d,
                warmer_c=warmer_c,
                since_light_d=since,
                how_near=", ".join(
                    _how_near(moon_d, season_d, warmer_c, since, planned_since, style or Style())
                ),
                light=light_interval(outcome),
            )
        )
    found.sort(key=lambda trip: (trip.distance, -trip.day.toordinal(), trip.outcome.trip))
    return found[:limit]


def light_interval(outcome: TripOutcome) -> Interval | None:
    """Return a trip's share of light crabs with an 80% interval, None when none was judged.

    Jeffreys: a beta posterior from half a crab of each kind; an end is the share itself when
    all or none were light (Brown, Cai and DasGupta 2001, from memory).
    """
    if not outcome.judged or outcome.light is None:
        return None
    from scipy.special import betaincinv

    light, full = outcome.light, outcome.judged - outcome.light
    low, high = (float(betaincinv(light + 0.5, full + 0.5, tail)) for tail in INTERVAL_TAILS)
    return Interval(
        mean=light / outcome.judged,
        low=0.0 if light == 0 else low,
        high=1.0 if full == 0 else high,
    )


def _past_trips(
    site: Site, day: date, outcomes: Sequence[TripOutcome]
) -> list[tuple[datetime, TripOutcome]]:
    here = [
        (outcome.when, outcome)
        for outcome in outcomes
        if outcome.place == site.name
        and outcome.when is not None
        and outcome.when.astimezone(site.zone).date() < day
    ]
    return sorted(here, key=lambda pair: (pair[0], pair[1].trip))


def _lunar_place_d(instants: Sequence[datetime]) -> list[float]:
    """Return where in the lunation each instant falls, in days of a mean lunation.

    By the phase itself rather than days since the new moon, which run up to half a day off.
    """
    from planner.sky import lunar_phase_angle

    times = np.array([to_utc64(instant) for instant in instants], dtype="datetime64[ms]")
    return [float(angle) / 360 * LUNATION_D for angle in lunar_phase_angle(times)]


def _around(apart: float, period: float) -> float:
    """Return the shortest distance between two places on a circle."""
    return abs((apart + period / 2) % period - period / 2)


def _was_light(outcome: TripOutcome) -> bool:
    if not outcome.judged or outcome.light is None:
        return False
    return outcome.light / outcome.judged >= LIGHT_TRIP_SHARE


def _since_light_d(when: datetime, light_trips: Sequence[datetime]) -> float | None:
    """Return the days since the last light trip before an instant, None when long ago."""
    gaps = [(when - light).total_seconds() / 86_400 for light in light_trips if light < when]
    if not gaps or min(gaps) > _LIGHT_FORGOTTEN_D:
        return None
    return min(gaps)


def _distance(
    moon_d: float,
    season_d: float,
    warmer_c: float | None,
    since: float | None,
    planned_since: float | None,
) -> float:
    forgotten = _LIGHT_FORGOTTEN_D
    now_d = forgotten if planned_since is None else planned_since
    light_d = abs((forgotten if since is None else since) - now_d)
    steps = (
        moon_d / _MOON_STEP_D,
        season_d / _SEASON_STEP_D,
        _UNKNOWN_STEPS if warmer_c is None else warmer_c / _WATER_STEP_C,
        light_d / _LIGHT_STEP_D,
    )
    return float(np.sqrt(np.mean(np.square(steps))))


def _how_near(
    moon_d: float,
    season_d: float,
    warmer_c: float | None,
    since: float | None,
    planned_since: float | None,
    style: Style,
) -> Iterator[str]:
    yield say("same moon") if moon_d < 1 else say("moon {days} apart", days=_days(moon_d))
    yield (
        say("same time of year")
        if season_d < 7
        else say("{days} apart in the year", days=_days(season_d))
    )
    if warmer_c is not None:
        yield say("water {degrees_apart}", degrees_apart=degrees_apart_text(warmer_c, style))
    if since is not None and planned_since is not None:
        yield say(
            "last light trip {days} before (now {now})",
            days=_days(since),
            now=_days(planned_since),
        )
    elif since is not None:
        yield say("a light trip {days} before, none now", days=_days(since))
    elif planned_since is not None:
        yield say("no light trip before it, one {days} before now", days=_days(planned_since))


def _days(days: float) -> str:
    return counted(max(1, round(days)), "day")
