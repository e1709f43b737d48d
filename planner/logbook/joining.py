"""Hauls that come from outside meet those in the log: which are new, known, or fill a row."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from planner.logbook.columns import COLUMNS, COUNTS
from planner.logbook.entries import Haul
from planner.logbook.log import HaulKey, haul_key
from planner.logbook.rules import haul_problems


@dataclass(frozen=True)
class Joined:
    """What taking hauls in would do.

    new: those the log lacks. filled: rows of the log, by their place in it, that lacked
    something, as they will be. known: how many say nothing that the log does not hold.
    met: the row that each haul is, known or filled, both by their places. beside: for a haul that
    is new, a row of the same trip and trap that no haul is.
    """

    new: tuple[Haul, ...]
    filled: Mapping[int, Haul]
    known: int
    met: Mapping[int, int]
    beside: Mapping[int, int]

    @property
    def trips(self) -> list[str]:
        """The names of the trips that change."""
        return list(dict.fromkeys(haul.trip for haul in (*self.new, *self.filled.values())))

    def trip_filled(self, there: Sequence[Haul], trip: str, place: str) -> list[Haul]:
        """Return the rows of a trip that is there, with those filled that waited."""
        return [
            self.filled.get(at, haul)
            for at, haul in enumerate(there)
            if (haul.trip, haul.place) == (trip, place)
        ]


def join(there: Sequence[Haul], hauls: Sequence[Haul]) -> Joined:
    """Return what the hauls add to those that are there.

    A haul equal in every value to one that is there is the same haul; of hauls alike in
    everything, as many are new as are lacking. A haul of the same trip, place and trap that
    contradicts nothing in a row is known when it adds nothing; it fills the row when that was
    hauled at the same time. When nothing is counted in a row yet, as in a trip made ready before
    it was hauled, it is filled whatever it says of times and places.
    """
    alike: dict[HaulKey, list[int]] = defaultdict(list)
    of_trap: dict[tuple[str, str, str], list[int]] = defaultdict(list)
    for at, haul in enumerate(there):
        alike[haul_key(haul)].append(at)
        if haul.trap:
            of_trap[_trap(haul)].append(at)
    met: dict[int, int] = {}
    keys = [haul_key(haul) for haul in hauls]
    # Rows with the same single crabs first, of which a key says nothing: of a trap written down
    # twice, the row without crabs would take the other's, and be given its crabs as well.
    for with_crabs in (True, False):
        for number, haul in enumerate(hauls):
            rows = [] if number in met else alike.get(keys[number], [])
            same = [at for at in rows if not with_crabs or there[at].crabs == haul.crabs]
            if same:
                met[number] = same[0]
                rows.remove(same[0])
    used = set(met.values())
    others = [number for number in range(len(hauls)) if number not in met]

    def free(number: int) -> list[int]:
        return [at for at in of_trap.get(_trap(hauls[number]), ()) if at not in used]

    told = _paired(
        [[at for at in free(number) if _told(there[at], hauls[number])] for number in others]
    )
    met |= {others[at]: row for at, row in told.items()}
    used |= set(told.values())
    known = len(met)
    filled: dict[int, Haul] = {}
    for number in others:
        haul = hauls[number]
        lacking = [at for at in free(number) if number not in met and _may_fill(there[at], haul)]
        if lacking:
            # Of two rows of one trap, that at the same spot.
            at = min(lacking, key=lambda at: there[at].spot != haul.spot)
            met[number] = at
            used.add(at)
            filled[at] = merged(there[at], haul)
    new = [number for number in others if number not in met]
    left = {_trap(row): at for at, row in reversed([*enumerate(there)]) if at not in used}
    beside = {number: left[key] for number in new if (key := _trap(hauls[number])) in left}
    return Joined(tuple(hauls[number] for number in new), filled, known, met, beside)


def _paired(fitting: Sequence[Sequence[int]]) -> dict[int, int]:
    """Return a row for as many hauls as can have one of their own (augmenting paths).

    fitting: for each haul, the rows that would do. Taking the first that fits could leave
    another haul without, and have it added once more.
    """
    haul_of: dict[int, int] = {}

    def place(haul: int, tried: set[int]) -> bool:
        for row in fitting[haul]:
            if row not in tried:
                tried.add(row)
                if row not in haul_of or place(haul_of[row], tried):
                    haul_of[row] = haul
                    return True
        return False

    for haul in range(len(fitting)):
        place(haul, set())
    return {haul: row for row, haul in haul_of.items()}


def _trap(haul: Haul) -> tuple[str, str, str]:
    return haul.trip, haul.place, haul.trap


def _told(row: Haul, haul: Haul) -> bool:
    """Tell whether a haul says nothing that a row does not hold."""
    return haul_key(merged(row, haul)) == haul_key(row)


def merged(row: Haul, haul: Haul) -> Haul:
    """Return a row with everything that a haul records put over it."""
    values: dict[str, Any] = {
        name: value for name in COLUMNS if (value := getattr(haul, name)) not in (None, "")
    }
    extra = {**row.extra, **{name: text for name, text in haul.extra.items() if text}}
    return replace(row, **values, extra=extra)


def is_counted(haul: Haul) -> bool:
    """Tell whether anything of the catch is recorded."""
    return bool(haul.other) or any(getattr(haul, name) is not None for name in COUNTS)


def differing(row: Haul, haul: Haul) -> tuple[str, ...]:
    """Return the columns, extra ones too, in which both record something and not the same."""
    both = [
        (name, getattr(row, name), value)
        for name in COLUMNS
        if (value := getattr(haul, name)) not in (None, "")
    ]
    both += [(name, row.extra.get(name), text) for name, text in haul.extra.items() if text]
    return tuple(name for name, ours, theirs in both if ours not in (None, "", theirs))


def _may_fill(row: Haul, haul: Haul) -> bool:
    if is_counted(row):
        same_time = row.hauled_at is not None and row.hauled_at == haul.hauled_at
        if not same_time or differing(row, haul):
            return False
    elif not is_counted(haul):
        return False
    # Such as a planned set that lies after the real haul.
    return not any(haul_problems(merged(row, haul), str))
