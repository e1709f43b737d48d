"""How many keepers a trip should bring: catch against soak, learned from the log.

A trip's keepers are negative binomial: mean = rate x the sum over traps of how far each soak
filled its trap x how active the crabs are; crabs of one trip are alike, so the spread belongs
to the trip. The rate (keepers per trap in a 24 h soak), the soak that half fills a trap and
the size k are uncertain together; a grid over the three gives their joint posterior exactly
enough. With a thin log the published rates speak, with a thick one the log does.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats, Interval, interval_of_draws
from planner.logbook.entries import Haul
from planner.molt.profile import dormant_below_c
from planner.sites.site import Site

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
# Dormant crabs enter no trap. That the catch fades over a few degrees above the temperature
# of dormancy, and how fast, is our judgement.
_FADE_C: Final = 1.2
_DRAWS: Final = 2000
_SD_TO_TAIL: Final = 1.2816  # standard deviations from the middle of a normal to its 90% point
_LEAST_BETA_SIZE: Final = 0.1  # an interval wider than any beta allows


@dataclass(frozen=True)
class TripCatch:
    """What one logged trip says: keepers over all its traps, and each trap's soak in hours."""

    keepers: int
    soaks_h: Floats
    activity: float


@dataclass(frozen=True)
class CatchModel:
    """Draws from what is believed about the catch; arrays of shape (draws,).

    rate: keepers per trap in a 24 h soak at full activity. half_h: soak (h) that half fills
    a trap. k: size of the negative binomial of a trip's total.
    trips, keepers: how much of the log stands behind it.
    """

    rate: Floats
    half_h: Floats
    k: Floats
    trips: int
    keepers: int

    def per_trap(self, soak_h: Floats) -> Floats:
        """Return expected keepers per trap at full activity, shape (n,), for soaks (n,) in hours.

        Saturating: N(t) = E/r (1 - exp(-r t)) (Munro 1974), so longer soaks never give less
        and never in proportion.
        """
        filled = saturation(soak_h[None, :], self.half_h[:, None])
        expected: Floats = (self.rate[:, None] * filled).mean(axis=0)
        return expected

    def full_keepers(
        self, soak_h: float, traps: int, activity: float, light: Interval, seed: int
    ) -> Interval:
        """Return the full keepers of one trip with an 80% prediction interval.

        The interval holds what is unknown of the rate, the curve and the light share, the
        luck of the trip and the luck of each crab. One seed gives one answer.
        """
        rng = np.random.default_rng(seed)
        mean = self.rate * saturation(np.array([soak_h]), self.half_h) * traps * activity
        luck = rng.gamma(self.k, 1 / self.k)
        caught = rng.poisson(mean * luck)
        full_share = 1 - _share_draws(light, mean.size, rng)
        drawn = interval_of_draws(rng.binomial(caught, full_share).astype(np.float64))
        expected = float(mean.mean()) * (1 - light.mean)
        return Interval(expected, min(drawn.low, expected), max(drawn.high, expected))


def saturation(soak_h: Floats, half_h: Floats) -> Floats:
    """Return how far a soak fills a trap, as a ratio to a 24 h soak; arrays broadcast."""
    filled: Floats = (1 - np.exp2(-soak_h / half_h)) / (1 - np.exp2(-REFERENCE_SOAK_H / half_h))
    return filled


def activity_at(water_c: Floats, species: str) -> Floats:
    """Return how active crabs are (0 to 1), shape (n,); 1 where the temperature is NaN."""
    above_c = water_c - dormant_below_c(species)
    fade: Floats = 1 / (1 + np.exp(-(above_c - _FADE_C) / _FADE_C))
    return np.where(np.isnan(water_c), 1.0, fade)


def trip_catches(site: Site, hauls: Iterable[Haul]) -> list[TripCatch]:
    """Return the trips of the place whose hauls have both a count of keepers and a soak.

    A haul without a count is not a haul without crabs, so it is left out.
    """
    by_trip: dict[str, list[Haul]] = defaultdict(list)
    for haul in hauls:
        timed = haul.set_at is not None and haul.hauled_at is not None
        if haul.place == site.name and haul.keepers is not None and timed:
            by_trip[haul.trip].append(haul)
    trips = (_trip_catch(site, by_trip[name]) for name in sorted(by_trip))
    return [trip for trip in trips if trip.soaks_h.size]


