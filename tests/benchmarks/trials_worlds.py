"""Prints how honest the trap trials are in simulated worlds: run it from a checkout.

    python -m tests.benchmarks.trials_worlds [WORLDS] [alarms|coverage|power|hauls]

Each world has traps of several designs dealt at random over spots, trips that differ, spots
that differ, and overdispersed counts. False alarms are tests with p <= 0.05 where designs do
not differ. Coverage is the share of the groups' 80% intervals that hold the true rate of their
design: what a haul would give on average over the very trips and spots of the log, at its
soak. Power is compared with a plain permutation of the raw counts within trips; and the hauls
that are said to settle a difference are tried for how often they do.
"""

from __future__ import annotations

import math
import sys
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.logbook import Haul
from planner.trials import compare
from planner.trials.grouping import observations
from planner.trials.permutation import test_groups as permutation_test
from planner.trials.settling import hauls_for

SPOTS = 6
MEAN = 3.0


@dataclass(frozen=True)
class World:
    """How hauls come about; sds on the log scale. ratio: the first design's over the others."""

    trips: int
    k: float = 2.0
    ratio: float = 1.0
    design_sd: float = 0.0
    designs: int = 3
    traps: int = 12
    trip_sd: float = 0.4
    spot_sd: float = 0.3

    def play(self, rng: np.random.Generator) -> tuple[list[Haul], dict[str, float]]:
        """Return the hauls of one log, and each design's true rate over that log."""
        names = [chr(ord("A") + i) for i in range(self.designs)]
        effect = rng.normal(0, self.design_sd, self.designs)
        effect[0] += np.log(self.ratio)
        spot_effect = rng.normal(0, self.spot_sd, SPOTS)
        hauls: list[Haul] = []
        elsewhere: list[float] = []
        for trip in range(self.trips):
            trip_effect = rng.normal(0, self.trip_sd)
            for trap, design in enumerate(rng.permutation(np.arange(self.traps) % self.designs)):
                spot = trap * SPOTS // self.traps
                around = spot_effect[spot] + trip_effect
                mean = MEAN * np.exp(effect[design] + around)
                count = int(rng.poisson(mean * rng.gamma(self.k, 1 / self.k)))
                elsewhere.append(around)
                hauls.append(
                    Haul(
                        f"trip {trip:03d}",
                        "invented",
                        spot=f"spot {spot}",
                        design=names[design],
                        keepers=count,
                    )
                )
        level = MEAN * float(np.mean(np.exp(elsewhere)))
        truth = {name: level * float(np.exp(effect[i])) for i, name in enumerate(names)}
        return hauls, truth


def p_value(hauls: list[Haul], seed: int) -> float:
    """Return the p of the program's test; 1 where it can not test."""
    seen = observations(hauls, "design", "keepers")
    judged = np.ones(seen.groups, dtype=bool)
    p = permutation_test(seen, judged, np.random.default_rng(seed)).p
    return 1.0 if p is None else p


def plain_p_value(hauls: list[Haul], seed: int, deals: int = 999) -> float:
    """Return the p of permuting the raw counts within trips, by the spread of design totals."""
    rng = np.random.default_rng(seed)
    trips = np.unique([haul.trip for haul in hauls], return_inverse=True)[1]
    designs = np.unique([haul.design for haul in hauls], return_inverse=True)[1]
    counts = np.array([haul.keepers for haul in hauls], dtype=np.float64)
    members = np.eye(designs.max() + 1)[designs]
    expected = _expected(counts, trips, members)

    def spread(totals: NDArray[np.float64]) -> NDArray[np.float64]:
        return ((totals - expected) ** 2 / members.sum(axis=0)).sum(axis=-1)

    order = np.argsort(trips + rng.random((deals, trips.size)), axis=1)
    dealt = spread(counts[order] @ members)
    return float((1 + np.sum(dealt >= spread(counts @ members) - 1e-9)) / (1 + deals))


def _expected(
    counts: NDArray[np.float64], trips: NDArray[np.intp], members: NDArray[np.float64]
) -> NDArray[np.float64]:
    means = np.bincount(trips, counts) / np.bincount(trips)
    return means[trips] @ members


def share_of_alarms(world: World, worlds: int, seed: int) -> float:
    """Return the share of logs with p <= 0.05."""
    rng = np.random.default_rng(seed)
    alarms = [p_value(world.play(rng)[0], i) <= 0.05 for i in range(worlds)]
    return float(np.mean(alarms))


