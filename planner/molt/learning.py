"""Learning from the log: one pass over the judged trips, kept by the content of the log."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.estimates import INTERVAL_TAILS, Floats, Interval
from planner.logbook import Log, TripOutcome
from planner.molt.belief import RUN, Belief, Trip
from planner.molt.profile import Judging, judging
from planner.molt.recent import Recent
from planner.molt.temperature import UsualWater, usual_water
from planner.molt.trips_judged import JudgedTrips, judged_trips, readings
from planner.molt.year import UsualYear, day_of_year, usual_year
from planner.sites.site import Site

Checkpoint = Callable[[], None]

_TRIPS_BETWEEN_CHECKS: Final = 10


@dataclass(frozen=True)
class Learned:
    """What is believed of a place after its log, or before any.

    weights (draws,), mean (draws, k), covariance (draws, k, k): as `belief` explains, at the
    time of the last trip. foreseen: the share of light crabs expected of each trip at the place
    from the trips before it. run_mean, run_variance: of the run after each of them, (trips
    here, draws).
    """

    water: UsualWater
    year: UsualYear
    trips: JudgedTrips
    weights: Floats
    mean: Floats
    covariance: Floats
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
    year = usual_year(site.species, water)
    checkpoint()
    return pass_over(water, year, judging(site.species), trips, checkpoint)


def season_only(learned: Learned, species: str, checkpoint: Checkpoint) -> Learned:
    """Return what the same log says to a model without moon and runs."""
    swings = learned.year.swings
    nothing = np.zeros(swings.moon.shape)
    still = replace(swings, moon=nothing, moon_twice=nothing, runs_sd=nothing)
    year = replace(learned.year, swings=still)
    return pass_over(learned.water, year, judging(species), learned.trips, checkpoint)


def pass_over(
    water: UsualWater,
    year: UsualYear,
    judging: Judging,
    trips: JudgedTrips,
    checkpoint: Checkpoint = lambda: None,
) -> Learned:
    """Return the belief after the trips, taken in one by one in order of time."""
    days = day_of_year(trips.days)
    weighed = np.array([each.weighed > 0 for each in trips.signs], dtype=np.bool_)
    belief = Belief(year, judging, elsewhere=not trips.here.all(), weighed=days[weighed])
    foreseen: list[Interval] = []
    runs: list[tuple[Floats, Floats]] = []
    for i in range(days.size):
        if i % _TRIPS_BETWEEN_CHECKS == 0:
            checkpoint()
        if i:
            belief.drift(trips.at_d[i] - trips.at_d[i - 1])
        here = bool(trips.here[i])
        counts = trips.judged[i], trips.light[i]
        trip = Trip(int(days[i]), trips.phase_rad[i], *counts, here, trips.signs[i])
        expected = belief.absorb(trip)
        if here:
            low, high = expected.quantiles(INTERVAL_TAILS)
            foreseen.append(Interval(expected.mean, low, high))
            runs.append((belief.mean[:, RUN].copy(), belief.covariance[:, RUN, RUN].copy()))
    draws = belief.log_likelihood.size
    return Learned(
        water=water,
        year=year,
        trips=trips,
        weights=belief.weights,
        mean=belief.mean,
        covariance=belief.covariance,
        foreseen=tuple(foreseen),
        run_mean=np.array([mean for mean, _ in runs]).reshape(-1, draws),
        run_variance=np.array([variance for _, variance in runs]).reshape(-1, draws),
    )


_LEARNED: Final[Recent[Learned]] = Recent(keep=4)
