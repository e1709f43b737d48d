"""Is the learner as sure as it should be? Simulation-based calibration, and simulated crabs."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import numpy as np
import pytest
from crab_world import drawn_nature, logged, simulate, trip_days
from scipy import stats

from planner.assets import demo_place
from planner.clock import day_edges, days_between
from planner.logbook import TripOutcome
from planner.molt.belief import HERE, USER, Belief, Trip, moon_row
from planner.molt.curves import PosteriorDraws, share, span_of
from planner.molt.forecasting import forecast_learned
from planner.molt.learning import learn_outcomes
from planner.molt.profile import judging
from planner.molt.temperature import usual_water
from planner.molt.trips_judged import days_of
from planner.molt.year import ANSWER_DAYS, day_of_year, usual_year
from planner.sites import load_site
from planner.sky import lunar_phase_angle

REPLICATES = 240
RANKS = 9
AHEAD_D = (1, 3, 6, 10, 14)


def span_after(site, last, days):
    ahead = days_between(last + timedelta(days=1), last + timedelta(days=days))
    edges = day_edges(ahead[0], ahead[-1], site.zone)
    noons = edges[:-1] + (edges[1:] - edges[:-1]) // 2
    return span_of(ahead, days_of(noons), np.radians(lunar_phase_angle(noons)))


class PriorWorlds:
    """Logs from the model's own prior, made apart from the learner: its draws are others."""

    def __init__(self, site, seed):
        self.site, self.rng = site, np.random.default_rng(seed)
        water = usual_water(site.monthly_water_c, site.latitude_deg)
        self.year = usual_year(site.species, water, seed=seed)
        self.judging = judging(site.species)
        self.prior = Belief(self.year, self.judging, elsewhere=False)

    def draw(self, trips, strong_too=False):
        """Return outcomes of trips, what is true of them, and true shares on days after.

        strong_too: strong moons as often as the learner's draws have them; "weight" in what is
        true says how often such a world is believed in, against how often it is drawn.
        """
        rng, year, swings = self.rng, self.year, self.year.swings
        believed = self.prior.weights
        draw = rng.choice(believed.size, p=None if strong_too else believed)
        truth = rng.multivariate_normal(self.prior.mean[draw], self.prior.covariance[draw])
        days = sorted(
            date(2025, 3, 20) + timedelta(days=int(day))
            for day in rng.choice(600, trips, replace=False)
        )
        last = days[-1]
        after = [last + timedelta(days=day) for day in AHEAD_D]
        when = [datetime(day.year, day.month, day.day, 16, tzinfo=UTC) for day in [*days, *after]]
        at_d = np.array([each.timestamp() / 86_400 for each in when])
        times = np.array([each.replace(tzinfo=None) for each in when], dtype="datetime64[ms]")
        phase = np.radians(lunar_phase_angle(times))
        run = self._run(at_d, swings.runs_sd[draw], swings.runs_memory_d[draw])
        place = day_of_year([*days, *after])
        rows = np.zeros((len(when), truth.size))
        rows[:, [USER, HERE]] = 1
        rows[:, 2:6] = moon_row(year.moon_on_light[draw, place // ANSWER_DAYS], phase)
        rows[:, 6:8] = np.sqrt(2) * np.stack(
            [np.cos(2 * np.pi * (place + 0.5) / 365), np.sin(2 * np.pi * (place + 0.5) / 365)], -1
        )
        log_odds = year.log_odds[draw, place] + rows @ truth + run - swings.runs_sd[draw] ** 2 / 2
        light = share(log_odds)
        size = self.judging.alike_size
        outcomes = []
        for i, day in enumerate(days):
            judged = int(rng.integers(6, 30))
            count = rng.binomial(judged, rng.beta(size * light[i], size * (1 - light[i])))
            outcomes.append(
                TripOutcome(str(day), self.site.name, when[i], 9, judged, judged, int(count), None)
            )
        true = {
            "moon cos": truth[2],
            "moon sin": truth[3],
            "level": truth[USER] + truth[HERE],
            "runs": swings.runs_sd[draw],
            "refill": year.parameters.refill_d[draw],
            "year": share(year.log_odds[draw] + truth[USER] + truth[HERE]).mean(),
            "light": light[:trips],
            "draw": draw,
            "coefficients": truth,
            "weight": believed[draw] * believed.size if strong_too else 1.0,
        }
        return tuple(outcomes), true, light[trips:], last

    def _run(self, at_d, sd, memory_d):
        run = np.empty(at_d.size)
        run[0] = self.rng.normal(0, sd)
        for i in range(1, at_d.size):
            keep = np.exp(-(at_d[i] - at_d[i - 1]) / memory_d)
            run[i] = keep * run[i - 1] + self.rng.normal(0, sd * np.sqrt(1 - keep**2))
        return run


def posterior(learned, seed):
    draws = PosteriorDraws(learned, seed, draws=500)
    values = draws.coefficients
    level = values[:, USER] + values[:, HERE]
    year = learned.year
    return {
        "moon cos": values[:, 2],
        "moon sin": values[:, 3],
        "level": level,
        "runs": year.swings.runs_sd[draws.which],
        "refill": year.parameters.refill_d[draws.which],
        "year": share(year.log_odds[draws.which] + level[:, None]).mean(axis=1),
    }


@pytest.mark.slow
def test_ranks_are_uniform_and_intervals_cover():
    """Simulation-based calibration (Talts et al. 2018) over logs from the prior.

    The true value's rank among posterior draws must be uniform for the main parameters: chi
    square over ten bins, no p under 0.001 of six. The 80% interval of the light share must
    hold 75-85% of the true shares on days 1 to 14 after the last trip.
    """
    site = load_site(demo_place())
    worlds = PriorWorlds(site, seed=78)
    rng = np.random.default_rng(78)
    ranks = {}
    held = []
    for replicate in range(REPLICATES):
        outcomes, true, ahead, last = worlds.draw(int(rng.integers(4, 50)))
        learned = learn_outcomes(site, outcomes)
        for name, draws in posterior(learned, replicate).items():
            chosen = rng.choice(draws, RANKS, replace=False)
            ranks.setdefault(name, []).append(int((chosen < true[name]).sum()))
        found = forecast_learned(learned, span_after(site, last, 14), np.zeros(14), replicate)
        at = np.array(AHEAD_D) - 1
        low, high = found.light_share.low[at], found.light_share.high[at]
        held.append((low <= ahead) & (ahead <= high))
    for name, found_ranks in ranks.items():
        counts = np.bincount(found_ranks, minlength=RANKS + 1)
        assert stats.chisquare(counts).pvalue > 0.001, (name, counts)
    assert 0.75 <= np.mean(held) <= 0.85


@pytest.mark.slow
def test_intervals_hold_for_simulated_crabs():
    """Logs of individual crabs, which the model knows nothing of: 70-90% of shares are held.

    Twenty-four worlds of the spread that the literature leaves, moon and runs among it, each
    cut at several lengths of log, on the fourteen days after.
    """
    site = load_site(demo_place())
    held = []
    for number in range(24):
        rng = np.random.default_rng(9000 + number)
        nature = drawn_nature(
            rng,
            moon=abs(rng.normal(0, 0.3)),
            moon_age_d=rng.uniform(0, 29.5),
            runs_sd=abs(rng.normal(0, 0.6)),
        )
        world = simulate(nature, site.monthly_water_c, 4, rng)
        outcomes = logged(world, trip_days(3, 20, rng), rng, site.name)
        for cut in (4, 12, 25, 40, 60):
            learned = learn_outcomes(site, tuple(outcomes[:cut]))
            span = span_after(site, learned.trips.days[-1], 14)
            found = forecast_learned(learned, span, np.zeros(14)).light_share
            true = np.array([world.share(day) for day in span.days])
            held.append((found.low <= true) & (true <= found.high))
    assert 0.70 <= np.mean(held) <= 0.90


def test_the_order_of_a_days_two_trips_matters_next_to_nothing():
    """Two trips of one day taken in either order foretell the same, as Bayes' rule says.

    Even trips that contradict each other, nine of twenty light and none of twelve: to a point.
    """
    site = load_site(demo_place())
    water = usual_water(site.monthly_water_c, site.latitude_deg)
    year = usual_year(site.species, water, draws=512)
    trips = [Trip(150, 1.0, 20.0, 9.0, True), Trip(150, 1.0, 12.0, 0.0, True)]
    beliefs = []
    for order in (trips, trips[::-1]):
        belief = Belief(year, judging(site.species), elsewhere=False)
        for trip in order:
            belief.absorb(trip)
        beliefs.append(belief)
    later = Trip(153, 1.6, 20.0, 2.0, True)
    one, other = (belief.absorb(later).mean for belief in beliefs)
    assert one == pytest.approx(other, abs=0.01)
