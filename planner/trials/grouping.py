"""Which group a haul belongs to, and what is counted of it."""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final, TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.errors import InputError, Problem
from planner.estimates import Floats
from planner.logbook import Haul
from planner.units import metres_to
from planner.words import say

Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

Label = TypeVar("Label", str, tuple[str, str])

_DOORS = re.compile(r"(\d+)\s*-?\s*(?:doors?|entrances?|funnels?)", re.IGNORECASE)
_COLOUR = re.compile(
    r"\b(black|white|red|green|blue|yellow|orange|gr[ea]y|brown|purple|pink|silver)\b",
    re.IGNORECASE,
)
_OTHERS = re.compile(r"[,;/+&]|\band\b", re.IGNORECASE)
_NONE_WRITTEN: Final = ("", "-", "none", "no", "nil", "nothing")
# Bands by common practice: under a night, a night or a day, two nights, longer.
_SOAK_BANDS_H: Final = ((18, say("under 18 h")), (30, say("18 to 30 h")), (54, say("30 to 54 h")))


def soak_h(haul: Haul) -> float:
    """Return a haul's soak in hours; NaN when a time is missing."""
    if haul.set_at is None or haul.hauled_at is None:
        return math.nan
    return (haul.hauled_at - haul.set_at).total_seconds() / 3600


def _doors(haul: Haul) -> str:
    written = haul.extra.get("entrances", "").strip()
    found = _DOORS.search(haul.design)
    return written or (say("{found} entrances", found=found[1]) if found else "")


def _colour(haul: Haul) -> str:
    written = haul.extra.get("colour", haul.extra.get("color", "")).strip()
    found = _COLOUR.search(haul.design)
    return written or (found[1].casefold() if found else "")


def _depth_band(haul: Haul) -> str:
    if haul.depth_m is None:
        return ""
    metre = int(haul.depth_m)
    # Groups go by one name, whatever unit is on screen.
    return say(
        "{metre} to {next_metre} m ({low_ft:.0f} to {high_ft:.0f} ft)",
        metre=metre,
        next_metre=metre + 1,
        low_ft=metres_to(metre, "ft"),
        high_ft=metres_to(metre + 1, "ft"),
    )


def _soak_band(haul: Haul) -> str:
    soak = soak_h(haul)
    if np.isnan(soak):
        return ""
    return next((name for limit, name in _SOAK_BANDS_H if soak < limit), say("54 h and more"))


GROUPINGS: Final[Mapping[str, Callable[[Haul], str]]] = {
    "design": lambda haul: haul.design,
    "entrances": _doors,
    "colour": _colour,
    "bait": lambda haul: haul.bait,
    "spot": lambda haul: haul.spot,
    "trap": lambda haul: haul.trap,
    "depth": _depth_band,
    "soak": _soak_band,
}

GROUPING_WORDS: Final[Mapping[str, str]] = {
    "design": say("trap design"),
    "entrances": say("number of entrances"),
    "colour": say("colour"),
    "bait": say("bait"),
    "spot": say("spot"),
    "trap": say("single traps"),
    "depth": say("depth"),
    "soak": say("length of soak"),
}

# What else, besides the trip, hauls are alike in: a design's luck may be its spot's.
BLOCKS: Final[Mapping[str, tuple[str, ...]]] = {
    "design": ("spot",),
    "entrances": ("spot",),
    "colour": ("spot",),
    "trap": ("spot",),
    "bait": ("spot", "design"),
    "spot": ("design",),
    "depth": ("design",),
    "soak": ("spot", "design"),
}
_OTHER_BLOCKS: Final = ("spot",)


def _crabs(haul: Haul) -> int | None:
    counts = (haul.keepers, haul.shorts, haul.females)
    return None if haul.keepers is None else sum(count or 0 for count in counts)


def _others(haul: Haul) -> int | None:
    """Return how many animals of other species are written: "2 pinfish, whelk" is three."""
    if not haul.other.strip():
        return None
    parts = [part.strip().casefold() for part in _OTHERS.split(haul.other)]
    numbers = [re.search(r"\d+", part) for part in parts]
    return sum(
        int(number[0]) if number else part not in _NONE_WRITTEN
        for part, number in zip(parts, numbers, strict=True)
    )


@dataclass(frozen=True)
class Measure:
    """What is counted of a haul and out of what; fewer is better where `fewest_best`.

    blank_is_none: nobody writes what is not there, so that an empty cell means none where
    another haul of the trip has the count; in a trip without any it means not recorded.
    """

    count: Callable[[Haul], int | None]
    out_of: Callable[[Haul], int | None] | None
    unit: str
    fewest_best: bool
    blank_is_none: bool = False


MEASURES: Final[Mapping[str, Measure]] = {
    "keepers": Measure(lambda haul: haul.keepers, None, "keepers", fewest_best=False),
    "crabs": Measure(_crabs, None, "crabs", fewest_best=False),
    "shorts": Measure(lambda haul: haul.shorts, None, "shorts", fewest_best=True),
    "females": Measure(lambda haul: haul.females, None, "females", fewest_best=True),
    "bycatch": Measure(_others, None, "others", fewest_best=True, blank_is_none=True),
    "light": Measure(lambda haul: haul.light, lambda haul: haul.judged, "light", fewest_best=True),
}


