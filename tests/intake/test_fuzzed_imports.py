"""Ten thousand tables as people, programs and bad disks make them: the right rows, or a message."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from openpyxl import Workbook

from planner.intake import plan_intake, understand
from planner.intake.grid import Grid, grid_of
from planner.logbook import Haul, Logbook, LogError
from planner.logbook.columns import guard_formula
from planner.logbook.log import haul_key
from planner.logbook.workbook import to_cell_text

ZONE = ZoneInfo("America/New_York")
NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
TABLES = 10_000
HEADINGS = {
    "trip": ("trip", "Trip", "trip name", "Outing"),
    "place": ("place", "Water body", "AREA", "Lugar"),
    "spot": ("spot", "Location", "Site"),
    "trap": ("trap", "Pot No.", "Trap label", "Buoy #", "Nasa nº"),
    "bait": ("bait", "Bait used"),
    "keepers": ("keepers", "Legal males", "Kept", "De talla"),
    "shorts": ("shorts", "Sub-legal", "undersized"),
    "judged": ("judged", "Graded"),
    "light": ("light", "Light crabs"),
    "notes": ("notes", "Remarks"),
}
TEXTS = (
    "",
    "plain",
    "=1+1",
    "-5",
    "@x",
    "a,b",
    'say "hi"',
    "two; three",
    "Crêpe",
    "a\nb",
    "a|b",
    "+",
)
# The nights the clocks change at this place, and a plain day of either order's doubt.
DAYS = (datetime(2025, 11, 2), datetime(2026, 3, 8), datetime(2026, 8, 13), datetime(2026, 4, 5))  # noqa: DTZ001


def some_hauls(rng: np.random.Generator) -> list[Haul]:
    hauls = []
    for number in range(int(rng.integers(1, 5))):
        local = DAYS[rng.integers(len(DAYS))] + timedelta(minutes=5 * int(rng.integers(0, 200)))
        hauled = local.replace(tzinfo=ZONE).astimezone(UTC)
        if hauled.astimezone(ZONE).replace(tzinfo=None) != local:
            hauled += timedelta(hours=3)  # not in the hour that is skipped
        # Some sets fall into the hour that comes twice, too.
        soak = timedelta(minutes=5 * int(rng.integers(6, 300)))
        judged = int(rng.integers(0, 6))
        hauls.append(
            Haul(
                "14 Aug", "Otter Bight", str(rng.choice(["edge", "deep bend"])), f"A{number}",
                bait=str(rng.choice(["", "menhaden"])), set_at=hauled - soak, hauled_at=hauled,
                keepers=None if rng.random() < 0.2 else int(rng.integers(0, 30)),
                shorts=int(rng.integers(0, 9)), judged=judged,
                light=int(rng.integers(0, judged + 1)), notes=str(rng.choice(TEXTS)),
            )
        )  # fmt: skip
    return hauls


def times(rng: np.random.Generator) -> tuple[str, str, Callable[[datetime], str]]:
    """Return headings of set and haul, and a way to write an instant that can be told again."""
    local = ["%Y-%m-%d %H:%M", "%d %b %Y %H:%M", "%b %d, %Y %I:%M %p", "%d/%m/%Y %H:%M",
             "%m/%d/%Y %H:%M", "%d.%m.%Y %H:%M"]  # fmt: skip
    if rng.random() < 0.3:
        return "set_at", "hauled_at", lambda at: at.astimezone(ZONE).isoformat()
    form = str(rng.choice(local))
    return "Set", "Date pulled", lambda at: at.astimezone(ZONE).strftime(form)


def table(hauls: list[Haul], rng: np.random.Generator) -> list[list[str]]:
    named = {field: str(rng.choice(names)) for field, names in HEADINGS.items()}
    *when, write = times(rng)
    rows = [[*named.values(), *when, "Crew"]]
    for haul in hauls:
        cells = [getattr(haul, field) for field in named]
        texts = [
            "" if c is None else guard_formula(c) if isinstance(c, str) else str(c) for c in cells
        ]
        rows.append([*texts, write(haul.set_at), write(haul.hauled_at), "two"])
    return rows


def as_bytes(rows: list[list[str]], rng: np.random.Generator) -> bytes:
    if rng.random() < 0.08:
        book = Workbook()
        for row in rows:
            book.active.append([to_cell_text(cell) or None for cell in row])
            for cell in book.active[book.active.max_row]:
                cell.data_type = "s" if cell.value is not None else cell.data_type
        out = io.BytesIO()
        book.save(out)
        return out.getvalue()
    text = io.StringIO(newline="")
    separator = str(rng.choice([",", ";", "\t", "|"]))
    quoting = csv.QUOTE_ALL if rng.random() < 0.3 else csv.QUOTE_MINIMAL
    ends = str(rng.choice(["\n", "\r\n"]))
    csv.writer(text, delimiter=separator, quoting=quoting, lineterminator=ends).writerows(rows)
    above = str(rng.choice(["", "", "", "\n", "My crabs\n\n"]))
    encoding = str(rng.choice(["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "cp1252"]))
    return (above + text.getvalue()).encode(encoding, "replace")


def spoiled(raw: bytes, rows: list[list[str]], rng: np.random.Generator) -> bytes:
    """Return a table that something happened to."""
    cells = [list(row) for row in rows]
    row = int(rng.integers(1, len(cells)))
    at = int(rng.integers(len(cells[row])))
    match rng.integers(7):
        case 0:  # cut short
            return raw[: int(rng.integers(len(raw)))]
        case 1:  # bytes overwritten
            spot = int(rng.integers(len(raw)))
            return raw[:spot] + rng.bytes(int(rng.integers(1, 40))) + raw[spot + 1 :]
        case 2:  # nothing of a table
            return rng.bytes(int(rng.integers(0, 400)))
        case 3:
            cells[row][at] = str(rng.choice(["1e309", "9" * 400, "-1", "2.5", "1,5", "NaN", "inf"]))
        case 4:
            cells[row][at] = str(
                rng.choice(["=cmd|'/c'!A1", "\u202e", "\0", "\x1b[2J", "31/31/2026"])
            )
        case 5:
            cells[row] = cells[row][: int(rng.integers(1, 9))]
        case 6:
            cells[row].append("more")
    return as_bytes(cells, rng)


@pytest.mark.slow
def test_ten_thousand_tables_give_the_right_rows_or_a_message(tmp_path: Path):
    """Whatever is dropped on the import, no wrong haul is taken, and none in silence."""
    rng = np.random.default_rng(20261125)
    right = asked = told = 0
    with Logbook.open(tmp_path / "fuzz.logbook") as book:
        for number in range(TABLES):
            hauls = some_hauls(rng)
            rows = table(hauls, rng)
            raw = as_bytes(rows, rng)
            is_spoiled = rng.random() < 0.5
            if is_spoiled:
                raw = spoiled(raw, rows, rng)
            grid = grid_or_message(raw, f"{number}.csv")
            if isinstance(grid, LogError):
                assert is_spoiled
                assert all(problem.what and problem.remedy for problem in grid.problems)
                told += 1
                continue
            mapping = understand(grid, NOW, "Otter Bight")
            intake = plan_intake(grid, mapping, lambda _: ZONE, NOW)
            assert all(str(problem) for problem in intake.problems)
            if is_spoiled:
                told += bool(intake.problems)
                for haul in intake.hauls:
                    assert haul.judged is None or haul.light is None or haul.light <= haul.judged
                if number % 50 == 0:
                    check_nothing_half_taken(book, intake.hauls)
                continue
            if intake.questions:
                asked += 1
                if intake.questions == ("clock",):
                    # Where a whole column stands at midnight, as programs write dates.
                    assert any(
                        all(row[at].endswith(("00:00", "12:00 AM")) for row in rows[1:])
                        for at in (-3, -2)
                    )
                    continue
                # Else only ever the order of day and month, where the numbers do not tell.
                assert intake.questions == ("order",)
                assert all("/" in row[-2] or "." in row[-2] for row in rows[1:])
                continue
            assert not intake.problems
            wanted = [haul_key(replace(haul, extra={"Crew": "two"})) for haul in hauls]
            got = [haul_key(haul) for haul in intake.hauls]
            assert got == wanted or shifted(intake.hauls, hauls)
            right += got == wanted
    assert right > 0.3 * TABLES
    assert told > 0.2 * TABLES
    assert asked > 0


def grid_or_message(raw: bytes, name: str) -> Grid | LogError:
    try:
        return grid_of(raw, name)
    except LogError as error:
        return error


def shifted(got: tuple[Haul, ...], wanted: list[Haul]) -> bool:
    """Tell whether only the repeated hour of the autumn night differs."""
    pairs = list(zip(got, wanted, strict=True))
    untimed = {"set_at": None, "hauled_at": None, "extra": {}}
    return all(
        haul_key(replace(a, **untimed)) == haul_key(replace(b, **untimed))
        and abs(a.set_at - b.set_at) in (timedelta(), timedelta(hours=1))
        and abs(a.hauled_at - b.hauled_at) in (timedelta(), timedelta(hours=1))
        for a, b in pairs
    )


def check_nothing_half_taken(book: Logbook, hauls: tuple[Haul, ...]) -> None:
    """Take a table in as the window does: all of it in one change, which undo takes out."""
    before = book.read().hauls
    change = book.add_hauls(hauls, "import")
    after = book.read().hauls
    assert len(after) == len(before) + change.added
    assert book.add_hauls(hauls, "again").added == 0
    if change.trips:
        book.undo()
    assert book.read().hauls == before
