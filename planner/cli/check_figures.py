"""The figures of `fullshell check`, as programs read them."""

from __future__ import annotations

from dataclasses import astuple
from typing import TYPE_CHECKING, Any

import numpy as np

from planner.cli.answers import number
from planner.estimates import Floats
from planner.words import say

if TYPE_CHECKING:
    from planner.tides.checks import Comparison, WaterSummary
    from planner.tides.fit import FittedWater

FIGURES = {
    "mean_level_m": say("mean level"),
    "mean_range_m": say("mean range"),
    "springs_range_m": say("range at springs"),
    "neaps_range_m": say("range at neaps"),
    "mean_higher_high_m": say("mean higher high water"),
    "mean_lower_low_m": say("mean lower low water"),
    "highest_m": say("highest in 19 years"),
    "lowest_m": say("lowest in 19 years"),
}

FITTED = (
    "constituent", "amplitude_m", "amplitude_low_m", "amplitude_high_m",
    "lag_deg", "lag_low_deg", "lag_high_deg", "stands_out",
)  # fmt: skip


def fit_rows(found: FittedWater) -> list[dict[str, Any]]:
    """Return a row of figures for each fitted constituent, by the names of FITTED."""
    return [
        dict(
            zip(
                FITTED,
                (
                    each.constituent,
                    *(number(value, 4) for value in astuple(each.amplitude_m)[:3]),
                    *(number(value, 2) for value in astuple(each.phase_lag_deg)[:3]),
                    each.significant,
                ),
                strict=True,
            )
        )
        for each in found.constituents
    ]


def fit_figures(found: FittedWater) -> dict[str, Any]:
    """Return the figures of a fit to levels."""
    return {
        "days": number(found.record_days, 2),
        "levels": found.levels_used,
        "mean_level_m": number(found.mean_level_m, 4),
        "residual_sd_m": number(found.residual_sd_m, 4),
        "constituents": fit_rows(found),
    }


def level_figures(differences_m: Floats | None) -> dict[str, Any]:
    """Return how levels lie beside the predicted ones; nothing for None."""
    if differences_m is None:
        return {}
    return {
        "seen": differences_m.size,
        "height_bias_m": number(_mean(differences_m), 4),
        "height_scatter_m": number(spread_of(differences_m), 4),
    }


def summary_figures(summary: WaterSummary | None) -> dict[str, Any]:
    """Return the figures of a tide; nothing where the water never turns."""
    if summary is None:
        return {}
    return {
        "type": summary.tide_type,
        "form_number": number(summary.form_number, 3),
        **{name: number(getattr(summary, name), 4) for name in FIGURES},
    }


def comparison_figures(comparison: Comparison | None) -> dict[str, Any]:
    """Return how observed turns lie beside the predicted ones; nothing for None."""
    if comparison is None:
        return {}
    return {
        "seen": len(comparison.observed.times),
        "matched": comparison.matched,
        "height_bias_m": number(comparison.height_bias_m, 4),
        "height_scatter_m": number(comparison.height_scatter_m, 4),
        "time_bias_min": number(comparison.time_bias_min, 1),
        "time_scatter_min": number(comparison.time_scatter_min, 1),
        "high": _of_kind(comparison, is_high=True),
        "low": _of_kind(comparison, is_high=False),
    }


def _of_kind(comparison: Comparison, *, is_high: bool) -> dict[str, Any]:
    which = comparison.observed.is_high == is_high
    height_m, time_min = comparison.height_m[which], comparison.time_min[which]
    return {
        "matched": int(np.isfinite(time_min).sum()),
        "height_bias_m": number(_mean(height_m), 4),
        "time_bias_min": number(_mean(time_min), 1),
    }


def _mean(values: Floats) -> float | None:
    known = values[np.isfinite(values)]
    return float(known.mean()) if known.size else None


def spread_of(values: Floats) -> float:
    """Return the standard deviation of values, NaN for fewer than two."""
    return float(values.std(ddof=1)) if values.size > 1 else np.nan
