"""Looking at the raw tables of a file, where any value may be of any type."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from typing import Any

from planner.errors import Problem
from planner.units import LengthUnit, metres_from
from planner.words import say


def table_in(value: Any) -> Mapping[str, Any]:
    """Return a table, an empty one for anything else."""
    return value if isinstance(value, dict) else {}


def tables_in(value: Any) -> list[Mapping[str, Any]]:
    """Return the tables of a list, none for anything else."""
    return [table_in(entry) for entry in value] if isinstance(value, list) else []


def number_in(value: Any) -> float | None:
    """Return a finite number, None for anything else."""
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return None
    try:
        number = float(value)
    except OverflowError:
        return None
    return number if math.isfinite(number) else None


def level_problem(
    where: str, value: Any, unit: LengthUnit, bounds_m: tuple[float, float], what: str
) -> Iterator[Problem]:
    """Yield a problem when a height is outside what is possible, in the unit of the file."""
    number = number_in(value)
    if number is None:
        return
    height_m = metres_from(number, unit)
    if not bounds_m[0] <= height_m <= bounds_m[1]:
        yield Problem(
            where,
            f"{number:g} {unit}",
            say("{what} cannot be {height_m:.2f} m", what=what, height_m=height_m),
            say(
                "give {low:g} to {high:g} m, or correct water.units",
                low=bounds_m[0],
                high=bounds_m[1],
            ),
        )
