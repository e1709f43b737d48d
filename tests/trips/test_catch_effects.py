"""Spots, designs and seasons in the expected catch: pooled, honest, and only from the log."""

from __future__ import annotations

import math
import os
import subprocess
import sys
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import numpy as np
import pytest
from made_waters import MadeTide, made_outlook, made_site

from planner.estimates import Floats, Interval
from planner.logbook import Log
from planner.logbook.entries import Haul, Trap, TrapEvent
from planner.phrasing import Style
from planner.sites.site import Site, Spot
from planner.trips import Search, Wishes, plan_trips
from planner.trips.catch import CatchModel, learn_catch, saturation
from planner.trips.catch_record import Mix, TripCatch, plan_mix, season_angle, trip_catches

SPOTS = ("bank", "edge", "hole")
DESIGNS = ("round", "square")
EVEN = Mix(dict.fromkeys(SPOTS, 1 / 3), dict.fromkeys(DESIGNS, 1 / 2))
NO_LIGHT = Interval(0.0, 0.0, 0.0)


class World:
    """A place whose rate, luck and effects are known: invented."""

    def __init__(self, rng: np.random.Generator, sd: float = 0.3) -> None:
        self.rng = rng
        self.spots = dict(zip(SPOTS, rng.normal(0, sd, 3), strict=True))
        self.designs = dict(zip(DESIGNS, rng.normal(0, sd, 2), strict=True))
        self.wave = rng.normal(0, 0.25, 2)
        prior = learn_catch([], seed=int(rng.integers(1 << 30)))
        self.rate, self.half_h, self.k = prior.rate[0], prior.half_h[0], prior.k[0]

    def means(self, trip: TripCatch) -> Floats:
        """Return what each trap of a trip should bring."""
        assert trip.season is not None
        effects = np.array(
            [self.spots[s] + self.designs[d] for s, d in zip(trip.spots, trip.designs, strict=True)]
        )
        season = self.wave @ [math.cos(trip.season), math.sin(trip.season)]
        filled = saturation(trip.soaks_h, np.full(trip.soaks_h.size, self.half_h))
        means: Floats = self.rate * filled * np.exp(effects + season)
        return means

    def trip(self, season: float, soak_h: float = 24.0, spots: tuple[str, ...] = ()) -> TripCatch:
        """Return a trip of twelve traps, spread evenly when no spots are given."""
        spots = spots or SPOTS * 4
        designs = ("round",) * 6 + ("square",) * 6
        empty = TripCatch(np.zeros(12), np.full(12, soak_h), 1.0, season, spots, designs)
        luck = self.rng.gamma(self.k, 1 / self.k)
        return replace(empty, keepers=self.rng.poisson(self.means(empty) * luck).astype(float))


def said(model: CatchModel, season: float | None, traps: int = 12) -> Interval:
    return model.full_keepers(24.0, traps, 1.0, NO_LIGHT, seed=3, season=season)


def test_without_a_log_spots_designs_and_seasons_change_nothing() -> None:
    """The published rates are of an average place: with no log they alone speak."""
    plain, mixed = learn_catch([], 1), learn_catch([], 1, EVEN)
    for season in (0.0, 2.0, 5.0):
        assert said(mixed, season) == said(plain, None)
    assert mixed.effects.spot("bank") == Interval(1.0, 1.0, 1.0)


def test_few_hauls_shrink_to_the_average_and_many_find_the_truth() -> None:
    """Partial pooling: a striking result of one trip is not taken for a fact."""
    counts = np.array([2, 2, 8] * 4, dtype=float)
    one = TripCatch(counts, np.full(12, 24.0), 1.0, 1.0, SPOTS * 4)
    ratios = []
    for trips in (1, 3, 40):
        effects = learn_catch([one] * trips, 1, Mix(EVEN.spots)).effects
        hole, bank = effects.spot("hole"), effects.spot("bank")
        ratios.append(hole.mean / bank.mean)
        assert hole.low < hole.mean < hole.high
    assert 1.2 < ratios[0] < ratios[1] < ratios[2] <= 4.0
    assert ratios[0] < 3.2
    assert ratios[2] > 3.6


