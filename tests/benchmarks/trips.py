"""How fast the search for plans is, as a ratio on the same machine in the same run.

    python -m tests.benchmarks.trips

A year ahead at the demo place with ten spots, against the outlook of the same year that the
plans are ranked on. The figures are the best of several runs, the sky computed once before.
"""

from __future__ import annotations

import os

# Two BLAS threads can stall each other when the other core is busy.
os.environ.setdefault("OMP_NUM_THREADS", "1")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

from dataclasses import replace
from datetime import date

from planner.assets import demo_place
from planner.sites import Site, load_site
from planner.sites.site import Spot
from planner.trips import outlook, plan_trips
from tests.benchmarks.timing import best

FIRST, LAST = date(2026, 1, 1), date(2026, 12, 31)


def ten_spots() -> Site:
    """Return the demo place with ten invented spots."""
    spots = tuple(Spot(f"spot {n}", 1.1 + 0.3 * n, 0.35) for n in range(10))
    return replace(load_site(demo_place()), spots=spots)


def main() -> None:
    """Print the ratio."""
    site = ten_spots()
    year = outlook(site, FIRST, LAST)
    plans = best(lambda: plan_trips(year), 5)
    days = best(lambda: outlook(site, FIRST, LAST), 3)
    print(f"plans of a year, ten spots: {plans * 1000:.0f} ms")
    print(f"of the time its outlook takes: {plans / days:.2f}")


if __name__ == "__main__":
    main()
