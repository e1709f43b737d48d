"""The accuracy page says what the tests find."""

from __future__ import annotations

import re

import pytest
from accuracy_figures import (
    PAGE,
    Figure,
    computed_heights,
    node_factors,
    official_heights,
    page,
    turn_times,
)

NUMBER = re.compile(r"-?\d+(?:\.\d+)?")


@pytest.mark.slow
def test_the_page_is_that_of_the_figures() -> None:
    """Word for word, and each number to its last digit: a slip or a gain shows at once."""
    written, fresh = PAGE.read_text(encoding="utf-8"), page()
    assert NUMBER.sub("#", written) == NUMBER.sub("#", fresh)
    for was, now in zip(NUMBER.findall(written), NUMBER.findall(fresh), strict=True):
        # Another processor may round the last digit printed the other way.
        assert float(was) == pytest.approx(float(now), abs=1.001 if "." not in was else 0.1001)


@pytest.mark.slow
@pytest.mark.parametrize("figures", [official_heights, computed_heights, turn_times, node_factors])
def test_no_figure_on_the_page_is_over_its_limit(figures: object) -> None:
    """The page cannot print what the exam would not pass."""
    for figure in figures():  # type: ignore[operator]
        assert isinstance(figure, Figure)
        assert figure.ours <= figure.limit, figure


def test_every_unrepaired_library_is_further_off() -> None:
    """UTide with an agency's constants misses its predictions by centimetres, ours by none."""
    figures = [figure for figure in official_heights() if figure.utide is not None]
    assert len(figures) == 7
    for figure in figures:
        assert figure.utide is not None
        assert figure.utide > 3 * figure.ours
