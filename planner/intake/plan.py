"""What taking a table in would give: hauls, every bad line by name, what is still to be asked."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, timezone
from functools import lru_cache
from typing import Final
from zoneinfo import ZoneInfo

from planner.errors import Problem
from planner.intake.grid import Grid, Line
from planner.intake.mapping import Mapping, Question
from planner.intake.meanings import meaning_of
from planner.intake.moments import (
    NotAMoment,
    is_date_only,
    is_day_number,
    iso_moment,
    parse,
)
from planner.intake.understanding import needs_order
from planner.intake.vocabulary import plain, vocabulary
from planner.logbook.columns import (
    COLUMNS,
    COUNTS,
    MEASURES,
    CellError,
    guard_formula,
    read_depth,
    read_water,
    unguard_formula,
)
from planner.logbook.entries import Haul
from planner.logbook.reading import Zones, read_row
from planner.logbook.table import Row, Table
from planner.phrasing import date_text
from planner.words import say

_PLAIN: Final = tuple(name for name in COLUMNS if name not in ("set_at", "hauled_at"))
_TWICE: Final = say(
    "{} lines have a time in the hour that the clock shows twice; read as the first of the two, "
    "or as the second where only that lies after the set"
)
_DAY_NUMBERS: Final = say(
    "{} times are a spreadsheet's numbers of days and were read as such (46350.25 is 24 Nov 2026 "
    "6:00)"
)
_WRITE_TIME: Final = say("write it as year-month-day and clock, such as 2026-08-14 06:40")


@dataclass(frozen=True)
class Intake:
    """What a table gives under a mapping.

    questions: what must be answered first; until then no haul is made. notes: what was decided
    without asking, in words. problems: of the lines that gave no haul.
    """

    grid: Grid
    mapping: Mapping
    hauls: tuple[Haul, ...]
    problems: tuple[Problem, ...]
    questions: tuple[Question, ...]
    notes: tuple[str, ...]


class _Bad(ValueError):  # noqa: N818  (what is said of a cell, not a fault)
    def __init__(self, meaning: str, what: str, remedy: str) -> None:
        super().__init__(what)
        self.meaning, self.what, self.remedy = meaning, what, remedy


def plan_intake(
    grid: Grid,
    mapping: Mapping,
    zones: Zones,
    now: datetime,
    checkpoint: Callable[[], None] = lambda: None,
) -> Intake:
    """Return what the table gives; nothing is written anywhere.

    zones: gives the zone of a place by name. now: aware; later hauls are refused.
    checkpoint: called now and then; what it raises ends the work.
    """
    questions = tuple(_questions(grid, mapping))
    if questions:
        return Intake(grid, mapping, (), grid.problems, questions, ())
    reader = _Reader(grid, mapping, lru_cache(maxsize=None)(zones), now)
    for number, line in enumerate(grid.lines):
        if number % 1000 == 0:
            checkpoint()
        reader.take(line)
    problems = sorted((*grid.problems, *reader.problems), key=_number)
    return Intake(grid, mapping, tuple(reader.hauls), tuple(problems), (), tuple(reader.notes()))


def missing_clocks(grid: Grid, mapping: Mapping) -> set[str]:
    """Return which of "haul_clock" and "set_clock" rows with only a date would need."""
    needed = set()
    for clock, whole, day in (
        ("haul_clock", "hauled_at", "haul_date"),
        ("set_clock", "set_at", "set_date"),
    ):
        if mapping.column_of(clock) is not None:
            continue
        for name, in_days in ((mapping.column_of(whole), False), (mapping.column_of(day), True)):
            if name and any(_only_date(cell, in_days) for cell in grid.column(name)):
                needed.add(clock)
    return needed


def _questions(grid: Grid, mapping: Mapping) -> list[Question]:
    asked: list[Question] = []
    if not mapping.place and mapping.column_of("place") is None:
        asked.append("place")
    if mapping.order is None and needs_order(grid, mapping):
        asked.append("order")
    if any(getattr(mapping, clock) is None for clock in missing_clocks(grid, mapping)):
        asked.append("clock")
    return asked


def _only_date(cell: str, in_days: bool) -> bool:
    """Tell whether a cell holds a date alone; in_days: its column is one of dates."""
    if found := iso_moment(cell.strip()):
        return in_days and is_date_only(found)
    for order in ("dmy", "mdy"):
        try:
            day, clock = parse(cell.strip(), order)
        except NotAMoment:
            continue
        return day is not None and clock is None
    return False


def _number(problem: Problem) -> int:
    digits = problem.where.split(",")[0].split(" ")[-1]
    return int(digits) if digits.isdecimal() else 0


class _Reader:
    """Reads lines one after the other and keeps what it found."""

    def __init__(self, grid: Grid, mapping: Mapping, zones: Zones, now: datetime) -> None:
        self.grid, self.mapping, self.zones, self.now = grid, mapping, zones, now
        self.hauls: list[Haul] = []
        self.problems: list[Problem] = []
        self._said: Counter[str] = Counter()
        self._names = {meaning: name for name, meaning in mapping.columns.items() if meaning}
        self._own = {
            name: say("{name} (table)", name=name) if name.strip().casefold() in COLUMNS else name
            for name in grid.heading
            if not mapping.columns.get(name)
        }
        self._table = Table((), tuple(self._own.values()), ";" if grid.decimal_comma else ",", ())

    def take(self, line: Line) -> None:
        """Read one line into a haul or into its problems."""
        written = dict(zip(self.grid.heading, line.cells, strict=True))
        told = {meaning: written[name].strip() for meaning, name in self._names.items()}
        try:
            cells = self._cells(told)
        except _Bad as bad:
            where = self._where(line, bad.meaning)
            value = self._written(told, bad.meaning)
            self.problems.append(Problem(where, value, bad.what, bad.remedy))
            return
        for name in ("other", "notes"):
            if name in self._names:  # words are kept to the letter
                cells[name] = written[self._names[name]]
        cells.update({own: written[name] for name, own in self._own.items()})
        haul, wrong = read_row(Row(line.number, cells), self._table, self.zones, self.now)
        if wrong:
            self.problems.extend(self._renamed(problem, line, told, cells) for problem in wrong)
        else:
            self.hauls.append(haul)

    def notes(self) -> list[str]:
        """Return what was decided without asking, and what the user may not have meant."""
        found = [text.format(count) for text, count in self._said.items()]
        if not any(meaning_of(name) for name in self.grid.heading):
            found.append(
                say(
                    'No name is known in the heading "{heading}". If that is a haul already, write '
                    "a heading above it",
                    heading=", ".join(self.grid.heading[:4]),
                )
            )
        if self.hauls and not any(name in self._names for name in COUNTS):
            found.append(
                say(
                    "No column was taken as a count, so these hauls come without their crabs. "
                    "A table needs a row for each trap and a column such as keepers"
                )
            )
        return found

    # -- one line ----------------------------------------------------------------------------

    def _cells(self, told: dict[str, str]) -> dict[str, str]:
        """Return the line as a haul table would have it."""
        cells = {name: told.get(name, "") for name in _PLAIN}
        if not cells["place"] and self.mapping.place:
            cells["place"] = guard_formula(self.mapping.place)
            if "place" in self._names:
                self._said[say("{} lines name no place; taken as of the place above")] += 1
        for name in (*COUNTS, *MEASURES):
            if _not_recorded(cells[name]):
                cells[name] = ""
                self._said[say("{} cells with a dash or ? taken as not recorded")] += 1
        self._to_own_units(cells)
        hauled = self._moment(told, "hauled_at", "haul_date", "haul_clock")
        set_at = self._moment(told, "set_at", "set_date", "set_clock")
        zone = self.zones(unguard_formula(cells["place"]).strip()) if cells["place"] else None
        hauled, set_at = self._settled(hauled, set_at, zone)
        if set_at is None and hauled is not None and told.get("soak_h"):
            set_at = _before(hauled, told["soak_h"], zone)
        if not cells["trip"]:
            day = hauled or set_at
            cells["trip"] = "" if day is None else _trip_name(_local_day(day, zone))
        for name, moment in (("set_at", set_at), ("hauled_at", hauled)):
            cells[name] = "" if moment is None else moment.isoformat(" ")
        return cells

    def _to_own_units(self, cells: dict[str, str]) -> None:
        """Put a depth in feet into metres, and a temperature in Fahrenheit into Celsius."""
        meaning = "depth_m"
        try:
            if self.mapping.depth == "ft" and cells[meaning]:
                depth_m = read_depth(cells[meaning], decimal_comma=True, unit="ft")
                cells[meaning] = f"{depth_m:.2f}"
            meaning = "water_c"
            if self.mapping.water == "F" and cells[meaning]:
                water_c = read_water(cells[meaning], decimal_comma=True, unit="F")
                cells[meaning] = f"{water_c:.2f}"
        except CellError as error:
            raise _Bad(meaning, error.what, error.remedy) from None

    def _moment(self, told: dict[str, str], whole: str, day: str, clock: str) -> datetime | None:
        """Return a time of the line, naive where it is the place's own."""
        default: time | None = getattr(self.mapping, clock)
        text = told.get(whole, "") or told.get(day, "")
        if _not_recorded(text):
            text = ""
        at_clock = told.get(clock, "")
        if _not_recorded(at_clock):
            at_clock = ""
        meaning = whole if told.get(whole) else day
        if not text:
            if at_clock:
                raise _Bad(clock, say("is a time of day without a date"), say("fill in its date"))
            return None
        found = iso_moment(text)
        if found and not at_clock and not (meaning == day and is_date_only(found)):
            return found
        on: date | None
        if found:
            on, at = found.date(), None if is_date_only(found) else found.time()
        else:
            on, at = self._parsed(text, meaning)
        if on is None:
            raise _Bad(meaning, say("is a time of day without a date"), _WRITE_TIME)
        if at_clock:
            at = self._parsed(at_clock, clock)[1] or at
        at = at or default
        if at is None:
            raise _Bad(meaning, say("has no time of day"), say("add the clock time, such as 06:40"))
        return datetime.combine(on, at, found.tzinfo if found else None)

    def _parsed(self, text: str, meaning: str) -> tuple[date | None, time | None]:
        if is_day_number(text):
            self._said[_DAY_NUMBERS] += 1
        try:
            return parse(text, self.mapping.order or "dmy")
        except NotAMoment:
            raise _Bad(meaning, say("is not a time"), _WRITE_TIME) from None

    def _settled(
        self, hauled: datetime | None, set_at: datetime | None, zone: ZoneInfo | None
    ) -> tuple[datetime | None, datetime | None]:
        """Return both times with the offset told where the clock shows an hour twice."""
        if zone is None:
            return hauled, set_at
        sets, hauls = _readings(set_at, zone), _readings(hauled, zone)
        if max(len(sets), len(hauls)) < 2:
            return hauled, set_at
        self._said[_TWICE] += 1
        pairs = [(late, early) for early in sets for late in hauls]
        fitting = (pair for pair in pairs if _in_order(*pair, zone))
        return next(fitting, pairs[0])

    # -- problems ----------------------------------------------------------------------------

    def _where(self, line: Line, meaning: str) -> str:
        name = self._names.get(meaning, meaning)
        return f"{self.grid.unit} {line.number}, {name}"

    def _written(self, told: dict[str, str], meaning: str) -> str:
        parts = {"set_at": ("set_date", "set_clock"), "hauled_at": ("haul_date", "haul_clock")}
        names = (meaning, *parts.get(meaning, ()))
        return " ".join(told[name] for name in names if told.get(name))

    def _renamed(
        self, problem: Problem, line: Line, told: dict[str, str], cells: dict[str, str]
    ) -> Problem:
        """Say a problem in the table's own names and as it was written there."""
        column = problem.where.split(", ", 1)[-1]
        parts = {"set_at": ("set_date", "soak_h"), "hauled_at": ("haul_date",)}
        names = (column, *parts.get(column, ()))
        name = next((each for each in names if each in self._names), column)
        same = problem.value == cells.get(column, "").strip()
        value = self._written(told, column) or problem.value if same else problem.value
        return Problem(self._where(line, name), value, problem.what, problem.remedy)


