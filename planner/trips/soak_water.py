"""The water and the light around one plan: what its chart and its printed sheet draw."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import Final

import numpy as np

from planner.clock import Instants, to_utc64
from planner.estimates import Floats
from planner.sites.site import Site
from planner.tides import Tide, Turns
from planner.trips.plan import Plan

_AROUND: Final = timedelta(hours=5)
_STEP: Final = np.timedelta64(10, "m")


@dataclass(frozen=True)
class SoakWater:
    """Levels from some hours before the set to some hours after the haul.

    times: `datetime64[ms]` UTC, shape (n,). levels_m: metres above the datum, shape (n,).
    turns: high and low waters in the span. light_begins, light_ends: stretches of sunlight
    within the span, UTC, shape (k,).
    """

    times: Instants
    levels_m: Floats
    turns: Turns
    light_begins: Instants
    light_ends: Instants


def soak_water(site: Site, plan: Plan) -> SoakWater:
    """Return the water and the light around a plan at its place.

    Raises RangeError where the sun or the water cannot be computed.
    """
    from planner.sky import daylight

    start, stop = plan.set_at - _AROUND, plan.haul_at + _AROUND
    tide = Tide(site)
    times, levels = tide.series(start, stop, _STEP)
    light = daylight(site, to_utc64(start), to_utc64(stop))
    return SoakWater(times, levels, tide.turns(start, stop), light.begins, light.ends)
