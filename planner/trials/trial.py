"""What a comparison of traps found, as data for the window, the command line and paper."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Verdict = Literal["too early", "leaning", "settled"]


@dataclass(frozen=True)
class Group:
    """One of the groups compared; rate, low and high are None when no haul was counted.

    hauls: all its hauls; counted: those with a count. keepers: the plain total of what is
    measured (keepers unless another measure was asked for), None when nothing was counted.
    rate: what a haul would have given had every haul of the log been this group's, at the
    common soak; a share when the measure is one. low, high: its 80% interval.
    p_best: probability that this group is the best one; None for a group not judged.
    """

    name: str
    hauls: int
    counted: int
    keepers: int | None
    rate: float | None
    low: float | None
    high: float | None
    p_best: float | None


@dataclass(frozen=True)
class Contrast:
    """How many times one group gives what another does, with its 80% interval."""

    better: str
    other: str
    ratio: float
    low: float
    high: float


@dataclass(frozen=True)
class Test:
    """Whether groups differ at all; p is None when the log allows no test."""

    __test__ = False  # no test of ours, whatever pytest makes of the name

    name: str
    p: float | None


@dataclass(frozen=True)
class Dispersion:
    """Size k of the counts about what is expected of them, with its 80% interval.

    Variance = mean + mean^2 / k: the smaller k, the more a haul is luck.
    """

    k: float
    low: float
    high: float


@dataclass(frozen=True)
class ToSettle:
    """What would settle it: hauls of each group still needed, None when nothing can be said.

    difference: the ratio the user cares about. trips: the same as trips like those logged.
    can_hide: the smallest true ratio that the log so far would bring to light (80% power),
    None when it would bring none. low, high: the hauls at the ends of the 80% interval of the
    dispersion. seen_ratio, seen_hauls: how far best and worst are apart as the log has it, and
    the hauls of each that would bring a difference no larger than that to light.
    """

    hauls_per_group: int | None
    difference: float
    trips: int | None = None
    can_hide: float | None = None
    low: int | None = None
    high: int | None = None
    seen_ratio: float | None = None
    seen_hauls: int | None = None


@dataclass(frozen=True)
class Caution:
    """Something that the figures cannot know: a code for programs, a sentence for people."""

    code: str
    text: str


@dataclass(frozen=True)
class Trial:
    """A comparison: groups from the highest rate to the lowest, and how much it says.

    contrasts: the leading group against each other judged one, in the order of the groups.
    """

    by: str
    measure: str
    common_soak_h: float | None
    groups: tuple[Group, ...]
    contrasts: tuple[Contrast, ...]
    test: Test
    dispersion: Dispersion | None
    to_settle: ToSettle
    warnings: tuple[Caution, ...]
    verdict: Verdict
    sentence: str
    hauls: int
    trips: int
