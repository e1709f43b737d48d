"""From the tables of a place file to a `Site`: checks first, then metres and plain values."""

from __future__ import annotations

from dataclasses import replace
from datetime import time
from pathlib import Path
from typing import Any

from pydantic import ValidationError

from planner import constituents
from planner.errors import Problem
from planner.sites.book import find_reference
from planner.sites.checks import sense_problems
from planner.sites.file_model import ClosureTable, FreeTable, PlaceFile, RulesTable, TripTable
from planner.sites.file_values import EVERY_YEAR
from planner.sites.reading import SiteError, read_tables
from planner.sites.site import (
    Closure,
    FreeTime,
    Habits,
    HarmonicConstant,
    HeightDifferences,
    Offsets,
    RuleNote,
    Rules,
    Site,
    SlackLags,
    Spot,
    TabledDifferences,
    TimeDifferences,
    Water,
)
from planner.sites.water_tables import (
    HeightColumn,
    OffsetsTable,
    TabledTable,
    TimeColumn,
    WaterTable,
)
from planner.sites.wording import problems_in_words, shown
from planner.units import LengthUnit, metres_from
from planner.words import say


def build_site(tables: dict[str, Any], path: Path) -> Site:
    """Return the place; SiteError with every problem found in the tables."""
    problems: list[Problem] = []
    place = None
    try:
        place = PlaceFile.model_validate(tables)
    except ValidationError as error:
        problems += problems_in_words(error)
    problems += sense_problems(tables)
    reference, reference_problems = _reference(tables, path)
    problems += reference_problems
    if problems or place is None:
        raise SiteError(str(path), list(dict.fromkeys(problems)))
    return _site(place, reference, path)


def _reference(tables: dict[str, Any], path: Path) -> tuple[Site | None, list[Problem]]:
    """Return the reference place of the offsets, None when there is none to be had."""
    water = tables.get("water")
    offsets = water.get("offsets") if isinstance(water, dict) else None
    written = offsets.get("reference") if isinstance(offsets, dict) else None
    if not isinstance(written, str) or not written.strip():
        return None, []
    where = "water.offsets.reference"
    try:
        found = find_reference(written.strip(), path.parent)
        reference_tables = read_tables(found)
        if _has_offsets(reference_tables):
            remedy = say("name a place that has [water.constituents]")
            what = say("that place is itself an offset from another")
            return None, [Problem(where, shown(written), what, remedy)]
        return build_site(reference_tables, found), []
    except SiteError as error:
        return None, [
            replace(problem, where=f"{where}, {Path(error.source).name}: {problem.where}")
            for problem in error.problems
        ]


def _has_offsets(tables: dict[str, Any]) -> bool:
    water = tables.get("water")
    return isinstance(water, dict) and "offsets" in water


def _site(place: PlaceFile, reference: Site | None, path: Path) -> Site:
    unit = place.water.units
    spots = tuple(
        Spot(
            spot.name,
            metres_from(spot.depth, unit),
            metres_from(spot.trap_height, unit),
            spot.latitude,
            spot.longitude,
        )
        for spot in place.spots
    )
    return Site(
        name=place.name,
        latitude_deg=place.latitude,
        longitude_deg=place.longitude,
        zone=place.timezone,
        water=_water(place.water, reference),
        lowest_ramp_level_m=metres_from(place.ramp.lowest_level, unit) if place.ramp else None,
        slack=(
            SlackLags(place.slack.after_high_minutes, place.slack.after_low_minutes)
            if place.slack
            else None
        ),
        spots=spots,
        monthly_water_c=tuple(place.temperature.monthly) if place.temperature else None,
        closures=tuple(_closure(closure) for closure in place.closures),
        rules=_rules(place.rules),
        free=_free(place.free),
        habits=_habits(place.trip, place.rules, unit),
        species=place.species or Site.species,
        invented=place.invented,
        path=path,
    )


