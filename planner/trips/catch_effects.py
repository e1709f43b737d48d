"""What spots, designs and the time of year do to the catch, pooled as far as the log is thin.

Given the luck that all crabs of a trip share, the keepers of its traps are independent; so a
trip's total tells of the season, and how the total falls to the traps of designs and spots:

total ~ NB(sum of means, k), keepers of the traps | total ~ multinomial, with a dispersion.

Log effects are normal about zero with a standard deviation for spots, for designs and for the
yearly wave ("partial pooling"). Their mode is found by Fisher scoring, their covariance is
Laplace's; the standard deviations follow by EM from a weak prior. Effects are counted from the
average of the logged hauls, weighted by what each tells, which makes them independent of the
rate (to that order): the rate keeps its own posterior, and what is unknown of an effect widens
a forecast only where the plan differs from what was logged.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.estimates import SD_TO_TAIL, Floats, Interval
from planner.trips.catch_record import Mix, TripCatch

# Judgement: spots and makes of trap differ by a third either way, a season's wave by a quarter
# (beside dormancy, which is counted apart). Worth four levels of the log.
_SPOT_SD: Final = 0.3
_DESIGN_SD: Final = 0.3
_SEASON_SD: Final = 0.25
_SD_WORTH: Final = 4.0
# Traps of one trip differ more than chance alone would have it; judgement, worth ten traps.
_DISPERSION: Final = 1.5
_DISPERSION_WORTH: Final = 10.0
_INTERCEPT_SD: Final = 3.0  # says nothing
_STEPS: Final = 60
_TOLERANCE: Final = 1e-6
_LONGEST_STEP: Final = 1.0
_SPOTS, _DESIGNS, _SEASON = range(3)


@dataclass(frozen=True)
class Effects:
    """Log effects as ratios to the log's average haul: what is believed, and how firmly.

    spots, designs: names of the levels, in the order of the columns; two more columns carry the
    yearly wave when `wave`. mode, average: (p,), the effects, and the log's average haul.
    root: (p, p), a square root of their covariance. noise: (draws, p), standard normal.
    hauls, at_spot: counted hauls of the log, in all and by spot.
    """

    spots: tuple[str, ...]
    designs: tuple[str, ...]
    wave: bool
    mix: Mix
    mode: Floats
    average: Floats
    root: Floats
    noise: Floats
    hauls: int
    at_spot: Mapping[str, int]

    def spot(self, name: str) -> Interval:
        """Return how a spot's catch compares with the log's average haul."""
        return self._ratio(self._away(_SPOTS, _one_hot(self.spots, name)))

    def season(self, angle: float | None) -> Interval:
        """Return how a time of year (radians) compares with the log's average haul."""
        return self._ratio(self._season_away(angle))

    def season_means(self, angles: Floats) -> Floats:
        """Return the ratios of times of year (n,), as `season` does, without the intervals."""
        if not self.wave:
            return np.ones(angles.size)
        at = self._columns(_SEASON)
        away = np.stack([np.cos(angles), np.sin(angles)], axis=1) - self.average[at]
        means: Floats = np.exp(away @ self.mode[at])
        return means

    def traps_mean(self) -> float:
        """Return how the plan's mix of spots and designs compares with the log's average haul."""
        ratios = [
            sum(share * self._ratio(away).mean for share, away in parts) for parts in self._parts()
        ]
        return math.prod(ratios)

    def mean(self, angle: float | None) -> float:
        """Return how a whole plan hauled at a time of year compares with the average haul."""
        return self.traps_mean() * self.season(angle).mean

    def draws(self, angle: float | None) -> Floats:
        """Return draws (draws,) of the ratio of a whole plan hauled at a time of year.

        What is unknown widens it and leaves its mean alone: not to know a spot or a season must
        not make a plan look better.
        """
        drawn = self._drawn(self._season_away(angle))
        for parts in self._parts():
            drawn = drawn * sum(share * self._drawn(away) for share, away in parts)
        return drawn

    def _parts(self) -> list[list[tuple[float, Floats]]]:
        """Return, for spots and for designs, each share of the mix and how far it is away."""
        kinds = ((_SPOTS, self.spots, self.mix.spots), (_DESIGNS, self.designs, self.mix.designs))
        return [
            [(share, self._away(kind, _one_hot(names, name))) for name, share in shares.items()]
            for kind, names, shares in kinds
            if shares and names
        ]

    def _season_away(self, angle: float | None) -> Floats:
        if angle is None or not self.wave:
            return np.zeros(self.mode.size)
        return self._away(_SEASON, _wave(angle))

    def _columns(self, kind: int) -> slice:
        edges = (0, len(self.spots), len(self.spots) + len(self.designs), self.mode.size)
        return slice(edges[kind], edges[kind + 1])

    def _away(self, kind: int, values: Floats) -> Floats:
        """Return how far values of one kind's columns are from the log's average, shape (p,)."""
        away = np.zeros(self.mode.size)
        at = self._columns(kind)
        away[at] = values - self.average[at]
        return away

    def _ratio(self, away: Floats) -> Interval:
        middle, sd = float(away @ self.mode), float(np.linalg.norm(away @ self.root))
        low, high = (math.exp(middle + side * SD_TO_TAIL * sd) for side in (-1, 1))
        return Interval(math.exp(middle), low, high)

    def _drawn(self, away: Floats) -> Floats:
        rooted = away @ self.root
        drawn: Floats = np.exp(away @ self.mode + self.noise @ rooted - rooted @ rooted / 2)
        return drawn


