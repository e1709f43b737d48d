"""Positions on the Earth."""

from __future__ import annotations

import math
from typing import Final

_EARTH_KM: Final = 6371.0


def distance_km(one: tuple[float, float], other: tuple[float, float]) -> float:
    """Return the great-circle distance between two (latitude, longitude) pairs in degrees."""
    lat1, lon1, lat2, lon2 = (math.radians(value) for value in (*one, *other))
    half = (
        math.sin((lat2 - lat1) / 2) ** 2
        + math.cos(lat1) * math.cos(lat2) * math.sin((lon2 - lon1) / 2) ** 2
    )
    return 2 * _EARTH_KM * math.asin(math.sqrt(min(1.0, half)))
