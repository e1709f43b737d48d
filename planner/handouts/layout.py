"""Which trap goes to which spot on this trip."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from itertools import cycle
from typing import Final

from planner.handouts.moved_traps import read_moves
from planner.logbook import Haul, Log
from planner.sites import Site

_OLDEST: Final = datetime.min.replace(tzinfo=UTC)


@dataclass(frozen=True)
class TrapKit:
    """A trap as it was last aboard; "" where the log does not say."""

    label: str
    design: str = ""
    bait: str = ""
    spot: str = ""


@dataclass(frozen=True)
class Placement:
    """One trap and the spot it goes to; spot is "" at a place without spots."""

    trap: str
    design: str
    spot: str


@dataclass(frozen=True)
class TrapLayout:
    """The traps aboard, where each goes in the order of the spots, and what that buys.

    sentence: what the layout teaches about the designs, "" when it teaches nothing.
    proposed: where the traps would go had the user moved none. spots: in order.
    """

    kits: tuple[TrapKit, ...]
    placed: tuple[Placement, ...]
    sentence: str
    proposed: tuple[Placement, ...] = ()
    spots: tuple[str, ...] = ()


def kits_known(
    log: Log | None, place: str, gone: frozenset[str] = frozenset()
) -> tuple[TrapKit, ...]:
    """Return the traps of a place, each label once as its newest haul has it; none that is gone.

    Those of the newest trip come first, in the order they were entered; then those that were
    last out on the trip before, and so on. Trips without a time say nothing of order and count
    as the oldest.
    """
    if log is None:
        return ()
    by_trip: dict[str, list[Haul]] = defaultdict(list)
    for haul in log.hauls:
        if haul.place == place and haul.trap and haul.trap not in gone:
            by_trip[haul.trip].append(haul)
    outcomes = log.outcomes(place)
    newest_first = sorted(outcomes, key=lambda trip: trip.when or _OLDEST, reverse=True)
    kits: dict[str, TrapKit] = {}
    for trip in newest_first:
        for haul in by_trip[trip.trip]:
            kit = TrapKit(haul.trap, haul.design, haul.bait, haul.spot)
            kits.setdefault(haul.trap, kit)
    return tuple(kits.values())


def kits_aboard(
    known: Sequence[TrapKit], count: int, gone: frozenset[str] = frozenset()
) -> tuple[TrapKit, ...]:
    """Return `count` traps: the known ones first, then numbered ones; gone: labels not to use."""
    labels = {kit.label for kit in known} | gone
    numbers = (str(number) for number in range(1, count + len(labels) + 1))
    fresh = [TrapKit(number) for number in numbers if number not in labels]
    return (*known[:count], *fresh[: max(count - len(known), 0)])


def deal(kits: Sequence[TrapKit], spots: Sequence[str]) -> tuple[Placement, ...]:
    """Return the traps dealt over the spots in turn, in the order of the spots.

    Like designs are dealt one after the other, which keeps one kind of trap from standing on
    one spot, where the spot and the trap could not be told apart afterwards.
    """
    in_turn = cycle(spots or [""])
    by_design = sorted(kits, key=lambda kit: kit.design)
    placed = [Placement(kit.label, kit.design, next(in_turn)) for kit in by_design]
    order = {spot: at for at, spot in enumerate(spots)}
    return tuple(sorted(placed, key=lambda each: order.get(each.spot, 0)))


def trip_layout(site: Site, log: Log | None, moves: Mapping[str, str] | None = None) -> TrapLayout:
    """Return the traps of the next trip to a place, and where each goes.

    Where the log tells designs apart, so that this trip teaches most about them; else dealt
    in turn. moves: spots, by trap, of those that the user has put elsewhere; None for what is
    kept of the user's moves for this trip.
    """
    if moves is None:
        moves = read_moves(site.name, log)
    gone = frozenset[str]() if log is None else log.gone(site.zone)
    kits = kits_aboard(kits_known(log, site.name, gone), site.habits.traps, gone)
    spots = [spot.name for spot in site.spots]
    if log is None or len({kit.design for kit in kits if kit.design}) < 2 or len(spots) < 2:
        proposed = deal(kits, spots)
        return TrapLayout(kits, moved(proposed, moves, spots), "", proposed, tuple(spots))
    # Imported here: the comparison of traps takes a second or two to load.
    from planner.trials import Trap, layout

    found = layout(
        [Trap(kit.label, kit.design) for kit in kits],
        spots,
        [haul for haul in log.hauls if haul.place == site.name],
        moved=moves,
    )
    placed, proposed = (
        tuple(Placement(each.trap, each.design, each.spot) for each in some)
        for some in (found.placed, found.proposed)
    )
    return TrapLayout(kits, placed, found.sentence, proposed, tuple(spots))


def moved(
    placed: Sequence[Placement], moves: Mapping[str, str], spots: Sequence[str]
) -> tuple[Placement, ...]:
    """Return the traps with some put at other spots, in the order of the spots."""
    order = {spot: at for at, spot in enumerate(spots)}
    changed = [
        replace(each, spot=moves[each.trap]) if moves.get(each.trap) in order else each
        for each in placed
    ]
    return tuple(sorted(changed, key=lambda each: order.get(each.spot, 0)))
