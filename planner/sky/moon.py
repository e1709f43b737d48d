"""The moon seen from the earth's centre: phases, age and the lit part of the disc."""

from __future__ import annotations

from datetime import datetime
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from planner.clock import LUNATION_D, MS_PER_DAY, Instants, to_utc64
from planner.estimates import Floats
from planner.sky.almanac_days import Phases
from planner.sky.ephemeris import ephemeris, require_instants, sky_time

# Mean lunation: a mean new moon and the mean synodic month (Meeus, Astronomical Algorithms,
# chapter 49; figures as in the check "mean lunation", from memory, recomputed). True phases
# stray from it by up to 0.6 d, so it serves as a first guess only.
_MEAN_NEW_MOON = np.datetime64("2000-01-06T18:14:24", "ms")  # JD 2451550.26
_MEAN_RATE_DEG_PER_D = 360.0 / LUNATION_D
_LUNATION_MS = LUNATION_D * MS_PER_DAY
_LUNATION_AND_MORE = np.timedelta64(30, "D")
_CLOSE_ENOUGH_DEG = 1e-5  # under 0.1 s
# A rate seen over a shorter step than this is all rounding.
_LEAST_STEP_D = 1e-4


def lunar_phase_angle(times: Instants) -> Floats:
    """Return how far the moon is ahead of the sun in ecliptic longitude.

    times: `datetime64` UTC, shape (n,).
    Returns degrees in [0, 360), shape (n,): 0 new, 90 first quarter, 180 full. Unlike the
    age in days this is right in short and long lunations alike.
    Raises RangeError outside the ephemeris.
    """
    instants = np.asarray(times, dtype="datetime64[ms]")
    require_instants(instants)
    return _elongation_deg(instants)


def _elongation_deg(instants: Instants) -> Floats:
    if instants.size == 0:
        return np.empty(0)
    # Longitudes in the ecliptic of J2000: their difference is that in the ecliptic of date to a
    # few arcseconds (0.1 min of phase from 1900 to 2050), and needs no nutation, which would take
    # most of the time.
    kernel = ephemeris().kernel
    observer = kernel["earth"].at(sky_time(instants))
    _, sun, _ = observer.observe(kernel["sun"]).apparent().ecliptic_latlon()
    _, moon, _ = observer.observe(kernel["moon"]).apparent().ecliptic_latlon()
    angle: Floats = moon.degrees - sun.degrees
    return angle % 360.0


def illuminated(times: Instants) -> Floats:
    """Return the lit fraction of the moon's disc (0 to 1), shape (n,), at UTC instants."""
    if times.size == 0:
        return np.empty(0)
    from skyfield.almanac import fraction_illuminated

    fraction: Floats = fraction_illuminated(ephemeris().kernel, "moon", sky_time(times))
    return fraction


def phases(
    first_utc: datetime | np.datetime64,
    last_utc: datetime | np.datetime64,
) -> Phases:
    """Return the principal phases from first_utc to last_utc, both included.

    Instants are aware `datetime`s or `datetime64` UTC. A phase is the instant at which the
    apparent ecliptic longitudes of moon and sun differ by a multiple of 90 degrees.
    Raises RangeError outside the ephemeris, ValueError for a naive `datetime`.
    """
    first, last = _instant(first_utc), _instant(last_utc)
    require_instants(np.array([first, last]))
    return Phases(*_phase_instants(first, last))


def lunar_age(times: Instants) -> Floats:
    """Return the days since the last new moon, shape (n,), at UTC instants of shape (n,).

    Runs from 0 to the length of the lunation, 29.3 to 29.8 days.
    Raises RangeError outside the ephemeris.
    """
    instants = np.asarray(times, dtype="datetime64[ms]")
    if instants.size == 0:
        return np.empty(0)
    require_instants(instants)
    times, kinds = _phase_instants(instants.min() - _LUNATION_AND_MORE, instants.max())
    new_moons = times[kinds == 0]
    before = new_moons[np.searchsorted(new_moons, instants, side="right") - 1]
    age: Floats = (instants - before).astype(np.float64) / MS_PER_DAY
    return age


def _instant(instant: datetime | np.datetime64) -> np.datetime64:
    if isinstance(instant, datetime):
        return to_utc64(instant)
    rounded: np.datetime64 = instant.astype("datetime64[ms]")
    return rounded


def _phase_instants(
    first: np.datetime64, last: np.datetime64
) -> tuple[Instants, NDArray[np.int64]]:
    """Return the instants of the principal phases in [first, last], and their kinds (0 new)."""
    years = np.array([first, last]).astype("datetime64[Y]").astype(int) + 1970
    found = [_phases_of_year(year) for year in range(years[0], years[1] + 1)]
    times = np.concatenate([each for each, _ in found])
    kinds = np.concatenate([each for _, each in found])
    inside = (times >= first) & (times <= last)
    return times[inside], kinds[inside]


@lru_cache(maxsize=64)
def _phases_of_year(year: int) -> tuple[Instants, NDArray[np.int64]]:
    """Return the phases of a UTC year, as far as the ephemeris goes, and their kinds."""
    good = ephemeris()
    edges = np.array([f"{year:04d}-01-01", f"{year + 1:04d}-01-01"], dtype="datetime64[ms]")
    # Instants are allowed a day beyond the good dates, and ages ask a lunation further back.
    begin = max(edges[0], np.datetime64(good.first, "ms") - _LUNATION_AND_MORE)
    end = min(edges[1], np.datetime64(good.last, "ms") + np.timedelta64(2, "D"))
    quarters = 4 * (np.array([begin, end]) - _MEAN_NEW_MOON).astype(np.float64) / _LUNATION_MS
    # A phase strays by less than a tenth of a quarter, so the whole numbers on either side do.
    number = np.arange(np.floor(quarters[0]), np.ceil(quarters[1]) + 1)
    times = _refine(number / 4 * LUNATION_D, number % 4 * 90.0)
    inside = (times >= begin) & (times < end)
    return times[inside], (number[inside] % 4).astype(np.int64)


def _refine(guess_d: Floats, target_deg: Floats) -> Instants:
    """Return when the elongation reaches the target, starting from days since the mean epoch.

    The first step is at the mean rate, which the moon's own stays within 13% of; the next are
    at the rate just seen (secant).
    """
    days, rate = guess_d, np.full(guess_d.shape, _MEAN_RATE_DEG_PER_D)
    step_d, before = np.zeros(guess_d.shape), np.zeros(guess_d.shape)
    while True:
        times = _MEAN_NEW_MOON + np.round(days * MS_PER_DAY).astype("timedelta64[ms]")
        ahead = (_elongation_deg(times) - target_deg + 180.0) % 360.0 - 180.0
        if np.all(np.abs(ahead) < _CLOSE_ENOUGH_DEG):
            return times
        telling = np.abs(step_d) > _LEAST_STEP_D
        rate[telling] = (ahead - before)[telling] / step_d[telling]
        step_d, before = -ahead / rate, ahead
        days = days + step_d
