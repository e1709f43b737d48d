"""What a place's log teaches: draws from the prior, weighted by how well they foretold the trips.

Self-normalised importance sampling: each draw of the parameters, of how this place differs
from the general and of how alike the crabs of one trip are, foretells the light share of every
judged trip; the weight is the beta-binomial likelihood of what came. Runs of molting are not a
part of it yet: they count as likeness within trips, so a light trip last week does not speak
louder than one last year.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass, fields, replace
from datetime import date
from threading import Lock
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from planner.estimates import Floats
from planner.logbook import Log
from planner.molt.profile import Parameters, draw_parameters
from planner.molt.running import run_days
from planner.sites.site import Site

DRAWS: Final = 160
_CANDIDATES: Final = 1200
# Each run of the model is paired with this many places and likenesses, which cost next to
# nothing: what a place is like is what a log tells first.
_PAIRINGS: Final = 24
# How far the light share of a place may lie from the general, on the log-odds scale: one
# standard deviation is a factor 1.6 of the odds; judgement.
_PLACE_SD: Final = 0.5
# Beta-binomial concentration: at 8 the 20 crabs of a trip count as 6; judgement, from design
# effects of trips that are often 2 to 4.
_ALIKE_MEDIAN, _ALIKE_SD_LOG = 8.0, 0.6
# Fewer effective draws than this would make intervals by accident: the likelihood is then
# flattened, which keeps the answer nearer to the prior.
_LEAST_EFFECTIVE: Final = 60.0
_KEPT: Final = 4

Counts = NDArray[np.int64]


@dataclass(frozen=True)
class Judged:
    """Trips whose crabs were judged, in order of time; arrays of shape (n,)."""

    names: tuple[str, ...]
    days: tuple[date, ...]
    judged: Counts
    light: Counts


@dataclass(frozen=True)
class Candidates:
    """Prior draws and what they foretold of each judged trip.

    parameters: one value a run of the model, every run paired with several places; draw i is of
    run i % runs. foretold, moonless: light shares, (draws, trips). log_likelihood: of each
    trip's outcome, (draws, trips), for foretold; moonless_likelihood the same without the moon.
    """

    parameters: Parameters
    place_logit: Floats
    foretold: Floats
    moonless: Floats
    log_likelihood: Floats
    moonless_likelihood: Floats


@dataclass(frozen=True)
class Learned:
    """Draws from what is known after the log: `DRAWS` of them."""

    trips: Judged
    candidates: Candidates
    parameters: Parameters
    place_logit: Floats


def judged_trips(site: Site, log: Log | None) -> Judged:
    """Return the trips of the place that have a time and judged crabs."""
    outcomes = () if log is None else log.outcomes(site.name)
    found = [
        (outcome.when.astimezone(site.zone).date(), outcome.trip, outcome.judged, outcome.light)
        for outcome in outcomes
        if outcome.when is not None and outcome.judged and outcome.light is not None
    ]
    found.sort()
    return Judged(
        names=tuple(name for _, name, _, _ in found),
        days=tuple(day for day, _, _, _ in found),
        judged=np.array([judged for _, _, judged, _ in found], dtype=np.int64),
        light=np.array([light for _, _, _, light in found], dtype=np.int64),
    )


def shifted(share: Floats, logit: Floats) -> Floats:
    """Return shares, (draws, n), moved by log-odds, (draws,)."""
    odds = np.clip(share, 1e-4, 1 - 1e-4)
    moved: Floats = 1 / (1 + (1 - odds) / odds * np.exp(-logit[:, None]))
    return moved


def effective_weights(log_likelihood: Floats) -> Floats:
    """Return weights that add up to one, (draws,), flattened until enough draws count."""
    power, step = 1.0, 0.5
    weights = _weights(log_likelihood, power)
    if _effective(weights) >= _LEAST_EFFECTIVE:
        return weights
    for _ in range(20):
        power += step if _effective(weights) >= _LEAST_EFFECTIVE else -step
        step /= 2
        weights = _weights(log_likelihood, power)
    return weights


def _weights(log_likelihood: Floats, power: float) -> Floats:
    relative = np.exp(power * (log_likelihood - log_likelihood.max()))
    weights: Floats = relative / relative.sum()
    return weights


def _effective(weights: Floats) -> float:
    """Return how many equally weighted draws are worth as much (Kish)."""
    return float(1 / np.sum(weights**2))


_cache: OrderedDict[tuple[Any, ...], Learned] = OrderedDict()
_cache_lock = Lock()


def learn(
    site: Site, log: Log | None, seed: int, checkpoint: Callable[[], None] = lambda: None
) -> Learned | None:
    """Return what the log teaches of a place; None when no trip there was judged.

    Kept by content: the same trips, place and seed give the same draws at once. The order of
    rows does not matter.
    """
    trips = judged_trips(site, log)
    if not trips.days:
        return None
    counts = tuple(zip(trips.days, trips.names, trips.judged, trips.light, strict=True))
    key = (site.species, site.latitude_deg, site.monthly_water_c, site.zone.key, counts, seed)
    with _cache_lock:
        if key in _cache:
            _cache.move_to_end(key)
            return _cache[key]
    learned = _learn(site, trips, seed, checkpoint)
    with _cache_lock:
        _cache[key] = learned
        while len(_cache) > _KEPT:
            _cache.popitem(last=False)
    return learned


def _learn(site: Site, trips: Judged, seed: int, checkpoint: Callable[[], None]) -> Learned:
    rng = np.random.default_rng([seed, 1])
    candidates = _candidates(site, trips, rng, checkpoint)
    weights = effective_weights(candidates.log_likelihood.sum(axis=1))
    # Systematic resampling: each draw is taken as often as its weight says, within one.
    places = (rng.uniform() + np.arange(DRAWS)) / DRAWS
    chosen = np.minimum(np.searchsorted(np.cumsum(weights), places), weights.size - 1)
    return Learned(
        trips=trips,
        candidates=candidates,
        parameters=_taken(candidates.parameters, chosen % _CANDIDATES),
        place_logit=candidates.place_logit[chosen],
    )


def _candidates(
    site: Site, trips: Judged, rng: np.random.Generator, checkpoint: Callable[[], None]
) -> Candidates:
    parameters = draw_parameters(site.species, _CANDIDATES, rng)
    draws = _CANDIDATES * _PAIRINGS
    place_logit = rng.normal(0, _PLACE_SD, draws)
    alike = _ALIKE_MEDIAN * np.exp(rng.normal(0, _ALIKE_SD_LOG, draws))
    run = run_days(site, trips.days[0], trips.days[-1], parameters, rng, checkpoint)
    at = [(day - trips.days[0]).days for day in trips.days]
    foretold = shifted(np.tile(run.light[:, at], (_PAIRINGS, 1)), place_logit)
    moonless = shifted(np.tile(run.moonless[:, at], (_PAIRINGS, 1)), place_logit)
    return Candidates(
        parameters=parameters,
        place_logit=place_logit,
        foretold=foretold,
        moonless=moonless,
        log_likelihood=_log_likelihood(foretold, alike, trips),
        moonless_likelihood=_log_likelihood(moonless, alike, trips),
    )


def _log_likelihood(share: Floats, alike: Floats, trips: Judged) -> Floats:
    """Return the beta-binomial log likelihood of each trip, (draws, trips), without constants."""
    from scipy.special import betaln

    a = share * alike[:, None]
    b = (1 - share) * alike[:, None]
    likelihood: Floats = betaln(a + trips.light, b + trips.judged - trips.light) - betaln(a, b)
    return likelihood


def _taken(parameters: Parameters, chosen: NDArray[np.intp]) -> Parameters:
    values: dict[str, Any] = {
        each.name: getattr(parameters, each.name)[chosen]
        for each in fields(parameters)
        if each.name != "steps"
    }
    return replace(parameters, **values)
