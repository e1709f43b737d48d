"""A plan's reasons and warnings, in words for a tired person on a boat."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

import numpy as np

from planner.molt.forecast_types import Forecast
from planner.phrasing import (
    Style,
    clock_text,
    count_text,
    day_clock_text,
    day_text,
    height_text,
    light_text,
    soak_text,
    temperature_text,
    zone_text,
)
from planner.sites.rule_book import is_stale, months_since
from planner.sites.site import Site
from planner.trips.allowed import why_closed
from planner.trips.catch import REFERENCE_SOAK_H, CatchModel
from planner.trips.choosing import Wishes
from planner.trips.facts import Facts

_CLOSURE_NEAR_D = 3
# Judgement: from here on a long soak in warm water costs crabs.
_WARM_C = 25.0
_LONG_IN_WARM_H = 36.0
# Beyond a day traps fill slowly, so the trapper should know what the wait is for.
_LONG_SOAK_H = 30.0
_SLUGGISH = 0.5  # of the catch in warm water
_SLIM_COVER_M = 0.5
_TIGHT_DAYLIGHT_H = 0.5
_STILL_M = 0.03
_NUMBERS = (
    "no", "one", "two", "three", "four", "five", "six",
    "seven", "eight", "nine", "ten", "eleven", "twelve",
)  # fmt: skip


def reasons(
    site: Site, facts: Facts, catch: CatchModel, wishes: Wishes, style: Style
) -> Iterator[str]:
    """Yield why this plan, most important first."""
    source = (
        f"learned from {_counted(catch.trips, 'logged trip')} here"
        if catch.trips
        else "from published catch rates, as no trip here tells the catch yet"
    )
    yield (
        f"{count_text(facts.full_keepers).capitalize()} full keepers from "
        f"{_counted(facts.traps, 'trap')}, {source}."
    )
    yield f"Light crabs {light_text(facts.light_share)}."
    if facts.soak_h > _LONG_SOAK_H:
        yield _soak_text(facts, catch)
    if facts.latest_set_at > facts.set_at:
        yield _set_window_text(site, facts, style)
    if facts.cover is not None:
        yield _cover_text(site, facts, style)
    if facts.ramp_spare_m is not None:
        yield (
            f"At the ramp at least {height_text(facts.ramp_spare_m, style)} more water than you "
            "need, out and back on both days."
        )
    yield f"{_span_text(facts.slack_after_haul_h)} of daylight left when the haul is over."
    yield _haul_water_text(site, facts, style)
    yield from _wish_texts(site, facts, wishes, style)


def warnings(
    site: Site, facts: Facts, forecast: Forecast, today: date, style: Style
) -> Iterator[str]:
    """Yield what to look out for, most pressing first."""
    yield from _closure_warnings(site, facts)
    if facts.cover is None:
        yield "No spots entered: whether the traps stay covered was not checked."
    elif facts.cover.least_m < _SLIM_COVER_M:
        yield (
            f"Only {height_text(facts.cover.least_m, style)} over the shallowest trap at the "
            "lowest water: wind and high pressure can take that away. Check the weather."
        )
    if facts.ramp_spare_m is None:
        yield "No ramp level entered: whether you can launch was not checked."
    if facts.slack_after_haul_h < _TIGHT_DAYLIGHT_H:
        yield "Little daylight left after the haul: begin on time and carry lights."
    before, after = (at.astimezone(site.zone).utcoffset() for at in (facts.set_at, facts.haul_end))
    if before != after:
        yield (
            "The clocks change between set and haul: set by "
            f"{zone_text(facts.set_at, site.zone)}, haul by {zone_text(facts.haul_at, site.zone)}."
        )
    if np.isnan(facts.water_c):
        yield "Water temperature unknown: the catch was not lowered for cold water."
    elif facts.activity < _SLUGGISH:
        yield (
            f"Water about {temperature_text(facts.water_c, style)}: crabs hardly move, and few "
            "enter a trap (how few is a judgement)."
        )
    elif facts.water_c >= _WARM_C and facts.soak_h > _LONG_IN_WARM_H:
        yield (
            f"Water about {temperature_text(facts.water_c, style)} and a soak of "
            f"{soak_text(facts.soak_h)}: crabs weaken and fight in warm traps (common practice "
            "is to haul sooner)."
        )
    if forecast.basis == "prior":
        yield "No logged trip tells yet how light crabs are here: the share is a general one."
    yield from _rules_warnings(site, today)


def _closure_warnings(site: Site, facts: Facts) -> Iterator[str]:
    out = facts.haul_end.astimezone(site.zone).date()
    for ahead in range(1, _CLOSURE_NEAR_D + 1):
        day = out + timedelta(days=ahead)
        why = why_closed(site.closures, day)
        if why:
            yield f"Closed from {day_text(day)} ({why}): every trap must be out before it."
            return


def _rules_warnings(site: Site, today: date) -> Iterator[str]:
    checked = site.rules.checked
    if checked is None:
        yield "No date entered for when you checked the rules here: check with the agency."
    elif is_stale(site.rules, today):
        months = months_since(checked, today)
        yield (
            f"You last checked the rules here {_counted(months, 'month')} ago: "
            "check with the agency again."
        )


def _cover_text(site: Site, facts: Facts, style: Style) -> str:
    assert facts.cover is not None
    at = day_clock_text(facts.cover.at, site.zone, style)
    least = height_text(facts.cover.least_m, style)
    if len(site.spots) == 1:
        return f"The spot stays covered, by {least} at {at}."
    return (
        f"All {_number(len(site.spots))} spots stay covered, the shallowest "
        f"({facts.cover.spot}) by {least} at {at}."
    )


def _soak_text(facts: Facts, catch: CatchModel) -> str:
    """Return what a day in the water would bring of what the whole soak does."""
    day, whole = catch.per_trap(np.array([REFERENCE_SOAK_H, facts.soak_h]))
    total = facts.full_keepers.mean
    return (
        f"Traps fill more and more slowly: a day would bring about {round(total * day / whole)} "
        f"of these {round(total)}, the other {round(facts.soak_h - REFERENCE_SOAK_H)} hours the "
        "rest."
    )


def _set_window_text(site: Site, facts: Facts, style: Style) -> str:
    first, last = (clock_text(at, site.zone, style) for at in (facts.set_at, facts.latest_set_at))
    lost = round(facts.full_keepers.mean - facts.latest_full_keepers)
    cost = f"; the latest would cost {_counted(lost, 'full keeper')}" if lost >= 1 else ""
    return f"Set any time from {first} to {last}{cost}."


def _haul_water_text(site: Site, facts: Facts, style: Style) -> str:
    if facts.haul_turns:
        turn = facts.haul_turns[0]
        kind = "High" if turn.is_high else "Low"
        return (
            f"{kind} water at about {clock_text(turn.at, site.zone, style)} while you haul; slack "
            "can come earlier or later than that."
        )
    change = facts.haul_end_level_m - facts.haul_level_m
    levels = (
        f"from {height_text(facts.haul_level_m, style)} to "
        f"{height_text(facts.haul_end_level_m, style)}"
    )
    if abs(change) < _STILL_M:
        return (
            f"The water hardly changes while you haul ({height_text(facts.haul_level_m, style)})."
        )
    return f"The water {'rises' if change > 0 else 'falls'} while you haul, {levels}."


def _wish_texts(site: Site, facts: Facts, wishes: Wishes, style: Style) -> Iterator[str]:
    if wishes.haul_water != "any":
        met = wishes.haul_water == haul_water(facts)
        yield f"Wish for {wishes.haul_water} water at the haul: {'met' if met else 'not met'}."
    if wishes.haul_time != "any":
        at = clock_text(facts.haul_at, site.zone, style)
        yield f"Wish for a haul {wishes.haul_time} in the day: {at}."


def haul_water(facts: Facts) -> str:
    """Return "turning", "rising" or "falling": what the water does during the haul."""
    if facts.haul_turns:
        return "turning"
    return "rising" if facts.haul_end_level_m > facts.haul_level_m else "falling"


def _span_text(hours: float) -> str:
    if hours >= 24:
        return "A day or more"
    quarters = round(hours * 4)
    whole, rest = divmod(quarters, 4)
    minutes = f"{rest * 15} min" if rest else ""
    return " ".join(part for part in (f"{whole} h" if whole else "", minutes) if part) or "Minutes"


def _number(count: int) -> str:
    return _NUMBERS[count] if count < len(_NUMBERS) else str(count)


def _counted(count: int, noun: str) -> str:
    return f"{count} {noun}{'' if count == 1 else 's'}"
