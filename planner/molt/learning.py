"""Learning from the log: a pass over the judged trips in order of time, kept by its content.

What is not known is followed in draws, and the more a log says the fewer of them still count.
When too few do, new ones are drawn near those and take in the trips so far again, before the
next trip is (iterated batch importance sampling, Chopin 2002). So the draws at any trip hang on
earlier trips only, and every trip's forecast from the earlier ones comes on the way.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.estimates import INTERVAL_TAILS, Floats, Interval
from planner.logbook import Log, TripOutcome
from planner.molt.belief import RUN, Belief, Expected, Trip
from planner.molt.profile import Judging, judging
from planner.molt.recent import Recent
from planner.molt.temperature import UsualWater, usual_water
from planner.molt.trips_judged import JudgedTrips, judged_trips, readings
from planner.molt.unknowns import unknowns_near
from planner.molt.year import UsualYear, day_of_year, settled_year, usual_year
from planner.sites.site import Site

Checkpoint = Callable[[], None]

_TRIPS_BETWEEN_CHECKS: Final = 10
# New draws are made when those there are worth fewer than this; guided by so many of them; and
# not again until the log is so many times longer. Judgement, by what it costs and brings.
_FEW_DRAWS: Final = 64
_GUIDES: Final = 40
_LONGER: Final = 1.5
_FIRST_TRIPS: Final = 2


@dataclass(frozen=True)
class Learned:
    """What is believed of a place after its log, or before any.

    weights (draws,), mean (draws, k), covariance (draws, k, k): as `belief` explains, at the
    time of the last trip. believed_light: the year's mean light share before any log.
    foreseen: the share of light crabs expected of each trip at the place from the trips before
    it. run_mean, run_variance: of the run after each of them, (trips here, draws).
    """

    water: UsualWater
    year: UsualYear
    trips: JudgedTrips
    weights: Floats
    mean: Floats
    covariance: Floats
    believed_light: float
    foreseen: tuple[Interval, ...]
    run_mean: Floats
    run_variance: Floats


def learn(site: Site, log: Log | None, checkpoint: Checkpoint = lambda: None) -> Learned:
    """Return what the log says of a place; the same content gives the same answer at once.

    checkpoint: called now and then, may raise to stop the work.
    Raises RangeError when a trip is outside the ephemeris.
    """
    outcomes = () if log is None else log.outcomes()
    key = (site.name, site.species, str(site.zone), site.latitude_deg, site.monthly_water_c)
    return _LEARNED.get((*key, outcomes), lambda: learn_outcomes(site, outcomes, checkpoint))


def learn_outcomes(
    site: Site, outcomes: tuple[TripOutcome, ...], checkpoint: Checkpoint = lambda: None
) -> Learned:
    """Return what outcomes of trips say of a place."""
    water = usual_water(site.monthly_water_c, site.latitude_deg, readings(site, outcomes))
    trips = judged_trips(site, outcomes)
    checkpoint()
    return pass_over(site.species, water, trips, checkpoint)


def season_only(learned: Learned, species: str, checkpoint: Checkpoint) -> Learned:
    """Return what the same log says to a model without moon and runs."""
    return pass_over(species, learned.water, learned.trips, checkpoint, still=True)


def pass_over(
    species: str,
    water: UsualWater,
    trips: JudgedTrips,
    checkpoint: Checkpoint = lambda: None,
    still: bool = False,
) -> Learned:
    """Return the belief after the trips, taken in one by one in order of time.

    still: without moon and runs.
    """
    year = usual_year(species, water)
    checkpoint()
    reading = _Reading(judging(species), trips, still, checkpoint)
    reading.begin(year)
    light = 1 / (1 + np.exp(-year.log_odds))
    weights = reading.belief.weights
    foreseen: list[Interval] = []
    drawn_at = _FIRST_TRIPS
    for i in range(len(trips.days)):
        if i >= _LONGER * drawn_at and reading.belief.worth < _FEW_DRAWS:
            guides = reading.belief.weights_worth(_GUIDES)
            drawn = unknowns_near(reading.belief.year.drawn, guides, np.random.default_rng(i))
            reading.begin(settled_year(species, water, drawn))
            for earlier in range(i):
                reading.take(earlier)
            drawn_at = i
        expected = reading.take(i)
        if trips.here[i]:
            low, high = expected.quantiles(INTERVAL_TAILS)
            foreseen.append(Interval(expected.mean, low, high))
    belief, runs = reading.belief, reading.runs
    draws = belief.log_likelihood.size
    return Learned(
        water=water,
        year=belief.year,
        trips=trips,
        weights=belief.weights,
        mean=belief.mean,
        covariance=belief.covariance,
        believed_light=float(weights @ light.mean(axis=1)),
        foreseen=tuple(foreseen),
        run_mean=np.array([mean for mean, _ in runs]).reshape(-1, draws),
        run_variance=np.array([variance for _, variance in runs]).reshape(-1, draws),
    )


class _Reading:
    """The trips being read by one set of draws: the belief so far, and the run after each trip."""

    belief: Belief
    runs: list[tuple[Floats, Floats]]

    def __init__(
        self, judging: Judging, trips: JudgedTrips, still: bool, checkpoint: Checkpoint
    ) -> None:
        self._judging, self._trips = judging, trips
        self._still, self._checkpoint = still, checkpoint
        self._days = day_of_year(trips.days)
        weighed = np.array([each.weighed > 0 for each in trips.signs], dtype=np.bool_)
        self._weighed = self._days[weighed]

    def begin(self, year: UsualYear) -> None:
        """Begin from the first trip with the draws of a usual year."""
        if self._still:
            nothing = np.zeros(year.swings.moon.shape)
            still = replace(year.swings, moon=nothing, moon_twice=nothing, runs_sd=nothing)
            year = replace(year, swings=still)
        elsewhere = not self._trips.here.all()
        self.belief = Belief(year, self._judging, elsewhere, self._weighed)
        self.runs = []

    def take(self, i: int) -> Expected:
        """Take in the next trip, the i-th; return what was expected of it before."""
        trips, belief = self._trips, self.belief
        if i % _TRIPS_BETWEEN_CHECKS == 0:
            self._checkpoint()
        if i:
            belief.drift(trips.at_d[i] - trips.at_d[i - 1])
        here = bool(trips.here[i])
        counts = trips.judged[i], trips.light[i]
        trip = Trip(int(self._days[i]), trips.phase_rad[i], *counts, here, trips.signs[i])
        expected = belief.absorb(trip)
        if here:
            self.runs.append((belief.mean[:, RUN].copy(), belief.covariance[:, RUN, RUN].copy()))
        return expected


_LEARNED: Final[Recent[Learned]] = Recent(keep=4)
