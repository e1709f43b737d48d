"""`fullshell sky`: sun and moon day by day, and the moon's phases."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from datetime import date, datetime
from typing import TYPE_CHECKING, Any

from planner.cli.answers import Answer, Sheet, iso_all, moment_or_none, number, table_lines
from planner.cli.arguments import add_days, add_job, add_place, heading, place_of, style_of
from planner.cli.spans import day_span
from planner.clock import day_edges
from planner.phrasing import MOON_NAMES, clock_text, day_clock_text, day_text, shown_day, zone_text
from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs

_DEFAULT_DAYS = 14
_EVENTS = ("sunrise", "sunset", "civil_dawn", "civil_dusk", "moonrise", "moonset")
_HEADS = (
    *(say("day"), say("first light"), say("sunrise"), say("sunset"), say("last light")),
    *(say("moonrise"), say("moonset"), say("moon's age"), say("lit")),
)


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    parser = add_job(jobs, "sky", say("Sun and moon, day by day, and the moon's phases."), _answer)
    add_place(parser)
    add_days(parser, say("{default_days} days", default_days=_DEFAULT_DAYS))


def _answer(args: Namespace) -> Answer:
    from planner.sky import PHASE_NAMES, phases, sky_days

    site = place_of(args)
    span = day_span(args.start, args.stop, site.zone, _DEFAULT_DAYS)
    sky = sky_days(site, span.first, span.last)
    edges = day_edges(span.first, span.last, site.zone)
    moon = phases(edges[0], edges[-1])
    names = [PHASE_NAMES[kind] for kind in moon.kinds]
    events = {name: iso_all(getattr(sky, name)) for name in _EVENTS}

    def days() -> list[dict[str, Any]]:
        return [
            {
                "date": day.isoformat(),
                "lunar_age_d": number(sky.lunar_age_d[i], 3),
                "illuminated": number(sky.illuminated[i], 4),
                **{name: events[name][i] for name in _EVENTS},
            }
            for i, day in enumerate(sky.days)
        ]

    def data() -> dict[str, Any]:
        found = zip(iso_all(moon.times), names, strict=True)
        return {
            "place": site.name,
            "zone": site.zone.key,
            "phases": [{"time": time, "phase": phase} for time, phase in found],
            "days": days(),
        }

    def sheet() -> Sheet:
        rows = days()
        return Sheet(
            ("date", "lunar_age_d", "illuminated", *_EVENTS), [list(row.values()) for row in rows]
        )

    def text() -> Iterator[str]:
        style = style_of(args, site)

        def clock(instant: datetime | None, day: date) -> str:
            if instant is None:
                return "-"
            if shown_day(instant, site.zone) != day:  # its 00:00 would be read as the day's first
                return f"{instant.astimezone(site.zone):%H:%M}"
            return clock_text(instant, site.zone, style)

        def row(i: int) -> list[str]:
            order = ("civil_dawn", "sunrise", "sunset", "civil_dusk", "moonrise", "moonset")
            found = [moment_or_none(getattr(sky, name)[i]) for name in order]
            cells = [clock(instant, sky.days[i]) for instant in found]
            if sky.sun_up_all_day[i]:
                cells[1:3] = [say("up all day"), ""]
            elif sky.sun_down_all_day[i]:
                cells[1:3] = [say("down all day"), ""]
            lit = say("{lit:.0%}", lit=sky.illuminated[i])
            return [
                day_text(sky.days[i]),
                *cells,
                say("{lunar_age_d:.1f} d", lunar_age_d=sky.lunar_age_d[i]),
                lit,
            ]

        yield heading(site, say("sun and moon, on the clock of {key}", key=site.zone.key))
        yield from table_lines(_HEADS, [row(i) for i in range(len(sky.days))], right="lrrrrrrrr")
        for time, kind in zip(moon.times, moon.kinds, strict=True):
            instant = moment_or_none(time)
            if instant is not None:
                when = day_clock_text(instant, site.zone, style)
                yield say(
                    "{name}: {when} {zone}",
                    name=MOON_NAMES[kind],
                    when=when,
                    zone=zone_text(instant, site.zone),
                )

    return Answer(data, sheet, text)
