"""What is said: unchanged in English; in another language by its words, numbers and dates."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime

import pytest

from planner.words import Language, counted, names_of_days_and_months, say, speak, spoken

TEXTS = {
    ("{n:,} crabs of {share:.1%}", ""): "{share:.1%} de {n:,} cangrejos",
    ("light", ""): "vacío",
    ("light", "daylight"): "luz",
    ("trap", ""): "nasa",
    ("traps", ""): "nasas",
    ("Fri", "short day"): "vie",
    ("Aug", "short month"): "ago",
    ("May", "month"): "mayo",
    ("May", "short month"): "may",
    ("{at:%a} {at.day} {at:%b}", ""): "{at:%a} {at.day} de {at:%b}",
}


@pytest.fixture
def another() -> Iterator[None]:
    speak(Language("xx", lambda text, sense: TEXTS.get((text, sense), ""), ",", ".", "\u00a0%"))
    yield
    speak(None)


def test_english_is_what_the_code_says() -> None:
    """Without another language nothing changes, and braces without values are only braces."""
    assert spoken() == "en"
    assert say("{n:,} crabs of {share:.1%}", n=1200, share=0.125) == "1,200 crabs of 12.5%"
    assert (
        say("lines such as M2 = { amplitude = 0.21 }") == "lines such as M2 = { amplitude = 0.21 }"
    )
    assert [counted(n, "trap") for n in (0, 1, 2)] == ["0 traps", "1 trap", "2 traps"]
    assert counted(2, "catch", "catches") == "2 catches"


@pytest.mark.usefixtures("another")
def test_numbers_and_order_follow_the_language() -> None:
    """Signs of numbers are swapped at once: a point that becomes a comma must stay one."""
    said = say("{n:,} crabs of {share:.1%}", n=1200, share=0.125)
    assert said == "12,5\u00a0% de 1.200 cangrejos"


@pytest.mark.usefixtures("another")
def test_texts_given_as_values_keep_their_signs() -> None:
    """A file name or a sentence put into another is not a number."""
    assert say("{name}: {n}", name="log 1.csv", n=1.5) == "log 1.csv: 1,5"


@pytest.mark.usefixtures("another")
def test_a_sense_tells_equal_words_apart() -> None:
    assert (say("light"), say("light", sense="daylight")) == ("vacío", "luz")


@pytest.mark.usefixtures("another")
def test_days_and_months_are_named_in_the_language() -> None:
    """Also "May", which is short and long at once, and times beside them."""
    at = datetime(2026, 8, 14, 6, 40, tzinfo=UTC)
    assert say("{at:%a} {at.day} {at:%b}", at=at) == "vie 14 de ago"
    may = date(2026, 5, 1)
    assert say("{may:%B}/{may:%b} {at:%H:%M}", may=may, at=at) == "mayo/may 06:40"


@pytest.mark.usefixtures("another")
def test_what_has_no_translation_is_said_in_english() -> None:
    assert say("keepers") == "keepers"
    assert counted(3, "trap") == "3 nasas"
    assert counted(2, "crab") == "2 crabs"


def test_every_name_of_a_day_and_month_is_asked_of_a_language() -> None:
    names = names_of_days_and_months()
    assert len(names) == len(set(names)) == 7 + 7 + 12 + 12
    assert {("Tue", "short day"), ("Thursday", "day"), ("May", "month")} <= set(names)
