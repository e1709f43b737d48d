"""How much groups, spots and trips differ, how unlike counts are, how fast a trap fills.

These scales of the model are themselves uncertain: here is their posterior density.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any, Final

import numpy as np

from planner.estimates import Floats
from planner.trials.grouping import Observations
from planner.trials.mixed_model import Counts, Mode, Scales, find_mode

# Spread of effects on the log scale (half-normal scale): designs seldom differ twofold, trips
# easily do. Our judgement; tests/benchmarks/trials_worlds.py shows what it does to coverage.
_GROUP_SD: Final = 0.4
_BLOCK_SD: Final = 0.5
_TRIP_SD: Final = 0.7
# So wide that a group is left to its own hauls, and narrow enough that none without a catch
# runs off to nothing.
_ALONE_SD: Final = 2.0
# Size of trap counts: median 1.5, 90% within 0.1-18; no published value for crab pots was found,
# and a tighter one made intervals too short where a haul is mostly luck (k of 1).
_K_MEDIAN: Final = 1.5
_K_SD_LOG: Final = 1.5
# The soak that half fills a trap: 4-25 h; a small relative peaks at 2-3 h, practice is 24 h.
_HALF_MEDIAN_H: Final = 10.0
_HALF_SD_LOG: Final = 0.55
# Spread of log soak under which a log says nothing about the curve.
_SAME_SOAK: Final = 0.1
# Hauls that pin the scales down far better than they need to be.
_ENOUGH_HAULS: Final = 1500


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
