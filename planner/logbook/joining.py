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

    new: those the log lacks. filled: rows of the log, by their place in it, that waited to be
    counted, as they will be. known: how many say nothing that the log does not hold.
    """

    new: tuple[Haul, ...]
    filled: Mapping[int, Haul]
    known: int

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
    contradicts nothing in a row is known when it adds nothing; when nothing is counted in that
    row yet, as in a trip made ready before it was hauled, it fills the row.
    """
    alike: dict[HaulKey, list[int]] = defaultdict(list)
    of_trap: dict[tuple[str, str, str], list[int]] = defaultdict(list)
    for at, haul in enumerate(there):
        alike[haul_key(haul)].append(at)
        if haul.trap:
            of_trap[_trap(haul)].append(at)
    used: set[int] = set()
    others: list[Haul] = []
    for haul in hauls:
        same = alike.get(haul_key(haul))
        if same:
            used.add(same.pop(0))
        else:
            others.append(haul)
    told = _paired(
        [
            [at for at in of_trap.get(_trap(haul), ()) if at not in used and _told(there[at], haul)]
            for haul in others
        ]
    )
    used |= set(told.values())
    new: list[Haul] = []
    filled: dict[int, Haul] = {}
    for number, haul in enumerate(others):
        if number in told:
            continue
        rows = [at for at in of_trap.get(_trap(haul), ()) if at not in used]
        waiting = [at for at in rows if _may_fill(there[at], haul)]
        if waiting:
            # Of two rows of one trap, that at the same spot.
            at = min(waiting, key=lambda at: there[at].spot != haul.spot)
            used.add(at)
            filled[at] = merged(there[at], haul)
        else:
            new.append(haul)
    return Joined(tuple(new), filled, len(hauls) - len(others) + len(told))


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


def _may_fill(row: Haul, haul: Haul) -> bool:
    if is_counted(row) or not is_counted(haul):
        return False
    # Such as a planned set that lies after the real haul.
    return not any(haul_problems(merged(row, haul), str))
