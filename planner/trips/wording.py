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
    daylight_text,
    height_text,
    light_text,
    soak_text,
    temperature_text,
    zone_text,
)
from planner.sites.rule_book import is_ahead, is_stale, months_since
from planner.sites.site import Site
from planner.trips.allowed import why_closed
from planner.trips.catch import REFERENCE_SOAK_H, CatchModel
from planner.trips.choosing import Wishes
from planner.trips.effect_words import effect_texts
from planner.trips.facts import Facts
from planner.trips.wish_words import on_one_day, wish_texts
from planner.words import counted, say

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
    say("no"), say("one"), say("two"), say("three"), say("four"), say("five"), say("six"),
    say("seven"), say("eight"), say("nine"), say("ten"), say("eleven"), say("twelve"),
)  # fmt: skip


def reasons(
    site: Site, facts: Facts, catch: CatchModel, wishes: Wishes, style: Style
) -> Iterator[str]:
    """Yield why this plan, most important first."""
    source = (
        say("learned from {trips} here", trips=counted(catch.trips, "logged trip"))
        if catch.trips
        else say("from published catch rates, as no trip here tells the catch yet")
    )
    yield say(
        "{count} full keepers from {traps}, {source}.",
        count=count_text(facts.full_keepers).capitalize(),
        traps=counted(facts.traps, "trap"),
        source=source,
    )
    yield say("Light crabs {light}.", light=light_text(facts.light_share))
    yield from effect_texts(catch.effects, facts.season)
    if facts.soak_h > _LONG_SOAK_H:
        yield _soak_text(facts, catch)
    if facts.latest_set_at > facts.set_at:
        yield _set_window_text(site, facts, style)
    if facts.cover is not None:
        yield _cover_text(site, facts, style)
    if facts.ramp_spare_m is not None:
        yield _ramp_text(site, facts, style)
    yield say(
        "{span} of daylight left when the haul is over.",
        span=daylight_text(facts.slack_after_haul_h),
    )
    yield _haul_water_text(site, facts, style)
    yield from wish_texts(site, facts, wishes, style)


def warnings(
    site: Site, facts: Facts, forecast: Forecast, today: date, style: Style
) -> Iterator[str]:
    """Yield what to look out for, most pressing first."""
    yield from _closure_warnings(site, facts)
    if facts.cover is None:
        yield say("No spots entered: whether the traps stay covered was not checked.")
    elif facts.cover.least_m < _SLIM_COVER_M:
        yield say(
            "Only {height} over the shallowest trap at the lowest water: wind and "
            "high pressure can take that away. Check the weather.",
            height=height_text(facts.cover.least_m, style),
        )
    if facts.ramp_spare_m is None:
        yield say("No ramp level entered: whether you can launch was not checked.")
    if facts.slack_after_set_h < _TIGHT_DAYLIGHT_H:
        yield say("Little daylight left after the set: begin on time and carry lights.")
    if facts.slack_after_haul_h < _TIGHT_DAYLIGHT_H:
        yield say("Little daylight left after the haul: begin on time and carry lights.")
    before, after = (at.astimezone(site.zone).utcoffset() for at in (facts.set_at, facts.haul_end))
    if before != after:
        yield say(
            "The clocks change between set and haul: set by {set_zone}, haul by {haul_zone}.",
            set_zone=zone_text(facts.set_at, site.zone),
            haul_zone=zone_text(facts.haul_at, site.zone),
        )
    if np.isnan(facts.water_c):
        yield say("Water temperature unknown: the catch was not lowered for cold water.")
    elif facts.activity < _SLUGGISH:
        yield say(
            "Water about {temperature}: crabs hardly move, and few enter a trap (how "
            "few is a judgement).",
            temperature=temperature_text(facts.water_c, style),
        )
    elif facts.water_c >= _WARM_C and facts.soak_h > _LONG_IN_WARM_H:
        yield say(
            "Water about {temperature} and a soak of {soak}: crabs weaken and fight "
            "in warm traps (common practice is to haul sooner).",
            temperature=temperature_text(facts.water_c, style),
            soak=soak_text(facts.soak_h),
        )
    if forecast.basis == "prior":
        yield say("No logged trip tells yet how light crabs are here: the share is a general one.")
    yield from _rules_warnings(site, today)


