"""A phone for the tests: a headless browser of its size, cut off from every network."""

from __future__ import annotations

import shutil
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
import machine

SCREEN = {"width": 390, "height": 844}


def browser_path() -> str:
    """Return the browser that is here and can be driven; else the tests are left out, with why."""
    if sys.platform.startswith("linux") and (
        lacking := machine.missing_libraries(machine.TO_DRIVE)
    ):
        pytest.skip(
            f"the browser cannot be driven without {lacking[0].file} (Debian: {lacking[0].apt}), "
            "and packaging/check.py could not fetch it"
        )
    found = [path for name in machine.BROWSERS if (path := shutil.which(name))]
    if found:
        return found[0]
    pytest.skip(
        f"no browser is here (looked for {', '.join(machine.BROWSERS)}), and packaging/check.py "
        "found none to fetch"
    )


@contextmanager
def phones() -> Iterator[Callable[..., Any]]:
    """Give a maker of phones in flight mode, each with nothing kept in its browser."""
    from playwright.sync_api import sync_playwright

    executable = browser_path()
    with sync_playwright() as playwright:
        # Root, as in a container, cannot use the browser's sandbox; the page is our own.
        browser = playwright.chromium.launch(executable_path=executable, args=["--no-sandbox"])
        usual = {"viewport": SCREEN, "has_touch": True, "is_mobile": True, "offline": True}
        try:
            yield lambda **options: browser.new_context(**{**usual, **options})
        finally:
            browser.close()
