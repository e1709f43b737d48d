"""What the name of a column means, in the words that trappers and agencies use for it."""

from __future__ import annotations

import re
import unicodedata
from difflib import get_close_matches
from functools import lru_cache
from typing import Final

from planner.logbook.columns import COLUMNS, unguard_formula
from planner.words import say

# Times may be split over two columns, and a set may be told by the soak.
PARTS: Final = ("set_date", "set_clock", "haul_date", "haul_clock", "soak_h")
MEANINGS: Final = (*COLUMNS, *PARTS)

IN_WORDS: Final = {
    "": say("kept as it is"),
    "trip": "trip",
    "place": "place",
    "spot": "spot",
    "trap": say("trap's label"),
    "design": say("kind of trap"),
    "bait": "bait",
    "set_at": say("set: date and time"),
    "set_date": say("set: date"),
    "set_clock": say("set: time of day"),
    "hauled_at": say("hauled: date and time"),
    "haul_date": say("hauled: date"),
    "haul_clock": say("hauled: time of day"),
    "soak_h": say("soak in hours"),
    "depth_m": "depth",
    "keepers": "keepers",
    "shorts": "shorts",
    "females": "females",
    "sponge": say("with eggs"),
    "other": say("other kinds"),
    "judged": "judged",
    "light": "light",
    "water_c": say("water temperature"),
    "notes": "notes",
}

# The longest that fits wins. Common usage, from memory.
_SAID: Final = {
    "trip": "trip, trip name, trip id, trip no, outing",
    "place": "place, area, water, water body, river, creek, bay, region",
    "spot": "spot, location, site, station, where, position, mark, set location",
    "trap": "trap, trap label, trap no, trap number, trap id, trap name, pot, pot no, pot number, "
    "pot id, float, float no, buoy, buoy no, gear no, label",
    "design": "design, trap type, trap design, trap kind, pot type, gear type, gear, make, model, "
    "type of trap, kind of trap",
    "bait": "bait, bait type, bait used",
    "set_at": "set, set at, set time, date set, set date, time set, set date time, deployed, "
    "dropped, in, time in, deployment, date in, date deployed, time deployed, time dropped",
    "hauled_at": "hauled, hauled at, haul, haul time, haul date, date hauled, time hauled, pulled, "
    "pulled at, pull time, pull date, date pulled, time pulled, date out, date retrieved, "
    "time retrieved, time lifted, checked, retrieved, out, time out, date, time, "
    "date time, day, when, retrieval, lifted",
    "soak_h": "soak, soak h, soak hours, soak time, hours soaked, soak time hours",
    "depth_m": "depth, water depth, charted depth, depth m, depth ft",
    "keepers": "keepers, keeper, kept, legal, legals, legal crabs, legal males, keeper crabs, "
    "number kept, harvest, harvested, catch kept",
    "shorts": "shorts, short, undersize, undersized, sublegal, sublegals, sub legal, small, "
    "too small, short crabs",
    "females": "females, female, fem, hens, total females, number of females",
    "sponge": "sponge, sponges, sponge crabs, eggs, egg bearing, with eggs, berried, ovigerous, "
    "egg bearing females, berried females, gravid",
    "other": "other, others, other species, other kinds, bycatch, by catch",
    "judged": "judged, graded, looked at, examined, number judged, crabs judged",
    "light": "light, light crabs, lights, empty, number light, light ones",
    "water_c": "water temp, water temperature, temp, temperature, sst, surface temp, "
    "water temp c, water temp f, bottom temp",
    "notes": "notes, note, comments, comment, remarks, remark, observations, memo",
}
_MEANS: Final = {
    phrase.strip(): meaning for meaning, said in _SAID.items() for phrase in said.split(",")
}
_UNITS: Final = {
    **dict.fromkeys(("ft", "feet", "foot"), "ft"),
    **dict.fromkeys(("m", "metres", "meters", "metre", "meter"), "m"),
    **dict.fromkeys(("f", "fahrenheit", "degf"), "F"),
    **dict.fromkeys(("c", "celsius", "degc"), "C"),
}
_NEARLY: Final = 0.86


def words_of(name: str) -> str:
    """Return a name in plain small letters and single spaces: "Trap-No." is "trap no"."""
    plain = unicodedata.normalize("NFKD", unguard_formula(name)).casefold()
    letters = "".join(letter for letter in plain if not unicodedata.combining(letter))
    return " ".join(re.sub(r"[^0-9a-z]+", " ", letters.replace("°", " deg ")).split())


@lru_cache(maxsize=10_000)
def meaning_of(name: str) -> str:
    """Return what a column's name means, "" when it says nothing known."""
    written = unguard_formula(name).strip().casefold()
    if written in COLUMNS:
        return written
    words = words_of(name)
    bare = " ".join(word for word in words.split() if word not in _UNITS and word != "deg")
    for said in (words, bare):
        if said in _MEANS:
            return _MEANS[said]
    if len(bare) > 4:
        near = get_close_matches(bare, _MEANS, n=1, cutoff=_NEARLY)
        if near:
            return _MEANS[near[0]]
    return ""


def unit_said(name: str) -> str:
    """Return the unit that a name carries ("m", "ft", "C", "F"), "" when none."""
    if name.strip().casefold() in COLUMNS:
        return "m" if name.strip().casefold() == "depth_m" else "C"
    return next((_UNITS[word] for word in words_of(name).split() if word in _UNITS), "")
