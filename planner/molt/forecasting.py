"""The forecast for a place and its days: draws of what is not known, run through the model."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import numpy as np

from planner.estimates import Band, band_of_draws
from planner.logbook import Log
from planner.molt.forecast_types import Forecast, Why
from planner.molt.learning import DRAWS, learn, shifted
from planner.molt.profile import draw_parameters
from planner.molt.running import run_days
from planner.molt.temperature import from_monthly_means
from planner.sites.site import Site


def forecast(
    site: Site,
    first: date,
    last: date,
    log: Log | None = None,
    seed: int = 0,
    checkpoint: Callable[[], None] = lambda: None,
) -> Forecast:
    """Return the forecast for the local days first..last, both included.

    log: learned from where it holds judged trips of this place; the basis says which.
    seed: of the draws; one seed gives one answer. checkpoint: called between the stages, may
    raise to stop the work.
    Raises RangeError where the moon cannot be computed, ValueError when last precedes first.
    """
    from planner.sky import lunar_age

    if last < first:
        raise ValueError(f"{last} precedes {first}")
    learned = learn(site, log, seed, checkpoint)
    rng = np.random.default_rng(seed)
    if learned is None:
        parameters, place_logit = draw_parameters(site.species, DRAWS, rng), np.zeros(DRAWS)
    else:
        parameters, place_logit = learned.parameters, learned.place_logit
    run = run_days(site, first, last, parameters, rng, checkpoint)
    here = run.light if learned is None else shifted(run.light, place_logit)
    general, season = run.light.mean(axis=0), run.moonless.mean(axis=0)
    yearly = float(run.yearly.mean())
    light = band_of_draws(here)
    monthly_c = site.monthly_water_c
    return Forecast(
        days=run.days,
        fullness=_within(band_of_draws(run.fullness)),
        light_share=_within(light),
        why=Why(
            season=season - yearly,
            moon=general - season,
            # Runs of molting are not learned yet: trips of last week speak as those of last year.
            runs=np.zeros(season.shape),
            place=light.mean - general,
        ),
        yearly_light_share=yearly,
        lunar_age_d=lunar_age(run.noons),
        water_c=(
            np.full(season.shape, np.nan)
            if monthly_c is None
            else from_monthly_means(monthly_c, run.share)
        ),
        basis="prior" if learned is None else "log",
        trips=0 if learned is None else len(learned.trips.days),
    )


def _within(band: Band) -> Band:
    """Return a band whose ends hold its mean; a long tail can carry the mean past an end."""
    return Band(band.mean, np.minimum(band.low, band.mean), np.maximum(band.high, band.mean))