def learn_effects(
    trips: Sequence[TripCatch], means: Sequence[Floats], k: float, mix: Mix, noise_seed: int,
    draws: int,
) -> tuple[Effects, list[Floats]]:  # fmt: skip
    """Return the effects, and the log ratio of each haul of each trip to the average haul.

    means: relative expected catch of each trap of each trip, without effects. k: size of the
    negative binomial of a trip's total. mix: what stands in where a haul names no spot or design.
    """
    spots = sorted({*mix.spots, *(name for trip in trips for name in trip.spots if name)})
    designs = sorted({*mix.designs, *(name for trip in trips for name in trip.designs if name)})
    if not trips:
        spots, designs = [], []
    wave = any(trip.season is not None for trip in trips)
    rows = [_rows(trip, spots, designs, wave, mix) for trip in trips]
    kinds = np.repeat([_SPOTS, _DESIGNS, _SEASON], [len(spots), len(designs), 2 * wave])
    fitted = _fit(trips, rows, means, k, kinds) if trips else _nothing()
    rng = np.random.default_rng(noise_seed)
    at_spot = Counter(name for trip in trips for name in trip.spots if name)
    effects = Effects(
        spots=tuple(spots),
        designs=tuple(designs),
        wave=wave,
        mix=mix,
        mode=fitted.mode,
        average=fitted.average,
        root=np.linalg.cholesky(fitted.covariance).astype(np.float64),
        noise=rng.standard_normal((draws, kinds.size)),
        hauls=sum(trip.keepers.size for trip in trips),
        at_spot=dict(at_spot),
    )
    return effects, [(each - fitted.average) @ fitted.mode for each in rows]


@dataclass(frozen=True)
class _Fit:
    mode: Floats
    average: Floats
    covariance: Floats


def _nothing() -> _Fit:
    return _Fit(np.empty(0), np.empty(0), np.empty((0, 0)))


