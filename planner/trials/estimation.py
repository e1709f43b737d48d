"""Rates of the groups with their uncertainty: pooled, with trips and spots as blocks.

How much groups, spots and trips differ, how overdispersed counts are and how fast a trap
fills are themselves uncertain. Their posterior is found at its mode, explored about it by
weighted points, and mixed over: with few hauls the intervals would else be too short.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any, Final

import numpy as np

from planner.estimates import Floats
from planner.trials.grouping import Observations
from planner.trials.intervals import steady_intervals
from planner.trials.mixed_model import Counts, Mode, Scales, find_mode

# Spread of effects on the log scale (half-normal scale): designs seldom differ twofold, trips
# easily do. Our judgement; tests/benchmarks/trials_worlds.py shows what it does to coverage.
_GROUP_SD: Final = 0.4
_BLOCK_SD: Final = 0.5
_TRIP_SD: Final = 0.7
# So wide that a group is left to its own hauls, and narrow enough that none without a catch
# runs off to nothing.
_ALONE_SD: Final = 2.0
# What the intervals take groups to differ by: it settles their length, not their coverage.
_LIKELY_SD: Final = 0.3
# Size of trap counts: median 2, 90% within 0.4-10; no published value for crab pots was found.
_K_MEDIAN: Final = 2.0
_K_SD_LOG: Final = 1.0
# The soak that half fills a trap: 4-25 h; a small relative peaks at 2-3 h, practice is 24 h.
_HALF_MEDIAN_H: Final = 10.0
_HALF_SD_LOG: Final = 0.55
# Spread of log soak under which a log says nothing about the curve.
_SAME_SOAK: Final = 0.1

_POINTS: Final = 48
_DRAWS: Final = 4000
_TAIL_DF: Final = 5
# Hauls that pin the scales down far better than they need to be.
_ENOUGH_HAULS: Final = 1500
# Hauls enough for an average over a log of any length.
_AVERAGED: Final = 500


@dataclass(frozen=True)
class Estimate:
    """What the log says of the groups' rates.

    log_rates: pooled draws (draws, groups) of the log rate at the common soak over the log's
    own trips and spots. low, high: ends (groups,) of the 80% intervals of the log rates.
    k: draws (draws,). information_sd: standard deviation (groups, groups) of each log ratio by
    this log alone, without pooling.
    """

    log_rates: Floats
    low: Floats
    high: Floats
    k: Floats
    information_sd: Floats
    common_soak_h: float | None


@dataclass(frozen=True)
class Hyper:
    """One point of the scales: log standard deviations, log k, log half-filling soak."""

    scales: Scales
    half_h: float


class ScalePosterior:
    """The log posterior of the scales for a set of observations, with or without groups."""

    def __init__(self, seen: Observations, *, with_groups: bool) -> None:
        blocks = [block for block in seen.blocks.values() if block.size and np.ptp(block) > 0]
        factors = ([seen.group] if with_groups else []) + blocks
        sizes = ([seen.groups] if with_groups else []) + [int(b.max()) + 1 for b in blocks]
        self.data = Counts(seen.counts, tuple(factors), tuple(sizes), seen.trip, seen.trips)
        self._log_exposure = np.log(seen.exposure)
        self.common_soak_h = common_soak_h(seen)
        # An unknown soak is taken for the common one.
        self._soak_h = np.nan_to_num(seen.soak_h, nan=self.common_soak_h or 24.0)
        self._soaks_differ = float(np.std(np.log(self._soak_h))) > _SAME_SOAK
        self._sds = np.array(
            ([_GROUP_SD] if with_groups else []) + [_BLOCK_SD] * len(blocks) + [_TRIP_SD]
        )
        self._start: tuple[Floats, Floats] | None = None

    @property
    def centre(self) -> Floats:
        """A plausible point to begin from."""
        half = [math.log(_HALF_MEDIAN_H)] if self._soaks_differ else []
        return np.array([*np.log(0.5 * self._sds), math.log(_K_MEDIAN), *half])

    def hyper(self, point: Floats) -> Hyper:
        """Return the scales at a point of the search space."""
        n = self._sds.size
        sds = np.exp(np.clip(point[:n], -7, 3))
        k = math.exp(min(max(point[n], -5.0), 9.0))
        half_h = math.exp(min(max(point[n + 1], 0.0), 5.0)) if self._soaks_differ else 10.0
        return Hyper(Scales(tuple(sds[:-1]), float(sds[-1]), k), half_h)

    def mode(self, point: Floats) -> Mode:
        """Return the mode of the effects at a point."""
        mode = self._mode(self.hyper(point), self._start)
        self._start = (mode.effects, mode.trip_effects)
        return mode

    def mode_alone(self, point: Floats, pooled: Mode) -> Mode:
        """Return the mode with every group left to its own hauls; `pooled`: that of `mode`."""
        hyper = self.hyper(point)
        scales = replace(hyper.scales, factor_sds=(_ALONE_SD, *hyper.scales.factor_sds[1:]))
        return self._mode(replace(hyper, scales=scales), (pooled.effects, pooled.trip_effects))

    def _mode(self, hyper: Hyper, start: tuple[Floats, Floats] | None) -> Mode:
        filled = np.log(soak_factor(self._soak_h, self.common_soak_h or 24.0, hyper.half_h))
        return find_mode(self.data, self._log_exposure + filled, hyper.scales, start)

    def height(self, point: Floats) -> float:
        """Return the log posterior density of a point, up to a constant."""
        n = self._sds.size
        log_sds = np.clip(point[:n], -20, 10)
        # Half-normal in the standard deviation, which is exp of the coordinate.
        prior = float(np.sum(log_sds - 0.5 * (np.exp(log_sds) / self._sds) ** 2))
        prior -= 0.5 * ((point[n] - math.log(_K_MEDIAN)) / _K_SD_LOG) ** 2
        if self._soaks_differ:
            prior -= 0.5 * ((point[n + 1] - math.log(_HALF_MEDIAN_H)) / _HALF_SD_LOG) ** 2
        return float(self.mode(point).log_marginal + prior)

    def best_point(self) -> Floats:
        """Return the most probable point."""
        from scipy.optimize import minimize

        options: Any = {"gtol": 0.02, "eps": 1e-4, "maxiter": 60}

        def depth(point: Floats) -> float:
            return -self.height(point)

        found = minimize(depth, self.centre, method="BFGS", options=options)
        best: Floats = np.asarray(found.x, dtype=np.float64)
        return best


def common_soak_h(seen: Observations) -> float | None:
    """Return the soak at which rates are stated: the log's median; None when none is known."""
    known = seen.soak_h[~np.isnan(seen.soak_h)]
    return float(np.median(known)) if known.size else None


