"""The trip sheet: what one printed page says, in words and rows, before any of it is drawn."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from datetime import date, datetime
from typing import Final
from zoneinfo import ZoneInfo

import numpy as np

from planner.clock import Instants, from_utc64
from planner.handouts.checklist import line_text
from planner.handouts.facts import TripFacts
from planner.handouts.rules import rules_here
from planner.phrasing import (
    RULES_CAUTION,
    TIDE_CAUTION,
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
from planner.sky.sun_words import sun_text
from planner.units import metres_to
from planner.words import say

# So that everything stays legible on one page; what is left out is said.
MOST_SPOTS: Final = 12
MOST_RULES: Final = 18
MOST_RULE_LETTERS: Final = 140
MOST_WARNINGS: Final = 6
MOST_TRAPS_WITH_DESIGN: Final = 24


@dataclass(frozen=True)
class Curve:
    """The water to draw: posix seconds and levels in the style's unit, shape (n,).

    nights: stretches of dark, and marks: instants to name, in posix seconds. hours: where the
    axis has a label, with its words.
    """

    seconds: tuple[float, ...]
    levels: tuple[float, ...]
    level_name: str
    nights: tuple[tuple[float, float], ...]
    marks: tuple[tuple[float, str], ...]
    hours: tuple[tuple[float, str], ...]
    in_words: str


@dataclass(frozen=True)
class TripSheet:
    """Everything on the page, in the reader's units and on the place's clock.

    invented: said across the head of a sheet for an invented place, "" for a real one.
    spots: rows below spot_head. layout: spot and the traps there.
    """

    title: str
    invented: str
    made: str
    times: tuple[tuple[str, str], ...]
    curve: Curve
    spot_head: tuple[str, ...]
    spots: tuple[tuple[str, ...], ...]
    spots_note: str
    sky: tuple[str, ...]
    layout: tuple[tuple[str, str], ...]
    rules: tuple[str, ...]
    rules_note: str
    cautions: tuple[str, ...]


def trip_sheet(facts: TripFacts, today: date, style: Style) -> TripSheet:
    """Return the sheet of a plan, made today."""
    site, plan, zone = facts.site, facts.plan, facts.site.zone
    here = rules_here(site.rules, today)
    rules = [f"{rule.heading[:1].upper()}{rule.heading[1:]}: {rule.text}" for rule in here.rules]
    if len(rules) > MOST_RULES:
        rules[MOST_RULES:] = [
            say("and {rules} more rules in the place file", rules=len(rules) - MOST_RULES)
        ]
    return TripSheet(
        title=say(
            "{name}: set {set_day}, haul {haul_day}",
            name=site.name,
            set_day=day_text(plan.set_at.astimezone(zone).date()),
            haul_day=day_text(plan.haul_at.astimezone(zone).date()),
        ),
        invented=say("INVENTED place, water and rules: not for a real trip.")
        if site.invented
        else "",
        made=say(
            "Made {day} {today.year} with Fullshell. Times on the clock of {key} ({clocks}).",
            day=day_text(today),
            today=today,
            key=zone.key,
            clocks=_clocks(plan.set_at, plan.haul_at, zone),
        ),
        times=_times(facts, style),
        curve=_curve(facts, style),
        spot_head=(
            say("spot"),
            say("charted depth"),
            say("over trap at set"),
            say("least over trap"),
            say("over trap at haul"),
            say("line", sense="of a trap"),
        ),
        spots=_spots(facts, style),
        spots_note=_spots_note(facts, style),
        sky=tuple(_sky(facts, style)),
        layout=_layout(facts),
        rules=tuple(_shortened(rule) for rule in rules),
        rules_note=here.checked,
        cautions=_cautions(facts),
    )


def _clocks(set_at: datetime, haul_at: datetime, zone: ZoneInfo) -> str:
    first, last = zone_text(set_at, zone), zone_text(haul_at, zone)
    return (
        first
        if first == last
        else say("{first} at the set, {last} at the haul", first=first, last=last)
    )


def _times(facts: TripFacts, style: Style) -> tuple[tuple[str, str], ...]:
    plan, zone = facts.plan, facts.site.zone

    def at(instant: datetime) -> str:
        return day_clock_text(instant, zone, style)

    def to(instant: datetime) -> str:
        return clock_text(instant, zone, style)

    window = (
        say("; latest {to}", to=to(plan.latest_set_at)) if plan.latest_set_at > plan.set_at else ""
    )
    return (
        (say("Leave with bait"), at(facts.leave_at)),
        (
            say("Set"),
            say("{at} to {to}{window}", at=at(plan.set_at), to=to(facts.set_end), window=window),
        ),
        (
            say("Haul"),
            say(
                "{at} to {to}; soak {soak}",
                at=at(plan.haul_at),
                to=to(facts.haul_end),
                soak=soak_text(plan.soak_h),
            ),
        ),
        (
            say("Expect"),
            say(
                "{count} full keepers; light crabs {light}. Brackets hold 8 times in 10.",
                count=count_text(plan.full_keepers),
                light=light_text(plan.light_share),
            ),
        ),
    )


def _spots(facts: TripFacts, style: Style) -> tuple[tuple[str, ...], ...]:
    shallow_first = sorted(facts.spots, key=lambda spot: spot.over_trap_least_m)
    return tuple(
        (
            spot.spot,
            height_text(spot.depth_m, style),
            height_text(spot.over_trap_at_set_m, style),
            height_text(spot.over_trap_least_m, style),
            height_text(spot.over_trap_at_haul_m, style),
            line_text(spot, style),
        )
        for spot in shallow_first[:MOST_SPOTS]
    )


def _spots_note(facts: TripFacts, style: Style) -> str:
    if not facts.spots:
        return say("No spots entered: whether the traps stay covered was not checked.")
    least_at = day_clock_text(facts.spots[0].least_at, facts.site.zone, style)
    deeper = len(facts.spots) - MOST_SPOTS
    more = say(" {deeper} deeper spots are not listed.", deeper=deeper) if deeper > 0 else ""
    return say(
        "Least water {least_at}. Line: a third longer than the deepest water.{more}",
        least_at=least_at,
        more=more,
    )


def _sky(facts: TripFacts, style: Style) -> list[str]:
    sky = facts.sky
    lines = [
        f"{day_text(sky.days[index])}: {_sun(facts, index, style)}; {_moon(facts, index, style)}"
        for index in sorted({0, len(sky.days) - 1})
    ]
    if facts.water_c is not None:
        lines.append(
            say("Water about {temperature}", temperature=temperature_text(facts.water_c, style))
        )
    return lines


def _sun(facts: TripFacts, index: int, style: Style) -> str:
    sky, zone = facts.sky, facts.site.zone
    dawn, dusk = sky.civil_dawn[index], sky.civil_dusk[index]
    parts = (
        say("light {dawn}", dawn=_at(dawn, zone, style)) if dawn == dawn else "",
        sun_text(sky, index, zone, style),
        say("dark {dusk}", dusk=_at(dusk, zone, style)) if dusk == dusk else "",
    )
    return ", ".join(filter(None, parts))


def _moon(facts: TripFacts, index: int, style: Style) -> str:
    sky, zone = facts.sky, facts.site.zone
    rises, sets = sky.moonrise[index], sky.moonset[index]
    parts = (
        say("moon {lit}% lit", lit=round(sky.illuminated[index] * 100)),
        say("rises {rises}", rises=_at(rises, zone, style)) if rises == rises else "",
        say("sets {sets}", sets=_at(sets, zone, style)) if sets == sets else "",
    )
    return ", ".join(filter(None, parts))


def _at(instant: np.datetime64, zone: ZoneInfo, style: Style) -> str:
    return clock_text(from_utc64(instant), zone, style)


def _layout(facts: TripFacts) -> tuple[tuple[str, str], ...]:
    at: dict[str, list[str]] = defaultdict(list)
    with_design = len(facts.traps.placed) <= MOST_TRAPS_WITH_DESIGN
    for placed in facts.traps.placed:
        design = f" ({placed.design})" if placed.design and with_design else ""
        at[placed.spot or say("no spot")].append(f"{placed.trap}{design}")
    rows = [(spot, ", ".join(traps)) for spot, traps in at.items()]
    left_out = sum(map(len, list(at.values())[MOST_SPOTS:]))
    more = (
        [("", say("and {left_out} more traps, on the screen", left_out=left_out))]
        if left_out
        else []
    )
    return (*rows[:MOST_SPOTS], *more)


def _cautions(facts: TripFacts) -> tuple[str, ...]:
    warnings = facts.plan.warnings
    more = len(warnings) - MOST_WARNINGS
    return (
        *warnings[:MOST_WARNINGS],
        *([say("and {more} more warnings on the screen", more=more)] if more > 0 else []),
        TIDE_CAUTION,
        RULES_CAUTION,
        say("Marine forecast and small-craft warnings read; life jackets worn; float plan ashore."),
        say(
            "Cook live crabs only, and thoroughly; heed local advisories. In warm water an open "
            "cut can turn dangerous within a day: wash it, and see a doctor if it reddens."
        ),
    )


def _curve(facts: TripFacts, style: Style) -> Curve:
    site, plan, water = facts.site, facts.plan, facts.water
    seconds = _seconds(water.times)
    turns = [
        say(
            "{turn} {height} {clock}",
            turn=say("high") if high else say("low"),
            height=height_text(float(level), style),
            clock=day_clock_text(from_utc64(instant), site.zone, style),
        )
        for instant, level, high in zip(
            water.turns.times, water.turns.heights, water.turns.is_high, strict=True
        )
        if plan.set_at <= from_utc64(instant) <= facts.haul_end
    ]
    return Curve(
        seconds=seconds,
        levels=tuple(metres_to(float(level), style.length) for level in water.levels_m),
        level_name=say("{length} above {datum}", length=style.length, datum=site.water.datum),
        nights=_nights(seconds, water.light_begins, water.light_ends),
        marks=((plan.set_at.timestamp(), say("set")), (plan.haul_at.timestamp(), say("haul"))),
        hours=_hours(seconds[0], seconds[-1], facts, style),
        in_words=say("Turns in the soak: {turns}.", turns="; ".join(turns))
        if turns
        else say("No turn in the soak."),
    )


def _hours(
    first: float, last: float, facts: TripFacts, style: Style
) -> tuple[tuple[float, str], ...]:
    """Return labels at whole local hours, six or more apart; each by its own offset.

    Stepping in UTC and reading the local hour keeps a label where the clocks change.
    """
    zone = facts.site.zone
    every = 6 if last - first <= 3.5 * 86400 else 12
    found = []
    hour = np.ceil(first / 3600) * 3600
    while hour <= last:
        local = datetime.fromtimestamp(hour, tz=zone)
        if local.hour % every == 0 and local.minute == 0:
            text = clock_text(local, zone, style)
            found.append(
                (float(hour), f"{day_text(local.date())}\n{text}" if local.hour == 0 else text)
            )
        hour += 900  # some zones are half an hour off, or a quarter
    return tuple(found)


def _nights(
    seconds: tuple[float, ...], begins: Instants, ends: Instants
) -> tuple[tuple[float, float], ...]:
    edges = [seconds[0]]
    for begin, end in zip(_seconds(begins), _seconds(ends), strict=True):
        edges += [begin, end]
    edges.append(seconds[-1])
    pairs = zip(edges[0::2], edges[1::2], strict=True)
    return tuple((dark_from, dark_to) for dark_from, dark_to in pairs if dark_to > dark_from)


def _seconds(times: Instants) -> tuple[float, ...]:
    return tuple(float(ms) / 1000 for ms in times.astype("datetime64[ms]").astype(np.int64))


def _shortened(text: str) -> str:
    return text if len(text) <= MOST_RULE_LETTERS else f"{text[: MOST_RULE_LETTERS - 1]}…"
