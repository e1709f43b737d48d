"""What is true of one set and haul: the numbers behind its reasons and warnings."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

import numpy as np

from planner.clock import from_utc64
from planner.estimates import Interval
from planner.sites.site import Site
from planner.tides import Tide, Turns


@dataclass(frozen=True)
class Cover:
    """The least water over the top of any trap during a soak: how much, where and when."""

    least_m: float
    spot: str
    at: datetime


@dataclass(frozen=True)
class Turn:
    """A high or low water while hauling."""

    at: datetime
    is_high: bool


@dataclass(frozen=True)
class Facts:
    """One set and haul. Heights in metres above the datum, instants aware UTC.

    slack_after_set_h, slack_after_haul_h: daylight left when the set, and the haul, is over.
    ramp_spare_m: least water above the ramp's lowest level over both launches and returns,
    None without a ramp.
    water_c: expected water temperature on the day of the haul, NaN where unknown.
    activity: how active crabs are in that water, 0 to 1.
    latest_full_keepers: the expected count when the set begins at latest_set_at.
    most_keepers: the most that any plan promises, whatever the wishes.
    ranked_keepers: full keepers less what the wishes count off.
    season: time of year of the haul as an angle (radians).
    """

    set_at: datetime
    latest_set_at: datetime
    haul_at: datetime
    haul_end: datetime
    soak_h: float
    traps: int
    full_keepers: Interval
    latest_full_keepers: float
    most_keepers: float
    ranked_keepers: float
    season: float
    light_share: Interval
    water_c: float
    activity: float
    cover: Cover | None
    ramp_spare_m: float | None
    slack_after_set_h: float
    slack_after_haul_h: float
    haul_level_m: float
    haul_end_level_m: float
    haul_turns: tuple[Turn, ...]


def least_cover(site: Site, tide: Tide, start: np.datetime64, stop: np.datetime64) -> Cover | None:
    """Return the least cover of any trap between two instants, None without spots."""
    if not site.spots:
        return None
    spot = min(site.spots, key=lambda spot: (-spot.trap_top_m, spot.name))
    level_m, at = tide.lowest(start, stop)
    return Cover(level_m - spot.trap_top_m, spot.name, from_utc64(at))


def turns_within(turns: Turns, start: np.datetime64, stop: np.datetime64) -> tuple[Turn, ...]:
    """Return the high and low waters between two instants."""
    inside = (turns.times >= start) & (turns.times < stop)
    pairs = zip(turns.times[inside], turns.is_high[inside], strict=True)
    return tuple(Turn(from_utc64(at), bool(high)) for at, high in pairs)