def _trip_catch(site: Site, hauls: Sequence[Haul]) -> TripCatch:
    soaks, keepers, water_c = [], 0, []
    for haul in hauls:
        if haul.set_at is None or haul.hauled_at is None or haul.hauled_at <= haul.set_at:
            continue
        soaks.append((haul.hauled_at - haul.set_at).total_seconds() / 3600)
        keepers += haul.keepers or 0
        if haul.water_c is not None:
            water_c.append(haul.water_c)
        elif site.monthly_water_c is not None:
            water_c.append(site.monthly_water_c[haul.hauled_at.month - 1])
    mean_c = np.array([np.mean(water_c)]) if water_c else np.array([np.nan])
    return TripCatch(keepers, np.array(soaks), float(activity_at(mean_c, site.species)[0]))


def learn_catch(trips: Sequence[TripCatch], seed: int) -> CatchModel:
    """Return what the trips and the published rates together say about the catch."""
    rate = np.exp(np.linspace(math.log(0.02), math.log(60.0), 241))
    half_h = _HALF_MEDIAN_H * np.exp(_HALF_SD_LOG * np.linspace(-2.5, 2.5, 11))
    k = _K_MEDIAN * np.exp(_K_SD_LOG * np.linspace(-2.5, 2.5, 9))
    median_rate = _RATE_MEAN * math.exp(-(_RATE_SD_LOG**2) / 2)
    log_p = (
        _log_normal(rate, median_rate, _RATE_SD_LOG)[:, None, None]
        + _log_normal(half_h, _HALF_MEDIAN_H, _HALF_SD_LOG)[None, :, None]
        + _log_normal(k, _K_MEDIAN, _K_SD_LOG)[None, None, :]
    )
    for trip in trips:
        filled = saturation(trip.soaks_h[None, :], half_h[:, None]).sum(axis=1)
        mean = rate[:, None] * filled[None, :] * max(trip.activity, 0.01)
        log_p = log_p + _log_negative_binomial(trip.keepers, mean[:, :, None], k)
    weight = np.exp(log_p - log_p.max()).ravel()
    rng = np.random.default_rng(seed)
    # One draw in each slice of equal probability: the mean hardly depends on the seed.
    levels = (np.arange(_DRAWS) + rng.random(_DRAWS)) / _DRAWS
    cumulative = np.cumsum(weight) / weight.sum()
    cells = np.minimum(np.searchsorted(cumulative, levels), weight.size - 1)
    at_rate, at_half, at_k = np.unravel_index(rng.permutation(cells), log_p.shape)
    return CatchModel(
        rate=rate[at_rate],
        half_h=half_h[at_half],
        k=k[at_k],
        trips=len(trips),
        keepers=sum(trip.keepers for trip in trips),
    )


def _log_normal(value: Floats, median: float, sd_log: float) -> Floats:
    """Return the log density over log(value), up to a constant; the grids are even in the log."""
    density: Floats = -0.5 * (np.log(value / median) / sd_log) ** 2
    return density


def _log_negative_binomial(count: int, mean: Floats, k: Floats) -> Floats:
    """Return the log probability of a count, up to a constant; variance mean + mean^2 / k."""
    gammas = np.array([math.lgamma(count + size) - math.lgamma(size) for size in k])
    log_p: Floats = gammas + k * np.log(k / (k + mean)) + count * np.log(mean / (k + mean))
    return log_p


def _share_draws(share: Interval, count: int, rng: np.random.Generator) -> Floats:
    """Return draws of a share: the beta with its mean and about the spread of its interval."""
    mean = min(max(share.mean, 1e-4), 1 - 1e-4)
    sd = max((share.high - share.low) / (2 * _SD_TO_TAIL), 1e-4)
    size = max(mean * (1 - mean) / sd**2 - 1, _LEAST_BETA_SIZE)
    return rng.beta(mean * size, (1 - mean) * size, count)
