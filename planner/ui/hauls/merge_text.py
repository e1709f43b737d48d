"""What taking another whole log in would do, in words and rows; no Qt."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any, Final

from planner.intake.meanings import IN_WORDS
from planner.logbook.merging import Difference, Merged
from planner.logbook.reading import Zones
from planner.phrasing import date_text, number_text
from planner.words import counted, say

_WORDS: Final = {
    **IN_WORDS,
    "crew": say("crew"),
    "weather": say("weather"),
    "kitchen_picked": say("kitchen: picked"),
    "kitchen_light": say("kitchen: light"),
    "crabs": say("single crabs"),
}
DIFFERENCE_COLUMNS: Final = (say("Trip"), say("Trap"), say("What"), say("Here"), say("In the file"))


def merge_found(source: str, merged: Merged) -> str:
    """Return what would be taken in."""
    parts = []
    hauls = merged.hauls
    if hauls.new:
        trips = {(haul.trip, haul.place) for haul in hauls.new}
        parts.append(
            say(
                "{hauls} in {trips}",
                hauls=counted(len(hauls.new), "new haul"),
                trips=counted(len(trips), "trip"),
            )
        )
    if hauls.filled:
        rows = counted(len(hauls.filled), "row")
        parts.append(say("{rows} filled where nothing was recorded", rows=rows))
    if merged.trips:
        parts.append(say("details of {trips}", trips=counted(len(merged.trips), "trip")))
    if merged.traps:
        parts.append(say("history of {traps}", traps=counted(len(merged.traps), "trap")))
    if hauls.known:
        known = counted(hauls.known, "haul")
        parts.append(say("{known} in the log already", known=known))
    told = ", ".join(parts) or say("nothing that is not in the log already")
    return say("{source} holds: {told}.", source=source, told=told)


def difference_rows(differences: Sequence[Difference], zones: Zones) -> list[tuple[str, ...]]:
    """Return a row for each value that is not alike in both logs."""
    rows: list[tuple[str, ...]] = []
    for each in differences:
        where = (each.trip, each.trap)
        if not each.values:
            more = say("the haul")
            rows.append((*where, more, say("less is recorded"), say("more is recorded")))
        rows += [
            (*where, _WORDS.get(name, name), *(_shown(value, each.place, zones) for value in both))
            for name, both in each.values.items()
        ]
    return rows


def _shown(value: Any, place: str, zones: Zones) -> str:
    if isinstance(value, datetime):
        local = value.astimezone(zones(place) or value.tzinfo)
        return f"{date_text(local)} {local:%H:%M}"
    return number_text(value) if isinstance(value, int | float) else str(value)
