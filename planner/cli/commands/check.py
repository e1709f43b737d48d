"""`fullshell check`: what a place file says, whether it can be right, and what was observed."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from dataclasses import astuple
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from planner.cli.answers import Answer, Sheet, number, table_lines
from planner.cli.arguments import add_job, add_place, heading, place_of, style_of
from planner.cli.errors import UsageError
from planner.estimates import Floats
from planner.phrasing import TIDE_CAUTION, Style, day_text, height_text
from planner.sites import Site
from planner.units import LengthUnit, metres_to
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.tides.checks import Comparison, WaterCheck, WaterSummary
    from planner.tides.fit import FittedWater

_FIGURES = {
    "mean_level_m": say("mean level"),
    "mean_range_m": say("mean range"),
    "springs_range_m": say("range at springs"),
    "neaps_range_m": say("range at neaps"),
    "mean_higher_high_m": say("mean higher high water"),
    "mean_lower_low_m": say("mean lower low water"),
    "highest_m": say("highest in 19 years"),
    "lowest_m": say("lowest in 19 years"),
}

_FITTED = (
    "constituent", "amplitude_m", "amplitude_low_m", "amplitude_high_m",
    "lag_deg", "lag_low_deg", "lag_high_deg", "stands_out",
)  # fmt: skip


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("What a place file says, whether it can be right, and what was observed there.")
    parser = add_job(jobs, "check", summary, _answer)
    add_place(parser)
    parser.add_argument(
        "--observed",
        metavar="FILE",
        help=say(
            "what was seen there: CSV with the header time,height,kind for high and low waters, "
            "or time,height for levels; heights in the units of the place file, or of --units"
        ),
    )
    parser.add_argument(
        "--fit",
        action="store_true",
        help=say("work constants out from the levels of --observed (15 to 400 days of them)"),
    )


def _answer(args: Namespace) -> Answer:
    from planner.tides.checks import check_water, read_observed_turns

    site = place_of(args)
    unit = args.units or site.water.file_units
    turns = levels = None
    if args.observed is not None and _has_kinds(Path(args.observed)):
        turns = read_observed_turns(Path(args.observed), site.zone, unit)
    elif args.observed is not None:
        levels = _compare_levels(site, Path(args.observed), unit)
    fitted = _fit(site, Path(args.observed or ""), unit) if _wants_fit(args) else None
    found = check_water(site, turns)
    observed = _comparison(found.comparison) or _level_figures(levels)

    def data() -> dict[str, Any]:
        return {
            "place": site.name,
            "invented": site.invented,
            "problems": [],
            "constituents": len(site.water.constants),
            "reference": site.water.offsets.reference.name if site.water.offsets else None,
            "tide": _summary(found.summary) or None,
            "observed": observed or None,
            **({"fit": _fit_figures(fitted)} if fitted is not None else {}),
            "suspicions": [
                {"code": each.code, "text": each.text, "remedy": each.remedy}
                for each in found.suspicions
            ],
        }

    def sheet() -> Sheet:
        if fitted is not None:
            return Sheet(_FITTED, [tuple(each.values()) for each in _fit_rows(fitted)])
        figures = {**_summary(found.summary), **observed}
        rows = [(name, value) for name, value in figures.items() if not isinstance(value, dict)]
        return Sheet(("figure", "value"), rows)

    def text() -> Iterator[str]:
        style = style_of(args, site)
        yield heading(site, say("the file is in order"))
        yield from _understood(site, style)
        yield from _tide_lines(found, style)
        yield from _spot_lines(site, found, style)
        if found.comparison is not None:
            yield from _observed_lines(found.comparison, style)
        if levels is not None:
            yield from _level_lines(levels, style)
        if fitted is not None:
            yield from _fit_lines(fitted, unit)
        yield from (f"! {each.text} {each.remedy}" for each in found.suspicions)
        yield TIDE_CAUTION

    return Answer(data, sheet, text)


def _has_kinds(path: Path) -> bool:
    """Tell whether a file tells high from low water; an unreadable one is for its reader."""
    try:
        with path.open(encoding="utf-8-sig") as file:
            header = file.readline()
    except (OSError, UnicodeDecodeError):
        return True
    return "kind" in [name.strip() for name in header.split(",")]


def _compare_levels(site: Site, path: Path, unit: LengthUnit) -> Floats:
    """Return observed less predicted levels in metres, gaps left out, shape (n,)."""
    from planner.tides import Tide
    from planner.tides.reading import read_levels

    times, levels_m = read_levels(path, site.zone, unit)
    known = np.isfinite(levels_m)
    differences: Floats = levels_m[known] - Tide(site).heights(times[known])
    return differences


def _wants_fit(args: Namespace) -> bool:
    if args.fit and (args.observed is None or _has_kinds(Path(args.observed))):
        raise UsageError(say("--fit needs --observed FILE with levels: a CSV headed time,height"))
    return bool(args.fit)


def _fit(site: Site, path: Path, unit: LengthUnit) -> FittedWater:
    from planner.tides.fit import fit_constants
    from planner.tides.reading import read_levels

    return fit_constants(*read_levels(path, site.zone, unit), site.latitude_deg)


def _fit_rows(found: FittedWater) -> list[dict[str, Any]]:
    return [
        dict(
            zip(
                _FITTED,
                (
                    each.constituent,
                    *(number(value, 4) for value in astuple(each.amplitude_m)[:3]),
                    *(number(value, 2) for value in astuple(each.phase_lag_deg)[:3]),
                    each.significant,
                ),
                strict=True,
            )
        )
        for each in found.constituents
    ]


def _fit_figures(found: FittedWater) -> dict[str, Any]:
    return {
        "days": number(found.record_days, 2),
        "levels": found.levels_used,
        "mean_level_m": number(found.mean_level_m, 4),
        "residual_sd_m": number(found.residual_sd_m, 4),
        "constituents": _fit_rows(found),
    }


def _fit_lines(found: FittedWater, unit: LengthUnit) -> Iterator[str]:
    from planner.tides.fit_words import fitted_rows, fitted_texts

    yield say("fitted to the levels, lags on UTC:")
    yield from (f"  {text}" for text in fitted_texts(found, unit))
    heads = ("constituent", say("amplitude, {unit}", unit=unit), say("lag, deg"), "")
    yield from table_lines(heads, fitted_rows(found, unit), right="lrrl")


def _level_figures(differences_m: Floats | None) -> dict[str, Any]:
    if differences_m is None:
        return {}
    return {
        "seen": differences_m.size,
        "height_bias_m": number(_mean(differences_m), 4),
        "height_scatter_m": number(_scatter(differences_m), 4),
    }


def _summary(summary: WaterSummary | None) -> dict[str, Any]:
    if summary is None:
        return {}
    return {
        "type": summary.tide_type,
        "form_number": number(summary.form_number, 3),
        **{name: number(getattr(summary, name), 4) for name in _FIGURES},
    }


def _comparison(comparison: Comparison | None) -> dict[str, Any]:
    if comparison is None:
        return {}
    return {
        "seen": len(comparison.observed.times),
        "matched": comparison.matched,
        "height_bias_m": number(comparison.height_bias_m, 4),
        "height_scatter_m": number(comparison.height_scatter_m, 4),
        "time_bias_min": number(comparison.time_bias_min, 1),
        "time_scatter_min": number(comparison.time_scatter_min, 1),
        "high": _of_kind(comparison, is_high=True),
        "low": _of_kind(comparison, is_high=False),
    }


def _of_kind(comparison: Comparison, *, is_high: bool) -> dict[str, Any]:
    which = comparison.observed.is_high == is_high
    height_m, time_min = comparison.height_m[which], comparison.time_min[which]
    return {
        "matched": int(np.isfinite(time_min).sum()),
        "height_bias_m": number(_mean(height_m), 4),
        "time_bias_min": number(_mean(time_min), 1),
    }


def _mean(values: Floats) -> float | None:
    known = values[np.isfinite(values)]
    return float(known.mean()) if known.size else None


def _scatter(values: Floats) -> float:
    return float(values.std(ddof=1)) if values.size > 1 else np.nan


def _understood(site: Site, style: Style) -> Iterator[str]:
    north_south = "N" if site.latitude_deg >= 0 else "S"
    east_west = "E" if site.longitude_deg >= 0 else "W"
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
    if site.monthly_water_c is not None:
        coldest, warmest = min(site.monthly_water_c), max(site.monthly_water_c)
        yield say(
            "water temperature: {coldest:g} to {warmest:g} °C over the year",
            coldest=coldest,
            warmest=warmest,
        )
    if site.closures:
        yield say(
            "closures: {listed}", listed=", ".join(closure.reason for closure in site.closures)
        )
    rules = site.rules
    if rules.checked is not None:
        checked = f"{day_text(rules.checked)} {rules.checked:%Y}"
        yield say(
            "rules: {n_notes} notes, checked {checked}", n_notes=len(rules.notes), checked=checked
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
        "{n_constants} constituents{state}, {constituent} the largest; node factors {node_factors}",
        n_constants=len(water.constants),
        state=state,
        constituent=largest.constituent,
        node_factors=water.node_factors,
    )


def _tide_lines(found: WaterCheck, style: Style) -> Iterator[str]:
    summary = found.summary
    if summary is None:
        yield say("tide: the water never turns here")
        return
    yield say("tide: {tide_type}", tide_type=summary.tide_type)
    for name, words in _FIGURES.items():
        yield f"  {words:<23} {height_text(getattr(summary, name), style):>9}"


def _spot_lines(site: Site, found: WaterCheck, style: Style) -> Iterator[str]:
    if not site.spots or found.summary is None:
        return
    lowest_m = found.summary.lowest_m
    rows = [
        (
            spot.name,
            height_text(spot.depth_m, style),
            height_text(spot.trap_height_m, style),
            height_text(spot.depth_m + lowest_m - spot.trap_height_m, style),
        )
        for spot in site.spots
    ]
    yield from table_lines(("spot", "depth", "trap", say("cover at lowest")), rows, right="lrrr")


def _observed_lines(comparison: Comparison, style: Style) -> Iterator[str]:
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


def _level_lines(differences_m: Floats, style: Style) -> Iterator[str]:
    yield say("observed: {size} levels beside the predicted ones", size=differences_m.size)
    if differences_m.size:
        yield say(
            "  heights: {bias} on average, scatter {scatter}",
            bias=_apart(float(differences_m.mean()), style),
            scatter=_apart(_scatter(differences_m), style, signed=False),
        )


def _apart(difference_m: float, style: Style, *, signed: bool = True) -> str:
    """Return a difference of heights, finer than heights are worded: it is a mean of many."""
    if not np.isfinite(difference_m):
        return say("unknown from one")
    sign = "+" if signed else ""
    if style.length == "ft":
        return say("{apart:{sign}.2f} ft", apart=metres_to(difference_m, "ft"), sign=sign)
    return say("{difference_m:{sign}.0f} cm", difference_m=difference_m * 100, sign=sign)
