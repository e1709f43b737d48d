"""Spots and ramp against a year of water."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from planner.sites.site import HarmonicConstant, Site, Spot, Water
from planner.tides import Tide
from planner.tides.year_water import year_water

# One pure solar tide of 1 m about 0.5 m: its hours below a level are known in closed form.
WATER = Water(
    datum="MLLW", mean_level_m=0.5, file_units="m", phase_reference_h=0.0, node_factors="yearly",
    constants_state="", source="made", constants=(HarmonicConstant("S2", 1.0, 0.0),),
)  # fmt: skip
SITE = Site("Made", 38.0, -76.0, ZoneInfo("America/New_York"), WATER)


def _hours_below(level_m: float) -> float:
    share = np.arccos(np.clip((0.5 - level_m) / 1.0, -1, 1)) / np.pi
    return float(8760 * share)


def test_hours_bare_and_dry_are_those_of_a_plain_cosine() -> None:
    """A trap's bare hours come from its top, the ground's dry hours from its foot."""
    spots = (Spot("bank", 0.1, 0.4), Spot("hole", 2.0, 0.4))
    found = year_water(Tide(replace(SITE, spots=spots, lowest_ramp_level_m=0.0)), date(2026, 3, 1))
    bank, hole = found.spots
    # The nodal rules leave S2 alone; even steps of six minutes cost less than an hour.
    assert bank.bare_h == pytest.approx(_hours_below(0.3), abs=1.0)
    assert bank.dry_h == pytest.approx(_hours_below(-0.1), abs=1.0)
    assert (hole.bare_h, hole.dry_h) == (0.0, 0.0)
    assert found.no_launch_h == pytest.approx(_hours_below(0.0), abs=1.0)
    assert hole.least_cover_m == pytest.approx(-0.5 + 2.0 - 0.4, abs=0.01)


def test_without_spots_or_ramp_only_the_water_is_told() -> None:
    """A place just begun has a range and no more."""
    found = year_water(Tide(SITE), date(2028, 2, 29))
    assert found.spots == ()
    assert found.no_launch_h is None
    assert (found.lowest_m, found.highest_m) == pytest.approx((-0.5, 1.5), abs=0.01)
