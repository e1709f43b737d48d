"""Why a day is or is not worth going out, and how two plans differ, in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Final, Literal
from zoneinfo import ZoneInfo

from planner.phrasing import (
    Style,
    count_text,
    day_clock_text,
    day_text,
    daylight_text,
    height_text,
    light_text,
    soak_text,
)
from planner.trips.candidates import LIMIT_WORDS, LIMITS
from planner.trips.choosing import Wishes
from planner.trips.plan import AS_GOOD, Plan
from planner.trips.planning import Search
from planner.words import begun, counted, say

Outing = Literal["set", "haul"]

# What a pair has that keeps a limit, as LIMIT_WORDS says what one lacks.
_KEPT_WORDS: Final = {
    "free": say("your free hours"),
    "closed": say("the open days"),
    "daylight": say("daylight"),
    "ramp": say("the hours with water at the ramp"),
    "soak": say("the soaks allowed"),
}

# What can be done where a limit leaves nothing.
_REMEDIES: Final = {
    "free": say("free more days or longer hours, if you can"),
    "closed": say("look at other days"),
    "daylight": say("look at longer days, or see whether set and haul take as long as you wrote"),
    "ramp": say("see whether the ramp's lowest level is right, or launch elsewhere"),
    "soak": say(
        "see whether the soaks you accept suit your free days, and the longest one allowed"
    ),
    "cover": say("choose deeper spots, or see whether depths and margin are right"),
}


@dataclass(frozen=True)
class Comparison:
    """Two plans side by side: rows of (what, of the first, of the second), and the gist."""

    rows: tuple[tuple[str, str, str], ...]
    sentence: str


def explain_day(
    search: Search,
    day: date,
    style: Style,
    wishes: Wishes | None = None,
    today: date | None = None,
) -> list[str]:
    """Return what rules out setting and hauling on a local day, or what it lacks.

    wishes: how plans are ranked. ValueError for a day that was not searched.
    """
    wishes = wishes or Wishes()
    best = next(iter(search.plans(1, wishes, style, today).plans), None)
    return [
        *_outing_texts(search, day, "set", best, wishes, style, today),
        *_outing_texts(search, day, "haul", best, wishes, style, today),
    ]


def nothing_fits(rejected: Mapping[str, int]) -> str:
    """Return what stopped the pairs of set and haul that came furthest, and what can be done.

    rejected: how many pairs each limit ruled out, as of a `PlanSet` without plans.
    """
    furthest = next((limit for limit in reversed(LIMITS) if rejected.get(limit)), None)
    if furthest is None:
        return say("No set and haul fit into these days any more: look at later days, or at more.")
    return say(
        "No set and haul keep every limit. Those that came furthest failed by this: {limit}. So "
        "{remedy}.",
        limit=LIMIT_WORDS[furthest],
        remedy=_REMEDIES[furthest],
    )


def compare_plans(first: Plan, second: Plan, zone: ZoneInfo, style: Style) -> Comparison:
    """Return two plans side by side, and which promises more as far as that can be told."""

    def row(what: str, of: list[str]) -> tuple[str, str, str]:
        return what, of[0], of[1]

    both = (first, second)
    rows = [
        row(say("Set"), [day_clock_text(plan.set_at, zone, style) for plan in both]),
        row(say("Haul"), [day_clock_text(plan.haul_at, zone, style) for plan in both]),
        row(say("Soak"), [soak_text(plan.soak_h) for plan in both]),
        row(say("Full keepers"), [count_text(plan.full_keepers) for plan in both]),
        row(say("Light crabs"), [light_text(plan.light_share) for plan in both]),
        row(
            say("Least cover"),
            [
                say("not checked")
                if plan.lowest_cover_m is None
                else height_text(plan.lowest_cover_m, style)
                for plan in both
            ],
        ),
        row(
            say("Daylight left after the set"),
            [daylight_text(plan.set_daylight_h) for plan in both],
        ),
        row(
            say("Daylight left after the haul"),
            [daylight_text(plan.haul_daylight_h) for plan in both],
        ),
        *(row(say("Wish for {wish}", wish=wish), met) for wish, met in _wishes(both)),
        row(say("To look out for"), [" ".join(plan.warnings) or say("nothing") for plan in both]),
    ]
    return Comparison(tuple(rows), _gist(first, second))


def _wishes(both: tuple[Plan, Plan]) -> Iterator[tuple[str, list[str]]]:
    """Yield each wish with how far each of the two plans meets it."""
    outcomes = [dict(plan.wishes) for plan in both]
    for wish in dict.fromkeys([*outcomes[0], *outcomes[1]]):
        yield wish, [of.get(wish, "") for of in outcomes]


def _gist(first: Plan, second: Plan) -> str:
    names = [_name(plan) for plan in (first, second)]
    means = [plan.full_keepers.mean for plan in (first, second)]
    better = 0 if means[0] >= means[1] else 1
    gap = round(means[better]) - round(means[1 - better])
    promise = say(
        "{name} promises {keepers}",
        name=begun(names[better]),
        keepers=counted(gap, "more full keeper"),
    )
    if means[1 - better] >= AS_GOOD * means[better]:
        told = promise if gap else say("Both promise as many full keepers")
        return say(
            "{told}: too near to tell apart beforehand. Take the one that suits you.", told=told
        )
    lighter = first if first.light_share.mean > second.light_share.mean else second
    where = say(" {name} has the more light crabs.", name=begun(_name(lighter)))
    return f"{promise}.{where if lighter is not (first, second)[better] else ''}"


def _name(plan: Plan) -> str:
    return say("plan {rank}", rank=plan.rank) if plan.rank else say("your own plan")


def _outing_texts(
    search: Search,
    day: date,
    outing: Outing,
    best: Plan | None,
    wishes: Wishes,
    style: Style,
    today: date | None,
) -> Iterator[str]:
    zone = search.outlook.site.zone
    plan = search.best_on(day, outing, wishes, style, today)
    if plan is None:
        why = _why_not(search, day, outing)
        yield (
            say("No set on {day}: {why}.", day=day_text(day), why=why)
            if outing == "set"
            else say("No haul on {day}: {why}.", day=day_text(day), why=why)
        )
        return
    values = {
        "day": day_text(day),
        "other": day_clock_text(plan.haul_at if outing == "set" else plan.set_at, zone, style),
        "keepers": count_text(plan.full_keepers),
        "cost": "" if best is None else f", {_cost(plan, best)}",
    }
    yield (
        say("With a set on {day} the best haul is {other}: {keepers} full keepers{cost}.", **values)
        if outing == "set"
        else say(
            "With a haul on {day} the best set is {other}: {keepers} full keepers{cost}.", **values
        )
    )


def _cost(plan: Plan, best: Plan) -> str:
    fewer = round(best.full_keepers.mean) - round(plan.full_keepers.mean)
    if fewer <= 0:
        return say("as many as the best plan")
    alike = plan.full_keepers.mean >= AS_GOOD * best.full_keepers.mean
    tail = say(", too near to tell apart") if alike else ""
    return say("{fewer} fewer than the best plan{tail}", fewer=fewer, tail=tail)


def _why_not(search: Search, day: date, outing: Outing) -> str:
    """Return the reason of the day itself, or the limits in the way of what it could have been."""
    outlook = search.outlook
    at = outlook.index(day)
    if outlook.why_closed[at]:
        return say("closed ({why_closed})", why_closed=outlook.why_closed[at])
    if outlook.why_not_free[at]:
        return outlook.why_not_free[at]
    counts = search.rejected_on(day, outing)
    if not counts:
        return say("it is over, or too near the last day looked at")
    # Pairs are counted at the first limit they fail, so the later limits stopped those that had
    # come furthest.
    *before, furthest = (limit for limit in LIMITS if counts.get(limit))
    kept = say(" and ").join(_KEPT_WORDS[limit] for limit in before)
    if not kept:
        return LIMIT_WORDS[furthest]
    return say("{limit}, within {kept}", limit=LIMIT_WORDS[furthest], kept=kept)