@dataclass(frozen=True)
class Observations:
    """Counted hauls as arrays of shape (n,), sorted by trip, with the labels as indices.

    exposure: 1 for a haul, or how many crabs a share is of. soak_h: NaN where unknown.
    blocks: index of each further block's level, by the block's name.
    all_hauls: hauls of each group, counted or not, shape (groups,).
    """

    names: tuple[str, ...]
    all_hauls: Ints
    counts: Floats
    exposure: Floats
    soak_h: Floats
    group: Ints
    trip: Ints
    blocks: Mapping[str, Ints]

    @property
    def groups(self) -> int:
        """How many groups there are."""
        return len(self.names)

    @property
    def trips(self) -> int:
        """How many trips have a counted haul."""
        return int(self.trip[-1]) + 1 if self.trip.size else 0

    def per_group(self, values: Floats | None = None) -> Floats:
        """Return the sum of values over each group's counted hauls, or their number."""
        summed: Floats = np.bincount(self.group, values, self.groups).astype(np.float64)
        return summed


def observations(hauls: Iterable[Haul], by: str, measure: str) -> Observations:
    """Return the hauls that carry a label for `by`, those with a count as arrays.

    by: a grouping, or any column of the haul table that the log kept as unknown.
    InputError when there is no such grouping or measure. Labels that differ only in
    capitals are one group; a place's spots and trips are its own. The order of the hauls
    makes no difference. Soaks are left unknown where nothing is to be brought to a common one:
    when they are what is compared, and for shares, which do not fill a trap.
    """
    what = _measure(measure)
    hauls = list(hauls)
    label = _label(hauls, by)
    written = [label(haul).strip() for haul in hauls]
    labelled = [haul for haul, name in zip(hauls, written, strict=True) if name]
    written = [name for name in written if name]
    names, group = _indexed(written, str.casefold)
    shown = {name.casefold(): name for name in sorted(set(written), reverse=True)}
    # None becomes NaN.
    every = np.array([what.count(haul) for haul in labelled], dtype=np.float64)
    if what.blank_is_none:
        own = _indexed([(haul.place, haul.trip) for haul in labelled])[1]
        counted = np.bincount(own, ~np.isnan(every))[own] > 0 if own.size else own > 0
        every = np.where(np.isnan(every) & counted, 0.0, every)
    out_of = np.ones(every.size)
    if what.out_of is not None:
        out_of = np.array([what.out_of(haul) or 0 for haul in labelled], dtype=np.float64)
    rows = np.flatnonzero(~np.isnan(every) & (out_of > 0))
    kept = [labelled[at] for at in rows.tolist()]
    counts, exposure, counted_group = every[rows], out_of[rows], group[rows]
    as_is = by == "soak" or what.out_of is not None
    soaks = np.array([math.nan if as_is else soak_h(haul) for haul in kept], dtype=np.float64)
    trip = _indexed([(haul.place, haul.trip) for haul in kept])[1]
    block_names = BLOCKS.get(by, _OTHER_BLOCKS)
    blocks = {name: _levels(kept, name) for name in block_names}
    order = np.lexsort((soaks, exposure, counts, *blocks.values(), counted_group, trip))
    return Observations(
        names=tuple(shown[name] for name in names),
        all_hauls=np.bincount(group, minlength=len(names)).astype(np.int64),
        counts=counts[order],
        exposure=exposure[order],
        soak_h=soaks[order],
        group=counted_group[order],
        trip=trip[order],
        blocks={name: block[order] for name, block in blocks.items()},
    )


def _measure(measure: str) -> Measure:
    if measure in MEASURES:
        return MEASURES[measure]
    remedy = say("choose one of {measures}", measures=", ".join(MEASURES))
    raise InputError("trials", [Problem("measure", measure, say("cannot be compared"), remedy)])


def _label(hauls: Sequence[Haul], by: str) -> Callable[[Haul], str]:
    if by == "spot" and len({haul.place for haul in hauls}) > 1:
        return lambda haul: f"{haul.spot} ({haul.place})" if haul.spot else ""
    if by in GROUPINGS:
        return GROUPINGS[by]
    own = Counter(name for haul in hauls for name in haul.extra)
    if by in own:
        return lambda haul: haul.extra.get(by, "")
    remedy = say("choose one of {listed}", listed=", ".join([*GROUPINGS, *own]))
    raise InputError("trials", [Problem("by", by, say("is no way to group hauls"), remedy)])


def _levels(hauls: Sequence[Haul], block: str) -> Ints:
    """Return the index of each haul's level of a block; spots are each place's own."""
    if block == "spot":
        spots = [(haul.place, haul.spot) for haul in hauls]
        return _indexed(spots, lambda level: (level[0], level[1].casefold()))[1]
    return _indexed([haul.design for haul in hauls], str.casefold)[1]


def _indexed(
    values: Sequence[Label], key: Callable[[Label], Label] | None = None
) -> tuple[list[Label], Ints]:
    """Return the different keys of the values in their order, and the index of each value's."""
    met: dict[Label, int] = {}
    at = np.array([met.setdefault(value, len(met)) for value in values], dtype=np.int64)
    keys = [value if key is None else key(value) for value in met]
    different = sorted(set(keys))
    index = {each: position for position, each in enumerate(different)}
    places = np.array([index[each] for each in keys], dtype=np.int64)
    return different, places[at]
