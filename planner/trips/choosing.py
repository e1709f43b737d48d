"""Which of the allowed pairs are worth naming: windows, their worth, and the fold.

Two pairs that begin in the same unbroken run of allowed set times and are hauled on the same
day are one plan to a person: the plan names its earliest set, how long the set may begin and
one haul.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

import numpy as np

from planner.estimates import Floats
from planner.trips.candidates import Candidates, Ints, Mask

# Closer than the estimate can tell apart: within it comfort decides.
_AS_GOOD = 0.95
# A second plan for the same two days is named only when its soak differs by this ratio.
_OTHER_SOAK = 1.25


# What a day in the water counts, as a share of the full keepers; judgement, said with the plan.
A_DAY_OF_SOAK: Final = 0.2


@dataclass(frozen=True)
class Wishes:
    """What the user would rather have.

    The first three decide between plans that promise the same catch, never more than that.
    haul_water: whether the water should rise or fall while hauling, or turn.
    haul_time: whether to haul early or late in the day.
    daylight_slack_min: daylight (minutes) to be left when the haul is over.

    The others are traded against the catch, at a stated price.
    soak: "short" ranks as if every day of soak took `A_DAY_OF_SOAK` of the keepers.
    drive: "long" ranks by the keepers of a drive: two drives when set and haul are on two local
    days.
    """

    haul_water: Literal["any", "rising", "falling", "turning"] = "any"
    haul_time: Literal["any", "early", "late"] = "any"
    daylight_slack_min: float = 30.0
    soak: Literal["any", "short"] = "any"
    drive: Literal["any", "long"] = "any"

    def price(self, soak_h: Floats, same_day: Mask) -> Floats:
        """Return what is left of the keepers in the ranking, shape (n,), after the prices."""
        left = np.ones(soak_h.size)
        if self.soak == "short":
            left *= (1 - A_DAY_OF_SOAK) ** (soak_h / 24)
        if self.drive == "long":
            left *= np.where(same_day, 1.0, 0.5)
        return left


@dataclass(frozen=True)
class Windows:
    """Sets and hauls as indices into the grid of candidates; arrays of shape (n,).

    first_set..last_set: the run of set times allowed with the haul. run: which run of
    allowed set times that is part of.
    """

    first_set: Ints
    last_set: Ints
    haul: Ints
    run: Ints

    def take(self, which: Ints) -> Windows:
        """Return the chosen ones, in the order of the indices."""
        return Windows(
            self.first_set[which], self.last_set[which], self.haul[which], self.run[which]
        )


def find_windows(candidates: Candidates) -> Windows:
    """Return, for every allowed haul and every run of set times, the sets allowed with it.

    A run ends with its local day, also where the night is light: crabs are forecast by the day,
    and "any time from 00:00 to 00:00" would say nothing.
    """
    run_first, run_last = _runs(candidates.may_set, candidates.day)
    haul = np.flatnonzero(candidates.may_haul)
    # `last_haul` never decreases, so the sets that a haul comes soon enough for end the grid.
    earliest = np.maximum(
        np.searchsorted(candidates.last_haul, haul, side="left"), haul - candidates.max_steps
    )
    latest = haul - candidates.min_steps
    some = earliest <= latest
    haul, earliest, latest = haul[some], earliest[some], latest[some]
    low = np.searchsorted(run_last, earliest, side="left")
    high = np.searchsorted(run_first, latest, side="right")
    count = np.maximum(high - low, 0)
    at = np.repeat(np.arange(haul.size), count)
    run = np.arange(at.size) - np.repeat(np.cumsum(count) - count, count) + low[at]
    first_set = np.maximum(run_first[run], earliest[at])
    last_set = np.minimum(run_last[run], latest[at])
    return Windows(first_set, last_set, haul[at], run)


def best_of_each(windows: Windows, worth: Floats, comfort: Floats, days: Ints) -> Ints:
    """Return indices of the best window for each run of set times and haul day, best first.

    worth: full keepers expected, less the prices of wishes, shape (n,).
    comfort: how far the other wishes are met, shape (n,).
    days: index of the local day of each instant of the grid.
    Within a group any window as good as the best may be taken, and comfort chooses.
    """
    if worth.size == 0:
        return np.empty(0, dtype=np.int64)
    _, group = np.unique(np.stack([windows.run, days[windows.haul]]), axis=1, return_inverse=True)
    group = group.ravel()
    best = np.full(group.max() + 1, -np.inf)
    np.maximum.at(best, group, worth)
    as_good = worth >= _AS_GOOD * best[group]
    order = np.lexsort((windows.haul, -worth, -comfort, ~as_good, group))
    heads = order[np.flatnonzero(np.diff(group[order], prepend=-1))]
    ranked = np.lexsort((windows.first_set[heads], -comfort[heads], -np.round(worth[heads], 1)))
    return heads[ranked]


def fold(windows: Windows, ranked: Ints, days: Ints, limit: int) -> Ints:
    """Return at most `limit` of the ranked windows, near-duplicates left out."""
    kept: list[int] = []
    soaks: dict[tuple[int, int], list[int]] = {}
    for at in ranked:
        if len(kept) == limit:
            break
        set_at, haul = int(windows.first_set[at]), int(windows.haul[at])
        same_days = soaks.setdefault((int(days[set_at]), int(days[haul])), [])
        if all(_differ(haul - set_at, other) for other in same_days):
            same_days.append(haul - set_at)
            kept.append(int(at))
    return np.array(kept, dtype=np.int64)


def _differ(soak: int, other: int) -> bool:
    return max(soak, other) >= _OTHER_SOAK * min(soak, other)


def _runs(mask: Mask, day: Ints) -> tuple[Ints, Ints]:
    """Return the first and the last index of each unbroken run within a day."""
    new_day = np.diff(day, prepend=-1) != 0
    first = mask & (new_day | ~np.concatenate([[False], mask[:-1]]))
    last = mask & np.concatenate([first[1:] | ~mask[1:], [True]])
    return np.flatnonzero(first), np.flatnonzero(last)
