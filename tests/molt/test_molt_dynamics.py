"""The model's dynamics against closed forms, an independent simulation, and plain sense."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from molt_settings import LUNATION_D, fixed, rows

from planner.molt.dynamics import (
    catch_quality,
    fresh_clocks,
    light_window,
    refill_clock,
    run_clocks,
)
from planner.molt.profile import parameters_of
from planner.molt.temperature import from_monthly_means
from planner.molt.unknowns import unknowns

W = 2 * np.pi / LUNATION_D
DAYS = np.arange(4 * 365)
# Monthly water of the simulation, April to November as printed in sim_season.csv; the months
# between are below the growth threshold there.
MONTHLY_C = (4, 4, 7, 12.6, 18.3, 23.5, 26.5, 26.5, 23.5, 18.4, 12.6, 6)
SHARE = ((DAYS + 0.5) / 365) % 1
WATER_C = from_monthly_means(MONTHLY_C, SHARE)[None]
MONTH = (SHARE * 12).astype(int) + 1
SUMMER = (MONTH >= 6) & (MONTH <= 9) & (DAYS >= 2 * 365)


def wave(values, where):
    """Amplitude and day of the maximum of the lunar wave in daily values."""
    y = values[0, where]
    z = 2 * np.mean((y - y.mean()) * np.exp(1j * W * DAYS[where]))
    return abs(z), (np.angle(z) / W) % LUNATION_D


def run(parameters, water_c, factor):
    molts, _ = run_clocks(parameters, water_c, factor, fresh_clocks(parameters))
    return molts, *caught(parameters, molts, water_c)


def caught(parameters, molts, water_c):
    refill = refill_clock(parameters, water_c)
    return catch_quality(parameters, molts, refill, light_window(parameters, refill))


@pytest.mark.parametrize("refill_d", [5.0, 10.0, 20.0])
def test_lag_and_swing_of_fullness_follow_the_closed_form(refill_d):
    """A sinusoidal molt rate in steady water: the deficit's lag and amplitude are known exactly.

    Deficit D(t) = (1 - f0) * integral over a > d0 of m(t - a) exp(-a / tau): for
    m = rate (1 + A cos wt) it lags by d0 + atan(w tau) / w with amplitude
    (1 - f0) rate A exp(-d0 / tau) / sqrt(1 / tau^2 + w^2). With next to no refusal, for the
    share still refused would swing too, which the closed form leaves out.
    """
    refused_d = 0.05
    parameters = fixed(refill_d=refill_d, refused_d=refused_d)
    rate, amplitude = 1 / 60, 0.5
    water_c = np.full((1, DAYS.size), 25.0)
    molts = (rate * (1 + amplitude * np.cos(W * DAYS)))[None]
    fullness, _ = caught(parameters, molts, water_c)
    settled = (DAYS >= 400) & (DAYS < 400 + 30 * LUNATION_D)
    swing, fullest = wave(fullness, settled)
    lag = refused_d + np.arctan(W * refill_d) / W
    rho = 1 / refill_d
    exact = (1 - 0.523) * rate * amplitude * np.exp(-refused_d / refill_d) / np.hypot(rho, W)
    assert (fullest - lag) % LUNATION_D == pytest.approx(LUNATION_D / 2, abs=0.15)
    assert swing == pytest.approx(exact, rel=0.02)


@pytest.mark.parametrize(
    "row", [r for r in rows("sim_closed_form.csv") if r["harmonic"] == "1" and r["A"] == "0.5"]
)
def test_published_limits_of_the_closed_form(row):
    """sim_closed_form.csv: mean fullness, its swing and lag, with a constant hazard of 1/60.

    There a crab may molt again at once, which adds 1/60 to every rate of decay: worth 0.5 days
    of lag and a tenth of the swing at 20 days of refill. The mean agrees to a point.
    """
    refill_d = float(row["tau_d"])
    parameters = fixed(refill_d=refill_d)
    water_c = np.full((1, DAYS.size), 25.0)
    molts = ((1 + 0.5 * np.cos(W * DAYS)) / 60)[None]
    fullness, _ = caught(parameters, molts, water_c)
    settled = (DAYS >= 400) & (DAYS < 400 + 30 * LUNATION_D)
    swing, fullest = wave(fullness, settled)
    assert fullness[0, settled].mean() == pytest.approx(float(row["mean_fullness"]), abs=0.045)
    assert 200 * swing == pytest.approx(float(row["swing_pp_fullness"]), rel=0.2)
    assert fullest == pytest.approx(float(row["fullest_moon_age"]), abs=1.1)


@pytest.mark.parametrize(
    "row", [r for r in rows("sim_lunar.csv") if r["harmonic"] == "1" and float(r["kappa"]) > 0.3]
)
def test_moon_in_summer_agrees_with_simulated_crabs(row):
    """sim_lunar.csv, an independent simulation of crabs: each output keeps a lag of its own.

    The chain of degree-days and the ready crabs' hazard are ours, so: realised modulation to
    0.03, means to 2 points of 100, swings to a quarter, days after the molt peak to one day.
    """
    kappa = float(row["kappa"])
    factor = np.exp(kappa * np.cos(W * DAYS))[None]
    parameters = fixed(refill_d=float(row["tau25_d"]))
    molts, fullness, light = run(parameters, WATER_C, factor / factor.mean())
    molting, peak = wave(molts, SUMMER)
    full_swing, fullest = wave(fullness, SUMMER)
    light_swing, lightest = wave(light, SUMMER)
    peak_there = float(row["realised_peak_age"])
    if kappa <= 1:
        assert molting / molts[0, SUMMER].mean() == pytest.approx(
            float(row["realised_A"]), abs=0.03
        )
    assert fullness[0, SUMMER].mean() == pytest.approx(float(row["mean_fullness"]), abs=0.03)
    assert light[0, SUMMER].mean() == pytest.approx(float(row["p_light"]), abs=0.02)
    assert 200 * full_swing == pytest.approx(float(row["fullness_swing_pts"]), rel=0.25)
    assert 200 * light_swing == pytest.approx(float(row["p_light_swing_pp"]), rel=0.25)
    for ours, theirs in (
        (fullest - peak, float(row["fullest_moon_age"]) - peak_there),
        (lightest - peak, float(row["lightest_moon_age"]) - peak_there),
    ):
        apart = (ours - theirs + LUNATION_D / 2) % LUNATION_D - LUNATION_D / 2
        assert abs(apart) < 1.0


def test_season_agrees_with_simulated_crabs():
    """sim_season.csv: fullness to 2 points, light share to 3, molting to 0.005 a day.

    The spring run is where they differ most: the simulation lets crabs shed one by one from a
    threshold of their own.
    """
    molts, fullness, light = run(fixed(), WATER_C, np.ones(WATER_C.shape))
    for row in rows("sim_season.csv"):
        there = (int(row["month"]) == MONTH) & (DAYS >= 3 * 365)
        assert fullness[0, there].mean() == pytest.approx(float(row["mean_fullness"]), abs=0.02)
        assert light[0, there].mean() == pytest.approx(float(row["p_light"]), abs=0.03)
        assert molts[0, there].mean() == pytest.approx(
            float(row["molts_per_crab_per_day"]), abs=0.005
        )


def test_crabs_that_do_not_molt_are_full_whatever_the_moon():
    """A catch of round-apron females, who molt no more: no light crab, no moon, no season."""
    moon = np.exp(np.cos(W * DAYS))[None]
    molts, fullness, light = run(fixed(molting_share=0.0), WATER_C, moon)
    assert not molts.any()
    assert not light.any()
    np.testing.assert_array_equal(fullness, 1.0)


def test_crabs_are_kept_in_number():
    """What leaves the chain comes back to its start: the crabs in it always add up to one."""
    parameters = fixed()
    clocks = fresh_clocks(parameters)
    for _ in range(5):
        _, clocks = run_clocks(parameters, WATER_C[:, :100], np.ones((1, 100)), clocks)
        assert clocks.steps.sum() + clocks.ready.sum() == pytest.approx(1.0, abs=1e-12)


def test_time_between_molts_is_the_degree_days_asked_for():
    """In steady warm water the molt rate is one in degree-days / warmth plus the wait."""
    parameters = fixed(ready_per_day=0.2)
    water_c = np.full((1, 3000), 25.0)
    molts, _ = run_clocks(parameters, water_c, np.ones(water_c.shape), fresh_clocks(parameters))
    assert 1 / molts[0, -500:].mean() == pytest.approx(600 / 15 + 1 / 0.2, rel=0.02)


@given(cool=st.floats(12, 28), warmer=st.floats(0.5, 6))
def test_warmer_water_refills_sooner(cool, warmer):
    """Raising the temperature shortens refill: the refill clock runs faster, never slower."""
    parameters = fixed()
    slow = refill_clock(parameters, np.full((1, 30), cool))[0, -1]
    fast = refill_clock(parameters, np.full((1, 30), cool + warmer))[0, -1]
    assert fast > slow


@given(seed=st.integers(0, 2**32 - 1))
def test_outputs_stay_shares(seed):
    """Whatever the priors draw, fullness and light share lie between 0 and 1."""
    rng = np.random.default_rng(seed)
    parameters = parameters_of("blue-crab", unknowns(8, rng))
    water_c = np.repeat(WATER_C[:, :500], 8, axis=0)
    _, fullness, light = run(parameters, water_c, np.ones(water_c.shape))
    for share in (fullness, light):
        assert ((share >= 0) & (share <= 1)).all()


def test_monthly_means_are_kept():
    """The smooth curve through twelve means averages to each of them, within 0.2 degrees.

    Its fastest harmonic is left out; in water temperatures it holds next to nothing.
    """
    share = (np.arange(12 * 100) + 0.5) / 1200
    curve = from_monthly_means(MONTHLY_C, share).reshape(12, 100).mean(axis=1)
    np.testing.assert_allclose(curve, MONTHLY_C, atol=0.2)


def test_ten_degrees_colder_refill_takes_as_many_times_longer_as_q10_says():
    """Days on the refill clock: ten at 25 C are four at 15 C with a Q10 of 2.5."""
    warm, cool = (refill_clock(fixed(), np.full((1, 10), each))[0, -1] for each in (25.0, 15.0))
    assert (warm, cool) == pytest.approx((10.0, 4.0))
