"""A good place file becomes a `Site` in metres, with everything the user wrote."""

from __future__ import annotations

from datetime import date, time

import pytest
from place_text import OFFSETS, WHOLE

from planner.assets import demo_place, sample_sites
from planner.sites import load_site
from planner.sites.site import Closure, Habits, RuleNote, SlackLags


def test_whole_file(write):
    """Protects the meaning of every key of format 1."""
    site = load_site(write(WHOLE))
    assert (site.name, site.latitude_deg, site.longitude_deg) == ("Otter Bight", 38.2, -76.1)
    assert site.zone.key == "America/New_York"
    assert site.invented
    assert site.water.datum == "MLLW"
    assert [c.constituent for c in site.water.constants] == ["M2", "K1"]
    assert site.water.constants[1].phase_lag_deg == 182.0
    assert site.lowest_ramp_level_m == -0.1
    assert site.slack == SlackLags(40.0, -15.5)
    assert [(s.name, s.depth_m, s.trap_height_m) for s in site.spots] == [
        ("grass edge", 1.8, 0.35),
        ("deep bend", 3.0, 0.4),
    ]
    assert site.monthly_water_c is not None
    assert site.monthly_water_c[6] == 27.0
    assert site.closures == (
        Closure("winter", date(2000, 12, 1), date(2000, 3, 15), every_year=True),
        Closure("race day", date(2026, 7, 4), date(2026, 7, 5)),
        Closure("no hauling on Sundays", weekdays=frozenset({6})),
    )
    assert site.rules.checked == date(2026, 3, 2)
    assert (site.rules.max_traps, site.rules.max_soak_h) == (20, 72.0)
    assert site.rules.notes == (RuleNote("minimum size", "127 mm from point to point"),)
    assert site.free.weekdays == {4, 5}
    assert (site.free.earliest, site.free.latest) == (time(5, 30), time(20, 30))
    assert site.free.also == {date(2026, 5, 25)}
    assert site.free.never == {date(2026, 6, 6)}
    assert site.habits == Habits(12, 14.0, 50.0, 20.0, 45.0, 80.0, 0.25)


def test_feet_become_metres(write):
    """Protects the one conversion of units: every height of a file in feet."""
    text = WHOLE.replace('units = "m"', 'units = "ft"').replace("= 0.35", "= 1.2")
    text = text.replace("= 0.4\n", "= 1.3\n").replace("mean_level = 0.26", "mean_level = 0.25")
    site = load_site(write(text))
    ft = 0.3048
    assert site.water.mean_level_m == pytest.approx(0.25 * ft)
    assert site.water.constants[0].amplitude_m == pytest.approx(0.21 * ft)
    assert site.lowest_ramp_level_m == pytest.approx(-0.1 * ft)
    assert site.spots[0].depth_m == pytest.approx(1.8 * ft)
    assert site.spots[0].trap_height_m == pytest.approx(1.2 * ft)
    assert site.habits.cover_margin_m == pytest.approx(0.25 * ft)
    assert site.water.file_units == "ft"


def test_one_slack_lag_is_enough(write):
    """Whoever watched high water only need not invent the other lag."""
    site = load_site(write(WHOLE.replace("after_low_minutes = -15.5\n", "")))
    assert site.slack == SlackLags(40.0, None)


@pytest.mark.parametrize(
    ("written", "hours"),
    [("UTC", 0.0), ("UTC-05:00", -5.0), ("UTC+05:30", 5.5), ("UTC+01:00", 1.0)],
)
def test_phase_reference(write, written, hours):
    """Protects the sign of the clock of the lags: east of UTC is positive."""
    site = load_site(
        write(WHOLE.replace('phase_reference = "UTC"', f'phase_reference = "{written}"'))
    )
    assert site.water.phase_reference_h == hours


def test_phase_lags_come_into_one_turn(write):
    """A lag of -20 or 400 degrees is the same as 340 or 40."""
    site = load_site(write(WHOLE.replace("phase = 61.0", "phase = -20").replace("182.0", "400")))
    assert [c.phase_lag_deg for c in site.water.constants] == [340.0, 40.0]


