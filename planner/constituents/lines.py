"""The lines of the tide-generating potential, and the names agencies use.

Multipliers and phase constants are those of the IHO list of tidal constituents (Simon and
Page), where it gives several the one NOAA uses:

- SA counts from the mean sun (V = h), not from the solar perigee: 77 to 79 degrees apart.
- S1 has V = 180 degrees at 00:00 UTC.
- M3 has the 180 degrees of lunar time counted from midnight.
- MSF is modulated as a shallow-water tide (f of M2, u opposite), as NOAA does.
- M1 is Schureman's; M1A, M1B (its two lines), M1C (third power of the parallax) and NO1
  (N2 less O1) are other things with nearly its speed.

Nodal rules name formulas 73 to 79, 149, 207, 215, 227 and 235 of Schureman (1941) by the
constituent that they belong to; see `planner.tides.nodes`.
"""

from __future__ import annotations

from typing import Final

from planner.constituents.constituent import Multipliers

# fmt: off
# name, multipliers (tau, s, h, p, N', p1), phase constant in degrees, nodal rule
LINES: Final[tuple[tuple[str, Multipliers, int, str], ...]] = (
    ("SA",   (0, 0, 1, 0, 0, 0), 0, ""),
    ("SSA",  (0, 0, 2, 0, 0, 0), 0, ""),
    ("STA",  (0, 0, 3, 0, 0, -1), -90, ""),
    ("MSM",  (0, 1, -2, 1, 0, 0), 0, "MM"),
    ("MM",   (0, 1, 0, -1, 0, 0), 0, "MM"),
    ("MSF",  (0, 2, -2, 0, 0, 0), 0, "-M2"),
    ("MF",   (0, 2, 0, 0, 0, 0), 0, "MF"),
    ("MSTM", (0, 3, -2, 1, 0, 0), 0, "MF"),
    ("MFM",  (0, 3, 0, -1, 0, 0), 0, "MF"),
    ("MSQM", (0, 4, -2, 0, 0, 0), 0, "MF"),
    ("MQM",  (0, 4, 0, -2, 0, 0), 0, "MF"),
    ("2Q1",  (1, -3, 0, 2, 0, 0), -90, "O1"),
    ("SIG1", (1, -3, 2, 0, 0, 0), -90, "O1"),
    ("Q1",   (1, -2, 0, 1, 0, 0), -90, "O1"),
    ("RHO",  (1, -2, 2, -1, 0, 0), -90, "O1"),
    ("O1",   (1, -1, 0, 0, 0, 0), -90, "O1"),
    ("TAU1", (1, -1, 2, 0, 0, 0), 90, "J1"),
    ("M1B",  (1, 0, 0, -1, 0, 0), 90, "O1"),
    ("M1C",  (1, 0, 0, 0, 0, 0), 180, "M1C"),
    ("M1A",  (1, 0, 0, 1, 0, 0), 90, "J1"),
    ("M1",   (1, 0, 0, 1, 0, 0), 90, "M1"),
    ("CHI1", (1, 0, 2, -1, 0, 0), 90, "J1"),
    ("PI1",  (1, 1, -3, 0, 0, 1), -90, ""),
    ("P1",   (1, 1, -2, 0, 0, 0), -90, ""),
    ("S1",   (1, 1, -1, 0, 0, 0), 180, ""),
    ("K1",   (1, 1, 0, 0, 0, 0), 90, "K1"),
    ("PSI1", (1, 1, 1, 0, 0, -1), 90, ""),
    ("PHI1", (1, 1, 2, 0, 0, 0), 90, ""),
    ("THE1", (1, 2, -2, 1, 0, 0), 90, "J1"),
    ("J1",   (1, 2, 0, -1, 0, 0), 90, "J1"),
    ("OO1",  (1, 3, 0, 0, 0, 0), 90, "OO1"),
    ("UPS1", (1, 4, 0, -1, 0, 0), 90, "OO1"),
    ("EPS2", (2, -3, 2, 1, 0, 0), 0, "M2"),
    ("2N2",  (2, -2, 0, 2, 0, 0), 0, "M2"),
    ("MU2",  (2, -2, 2, 0, 0, 0), 0, "M2"),
    ("N2",   (2, -1, 0, 1, 0, 0), 0, "M2"),
    ("NU2",  (2, -1, 2, -1, 0, 0), 0, "M2"),
    ("MA2",  (2, 0, -1, 0, 0, 0), 0, "M2"),
    ("M2",   (2, 0, 0, 0, 0, 0), 0, "M2"),
    ("MB2",  (2, 0, 1, 0, 0, 0), 0, "M2"),
    ("LAM2", (2, 1, -2, 1, 0, 0), 180, "M2"),
    ("L2",   (2, 1, 0, -1, 0, 0), 180, "L2"),
    ("L2A",  (2, 1, 0, -1, 0, 0), 180, "M2"),
    ("L2B",  (2, 1, 0, 1, 0, 0), 0, "KJ2"),
    ("T2",   (2, 2, -3, 0, 0, 1), 0, ""),
    ("S2",   (2, 2, -2, 0, 0, 0), 0, ""),
    ("R2",   (2, 2, -1, 0, 0, -1), 180, ""),
    ("K2",   (2, 2, 0, 0, 0, 0), 0, "K2"),
    ("ETA2", (2, 3, 0, -1, 0, 0), 0, "KJ2"),
    ("M3",   (3, 0, 0, 0, 0, 0), 180, "M3"),
    ("S3",   (3, 3, -3, 0, 0, 0), 180, ""),
)

# The 37 that NOAA publishes, in its order.
STANDARD_37: Final = (
    "M2", "S2", "N2", "K1", "M4", "O1", "M6", "MK3", "S4", "MN4", "NU2", "S6", "MU2",
    "2N2", "OO1", "LAM2", "S1", "M1", "J1", "MM", "SSA", "SA", "MSF", "MF", "RHO", "Q1",
    "T2", "R2", "2Q1", "P1", "2SM2", "M3", "L2", "2MK3", "K2", "M8", "MS4",
)

# Other names in print -> ours. Letter case, blanks, underscores and Greek letters are
# dealt with by `planner.constituents.names`.
ALIASES: Final[dict[str, str]] = {
    "RHO1": "RHO", "RO1": "RHO", "SIGMA1": "SIG1", "SIG": "SIG1", "KI1": "CHI1",
    "FI1": "PHI1", "THETA1": "THE1", "TTA1": "THE1", "UPSILON1": "UPS1", "KQ1*": "KQ1",
    "LAMBDA2": "LAM2", "LABDA2": "LAM2", "LDA2": "LAM2", "LA2": "LAM2", "LAMDA2": "LAM2",
    "LABDAO1": "LAMO1", "LAMBDAO1": "LAMO1",
    "EPSILON2": "EPS2", "E2": "EPS2", "H1": "MA2", "H2": "MB2", "MA2*": "MB2",
    "MTM": "MFM", "MNUM": "MSM", "2SMF": "2SM", "3M2S2": "3MS2", "4M2S4": "4MS4", "2N4": "N4",
    "M2N6": "2NM6", "MKN6": "MNK6", "NSK6": "SNK6", "SKM6": "MSK6", "KN4": "NK4",
    "M2SK4": "2SMK4", "2SNM8": "2SMN8", "2M2NK9": "2(MN)K9", "3M(SK)2": "3MKS2",
}
# fmt: on