def test_a_spot_never_fished_is_an_average_one_with_a_wider_interval() -> None:
    """What is unknown widens the forecast and does not make a plan look better."""
    rng = np.random.default_rng(4)
    world = World(rng)
    trips = [world.trip(1.0) for _ in range(20)]
    known = learn_catch(trips, 1, EVEN)
    fresh = learn_catch(trips, 1, Mix({"new": 1.0}, EVEN.designs))
    new, edge = fresh.effects.spot("new"), fresh.effects.spot("edge")
    assert new.high / new.low > 1.5 * edge.high / edge.low
    average = np.mean([known.effects.spot(name).mean for name in SPOTS])
    assert said(fresh, 1.0).mean < 1.1 * said(known, 1.0).mean / average
    assert said(fresh, 1.0).high / said(fresh, 1.0).mean > said(known, 1.0).high / (
        1.01 * said(known, 1.0).mean
    )


def test_a_season_that_was_never_fished_is_less_sure_and_no_better() -> None:
    """A log of Junes tells little of a December."""
    rng = np.random.default_rng(5)
    world = World(rng)
    june, december = 2.8, 2.8 + math.pi
    model = learn_catch([world.trip(june + rng.normal(0, 0.05)) for _ in range(15)], 1, EVEN)
    then, now = said(model, december), said(model, june)
    assert then.mean == pytest.approx(now.mean, rel=0.1)
    assert then.high - then.low > 1.2 * (now.high - now.low)


def test_one_spot_one_design_and_one_season_change_nothing_of_a_plan_alike() -> None:
    """Where all was logged as it will be fished, the rate alone tells, as it did before."""
    trips = [TripCatch(np.full(12, n % 4 + 1.0), np.full(12, 24.0), 1.0) for n in range(9)]
    alike = [replace(t, season=1.0, spots=("bank",) * 12, designs=("round",) * 12) for t in trips]
    mix = Mix({"bank": 1.0}, {"round": 1.0})
    plain, same = said(learn_catch(trips, 1), None), said(learn_catch(alike, 1, mix), 1.0)
    assert same.mean == pytest.approx(plain.mean, rel=1e-6)
    assert (same.low, same.high) == pytest.approx((plain.low, plain.high), abs=1)


def test_the_order_of_trips_and_hauls_changes_no_number() -> None:
    """Rows of a log may stand in any order."""
    world = World(np.random.default_rng(6))
    trips = [world.trip(0.3 * at) for at in range(9)]
    turned = [
        replace(
            trip,
            keepers=trip.keepers[::-1],
            soaks_h=trip.soaks_h[::-1],
            spots=trip.spots[::-1],
            designs=trip.designs[::-1],
        )
        for trip in trips[::-1]
    ]
    one, other = (said(learn_catch(each, 1, EVEN), 1.0) for each in (trips, turned))
    assert other.mean == pytest.approx(one.mean, rel=1e-6)
    assert (other.low, other.high) == pytest.approx((one.low, one.high), abs=0.5)


@pytest.mark.slow
def test_intervals_hold_four_of_five_trips_of_worlds_with_effects() -> None:
    """80% intervals of a plan hold 75-85% of what comes, with spots, designs and season moving.

    300 worlds: a few or many trips with most traps at one spot, then one trip spread evenly at
    another time of year. Two standard errors of 300 draws are 5 points; the upper bound has two
    more, since an interval of whole crabs holds a little more than it promises.
    """
    rng = np.random.default_rng(7)
    inside = []
    for _ in range(300):
        world = World(rng)
        trips = [
            world.trip(rng.uniform(0, 2 * math.pi), rng.uniform(12, 48), ("bank",) * 6 + SPOTS * 2)
            for _ in range(int(rng.integers(3, 20)))
        ]
        season = rng.uniform(0, 2 * math.pi)
        came = world.trip(season).total
        forecast = said(learn_catch(trips, 1, EVEN), season)
        inside.append(forecast.low <= came <= forecast.high)
    assert 0.75 <= np.mean(inside) <= 0.87


def site_of_three() -> Site:
    return made_site(spots=tuple(Spot(name, 2.0 + at, 0.35) for at, name in enumerate(SPOTS)))


