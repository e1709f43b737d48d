"""Trap trials: did it really catch more, how sure is that, and what to try next."""

from __future__ import annotations

from planner.trials.comparing import compare
from planner.trials.trial import (
    Caution,
    Contrast,
    Dispersion,
    Group,
    Test,
    ToSettle,
    Trial,
    Verdict,
)

__all__ = [
    "Caution",
    "Contrast",
    "Dispersion",
    "Group",
    "Test",
    "ToSettle",
    "Trial",
    "Verdict",
    "compare",
]
