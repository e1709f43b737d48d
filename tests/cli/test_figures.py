"""What the command line prints is what the rooms computed: no number changes on the way out."""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime

import numpy as np
import pytest

from planner.assets import demo_log, demo_place
from planner.sites import load_site
from planner.tides import Tide

DAY = "--from 2026-08-14 --to 2026-08-15"


def test_heights_are_the_tides(run):
    """Protects times against an hour's slip and heights against rounding beyond 0.1 mm."""
    data = run(f"water sedge-hollow {DAY} --every 6m --format json").data
    assert data["times"][0] == "2026-08-14T04:00:00Z"  # midnight in New York in summer
    assert data["times"][-1] == "2026-08-15T04:00:00Z"  # --to is included
    assert len(data["times"]) == 241
    times = np.array([time.rstrip("Z") for time in data["times"]], dtype="datetime64[ms]")
    expected = Tide(load_site(demo_place())).heights(times)
    np.testing.assert_allclose(data["heights"], expected, atol=0.6e-4)


def test_an_instant_with_an_offset_is_that_instant(run):
    """An offset given by the user stands, whatever the place's own clock."""
    words = "water sedge-hollow --from 2026-08-14T04:00Z --to 2026-08-15T00:00-04:00"
    assert run(f"{words} --format json").out == run(f"water sedge-hollow {DAY} --format json").out


def test_turns_are_the_tides(run):
    """Protects kinds, times to the second and heights of high and low waters."""
    data = run(f"water sedge-hollow {DAY} --turns --format json").data
    start, stop = (datetime(2026, 8, day, 4, tzinfo=UTC) for day in (14, 15))
    turns = Tide(load_site(demo_place())).turns(start, stop)
    assert [turn["kind"] == "high" for turn in data["turns"]] == turns.is_high.tolist()
    np.testing.assert_allclose(
        [turn["height"] for turn in data["turns"]], turns.heights, atol=0.6e-4
    )
    times = np.array([turn["time"].rstrip("Z") for turn in data["turns"]], dtype="datetime64[ms]")
    assert np.abs(times - turns.times).max() <= np.timedelta64(500, "ms")


def test_feet(run):
    """A foot is 0.3048 m exactly; the answer says its unit."""
    metres = run(f"water sedge-hollow {DAY} --format json").data
    feet = run(f"water sedge-hollow {DAY} --format json --units ft").data
    assert (metres["units"], feet["units"]) == ("m", "ft")
    np.testing.assert_allclose(np.array(feet["heights"]) * 0.3048, metres["heights"], atol=1e-4)
    assert " ft" in run(f"water sedge-hollow {DAY} --units ft").out


def test_text_follows_the_place_file_and_programs_get_metres(run, tmp_path):
    """A place written in feet is read in feet; JSON does not change with how a file is written."""
    text = demo_place().read_text(encoding="utf-8").replace('units = "m"', 'units = "ft"')
    text = text.replace("trap_height = 0.35", "trap_height = 1.15")
    path = tmp_path / "feet.toml"
    path.write_text(text, encoding="utf-8")
    assert run(f"water {DAY}", str(path)).out.count(" ft") == 25
    assert run(f"water {DAY} --format json", str(path)).data["units"] == "m"


@pytest.mark.parametrize("log", ["", f"--log {demo_log()}"], ids=["prior", "log"])
def test_the_parts_of_why_add_up(run, log):
    """season + moon + runs + place = light share less the year's average, on every day."""
    words = f"dates sedge-hollow --from 2026-05-01 --to 2026-06-30 --format json {log}"
    data = run(words).data
    assert len(data["days"]) == 61
    for day in data["days"]:
        moved = day["light_share"]["mean"] - data["yearly_light_share"]
        assert sum(day["why"].values()) == pytest.approx(moved, abs=4e-6)
        for what in ("fullness", "light_share"):
            ends = day[what]
            assert 0 <= ends["low"] <= ends["mean"] <= ends["high"] <= 1


def test_plans_keep_to_the_days_asked_for(run):
    """Ranks count from 1, the best first, and nothing happens before it is set."""
    words = "plans sedge-hollow --from 2026-08-14 --to 2026-08-30 --most 3 --format json"
    plans = run(words).data["plans"]
    assert [plan["rank"] for plan in plans] == [1, 2, 3]
    for plan in plans:
        assert "2026-08-14T04:00:00Z" <= plan["set"] < plan["haul"] <= "2026-08-31T04:00:00Z"
        begin, end = (datetime.fromisoformat(plan[name]) for name in ("set", "haul"))
        assert (end - begin).total_seconds() / 3600 == pytest.approx(plan["soak_h"])


