"""The packaged ephemeris: loaded once, from disk only, and the span of time it covers.

DE421 comes with `skyfield-data`. It is read as a package resource because Skyfield's own
`Loader` would go to the network for a file it does not find. Nothing here is public.
"""

from __future__ import annotations

import importlib.resources
import threading
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from typing import Any

import numpy as np

from planner.clock import Instants
from planner.errors import RangeError
from planner.words import say

_JD_J2000 = 2451545.0
# The moon's age on the first good day needs the new moon before it, up to 30 days earlier.
_LEAD = timedelta(days=34)
# Searches look a few days past the span so that nothing at its edge is lost.
_TRAIL = timedelta(days=6)
_reading = threading.Lock()


@dataclass(frozen=True)
class Ephemeris:
    """Skyfield's objects, and the first and last date for which everything can be said."""

    sun: Any
    moon: Any
    earth: Any
    kernel: Any
    timescale: Any
    first: date
    last: date


def ephemeris() -> Ephemeris:
    """Return the packaged ephemeris, read on the first call (about 0.2 s with the library)."""
    # Two threads that ask first at once would both open the file, and one would leave it open.
    with _reading:
        return _read()


@lru_cache(maxsize=1)
def _read() -> Ephemeris:
    # Not by way of skyfield.api, which brings satellites and constellations with it.
    from skyfield.iokit import Loader, load_file

    resource = importlib.resources.files("skyfield_data") / "data" / "de421.bsp"
    with importlib.resources.as_file(resource) as path:
        kernel = load_file(str(path))
    spans = [(s.spk_segment.start_jd, s.spk_segment.end_jd) for s in kernel.segments]
    return Ephemeris(
        sun=kernel["sun"],
        moon=kernel["moon"],
        earth=kernel["earth"],
        kernel=kernel,
        timescale=Loader(".").timescale(builtin=True),
        first=_date_of_jd(max(start for start, _ in spans)) + _LEAD,
        last=_date_of_jd(min(end for _, end in spans)) - _TRAIL,
    )


def _date_of_jd(jd: float) -> date:
    return date(2000, 1, 1) + timedelta(days=int(np.floor(jd - _JD_J2000 + 0.5)))


def require_days(first: date, last: date) -> None:
    """Raise RangeError unless every date from first to last is in the ephemeris's good range."""
    _require(first, last, timedelta(0))


def require_instants(times: Instants) -> None:
    """Raise RangeError unless every instant is in the good range; empty arrays pass.

    The range is a day wider at both ends than in `require_days`, so that the local days of
    every zone fit.
    """
    if times.size:
        first, last = (t.astype("datetime64[D]").astype(date) for t in (times.min(), times.max()))
        _require(first, last, timedelta(days=1))


def _require(first: date, last: date, grace: timedelta) -> None:
    good = ephemeris()
    if first < good.first - grace or last > good.last + grace:
        wrong = first if first < good.first - grace else last
        raise RangeError(
            say(
                "The sun and moon cannot be computed for {wrong}; choose dates from {first} to "
                "{last}.",
                wrong=wrong.isoformat(),
                first=good.first.isoformat(),
                last=good.last.isoformat(),
            )
        )


def sky_time(times: Instants) -> Any:
    """Return Skyfield's time object for UTC instants of shape (n,)."""
    days = times.astype("datetime64[D]")
    seconds = (times.astype("datetime64[ms]") - days).astype(np.int64) / 1000.0
    epoch_days = days.astype(np.int64)
    return ephemeris().timescale.utc(1970, 1, 1 + epoch_days, 0, 0, seconds)


def utc_instants(time: Any) -> Instants:
    """Return the UTC instants, to the millisecond, of Skyfield's time object of shape (n,)."""
    naive = [instant.replace(tzinfo=None) for instant in time.utc_datetime()]
    return np.array(naive, dtype="datetime64[ms]")
