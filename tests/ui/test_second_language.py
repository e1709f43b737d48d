"""What the command line says to people is in their language, to the names of columns.

Qt reads the catalogues of other languages; without it the command line speaks English.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys

import pytest

from planner.assets import demo_log


@pytest.mark.parametrize(
    ("words", "own", "english"),
    [
        ("check sedge-hollow", "factores nodales anuales", "yearly"),
        ("dates sedge-hollow --from 2026-02-14 --to 2026-02-14", "época del año", "season|runs"),
        (f"trials --by design --log {demo_log()}", "modelo de nasa", "keepers|design"),
        ("doctor", "bien ", "ok|mind"),
    ],
)
def test_names_of_our_own_are_translated(words: str, own: str, english: str) -> None:
    """Kinds and columns that data have in English stood so in Spanish sentences."""
    ran = subprocess.run(
        [sys.executable, "-m", "planner", *words.split()],
        env={**os.environ, "FULLSHELL_LANGUAGE": "es", "PYTHONIOENCODING": "utf-8"},
        capture_output=True, encoding="utf-8", check=False,
    )  # fmt: skip
    assert own in ran.stdout
    assert re.findall(rf"\b(?:{english})\b", ran.stdout) == []
