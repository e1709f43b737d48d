"""Where moon and sun stand in the mean: the longitudes that tidal arguments are made of."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_DAY, MS_PER_HOUR
from planner.constituents.constituent import (
    HOURS_PER_CENTURY,
    LONGITUDE_H,
    LONGITUDE_N,
    LONGITUDE_P,
    LONGITUDE_P1,
    LONGITUDE_S,
)
from planner.estimates import Floats

Milliseconds = NDArray[np.int64]  # since 1970 UTC
FineMilliseconds = Milliseconds | Floats  # the same, whole or not

MS_PER_YEAR: Final = 365 * MS_PER_DAY  # to within a day: for telling which end is nearer
# 1899-12-31 12:00, the epoch of Schureman's longitudes, in ms since 1970-01-01 00:00 UTC.
_EPOCH_MS: Final = -2_209_032_000_000


@dataclass(frozen=True)
class MeanLongitudes:
    """Degrees, not reduced to a circle; arrays of shape (n,).

    tau: mean lunar time from the lower transit at midnight; s: moon; h: sun;
    p: lunar perigee; n: ascending lunar node; p1: solar perigee.
    """

    tau: Floats
    s: Floats
    h: Floats
    p: Floats
    n: Floats
    p1: Floats

    def stacked(self) -> Floats:
        """Return tau, s, h, p, N' = -N, p1 as columns, shape (n, 6)."""
        return np.stack([self.tau, self.s, self.h, self.p, -self.n, self.p1], axis=1)


def mean_longitudes(t_ms: FineMilliseconds) -> MeanLongitudes:
    """Return the mean longitudes at instants in ms since 1970 UTC, shape (n,).

    Universal time is taken for the uniform time of the formulas, as tide tables do.
    """
    centuries = (t_ms - _EPOCH_MS) / (HOURS_PER_CENTURY * MS_PER_HOUR)

    def longitude(cubic: tuple[float, float, float, float]) -> Floats:
        a, b, c, d = cubic
        return (a + centuries * (b + centuries * (c + centuries * d))) / 3600

    s, h = longitude(LONGITUDE_S), longitude(LONGITUDE_H)
    hour_angle = (t_ms % MS_PER_DAY) * (15 / MS_PER_HOUR)
    return MeanLongitudes(
        tau=hour_angle - s + h,
        s=s,
        h=h,
        p=longitude(LONGITUDE_P),
        n=longitude(LONGITUDE_N),
        p1=longitude(LONGITUDE_P1),
    )
