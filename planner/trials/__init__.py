"""Trap trials: did it really catch more, how sure is that, and what to try next."""

from __future__ import annotations

from planner.trials.comparing import compare
from planner.trials.grouping import GROUPINGS, MEASURES
from planner.trials.layout import Layout, layout, next_layout
from planner.trials.layout_problem import Placed, Trap
from planner.trials.settle_text import settle_texts
from planner.trials.settling import next_trip_days, trip_days
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
    "GROUPINGS",
    "MEASURES",
    "Caution",
    "Contrast",
    "Dispersion",
    "Group",
    "Layout",
    "Placed",
    "Test",
    "ToSettle",
    "Trap",
    "Trial",
    "Verdict",
    "compare",
    "layout",
    "next_layout",
    "next_trip_days",
    "settle_texts",
    "trip_days",
]
