"""What is known of a species before any log: parameters of the model with their spread."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

import numpy as np

from planner.assets import resource
from planner.estimates import Floats

_MOST_MOON: Final = 1.5
_WIDE_SHARE: Final = 0.5
_WIDER: Final = 3.0


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
    moon_peak_rad: lunar phase around which the first one's peak is centred.
    runs_sd, runs_memory_d: of the log of the light share, and the days that forget 63% of it.
    log_weight: a strong moon is drawn more often than it is believed in, so that a log that
    shows one finds draws to speak for it; the weight makes up for that.
    """

    moon: Floats
    moon_peak_rad: Floats
    moon_twice: Floats
    runs_sd: Floats
    runs_memory_d: Floats
    log_weight: Floats


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


def species_name(species: str) -> str:
    """Return a species as people call it."""
    return str(_tables(species)["name"])


def dormant_below_c(species: str) -> float:
    """Return the water temperature (degrees C) below which growth stops and crabs lie dormant."""
    return float(_tables(species)["clock"]["base_c"]["mean"])


def judging(species: str) -> Judging:
    """Return how a species' crabs are judged, from its profile."""
    tables = _tables(species)
    return Judging(**tables["judging"], **tables["levels"])


def draw_parameters(species: str, draws: int, rng: np.random.Generator) -> Parameters:
    """Return draws of a species' parameters from its profile in `resources/species/`."""
    clock, refill = _tables(species)["clock"], _tables(species)["refill"]

    def value(prior: dict[str, float]) -> Floats:
        return _draw(prior, draws, rng)

    growth = np.maximum(value(refill["growth"]), 1.05)
    return Parameters(
        base_c=value(clock["base_c"]),
        degree_days=value(clock["degree_days"]),
        molt_above_c=value(clock["molt_above_c"]),
        ready_per_day=value(clock["ready_per_day"]),
        molting_share=np.minimum(value(clock["molting_share"]), 1.5),
        f0=value(refill["kept"]) / growth**3,
        refill_d=value(refill["days_at_25c"]),
        q10=np.maximum(value(refill["q10"]), 1.2),
        refused_d=value(refill["refused_days_at_25c"]),
        light_below=value(refill["light_below"]),
        steps=int(clock["steps"]),
    )


def draw_swings(species: str, draws: int, rng: np.random.Generator) -> Swings:
    """Return draws of the strength of moon and runs from a species' profile."""
    moon, runs = _tables(species)["moon"], _tables(species)["runs"]
    half_sd = moon["amplitude"]["half_sd"]
    wide = rng.random(draws) < _WIDE_SHARE
    amplitude = np.minimum(half_sd * np.abs(rng.normal(0, np.where(wide, _WIDER, 1))), _MOST_MOON)
    within = amplitude / half_sd
    # Density drawn from, over that believed in, up to a constant.
    drawn = (1 - _WIDE_SHARE) + _WIDE_SHARE / _WIDER * np.exp(within**2 / 2 * (1 - _WIDER**-2))
    return Swings(
        moon=amplitude,
        moon_peak_rad=_draw_peak(moon["peak_deg"], draws, rng),
        moon_twice=np.minimum(_draw(moon["twice_amplitude"], draws, rng), _MOST_MOON),
        runs_sd=_draw(runs["strength"], draws, rng),
        runs_memory_d=_draw(runs["memory_d"], draws, rng),
        log_weight=-np.log(drawn),
    )


def draw_signs(species: str, draws: int, rng: np.random.Generator) -> SignDraws:
    """Return draws of how single crabs show their state from a species' profile."""
    signs = _tables(species)["signs"]
    return SignDraws(
        filling_cut=_draw(signs["filling_cut"], draws, rng),
        new_shell_shift=_draw(signs["new_shell_shift"], draws, rng),
        lighter=float(signs["lighter"]),
        weight_spread=float(signs["weight_spread"]),
        weight_alike=float(signs["weight_alike"]),
    )


def _draw(prior: dict[str, float], draws: int, rng: np.random.Generator) -> Floats:
    match prior:
        case {"mean": mean, "sd": sd}:
            return rng.normal(mean, sd, draws)
        case {"median": median, "sd_log": sd_log}:
            return median * np.exp(rng.normal(0, sd_log, draws))
        case {"half_sd": half_sd}:
            return np.abs(rng.normal(0, half_sd, draws))
        case {"low": low, "high": high}:
            return rng.uniform(low, high, draws)
    raise ValueError(f"no such kind of prior: {sorted(prior)}")


def _draw_peak(prior: dict[str, float], draws: int, rng: np.random.Generator) -> Floats:
    if prior["kappa"] == 0:
        return rng.uniform(0, 2 * np.pi, draws)
    return rng.vonmises(np.radians(prior["mean"]), prior["kappa"], draws)
