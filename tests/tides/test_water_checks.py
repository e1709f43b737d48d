"""The checks of a place: figures that must hold, and every classic slip made on purpose."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from tide_reference import constants, mean_above_mllw, offset_place, place, rows, utc

from planner.assets import sample_sites
from planner.errors import InputError
from planner.estimates import Floats
from planner.sites import load_site
from planner.sites.site import HarmonicConstant, Site
from planner.tides import Tide
from planner.tides.checks import (
    ObservedTurns,
    check_water,
    compare,
    read_observed_turns,
    summarise,
    suspicions,
)
from planner.tides.summary import type_text
from planner.units import M_PER_FT

NEW_YORK, PACIFIC = "America/New_York", "America/Los_Angeles"
ZONES = {"8443970": NEW_YORK, "9447130": PACIFIC, "8658120": NEW_YORK, "8726724": NEW_YORK}
STANDARD_H = {NEW_YORK: -5.0, PACIFIC: -8.0}


def _station(number: str) -> Site:
    return place(constants(number), mean_above_mllw(number), zone=ZONES[number])


def _observed(
    site: Site,
    count: int = 12,
    start: str = "2026-06-10",
    every: int = 3,
    seed: int = 1,
    time_min: float = 6.0,
    height_m: float = 0.06,
) -> ObservedTurns:
    """Return every third turn as somebody might note it: minutes and centimetres of weather."""
    rng = np.random.default_rng(seed)
    turns = Tide(site).turns(utc(start), utc(start) + np.timedelta64(400, "D"))
    picked = slice(0, count * every, every)
    minutes = rng.normal(0, time_min, count) * 60_000
    return ObservedTurns(
        turns.times[picked] + np.rint(minutes).astype("timedelta64[ms]"),
        turns.heights[picked] + rng.normal(0, height_m, count),
        turns.is_high[picked],
    )


def _codes_of_numbers(site: Site) -> set[str]:
    tide = Tide(site)
    return {each.code for each in suspicions(tide, summarise(tide))}


def _codes(site: Site, observed: ObservedTurns) -> set[str]:
    """Return what the observations alone give away."""
    return {each.code for each in suspicions(Tide(site), None, observed)}


def _scaled(site: Site, by: float, mean_too: bool = True) -> Site:
    water = site.water
    changed = tuple(replace(c, amplitude_m=c.amplitude_m * by) for c in water.constants)
    mean = water.mean_level_m * (by if mean_too else 1.0)
    return replace(site, water=replace(water, constants=changed, mean_level_m=mean))


def _lags_on_the_clock(site: Site, hours: float) -> Site:
    """Return the place with lags of a local clock read as Greenwich."""
    from planner.constituents import find

    changed = tuple(
        replace(
            c,
            phase_lag_deg=(c.phase_lag_deg + find(c.constituent).speed_deg_per_h * hours) % 360,
        )
        for c in site.water.constants
    )
    return replace(site, water=replace(site.water, constants=changed))


def _moved(observed: ObservedTurns, minutes: float = 0.0, metres: float = 0.0) -> ObservedTurns:
    shift = np.timedelta64(round(minutes * 60_000), "ms")
    return replace(observed, times=observed.times + shift, heights_m=observed.heights_m + metres)


@pytest.mark.parametrize("number", sorted(ZONES))
@pytest.mark.parametrize("seed", range(6))
def test_a_sound_place_raises_no_suspicion(number: str, seed: int) -> None:
    """Weather of 6 cm and notes to 6 minutes are no reason to doubt the constants."""
    site = _station(number)
    assert _codes(site, _observed(site, seed=seed)) == set()


@pytest.mark.parametrize("file", sorted(sample_sites().glob("*.toml")), ids=lambda f: f.stem)
def test_no_sample_place_looks_wrong(file: Path) -> None:
    """Published datums and constants agree: predicted MLLW is near zero. One has no SA."""
    expected = {"season"} if file.stem == "red-bay-point-fl" else set()
    assert _codes_of_numbers(load_site(file)) == expected


@pytest.mark.parametrize("number", sorted(ZONES))
def test_feet_read_as_metres_are_seen(number: str) -> None:
    """Amplitudes and mean level 3.28 times too large, against honest observations."""
    site = _station(number)
    assert "units" in _codes(_scaled(site, 1 / M_PER_FT), _observed(site))
    assert "units" in _codes(_scaled(site, M_PER_FT), _observed(site))


def test_feet_of_a_large_range_are_seen_without_observations() -> None:
    """Boston in feet read as metres ranges over more than 14 m: mean level betrays the rest."""
    site = place(constants("8410834"), mean_above_mllw("8410834"))
    assert "units" in _codes_of_numbers(_scaled(site, 1 / M_PER_FT))


@pytest.mark.parametrize("number", sorted(ZONES))
def test_local_lags_are_seen_with_the_offset_that_fits(number: str) -> None:
    """Lags in standard time read as Greenwich: the text names the clock to set."""
    site = _station(number)
    hours = STANDARD_H[ZONES[number]]
    wrong = Tide(_lags_on_the_clock(site, hours))
    found = suspicions(wrong, None, _observed(site, count=20))
    zone = next(each for each in found if each.code == "zone")
    assert f"UTC-0{abs(hours):.0f}:00" in zone.remedy


@pytest.mark.parametrize("hours", [-3.0, 2.0, 9.0])
def test_lags_of_another_clock_are_seen_with_the_offset_that_fits(hours: float) -> None:
    """Any other clock is named too, from the best fit."""
    site = _station("9447130")
    wrong = Tide(_lags_on_the_clock(site, hours))
    found = suspicions(wrong, None, _observed(site, count=20))
    zone = next(each for each in found if each.code == "zone")
    assert f"UTC{'-' if hours < 0 else '+'}{abs(hours):02.0f}:00" in zone.text


@pytest.mark.parametrize("number", sorted(ZONES))
@pytest.mark.parametrize("minutes", [-60.0, 60.0])
def test_a_clock_an_hour_off_is_seen(number: str, minutes: float) -> None:
    """Observations noted in summer time, constants right."""
    site = _station(number)
    assert _codes(site, _moved(_observed(site), minutes=minutes)) == {"clock"}


@pytest.mark.parametrize("number", sorted(ZONES))
@pytest.mark.parametrize("metres", [-0.4, 0.25])
def test_a_wrong_datum_is_seen(number: str, metres: float) -> None:
    """High and low alike stand off by the same amount."""
    site = _station(number)
    assert "datum" in _codes(site, _moved(_observed(site), metres=metres))


@pytest.mark.parametrize("number", sorted(ZONES))
def test_a_mean_level_left_at_zero_is_seen_without_observations(number: str) -> None:
    """The commonest slip of all: MLLW as datum, mean level not filled in."""
    site = _station(number)
    assert "datum" in _codes_of_numbers(replace(site, water=replace(site.water, mean_level_m=0.0)))


def test_a_missing_season_is_seen() -> None:
    """SA and SSA left out: said from the constants alone, and from a year of observations."""
    site = _station("8726724")
    without = replace(
        site.water,
        constants=tuple(c for c in site.water.constants if c.constituent not in ("SA", "SSA")),
    )
    assert _codes_of_numbers(replace(site, water=without)) == {"season"}
    without_sa = replace(
        site.water, constants=tuple(c for c in site.water.constants if c.constituent != "SA")
    )
    year = _observed(site, count=60, every=23, height_m=0.04)
    assert "season" in _codes(replace(site, water=without_sa), year)
    assert "season" not in _codes(site, year)


def test_the_slips_cost_what_is_published() -> None:
    """Largest error of 2026 by three slips at Boston and Seattle (slip_sizes_cm_2026.csv)."""
    hours = np.arange(utc("2026-01-01"), utc("2027-01-01"), np.timedelta64(3_600_000, "ms"))
    made = {
        "feet read as metres": lambda site: _scaled(site, 1 / M_PER_FT, mean_too=False),
        "SA and SSA left out": lambda site: replace(
            site,
            water=replace(
                site.water,
                constants=tuple(
                    c for c in site.water.constants if c.constituent not in ("SA", "SSA")
                ),
            ),
        ),
    }
    for row in rows("slip_sizes_cm_2026.csv"):
        if row["slip"] in made:
            for number, column in (("8443970", "8443970_boston"), ("9447130", "9447130_seattle")):
                site = place(constants(number), rule="continuous")
                apart = Tide(made[row["slip"]](site)).heights(hours) - Tide(site).heights(hours)
                # Largest of the hours here against largest of the reference's own step.
                assert np.abs(apart).max() * 100 == pytest.approx(float(row[column]), rel=0.02)


def test_too_few_observations_prove_nothing() -> None:
    """Three turns are compared, but raise no suspicion."""
    site = _station("8443970")
    few = _moved(_observed(site, count=3), minutes=300)
    assert _codes(site, few) == set()
    assert compare(Tide(site), few).matched <= 3


def test_bias_and_scatter_are_those_put_in() -> None:
    """Two hundred turns, 12 minutes late and 0.2 m high with known scatter."""
    site = _station("8443970")
    seen = _moved(_observed(site, count=200, time_min=8.0, height_m=0.05), minutes=12.0, metres=0.2)
    found = compare(Tide(site), seen)
    assert found.matched == 200
    assert found.time_bias_min == pytest.approx(12.0, abs=2.0)
    assert found.time_scatter_min == pytest.approx(8.0, abs=1.2)
    assert found.height_bias_m == pytest.approx(0.2, abs=0.012)
    assert found.height_scatter_m == pytest.approx(0.05, abs=0.008)


def test_times_alone_are_compared() -> None:
    """A person who only noted when the water turned still learns whether the clock is right."""
    site = _station("8443970")
    seen = _moved(_observed(site), minutes=60.0)
    nothing: Floats = np.full(seen.times.shape, np.nan)
    only_times = replace(seen, heights_m=nothing)
    assert _codes(site, only_times) == {"clock"}
    assert np.isnan(compare(Tide(site), only_times).height_bias_m)


def test_the_summary_of_a_station_is_that_of_its_datums() -> None:
    """Mean higher high water over MLLW against NOAA's published datum, to 4 cm.

    The datum's epoch is 1983-2001; the constants are a little younger.
    """
    for row in rows("stations.csv"):
        if row["station"] in ("8443970", "9414290", "8665530"):
            site = place(constants(row["station"]), mean_above_mllw(row["station"]))
            summary = summarise(Tide(site), first_year=1983)
            assert summary is not None
            published = (
                float(row["MHHW_ft_station_datum"]) - float(row["MLLW_ft_station_datum"])
            ) * M_PER_FT
            assert summary.mean_higher_high_m == pytest.approx(published, abs=0.04)
            assert summary.mean_lower_low_m == pytest.approx(0.0, abs=0.04)
            top = float(row["highest_1983_2001_above_MSL_ft_computed"]) * M_PER_FT
            assert summary.highest_m == pytest.approx(
                top + mean_above_mllw(row["station"]), abs=0.004
            )


def test_the_sample_stations_show_every_type_of_tide() -> None:
    """A newcomer finds a published place like their own; the files say the type they are of."""
    found = set()
    ranges_m = []
    for path in sample_sites().glob("*.toml"):
        site = load_site(path)
        summary = summarise(Tide(site))
        if site.invented or summary is None:
            continue
        found.add(summary.tide_type.split(":")[0])
        ranges_m.append(summary.mean_range_m)
        said = re.search(r"Tide type: (.*) \(form number ([\d.]+)\)", path.read_text("utf-8"))
        if said:
            assert said[1] == summary.tide_type.split(":")[0], path.name
            assert float(said[2]) == pytest.approx(summary.form_number, abs=0.006), path.name
    assert found == {"semidiurnal", "mixed, mainly semidiurnal", "mixed, mainly diurnal", "diurnal"}
    assert min(ranges_m) < 0.3
    assert max(ranges_m) > 5


@pytest.mark.parametrize(
    ("triples", "form", "kind"),
    [
        ((("M2", 1.0, 0.0), ("S2", 0.3, 40.0), ("K1", 0.1, 0.0), ("O1", 0.1, 0.0)), 0.154, "semi"),
        ((("M2", 0.5, 0.0), ("S2", 0.1, 40.0), ("K1", 0.4, 0.0), ("O1", 0.2, 0.0)), 1.0, "mixed"),
        ((("M2", 0.2, 0.0), ("S2", 0.1, 40.0), ("K1", 0.4, 0.0), ("O1", 0.2, 0.0)), 2.0, "mixed"),
        ((("M2", 0.05, 0.0), ("K1", 0.4, 0.0), ("O1", 0.3, 0.0)), 14.0, "diurnal"),
        ((("K1", 0.4, 0.0), ("O1", 0.3, 0.0)), np.inf, "diurnal"),
        ((("SA", 0.1, 0.0),), np.nan, "no daily tide"),
    ],
)
def test_the_kind_of_tide_in_words(
    triples: tuple[tuple[str, float, float], ...], form: float, kind: str
) -> None:
    """Form number (K1 + O1) / (M2 + S2) and Courtier's bounds."""
    summary = summarise(Tide(place(tuple(HarmonicConstant(*each) for each in triples))))
    assert summary is not None
    assert summary.form_number == pytest.approx(form, abs=0.01, nan_ok=True)
    assert summary.tide_type.startswith(kind)
    assert ("form number" in type_text(summary)) == np.isfinite(form)


