"""From temperature and moon to molting, and from molting to fullness, for draws at once.

A legal crab runs through a chain of steps whose pace is the day's degree-days (a chain of n
steps gives the time between molts a gamma distribution with coefficient of variation
1/sqrt(n)); at its end it is ready and sheds at a hazard that the moon modulates, but only in
water warm enough. After the molt it is refused by traps for a while and refills; both run on
a second clock, days at 25 C, that slows in colder water by a factor Q10 for 10 degrees.

A crab cannot be ready again while it is still light (that takes a whole chain), so the share
of light crabs is the molting of a window of the past: those shed long enough ago to be caught
and not long enough ago to be full.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.estimates import Floats
from planner.molt.profile import Parameters

_MOST_MOLTED_UNSEEN: Final = 0.95
# Keeps the refill clock strictly increasing in water too cold to refill, so it has an inverse.
_STANDSTILL: Final = 1e-6


@dataclass(frozen=True)
class Clocks:
    """The chain's state: share of crabs at each step, shape (draws, steps), and ready, (draws,)."""

    steps: Floats
    ready: Floats


def fresh_clocks(parameters: Parameters) -> Clocks:
    """Return crabs spread evenly over the chain, none ready."""
    draws = parameters.base_c.size
    steps = np.full((draws, parameters.steps), 1 / parameters.steps)
    return Clocks(steps, np.zeros(draws))


def run_clocks(
    parameters: Parameters, water_c: Floats, factor: Floats, clocks: Clocks
) -> tuple[Floats, Clocks]:
    """Return the share of crabs molting each day, shape (draws, days), and the chain at the end.

    water_c: shape (draws, days). factor: what moon and runs multiply the hazard by, the same
    shape.
    """
    # Draws last and contiguous: the loop over days is most of the time of a forecast.
    steps, ready = clocks.steps.T.copy(), clocks.ready.copy()
    warmth = np.maximum(water_c - parameters.base_c[:, None], 0)
    pace = np.minimum(parameters.steps * warmth / parameters.degree_days[:, None], 1.0).T.copy()
    hazard = parameters.ready_per_day[:, None] * shedding(parameters, water_c) * factor
    shed = (1 - np.exp(-hazard)).T.copy()
    molts = np.empty(pace.shape)
    moving = np.empty(steps.shape)
    for day in range(len(pace)):
        np.multiply(steps, pace[day], out=moving)
        steps -= moving
        steps[1:] += moving[:-1]
        ready += moving[-1]
        molts[day] = ready * shed[day]
        ready -= molts[day]
        steps[0] += molts[day]
    return molts.T * parameters.molting_share[:, None], Clocks(steps.T.copy(), ready)


def shedding(parameters: Parameters, water_c: Floats) -> Floats:
    """Return the share of ready crabs that water of a temperature lets shed, (draws, days)."""
    # Crabs differ by about half a degree in what stops them.
    return np.clip(water_c - parameters.molt_above_c[:, None] + 0.5, 0, 1)


def refill_clock(parameters: Parameters, water_c: Floats) -> Floats:
    """Return days at 25 C gone by the end of each day, shape (draws, days), increasing."""
    pace = parameters.q10[:, None] ** ((water_c - 25) / 10)
    return np.cumsum(np.where(water_c > parameters.base_c[:, None], pace, _STANDSTILL), axis=1)


@dataclass(frozen=True)
class Window:
    """When the crabs caught light at each noon had molted, counted in days from the first day.

    Shape (draws, days): those shed after `caught_from` are still refused, those shed before
    `light_from` are full again.
    """

    caught_from: Floats
    light_from: Floats


def light_window(parameters: Parameters, refill: Floats) -> Window:
    """Return the window of past molts that each noon's light crabs come from."""
    edges = np.arange(refill.shape[1] + 1, dtype=np.float64)
    clocks = _from_start(refill)
    # How long, on the refill clock, until a crab is called light no more.
    filling = parameters.refill_d * np.log(
        np.maximum((1 - parameters.f0) / (1 - parameters.light_below), 1.0)
    )
    filling = np.maximum(filling, parameters.refused_d)
    noons = (clocks[:, :-1] + clocks[:, 1:]) / 2
    window = Window(np.empty(refill.shape), np.empty(refill.shape))
    for draw, noon in enumerate(noons):
        since = (noon - parameters.refused_d[draw], noon - filling[draw])
        window.caught_from[draw], window.light_from[draw] = np.interp(since, clocks[draw], edges)
    return window


def catch_quality(
    parameters: Parameters, molts: Floats, refill: Floats, window: Window
) -> tuple[Floats, Floats]:
    """Return fullness and share of light crabs among those a trap would catch, (draws, days).

    molts, refill: of the same days, shape (draws, days); the first weeks still lack the molts
    of before and are for spinning up.
    """
    # Everything that adds up is kept at the days' edges and asked for at noons.
    sheds = _from_start(np.cumsum(molts, axis=1))
    empty = _from_start(_emptiness(parameters, molts, refill))
    shed_then = _at(sheds, window.caught_from)
    unseen = (sheds[:, :-1] + sheds[:, 1:]) / 2 - shed_then
    light = shed_then - _at(sheds, window.light_from)
    deficit = _at(empty, window.caught_from)
    fade = (1 - parameters.f0) * np.exp(-parameters.refused_d / parameters.refill_d)
    seen = 1 - np.minimum(unseen, _MOST_MOLTED_UNSEEN)
    fullness = 1 - np.clip(fade[:, None] * deficit / seen, 0, 1)
    return fullness, np.clip(light / seen, 0, 1)


def _from_start(at_ends: Floats) -> Floats:
    """Return values at the ends of days with a zero for the start, shape (draws, days + 1)."""
    return np.pad(at_ends, ((0, 0), (1, 0)))


def _at(at_edges: Floats, position: Floats) -> Floats:
    """Return values between the days' edges, linearly; position: days, shape (draws, days)."""
    whole = np.minimum(position.astype(np.intp), at_edges.shape[1] - 2)
    part = position - whole
    before = np.take_along_axis(at_edges, whole, axis=1)
    after = np.take_along_axis(at_edges, whole + 1, axis=1)
    between: Floats = before + part * (after - before)
    return between


def _emptiness(parameters: Parameters, molts: Floats, refill: Floats) -> Floats:
    """Return past molts at each day's end, faded by the refill since, shape (draws, days)."""
    refilled = np.diff(refill, axis=1, prepend=0.0) / parameters.refill_d[:, None]
    keep = np.exp(-refilled)
    # Molts of a day fall at its middle, on average.
    new = molts * np.exp(-refilled / 2)
    faded = np.empty(molts.shape)
    left = np.zeros(molts.shape[0])
    for day in range(molts.shape[1]):
        left = left * keep[:, day] + new[:, day]
        faded[:, day] = left
    return faded
