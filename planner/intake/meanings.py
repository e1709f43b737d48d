"""What the name of a column means, in the words that trappers and agencies use for it."""

from __future__ import annotations

from difflib import get_close_matches
from functools import lru_cache
from typing import Final

from planner.intake.vocabulary import vocabulary, words_of
from planner.logbook.columns import COLUMNS, unguard_formula
from planner.words import say

# Times may be split over two columns, and a set may be told by the soak.
PARTS: Final = ("set_date", "set_clock", "haul_date", "haul_clock", "soak_h")
MEANINGS: Final = (*COLUMNS, *PARTS)

IN_WORDS: Final = {
    "": say("kept as it is"),
    "trip": say("trip"),
    "place": say("place"),
    "spot": say("spot"),
    "trap": say("trap's label"),
    "design": say("kind of trap"),
    "bait": say("bait"),
    "set_at": say("set: date and time"),
    "set_date": say("set: date"),
    "set_clock": say("set: time of day"),
    "hauled_at": say("hauled: date and time"),
    "haul_date": say("hauled: date"),
    "haul_clock": say("hauled: time of day"),
    "soak_h": say("soak in hours"),
    "depth_m": say("depth"),
    "keepers": say("keepers"),
    "shorts": say("shorts"),
    "females": say("females"),
    "sponge": say("with eggs"),
    "other": say("other kinds"),
    "judged": say("judged"),
    "light": say("light"),
    "water_c": say("water temperature"),
    "notes": say("notes"),
}

_NEARLY: Final = 0.86


@lru_cache(maxsize=10_000)
def meaning_of(name: str) -> str:
    """Return what a column's name means, "" when it says nothing known."""
    written = unguard_formula(name).strip().casefold()
    if written in COLUMNS:
        return written
    known = vocabulary()
    words = words_of(name)
    beside = known.units.keys() | known.degrees
    bare = " ".join(word for word in words.split() if word not in beside)
    for said in (words, bare):
        if said in known.columns:
            return known.columns[said]
    if len(bare) > 4:
        near = get_close_matches(bare, known.columns, n=1, cutoff=_NEARLY)
        if near:
            return known.columns[near[0]]
    return ""


def unit_said(name: str) -> str:
    """Return the unit that a name carries ("m", "ft", "C", "F"), "" when none."""
    if name.strip().casefold() in COLUMNS:
        return "m" if name.strip().casefold() == "depth_m" else "C"
    units = vocabulary().units
    return next((units[word] for word in words_of(name).split() if word in units), "")
