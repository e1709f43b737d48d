"""The count model against published results and against an independent library."""

from __future__ import annotations

import csv
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.optimize import minimize_scalar
from scipy.stats import norm

from planner.trials.mixed_model import Counts, Scales, find_mode, log_likelihood
from planner.trials.settling import detectable_ratio, hauls_for, needed_sd, variance_per_haul

Ints = NDArray[np.int64]
POWER_TABLE = Path(__file__).parents[1] / "reference" / "trials" / "power_table.csv"

# So wide that effects are free: estimates are then those of maximum likelihood.
FREE = 100.0
POISSON = 1e9

# Counts of insects on plots under six sprays, 12 plots each (Beall 1942, Biometrika 29; data
# set InsectSprays of R): typed from memory, confirmed by the published deviances below.
SPRAYS = {
    "A": [10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13],
    "B": [11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13],
    "C": [0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4],
    "D": [3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4],
    "E": [3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4],
    "F": [11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13],
}
# Breaks of warp per loom, nine looms for each wool (A, B) and tension (L, M, H) (Tippett 1950;
# data set warpbreaks of R): from memory, confirmed by the published deviances below.
WARP = {
    (0, 0): [26, 30, 54, 25, 70, 52, 51, 26, 67],
    (0, 1): [18, 21, 29, 17, 12, 18, 35, 30, 36],
    (0, 2): [36, 21, 24, 18, 10, 43, 28, 15, 26],
    (1, 0): [27, 14, 29, 19, 29, 31, 41, 20, 44],
    (1, 1): [42, 26, 19, 16, 39, 28, 21, 39, 29],
    (1, 2): [20, 21, 24, 17, 13, 15, 15, 16, 28],
}

# Days away from school of 146 children by group, sex, age and pace of learning (data set quine of
# R's MASS; results of Venables and Ripley 2002, Modern Applied Statistics with S, from memory).
QUINE = {
    "A F F0 AL": [5, 11, 24, 45],
    "A F F0 SL": [3],
    "A F F1 AL": [5, 5, 11, 17, 19],
    "A F F1 SL": [5, 6, 6, 9, 13, 23, 25, 32, 53, 54],
    "A F F2 AL": [2],
    "A F F2 SL": [8, 13, 14, 20, 47, 48, 60, 81],
    "A F F3 AL": [0, 2, 3, 5, 10, 14, 21, 36, 40],
    "A M F0 AL": [5, 5, 13, 20, 22],
    "A M F0 SL": [2, 11, 14],
    "A M F1 AL": [7, 14],
    "A M F1 SL": [6, 6, 15],
    "A M F2 AL": [14, 16, 16, 17, 40, 43, 46],
    "A M F2 SL": [6, 32, 53, 57],
    "A M F3 AL": [8, 23, 23, 28, 34, 36, 38],
    "N F F0 AL": [10, 11, 20, 33],
    "N F F0 SL": [25],
    "N F F1 AL": [5, 14, 6, 6, 7, 28],
    "N F F1 SL": [5, 7, 0, 1, 5, 5, 5, 5, 7, 11, 15],
    "N F F2 AL": [1],
    "N F F2 SL": [0, 5, 14, 2, 2, 3, 8, 10, 12],
    "N F F3 AL": [1, 9, 22, 3, 3, 5, 15, 18, 22, 37],
    "N M F0 AL": [0, 0, 2, 7, 11, 12],
    "N M F0 SL": [6, 17, 67],
    "N M F1 AL": [3, 4],
    "N M F1 SL": [0, 0, 5, 5, 5, 11, 17],
    "N M F2 AL": [8, 0, 1, 5, 7, 16, 27],
    "N M F2 SL": [22, 30, 36],
    "N M F3 AL": [0, 30, 10, 14, 27, 41, 69],
}


def data_of(counts: list[int], *factors: list[int]) -> Counts:
    """Return counts of one trip with the levels of free factors."""
    levels = tuple(max(factor) + 1 for factor in factors)
    arrays = tuple(np.array(factor) for factor in factors)
    trip = np.zeros(len(counts), dtype=np.int64)
    return Counts(np.array(counts, dtype=np.float64), arrays, levels, trip, 1)


def fitted(data: Counts, k: float) -> float:
    """Return the maximum of the log likelihood over the effects, for a size k."""
    scales = Scales((FREE,) * len(data.factors), 1e-4, k)
    return find_mode(data, np.zeros(data.counts.size), scales).log_likelihood


def best_k(data: Counts) -> float:
    """Return the size k of maximum likelihood."""
    found = minimize_scalar(
        lambda log_k: -fitted(data, float(np.exp(log_k))), bounds=(-2, 6), method="bounded"
    )
    return float(np.exp(found.x))