def _fit(
    trips: Sequence[TripCatch],
    rows: Sequence[Floats],
    means: Sequence[Floats],
    k: float,
    kinds: NDArray[np.int64],
) -> _Fit:
    x, keepers = np.concatenate(rows), np.concatenate([trip.keepers for trip in trips])
    sizes = np.array([trip.keepers.size for trip in trips])
    trip, first = np.repeat(np.arange(sizes.size), sizes), np.cumsum(sizes) - sizes
    log_base = np.log(np.maximum(np.concatenate(means), 1e-9))
    totals = np.add.reduceat(keepers, first)
    start_var = np.array([_SPOT_SD, _DESIGN_SD, _SEASON_SD])[kinds] ** 2
    variance, dispersion, effects = start_var, _DISPERSION, np.zeros(kinds.size)
    level = math.log((totals.sum() + 0.5) / (np.exp(log_base).sum() + 0.5))
    for _ in range(_STEPS):
        mean = np.exp(np.minimum(log_base + level + x @ effects, 30.0))
        of_trip = np.add.reduceat(mean, first)
        share = mean / of_trip[trip]
        average_of_trip = np.add.reduceat(share[:, None] * x, first)
        within = x - average_of_trip[trip]
        expected = totals[trip] * share
        tells = of_trip / (1 + of_trip / k)
        by_trip = (totals - of_trip) / (1 + of_trip / k)
        average = tells @ average_of_trip / tells.sum()
        # information on the effects, with the rate of the average haul taken out
        between = average_of_trip - average
        information = (
            between.T @ (tells[:, None] * between)
            + within.T @ (expected[:, None] / dispersion * within)
            + np.diag(1 / variance)
        )
        slope = by_trip @ between + (keepers - expected) @ within / dispersion - effects / variance
        covariance = np.linalg.inv(information)
        step = covariance @ slope
        to_level = (by_trip.sum() - level / _INTERCEPT_SD**2) / (tells.sum() + _INTERCEPT_SD**-2)
        longest = max(float(np.abs(step).max(initial=0.0)), abs(to_level))
        scale = min(1.0, _LONGEST_STEP / max(longest, 1e-12))
        effects = effects + scale * step
        level += scale * (to_level - float(average @ step))
        before = variance
        variance = _pooled(effects, covariance, start_var, kinds)
        dispersion = _dispersion(keepers, expected, totals, sizes)
        if max(longest, float(np.abs(variance - before).max(initial=0.0))) < _TOLERANCE:
            break
    return _Fit(effects, average, (covariance + covariance.T) / 2)


def _pooled(effects: Floats, covariance: Floats, start: Floats, kinds: NDArray[np.int64]) -> Floats:
    """Return the variance of each column's kind: the prior's and the log's, weighted."""
    size = effects**2 + np.diag(covariance)
    found, levels = np.bincount(kinds, size, 3), np.bincount(kinds, minlength=3)
    pooled: Floats = (_SD_WORTH * start + found[kinds]) / (_SD_WORTH + levels[kinds])
    return pooled


def _dispersion(
    keepers: Floats, expected: Floats, totals: Floats, sizes: NDArray[np.int64]
) -> float:
    """Return variance over that of chance, of how a total falls to the traps; at least 1."""
    some = expected > 0
    chi2 = float(((keepers[some] - expected[some]) ** 2 / expected[some]).sum())
    free = float((sizes[totals > 0] - 1).sum())
    return max(1.0, (_DISPERSION_WORTH * _DISPERSION + chi2) / (_DISPERSION_WORTH + free))


def _rows(
    trip: TripCatch, spots: Sequence[str], designs: Sequence[str], wave: bool, mix: Mix
) -> Floats:
    """Return the columns of each haul of a trip, shape (n, p)."""
    count = trip.keepers.size
    season = np.zeros((count, 2 * wave))
    if wave and trip.season is not None:
        season += _wave(trip.season)
    parts = [
        _named(spots, trip.spots or ("",) * count, mix.spots),
        _named(designs, trip.designs or ("",) * count, mix.designs),
        season,
    ]
    rows: Floats = np.concatenate(parts, axis=1)
    return rows


def _named(levels: Sequence[str], names: Sequence[str], shares: Mapping[str, float]) -> Floats:
    """Return 1 in the column of each name, shape (names, levels); for "" the shares."""
    rows = np.zeros((len(names), len(levels)))
    unknown = np.array([shares.get(level, 0.0) for level in levels])
    column = {level: at for at, level in enumerate(levels)}
    for row, name in zip(rows, names, strict=True):
        if name:
            row[column[name]] = 1.0
        else:
            row[:] = unknown
    return rows


def _one_hot(levels: Sequence[str], name: str) -> Floats:
    return np.array([1.0 if each == name else 0.0 for each in levels])


def _wave(angle: float) -> Floats:
    return np.array([math.cos(angle), math.sin(angle)])
