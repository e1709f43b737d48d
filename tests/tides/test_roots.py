"""The event search on functions small enough to solve by hand."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.estimates import Floats
from planner.tides.roots import Evaluation, find_roots

GRID = np.arange(0, 1001, 100)


def _polynomial(*coefficients: float) -> tuple[Floats, Floats, object]:
    line = np.polynomial.Polynomial(coefficients)

    def evaluate(x: Floats) -> Evaluation:
        return Evaluation(line(x), line.deriv(1)(x), line.deriv(2)(x))

    at = evaluate(GRID.astype(float))
    return at.value, at.slope, evaluate


def _roots(*coefficients: float) -> tuple[Floats, list[bool]]:
    values, slopes, evaluate = _polynomial(*coefficients)
    roots, rising = find_roots(GRID, values, slopes, evaluate, tolerance=1e-6)  # type: ignore[arg-type]
    return roots, rising.tolist()


def test_a_straight_line_has_one_root() -> None:
    """Rising and falling are told apart."""
    roots, rising = _roots(-250.0, 1.0)
    assert roots == pytest.approx([250.0])
    assert rising == [True]
    assert _roots(250.0, -1.0)[1] == [False]


def test_two_roots_within_a_cell_are_found_by_their_dip() -> None:
    """(x - 430)(x - 470): positive on the grid, negative between 430 and 470."""
    roots, rising = _roots(430.0 * 470.0, -900.0, 1.0)
    assert roots == pytest.approx([430.0, 470.0])
    assert rising == [False, True]


def test_a_dip_that_does_not_reach_is_none() -> None:
    """A bottom above zero is no root, nor is one that only touches."""
    assert len(_roots(430.0 * 470.0 + 401.0, -900.0, 1.0)[0]) == 0
    assert len(_roots(450.0**2, -900.0, 1.0)[0]) == 0


def test_nothing_gives_empty_arrays() -> None:
    """A constant, zero included, and an empty grid have no roots."""
    for constant in (0.0, 1.0, -1.0):
        roots, rising = _roots(constant)
        assert roots.shape == (0,)
        assert rising == []


@given(st.lists(st.floats(1, 999), min_size=1, max_size=5, unique=True))
def test_roots_of_a_product_are_its_factors(factors: list[float]) -> None:
    """Well-parted roots come back in order, with alternating directions."""
    factors = sorted(factors)
    if min(np.diff(factors), default=1000.0) < 120:
        return
    coefficients = np.polynomial.polynomial.polyfromroots([f / 1000 for f in factors])
    scaled = [c / 1000**power for power, c in enumerate(coefficients)]
    roots, rising = _roots(*scaled)
    assert roots == pytest.approx(factors, abs=0.01)
    assert rising == [(len(factors) - index) % 2 == 1 for index in range(len(factors))]
