"""What the columns of a table were taken to mean, and what its cells leave open."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping as AnyMapping
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import time
from typing import Literal

from planner.intake.moments import Order
from planner.intake.vocabulary import words_of

Question = Literal["place", "order", "clock"]


@dataclass(frozen=True)
class Mapping:
    """Which column means what, by its name; a column that is not there is kept as it is.

    order: of day and month in dates, None while unknown. place: of rows that name none.
    haul_clock, set_clock: time of day of rows that have only a date. depth: unit of depths,
    water: unit of water temperatures. encoding: of a text file, None to find out.
    """

    columns: AnyMapping[str, str] = field(default_factory=dict)
    order: Order | None = None
    place: str = ""
    haul_clock: time | None = None
    set_clock: time | None = None
    depth: Literal["m", "ft"] = "m"
    water: Literal["C", "F"] = "C"
    encoding: str | None = None

    def column_of(self, meaning: str) -> str | None:
        """Return the name of the column that means this, None when none does."""
        return next((name for name, each in self.columns.items() if each == meaning), None)


def signature(heading: Sequence[str]) -> str:
    """Return what tells tables of one make: their columns' names, in any order."""
    names = "\n".join(sorted(words_of(name) or name for name in heading))
    return hashlib.sha256(names.encode("utf-8", "replace")).hexdigest()[:24]
