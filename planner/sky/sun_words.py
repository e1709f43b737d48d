"""When the sun is up on a day, in words: also near the polar day, where it may not rise or set."""

from __future__ import annotations

from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import from_utc64
from planner.phrasing import Style, clock_text
from planner.sky.almanac_days import SkyDays
from planner.words import say


def sun_text(sky: SkyDays, index: int, zone: ZoneInfo, style: Style) -> str:
    """Return when the sun is up on a day, "" where that has not been worked out."""
    if sky.sun_up_all_day[index]:
        return say("sun up all day")
    if sky.sun_down_all_day[index]:
        return say("sun down all day")

    def at(instant: np.datetime64) -> str:
        return "" if np.isnat(instant) else clock_text(from_utc64(instant), zone, style)

    rise, sets = at(sky.sunrise[index]), at(sky.sunset[index])
    # Near the polar day the sun may set after midnight, rise again, and set on the next day only.
    if rise and sets and sky.sunset[index] < sky.sunrise[index]:
        return say("sun to {sets} and from {rise}", sets=sets, rise=rise)
    if rise and sets:
        return say("sun {rise} to {sets}", rise=rise, sets=sets)
    if rise:
        return say("sun from {rise}", rise=rise)
    return say("sun to {sets}", sets=sets) if sets else ""
