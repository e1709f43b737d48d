"""What the load-up view says about a plan, in words; no Qt."""

from __future__ import annotations

from collections import defaultdict

from planner.handouts import TripFacts
from planner.handouts.checklist import line_text
from planner.handouts.facts import SpotWater
from planner.phrasing import (
    Style,
    clock_text,
    count_text,
    day_clock_text,
    height_text,
    light_text,
    soak_text,
    zone_text,
)
from planner.sites import Site
from planner.trips import Plan
from planner.words import say


def trip_key(site: Site, plan: Plan) -> str:
    """Return what a trip's ticks are remembered under: its place and the day of the set."""
    return f"{site.name} {plan.set_at.astimezone(site.zone).date().isoformat()}"


def headline(site: Site, plan: Plan, style: Style) -> str:
    """Return the line at the top."""
    return say(
        "Set {set_at}, haul {haul_at} {zone}",
        set_at=day_clock_text(plan.set_at, site.zone, style),
        haul_at=day_clock_text(plan.haul_at, site.zone, style),
        zone=zone_text(plan.haul_at, site.zone),
    )


def summary(facts: TripFacts, style: Style) -> str:
    """Return when to leave, and what to expect."""
    plan = facts.plan
    return say(
        "Leave with bait at {clock}. Soak {soak}, {count} full keepers, light crabs {light}.",
        clock=clock_text(facts.leave_at, facts.site.zone, style),
        soak=soak_text(plan.soak_h),
        count=count_text(plan.full_keepers),
        light=light_text(plan.light_share),
    )


def layout_lines(facts: TripFacts, style: Style) -> list[tuple[str, str]]:
    """Return for each spot, in the order of setting, its traps, and the water and line there."""
    at: dict[str, list[str]] = defaultdict(list)
    for placed in facts.traps.placed:
        design = f" ({placed.design})" if placed.design else ""
        at[placed.spot].append(f"{placed.trap}{design}")
    waters = water_lines(facts, style)
    return [
        (f"{spot}: {', '.join(traps)}", waters[spot])
        if spot in waters
        else (", ".join(traps), say("No spots are entered for this place."))
        for spot, traps in at.items()
    ]


def water_lines(facts: TripFacts, style: Style) -> dict[str, str]:
    """Return the least water over a trap, and the line it needs, by spot."""
    return {spot.spot: _water_line(spot, style) for spot in facts.spots}


def _water_line(spot: SpotWater, style: Style) -> str:
    least = spot.over_trap_least_m
    cover = (
        say("at least {height} over the trap", height=height_text(least, style))
        if least > 0
        else say("the trap stands dry at the lowest water")
    )
    return say("{cover}; {line} of line", cover=cover, line=line_text(spot, style))
