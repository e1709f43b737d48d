"""V, f and u of a set of constituents by either of the two rules in use.

`yearly`: V runs at the constituent's speed from 1 January 00:00 UTC; f and u are held for
the calendar year at their values in its middle, so heights step a little at New Year. This
is how agencies make their tables (Schureman 1941, tables 14 and 15).

`continuous`: V, f and u by Schureman's formulas at every instant.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.constituents import Constituent
from planner.estimates import Floats
from planner.tides.astronomy import FineMilliseconds, Milliseconds, mean_longitudes
from planner.tides.nodes import RULES, node_factors


class Constituents:
    """A fixed list of constituents as matrices, so that all are computed at once."""

    def __init__(self, members: Sequence[Constituent]) -> None:
        self.members = tuple(members)
        self.speeds_deg_per_h = np.array([c.speed_deg_per_h for c in members])

    @cached_property
    def _multipliers(self) -> Floats:
        return np.array([c.multipliers for c in self.members], dtype=np.float64).reshape(-1, 6).T

    @cached_property
    def _phase_constants(self) -> Floats:
        return np.array([c.phase_constant_deg for c in self.members], dtype=np.float64)

    @cached_property
    def _powers(self) -> tuple[Floats, Floats]:
        """Powers of each rule's f and multiples of each rule's u, both (rules, k)."""
        of_f = np.zeros((len(RULES), len(self.members)))
        of_u = np.zeros_like(of_f)
        for column, constituent in enumerate(self.members):
            for rule, power in constituent.nodal:
                of_f[RULES.index(rule), column] += abs(power)
                of_u[RULES.index(rule), column] += power
        return of_f, of_u

    def v_deg(self, t_ms: FineMilliseconds) -> Floats:
        """Return V in degrees at instants, shape (n, k)."""
        return mean_longitudes(t_ms).stacked() @ self._multipliers + self._phase_constants

    def f_and_u(self, t_ms: FineMilliseconds) -> tuple[Floats, Floats]:
        """Return f and u (degrees) at instants, each of shape (n, k)."""
        longitudes = mean_longitudes(t_ms)
        f, u = node_factors(longitudes.p, longitudes.n)
        of_f, of_u = self._powers
        return np.exp(np.log(f) @ of_f), u @ of_u

    def yearly(self, year: int) -> tuple[Floats, Floats]:
        """Return f and V0 + u (degrees) of a calendar year by the agencies' rule, each (k,).

        V0 at 1 January 00:00 UTC, f and u at the middle of the year. The agency's M1 leaves
        the perigee out of V0 and takes it at mid-year within u, which puts it a constant
        20.3 degrees ahead of Schureman's M1 at the instant.
        """
        first, following = new_year_ms(year), new_year_ms(year + 1)
        middle = np.array([(first + following) // 2])
        f, u = self.f_and_u(middle)
        v0 = self.v_deg(np.array([first]))
        perigee = mean_longitudes(np.array([first, middle[0]])).p
        gain = np.array([perigee[1] - perigee[0] if c.name == "M1" else 0.0 for c in self.members])
        return f[0], (v0[0] + u[0] + gain) % 360


# The years that tides are computed for with one more on either side, for spans and shifts
# that reach over.
_YEARS: Final = range(1898, 2104)
_NEW_YEARS_MS: Final = np.array(
    [np.datetime64(f"{year}-01-01", "ms") for year in _YEARS], dtype="datetime64[ms]"
).astype(np.int64)


def new_years_ms(years: NDArray[np.int64]) -> Milliseconds:
    """Return 1 January 00:00 UTC of years, in ms since 1970."""
    return np.asarray(_NEW_YEARS_MS[years - _YEARS.start])


def new_year_ms(year: int) -> int:
    """Return 1 January 00:00 UTC of a year, in ms since 1970."""
    return int(_NEW_YEARS_MS[year - _YEARS.start])


def years_of(t_ms: FineMilliseconds) -> NDArray[np.int64]:
    """Return the calendar year (UTC) of each instant."""
    return np.asarray(np.searchsorted(_NEW_YEARS_MS, t_ms, side="right") - 1 + _YEARS.start)
