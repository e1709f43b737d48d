"""The forecast for a place and its days: draws of what is not known, run through the model."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.clock import day_edges, days_between
from planner.estimates import Band, Floats, band_of_draws
from planner.logbook import Log
from planner.molt.dynamics import Clocks, catch_quality, fresh_clocks, refill_clock, run_clocks
from planner.molt.forecast_types import Forecast, Why
from planner.molt.profile import Parameters, draw_parameters, lunar_factor, repeated
from planner.molt.temperature import draw_temperatures, from_monthly_means, year_share
from planner.sites.site import Site

DRAWS: Final = 200
# The chain forgets where it began in two years; the catch forgets molts in four months.
_SETTLE_DAYS: Final = 730
_BEFORE_DAYS: Final = 120


def forecast(
    site: Site,
    first: date,
    last: date,
    log: Log | None = None,  # noqa: ARG001  (learning is to come; see the basis)
    seed: int = 0,
    checkpoint: Callable[[], None] = lambda: None,
) -> Forecast:
    """Return the forecast for the local days first..last, both included.

    log: trips known so far; the prior does not learn from them yet and says so by its basis.
    seed: of the draws; one seed gives one answer. checkpoint: called between the stages, may
    raise to stop the work.
    Raises RangeError where the moon cannot be computed, ValueError when last precedes first.
    """
    from planner.sky import lunar_age, lunar_phase_angle

    if last < first:
        raise ValueError(f"{last} precedes {first}")
    rng = np.random.default_rng(seed)
    days = days_between(first - timedelta(days=_BEFORE_DAYS), last)
    shown = slice(_BEFORE_DAYS, None)
    edges = day_edges(days[0], last, site.zone)
    noons = edges[:-1] + (edges[1:] - edges[:-1]) // 2
    phase_deg = lunar_phase_angle(noons)
    checkpoint()
    parameters = draw_parameters(site.species, DRAWS, rng)
    share = year_share(days)
    settling, water_c = _temperatures(site, share, rng)
    clocks, yearly = _settle(parameters, settling)
    checkpoint()
    # With and without the moon in one pass: the steps from day to day are what costs.
    both = repeated(parameters, 2)
    water_twice = np.concatenate([water_c, water_c])
    factor = np.concatenate([np.ones(water_c.shape), lunar_factor(parameters, phase_deg)])
    clocks = Clocks(np.tile(clocks.steps, (2, 1)), np.tile(clocks.ready, 2))
    molts, _ = run_clocks(both, water_twice, factor, clocks)
    checkpoint()
    fullness, light = catch_quality(both, molts, refill_clock(both, water_twice))
    light_without, light = light[:DRAWS], light[DRAWS:]
    fullness = fullness[DRAWS:]
    checkpoint()
    season = light_without[:, shown].mean(axis=0)
    light_band = band_of_draws(light[:, shown])
    nothing = np.zeros(season.shape)
    return Forecast(
        days=tuple(days[shown]),
        fullness=_within(band_of_draws(fullness[:, shown])),
        light_share=_within(light_band),
        why=Why(season - yearly, light_band.mean - season, nothing, nothing),
        yearly_light_share=yearly,
        lunar_age_d=lunar_age(noons[shown]),
        water_c=(
            from_monthly_means(site.monthly_water_c, share[shown])
            if site.monthly_water_c is not None
            else np.full(season.shape, np.nan)
        ),
        basis="prior",
        trips=0,
    )


def _temperatures(site: Site, share: Floats, rng: np.random.Generator) -> tuple[Floats, Floats]:
    """Return temperatures, (draws, days), of the two years before the span and of the span."""
    before = (share[0] + np.arange(-_SETTLE_DAYS, 0) / 365.2425) % 1.0
    both = draw_temperatures(
        site.monthly_water_c, site.latitude_deg, np.concatenate([before, share]), DRAWS, rng
    )
    return both[:, :_SETTLE_DAYS], both[:, _SETTLE_DAYS:]


def _settle(parameters: Parameters, water_c: Floats) -> tuple[Clocks, float]:
    """Return the chain after the settling years, and their last year's mean light share."""
    calm = np.ones(water_c.shape)
    molts, clocks = run_clocks(parameters, water_c, calm, fresh_clocks(parameters))
    _, light = catch_quality(parameters, molts, refill_clock(parameters, water_c))
    return clocks, float(light[:, -365:].mean())


def _within(band: Band) -> Band:
    """Return a band whose ends hold its mean; a long tail can carry the mean past an end."""
    return Band(band.mean, np.minimum(band.low, band.mean), np.maximum(band.high, band.mean))
