"""Which rows are taken on deck for a plan or a day; no Qt."""

from __future__ import annotations

from datetime import date

from planner.handouts.layout import TrapLayout
from planner.logbook import Haul, Log
from planner.logbook.columns import COUNTS
from planner.phrasing import date_text
from planner.sites import Site
from planner.trips import Plan
from planner.ui.hauls.haul_rows import hauls_of, trip_like_last, trip_of_plan


def planned_rows(log: Log, site: Site, plan: Plan, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return a plan's rows: those the log has ready for it, else new ones."""
    day = plan.haul_at.astimezone(site.zone).date()
    return waiting_rows(log, site, day) or trip_of_plan(log, site, plan, traps)


def rows_of_day(log: Log, site: Site, day: date, traps: TrapLayout) -> tuple[Haul, ...]:
    """Return the rows of a trip hauled that day: those that wait in the log, else as last time."""
    return waiting_rows(log, site, day) or trip_like_last(log, site, day, traps)


def waiting_rows(log: Log, site: Site, day: date) -> tuple[Haul, ...]:
    """Return the rows of the place's newest trip of that day with nothing counted yet."""
    name = date_text(day)
    named = {h.trip: None for h in log.hauls if h.place == site.name and h.trip.startswith(name)}
    for trip in reversed(named):
        rows = hauls_of(log, (trip, site.name))
        if not any(getattr(haul, count) is not None for haul in rows for count in COUNTS):
            return rows
    return ()
