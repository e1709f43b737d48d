"""How forecasts did: each past trip as foreseen from earlier trips only, and its scores."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

import numpy as np

from planner.estimates import INTERVAL_TAILS, Floats, Interval
from planner.molt.evidence_types import PastForecast, Record, Reliable
from planner.molt.learning import Learned

# How many crabs the prior's yearly average counts for in the running average; judgement.
_PRIOR_CRABS: Final = 2.0
_SURE: Final = 1e-4
# Groups of past trips for the reliability picture; judgement.
_FEWEST_IN_GROUP: Final = 4
_MOST_GROUPS: Final = 5


def record_of(learned: Learned, season_only: Learned, alike_size: float) -> Record:
    """Return the record of the trips at the place that judged crabs, from the second on.

    season_only: what the same log says to a model without moon and runs. The running average
    begins from the prior's yearly mean. alike_size: how alike the crabs of one trip are.
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
    groups = reliability_of(past, alike_size)
    return Record(past, groups, *(brier for brier, _ in scores), *(log for _, log in scores))


def reliability_of(past: Sequence[PastForecast], alike_size: float) -> tuple[Reliable, ...]:
    """Return forecasts against outcomes in up to five groups of trips with like forecasts.

    The interval of a share is Jeffreys' on as many crabs as those are worth that are alike
    within a trip: a variance of 1 + (n - 1) / (size + 1) times a binomial's at n crabs a trip.
    """
    from scipy.special import betaincinv

    count = min(len(past) // _FEWEST_IN_GROUP, _MOST_GROUPS)
    if count < 2:
        return ()
    ordered = sorted(past, key=lambda trip: trip.forecast.mean)
    groups = []
    for places in np.array_split(np.arange(len(ordered)), count):
        trips = [ordered[place] for place in places]
        judged = np.array([trip.judged for trip in trips], dtype=np.float64)
        crabs, light = judged.sum(), float(sum(trip.light for trip in trips))
        worth = crabs / (judged * (1 + (judged - 1) / (alike_size + 1))).sum()
        hits, misses = worth * light + 0.5, worth * (crabs - light) + 0.5
        low, high = (float(betaincinv(hits, misses, tail)) for tail in INTERVAL_TAILS)
        came = light / crabs
        foreseen = float(judged @ [trip.forecast.mean for trip in trips] / crabs)
        interval = Interval(came, min(low, came), max(high, came))
        groups.append(Reliable(foreseen, interval, len(trips), int(crabs)))
    return tuple(groups)


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
    before = np.cumsum(judged) - judged
    light_before = np.cumsum(light) - light
    average: Floats = (light_before + _PRIOR_CRABS * learned.believed_light) / (
        before + _PRIOR_CRABS
    )
    return average
