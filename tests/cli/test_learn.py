"""What the model learned from the log comes out whole: figures, words, and what is not known."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import numpy as np
import pytest

from planner import molt
from planner.assets import demo_log
from planner.estimates import Band, Interval
from planner.molt.evidence_types import Curve, Effect, Evidence, PastForecast, Record

LEARN = f"learn sedge-hollow --log {demo_log()}"
NOTHING = np.empty(0)
CURVE = Curve(NOTHING, Band(NOTHING, NOTHING, NOTHING))
RECORD = Record(
    (PastForecast("t2", date(2026, 6, 1), Interval(0.2, 0.1, 0.3), 20, 5),),
    (),
    *(0.15, 0.16, 0.17, 0.45, 0.46, 0.48),
)
MOON = Effect(
    "moon", Interval(0.08, 0.02, 0.14), np.array([0.02, 0.05, 0.11, 0.14]), 34, 611, 0.1, 8.81
)
MADE = Evidence((MOON,), CURVE, CURVE, RECORD, 34, 611)


@pytest.fixture
def learned(monkeypatch):
    """Put made evidence in the place of what the model learns."""

    def put(evidence):
        monkeypatch.setattr(molt, "evidence", lambda site, log: evidence, raising=False)

    put(MADE)
    return put


def test_figures_are_the_models(run, learned):
    """The swing, its interval, the chance that it matters and the scores change nowhere."""
    data = run(f"{LEARN} --format json").data
    moon = {"swing": 0.08, "low": 0.02, "high": 0.14, "p_matters": 0.5}
    assert data["effects"]["moon"] == moon
    assert data["record"] == {
        "n": 1,
        "brier": 0.15,
        "brier_season_only": 0.16,
        "brier_running_mean": 0.17,
        "log_score": 0.45,
        "log_score_season_only": 0.46,
        "log_score_running_mean": 0.48,
    }
    assert data["to_settle"] == {"moon_trips": 41}


def test_what_is_worth_caring_about_is_the_users_choice(run, learned):
    """A smaller difference is likelier to be there."""
    data = run(f"{LEARN} --format json --worth 5").data
    assert data["effects"]["moon"]["p_matters"] == 0.75


def test_what_is_not_known_is_null(run, learned):
    """An effect not estimated or a score not possible is null: 0 would be a finding."""
    none = replace(RECORD, trips=(), brier=np.nan, log_score=np.nan)
    learned(replace(MADE, effects=(), record=none))
    data = run(f"{LEARN} --format json").data
    assert set(data["effects"]["moon"].values()) == {None}
    assert data["record"]["brier"] is None
    assert data["to_settle"]["moon_trips"] is None


def test_words(run, learned):
    """The trapper reads that the log cannot tell yet, on how much that rests, what would settle."""
    out = run(LEARN).out
    assert "Moon: your log cannot tell yet" in out
    assert "34 trips and 611 judged crabs" in out
    assert "After about 40 more trips, spread over the whole moon, it is as likely as not" in out
    assert "the season alone" in out


@pytest.mark.parametrize("points", ["0", "101", "few", "-5"])
def test_points_that_are_none_are_refused(run, points):
    """Status 2 for a difference that cannot be."""
    ran = run(f"{LEARN} --worth {points}")
    assert (ran.status, ran.out) == (2, "")
    assert "--worth" in ran.err
