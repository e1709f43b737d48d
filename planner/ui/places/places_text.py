"""A place in words and rows: what the place book shows; no Qt here."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from planner.clock import Instants, from_utc64, local_midnight
from planner.constituents import table
from planner.estimates import Floats
from planner.phrasing import (
    Style,
    clock_name,
    day_clock_text,
    day_text,
    from_utc_text,
    height_text,
    number_text,
)
from planner.sites.site import Offsets, Site, Water
from planner.tides import Tide, Turns
from planner.tides.checks import Suspicion, WaterSummary, suspicions
from planner.tides.events import lags_text
from planner.tides.summary import summarise, type_text
from planner.tides.year_water import SpotWater, YearWater, year_water
from planner.units import metres_to
from planner.words import counted, say

MONTH_DAYS: Final = 30
_STEP: Final = timedelta(minutes=10)
_DATUMS: Final = {
    "MLLW": say("mean of each day's lowest water"),
    "MLW": say("mean low water"),
    "LAT": say("lowest astronomical tide"),
    "MSL": say("mean sea level"),
    "MHW": say("mean high water"),
    "MHHW": say("mean of each day's highest water"),
}

Rows = list[tuple[str, ...]]


@dataclass(frozen=True)
class PlaceReport:
    """All that the place book shows of a place: its water for a month, a year and 19 years."""

    site: Site
    today: date
    times: Instants
    levels_m: Floats
    turns: Turns
    year: YearWater
    summary: WaterSummary | None
    suspicions: tuple[Suspicion, ...]


def place_report(site: Site, today: date) -> PlaceReport:
    """Return the report of a place as of a day; takes about half a second.

    Raises RangeError outside the years that tides are computed for.
    """
    tide = Tide(site)
    begin = local_midnight(today, site.zone)
    end = local_midnight(today + timedelta(days=MONTH_DAYS), site.zone)
    times, levels = tide.series(begin, end, _STEP)
    summary = summarise(tide)
    return PlaceReport(
        site=site,
        today=today,
        times=times,
        levels_m=levels,
        turns=tide.turns(begin, end),
        year=year_water(tide, today),
        summary=summary,
        suspicions=suspicions(tide, summary),
    )


def fact_rows(report: PlaceReport, style: Style) -> Rows:
    """Return (label, value) for what is known of the place."""
    site, water, summary = report.site, report.site.water, report.summary
    known = _DATUMS.get(water.datum.upper())
    return [
        (say("Position"), position_text(site)),
        (say("Clock"), zone_line(site, report.today)),
        *_tide_rows(summary, style),
        *([(say("Slack water"), lags_text(site.slack))] if site.slack else []),
        (say("Heights count from"), f"{water.datum} ({known})" if known else water.datum),
        (say("Water comes from"), _made_of(water)),
        (say("Source"), water.source or say("not given")),
        (say("State of the constants"), _state(water)),
        (say("Node factors"), node_text(report, style)),
    ]


def _tide_rows(summary: WaterSummary | None, style: Style) -> Rows:
    """Return what the tide does: what a place is asked for first."""
    if summary is None:
        return [(say("Tide"), say("the water never turns here"))]
    return [
        (
            say("Tide"),
            type_text(summary),
        ),
        (
            say("Range"),
            say(
                "{mean} on average, springs {springs}, neaps {neaps}",
                mean=height_text(summary.mean_range_m, style),
                springs=height_text(summary.springs_range_m, style),
                neaps=height_text(summary.neaps_range_m, style),
            ),
        ),
        (
            say("Highest and lowest"),
            say(
                "{highest} and {lowest} in the 19 years from {first_year}",
                highest=height_text(summary.highest_m, style),
                lowest=height_text(summary.lowest_m, style),
                first_year=summary.first_year,
            ),
        ),
    ]


def position_text(site: Site) -> str:
    """Return "29.600° N, 83.400° W"."""
    north = say("N") if site.latitude_deg >= 0 else say("S")
    east = say("E") if site.longitude_deg >= 0 else say("W")
    return say(
        "{latitude_deg:.3f}° {north}, {longitude_deg:.3f}° {east}",
        latitude_deg=abs(site.latitude_deg),
        north=north,
        longitude_deg=abs(site.longitude_deg),
        east=east,
    )


def zone_line(site: Site, day: date) -> str:
    """Return the zone with its name and distance from UTC on a day."""
    noon = datetime(day.year, day.month, day.day, 12, tzinfo=site.zone)
    name, from_utc = clock_name(noon), from_utc_text(noon.utcoffset() or timedelta())
    if name == from_utc:
        return say("{key} ({name} on {day})", key=site.zone.key, name=name, day=day_text(day))
    return say(
        "{key} ({tzname} on {day}, {from_utc})",
        key=site.zone.key,
        tzname=name,
        day=day_text(day),
        from_utc=from_utc,
    )


def node_text(report: PlaceReport, style: Style) -> str:
    """Return the rule for node factors in words, with what the other rule would change."""
    summary = report.summary
    yearly = (summary.node_factors if summary else report.site.water.node_factors) == "yearly"
    rule = (
        say("yearly: held at their mid-year values, as agency tables do")
        if yearly
        else say("continuous: worked out anew for every instant")
    )
    if summary is None:
        return rule
    other = say("continuous") if yearly else say("yearly")
    apart = summary.other_rule_differs_m
    shown = (
        say("{apart:.0f} cm", apart=apart * 100)
        if style.length == "m"
        else say("{apart:.1f} ft", apart=metres_to(apart, "ft"))
    )
    return say(
        "{rule}. The rule “{other}” would change a level by at most {shown}",
        rule=rule,
        other=other,
        shown=shown,
    )


def _made_of(water: Water) -> str:
    if water.offsets is not None:
        return say(
            "{moved}. Only high and low waters are known; the curve between them is drawn",
            moved=_moved(water.offsets),
        )
    return say(
        "{constituents}, phase lags on {reference}",
        constituents=counted(len(water.constants), "constituent"),
        reference=_reference(water),
    )


def _moved(offsets: Offsets) -> str:
    name, tabled = offsets.reference.name, offsets.tabled
    if tabled is None:
        high, low = _later(offsets.high_minutes), _later(offsets.low_minutes)
        return say("{name}: high water {high}, low water {low}", name=name, high=high, low=low)
    high, low = (
        say(" to ").join(dict.fromkeys(_later(minutes) for minutes in sorted(both)))
        for both in (
            (tabled.high_times.first_minutes, tabled.high_times.second_minutes),
            (tabled.low_times.first_minutes, tabled.low_times.second_minutes),
        )
    )
    return say(
        "{name}, by its time of day and height: high water {high}, low water {low}",
        name=name,
        high=high,
        low=low,
    )


def _state(water: Water) -> str:
    if water.constants_state:
        return say(
            "{constants_state}. Agencies renew constants: compare now and then",
            constants_state=water.constants_state,
        )
    return say("not given")


def _reference(water: Water) -> str:
    return from_utc_text(timedelta(hours=water.phase_reference_h))


def _later(minutes: float) -> str:
    if round(minutes) == 0:
        return say("at the same time")
    if minutes > 0:
        return say("{minutes} min later", minutes=round(minutes))
    return say("{minutes} min earlier", minutes=-round(minutes))


def constituent_columns(style: Style) -> tuple[str, ...]:
    """Return the headings of the constituents' table."""
    return (
        say("Constituent"),
        say("Amplitude, {unit}", unit=style.length),
        say("Phase lag, °"),
        say("Period"),
    )


