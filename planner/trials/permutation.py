"""Do the groups differ at all? Permutation within trips.

Under "no difference" the labels of a trip's hauls could have been dealt in any order. Each
haul is reduced to how far it lies from what its trip, spot and soak lead to expect (fitted
without looking at the labels); the groups' sums of these are compared with what dealing the
labels anew within each trip gives. When labels were dealt by lot this is exact whatever the
counts' distribution; and what the spots explain cannot pass for the groups' merit.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.trials.grouping import Bools, Ints, Observations
from planner.trials.mixed_model import score
from planner.trials.scales import ScalePosterior, sample_trips
from planner.trials.trial import Test
from planner.words import say

PERMUTED: Final = say("permutation within trips")
LIMIT: Final = say("permutation within trips (large-sample limit)")
IMPOSSIBLE: Final = say("none: no trip had hauls of two groups to compare")
NOTHING_COUNTED: Final = say("none: every count is zero")

_MAX_DEALS: Final = 4999
# Random numbers drawn in all: bounds time and memory.
_MAX_NUMBERS: Final = 4_000_000
_AT_ONCE: Final = 400_000
# From here on the limiting chi-square is as good and takes no time.
_LARGE: Final = 4000


def test_groups(seen: Observations, judged: Bools, rng: np.random.Generator) -> Test:
    """Return the test of "the judged groups are alike"; judged: bool (groups,)."""
    rows = judged[seen.group]
    group = np.unique(seen.group[rows], return_inverse=True)[1]
    trip = np.unique(seen.trip[rows], return_inverse=True)[1]
    if np.unique([group, trip], axis=1).shape[1] == np.unique(trip).size:
        return Test(IMPOSSIBLE, None)
    if not seen.counts[rows].any():
        return Test(NOTHING_COUNTED, None)
    surprise = _surprise(seen, rng)[rows]
    sums, covariance = _within_trips(surprise, group, trip)
    inverse, rank = _inverse(covariance)
    if rank == 0:
        return Test(PERMUTED, 1.0)  # hauls all alike: so is every way to deal them
    observed = float(sums @ inverse @ sums)
    if surprise.size > _LARGE:
        from scipy.special import chdtrc

        return Test(LIMIT, max(float(chdtrc(rank, observed)), 1e-12))
    as_large = deals = 0
    wanted = min(_MAX_DEALS, max(999, _MAX_NUMBERS // surprise.size))
    members = np.eye(sums.size)[group]
    expected = _expected(surprise, group, trip)
    while deals < wanted:
        count = min(wanted - deals, max(1, _AT_ONCE // surprise.size))
        order = np.argsort(trip + rng.random((count, trip.size)), axis=1)
        dealt = surprise[order] @ members - expected
        distance = np.einsum("bg,gh,bh->b", dealt, inverse, dealt)
        as_large += int(np.count_nonzero(distance >= observed * (1 - 1e-9) - 1e-12))
        deals += count
    return Test(PERMUTED, (1 + as_large) / (1 + deals))


def _surprise(seen: Observations, rng: np.random.Generator) -> Floats:
    """Return how far each haul lies from what its blocks lead to expect, (n,)."""
    best = ScalePosterior(sample_trips(seen, rng), with_groups=False).best_point()
    problem = ScalePosterior(seen, with_groups=False)
    log_mean = problem.mode(best).log_mean
    return score(seen.counts, np.exp(log_mean), problem.hyper(best).scales.k)


def _expected(surprise: Floats, group: Ints, trip: Ints) -> Floats:
    """Return the mean of the groups' sums over all ways to deal the labels."""
    groups, trips = int(group.max()) + 1, int(trip.max()) + 1
    shape = np.bincount(trip * groups + group, minlength=trips * groups).reshape(trips, groups)
    means = np.bincount(trip, surprise) / np.bincount(trip)
    expected: Floats = means @ shape
    return expected


def _within_trips(surprise: Floats, group: Ints, trip: Ints) -> tuple[Floats, Floats]:
    """Return the groups' sums less their mean, and their covariance, over deals within trips."""
    groups, trips = int(group.max()) + 1, int(trip.max()) + 1
    sizes = np.bincount(trip).astype(np.float64)
    shape = np.bincount(trip * groups + group, minlength=trips * groups).reshape(trips, groups)
    means = np.bincount(trip, surprise) / sizes
    spread = np.bincount(trip, (surprise - means[trip]) ** 2)
    # Finite population: a trip of one haul cannot be dealt in two ways.
    variance = spread / np.maximum(sizes - 1, 1)
    sums = np.bincount(group, surprise, groups) - means @ shape
    covariance = np.diag(variance @ shape) - (shape * (variance / sizes)[:, None]).T @ shape
    return sums, covariance


def _inverse(covariance: Floats) -> tuple[Floats, int]:
    """Return the pseudo-inverse of a covariance and its rank."""
    values, vectors = np.linalg.eigh(covariance)
    kept = values > 1e-9 * max(float(values[-1]), 1e-300)
    rank = int(np.count_nonzero(kept)) if values[-1] > 1e-12 else 0
    if rank == 0:
        return np.zeros_like(covariance), 0
    scaled = vectors[:, kept] / values[kept]
    return scaled @ vectors[:, kept].T, rank
