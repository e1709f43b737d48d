"""Numbers and ranges in each language, and in the fields of a place."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.phrasing import Style, height_text, numbers_text, temperature_text
from planner.sites.editing import number_or_text
from planner.ui.language_choice import codes
from planner.ui.languages import use
from planner.ui.places.edit_section import text_of
from planner.words import say, speak


@pytest.fixture(params=codes())
def language(request: pytest.FixtureRequest) -> Iterator[str]:
    use(request.param)
    yield request.param
    speak(None)


def test_each_language_joins_as_its_readers_do(language: str) -> None:
    """English with an en dash. Spanish with a hyphen: Ortografía de la lengua española (RAE,
    2010), III 4.1.1.3.1: "las páginas 23-45"; with a word where the percent sign stands off."""
    expected = {
        "en": ("9–20", "20%–49%", "−2 to 3"),
        "es": ("9-20", "20\u00a0% a 49\u00a0%", "−2 a 3"),
    }[language]
    assert (numbers_text(9, 20), numbers_text(0.2, 0.49, ".0%"), numbers_text(-2, 3)) == expected


def test_heights_and_degrees_below_zero_have_a_minus(language: str) -> None:
    comma = "," if language == "es" else "."
    assert height_text(-0.2, Style()) == f"−0{comma}20 m"
    assert height_text(-0.01, Style()) == f"0{comma}00 m"
    assert temperature_text(-1.6, Style()) == "−2 °C"
    assert say("{minutes:+d} min", minutes=-5) == "−5 min"


@given(value=st.floats(-30, 40).map(lambda value: round(value, 2)))
def test_a_field_is_read_as_it_was_filled(value: float) -> None:
    """What a field shows of a place file is what it writes there again, signs and all."""
    for number in (value, round(value)):
        assert number_or_text(text_of(number)) == number
