"""Place files on disk for the tests of places."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from planner.sites import SiteError, load_site

Write = Callable[..., Path]


@pytest.fixture
def write(tmp_path: Path) -> Write:
    """Write a place file and return its path."""

    def write_text(text: str, name: str = "otter-bight.toml") -> Path:
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return path

    return write_text


@pytest.fixture
def refusals(write: Write) -> Callable[[str], dict[str, str]]:
    """Load a place text that must be refused; return {field: message}."""

    def load(text: str) -> dict[str, str]:
        with pytest.raises(SiteError) as caught:
            load_site(write(text))
        return {problem.where: str(problem) for problem in caught.value.problems}

    return load
