"""The constituents of the tide: multipliers, speeds, nodal rules, and agencies' names."""

from planner.constituents.constituent import MEAN_RATES_DEG_PER_H, Constituent
from planner.constituents.lines import STANDARD_37
from planner.constituents.names import (
    UnknownConstituent,
    canonical,
    find,
    near_names,
    table,
)

__all__ = [
    "MEAN_RATES_DEG_PER_H",
    "STANDARD_37",
    "Constituent",
    "UnknownConstituent",
    "canonical",
    "find",
    "near_names",
    "table",
]
