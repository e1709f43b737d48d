"""The page on sun and moon says what the tests find."""

from __future__ import annotations

import re

import pytest
from sky_figures import LIMIT_S, PAGE, figures, page

NUMBER = re.compile(r"\d+(?:\.\d+)?")


def test_the_page_is_that_of_the_figures() -> None:
    """Word for word, and each number to a tenth: a slip or a gain shows at once."""
    written, fresh = PAGE.read_text(encoding="utf-8"), page()
    assert NUMBER.sub("#", written) == NUMBER.sub("#", fresh)
    for was, now in zip(NUMBER.findall(written), NUMBER.findall(fresh), strict=True):
        # Another processor may round the last digit printed the other way.
        assert float(was) == pytest.approx(float(now), abs=0.1001)


def test_no_figure_is_over_its_limit() -> None:
    """The page cannot print what the exam would not pass."""
    for name, times in figures().items():
        assert max(max(apart) for apart in times) < LIMIT_S, name
