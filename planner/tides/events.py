"""What the water does in order of time: turns, the ramp's hours, slack by the user's own lags."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from planner.clock import Instants
from planner.estimates import Floats
from planner.sites.site import SlackLags
from planner.tides.tide import Moment, Tide
from planner.words import say


class Kind(IntEnum):
    """What happens; in files by its name in small letters."""

    HIGH = 0
    LOW = 1
    RAMP_BEGINS = 2
    RAMP_ENDS = 3
    SLACK_ESTIMATED_HIGH = 4
    SLACK_ESTIMATED_LOW = 5


@dataclass(frozen=True)
class Events:
    """Events in order of time, all of shape (n,).

    times: `datetime64[ms]` UTC; heights: metres above the datum, NaN for slack water, whose
    time is too rough for one; kinds: of `Kind`.
    """

    times: Instants
    heights: Floats
    kinds: NDArray[np.int8]

    def only(self, *, ramp: bool, slack: bool) -> Events:
        """Return the turns, with the ramp's and the slack waters where they are wanted."""
        kept = self.kinds <= Kind.LOW
        if ramp:
            kept |= (self.kinds == Kind.RAMP_BEGINS) | (self.kinds == Kind.RAMP_ENDS)
        if slack:
            kept |= self.kinds >= Kind.SLACK_ESTIMATED_HIGH
        return Events(self.times[kept], self.heights[kept], self.kinds[kept])


def events(
    tide: Tide, start: Moment, stop: Moment, *, ramp: bool = True, slack: bool = True
) -> Events:
    """Return the turns of a span, when the place's ramp begins and ends to work, and slack.

    The ramp and slack are there where the place has a lowest level and lags for them.
    Raises as the methods of `Tide` do.
    """
    turns = tide.turns(start, stop)
    parts = [
        Events(turns.times, turns.heights, _kinds(turns.is_high, Kind.HIGH, Kind.LOW)),
    ]
    level_m, lags = tide.site.lowest_ramp_level_m, tide.site.slack
    if ramp and level_m is not None:
        found = tide.crossings(level_m, start, stop)
        kinds = _kinds(found.rising, Kind.RAMP_BEGINS, Kind.RAMP_ENDS)
        parts.append(Events(found.times, np.full(len(kinds), level_m), kinds))
    if slack and lags is not None:
        slacks = tide.slacks(start, stop, lags.after_high_min, lags.after_low_min)
        kinds = _kinds(slacks.after_high, Kind.SLACK_ESTIMATED_HIGH, Kind.SLACK_ESTIMATED_LOW)
        parts.append(Events(slacks.times, np.full(len(kinds), np.nan), kinds))
    found_all = joined(parts)
    order = np.argsort(found_all.times, kind="stable")
    return Events(found_all.times[order], found_all.heights[order], found_all.kinds[order])


def joined(parts: Sequence[Events]) -> Events:
    """Return the events of parts, one after another."""
    return Events(
        np.concatenate([each.times for each in parts]),
        np.concatenate([each.heights for each in parts]),
        np.concatenate([each.kinds for each in parts]),
    )


def _kinds(first: NDArray[np.bool_], one: Kind, other: Kind) -> NDArray[np.int8]:
    return np.where(first, one, other).astype(np.int8)


def kind_text(kind: Kind, lags: SlackLags | None) -> str:
    """Return what happens, in words; `lags` tell whether slack comes before or after a turn."""
    if kind is Kind.HIGH:
        return say("high")
    if kind is Kind.LOW:
        return say("low")
    if kind is Kind.RAMP_BEGINS:
        return say("ramp begins to work")
    if kind is Kind.RAMP_ENDS:
        return say("ramp stops working")
    is_high = kind is Kind.SLACK_ESTIMATED_HIGH
    minutes = None if lags is None else lags.after_high_min if is_high else lags.after_low_min
    if round(minutes or 0) == 0:
        return (
            say("slack (estimated) at high water")
            if is_high
            else say("slack (estimated) at low water")
        )
    if (minutes or 0) > 0:
        return (
            say("slack (estimated) after high water")
            if is_high
            else say("slack (estimated) after low water")
        )
    return (
        say("slack (estimated) before high water")
        if is_high
        else say("slack (estimated) before low water")
    )


def lags_text(lags: SlackLags) -> str:
    """Return when slack is by the user's own lags, and how little that says."""
    return say(
        "{turns}: your own estimate, which changes with range and weather; currents are not "
        "predicted",
        turns=say(" and ").join(_lag_texts(lags)),
    )


def _lag_texts(lags: SlackLags) -> Iterator[str]:
    for minutes, turn in (
        (lags.after_high_min, say("high water")),
        (lags.after_low_min, say("low water")),
    ):
        if minutes is None:
            continue
        whole = round(minutes)
        if whole == 0:
            yield say("at {turn}", turn=turn)
        elif whole > 0:
            yield say("about {minutes} min after {turn}", minutes=whole, turn=turn)
        else:
            yield say("about {minutes} min before {turn}", minutes=-whole, turn=turn)
