"""The model run over consecutive local days of a place, with and without the moon."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.clock import Instants, day_edges, days_between
from planner.estimates import Floats
from planner.molt.dynamics import Clocks, catch_quality, fresh_clocks, refill_clock, run_clocks
from planner.molt.profile import Parameters, lunar_factor, repeated
from planner.molt.temperature import draw_temperatures, year_share
from planner.sites.site import Site

# The chain forgets where it began in two years; the catch forgets molts in four months.
_SETTLE_DAYS: Final = 730
_BEFORE_DAYS: Final = 120


@dataclass(frozen=True)
class Run:
    """Fullness and share of light crabs by draw and day, shape (draws, n).

    moonless: the share without the moon. yearly: its mean over a year, (draws,). noons: UTC,
    phase_deg and share (of the year gone): (n,).
    """

    days: tuple[date, ...]
    fullness: Floats
    light: Floats
    moonless: Floats
    yearly: Floats
    noons: Instants
    phase_deg: Floats
    share: Floats


def run_days(
    site: Site,
    first: date,
    last: date,
    parameters: Parameters,
    rng: np.random.Generator,
    checkpoint: Callable[[], None] = lambda: None,
) -> Run:
    """Return the model's days first..last for draws of its parameters.

    rng: for the years' water temperatures. checkpoint: called between the stages, may raise.
    Raises RangeError where the moon cannot be computed.
    """
    from planner.sky import lunar_phase_angle

    days = days_between(first - timedelta(days=_BEFORE_DAYS), last)
    edges = day_edges(days[0], last, site.zone)
    noons = edges[:-1] + (edges[1:] - edges[:-1]) // 2
    phase_deg = lunar_phase_angle(noons)
    checkpoint()
    share = year_share(days)
    settling, water_c = _temperatures(site, share, parameters.base_c.size, rng)
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
    checkpoint()
    draws, shown = parameters.base_c.size, slice(_BEFORE_DAYS, None)
    return Run(
        days=tuple(days[shown]),
        fullness=fullness[draws:, shown],
        light=light[draws:, shown],
        moonless=light[:draws, shown],
        yearly=yearly,
        noons=noons[shown],
        phase_deg=phase_deg[shown],
        share=share[shown],
    )


def _temperatures(
    site: Site, share: Floats, draws: int, rng: np.random.Generator
) -> tuple[Floats, Floats]:
    """Return temperatures, (draws, days), of the two years before the span and of the span."""
    before = (share[0] + np.arange(-_SETTLE_DAYS, 0) / 365.2425) % 1.0
    both = draw_temperatures(
        site.monthly_water_c, site.latitude_deg, np.concatenate([before, share]), draws, rng
    )
    return both[:, :_SETTLE_DAYS], both[:, _SETTLE_DAYS:]


def _settle(parameters: Parameters, water_c: Floats) -> tuple[Clocks, Floats]:
    """Return the chain after the settling years, and their last year's mean light share."""
    calm = np.ones(water_c.shape)
    molts, clocks = run_clocks(parameters, water_c, calm, fresh_clocks(parameters))
    year = slice(-365 - _BEFORE_DAYS, None)
    refill = refill_clock(parameters, water_c[:, year])
    _, light = catch_quality(parameters, molts[:, year], refill)
    return clocks, light[:, -365:].mean(axis=1)
