"""What an independent library (ephem, after VSOP87 and ELP2000) says of sun and moon, and where."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from zoneinfo import ZoneInfo

import ephem
import numpy as np

from planner.clock import from_utc64
from planner.sites.site import Site, Water
from planner.sky import PHASE_NAMES, Phases

PLACES = [
    (0.0, 0.0, "UTC"),
    (38.2, -76.1, "America/New_York"),
    (57.0, -153.0, "America/Anchorage"),
    (-17.5, -149.5, "Pacific/Tahiti"),
    (1.9, -157.4, "Pacific/Kiritimati"),  # 14 h ahead, a day away from its neighbours
    (-14.3, -170.7, "Pacific/Pago_Pago"),  # 11 h behind, just across the date line
    (-43.9, -176.5, "Pacific/Chatham"),
    (51.5, 3.6, "Europe/Amsterdam"),
    (64.0, -21.0, "Atlantic/Reykjavik"),
    (-54.8, -68.3, "America/Argentina/Ushuaia"),
]
SPANS = [(date(2026, 3, 5), 12), (date(1903, 6, 18), 6), (date(2049, 12, 27), 10)]


def place(latitude_deg: float, longitude_deg: float, zone: str) -> Site:
    water = Water("MLLW", 0.0, "m", 0.0, "yearly", "", "invented")
    return Site("invented place", latitude_deg, longitude_deg, ZoneInfo(zone), water)


def watcher(site: Site, horizon: str) -> ephem.Observer:
    """Return ephem's observer in the almanac convention.

    Without air pressure ephem leaves refraction to the horizon: 34 minutes of arc below,
    with the upper limb asked for by `use_center=False`.
    """
    observer = ephem.Observer()
    observer.lat, observer.lon = str(site.latitude_deg), str(site.longitude_deg)
    observer.elevation, observer.pressure, observer.horizon = 0, 0, horizon
    return observer


def ephem_event(
    site: Site, kind: str, body: ephem.Body, start: np.datetime64, horizon: str, centre: bool
) -> np.datetime64 | None:
    observer = watcher(site, horizon)
    observer.date = ephem.Date(from_utc64(start).replace(tzinfo=None))
    find = observer.next_rising if kind == "rise" else observer.next_setting
    try:
        found = find(body, use_center=centre)
    except (ephem.AlwaysUpError, ephem.NeverUpError):
        return None
    return np.datetime64(found.datetime(), "ms")


EVENTS = {
    "sunrise": ("rise", ephem.Sun, "-0:34", False),
    "sunset": ("set", ephem.Sun, "-0:34", False),
    "civil_dawn": ("rise", ephem.Sun, "-6", True),
    "civil_dusk": ("set", ephem.Sun, "-6", True),
    "moonrise": ("rise", ephem.Moon, "-0:34", False),
    "moonset": ("set", ephem.Moon, "-0:34", False),
}


_NEXT_PHASE = {
    "new": ephem.next_new_moon,
    "first quarter": ephem.next_first_quarter_moon,
    "full": ephem.next_full_moon,
    "last quarter": ephem.next_last_quarter_moon,
}


def phase_differences_s(found: Phases, every: int) -> Iterator[float]:
    """Yield how far phases are from ephem's, in seconds, one in so many."""
    for instant, kind in list(zip(found.times, found.kinds, strict=True))[::every]:
        before = from_utc64(instant).replace(tzinfo=None) - timedelta(days=3)
        expected = np.datetime64(_NEXT_PHASE[PHASE_NAMES[kind]](before).datetime(), "ms")
        yield abs(int((instant - expected) / np.timedelta64(1, "ms"))) / 1000
