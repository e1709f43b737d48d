"""One line of the accuracy page, and tables of them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.estimates import Floats


@dataclass(frozen=True)
class Figure:
    """A largest difference, what it may be, and what libraries as they come make of the same."""

    what: str
    source: str
    unit: str
    ours: float
    limit: float
    utide: float | None = None
    pytmd: float | None = None


def worst_mm(apart_m: Floats) -> float:
    """Return the largest difference in mm."""
    return float(np.abs(apart_m).max() * 1000)


def turned(apart_deg: float) -> float:
    """Return how far two angles are apart, in degrees."""
    return abs((apart_deg + 180) % 360 - 180)


def table(figures: list[Figure], *, libraries: bool = False) -> list[str]:
    """Return the lines of a table, with columns for UTide and pyTMD where they were tried."""
    head = "| compared with | largest difference | asked for |"
    line = "|---|---:|---:|"
    if libraries:
        head, line = f"{head} UTide as it comes | pyTMD as it comes |", f"{line}---:|---:|"
    out = [head, line]
    for each in figures:
        cells = f"| {each.what} ({each.source}) | {each.ours:.1f} {each.unit} | {each.limit:.3g} |"
        if libraries:
            for theirs in (each.utide, each.pytmd):
                cells += f" {theirs:.0f} {each.unit} |" if theirs is not None else " |"
        out.append(cells)
    return out
