"""Negative binomial counts with pooled effects: the mode and Laplace's marginal likelihood.

count ~ NB(mean, k), variance mean + mean^2 / k;
log mean = offset + intercept + one effect of each factor + an effect of the trip.

Effects of a factor are normal about zero with that factor's standard deviation, so groups
with few hauls are drawn towards the others ("partial pooling"). Trips, of which there may be
thousands, are eliminated by blocks: no matrix grows with their number squared.
Laplace's approximation: Tierney and Kadane 1986, J. Am. Stat. Assoc. 81:82 (from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.estimates import Floats

Ints = NDArray[np.int64]

# So wide that it says nothing: rates from e^-9 to e^9.
INTERCEPT_SD: Final = 3.0
_MAX_STEPS: Final = 60
_TOLERANCE: Final = 1e-9


@dataclass(frozen=True)
class Counts:
    """Counts (n,) with the level of each factor (n,) and the trip (n,), as indices from 0."""

    counts: Floats
    factors: tuple[Ints, ...]
    levels: tuple[int, ...]
    trip: Ints
    trips: int

    @cached_property
    def columns(self) -> tuple[Ints, ...]:
        """Column of the effects vector of each haul's intercept and factor levels."""
        starts = np.cumsum([1, *self.levels])[:-1]
        intercept = np.zeros(self.counts.size, dtype=np.int64)
        return (intercept, *(f + s for f, s in zip(self.factors, starts, strict=True)))

    @property
    def width(self) -> int:
        """Length of the effects vector: intercept and all levels."""
        return 1 + sum(self.levels)

    @cached_property
    def distinct(self) -> tuple[Floats, Floats]:
        """The different counts and how often each occurs."""
        values, often = np.unique(self.counts, return_counts=True)
        return values, often.astype(np.float64)


@dataclass(frozen=True)
class Scales:
    """What governs the effects: standard deviation of each factor and of trips, size k."""

    factor_sds: tuple[float, ...]
    trip_sd: float
    k: float

    def precision(self, counts: Counts) -> Floats:
        """Return the prior precision of each entry of the effects vector."""
        sds = [INTERCEPT_SD]
        for sd, levels in zip(self.factor_sds, counts.levels, strict=True):
            sds += [sd] * levels
        precision: Floats = np.array(sds) ** -2.0
        return precision


@dataclass(frozen=True)
class Mode:
    """The most probable effects, and the curvature there.

    effects: (width,); trip_effects: (trips,). reduced: information on the effects once trips
    are eliminated, (width, width); trip_information: (trips,); cross: (trips, width).
    log_likelihood: of the counts at the mode; log_marginal: with the effects integrated out.
    log_mean: (n,).
    """

    effects: Floats
    trip_effects: Floats
    reduced: Floats
    trip_information: Floats
    cross: Floats
    log_mean: Floats
    log_likelihood: float
    log_marginal: float

    def covariance(self, of_effects: Floats, of_trips: Floats) -> Floats:
        """Return the covariance (m, m) of m combinations: weights (m, width) and (m, trips)."""
        scaled = of_trips / self.trip_information
        on_effects = of_effects - scaled @ self.cross
        by_effects = on_effects @ np.linalg.solve(self.reduced, on_effects.T)
        covariance: Floats = scaled @ of_trips.T + by_effects
        return covariance


def score(counts: Floats, mean: Floats, k: float) -> Floats:
    """Return the derivative of the log likelihood of each count by its log mean, (n,)."""
    derivative: Floats = (counts - mean) / (1 + mean / k)
    return derivative


def log_likelihood(data: Counts, log_mean: Floats, k: float) -> float:
    """Return the log likelihood of all counts, constants included."""
    from scipy.special import gammaln

    values, often = data.distinct
    gammas = gammaln(values + k) - gammaln(k) - gammaln(values + 1)
    spread = np.log1p(np.exp(log_mean) / k)
    shape = data.counts * (log_mean - np.log(k)) - (data.counts + k) * spread
    return float(often @ gammas + shape.sum())


