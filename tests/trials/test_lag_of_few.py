"""The average of few lucky counts is mostly too low: by how much, against plain chance."""

from __future__ import annotations

import numpy as np
import pytest

from planner.trials.intervals import lag_of_few


@pytest.mark.parametrize(
    ("hauls", "mean", "k"), [(3, 3.0, 1.0), (4, 3.0, 1.0), (6, 3.0, 2.0), (12, 3.0, 1.0)]
)
def test_lag_is_that_of_the_middle_of_many_averages(hauls: int, mean: float, k: float) -> None:
    """Half of all averages of so many hauls lie below the mean times e to the minus lag."""
    rng = np.random.default_rng(1)
    counts = rng.poisson(mean * rng.gamma(k, 1 / k, (100_000, hauls)))
    # Averages come in steps of one crab: spread over the step, so that the middle is sharp.
    middle = np.median(counts.sum(axis=1) + rng.uniform(-0.5, 0.5, len(counts))) / hauls
    information = np.array([hauls * mean / (1 + mean / k)])
    # 100,000 averages place the middle to 0.005; the rest is what a third leaves out.
    assert lag_of_few(information)[0] == pytest.approx(np.log(mean / middle), abs=0.015)


def test_lag_of_next_to_nothing_is_bounded() -> None:
    """A group that no count speaks of is not lifted out of sight, and many hauls have no lag."""
    assert lag_of_few(np.array([0.0]))[0] == 1.0
    assert lag_of_few(np.array([1e6]))[0] < 1e-6
