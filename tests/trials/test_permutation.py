"""The test of "no difference" against what counting all ways to deal the labels gives."""

from __future__ import annotations

from itertools import permutations, product

import numpy as np
import pytest

from planner.logbook import Haul
from planner.trials import compare, permutation
from planner.trials.grouping import observations


def pairs(counts: list[tuple[int, int]]) -> list[Haul]:
    """Return a haul of A and one of B on each trip."""
    return [
        Haul(f"trip {trip}", "x", spot="bar", design=design, keepers=keepers)
        for trip, both in enumerate(counts)
        for design, keepers in zip("AB", both, strict=True)
    ]


@pytest.mark.parametrize("trips", [3, 4, 5])
def test_a_design_that_won_every_trip_has_the_p_of_the_sign_test(trips: int) -> None:
    """Of the 2^n ways to deal two labels on n trips two are as lopsided as A ahead on each.

    Whatever the counts, also where trips differ more than designs. By 4,999 deals the share is
    known to 0.006 (a standard error), which is allowed for three times.
    """
    counts = [(4, 2), (40, 30), (9, 3), (3, 0), (14, 11)][:trips]
    trial = compare(pairs(counts))
    assert trial.test.name == permutation.PERMUTED
    assert trial.test.p == pytest.approx(2 / 2**trips, abs=0.018)


def test_no_difference_is_ever_quite_impossible() -> None:
    """Where no deal comes near what was seen, the p is one in as many deals as were looked at."""
    hauls = [
        Haul(f"{trip}", "x", spot=f"{at % 4}", design="AB"[at % 2], keepers=9 * (at % 2))
        for trip in range(10)
        for at in range(8)
    ]
    assert compare(hauls).test.p == 1 / 5000


def test_the_limit_of_large_logs_is_that_of_the_deals(monkeypatch: pytest.MonkeyPatch) -> None:
    """Three designs that differ a little, three hauls on each of 1,400 trips, dealt 999 times.

    The share of 999 deals has a standard error of 0.016 at most, allowed for three times.
    """
    rng = np.random.default_rng(6)
    hauls = [
        Haul(f"{trip}", "x", spot="bar", design="ABC"[kind], keepers=int(rng.poisson(mean)))
        for trip in range(1400)
        for kind, mean in enumerate((2.9, 3.0, 3.05))
    ]
    limit = compare(hauls).test
    monkeypatch.setattr(permutation, "_LARGE", 10_000)
    dealt = compare(hauls).test
    assert (limit.name, dealt.name) == (permutation.LIMIT, permutation.PERMUTED)
    assert limit.p is not None
    assert dealt.p is not None
    assert 0.1 < limit.p < 0.9
    assert limit.p == pytest.approx(dealt.p, abs=0.05)


def test_the_deals_are_all_deals_within_trips(monkeypatch: pytest.MonkeyPatch) -> None:
    """Three designs on three trips, unlike in number: p, from every one of 720 ways to deal.

    The distance is Mahalanobis', by the mean and covariance that the ways themselves have. What
    the hauls have beyond expectation is given here; trips differ in it, which must not matter.
    """
    trips = ("AAB", "ABBBC", "ABCC")
    hauls = [
        Haul(f"{trip}", "x", spot="bar", design=design, keepers=1)
        for trip, designs in enumerate(trips)
        for design in designs
    ]
    seen = observations(hauls, "design", "keepers")
    surprise = np.array([0.9, -0.2, 0.4, 2.2, 3.1, 1.2, 2.9, 2.0, -1.6, -0.7, -2.8, -0.1])
    ways = [sorted(set(permutations(designs))) for designs in trips]
    dealt = np.array(["".join(map("".join, way)) for way in product(*ways)])
    sums = np.array(
        [[surprise[np.array(list(way)) == name].sum() for name in "ABC"] for way in dealt]
    )
    away = sums - sums.mean(axis=0)
    distance = np.einsum("wg,gh,wh->w", away, np.linalg.pinv(np.cov(sums.T)), away)
    expected = np.mean(distance >= distance[list(dealt).index("".join(trips))] - 1e-9)
    assert 0.05 < expected < 0.95
    monkeypatch.setattr(permutation, "_surprise", lambda *_: surprise)
    found = permutation.test_groups(seen, np.ones(3, dtype=bool), np.random.default_rng(1))
    assert found.p == pytest.approx(expected, abs=0.021)  # thrice the standard error of 4,999


def test_what_a_good_spot_gives_is_not_a_merit_of_the_design() -> None:
    """Designs alike, one three times out of four at a spot that gives five times as much.

    Of 20 such logs two have a p below a tenth by chance; more than six happen once in 400 times.
    """
    low = 0
    for seed in range(20):
        rng = np.random.default_rng(seed)
        hauls = [
            Haul(f"{trip}", "x", spot=spot, design=design, keepers=int(rng.poisson(mean)))
            for trip in range(6)
            for spot, mean, designs in (("hole", 10, "AAAB"), ("flat", 2, "ABBB"))
            for design in designs
        ]
        low += (compare(hauls, seed=seed).test.p or 0.0) < 0.1
    assert low <= 6
