"""Files that earlier versions wrote open whole, for reading and for writing."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from planner.logbook import Logbook, read_log

FILES = sorted((Path(__file__).parents[1] / "reference" / "logbooks").glob("*.logbook"))


def test_there_is_one_for_every_schema() -> None:
    """A new schema step comes with a file of the schema before it."""
    from planner.logbook.migrations import latest_version

    assert [file.stem for file in FILES] == [f"schema{n}" for n in range(1, latest_version() + 1)]


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.stem)
def test_opens_whole_and_undoes(file: Path, tmp_path: Path) -> None:
    """Every haul is there, reading leaves the file alone, and its last change can be undone."""
    path = tmp_path / file.name
    shutil.copy(file, path)
    before = path.read_bytes()
    log = read_log(path, lambda _: None)
    assert path.read_bytes() == before
    assert [(h.trap, h.keepers, h.judged, h.light) for h in log.hauls] == [
        ("A1", 3, 3, 1),
        ("A2", None, None, None),
        ("A3", 0, None, None),
    ]
    assert log.hauls[2].extra == {"colour": "red"}
    assert (log.trips[0].crew, log.outcomes()[0].water_c) == (2, 29.5)
    with Logbook.open(path) as book:
        assert book.read() == log
        assert book.undo() is not None
        assert len(book.read().hauls) == 2
        assert book.redo() is not None
        assert book.read() == log


def test_the_second_schema_keeps_crabs_traps_kitchen_and_bin(tmp_path: Path) -> None:
    """What came with the second schema stays readable under every later one."""
    path = tmp_path / "schema2.logbook"
    shutil.copy(FILES[1], path)
    with Logbook.open(path) as book:
        log = book.read()
        assert [(crab.grade, crab.width_mm) for crab in log.hauls[0].crabs] == [("light", 142.0)]
        assert [event.kind for event in log.traps[0].events] == ["bought", "repaired"]
        assert (log.trips[0].kitchen_picked, log.trips[0].kitchen_light) == (3, 1)
        (binned,) = book.binned()
        book.take_out_of_bin(binned.number)
        assert [trip.name for trip in book.read().trips] == ["14 Aug", "13 Aug"]


def test_the_third_schema_keeps_what_a_plan_promised() -> None:
    """What came with the third schema stays readable under every later one."""
    promise = read_log(FILES[2], lambda _: None).trips[0].promise
    assert promise is not None
    assert (promise.full_keepers.mean, promise.light_share.high) == (14.0, 0.25)
