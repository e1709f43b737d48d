"""Fixed parameters for tests of the model: one draw, values of the independent simulation."""

from __future__ import annotations

import csv
from pathlib import Path

import numpy as np

from planner.molt.profile import Parameters

REFERENCE = Path(__file__).parents[1] / "reference" / "crab"
LUNATION_D = 29.530589


def fixed(**changed: float) -> Parameters:
    """Return one draw of parameters at the centre of the priors, some of them changed."""
    values = {
        "base_c": 10.0,
        "degree_days": 600.0,
        "molt_above_c": 15.5,
        "ready_per_day": 0.14,
        "molting_share": 1.0,
        "f0": 0.523,  # 0.95 / 1.22^3
        "refill_d": 10.0,
        "q10": 2.5,
        "refused_d": 3.0,
        "light_below": 0.75,
        **changed,
    }
    return Parameters(**{name: np.array([value]) for name, value in values.items()}, steps=11)


def rows(name: str) -> list[dict[str, str]]:
    """Return the rows of a reference table."""
    with (REFERENCE / name).open(encoding="utf-8") as file:
        return list(csv.DictReader(file))
