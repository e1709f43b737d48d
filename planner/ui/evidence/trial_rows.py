"""A comparison of traps as rows and sentences for the window; no Qt here."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, tzinfo
from functools import partial
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.logbook import Haul
from planner.logbook.columns import guard_formula
from planner.phrasing import number_text, numbers_text
from planner.trials import (
    GROUPINGS,
    Group,
    Trial,
    compare,
    next_trip_days,
    settle_texts,
    trip_days,
)
from planner.trials.grouping import GROUPING_WORDS, observations
from planner.words import say

MEASURE_WORDS: Final[Mapping[str, str]] = {
    "keepers": say("keepers"),
    "crabs": say("all crabs"),
    "shorts": say("shorts (fewest is best)"),
    "females": say("females (fewest is best)"),
    "bycatch": say("bycatch (fewest is best)"),
    "light": say("share of light crabs (fewest is best)"),
}
_AXES: Final[Mapping[str, str]] = {
    "keepers": say("keepers a haul"),
    "crabs": say("crabs a haul"),
    "shorts": say("shorts a haul"),
    "females": say("females a haul"),
    "bycatch": say("other animals a haul"),
    "light": say("light crabs of 100 judged"),
}
_CSV_COLUMNS: Final = (
    "by", "measure", "group", "hauls", "counted", "total", "rate", "low_80", "high_80",
    "p_best", "p_no_difference", "soak_h", "verdict", "sentence",
)  # fmt: skip
# Rings in one picture: more tell the eye nothing and take long to draw.
_MOST_POINTS: Final = 1200
_FEWEST_POINTS: Final = 60
COLUMNS: Final = (
    "",
    say("Hauls"),
    say("Total"),
    say("A haul"),
    say("80% interval"),
    say("Best one"),
)


@dataclass(frozen=True)
class Comparison:
    """What came out, single hauls by group for the picture, and the days of all trips.

    thinned: whether the single hauls are only some, spread evenly over all.
    """

    trial: Trial
    singles: Mapping[str, tuple[float, ...]]
    thinned: bool
    days: tuple[date, ...]


def weigh_traps(
    hauls: Sequence[Haul], by: str, measure: str, care_ratio: float, zone: tzinfo
) -> Comparison:
    """Return the comparison of hauls; takes about a second.

    zone: on whose clock trips have their days.

    InputError for a grouping or measure that there is not.
    """
    trial = compare(hauls, by, measure, care_ratio)
    seen = observations(hauls, by, measure)
    values = seen.counts / seen.exposure
    shown = max(_FEWEST_POINTS, _MOST_POINTS // max(seen.groups, 1))
    singles = {
        name: _evenly(np.sort(values[seen.group == at]), shown)
        for at, name in enumerate(seen.names)
    }
    thinned = bool(seen.per_group().max(initial=0) > shown)
    return Comparison(trial, singles, thinned, trip_days(hauls, zone))


def _evenly(ordered: Floats, most: int) -> tuple[float, ...]:
    """Return the values, or so many of them spread evenly from the lowest to the highest."""
    if ordered.size > most:
        ordered = ordered[np.rint(np.linspace(0, ordered.size - 1, most)).astype(np.int64)]
    return tuple(ordered.tolist())


def legend_text(trial: Trial, thinned: bool) -> str:
    """Return what dot, bar and rings are."""
    rings = (
        say("some of the hauls as counted, evenly chosen")
        if thinned
        else say("single hauls as counted")
    )
    soak = (
        ""
        if trial.common_soak_h is None
        else say(" and a soak of {common_soak_h:.0f} h", common_soak_h=trial.common_soak_h)
    )
    return say(
        "Dot: what a haul gives, brought to the same trips, the same spots{soak}; the fewer "
        "hauls, the more it leans on the other groups. Bar: its 80% interval. Faint rings: "
        "{rings}.",
        soak=soak,
        rings=rings,
    )


def settle_words(found: Comparison, today: date, planned: Sequence[date]) -> list[str]:
    """Return what would settle it, with the days of the trips that it takes.

    planned: days on which ranked plans end.
    """
    days = next_trip_days(found.days, found.trial.to_settle.trips or 0, today, planned)
    return settle_texts(found.trial, days)


def comparison_csv(trial: Trial) -> str:
    """Return the groups as a table for spreadsheets, each row with what it was compared in."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\r\n")
    table.writerow(_CSV_COLUMNS)
    for group in trial.groups:
        rates = (group.rate, group.low, group.high, group.p_best, trial.test.p)
        numbers = ["" if value is None else f"{value:.4g}" for value in rates]
        total = "" if group.keepers is None else group.keepers
        soak = "" if trial.common_soak_h is None else f"{trial.common_soak_h:.4g}"
        table.writerow(
            [
                *(guard_formula(text) for text in (trial.by, trial.measure, group.name)),
                *(group.hauls, group.counted, total, *numbers, soak, trial.verdict),
                guard_formula(trial.sentence),
            ]
        )
    return out.getvalue()


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
        if _differ(label(haul) for haul in hauls)
    ]


def _differ(labels: Iterable[str]) -> bool:
    """Tell whether there are two different labels; looks no further than that."""
    first = ""
    for label in labels:
        name = label.strip().casefold()
        if name and first and name != first:
            return True
        first = first or name
    return False


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
        return say("not counted"), ""
    rate, low, high = (value * scale(measure) for value in (group.rate, group.low, group.high))
    return number_text(rate, ".1f"), numbers_text(low, high, ".1f")


def _chance(p: float) -> str:
    if p >= 0.95:
        return say("almost surely")
    return (
        say("hardly")
        if p < 0.05
        else say("{p} in 10", p=round(p * 10))
        if p >= 0.1
        else say("1 in 20")
    )
