"""What would settle it, in hauls, trips and dates; and intervals that keep their promise."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.logbook import Haul
from planner.trials import compare, next_trip_days, settle_texts, trip_days
from planner.trials.intervals import steady_intervals
from planner.trials.settling import Settling, hauls_for

TODAY = date(2026, 11, 25)
BEGIN = datetime(2026, 5, 1, 12, tzinfo=UTC)


def log_of(trips: int, means: dict[str, float], seed: int = 1, days_apart: int = 7) -> list[Haul]:
    """Return hauls of designs with these means over four spots, dealt in turn."""
    rng = np.random.default_rng(seed)
    return [
        Haul(
            f"trip {trip:02d}", "Sedge Hollow", spot=f"spot {(at + trip) % 4}",
            trap=f"{design}{at}", design=design, keepers=int(rng.poisson(mean * rng.gamma(2, 0.5))),
            set_at=BEGIN + timedelta(days=days_apart * trip),
            hauled_at=BEGIN + timedelta(days=days_apart * trip, hours=16),
        )
        for trip in range(trips)
        for design, mean in means.items()
        for at in range(4)
    ]  # fmt: skip


@pytest.mark.parametrize("truth", [-1.0, 0.0, 0.3, 2.0])
@pytest.mark.parametrize("spread", [0.05, 0.3])
def test_intervals_keep_their_coverage_whatever_the_truth(truth: float, spread: float) -> None:
    """A group far from the others is held in 80% of cases, as is one like them.

    Normal experiments of three groups, within three standard errors of the share. A pooled
    interval would hold a group at 2.0 hardly ever with a spread of 0.05, one at 0.0 nearly
    always.
    """
    rng = np.random.default_rng(3)
    sd, held = 0.4, 0
    runs = 400
    noise = np.sort(rng.standard_normal(2000))[:, None] * sd
    for _ in range(runs):
        seen = np.array([truth, 0.0, 0.0]) + sd * rng.standard_normal(3)
        low, high = steady_intervals(seen + noise, spread)
        held += int(low[0] <= truth <= high[0])
    assert held / runs == pytest.approx(0.8, abs=3 * np.sqrt(0.16 / runs))


def test_intervals_are_shorter_where_groups_are_alike() -> None:
    """What pooling buys: against each group alone, a tenth shorter at least."""
    rng = np.random.default_rng(4)
    noise = np.sort(rng.standard_normal(2000))[:, None] * 0.4
    lengths = [
        np.subtract(*steady_intervals(0.4 * rng.standard_normal(8) + noise, 0.1)[::-1]).mean()
        for _ in range(60)
    ]
    alone = 2 * 1.2816 * 0.4
    assert np.mean(lengths) < 0.9 * alone


def test_one_group_has_the_plain_interval() -> None:
    """With nothing to lean on, the tenth and ninth tenths."""
    draws = np.random.default_rng(1).standard_normal((4000, 1))
    low, high = steady_intervals(draws, 0.3)
    assert [low[0], high[0]] == pytest.approx([-1.2816, 1.2816], abs=0.08)


def test_hauls_needed_shrink_with_what_is_there() -> None:
    """Nothing known: all of them; half the information: half of them; enough: none."""
    all_of_them = Settling(3.0, 2.0, np.inf).hauls_needed(1.5)
    assert all_of_them == int(np.ceil(hauls_for(1.5, 3.0, 2.0)))
    variance = (1 / 3 + 1 / 4.5 + 1) / (all_of_them / 2)
    half = Settling(3.0, 2.0, np.sqrt(variance)).hauls_needed(1.5)
    assert half == pytest.approx(all_of_them / 2, abs=1)
    assert Settling(3.0, 2.0, 0.01).hauls_needed(1.5) == 0
    assert Settling(3.0, 2.0, np.inf).detectable_ratio is None
    # The luckier the hauls (small k), the more of them.
    assert Settling(3.0, 2.0, 0.3).hauls_needed(1.5, k=1.0) > half


def test_what_it_takes_has_its_own_doubt_and_a_smaller_gap_takes_more() -> None:
    """The hauls needed lie within their interval; a gap under the one cared about needs more."""
    trial = compare(log_of(6, {"bare": 2.5, "coated": 2.9}))
    needed = trial.to_settle
    assert needed.low is not None
    assert needed.high is not None
    assert needed.hauls_per_group is not None
    assert needed.low <= needed.hauls_per_group <= needed.high
    assert needed.seen_ratio is not None
    assert needed.seen_hauls is not None
    assert needed.seen_ratio < 1.5
    assert needed.seen_hauls > needed.hauls_per_group
    assert any("gap seen so far" in text for text in settle_texts(trial))


def test_groups_that_never_met_start_from_none() -> None:
    """Hauls that cannot be compared settle nothing, however many they are."""
    apart = [
        replace(haul, design="bare" if haul.trip < "trip 20" else "coated")
        for haul in log_of(40, {"either": 3.0})
    ]
    needed = compare(apart).to_settle
    assert needed.can_hide is None
    assert needed.hauls_per_group is not None
    assert needed.hauls_per_group > 50


def test_a_log_of_two_trips_needs_a_third() -> None:
    """However many hauls: a trip or two never settle anything."""
    hauls = [
        replace(haul, trip=f"trip {at % 2}")
        for at, haul in enumerate(log_of(60, {"bare": 3.0, "coated": 3.0}))
    ]
    trial = compare(hauls)
    assert trial.verdict != "settled"
    assert trial.to_settle.trips is not None
    assert trial.to_settle.trips >= 1


def test_settled_asks_for_nothing() -> None:
    """Once settled, no hauls, trips, dates or gap to be sure of are shown."""
    trial = compare(log_of(12, {"bare": 1.0, "coated": 5.0}))
    assert trial.verdict == "settled"
    assert (trial.to_settle.hauls_per_group, trial.to_settle.trips) == (0, 0)
    assert next_trip_days(trip_days([], UTC), 0, TODAY) == ()
    texts = settle_texts(trial)
    assert texts[0] == "Nothing more is needed for this question."
    assert not any("pace" in text or "gap" in text for text in texts)


# -- dates -----------------------------------------------------------------------------------


def test_dates_follow_the_pace_of_the_log() -> None:
    """A trip a week up to last week: the next three are a week apart, from today on."""
    past = [TODAY - timedelta(days=7 * back) for back in range(8, 0, -1)]
    days = next_trip_days(past, 3, TODAY)
    assert days == tuple(TODAY + timedelta(days=7 * ahead) for ahead in range(3))


def test_a_season_without_trips_slows_the_pace() -> None:
    """Two seasons of ten weekly trips: a year brings ten, so ten more take about a year."""
    past = [
        date(year, 6, 1) + timedelta(days=7 * week) for year in (2025, 2026) for week in range(10)
    ]
    days = next_trip_days(past, 10, TODAY)
    assert 250 < (days[-1] - TODAY).days < 400


def test_plans_are_taken_where_a_trip_is_due() -> None:
    """A trip falls on the end of the first plan that its turn allows, the next a pace later."""
    past = [TODAY - timedelta(days=14 * back) for back in range(5, 0, -1)]
    planned = [TODAY + timedelta(days=ahead) for ahead in (3, 5, 18)]
    assert next_trip_days(past, 3, TODAY, planned) == (
        planned[0],
        planned[2],
        planned[2] + timedelta(days=14),
    )


@pytest.mark.parametrize(("zone", "hour"), [("America/New_York", 20), ("Australia/Adelaide", 6)])
def test_a_trip_is_on_its_own_day_where_it_was(zone: str, hour: int) -> None:
    """An evening there is the next day in UTC, an early morning here the day before.

    The next trip is due a pace after the day that the user knows the last one by.
    """
    here, last = ZoneInfo(zone), date(2026, 11, 20)
    hauls = [
        Haul(str(back), "x", hauled_at=datetime.combine(day, time(hour), here).astimezone(UTC))
        for back in range(4)
        for day in [last - timedelta(days=7 * back)]
    ]
    days = trip_days(hauls, here)
    assert days[-1] == last
    assert next_trip_days(days, 1, date(2026, 11, 21)) == (date(2026, 11, 27),)


def test_no_dates_without_a_pace() -> None:
    """One trip, or hauls without a time, have no pace; then no date is made up."""
    assert next_trip_days([TODAY], 3, TODAY) == ()
    assert trip_days([Haul("t", "x", keepers=1)], UTC) == ()
    text = "\n".join(settle_texts(compare(log_of(2, {"bare": 2.0, "coated": 2.0}))))
    assert "pace" not in text


@given(
    st.lists(st.dates(date(2000, 1, 1), TODAY), min_size=2, max_size=40),
    st.integers(1, 60),
    st.lists(st.dates(TODAY, date(2027, 6, 1)), max_size=12),
)
def test_dates_are_in_order_and_ahead(past: list[date], trips: int, planned: list[date]) -> None:
    """Whatever the log and the plans: so many dates, none before today, none twice."""
    days = next_trip_days(sorted(past), trips, TODAY, planned)
    assert len(days) == trips
    assert days[0] >= TODAY
    assert all(later > earlier for earlier, later in pairwise(days))


# -- groupings and measures --------------------------------------------------------------------


def test_bycatch_is_read_from_what_is_written() -> None:
    """Numbers add up, a word is one, "none" is none; an empty cell only where others wrote."""
    written = ["2 pinfish, 1 whelk", "stone crab", "none", "", "3 whelk and eel", "0"]
    hauls = [
        Haul("a", "x", design="AB"[at % 2], spot=str(at % 3), keepers=1, other=text)
        for at, text in enumerate(written)
    ]
    silent = [
        Haul(trip, place, design=design, spot="1", keepers=1)
        for trip, place in (("b", "x"), ("a", "another water"))
        for design in "AB"
    ]
    trial = compare([*hauls, *silent], measure="bycatch")
    by_name = {group.name: group for group in trial.groups}
    assert (by_name["A"].keepers, by_name["A"].counted) == (3 + 0 + 4, 3)
    assert (by_name["B"].keepers, by_name["B"].counted) == (1 + 0 + 0, 3)


def test_crabs_are_keepers_shorts_and_females() -> None:
    """All three add up, a blank of the last two is none; without keepers nothing was counted."""
    hauls = [
        Haul("a", "x", design="A", keepers=2, shorts=1, females=4),
        Haul("a", "x", design="A", keepers=3, females=5),
        Haul("a", "x", design="A", shorts=9, females=9),
    ]
    (group,) = compare(hauls, measure="crabs").groups
    assert (group.keepers, group.counted, group.hauls) == (15, 2, 3)


def test_colour_is_read_from_the_design_or_a_column() -> None:
    """A colour in the design's name, or in a column of one's own, makes groups."""
    hauls = [
        replace(haul, design=("Red wire", "black wire", "gold")[at % 3])
        for at, haul in enumerate(log_of(3, {"x": 2.0}))
    ]
    assert {group.name for group in compare(hauls, by="colour").groups} == {"red", "black"}
    marked = [replace(haul, extra={"color": "green"}) for haul in hauls]
    assert [group.name for group in compare(marked, by="colour").groups] == ["green"]
