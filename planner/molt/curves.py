"""Equally likely draws of what was learned, and the light share and fullness they make."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.molt.belief import HERE, MOON, RUN, USER, YEAR, moon_row, year_row
from planner.molt.learning import Learned
from planner.molt.year import ANSWER_DAYS, DRAWS, Complexes, Indices, day_of_year

# A place or a user whose crabs are called light more often than elsewhere has emptier crabs, or
# a stricter eye: half each, for want of knowing.
_LEVEL_ON_DEFICIT: Final = 0.5


@dataclass(frozen=True)
class Span:
    """Days to forecast: their place among the 365, noon in days since 1970, lunar phase."""

    days: tuple[date, ...]
    day: Indices
    at_d: Floats
    phase_rad: Floats

    def part(self, which: slice) -> Span:
        """Return some of the days."""
        return Span(self.days[which], self.day[which], self.at_d[which], self.phase_rad[which])


def span_of(days: Sequence[date], at_d: Floats, phase_rad: Floats) -> Span:
    """Return days with their noons and lunar phases (radians)."""
    return Span(tuple(days), day_of_year(days), at_d, phase_rad)


@dataclass(frozen=True)
class Parts:
    """Light share as causes join one after the other, and fullness; arrays (draws, days).

    moon_alone, fullness_alone: by season and moon, without place and runs.
    """

    season: Floats
    and_place: Floats
    and_moon: Floats
    and_runs: Floats
    moon_alone: Floats
    fullness: Floats
    fullness_alone: Floats


class PosteriorDraws:
    """Draws of equal weight from what was learned; the same seed gives the same draws.

    which: the draw of the usual year that each stands on, (draws,). coefficients: (draws, k).
    """

    def __init__(self, learned: Learned, seed: int, draws: int = DRAWS) -> None:
        rng = np.random.default_rng(seed)
        self.learned = learned
        self.which = _systematic(learned.weights, draws, rng)
        roots = np.linalg.cholesky(learned.covariance[self.which])
        noise = rng.standard_normal((draws, learned.mean.shape[1]))
        self.coefficients = learned.mean[self.which] + np.einsum("nij,nj->ni", roots, noise)
        # One number a draw carries what a run becomes from day to day, so that bands are smooth.
        self._run_noise = rng.standard_normal((draws, 1))

    @property
    def level(self) -> Floats:
        """How far user and place move the log odds, shape (draws, 1)."""
        both: Floats = self.coefficients[:, [USER]] + self.coefficients[:, [HERE]]
        return both

    def season_log_odds(self, day: Indices) -> Floats:
        """Return log odds by season alone on days among the 365, shape (draws, days)."""
        waves = self.coefficients[:, YEAR] @ year_row(day).T
        log_odds: Floats = self.learned.year.log_odds[self.which[:, None], day] + waves
        return log_odds

    def moon_log_odds(self, day: Indices, phase_rad: Floats) -> Floats:
        """Return what the moon adds to the log odds, shape (draws, days)."""
        return self._moon(self.learned.year.moon_on_light, day, phase_rad)

    def parts(self, span: Span) -> Parts:
        """Return light share and fullness on the days of a span."""
        year = self.learned.year
        season = self.season_log_odds(span.day)
        moon = self.moon_log_odds(span.day, span.phase_rad)
        runs = self._runs(span)
        runs_sd = year.swings.runs_sd[self.which, None]
        waves = self.coefficients[:, YEAR] @ year_row(span.day).T
        moon_on_deficit = self._moon(year.moon_on_deficit, span.day, span.phase_rad)
        calm = year.log_deficit[self.which[:, None], span.day] + waves + moon_on_deficit
        answer = year.runs_on_deficit[self.which[:, None], span.day]
        moved = calm + _LEVEL_ON_DEFICIT * self.level
        moved = moved + answer * runs - (answer * runs_sd) ** 2 / 2
        return Parts(
            season=share(season),
            and_place=share(season + self.level),
            and_moon=share(season + self.level + moon),
            and_runs=share(season + self.level + moon + runs - runs_sd**2 / 2),
            moon_alone=share(season + moon),
            fullness=1 - np.exp(np.minimum(moved, 0)),
            fullness_alone=1 - np.exp(np.minimum(calm, 0)),
        )

    def _moon(self, answers: Complexes, day: Indices, phase_rad: Floats) -> Floats:
        rows = moon_row(answers[self.which[:, None], day // ANSWER_DAYS], phase_rad)
        moved: Floats = (rows @ self.coefficients[:, MOON, None])[..., 0]
        return moved

    def _runs(self, span: Span) -> Floats:
        """Return the run on each day by the trips before that day only, shape (draws, days)."""
        learned, swings = self.learned, self.learned.year.swings
        sd, memory_d = swings.runs_sd[self.which, None], swings.runs_memory_d[self.which, None]
        shape = (self.which.size, span.at_d.size)
        mean, variance, gone = np.zeros(shape), np.zeros(shape), np.full(shape[1], np.inf)
        here = learned.trips.here
        at_d = learned.trips.at_d[here]
        if at_d.size:
            logged = [day.toordinal() for day in np.array(learned.trips.days)[here]]
            newest = np.searchsorted(logged, [day.toordinal() for day in span.days]) - 1
            known, after = newest >= 0, newest == at_d.size - 1
            gone[known] = span.at_d[known] - at_d[newest[known]]
            mean[:, known] = learned.run_mean[newest[known]][:, self.which].T
            variance[:, known] = learned.run_variance[newest[known]][:, self.which].T
            # After the newest trip the run was drawn together with the other coefficients.
            gone[after] = span.at_d[after] - learned.trips.at_d[-1]
            mean[:, after], variance[:, after] = self.coefficients[:, [RUN]], 0
        keep = np.exp(-np.maximum(gone, 0) / memory_d)
        spread = np.sqrt(keep**2 * variance + (1 - keep**2) * sd**2)
        runs: Floats = keep * mean + spread * self._run_noise
        return runs


def share(log_odds: Floats) -> Floats:
    """Return the share that log odds stand for."""
    return 1 / (1 + np.exp(-log_odds))


def _systematic(weights: Floats, draws: int, rng: np.random.Generator) -> Indices:
    """Return indices drawn by weight with as little chance as there can be, shape (draws,)."""
    ticks = (np.arange(draws) + rng.random()) / draws
    found: Indices = np.searchsorted(np.cumsum(weights), ticks)
    return np.minimum(found, weights.size - 1)
