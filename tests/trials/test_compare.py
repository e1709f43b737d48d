"""Comparisons of traps: what they say, when they must hold back, and what must not matter."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.assets import demo_log
from planner.errors import InputError
from planner.logbook import Haul, book_zone, read_log
from planner.trials import Trial, compare
from planner.trials.grouping import observations
from planner.trials.scales import sample_trips

SET = datetime(2026, 8, 13, 22, tzinfo=UTC)
Spots = dict[str, list[str]]


def log_of(
    trips: int,
    means: dict[str, float],
    *,
    seed: int = 1,
    spots: Spots | None = None,
    soaks_h: dict[str, float] | None = None,
    k: float = 2.0,
) -> list[Haul]:
    """Return hauls of designs with these means, four traps each, dealt over the spots."""
    rng = np.random.default_rng(seed)
    hauls = []
    for trip in range(trips):
        for design, mean in means.items():
            for number in range(4):
                choice = spots[design] if spots else [f"spot {n}" for n in range(4)]
                soak = timedelta(hours=(soaks_h or {}).get(design, 14.0))
                hauls.append(
                    Haul(
                        f"trip {trip}",
                        "Sedge Hollow",
                        spot=str(rng.choice(choice)),
                        trap=f"{design}{number}",
                        design=design,
                        set_at=SET,
                        hauled_at=SET + soak,
                        keepers=int(rng.poisson(mean * rng.gamma(k, 1 / k))),
                    )
                )
    return hauls


def codes(trial: Trial) -> set[str]:
    """Return the codes of a trial's warnings."""
    return {caution.code for caution in trial.warnings}


def test_a_big_difference_over_many_trips_is_settled() -> None:
    """Thrice the catch over ten trips is said to be so, with the better one first."""
    trial = compare(log_of(10, {"bare": 1.5, "coated": 4.5}, seed=2))
    assert trial.verdict == "settled"
    assert trial.groups[0].name == "coated"
    assert trial.test.p is not None
    assert trial.test.p < 0.01
    assert trial.to_settle.hauls_per_group == 0
    (contrast,) = trial.contrasts
    assert contrast.low < 3.0 < contrast.high
    assert contrast.low > 1.5
    assert "80 counted hauls in 10 trips" in trial.sentence


def test_a_small_log_is_too_early_and_says_what_would_settle_it() -> None:
    """Two alike designs over two trips: no verdict, and dozens of hauls still to go."""
    trial = compare(log_of(2, {"bare": 2.5, "coated": 2.5}))
    assert trial.verdict == "too early"
    assert trial.to_settle.hauls_per_group is not None
    assert 30 < trial.to_settle.hauls_per_group < 200
    assert trial.to_settle.can_hide is not None
    assert trial.to_settle.can_hide > 1.5
    assert "Chance alone" in trial.sentence


def test_one_trip_never_settles() -> None:
    """However wide the gap, one trip is called what it is."""
    trial = compare(log_of(1, {"bare": 0.2, "coated": 15.0}))
    assert trial.verdict == "leaning"
    assert "one_trip" in codes(trial)


def test_alike_designs_settle_as_alike_in_the_end() -> None:
    """Enough hauls without a difference settle that none worth caring about is left."""
    trial = compare(log_of(60, {"bare": 4.0, "coated": 4.0}, k=5.0, seed=2))
    assert trial.verdict == "settled"
    assert trial.test.p is not None
    assert trial.test.p > 0.05


def test_rates_leave_out_what_was_not_counted() -> None:
    """A haul without a count is in `hauls`, out of `keepers` and `rate`; zero is in all."""
    hauls = log_of(6, {"bare": 3.0, "coated": 3.0})
    blanked = [replace(haul, keepers=None) for haul in hauls if haul.design == "bare"][:10]
    trial = compare([*hauls, *blanked])
    by_name = {group.name: group for group in trial.groups}
    assert (by_name["bare"].hauls, by_name["bare"].counted) == (34, 24)
    assert "uncounted" in codes(trial)
    without = {group.name: group for group in compare(hauls).groups}
    assert by_name["bare"].keepers == without["bare"].keepers
    assert by_name["bare"].rate == without["bare"].rate


def test_confounded_with_spots_is_flagged_and_never_decided() -> None:
    """The best design always on the best spot is no evidence for the design, in 100 of 100."""
    for seed in range(100):
        spots = {"bare": ["ramp flat"], "coated": ["channel lip"]}
        hauls = log_of(3 + seed % 4, {"bare": 1.0, "coated": 5.0}, seed=seed, spots=spots)
        trial = compare(hauls, seed=seed) if seed < 5 else None
        if trial is not None:
            assert "confounded" in codes(trial)
            assert trial.verdict == "too early"
        assert _flagged(hauls)


