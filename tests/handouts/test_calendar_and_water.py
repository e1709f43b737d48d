"""What other programs read: the calendar file and the table of the water."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise

import pytest
import vobject
from made_trips import CLOCKS_BACK, CLOCKS_ON, NOVEMBER, made_plan

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
    """Return check, set and haul as another library reads them than wrote them."""
    read = vobject.readOne(calendar_file(site, plan, Style(), NOW).decode())
    assert read.version.value == "2.0"
    return read.vevent_list


@pytest.mark.parametrize("start", [NOVEMBER, CLOCKS_BACK, CLOCKS_ON])
def test_a_calendar_reads_the_check_the_set_and_the_haul(site: Site, start: datetime) -> None:
    """Protects the instants: they come back as they went in, over both changes of clocks too, on
    the place's clock and by the zone that stands in the file."""
    plan = made_plan(start)
    check, set_event, haul_event = events(site, plan)
    assert check.dtstart.value == plan.set_at - timedelta(hours=24, minutes=30)
    assert set_event.dtstart.value == plan.set_at
    assert haul_event.dtstart.value == plan.haul_at
    assert set_event.dtend.value == plan.set_at + timedelta(minutes=60)
    assert haul_event.dtend.value == plan.haul_at + timedelta(minutes=90)
    for event in (check, set_event, haul_event):
        begin = event.dtstart.value
        assert begin.utcoffset() == begin.astimezone(site.zone).utcoffset()
        assert "America/New_York" in event.description.value
        assert "Not for navigation" in event.description.value
        assert event.valarm_list


def test_the_text_gives_each_instant_its_own_offset(site: Site) -> None:
    """Protects the reader on the night the clocks go back: set by EDT, haul by EST."""
    text = events(site, made_plan(CLOCKS_BACK))[1].description.value
    assert "Set Sat 31 Oct 16:00 EDT" in text
    assert "haul Mon 2 Nov 09:30 EST" in text


@pytest.mark.parametrize("minutes", range(-180, 181, 30))
def test_hours_that_the_clock_repeats_or_skips_come_back_too(site: Site, minutes: int) -> None:
    """Protects the worst of hours: any instant around a change of clocks, as it went in."""
    for change in (datetime(2026, 11, 1, 6, tzinfo=UTC), datetime(2026, 3, 8, 7, tzinfo=UTC)):
        plan = made_plan(change + timedelta(minutes=minutes))
        assert events(site, plan)[1].dtstart.value == plan.set_at


def test_the_zone_is_read_by_a_third_library(site: Site) -> None:
    """Protects from two libraries that err alike: offsets of the zone of the file by dateutil."""
    from dateutil.tz import tzical

    written = calendar_file(site, made_plan(CLOCKS_BACK), Style(), NOW).decode()
    zone = tzical(io.StringIO(written)).get("America/New_York")
    for month, day in ((7, 1), (11, 2), (12, 15)):
        read = datetime(2026, month, day, 12, tzinfo=zone)
        assert read.utcoffset() == datetime(2026, month, day, 12, tzinfo=site.zone).utcoffset()


def test_the_first_alarm_leaves_time_for_bait(site: Site) -> None:
    """Protects the start of the day: an hour before leaving with bait, not before the set."""
    _, set_event, haul_event = events(site, made_plan(NOVEMBER))
    assert [each.trigger.value for each in set_event.valarm_list] == [-timedelta(minutes=90)]
    ahead = [each.trigger.value for each in haul_event.valarm_list]
    assert ahead == [-timedelta(hours=12), -timedelta(hours=1)]


def test_names_of_events_stay_and_differ(site: Site) -> None:
    """Protects from doubles: the same plan twice is the same events, another plan others."""
    first = [event.uid.value for event in events(site, made_plan(NOVEMBER))]
    again = [event.uid.value for event in events(site, made_plan(NOVEMBER, rank=3))]
    other = [event.uid.value for event in events(site, made_plan(NOVEMBER, 40.0))]
    assert first == again
    assert len({*first, *other}) == 6


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
