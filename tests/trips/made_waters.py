"""A made tide, a made outlook and places to plan at: all invented."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import Instants, day_edges, days_between
from planner.estimates import Band, Floats
from planner.molt.forecast_types import Forecast, Why
from planner.sites.site import Site, Water
from planner.sky import phases, sky_days
from planner.tides import DailyRange, Turns
from planner.trips.allowed import why_closed, why_not_free
from planner.trips.outlook import Outlook

_SPEEDS_PER_H = np.radians([28.984104, 30.0, 15.041069])  # M2, S2, K1


@dataclass(frozen=True)
class MadeTide:
    """Three cosines about a mean level: enough tide to go dry, and simple to look through."""

    mean_m: float = 0.6
    amplitudes_m: tuple[float, float, float] = (0.5, 0.15, 0.2)
    lags: tuple[float, float, float] = (0.3, 1.1, 4.0)

    def heights(self, times: Instants) -> Floats:
        hours = (times.astype("datetime64[ms]") - np.datetime64("2026-01-01", "ms")).astype(
            np.float64
        ) / 3.6e6
        angle = _SPEEDS_PER_H[:, None] * hours[None, :] - np.array(self.lags)[:, None]
        return self.mean_m + np.array(self.amplitudes_m) @ np.cos(angle)

    def turns(self, start: np.datetime64, stop: np.datetime64) -> Turns:
        times = np.arange(start - 120_000, stop + 120_000, np.timedelta64(1, "m"))
        height = self.heights(times)
        rising = np.diff(height) > 0
        at = np.flatnonzero(rising[:-1] != rising[1:]) + 1
        # a parabola through three minutes: good to a second
        left, middle, right = height[at - 1], height[at], height[at + 1]
        offset = 0.5 * (left - right) / (left - 2 * middle + right)
        turns = times[at] + np.round(offset * 60_000).astype("timedelta64[ms]")
        inside = (turns >= start) & (turns <= stop)
        return Turns(turns[inside], self.heights(turns[inside]), rising[at - 1][inside])

    def lowest(self, start: np.datetime64, stop: np.datetime64) -> tuple[float, np.datetime64]:
        times = np.append(np.arange(start, stop, np.timedelta64(20, "s")), stop)
        heights = self.heights(times)
        at = int(np.argmin(heights))
        return float(heights[at]), times[at]

    def daily_range(self, edges: Instants) -> DailyRange:
        levels = [
            self.heights(np.arange(begin, end, np.timedelta64(5, "m")))
            for begin, end in pairwise(edges)
        ]
        return DailyRange(np.array([h.min() for h in levels]), np.array([h.max() for h in levels]))


def made_site(
    zone: str = "America/New_York",
    latitude_deg: float = 29.6,
    longitude_deg: float = -83.4,
    **changes: object,
) -> Site:
    water = Water("MLLW", 0.6, "m", 0.0, "yearly", "2026", "invented")
    site = Site("Made Water", latitude_deg, longitude_deg, ZoneInfo(zone), water)
    return Site(**{**site.__dict__, **changes})


def made_outlook(
    site: Site,
    first: date,
    last: date,
    *,
    light_share: float | Floats = 0.15,
    water_c: float = 22.0,
    tide: MadeTide | None = None,
) -> Outlook:
    days = tuple(days_between(first, last))
    count = len(days)
    edges = day_edges(first, last, site.zone)
    sky = sky_days(site, first, last)
    light = np.broadcast_to(np.asarray(light_share, dtype=float), (count,))
    nothing = np.zeros(count)
    water = (tide or MadeTide()).daily_range(edges)
    return Outlook(
        site=site,
        days=days,
        forecast=Forecast(
            days=days,
            fullness=Band(1 - light / 2, 1 - light, 1 - light / 4),
            light_share=Band(light, light / 2, np.minimum(light * 2, 1.0)),
            why=Why(nothing, nothing, nothing, nothing),
            yearly_light_share=0.15,
            lunar_age_d=sky.lunar_age_d,
            water_c=np.full(count, water_c),
            basis="prior",
            trips=0,
        ),
        sky=sky,
        phases=phases(edges[0], edges[-1]),
        lowest_m=water.lowest,
        highest_m=water.highest,
        why_not_free=tuple(why_not_free(site.free, day) for day in days),
        why_closed=tuple(why_closed(site.closures, day) for day in days),
    )
