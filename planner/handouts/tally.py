"""The tally sheet: what is printed for each trap, before any of it is drawn."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.handouts.deck import DeckTrip
from planner.logbook import Haul
from planner.phrasing import RULES_CAUTION, Style, clock_text, day_text, height_text


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
    Tick("Keepers", 6),
    Tick("Shorts", 4),
    Tick("Females", 3),
    Tick("Eggs", 2),
    Tick("Judged", 4),
    Tick("Light", 3),
)


def tally_sheet(trip: DeckTrip, today: date, style: Style) -> TallySheet:
    """Return the sheet of a trip, made today."""
    days = sorted({h.hauled_at.astimezone(trip.zone).date() for h in trip.hauls if h.hauled_at})
    # A trip is named by its day as a rule, which need not be said twice.
    named = f"{days[0].day} {days[0]:%b %Y}" if days else ""
    hauled = f" (haul {day_text(days[0])})" if days and not trip.name.startswith(named) else ""
    return TallySheet(
        title=f"{trip.place}, trip {trip.name}{hauled}",
        made=f"Made {day_text(today)} {today.year} with Fullshell. "
        f"Times on the clock of {trip.zone.key}.",
        invented="INVENTED place: not for a real trip." if trip.invented else "",
        blanks=("People aboard", f"Water °{style.temperature}", "Weather"),
        lines=tuple(_line(haul, trip, style) for haul in trip.hauls),
        ticks=TICKS,
        notes=(
            "One tick a crab; write the number where the boxes run out. Looked and found none: "
            "write 0. Left empty means not recorded, which is not zero.",
            "Eggs (egg-bearing): count them among the females too. Judged: legal crabs looked at "
            "for fullness. Light: count them among the judged too.",
            f"Free shorts and protected crabs at once. {RULES_CAUTION}",
        ),
    )


def _line(haul: Haul, trip: DeckTrip, style: Style) -> TallyLine:
    depth = "" if haul.depth_m is None else height_text(haul.depth_m, style)
    about = ", ".join(part for part in (haul.spot, depth, haul.bait) if part)
    set_at = "" if haul.set_at is None else clock_text(haul.set_at, trip.zone, style)
    return TallyLine(haul.trap, about, set_at)
