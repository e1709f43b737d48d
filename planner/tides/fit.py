"""Constants from observed levels: harmonic analysis is UTide's, the arguments are ours."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_DAY, YEAR_D, Instants
from planner.constituents import UnknownConstituent, find
from planner.errors import PlannerError
from planner.estimates import SD_TO_TAIL, Floats, Interval
from planner.sites.site import HarmonicConstant
from planner.tides.arguments import Constituents
from planner.words import say

# Half the springs-neaps cycle must pass before M2 and S2 can be told apart at all.
_SHORTEST_DAYS: Final = 15.0
# UTide needs about a gigabyte and some seconds for a year of hours, in proportion to the
# levels; agencies' constants are one-year analyses too.
_LONGEST_DAYS: Final = 400.0
# UTide writes 95% intervals, which lie 1.9600 standard deviations off; the program's are 80%.
_TO_80_PERCENT: Final = SD_TO_TAIL / 1.9600
_SPEED_TOLERANCE_CYCLES_PER_H: Final = 1e-7
# UTide's NO1 is the main line of M1, modulated by its neighbours as Schureman's M1 is.
_OUR_NAME: Final = {"NO1": "M1"}
# Places in a record at which UTide's arguments are matched with ours.
_MATCHING_POINTS: Final = 61
_UTIDE_DAY_OF_1970: Final = 719_163  # UTide counts days from 0000-12-31
_SIGNIFICANT: Final = 2.0


@dataclass(frozen=True)
class FittedConstituent:
    """A constituent found in a record.

    amplitude_m, phase_lag_deg: with 80% intervals, for this program's arguments (Schureman),
        lags Greenwich.
    foreman_amplitude_m, foreman_lag_deg: as UTide gives them, by Foreman's node factors: the
        numbers to compare with other analyses.
    significant: the amplitude is at least twice its standard error.
    """

    constituent: str
    amplitude_m: Interval
    phase_lag_deg: Interval
    foreman_amplitude_m: float
    foreman_lag_deg: float
    significant: bool


@dataclass(frozen=True)
class FittedWater:
    """What a record of levels says: the tide, its mean and trend, and what is left over.

    mean_level_m: at the middle of the record, above the record's zero.
    """

    constituents: tuple[FittedConstituent, ...]
    mean_level_m: float
    trend_m_per_year: float
    residual_sd_m: float
    record_days: float
    levels_used: int

    def constants(self) -> tuple[HarmonicConstant, ...]:
        """Return the significant constituents as constants for a place, lags Greenwich."""
        return tuple(
            HarmonicConstant(each.constituent, each.amplitude_m.mean, each.phase_lag_deg.mean)
            for each in self.constituents
            if each.significant
        )


def fit_constants(times: Instants, levels_m: Floats, latitude_deg: float) -> FittedWater:
    """Return the tide in a record of observed levels, by UTide's least squares.

    times: `datetime64` UTC, shape (n,), hourly or finer, increasing, gaps allowed; levels_m:
    (n,), NaN where missing. Of a finer record the first level of each hour is used: hours
    lose nothing of tides that come at most a dozen times a day. Constituents are those that
    UTide separates in a record of that length (Rayleigh's criterion), as far as this program
    knows them; a linear trend is fitted too.
    PlannerError when the record is too short or too long.
    """
    from utide import solve

    times, levels = _hourly(times, levels_m)
    days = float(np.ptp(times).astype(np.int64)) / MS_PER_DAY if times.size else 0.0
    if days < _SHORTEST_DAYS or times.size < 4 * _SHORTEST_DAYS:
        raise PlannerError(
            say(
                "The record holds {size} levels over {days:.1f} days; a fit needs at "
                "least {shortest_days:.0f} days of hourly levels.",
                size=times.size,
                days=days,
                shortest_days=_SHORTEST_DAYS,
            )
        )
    if days > _LONGEST_DAYS:
        raise PlannerError(
            say(
                "The record spans {days:.0f} days; a fit takes at most "
                "{longest_days:.0f}. Choose a year of it, the latest without large gaps.",
                days=days,
                longest_days=_LONGEST_DAYS,
            )
        )
    common: dict[str, Any] = {
        "lat": latitude_deg, "trend": True, "method": "ols", "nodal": True, "verbose": False,
    }  # fmt: skip
    separable = solve(times, levels, constit="auto", conf_int="none", **common)
    names = [name for name in separable.name if _ours(name, separable) is not None]
    found = solve(times, levels, constit=names, conf_int="linear", **common)

    turned = _to_our_arguments(found, times)
    constituents = [_fitted(found, index, turned[index]) for index in np.argsort(-np.abs(turned))]
    return FittedWater(
        constituents=tuple(constituents),
        mean_level_m=float(found.mean),
        trend_m_per_year=float(found.slope) * YEAR_D,
        residual_sd_m=_left_over(found, times, levels),
        record_days=days,
        levels_used=int(times.size),
    )


def _hourly(times: Instants, levels_m: Floats) -> tuple[Instants, Floats]:
    """Return the first known level of each hour."""
    known = np.isfinite(levels_m)
    times = times[known].astype("datetime64[ms]")
    _, first = np.unique(times.astype("datetime64[h]"), return_index=True)
    return times[first], levels_m[known][first]


def _ours(name: str, coefficients: Any) -> str | None:
    """Return our name for UTide's constituent when it is the same line, else None."""
    frequency = coefficients.aux.frq[list(coefficients.name).index(name)]
    try:
        ours = find(_OUR_NAME.get(name, name))
    except UnknownConstituent:
        return None
    apart = abs(ours.speed_deg_per_h / 360 - frequency)
    return ours.name if apart < _SPEED_TOLERANCE_CYCLES_PER_H else None


def _to_our_arguments(found: Any, times: Instants) -> NDArray[np.complex128]:
    """Return amplitude and lag (as A exp(-i g)) for our f, u and V, shape (k,).

    Both programs write a constituent as A f cos(V + u - g), each with its own f, u and V;
    ours is the multiple of our phasor that comes nearest to UTide's over the record.
    """
    from utide.harmonics import FUV

    first, last = times.astype(np.int64)[[0, -1]]
    at = np.linspace(float(first), float(last), _MATCHING_POINTS)
    options = found.aux.opt
    flags = [options[key] for key in ("nodsatlint", "nodsatnone", "gwchlint", "gwchnone")]
    f, u, v = FUV(
        at / MS_PER_DAY + _UTIDE_DAY_OF_1970,
        found.aux.reftime,
        found.aux.lind,
        found.aux.lat,
        flags,
    )
    theirs = f * np.exp(2j * np.pi * (u + v)) * found.A * np.exp(-1j * np.deg2rad(found.g))
    members = Constituents([find(_OUR_NAME.get(name, name)) for name in found.name])
    our_f, our_u = members.f_and_u(at)
    ours = our_f * np.exp(1j * np.deg2rad(members.v_deg(at) + our_u))
    return np.asarray((theirs * ours.conj()).sum(axis=0) / (np.abs(ours) ** 2).sum(axis=0))


def _fitted(found: Any, index: int, turned: complex) -> FittedConstituent:
    amplitude, lag = float(abs(turned)), float(np.rad2deg(-np.angle(turned))) % 360
    ratio = amplitude / float(found.A[index])
    wide = float(found.A_ci[index]) * _TO_80_PERCENT * ratio
    degrees = float(found.g_ci[index]) * _TO_80_PERCENT
    standard_error = float(found.A_ci[index]) / 1.9600
    return FittedConstituent(
        constituent=find(_OUR_NAME.get(found.name[index], found.name[index])).name,
        amplitude_m=Interval(amplitude, max(0.0, amplitude - wide), amplitude + wide),
        phase_lag_deg=Interval(lag, lag - degrees, lag + degrees),
        foreman_amplitude_m=float(found.A[index]),
        foreman_lag_deg=float(found.g[index]),
        significant=float(found.A[index]) >= _SIGNIFICANT * standard_error,
    )


def _left_over(found: Any, times: Instants, levels: Floats) -> float:
    from utide import reconstruct

    tide = reconstruct(times, found, verbose=False, min_SNR=0).h  # with mean and trend
    return float((levels - tide).std())
