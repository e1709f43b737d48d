"""Time zones by name, and the clocks that phase lags are counted in."""

from __future__ import annotations

import re
from difflib import get_close_matches
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones


def load_zone(key: str) -> ZoneInfo:
    """Return the time zone of a name; KeyError when there is none."""
    try:
        return ZoneInfo(key)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        # ValueError: not a relative path; OSError: the name of a folder of zones.
        raise KeyError(key) from None


def near_zones(key: str) -> list[str]:
    """Return up to three zone names that look like a wrong one, nearest first."""
    names = sorted(available_timezones())
    city = re.split(r"[/\s]", key.strip())[-1].casefold().replace("-", "_")
    by_city = [name for name in names if city and name.casefold().endswith(f"/{city}")]
    folded = {name.casefold(): name for name in names}
    close = get_close_matches(key.casefold().replace(" ", "_")[:64], folded, n=3, cutoff=0.75)
    return list(dict.fromkeys(by_city + [folded[name] for name in close]))[:3]


def phase_reference_hours(text: str) -> float:
    """Return hours east of UTC of "UTC" or "UTC-05:00"; ValueError for anything else."""
    found = re.fullmatch(r"UTC(?:([+-])(\d{2}):(\d{2}))?", text.strip())
    if found is None:
        raise ValueError(text)
    if found[1] is None:
        return 0.0
    hours = int(found[2]) + int(found[3]) / 60
    if int(found[3]) > 59 or hours > 14:
        raise ValueError(text)
    return -hours if found[1] == "-" else hours
