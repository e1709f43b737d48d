"""Rows of any days: order of time, the night of two clocks, ramps that always or never work."""

from __future__ import annotations

import csv
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from planner.assets import demo_place
from planner.clock import from_utc64
from planner.phrasing import Style, day_text
from planner.sites import load_site
from planner.sites.site import Site, SlackLags
from planner.tides.events import Kind
from planner.ui.places.span_rows import (
    SpanWater,
    event_row,
    ramp_span_text,
    slack_span_text,
    span_water,
    write_events,
)

NIGHT = date(2026, 11, 1)  # 25 hours in New York
LAGS = SlackLags(after_high_min=40.0, after_low_min=-20.0)


def _found(site: Site, first: date, last: date) -> SpanWater:
    return span_water(site, first, last, lambda _: None)


@pytest.fixture
def site() -> Site:
    """The demo place with a ramp that dries at most low waters, and slack lags."""
    return replace(load_site(demo_place()), lowest_ramp_level_m=0.4, slack=LAGS)


def test_rows_over_the_night_of_two_clocks_are_in_order_of_time(site: Site) -> None:
    """Every kind is there, each on the clock of its hour, none lost and none twice."""
    found = _found(site, date(2026, 10, 31), date(2026, 11, 2))
    times = found.events.times
    assert (times[1:] >= times[:-1]).all()
    rows = [event_row(found, at, Style()) for at in range(len(times))]
    assert {kind for _, _, kind in rows} == {
        *("high", "low", "ramp begins to work", "ramp stops working"),
        *("slack (estimated) after high water", "slack (estimated) before low water"),
    }
    assert {when.split()[-1] for when, _, _ in rows} == {"EDT", "EST"}
    assert all((height == "") == ("slack" in kind) for _, height, kind in rows)
    alone = _found(site, NIGHT, NIGHT).events.times
    assert len(alone) == sum(when.startswith("Sun 1 Nov 2026") for when, _, _ in rows)
    assert set(alone) <= set(times)


def test_a_water_shortly_before_midnight_stands_on_the_day_of_its_clock(site: Site) -> None:
    """23:58 reads 00:00, and then of the next day: rows stay in order for whoever reads them."""
    found = _found(site, date(2026, 1, 1), date(2026, 12, 31))
    midnights = [
        (from_utc64(at).astimezone(site.zone), event_row(found, row, Style())[0])
        for row, at in enumerate(found.events.times)
    ]
    late = [(when, row) for when, row in midnights if (when.hour, when.minute) >= (23, 58)]
    assert late
    for when, row in late:
        day = when.date() + timedelta(days=1)
        assert row.startswith(f"{day_text(day)} {day.year} 00:00"), row


def test_rows_do_not_hang_on_where_years_are_cut(site: Site) -> None:
    """The ramp's hours and slack go on over the seams between the parts of a long span."""
    whole = _found(site, date(2026, 1, 1), date(2028, 12, 31)).events
    ramp = whole.kinds[(whole.kinds == Kind.RAMP_BEGINS) | (whole.kinds == Kind.RAMP_ENDS)]
    assert (ramp[1:] != ramp[:-1]).all()
    highs = int((whole.kinds == Kind.HIGH).sum())
    assert abs(int((whole.kinds == Kind.SLACK_ESTIMATED_HIGH).sum()) - highs) <= 1
    # The second part of that span begins on 2 January 2027.
    seam = _found(site, date(2027, 1, 1), date(2027, 1, 3)).events
    assert set(seam.times) <= set(whole.times)


def test_a_place_without_ramp_and_slack_has_high_and_low_waters_only(site: Site) -> None:
    """And nothing is said of either."""
    found = _found(replace(site, lowest_ramp_level_m=None, slack=None), NIGHT, NIGHT)
    assert set(found.events.kinds) == {Kind.HIGH, Kind.LOW}
    assert ramp_span_text(found, Style()) == slack_span_text(found) == ""


@pytest.mark.parametrize(("level_m", "words"), [(-2.0, "at any hour"), (5.0, "at no hour")])
def test_a_ramp_that_nothing_stops_or_starts_is_told_in_words(
    site: Site, level_m: float, words: str
) -> None:
    """No row would leave open whether it works always or never."""
    found = _found(replace(site, lowest_ramp_level_m=level_m), NIGHT, NIGHT)
    assert Kind.RAMP_BEGINS not in found.events.kinds
    assert words in ramp_span_text(found, Style())
    assert ramp_span_text(_found(site, NIGHT, NIGHT), Style()) == ""


def test_the_table_that_is_saved_names_every_kind(site: Site, tmp_path: Path) -> None:
    """Slack has no height and says that it is estimated, also in the file."""
    found = _found(site, NIGHT, NIGHT)
    out = tmp_path / "rows.csv"
    write_events(out, found, Style(), lambda _: None)
    rows = list(csv.DictReader(out.read_text("utf-8").splitlines()))
    assert [row["kind"] for row in rows] == [Kind(k).name.lower() for k in found.events.kinds]
    assert all(row["kind"].startswith("slack_estimated") == (row["height_m"] == "") for row in rows)
    assert {row["height_m"] for row in rows if row["kind"].startswith("ramp")} == {"0.400"}
