"""Sun and moon on each local day of a place."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

import numpy as np

from planner.clock import Instants, day_edges, days_between
from planner.sites.site import Site
from planner.sky.almanac_days import SkyDays
from planner.sky.ephemeris import require_days
from planner.sky.horizon import EVENTS, EventName, events_between, sun_is_up
from planner.sky.moon import illuminated, lunar_age


def sky_days(site: Site, first: date, last: date, events: Sequence[EventName] = EVENTS) -> SkyDays:
    """Return sun and moon at the place on the local days first..last, both included.

    events: those to find, each a sixth of the time; the others are NaT. Whether the sun is up
    or down all day is told from sunrise and sunset, and False without them.
    Local days of 23 and 25 hours are taken as they are. Raises RangeError outside the
    ephemeris, ValueError when last precedes first.
    """
    if last < first:
        raise ValueError(
            f"the span ends on {last.isoformat()}, before its start {first.isoformat()}"
        )
    require_days(first, last)
    edges = day_edges(first, last, site.zone)
    noons = edges[:-1] + (edges[1:] - edges[:-1]) // 2
    never = np.empty(0, dtype="datetime64[ms]")
    found = {
        **dict.fromkeys(EVENTS, never),
        **events_between(site, edges[0], edges[-1], events),
    }
    sunrise = _first_of_each_day(found["sunrise"], edges)
    sunset = _last_of_each_day(found["sunset"], edges)
    asked = {"sunrise", "sunset"} <= set(events)
    without = np.isnat(sunrise) & np.isnat(sunset) & asked
    up_all_day = np.zeros(noons.size, dtype=bool)
    up_all_day[without] = sun_is_up(site, noons[without])
    return SkyDays(
        days=tuple(days_between(first, last)),
        lunar_age_d=lunar_age(noons),
        illuminated=illuminated(noons),
        sunrise=sunrise,
        sunset=sunset,
        civil_dawn=_first_of_each_day(found["civil_dawn"], edges),
        civil_dusk=_last_of_each_day(found["civil_dusk"], edges),
        moonrise=_first_of_each_day(found["moonrise"], edges),
        moonset=_first_of_each_day(found["moonset"], edges),
        sun_up_all_day=up_all_day,
        sun_down_all_day=without & ~up_all_day,
    )


def _first_of_each_day(times: Instants, edges: Instants) -> Instants:
    """Return the first instant in each day, NaT where there is none; edges (n + 1,) -> (n,)."""
    padded = np.append(times, np.datetime64("NaT", "ms"))
    found = padded[np.searchsorted(times, edges[:-1], side="left")]
    return np.where(found < edges[1:], found, np.datetime64("NaT", "ms"))


def _last_of_each_day(times: Instants, edges: Instants) -> Instants:
    """Return the last instant in each day, NaT where there is none; edges (n + 1,) -> (n,)."""
    padded = np.concatenate([[np.datetime64("NaT", "ms")], times])
    found = padded[np.searchsorted(times, edges[1:], side="left")]
    return np.where(found >= edges[:-1], found, np.datetime64("NaT", "ms"))
