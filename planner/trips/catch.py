"""How many keepers a trip should bring: catch against soak, learned from the log.

A trip's keepers are negative binomial: mean = rate x the sum over traps of how far each soak
filled its trap x the effects of its spot, its design and the time of year x how active the
crabs are; crabs of one trip are alike, so the spread belongs to the trip. The rate (keepers
per trap in a 24 h soak), the soak that half fills a trap and the size k are uncertain together;
a grid over the three gives their joint posterior exactly enough. With a thin log the published
rates speak, with a thick one the log does; the effects are pooled (`catch_effects`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import SD_TO_TAIL, Floats, Interval, interval_of_draws
from planner.trips.catch_effects import Effects, learn_effects
from planner.trips.catch_record import Mix, TripCatch

REFERENCE_SOAK_H: Final = 24.0
# Blue crab pots in Maryland and Delaware: 2.55 (2.39-2.69) crabs a pot and day (Roosenburg
# and Green 2000) and 2.7 legal crabs a pot and set (Cole and Helser 2001). Places differ: the
# spread, a factor of two either way, is our judgement.
_RATE_MEAN: Final = 2.55
_RATE_SD_LOG: Final = 0.6
# Half-saturation 4-24 h: judgement (a small relative peaks at 2-3 h, practice is 24 h).
_HALF_MEDIAN_H: Final = 10.0
_HALF_SD_LOG: Final = 0.55
# Size k of a trip's total: judgement, between a median of 2 for one trap and the two dozen
# that a dozen independent traps would have.
_K_MEDIAN: Final = 4.0
_K_SD_LOG: Final = 0.6
_LEAST_ACTIVITY: Final = 0.01  # so that one crab in dormant water is unlikely, not impossible
_DRAWS: Final = 2000
_RATES: Final = 241  # on the grid: a step of 3 per cent
_ROUGHLY: Final = 61
_LEAST_BETA_SIZE: Final = 0.1  # an interval wider than any beta allows


@dataclass(frozen=True)
class CatchModel:
    """Draws from what is believed about the catch; arrays of shape (draws,).

    rate: keepers of the log's average trap in a 24 h soak at full activity. half_h: soak (h)
    that half fills a trap. k: size of the negative binomial of a trip's total.
    effects: of spots, designs and the time of year. trips: how many of the log stand behind it.
    """

    rate: Floats
    half_h: Floats
    k: Floats
    effects: Effects
    trips: int

    def per_trap(self, soak_h: Floats) -> Floats:
        """Return keepers expected of an average trap at full activity, (n,), for soaks (n,) in h.

        Saturating: N(t) = E/r (1 - exp(-r t)) (Munro 1974), so longer soaks never give less
        and never in proportion.
        """
        filled = saturation(soak_h[None, :], self.half_h[:, None])
        expected: Floats = (self.rate[:, None] * filled).mean(axis=0)
        return expected

    def full_keepers(
        self,
        soak_h: float,
        traps: int,
        activity: float,
        light: Interval,
        seed: int,
        season: float | None = None,
    ) -> Interval:
        """Return the full keepers of one trip with an 80% prediction interval.

        season: time of year of the haul (radians), None for that of the log's average haul.
        The interval holds what is unknown of the rate, the curve, the effects and the light
        share, the luck of the trip and the luck of each crab. One seed gives one answer.
        """
        rng = np.random.default_rng(seed)
        mean = self.rate * saturation(np.array([soak_h]), self.half_h) * traps * activity
        luck = rng.gamma(self.k, 1 / self.k)
        caught = rng.poisson(mean * luck * self.effects.draws(season))
        full_share = 1 - _share_draws(light, mean.size, rng)
        drawn = interval_of_draws(rng.binomial(caught, full_share).astype(np.float64))
        expected = float(mean.mean()) * self.effects.mean(season) * (1 - light.mean)
        return Interval(expected, min(drawn.low, expected), max(drawn.high, expected))


def saturation(soak_h: Floats, half_h: Floats) -> Floats:
    """Return how far a soak fills a trap, as a ratio to a 24 h soak; arrays broadcast."""
    filled: Floats = (1 - np.exp2(-soak_h / half_h)) / (1 - np.exp2(-REFERENCE_SOAK_H / half_h))
    return filled


def learn_catch(trips: Sequence[TripCatch], seed: int, mix: Mix | None = None) -> CatchModel:
    """Return what the trips and the published rates together say about the catch.

    mix: how a plan's traps stand; None for neither spots nor designs.
    """
    mix = mix or Mix()
    nothing = [np.zeros(trip.keepers.size) for trip in trips]
    # The rate, the curve and the luck of trips without effects weigh what tells of the effects.
    _, half_h, k = (float(each.mean()) for each in _drawn(trips, nothing, seed, _ROUGHLY))
    means = [
        saturation(trip.soaks_h, np.array(half_h)) * max(trip.activity, _LEAST_ACTIVITY)
        for trip in trips
    ]
    effects, log_ratios = learn_effects(trips, means, k, mix, seed, _DRAWS)
    rate, half, size = _drawn(trips, log_ratios, seed, _RATES)
    return CatchModel(rate, half, size, effects, len(trips))


def _drawn(
    trips: Sequence[TripCatch], log_ratios: Sequence[Floats], seed: int, rates: int
) -> tuple[Floats, Floats, Floats]:
    """Return draws of rate, half-saturation and k; log_ratios: of each haul to the average.

    rates: how many on the grid.
    """
    rate = np.exp(np.linspace(math.log(0.02), math.log(60.0), rates))
    half_h = _HALF_MEDIAN_H * np.exp(_HALF_SD_LOG * np.linspace(-2.5, 2.5, 11))
    k = _K_MEDIAN * np.exp(_K_SD_LOG * np.linspace(-2.5, 2.5, 9))
    median_rate = _RATE_MEAN * math.exp(-(_RATE_SD_LOG**2) / 2)
    log_p = (
        _log_normal(rate, median_rate, _RATE_SD_LOG)[:, None, None]
        + _log_normal(half_h, _HALF_MEDIAN_H, _HALF_SD_LOG)[None, :, None]
        + _log_normal(k, _K_MEDIAN, _K_SD_LOG)[None, None, :]
    )
    for trip, log_ratio in zip(trips, log_ratios, strict=True):
        filled = saturation(trip.soaks_h[None, :], half_h[:, None]) @ np.exp(log_ratio)
        mean = rate[:, None] * filled[None, :] * max(trip.activity, _LEAST_ACTIVITY)
        log_p += _log_negative_binomial(trip.total, mean[:, :, None], k)
    weight = np.exp(log_p - log_p.max()).ravel()
    rng = np.random.default_rng(seed)
    # One draw in each slice of equal probability: the mean hardly depends on the seed.
    levels = (np.arange(_DRAWS) + rng.random(_DRAWS)) / _DRAWS
    cumulative = np.cumsum(weight) / weight.sum()
    cells = np.minimum(np.searchsorted(cumulative, levels), weight.size - 1)
    at_rate, at_half, at_k = np.unravel_index(rng.permutation(cells), log_p.shape)
    return rate[at_rate], half_h[at_half], k[at_k]


def _log_normal(value: Floats, median: float, sd_log: float) -> Floats:
    """Return the log density over log(value), up to a constant; the grids are even in the log."""
    density: Floats = -0.5 * (np.log(value / median) / sd_log) ** 2
    return density


def _log_negative_binomial(count: int, mean: Floats, k: Floats) -> Floats:
    """Return the log probability of a count, up to a constant; variance mean + mean^2 / k."""
    gammas = np.array([math.lgamma(count + size) - math.lgamma(size) for size in k])
    log_p: Floats = gammas + k * np.log(k) + count * np.log(mean) - (k + count) * np.log(k + mean)
    return log_p


def _share_draws(share: Interval, count: int, rng: np.random.Generator) -> Floats:
    """Return draws of a share: the beta with its mean and about the spread of its interval."""
    mean = min(max(share.mean, 1e-4), 1 - 1e-4)
    sd = max((share.high - share.low) / (2 * SD_TO_TAIL), 1e-4)
    size = max(mean * (1 - mean) / sd**2 - 1, _LEAST_BETA_SIZE)
    return rng.beta(mean * size, (1 - mean) * size, count)
