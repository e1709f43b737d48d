"""How the moon's node and perigee modulate each kind of constituent: f and u.

Paul Schureman, Manual of Harmonic Analysis and Prediction of Tides, US Coast and Geodetic
Survey Special Publication 98 (1941); formula numbers in brackets below are his. A rule is
named by the constituent that it belongs to.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.estimates import Floats

RULES: Final = ("M2", "O1", "K1", "J1", "OO1", "K2", "KJ2", "MM", "MF", "L2", "M1", "M1C")

# Table 1: obliquity of the ecliptic and inclination of the moon's orbit to it.
_OMEGA: Final = np.deg2rad(23.452)
_I: Final = np.deg2rad(5.145)

_SIN_OMEGA, _COS_HALF_OMEGA = np.sin(_OMEGA), np.cos(_OMEGA / 2)
_SIN_HALF_OMEGA = np.sin(_OMEGA / 2)
_COS4_HALF_I = np.cos(_I / 2) ** 4
_ONE_LESS_1_5_SIN2_I = 1 - 1.5 * np.sin(_I) ** 2

# Mean values of the functions of I, (65) to (71): f is 1 on average over 18.6 years.
_MEAN_MM = (2 / 3 - _SIN_OMEGA**2) * _ONE_LESS_1_5_SIN2_I
_MEAN_MF = _SIN_OMEGA**2 * _COS4_HALF_I
_MEAN_O1 = _SIN_OMEGA * _COS_HALF_OMEGA**2 * _COS4_HALF_I
_MEAN_J1 = np.sin(2 * _OMEGA) * _ONE_LESS_1_5_SIN2_I
_MEAN_OO1 = _SIN_OMEGA * _SIN_HALF_OMEGA**2 * _COS4_HALF_I
_MEAN_M2 = _COS_HALF_OMEGA**4 * _COS4_HALF_I
_MEAN_KJ2 = _SIN_OMEGA**2 * _ONE_LESS_1_5_SIN2_I


def _m1c(sin2_half: Floats | float, cos2_half: Floats | float) -> Floats | float:
    """Return the third power of the parallax in the diurnal species, as a function of I."""
    return (1 - 10 * sin2_half + 15 * sin2_half**2) * cos2_half


_MEAN_M1C = _m1c(_SIN_HALF_OMEGA**2, _COS_HALF_OMEGA**2)


def node_factors(p_deg: Floats, n_deg: Floats) -> tuple[Floats, Floats]:
    """Return f and u (degrees) of every rule, each of shape (n, len(RULES)).

    p_deg, n_deg: longitudes of the lunar perigee and of the ascending node, shape (n,).
    """
    node = np.deg2rad(n_deg % 360)
    cos_i = np.cos(_I) * np.cos(_OMEGA) - np.sin(_I) * np.sin(_OMEGA) * np.cos(node)
    inclination = np.arccos(cos_i)
    # Napier's analogies for the triangle of node, equinox and intersection (page 156).
    near, far = (_OMEGA - _I) / 2, (_OMEGA + _I) / 2
    sin_half, cos_half = np.sin(node / 2), np.cos(node / 2)
    plus = np.arctan2(np.cos(near) * sin_half, np.cos(far) * cos_half)
    minus = np.arctan2(np.sin(near) * sin_half, np.sin(far) * cos_half)
    xi = node - plus - minus
    nu = plus - minus

    sin_i, sin_2i = np.sin(inclination), np.sin(2 * inclination)
    cos2_half, sin2_half = np.cos(inclination / 2) ** 2, np.sin(inclination / 2) ** 2
    tan2_half = sin2_half / cos2_half

    f_m2 = cos2_half**2 / _MEAN_M2  # (78)
    f_o1 = sin_i * cos2_half / _MEAN_O1  # (75)
    perigee = np.deg2rad(p_deg) - xi  # P, reckoned from the intersection
    sin_2p, cos_2p = np.sin(2 * perigee), np.cos(2 * perigee)

    # (224) and (232): the sun's share of K1 and K2.
    nu_prime = np.arctan2(sin_2i * np.sin(nu), sin_2i * np.cos(nu) + 0.3347)
    two_nu_second = np.arctan2(sin_i**2 * np.sin(2 * nu), sin_i**2 * np.cos(2 * nu) + 0.0727)
    f_k1 = np.sqrt(0.8965 * sin_2i**2 + 0.6001 * sin_2i * np.cos(nu) + 0.1006)  # (227)
    f_k2 = np.sqrt(19.0444 * sin_i**4 + 2.7702 * sin_i**2 * np.cos(2 * nu) + 0.0981)  # (235)

    # (213) to (215): L2 carries a line of its own and a declinational one.
    r = np.arctan2(sin_2p, 1 / (6 * tan2_half) - cos_2p)
    f_l2 = f_m2 * np.sqrt(1 - 12 * tan2_half * cos_2p + 36 * tan2_half**2)
    # (197) to (207): M1 is the sum of two lines; Q lies in the quadrant of P.
    q = np.arctan2(0.483 * np.sin(perigee), np.cos(perigee))
    f_m1 = f_o1 * np.sqrt(2.310 + 1.435 * cos_2p)

    zero = np.zeros_like(node)
    pairs = {
        "M2": (f_m2, 2 * xi - 2 * nu),
        "O1": (f_o1, 2 * xi - nu),
        "K1": (f_k1, -nu_prime),
        "J1": (sin_2i / _MEAN_J1, -nu),  # (76)
        "OO1": (sin_i * sin2_half / _MEAN_OO1, -2 * xi - nu),  # (77)
        "K2": (f_k2, -two_nu_second),
        "KJ2": (sin_i**2 / _MEAN_KJ2, -2 * nu),  # (79)
        "MM": ((2 / 3 - sin_i**2) / _MEAN_MM, zero),  # (73)
        "MF": (sin_i**2 / _MEAN_MF, -2 * xi),  # (74)
        "L2": (f_l2, 2 * xi - 2 * nu - r),
        "M1": (f_m1, -nu - perigee + q),
        "M1C": (_m1c(sin2_half, cos2_half) / _MEAN_M1C, xi - nu),  # (144)
    }
    f = np.stack([pairs[rule][0] for rule in RULES], axis=1)
    u = np.stack([pairs[rule][1] for rule in RULES], axis=1)
    return f, (np.rad2deg(u) + 180) % 360 - 180
