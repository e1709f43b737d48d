"""Every set-and-haul pair on the quarter-hour grid that keeps the hard limits.

A pair is a set that begins at one instant of the grid and a haul that begins at a later one.
The boat is on the water from the set's beginning for `set_minutes`, and from the haul's
beginning for `haul_minutes`; traps are in the water from the set's beginning to the haul's end.

Limits, in the order in which a pair that fails is counted (at the first one only):

free      both outings, the first with the time to fetch bait, in the user's free hours
closed    no closed local day between the set's beginning and the haul's end
daylight  both outings wholly between sunrise and sunset: hauling at night is unlawful in many
          places, and floats and other boats cannot be seen
ramp      water enough to launch and to come back, on both outings
soak      from the set's beginning to the haul's, between the user's bounds; and no trap in the
          water for longer than the rules allow, counted to the haul's end
cover     every trap covered, with the margin, at the lowest water between set and haul's end

Each limit either binds one outing alone, or says how late a haul may be for a given set.
So the hauls allowed for a set are those allowed alone within a range of the grid, and pairs
are counted and found without being laid out.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_MINUTE, Instants, day_edges, minutes64
from planner.estimates import Floats
from planner.sites.site import Site
from planner.sky.almanac_days import Daylight
from planner.tides import Tide, Turns
from planner.trips.allowed import closed_stretches, free_stretches, within
from planner.words import say

LIMIT_WORDS: Final = {
    "free": say("outside your free days and hours"),
    "closed": say("a trap in the water on a closed day"),
    "daylight": say("set or haul not wholly in daylight"),
    "ramp": say("too little water at the ramp"),
    "soak": say("soak too short or too long"),
    "cover": say("a trap not covered at the lowest water"),
}
LIMITS: Final = tuple(LIMIT_WORDS)
STEP: Final = np.timedelta64(15, "m")
# Pairs further apart than this (or than the user's own longest soak) are not candidates at
# all: nobody leaves bait for weeks, and counting them as rejected would say nothing.
_LONGEST_CONSIDERED_H: Final = 96.0

Ints = NDArray[np.int64]
Mask = NDArray[np.bool_]


class Bounds(NamedTuple):
    """How late a haul may be for each set, and the bounds of the soak; as in `Candidates`."""

    last_haul: Ints
    min_steps: int
    max_steps: int


@dataclass(frozen=True)
class Stage:
    """What is left after some of the limits; as in `Candidates`."""

    may_set: Mask
    may_haul: Mask
    last_haul: Ints
    min_steps: int
    max_steps: int

    def pairs(self, first_haul: int = 0, end_haul: int | None = None) -> Ints:
        """Return how many pairs each set is in, of hauls first_haul..end_haul - 1, shape (n,)."""
        count = self.may_set.size
        index = np.arange(count)
        end = count if end_haul is None else end_haul
        hauls_before = np.concatenate([[0], np.cumsum(self.may_haul)])
        top = np.minimum(np.minimum(index + self.max_steps, self.last_haul) + 1, end)
        bottom = np.maximum(np.minimum(index + self.min_steps, count), first_haul)
        pairs = hauls_before[np.maximum(top, bottom)] - hauls_before[bottom]
        return np.where(self.may_set, pairs, 0)


@dataclass(frozen=True)
class Candidates:
    """The grid, and which pairs on it keep every limit.

    times: grid instants, UTC, shape (n,). day: index of the local day of each.
    set_ends, haul_ends: when a set, and a haul, begun at each would be over.
    levels_m, set_end_levels_m, haul_end_levels_m: water at each instant, and at the end of a
    set and of a haul begun then, shape (n,).
    may_set, may_haul: limits that bind one outing alone, shape (n,).
    last_haul: index of the last haul that closures and cover allow for each set, shape (n,);
    it never decreases.
    min_steps, max_steps: bounds of the soak in steps of the grid.
    light_from, light_to: the stretches of daylight, shape (k,), the last to its end or a day on.
    turns: high and low waters of the whole span. lows: times and heights of every local
    minimum of the water.
    stages: what is left before the limits and after each.
    """

    times: Instants
    day: Ints
    set_ends: Instants
    haul_ends: Instants
    levels_m: Floats
    set_end_levels_m: Floats
    haul_end_levels_m: Floats
    may_set: Mask
    may_haul: Mask
    last_haul: Ints
    min_steps: int
    max_steps: int
    light_from: Instants
    light_to: Instants
    turns: Turns
    lows: tuple[Instants, Floats]
    stages: tuple[Stage, ...] = field(repr=False)

    def rejected(self, chosen: Mask | None = None) -> dict[str, int]:
        """Return how many pairs each limit ruled out, of all sets or of the chosen ones."""
        which = slice(None) if chosen is None else chosen
        return _failed([int(stage.pairs()[which].sum()) for stage in self.stages])

    def rejected_hauls(self, first: int, end: int) -> dict[str, int]:
        """Return how many pairs each limit ruled out whose haul is first..end - 1 on the grid."""
        return _failed([int(stage.pairs(first, end).sum()) for stage in self.stages])


def find_candidates(
    site: Site,
    first: date,
    last: date,
    *,
    tide: Tide,
    not_before: np.datetime64 | None = None,
) -> Candidates:
    """Return the pairs whose set and haul are both begun and over on the local days first..last.

    not_before: UTC instant before which no outing may begin.
    Raises RangeError where sun or water cannot be computed.
    """
    edges = day_edges(first, last, site.zone)
    times: Instants = np.arange(_next_step(edges[0]), edges[-1], STEP, dtype="datetime64[ms]")
    habits = site.habits
    set_ends: Instants = times + minutes64(habits.set_minutes)
    haul_ends: Instants = times + minutes64(habits.haul_minutes)
    index = np.arange(times.size)
    min_steps, max_steps = _soak_steps(site)

    future = times >= (times[:1] if not_before is None else not_before)
    may_set = future & (set_ends <= edges[-1])
    may_haul = future & (haul_ends <= edges[-1])
    levels, set_end_levels, haul_end_levels = (
        tide.heights(instants) for instants in (times, set_ends, haul_ends)
    )
    turns = tide.turns(edges[0], edges[-1])
    lows = low_waters(tide, turns, edges)
    considered = max(max_steps, _steps(_LONGEST_CONSIDERED_H))
    bounds = Bounds(np.full(index.size, index.size - 1), 1, considered)
    stages = [Stage(may_set.copy(), may_haul.copy(), *bounds)]

    # Bait for a set soon after midnight is fetched the day before.
    begins, ends = free_stretches(site.free, first - timedelta(days=1), last, site.zone)
    may_set &= within(times - minutes64(habits.bait_minutes), set_ends, begins, ends)
    may_haul &= within(times, haul_ends, begins, ends)
    stages.append(Stage(may_set.copy(), may_haul.copy(), *bounds))

    shut_from, shut_to = closed_stretches(site.closures, first, last, site.zone)
    may_set &= ~within(times, times, shut_from, shut_to - np.timedelta64(1, "ms"))
    next_shut = _next_begin(shut_from, shut_to, times)
    bounds = bounds._replace(last_haul=np.searchsorted(haul_ends, next_shut, side="right") - 1)
    stages.append(Stage(may_set.copy(), may_haul.copy(), *bounds))

    light = _daylight(site, edges)
    may_set &= within(times, set_ends, light.begins, light.ends)
    may_haul &= within(times, haul_ends, light.begins, light.ends)
    stages.append(Stage(may_set.copy(), may_haul.copy(), *bounds))

    if site.lowest_ramp_level_m is not None:
        afloat = levels >= site.lowest_ramp_level_m
        may_set &= afloat & (set_end_levels >= site.lowest_ramp_level_m)
        may_haul &= afloat & (haul_end_levels >= site.lowest_ramp_level_m)
    stages.append(Stage(may_set.copy(), may_haul.copy(), *bounds))

    bounds = bounds._replace(min_steps=min_steps, max_steps=max_steps)
    stages.append(Stage(may_set.copy(), may_haul.copy(), *bounds))

    lowest_allowed = lowest_covering_level_m(site)
    if lowest_allowed is not None:
        may_set &= levels > lowest_allowed
        may_haul &= haul_end_levels > lowest_allowed
        bare = lows[0][lows[1] <= lowest_allowed]
        next_bare = _next_begin(bare, bare, times)
        before_bare = np.searchsorted(haul_ends, next_bare, side="left") - 1
        bounds = bounds._replace(last_haul=np.minimum(bounds.last_haul, before_bare))
    stages.append(Stage(may_set.copy(), may_haul.copy(), *bounds))

    return Candidates(
        times=times,
        day=np.searchsorted(edges, times, side="right") - 1,
        set_ends=set_ends,
        haul_ends=haul_ends,
        levels_m=levels,
        set_end_levels_m=set_end_levels,
        haul_end_levels_m=haul_end_levels,
        may_set=may_set,
        may_haul=may_haul,
        last_haul=bounds.last_haul,
        light_from=light.begins,
        light_to=light.ends,
        turns=turns,
        lows=lows,
        min_steps=min_steps,
        max_steps=max_steps,
        stages=tuple(stages),
    )


def _daylight(site: Site, edges: Instants) -> Daylight:
    """Return the daylight of the days, and of the next where it goes on: no sun sets with them."""
    from planner.sky import daylight

    light = daylight(site, edges[0], edges[-1])
    if light.ends.size and light.ends[-1] == edges[-1]:
        light = daylight(site, edges[0], edges[-1] + np.timedelta64(1, "D"))
    return light


def lowest_covering_level_m(site: Site) -> float | None:
    """Return the level (m above datum) that water must stay above to cover every trap.

    None without spots.
    """
    if not site.spots:
        return None
    return max(spot.trap_top_m for spot in site.spots) + site.habits.cover_margin_m


def low_waters(tide: Tide, turns: Turns, edges: Instants) -> tuple[Instants, Floats]:
    """Return times (k,) and heights (k,) of every local minimum between the outer edges.

    Besides the low waters these are both sides of each UTC New Year, where heights by the
    yearly rule of node factors jump by some centimetres.
    """
    low = ~turns.is_high
    first, last = edges[0].astype("datetime64[Y]"), edges[-1].astype("datetime64[Y]")
    jumps = np.arange(first + 1, last + 1).astype("datetime64[ms]")
    sides = np.concatenate([jumps - np.timedelta64(1, "ms"), jumps])
    times = np.concatenate([turns.times[low].astype("datetime64[ms]"), sides])
    heights = np.concatenate([turns.heights[low], tide.heights(sides)])
    order = np.argsort(times, kind="stable")
    return times[order], heights[order]


def _failed(left: Sequence[int]) -> dict[str, int]:
    """Return by limit how many are fewer after it, from what is left before the first and on."""
    pairs = zip(LIMITS, left[:-1], left[1:], strict=True)
    return {limit: before - after for limit, before, after in pairs if before > after}


def _soak_steps(site: Site) -> tuple[int, int]:
    longest_h = site.habits.max_soak_h
    if site.rules.max_soak_h is not None:
        longest_h = min(longest_h, site.rules.max_soak_h - site.habits.haul_minutes / 60)
    shortest = max(1, -_steps(-site.habits.min_soak_h))
    return shortest, _steps(longest_h)


def _steps(hours: float) -> int:
    """Return how many whole steps of the grid fit into the hours, rounded down."""
    return int(np.floor(hours * 4 + 1e-9))


def _next_step(instant: np.datetime64) -> np.datetime64:
    step_ms = 15 * MS_PER_MINUTE
    ms = int(instant.astype("datetime64[ms]").astype(np.int64))
    return np.datetime64(-(-ms // step_ms) * step_ms, "ms")


def _next_begin(begins: Instants, ends: Instants, times: Instants) -> Instants:
    """Return the begin of the first stretch that ends after each time; far off if none does."""
    never = np.datetime64("9999-01-01", "ms")
    padded = np.append(begins, never)
    found: Instants = padded[np.searchsorted(ends, times, side="right")]
    return found
