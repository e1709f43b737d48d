"""Which trap goes where on the next trip, so that designs can be told apart soonest.

What a layout is worth is the variance it leaves in the comparisons of designs, counting every
haul already made, with trips and spots as blocks. Traps are swapped between places as long as
that lowers it, from several beginnings; what is equal then is dealt by lot.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.logbook import Haul
from planner.trials.layout_problem import LayoutProblem, Placed, Trap
from planner.words import say

_BEGINNINGS: Final = 24
_DEALT: Final = 200


@dataclass(frozen=True)
class Layout:
    """The next trip's traps in the order of the spots, and what the layout buys.

    efficiency: how much all trips up to this one then say about the designs, of the most
    that as many hauls could (1 is ideal). if_left: the same had the traps been left where
    they last stood, None when they were not all set before; if_dealt: on average when
    dealt at random. proposed, if_proposed: where the traps would go, and what that would be
    worth, had the user moved none.
    """

    placed: tuple[Placed, ...]
    efficiency: float
    if_left: float | None
    if_dealt: float
    sentence: str
    proposed: tuple[Placed, ...]
    if_proposed: float


def layout(
    traps: Sequence[Trap],
    spots: Sequence[str],
    history: Iterable[Haul] = (),
    seed: int = 0,
    moved: Mapping[str, str] | None = None,
) -> Layout:
    """Return the layout of the next trip.

    spots: places to set, in their order along the shore or by depth where that is known; a
    spot that is to take two traps may stand there twice. Fewer places than traps are used
    again in turn. history: hauls made so far, at this place; those of designs no longer aboard
    help to tell what the spots are worth. One seed gives one layout.
    moved: spots, by label, of traps that the user has put elsewhere than proposed; labels and
    spots that are not aboard count for nothing. ValueError without traps or spots.
    """
    if not traps or not spots:
        raise ValueError("a layout needs at least one trap and one spot")
    rng = np.random.default_rng(seed)
    history = list(history)
    problem = LayoutProblem(traps, spots, history)
    left = problem.last_places()
    even = problem.even_places()
    # Many traps take long to search and leave little to gain.
    count = max(3, min(_BEGINNINGS, 4000 // len(traps) ** 2))
    beginnings = [even if n == 0 else rng.permutation(even) for n in range(count)]
    if left is not None:
        beginnings += [left, rng.permutation(left)]
    found = [problem.swapped(start, rng) for start in beginnings]
    values = np.array([problem.variances(places[None, :])[0] for places in found])
    # Equal to within rounding is equal; which of them it is, is dealt by lot.
    equal = np.flatnonzero(values <= values.min() * (1 + 1e-9))
    best = found[int(rng.choice(equal))]
    best = problem.rotated(best, rng)
    chosen = problem.moved(best, moved or {})
    dealt = np.array([rng.permutation(even) for _ in range(_DEALT)])
    if_proposed, efficiency = problem.efficiency(best), problem.efficiency(chosen)
    if_left = None if left is None else problem.efficiency(left)
    if_dealt = float(np.mean(problem.ideal / problem.variances(dealt)))
    worth = [
        (efficiency, say(", with the traps as you moved them,")),
        (if_proposed, say("as proposed")),
        (if_left, say("with the traps left where they are")),
        (if_dealt, say("on average when dealt at random")),
    ]
    if np.array_equal(chosen, best):
        worth[:2] = [(efficiency, "")]
    return Layout(
        placed=problem.placed(chosen),
        efficiency=efficiency,
        if_left=if_left,
        if_dealt=if_dealt,
        sentence=_sentence(worth, problem.trips, problem.compared),
        proposed=problem.placed(best),
        if_proposed=if_proposed,
    )


def next_layout(hauls: Iterable[Haul], seed: int = 0, gone: Collection[str] = ()) -> Layout | None:
    """Return the layout of the next trip with the traps and spots of the log.

    Taken from the place of the latest haul: the traps of its last five trips, and its spots
    by recorded depth. gone: labels of traps that are lost or retired. None when the log names no
    traps or spots.
    """
    timed = [h for h in hauls if h.trap and h.spot and h.design and h.hauled_at is not None]
    if not timed:
        return None
    timed.sort(key=lambda h: h.hauled_at.timestamp() if h.hauled_at else 0.0)
    here = [haul for haul in timed if haul.place == timed[-1].place]
    recent = list(dict.fromkeys(haul.trip for haul in reversed(here)))[:5]
    designs = {
        haul.trap: haul.design for haul in here if haul.trip in recent and haul.trap not in gone
    }
    if not designs:
        return None
    traps = [Trap(label, designs[label]) for label in sorted(designs)]
    depths: dict[str, list[float]] = {haul.spot: [] for haul in here}
    for haul in here:
        if haul.depth_m is not None:
            depths[haul.spot].append(haul.depth_m)
    spots = sorted(depths, key=lambda spot: (np.mean(depths[spot] or [np.inf]), spot))
    return layout(traps, spots, here, seed)


def _sentence(worth: Sequence[tuple[float | None, str]], trips: int, designs: int) -> str:
    if designs < 2:
        return say("One design only: there is nothing to compare, so the traps are dealt by lot.")
    (efficiency, how), *others = worth
    parts = [
        say(
            "After this trip{how} the log holds {efficiency:.0%} of all that so many hauls could "
            "tell of the designs",
            how=how,
            efficiency=efficiency,
        )
    ]
    parts += [
        say("{value:.0%} {words}", value=value, words=words)
        for value, words in others
        if value is not None
    ]
    alone = say(" One trip alone settles nothing: move the traps again next time.")
    return ", ".join(parts) + "." + (alone if trips == 1 else "")
