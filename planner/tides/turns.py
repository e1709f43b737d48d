"""High and low waters as plain arrays."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.estimates import Floats
from planner.tides.astronomy import Milliseconds


@dataclass(frozen=True)
class TurnList:
    """Turns in order of time; kinds alternate. t_ms: since 1970 UTC; all of shape (n,)."""

    t_ms: Milliseconds
    heights_m: Floats
    is_high: NDArray[np.bool_]

    @classmethod
    def empty(cls) -> TurnList:
        """Return no turns."""
        return cls(np.empty(0, dtype=np.int64), np.empty(0), np.empty(0, dtype=np.bool_))

    @classmethod
    def joined(cls, parts: Sequence[TurnList]) -> TurnList:
        """Return the turns of neighbouring spans, at least one, as those of the whole."""
        if len(parts) == 1:
            return parts[0]
        return cls(
            np.concatenate([each.t_ms for each in parts]),
            np.concatenate([each.heights_m for each in parts]),
            np.concatenate([each.is_high for each in parts]),
        )

    def within(self, start_ms: int, stop_ms: int) -> TurnList:
        """Return the turns with start <= time < stop."""
        inside = (self.t_ms >= start_ms) & (self.t_ms < stop_ms)
        return TurnList(self.t_ms[inside], self.heights_m[inside], self.is_high[inside])
