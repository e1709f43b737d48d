"""The tally sheet: what is printed for each trap, before any of it is drawn."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.handouts.deck import DeckTrip
from planner.logbook import Haul
from planner.phrasing import RULES_CAUTION, Style, clock_text, date_text, day_text, height_text
from planner.words import say


@dataclass(frozen=True)
class Tick:
    """A column of boxes: its heading, and how many boxes stand side by side."""

    heading: str
    across: int


@dataclass(frozen=True)
class TallyLine:
    """One trap: its label, what else tells it apart, and when it was to be set ("" unknown)."""

    trap: str
    about: str
    set_at: str


@dataclass(frozen=True)
class TallySheet:
    """Everything on the sheet, in the reader's units and on the place's clock.

    blanks: what is filled in once a trip. lines: traps in the order of hauling.
    """

    title: str
    made: str
    invented: str
    blanks: tuple[str, ...]
    lines: tuple[TallyLine, ...]
    ticks: tuple[Tick, ...]
    notes: tuple[str, ...]


# Keepers are many, egg-bearing females few; two rows of boxes each, and a number beyond them.
TICKS: Final = (
    Tick(say("Keepers"), 6),
    Tick(say("Shorts"), 4),
    Tick(say("Females"), 3),
    Tick(say("Eggs"), 2),
    Tick(say("Judged"), 4),
    Tick(say("Light"), 3),
)


def tally_sheet(trip: DeckTrip, today: date, style: Style) -> TallySheet:
    """Return the sheet of a trip, made today."""
    days = sorted({h.hauled_at.astimezone(trip.zone).date() for h in trip.hauls if h.hauled_at})
    # A trip is named by its day as a rule, which need not be said twice.
    named = date_text(days[0]) if days else ""
    hauled = (
        say(" (haul {day})", day=day_text(days[0]))
        if days and not trip.name.startswith(named)
        else ""
    )
    return TallySheet(
        title=say("{place}, trip {name}{hauled}", place=trip.place, name=trip.name, hauled=hauled),
        made=say(
            "Made {day} {today.year} with Fullshell. Times on the clock of {key}.",
            day=day_text(today),
            today=today,
            key=trip.zone.key,
        ),
        invented=say("INVENTED place: not for a real trip.") if trip.invented else "",
        blanks=(
            say("People aboard"),
            say("Water °{temperature}", temperature=style.temperature),
            say("Weather"),
        ),
        lines=tuple(_line(haul, trip, style) for haul in trip.hauls),
        ticks=TICKS,
        notes=(
            say(
                "One tick a crab; write the number where the boxes run out. Looked and found none: "
                "write 0. Left empty means not recorded, which is not zero."
            ),
            say(
                "Eggs (egg-bearing): count them among the females too. Judged: legal crabs looked "
                "at for fullness. Light: count them among the judged too."
            ),
            say(
                "Free shorts and protected crabs at once. {rules_caution}",
                rules_caution=RULES_CAUTION,
            ),
        ),
    )


def _line(haul: Haul, trip: DeckTrip, style: Style) -> TallyLine:
    depth = "" if haul.depth_m is None else height_text(haul.depth_m, style)
    about = ", ".join(part for part in (haul.spot, depth, haul.bait) if part)
    set_at = "" if haul.set_at is None else clock_text(haul.set_at, trip.zone, style)
    return TallyLine(haul.trap, about, set_at)
