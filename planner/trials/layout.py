"""Which trap goes where on the next trip, so that designs can be told apart soonest.

What a layout is worth is the variance it leaves in the comparisons of designs, counting every
haul already made, with trips and spots as blocks. Traps are swapped between places as long as
that lowers it, from several beginnings; what is equal then is dealt by lot.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.logbook import Haul
from planner.trials.grouping import Ints
from planner.words import say

# Information that stands for what is believed before any haul, against 1 for a haul. Spots are
# nearly free to differ (blocks); neighbours are alike, so that designs are also interleaved.
_SPOT_PRIOR: Final = 0.05
_NEIGHBOUR_LIKENESS: Final = 0.5
# Keeps designs that were never compared finitely far apart.
_DESIGN_PRIOR: Final = 0.02

_BEGINNINGS: Final = 24
_DEALT: Final = 200


@dataclass(frozen=True)
class Trap:
    """A trap aboard: its label and its design."""

    label: str
    design: str


@dataclass(frozen=True)
class Placed:
    """A trap and the spot it goes to."""

    trap: str
    design: str
    spot: str


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
    again in turn. history: hauls made so far, at this place. One seed gives one layout.
    moved: spots, by label, of traps that the user has put elsewhere than proposed; labels and
    spots that are not aboard count for nothing. ValueError without traps or spots.
    """
    if not traps or not spots:
        raise ValueError("a layout needs at least one trap and one spot")
    rng = np.random.default_rng(seed)
    history = list(history)
    problem = _LayoutProblem(traps, spots, history)
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
        (efficiency, say(", as you moved the traps,")),
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
        sentence=_sentence(worth, problem.trips, len(problem.designs)),
        proposed=problem.placed(best),
        if_proposed=if_proposed,
    )


def next_layout(hauls: Iterable[Haul], seed: int = 0) -> Layout | None:
    """Return the layout of the next trip with the traps and spots of the log.

    Taken from the place of the latest haul: the traps of its last five trips, and its spots
    by recorded depth. None when the log names no traps or spots.
    """
    timed = [h for h in hauls if h.trap and h.spot and h.design and h.hauled_at is not None]
    if not timed:
        return None
    timed.sort(key=lambda h: h.hauled_at.timestamp() if h.hauled_at else 0.0)
    here = [haul for haul in timed if haul.place == timed[-1].place]
    recent = list(dict.fromkeys(haul.trip for haul in reversed(here)))[:5]
    designs = {haul.trap: haul.design for haul in here if haul.trip in recent}
    traps = [Trap(label, designs[label]) for label in sorted(designs)]
    depths: dict[str, list[float]] = {haul.spot: [] for haul in here}
    for haul in here:
        if haul.depth_m is not None:
            depths[haul.spot].append(haul.depth_m)
    spots = sorted(depths, key=lambda spot: (np.mean(depths[spot] or [np.inf]), spot))
    return layout(traps, spots, here, seed)


