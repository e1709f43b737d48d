"""How forecasts did: each past trip as foreseen from earlier trips only, and its scores."""

from __future__ import annotations

import math
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.molt.curves import share
from planner.molt.evidence_types import PastForecast, Record
from planner.molt.learning import Learned

# How many crabs the prior's yearly average counts for in the running average; judgement.
_PRIOR_CRABS: Final = 2.0
_SURE: Final = 1e-4


def record_of(learned: Learned, season_only: Learned) -> Record:
    """Return the record of the trips at the place that judged crabs, from the second on.

    season_only: what the same log says to a model without moon and runs. The running average
    begins from the prior's yearly mean.
    """
    trips = learned.trips
    counted = trips.judged[trips.here] > 0
    judged, light = trips.judged[trips.counted_here], trips.light[trips.counted_here]
    forecasts = [each for each, told in zip(learned.foreseen, counted, strict=True) if told]
    foreseen = np.array([each.mean for each in forecasts])
    season = np.array([each.mean for each in season_only.foreseen])[counted]
    running = _running_average(learned, judged, light)
    at = np.flatnonzero(trips.counted_here)[1:]
    past = tuple(
        PastForecast(
            trip=trips.outcomes[i].trip,
            day=trips.days[i],
            forecast=forecasts[k],
            judged=int(trips.judged[i]),
            light=int(trips.light[i]),
        )
        for k, i in enumerate(at, start=1)
    )
    scores = [scores_of(each[1:], judged[1:], light[1:]) for each in (foreseen, season, running)]
    return Record(past, *(brier for brier, _ in scores), *(log for _, log in scores))


def scores_of(forecast: Floats, judged: Floats, light: Floats) -> tuple[float, float]:
    """Return Brier score (Brier 1950) and negative log likelihood, means over crabs.

    NaN without crabs.
    """
    crabs = judged.sum()
    if crabs == 0:
        return math.nan, math.nan
    light_share = np.clip(forecast, _SURE, 1 - _SURE)
    full = judged - light
    brier = light * (1 - light_share) ** 2 + full * light_share**2
    log = -(light * np.log(light_share) + full * np.log(1 - light_share))
    return float(brier.sum() / crabs), float(log.sum() / crabs)


def _running_average(learned: Learned, judged: Floats, light: Floats) -> Floats:
    """Return the share of all earlier crabs that were light, for each trip."""
    year = learned.year
    weights = np.exp(year.swings.log_weight)
    general = float(weights @ share(year.log_odds).mean(axis=1) / weights.sum())
    before = np.cumsum(judged) - judged
    light_before = np.cumsum(light) - light
    average: Floats = (light_before + _PRIOR_CRABS * general) / (before + _PRIOR_CRABS)
    return average
