"""What the sky does on each local day of a place."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from planner.clock import Instants
from planner.estimates import Floats

PHASE_NAMES = ("new", "first quarter", "full", "last quarter")


@dataclass(frozen=True)
class Phases:
    """Instants of the moon's principal phases.

    times: `datetime64[ms]` UTC, shape (n,), increasing.
    kinds: int, shape (n,), index into PHASE_NAMES.
    """

    times: Instants
    kinds: NDArray[np.int64]


@dataclass(frozen=True)
class Daylight:
    """Stretches with the sun above the horizon, in order; `datetime64[ms]` UTC, shape (n,).

    A stretch may last for weeks in the polar day; one cut by the span that was asked for
    begins or ends with that span.
    """

    begins: Instants
    ends: Instants


@dataclass(frozen=True)
class SkyDays:
    """Sun and moon on consecutive local days; every array has shape (n,).

    lunar_age_d: days since the last new moon, at local noon.
    illuminated: lit fraction of the disc, 0 to 1, at local noon.
    Event arrays are `datetime64[ms]` UTC, NaT where the event does not happen that day.
    Near the polar day an event can fall twice into one local day: then the first of
    sunrise, civil dawn, moonrise and moonset is given and the last of sunset and civil dusk.
    sun_up_all_day, sun_down_all_day: True where the sun neither rises nor sets because it stays
    up, or down; both False where nobody asked for its events.
    """

    days: tuple[date, ...]
    lunar_age_d: Floats
    illuminated: Floats
    sunrise: Instants
    sunset: Instants
    civil_dawn: Instants
    civil_dusk: Instants
    moonrise: Instants
    moonset: Instants
    sun_up_all_day: NDArray[np.bool_]
    sun_down_all_day: NDArray[np.bool_]