class _LayoutProblem:
    """History reduced to tables of counts; only the next trip's table changes in the search."""

    def __init__(
        self, traps: Sequence[Trap], spots: Sequence[str], history: Sequence[Haul]
    ) -> None:
        self._traps = traps
        self._history = history
        self._places = list(spots)
        self.spots = list(dict.fromkeys([*spots, *(h.spot for h in history if h.spot)]))
        self.designs = list(dict.fromkeys(trap.design for trap in traps))
        known = [h for h in history if h.spot and h.design in self.designs]
        names = list(dict.fromkeys(haul.trip for haul in known))
        self.trips = len(names) + 1
        self.design = self._indices([trap.design for trap in traps], self.designs)
        at_design = self._indices([haul.design for haul in known], self.designs)
        at_spot = self._indices([haul.spot for haul in known], self.spots)
        at_trip = self._indices([haul.trip for haul in known], names)
        self._design_spot = _counts(at_design, at_spot, len(self.designs), len(self.spots))
        self._design_trip = _counts(at_design, at_trip, len(self.designs), len(names))
        self._spot_trip = _counts(at_spot, at_trip, len(self.spots), len(names))
        self._visits = self._trap_visits(known)
        self._tiny = _DESIGN_PRIOR * np.eye(len(self.designs))
        self._likeness = _SPOT_PRIOR * _smooth_precision(len(self.spots))

    @staticmethod
    def _indices(values: Sequence[str], among: Sequence[str]) -> Ints:
        index = {value: i for i, value in enumerate(among)}
        return np.array([index[value] for value in values], dtype=np.int64)

    def _trap_visits(self, known: Sequence[Haul]) -> Floats:
        """Return how often each trap stood at each spot, (traps, spots)."""
        rows = {trap.label: i for i, trap in enumerate(self._traps)}
        visits = np.zeros((len(self._traps), len(self.spots)))
        columns = {spot: i for i, spot in enumerate(self.spots)}
        for haul in known:
            if haul.trap in rows:
                visits[rows[haul.trap], columns[haul.spot]] += 1
        return visits

    def even_places(self) -> Ints:
        """Return places for all traps, as evenly over the spots as their number allows."""
        places = self._indices(self._places, self.spots)
        return np.sort(np.resize(places, len(self._traps)))

    def last_places(self) -> Ints | None:
        """Return where each trap last stood; None when one has no such spot."""
        last = {haul.trap: haul.spot for haul in self._history if haul.spot}
        spots = [last.get(trap.label, "") for trap in self._traps]
        offered = set(self._places)
        return self._indices(spots, self.spots) if all(s in offered for s in spots) else None

    def moved(self, places: Ints, moved: Mapping[str, str]) -> Ints:
        """Return the places with some traps put elsewhere by the user."""
        offered, changed = set(self._places), places.copy()
        for i, trap in enumerate(self._traps):
            spot = moved.get(trap.label)
            if spot in offered:
                changed[i] = self.spots.index(spot)
        return changed

    def placed(self, places: Ints) -> tuple[Placed, ...]:
        """Return the traps with the spots they go to, in the order of the spots."""
        order = np.lexsort((np.arange(places.size), places))
        traps = self._traps
        return tuple(Placed(traps[i].label, traps[i].design, self.spots[places[i]]) for i in order)

    def efficiency(self, places: Ints) -> float:
        """Return how much the log says after the trip, of the most that it could."""
        return float(self.ideal / self.variances(places[None, :])[0])

    @property
    def ideal(self) -> float:
        """Mean variance of the comparisons if all hauls were in perfect balance."""
        added = np.bincount(self.design, minlength=len(self.designs))
        hauls = self._design_trip.sum(axis=1) + added + _DESIGN_PRIOR
        return float(_mean_pair_variance(np.diag(hauls)[None])[0])

    def variances(self, places: Ints) -> Floats:
        """Return the mean variance of the comparisons after the trip, for layouts (m, traps).

        All m layouts deal the traps over the same places.
        """
        m, traps = places.shape
        designs, spots = len(self.designs), len(self.spots)
        cell = self.design * spots + places
        rows = np.arange(m)[:, None] * designs * spots
        added = np.bincount((rows + cell).ravel(), minlength=m * designs * spots)
        design_spot = self._design_spot + added.reshape(m, designs, spots)
        new_design = np.bincount(self.design, minlength=designs).astype(np.float64)
        # Layouts of one call deal the traps over the same places: each spot's use is the same.
        new_spot = np.bincount(places[0], minlength=spots).astype(np.float64)
        sizes = np.maximum(self._spot_trip.sum(axis=0), 1.0)
        on_designs = np.diag(self._design_trip.sum(axis=1) + new_design)
        on_designs = on_designs - (self._design_trip / sizes) @ self._design_trip.T
        on_designs = on_designs - np.outer(new_design, new_design) / traps + self._tiny
        between = design_spot - (self._design_trip / sizes) @ self._spot_trip.T
        between = between - np.outer(new_design, new_spot) / traps
        on_spots = np.diag(self._spot_trip.sum(axis=1) + new_spot) + self._likeness
        on_spots = on_spots - (self._spot_trip / sizes) @ self._spot_trip.T
        on_spots = on_spots - np.outer(new_spot, new_spot) / traps
        explained = between @ np.linalg.inv(on_spots) @ between.transpose(0, 2, 1)
        return _mean_pair_variance(on_designs - explained)

    def swapped(self, places: Ints, rng: np.random.Generator) -> Ints:
        """Return a layout that no swap of two traps improves, begun from one."""
        ones, others = np.triu_indices(len(self._traps), 1)
        here = places
        value = self.variances(here[None, :])[0]
        while True:
            useful = (self.design[ones] != self.design[others]) & (here[ones] != here[others])
            one, other = ones[useful], others[useful]
            if one.size == 0:
                return here
            tried = np.repeat(here[None, :], one.size, axis=0)
            rows = np.arange(one.size)
            tried[rows, one], tried[rows, other] = here[other], here[one]
            values = self.variances(tried)
            lowest = values.min()
            if not lowest < value * (1 - 1e-9):
                return here
            pick = int(rng.choice(np.flatnonzero(values <= lowest * (1 + 1e-9))))
            here, value = tried[pick], values[pick]

    def rotated(self, places: Ints, rng: np.random.Generator) -> Ints:
        """Return the same layout of designs, each trap at the spot of its design it knows least."""
        from scipy.optimize import linear_sum_assignment

        turned = places.copy()
        for design in range(len(self.designs)):
            members = np.flatnonzero(self.design == design)
            targets = rng.permutation(places[members])
            cost = self._visits[np.ix_(members, targets)]
            rows, columns = linear_sum_assignment(cost + 1e-6 * rng.random(cost.shape))
            turned[members[rows]] = targets[columns]
        return turned


def _counts(rows: Ints, columns: Ints, n_rows: int, n_columns: int) -> Floats:
    counted = np.bincount(rows * n_columns + columns, minlength=n_rows * n_columns)
    table: Floats = counted.reshape(n_rows, n_columns).astype(np.float64)
    return table


def _smooth_precision(n: int) -> Floats:
    """Return the inverse of a covariance that falls off along a row of spots, variance 1."""
    at = np.arange(n)
    covariance = _NEIGHBOUR_LIKENESS ** np.abs(at[:, None] - at[None, :])
    precision: Floats = np.linalg.inv(covariance)
    return precision


def _mean_pair_variance(information: Floats) -> Floats:
    """Return the mean variance over all pairs of designs, (m,), from information (m, d, d)."""
    inverse: Floats = np.linalg.inv(information).astype(np.float64)
    d = information.shape[-1]
    if d == 1:
        return inverse[:, 0, 0]
    trace = np.trace(inverse, axis1=1, axis2=2)
    mean: Floats = 2 * (d * trace - inverse.sum(axis=(1, 2))) / (d * (d - 1))
    return mean


def _sentence(worth: Sequence[tuple[float | None, str]], trips: int, designs: int) -> str:
    if designs < 2:
        return say("One design only: there is nothing to compare, so the traps are dealt by lot.")
    (efficiency, how), *others = worth
    parts = [
        say(
            "After this trip{how} the log tells the designs apart {efficiency:.0%} as well "
            "as so many hauls could at best",
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