def soak_factor(soak_h: Floats, common_h: float, half_h: float) -> Floats:
    """Return how full a soak makes a trap, as a ratio to the common soak.

    Saturating: N(t) = (E / r)(1 - exp(-r t)) (Munro 1974, equation from memory).
    """
    ratio: Floats = (1 - np.exp2(-soak_h / half_h)) / (1 - np.exp2(-common_h / half_h))
    return ratio


def sample_trips(seen: Observations, rng: np.random.Generator) -> Observations:
    """Return whole trips, dealt by lot, that have enough hauls to learn the scales from.

    Very long trips are themselves thinned by lot.
    """
    if seen.counts.size <= _ENOUGH_HAULS:
        return seen
    order = rng.permutation(seen.trips)
    sizes = np.bincount(seen.trip)[order]
    taken = np.zeros(seen.trips, dtype=bool)
    taken[order[: int(np.searchsorted(np.cumsum(sizes), _ENOUGH_HAULS)) + 1]] = True
    rows = np.flatnonzero(taken[seen.trip])
    if rows.size > 2 * _ENOUGH_HAULS:
        rows = np.sort(rng.choice(rows, 2 * _ENOUGH_HAULS, replace=False))
    return Observations(
        names=seen.names,
        all_hauls=seen.all_hauls,
        counts=seen.counts[rows],
        exposure=seen.exposure[rows],
        soak_h=seen.soak_h[rows],
        group=seen.group[rows],
        trip=np.unique(seen.trip[rows], return_inverse=True)[1],
        blocks={name: block[rows] for name, block in seen.blocks.items()},
    )


