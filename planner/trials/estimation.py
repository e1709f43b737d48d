"""Rates of the groups with their uncertainty: pooled, with trips and spots as blocks.

The posterior of the model's scales is found at its mode, explored about it by weighted points,
and mixed over: with few hauls the intervals would else be too short.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.trials.grouping import Observations
from planner.trials.intervals import lag_of_few, steady_intervals
from planner.trials.mixed_model import Counts, Mode
from planner.trials.scales import ScalePosterior, sample_trips

# What the intervals take groups to differ by: it settles their length, not their coverage.
_LIKELY_SD: Final = 0.3

_POINTS: Final = 48
_DRAWS: Final = 4000
_TAIL_DF: Final = 5
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
    mean, k = np.exp(pooled.log_mean), problem.hyper(point).scales.k
    drawn[1] += lag_of_few(seen.per_group(mean / (1 + mean / k)))
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
