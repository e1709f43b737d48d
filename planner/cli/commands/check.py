"""`fullshell check`: what a place file says, whether it can be right, and what was observed."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from planner.cli.answers import Answer, Sheet
from planner.cli.arguments import add_job, add_place, heading, place_of, style_of
from planner.cli.check_figures import (
    FITTED,
    comparison_figures,
    fit_figures,
    fit_rows,
    level_figures,
    summary_figures,
)
from planner.cli.check_text import (
    fit_lines,
    level_lines,
    observed_lines,
    spot_lines,
    tide_lines,
    understood_lines,
)
from planner.cli.errors import UsageError
from planner.estimates import Floats
from planner.phrasing import TIDE_CAUTION
from planner.sites import Site
from planner.units import LengthUnit
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.tides.fit import FittedWater


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
    observed = comparison_figures(found.comparison) or level_figures(levels)

    def data() -> dict[str, Any]:
        return {
            "place": site.name,
            "invented": site.invented,
            "problems": [],
            "constituents": len(site.water.constants),
            "reference": site.water.offsets.reference.name if site.water.offsets else None,
            "tide": summary_figures(found.summary) or None,
            "observed": observed or None,
            **({"fit": fit_figures(fitted)} if fitted is not None else {}),
            "suspicions": [
                {"code": each.code, "text": each.text, "remedy": each.remedy}
                for each in found.suspicions
            ],
        }

    def sheet() -> Sheet:
        if fitted is not None:
            return Sheet(FITTED, [tuple(each.values()) for each in fit_rows(fitted)])
        figures = {**summary_figures(found.summary), **observed}
        rows = [(name, value) for name, value in figures.items() if not isinstance(value, dict)]
        return Sheet(("figure", "value"), rows)

    def text() -> Iterator[str]:
        style = style_of(args, site)
        yield heading(site, say("the file is in order"))
        yield from understood_lines(site, style)
        yield from tide_lines(found, style)
        yield from spot_lines(site, found, style)
        if found.comparison is not None:
            yield from observed_lines(found.comparison, style)
        if levels is not None:
            yield from level_lines(levels, style)
        if fitted is not None:
            yield from fit_lines(fitted, unit)
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
