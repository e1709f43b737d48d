"""How long something takes, where only the ratio to something else counts."""

from __future__ import annotations

import time
from collections.abc import Callable


def best(task: Callable[[], object], runs: int) -> float:
    """Return the shortest of several runs, in seconds."""
    lengths = []
    for _ in range(runs):
        began = time.perf_counter()
        task()
        lengths.append(time.perf_counter() - began)
    return min(lengths)
