"""Logged trips as the model sees them: when, under which moon, how many judged and light."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_DAY, to_utc64
from planner.estimates import Floats
from planner.logbook import TripOutcome
from planner.molt.signs import TripSigns, signs_by_trip
from planner.molt.temperature import Reading
from planner.sites.site import Site


@dataclass(frozen=True)
class JudgedTrips:
    """Trips that say something of fullness, in order of time; arrays of shape (n,).

    judged, light: counts, 0 on a trip that speaks by the signs of its single crabs alone.

    days: local days. at_d: the trips' times in days. phase_rad: of the moon, 0 new.
    here: True for trips at the place itself, False for the user's other places.
    """

    outcomes: tuple[TripOutcome, ...]
    days: tuple[date, ...]
    at_d: Floats
    phase_rad: Floats
    judged: Floats
    light: Floats
    here: NDArray[np.bool_]
    signs: tuple[TripSigns, ...]

    @property
    def counted_here(self) -> NDArray[np.bool_]:
        """True for the trips at the place itself that judged crabs, shape (n,)."""
        return self.here & (self.judged > 0)

    @property
    def crabs_here(self) -> int:
        """How many crabs were judged at the place itself."""
        return int(self.judged[self.here].sum())


def judged_trips(site: Site, outcomes: Sequence[TripOutcome]) -> JudgedTrips:
    """Return the trips that say something of fullness; those without a time are left out.

    Raises RangeError when a trip is outside the ephemeris.
    """
    from planner.sky import lunar_phase_angle

    timed = [
        (outcome.when, outcome, signs)
        for outcome, signs in zip(outcomes, signs_by_trip(outcomes), strict=True)
        if outcome.when is not None and (_counts(outcome) != (0, 0) or signs.speak)
    ]
    timed.sort(key=lambda each: (each[0], each[1].place, each[1].trip))
    used = [outcome for _, outcome, _ in timed]
    counts = np.array([_counts(outcome) for outcome in used], dtype=np.float64).reshape(-1, 2)
    times = np.array([to_utc64(when) for when, _, _ in timed], dtype="datetime64[ms]")
    return JudgedTrips(
        outcomes=tuple(used),
        days=tuple(when.astimezone(site.zone).date() for when, _, _ in timed),
        at_d=days_of(times),
        phase_rad=np.radians(lunar_phase_angle(times)),
        judged=counts[:, 0],
        light=counts[:, 1],
        here=np.array([outcome.place == site.name for outcome in used], dtype=np.bool_),
        signs=tuple(signs for _, _, signs in timed),
    )


def _counts(outcome: TripOutcome) -> tuple[int, int]:
    """Return crabs judged and those of them light, none where the light ones were not counted."""
    if not outcome.judged or outcome.light is None:
        return 0, 0
    return outcome.judged, outcome.light


def days_of(times: NDArray[np.datetime64]) -> Floats:
    """Return instants as days since 1970 UTC, shape (n,)."""
    return times.astype("datetime64[ms]").astype(np.float64) / MS_PER_DAY


def readings(site: Site, outcomes: Sequence[TripOutcome]) -> tuple[Reading, ...]:
    """Return the water temperatures that trips at the place logged."""
    return tuple(
        Reading(outcome.when.astimezone(site.zone).date(), outcome.water_c)
        for outcome in outcomes
        if outcome.place == site.name and outcome.when is not None and outcome.water_c is not None
    )
