"""What is said of a plan that is moved by hand; no Qt."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, Final
from zoneinfo import ZoneInfo

from planner.phrasing import Style, count_text, day_clock_text, height_text, light_text
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Plan, PlanSet

Days = tuple[date, date]

_HELD: Final = {
    "set": say("its set"),
    "haul": say("its haul"),
    "whole": say("set and haul together"),
}


def move_hint(part: str | None) -> str:
    """Return how a plan is moved, or how to go on with what is held."""
    if part is None:
        return say(
            "Move a plan: drag it or one of its ends on the strip, or press S (set), H (haul) or "
            "M (both) there and then ← →."
        )
    return say(
        "Moving {held}: ← → by a quarter hour, with Shift by a day; Enter keeps "
        "it, Escape takes it back.",
        held=_HELD[part],
    )


def own_text(plan: Plan, best: Plan | None, zone: ZoneInfo, style: Style) -> str:
    """Return a plan drawn by hand in one sentence, with what it costs against the best."""
    words = [
        say(
            "Your own: set {set_at}, haul {haul_at}",
            set_at=day_clock_text(plan.set_at, zone, style),
            haul_at=day_clock_text(plan.haul_at, zone, style),
        ),
        say("{count} full keepers", count=count_text(plan.full_keepers)),
        say("light crabs {light}", light=light_text(plan.light_share)),
    ]
    if plan.lowest_cover_m is not None:
        words.append(say("least cover {height}", height=height_text(plan.lowest_cover_m, style)))
    if best is not None:
        fewer = round(best.full_keepers.mean) - round(plan.full_keepers.mean)
        words.append(
            say("{fewer} fewer than plan 1", fewer=fewer) if fewer > 0 else say("as many as plan 1")
        )
    return ", ".join(words) + "."


def against_the_best(plan: Plan, found: PlanSet | None, zone: ZoneInfo, style: Style) -> str:
    """Return what a plan costs against the first of the ranking, and how sure that is."""
    from planner.trips import compare_plans

    if found is None or not found.plans or plan.rank == found.plans[0].rank:
        return say("No plan ranks above this one; the range of its keepers says how sure that is.")
    return compare_plans(found.plans[0], plan, zone, style).sentence


def moved_ranks(before: dict[Days, int], after: dict[Days, int]) -> dict[int, int]:
    """Return by how many places each rank is better (positive) than before a change of wishes.

    Plans are known again by their days; new ones and those that stayed are left out.
    """
    return {
        rank: before[days] - rank
        for days, rank in after.items()
        if days in before and before[days] != rank
    }


def day_verdict(day_words: str, found: Sequence[str], closed: str) -> str:
    """Return a day in words with what a set or a haul on it would give, no reason said twice.

    found: what is said of a set on the day, and of a haul. closed: why no trap may be in the
    water, which is said there too; "" where one may.
    """
    if found and closed:
        twice = say("Closed: {why_closed}.", why_closed=closed)
        day_words = day_words.replace(f" {twice}", "")
    # What is possible on a day has times in it and is never twice the same.
    reasons = [text.partition(": ")[2] for text in found]
    if len(reasons) == 2 and reasons[0] == reasons[1]:
        found = [say("No set and no haul: {reasons}", reasons=reasons[0])]
    for reason in reasons:
        day_words = day_words.replace(say(" Not free: {reason}", reason=reason), "")
    return " ".join((day_words, *found))
