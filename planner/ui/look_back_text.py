"""What the log gave, as rows and sentences; no Qt."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from planner.estimates import Interval
from planner.phrasing import one_in
from planner.trips.looking_back import By, Filters, Frame, Group

BY_CHOICES: Final[tuple[tuple[By, str], ...]] = (
    ("month", "Month"),
    ("year", "Year"),
    ("trip", "Trip"),
    ("place", "Place"),
    ("design", "Kind of trap"),
    ("spot", "Spot"),
    ("bait", "Bait"),
)
COLUMNS: Final = ("Trips", "Hauls", "Keepers", "A haul (80%)", "Judged", "Light (80%)")
NUMBERS: Final = (1, 2, 3, 4, 5, 6)
MOST_ROWS: Final = 2000


def rows(groups: Sequence[Group]) -> list[tuple[str, ...]]:
    """Return the groups as a table's rows; of very many the newest."""
    return [
        (
            group.name,
            str(group.trips),
            str(group.hauls),
            "–" if group.rate is None else str(group.keepers),
            rate_text(group.rate),
            "–" if group.share is None else str(group.judged),
            share_text(group.share),
        )
        for group in groups[-MOST_ROWS:]
    ]


def rate_text(rate: Interval | None) -> str:
    """Return "2.1 (1.8-2.4)"; without brackets where one trip cannot say how trips differ."""
    if rate is None:
        return "–"
    if math.isnan(rate.low):
        return f"{rate.mean:.1f}"
    return f"{rate.mean:.1f} ({rate.low:.1f}-{rate.high:.1f})"


def share_text(share: Interval | None) -> str:
    """Return "9% (6%-13%)"."""
    if share is None:
        return "–"
    return f"{share.mean:.0%} ({share.low:.0%}-{share.high:.0%})"


def summary(whole: Group | None, groups: Sequence[Group], by: By) -> str:
    """Return all that is filtered in a sentence, and what a comparison by kind needs to hear."""
    if whole is None:
        return "No haul is like that. Take a filter away."
    said = [f"{_many(whole.trips, 'trip')}, {_many(whole.hauls, 'haul')}"]
    if whole.rate is not None:
        said.append(f"{whole.keepers} keepers, {rate_text(whole.rate)} a haul")
    if whole.share is not None:
        light = "none light" if whole.light == 0 else f"{one_in(whole.share.mean)} light"
        said.append(f"{whole.judged} judged, {light}")
    text = f"{'; '.join(said)}. Brackets hold 8 times in 10, as trips differ."
    if by in ("design", "spot", "bait") and len(groups) > 1:
        text += (
            " Unlike hauls stand side by side here: whether one really is better, "
            "Weigh evidence tells."
        )
    if len(groups) > MOST_ROWS:
        text += f" The table has the newest {MOST_ROWS}."
    return text


def choices(frame: Frame) -> dict[str, list[str]]:
    """Return what can be filtered by: names in use, newest years first."""
    found = {label: [name for name in names if name] for label, names in frame.names.items()}
    return {**found, "year": [str(year) for year in frame.years]}


def filters_of(values: dict[str, str]) -> Filters:
    """Return the filters chosen, "" for all."""
    year = values.pop("year", "")
    return Filters(
        **{name: value or None for name, value in values.items()},
        year=int(year) if year else None,
    )


def _many(count: int, what: str) -> str:
    return f"{count} {what}" if count == 1 else f"{count} {what}s"
