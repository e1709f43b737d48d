"""`fullshell learn`: what the log says of a place so far."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Any

from planner.cli.answers import Answer, Sheet, iso, table_lines
from planner.cli.arguments import add_job, add_log, add_place, heading, place_of
from planner.phrasing import day_text

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.logbook import TripOutcome
    from planner.sites import Site

_EFFECTS = ("moon", "season", "runs")
_EFFECT = ("swing", "low", "high", "p_matters")
_SCORES = ("brier", "brier_season_only", "brier_running_mean", "log_score")


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = "What the log says: effects with their intervals, and how forecasts did."
    parser = add_job(jobs, "learn", summary, _answer)
    add_place(parser)
    add_log(parser, required=True)


def _answer(args: Namespace) -> Answer:
    from planner.cli.logs import log_of

    site = place_of(args)
    log = log_of(args.log, site)
    outcomes = () if log is None else log.outcomes(site.name)
    judged = sum(outcome.judged or 0 for outcome in outcomes)

    def data() -> dict[str, Any]:
        # Forecasts do not learn from the log yet: an effect not estimated is null, never 0.
        return {
            "place": site.name,
            "trips": len(outcomes),
            "crabs_judged": judged,
            "effects": {name: dict.fromkeys(_EFFECT) for name in _EFFECTS},
            "record": {"n": 0, **dict.fromkeys(_SCORES)},
            "to_settle": {"moon_trips": None},
        }

    def sheet() -> Sheet:
        columns = ("trip", "when", "hauls", "keepers", "judged", "light", "water_c")
        return Sheet(columns, [_row(outcome) for outcome in outcomes])

    def text() -> Iterator[str]:
        light = sum(outcome.light or 0 for outcome in outcomes)
        yield heading(site, f"{len(outcomes)} logged trips, {judged} crabs judged, {light} light")
        yield from _trip_lines(site, outcomes)
        yield (
            "Forecasts do not learn from the log yet, so no effect of moon, season or runs is "
            "estimated here."
        )

    return Answer(data, sheet, text)


def _row(outcome: TripOutcome) -> list[Any]:
    when = None if outcome.when is None else iso(outcome.when)
    counts = (outcome.hauls, outcome.keepers, outcome.judged, outcome.light)
    return [outcome.trip, when, *counts, outcome.water_c]


def _trip_lines(site: Site, outcomes: Sequence[TripOutcome]) -> Iterator[str]:
    rows = [
        (
            outcome.trip,
            "-" if outcome.when is None else day_text(outcome.when.astimezone(site.zone).date()),
            str(outcome.hauls),
            "-" if outcome.keepers is None else str(outcome.keepers),
            "-" if outcome.judged is None else f"{outcome.light} of {outcome.judged}",
        )
        for outcome in outcomes
    ]
    if rows:
        yield from table_lines(("trip", "day", "hauls", "keepers", "light"), rows, right="llrrr")
