"""What `fullshell check` says, line by line."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

import numpy as np

from planner.cli.answers import table_lines
from planner.cli.check_figures import FIGURES, spread_of
from planner.estimates import Floats
from planner.phrasing import Style, day_text, height_text, numbers_text
from planner.sites import Site
from planner.units import LengthUnit, metres_to
from planner.words import counted, say

if TYPE_CHECKING:
    from planner.tides.checks import Comparison, WaterCheck
    from planner.tides.fit import FittedWater


def understood_lines(site: Site, style: Style) -> Iterator[str]:
    """Yield what was understood of a place file."""
    from planner.tides.events import lags_text

    north_south = say("N") if site.latitude_deg >= 0 else say("S")
    east_west = say("E") if site.longitude_deg >= 0 else say("W")
    yield say(
        "position: {latitude_deg:.4f} {north_south}, {longitude_deg:.4f} "
        "{east_west}; clock of {key}",
        latitude_deg=abs(site.latitude_deg),
        north_south=north_south,
        longitude_deg=abs(site.longitude_deg),
        east_west=east_west,
        key=site.zone.key,
    )
    yield say(
        "water: {made_of}; heights above {datum}", made_of=_made_of(site), datum=site.water.datum
    )
    if site.water.source:
        yield say("source: {source}", source=site.water.source)
    if site.lowest_ramp_level_m is not None:
        yield say(
            "ramp: launches from {height} up", height=height_text(site.lowest_ramp_level_m, style)
        )
    if site.slack is not None:
        yield say("slack: {when}", when=lags_text(site.slack))
    if site.monthly_water_c is not None:
        coldest, warmest = min(site.monthly_water_c), max(site.monthly_water_c)
        yield say(
            "water temperature: {range} °C over the year", range=numbers_text(coldest, warmest)
        )
    if site.closures:
        yield say(
            "closures: {listed}", listed=", ".join(closure.reason for closure in site.closures)
        )
    rules = site.rules
    if rules.checked is not None:
        checked = f"{day_text(rules.checked)} {rules.checked:%Y}"
        yield say(
            "rules: {notes}, checked {checked}",
            notes=counted(len(rules.notes), "note"),
            checked=checked,
        )


def _made_of(site: Site) -> str:
    water = site.water
    if water.offsets is not None:
        return say("differences from {name}", name=water.offsets.reference.name)
    largest = max(water.constants, key=lambda constant: constant.amplitude_m)
    state = (
        say(" of {constants_state}", constants_state=water.constants_state)
        if water.constants_state
        else ""
    )
    return say(
        "{constants}{state}, {constituent} the largest; node factors {node_factors}",
        constants=counted(len(water.constants), "constituent"),
        state=state,
        constituent=largest.constituent,
        node_factors=say("yearly") if water.node_factors == "yearly" else say("continuous"),
    )


def tide_lines(found: WaterCheck, style: Style) -> Iterator[str]:
    """Yield the kind of tide and its figures."""
    summary = found.summary
    if summary is None:
        yield say("tide: the water never turns here")
        return
    yield say("tide: {tide_type}", tide_type=summary.tide_type)
    for name, words in FIGURES.items():
        yield f"  {words:<23} {height_text(getattr(summary, name), style):>9}"


def spot_lines(site: Site, found: WaterCheck, style: Style) -> Iterator[str]:
    """Yield the spots against the lowest water of 19 years."""
    if not site.spots or found.summary is None:
        return
    lowest_m = found.summary.lowest_m
    rows = [
        (
            spot.name,
            height_text(spot.depth_m, style),
            height_text(spot.trap_height_m, style),
            height_text(lowest_m - spot.trap_top_m, style),
        )
        for spot in site.spots
    ]
    yield from table_lines(
        (say("spot"), say("depth"), say("trap"), say("cover at lowest")), rows, right="lrrr"
    )


def observed_lines(comparison: Comparison, style: Style) -> Iterator[str]:
    """Yield how observed high and low waters lie beside the predicted ones."""
    seen = len(comparison.observed.times)
    yield say(
        "observed: {seen} high and low waters, {matched} matched with predicted ones",
        seen=seen,
        matched=comparison.matched,
    )
    if np.isfinite(comparison.height_bias_m):
        yield say(
            "  heights: {bias} on average, scatter {scatter}",
            bias=_apart(comparison.height_bias_m, style),
            scatter=_apart(comparison.height_scatter_m, style, signed=False),
        )
    if np.isfinite(comparison.time_bias_min):
        scatter = comparison.time_scatter_min
        spread = (
            say("{scatter:.0f} min", scatter=scatter)
            if np.isfinite(scatter)
            else say("unknown from one")
        )
        yield say(
            "  times: {time_bias_min:+.0f} min on average, scatter {spread}",
            time_bias_min=comparison.time_bias_min,
            spread=spread,
        )


def level_lines(differences_m: Floats, style: Style) -> Iterator[str]:
    """Yield how observed levels lie beside the predicted ones, shape (n,)."""
    yield say("observed: {size} levels beside the predicted ones", size=differences_m.size)
    if differences_m.size:
        yield say(
            "  heights: {bias} on average, scatter {scatter}",
            bias=_apart(float(differences_m.mean()), style),
            scatter=_apart(spread_of(differences_m), style, signed=False),
        )


def _apart(difference_m: float, style: Style, *, signed: bool = True) -> str:
    """Return a difference of heights, finer than heights are worded: it is a mean of many."""
    if not np.isfinite(difference_m):
        return say("unknown from one")
    sign = "+" if signed else ""
    if style.length == "ft":
        return say("{apart:{sign}.2f} ft", apart=metres_to(difference_m, "ft"), sign=sign)
    return say("{difference_m:{sign}.0f} cm", difference_m=difference_m * 100, sign=sign)


def fit_lines(found: FittedWater, unit: LengthUnit) -> Iterator[str]:
    """Yield the constants fitted to levels, each with its 80% interval."""
    from planner.tides.fit_words import fitted_rows, fitted_texts

    yield say("fitted to the levels, lags on UTC:")
    yield from (f"  {text}" for text in fitted_texts(found, unit))
    heads = (say("constituent"), say("amplitude, {unit}", unit=unit), say("lag, deg"), "")
    yield from table_lines(heads, fitted_rows(found, unit), right="lrrl")
