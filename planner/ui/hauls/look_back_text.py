"""What the log gave, as rows and sentences; no Qt."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from planner.estimates import Interval
from planner.phrasing import interval_text, number_text, one_in
from planner.trips.looking_back import By, Filters, Frame, Group
from planner.words import counted, say

BY_CHOICES: Final[tuple[tuple[By, str], ...]] = (
    ("month", say("Month")),
    ("year", say("Year")),
    ("trip", say("Trip")),
    ("place", say("Place")),
    ("design", say("Kind of trap")),
    ("spot", say("Spot")),
    ("bait", say("Bait")),
)
COLUMNS: Final = (
    say("Trips"),
    say("Hauls"),
    say("Keepers"),
    say("A haul (80%)"),
    say("Judged"),
    say("Light (80%)"),
)
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
    """Return "2.1 (1.8–2.4)"; without brackets where one trip cannot say how trips differ."""
    if rate is None:
        return "–"
    if math.isnan(rate.low):
        return number_text(rate.mean, ".1f")
    return interval_text(rate, ".1f")


def share_text(share: Interval | None) -> str:
    """Return "9% (6%–13%)"."""
    if share is None:
        return "–"
    return interval_text(share, ".0%")


def summary(whole: Group | None, groups: Sequence[Group], by: By) -> str:
    """Return all that is filtered in a sentence, and what a comparison by kind needs to hear."""
    if whole is None:
        return say("No haul is like that: choose “all” in more of the boxes above.")
    said = [f"{counted(whole.trips, 'trip')}, {counted(whole.hauls, 'haul')}"]
    if whole.rate is not None:
        said.append(
            say(
                "{keepers} keepers, {rate} a haul",
                keepers=whole.keepers,
                rate=rate_text(whole.rate),
            )
        )
    if whole.share is not None:
        light = (
            say("none light")
            if whole.light == 0
            else say("{one_in} light", one_in=one_in(whole.share.mean))
        )
        said.append(say("{judged} judged, {light}", judged=whole.judged, light=light))
    text = say("{said}. Brackets hold 8 times in 10, as trips differ.", said="; ".join(said))
    if by in ("design", "spot", "bait") and len(groups) > 1:
        text += say(
            " Unlike hauls stand side by side here: whether one really is better, "
            "Weigh evidence tells."
        )
    if len(groups) > MOST_ROWS:
        text += say(" The table has the newest {most_rows}.", most_rows=MOST_ROWS)
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
