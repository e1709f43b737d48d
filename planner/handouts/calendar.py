"""A plan as a calendar file (RFC 5545): the set and the haul, each with an alarm."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime, timedelta
from typing import Final

from planner.handouts.facts import haul_end
from planner.phrasing import (
    RULES_CAUTION,
    TIDE_CAUTION,
    Style,
    clock_text,
    day_clock_text,
    soak_text,
    zone_text,
)
from planner.sites import Site
from planner.trips.plan import Plan

# Before the set there is bait to buy, so its alarm counts from leaving with it.
_ALARM_AHEAD: Final = timedelta(hours=1)
_EVENING_AHEAD: Final = timedelta(hours=12)


def calendar_file(site: Site, plan: Plan, style: Style, now: datetime) -> bytes:
    """Return the calendar file of a plan; now: aware, the instant it is made.

    Instants are UTC, so that they stand whatever the zone of the calendar; the texts give them
    on the place's clock. The file of one plan always has the same event names (UID), so that
    taking it in twice does not double the events.
    """
    from icalendar import Alarm, Calendar, Event

    calendar = Calendar()
    calendar.add("prodid", "-//Fullshell//Trip plan//EN")
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    bait = timedelta(minutes=site.habits.bait_minutes)
    set_end = plan.set_at + timedelta(minutes=site.habits.set_minutes)
    text = _text(site, plan, style)
    for kind, begin, end, alarms in (
        ("set", plan.set_at, set_end, (bait + _ALARM_AHEAD,)),
        ("haul", plan.haul_at, haul_end(site, plan), (_EVENING_AHEAD, _ALARM_AHEAD)),
    ):
        event = Event()
        event.add("uid", _uid(site, plan, kind))
        event.add("dtstamp", now.astimezone(UTC))
        event.add("dtstart", begin.astimezone(UTC))
        event.add("dtend", end.astimezone(UTC))
        event.add("summary", f"{kind.capitalize()} crab traps, {site.name}")
        event.add("location", site.name)
        event.add("description", text)
        for ahead in alarms:
            alarm = Alarm()
            alarm.add("action", "DISPLAY")
            alarm.add("description", f"{kind.capitalize()} crab traps, {site.name}")
            alarm.add("trigger", -ahead)
            event.add_component(alarm)
        calendar.add_component(event)
    written: bytes = calendar.to_ical()
    return written


def _uid(site: Site, plan: Plan, kind: str) -> str:
    made = f"{site.name} {plan.set_at:%Y%m%dT%H%MZ} {plan.haul_at:%Y%m%dT%H%MZ}"
    return f"{kind}-{hashlib.sha256(made.encode()).hexdigest()[:24]}@fullshell"


def _text(site: Site, plan: Plan, style: Style) -> str:
    zone = site.zone
    leave = plan.set_at - timedelta(minutes=site.habits.bait_minutes)
    lines = [
        f"Leave with fresh bait {clock_text(leave, zone, style)}.",
        f"Set {day_clock_text(plan.set_at, zone, style)} {zone_text(plan.set_at, zone)}, haul "
        f"{day_clock_text(plan.haul_at, zone, style)} {zone_text(plan.haul_at, zone)} "
        f"({zone.key}); soak {soak_text(plan.soak_h)}.",
        *(["This place and its water are invented."] if site.invented else []),
        *plan.warnings,
        TIDE_CAUTION,
        RULES_CAUTION,
        "Read the marine forecast, wear life jackets, leave a float plan ashore.",
    ]
    return "\n".join(lines)