def deviance(data: Counts) -> float:
    """Return the Poisson deviance."""
    with np.errstate(divide="ignore"):
        saturated = np.where(data.counts > 0, np.log(data.counts), -40.0)
    return 2 * (log_likelihood(data, saturated, POISSON) - fitted(data, POISSON))


def sprays(*, by_spray: bool) -> Counts:
    """Return the insect counts."""
    counts = [count for row in SPRAYS.values() for count in row]
    return data_of(counts, [i // 12 for i in range(72)]) if by_spray else data_of(counts)


def warp() -> Counts:
    """Return the warp breaks by wool and tension."""
    counts = [count for row in WARP.values() for count in row]
    wool = [wool for (wool, _), row in WARP.items() for _ in row]
    tension = [tension for (_, tension), row in WARP.items() for _ in row]
    return data_of(counts, wool, tension)


def test_bliss_and_fisher_mites() -> None:
    """k of mites on apple leaves: 1.0246 with mean 1.1467 (Bliss and Fisher 1953, Biometrics 9)."""
    often = [70, 38, 17, 10, 9, 3, 2, 1]
    data = data_of([count for count, leaves in enumerate(often) for _ in range(leaves)])
    assert data.counts.mean() == pytest.approx(1.1467, abs=5e-5)
    assert best_k(data) == pytest.approx(1.0246, abs=5e-4)


def test_insect_sprays() -> None:
    """Deviances 409.04 and 98.33 (published GLM); k 28.1, log likelihood -180.11 (recomputed)."""
    assert deviance(sprays(by_spray=False)) == pytest.approx(409.04, abs=0.01)
    assert deviance(sprays(by_spray=True)) == pytest.approx(98.33, abs=0.01)
    k = best_k(sprays(by_spray=True))
    assert k == pytest.approx(28.1, abs=0.05)
    assert fitted(sprays(by_spray=True), k) == pytest.approx(-180.109, abs=2e-3)


def test_warp_breaks() -> None:
    """Deviances 297.37 of no effect, 210.39 of wool and tension, 182.31 of their combinations
    (published GLM); k 9.944 (published as 9.94)."""
    counts = [count for row in WARP.values() for count in row]
    assert deviance(data_of(counts)) == pytest.approx(297.37, abs=0.01)
    assert deviance(data_of(counts, [at // 9 for at in range(54)])) == pytest.approx(
        182.31, abs=0.01
    )
    assert deviance(warp()) == pytest.approx(210.392, abs=0.01)
    assert best_k(warp()) == pytest.approx(9.944, abs=5e-3)


def test_days_away_from_school() -> None:
    """Four factors at once: theta 1.275 and twice the log likelihood -1093.15 (MASS, as above)."""
    columns = [name.split() for name, days in QUINE.items() for _ in days]
    factors = [np.unique(column, return_inverse=True)[1] for column in zip(*columns, strict=True)]
    data = data_of(
        [count for days in QUINE.values() for count in days], *(f.tolist() for f in factors)
    )
    k = best_k(data)
    assert k == pytest.approx(1.275, abs=5e-4)
    assert 2 * fitted(data, k) == pytest.approx(-1093.15, abs=0.01)


def test_agrees_with_an_independent_regression() -> None:
    """With pooling off, effects and likelihood are those of statsmodels' negative binomial."""
    from statsmodels.discrete.discrete_model import NegativeBinomial

    rng = np.random.default_rng(11)
    group, spot = rng.integers(0, 3, 240), rng.integers(0, 4, 240)
    mean = 2.5 * np.exp(np.array([0.0, 0.3, -0.2])[group] + np.array([0, 0.4, -0.3, 0.1])[spot])
    counts = rng.poisson(mean * rng.gamma(2.0, 0.5, 240))
    data = data_of(counts.tolist(), group.tolist(), spot.tolist())
    columns = [np.ones(240), group == 1, group == 2, spot == 1, spot == 2, spot == 3]
    theirs = NegativeBinomial(counts, np.column_stack(columns).astype(float)).fit(
        disp=False, maxiter=500, method="bfgs", gtol=1e-8
    )
    k = best_k(data)
    scales = Scales((FREE, FREE), 1e-4, k)
    mode = find_mode(data, np.zeros(240), scales)
    ours = mode.effects
    assert k == pytest.approx(1 / theirs.params[-1], rel=2e-3)
    assert mode.log_likelihood == pytest.approx(theirs.llf, abs=1e-3)
    assert ours[2] - ours[1] == pytest.approx(theirs.params[1], abs=2e-3)
    assert ours[3] - ours[1] == pytest.approx(theirs.params[2], abs=2e-3)


def test_the_comparison_agrees_with_a_regression_of_the_demo_log() -> None:
    """Design, spot and trip as fixed terms in statsmodels: the same order, inside our interval.

    The regression pools nothing, so that the pooled contrasts must lie between its own and no
    difference, and near it, as a hundred hauls of each design leave little to pool.
    """
    from statsmodels.discrete.discrete_model import NegativeBinomial

    from planner.assets import demo_log
    from planner.logbook import book_zone, read_log
    from planner.trials import compare
    from planner.trials.grouping import observations

    hauls = read_log(demo_log(), book_zone).hauls
    seen = observations(hauls, "design", "keepers")
    terms = [seen.group, seen.blocks["spot"], seen.trip]
    columns = [np.ones(seen.counts.size)]
    columns += [index == at for index in terms for at in range(1, int(index.max()) + 1)]
    fit = NegativeBinomial(seen.counts, np.column_stack(columns).astype(float)).fit(
        disp=False, maxiter=1000, method="bfgs", gtol=1e-6
    )
    effects = dict(zip(seen.names, [0.0, *fit.params[1:3]], strict=True))
    errors = dict(zip(seen.names, [fit.bse[1], *fit.bse[1:3]], strict=True))
    for contrast in compare(hauls).contrasts:
        theirs = effects[contrast.better] - effects[contrast.other]
        ours = np.log(contrast.ratio)
        assert 0 < ours < theirs + 0.02
        assert theirs - ours < 1.5 * errors[contrast.other]
        assert np.log(contrast.low) < theirs < np.log(contrast.high) + 0.05


def test_trips_by_blocks_equal_trips_as_a_factor() -> None:
    """Eliminating trips by blocks gives the mode, likelihood and variances of the full matrix."""
    rng = np.random.default_rng(3)
    group, trip = rng.integers(0, 3, 90), np.sort(rng.integers(0, 7, 90))
    counts = rng.poisson(3.0, 90).astype(np.float64)
    blocked = Counts(counts, (group,), (3,), trip, 7)
    full = Counts(counts, (group, trip), (3, 7), np.zeros(90, dtype=np.int64), 1)
    one = find_mode(blocked, np.zeros(90), Scales((0.4,), 0.5, 2.0))
    # The lone trip of the second is held to nothing by a tiny spread of its own.
    two = find_mode(full, np.zeros(90), Scales((0.4, 0.5), 1e-6, 2.0))
    assert one.effects == pytest.approx(two.effects[:4], abs=1e-6)
    assert one.trip_effects == pytest.approx(two.effects[4:], abs=1e-6)
    assert one.log_marginal == pytest.approx(two.log_marginal, abs=1e-5)
    weights, trips = np.array([[0, 1.0, -1.0, 0]]), np.zeros((1, 7))
    wide = np.concatenate([weights, np.zeros((1, 7))], axis=1)
    variance = two.covariance(wide, np.zeros((1, 1)))
    assert one.covariance(weights, trips) == pytest.approx(variance, rel=1e-5)


def test_laplace_agrees_with_quadrature() -> None:
    """The marginal likelihood of one trip effect is that of numerical integration."""
    from scipy.integrate import quad

    data = Counts(np.array([2.0, 0, 5, 3]), (), (), np.zeros(4, dtype=np.int64), 1)
    scales = Scales((), 0.5, 2.0)
    mode = find_mode(data, np.zeros(4), scales)

    def density(level: float) -> float:
        # Intercept and trip only ever act together: one normal with both variances.
        prior = norm.logpdf(level, scale=np.hypot(3.0, 0.5))
        return float(np.exp(log_likelihood(data, np.full(4, level), 2.0) + prior))

    exact = np.log(quad(density, -8, 8)[0])
    assert mode.log_marginal == pytest.approx(exact, abs=0.02)


def test_sample_sizes_are_those_of_the_power_table() -> None:
    """The hauls that give 80% power lie where the table passes through 80%."""
    with POWER_TABLE.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    assert len(rows) > 50
    for row in rows:
        ratio, k = float(row["rate_ratio"]), float(row["nb_k"])
        mean, n = float(row["mean_catch_control"]), float(row["trapsets_per_type"])
        sd = np.sqrt(variance_per_haul(mean, ratio, k) / n)
        power = 100 * norm.cdf(np.log(ratio) / sd - norm.isf(0.025))
        # The other tail, and rounding to whole percents.
        assert power == pytest.approx(float(row["power_pct"]), abs=2.6)
        needed = hauls_for(ratio, mean, k)
        assert (needed <= n) == (power >= 80)
    assert detectable_ratio(needed_sd(1.5)) == pytest.approx(1.5)