def test_springs_and_neaps_of_two_constituents() -> None:
    """M2 and S2 alone: springs 2 (M2 + S2), neaps 2 (M2 - S2), f of M2 being 1 on average."""
    pair = place((HarmonicConstant("M2", 1.0, 0.0), HarmonicConstant("S2", 0.4, 0.0)))
    summary = summarise(Tide(pair))
    assert summary is not None
    assert summary.springs_range_m == pytest.approx(2.8, abs=0.05)
    assert summary.neaps_range_m == pytest.approx(1.2, abs=0.12)


def test_a_place_by_offsets_is_summarised_too() -> None:
    """Form number of the reference, ranges of its own turns."""
    reference = _station("8443970")
    whole = check_water(reference).summary
    half = check_water(offset_place(reference, high_factor=0.5, low_factor=0.5)).summary
    assert whole is not None
    assert half is not None
    assert half.form_number == whole.form_number
    assert half.mean_range_m == pytest.approx(whole.mean_range_m / 2, rel=1e-3)


def test_still_water_has_no_summary() -> None:
    """No turn, no range: None rather than numbers made of nothing."""
    check = check_water(place((HarmonicConstant("M2", 0.0, 0.0),)))
    assert check.summary is None
    assert check.comparison is None


def test_observed_turns_are_read_in_local_time_and_feet(tmp_path: Path) -> None:
    """Local clock, offsets, empty heights, either spelling of the kind, any order."""
    path = tmp_path / "seen.csv"
    path.write_text(
        "time,height,kind\n2026-07-04T06:12,9.5,high\n2026-07-04T16:20Z,,L\n"
        "2026-07-03T18:00-04:00,10,H\n",
        encoding="utf-8",
    )
    seen = read_observed_turns(path, ZoneInfo(NEW_YORK), "ft")
    assert [str(time)[:16] for time in seen.times] == [
        "2026-07-03T22:00", "2026-07-04T10:12", "2026-07-04T16:20",
    ]  # fmt: skip
    assert seen.heights_m[:2] == pytest.approx([3.048, 9.5 * M_PER_FT])
    assert np.isnan(seen.heights_m[2])
    assert seen.is_high.tolist() == [True, True, False]