def _water(water: WaterTable, reference: Site | None) -> Water:
    unit = water.units
    constants = tuple(
        HarmonicConstant(
            constituents.canonical(name), metres_from(entry.amplitude, unit), entry.phase % 360
        )
        for name, entry in (water.constituents or {}).items()
    )
    offsets = None
    if water.offsets is not None and reference is not None:
        offsets = _offsets(water.offsets, reference, unit)
    if water.mean_level is not None:
        mean_level_m = metres_from(water.mean_level, unit)
    else:
        mean_level_m = _shifted_mean_level(offsets) if offsets is not None else 0.0
    return Water(
        datum=water.datum,
        mean_level_m=mean_level_m,
        file_units=unit,
        phase_reference_h=water.phase_reference,
        node_factors=water.node_factors,
        constants_state=water.constants_state.strip(),
        source=water.source.strip(),
        constants=constants,
        offsets=offsets,
    )


def _offsets(table: OffsetsTable, reference: Site, unit: LengthUnit) -> Offsets:
    return Offsets(
        reference=reference,
        high_minutes=table.high_minutes or 0.0,
        low_minutes=table.low_minutes or 0.0,
        high_factor=table.high_factor,
        low_factor=table.low_factor,
        high_add_m=metres_from(table.high_add, unit),
        low_add_m=metres_from(table.low_add, unit),
        tabled=_tabled(table.tabled, unit) if table.tabled is not None else None,
    )


def _tabled(table: TabledTable, unit: LengthUnit) -> TabledDifferences:
    def times(columns: list[TimeColumn]) -> TimeDifferences:
        first, second = columns
        return TimeDifferences(_hours(first.at), first.minutes, _hours(second.at), second.minutes)

    def heights(columns: list[HeightColumn]) -> HeightDifferences:
        first, second = columns
        lengths = (first.there, first.add, second.there, second.add)
        return HeightDifferences(*(metres_from(length, unit) for length in lengths))

    return TabledDifferences(
        clock_h=table.clock,
        high_times=times(table.high_times),
        low_times=times(table.low_times),
        high_heights=heights(table.high_heights),
        low_heights=heights(table.low_heights),
    )


def _hours(clock: time) -> float:
    return clock.hour + clock.minute / 60


def _shifted_mean_level(offsets: Offsets) -> float:
    """Return the mean of what the rules for high and for low water make of the mean level."""
    there_m = offsets.reference.water.mean_level_m
    if offsets.tabled is not None:
        tables = (offsets.tabled.high_heights, offsets.tabled.low_heights)
        return there_m + sum(each.springs_add_m + each.neaps_add_m for each in tables) / 4
    high_m = offsets.high_factor * there_m + offsets.high_add_m
    low_m = offsets.low_factor * there_m + offsets.low_add_m
    return (high_m + low_m) / 2


def _closure(table: ClosureTable) -> Closure:
    return Closure(
        reason=table.reason,
        first=table.first,
        last=table.last,
        every_year=table.first is not None and table.first.year == EVERY_YEAR,
        weekdays=frozenset(table.weekdays),
    )


def _rules(table: RulesTable) -> Rules:
    return Rules(
        checked=table.checked,
        checked_where=table.where or "",
        max_traps=table.max_traps,
        max_soak_h=table.max_soak_hours,
        notes=tuple(RuleNote(note.category, note.text) for note in table.notes),
    )


def _free(table: FreeTable) -> FreeTime:
    return FreeTime(
        weekdays=FreeTime.weekdays if table.weekdays is None else frozenset(table.weekdays),
        earliest=FreeTime.earliest if table.earliest is None else table.earliest,
        latest=FreeTime.latest if table.latest is None else table.latest,
        also=frozenset(table.also),
        never=frozenset(table.never),
    )


def _habits(table: TripTable, rules: RulesTable, unit: LengthUnit) -> Habits:
    """Return the habits; defaults that a rule forbids give way to the rule."""
    default = Habits()
    longest = min(default.max_soak_h, rules.max_soak_hours or default.max_soak_h)
    soak = table.soak_hours or [min(default.min_soak_h, longest), longest]
    minutes = table.model_dump(
        exclude_none=True, include={"bait_minutes", "set_minutes", "haul_minutes"}
    )
    margin = table.cover_margin
    return Habits(
        traps=table.traps or min(default.traps, rules.max_traps or default.traps),
        min_soak_h=soak[0],
        max_soak_h=soak[1],
        cover_margin_m=default.cover_margin_m if margin is None else metres_from(margin, unit),
        **minutes,
    )
