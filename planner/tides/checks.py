"""Everything the program can say about whether a place's water is right."""

from __future__ import annotations

from dataclasses import dataclass

from planner.sites.site import Site
from planner.tides.observed import Comparison, ObservedTurns, compare
from planner.tides.reading import read_observed_turns
from planner.tides.summary import WaterSummary, form_number, summarise, tide_type
from planner.tides.suspicions import Suspicion, suspicions
from planner.tides.tide import Tide

__all__ = [
    "Comparison",
    "ObservedTurns",
    "Suspicion",
    "WaterCheck",
    "WaterSummary",
    "check_water",
    "compare",
    "form_number",
    "read_observed_turns",
    "summarise",
    "suspicions",
    "tide_type",
]


@dataclass(frozen=True)
class WaterCheck:
    """A place's tide in figures, beside what was observed, with what may be wrong.

    summary is None where the water never turns, comparison where nothing was observed.
    """

    summary: WaterSummary | None
    comparison: Comparison | None
    suspicions: tuple[Suspicion, ...]


def check_water(site: Site, observed: ObservedTurns | None = None) -> WaterCheck:
    """Return every check of a place: takes about a second."""
    tide = Tide(site)
    summary = summarise(tide)
    seen = observed is not None and len(observed.times) > 0
    return WaterCheck(
        summary,
        compare(tide, observed) if observed is not None and seen else None,
        suspicions(tide, summary, observed),
    )