def _closure_warnings(site: Site, facts: Facts) -> Iterator[str]:
    out = facts.haul_end.astimezone(site.zone).date()
    for ahead in range(1, _CLOSURE_NEAR_D + 1):
        day = out + timedelta(days=ahead)
        why = why_closed(site.closures, day)
        if why:
            yield say(
                "Closed from {day} ({why}): every trap must be out before it.",
                day=day_text(day),
                why=why,
            )
            return


def _rules_warnings(site: Site, today: date) -> Iterator[str]:
    checked = site.rules.checked
    if checked is None:
        yield say("No date entered for when you checked the rules here: check with the agency.")
    elif is_ahead(site.rules, today):
        yield say(
            "You entered {day} {year} as the day you checked the rules here, which is still to "
            "come: correct it, and check with the agency.",
            day=day_text(checked),
            year=checked.year,
        )
    elif is_stale(site.rules, today):
        months = months_since(checked, today)
        yield say(
            "You last checked the rules here {months} ago: check with the agency again.",
            months=counted(months, "month"),
        )


def _cover_text(site: Site, facts: Facts, style: Style) -> str:
    assert facts.cover is not None
    at = day_clock_text(facts.cover.at, site.zone, style)
    least = height_text(facts.cover.least_m, style)
    if len(site.spots) == 1:
        return say("The spot stays covered, by {least} at {at}.", least=least, at=at)
    if len(site.spots) == 2:
        return say(
            "Both spots stay covered, the shallower ({spot}) by {least} at {at}.",
            spot=facts.cover.spot,
            least=least,
            at=at,
        )
    return say(
        "All {number} spots stay covered, the shallowest ({spot}) by {least} at {at}.",
        number=_number(len(site.spots)),
        spot=facts.cover.spot,
        least=least,
        at=at,
    )


def _ramp_text(site: Site, facts: Facts, style: Style) -> str:
    assert facts.ramp_spare_m is not None
    height = height_text(facts.ramp_spare_m, style)
    if on_one_day(site, facts):
        return say(
            "At the ramp at least {height} more water than you need, out and back both times.",
            height=height,
        )
    return say(
        "At the ramp at least {height} more water than you need, out and back on both days.",
        height=height,
    )


def _soak_text(facts: Facts, catch: CatchModel) -> str:
    """Return what a day in the water would bring of what the whole soak does."""
    day, whole = catch.per_trap(np.array([REFERENCE_SOAK_H, facts.soak_h]))
    total = facts.full_keepers.mean
    return say(
        "Traps fill more and more slowly: a day would bring about {day_one} of "
        "these {total}, the other {soak_h} hours the rest.",
        day_one=round(total * day / whole),
        total=round(total),
        soak_h=round(facts.soak_h - REFERENCE_SOAK_H),
    )


def _set_window_text(site: Site, facts: Facts, style: Style) -> str:
    first, last = (clock_text(at, site.zone, style) for at in (facts.set_at, facts.latest_set_at))
    lost = round(facts.full_keepers.mean - facts.latest_full_keepers)
    cost = (
        say("; the latest would cost {keepers}", keepers=counted(lost, "full keeper"))
        if lost >= 1
        else ""
    )
    return say("Set any time from {first} to {last}{cost}.", first=first, last=last, cost=cost)


def _haul_water_text(site: Site, facts: Facts, style: Style) -> str:
    if facts.haul_turns:
        turn = facts.haul_turns[0]
        kind = say("High water") if turn.is_high else say("Low water")
        return say(
            "{kind} at about {clock} while you haul; slack can come earlier or later than that.",
            kind=kind,
            clock=clock_text(turn.at, site.zone, style),
        )
    change = facts.haul_end_level_m - facts.haul_level_m
    levels = say(
        "from {before} to {after}",
        before=height_text(facts.haul_level_m, style),
        after=height_text(facts.haul_end_level_m, style),
    )
    if abs(change) < _STILL_M:
        return say(
            "The water hardly changes while you haul ({height}).",
            height=height_text(facts.haul_level_m, style),
        )
    if change > 0:
        return say("The water rises while you haul, {levels}.", levels=levels)
    return say("The water falls while you haul, {levels}.", levels=levels)


def _number(count: int) -> str:
    return _NUMBERS[count] if count < len(_NUMBERS) else str(count)
