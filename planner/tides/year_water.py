"""A place's spots and ramp against a year of water: covered when, dry for how long."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np

from planner.clock import local_midnight
from planner.sites.site import Spot
from planner.tides.tide import Tide

_STEP: Final = np.timedelta64(6, "m")
_STEP_H: Final = 0.1
_STILL_M: Final = 1e-9


@dataclass(frozen=True)
class SpotWater:
    """A spot through a year. least_cover_m: water over the trap's top at the lowest water.

    bare_h: hours a year in which the trap is not wholly covered; dry_h: in which its ground is
    out of the water.
    """

    spot: Spot
    least_cover_m: float
    bare_h: float
    dry_h: float


@dataclass(frozen=True)
class YearWater:
    """The water of the twelve months from `first`: lowest and highest level, spots, ramp.

    no_launch_h: hours below the ramp's lowest level, None where none is known.
    """

    first: date
    lowest_m: float
    highest_m: float
    spots: tuple[SpotWater, ...]
    no_launch_h: float | None


def year_water(tide: Tide, first: date) -> YearWater:
    """Return how a place's spots and ramp fare in the year from a local day.

    Raises RangeError outside the years that tides are computed for.
    """
    site = tide.site
    begin = local_midnight(first, site.zone)
    leap = (first.month, first.day) == (2, 29)
    after = first.replace(year=first.year + 1, day=28 if leap else first.day)
    _, levels = tide.series(begin, local_midnight(after, site.zone), _STEP)
    lowest, highest = float(levels.min()), float(levels.max())

    lower, upper = np.minimum(levels[:-1], levels[1:]), np.maximum(levels[:-1], levels[1:])
    rise = np.maximum(upper - lower, _STILL_M)

    def hours_below(level_m: float) -> float:
        # Within a step the water is taken to rise or fall evenly.
        return float(np.clip((level_m - lower) / rise, 0, 1).sum()) * _STEP_H

    spots = tuple(
        SpotWater(
            spot=spot,
            least_cover_m=lowest - spot.trap_top_m,
            bare_h=hours_below(spot.trap_top_m),
            dry_h=hours_below(-spot.depth_m),
        )
        for spot in site.spots
    )
    ramp_m = site.lowest_ramp_level_m
    return YearWater(first, lowest, highest, spots, None if ramp_m is None else hours_below(ramp_m))
