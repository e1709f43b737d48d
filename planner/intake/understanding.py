"""A first understanding of a table: from the names of its columns and from what is in them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, datetime
from itertools import pairwise
from typing import Literal

from planner.intake.grid import Grid
from planner.intake.mapping import Mapping
from planner.intake.meanings import meaning_of, unit_said
from planner.intake.moments import (
    NotAMoment,
    Order,
    is_date_only,
    iso_moment,
    order_by_numbers,
    parse,
    split_numbers,
)
from planner.logbook.columns import COLUMNS
from planner.phrasing import typed_number

_PARTS_OF = {"set_at": ("set_date", "set_clock"), "hauled_at": ("haul_date", "haul_clock")}
_TIMES = ("set_at", "set_date", "hauled_at", "haul_date")
_DAYS_THAT_RUN = 6  # days in no order run on by chance less than once in 300
_LOOKED_AT = 2000  # cells: enough to see what a column holds
_WARMEST_C = 40.0  # water above is told in Fahrenheit


def understand(grid: Grid, now: datetime, place: str = "") -> Mapping:
    """Return what a table seems to mean; whatever is in doubt is left open.

    now: aware; no haul lies after it. place: of rows that name none.
    """
    columns: dict[str, str] = {}
    # A column under its own name comes before one that is only called like it.
    own_name_first = sorted(grid.heading, key=lambda name: name.strip().casefold() not in COLUMNS)
    for name in own_name_first:
        meaning = meaning_of(name)
        if meaning in _PARTS_OF and name.strip().casefold() not in COLUMNS:
            meaning = _part(meaning, grid.column(name))
        if meaning and meaning not in columns.values():
            columns[name] = meaning
    columns = {name: columns[name] for name in grid.heading if name in columns}
    found = Mapping(columns, place=place)
    depth, water = _units(grid, found)
    return replace(found, order=order_of(grid, found, now), depth=depth, water=water)


def order_of(grid: Grid, mapping: Mapping, now: datetime) -> Order | None:
    """Return the order of day and month that the table's dates prove, None when none is.

    First by numbers that can be no month; then by dates after today, by sets after their hauls
    or a month before, and by rows that run on in one order only.
    """
    cells = {each: grid.column(name) for name, each in mapping.columns.items() if each in _TIMES}
    written = [cell for column in cells.values() for cell in column]
    pairs = [pair for pair in map(split_numbers, written) if pair is not None]
    if not pairs or all(first == second for first, second in pairs):
        return "dmy" if pairs else None
    proved = order_by_numbers(pairs)
    if proved or any(max(pair) > 12 for pair in pairs):
        return proved
    faults = {order: _faults(cells, order, now.date()) for order in ("dmy", "mdy")}
    for at in range(3):
        day_first, month_first = faults["dmy"][at], faults["mdy"][at]
        if day_first and not month_first:
            return "mdy"
        if month_first and not day_first:
            return "dmy"
    return None


def needs_order(grid: Grid, mapping: Mapping) -> bool:
    """Tell whether the order of day and month makes a difference here."""
    names = [name for name, each in mapping.columns.items() if each in _TIMES]
    pairs = [split_numbers(cell) for name in names for cell in grid.column(name)]
    return any(pair is not None and pair[0] != pair[1] for pair in pairs)


def needs_place(grid: Grid, mapping: Mapping) -> bool:
    """Tell whether there are rows that name no place."""
    name = mapping.column_of("place")
    return name is None or not all(cell.strip() for cell in grid.column(name))


def _part(meaning: str, cells: Sequence[str]) -> str:
    """Return whether a column holds the whole time or only its date or clock."""
    has_date = has_clock = 0
    for cell in [cell for cell in cells if cell.strip()][:_LOOKED_AT]:
        if found := iso_moment(cell.strip()):
            if not is_date_only(found):
                return meaning
            has_date += 1
            continue
        try:
            day, clock = parse(cell, "dmy")
        except NotAMoment:
            try:
                day, clock = parse(cell, "mdy")
            except NotAMoment:
                continue
        has_date += day is not None
        has_clock += clock is not None
    if (has_date and has_clock) or not (has_date or has_clock):
        return meaning
    return _PARTS_OF[meaning][0 if has_date else 1]


def _units(grid: Grid, mapping: Mapping) -> tuple[Literal["m", "ft"], Literal["C", "F"]]:
    depth, water = mapping.column_of("depth_m"), mapping.column_of("water_c")
    in_feet = depth is not None and unit_said(depth) == "ft"
    in_fahrenheit = False
    if water is not None:
        said = unit_said(water)
        warmest = max(_numbers(grid.column(water)), default=0.0)
        in_fahrenheit = said == "F" or (not said and warmest > _WARMEST_C)
    return "ft" if in_feet else "m", "F" if in_fahrenheit else "C"


def _numbers(cells: Sequence[str]) -> Iterator[float]:
    for cell in cells[:_LOOKED_AT]:
        try:
            yield float(typed_number(cell).strip().replace(",", "."))
        except ValueError:
            continue


def _faults(cells: dict[str, list[str]], order: Order, today: date) -> tuple[int, int, int]:
    """Return how many dates are ahead, how many soaks are odd, and whether rows run back."""
    dates = {meaning: [_day(cell, order) for cell in column] for meaning, column in cells.items()}
    told = [day for column in dates.values() for day in column if day is not None]
    ahead = sum((day - today).days > 1 for day in told)
    sets = dates.get("set_at") or dates.get("set_date") or []
    hauls = dates.get("hauled_at") or dates.get("haul_date") or []
    soaks = [(h - s).days for s, h in zip(sets, hauls, strict=False) if s and h]
    odd = sum(not 0 <= soak <= 31 for soak in soaks)
    running = [day for day in hauls or sets if day is not None]
    back = sum(later < sooner for sooner, later in pairwise(running))
    forth = sum(later > sooner for sooner, later in pairwise(running))
    # Rows may run from the oldest or from the newest; that few days do so proves nothing.
    broken = 0 if len(set(running)) < _DAYS_THAT_RUN else min(back, forth)
    return ahead, odd, broken


def _day(cell: str, order: Order) -> date | None:
    try:
        return parse(cell, order)[0]
    except NotAMoment:
        return None
