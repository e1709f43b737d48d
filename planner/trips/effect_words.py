"""How far season, spots and designs move the catch of a plan, in words."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.estimates import Interval
from planner.phrasing import range_text
from planner.trips.catch_effects import Effects
from planner.words import counted, say

# Smaller effects on the catch, up or down, move no plan that anyone could tell.
_WORTH_SAYING: Final = 0.05


def effect_texts(effects: Effects, season: float) -> Iterator[str]:
    """Yield what moves the catch of a plan hauled at a time of year (radians), and its footing.

    Nothing is said of what moves it by less than a twentieth, or is not in the log.
    """
    if not effects.hauls:
        return
    hauls = counted(effects.hauls, "haul")
    now = effects.season(season)
    if abs(now.mean - 1) >= _WORTH_SAYING:
        yield say(
            "Time of year: {ratio} than on your logged trips together ({range}), from {hauls}.",
            ratio=_keepers(now.mean),
            range=_range(now),
            hauls=hauls,
        )
    yield from _spot_texts(effects)
    traps = effects.traps_mean()
    if abs(traps - 1) >= _WORTH_SAYING:
        yield say(
            "Traps spread evenly over your spots, of the designs you keep: {ratio} than in your "
            "log, from {hauls}.",
            ratio=_keepers(traps),
            hauls=hauls,
        )


def _spot_texts(effects: Effects) -> Iterator[str]:
    """Yield which of the plan's spots brings the most, where several are in the log."""
    known = {name: effects.spot(name) for name in effects.mix.spots if effects.at_spot.get(name)}
    if len(known) < 2:
        return
    best = max(sorted(known), key=lambda name: known[name].mean)
    if known[best].mean - 1 >= _WORTH_SAYING:
        yield say(
            "Of your spots {spot} is the best: {ratio} than an average haul ({range}), from "
            "{hauls} there.",
            spot=best,
            ratio=_keepers(known[best].mean),
            range=_range(known[best]),
            hauls=counted(effects.at_spot[best], "haul"),
        )


def _keepers(ratio: float) -> str:
    share = abs(ratio - 1)
    if ratio >= 1:
        return say("about {share:.0%} more keepers", share=share)
    return say("about {share:.0%} fewer keepers", share=share)


def _range(ratio: Interval) -> str:
    return range_text(_change(ratio.low), _change(ratio.high))


def _change(ratio: float) -> str:
    share = abs(ratio - 1)
    if ratio >= 1:
        return say("{share:.0%} more", share=share)
    return say("{share:.0%} fewer", share=share)