def constituent_rows(site: Site, style: Style) -> Rows:
    """Return the place's constituents, or its reference place's, largest first."""
    water = site.water.offsets.reference.water if site.water.offsets else site.water
    known = table()
    largest_first = sorted(water.constants, key=lambda each: -each.amplitude_m)
    return [
        (
            each.constituent,
            say("{metres_to:.3f}", metres_to=metres_to(each.amplitude_m, style.length)),
            say("{phase_lag_deg:.1f}", phase_lag_deg=each.phase_lag_deg),
            _period(known[each.constituent].speed_deg_per_h),
        )
        for each in largest_first
    ]


def _period(speed_deg_per_h: float) -> str:
    if speed_deg_per_h <= 0:
        return say("constant")
    hours = 360 / speed_deg_per_h
    return (
        say("{hours:.2f} h", hours=hours)
        if hours < 48
        else say("{hours:.1f} days", hours=hours / 24)
    )


def turn_rows(turns: Turns, zone: ZoneInfo, style: Style) -> Rows:
    """Return high and low waters: when, which, how high."""
    return [
        (
            day_clock_text(from_utc64(at), zone, style),
            say("high") if high else say("low"),
            height_text(float(height), style),
        )
        for at, height, high in zip(turns.times, turns.heights, turns.is_high, strict=True)
    ]


def spot_columns(style: Style) -> tuple[str, ...]:
    """Return the headings of the spots' table."""
    unit = style.length
    return (
        say("Spot"),
        say("Depth, {unit}", unit=unit),
        say("Trap, {unit}", unit=unit),
        say("Over the trap at lowest"),
        say("Bare in a year"),
    )


def spot_rows(report: PlaceReport, style: Style) -> Rows:
    """Return the spots against the year's water, in the order of the file."""
    form = ".2f" if style.length == "m" else ".1f"
    return [
        (
            each.spot.name,
            number_text(metres_to(each.spot.depth_m, style.length), form),
            number_text(metres_to(each.spot.trap_height_m, style.length), form),
            height_text(each.least_cover_m, style),
            bare_text(each),
        )
        for each in report.year.spots
    ]


def bare_text(water: SpotWater) -> str:
    """Return how long a trap at a spot is not wholly covered in a year."""
    if water.bare_h == 0:
        return say("never")
    if water.dry_h == 0:
        return f"{hours_text(water.bare_h)}"
    return say(
        "{bare}; ground dry {dry}",
        bare=hours_text(water.bare_h),
        dry=hours_text(water.dry_h),
    )


def hours_text(hours: float) -> str:
    """Return hours in a year, rounded to what such a figure is worth."""
    if hours < 1:
        return say("under 1 h")
    return say("{hours:,.0f} h", hours=float(f"{hours:.2g}"))


def ramp_text(report: PlaceReport, style: Style) -> str:
    """Return what the ramp means for the year's water."""
    level, hours = report.site.lowest_ramp_level_m, report.year.no_launch_h
    if level is None or hours is None:
        return say("No ramp level entered: launching never waits for water in the plans.")
    where = say("The ramp works down to {height}", height=height_text(level, style))
    if hours == 0:
        return say("{where}: always, in the coming year's astronomical tide.", where=where)
    return say(
        "{where}: too low for about {hours} of the coming year.",
        where=where,
        hours=hours_text(hours),
    )
