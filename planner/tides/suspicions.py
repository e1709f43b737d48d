"""What may be wrong with a place's water, in plain words: units, zone, datum, season, clock.

Each suspicion compares the place as it is with the place as it would be without one common
slip. Thresholds are this program's own, chosen so that each slip made on purpose is seen and
weather of 10 cm on a sound place is not; the tests show both.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Final, Literal

import numpy as np

from planner.clock import MS_PER_DAY, YEAR_D, Instants
from planner.estimates import Floats
from planner.phrasing import Style, height_text
from planner.sites.site import Site, Water
from planner.tides.alignment import align, levels_shifted
from planner.tides.observed import ObservedTurns
from planner.tides.summary import WaterSummary
from planner.tides.tide import Tide
from planner.units import M_PER_FT
from planner.words import say

Code = Literal["units", "zone", "clock", "datum", "season"]

# The largest tides known, in the Bay of Fundy, are near 17 m (common knowledge).
_LARGEST_RANGE_M: Final = 18.0
_FEWEST_TURNS: Final = 4
_SHIFT_WORTH_SAYING_MIN: Final = 35.0
_NEAR_MIN: Final = 15.0
# A ratio of observed to predicted range within this factor of 0.3048 or of its inverse.
_UNIT_LATITUDE: Final = 1.35
_BIAS_WORTH_SAYING_M: Final = 0.10
_SEASON_WORTH_SAYING_M: Final = 0.03
_SEASON_SPAN: Final = np.timedelta64(150, "D")
_SEASON_FEWEST: Final = 12
_YEAR_MS: Final = YEAR_D * MS_PER_DAY


@dataclass(frozen=True)
class Suspicion:
    """One thing that may be wrong: a code, what was seen, and what to do about it."""

    code: Code
    text: str
    remedy: str


def suspicions(
    tide: Tide, summary: WaterSummary | None, observed: ObservedTurns | None = None
) -> tuple[Suspicion, ...]:
    """Return what may be wrong with a place, from its numbers and from observed turns."""
    found = [*_of_the_numbers(tide.site, summary)]
    if observed is not None and len(observed.times) >= _FEWEST_TURNS:
        found += _of_the_observed(tide, observed)
    codes = [each.code for each in found]
    return tuple(each for index, each in enumerate(found) if each.code not in codes[:index])


def _of_the_numbers(site: Site, summary: WaterSummary | None) -> Iterator[Suspicion]:
    """Yield what the constants alone give away."""
    water, style = site.water, Style(length=site.water.file_units)
    if summary is None:
        return
    whole = summary.highest_m - summary.lowest_m
    if whole > _LARGEST_RANGE_M:
        yield Suspicion(
            "units",
            say(
                "The tide would range over {height}, more than anywhere on Earth.",
                height=height_text(whole, style),
            ),
            say("Check whether the amplitudes are in feet or centimetres and say so in units."),
        )
    zero = {
        "MLLW": summary.mean_lower_low_m,
        "MLW": summary.mean_low_m,
        "LAT": summary.lowest_m,
        "MHHW": summary.mean_higher_high_m,
        "MHW": summary.mean_high_m,
        "MSL": summary.mean_level_m,
    }.get(water.datum.upper())
    if zero is not None and abs(zero) > max(_BIAS_WORTH_SAYING_M, 0.2 * summary.mean_range_m):
        yield Suspicion(
            "datum",
            say(
                "{datum} should be the zero of this place, but the predicted {datum} "
                "stands at {height}.",
                datum=water.datum,
                height=height_text(zero, style),
            ),
            say("Check mean_level: it is the mean sea level above the datum, in the file's units."),
        )
    names = {each.constituent for each in water.constants if each.amplitude_m > 0}
    if water.constants and not names & {"SA", "SSA"}:
        yield Suspicion(
            "season",
            say(
                "Neither SA nor SSA is given: the water's seasonal rise and fall, often 5 to 15 "
                "cm, is left out."
            ),
            say("Add SA and SSA when the agency publishes them."),
        )


def _of_the_observed(tide: Tide, observed: ObservedTurns) -> Iterator[Suspicion]:
    """Yield what observed high and low waters give away."""
    style = Style(length=tide.site.water.file_units)
    fit = align(tide, observed)
    yield from _of_shift(tide.site, fit.shift_min)
    if fit.scale is None:
        return
    for ratio, said, truth in (
        (M_PER_FT, say("metres"), say("feet")),
        (1 / M_PER_FT, say("feet"), say("metres")),
    ):
        if ratio / _UNIT_LATITUDE < fit.scale < ratio * _UNIT_LATITUDE:
            yield Suspicion(
                "units",
                say(
                    "Observed heights vary {scale:.2f} times as much as the predicted ones: "
                    "numbers in {truth} were read as {said}.",
                    scale=fit.scale,
                    truth=truth,
                    said=said,
                ),
                say(
                    "Set units to {truth} for the constants, or check the unit of the "
                    "observations.",
                    truth=truth,
                ),
            )
            return
    known = np.isfinite(observed.heights_m)
    times = observed.times[known]
    left = observed.heights_m[known] - levels_shifted(tide, times, fit.shift_min)
    bias, scatter = float(left.mean()), float(left.std(ddof=1))
    uncertain = 3 * scatter / np.sqrt(left.size)
    if abs(bias) > max(_BIAS_WORTH_SAYING_M, uncertain):
        side = say("above") if bias > 0 else say("below")
        yield Suspicion(
            "datum",
            say(
                "Observed waters stand {height} {side} the predicted ones on average, "
                "high and low alike.",
                height=height_text(abs(bias), style),
                side=side,
            ),
            say("Check that both count from the same zero, and that mean_level belongs to it."),
        )
    season = _missing_season(tide.site.water, times, left)
    if season is not None:
        yield Suspicion(
            "season",
            say(
                "What is left over rises and falls by {height} with the season, and SA "
                "is not among the constants.",
                height=height_text(season, style),
            ),
            say("Add SA and SSA from the agency's list."),
        )


def _of_shift(site: Site, shift_min: float) -> Iterator[Suspicion]:
    """Yield what a common delay of all turns (observed less predicted) means."""
    if abs(shift_min) < _SHIFT_WORTH_SAYING_MIN:
        return
    clock_h = site.water.phase_reference_h - shift_min / 60
    standard_h = _standard_offset_h(site)
    side = say("later") if shift_min > 0 else say("earlier")
    seen = say(
        "Observed waters come {hours_and_minutes} {side} than predicted.",
        hours_and_minutes=_hours_and_minutes(shift_min),
        side=side,
    )
    if abs(clock_h - standard_h) * 60 <= _NEAR_MIN and site.water.offsets is None:
        yield Suspicion(
            "zone",
            say(
                "{seen} That is what lags worked out in this place's standard time would do.",
                seen=seen,
            ),
            say('Set phase_reference to "{clock}".', clock=_clock(standard_h)),
        )
    elif abs(abs(shift_min) - 60) <= _NEAR_MIN:
        yield Suspicion(
            "clock",
            say("{seen} One hour points to summer time.", seen=seen),
            say("Check whether the observations were noted in standard or in summer time."),
        )
    else:
        best = _clock(round(clock_h * 2) / 2)
        yield Suspicion(
            "zone",
            say(
                "{seen} Lags worked out on a clock at {best} would fit best.", seen=seen, best=best
            ),
            say(
                "Ask for the clock of the phase lags, and check date and clock of the observations."
            ),
        )


def _missing_season(water: Water, times: Instants, left: Floats) -> float | None:
    """Return the range of an annual cycle in what is left over, when SA is not given."""
    present = any(each.constituent == "SA" and each.amplitude_m > 0 for each in water.constants)
    if present or times.size < _SEASON_FEWEST or np.ptp(times) < _SEASON_SPAN:
        return None
    angle = times.astype(np.int64) * (2 * np.pi / _YEAR_MS)
    design = np.stack([np.ones(times.size), np.cos(angle), np.sin(angle)], axis=1)
    solution = np.linalg.lstsq(design, left, rcond=None)[0]
    rest = left - design @ solution
    amplitude = float(np.hypot(solution[1], solution[2]))
    error = float(np.sqrt((rest @ rest) / (times.size - 3) * 2 / times.size))
    if amplitude < max(_SEASON_WORTH_SAYING_M, 2.5 * error):
        return None
    return 2 * amplitude


def _standard_offset_h(site: Site) -> float:
    """Return the hours east of UTC of the place's standard time."""
    offsets = [datetime(2025, month, 1, tzinfo=site.zone).utcoffset() for month in (1, 7)]
    return min(offset.total_seconds() for offset in offsets if offset is not None) / 3600


def _clock(hours: float) -> str:
    minutes = round(hours * 60)
    sign = "-" if minutes < 0 else "+"
    return f"UTC{sign}{abs(minutes) // 60:02d}:{abs(minutes) % 60:02d}" if minutes else "UTC"


def _hours_and_minutes(minutes: float) -> str:
    whole = round(abs(minutes) / 5) * 5
    return (
        say("{hours} h {minutes:02d} min", hours=whole // 60, minutes=whole % 60)
        if whole >= 60
        else say("{whole} min", whole=whole)
    )