def test_every_bad_line_of_observed_turns_is_named(tmp_path: Path) -> None:
    """All at once, by line and column; nothing half taken."""
    path = tmp_path / "seen.csv"
    path.write_text(
        "time,height,kind\nyesterday,1,high\n2026-07-04T06:12,tall,high\n"
        "2026-07-04T06:12,nan,high\n2026-07-04T06:12,1,slack\n2026-07-04T06:12\n",
        encoding="utf-8",
    )
    with pytest.raises(InputError) as caught:
        read_observed_turns(path, ZoneInfo("UTC"), "m")
    places = [problem.where for problem in caught.value.problems]
    assert places == [
        "line 2, time", "line 3, height", "line 4, height", "line 5, kind", "line 6, kind",
    ]  # fmt: skip


@pytest.mark.parametrize("text", ["", "when,how high\n1,2\n", "\x00\x01"])
def test_a_file_that_is_no_list_of_turns_is_refused(tmp_path: Path, text: str) -> None:
    """One message that says what the first line should be."""
    path = tmp_path / "seen.csv"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(InputError, match="time,height,kind"):
        read_observed_turns(path, ZoneInfo("UTC"), "m")
    with pytest.raises(InputError, match="cannot be read"):
        read_observed_turns(tmp_path / "none.csv", ZoneInfo("UTC"), "m")
