"""Constants fitted to a record, as rows and sentences for screen and command line."""

from __future__ import annotations

from typing import Final

from planner.tides.fit import FittedWater
from planner.units import LengthUnit, metres_to
from planner.words import say

_PLACES: Final = {"m": 3, "ft": 2}
# Shorter records cannot tell P1 from K1, nor K2 from S2 (Rayleigh's criterion: 183 days).
_HALF_YEAR_DAYS: Final = 183
_YEAR_DAYS: Final = 365


def fitted_rows(found: FittedWater, unit: LengthUnit) -> list[tuple[str, str, str, str]]:
    """Return name, amplitude and lag with half their 80% intervals, and whether it is taken."""
    rows = []
    for each in found.constituents:
        size, lag = each.amplitude_m, each.phase_lag_deg
        half, degrees = (size.high - size.low) / 2, (lag.high - lag.low) / 2
        places = _PLACES[unit]
        rows.append(
            (
                each.constituent,
                say(
                    "{mean:.{places}f} ± {half:.{places}f}",
                    mean=metres_to(size.mean, unit),
                    half=metres_to(half, unit),
                    places=places,
                ),
                say("{mean:.1f} ± {degrees:.1f}", mean=lag.mean, degrees=min(degrees, 180))
                if degrees < 180
                else say("any"),
                say("taken") if each.significant else say("too weak to tell from none"),
            )
        )
    return rows


def fitted_texts(found: FittedWater, unit: LengthUnit) -> list[str]:
    """Return what a record gave, how well, and what it cannot give, a sentence each."""
    strong = sum(each.significant for each in found.constituents)
    places = _PLACES[unit]
    lines = [
        say(
            "{levels_used} hourly levels over {record_days:.0f} days: {strong} of "
            "{constituents} constituents that such a record tells apart stand out. "
            "Intervals hold the truth four times in five.",
            levels_used=found.levels_used,
            record_days=found.record_days,
            strong=strong,
            constituents=len(found.constituents),
        ),
        say(
            "Mean level {mean:.{places}f} {unit} above the record's own zero. "
            "What the tide does not explain scatters by {scatter:.{places}f} "
            "{unit}: weather, mostly.",
            mean=metres_to(found.mean_level_m, unit),
            places=places,
            unit=unit,
            scatter=metres_to(found.residual_sd_m, unit),
        ),
    ]
    if found.record_days < _HALF_YEAR_DAYS:
        lines.append(
            say(
                "Under half a year P1 hides in K1 and K2 in S2, and the season (SA, SSA) is "
                "unknown and moves the mean level: other months are predicted worse than the "
                "intervals say."
            )
        )
    elif found.record_days < _YEAR_DAYS - 1:
        lines.append(say("Under a year the season (SA, SSA) is not well known."))
    return lines
