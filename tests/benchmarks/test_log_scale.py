"""The log of 100,000 hauls stays quick: the benchmark's bounds, with room for slow machines."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest


@pytest.mark.slow
@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="memory is read from /proc")
def test_a_hundred_thousand_hauls() -> None:
    """Protects the log view from work that grows with the log: whatever reads or sums up all of
    it on the window's thread takes seconds, many times what even a slow machine is given here."""
    run = subprocess.run(
        [sys.executable, "-m", "tests.benchmarks.log_scale", "--patience", "4"],
        cwd=Path(__file__).parents[2], capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert run.returncode == 0, run.stdout + run.stderr
    assert "all within bounds" in run.stdout
