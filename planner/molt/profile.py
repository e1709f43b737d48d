"""What is known of a species before any log: parameters of the model with their spread."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass, fields, replace
from functools import lru_cache
from typing import Any, Final

import numpy as np

from planner.assets import resource
from planner.estimates import Floats

_LEAST_LUNAR_FACTOR: Final = 0.02


@dataclass(frozen=True)
class Parameters:
    """One value a draw for each parameter of the model; arrays of shape (draws,).

    base_c, molt_above_c: degrees C. degree_days: between molts. ready_per_day: hazard of a
    ready crab. molting_share: scales the rate of molting. moon, moon_twice: amplitudes of the
    first and second lunar harmonic; their peaks in degrees of lunar phase. f0: fullness just
    after a molt. refill_d, refused_d: days at 25 C. light_below: fullness called light.
    steps: of the chain that a crab's clock runs through, one number for all draws.
    """

    base_c: Floats
    degree_days: Floats
    molt_above_c: Floats
    ready_per_day: Floats
    molting_share: Floats
    moon: Floats
    moon_peak_deg: Floats
    moon_twice: Floats
    moon_twice_peak_deg: Floats
    f0: Floats
    refill_d: Floats
    q10: Floats
    refused_d: Floats
    light_below: Floats
    steps: int


def repeated(parameters: Parameters, times: int) -> Parameters:
    """Return the same draws several times over, one run after the other."""
    values = {each.name: getattr(parameters, each.name) for each in fields(parameters)}
    draws: dict[str, Any] = {
        name: np.tile(value, times) for name, value in values.items() if name != "steps"
    }
    return replace(parameters, **draws)


@lru_cache(maxsize=8)
def _tables(species: str) -> dict[str, Any]:
    return tomllib.loads(resource("species", f"{species}.toml").read_text(encoding="utf-8"))


def species_name(species: str) -> str:
    """Return a species as people call it."""
    return str(_tables(species)["name"])


def dormant_below_c(species: str) -> float:
    """Return the water temperature (degrees C) below which growth stops and crabs lie dormant."""
    return float(_tables(species)["clock"]["base_c"]["mean"])


def draw_parameters(species: str, draws: int, rng: np.random.Generator) -> Parameters:
    """Return draws of a species' parameters from its profile in `resources/species/`."""
    tables = _tables(species)
    clock, moon, refill = tables["clock"], tables["moon"], tables["refill"]

    def value(prior: dict[str, float]) -> Floats:
        return _draw(prior, draws, rng)

    once = np.minimum(value(moon["amplitude"]), 0.95)
    twice = np.minimum(value(moon["twice_amplitude"]), 0.95 - once * 0.5)
    growth = np.maximum(value(refill["growth"]), 1.05)
    return Parameters(
        base_c=value(clock["base_c"]),
        degree_days=value(clock["degree_days"]),
        molt_above_c=value(clock["molt_above_c"]),
        ready_per_day=value(clock["ready_per_day"]),
        molting_share=np.minimum(value(clock["molting_share"]), 1.5),
        moon=once,
        moon_peak_deg=_draw_peak(moon["peak_deg"], draws, rng),
        moon_twice=twice,
        # Nothing is known of the semilunar phase.
        moon_twice_peak_deg=rng.uniform(0, 180, draws),
        f0=value(refill["kept"]) / growth**3,
        refill_d=value(refill["days_at_25c"]),
        q10=np.maximum(value(refill["q10"]), 1.2),
        refused_d=value(refill["refused_days_at_25c"]),
        light_below=value(refill["light_below"]),
        steps=int(clock["steps"]),
    )


def lunar_factor(parameters: Parameters, phase_deg: Floats) -> Floats:
    """Return what the moon multiplies molting by, shape (draws, days), about 1 on average.

    phase_deg: 0 at new moon, 180 at full, shape (days,).
    """
    once = np.cos(np.radians(phase_deg - parameters.moon_peak_deg[:, None]))
    twice = np.cos(np.radians(2 * (phase_deg - parameters.moon_twice_peak_deg[:, None])))
    factor = 1 + parameters.moon[:, None] * once + parameters.moon_twice[:, None] * twice
    return np.maximum(factor, _LEAST_LUNAR_FACTOR)


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
        return rng.uniform(0, 360, draws)
    peak: Floats = np.degrees(rng.vonmises(np.radians(prior["mean"]), prior["kappa"], draws)) % 360
    return peak
