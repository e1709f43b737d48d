"""What a constituent is: a line of the tide-generating potential, or a sum of such lines."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

# Mean longitudes (degrees) as arcseconds of a cubic in Julian centuries since
# 1899-12-31 12:00, after Newcomb and Brown as carried by Schureman, Manual of Harmonic
# Analysis and Prediction of Tides (US Coast and Geodetic Survey Special Publication 98,
# 1941), table 1: moon, sun, lunar perigee, lunar node, solar perigee.
_REVOLUTION: Final = 1_296_000.0
LONGITUDE_S: Final = (973_574.72, 1336 * _REVOLUTION + 1_108_411.20, 9.09, 0.0068)
LONGITUDE_H: Final = (1_006_908.04, 129_602_768.13, 1.089, 0.0)
LONGITUDE_P: Final = (1_203_580.87, 11 * _REVOLUTION + 392_515.94, -37.24, -0.045)
LONGITUDE_N: Final = (933_057.12, -5 * _REVOLUTION - 482_912.63, 7.58, 0.008)
LONGITUDE_P1: Final = (1_012_395.0, 6_189.03, 1.63, 0.012)

HOURS_PER_CENTURY: Final = 36_525 * 24


def _rate(longitude: tuple[float, float, float, float]) -> float:
    return longitude[1] / 3600 / HOURS_PER_CENTURY


_RATE_S, _RATE_H = _rate(LONGITUDE_S), _rate(LONGITUDE_H)

# Degrees per hour of tau (lunar time), s, h, p, N' = -N, p1, in the order of `multipliers`.
MEAN_RATES_DEG_PER_H: Final = (
    15.0 - _RATE_S + _RATE_H,
    _RATE_S,
    _RATE_H,
    _rate(LONGITUDE_P),
    -_rate(LONGITUDE_N),
    _rate(LONGITUDE_P1),
)

Multipliers = tuple[int, int, int, int, int, int]


@dataclass(frozen=True)
class Constituent:
    """One constituent of the tide.

    multipliers: of tau (mean lunar time from midnight), s, h, p, N' = -N, p1.
    phase_constant_deg: added to their sum to give V.
    nodal: names of nodal rules with powers: f is the product of f^|power|, u the sum of
        power x u; empty when the node does not modulate the constituent.
    """

    name: str
    multipliers: Multipliers
    phase_constant_deg: int
    nodal: tuple[tuple[str, float], ...]

    @property
    def speed_deg_per_h(self) -> float:
        """Return the speed from the multipliers and the mean rates."""
        pairs = zip(self.multipliers, MEAN_RATES_DEG_PER_H, strict=True)
        return sum(count * rate for count, rate in pairs)

    @property
    def species(self) -> int:
        """Return about how many cycles a day: 0 long-period, 1 diurnal, 2 semidiurnal, ..."""
        return self.multipliers[0]
