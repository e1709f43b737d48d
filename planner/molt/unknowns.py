"""Draws of all that is not known, each on a scale where it is believed to be standard normal.

On that scale draws can be made near what a log says and still be weighed as they are believed
in: a draw's weight is the density believed in over the density it was drawn from (importance
sampling). A share of every set is drawn as believed, so that no weight grows without bound.
"""

from __future__ import annotations

from dataclasses import dataclass
from statistics import NormalDist
from typing import Final

import numpy as np

from planner.estimates import Floats

WATER: Final = ("water_level", "water_wave", "water_lag")
# The others are called as in the profile files.
_NAMES: Final = (
    *("base_c", "degree_days", "molt_above_c", "ready_per_day", "molting_share"),
    *("growth", "kept", "days_at_25c", "q10", "refused_days_at_25c", "light_below"),
    *WATER,
    *("amplitude", "twice_amplitude", "strength", "memory_d"),
    *("filling_cut", "new_shell_shift"),
)
_COLUMN: Final = {name: column for column, name in enumerate(_NAMES)}
_NORMAL: Final = NormalDist()
# Beyond so many standard deviations a share of the normal is 0 or 1 to the last digit.
_FARTHEST: Final = 6.0
# A strong moon is drawn more often than it is believed in, so that a log that shows one finds
# draws to speak for it.
_STRONG_MOON: Final = (1.5, 1.25)
_AS_BELIEVED_FIRST: Final = 0.5
_AS_BELIEVED_NEAR: Final = 0.1
# A normal fitted to few draws is drawn a little wider, its mean towards what is believed as by
# one draw and its spread as by eight; judgement.
_WIDER: Final = 1.07
_MEAN_DRAWS, _SPREAD_DRAWS = 1.0, 8.0


@dataclass(frozen=True)
class Unknowns:
    """Draws of standard normal scores, (draws, unknowns), and the log of their weight, (draws,)."""

    scores: Floats
    log_weight: Floats

    def score(self, name: str) -> Floats:
        """Return the scores of one unknown, shape (draws,)."""
        scores: Floats = self.scores[:, _COLUMN[name]]
        return scores

    def value(self, name: str, prior: dict[str, float]) -> Floats:
        """Return the values of one unknown under its prior, as profile files put it, (draws,)."""
        score = self.score(name)
        match prior:
            case {"mean": mean, "sd": sd}:
                return mean + sd * score
            case {"median": median, "sd_log": sd_log}:
                return median * np.exp(sd_log * score)
            case {"half_sd": half_sd}:
                upper = (1 + _share_below(score)) / 2
                return half_sd * np.array([_NORMAL.inv_cdf(share) for share in upper])
            case {"low": low, "high": high}:
                return low + (high - low) * _share_below(score)
        raise ValueError(f"no such kind of prior: {sorted(prior)}")


def unknowns(draws: int, rng: np.random.Generator) -> Unknowns:
    """Return draws of what is believed before any log."""
    mean, sd = np.zeros(len(_NAMES)), np.ones(len(_NAMES))
    mean[_COLUMN["amplitude"]], sd[_COLUMN["amplitude"]] = _STRONG_MOON
    return _drawn(mean, sd, _AS_BELIEVED_FIRST, draws, rng)


def unknowns_near(believed: Unknowns, weights: Floats, rng: np.random.Generator) -> Unknowns:
    """Return as many new draws near those that weigh most.

    weights: of the draws believed in, adding up to one, shape (draws,).
    """
    worth = 1 / float((weights**2).sum())
    mean = weights @ believed.scores
    variance = weights @ (believed.scores - mean) ** 2
    variance = (worth * variance + _SPREAD_DRAWS) / (worth + _SPREAD_DRAWS)
    mean = mean * worth / (worth + _MEAN_DRAWS)
    return _drawn(mean, _WIDER * np.sqrt(variance), _AS_BELIEVED_NEAR, weights.size, rng)


def _drawn(
    mean: Floats, sd: Floats, as_believed: float, draws: int, rng: np.random.Generator
) -> Unknowns:
    """Return draws of a mixture of what is believed and of independent normals."""
    noise = _evenly(draws, mean.size, rng)
    scores = np.where(rng.random((draws, 1)) < as_believed, noise, mean + sd * noise)
    believed = -(scores**2).sum(axis=1) / 2
    near = -(((scores - mean) / sd) ** 2).sum(axis=1) / 2 - np.log(sd).sum()
    drawn = np.logaddexp(np.log(as_believed) + believed, np.log(1 - as_believed) + near)
    return Unknowns(scores, believed - drawn)


def _evenly(draws: int, count: int, rng: np.random.Generator) -> Floats:
    """Return standard normal draws, one in each of as many equal shares (a Latin hypercube).

    Shape (draws, count). Of few draws their mean is nearer what many would give. scipy.stats.qmc
    has one too, but takes longer to load than the first days of the strip to be worked out.
    """
    slots = rng.permuted(np.tile(np.arange(draws), (count, 1)), axis=1).T
    shares = ((slots + rng.random(slots.shape)) / draws).ravel()
    return np.array([_NORMAL.inv_cdf(share) for share in shares]).reshape(slots.shape)


def _share_below(score: Floats) -> Floats:
    """Return the share of a standard normal below scores; without scipy, which loads slowly."""
    near = np.clip(score, -_FARTHEST, _FARTHEST)
    return np.array([_NORMAL.cdf(each) for each in near])
