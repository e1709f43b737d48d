"""How fast the tide is, as ratios to other ways on the same machine in the same run.

    python -m tests.benchmarks.tides

A year at one minute from the place file, against UTide's reconstruct, plain numpy and the
bare matrix product; then a year of turns. Every figure is the best of several runs: a shared
machine can only slow one down.
"""

from __future__ import annotations

import os

# Two BLAS threads can stall each other when the other core is busy.
os.environ.setdefault("OMP_NUM_THREADS", "1")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import tracemalloc
from collections.abc import Callable

import numpy as np

from planner.assets import sample_sites
from planner.constituents import find
from planner.sites import Site, load_site
from planner.tides import Tide
from planner.tides.arguments import Constituents
from tests.benchmarks.timing import best

START, STOP = np.datetime64("2026-01-01", "ms"), np.datetime64("2027-01-01", "ms")
MINUTE = np.timedelta64(1, "m")
# UTide's names for constituents that it spells otherwise or has only the like of.
UTIDE_NAMES = {"RHO": "RHO1", "LAM2": "LDA2", "M1": "NO1", "2MK3": "MO3"}


def plain_numpy(site: Site) -> Callable[[], object]:
    """Return the obvious synthesis: one cosine a constituent and minute."""
    constants = site.water.constants
    members = Constituents([find(each.constituent) for each in constants])
    lags = np.array([each.phase_lag_deg for each in constants])
    amplitudes = np.array([each.amplitude_m for each in constants])

    def synthesis() -> object:
        f, argument = members.yearly(2026)
        hours = np.arange((STOP - START) // MINUTE) / 60
        speeds = np.deg2rad(members.speeds_deg_per_h)
        phase = np.deg2rad(argument - lags)
        return site.water.mean_level_m + np.cos(hours[:, None] * speeds + phase) @ (amplitudes * f)

    return synthesis


def utide_reconstruct(tide: Tide, names: list[str]) -> Callable[[], object]:
    """Return UTide's reconstruct of the same year, from constants that it fitted itself."""
    from utide import reconstruct, solve

    times, heights = tide.series(START, STOP, np.timedelta64(1, "h"))
    coefficients = solve(
        times, heights, lat=24.7, constit=[UTIDE_NAMES.get(name, name) for name in names],
        conf_int="none", trend=False, method="ols", verbose=False,
    )  # fmt: skip
    minutes = np.arange(START, STOP, MINUTE)
    return lambda: reconstruct(minutes, coefficients, verbose=False, min_SNR=0)


def raw_product() -> Callable[[], object]:
    """Return the bare matrix product of that size into a result that is already there."""
    rng = np.random.default_rng(1)
    count = int((STOP - START) // MINUTE)
    block = round(np.sqrt(count))
    blocks = count // block
    starts, within = rng.random((blocks, 75)), rng.random((75, block))
    out = np.empty((blocks, block))
    return lambda: np.matmul(starts, within, out=out)


def peak_over_result(tide: Tide) -> float:
    """Return peak memory of a year at one minute, over the size of levels and times."""
    tracemalloc.start()
    times, heights = tide.series(START, STOP, MINUTE)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    return peak / (times.nbytes + heights.nbytes)


def main() -> None:
    """Print every ratio with what is asked of it."""
    path = sample_sites() / "vaca-key-fl.toml"  # none of its 37 constituents is zero
    site = load_site(path)
    tide = Tide(site)
    from_file = best(lambda: Tide(load_site(path)).series(START, STOP, MINUTE), 7)
    from_site = best(lambda: Tide(site).series(START, STOP, MINUTE), 15)
    warm = best(lambda: tide.series(START, STOP, MINUTE), 40)
    turns = best(lambda: Tide(site).turns(START, STOP), 15)
    numpy_s = best(plain_numpy(site), 4)
    product = best(raw_product(), 40)
    utide_s = best(utide_reconstruct(tide, [c.constituent for c in site.water.constants]), 1)
    century = best(lambda: tide.turns(np.datetime64("1950-01-01"), np.datetime64("2050-01-01")), 1)
    lines = (
        ("a year at one minute, from the place file", f"{from_file * 1e3:.1f} ms"),
        ("  the same from a place already read", f"{from_site * 1e3:.1f} ms"),
        ("  asked for again (arguments kept)", f"{warm * 1e3:.2f} ms"),
        ("a year of turns", f"{turns * 1e3:.1f} ms"),
        ("a century of turns", f"{century:.1f} s"),
        ("UTide's reconstruct / from the place file (200 or more)", f"{utide_s / from_file:.0f}"),
        ("plain numpy / from the place file (10 or more)", f"{numpy_s / from_file:.1f}"),
        ("asked for again / bare matrix product (4 or less)", f"{warm / product:.2f}"),
        ("peak memory / result (2 or less)", f"{peak_over_result(Tide(site)):.2f}"),
        ("turns of a year / plain numpy's minutes (0.25 or less)", f"{turns / numpy_s:.3f}"),
    )
    print(f"{len(site.water.constants)} constituents, best of several runs")
    for what, figure in lines:
        print(f"{what:<60} {figure:>10}")


if __name__ == "__main__":
    main()
