"""The spots of a trip as waypoints (GPX 1.1, WGS 84) that a plotter or a phone takes in."""

from __future__ import annotations

from collections import defaultdict
from datetime import UTC, datetime

from planner.errors import PlannerError
from planner.handouts.checklist import line_text
from planner.handouts.facts import TripFacts
from planner.phrasing import TIDE_CAUTION, Style, day_text, height_text
from planner.sites import Site
from planner.words import say


def waypoints_gpx(facts: TripFacts, style: Style, now: datetime) -> bytes:
    """Return the spots that have a position, each with its depth, its traps and its line.

    now: aware, the instant the file is made. PlannerError when no spot has a position.
    """
    import gpxpy.gpx

    site, zone = facts.site, facts.site.zone
    placed = [spot for spot in site.spots if spot.latitude_deg is not None]
    if not placed:
        raise PlannerError(no_positions(site))
    traps: dict[str, list[str]] = defaultdict(list)
    for each in facts.traps.placed:
        traps[each.spot].append(each.trap)
    waters = {spot.spot: spot for spot in facts.spots}
    invented = say("INVENTED place: not for a real trip. ") if site.invented else ""
    gpx = gpxpy.gpx.GPX()
    gpx.creator = "Fullshell"
    gpx.name = say(
        "{name}, set {day}", name=site.name, day=day_text(facts.plan.set_at.astimezone(zone).date())
    )
    gpx.description = say(
        "{invented}Trap spots. {tide_caution}", invented=invented, tide_caution=TIDE_CAUTION
    )
    gpx.time = now.astimezone(UTC)
    for spot in placed:
        assert spot.latitude_deg is not None
        assert spot.longitude_deg is not None
        depth = say(
            "charted depth {height} below {datum}",
            height=height_text(spot.depth_m, style),
            datum=site.water.datum,
        )
        labels = ", ".join(traps[spot.name]) or say("none")
        gpx.waypoints.append(
            gpxpy.gpx.GPXWaypoint(
                latitude=_shortest(spot.latitude_deg),
                # The standard ends just short of 180.
                longitude=-180.0 if spot.longitude_deg == 180 else spot.longitude_deg,
                name=spot.name,
                comment=say("Traps: {labels}", labels=labels),
                description=say(
                    "{invented}Traps: {labels}; {depth}; {line} of line",
                    invented=invented,
                    labels=labels,
                    depth=depth,
                    line=line_text(waters[spot.name], style),
                ),
                type=say("crab traps"),
            )
        )
    written: str = gpx.to_xml(version="1.1")
    return written.encode()


def no_positions(site: Site) -> str:
    """Return why a place without positions has no waypoints, and what to do."""
    return say(
        "No spot of {name} has a position yet: give latitude and longitude for "
        "its spots in the place book, then write the waypoints.",
        name=site.name,
    )


def _shortest(degrees: float) -> float:
    return round(degrees, 7)