COMMANDS = [
    f"water sedge-hollow {DAY}",
    f"water sedge-hollow {DAY} --turns",
    f"sky sedge-hollow {DAY}",
    f"dates sedge-hollow {DAY}",
    "plans sedge-hollow --from 2026-08-14 --to 2026-08-17",
    f"learn sedge-hollow --log {demo_log()}",
    f"trials --log {demo_log()}",
    "check sedge-hollow",
]


@pytest.mark.parametrize("words", COMMANDS, ids=lambda words: " ".join(words.split()[:2]))
def test_csv_is_a_table(run, words):
    """Every row has as many cells as the header, which names its columns once each."""
    ran = run(f"{words} --format csv")
    assert ran.status == 0
    header, *rows = csv.reader(io.StringIO(ran.out))
    assert rows
    assert len(set(header)) == len(header)
    assert {len(row) for row in rows} == {len(header)}


def test_csv_holds_the_same_numbers_as_json(run):
    """Two roads to one figure."""
    words = f"dates sedge-hollow {DAY} --format"
    day = run(f"{words} json").data["days"][0]
    row = next(csv.DictReader(io.StringIO(run(f"{words} csv").out)))
    assert float(row["light_share_high"]) == day["light_share"]["high"]
    assert float(row["moon"]) == day["why"]["moon"]


def test_observed_waters(run, tmp_path):
    """High and low waters seen 20 cm too high and 10 minutes late come out as just that."""
    start, stop = (datetime(2026, 8, day, tzinfo=UTC) for day in (1, 15))
    turns = Tide(load_site(demo_place())).turns(start, stop)
    late = turns.times + np.timedelta64(10, "m")
    lines = [
        f"{time}Z,{height + 0.2:.4f},{'high' if high else 'low'}"
        for time, height, high in zip(late, turns.heights, turns.is_high, strict=True)
    ]
    path = tmp_path / "seen.csv"
    path.write_text("\n".join(["time,height,kind", *lines]), encoding="utf-8")
    observed = run(f"check sedge-hollow --format json --observed {path}").data["observed"]
    assert observed["matched"] == observed["seen"] == len(lines)
    assert observed["height_bias_m"] == pytest.approx(0.2, abs=1e-3)
    assert observed["time_bias_min"] == pytest.approx(10, abs=0.1)
    assert observed["height_scatter_m"] == pytest.approx(0, abs=1e-3)
    assert "+20 cm on average" in run(f"check sedge-hollow --observed {path}").out


def test_observed_levels(run, tmp_path):
    """Levels without a kind are compared at their instants, gaps left out."""
    times, levels = Tide(load_site(demo_place())).series(
        datetime(2026, 8, 1, tzinfo=UTC), datetime(2026, 8, 2, tzinfo=UTC), np.timedelta64(1, "h")
    )
    lines = [f"{time}Z,{level - 0.1:.4f}" for time, level in zip(times, levels, strict=True)]
    path = tmp_path / "levels.csv"
    path.write_text("\n".join(["time,height", *lines, "2026-08-03T00:00Z,"]), encoding="utf-8")
    observed = run(f"check sedge-hollow --format json --observed {path}").data["observed"]
    assert observed["seen"] == 24
    assert observed["height_bias_m"] == pytest.approx(-0.1, abs=1e-3)


def test_constants_are_fitted_to_levels_with_intervals(run, tmp_path):
    """Protects unit and clock of a fit, and that it says how well each constant is known."""
    site = load_site(demo_place())
    start = np.datetime64("2026-03-01", "ms")
    hour = np.timedelta64(1, "h")
    times, levels = Tide(site).series(start, start + np.timedelta64(30, "D"), hour)
    record = tmp_path / "levels.csv"
    rows = [f"{t}Z,{h:.4f}" for t, h in zip(times.astype(str), levels, strict=True)]
    record.write_text("\n".join(["time,height", *rows]), "utf-8")
    fit = run(f"check sedge-hollow --observed {record} --fit --format json").data["fit"]
    m2 = next(each for each in fit["constituents"] if each["constituent"] == "M2")
    truth = next(each for each in site.water.constants if each.constituent == "M2")
    assert m2["amplitude_low_m"] < m2["amplitude_m"] < m2["amplitude_high_m"]
    assert abs(m2["amplitude_m"] - truth.amplitude_m) < 0.02
    assert abs(m2["lag_deg"] - truth.phase_lag_deg) < 5
    said = run(f"check sedge-hollow --observed {record} --fit").out
    assert "lags on UTC" in said
    assert " ± " in said
    refused = run("check sedge-hollow --fit")
    assert refused.status == 2
    assert "--fit needs --observed" in refused.err
