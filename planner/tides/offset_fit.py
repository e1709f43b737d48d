"""Offsets to a reference place from a handful of observed high and low waters."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.errors import PlannerError
from planner.estimates import Floats, Interval
from planner.sites.site import Offsets
from planner.tides.alignment import align
from planner.tides.matching import match
from planner.tides.observed import ObservedTurns
from planner.tides.tide import Tide
from planner.words import counted, say

_FEWEST_OF_A_KIND: Final = 3


@dataclass(frozen=True)
class FittedOffsets:
    """Offsets to a reference place with 80% intervals, and how well they are known.

    high_height, low_height: the factor where `..._is_factor`, else what is added in metres.
    scatter_min, scatter_m: what single turns differ by from the fit.
    verdict: one plain sentence or two.
    """

    offsets: Offsets
    high_minutes: Interval
    low_minutes: Interval
    high_height: Interval
    low_height: Interval
    high_is_factor: bool
    low_is_factor: bool
    scatter_min: float
    scatter_m: float
    highs: int
    lows: int
    verdict: str


def fit_offsets(reference: Tide, observed: ObservedTurns) -> FittedOffsets:
    """Return time differences and height ratios, or additions, by least squares.

    observed: turns at the place itself, heights above its own datum. Highs and lows each get
    minutes and one number for the height: the factor or the addition, whichever leaves less.
    PlannerError with fewer than three of either kind.
    """
    matched = match(reference, observed, align(reference, observed).shift_min)
    kinds = []
    for high in (True, False):
        mine = matched.is_high == high
        if mine.sum() < _FEWEST_OF_A_KIND:
            raise PlannerError(_too_few(int(mine.sum()), high=high))
        minutes = _mean_interval(matched.delay_min[mine])
        height, is_factor, left = _height(matched.there_m[mine], matched.here_m[mine])
        kinds.append((minutes, height, is_factor, left, matched.delay_min[mine] - minutes.mean))
    (high_min, high_m, high_factor, high_left, high_late) = kinds[0]
    (low_min, low_m, low_factor, low_left, low_late) = kinds[1]
    freedom = matched.delay_min.size - 2
    scatter_min = float(np.sqrt(((high_late**2).sum() + (low_late**2).sum()) / freedom))
    scatter_m = float(np.sqrt(((high_left**2).sum() + (low_left**2).sum()) / freedom))
    offsets = Offsets(
        reference.site,
        high_minutes=high_min.mean,
        low_minutes=low_min.mean,
        high_factor=high_m.mean if high_factor else 1.0,
        low_factor=low_m.mean if low_factor else 1.0,
        high_add_m=0.0 if high_factor else high_m.mean,
        low_add_m=0.0 if low_factor else low_m.mean,
    )
    return FittedOffsets(
        offsets, high_min, low_min, high_m, low_m, high_factor, low_factor,
        scatter_min, scatter_m, len(high_late), len(low_late),
        _verdict((high_min, low_min), scatter_m, len(high_late) + len(low_late)),
    )  # fmt: skip


def _mean_interval(values: Floats) -> Interval:
    """Return a mean with its 80% interval by Student's t."""
    mean, error = float(values.mean()), float(values.std(ddof=1)) / np.sqrt(values.size)
    reach = error * _student(values.size - 1)
    return Interval(mean, mean - reach, mean + reach)


def _height(there: Floats, here: Floats) -> tuple[Interval, bool, Floats]:
    """Return factor or addition with its interval, which it is, and what is left over."""
    added = here - there
    addition = _mean_interval(added)
    rest = added - addition.mean
    power = float(there @ there)
    if power == 0:
        return addition, False, rest
    factor = float(there @ here) / power
    left = here - factor * there
    if float(left @ left) > float(rest @ rest) or factor <= 0:
        return addition, False, rest
    freedom = there.size - 1
    reach = float(np.sqrt(left @ left / freedom / power)) * _student(freedom)
    return Interval(factor, factor - reach, factor + reach), True, left


def _student(freedom: int) -> float:
    from scipy.stats import t

    return float(t.ppf(0.90, freedom))


def _verdict(minutes: Sequence[Interval], scatter_m: float, count: int) -> str:
    """Return how far the offsets can be trusted, in words (bounds are this program's own)."""
    widest = max((each.high - each.low) / 2 for each in minutes)
    known = (
        say("well known")
        if widest <= 5
        else say("roughly known")
        if widest <= 15
        else say("hardly known")
    )
    text = say(
        "From {count} turns the times are {known} (to about {value} min) and "
        "single heights differ from the fit by about {scatter_m} cm.",
        count=count,
        known=known,
        value=max(1, round(widest)),
        scatter_m=round(scatter_m * 100),
    )
    return (
        text
        if widest <= 5
        else say("{given} More observed turns, on calm days, would help.", given=text)
    )


def _too_few(count: int, *, high: bool) -> str:
    if high:
        waters = counted(count, "observed high water fits", "observed high waters fit")
    else:
        waters = counted(count, "observed low water fits", "observed low waters fit")
    return say(
        "{waters} the reference place's; note at least {fewest} of each kind, with their heights.",
        waters=waters,
        fewest=_FEWEST_OF_A_KIND,
    )