def estimate(seen: Observations, rng: np.random.Generator) -> Estimate:
    """Return the rates of the groups; at least one counted haul is needed."""
    sample = sample_trips(seen, rng)
    searched = ScalePosterior(sample, with_groups=True)
    best = searched.best_point()
    points, share = _points(searched, best, rng)
    # As many draws of each point as its weight asks for, dealt without gaps.
    chosen = np.searchsorted(np.cumsum(share)[:-1], (np.arange(_DRAWS) + rng.random()) / _DRAWS)
    k = np.array([searched.hyper(point).scales.k for point in points])[chosen]
    if sample is seen:
        problem = searched
        pooled = np.empty((_DRAWS, seen.groups))
        alone = np.empty_like(pooled)
        for at in np.unique(chosen):
            rows = np.flatnonzero(chosen == at)
            pooled[rows], alone[rows] = _draw(seen, problem, points[at], rows.size, rng)
    else:
        # So many hauls leave next to no doubt of the scales: one point stands for all.
        problem = ScalePosterior(seen, with_groups=True)
        pooled, alone = _draw(seen, problem, best, _DRAWS, rng)
        best_k = searched.hyper(best).scales.k
        k = best_k * (k / best_k) ** math.sqrt(sample.counts.size / seen.counts.size)
    low, high = steady_intervals(alone, _LIKELY_SD)
    information_sd = _information_sd(seen, problem, best)
    return Estimate(pooled, low, high, k, information_sd, problem.common_soak_h)


def _draw(
    seen: Observations,
    problem: ScalePosterior,
    point: Floats,
    count: int,
    rng: np.random.Generator,
) -> tuple[Floats, Floats]:
    """Return draws (count, groups) of the log rates at a point: pooled, and each group alone."""
    pooled = problem.mode(point)
    drawn: list[Floats] = []
    for mode in (pooled, problem.mode_alone(point, pooled)):
        centre, covariance = _log_rates(seen, problem.data, mode)
        root = np.linalg.cholesky(covariance + 1e-12 * np.eye(seen.groups))
        drawn.append(centre + rng.standard_normal((count, seen.groups)) @ root.T)
    return drawn[0], drawn[1]


