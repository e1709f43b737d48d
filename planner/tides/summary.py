"""What kind of tide a place has: range, type, springs and neaps, highest and lowest."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.sites.site import NodeRule, Water
from planner.tides.tide import Tide
from planner.words import say

# Nineteen whole years hold one turn of the moon's node, as the epochs of tidal datums do.
NODE_CYCLE_YEARS: Final = 19
_LUNAR_DAY_MS: Final = 89_428_328  # 24 h 50.47 min
_FORTNIGHT_LUNAR_DAYS: Final = 14.7653 / 1.035050  # half a lunation, from springs to springs

# Bounds of the form number (K1 + O1) / (M2 + S2) after Courtier: standard usage.
_TYPES: Final = (
    (0.25, say("semidiurnal: two tides a day, nearly alike")),
    (1.5, say("mixed, mainly semidiurnal: two unequal tides a day")),
    (3.0, say("mixed, mainly diurnal: one or two very unequal tides a day")),
    (np.inf, say("diurnal: one tide a day")),
)
_MOST_KEPT: Final = 8


@dataclass(frozen=True)
class WaterSummary:
    """The tide of a place over nineteen years from `first_year`; metres above its datum.

    mean_range_m: mean high less mean low water. springs_range_m, neaps_range_m: the largest
    and the smallest daily range of a fortnight, averaged over all fortnights.
    mean_higher_high_m, mean_lower_low_m: means of the day's highest and lowest level.
    other_rule_differs_m: most that the rule for node factors not in use would change a level
    in the first year.
    """

    first_year: int
    mean_level_m: float
    mean_range_m: float
    springs_range_m: float
    neaps_range_m: float
    mean_high_m: float
    mean_low_m: float
    mean_higher_high_m: float
    mean_lower_low_m: float
    highest_m: float
    highest_at: np.datetime64
    lowest_m: float
    lowest_at: np.datetime64
    form_number: float
    tide_type: str
    node_factors: NodeRule
    other_rule_differs_m: float


# By the water alone, so that a new name or spot finds it. Oldest first.
_kept: dict[tuple[Water, NodeRule, int], WaterSummary | None] = {}


def form_number(water: Water) -> float:
    """Return (K1 + O1) / (M2 + S2) of a place, or of its reference place.

    Infinite where there is no semidiurnal tide; NaN where there is no diurnal one either.
    """
    if water.offsets is not None:
        return form_number(water.offsets.reference.water)
    size = {each.constituent: each.amplitude_m for each in water.constants}
    diurnal = size.get("K1", 0.0) + size.get("O1", 0.0)
    semidiurnal = size.get("M2", 0.0) + size.get("S2", 0.0)
    if semidiurnal == 0:
        return np.inf if diurnal > 0 else np.nan
    return diurnal / semidiurnal


def tide_type(form: float) -> str:
    """Return the kind of tide that a form number stands for, in words."""
    unnamed = say("no daily tide: M2, S2, K1 and O1 are all missing")
    return next((words for bound, words in _TYPES if form <= bound), unnamed)


def type_text(summary: WaterSummary) -> str:
    """Return the kind of tide with its form number, where there is one."""
    if not np.isfinite(summary.form_number):
        return summary.tide_type
    return say(
        "{tide_type} (form number {form_number:.2f})",
        tide_type=summary.tide_type,
        form_number=summary.form_number,
    )


def summarise(tide: Tide, first_year: int = 2008) -> WaterSummary | None:
    """Return the summary of a place; None where the water never turns.

    Those of the last few waters are kept: whoever looks at a place, edits its spots and saves it
    asks for the same one again and again.
    """
    key = (tide.site.water, tide.node_factors, first_year)
    try:
        return _kept[key]
    except KeyError:
        found = _kept[key] = _summary(tide, first_year)
    for oldest in list(_kept)[:-_MOST_KEPT]:
        _kept.pop(oldest, None)
    return found


def _summary(tide: Tide, first_year: int) -> WaterSummary | None:
    start = np.datetime64(f"{first_year}-01-01", "ms")
    stop = np.datetime64(f"{first_year + NODE_CYCLE_YEARS}-01-01", "ms")
    turns = tide.turns(start, stop)
    if len(turns.times) < 2:
        return None
    highs, lows = turns.heights[turns.is_high], turns.heights[~turns.is_high]
    days = tide.daily_range(np.arange(start, stop, np.timedelta64(_LUNAR_DAY_MS, "ms")))
    springs, neaps = _springs_and_neaps(days.highest - days.lowest)
    top, bottom = turns.heights.argmax(), turns.heights.argmin()
    form = form_number(tide.site.water)
    return WaterSummary(
        first_year=first_year,
        mean_level_m=float((days.highest.mean() + days.lowest.mean()) / 2)
        if tide.site.water.offsets
        else tide.site.water.mean_level_m,
        mean_range_m=float(highs.mean() - lows.mean()),
        springs_range_m=springs,
        neaps_range_m=neaps,
        mean_high_m=float(highs.mean()),
        mean_low_m=float(lows.mean()),
        mean_higher_high_m=float(days.highest.mean()),
        mean_lower_low_m=float(days.lowest.mean()),
        highest_m=float(turns.heights[top]),
        highest_at=turns.times[top],
        lowest_m=float(turns.heights[bottom]),
        lowest_at=turns.times[bottom],
        form_number=form,
        tide_type=tide_type(form),
        node_factors=tide.node_factors,
        other_rule_differs_m=_other_rule_differs(tide, start),
    )


def _springs_and_neaps(daily: Floats) -> tuple[float, float]:
    """Return the mean largest and the mean smallest range of whole fortnights."""
    fortnight = (np.arange(daily.size) / _FORTNIGHT_LUNAR_DAYS).astype(np.int64)
    begins = np.flatnonzero(np.diff(fortnight, prepend=-1))[:-1]
    whole = daily[: np.searchsorted(fortnight, fortnight[-1])]
    return (
        float(np.maximum.reduceat(whole, begins).mean()),
        float(np.minimum.reduceat(whole, begins).mean()),
    )


def _other_rule_differs(tide: Tide, start: np.datetime64) -> float:
    other: NodeRule = "continuous" if tide.node_factors == "yearly" else "yearly"
    span = (start, start + np.timedelta64(365, "D"), np.timedelta64(1, "h"))
    ours, theirs = tide.series(*span)[1], Tide(tide.site, other).series(*span)[1]
    return float(np.abs(ours - theirs).max())
