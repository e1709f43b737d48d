"""Soaks where they are compared and where they say nothing; logs of zeros and of equal counts."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import numpy as np
import pytest

from planner.logbook import Haul
from planner.trials import compare, settle_texts

SET = datetime(2026, 6, 1, 6, tzinfo=UTC)


def soaked_log(half_full_h: float, trips: int = 12) -> list[Haul]:
    """Return hauls of 6, 24 and 48 h on each trip; a trap is half full after so many hours."""
    rng = np.random.default_rng(3)
    hauls = []
    for trip in range(trips):
        for number in range(12):
            soak = (6.0, 24.0, 48.0)[number % 3]
            mean = 5.0 * (1 - 2 ** (-soak / half_full_h))
            hauls.append(
                Haul(
                    f"trip {trip}",
                    "Sedge Hollow",
                    spot=f"spot {rng.integers(6)}",
                    design="bare",
                    set_at=SET,
                    hauled_at=SET + timedelta(hours=soak),
                    keepers=int(rng.poisson(mean * rng.gamma(3.0, 1 / 3.0))),
                )
            )
    return hauls


def test_soaks_are_compared_as_they_were() -> None:
    """Short soaks that catch a third are said to, and are not brought to the others' soak."""
    trial = compare(soaked_log(10.0), by="soak")
    assert trial.groups[-1].name == "under 18 h"
    assert trial.contrasts[-1].low > 1.8
    assert trial.test.p is not None
    assert trial.test.p < 0.01
    assert trial.common_soak_h is None


def test_soaks_that_make_no_difference_are_not_given_one() -> None:
    """Traps full within minutes: no soak is made out to give more than another."""
    trial = compare(soaked_log(0.05), by="soak")
    assert trial.test.p is not None
    assert trial.test.p > 0.05
    assert trial.contrasts[-1].ratio < 1.3


def test_a_share_does_not_fill_a_trap() -> None:
    """One crab in five is light whatever the soak: a design soaked longer is not let off."""
    hauls = [
        Haul(
            f"trip {trip}",
            "Sedge Hollow",
            spot=f"spot {(number + trip) % 4}",
            design=design,
            set_at=SET,
            hauled_at=SET + timedelta(hours=soak),
            judged=10,
            light=(1, 2, 3)[(trip + number) % 3],
        )
        for trip in range(6)
        for design, soak in (("bare", 6.0), ("coated", 48.0))
        for number in range(4)
    ]
    trial = compare(hauls, measure="light")
    assert trial.common_soak_h is None
    assert [group.rate for group in trial.groups] == pytest.approx([0.2, 0.2], abs=0.02)
    assert "soak" not in {caution.code for caution in trial.warnings}


def test_no_more_than_all_crabs_are_light() -> None:
    """Where every crab looked at was light, no end of an interval is above all of them."""
    at = datetime(2026, 8, 1, 12, tzinfo=UTC)
    hauls = [
        Haul(
            f"t{trip}", "Otter Bight", spot="bar", trap=design, design=design,
            hauled_at=at + timedelta(days=trip), keepers=5, judged=5, light=5,
        )
        for trip in range(8)
        for design in ("bare", "coated")
    ]  # fmt: skip
    for group in compare(hauls, measure="light").groups:
        assert 0.5 < group.low <= group.rate <= group.high <= 1


def test_zero_everywhere_is_not_taken_for_never_together() -> None:
    """Designs that were set side by side and caught nothing: that is said, and nothing else."""
    hauls = [Haul("a", "x", spot=f"{at % 3}", design="AB"[at % 2], keepers=0) for at in range(12)]
    trial = compare(hauls)
    assert trial.test.p is None
    assert "zero" in trial.sentence
    assert "side by side" not in trial.sentence
    assert "caught something" in settle_texts(trial)[0]


def test_equal_counts_can_be_tested_and_show_nothing() -> None:
    """Three keepers in every haul: a test is possible, and no deal of the labels differs."""
    hauls = [
        Haul(f"{trip}", "x", spot=f"{at % 3}", design="AB"[(at + trip) % 2], keepers=3)
        for trip in range(3)
        for at in range(6)
    ]
    trial = compare(hauls)
    assert trial.test.p == 1.0
    assert "side by side" not in trial.sentence
