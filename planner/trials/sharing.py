"""Can the log tell groups apart at all? Groups that never met leave nothing to compare.

Two groups are compared where they meet: in the same trip, at the same spot. What is left of
the comparison once trips and spots are taken out, against hauls dealt in perfect balance, is
the efficiency of the layout: 1 is ideal, 0 means that group and block are one and the same.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.trials.grouping import Bools, Ints, Observations

# Below a tenth, ten hauls tell what one would.
_TOO_LITTLE: Final = 0.1
# Groups of fewer hauls may miss each other's spots by chance.
_ENOUGH_TO_MEET: Final = 12


@dataclass(frozen=True)
class Sharing:
    """Pairs of groups (indices) that cannot be told from their trips, or from their spots."""

    by_trip: tuple[tuple[int, int], ...]
    by_block: tuple[tuple[int, int], ...]

    @property
    def confounded(self) -> tuple[tuple[int, int], ...]:
        """All pairs that cannot be told apart."""
        return tuple(dict.fromkeys(self.by_trip + self.by_block))


def find_sharing(seen: Observations, judged: Bools) -> Sharing:
    """Return which pairs of judged groups the log cannot compare; judged: bool (groups,)."""
    if np.count_nonzero(judged) < 2:
        return Sharing((), ())
    hauls = seen.per_group()
    trips = _table(seen.group, seen.trip, seen.groups)
    spot = seen.blocks.get("spot")
    has_spots = spot is not None and spot.size > 0 and np.ptp(spot) > 0
    spots = _table(seen.group, spot, seen.groups) if has_spots and spot is not None else None
    efficiency = pair_efficiency(seen)
    by_trip, by_block = [], []
    pairs = [(i, j) for i in range(seen.groups) for j in range(i) if judged[i] and judged[j]]
    for i, j in pairs:
        if not np.any((trips[i] > 0) & (trips[j] > 0)):
            by_trip.append((j, i))
            continue
        if spots is None:
            continue
        apart = not np.any((spots[i] > 0) & (spots[j] > 0))
        if (apart and min(hauls[i], hauls[j]) >= _ENOUGH_TO_MEET) or efficiency[i, j] < _TOO_LITTLE:
            by_block.append((j, i))
    return Sharing(tuple(by_trip), tuple(by_block))


def pair_efficiency(seen: Observations) -> Floats:
    """Return how much of each pair's comparison is left once blocks are out, (groups, groups)."""
    hauls = seen.per_group()
    blocks = [block for block in seen.blocks.values() if block.size and np.ptp(block) > 0]
    # Groups, trips and blocks by their tables of counts: nothing grows with the hauls.
    sizes = np.bincount(seen.trip).astype(np.float64)
    members = _table(seen.group, seen.trip, seen.groups)
    information = np.diag(hauls) - (members / sizes) @ members.T
    if blocks:
        levels = [int(block.max()) + 1 for block in blocks]
        starts = np.cumsum([0, *levels[:-1]])
        width = sum(levels)
        at_group = np.hstack([_table(seen.group, b, seen.groups) for b in blocks])
        at_trip = np.hstack([_table(seen.trip, b, seen.trips) for b in blocks])
        own = np.zeros((width, width))
        for i, one in enumerate(blocks):
            for j, other in enumerate(blocks):
                place = np.s_[starts[i] : starts[i] + levels[i], starts[j] : starts[j] + levels[j]]
                own[place] = _table(one, other, levels[i])
        adjusted = own - (at_trip / sizes[:, None]).T @ at_trip
        between = at_group - (members / sizes) @ at_trip
        information = information - between @ np.linalg.pinv(adjusted, hermitian=True) @ between.T
    with np.errstate(divide="ignore"):
        ideal = 1 / hauls[:, None] + 1 / hauls[None, :]
    # A tiny ridge stands for "known to within anything": it keeps pairs apart finite.
    ridge = 1e-6 * max(float(hauls.max(initial=1.0)), 1.0)
    inverse = np.linalg.inv(information + ridge * np.eye(seen.groups))
    variance = np.diag(inverse)[:, None] + np.diag(inverse)[None, :] - 2 * inverse
    with np.errstate(divide="ignore", invalid="ignore"):
        efficiency: Floats = np.where(variance > 0, ideal / variance, 1.0)
    return efficiency


def _table(rows: Ints, columns: Ints, n_rows: int) -> Floats:
    """Return how often each row index meets each column index, (n_rows, n_columns)."""
    n_columns = int(columns.max()) + 1
    counted = np.bincount(rows * n_columns + columns, minlength=n_rows * n_columns)
    table: Floats = counted.reshape(n_rows, n_columns).astype(np.float64)
    return table
