"""What goes aboard and what to mind, for one plan: a list to tick, by category."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final, Literal

from planner.handouts.facts import SpotWater, TripFacts
from planner.handouts.rules import rules_here
from planner.phrasing import (
    RULES_CAUTION,
    Style,
    clock_text,
    day_clock_text,
    natural_order,
    number_text,
    temperature_text,
    zone_text,
)
from planner.units import metres_to
from planner.words import counted, say

Basis = Literal["rule", "plan", "practice"]

# Judgements: a spare or two for every dozen; ashore somebody should not worry at every delay.
_SPARES: Final = 2
_OVERDUE: Final = timedelta(hours=2)
# Common practice in boating safety: below about 15 degrees C a fall overboard takes the breath.
COLD_WATER_C: Final = 15.0
WARM_WATER_C: Final = 20.0

_PRACTICE: Final = say("Common practice, but for the figures of this plan; the rules come first.")
_LINES: Final = say(
    "Lines are a third longer than the water is deep at the highest of the soak; more in a "
    "strong current."
)


@dataclass(frozen=True)
class Item:
    """One thing to tick.

    key: under which the tick is remembered. basis: a rule the user entered, a figure of this
    plan, or common practice of the trade.
    """

    key: str
    text: str
    basis: Basis


@dataclass(frozen=True)
class Section:
    """One category: things to tick, then what to know. Cautions come first when shown."""

    name: str
    items: tuple[Item, ...]
    cautions: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


def checklist(facts: TripFacts, today: date, style: Style) -> tuple[Section, ...]:
    """Return the checklist of a plan; today is the day that the age of the rules counts to."""
    return (
        _rules(facts, today),
        Section(
            say("Traps, lines and labels"), tuple(_gear(facts, style)), notes=(_LINES, _PRACTICE)
        ),
        Section(say("Bait and tools"), tuple(_bait_and_tools(facts, style)), notes=(_PRACTICE,)),
        _safety(facts, style),
        _food(facts),
    )


def line_text(spot: SpotWater, style: Style) -> str:
    """Return the length of line for a spot, rounded up to the half metre or the foot."""
    step = 1.0 if style.length == "ft" else 0.5
    length = math.ceil(metres_to(spot.line_m, style.length) / step - 1e-9) * step
    return f"{number_text(length)} {style.length}"


def _rules(facts: TripFacts, today: date) -> Section:
    here = rules_here(facts.site.rules, today)
    items = tuple(
        Item(
            f"rule {rule.heading}",
            f"{_capital(rule.heading)}: {rule.text}",
            "rule",
        )
        for rule in here.rules
    )
    notes = [] if here.stale else [here.checked]
    if here.missing:
        notes.append(
            say(
                "Not written down for this place: {missing}. Ask the agency, and write "
                "the answers in the place book.",
                missing="; ".join(here.missing),
            )
        )
    return Section(
        say("Rules here"),
        items,
        cautions=(here.checked,) if here.stale else (),
        notes=(*notes, RULES_CAUTION),
    )


def _gear(facts: TripFacts, style: Style) -> Iterator[Item]:
    count = len(facts.traps.kits)
    designs = Counter(kit.design for kit in facts.traps.kits if kit.design)
    kinds = "; ".join(f"{number} × {design}" for design, number in designs.items())
    yield Item(
        "traps",
        say("{count} traps{words}", count=count, words=f": {kinds}" if kinds else ""),
        "plan",
    )
    yield Item(
        "labels",
        say(
            "{count} floats, each with the marks that the rules ask for, and the "
            "trap's label: {listed}",
            count=count,
            listed=", ".join(sorted((kit.label for kit in facts.traps.kits), key=natural_order)),
        ),
        "plan",
    )
    for spot in facts.spots:
        there = sum(placed.spot == spot.spot for placed in facts.traps.placed)
        deepest = _length(spot.deepest_m, style)
        yield Item(
            f"line {spot.spot}",
            say(
                "{spot}, {traps}: {line} of line each, for water up to {deepest} deep",
                spot=spot.spot,
                traps=counted(there, "trap"),
                line=line_text(spot, style),
                deepest=deepest,
            ),
            "plan",
        )
    if not facts.spots:
        yield Item(
            "line", say("Line a third longer than the water is deep at high water"), "practice"
        )
    yield Item("sinking line", say("Line weighted or sinking, no slack floating"), "practice")
    yield Item(
        "trap check",
        say("Every trap looked over: doors shut, escape openings clear, weak cord whole"),
        "practice",
    )
    yield Item(
        "spares",
        say("{spares} spare floats and lines, a spare label, a knife", spares=_SPARES),
        "practice",
    )


def _bait_and_tools(facts: TripFacts, style: Style) -> Iterator[Item]:
    leave = clock_text(facts.leave_at, facts.site.zone, style)
    baits: dict[str, list[str]] = {}
    for kit in facts.traps.kits:
        if kit.bait:
            baits.setdefault(kit.bait, []).append(kit.label)
    # By trap, so that a comparison of baits stays one: each trap gets what it had.
    by_trap = (
        say("{bait} in {labels}", bait=bait, labels=", ".join(labels))
        for bait, labels in baits.items()
    )
    usual = say("; as on the last trip: {by_trap}", by_trap="; ".join(by_trap)) if baits else ""
    yield Item(
        "bait",
        say(
            "Fresh bait for {kits} traps and {spares} over{usual}; aboard by {leave}",
            kits=len(facts.traps.kits),
            spares=_SPARES,
            usual=usual,
            leave=leave,
        ),
        "plan",
    )
    yield Item("gauge", say("Gauge for the legal size, and know where it is measured"), "practice")
    yield Item("gloves", say("Gloves and tongs"), "practice")
    yield Item("hook", say("Hook for the floats, and a measuring stick or lead line"), "practice")
    yield Item(
        "basket", say("Basket or box with wet cover and shade; ice for the way home"), "practice"
    )
    yield Item("paper", say("Tally sheet and pencil; catch record where the law asks"), "practice")


def _safety(facts: TripFacts, style: Style) -> Section:
    zone = facts.site.zone
    back = facts.haul_end + timedelta(minutes=facts.site.habits.bait_minutes)
    both = say(
        "set, back by {set_back}; haul, back by {haul_back} {zone}",
        set_back=day_clock_text(facts.set_end, zone, style),
        haul_back=day_clock_text(back, zone, style),
        zone=zone_text(back, zone),
    )
    alarm = day_clock_text(back + _OVERDUE, zone, style)
    items = (
        Item(
            "weather",
            say("Marine forecast and small-craft warnings read, wind against tide minded")
            if len(facts.sky.days) == 1
            else say(
                "Marine forecast and small-craft warnings read on both days, wind against tide "
                "minded"
            ),
            "practice",
        ),
        Item("jackets", say("A life jacket that fits for everybody, worn"), "practice"),
        Item(
            "float plan",
            say(
                "Float plan left ashore ({both}); if not heard of by {alarm}, call for help",
                both=both,
                alarm=alarm,
            ),
            "plan",
        ),
        Item(
            "signals",
            say("Charged phone or radio, light, whistle; engine cut-off worn"),
            "practice",
        ),
        Item(
            "boat",
            say("Fuel for both ways and a third over, anchor, oar, bailer, plug"),
            "practice",
        ),
    )
    cautions = []
    notes = []
    if facts.water_c is None:
        notes.append(
            say(
                "Water temperature unknown. In cold water a fall overboard takes the breath and "
                "the strength within minutes: dress for the water, not the air."
            )
        )
    elif facts.water_c < COLD_WATER_C:
        cautions.append(
            say(
                "Cold water, about {temperature}: a fall overboard takes the breath and "
                "the strength within minutes. Dress for the water, not the air.",
                temperature=temperature_text(facts.water_c, style),
            )
        )
    return Section(say("Safety"), items, tuple(cautions), (*notes, _PRACTICE))


def _food(facts: TripFacts) -> Section:
    items = (
        Item(
            "advisory", say("Local advisory read: which water, which crabs, how many"), "practice"
        ),
        Item(
            "cool", say("Crabs kept alive, damp, shaded and cool; dead ones thrown out"), "practice"
        ),
        Item("cuts", say("Open cuts covered, clean water and soap aboard"), "practice"),
    )
    warm = facts.water_c is not None and facts.water_c >= WARM_WATER_C
    cuts = say(
        "Open cuts and warm water: bacteria there can make a cut dangerous within a day. Wash it, "
        "and see a doctor at once if it reddens or swells."
    )
    notes = (
        say("Cook live crabs only, and thoroughly."),
        say("Where an advisory says so, throw away the soft parts and the cooking water."),
    )
    return Section(
        say("Food and health"),
        items,
        cautions=(cuts,) if warm else (),
        notes=(*notes, _PRACTICE) if warm else (*notes, cuts, _PRACTICE),
    )


def _length(value_m: float, style: Style) -> str:
    return say(
        "{metres_to:.1f} {length}", metres_to=metres_to(value_m, style.length), length=style.length
    )


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
