"""The forecast for a place and its days, from the prior or from what the log taught."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Final

import numpy as np

from planner.clock import day_edges, days_between
from planner.estimates import Band, Floats, band_of_draws
from planner.logbook import Log
from planner.molt.curves import PosteriorDraws, Span, share, span_of
from planner.molt.forecast_types import Forecast, Why
from planner.molt.learning import Learned, learn
from planner.molt.temperature import year_share
from planner.molt.trips_judged import days_of
from planner.molt.year import DAYS
from planner.sites.site import Site

# Days worked out at a time: years of days in draws would fill the memory.
_CHUNK_DAYS: Final = 366


def forecast(
    site: Site,
    first: date,
    last: date,
    log: Log | None = None,
    seed: int = 0,
    checkpoint: Callable[[], None] = lambda: None,
) -> Forecast:
    """Return the forecast for the local days first..last, both included.

    log: trips to learn from, those of the user's other places more weakly. What recent trips
    say of a run of molting goes into a day only from trips before that day.
    seed: of the draws; one seed and log give one answer. checkpoint: called between the stages,
    may raise to stop the work.
    Raises RangeError where the moon cannot be computed, ValueError when last precedes first.
    """
    from planner.sky import lunar_age, lunar_phase_angle

    if last < first:
        raise ValueError(f"{last} precedes {first}")
    days = days_between(first, last)
    edges = day_edges(first, last, site.zone)
    noons = edges[:-1] + (edges[1:] - edges[:-1]) // 2
    phase_deg = lunar_phase_angle(noons)
    checkpoint()
    learned = learn(site, log, checkpoint)
    return forecast_learned(
        learned,
        span_of(days, days_of(noons), np.radians(phase_deg)),
        lunar_age(noons),
        seed,
        checkpoint,
    )


def forecast_learned(
    learned: Learned,
    span: Span,
    lunar_age_d: Floats,
    seed: int = 0,
    checkpoint: Callable[[], None] = lambda: None,
) -> Forecast:
    """Return the forecast of days from what was learned."""
    draws = PosteriorDraws(learned, seed)
    trips = len(learned.trips.days)
    checkpoint()
    chunks = []
    for start in range(0, len(span.days), _CHUNK_DAYS):
        chunks.append(_chunk(draws, span.part(slice(start, start + _CHUNK_DAYS)), trips > 0))
        checkpoint()
    season, place, moon, light, light_low, light_high, full, full_low, full_high = np.hstack(chunks)
    yearly = float(share(draws.season_log_odds(np.arange(0, DAYS, 5))).mean())
    usual_c = learned.water.expected(year_share(span.days)) + learned.water.spell(span.days)
    return Forecast(
        days=span.days,
        fullness=_within(Band(full, full_low, full_high)),
        light_share=_within(Band(light, light_low, light_high)),
        why=Why(season=season - yearly, moon=moon - place, runs=light - moon, place=place - season),
        yearly_light_share=yearly,
        lunar_age_d=lunar_age_d,
        water_c=usual_c if learned.water.known else np.full(usual_c.shape, np.nan),
        basis="log" if trips else "prior",
        trips=trips,
    )


def _chunk(draws: PosteriorDraws, span: Span, logged: bool) -> Floats:
    """Return rows of means by season, with place, with moon, of all; and the bands, (9, days)."""
    parts = draws.parts(span)
    light, full = band_of_draws(parts.and_runs), band_of_draws(parts.fullness)
    season = parts.season.mean(axis=0)
    if logged:
        means = [parts.and_place.mean(axis=0), parts.and_moon.mean(axis=0), light.mean]
        full_mean = full.mean
    else:
        # Without a log, place and runs widen the forecast but move it nowhere.
        moon = parts.moon_alone.mean(axis=0)
        means = [season, moon, moon]
        full_mean = parts.fullness_alone.mean(axis=0)
    return np.stack([season, *means, light.low, light.high, full_mean, full.low, full.high])


def _within(band: Band) -> Band:
    """Return a band whose ends hold its mean; a long tail can carry the mean past an end."""
    return Band(band.mean, np.minimum(band.low, band.mean), np.maximum(band.high, band.mean))