def test_confounded_with_trips_is_flagged() -> None:
    """One design in spring, another in autumn: nothing can be tested, and that is said."""
    hauls = [
        replace(haul, design="bare" if haul.trip < "trip 3" else "coated")
        for haul in log_of(6, {"either": 3.0})
    ]
    trial = compare(hauls)
    assert trial.test.p is None
    assert "confounded" in codes(trial)
    assert trial.verdict == "too early"


def test_fair_layouts_are_seldom_flagged() -> None:
    """Designs dealt at random over six spots: at most a tenth of histories flagged."""
    flagged = 0
    rng = np.random.default_rng(5)
    for seed in range(100):
        trips = 1 + seed % 5
        hauls = []
        for trip in range(trips):
            dealt = rng.permutation(np.arange(12) % 3)
            hauls += [
                Haul(f"{trip}", "x", spot=f"{i // 2}", design="ABC"[design], keepers=1)
                for i, design in enumerate(dealt)
            ]
        flagged += _flagged(hauls)
    assert flagged <= 10


def _flagged(hauls: list[Haul]) -> bool:
    from planner.trials.sharing import find_sharing

    seen = observations(hauls, "design", "keepers")
    return bool(find_sharing(seen, seen.per_group() >= 2).confounded)


def test_latin_square_is_ideal_and_standing_still_is_nothing() -> None:
    """Efficiency 1 for a cyclic Latin square, 0 for traps never moved.

    The cyclic square is the textbook case (Cochran and Cox, Experimental Designs: each
    treatment once in every row and column).
    """
    from planner.trials.sharing import pair_efficiency

    for moved, expected in ((1, 1.0), (0, 0.0)):
        hauls = [
            Haul(f"{t}", "x", spot=f"{s}", design=f"{(s + moved * t) % 8}", keepers=1)
            for t in range(8)
            for s in range(8)
        ]
        efficiency = pair_efficiency(observations(hauls, "design", "keepers"))
        pairs = efficiency[np.triu_indices(8, 1)]
        assert pairs == pytest.approx(expected, abs=1e-3)


def test_unlike_soaks_are_said_and_allowed_for() -> None:
    """A design soaked three times as long is warned of, and its rate stated at a common soak."""
    soaks = {"bare": 12.0, "coated": 40.0}
    trial = compare(log_of(8, {"bare": 2.0, "coated": 4.0}, soaks_h=soaks))
    assert "soak" in codes(trial)
    same = compare(log_of(8, {"bare": 2.0, "coated": 4.0}))
    assert trial.contrasts[0].ratio < same.contrasts[0].ratio
    assert "soak" not in codes(same)


def test_one_haul_is_shown_not_judged() -> None:
    """A group of one haul has a rate with a wide interval, no chance of being best, no say."""
    hauls = log_of(5, {"bare": 2.0, "coated": 2.0})
    lone = replace(hauls[0], design="gold", keepers=30)
    trial = compare([*hauls, lone])
    gold = next(group for group in trial.groups if group.name == "gold")
    assert gold.p_best is None
    assert gold.high is not None
    assert gold.low is not None
    assert gold.high > 1.5 * gold.low
    assert all("gold" not in (c.better, c.other) for c in trial.contrasts)
    assert "few" in codes(trial)


def test_nothing_one_group_and_no_crabs() -> None:
    """No hauls, no counts, one group, zero catches: an answer without a claim."""
    assert compare([]).groups == ()
    blank = compare([replace(haul, keepers=None) for haul in log_of(2, {"bare": 1.0})])
    assert (blank.groups[0].rate, blank.groups[0].keepers, blank.dispersion) == (None, None, None)
    single = compare(log_of(3, {"bare": 2.0}))
    assert single.test.p is None
    assert single.groups[0].rate == pytest.approx(2.0, rel=0.6)
    assert single.to_settle.hauls_per_group is None
    zero = compare(log_of(3, {"bare": 0.0, "coated": 0.0}))
    assert (zero.test.p, zero.verdict) == (None, "too early")
    assert all(group.high is not None and group.high < 0.5 for group in zero.groups)


def test_capitals_make_no_new_group() -> None:
    """A label typed with other capitals or blanks is the same group."""
    hauls = log_of(3, {"bare": 2.0, "coated": 3.0})
    typed = [replace(haul, design=haul.design.upper() + " ") for haul in hauls[::3]]
    trial = compare([*typed, *(haul for i, haul in enumerate(hauls) if i % 3)])
    assert len(trial.groups) == 2


