"""Honesty in simulated worlds: a short version of tests/benchmarks/trials_worlds.py."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest

SCRIPT = Path(__file__).parents[1] / "benchmarks" / "trials_worlds.py"


@pytest.fixture(scope="module")
def worlds() -> ModuleType:
    """Return the benchmark script as a module."""
    spec = importlib.util.spec_from_file_location("trials_worlds", SCRIPT)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["trials_worlds"] = module
    spec.loader.exec_module(module)
    return module


@pytest.mark.slow
@pytest.mark.parametrize("trips", [1, 4])
def test_false_alarms(worlds: ModuleType, trips: int) -> None:
    """Alike designs are told apart in at most 5% of logs, plus twice the error of the share."""
    runs = 100
    shares = [
        worlds.share_of_alarms(
            worlds.World(trips, k=k, spot_sd=0.5), runs, seed=31 * trips + int(k)
        )
        for k in (1.0, 2.0, 5.0)
    ]
    share = sum(shares) / len(shares)
    assert share <= 0.05 + 2 * worlds.error_of_share(0.05, 3 * runs)


@pytest.mark.slow
@pytest.mark.parametrize("design_sd", [0.0, 0.3])
def test_intervals_cover(worlds: ModuleType, design_sd: float) -> None:
    """80% intervals hold the truth in 75-85% of cases, designs alike or not, as 60 worlds show."""
    share = worlds.coverage(worlds.World(3, design_sd=design_sd), 60, seed=4)
    assert 0.75 - 0.06 <= share <= 0.85 + 0.06


@pytest.mark.slow
def test_power(worlds: ModuleType) -> None:
    """At least nine tenths of the power of permuting raw counts, on the same logs."""
    ours, plain = worlds.powers(worlds.World(8, ratio=1.7, spot_sd=0.3), 100, seed=5)
    assert plain > 0.3
    assert ours >= 0.9 * plain