def logged_hauls(*, missing: bool = False) -> list[Haul]:
    """Return invented trips through a year: the hole best, winter poor, square the better."""
    rng = np.random.default_rng(8)
    hauls = []
    for number in range(24):
        out = datetime(2025, 1, 5, 14, tzinfo=UTC) + timedelta(days=15 * number)
        summer = math.exp(-0.5 * math.cos(season_angle(out)))
        for trap in range(12):
            mean = 3 * summer * (2.0 if trap % 3 == 2 else 1.0) * (1.3 if trap >= 6 else 1.0)
            hauls.append(
                Haul(
                    trip=f"trip {number}",
                    place="Made Water",
                    spot=SPOTS[trap % 3],
                    trap=str(trap),
                    design=DESIGNS[trap // 6],
                    set_at=out - timedelta(hours=24),
                    hauled_at=out,
                    keepers=int(rng.poisson(mean)),
                    water_c=22.0,
                )
            )
            if missing:
                hauls.append(replace(hauls[-1], keepers=None, trap="lost count"))
    return hauls


def test_a_missing_count_is_not_zero() -> None:
    """Traps whose count was not written down change no number."""
    site = site_of_three()
    full, gaps = (
        learn_catch(trip_catches(site, hauls), 1, EVEN)
        for hauls in (logged_hauls(), logged_hauls(missing=True))
    )
    assert said(gaps, 1.0) == said(full, 1.0)
    assert gaps.effects.hauls == full.effects.hauls == 24 * 12


def test_the_log_finds_the_spot_the_design_and_the_season() -> None:
    """What was put into the simulated counts comes out, within the intervals."""
    site = site_of_three()
    log = Log(tuple(logged_hauls()))
    effects = learn_catch(trip_catches(site, log.hauls), 1, plan_mix(site, log)).effects
    bank, hole = effects.spot("bank"), effects.spot("hole")
    assert hole.low / bank.high < 2.0 < hole.high / bank.low
    assert hole.low > 1.2
    june, january = (
        effects.season(season_angle(datetime(2026, month, 20, tzinfo=UTC))) for month in (6, 1)
    )
    assert june.mean / january.mean == pytest.approx(math.e, rel=0.35)
    assert june.low > 1.0 > january.high


def test_plans_rank_by_the_season_and_say_what_it_rests_on() -> None:
    """The number of a plan, its rank and its words come of one and the same effects."""
    site = site_of_three()
    log = Log(tuple(logged_hauls()))
    search = Search(
        made_outlook(site, date(2026, 3, 1), date(2026, 7, 10)), log=log, tide=MadeTide()
    )
    best = search.plans(1, Wishes(), Style(), None).plans[0]
    assert best.haul_at.month in (6, 7)
    # its number is of its own time of year: in this log March gives far less
    in_march = search.best_on(date(2026, 3, 1), "set", Wishes(), Style())
    assert in_march is not None
    assert best.full_keepers.mean > 1.4 * in_march.full_keepers.mean
    words = " ".join(best.reasons)
    assert "Time of year: about" in words
    assert "Of your spots hole is the best: about" in words
    assert "from 96 hauls there" in words
    assert "from 288 hauls" in words
    plain = plan_trips(made_outlook(site, date(2026, 6, 1), date(2026, 6, 9)), tide=MadeTide())
    assert "Time of year" not in " ".join(plain.plans[0].reasons)


def test_the_mix_is_of_the_traps_still_kept() -> None:
    """A lost or retired trap goes out no more; what is kept with a trap goes before its hauls."""
    site = site_of_three()
    hauls = tuple(logged_hauls())
    assert plan_mix(site, Log(hauls)).designs == {"round": 0.5, "square": 0.5}
    lost = TrapEvent("lost", date(2026, 1, 1))
    found = TrapEvent("found", date(2026, 2, 1))
    traps = (
        *(Trap(str(at), "round", events=(lost,)) for at in range(4)),
        Trap("4", "round", events=(lost, found)),
        Trap("5", "square"),
    )
    mix = plan_mix(site, Log(hauls, traps=traps))
    assert mix.designs == {"round": 1 / 8, "square": 7 / 8}
    assert mix.spots == EVEN.spots
    assert plan_mix(site, None) == Mix(EVEN.spots)
    nameless = tuple(replace(haul, trap="") for haul in hauls[:9])
    assert plan_mix(site, Log(nameless)).designs == {"round": 2 / 3, "square": 1 / 3}


def test_the_time_of_year_hangs_on_no_clock_of_the_computer() -> None:
    """The same instants are the same season in Auckland and in St John's."""
    code = (
        "from datetime import datetime, UTC; from planner.trips.catch_record import season_angle;"
        "print(season_angle(datetime(2026, 6, 1, 3, tzinfo=UTC)))"
    )
    answers = {
        subprocess.run(
            [sys.executable, "-c", code],
            capture_output=True,
            check=True,
            text=True,
            env={**os.environ, "TZ": zone},
        ).stdout
        for zone in ("Pacific/Auckland", "America/St_Johns")
    }
    assert len(answers) == 1