def test_every_grouping_and_measure_of_the_demo_log() -> None:
    """Each grouping and measure gives ordered intervals and shares that add up."""
    log = read_log(demo_log(), book_zone)
    for by in ("design", "entrances", "bait", "spot", "depth", "soak"):
        trial = compare(log.hauls, by=by)
        assert len(trial.groups) >= 2
        assert sum(group.p_best or 0 for group in trial.groups) == pytest.approx(1)
        for group in trial.groups:
            assert group.low is not None
            assert group.low < (group.rate or 0) < (group.high or 0)
    assert "confounded" in codes(compare(log.hauls, by="soak"))
    for measure in ("crabs", "shorts", "females"):
        assert compare(log.hauls[-60:], measure=measure).groups[0].rate is not None
    light = compare(log.hauls, measure="light")
    assert all(0 < (group.rate or 0) < 0.4 for group in light.groups)


def test_depths_are_named_in_metres_and_feet() -> None:
    """Groups go by one name in every window: who reads feet was told of metres alone."""
    hauls = [Haul("t", "x", depth_m=depth_m, keepers=1) for depth_m in (0.4, 2.0, 2.9)]
    names = {group.name for group in compare(hauls, by="depth").groups}
    assert names == {"0 to 1 m (0 to 3 ft)", "2 to 3 m (7 to 10 ft)"}


def test_first_season_of_the_demo_is_confounded() -> None:
    """Traps that hardly moved in 2025 can not tell design from spot; 2026 can."""
    log = read_log(demo_log(), book_zone)
    for year, flagged in ((2025, True), (2026, False)):
        hauls = [haul for haul in log.hauls if haul.hauled_at and haul.hauled_at.year == year]
        assert ("confounded" in codes(compare(hauls))) == flagged


def test_unknown_groupings_are_refused_and_own_columns_taken() -> None:
    """A grouping that is not there names those that are; an unknown column of the log is one."""
    hauls = [
        replace(haul, extra={"colour": "red" if i % 2 else "black"})
        for i, haul in enumerate(log_of(3, {"bare": 2.0}))
    ]
    assert {group.name for group in compare(hauls, by="colour").groups} == {"red", "black"}
    with pytest.raises(InputError, match="colour"):
        compare(hauls, by="moon")
    with pytest.raises(InputError, match="keepers"):
        compare(hauls, measure="weight")


def test_order_of_rows_and_names_changes_nothing() -> None:
    """Shuffled rows give the same answer to the last digit, as does a second call."""
    hauls = log_of(6, {"bare": 2.0, "coated": 3.0, "chambered": 2.5})
    shuffled = hauls.copy()
    random.Random(3).shuffle(shuffled)
    assert compare(hauls) == compare(shuffled) == compare(hauls)


@settings(max_examples=8)
@given(st.integers(0, 10_000), st.integers(1, 6))
def test_more_crabs_never_lower_a_rate(seed: int, more: int) -> None:
    """Adding crabs to one design's hauls raises its rate and its standing."""
    hauls = log_of(4, {"bare": 2.0, "coated": 2.0}, seed=seed)
    richer = [
        replace(haul, keepers=(haul.keepers or 0) + more) if haul.design == "bare" else haul
        for haul in hauls
    ]
    before = {group.name: group for group in compare(hauls).groups}["bare"]
    after = {group.name: group for group in compare(richer).groups}["bare"]
    assert (after.rate or 0) > (before.rate or 0)
    assert (after.p_best or 0) >= (before.p_best or 0) - 0.02


def test_many_groups_share_the_error() -> None:
    """Forty alike groups: one of them leads by luck, and it is not believed."""
    rng = np.random.default_rng(2)
    hauls = [
        Haul(f"{t}", "x", spot=f"{i % 6}", design=f"{d:02d}", keepers=int(rng.poisson(3)))
        for t in range(12)
        for i, d in enumerate(rng.permutation(40)[:12])
    ]
    trial = compare(hauls)
    assert len(trial.groups) == 40
    assert trial.verdict != "settled"
    rates = [group.rate or 0 for group in trial.groups]
    # Pooled: the leader's plain mean lies far above what is believed of it.
    leader = trial.groups[0]
    assert rates[0] < (leader.keepers or 0) / leader.counted
    assert rates[0] / rates[-1] < 1.6


def test_a_trip_of_thousands_of_hauls_is_thinned_for_its_scales_only() -> None:
    """One trip of 4,000 hauls: its scales are learned from some of them, the rates from all."""
    rng = np.random.default_rng(4)
    hauls = [
        Haul("one", "x", spot=f"{at % 6}", design="AB"[at % 2], keepers=int(rng.poisson(3)))
        for at in range(4000)
    ]
    seen = observations(hauls, "design", "keepers")
    sample = sample_trips(seen, np.random.default_rng(1))
    assert sample.trips == 1
    assert sample.counts.size < 3500
    trial = compare(hauls)
    assert sum(group.counted for group in trial.groups) == 4000
    assert all(group.low is not None and group.low > 2.8 for group in trial.groups)
