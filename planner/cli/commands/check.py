"""`fullshell check`: what a place file says, whether it can be right, and what was observed."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from planner.cli.answers import Answer, Sheet, number, table_lines
from planner.cli.arguments import add_job, add_place, heading, place_of, style_of
from planner.phrasing import TIDE_CAUTION, Style, day_text, height_text
from planner.sites import Site
from planner.units import metres_to

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.tides.checks import Comparison, WaterCheck, WaterSummary

_FIGURES = {
    "mean_level_m": "mean level",
    "mean_range_m": "mean range",
    "springs_range_m": "range at springs",
    "neaps_range_m": "range at neaps",
    "mean_higher_high_m": "mean higher high water",
    "mean_lower_low_m": "mean lower low water",
    "highest_m": "highest in 19 years",
    "lowest_m": "lowest in 19 years",
}


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = "What a place file says, whether it can be right, and what was observed there."
    parser = add_job(jobs, "check", summary, _answer)
    add_place(parser)
    parser.add_argument(
        "--observed",
        metavar="FILE",
        help="high and low waters seen there: CSV with the header time,height,kind; heights in "
        "the units of the place file, or of --units",
    )


def _answer(args: Namespace) -> Answer:
    from planner.tides.checks import check_water, read_observed_turns

    site = place_of(args)
    observed = None
    if args.observed is not None:
        unit = args.units or site.water.file_units
        observed = read_observed_turns(Path(args.observed), site.zone, unit)
    found = check_water(site, observed)

    def data() -> dict[str, Any]:
        return {
            "place": site.name,
            "invented": site.invented,
            "problems": [],
            "constituents": len(site.water.constants),
            "reference": site.water.offsets.reference.name if site.water.offsets else None,
            "tide": _summary(found.summary) or None,
            "observed": _comparison(found.comparison) or None,
            "suspicions": [
                {"code": each.code, "text": each.text, "remedy": each.remedy}
                for each in found.suspicions
            ],
        }

    def sheet() -> Sheet:
        figures = {**_summary(found.summary), **_comparison(found.comparison)}
        rows = [(name, value) for name, value in figures.items() if not isinstance(value, dict)]
        return Sheet(("figure", "value"), rows)

    def text() -> Iterator[str]:
        style = style_of(args, site)
        yield heading(site, "the file is in order")
        yield from _understood(site, style)
        yield from _tide_lines(found, style)
        yield from _spot_lines(site, found, style)
        if found.comparison is not None:
            yield from _observed_lines(found.comparison, style)
        yield from (f"! {each.text} {each.remedy}" for each in found.suspicions)
        yield TIDE_CAUTION

    return Answer(data, sheet, text)


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


def _mean(values: np.ndarray[Any, Any]) -> float | None:
    known = values[np.isfinite(values)]
    return float(known.mean()) if known.size else None


def _understood(site: Site, style: Style) -> Iterator[str]:
    north_south = "N" if site.latitude_deg >= 0 else "S"
    east_west = "E" if site.longitude_deg >= 0 else "W"
    yield (
        f"position: {abs(site.latitude_deg):.4f} {north_south}, "
        f"{abs(site.longitude_deg):.4f} {east_west}; clock of {site.zone.key}"
    )
    yield f"water: {_made_of(site)}; heights above {site.water.datum}"
    if site.water.source:
        yield f"source: {site.water.source}"
    if site.lowest_ramp_level_m is not None:
        yield f"ramp: launches from {height_text(site.lowest_ramp_level_m, style)} up"
    if site.monthly_water_c is not None:
        coldest, warmest = min(site.monthly_water_c), max(site.monthly_water_c)
        yield f"water temperature: {coldest:g} to {warmest:g} °C over the year"
    if site.closures:
        yield f"closures: {', '.join(closure.reason for closure in site.closures)}"
    rules = site.rules
    if rules.checked is not None:
        checked = f"{day_text(rules.checked)} {rules.checked:%Y}"
        yield f"rules: {len(rules.notes)} notes, checked {checked}"


def _made_of(site: Site) -> str:
    water = site.water
    if water.offsets is not None:
        return f"differences from {water.offsets.reference.name}"
    largest = max(water.constants, key=lambda constant: constant.amplitude_m)
    state = f" of {water.constants_state}" if water.constants_state else ""
    return (
        f"{len(water.constants)} constituents{state}, {largest.constituent} the largest; "
        f"node factors {water.node_factors}"
    )


def _tide_lines(found: WaterCheck, style: Style) -> Iterator[str]:
    summary = found.summary
    if summary is None:
        yield "tide: the water never turns here"
        return
    yield f"tide: {summary.tide_type}"
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
    yield from table_lines(("spot", "depth", "trap", "cover at lowest"), rows, right="lrrr")


def _observed_lines(comparison: Comparison, style: Style) -> Iterator[str]:
    seen = len(comparison.observed.times)
    yield f"observed: {seen} high and low waters, {comparison.matched} matched with predicted ones"
    if np.isfinite(comparison.height_bias_m):
        yield (
            f"  heights: {_apart(comparison.height_bias_m, style)} on average, "
            f"scatter {_apart(comparison.height_scatter_m, style, signed=False)}"
        )
    if np.isfinite(comparison.time_bias_min):
        scatter = comparison.time_scatter_min
        spread = f"{scatter:.0f} min" if np.isfinite(scatter) else "unknown from one"
        yield f"  times: {comparison.time_bias_min:+.0f} min on average, scatter {spread}"


def _apart(difference_m: float, style: Style, *, signed: bool = True) -> str:
    """Return a difference of heights, finer than heights are worded: it is a mean of many."""
    if not np.isfinite(difference_m):
        return "unknown from one"
    sign = "+" if signed else ""
    if style.length == "ft":
        return f"{metres_to(difference_m, 'ft'):{sign}.2f} ft"
    return f"{difference_m * 100:{sign}.0f} cm"
