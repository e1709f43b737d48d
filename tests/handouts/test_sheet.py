"""The trip sheet in words: every figure from the plan, each on the right clock and unit."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

import pytest
from made_trips import CLOCKS_BACK, NOVEMBER, made_plan

from planner.assets import demo_log, demo_place
from planner.handouts import TripSheet, trip_facts, trip_sheet
from planner.handouts.sheet import MOST_RULE_LETTERS, MOST_RULES, MOST_SPOTS
from planner.logbook import book_zone, read_log
from planner.phrasing import Style
from planner.sites import Site, load_site
from planner.sites.site import RuleNote
from planner.words import Language, speak

TODAY = date(2026, 11, 25)
AMERICAN = Style("ft", "F", True)


@pytest.fixture(scope="module")
def site() -> Site:
    return load_site(demo_place())


def made_sheet(site: Site, start: datetime = NOVEMBER, style: Style | None = None) -> TripSheet:
    log = read_log(demo_log(), book_zone)
    return trip_sheet(trip_facts(site, made_plan(start), log, 16.0), TODAY, style or Style())


def test_times_are_on_the_clock_of_the_place(site: Site) -> None:
    """Protects the hour: leave, set and haul in local time, 24 and 12 hours."""
    times = dict(made_sheet(site).times)
    assert times["Leave with bait"] == "Fri 27 Nov 13:30"
    assert times["Set"].startswith("Fri 27 Nov 14:00 to 15:00")
    assert times["Haul"].startswith("Sun 29 Nov 08:30 to 10:00; soak 42 h")
    times = dict(made_sheet(site, style=AMERICAN).times)
    assert times["Set"].startswith("Fri 27 Nov 2:00 pm to 3:00 pm")


def test_both_unit_systems_say_the_same_water(site: Site) -> None:
    """Protects from a sheet in mixed units: metres and feet agree and are named."""
    metric, american = made_sheet(site), made_sheet(site, style=AMERICAN)
    for here, there in zip(metric.spots, american.spots, strict=True):
        assert here[0] == there[0]
        for metres, feet in zip(here[1:5], there[1:5], strict=True):
            assert metres.endswith(" m")
            assert feet.endswith(" ft")
            # Rounded to 5 cm and to a tenth of a foot.
            apart = abs(float(metres[:-2]) - float(feet[:-3]) * 0.3048)
            assert apart <= 0.025 + 0.05 * 0.3048 + 1e-9
    assert any("°F" in line for line in american.sky)
    assert american.curve.level_name == "ft above MLLW"


def test_what_sun_and_moon_do_not_do_is_not_told(site: Site) -> None:
    """Near the polar day the sheet read "sun 01:20 to none"; a moon that does not rise, "none"."""
    north = replace(site, latitude_deg=69.65, longitude_deg=18.96, zone=ZoneInfo("Europe/Oslo"))
    # 17 May 2027: no dusk, a sunrise at 01:20 and no sunset before the next day.
    first, last, _ = made_sheet(north, datetime(2027, 5, 17, 8, tzinfo=UTC)).sky
    assert first.startswith("Mon 17 May: sun from 01:20; moon 90% lit, rises 19:10, sets 02:00")
    assert last == "Wed 19 May: sun up all day; moon 99% lit, sets 00:25"


def test_the_shallowest_spot_comes_first(site: Site) -> None:
    """Protects the eye: the trap that goes dry first is in the first row."""
    assert made_sheet(site).spots[0][0] == "ramp flat"


def test_hours_of_the_chart_stay_local_over_a_clock_change(site: Site) -> None:
    """Protects the axis: the night of 25 hours still has labels at whole local hours."""
    curve = made_sheet(site, CLOCKS_BACK).curve
    for seconds, text in curve.hours:
        local = datetime.fromtimestamp(seconds, tz=site.zone)
        assert local.hour % 6 == 0
        assert f"{local:%H:%M}" in text
    gaps = {
        later[0] - earlier[0] for earlier, later in zip(curve.hours, curve.hours[1:], strict=False)
    }
    assert gaps == {6 * 3600, 7 * 3600}


def test_a_clock_a_quarter_hour_off_has_hours_on_the_chart_too(site: Site) -> None:
    """Nepal's clock is 5 h 45 min from UTC: whole hours there are quarters of an hour elsewhere."""
    there = replace(site, zone=ZoneInfo("Asia/Kathmandu"))
    texts = [text for _, text in made_sheet(there).curve.hours]
    assert {"06:00", "12:00", "18:00"} <= set(texts)


def test_nights_lie_between_sunset_and_sunrise(site: Site) -> None:
    """Protects the grey bands: two nights, each from an hour of evening to one of morning."""
    nights = made_sheet(site).curve.nights
    assert len(nights) == 2
    for begin, end in nights:
        assert datetime.fromtimestamp(begin, tz=site.zone).hour in (17, 18)
        assert datetime.fromtimestamp(end, tz=site.zone).hour in (6, 7)


def test_an_invented_place_says_so_and_a_real_one_does_not(site: Site) -> None:
    """Protects from taking the demo's sheet aboard."""
    assert "INVENTED" in made_sheet(site).invented
    assert made_sheet(replace(site, invented=False)).invented == ""


def test_what_does_not_fit_is_counted(site: Site) -> None:
    """Protects a large place: spots and rules left out are said to be left out."""
    spots = tuple(replace(site.spots[0], name=f"spot {at}", depth_m=2.0 + at) for at in range(30))
    notes = tuple(RuleNote(f"rule {at}", "x" * 500) for at in range(40))
    many = replace(site, spots=spots, rules=replace(site.rules, notes=notes))
    sheet = made_sheet(many)
    assert len(sheet.spots) == MOST_SPOTS
    assert f"{30 - MOST_SPOTS} deeper spots are not listed" in sheet.spots_note
    assert len(sheet.rules) == MOST_RULES + 1
    assert "more rules" in sheet.rules[-1]
    assert max(len(rule) for rule in sheet.rules) <= MOST_RULE_LETTERS


def test_no_word_of_the_tables_and_the_curve_goes_past_the_language(site: Site) -> None:
    """Protects the reader of another language from heads, marks and turns left in English."""
    speak(Language("xx", lambda text, sense: f"‹{text}›", ",", ".", "%"))
    try:
        sheet = made_sheet(site)
    finally:
        speak(None)
    marks = [name for _, name in sheet.curve.marks]
    assert [head for head in (*sheet.spot_head, *marks) if not head.startswith("‹")] == []
    assert "‹high›" in sheet.curve.in_words
    assert "‹low›" in sheet.curve.in_words
