"""What `fullshell take` writes, read back by other libraries than wrote it."""

from __future__ import annotations

import csv
from datetime import UTC, datetime
from xml.etree import ElementTree

import pytest
import vobject

# The clocks go back in the night to 1 November.
DAYS = "--from 2026-10-30 --to 2026-11-03"


@pytest.fixture
def first(run):
    """Return the first plan of these days, as the ranking gives it."""
    return run(f"plans sedge-hollow {DAYS} --most 2 --format json").data["plans"]


def test_the_calendar_holds_the_plan_asked_for(run, tmp_path, first):
    """The set and haul of that rank, at their instants, whatever the clocks do."""
    for plan in first:
        out = tmp_path / f"{plan['rank']}.ics"
        ran = run(f"take sedge-hollow {out} {DAYS} --plan {plan['rank']}")
        assert ran.status == 0, ran.err
        assert f"plan {plan['rank']}, set" in ran.out
        _, begin, end = vobject.readOne(out.read_text("utf-8")).vevent_list
        for event, instant in ((begin, plan["set"]), (end, plan["haul"])):
            assert event.dtstart.value.astimezone(UTC) == datetime.fromisoformat(instant)


@pytest.mark.parametrize("unit", ["m", "ft"])
def test_water_and_waypoints_are_in_the_units_asked_for(run, tmp_path, unit):
    """The table's heads and the depths of the waypoints."""
    table, points = tmp_path / "trip.csv", tmp_path / "trip.gpx"
    for out in (table, points):
        ran = run(f"take sedge-hollow {out} {DAYS} --units {unit}")
        assert ran.status == 0, ran.err
    head = next(csv.reader(table.read_text("utf-8").splitlines()))
    assert head[2] == f"level_above_MLLW_{unit}"
    said = ElementTree.parse(points).getroot()
    texts = [node.text for node in said.iter("{http://www.topografix.com/GPX/1/1}desc")][1:]
    assert len(texts) == 6
    assert all(f" {unit} below MLLW" in text for text in texts)


def test_a_plan_that_is_not_there_is_refused(run, tmp_path):
    """The number of plans there are is said, and nothing is written."""
    ran = run(f"take sedge-hollow {tmp_path / 'x.ics'} {DAYS} --plan 999")
    assert ran.status == 2
    assert "--plan 999: there are" in ran.err
    assert not list(tmp_path.iterdir())


def test_spots_without_positions_are_refused(run, tmp_path):
    """Whoever asks for waypoints of a place without positions reads what to enter."""
    ran = run(f"take boston-ma {tmp_path / 'x.gpx'} {DAYS}")
    assert ran.status == 3
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("name", ["trip", "trip.docx"])
def test_an_ending_that_says_nothing_is_refused(run, tmp_path, name):
    """What may be written is listed."""
    ran = run(f"take sedge-hollow {tmp_path / name}")
    assert ran.status == 2
    assert ".pdf, .ics, .gpx or .csv" in ran.err
