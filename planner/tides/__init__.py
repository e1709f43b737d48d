"""Water levels from harmonic constituents or from offsets to a reference place."""

from planner.tides.tide import (
    FIRST_YEAR,
    LAST_YEAR,
    Crossings,
    DailyRange,
    LowestLevels,
    Slacks,
    Tide,
    Turns,
)

__all__ = [
    "FIRST_YEAR",
    "LAST_YEAR",
    "Crossings",
    "DailyRange",
    "LowestLevels",
    "Slacks",
    "Tide",
    "Turns",
]
