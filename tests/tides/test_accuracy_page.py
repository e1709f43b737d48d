"""The accuracy page says what the tests find."""

from __future__ import annotations

import re

import pytest
from accuracy_examples import (
    arguments_at_instants,
    dutch_turns,
    highest_tides,
    honolulu_fit,
    offset_examples,
)
from accuracy_figures import (
    PAGE,
    computed_heights,
    node_factors,
    official_heights,
    page,
    turn_times,
)
from accuracy_table import Figure

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
@pytest.mark.parametrize(
    "figures",
    [
        official_heights,
        computed_heights,
        turn_times,
        node_factors,
        highest_tides,
        dutch_turns,
        arguments_at_instants,
        offset_examples,
        honolulu_fit,
    ],
)
def test_no_figure_on_the_page_is_over_its_limit(figures: object) -> None:
    """The page cannot print what the exam would not pass."""
    for figure in figures():  # type: ignore[operator]
        assert isinstance(figure, Figure)
        assert figure.ours <= figure.limit, figure


def test_every_unrepaired_library_is_further_off() -> None:
    """UTide and pyTMD, fed an agency's constants, miss its predictions by centimetres."""
    figures = [figure for figure in official_heights() if figure.utide is not None]
    assert len(figures) == 7
    for figure in figures:
        for theirs in (figure.utide, figure.pytmd):
            assert theirs is not None
            assert theirs > 3 * figure.ours
