"""Every job runs on every place that ships with the program."""

from __future__ import annotations

import pytest

from planner.assets import sample_sites

PLACES = sorted(path.stem for path in sample_sites().glob("*.toml"))
QUICK = [
    "water {} --from 2026-06-29 --to 2026-07-02",
    "water {} --from 2026-06-29 --to 2026-07-02 --turns",
    "sky {} --from 2026-06-29 --to 2026-07-02",
]
THOROUGH = [
    "dates {} --from 2026-06-29 --to 2026-07-02",
    "plans {} --from 2026-06-29 --to 2026-07-02",
    "check {}",
]


def _answers(run, words: str, place: str, *forms: str) -> None:
    for form in forms:
        ran = run(f"{words.format(place)} --format {form}")
        assert (ran.status, ran.err) == (0, "")
        assert "nan" not in ran.out.lower().split()


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("words", QUICK, ids=lambda words: words.split()[0])
def test_water_and_sky(run, place, words):
    """Water and sky of each place come out, whatever its kind of tide."""
    _answers(run, words, place, "text", "json")


@pytest.mark.slow
@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("words", THOROUGH, ids=lambda words: words.split()[0])
def test_dates_plans_and_checks(run, place, words):
    """Places without spots, ramp or temperatures still get dates, plans and checks."""
    _answers(run, words, place, "json")


def test_a_place_without_spots_has_plans(run):
    """The quick run's share of the thorough one: no cover is promised where there is no spot."""
    data = run("plans boston-ma --from 2026-06-29 --to 2026-07-02 --format json").data
    assert data["plans"]
    assert {plan["lowest_cover_m"] for plan in data["plans"]} == {None}
