"""What the tally sheet says: every trap in the order of hauling, on the place's clock."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from planner.assets import demo_log, demo_place
from planner.errors import PlannerError
from planner.handouts.deck import deck_trip
from planner.handouts.tally import tally_sheet
from planner.logbook import book_zone, read_log
from planner.phrasing import Style
from planner.sites import load_site

TODAY = date(2026, 11, 25)


def test_a_line_for_each_trap_in_order():
    """A trap left off the sheet is a trap whose catch is kept in the head and forgotten."""
    site, log = load_site(demo_place()), read_log(demo_log(), book_zone)
    hauls = [haul for haul in log.hauls if haul.trip == "22 Nov 2026"]
    sheet = tally_sheet(deck_trip(hauls, site.zone, invented=True), TODAY, Style())
    assert [line.trap for line in sheet.lines] == [haul.trap for haul in hauls]
    # 19:35 UTC in November is 14:35 on this place's clock (UTC-5).
    assert sheet.lines[0].set_at == hauls[0].set_at.astimezone(site.zone).strftime("%H:%M")
    assert sheet.lines[0].about == "ramp flat, 1.10 m, chicken neck"
    assert sheet.invented
    assert "0" in sheet.notes[0]  # none is written down; not recorded is not zero


def test_american_units_and_clock():
    """A sheet in the wrong units sets a trap at the wrong depth."""
    site, log = load_site(demo_place()), read_log(demo_log(), book_zone)
    (haul, *_) = (haul for haul in log.hauls if haul.trip == "22 Nov 2026")
    sheet = tally_sheet(deck_trip([haul], site.zone), TODAY, Style("ft", "F", True))
    assert "3.6 ft" in sheet.lines[0].about
    assert sheet.lines[0].set_at.endswith("pm")
    assert "Water °F" in sheet.blanks


def test_a_trip_named_otherwise_tells_its_day():
    """A sheet found in a pocket next week must say which day it is for."""
    site, log = load_site(demo_place()), read_log(demo_log(), book_zone)
    haul = replace(log.hauls[-1], trip="with the cousins")
    title = tally_sheet(deck_trip([haul], site.zone), TODAY, Style()).title
    assert "haul Sun 22 Nov" in title


def test_no_traps_is_told():
    """An empty sheet would be printed, and found to be empty on the water."""
    with pytest.raises(PlannerError, match="no traps"):
        deck_trip([], load_site(demo_place()).zone)
