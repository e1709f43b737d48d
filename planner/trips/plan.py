"""A set-and-haul plan and what it promises."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime

from planner.estimates import Interval


@dataclass(frozen=True)
class Plan:
    """One ranked way to set and haul; instants aware UTC.

    set_at, haul_at: when the first trap goes in, and when hauling begins.
    latest_set_at: the set may begin at any quarter hour from set_at to here and keep every limit.
    lowest_cover_m: least water over the top of any trap during the soak, None without spots;
    lowest_cover_spot, lowest_cover_at: where and when that is.
    """

    rank: int
    set_at: datetime
    latest_set_at: datetime
    haul_at: datetime
    soak_h: float
    full_keepers: Interval
    light_share: Interval
    lowest_cover_m: float | None
    lowest_cover_spot: str | None
    lowest_cover_at: datetime | None
    reasons: tuple[str, ...]
    warnings: tuple[str, ...]


@dataclass(frozen=True)
class PlanSet:
    """Ranked plans, and how many candidates each hard limit ruled out."""

    plans: tuple[Plan, ...]
    rejected: Mapping[str, int]
