"""Running commands in the process of the test."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import pytest

from planner.cli import main


@dataclass(frozen=True)
class Ran:
    """What one command left behind."""

    status: int
    out: str
    err: str

    @property
    def data(self) -> Any:
        """Return the output read as JSON."""
        return json.loads(self.out)


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]) -> Callable[..., Ran]:
    """Run a command line; words may be given in one string."""

    def run_words(words: str, *more: str) -> Ran:
        status = main([*words.split(), *more])
        captured = capsys.readouterr()
        return Ran(status, captured.out, captured.err)

    return run_words
