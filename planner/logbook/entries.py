"""What a trapper logs: one haul of one trap, and what a trip's hauls say together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Final

from planner.estimates import Interval

# What a crab may be called; "" stands for not recorded. The words of the trade.
SEXES: Final = ("male", "immature female", "mature female")
WIDTHS_BY: Final = ("point to point", "inside the points")
SHELLS: Final = ("buster", "soft", "papershell", "buckram", "hard")
PEELER_SIGNS: Final = ("none", "white", "pink", "red")
ABDOMENS: Final = ("white", "cream", "yellowed", "rusty", "dark")
GRADES: Final = ("light", "filling", "full")
TRAP_EVENTS: Final = ("bought", "built", "repaired", "changed", "lost", "found", "retired")


@dataclass(frozen=True)
class Crab:
    """One crab looked at by itself. None and "" mean not recorded, which is not zero.

    sex, width_by, shell, peeler_sign, abdomen, grade: one of the words above. width_by: how the
    width was measured. grade: fullness. meat_g: what picking this crab gave.
    """

    sex: str = ""
    width_mm: float | None = None
    width_by: str = ""
    weight_g: float | None = None
    shell: str = ""
    peeler_sign: str = ""
    abdomen: str = ""
    grade: str = ""
    meat_g: float | None = None
    notes: str = ""


@dataclass(frozen=True)
class Haul:
    """One pull of one trap. None means not recorded, which is not zero.

    trip: the trip's name, unique within its place. set_at, hauled_at: aware, UTC.
    judged: legal crabs looked at for fullness; light: how many of those were light.
    other: other species as written. extra: unknown columns of an imported table.
    crabs: those of the haul that were looked at by themselves.
    row: where the logbook keeps it, None while it has no row; says nothing of the haul itself.
    """

    trip: str
    place: str
    spot: str = ""
    trap: str = ""
    design: str = ""
    bait: str = ""
    set_at: datetime | None = None
    hauled_at: datetime | None = None
    depth_m: float | None = None
    keepers: int | None = None
    shorts: int | None = None
    females: int | None = None
    sponge: int | None = None
    other: str = ""
    judged: int | None = None
    light: int | None = None
    water_c: float | None = None
    notes: str = ""
    extra: Mapping[str, str] = field(default_factory=dict)
    crabs: tuple[Crab, ...] = ()
    row: int | None = field(default=None, compare=False, repr=False)


@dataclass(frozen=True)
class Promise:
    """What the plan of a trip forecast when the trip was begun, to be judged by what came.

    full_keepers: of the whole trip. light_share: of legal crabs, 0 to 1.
    """

    full_keepers: Interval
    light_share: Interval


@dataclass(frozen=True)
class Trip:
    """What belongs to a trip as a whole; a name is unique within its place.

    crew: people aboard. weather: in words. water_c: one reading for the trip, where hauls have
    none of their own. kitchen_picked: crabs of the whole catch that were picked, kitchen_light:
    how many of those were light. promise: None for a trip that was not begun from a plan.
    kitchen_asked: whether the window has asked for the kitchen's count.
    """

    name: str
    place: str
    crew: int | None = None
    weather: str = ""
    water_c: float | None = None
    notes: str = ""
    kitchen_picked: int | None = None
    kitchen_light: int | None = None
    promise: Promise | None = None
    kitchen_asked: bool = field(default=False, compare=False, repr=False)


@dataclass(frozen=True)
class TrapEvent:
    """Something that befell a trap. kind: one of TRAP_EVENTS. on: the local day."""

    kind: str
    on: date
    notes: str = ""


@dataclass(frozen=True)
class Trap:
    """A trap by its label, and its history in the order of entry."""

    label: str
    design: str = ""
    notes: str = ""
    events: tuple[TrapEvent, ...] = ()

    @property
    def gone_since(self) -> date | None:
        """The day it was lost or retired, None where nothing or something else befell it last."""
        last = max(reversed(self.events), key=lambda event: event.on, default=None)
        return last.on if last is not None and last.kind in ("lost", "retired") else None


# From this share of light crabs on a trip is called light; judgement.
LIGHT_TRIP_SHARE: Final = 0.25


@dataclass(frozen=True)
class TripOutcome:
    """A trip added up over its hauls; counts are sums of what was recorded, None when nothing was.

    when: the middle of the recorded haul times, UTC; None when no haul has a time.
    judged, light: on deck or in the kitchen, whichever looked at more crabs: they are the same
    crabs, so the counts are never added. in_kitchen: whether they are the kitchen's.
    crabs: those looked at by themselves.
    """

    trip: str
    place: str
    when: datetime | None
    hauls: int
    keepers: int | None
    judged: int | None
    light: int | None
    water_c: float | None
    in_kitchen: bool = False
    crabs: tuple[Crab, ...] = ()
