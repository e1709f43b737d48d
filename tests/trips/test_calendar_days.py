"""Free days read from a calendar file: what is on, when, on the place's own clock."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, time
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from planner.errors import InputError
from planner.sites.site import FreeTime
from planner.trips.calendar_days import calendar_days

ZONE = ZoneInfo("America/New_York")
FIRST, LAST = date(2026, 3, 1), date(2026, 3, 31)
HOURS = FreeTime(earliest=time(5, 30), latest=time(20, 30))
Days = Callable[..., list[int]]


@pytest.fixture
def days(tmp_path: Path) -> Days:
    """Return the days of March 2026 on which entries, given as lines, are on."""

    def read(*entries: str, zone: ZoneInfo = ZONE) -> list[int]:
        lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//made up//EN"]
        for number, entry in enumerate(entries):
            own = [] if "UID:" in entry else [f"UID:{number}@made-up.example"]
            lines += ["BEGIN:VEVENT", *own, *entry.split(), "END:VEVENT"]
        path = tmp_path / "made.ics"
        path.write_bytes("\r\n".join([*lines, "END:VCALENDAR", ""]).encode())
        return [day.day for day in calendar_days(path, zone, FIRST, LAST, HOURS)]

    return read


def test_a_whole_day_ends_before_the_day_it_names_last(days: Days) -> None:
    """DTEND of whole days is not included (RFC 5545, 3.6.1)."""
    assert days("DTSTART;VALUE=DATE:20260307 DTEND;VALUE=DATE:20260309") == [7, 8]
    assert days("DTSTART;VALUE=DATE:20260310") == [10]


def test_only_what_touches_the_free_hours_takes_the_day(days: Days) -> None:
    """An evening out after the last free hour leaves the day free; a minute before does not."""
    assert days("DTSTART:20260307T203100 DTEND:20260307T230000") == []
    assert days("DTSTART:20260307T203000 DTEND:20260307T230000") == [7]
    assert days("DTSTART:20260307T230000 DURATION:PT6H30M") == []
    assert days("DTSTART:20260307T230000 DURATION:PT6H31M") == [8]


def test_hours_are_those_of_the_place(days: Days) -> None:
    """23:30 UTC on the 7th is still the afternoon in New York and already the 8th in Auckland."""
    entry = "DTSTART:20260307T233000Z DTEND:20260307T234000Z"
    assert days(entry) == [7]
    assert days(entry, zone=ZoneInfo("Pacific/Auckland")) == [8]


def test_repeats_keep_their_clock_over_the_change_of_clocks(days: Days) -> None:
    """Six in the morning stays six when summer time begins on 8 March, so no day is missed."""
    entry = (
        "DTSTART;TZID=America/New_York:20260105T052000 DURATION:PT11M RRULE:FREQ=WEEKLY;BYDAY=SU"
    )
    assert days(entry) == [1, 8, 15, 22, 29]
    until = "DTSTART:20260301T090000 DURATION:PT1H RRULE:FREQ=DAILY;INTERVAL=2;UNTIL=20260307"
    assert days(until) == [1, 3, 5, 7]


def test_moved_and_dropped_repeats_are_where_they_were_moved_to(days: Days) -> None:
    """EXDATE drops one, RECURRENCE-ID moves one, RDATE adds one."""
    series = (
        "UID:series DTSTART:20260302T090000 DURATION:PT1H RRULE:FREQ=WEEKLY "
        "EXDATE:20260309T090000 RDATE:20260312T090000"
    )
    moved = "UID:series RECURRENCE-ID:20260316T090000 DTSTART:20260317T090000 DURATION:PT1H"
    assert days(series, moved) == [2, 12, 17, 23, 30]


def test_cancelled_and_transparent_entries_leave_the_day_free(days: Days) -> None:
    """A holiday list is often marked as leaving the time free."""
    assert days("DTSTART;VALUE=DATE:20260307 STATUS:CANCELLED") == []
    assert days("DTSTART;VALUE=DATE:20260307 TRANSP:TRANSPARENT") == []


@pytest.mark.parametrize("text", ["", "not a calendar", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"])
def test_what_is_no_calendar_is_refused_by_name(text: str, tmp_path: Path) -> None:
    """The message names the file and says what to do; nothing is taken from it."""
    path = tmp_path / "wrong.ics"
    path.write_text(text)
    with pytest.raises(InputError, match=r"wrong\.ics"):
        calendar_days(path, ZONE, FIRST, LAST, HOURS)
