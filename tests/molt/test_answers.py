"""How light share and fullness answer to the moon: closed forms against the model's own run."""

from __future__ import annotations

import numpy as np
import pytest
from molt_settings import LUNATION_D, fixed
from test_molt_dynamics import caught

from planner.molt.dynamics import fresh_clocks, light_window, refill_clock, run_clocks
from planner.molt.temperature import usual_water
from planner.molt.year import (
    ANSWER_DAYS,
    DAYS,
    Settled,
    ages_caught_light,
    moon_answers,
    usual_year,
)

W = 2 * np.pi / LUNATION_D
DAY = np.arange(4 * 365)
WARM = np.full((1, DAY.size), 25.0)
SETTLED = (DAY >= 700) & (DAY < 700 + 25 * LUNATION_D)


def wave(values):
    """Complex amplitude of the lunar wave: its angle is minus the lag behind the moon."""
    settled = values[0, SETTLED]
    return 2 * np.mean((settled - settled.mean()) * np.exp(-1j * W * DAY[SETTLED]))


@pytest.mark.parametrize("refill_d", [8.0, 10.0, 20.0])
@pytest.mark.parametrize("kappa", [0.1, 0.5, 1.0])
def test_answers_are_those_of_the_chain(refill_d, kappa):
    """The learner's closed forms against a run of the whole chain in steady warm water.

    Lags to 0.6 days and sizes to an eighth, up to a moon of strength 1 (43% of molts in the best
    week): what is left are the steps of a day and what is not linear.
    """
    parameters = fixed(refill_d=refill_d)
    factor = np.exp(kappa * np.cos(W * DAY))[None] / np.i0(kappa)
    molts, _ = run_clocks(parameters, WARM, factor, fresh_clocks(parameters))
    fullness, light = caught(parameters, molts, WARM)
    light, deficit = np.clip(light, 1e-6, 1), np.clip(1 - fullness, 1e-6, 1)

    calm, _ = run_clocks(parameters, WARM, np.ones(WARM.shape), fresh_clocks(parameters))
    _, calm_light = caught(parameters, calm, WARM)
    refill = refill_clock(parameters, WARM)
    ages = ages_caught_light(light_window(parameters, refill), slice(None))
    deficit_d = np.full(WARM.shape, refill_d)
    on_light, on_deficit = moon_answers(
        parameters, Settled(WARM, calm, calm_light, deficit_d), ages
    )
    late = 1000 // ANSWER_DAYS
    for ours, seen in (
        (on_light[0, late, 0], wave(np.log(light / (1 - light))) / kappa),
        (on_deficit[0, late, 0], wave(np.log(deficit)) / kappa),
    ):
        assert abs(np.angle(ours / seen)) / W < 0.6
        assert abs(ours) == pytest.approx(abs(seen), rel=0.12)


def test_a_faster_moon_is_answered_less():
    """Averaging over days of molting flattens the second harmonic more than the first."""
    year = usual_year("blue-crab", usual_water([20.0] * 12, 30.0), draws=64)
    once, twice = np.abs(year.moon_on_deficit[..., 0]), np.abs(year.moon_on_deficit[..., 1])
    assert (twice.mean(axis=1) < once.mean(axis=1)).mean() > 0.95


def test_the_year_joins_at_its_ends():
    """New Year is a day like any other: the settled year has no step there."""
    monthly = (4, 4, 7, 12.6, 18.3, 23.5, 26.5, 26.5, 23.5, 18.4, 12.6, 6)
    year = usual_year("blue-crab", usual_water(monthly, 38.0), draws=64)
    assert year.log_odds.shape == (64, DAYS)
    deficit = np.exp(year.log_deficit)
    assert np.abs(deficit[:, 0] - deficit[:, -1]).max() < 0.02
