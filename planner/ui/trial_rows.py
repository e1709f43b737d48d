"""A comparison of traps as rows and sentences for the window; no Qt here."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Final

import numpy as np

from planner.logbook import Haul
from planner.trials import GROUPINGS, Group, Layout, Trial, compare, next_layout
from planner.trials.grouping import observations

GROUPING_WORDS: Final[Mapping[str, str]] = {
    "design": "trap design",
    "entrances": "number of entrances",
    "colour": "colour",
    "bait": "bait",
    "spot": "spot",
    "trap": "single traps",
    "depth": "depth",
    "soak": "length of soak",
}
MEASURE_WORDS: Final[Mapping[str, str]] = {
    "keepers": "keepers",
    "crabs": "all crabs",
    "shorts": "shorts (fewest is best)",
    "females": "females (fewest is best)",
    "bycatch": "bycatch (fewest is best)",
    "light": "share of light crabs (fewest is best)",
}
_AXES: Final[Mapping[str, str]] = {
    "keepers": "keepers a haul",
    "crabs": "crabs a haul",
    "shorts": "shorts a haul",
    "females": "females a haul",
    "bycatch": "other animals a haul",
    "light": "light crabs of 100 judged",
}
COLUMNS: Final = ("", "Hauls", "Total", "A haul", "80% interval", "Best one")


@dataclass(frozen=True)
class Comparison:
    """What was compared, what came out, every single haul by group, and the next layout."""

    trial: Trial
    singles: Mapping[str, tuple[float, ...]]
    layout: Layout | None


def weigh_traps(hauls: Sequence[Haul], by: str, measure: str, care_ratio: float) -> Comparison:
    """Return the comparison of hauls; takes about a second.

    InputError for a grouping or measure that there is not.
    """
    trial = compare(hauls, by, measure, care_ratio)
    seen = observations(hauls, by, measure)
    values = seen.counts / seen.exposure
    singles = {
        name: tuple(float(value) for value in np.sort(values[seen.group == at]))
        for at, name in enumerate(seen.names)
    }
    return Comparison(trial, singles, next_layout(hauls))


def groupings(hauls: Sequence[Haul]) -> list[tuple[str, str]]:
    """Return what hauls can be grouped by, as (name, words): with two groups or more."""
    own = dict.fromkeys(name for haul in hauls for name in haul.extra)
    labels: dict[str, Callable[[Haul], str]] = {
        **GROUPINGS,
        **{name: partial(_own_column, name) for name in own},
    }
    return [
        (name, GROUPING_WORDS.get(name, name))
        for name, label in labels.items()
        if len({label(haul).strip().casefold() for haul in hauls} - {""}) > 1
    ]


def _own_column(name: str, haul: Haul) -> str:
    return haul.extra.get(name, "")


def axis_label(measure: str) -> str:
    """Return what the axis of rates counts."""
    return _AXES[measure]


def scale(measure: str) -> float:
    """Return what a rate is multiplied with for showing: shares as crabs of 100."""
    return 100.0 if measure == "light" else 1.0


def group_rows(trial: Trial) -> list[tuple[str, ...]]:
    """Return the groups as rows of a table, under COLUMNS."""
    return [
        (
            group.name,
            str(group.hauls),
            "" if group.keepers is None else str(group.keepers),
            *_rate(group, trial.measure),
            "" if group.p_best is None else _chance(group.p_best),
        )
        for group in trial.groups
    ]


def _rate(group: Group, measure: str) -> tuple[str, str]:
    if group.rate is None or group.low is None or group.high is None:
        return "not counted", ""
    rate, low, high = (value * scale(measure) for value in (group.rate, group.low, group.high))
    return f"{rate:.1f}", f"{low:.1f} to {high:.1f}"


def _chance(p: float) -> str:
    if p >= 0.95:
        return "almost surely"
    return "hardly" if p < 0.05 else f"{round(p * 10)} in 10" if p >= 0.1 else "1 in 20"


def layout_rows(layout: Layout | None) -> list[tuple[str, ...]]:
    """Return which trap goes where next."""
    placed = () if layout is None else layout.placed
    return [(each.spot, each.trap, each.design) for each in placed]
