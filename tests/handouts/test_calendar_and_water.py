"""What other programs read: the calendar file and the table of the water."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from icalendar import Calendar
from made_trips import CLOCKS_BACK, NOVEMBER, made_plan

from planner.assets import demo_place
from planner.handouts import calendar_file, water_csv
from planner.phrasing import Style
from planner.sites import Site, load_site
from planner.tides import Tide
from planner.trips import Plan

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture(scope="module")
def site() -> Site:
    return load_site(demo_place())


def events(site: Site, plan: Plan) -> list:
    calendar = Calendar.from_ical(calendar_file(site, plan, Style(), NOW))
    assert calendar["version"] == "2.0"
    return list(calendar.walk("VEVENT"))


@pytest.mark.parametrize("start", [NOVEMBER, CLOCKS_BACK])
def test_a_calendar_reads_the_set_and_the_haul(site: Site, start: datetime) -> None:
    """Protects the instants: they come back as they went in, in UTC, over a clock change too."""
    plan = made_plan(start)
    set_event, haul_event = events(site, plan)
    assert set_event["dtstart"].dt == plan.set_at
    assert haul_event["dtstart"].dt == plan.haul_at
    assert set_event["dtend"].dt == plan.set_at + timedelta(minutes=60)
    assert haul_event["dtend"].dt == plan.haul_at + timedelta(minutes=90)
    for event in (set_event, haul_event):
        assert event["dtstart"].dt.utcoffset() == timedelta(0)
        assert "America/New_York" in event["description"]
        assert "Not for navigation" in event["description"]
        assert event.walk("VALARM")


def test_the_text_gives_each_instant_its_own_offset(site: Site) -> None:
    """Protects the reader on the night the clocks go back: set by EDT, haul by EST."""
    text = str(events(site, made_plan(CLOCKS_BACK))[0]["description"])
    assert "Set Sat 31 Oct 16:00 EDT" in text
    assert "haul Mon 2 Nov 09:30 EST" in text


def test_an_instant_of_another_zone_is_still_written_in_utc(site: Site) -> None:
    """Protects other calendars from a zone name without its definition in the file."""
    local = NOVEMBER.astimezone(ZoneInfo("America/New_York"))
    written = calendar_file(site, made_plan(local), Style(), NOW)
    assert b"TZID" not in written
    assert b"DTSTART:20261127T190000Z" in written


def test_the_first_alarm_leaves_time_for_bait(site: Site) -> None:
    """Protects the start of the day: an hour before leaving with bait, not before the set."""
    alarm = events(site, made_plan(NOVEMBER))[0].walk("VALARM")[0]
    assert alarm["trigger"].dt == -timedelta(minutes=90)


def test_names_of_events_stay_and_differ(site: Site) -> None:
    """Protects from doubles: the same plan twice is the same events, another plan others."""
    first = [event["uid"] for event in events(site, made_plan(NOVEMBER))]
    again = [event["uid"] for event in events(site, made_plan(NOVEMBER, rank=3))]
    other = [event["uid"] for event in events(site, made_plan(NOVEMBER, 40.0))]
    assert first == again
    assert len({*first, *other}) == 4


@pytest.mark.parametrize(("style", "metres"), [(Style(), 1.0), (Style(length="ft"), 0.3048)])
@pytest.mark.parametrize("start", [NOVEMBER, CLOCKS_BACK])
def test_the_water_table_holds_the_tide(
    site: Site, start: datetime, style: Style, metres: float
) -> None:
    """Protects the figures in a spreadsheet: every ten minutes to the end of the haul, local
    clocks that agree with UTC, heights in the unit that the header names."""
    plan = made_plan(start)
    head, *rows = csv.reader(io.StringIO(water_csv(site, plan, style)))
    assert head[2] == f"level_above_MLLW_{style.length}"
    assert len(head) == 3 + len(site.spots)
    instants = [datetime.fromisoformat(row[0]) for row in rows]
    assert instants[0] == plan.set_at
    assert instants[-1] == plan.haul_at + timedelta(minutes=90)
    assert {later - earlier for earlier, later in pairwise(instants)} == {timedelta(minutes=10)}
    assert [datetime.fromisoformat(row[1]) for row in rows] == instants
    levels = Tide(site).heights(instants)
    for row, level in zip(rows, levels, strict=True):
        assert float(row[2]) * metres == pytest.approx(level, abs=0.006)
        top = site.spots[0].depth_m - site.spots[0].trap_height_m
        assert float(row[3]) * metres == pytest.approx(level + top, abs=0.006)


def test_a_spot_named_like_a_formula_stays_text(site: Site) -> None:
    """Protects the spreadsheet's owner: no name of a spot is run as a formula."""
    spot = replace(site.spots[0], name='=HYPERLINK("x")')
    head = water_csv(replace(site, spots=(spot,)), made_plan(NOVEMBER), Style()).splitlines()[0]
    assert "'=HYPERLINK" in head
