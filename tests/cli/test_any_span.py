"""A year, a leap day, a clock change, both sides of the date line and a century of turns."""

from __future__ import annotations

import csv
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from planner.cli.errors import UsageError
from planner.cli.spans import InstantSpan, instant_span, require_values

PLACE = """\
format = 1
name = "Far Bight"              # invented
latitude = {latitude}
longitude = {longitude}
timezone = "{zone}"

[water]
units = "m"
datum = "LAT"
mean_level = 0.75
[water.constituents]
M2 = {{ amplitude = 0.58, phase = 190 }}
S2 = {{ amplitude = 0.10, phase = 215 }}
K1 = {{ amplitude = 0.08, phase = 85 }}
"""


def test_a_span_without_its_end_goes_to_the_same_clock_time() -> None:
    """Two weeks over the end of summer time are an hour longer, not an hour off."""
    zone = ZoneInfo("America/New_York")
    span = instant_span("2026-10-25T06:00", None, zone, 14)
    assert span.stop == datetime(2026, 11, 8, 11, tzinfo=UTC)
    assert span.stop - span.start == timedelta(days=14, hours=1)


def test_as_many_values_as_are_said_and_no_more() -> None:
    """Protects the sentence: a million values are given, one more is refused."""
    start = datetime(2026, 1, 1, tzinfo=UTC)
    second = timedelta(seconds=1)
    require_values(InstantSpan(start, start + 999_999 * second), second)
    with pytest.raises(UsageError, match="1000001 values"):
        require_values(InstantSpan(start, start + 1_000_000 * second), second)


def place_at(folder: Path, latitude: float, longitude: float, zone: str) -> str:
    """Write an invented place and return its path."""
    path = folder / "far.toml"
    path.write_text(PLACE.format(latitude=latitude, longitude=longitude, zone=zone), "utf-8")
    return str(path)


@pytest.mark.parametrize(
    ("latitude", "longitude", "zone", "offset"),
    [
        (-16.5, 179.9, "Pacific/Fiji", "+12:00"),
        (-18.0, -179.9, "Pacific/Fiji", "+12:00"),
        (51.9, -179.9, "America/Adak", "-10:00"),
        (1.9, -157.4, "Pacific/Kiritimati", "+14:00"),
    ],
)
def test_a_leap_year_on_each_side_of_the_date_line(
    run: Any, tmp_path: Path, latitude: float, longitude: float, zone: str, offset: str
) -> None:
    """The same lags give the same instants on any clock; the leap day is there on each."""
    place = place_at(tmp_path, latitude, longitude, zone)
    assert run(f"check {place}").status == 0
    rows = _rows(run, f"water {place} --from 2028-01-01 --to 2029-01-01 --turns")
    # One high and one low water in each half lunar day of 12.42 hours.
    assert len(rows) == pytest.approx(366 * 24 / 6.21, abs=4)
    leap_day = [row for row in rows if row["local_time"].startswith("2028-02-29")]
    assert len(leap_day) in (3, 4)
    assert {row["local_time"][-6:] for row in leap_day} == {offset}
    utc = place_at(tmp_path, 0, 0, "UTC")
    there = _rows(run, f"water {utc} --from 2028-02-28 --to 2028-03-02 --turns")
    assert {row["time"] for row in leap_day} <= {row["time"] for row in there}


def test_the_hours_of_the_days_on_which_clocks_change(run: Any, tmp_path: Path) -> None:
    """25 hours in autumn, one of them twice; 23 in spring, one of them never."""
    place = place_at(tmp_path, 51.9, -176.6, "America/Adak")
    autumn = _rows(run, f"water {place} --from 2026-11-01 --to 2026-11-01T23:59 --every 1h")
    spring = _rows(run, f"water {place} --from 2026-03-08 --to 2026-03-08T23:59 --every 1h")
    assert [row["local_time"][11:13] for row in autumn].count("01") == 2
    assert (len(autumn), len(spring)) == (25, 23)
    assert "02" not in [row["local_time"][11:13] for row in spring]


@pytest.mark.slow
def test_a_century_of_turns(run: Any, tmp_path: Path) -> None:
    """Every high and low water of 1950 to 2049 is given, kinds in turn, none at a border twice."""
    place = place_at(tmp_path, -16.5, 179.9, "Pacific/Fiji")
    rows = _rows(run, f"water {place} --from 1950-01-01 --to 2050-01-01 --turns")
    assert len(rows) == pytest.approx(36525 * 24 / 6.21, abs=40)
    kinds = [row["kind"] for row in rows]
    assert all(one != other for one, other in pairwise(kinds))


def _rows(run: Any, words: str) -> list[dict[str, str]]:
    ran = run(f"{words} --format csv")
    assert ran.status == 0, ran.err
    return list(csv.DictReader(ran.out.splitlines()))
