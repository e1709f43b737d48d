"""What is believed after each trip: a weight for every draw, and a normal for what adds up.

The log odds that a judged crab is light on a trip are, for each draw of the usual year,

    log odds of the day + user + place + moon . answer + year waves + run - runs_sd^2 / 2

The terms after the first are linear in unknown coefficients that are normal given the draw, the
run one value of an Ornstein-Uhlenbeck process that forgets between trips. A trip is taken in by
assumed-density filtering: the normal of the trip's log odds times its beta-binomial likelihood
is replaced by the normal of the same mean and variance (by Gauss-Hermite quadrature), and the
draw's weight is multiplied by the likelihood. So one pass over the log in order of time gives
the posterior, and the forecast of each trip from the earlier ones on the way.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.molt.profile import Judging
from planner.molt.signs import NO_SIGNS, TripSigns, beta_binomial, signs_log_likelihood
from planner.molt.year import ANSWER_DAYS, DAYS, Complexes, Indices, UsualYear

USER, HERE, RUN, ELSEWHERE, RUN_ELSEWHERE = 0, 1, 8, 9, 10
MOON: Final = slice(2, 6)
YEAR: Final = slice(6, 8)
_COEFFICIENTS_HERE: Final = 9
_COEFFICIENTS: Final = 11
_LEAST_VARIANCE: Final = 1e-8
_LEAST_DRAWS: Final = 24
_HALVINGS: Final = 12
_NODES, _WEIGHTS = np.polynomial.hermite_e.hermegauss(13)
_WEIGHTS = _WEIGHTS / _WEIGHTS.sum()


@dataclass(frozen=True)
class Trip:
    """One trip: its day among the 365, lunar phase (radians), counts, and whether here.

    signs: of its single crabs, by which a trip can speak without counts.
    """

    day: int
    phase_rad: float
    judged: float
    light: float
    here: bool
    signs: TripSigns = NO_SIGNS


@dataclass(frozen=True)
class Expected:
    """A trip as foreseen: shares at the quadrature nodes and their weights, (draws, nodes)."""

    shares: Floats
    weights: Floats

    @property
    def mean(self) -> float:
        """The expected share of light crabs."""
        return float((self.shares * self.weights).sum())

    def quantiles(self, tails: tuple[float, ...]) -> list[float]:
        """Return quantiles of the share."""
        order = np.argsort(self.shares, axis=None)
        below = np.cumsum(self.weights.ravel()[order])
        at = np.minimum(np.searchsorted(below, tails), below.size - 1)
        return [float(share) for share in self.shares.ravel()[order][at]]


class Belief:
    """The state of one pass over the trips.

    log_likelihood (draws,), mean (draws, k), covariance (draws, k, k).
    """

    def __init__(
        self, year: UsualYear, judging: Judging, elsewhere: bool, weighed: Indices | None = None
    ) -> None:
        """weighed: days among the 365 of the trips that weighed crabs."""
        self.year, self._size = year, judging.alike_size
        days = np.arange(DAYS) if weighed is None or not weighed.size else weighed
        self._usual_light = (1 / (1 + np.exp(-year.log_odds[:, days]))).mean(axis=1)
        draws = year.log_odds.shape[0]
        count = _COEFFICIENTS if elsewhere else _COEFFICIENTS_HERE
        self.log_likelihood = np.zeros(draws)
        self.mean = np.zeros((draws, count))
        swings = year.swings
        variance = np.zeros((draws, count))
        variance[:, USER], variance[:, HERE] = judging.user_sd**2, judging.place_sd**2
        self.mean[:, 2:4] = swings.moon[:, None] * swings.moon_centre
        variance[:, 4:6] = (swings.moon_twice**2 / 2)[:, None]
        variance[:, YEAR] = judging.year_sd**2 / 2
        variance[:, RUN] = swings.runs_sd**2
        if elsewhere:
            variance[:, ELSEWHERE] = judging.place_sd**2 + judging.year_sd**2
            variance[:, RUN_ELSEWHERE] = swings.runs_sd**2
        self.covariance = np.zeros((draws, count, count))
        diagonal = np.arange(count)
        self.covariance[:, diagonal, diagonal] = np.maximum(variance, _LEAST_VARIANCE)
        self.covariance[:, 2:4, 2:4] += swings.moon[:, None, None] ** 2 * swings.moon_spread

    @property
    def worth(self) -> float:
        """How many draws of equal weight the draws are worth (Kish)."""
        return _worth(self._weights(1.0))

    @property
    def weights(self) -> Floats:
        """Weights of the draws, adding up to one, shape (draws,).

        A log so unlike the prior that few draws are left to speak for it is believed a little
        less: its likelihood is raised to the power that leaves enough of them.
        """
        return self.weights_worth(_LEAST_DRAWS)

    def weights_worth(self, least: float) -> Floats:
        """Return the weights, the likelihood believed less where they are worth too few draws."""
        low, high = 0.0, 1.0
        weights = self._weights(1.0)
        if _worth(weights) >= least:
            return weights
        for _ in range(_HALVINGS):
            power = (low + high) / 2
            weights = self._weights(power)
            low, high = (power, high) if _worth(weights) >= least else (low, power)
        return self._weights(low)

    def _weights(self, power: float) -> Floats:
        log = self.year.drawn.log_weight + power * self.log_likelihood
        weights = np.exp(log - log.max())
        normed: Floats = weights / weights.sum()
        return normed

    def drift(self, days: float) -> None:
        """Let runs be forgotten over some days."""
        swings = self.year.swings
        keep = np.exp(-days / swings.runs_memory_d)
        fresh = np.maximum(swings.runs_sd**2, _LEAST_VARIANCE) * (1 - keep**2)
        for run in (RUN, RUN_ELSEWHERE):
            if run < self.mean.shape[1]:
                self.mean[:, run] *= keep
                self.covariance[:, run, :] *= keep[:, None]
                self.covariance[:, :, run] *= keep[:, None]
                self.covariance[:, run, run] += fresh

    def absorb(self, trip: Trip) -> Expected:
        """Learn from a trip; return what was expected of it before."""
        row = self._row(trip)
        across = np.einsum("nij,nj->ni", self.covariance, row)
        before = self.year.log_odds[:, trip.day] - self.year.swings.runs_sd**2 / 2
        before = before + (row * self.mean).sum(axis=1)
        variance = (across * row).sum(axis=1)
        nodes = before[:, None] + np.sqrt(variance)[:, None] * _NODES
        share = 1 / (1 + np.exp(-nodes))
        expected = Expected(share, self.weights[:, None] * _WEIGHTS)
        light, full = round(trip.light), round(trip.judged - trip.light)
        log_likelihood = beta_binomial(light, full, self._size * share, self._size * (1 - share))
        if trip.signs.speak:
            log_likelihood = log_likelihood + signs_log_likelihood(
                trip.signs,
                nodes,
                self.year.signs,
                self._usual_light,
                alike_size=self._size,
                judged=trip.judged > 0,
            )
        top = log_likelihood.max(axis=1)
        posterior = _WEIGHTS * np.exp(log_likelihood - top[:, None])
        total = posterior.sum(axis=1)
        posterior /= total[:, None]
        after = (posterior * nodes).sum(axis=1)
        spread = (posterior * (nodes - after[:, None]) ** 2).sum(axis=1)
        gain = across / variance[:, None]
        self.mean += gain * (after - before)[:, None]
        shrunk = gain * np.maximum(variance - spread, 0)[:, None]
        self.covariance -= shrunk[:, :, None] * gain[:, None, :]
        self.log_likelihood = self.log_likelihood + top + np.log(total)
        return expected

    def _row(self, trip: Trip) -> Floats:
        row = np.zeros(self.mean.shape)
        row[:, USER] = 1
        row[:, HERE if trip.here else ELSEWHERE] = 1
        row[:, MOON] = moon_row(self.year.moon_on_light[:, trip.day // ANSWER_DAYS], trip.phase_rad)
        if trip.here:
            row[:, YEAR] = year_row(trip.day)
        row[:, RUN if trip.here else RUN_ELSEWHERE] = 1
        return row


def _worth(weights: Floats) -> float:
    return float(1 / (weights**2).sum())


def moon_row(answers: Complexes, phase_rad: float | Floats) -> Floats:
    """Return what multiplies the four lunar coefficients, shape (..., 4).

    answers: complex, shape (..., 2). A log hazard a cos(phase) + b sin(phase) moves what
    answers by a Re + b Im of answer * exp(i phase), and likewise twice as fast.
    """
    once = answers[..., 0] * np.exp(1j * np.asarray(phase_rad))
    twice = answers[..., 1] * np.exp(2j * np.asarray(phase_rad))
    return np.stack([once.real, once.imag, twice.real, twice.imag], axis=-1)


def year_row(day: int | Indices) -> Floats:
    """Return the yearly waves on a day among the 365, shape (..., 2), of mean square one."""
    angle = 2 * np.pi * (np.asarray(day) + 0.5) / DAYS
    waves: Floats = np.sqrt(2) * np.stack([np.cos(angle), np.sin(angle)], axis=-1)
    return waves
