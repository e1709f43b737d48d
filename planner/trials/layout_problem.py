"""The next trip's layout as a problem of linear algebra: what each dealing of traps is worth."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.logbook import Haul
from planner.trials.grouping import Ints

# Information that stands for what is believed before any haul, against 1 for a haul. Spots are
# nearly free to differ (blocks); neighbours are alike, so that designs are also interleaved.
_SPOT_PRIOR: Final = 0.05
_NEIGHBOUR_LIKENESS: Final = 0.5
# Keeps designs that were never compared finitely far apart.
_DESIGN_PRIOR: Final = 0.02
# Swaps looked at for one step, times traps: with more than 70 traps not every one is.
_SWAPS_TIMES_TRAPS: Final = 170_000


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


class LayoutProblem:
    """History reduced to tables of counts; only the next trip's table changes in the search."""

    def __init__(
        self, traps: Sequence[Trap], spots: Sequence[str], history: Sequence[Haul]
    ) -> None:
        self._traps = traps
        self._history = history
        self._places = list(spots)
        known = [haul for haul in history if haul.spot and haul.design]
        self.spots = _different([*spots, *(haul.spot for haul in known)])
        aboard = _different([trap.design for trap in traps])
        # Named designs aboard are compared; the others tell what the spots are worth.
        self.compared = len([design for design in aboard if design]) or 1
        aboard.sort(key=lambda design: not design)
        self.designs = _different([*aboard, *(haul.design for haul in known)])
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
        index = {_key(value): i for i, value in enumerate(among)}
        return np.array([index.get(_key(value), -1) for value in values], dtype=np.int64)

    def _trap_visits(self, known: Sequence[Haul]) -> Floats:
        """Return how often each trap stood at each spot, (traps, spots)."""
        rows = {trap.label: i for i, trap in enumerate(self._traps)}
        visits = np.zeros((len(self._traps), len(self.spots)))
        at_spot = self._indices([haul.spot for haul in known], self.spots)
        for haul, column in zip(known, at_spot, strict=True):
            if haul.trap in rows:
                visits[rows[haul.trap], column] += 1
        return visits

    def even_places(self) -> Ints:
        """Return places for all traps, as evenly over the spots as their number allows."""
        places = self._indices(self._places, self.spots)
        return np.sort(np.resize(places, len(self._traps)))

    def last_places(self) -> Ints | None:
        """Return where each trap last stood; None when one has no such spot."""
        last = {haul.trap: haul.spot for haul in self._history if haul.spot}
        spots = self._indices([last.get(trap.label, "") for trap in self._traps], self.spots)
        offered = self._indices(self._places, self.spots)
        return spots if np.isin(spots, offered).all() else None

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
        return float(_mean_pair_variance(np.diag(hauls)[None], self.compared)[0])

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
        return _mean_pair_variance(on_designs - explained, self.compared)

    def swapped(self, places: Ints, rng: np.random.Generator) -> Ints:
        """Return a layout that no swap of two traps improves, begun from one.

        Of very many swaps some are tried at each step, chosen by lot.
        """
        ones, others = np.triu_indices(len(self._traps), 1)
        most = max(1, _SWAPS_TIMES_TRAPS // len(self._traps))
        here = places
        value = self.variances(here[None, :])[0]
        while True:
            useful = (self.design[ones] != self.design[others]) & (here[ones] != here[others])
            pairs = np.flatnonzero(useful)
            if pairs.size == 0:
                return here
            if pairs.size > most:
                pairs = rng.choice(pairs, most, replace=False)
            one, other = ones[pairs], others[pairs]
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


def _key(name: str) -> str:
    """Return what a name is known by: capitals and blanks make no other design or spot."""
    return name.strip().casefold()


def _different(names: Sequence[str]) -> list[str]:
    """Return the different names as first written, in their order."""
    found: dict[str, str] = {}
    for name in names:
        found.setdefault(_key(name), name)
    return list(found.values())


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


def _mean_pair_variance(information: Floats, d: int) -> Floats:
    """Return the mean variance over all pairs of the first d designs, (m,).

    information: (m, designs, designs).
    """
    inverse: Floats = np.linalg.inv(information).astype(np.float64)[:, :d, :d]
    if d == 1:
        return inverse[:, 0, 0]
    trace = np.trace(inverse, axis1=1, axis2=2)
    mean: Floats = 2 * (d * trace - inverse.sum(axis=(1, 2))) / (d * (d - 1))
    return mean
