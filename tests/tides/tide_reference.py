"""Reading the published values in tests/reference/tides, and places made from them."""

from __future__ import annotations

import csv
from functools import cache
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import Instants
from planner.estimates import Floats
from planner.sites.site import HarmonicConstant, NodeRule, Offsets, Site, Water
from planner.tides import Tide

FOLDER = Path(__file__).parents[1] / "reference" / "tides"
STATIONS_2021 = ("8654400", "8656483", "8720357", "8720503", "8726724")
WINDOW_STATIONS = ("8443970", "8654400", "9414290", "9447130")
HONOLULU_MEAN_M = 0.251  # mean level above MLLW, in the same public issue as the constants


@cache
def rows(name: str) -> list[dict[str, str]]:
    """Return the rows of a reference file."""
    with (FOLDER / name).open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


def column(name: str, field: str) -> Floats:
    """Return a column of numbers."""
    return np.array([float(row[field]) for row in rows(name)])


def instants(name: str, field: str = "time_utc") -> Instants:
    """Return a column of UTC instants."""
    return np.array([np.datetime64(row[field].rstrip("Z"), "ms") for row in rows(name)])


def mean_above_mllw(station: str) -> float:
    """Return the published mean sea level above MLLW."""
    by_station = {row["station"]: row for row in rows("stations.csv")}
    return float(by_station[station]["z0_m_MSL_above_MLLW"])


def constants(state: str, lag: str = "phase_lag_greenwich_deg") -> tuple[HarmonicConstant, ...]:
    """Return a published set of constants in metres."""
    return tuple(
        HarmonicConstant(row["name"], float(row["amplitude_m"]), float(row[lag]))
        for row in rows(f"constants/constants_{state}.csv")
    )


def place(
    of: tuple[HarmonicConstant, ...],
    mean_level_m: float = 0.0,
    rule: NodeRule = "yearly",
    phase_reference_h: float = 0.0,
    zone: str = "UTC",
) -> Site:
    """Return a place with constituents."""
    water = Water("MLLW", mean_level_m, "m", phase_reference_h, rule, "", "", of)
    return Site("a place", 0.0, 0.0, ZoneInfo(zone), water)


def offset_place(reference: Site, **offsets: float) -> Site:
    """Return a place by offsets from another."""
    values = {"high_minutes": 0.0, "low_minutes": 0.0} | offsets
    water = Water("MLLW", 0.0, "m", 0.0, "yearly", "", "", offsets=Offsets(reference, **values))
    return Site("a place by offsets", 0.0, 0.0, ZoneInfo("UTC"), water)


def station(number: str, rule: NodeRule = "yearly", mean_level_m: float | None = None) -> Tide:
    """Return the tide of a published station, above MLLW unless a mean level is given."""
    mean = mean_above_mllw(number) if mean_level_m is None else mean_level_m
    return Tide(place(constants(number), mean, rule))


def vlissingen(rule: NodeRule = "continuous") -> Tide:
    """Return the tide of the Dutch set: lags in UTC+1, mean 1 cm above NAP."""
    lags = constants("VLISSGN_2009_2012", "phase_lag_deg_time_utc_plus_1")
    return Tide(place(lags, 0.01, rule, phase_reference_h=1.0))


def utc(text: str) -> np.datetime64:
    """Return a UTC instant."""
    return np.datetime64(text, "ms")
