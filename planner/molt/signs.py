"""What crabs looked at one by one add to the counts: grades, shells, and weight for width.

All of them speak of the trip's log odds of a light crab, which the counts speak of too:

- grades are ordered (McCullagh 1980): the log odds of "light or filling" lie a cut above those
  of "light". Given how many of a trip's crabs were not light, the split of the graded ones into
  filling and full is beta-binomial, so that grades and counts together are Dirichlet-multinomial;
- a crab that has lately shed may still have a new shell when a trap takes it, the more often
  where shells harden slowly: log odds a shift away from those of light, beta-binomial;
- light crabs weigh less for their width, if not much, for water takes the place of meat. A
  trip's mean of ten crabs and more is compared with the user's own other crabs of that sex.

Cut and shift differ from draw to draw, so the log teaches them as it does the rest.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.logbook import TripOutcome
from planner.logbook.entries import Crab
from planner.molt.profile import SignDraws

_NEW_SHELLS: Final = ("buster", "soft", "papershell", "buckram")
# They molt no more, so their shells and weights say nothing of this year's molting.
_MOLTS_NO_MORE: Final = "mature female"
# Single crabs differ too much for fewer to say anything (reference: spread 19 to 24%).
_FEWEST_WEIGHED: Final = 10
# Exponent of weight over width: common values and their spread, Callinectes and Cancer species.
_EXPONENT, _EXPONENT_SD = 2.75, 0.25
# Shells and weights are of crabs that were mostly judged as well: they count half on such a trip.
_SEEN_TWICE: Final = 0.5
# So many shares multiplied stay far from the smallest number there is.
_FACTORS: Final = 32
# Of the urn's balls of a colour; a share that rounds to nothing would give no number at all.
_FEWEST_BALLS: Final = 1e-12


@dataclass(frozen=True)
class TripSigns:
    """What a trip's single crabs showed; counts, and the mean of log weight for width.

    graded: crabs graded filling or full, filling: those of them filling. shells: crabs whose
    shell was looked at, new_shells: those of them new. condition: against the user's other
    crabs of that sex, over `weighed` crabs, 0 when fewer than ten.
    """

    filling: int = 0
    graded: int = 0
    new_shells: int = 0
    shells: int = 0
    condition: float = 0.0
    weighed: int = 0

    @property
    def speak(self) -> bool:
        """Whether there is anything to learn from."""
        return bool(self.graded or self.shells or self.weighed)


NO_SIGNS: Final = TripSigns()


def signs_by_trip(outcomes: Sequence[TripOutcome]) -> list[TripSigns]:
    """Return what the single crabs of each trip showed."""
    conditions = _conditions([each.crabs for each in outcomes])
    return [
        _signs(outcome.crabs, condition)
        for outcome, condition in zip(outcomes, conditions, strict=True)
    ]


def _signs(crabs: Sequence[Crab], conditions: Floats) -> TripSigns:
    grades = [crab.grade for crab in crabs]
    shells = [crab.shell for crab in crabs if crab.shell and crab.sex != _MOLTS_NO_MORE]
    enough = conditions.size >= _FEWEST_WEIGHED
    return TripSigns(
        filling=grades.count("filling"),
        graded=grades.count("filling") + grades.count("full"),
        new_shells=sum(shell in _NEW_SHELLS for shell in shells),
        shells=len(shells),
        condition=float(np.sort(conditions).mean()) if enough else 0.0,
        weighed=conditions.size if enough else 0,
    )


def _conditions(crabs_of_trips: Sequence[Sequence[Crab]]) -> list[Floats]:
    """Return log weight for width of each trip's weighed crabs, against all of their kind.

    A kind is a sex and a way to measure the width; its exponent is fitted to the user's own
    crabs from the prior above, so that a published intercept cancels.
    """
    found: list[list[float]] = [[] for _ in crabs_of_trips]
    kinds: dict[tuple[str, str], list[tuple[int, float, float]]] = defaultdict(list)
    for trip, crabs in enumerate(crabs_of_trips):
        for crab in crabs:
            if crab.width_mm and crab.weight_g and crab.sex != _MOLTS_NO_MORE:
                row = (trip, np.log(crab.width_mm), np.log(crab.weight_g))
                kinds[crab.sex, crab.width_by].append(row)
    for rows in kinds.values():
        trips, width, weight = (np.array(column) for column in zip(*sorted(rows), strict=True))
        width, weight = width - width.mean(), weight - weight.mean()
        prior = (0.2 / _EXPONENT_SD) ** 2
        exponent = (width @ weight + prior * _EXPONENT) / (width @ width + prior)
        for trip, off in zip(trips.astype(int), weight - exponent * width, strict=True):
            found[trip].append(float(off))
    return [np.array(each) for each in found]


def signs_log_likelihood(
    signs: TripSigns,
    log_odds: Floats,
    chosen: SignDraws,
    usual_light: Floats,
    *,
    alike_size: float,
    judged: bool,
) -> Floats:
    """Return the log likelihood of a trip's signs, (draws, nodes).

    log_odds: of a light crab, (draws, nodes). usual_light: light share expected of the trips
    that weighed crabs, by season alone, (draws,). alike_size: of the beta distribution of a
    trip. judged: whether the trip's crabs were counted too.
    """
    light = _share(log_odds)
    not_full = _share(log_odds + chosen.filling_cut[:, None])
    found = beta_binomial(
        signs.filling,
        signs.graded - signs.filling,
        alike_size * (not_full - light),
        alike_size * (1 - not_full),
    )
    new = _share(log_odds + chosen.new_shell_shift[:, None])
    further = beta_binomial(
        signs.new_shells,
        signs.shells - signs.new_shells,
        alike_size * new,
        alike_size * (1 - new),
    )
    if signs.weighed:
        expected = -chosen.lighter * (light - usual_light[:, None])
        variance = chosen.weight_spread**2 / signs.weighed + chosen.weight_alike**2
        further = further - (signs.condition - expected) ** 2 / (2 * variance)
    return found + (_SEEN_TWICE if judged else 1.0) * further


def beta_binomial(hits: int, misses: int, alpha: Floats, beta: Floats) -> Floats:
    """Return the log likelihood of hits and misses in one order, of the shape of alpha and beta.

    As Polya's urn, factor by factor: for the crabs of a trip much quicker than gamma functions.
    """
    likelihood = np.zeros(alpha.shape)
    alpha, beta = np.maximum(alpha, _FEWEST_BALLS), np.maximum(beta, _FEWEST_BALLS)
    urn, both = np.ones(alpha.shape), alpha + beta
    for k in range(hits + misses):
        urn *= (alpha + k if k < hits else beta + (k - hits)) / (both + k)
        if k % _FACTORS == _FACTORS - 1:
            likelihood += np.log(urn)
            urn[...] = 1
    return likelihood + np.log(urn)


def _share(log_odds: Floats) -> Floats:
    return 1 / (1 + np.exp(-log_odds))
