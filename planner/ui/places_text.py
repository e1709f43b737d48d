"""A place in words and rows: what the place book shows; no Qt here."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final

from planner.clock import Instants, from_utc64, local_midnight
from planner.constituents import table
from planner.estimates import Floats
from planner.phrasing import Style, day_clock_text, day_text, height_text, until_text
from planner.sites.site import Closure, Offsets, Site, Water
from planner.tides import Tide, Turns
from planner.tides.checks import Suspicion, WaterSummary, suspicions
from planner.tides.summary import summarise
from planner.tides.year_water import SpotWater, YearWater, year_water
from planner.units import metres_to

MONTH_DAYS: Final = 30
_STEP: Final = timedelta(minutes=10)
_WEEKDAYS: Final = tuple(
    f"{day}days" for day in ("Mon", "Tues", "Wednes", "Thurs", "Fri", "Satur", "Sun")
)
_DATUMS: Final = {
    "MLLW": "mean of each day's lowest water",
    "MLW": "mean low water",
    "LAT": "lowest astronomical tide",
    "MSL": "mean sea level",
    "MHW": "mean high water",
    "MHHW": "mean of each day's highest water",
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
    rows: Rows = [
        ("Position", position_text(site)),
        ("Clock", zone_line(site, report.today)),
        ("Heights count from", f"{water.datum} ({known})" if known else water.datum),
        ("Water comes from", _made_of(water)),
        ("Source", water.source or "not given"),
        ("State of the constants", _state(water)),
        ("Node factors", node_text(report, style)),
    ]
    if summary is None:
        rows.append(("Tide", "the water never turns here"))
        return rows
    return [
        *rows,
        ("Tide", f"{summary.tide_type} (form number {summary.form_number:.2f})"),
        (
            "Range",
            f"{height_text(summary.mean_range_m, style)} on average, "
            f"springs {height_text(summary.springs_range_m, style)}, "
            f"neaps {height_text(summary.neaps_range_m, style)}",
        ),
        (
            "Highest and lowest",
            f"{height_text(summary.highest_m, style)} and {height_text(summary.lowest_m, style)} "
            f"in the 19 years from {summary.first_year}",
        ),
    ]


def position_text(site: Site) -> str:
    """Return "29.600° N, 83.400° W"."""
    north = "N" if site.latitude_deg >= 0 else "S"
    east = "E" if site.longitude_deg >= 0 else "W"
    return f"{abs(site.latitude_deg):.3f}° {north}, {abs(site.longitude_deg):.3f}° {east}"


def zone_line(site: Site, day: date) -> str:
    """Return the zone with its name and distance from UTC on a day."""
    noon = datetime(day.year, day.month, day.day, 12, tzinfo=site.zone)
    offset = noon.utcoffset() or timedelta()
    return f"{site.zone.key} ({noon.tzname()} on {day_text(day)}, {_from_utc(offset)})"


def node_text(report: PlaceReport, style: Style) -> str:
    """Return the rule for node factors in words, with what the other rule would change."""
    summary = report.summary
    yearly = (summary.node_factors if summary else report.site.water.node_factors) == "yearly"
    rule = (
        "yearly: held at their mid-year values, as agency tables do"
        if yearly
        else "continuous: worked out anew for every instant"
    )
    if summary is None:
        return rule
    other = "continuous" if yearly else "yearly"
    apart = summary.other_rule_differs_m
    shown = f"{apart * 100:.0f} cm" if style.length == "m" else f"{metres_to(apart, 'ft'):.1f} ft"
    return f"{rule}. The rule “{other}” would change a level by at most {shown}"


def _made_of(water: Water) -> str:
    if water.offsets is not None:
        return (
            f"{_moved(water.offsets)}. Only high and low waters are known; the curve between "
            "them is drawn"
        )
    count = len(water.constants)
    return f"{count} constituent{'' if count == 1 else 's'}, phase lags on {_reference(water)}"


def _moved(offsets: Offsets) -> str:
    name, tabled = offsets.reference.name, offsets.tabled
    if tabled is None:
        high, low = _later(offsets.high_minutes), _later(offsets.low_minutes)
        return f"{name}: high water {high}, low water {low}"
    high, low = (
        " to ".join(dict.fromkeys(_later(minutes) for minutes in sorted(both)))
        for both in (
            (tabled.high_times.first_minutes, tabled.high_times.second_minutes),
            (tabled.low_times.first_minutes, tabled.low_times.second_minutes),
        )
    )
    return f"{name}, by its time of day and height: high water {high}, low water {low}"


def _state(water: Water) -> str:
    if water.constants_state:
        return f"{water.constants_state}. Agencies renew constants: compare now and then"
    return "not given"


def _reference(water: Water) -> str:
    return _from_utc(timedelta(hours=water.phase_reference_h))


def _from_utc(offset: timedelta) -> str:
    minutes = round(offset.total_seconds() / 60)
    sign = "-" if minutes < 0 else "+"
    return f"UTC{sign}{abs(minutes) // 60:02d}:{abs(minutes) % 60:02d}" if minutes else "UTC"


def _later(minutes: float) -> str:
    if round(minutes) == 0:
        return "at the same time"
    return f"{abs(round(minutes))} min {'later' if minutes > 0 else 'earlier'}"


def constituent_columns(style: Style) -> tuple[str, ...]:
    """Return the headings of the constituents' table."""
    return ("Constituent", f"Amplitude, {style.length}", "Phase lag, °", "Period")


