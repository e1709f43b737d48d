"""What is known of a species before any log: parameters of the model with their spread."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

import numpy as np

from planner.assets import resource
from planner.estimates import Floats
from planner.molt.unknowns import Unknowns

_MOST_MOON: Final = 1.5
# How much of the lunar coefficient's second moment its centre holds: the peak's direction is
# believed in weakly, and nothing keeps a log from turning it round.
_MOON_CENTRED: Final = 0.6


@dataclass(frozen=True)
class Parameters:
    """One value a draw for each parameter of molting and refill; arrays of shape (draws,).

    base_c, molt_above_c: degrees C. degree_days: between molts. ready_per_day: hazard of a
    ready crab. molting_share: scales the rate of molting. f0: fullness just after a molt.
    refill_d, refused_d: days at 25 C. light_below: fullness called light.
    steps: of the chain that a crab's clock runs through, one number for all draws.
    """

    base_c: Floats
    degree_days: Floats
    molt_above_c: Floats
    ready_per_day: Floats
    molting_share: Floats
    f0: Floats
    refill_d: Floats
    q10: Floats
    refused_d: Floats
    light_below: Floats
    steps: int


@dataclass(frozen=True)
class Swings:
    """How strongly moon and runs may move molting, one value a draw; arrays of shape (draws,).

    moon, moon_twice: scale of the first and second lunar harmonic of the log hazard.
    moon_centre (2,), moon_spread (2, 2): mean and covariance of the two coefficients of the
    first one, cosine and sine, for a scale of one.
    runs_sd, runs_memory_d: of the log of the light share, and the days that forget 63% of it.
    """

    moon: Floats
    moon_centre: Floats
    moon_spread: Floats
    moon_twice: Floats
    runs_sd: Floats
    runs_memory_d: Floats


@dataclass(frozen=True)
class SignDraws:
    """How single crabs show what a trip's share of light ones is.

    filling_cut, new_shell_shift (draws,): log odds of "light or filling", and of a new shell,
    beyond those of light. lighter: how much less a light crab weighs for its width, of the log.
    weight_spread: of single crabs; weight_alike: of trips beyond that (wet or muddy crabs, the
    scale).
    """

    filling_cut: Floats
    new_shell_shift: Floats
    lighter: float
    weight_spread: float
    weight_alike: float


@dataclass(frozen=True)
class Judging:
    """How crabs are judged and how far levels stray; see the profile files for the meanings."""

    alike_size: float
    mistaken: float
    user_sd: float
    place_sd: float
    year_sd: float


@lru_cache(maxsize=8)
def _tables(species: str) -> dict[str, Any]:
    return tomllib.loads(resource("species", f"{species}.toml").read_text(encoding="utf-8"))


def dormant_below_c(species: str) -> float:
    """Return the water temperature (degrees C) below which growth stops and crabs lie dormant."""
    return float(_tables(species)["clock"]["base_c"]["mean"])


def judging(species: str) -> Judging:
    """Return how a species' crabs are judged, from its profile."""
    tables = _tables(species)
    return Judging(**tables["judging"], **tables["levels"])


def parameters_of(species: str, unknowns: Unknowns) -> Parameters:
    """Return draws of a species' parameters from its profile in `resources/species/`."""
    clock, refill = _tables(species)["clock"], _tables(species)["refill"]

    def value(name: str) -> Floats:
        return unknowns.value(name, clock[name] if name in clock else refill[name])

    return Parameters(
        base_c=value("base_c"),
        degree_days=value("degree_days"),
        molt_above_c=value("molt_above_c"),
        ready_per_day=value("ready_per_day"),
        molting_share=np.minimum(value("molting_share"), 1.5),
        f0=value("kept") / np.maximum(value("growth"), 1.05) ** 3,
        refill_d=value("days_at_25c"),
        q10=np.maximum(value("q10"), 1.2),
        refused_d=value("refused_days_at_25c"),
        light_below=value("light_below"),
        steps=int(clock["steps"]),
    )


def swings_of(species: str, unknowns: Unknowns) -> Swings:
    """Return draws of the strength of moon and runs from a species' profile."""
    moon, runs = _tables(species)["moon"], _tables(species)["runs"]
    centre, spread = _around_peak(np.radians(moon["peak_deg"]["mean"]), moon["peak_deg"]["kappa"])
    once, twice = (
        np.minimum(unknowns.value(name, moon[name]), _MOST_MOON)
        for name in ("amplitude", "twice_amplitude")
    )
    return Swings(
        moon=once,
        moon_centre=centre,
        moon_spread=spread,
        moon_twice=twice,
        runs_sd=unknowns.value("strength", runs["strength"]),
        runs_memory_d=unknowns.value("memory_d", runs["memory_d"]),
    )


def signs_of(species: str, unknowns: Unknowns) -> SignDraws:
    """Return draws of how single crabs show their state from a species' profile."""
    signs = _tables(species)["signs"]
    return SignDraws(
        filling_cut=unknowns.value("filling_cut", signs["filling_cut"]),
        new_shell_shift=unknowns.value("new_shell_shift", signs["new_shell_shift"]),
        lighter=float(signs["lighter"]),
        weight_spread=float(signs["weight_spread"]),
        weight_alike=float(signs["weight_alike"]),
    )


def _around_peak(peak_rad: float, kappa: float) -> tuple[Floats, Floats]:
    """Return mean (2,) and covariance (2, 2) of the coefficients of a moon of strength one.

    Their centre lies in a direction that is von Mises about the peak (Mardia & Jupp 2000): the
    mean of its cosine is a = I1(kappa) / I0(kappa), of the cosine of twice it 1 - 2 a / kappa.
    """
    kappa = max(kappa, 1e-6)
    around = np.linspace(-np.pi, np.pi, 721)[:-1]
    density = np.exp(kappa * np.cos(around))
    cos = float(density @ np.cos(around) / density.sum())
    cos_twice = 1 - 2 * cos / kappa
    along = (1 + cos_twice) / 2 - cos**2
    across = (1 - cos_twice) / 2
    towards = np.array([np.cos(peak_rad), np.sin(peak_rad)])
    aside = np.array([-towards[1], towards[0]])
    directed = along * np.outer(towards, towards) + across * np.outer(aside, aside)
    held = _MOON_CENTRED**2
    return _MOON_CENTRED * cos * towards, held * directed + (1 - held) / 2 * np.eye(2)
