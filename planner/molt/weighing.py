"""Weighing the evidence: how much season, moon and place move the light share, and the record."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import date
from typing import Final

import numpy as np

from planner.estimates import INTERVAL_TAILS, Floats, Interval, band_of_draws, interval_of_draws
from planner.logbook import Log
from planner.molt.evidence_types import Cause, Curve, Effect, Evidence, PastForecast, Record
from planner.molt.learning import Learned, effective_weights, learn, shifted
from planner.molt.running import Run, run_days
from planner.sites.site import Site

_LUNATION_D: Final = 29.530589
# A difference is settled when its 80% interval is no wider than this to either side.
_SETTLED: Final = 0.05
# A record needs some trips to forecast from before its first forecast is worth scoring.
_FIRST_SCORED: Final = 3
_NOTHING: Final = Record((), *(math.nan,) * 6)


def evidence(
    site: Site, log: Log | None, seed: int = 0, checkpoint: Callable[[], None] = lambda: None
) -> Evidence | None:
    """Return what a place's log teaches of its light crabs; None when no trip was judged.

    Effects are light shares from the best to the worst of a place's days, over the draws that
    the log leaves. Runs of molting are not weighed yet.
    Raises RangeError where the moon cannot be computed.
    """
    learned = learn(site, log, seed, checkpoint)
    if learned is None:
        return None
    year = learned.trips.days[-1].year
    rng = np.random.default_rng([seed, 2])
    run = run_days(site, date(year, 1, 1), date(year, 12, 31), learned.parameters, rng, checkpoint)
    lunar = _lunar_waves(run)
    level = shifted(run.moonless, learned.place_logit)
    moon_swing = lunar.max(axis=1) - lunar.min(axis=1)
    place = np.abs((shifted(run.light, learned.place_logit) - run.light).mean(axis=1))
    swings: tuple[tuple[Cause, Floats], ...] = (
        ("moon", moon_swing),
        ("season", _monthly(level).max(axis=1) - _monthly(level).min(axis=1)),
        ("place", place),
    )
    effects = [_effect(cause, swing, learned) for cause, swing in swings]
    effects.sort(key=lambda effect: -effect.swing.mean)
    ages = np.linspace(0, _LUNATION_D, lunar.shape[1])
    return Evidence(
        effects=tuple(effects),
        moon=Curve(ages, band_of_draws(np.clip(level.mean(axis=1)[:, None] + lunar, 0, 1))),
        season=Curve(np.arange(level.shape[1], dtype=np.float64), band_of_draws(level)),
        record=_record(learned),
        trips=len(learned.trips.days),
        crabs=int(learned.trips.judged.sum()),
    )


def _lunar_waves(run: Run) -> Floats:
    """Return what the moon adds over a lunation, (draws, 61), by its first two harmonics."""
    wave = run.light - run.moonless
    phase = np.radians(run.phase_deg)
    terms = np.stack([np.cos(phase), np.sin(phase), np.cos(2 * phase), np.sin(2 * phase)])
    fitted, *_ = np.linalg.lstsq(terms.T, wave.T, rcond=None)
    grid = np.linspace(0, 2 * np.pi, 61)
    shape = np.stack([np.cos(grid), np.sin(grid), np.cos(2 * grid), np.sin(2 * grid)])
    waves: Floats = fitted.T @ shape
    return waves


def _monthly(level: Floats) -> Floats:
    """Return means of about a month, (draws, 12)."""
    return np.stack([part.mean(axis=1) for part in np.array_split(level, 12, axis=1)], axis=1)


def _effect(cause: Cause, swing: Floats, learned: Learned) -> Effect:
    trips = len(learned.trips.days)
    interval = interval_of_draws(swing)
    half = (interval.high - interval.low) / 2
    # Widths shrink with the square root of the trips behind them.
    more = math.ceil(trips * ((half / _SETTLED) ** 2 - 1))
    return Effect(
        cause=cause,
        swing=interval,
        draws=swing,
        trips=trips,
        crabs=int(learned.trips.judged.sum()),
        trips_to_settle=max(more, 0),
    )


def _record(learned: Learned) -> Record:
    """Return forecasts of past trips, each from the trips before it alone, and their scores."""
    trips, found = learned.trips, learned.candidates
    scored = range(_FIRST_SCORED, len(trips.days))
    if not scored:
        return _NOTHING
    with_moon = _sequential(found.foretold, found.log_likelihood)
    without = [band.mean for band in _sequential(found.moonless, found.moonless_likelihood)]
    running = [
        (0.5 + trips.light[:at].sum()) / (1 + trips.judged[:at].sum())
        for at in range(len(trips.days))
    ]
    forecasts = [band.mean for band in with_moon]
    scores = [_scores(learned, each, scored) for each in (forecasts, without, running)]
    return Record(
        tuple(
            PastForecast(
                trips.names[at],
                trips.days[at],
                with_moon[at],
                int(trips.judged[at]),
                int(trips.light[at]),
            )
            for at in scored
        ),
        *(brier for brier, _ in scores),
        *(log_score for _, log_score in scores),
    )


def _sequential(foretold: Floats, log_likelihood: Floats) -> list[Interval]:
    """Return the forecast of each trip from the ones before it."""
    forecasts = []
    for at in range(foretold.shape[1]):
        weights = effective_weights(log_likelihood[:, :at].sum(axis=1))
        order = np.argsort(foretold[:, at])
        gone = np.cumsum(weights[order])
        ends = np.minimum(np.searchsorted(gone, INTERVAL_TAILS), order.size - 1)
        low, high = (float(end) for end in foretold[order[ends], at])
        mean = float(weights @ foretold[:, at])
        forecasts.append(Interval(mean, min(low, mean), max(high, mean)))
    return forecasts


def _scores(learned: Learned, forecasts: list[float], scored: range) -> tuple[float, float]:
    """Return Brier and log score, means over crabs."""
    judged = learned.trips.judged[list(scored)]
    light = learned.trips.light[list(scored)]
    share = np.clip(np.array([forecasts[at] for at in scored]), 1e-3, 1 - 1e-3)
    brier = light * (1 - share) ** 2 + (judged - light) * share**2
    log_score = -(light * np.log(share) + (judged - light) * np.log(1 - share))
    return float(brier.sum() / judged.sum()), float(log_score.sum() / judged.sum())
