"""Sun and moon for a place: phases, age, rise and set, twilight, daylight; always offline."""

from planner.sky.almanac import sky_days
from planner.sky.almanac_days import PHASE_NAMES, Daylight, Phases, SkyDays
from planner.sky.horizon import daylight
from planner.sky.moon import lunar_age, lunar_phase_angle, phases

__all__ = [
    "PHASE_NAMES",
    "Daylight",
    "Phases",
    "SkyDays",
    "daylight",
    "lunar_age",
    "lunar_phase_angle",
    "phases",
    "sky_days",
]
