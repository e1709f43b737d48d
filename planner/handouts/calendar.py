"""A plan as a calendar file (RFC 5545): the check, the set and the haul, each with an alarm."""

from __future__ import annotations

import hashlib
from datetime import UTC, date, datetime, timedelta
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
from planner.words import say

# Before the set there is bait to buy, so its alarm counts from leaving with it.
_ALARM_AHEAD: Final = timedelta(hours=1)
_EVENING_AHEAD: Final = timedelta(hours=12)
# A forecast of the day before is good enough to call a trip off by, and the traps are not
# loaded yet; common practice.
_CHECK_AHEAD: Final = timedelta(hours=24)
_CHECK_LASTS: Final = timedelta(minutes=15)
_NEAR_CHANGE: Final = timedelta(hours=2)


def calendar_file(site: Site, plan: Plan, style: Style, now: datetime) -> bytes:
    """Return the calendar file of a plan; now: aware, the instant it is made.

    Times are on the place's clock, with the zone and its changes of clocks in the file. The
    file of one plan always has the same event names (UID), so that taking it in twice does not
    double the events.
    """
    from icalendar import Alarm, Calendar, Event

    calendar = Calendar()
    calendar.add("prodid", "-//Fullshell//Trip plan//EN")
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    bait = timedelta(minutes=site.habits.bait_minutes)
    set_end = plan.set_at + timedelta(minutes=site.habits.set_minutes)
    check_at = plan.set_at - bait - _CHECK_AHEAD
    text = _text(site, plan, style)
    check = say("Check forecast, rules and gear")
    for kind, what, begin, end, alarms in (
        ("check", check, check_at, check_at + _CHECK_LASTS, (timedelta(0),)),
        ("set", say("Set crab traps"), plan.set_at, set_end, (bait + _ALARM_AHEAD,)),
        (
            "haul",
            say("Haul crab traps"),
            plan.haul_at,
            haul_end(site, plan),
            (_EVENING_AHEAD, _ALARM_AHEAD),
        ),
    ):
        event = Event()
        event.add("uid", _uid(site, plan, kind))
        event.add("dtstamp", now.astimezone(UTC))
        event.add("dtstart", _on_the_clock(site, begin))
        event.add("dtend", _on_the_clock(site, end))
        event.add("summary", f"{what}, {site.name}")
        event.add("location", site.name)
        event.add("description", text)
        for ahead in alarms:
            alarm = Alarm()
            alarm.add("action", "DISPLAY")
            alarm.add("description", f"{what}, {site.name}")
            alarm.add("trigger", -ahead)
            event.add_component(alarm)
        calendar.add_component(event)
    # The changes of clocks of the years around; a list since 1970 would be longer than the rest.
    first, last = plan.set_at.year - 1, plan.haul_at.year + 2
    calendar.add_missing_timezones(date(first, 1, 1), date(last, 1, 1))
    written: bytes = calendar.to_ical()
    return written


def _on_the_clock(site: Site, instant: datetime) -> datetime:
    """Return an instant in the place's zone, or in UTC where its clocks are about to change.

    RFC 5545 (section 3.3.5) cannot name the second of two like readings, and programs differ in
    the hour that is skipped.
    """
    around = (instant - _NEAR_CHANGE, instant + _NEAR_CHANGE)
    offsets = {at.astimezone(site.zone).utcoffset() for at in around}
    return instant.astimezone(UTC if len(offsets) > 1 else site.zone)


def _uid(site: Site, plan: Plan, kind: str) -> str:
    made = f"{site.name} {plan.set_at:%Y%m%dT%H%MZ} {plan.haul_at:%Y%m%dT%H%MZ}"
    return f"{kind}-{hashlib.sha256(made.encode()).hexdigest()[:24]}@fullshell"


def _text(site: Site, plan: Plan, style: Style) -> str:
    zone = site.zone
    leave = plan.set_at - timedelta(minutes=site.habits.bait_minutes)
    lines = [
        say("Leave with fresh bait {clock}.", clock=clock_text(leave, zone, style)),
        say(
            "Set {set_at} {set_zone}, haul {haul_at} {haul_zone} ({key}); soak {soak}.",
            set_at=day_clock_text(plan.set_at, zone, style),
            set_zone=zone_text(plan.set_at, zone),
            haul_at=day_clock_text(plan.haul_at, zone, style),
            haul_zone=zone_text(plan.haul_at, zone),
            key=zone.key,
            soak=soak_text(plan.soak_h),
        ),
        *([say("This place and its water are invented.")] if site.invented else []),
        *plan.warnings,
        TIDE_CAUTION,
        RULES_CAUTION,
        say("Read the marine forecast, wear life jackets, leave a float plan ashore."),
    ]
    return "\n".join(lines)
