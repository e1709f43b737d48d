"""A place known only by how its high and low waters differ from a reference place's."""

from __future__ import annotations

from typing import Final, Protocol

import numpy as np
from numpy.typing import NDArray

from planner.clock import MS_PER_DAY
from planner.errors import PlannerError
from planner.estimates import Floats
from planner.sites.site import Offsets
from planner.tides.astronomy import Milliseconds
from planner.tides.differences import longest_shift_ms, shifted
from planner.tides.turns import TurnList
from planner.words import say

# How far beyond a span to look for the turns on both sides of it, at last: a place with
# nothing but an annual tide turns twice a year.
_MARGINS_MS: Final = (3 * MS_PER_DAY, 30 * MS_PER_DAY, 400 * MS_PER_DAY)


class Curve(Protocol):
    """A water level that can be evaluated anywhere; instants in ms since 1970 UTC."""

    def heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level at instants, shape (n,)."""

    def smooth_heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level without its jumps, shape (n,)."""

    def series(self, start_ms: int, step_ms: int, count: int) -> Floats:
        """Return the level on an even grid, shape (count,)."""

    def turns(self, start_ms: int, stop_ms: int) -> TurnList:
        """Return every turn with start <= time < stop."""

    def breaks(self, start_ms: int, stop_ms: int) -> Milliseconds:
        """Return the instants after start and before stop at which the level may jump."""


class OffsetCurve:
    """The level at a place given by offsets from a reference place.

    Each high and low water of the reference is moved in time and height. Between two turns
    the shape is the reference's between the same two, stretched in time and height so that
    both are met: the slope is zero there on both sides, so the curve is smooth.
    """

    def __init__(self, reference: Curve, offsets: Offsets) -> None:
        self._reference = reference
        self._offsets = offsets
        self._kept = (np.empty(0, dtype=np.int64), np.empty(0), TurnList.empty())

    def heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level at instants, shape (n,)."""
        if t_ms.size == 0:
            return np.empty(0)
        there_ms, there_m, here = self._turns_around(int(t_ms.min()), int(t_ms.max()))
        cell = np.searchsorted(here.t_ms, t_ms, side="right") - 1
        begin, length = here.t_ms[cell], here.t_ms[cell + 1] - here.t_ms[cell]
        elapsed = (t_ms - begin) / length * (there_ms[cell + 1] - there_ms[cell])
        source = there_ms[cell] + np.rint(elapsed).astype(np.int64)
        from_m, to_m = there_m[cell], there_m[cell + 1]
        level = self._reference.smooth_heights(source)
        share = np.clip((level - from_m) / (to_m - from_m), 0.0, 1.0)
        return np.asarray(here.heights_m[cell] * (1 - share) + here.heights_m[cell + 1] * share)

    def smooth_heights(self, t_ms: Milliseconds) -> Floats:
        """Return the level at instants: it has no jumps."""
        return self.heights(t_ms)

    def series(self, start_ms: int, step_ms: int, count: int) -> Floats:
        """Return the level on an even grid, shape (count,)."""
        return self.heights(start_ms + step_ms * np.arange(count, dtype=np.int64))

    def breaks(self, start_ms: int, stop_ms: int) -> Milliseconds:  # noqa: ARG002
        """Return no instants: the curve is smooth at New Year too."""
        return np.empty(0, dtype=np.int64)

    def turns(self, start_ms: int, stop_ms: int) -> TurnList:
        """Return every high and low water with start <= time < stop, in order."""
        if stop_ms <= start_ms:
            return TurnList.empty()
        return self._shifted(start_ms - MS_PER_DAY, stop_ms + MS_PER_DAY)[1].within(
            start_ms, stop_ms
        )

    def _turns_around(self, first_ms: int, last_ms: int) -> tuple[Milliseconds, Floats, TurnList]:
        """Return times and smooth heights of turns there, and the turns that they become here.

        They begin before the first instant and end after the last; those of the last call
        are kept, since searches ask for the same span many times.
        """
        if not _encloses(self._kept[2], first_ms, last_ms):
            for margin in _MARGINS_MS:
                there, here = self._shifted(first_ms - margin, last_ms + margin)
                if _encloses(here, first_ms, last_ms):
                    break
            else:
                raise PlannerError(
                    _no_turns(self._reference.turns(first_ms - margin, last_ms + margin))
                )
            self._kept = (there.t_ms, self._reference.smooth_heights(there.t_ms), here)
        return self._kept

    def _shifted(self, start_ms: int, stop_ms: int) -> tuple[TurnList, TurnList]:
        """Return the reference's turns and what becomes of them here, pair by pair.

        start_ms, stop_ms: a span of time here; a margin for the shift is added there.
        """
        shift = longest_shift_ms(self._offsets)
        there = self._reference.turns(start_ms - shift, stop_ms + shift)
        t_ms, heights = shifted(self._offsets, there)
        high = there.is_high
        keep = _still_turns(t_ms, heights, high)
        return (
            TurnList(there.t_ms[keep], there.heights_m[keep], high[keep]),
            TurnList(t_ms[keep], heights[keep], high[keep]),
        )


def _no_turns(there: TurnList) -> str:
    if there.t_ms.size == 0:
        return say(
            "The reference place has no high and low waters to take offsets from; choose a "
            "reference place with a tide."
        )
    return say(
        "The offsets from the reference place leave no high and low waters: low water would come "
        "after the next high water, or stand above it; correct the minutes, factors and additions."
    )


def _encloses(turns: TurnList, first_ms: int, last_ms: int) -> bool:
    """Return whether turns lie on both sides of a span."""
    return turns.t_ms.size > 0 and turns.t_ms[0] <= first_ms and turns.t_ms[-1] > last_ms


def _still_turns(
    t_ms: Milliseconds, heights: Floats, is_high: NDArray[np.bool_]
) -> NDArray[np.int64]:
    """Return which turns are still turns once shifted, as indices.

    The two turns of a small double high or low water can change places, in time or in
    height, when their offsets differ; such a pair is no turn here and is left out.
    """
    kept: list[int] = []
    for index in range(t_ms.size):
        if kept:
            last = kept[-1]
            rise = heights[index] - heights[last]
            swapped = rise <= 0 if is_high[index] else rise >= 0
            if t_ms[index] <= t_ms[last] or swapped:
                kept.pop()
                continue
        kept.append(index)
    return np.array(kept, dtype=np.int64)
