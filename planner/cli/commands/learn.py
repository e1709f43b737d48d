"""`fullshell learn`: what the log says of a place so far."""

from __future__ import annotations

import argparse
from argparse import Namespace
from collections.abc import Iterator, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

from planner.cli.answers import Answer, Sheet, interval, iso, number, table_lines
from planner.cli.arguments import add_job, add_log, add_place, heading, place_of
from planner.phrasing import day_text
from planner.words import counted, say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.logbook import TripOutcome
    from planner.molt.evidence_types import Effect, Evidence
    from planner.sites import Site

_EFFECTS = ("moon", "season", "runs", "place")
_EFFECT = ("swing", "low", "high", "p_matters")
_SCORES = (
    *("brier", "brier_season_only", "brier_running_mean"),
    *("log_score", "log_score_season_only", "log_score_running_mean"),
)
_DEFAULT_CARE = 10


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("What the log says: effects with their intervals, and how forecasts did.")
    parser = add_job(jobs, "learn", summary, _answer)
    add_place(parser)
    add_log(parser, required=True)
    parser.add_argument(
        "--worth",
        type=_points,
        default=_DEFAULT_CARE,
        metavar="POINTS",
        help=say(
            "light crabs of 100, between best and worst day, that are worth caring "
            "about (default: {default_care})",
            default_care=_DEFAULT_CARE,
        ),
    )


def _points(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text[:4]) <= 100:
        raise argparse.ArgumentTypeError(
            say('"{given}" is not a number of points from 1 to 100', given=text)
        )
    return int(text)


def _answer(args: Namespace) -> Answer:
    from planner.cli.logs import log_of

    site = place_of(args)
    log = log_of(args.log, site)
    outcomes = () if log is None else log.outcomes(site.name)
    judged = sum(outcome.judged or 0 for outcome in outcomes)
    from planner import molt

    found = None if log is None else molt.evidence(site, log)

    def data() -> dict[str, Any]:
        return {
            "place": site.name,
            "trips": len(outcomes),
            "crabs_judged": judged,
            **_evidence(found, args.worth / 100),
        }

    def sheet() -> Sheet:
        columns = ("trip", "when", "hauls", "keepers", "judged", "light", "water_c")
        return Sheet(columns, [_row(outcome) for outcome in outcomes])

    def text() -> Iterator[str]:
        light = sum(outcome.light or 0 for outcome in outcomes)
        yield heading(
            site,
            say(
                "{trips}, {judged} crabs judged, {light} light",
                trips=counted(len(outcomes), "logged trip"),
                judged=judged,
                light=light,
            ),
        )
        yield from _trip_lines(site, outcomes)
        yield from _evidence_lines(found, args.worth)
        if log is not None:
            from planner.trips.promises import judged_promises, promises_text

            yield promises_text(judged_promises(log, site.name))

    return Answer(data, sheet, text)


def _evidence(found: Evidence | None, worth: float) -> dict[str, Any]:
    """Return effects, record and what would settle them; null, never 0, where not estimated."""
    known = found.effects if found is not None else ()
    effects: dict[str, Effect] = {effect.cause: effect for effect in known}
    moon = effects.get("moon")
    record = found.record if found is not None else None
    return {
        "effects": {name: _effect(effects.get(name), worth) for name in _EFFECTS},
        "record": {
            "n": len(record.trips) if record else 0,
            **{name: number(getattr(record, name, None)) for name in _SCORES},
        },
        "to_settle": {"moon_trips": moon.trips_to_settle(worth) if moon is not None else None},
    }


def _effect(effect: Effect | None, worth: float) -> dict[str, Any]:
    if effect is None:
        return dict.fromkeys(_EFFECT)
    swing = interval(effect.swing)
    return {
        "swing": swing["mean"],
        "low": swing["low"],
        "high": swing["high"],
        "p_matters": number(effect.p_matters(worth)),
    }


def _evidence_lines(found: Evidence | None, worth_points: int) -> Iterator[str]:
    from planner.ui.evidence.evidence_rows import (
        SCORE_COLUMNS,
        effect_text,
        record_text,
        score_rows,
    )

    if found is None:
        yield say(
            "No trip here was judged for fullness, so no effect of moon or season is estimated."
        )
        return
    yield from (effect_text(effect, worth_points) for effect in found.effects)
    yield record_text(found.record)
    if found.record.trips:
        yield from table_lines(SCORE_COLUMNS, score_rows(found.record), right="lrr")


def _row(outcome: TripOutcome) -> list[Any]:
    when = None if outcome.when is None else iso(outcome.when)
    counts = (outcome.hauls, outcome.keepers, outcome.judged, outcome.light)
    return [outcome.trip, when, *counts, outcome.water_c]


def _day(day: date) -> str:
    return f"{day_text(day)} {day.year}"


def _trip_lines(site: Site, outcomes: Sequence[TripOutcome]) -> Iterator[str]:
    rows = [
        (
            outcome.trip,
            "-" if outcome.when is None else _day(outcome.when.astimezone(site.zone).date()),
            str(outcome.hauls),
            "-" if outcome.keepers is None else str(outcome.keepers),
            "-"
            if outcome.judged is None
            else say("{light} of {judged}", light=outcome.light, judged=outcome.judged),
        )
        for outcome in outcomes
    ]
    if rows:
        yield from table_lines(
            (say("trip"), say("day"), say("hauls"), say("keepers"), say("light")),
            rows,
            right="llrrr",
        )
