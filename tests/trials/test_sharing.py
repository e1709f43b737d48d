"""Which designs a log cannot tell from their spots or trips, by hand."""

from __future__ import annotations

import numpy as np
import pytest

from planner.logbook import Haul
from planner.trials.grouping import observations
from planner.trials.sharing import Sharing, find_sharing, pair_efficiency


def haul(trip: int, design: str, spot: str) -> Haul:
    return Haul(f"{trip:02d}", "x", spot=spot, design=design, keepers=1)


def swapped_once(trips: int) -> list[Haul]:
    """Return A on the flat and B in the hole on each trip, but on one the other way round."""
    return [
        haul(trip, design, spot)
        for trip in range(trips)
        for design, spot in zip("BA" if trip == 0 else "AB", ("flat", "hole"), strict=True)
    ]


def sharing(hauls: list[Haul], judged: str) -> Sharing:
    seen = observations(hauls, "design", "keepers")
    return find_sharing(seen, np.array([name in judged for name in seen.names]))


@pytest.mark.parametrize(("trips", "told_apart"), [(10, True), (20, True), (40, False)])
def test_below_a_tenth_of_the_ideal_two_designs_are_one_with_their_spots(
    trips: int, told_apart: bool
) -> None:
    """Designs and spots differ alike on all trips but one: correlation r = (n - 2) / n.

    What is left of the comparison is 1 - r^2: 0.36, 0.19 and 0.0975.
    """
    hauls = swapped_once(trips)
    found = pair_efficiency(observations(hauls, "design", "keepers"))
    assert found[0, 1] == pytest.approx(1 - ((trips - 2) / trips) ** 2, abs=1e-4)
    assert sharing(hauls, "AB").by_block == (() if told_apart else ((0, 1),))


def test_groups_unlike_in_number_lose_nothing_by_that() -> None:
    """Three of A to one of B on each trip is as good as so many hauls can be; apart from trips
    of A alone, which say nothing of B: (1/3 + 1) / (1 + 1) of the ideal is left."""
    even = [haul(trip, design, "bar") for trip in range(4) for design in "AAAB"]
    assert pair_efficiency(observations(even, "design", "keepers"))[0, 1] == pytest.approx(
        1.0, abs=1e-4
    )
    alone = [haul(trip, design, "bar") for trip, design in ((0, "A"), (0, "A"), (1, "A"), (1, "B"))]
    assert pair_efficiency(observations(alone, "design", "keepers"))[0, 1] == pytest.approx(
        2 / 3, abs=1e-4
    )


@pytest.mark.parametrize(
    ("of_a", "of_b", "flagged"), [(12, 12, True), (11, 11, False), (16, 11, False)]
)
def test_two_designs_that_never_share_a_spot_may_have_missed_it_by_chance(
    of_a: int, of_b: int, flagged: bool
) -> None:
    """A third design at both spots ties them; a dozen hauls of each apart is no chance any more."""
    hauls = [
        haul(trip, design, spot)
        for trip in range(16)
        for design, spot, most in (
            ("A", "flat", of_a), ("C", "flat", 16), ("C", "hole", 16), ("B", "hole", of_b),
        )
        if trip < most
    ]  # fmt: skip
    found = sharing(hauls, "ABC")
    assert found.by_block == (((0, 1),) if flagged else ())
    assert found.by_trip == ()


def test_only_judged_designs_are_said_to_share() -> None:
    """A design of a trip of its own is told apart from no other; when not judged it is not said."""
    hauls = [*swapped_once(6), haul(90, "C", "flat"), haul(90, "C", "hole")]
    assert sharing(hauls, "ABC") == Sharing(((0, 2), (1, 2)), ())
    assert sharing(hauls, "AB") == Sharing((), ())
    assert sharing(hauls, "C").confounded == ()
