"""The days on which a calendar file (RFC 5545) has something on."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from pathlib import Path
from typing import Any, Final
from zoneinfo import ZoneInfo

from planner.errors import InputError, Problem
from planner.sites.site import FreeTime
from planner.words import say

_DAY: Final = timedelta(days=1)
# An entry that began longer ago than this and still goes on is not looked for.
_LONGEST: Final = timedelta(days=370)
_REMEDY: Final = say("export the calendar again as an iCalendar file (.ics)")
_MOST_BYTES: Final = 20_000_000

Stretch = tuple[datetime, datetime]


def calendar_days(
    path: Path, zone: ZoneInfo, first: date, last: date, free: FreeTime
) -> tuple[date, ...]:
    """Return the local days first..last with an entry that touches the user's free hours.

    Repeated entries count on each of their days. Entries that are cancelled, or marked as
    leaving the time free, do not count. Raises InputError for a file that cannot be read.
    """
    entries = _entries(path)
    moved = {
        (str(entry.get("UID")), _naive(entry["RECURRENCE-ID"].dt, zone))
        for entry in entries
        if "RECURRENCE-ID" in entry
    }
    found: set[date] = set()
    for number, entry in enumerate(entries, start=1):
        try:
            stretches = list(_stretches(entry, zone, first, last, moved))
        except (KeyError, ValueError, TypeError, AttributeError, OverflowError) as error:
            what = say("cannot be understood ({error})", error=error)
            name = str(entry.get("SUMMARY", ""))[:60]
            raise InputError(
                str(path), [Problem(say("entry {number}", number=number), name, what, _REMEDY)]
            ) from None
        for begin, end in stretches:
            found.update(_days_touched(begin, end, free, first, last))
    return tuple(sorted(found))


def _entries(path: Path) -> list[Any]:
    from icalendar import Calendar

    try:
        if path.stat().st_size > _MOST_BYTES:
            problem = Problem("file", path.name, say("is too large for a calendar"), _REMEDY)
            raise InputError(str(path), [problem])
        calendars = Calendar.from_ical(path.read_bytes(), multiple=True)
    except OSError as error:
        what = say("cannot be read: {value}", value=error.strerror or error)
        raise InputError(str(path), [Problem("file", path.name, what, _REMEDY)]) from None
    except (ValueError, IndexError, KeyError) as error:
        what = say("is not a calendar ({error})", error=str(error)[:80])
        raise InputError(str(path), [Problem("file", path.name, what, _REMEDY)]) from None
    if not any(each.name == "VCALENDAR" for each in calendars):
        raise InputError(str(path), [Problem("file", path.name, say("is not a calendar"), _REMEDY)])
    return [
        entry
        for calendar in calendars
        for entry in calendar.walk("VEVENT")
        if str(entry.get("STATUS", "")).upper() != "CANCELLED"
        and str(entry.get("TRANSP", "")).upper() != "TRANSPARENT"
    ]


def _stretches(
    entry: Any, zone: ZoneInfo, first: date, last: date, moved: set[tuple[str, datetime]]
) -> Iterator[Stretch]:
    """Yield when an entry is on, begin and end on the place's clock without its zone."""
    start = entry["DTSTART"].dt
    length = _length(entry, start)
    own = start.tzinfo if isinstance(start, datetime) and start.tzinfo else zone
    uid = str(entry.get("UID"))
    for begin in _begins(entry, start, own, first, last):
        local = begin.replace(tzinfo=own).astimezone(zone).replace(tzinfo=None)
        if "RECURRENCE-ID" in entry or (uid, local) not in moved:
            yield local, local + length


def _begins(entry: Any, start: Any, own: Any, first: date, last: date) -> Iterator[datetime]:
    """Yield the beginnings of an entry near the days, on its own clock."""
    from dateutil.rrule import rruleset, rrulestr

    begin = _naive(start, own)
    if "RRULE" not in entry and "RDATE" not in entry:
        yield begin
        return
    rules = rruleset()
    rules.rdate(begin)
    for rule in _listed(entry.get("RRULE")):
        parts = {key.upper(): value for key, value in rule.items()}
        if {"SECONDLY", "MINUTELY"} & {str(each).upper() for each in parts.get("FREQ", [])}:
            raise ValueError("it repeats every minute or oftener")
        if "UNTIL" in parts:
            parts["UNTIL"] = [_naive(_last_moment(until, start), own) for until in parts["UNTIL"]]
        text = type(rule)(parts).to_ical().decode()
        rules.rrule(rrulestr(text, dtstart=begin))
    for key, add in (("RDATE", rules.rdate), ("EXDATE", rules.exdate)):
        for each in _listed(entry.get(key)):
            for moment in each.dts:
                add(_naive(moment.dt, own))
    yield from rules.between(
        datetime.combine(first, time()) - _LONGEST, datetime.combine(last, time()) + 2 * _DAY, True
    )


def _last_moment(until: Any, start: Any) -> Any:
    """Return until when, a bare date meaning the whole of that day."""
    timed = isinstance(start, datetime) and not isinstance(until, datetime)
    return datetime.combine(until, time.max) if timed else until


def _length(entry: Any, start: Any) -> timedelta:
    if "DTEND" in entry:
        length = entry["DTEND"].dt - start
    elif "DURATION" in entry:
        length = entry["DURATION"].dt
    else:
        length = timedelta(0) if isinstance(start, datetime) else _DAY
    return max(timedelta(length.days, length.seconds), timedelta(0))


def _naive(moment: Any, own: Any) -> datetime:
    """Return a date or an instant as its reading on a clock, without the zone."""
    if not isinstance(moment, datetime):
        return datetime.combine(moment, time())
    return moment.astimezone(own).replace(tzinfo=None) if moment.tzinfo else moment


def _listed(value: Any) -> list[Any]:
    if value is None:
        return []
    return value if isinstance(value, list) else [value]


def _days_touched(
    begin: datetime, end: datetime, free: FreeTime, first: date, last: date
) -> Iterator[date]:
    day = max(begin.date(), first)
    while day <= min(end.date(), last):
        opens = datetime.combine(day, free.earliest)
        shuts = datetime.combine(day, free.latest) + timedelta(minutes=1)
        if begin < shuts and (end > opens or begin == end >= opens):
            yield day
        day += _DAY
