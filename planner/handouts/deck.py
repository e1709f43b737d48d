"""A trip as it is tallied on deck, on paper or on a phone: its traps in the order of hauling."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from zoneinfo import ZoneInfo

from planner.errors import PlannerError
from planner.logbook import Haul
from planner.words import say


@dataclass(frozen=True)
class DeckTrip:
    """The rows of one trip to be filled in.

    hauls: one a trap, all of one trip and place, as far as they are known beforehand.
    zone: whose clock the times are shown on. invented: whether the place is made up.
    """

    hauls: tuple[Haul, ...]
    zone: ZoneInfo
    invented: bool = False

    @property
    def name(self) -> str:
        """The trip's name."""
        return self.hauls[0].trip

    @property
    def place(self) -> str:
        """The place's name."""
        return self.hauls[0].place


def deck_trip(hauls: Sequence[Haul], zone: ZoneInfo, *, invented: bool = False) -> DeckTrip:
    """Return a trip to take on deck; PlannerError when it has no trap."""
    if not hauls:
        raise PlannerError(say("This trip has no traps yet: add them first, then take it on deck."))
    return DeckTrip(tuple(hauls), zone, invented)
