"""Everything a place's days look like, put side by side: what the strip and the plans read."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields, is_dataclass, replace
from datetime import date
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.clock import day_edges, days_between
from planner.estimates import Floats
from planner.logbook import Log
from planner.molt.forecast_types import Forecast
from planner.sites.site import Site
from planner.sky.almanac_days import Phases, SkyDays
from planner.tides import Tide
from planner.trips.allowed import why_closed, why_not_free


@dataclass(frozen=True)
class Outlook:
    """A place's consecutive local days; every array and tuple has shape (n,).

    lowest_m, highest_m: lowest and highest water of each local day, metres above the datum.
    why_not_free, why_closed: the reason in words, "" on days that are free, or open.
    sky: of the events, with sunrise and sunset only, or none at a first look.
    phases: principal phases of the moon from the first day's beginning to the last day's end.
    """

    site: Site
    days: tuple[date, ...]
    forecast: Forecast
    sky: SkyDays
    phases: Phases
    lowest_m: Floats
    highest_m: Floats
    why_not_free: tuple[str, ...]
    why_closed: tuple[str, ...]

    @property
    def free(self) -> NDArray[np.bool_]:
        """True on the days the user can be on the water."""
        return np.array([not why for why in self.why_not_free])

    @property
    def closed(self) -> NDArray[np.bool_]:
        """True on the days no trap may be in the water."""
        return np.array([bool(why) for why in self.why_closed])

    def index(self, day: date) -> int:
        """Return the position of a day; ValueError when the outlook does not hold it."""
        at = (day - self.days[0]).days
        if not 0 <= at < len(self.days):
            raise ValueError(f"{day.isoformat()} is not among the days of this outlook")
        return at

    def part(self, first: date, last: date) -> Outlook:
        """Return the outlook of some of its days, first..last; ValueError when it lacks one."""
        days = slice(self.index(first), self.index(last) + 1)
        edges = day_edges(first, last, self.site.zone)
        among = (self.phases.times >= edges[0]) & (self.phases.times <= edges[-1])
        return replace(
            self,
            phases=Phases(self.phases.times[among], self.phases.kinds[among]),
            days=self.days[days],
            forecast=_sliced(self.forecast, days),
            sky=_sliced(self.sky, days),
            lowest_m=self.lowest_m[days],
            highest_m=self.highest_m[days],
            why_not_free=self.why_not_free[days],
            why_closed=self.why_closed[days],
        )


def _sliced(whole: Any, days: slice) -> Any:
    """Return a frozen dataclass of daily arrays, however nested, for some of the days."""
    values: dict[str, Any] = {}
    for each in fields(whole):
        value = getattr(whole, each.name)
        if is_dataclass(value):
            values[each.name] = _sliced(value, days)
        elif isinstance(value, (tuple, np.ndarray)):
            values[each.name] = value[days]
    return replace(whole, **values)


def outlook(
    site: Site,
    first: date,
    last: date,
    log: Log | None = None,
    *,
    seed: int = 0,
    sun: bool = True,
    checkpoint: Callable[[], None] = lambda: None,
) -> Outlook:
    """Return the outlook of a place for the local days first..last, both included.

    log: what to learn from, None for the prior alone. sun: whether to find sunrise and sunset,
    a fifth of the time.
    checkpoint: called between the stages, the forecast's among them; it may raise `Cancelled`
    to stop the work.
    Raises RangeError for days that sun or water cannot be computed for, ValueError when last
    precedes first.
    """
    from planner.molt import forecast
    from planner.sky import phases, sky_days

    sky = sky_days(site, first, last, ("sunrise", "sunset") if sun else ())
    checkpoint()
    edges = day_edges(first, last, site.zone)
    moon = phases(edges[0], edges[-1])
    checkpoint()
    water = Tide(site).daily_range(edges)
    checkpoint()
    fullness = forecast(site, first, last, log, seed, checkpoint)
    checkpoint()
    days = days_between(first, last)
    return Outlook(
        site=site,
        days=tuple(days),
        forecast=fullness,
        sky=sky,
        phases=moon,
        lowest_m=water.lowest,
        highest_m=water.highest,
        why_not_free=tuple(why_not_free(site.free, day) for day in days),
        why_closed=tuple(why_closed(site.closures, day) for day in days),
    )
