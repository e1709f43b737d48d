"""What single crabs add to the counts: grades, shells and weight for width."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import stats
from scipy.special import betaln
from test_molt_calibration import AHEAD_D, PriorWorlds, span_after

from planner.assets import demo_place
from planner.logbook import TripOutcome
from planner.logbook.entries import Crab
from planner.molt.curves import share
from planner.molt.forecasting import forecast_learned
from planner.molt.learning import learn_outcomes
from planner.molt.profile import SignDraws, signs_of
from planner.molt.signs import (
    NO_SIGNS,
    TripSigns,
    beta_binomial,
    signs_by_trip,
    signs_log_likelihood,
)
from planner.molt.unknowns import unknowns
from planner.sites import load_site

SITE = load_site(demo_place())
LAST = date(2026, 7, 20)
SIZE = 25.0


def trip(crabs, *, day=LAST, judged=None, light=None):
    when = datetime(day.year, day.month, day.day, 16, tzinfo=UTC)
    return TripOutcome(str(day), SITE.name, when, 9, judged, judged, light, None, crabs=crabs)


def tomorrow(*outcomes):
    """Return the light share forecast for the day after the last trip."""
    learned = learn_outcomes(SITE, outcomes)
    found = forecast_learned(learned, span_after(SITE, LAST, 1), np.zeros(1))
    return float(found.light_share.mean[0])


def grades(light, filling, full):
    return tuple(
        Crab(grade=grade)
        for grade, count in (("light", light), ("filling", filling), ("full", full))
        for _ in range(count)
    )


def weighed(count, condition, seed=0):
    """Return males whose weight is so many times the usual one for their width."""
    rng = np.random.default_rng(seed)
    widths = rng.uniform(120, 160, count)
    weights = condition * 2e-4 * widths**2.75 * np.exp(rng.normal(0, 0.05, count))
    return tuple(
        Crab(sex="male", width_mm=float(width), weight_g=float(weight))
        for width, weight in zip(widths, weights, strict=True)
    )


@given(
    light=st.integers(0, 12),
    filling=st.integers(0, 12),
    full=st.integers(0, 12),
    log_odds=st.floats(-4, 2),
    cut=st.floats(0.1, 3),
)
def test_counts_and_grades_are_dirichlet_multinomial(light, filling, full, log_odds, cut):
    """The split of the crabs that were not light, times the counts, is the whole likelihood.

    Against scipy's distribution of the three grades, up to the count of orders.
    """
    signs = TripSigns(filling=filling, graded=filling + full)
    chosen = SignDraws(np.array([cut]), np.zeros(1), 0.12, 0.2, 0.03)
    ours = signs_log_likelihood(
        signs, np.array([[log_odds]]), chosen, np.zeros(1), alike_size=SIZE, judged=True
    )
    p, q = share(np.array([log_odds, log_odds + cut]))
    counts = stats.betabinom.logpmf(light, light + filling + full, SIZE * p, SIZE * (1 - p))
    whole = stats.dirichlet_multinomial.logpmf(
        [light, filling, full], SIZE * np.array([p, q - p, 1 - q]), light + filling + full
    )
    orders = np.log(stats.binom(filling + full, 0.5).pmf(filling)) + (filling + full) * np.log(2)
    assert counts + ours[0, 0] + orders == pytest.approx(whole, abs=1e-6)


def test_more_crabs_still_filling_mean_more_light_ones_tomorrow():
    """Of crabs that were not light, the more are still filling, the nearer is the molt behind."""
    found = [
        tomorrow(trip(grades(2, filling, 18 - filling), judged=20, light=2))
        for filling in (0, 6, 12, 18)
    ]
    assert found == sorted(found)
    assert found[-1] > found[0] + 0.02


def test_new_shells_speak_without_a_count_of_light_crabs():
    """A trapper who only looks at shells is heard, too."""
    hard, new = (tomorrow(trip((Crab(shell=shell),) * 15)) for shell in ("hard", "papershell"))
    assert hard < tomorrow() < new


def test_light_weights_raise_and_nine_crabs_say_nothing():
    """Means of ten and more only, as single crabs differ too much (reference, section 4)."""
    before = trip(weighed(40, 1.0, 1), day=LAST - timedelta(days=40))
    heavy, thin = (tomorrow(before, trip(weighed(40, each, 2))) for each in (1.05, 0.85))
    assert thin > heavy
    assert signs_by_trip([before, trip(weighed(10, 0.85))])[1].weighed == 10
    assert signs_by_trip([before, trip(weighed(9, 0.85))])[1] == NO_SIGNS


def test_weight_and_shells_by_hand_and_half_where_crabs_were_judged():
    """Twenty crabs 3% too thin, and one new shell of one: what half light says against a quarter.

    Half light is 0.12 (1/2 - 1/4) = 3% lighter than usual, just as seen; a quarter is as usual,
    0.03^2 / (2 (0.2^2 / 20 + 0.03^2)) less likely. A new shell is as likely as a light crab here.
    Crabs that were judged too say it all once already, so the rest counts half.
    """
    signs = TripSigns(new_shells=1, shells=1, condition=-0.03, weighed=20)
    chosen = SignDraws(np.ones(1), np.zeros(1), 0.12, 0.2, 0.03)
    half, quarter = 0.0, -np.log(3)
    by_weight, by_shell = 0.0009 / 0.0058, np.log(2)
    for judged, part in ((False, 1.0), (True, 0.5)):
        found = signs_log_likelihood(
            signs,
            np.array([[half, quarter]]),
            chosen,
            np.array([0.25]),
            alike_size=SIZE,
            judged=judged,
        )
        assert found[0, 0] - found[0, 1] == pytest.approx(part * (by_weight + by_shell))


def test_signs_without_a_word_leave_everything_as_it_was():
    """Crabs of which only size is known change no forecast, and mature females none either."""
    counted = trip((), judged=20, light=3)
    silent = (Crab(sex="male", width_mm=140.0), Crab(sex="mature female", shell="papershell"))
    assert tomorrow(replace(counted, crabs=silent)) == tomorrow(counted)


@settings(max_examples=10, deadline=None)
@given(st.permutations(range(24)))
def test_the_order_of_crabs_changes_nothing(order):
    """The same crabs written down in any order say the same to the last digit."""
    crabs = (*grades(2, 5, 5), *weighed(12, 0.9))
    one = signs_by_trip([trip(crabs), trip(weighed(12, 1.1, 3))])
    other = signs_by_trip([trip(tuple(crabs[i] for i in order)), trip(weighed(12, 1.1, 3))])
    assert one == other


@pytest.mark.slow
def test_intervals_hold_with_grades_and_shells():
    """Logs from the prior whose crabs are graded and their shells looked at, 300 of them.

    The 80% interval must still hold 75-85% of the true shares of days 1 to 14 after the last
    trip. The five days of a log hang together, so that 300 logs' figure has a standard error of
    1.7 points, which is allowed for twice.
    """
    worlds, rng = PriorWorlds(SITE, seed=5), np.random.default_rng(5)
    held = []
    for replicate in range(300):
        outcomes, true, ahead, last = worlds.draw(int(rng.integers(4, 30)))
        chosen = signs_of(SITE.species, unknowns(1, rng))
        cut, shift = chosen.filling_cut[0], chosen.new_shell_shift[0]
        with_crabs = []
        for outcome, light in zip(outcomes, true["light"], strict=True):
            odds = np.log(light / (1 - light))
            p, q, new = share(np.array([odds, odds + cut, odds + shift]))
            three = rng.dirichlet(SIZE * np.array([p, q - p, 1 - q]))
            count = rng.multinomial(outcome.judged, three)
            shells = rng.binomial(12, rng.beta(SIZE * new, SIZE * (1 - new)))
            crabs = (
                *grades(*count),
                *((Crab(shell="papershell"),) * shells),
                *((Crab(shell="hard"),) * (12 - shells)),
            )
            with_crabs.append(replace(outcome, light=int(count[0]), crabs=crabs))
        learned = learn_outcomes(SITE, tuple(with_crabs))
        found = forecast_learned(learned, span_after(SITE, last, 14), np.zeros(14), replicate)
        at = np.array(AHEAD_D) - 1
        held.append((found.light_share.low[at] <= ahead) & (ahead <= found.light_share.high[at]))
    assert abs(np.mean(held) - 0.80) <= 0.05 + 2 * 0.017


@pytest.mark.parametrize(("hits", "misses"), [(0, 0), (0, 3), (7, 0), (12, 90), (300, 150)])
def test_the_urn_is_the_beta_binomial(hits, misses):
    """Factor by factor it is what gamma functions make of it, for any count and few hits too."""
    alpha, beta = np.array([0.01, 0.7, 12.0]), np.array([24.99, 24.3, 13.0])
    expected = betaln(alpha + hits, beta + misses) - betaln(alpha, beta)
    np.testing.assert_allclose(beta_binomial(hits, misses, alpha, beta), expected, rtol=1e-9)


def test_what_cannot_be_is_unlikely_and_no_error():
    """Shares that round to nothing give a number: a hit far less likely than a miss."""
    nothing = np.array([0.0])
    assert beta_binomial(1, 0, nothing, np.array([25.0]))[0] < -20
    assert np.isfinite(beta_binomial(2, 3, nothing, nothing)).all()
