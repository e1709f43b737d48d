"""Tables of any make taken into the log: what they say, shown before anything is taken."""

from __future__ import annotations

from planner.intake.grid import Grid, Line, read_grid
from planner.intake.mapping import Mapping, Question
from planner.intake.plan import Intake, plan_intake
from planner.intake.remembering import recall, remember
from planner.intake.understanding import understand

__all__ = [
    "Grid",
    "Intake",
    "Line",
    "Mapping",
    "Question",
    "plan_intake",
    "read_grid",
    "recall",
    "remember",
    "understand",
]