def _points(
    problem: ScalePosterior, best: Floats, rng: np.random.Generator
) -> tuple[Floats, Floats]:
    """Return points about the best one, and the weights with which they are the posterior."""
    size = best.size
    values, vectors = np.linalg.eigh(_curvature(problem, best))
    # Where the log is silent the prior alone curves, at least this much.
    spread = vectors / np.sqrt(np.maximum(values, 0.2))
    normal = rng.standard_normal((_POINTS // 2, size))
    normal = np.concatenate([normal, -normal])  # pairs: no drift to one side
    stretch = np.sqrt(_TAIL_DF / rng.chisquare(_TAIL_DF, _POINTS // 2))
    steps = normal * np.tile(stretch, 2)[:, None]
    points = best + steps @ spread.T
    heights = np.array([problem.height(point) for point in points])
    proposed = -0.5 * (_TAIL_DF + size) * np.log1p((steps**2).sum(axis=1) / _TAIL_DF)
    log_weight = heights - proposed
    weight = np.exp(log_weight - log_weight.max())
    # No single lucky point may stand for all.
    weight = np.minimum(weight, weight.sum() / math.sqrt(_POINTS))
    return points, weight / weight.sum()


def _curvature(problem: ScalePosterior, best: Floats, step: float = 0.1) -> Floats:
    """Return minus the second derivatives of the log posterior at a point, by differences."""
    size = best.size
    steps = step * np.eye(size)
    middle = problem.height(best)
    ahead = np.array([problem.height(best + s) for s in steps])
    behind = np.array([problem.height(best - s) for s in steps])
    curvature = np.diag(-(ahead - 2 * middle + behind) / step**2)
    for i in range(size):
        for j in range(i):
            both = problem.height(best + steps[i] + steps[j])
            mixed = -(both - ahead[i] - ahead[j] + middle) / step**2
            curvature[i, j] = curvature[j, i] = mixed
    return curvature


def _log_rates(seen: Observations, data: Counts, mode: Mode) -> tuple[Floats, Floats]:
    """Return the mode (groups,) and covariance of the log rates over the log's trips and spots.

    Every haul is thought to have been each group's in turn. The log of the average over
    hauls is expanded about the mode: to the second order for its mean, as an average of
    exponentials lies above the exponential of the average; to the first for its spread.
    """
    group_effects = mode.effects[1 : 1 + seen.groups]
    elsewhere = mode.trip_effects[seen.trip]
    for column in data.columns[2:]:
        elsewhere = elsewhere + mode.effects[column]
    share = np.exp(elsewhere)
    mean = share.mean()
    share = share / share.sum()
    of_effects = np.zeros((seen.groups, data.width))
    of_effects[:, 0] = 1.0
    of_effects[np.arange(seen.groups), 1 + np.arange(seen.groups)] = 1.0
    for column in data.columns[2:]:
        of_effects += np.bincount(column, share, data.width)
    by_trip: Floats = np.bincount(seen.trip, share, seen.trips).astype(np.float64)
    of_trips = np.tile(by_trip, (seen.groups, 1))
    blocks = of_effects[:1].copy()
    blocks[0, : 1 + seen.groups] = 0.0
    of_average = float(mode.covariance(blocks, of_trips[:1])[0, 0])
    bend = 0.5 * (_mean_block_variance(seen, data, mode, share) - of_average)
    centre: Floats = mode.effects[0] + group_effects + np.log(mean) + bend
    return centre, mode.covariance(of_effects, of_trips)


def _mean_block_variance(seen: Observations, data: Counts, mode: Mode, share: Floats) -> float:
    """Return the variance of a haul's trip and block effects together, averaged by `share`."""
    rows = np.arange(0, seen.trip.size, -(-seen.trip.size // _AVERAGED))
    trip = seen.trip[rows]
    on_effects = -mode.cross[trip] / mode.trip_information[trip, None]
    for column in data.columns[2:]:
        on_effects[np.arange(rows.size), column[rows]] += 1.0
    by_effects = np.einsum("nw,nw->n", on_effects @ np.linalg.inv(mode.reduced), on_effects)
    variance = 1 / mode.trip_information[trip] + by_effects
    return float(np.average(variance, weights=share[rows]))


def _information_sd(seen: Observations, problem: ScalePosterior, point: Floats) -> Floats:
    """Return the standard deviation of each log ratio by this log alone (no pooling)."""
    mode = problem.mode(point)
    sd = problem.hyper(point).scales.factor_sds[0]
    reduced = mode.reduced.copy()
    groups = np.arange(1, 1 + seen.groups)
    reduced[groups, groups] += 1e-6 - sd**-2.0
    block = np.linalg.inv(reduced)[1 : 1 + seen.groups, 1 : 1 + seen.groups]
    variance = np.diag(block)[:, None] + np.diag(block)[None, :] - block - block.T
    information_sd: Floats = np.sqrt(np.maximum(variance, 0))
    return information_sd
