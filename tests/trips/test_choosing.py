"""Which windows are named, by hand: what counts as equal, and when comfort decides."""

from __future__ import annotations

import numpy as np

from planner.trips.candidates import Ints
from planner.trips.choosing import Windows, best_of_each, fold


def indices(*values: int) -> Ints:
    return np.array(values, dtype=np.int64)


def windows(sets: Ints, hauls: Ints, runs: Ints) -> Windows:
    return Windows(sets, sets, hauls, runs)


def test_within_a_twentieth_of_the_best_comfort_chooses() -> None:
    """One run of sets, hauls of one day: 9.6 crabs in comfort beat 10, 9.4 in more comfort do not.

    Another haul day is a group of its own and ranks by its own worth.
    """
    made = windows(indices(0, 0, 0, 0), indices(50, 51, 52, 150), indices(0, 0, 0, 0))
    days = np.arange(200) // 96
    best = best_of_each(made, np.array([10.0, 9.6, 9.4, 9.7]), np.array([0.0, 1.0, 2.0, 0.0]), days)
    assert best.tolist() == [3, 1]


def test_plans_that_read_alike_are_ranked_by_comfort() -> None:
    """10.04 and 9.96 crabs are both ten to the tenth that is shown; a tenth more goes first."""
    made = windows(indices(0, 10, 20), indices(50, 50, 50), indices(0, 1, 2))
    days = np.zeros(60, dtype=np.int64)
    best = best_of_each(made, np.array([10.04, 9.96, 10.16]), np.array([0.0, 1.0, 0.0]), days)
    assert best.tolist() == [2, 1, 0]


def test_a_soak_a_quarter_longer_is_another_plan() -> None:
    """Between the same two days 15 h stand beside 12 h; a quarter of an hour less is the same."""
    quarters = 4 * np.array([12, 15, 15])
    made = windows(indices(40, 28, 29), indices(40, 28, 28) + quarters, indices(0, 1, 2))
    days = np.arange(200) // 96
    assert fold(made, indices(0, 1, 2), days, 9).tolist() == [0, 1]
    assert fold(made, indices(0, 2, 1), days, 9).tolist() == [0, 1]
    assert fold(made, indices(0, 1, 2), days, 1).tolist() == [0]
