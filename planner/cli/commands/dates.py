"""`fullshell dates`: how full the crabs should be, day by day, and why."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from planner.cli.answers import Answer, Sheet, interval, number, table_lines
from planner.cli.arguments import (
    add_days,
    add_job,
    add_log,
    add_place,
    heading,
    place_of,
    style_of,
)
from planner.cli.spans import day_span
from planner.phrasing import day_text, interval_text, light_text, number_text, temperature_text
from planner.words import counted, say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs
    from planner.molt import Forecast

_DEFAULT_DAYS = 8 * 7
_PARTS = {
    "season": say("season"),
    "moon": say("moon"),
    "runs": say("runs"),
    "place": say("place"),
}
_HEADS = (
    say("day"),
    say("fullness (80%)"),
    say("light crabs (80%)"),
    say("why, in points"),
    say("moon's age"),
    say("water"),
)


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("How full the crabs should be, day by day, and why.")
    parser = add_job(jobs, "dates", summary, _answer)
    add_place(parser)
    add_days(parser, counted(8, "week"))
    add_log(parser)


def _answer(args: Namespace) -> Answer:
    from planner.cli.logs import log_of
    from planner.molt import forecast, last_trip_text

    site = place_of(args)
    span = day_span(args.start, args.stop, site.zone, _DEFAULT_DAYS)
    log = log_of(args.log, site)
    found = forecast(site, span.first, span.last, log)

    def data() -> dict[str, Any]:
        return {
            "place": site.name,
            "basis": found.basis,
            "trips": found.trips,
            "yearly_light_share": number(found.yearly_light_share),
            "days": [_day(found, i) for i in range(len(found.days))],
        }

    def sheet() -> Sheet:
        ends = ("mean", "low", "high")
        columns = [f"{what}_{end}" for what in ("fullness", "light_share") for end in ends]
        columns = ["date", *columns, *_PARTS, "lunar_age_d", "water_c"]
        days = (_day(found, i) for i in range(len(found.days)))
        return Sheet(columns, [_flat(day) for day in days])

    def text() -> Iterator[str]:
        style = style_of(args, site)

        def row(i: int) -> list[str]:
            water_c = number(float(found.water_c[i]))
            return [
                day_text(found.days[i]),
                interval_text(found.fullness.at(i), ".2f"),
                light_text(found.light_share.at(i)),
                _why_text(found, i),
                say("{lunar_age_d:.0f} d", lunar_age_d=found.lunar_age_d[i]),
                "unknown" if water_c is None else temperature_text(water_c, style),
            ]

        yield heading(site, say("how full the crabs should be, {basis}", basis=_basis_text(found)))
        yield from table_lines(_HEADS, [row(i) for i in range(len(found.days))], right="llllrr")
        yield say(
            "Points are crabs in 100 more or fewer light than the year's average of "
            "{yearly_light_share:.0f}.",
            yearly_light_share=found.yearly_light_share * 100,
        )
        yield from filter(None, [last_trip_text(site, log, style)])

    return Answer(data, sheet, text)


def _day(found: Forecast, i: int) -> dict[str, Any]:
    return {
        "date": found.days[i].isoformat(),
        "fullness": interval(found.fullness.at(i)),
        "light_share": interval(found.light_share.at(i)),
        "why": {part: number(float(getattr(found.why, part)[i])) for part in _PARTS},
        "lunar_age_d": number(float(found.lunar_age_d[i]), 3),
        "water_c": number(float(found.water_c[i]), 2),
    }


def _flat(day: dict[str, Any]) -> list[Any]:
    cells: list[Any] = []
    for value in day.values():
        cells += value.values() if isinstance(value, dict) else [value]
    return cells


def _why_text(found: Forecast, i: int) -> str:
    parts = []
    for part, words in _PARTS.items():
        points = round(float(getattr(found.why, part)[i]) * 100)
        if points != 0:
            parts.append(f"{words} {number_text(points, '+d')}")
    return ", ".join(parts) or say("as the average")


def _basis_text(found: Forecast) -> str:
    if found.basis == "prior":
        return say("from what is known in general (no logged trip speaks yet)")
    return say("learned from {trips}", trips=counted(found.trips, "logged trip"))