def _local_day(moment: datetime, zone: ZoneInfo | None) -> date:
    """Return a moment's day at the place, whatever offset it is written with."""
    return (moment.astimezone(zone) if moment.tzinfo and zone else moment).date()


def _trip_name(day: date) -> str:
    return date_text(day)


def _not_recorded(cell: str) -> bool:
    return plain(cell) in vocabulary().not_recorded


def _readings(moment: datetime | None, zone: ZoneInfo) -> list[datetime | None]:
    """Return what a local time can mean, the sooner first; as it is where it can mean one thing."""
    if moment is None or moment.tzinfo is not None:
        return [moment]
    first, second = (moment.replace(tzinfo=zone, fold=fold) for fold in (0, 1))
    twice = first.utcoffset() != second.utcoffset()
    # A time that the clocks skip has two offsets as well, of which neither is right.
    skipped = twice and first.utcoffset() < second.utcoffset()  # type: ignore[operator]
    if not twice or skipped:
        return [moment]
    return [moment.replace(tzinfo=_fixed(each)) for each in (first, second)]


def _in_order(hauled: datetime | None, set_at: datetime | None, zone: ZoneInfo) -> bool:
    if hauled is None or set_at is None:
        return True
    after, before = (
        each.replace(tzinfo=each.tzinfo or zone).astimezone(UTC) for each in (hauled, set_at)
    )
    return after > before


def _fixed(moment: datetime) -> timezone:
    offset = moment.utcoffset()
    assert offset is not None
    return timezone(offset)


def _before(hauled: datetime, soak: str, zone: ZoneInfo | None) -> datetime:
    """Return when a trap was set that was hauled so many hours later, clock changes or not.

    zone: that of a haul without an offset; where it is unknown the haul itself is refused.
    """
    whole, _, minutes = soak.replace(",", ".").partition(":")
    try:
        hours = float(whole) + float(minutes or 0) / 60
        if not 0 < hours < 24 * 366:
            raise ValueError
    except ValueError:
        raise _Bad(
            "soak_h", say("is not a soak in hours"), say("write hours, such as 24")
        ) from None
    aware = hauled.replace(tzinfo=hauled.tzinfo or zone or UTC)
    return aware.astimezone(UTC) - timedelta(hours=hours)