def coverage(world: World, worlds: int, seed: int) -> float:
    """Return the share of 80% intervals that hold the true rate of their design."""
    rng = np.random.default_rng(seed)
    inside: list[bool] = []
    for i in range(worlds):
        hauls, truth = world.play(rng)
        inside += [
            group.low <= truth[group.name] <= group.high
            for group in compare(hauls, seed=i).groups
            if group.low is not None and group.high is not None
        ]
    return float(np.mean(inside))


def powers(world: World, worlds: int, seed: int) -> tuple[float, float]:
    """Return the power of the program's test and of the plain permutation, on the same logs."""
    rng = np.random.default_rng(seed)
    logs = [world.play(rng)[0] for _ in range(worlds)]
    ours = np.mean([p_value(log, i) <= 0.05 for i, log in enumerate(logs)])
    plain = np.mean([plain_p_value(log, i) <= 0.05 for i, log in enumerate(logs)])
    return float(ours), float(plain)


def error_of_share(share: float, worlds: int) -> float:
    """Return the standard error of a share of so many worlds."""
    return float(np.sqrt(share * (1 - share) / worlds))


def power_of_asked_hauls(world: World, worlds: int, seed: int) -> tuple[int, float]:
    """Return the trips that a true `world.ratio` is said to take from none, and the power then."""
    hauls = hauls_for(world.ratio, MEAN, world.k, world.designs - 1)
    trips = math.ceil(hauls * world.designs / world.traps)
    longer = replace(world, trips=trips)
    rng = np.random.default_rng(seed)
    found = [p_value(longer.play(rng)[0], i) <= 0.05 for i in range(worlds)]
    return trips, float(np.mean(found))


def print_alarms(worlds: int) -> None:
    """Print how often alike designs are told apart."""
    print("\nfalse alarms (designs alike)")
    print("trips  k=1    k=2    k=5    no spots, k=2   strong spots, k=2")
    for trips in (1, 2, 3, 5, 10, 20):
        rows = [World(trips, k=k) for k in (1.0, 2.0, 5.0)]
        rows += [World(trips, spot_sd=0.0), World(trips, spot_sd=0.8)]
        cells = [share_of_alarms(world, worlds, seed=trips) for world in rows]
        print(f"{trips:5d}  " + "  ".join(f"{cell:5.1%}" for cell in cells), flush=True)


def print_coverage(worlds: int) -> None:
    """Print how often the intervals hold the truth."""
    print(f"\ncoverage of 80% intervals (three designs in each of {worlds} worlds)")
    print("trips  alike   alike, k=1   alike, k=5   differ (sd 0.3)   one 1.5 times better")
    for trips in (1, 3, 10, 30):
        rows = [World(trips), World(trips, k=1.0), World(trips, k=5.0)]
        rows += [World(trips, design_sd=0.3), World(trips, ratio=1.5)]
        cells = [coverage(world, worlds, seed=100 + trips) for world in rows]
        print(f"{trips:5d}  " + "  ".join(f"{cell:5.1%}" for cell in cells), flush=True)


def print_power(worlds: int) -> None:
    """Print how often a true difference is found."""
    print("\npower: ours, plain permutation within trips")
    for trips, ratio, spot_sd in ((3, 2.0, 0.0), (6, 1.5, 0.0), (6, 1.5, 0.3), (12, 1.5, 0.5)):
        ours, plain = powers(World(trips, ratio=ratio, spot_sd=spot_sd), worlds, seed=200 + trips)
        named = f"{trips} trips, {ratio} times, spots {spot_sd}"
        print(f"{named:32s} {ours:5.1%} {plain:5.1%}", flush=True)


def print_hauls(worlds: int) -> None:
    """Print how often the hauls that are said to settle a difference do show it."""
    print("\nthe hauls said to settle it: trips of twelve traps, power then (80% promised)")
    for ratio, k in ((1.5, 1.0), (1.5, 2.0), (1.5, 5.0), (2.0, 2.0)):
        trips, power = power_of_asked_hauls(World(0, k=k, ratio=ratio), worlds, seed=300)
        print(f"{ratio} times, k={k:g}: {trips:3d} trips, {power:5.1%}", flush=True)


PARTS = {
    "alarms": print_alarms,
    "coverage": print_coverage,
    "power": print_power,
    "hauls": print_hauls,
}


def main(worlds: int, parts: Sequence[str]) -> None:
    """Print the tables."""
    print(f"{worlds} worlds a row; standard error of 5%: {error_of_share(0.05, worlds):.1%}")
    for part in parts:
        PARTS[part](worlds)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 400, sys.argv[2:] or list(PARTS))
