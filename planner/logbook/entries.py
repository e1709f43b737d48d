"""What a trapper logs: one haul of one trap, and what a trip's hauls say together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime


@dataclass(frozen=True)
class Haul:
    """One pull of one trap. None means not recorded, which is not zero.

    trip: the trip's name, unique within its place. set_at, hauled_at: aware, UTC.
    judged: legal crabs looked at for fullness; light: how many of those were light.
    other: other species as written. extra: unknown columns of an imported table.
    """

    trip: str
    place: str
    spot: str = ""
    trap: str = ""
    design: str = ""
    bait: str = ""
    set_at: datetime | None = None
    hauled_at: datetime | None = None
    depth_m: float | None = None
    keepers: int | None = None
    shorts: int | None = None
    females: int | None = None
    sponge: int | None = None
    other: str = ""
    judged: int | None = None
    light: int | None = None
    water_c: float | None = None
    notes: str = ""
    extra: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class Trip:
    """What belongs to a trip as a whole; a name is unique within its place.

    crew: people aboard. water_c: one reading for the trip, where hauls have none of their own.
    """

    name: str
    place: str
    crew: int | None = None
    weather: str = ""
    water_c: float | None = None
    notes: str = ""


@dataclass(frozen=True)
class TripOutcome:
    """A trip added up over its hauls; counts are sums of what was recorded, None when nothing was.

    when: the middle of the recorded haul times, UTC; None when no haul has a time.
    """

    trip: str
    place: str
    when: datetime | None
    hauls: int
    keepers: int | None
    judged: int | None
    light: int | None
    water_c: float | None
