"""`fullshell plans --why`: what stands in the way of a day, and what it lacks."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

SPAN = "--from 2026-08-14 --to 2026-08-23"
Run = Callable[..., Any]


def test_a_day_is_explained_in_words_and_in_json(run: Run) -> None:
    """The day's own sentences stand before the plans, and alike in JSON."""
    told = run(f"plans sedge-hollow {SPAN} --why 2026-08-18 --format json").data["why"]
    assert told["date"] == "2026-08-18"
    assert len(told["texts"]) == 2
    assert all("18 Aug" in text for text in told["texts"])
    lines = run(f"plans sedge-hollow {SPAN} --why 2026-08-18").out.splitlines()
    assert lines[:2] == told["texts"]
    assert "why" not in run(f"plans sedge-hollow {SPAN} --format json").data


@pytest.mark.parametrize(
    ("words", "remedy"),
    [
        ("--why 2026-09-01", "--from and --to around it"),
        ("--why 2026-08-18 --format csv", "--format text or json"),
        ("--why tomorrow", "2026-08-14"),
    ],
)
def test_a_day_that_cannot_be_explained_is_refused(run: Run, words: str, remedy: str) -> None:
    """A wrong day is the command line's fault: status 2 and what to write instead."""
    ran = run(f"plans sedge-hollow {SPAN} {words}")
    assert ran.status == 2
    assert not ran.out
    assert remedy in ran.err
