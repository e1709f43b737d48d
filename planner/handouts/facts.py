"""Everything that the checklist and the handouts of one plan speak of, worked out once."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

import numpy as np

from planner.clock import from_utc64, to_utc64
from planner.handouts.layout import TrapLayout, trip_layout
from planner.logbook import Log
from planner.sites import Site
from planner.sky.almanac_days import SkyDays
from planner.trips.plan import Plan
from planner.trips.soak_water import SoakWater, soak_water

# Common practice: a line a third longer than the water is deep (published for cool-water crab
# traps; where the range is large or the current strong, more).
LINE_FACTOR: Final = 4 / 3


@dataclass(frozen=True)
class SpotWater:
    """The water at one spot from set to the end of the haul, in metres.

    over_trap_*: water above the top of the trap at the set, at its least, and at the haul.
    deepest_m: depth at the highest water. line_m: common practice for that depth.
    """

    spot: str
    depth_m: float
    over_trap_at_set_m: float
    over_trap_least_m: float
    least_at: datetime
    over_trap_at_haul_m: float
    deepest_m: float

    @property
    def line_m(self) -> float:
        """Return the length of line for the deepest water of the soak."""
        return max(self.deepest_m, 0.0) * LINE_FACTOR


@dataclass(frozen=True)
class TripFacts:
    """A plan with its water, light and traps. Instants are aware UTC.

    sky: the local days from set to haul. water_c: expected water temperature at the haul, None
    where unknown.
    """

    site: Site
    plan: Plan
    water: SoakWater
    spots: tuple[SpotWater, ...]
    sky: SkyDays
    water_c: float | None
    traps: TrapLayout

    @property
    def leave_at(self) -> datetime:
        """Return when to leave with fresh bait."""
        return self.plan.set_at - timedelta(minutes=self.site.habits.bait_minutes)

    @property
    def set_end(self) -> datetime:
        """Return when the last trap should be in."""
        return self.plan.set_at + timedelta(minutes=self.site.habits.set_minutes)

    @property
    def haul_end(self) -> datetime:
        """Return when the last trap should be out."""
        return haul_end(self.site, self.plan)


def haul_end(site: Site, plan: Plan) -> datetime:
    """Return when the last trap should be out of the water."""
    return plan.haul_at + timedelta(minutes=site.habits.haul_minutes)


def trip_facts(
    site: Site, plan: Plan, log: Log | None = None, water_c: float | None = None
) -> TripFacts:
    """Return the facts of a plan at its place; water_c in degrees Celsius, None for unknown.

    Raises RangeError where the sun or the water cannot be computed.
    """
    from planner.sky import sky_days

    water = soak_water(site, plan)
    days = [at.astimezone(site.zone).date() for at in (plan.set_at, haul_end(site, plan))]
    return TripFacts(
        site=site,
        plan=plan,
        water=water,
        spots=spot_waters(site, plan, water),
        sky=sky_days(site, days[0], days[1]),
        water_c=None if water_c is None or math.isnan(water_c) else water_c,
        traps=trip_layout(site, log),
    )


def spot_waters(site: Site, plan: Plan, water: SoakWater) -> tuple[SpotWater, ...]:
    """Return the water at each spot of a place from set to the end of the haul."""
    begin, end = to_utc64(plan.set_at), to_utc64(haul_end(site, plan))
    # Turns are exact where the series has steps of minutes; together they hold every extreme.
    times = np.concatenate([water.times, water.turns.times])
    levels = np.concatenate([water.levels_m, water.turns.heights])
    inside = (times >= begin) & (times <= end)
    times, levels = times[inside], levels[inside]
    ends = np.array([begin, to_utc64(plan.haul_at)]).astype(np.int64)
    at_set, at_haul = np.interp(
        ends, water.times.astype("datetime64[ms]").astype(np.int64), water.levels_m
    )
    lowest = int(np.argmin(levels))
    return tuple(
        SpotWater(
            spot=spot.name,
            depth_m=spot.depth_m,
            over_trap_at_set_m=float(at_set) - spot.trap_top_m,
            over_trap_least_m=float(levels[lowest]) - spot.trap_top_m,
            least_at=from_utc64(times[lowest]),
            over_trap_at_haul_m=float(at_haul) - spot.trap_top_m,
            deepest_m=spot.depth_m + float(levels.max()),
        )
        for spot in site.spots
    )
