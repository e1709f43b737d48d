"""What goes out comes back: export and import lose nothing, and run nothing."""

from __future__ import annotations

import csv
import io
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from haul_strategies import hauls
from hypothesis import given
from hypothesis import strategies as st

from planner.logbook import Haul, Log, LogbookError, export_table, read_log, table_text
from planner.logbook.columns import guard_formula, unguard_formula
from planner.logbook.log import haul_key

PACIFIC = ZoneInfo("Pacific/Auckland")


def zones(place: str) -> ZoneInfo | None:
    """Know one place of two."""
    return PACIFIC if place == "Sedge Hollow" else None


@given(st.lists(hauls(), max_size=4))
def test_round_trip_loses_nothing(
    tmp_path_factory: pytest.TempPathFactory, drawn: list[Haul]
) -> None:
    """Any hauls, exported and read, are the same hauls in the same order, unknown columns too."""
    path = tmp_path_factory.mktemp("out") / "hauls.csv"
    export_table(Log(tuple(drawn)), path, zones)
    back = read_log(path, zones)
    assert [haul_key(haul) for haul in back.hauls] == [haul_key(haul) for haul in drawn]


@given(st.text())
def test_guard_is_taken_back_exactly(text: str) -> None:
    """Guarding is harmless to every text, and reading undoes it."""
    assert unguard_formula(guard_formula(text)) == text


@given(st.lists(hauls(), min_size=1, max_size=3))
def test_no_text_begins_like_a_formula(drawn: list[Haul]) -> None:
    """No cell of text in an exported table begins with a sign that a spreadsheet acts on."""
    rows = list(csv.reader(io.StringIO(table_text(Log(tuple(drawn))), newline="")))
    numeric = {"depth_m", "water_c"}
    for name, *cells in zip(*rows, strict=True):
        for cell in [name, *([] if name in numeric else cells)]:
            assert not cell.lstrip(" ").startswith(("=", "+", "-", "@", "\t", "\r", "\n"))


def test_header_is_the_agreed_one() -> None:
    """The columns come in the agreed order, then the unknown ones as first met."""
    drawn = (
        Haul("a", "b", extra={"colour": "red"}),
        Haul("a", "b", extra={"moon": "", "colour": ""}),
    )
    assert table_text(Log(drawn)).splitlines()[0] == (
        "trip,place,spot,trap,design,bait,set_at,hauled_at,depth_m,keepers,shorts,females,sponge,"
        "other,judged,light,water_c,notes,colour,moon"
    )


def test_failed_export_leaves_the_old_file(tmp_path: Path) -> None:
    """An export that cannot be written says so and leaves nothing behind."""
    with pytest.raises(LogbookError):
        export_table(Log(()), tmp_path / "no such folder" / "hauls.csv")
    taken = tmp_path / "taken"
    taken.mkdir()
    with pytest.raises(LogbookError):
        export_table(Log(()), taken)
    assert list(tmp_path.iterdir()) == [taken]


def test_numbers_have_one_form() -> None:
    """A depth of 1 is one of 1.0, and minus zero is zero: files keep no difference."""
    written = Log((Haul("a", "b", depth_m=1, water_c=-0.0),))
    assert written.fingerprint == Log((Haul("a", "b", depth_m=1.0, water_c=0.0),)).fingerprint
