"""When sun and moon cross a place's horizon, by year, and when the sun is up.

Rise and set are those of the upper limb at a sea horizon with 34 minutes of arc of
refraction: the almanac convention. Civil twilight is the sun's centre 6 degrees below.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from functools import lru_cache
from typing import Any, Final, Literal, get_args

import numpy as np
from numpy.typing import NDArray

from planner.clock import Instants
from planner.sites.site import Site
from planner.sky.almanac_days import Daylight
from planner.sky.ephemeris import ephemeris, require_instants, sky_time, utc_instants

SUN_RADIUS_AND_REFRACTION_DEG = 50.0 / 60.0
_CIVIL_TWILIGHT_DEG = -6.0
# Crossings are found by hour angle, which means nothing at a pole: places nearer to one than
# this are treated as if they lay here. No trap stands there.
_POLEMOST_DEG = 89.0
# Nearer to the equator than this the sun rises and sets on every day of the year.
_SUN_ALWAYS_RISES_DEG = 65.0
# Local days of any zone that belong to a calendar year lie within this of the UTC year.
_MARGIN = np.timedelta64(2, "D")
# Skyfield samples from the start of the span: what happens within its first and last day
# is trusted only if the search began earlier and ended later.
_SEARCH_MARGIN = np.timedelta64(1, "D")

EventName = Literal["sunrise", "sunset", "civil_dawn", "civil_dusk", "moonrise", "moonset"]
EVENTS: Final[tuple[EventName, ...]] = get_args(EventName)
Events = Mapping[EventName, Instants]


def observer(site: Site) -> Any:
    """Return Skyfield's observer at the place, at sea level."""
    return _observer(site.latitude_deg, site.longitude_deg)


def _observer(latitude_deg: float, longitude_deg: float) -> Any:
    from skyfield.toposlib import wgs84

    within = max(-_POLEMOST_DEG, min(_POLEMOST_DEG, latitude_deg))
    return ephemeris().earth + wgs84.latlon(within, longitude_deg)


def events_between(
    site: Site, start: np.datetime64, stop: np.datetime64, names: Sequence[EventName] = EVENTS
) -> Events:
    """Return the instants in [start, stop) of each horizon event named, each array increasing."""
    pieces: dict[EventName, list[Instants]] = {name: [] for name in names}
    at = start
    while at < stop:
        year = int((at + _MARGIN).astype("datetime64[Y]").astype(int)) + 1970
        end = min(stop, np.datetime64(f"{year + 1:04d}-01-01", "ms") + _MARGIN)
        for name, found in pieces.items():
            times = _crossings_of_year(site.latitude_deg, site.longitude_deg, year, name)
            found.append(_within(times, at, end))
        at = end
    return {name: np.concatenate(found) for name, found in pieces.items()}


def sun_is_up(site: Site, times: Instants) -> NDArray[np.bool_]:
    """Return, shape (n,), whether any of the sun shows above the horizon at UTC instants."""
    if times.size == 0:
        return np.empty(0, dtype=bool)
    good = ephemeris()
    seen = observer(site).at(sky_time(times)).observe(good.sun).apparent()
    altitude, _, _ = seen.altaz()
    up: NDArray[np.bool_] = altitude.degrees > -SUN_RADIUS_AND_REFRACTION_DEG
    return up


def daylight(site: Site, start: np.datetime64, stop: np.datetime64) -> Daylight:
    """Return the stretches between start and stop (UTC) with the sun above the horizon.

    Right in the polar day (one stretch) and the polar night (none).
    Raises RangeError outside the ephemeris.
    """
    require_instants(np.array([start, stop], dtype="datetime64[ms]"))
    events = events_between(site, start, stop, ("sunrise", "sunset"))
    cuts = np.sort(np.concatenate([events["sunrise"], events["sunset"]]))
    edges = np.concatenate([[start], cuts, [stop]]).astype("datetime64[ms]")
    if cuts.size and abs(site.latitude_deg) < _SUN_ALWAYS_RISES_DEG:
        light_first = cuts[0] in events["sunset"]
        up = (np.arange(edges.size - 1) % 2 == 0) == light_first
    else:
        # A sun that grazes the horizon can lack a rise or a set, so the sky is asked what it
        # is like between each two.
        up = sun_is_up(site, edges[:-1] + (edges[1:] - edges[:-1]) // 2)
    steps = np.diff(np.concatenate([[False], up, [False]]).astype(np.int8))
    return Daylight(edges[:-1][steps[:-1] == 1], edges[1:][steps[1:] == -1])


def _within(times: Instants, start: np.datetime64, stop: np.datetime64) -> Instants:
    return times[(times >= start) & (times < stop)]


@lru_cache(maxsize=384)
def _crossings_of_year(
    latitude_deg: float, longitude_deg: float, year: int, name: EventName
) -> Instants:
    """Return one event in a UTC year and two days on either side, within the ephemeris."""
    from skyfield.almanac import find_risings, find_settings

    good = ephemeris()
    begin = max(np.datetime64(f"{year:04d}-01-01", "ms"), _edge(good.first)) - _MARGIN
    end = min(np.datetime64(f"{year + 1:04d}-01-01", "ms"), _edge(good.last) + _MARGIN) + _MARGIN
    span = sky_time(np.array([begin - _SEARCH_MARGIN, end + _SEARCH_MARGIN]))
    find = find_risings if name in ("sunrise", "civil_dawn", "moonrise") else find_settings
    times, crosses = find(
        _observer(latitude_deg, longitude_deg),
        good.moon if name in ("moonrise", "moonset") else good.sun,
        span[0],
        span[1],
        horizon_degrees=_CIVIL_TWILIGHT_DEG if name in ("civil_dawn", "civil_dusk") else None,
    )
    return _within(np.sort(utc_instants(times[crosses])), begin, end)


def _edge(day: date) -> np.datetime64:
    return np.datetime64(day, "ms")