def find_mode(
    data: Counts, offset: Floats, scales: Scales, start: tuple[Floats, Floats] | None = None
) -> Mode:
    """Return the mode of the effects by Newton's method, from `start` (effects, trip effects).

    offset: (n,), added to the log mean. The log posterior is concave, so the mode is the one.
    """
    precision = scales.precision(data)
    trip_precision = scales.trip_sd**-2.0
    k = scales.k
    if start is None:
        level = np.log((data.counts.sum() + 0.5) / (np.exp(offset).sum() + 0.5))
        start = (np.concatenate([[level], np.zeros(data.width - 1)]), np.zeros(data.trips))
    effects, trips = start

    def posterior(effects: Floats, trips: Floats) -> tuple[Floats, float, float]:
        log_mean = offset + trips[data.trip]
        for column in data.columns:
            log_mean = log_mean + effects[column]
        log_mean = np.minimum(log_mean, 30.0)  # a step too far, on the way, must not overflow
        likelihood = log_likelihood(data, log_mean, k)
        prior = -0.5 * (precision @ effects**2 + trip_precision * (trips @ trips))
        return log_mean, likelihood, likelihood + float(prior)

    log_mean, likelihood, height = posterior(effects, trips)
    curved = _information(data, log_mean, k, precision, trip_precision)
    for _ in range(_MAX_STEPS):
        slope, trip_slope = _slopes(data, log_mean, k)
        slope -= precision * effects
        trip_slope -= trip_precision * trips
        reduced, trip_information, cross = curved
        step = np.linalg.solve(reduced, slope - (trip_slope / trip_information) @ cross)
        trip_step = (trip_slope - cross @ step) / trip_information
        gain = float(slope @ step + trip_slope @ trip_step)
        if gain < _TOLERANCE:
            break
        length = 1.0
        while True:
            tried = posterior(effects + length * step, trips + length * trip_step)
            if tried[2] >= height or length < 1e-6:
                break
            length /= 2
        effects, trips = effects + length * step, trips + length * trip_step
        log_mean, likelihood, height = tried
        curved = _information(data, log_mean, k, precision, trip_precision)
    reduced, trip_information, cross = curved
    log_determinant = float(np.linalg.slogdet(reduced)[1] + np.log(trip_information).sum())
    log_scale = 0.5 * float(np.log(precision).sum() + data.trips * np.log(trip_precision))
    return Mode(
        effects=effects,
        trip_effects=trips,
        reduced=reduced,
        trip_information=trip_information,
        cross=cross,
        log_mean=log_mean,
        log_likelihood=likelihood,
        log_marginal=height + log_scale - 0.5 * log_determinant,
    )


def _slopes(data: Counts, log_mean: Floats, k: float) -> tuple[Floats, Floats]:
    by_haul = score(data.counts, np.exp(log_mean), k)
    slope = np.zeros(data.width)
    for column in data.columns:
        slope += np.bincount(column, by_haul, data.width)
    trip_slope: Floats = np.bincount(data.trip, by_haul, data.trips).astype(np.float64)
    return slope, trip_slope


def _information(
    data: Counts, log_mean: Floats, k: float, precision: Floats, trip_precision: float
) -> tuple[Floats, Floats, Floats]:
    """Return the observed information: reduced (width, width), of trips (trips,), cross."""
    mean = np.exp(log_mean)
    weight = mean * (1 + data.counts / k) / (1 + mean / k) ** 2
    width, columns = data.width, data.columns
    full = np.zeros(width * width)
    cross = np.zeros(data.trips * width)
    for i, one in enumerate(columns):
        cross += np.bincount(data.trip * width + one, weight, data.trips * width)
        for other in columns[i:]:
            pair = np.bincount(one * width + other, weight, width * width)
            full += pair
            if other is not one:
                full += pair.reshape(width, width).T.ravel()
    of_trips = np.bincount(data.trip, weight, data.trips)
    trip_information: Floats = of_trips.astype(np.float64) + trip_precision
    crossed = cross.reshape(data.trips, width)
    reduced = full.reshape(width, width) + np.diag(precision)
    reduced -= (crossed / trip_information[:, None]).T @ crossed
    return reduced, trip_information, crossed
