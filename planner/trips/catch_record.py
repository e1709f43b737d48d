"""What the log says of the catch: each counted trap with its soak, spot, design and season."""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Final

import numpy as np

from planner.clock import YEAR_D
from planner.estimates import Floats
from planner.logbook import Log
from planner.logbook.entries import Haul
from planner.molt.profile import dormant_below_c
from planner.sites.site import Site

_YEAR_S: Final = YEAR_D * 86_400
_NEW_YEAR: Final = datetime(2000, 1, 1, tzinfo=UTC)
# Dormant crabs enter no trap. That the catch fades over a few degrees above the temperature
# of dormancy, and how fast, is our judgement.
_FADE_C: Final = 1.2
_OUT_OF_USE: Final = {"lost": True, "retired": True, "found": False}


@dataclass(frozen=True)
class TripCatch:
    """What one logged trip says of its counted traps; arrays and tuples of shape (n,).

    keepers: of each trap. soaks_h: hours. activity: how active crabs were, 0 to 1.
    season: time of year as an angle (radians), None where it is left out of account.
    spots, designs: names, "" where not recorded; empty for none recorded at all.
    """

    keepers: Floats
    soaks_h: Floats
    activity: float
    season: float | None = None
    spots: tuple[str, ...] = ()
    designs: tuple[str, ...] = ()

    @property
    def total(self) -> int:
        """Keepers of all the traps."""
        return int(self.keepers.sum())


@dataclass(frozen=True)
class Mix:
    """How the traps of a plan stand: the share at each spot and of each design.

    Shares add up to 1; empty where there are no spots, or no design is known.
    """

    spots: Mapping[str, float] = field(default_factory=dict)
    designs: Mapping[str, float] = field(default_factory=dict)


def season_angle(instant: datetime) -> float:
    """Return the time of year of an aware instant as an angle in radians, the zone no matter."""
    return math.tau * ((instant - _NEW_YEAR).total_seconds() / _YEAR_S % 1.0)


def activity_at(water_c: Floats, species: str) -> Floats:
    """Return how active crabs are (0 to 1), shape (n,); 1 where the temperature is NaN."""
    above_c = water_c - dormant_below_c(species)
    fade: Floats = 1 / (1 + np.exp(-(above_c - _FADE_C) / _FADE_C))
    return np.where(np.isnan(water_c), 1.0, fade)


def trip_catches(site: Site, hauls: Iterable[Haul]) -> list[TripCatch]:
    """Return the trips of the place whose hauls have both a count of keepers and a soak.

    A haul without a count is not a haul without crabs, so it is left out.
    """
    by_trip: dict[str, list[Haul]] = defaultdict(list)
    for haul in hauls:
        if haul.place == site.name and haul.keepers is not None and _soak_h(haul) > 0:
            by_trip[haul.trip].append(haul)
    return [_trip_catch(site, by_trip[name]) for name in sorted(by_trip)]


def plan_mix(site: Site, log: Log | None) -> Mix:
    """Return how a plan's traps stand: spread evenly over the spots, of the user's own designs.

    A trap's design is the one kept with it, else that of its newest haul here; lost and retired
    traps are left out. Without labelled traps the log's hauls here say how the designs are mixed.
    """
    spots = {spot.name: 1 / len(site.spots) for spot in site.spots}
    if log is None:
        return Mix(spots)
    here = [haul for haul in log.hauls if haul.place == site.name and haul.design.strip()]
    in_order = sorted(here, key=lambda haul: (haul.hauled_at or _NEW_YEAR, haul.design))
    kept = {haul.trap: haul.design.strip() for haul in in_order if haul.trap}
    for trap in log.traps:
        out = [_OUT_OF_USE[event.kind] for event in trap.events if event.kind in _OUT_OF_USE]
        if out and out[-1]:
            kept.pop(trap.label, None)
        elif trap.design.strip():
            kept[trap.label] = trap.design.strip()
    counts = Counter(kept.values() if kept else (haul.design.strip() for haul in here))
    return Mix(spots, {name: counts[name] / counts.total() for name in sorted(counts)})


def _soak_h(haul: Haul) -> float:
    """Return the soak in hours, 0 where a time is missing or the two are the wrong way round."""
    if haul.set_at is None or haul.hauled_at is None:
        return 0.0
    return max((haul.hauled_at - haul.set_at).total_seconds() / 3600, 0.0)


def _trip_catch(site: Site, hauls: Sequence[Haul]) -> TripCatch:
    # In one order, so that no digit hangs on the order of the rows.
    hauls = sorted(hauls, key=lambda h: (h.trap, h.spot, h.design, _soak_h(h), h.keepers or 0))
    ends = [haul.hauled_at for haul in hauls if haul.hauled_at is not None]
    water_c = []
    for haul in hauls:
        if haul.water_c is not None:
            water_c.append(haul.water_c)
        elif site.monthly_water_c is not None and haul.hauled_at is not None:
            water_c.append(site.monthly_water_c[haul.hauled_at.astimezone(site.zone).month - 1])
    mean_c = np.array([np.mean(sorted(water_c))]) if water_c else np.array([np.nan])
    return TripCatch(
        keepers=np.array([haul.keepers or 0 for haul in hauls], dtype=np.float64),
        soaks_h=np.array([_soak_h(haul) for haul in hauls]),
        activity=float(activity_at(mean_c, site.species)[0]),
        season=season_angle(min(ends)),
        spots=tuple(haul.spot.strip() for haul in hauls),
        designs=tuple(haul.design.strip() for haul in hauls),
    )
