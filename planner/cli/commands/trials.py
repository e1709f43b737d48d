"""`fullshell trials`: did one kind of trap really catch more, and what would settle it."""

from __future__ import annotations

import argparse
from argparse import Namespace
from collections.abc import Iterator, Sequence
from datetime import UTC, date, tzinfo
from typing import TYPE_CHECKING, Any, Final

from planner.cli.answers import Answer, Sheet, number, table_lines
from planner.cli.arguments import add_job, add_log
from planner.cli.errors import UsageError
from planner.cli.spans import day
from planner.errors import InputError
from planner.estimates import Interval
from planner.phrasing import interval_text
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.logbook import Log
    from planner.trials import Group, Layout, Trial

_LEAST_P: Final = 0.01


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    parser = add_job(
        jobs, "trials", say("Compare traps honestly, and lay out the next trip."), _answer
    )
    add_log(parser, required=True)
    parser.add_argument(
        "--by",
        default="design",
        metavar="WHAT",
        help=say(
            "design, entrances, colour, bait, spot, trap, depth, soak or a column of your own "
            "(default: design)"
        ),
    )
    parser.add_argument(
        "--measure",
        default="keepers",
        metavar="WHAT",
        help=say("keepers, crabs, shorts, females, bycatch or light (default: keepers)"),
    )
    parser.add_argument(
        "--today",
        type=day,
        metavar="D",
        help=say("the day from which dates are counted (default: today)"),
    )
    parser.add_argument(
        "--worth",
        type=_ratio,
        default=1.5,
        metavar="RATIO",
        help=say("a difference worth knowing of, such as 1.5 (default)"),
    )


def _ratio(text: str) -> float:
    try:
        ratio = float(text)
    except ValueError:
        ratio = 0.0
    if not 1.01 <= ratio <= 100:
        raise argparse.ArgumentTypeError(
            say('"{given}" is not a ratio from 1.01 to 100, such as 1.5', given=text)
        )
    return ratio


def _zone(log: Log) -> tzinfo:
    """Return the clock that hauls have their days by: that of the latest haul's place."""
    from planner.logbook import book_zone

    timed = [(haul.hauled_at, haul.place) for haul in log.hauls if haul.hauled_at is not None]
    return (book_zone(max(timed)[1]) if timed else None) or UTC


def _answer(args: Namespace) -> Answer:
    from planner.cli.logs import log_of
    from planner.logbook import Log
    from planner.trials import compare, next_layout, next_trip_days, settle_texts, trip_days
    from planner.trials.grouping import GROUPING_WORDS

    log = log_of(args.log) or Log(())
    hauls, zone = log.hauls, _zone(log)
    try:
        trial = compare(hauls, by=args.by, measure=args.measure, care_ratio=args.worth)
    except InputError as error:  # the log has been read: what is wrong are the words asked for
        raise UsageError(str(error)) from error
    layout = next_layout(hauls, gone=log.gone(zone))
    today = args.today or date.today()  # noqa: DTZ011  (the user's own day, not an instant)
    days = next_trip_days(trip_days(hauls, zone), trial.to_settle.trips or 0, today)

    def data() -> dict[str, Any]:
        return _trial(trial, days, layout)

    def sheet() -> Sheet:
        rows = [_group(group) for group in trial.groups]
        columns = ("name", "hauls", "counted", "keepers", "rate", "low", "high", "p_best")
        return Sheet(columns, [[row[name] for name in columns] for row in rows])

    def text() -> Iterator[str]:
        yield trial.sentence
        if trial.groups:
            rows = [_group_cells(group) for group in trial.groups]
            heads = (
                GROUPING_WORDS.get(trial.by, trial.by),
                say("hauls"),
                say("total"),
                say("share (80%)") if trial.measure == "light" else say("a haul (80%)"),
                say("best one"),
            )
            yield from table_lines(heads, rows, right="lrrrr")
        if trial.test.p is not None:
            yield _test_line(trial.test.name, trial.test.p)
        yield from settle_texts(trial, days)
        yield from (f"! {caution.text}" for caution in trial.warnings)
        if layout is not None:
            yield say("Next trip, so that designs can be told apart soonest:")
            yield from table_lines(
                (say("trap"), say("design"), say("spot")),
                [(p.trap, p.design, p.spot) for p in layout.placed],
            )
            yield layout.sentence

    return Answer(data, sheet, text)


def _test_line(name: str, p: float) -> str:
    if p < _LEAST_P:  # shuffles cannot show that a gap is never made by chance
        return say("{name}: p < {least_p:.2f}", name=name, least_p=_LEAST_P)
    return say("{name}: p = {p:.2f}", name=name, p=p)


def _trial(trial: Trial, days: Sequence[date], layout: Layout | None) -> dict[str, Any]:
    spread, needed = trial.dispersion, trial.to_settle
    return {
        "by": trial.by,
        "measure": trial.measure,
        "verdict": trial.verdict,
        "sentence": trial.sentence,
        "hauls": trial.hauls,
        "trips": trial.trips,
        "common_soak_h": number(trial.common_soak_h, 2),
        "groups": [_group(group) for group in trial.groups],
        "contrasts": [
            {
                "better": each.better,
                "other": each.other,
                "ratio": number(each.ratio),
                "low": number(each.low),
                "high": number(each.high),
            }
            for each in trial.contrasts
        ],
        "test": {"name": trial.test.name, "p": number(trial.test.p)},
        "dispersion": {
            "k": number(spread.k) if spread else None,
            "low": number(spread.low) if spread else None,
            "high": number(spread.high) if spread else None,
        },
        "to_settle": {
            "hauls_per_group": needed.hauls_per_group,
            "low": needed.low,
            "high": needed.high,
            "difference": needed.difference,
            "trips": needed.trips,
            "next": days[0].isoformat() if days else None,
            "by": days[-1].isoformat() if days else None,
            "can_hide": number(needed.can_hide),
            "seen": {"ratio": number(needed.seen_ratio), "hauls_per_group": needed.seen_hauls},
        },
        "layout": [
            {"trap": placed.trap, "design": placed.design, "spot": placed.spot}
            for placed in (layout.placed if layout is not None else ())
        ],
        "warnings": [{"code": caution.code, "text": caution.text} for caution in trial.warnings],
    }


def _group(group: Group) -> dict[str, Any]:
    return {
        "name": group.name,
        "hauls": group.hauls,
        "counted": group.counted,
        "keepers": group.keepers,
        "rate": number(group.rate),
        "low": number(group.low),
        "high": number(group.high),
        "p_best": number(group.p_best),
    }


def _group_cells(group: Group) -> tuple[str, str, str, str, str]:
    rate = (
        "-"
        if group.rate is None or group.low is None or group.high is None
        else interval_text(Interval(group.rate, group.low, group.high), ".2f")
    )
    total = "-" if group.keepers is None else str(group.keepers)
    best = "-" if group.p_best is None else say("{p_best:.0%}", p_best=group.p_best)
    return group.name, str(group.hauls), total, rate, best
