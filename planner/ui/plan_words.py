"""What is said of a plan that is moved by hand; no Qt."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final
from zoneinfo import ZoneInfo

from planner.phrasing import Style, count_text, day_clock_text, height_text, light_text

if TYPE_CHECKING:
    from planner.trips import Plan

_HELD: Final = {"set": "its set", "haul": "its haul", "whole": "set and haul together"}


def move_hint(part: str | None) -> str:
    """Return how a plan is moved, or how to go on with what is held."""
    if part is None:
        return (
            "Move a plan: drag it or one of its ends on the strip, or press S (set), H (haul) or "
            "M (both) there and then ← →."
        )
    return (
        f"Moving {_HELD[part]}: ← → by a quarter hour, with Shift by a day; Enter keeps it, "
        "Escape takes it back."
    )


def own_text(plan: Plan, best: Plan | None, zone: ZoneInfo, style: Style) -> str:
    """Return a plan drawn by hand in one sentence, with what it costs against the best."""
    words = [
        f"Your own: set {day_clock_text(plan.set_at, zone, style)}, haul "
        f"{day_clock_text(plan.haul_at, zone, style)}",
        f"{count_text(plan.full_keepers)} full keepers",
        f"light crabs {light_text(plan.light_share)}",
    ]
    if plan.lowest_cover_m is not None:
        words.append(f"least cover {height_text(plan.lowest_cover_m, style)}")
    if best is not None:
        fewer = round(best.full_keepers.mean) - round(plan.full_keepers.mean)
        words.append(f"{fewer} fewer than plan 1" if fewer > 0 else "as many as plan 1")
    return ", ".join(words) + "."
