"""A set-and-haul plan and what it promises."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from planner.estimates import Interval

# Expected catches closer than this ratio cannot be told apart beforehand; judgement.
AS_GOOD: Final = 0.95


@dataclass(frozen=True)
class Plan:
    """One ranked way to set and haul; instants aware UTC.

    set_at, haul_at: when the first trap goes in, and when hauling begins.
    latest_set_at: the set may begin at any quarter hour from set_at to here and keep every limit.
    lowest_cover_m: least water over the top of any trap during the soak, None without spots;
    lowest_cover_spot, lowest_cover_at: where and when that is.
    ranked_keepers: full keepers less what the wishes count off, by which plans are ranked.
    set_daylight_h, haul_daylight_h: daylight left when the set and the haul are over.
    wishes: each wish with how far it is met, in words.
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
    ranked_keepers: float = float("nan")
    set_daylight_h: float = float("nan")
    haul_daylight_h: float = float("nan")
    wishes: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class PlanSet:
    """Ranked plans, and how many candidates each hard limit ruled out."""

    plans: tuple[Plan, ...]
    rejected: Mapping[str, int]


def soonest_as_good(plans: Sequence[Plan]) -> Plan:
    """Return the earliest plan that ranks as good as the best, as far as anyone can tell.

    plans: ranked, not empty (ValueError otherwise).
    """
    if not plans:
        raise ValueError("there is no plan to choose from")
    enough = AS_GOOD * max(plan.ranked_keepers for plan in plans)
    good = (plan for plan in plans if plan.ranked_keepers >= enough)
    return min(good, key=lambda plan: (plan.set_at, plan.rank))