def test_shortest_file(write):
    """Protects the defaults: a file of water alone is a place."""
    text = WHOLE[: WHOLE.index("[ramp]")].replace("invented = true\n", "")
    site = load_site(write(text.replace('species = "blue-crab"\n', "")))
    assert site.spots == ()
    assert site.lowest_ramp_level_m is None
    assert site.slack is None
    assert site.monthly_water_c is None
    assert site.habits == Habits()
    assert site.species == "blue-crab"
    assert not site.invented


def test_default_habits_keep_the_rules(write):
    """A rule shorter than the default soak, or fewer traps, bounds habits left unsaid."""
    text = WHOLE[: WHOLE.index("[ramp]")] + "[rules]\nmax_soak_hours = 24\nmax_traps = 5\n"
    habits = load_site(write(text)).habits
    assert (habits.traps, habits.min_soak_h, habits.max_soak_h) == (5, 12.0, 24.0)


def test_offsets_place(write):
    """An offsets place carries its reference, factors and additions in metres."""
    write(WHOLE)
    site = load_site(write(OFFSETS, "heron-slough.toml"))
    offsets = site.water.offsets
    assert offsets is not None
    assert offsets.reference.name == "Otter Bight"
    assert (offsets.high_minutes, offsets.low_minutes) == (47.0, 62.0)
    assert (offsets.high_factor, offsets.low_factor) == (0.86, 0.9)
    assert offsets.high_add_m == pytest.approx(-0.1 * 0.3048)
    assert offsets.low_add_m == 0.0
    # Between the mean level that the high rule gives and the one that the low rule gives.
    assert site.water.mean_level_m == pytest.approx((0.86 * 0.26 - 0.03048 + 0.9 * 0.26) / 2)


def test_byte_order_mark_and_windows_line_ends(tmp_path):
    """Protects users of editors that save with a BOM and CRLF."""
    path = tmp_path / "place.toml"
    path.write_bytes(b"\xef\xbb\xbf" + WHOLE.replace("\n", "\r\n").encode())
    assert load_site(path).name == "Otter Bight"


def test_path_may_be_text(write):
    """Protects the call as contracted: a path in either form."""
    assert load_site(str(write(WHOLE))) == load_site(write(WHOLE))


@pytest.mark.parametrize("path", sorted(sample_sites().glob("*.toml")), ids=lambda p: p.stem)
def test_every_sample_loads(path):
    """Protects the shipped places, and that each one tells where its constants are from."""
    site = load_site(path)
    assert site.water.source
    assert site.water.offsets is not None or site.water.constants_state


def test_demo_place_says_it_is_invented():
    """Nobody may take the demo place for real water."""
    assert load_site(demo_place()).invented
    assert "INVENTED" in demo_place().read_text(encoding="utf-8").splitlines()[0]


TABLED = """\
[water.offsets]
reference = "otter-bight.toml"
[water.offsets.tabled]
clock = "UTC+01:00"
high_times = [{ at = "00:00", minutes = 35 }, { at = "06:00", minutes = 23 }]
low_times = [{ at = "01:30", minutes = 10 }, { at = "06:00", minutes = -5 }]
high_heights = [{ there = 4.2, add = 1.1 }, { there = 3.4, add = 0.8 }]
low_heights = [{ there = 0.4, add = 0.1 }, { there = 1.1, add = 0.2 }]
"""
TABLED_PLACE = OFFSETS[: OFFSETS.index("[water.offsets]")] + TABLED


def test_tabled_differences_of_a_place(write):
    """Differences by time of day and height come in metres, on the clock of their table."""
    write(WHOLE)
    tabled = load_site(write(TABLED_PLACE, "heron-slough.toml")).water.offsets.tabled
    assert tabled.clock_h == 1.0
    assert (tabled.low_times.first_h, tabled.low_times.second_minutes) == (1.5, -5.0)
    assert tabled.high_heights.springs_there_m == pytest.approx(4.2 * 0.3048)
    assert tabled.high_heights.neaps_add_m == pytest.approx(0.8 * 0.3048)