def constituent_rows(site: Site, style: Style) -> Rows:
    """Return the place's constituents, or its reference place's, largest first."""
    water = site.water.offsets.reference.water if site.water.offsets else site.water
    known = table()
    largest_first = sorted(water.constants, key=lambda each: -each.amplitude_m)
    return [
        (
            each.constituent,
            f"{metres_to(each.amplitude_m, style.length):.3f}",
            f"{each.phase_lag_deg:.1f}",
            _period(known[each.constituent].speed_deg_per_h),
        )
        for each in largest_first
    ]


def _period(speed_deg_per_h: float) -> str:
    if speed_deg_per_h <= 0:
        return "constant"
    hours = 360 / speed_deg_per_h
    return f"{hours:.2f} h" if hours < 48 else f"{hours / 24:.1f} days"


def turn_rows(report: PlaceReport, style: Style) -> Rows:
    """Return the month's high and low waters: when, which, how high."""
    turns, zone = report.turns, report.site.zone
    return [
        (
            day_clock_text(from_utc64(at), zone, style),
            "high" if high else "low",
            height_text(float(height), style),
        )
        for at, height, high in zip(turns.times, turns.heights, turns.is_high, strict=True)
    ]


def spot_columns(style: Style) -> tuple[str, ...]:
    """Return the headings of the spots' table."""
    unit = style.length
    return ("Spot", f"Depth, {unit}", f"Trap, {unit}", "Over the trap at lowest", "Bare in a year")


def spot_rows(report: PlaceReport, style: Style) -> Rows:
    """Return the spots against the year's water, in the order of the file."""
    digits = 2 if style.length == "m" else 1
    return [
        (
            each.spot.name,
            f"{metres_to(each.spot.depth_m, style.length):.{digits}f}",
            f"{metres_to(each.spot.trap_height_m, style.length):.{digits}f}",
            height_text(each.least_cover_m, style),
            bare_text(each),
        )
        for each in report.year.spots
    ]


def bare_text(water: SpotWater) -> str:
    """Return how long a trap at a spot is not wholly covered in a year."""
    if water.bare_h == 0:
        return "never"
    if water.dry_h == 0:
        return f"{hours_text(water.bare_h)}"
    return f"{hours_text(water.bare_h)}; ground dry {hours_text(water.dry_h)}"


def hours_text(hours: float) -> str:
    """Return hours in a year, rounded to what such a figure is worth."""
    return "under 1 h" if hours < 1 else f"{float(f'{hours:.2g}'):,.0f} h"


def ramp_text(report: PlaceReport, style: Style) -> str:
    """Return what the ramp means for the year's water."""
    level, hours = report.site.lowest_ramp_level_m, report.year.no_launch_h
    if level is None or hours is None:
        return "No ramp level entered: launching never waits for water in the plans."
    where = f"The ramp works down to {height_text(level, style)}"
    if hours == 0:
        return f"{where}: always, in the coming year's astronomical tide."
    return f"{where}: too low for about {hours_text(hours)} of the coming year."


def rules_texts(site: Site, today: date) -> Iterator[str]:
    """Yield when the rules were checked, their limits, closures, and notes."""
    rules = site.rules
    if rules.checked is None:
        yield "No date entered for when you checked the rules here."
    else:
        where = f" ({rules.checked_where})" if rules.checked_where else ""
        ago = until_text(rules.checked - today)
        yield f"Rules last checked {day_text(rules.checked)} {rules.checked.year}, {ago}{where}."
    if rules.max_traps is not None:
        yield f"At most {rules.max_traps} traps."
    if rules.max_soak_h is not None:
        yield f"A soak of at most {rules.max_soak_h:g} h."
    for closure in site.closures:
        yield f"Closed {closure_text(closure)}: {closure.reason}."
    for note in rules.notes:
        yield f"{note.category[:1].upper()}{note.category[1:]}: {note.text}"


def closure_text(closure: Closure) -> str:
    """Return when a closure holds: a period, weekdays, or weekdays within a period."""
    days = " and ".join(_WEEKDAYS[day] for day in sorted(closure.weekdays))
    if closure.first is None or closure.last is None:
        return f"on {days}" if days else "always"
    year = "" if closure.every_year else " %Y"
    first, last = (
        f"{day.day} {day.strftime(f'%b{year}')}" for day in (closure.first, closure.last)
    )
    span = f"on {first}" if first == last else f"from {first} to {last}"
    every = " every year" if closure.every_year else ""
    return f"on {days} {span}{every}" if days else f"{span}{every}"
