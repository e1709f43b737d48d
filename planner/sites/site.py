"""A place as the rest of the program sees it: metres, hours east of UTC, plain numbers."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, time
from pathlib import Path
from typing import Literal
from zoneinfo import ZoneInfo

from planner.units import LengthUnit

NodeRule = Literal["yearly", "continuous"]


@dataclass(frozen=True)
class HarmonicConstant:
    """Amplitude (m) and phase lag (degrees, in the water's phase reference) of a constituent."""

    constituent: str
    amplitude_m: float
    phase_lag_deg: float


@dataclass(frozen=True)
class TimeDifferences:
    """Minutes to add to a turn's time, tabled for two times of day (UK convention).

    first_h, second_h: hours on the table's clock; each column holds twelve hours later too.
    Between the columns minutes go linearly with the clock time of the reference's turn.
    """

    first_h: float
    first_minutes: float
    second_h: float
    second_minutes: float


@dataclass(frozen=True)
class HeightDifferences:
    """Metres to add to a turn's height, tabled for mean springs and neaps (UK convention).

    Linear in the height of the reference's turn, and carried on along the same line.
    """

    springs_there_m: float
    springs_add_m: float
    neaps_there_m: float
    neaps_add_m: float


@dataclass(frozen=True)
class TabledDifferences:
    """Differences to a reference place as tables give them, high and low waters apart.

    clock_h: hours east of UTC of the table's clock: its standard time, never summer time.
    """

    clock_h: float
    high_times: TimeDifferences
    low_times: TimeDifferences
    high_heights: HeightDifferences
    low_heights: HeightDifferences


@dataclass(frozen=True)
class Offsets:
    """How high and low waters here differ from those of a reference place.

    height here = factor x height there + addition, each kind of turn with its own values;
    minutes are added to the time there. With `tabled` its differences take their place.
    """

    reference: Site
    high_minutes: float
    low_minutes: float
    high_factor: float = 1.0
    low_factor: float = 1.0
    high_add_m: float = 0.0
    low_add_m: float = 0.0
    tabled: TabledDifferences | None = None


@dataclass(frozen=True)
class Water:
    """What the tide here is made of; heights in metres above the datum.

    Exactly one of `constants` (not empty) and `offsets` (not None) is given.
    phase_reference_h: hours east of UTC of the clock that the phase lags were worked out in.
    file_units: the unit the place file is written in, kept for showing it back.
    """

    datum: str
    mean_level_m: float
    file_units: LengthUnit
    phase_reference_h: float
    node_factors: NodeRule
    constants_state: str
    source: str
    constants: tuple[HarmonicConstant, ...] = ()
    offsets: Offsets | None = None


@dataclass(frozen=True)
class Spot:
    """Where a trap stands: depth below the datum and height of the trap, in metres.

    latitude_deg, longitude_deg: its position (WGS 84), both or neither.
    """

    name: str
    depth_m: float
    trap_height_m: float
    latitude_deg: float | None = None
    longitude_deg: float | None = None

    @property
    def trap_top_m(self) -> float:
        """Return where the trap's top lies, above the datum: a level less this covers the trap.

        A charted depth is one below the datum that levels are counted from (common practice).
        """
        return self.trap_height_m - self.depth_m


@dataclass(frozen=True)
class Closure:
    """A time when no trap may be in the water.

    Either a period of dates (both included; with `every_year` only month and day count,
    and the period may run over New Year) or weekdays (0 = Monday), or both (those
    weekdays within that period).
    """

    reason: str
    first: date | None = None
    last: date | None = None
    every_year: bool = False
    weekdays: frozenset[int] = frozenset()


@dataclass(frozen=True)
class RuleNote:
    """One rule of the place as the user wrote it down, under a heading of the checklist."""

    category: str
    text: str


@dataclass(frozen=True)
class Rules:
    """The rules of the place as the user entered them, with when and where they were checked."""

    checked: date | None = None
    checked_where: str = ""
    max_traps: int | None = None
    max_soak_h: float | None = None
    notes: tuple[RuleNote, ...] = ()


@dataclass(frozen=True)
class FreeTime:
    """When the user can be on the water: weekdays (0 = Monday), local hours, exceptions."""

    weekdays: frozenset[int] = frozenset(range(7))
    earliest: time = time(0, 0)
    latest: time = time(23, 59)
    also: frozenset[date] = frozenset()
    never: frozenset[date] = frozenset()


@dataclass(frozen=True)
class Habits:
    """How the user fishes here; every value has a sensible default, within the place's rules.

    The set begins `bait_minutes` after leaving with fresh bait; setting and hauling take
    `set_minutes` and `haul_minutes` on the water, all of it in daylight.
    """

    traps: int = 12
    min_soak_h: float = 12.0
    max_soak_h: float = 60.0
    bait_minutes: float = 30.0
    set_minutes: float = 60.0
    haul_minutes: float = 90.0
    cover_margin_m: float = 0.3


@dataclass(frozen=True)
class SlackLags:
    """Minutes from high and from low water to slack; negative is before, None is not known.

    The user's own estimate: it changes with the range and the weather.
    """

    after_high_min: float | None = None
    after_low_min: float | None = None


@dataclass(frozen=True)
class Site:
    """A place: where it is, its water, its spots, its rules and the user's habits there."""

    name: str
    latitude_deg: float
    longitude_deg: float
    zone: ZoneInfo
    water: Water
    lowest_ramp_level_m: float | None = None
    slack: SlackLags | None = None
    spots: tuple[Spot, ...] = ()
    monthly_water_c: tuple[float, ...] | None = None
    closures: tuple[Closure, ...] = ()
    rules: Rules = field(default_factory=Rules)
    free: FreeTime = field(default_factory=FreeTime)
    habits: Habits = field(default_factory=Habits)
    species: str = "blue-crab"
    invented: bool = False
    path: Path | None = None
