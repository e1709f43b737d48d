"""The logbook file: nothing entered is lost, every change can be taken back, no file is harmed."""

from __future__ import annotations

import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from haul_strategies import hauls
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule

from planner.logbook import (
    Haul,
    Log,
    Logbook,
    LogbookDamaged,
    LogbookError,
    LogbookInUse,
    LogbookNewer,
    LogError,
    Trip,
    export_table,
    migrations,
    read_log,
)
from planner.logbook.backups import backups_of
from planner.logbook.journal import KEPT_CHANGES

SET = datetime(2026, 8, 13, 22, tzinfo=UTC)
HAULED = datetime(2026, 8, 14, 11, tzinfo=UTC)


def haul(trap: str, keepers: int | None = 1, trip: str = "14 Aug", **values: Any) -> Haul:
    """Return a haul of the demo place."""
    return Haul(
        trip, "Sedge Hollow", trap=trap, set_at=SET, hauled_at=HAULED, keepers=keepers, **values
    )


def no_zone(place: str) -> None:
    """Know no place."""


def traps(book: Logbook) -> list[tuple[str, int | None]]:
    """Return the traps of the book with their keepers."""
    return [(haul.trap, haul.keepers) for haul in book.read().hauls]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Return where the test's logbook is."""
    return tmp_path / "hauls.logbook"


def test_saves_replaces_and_survives_closing(path: Path) -> None:
    """A trip saved twice has the second hauls only, after reopening too."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1"), haul("A2"), haul("A3", extra={"moon": "=full"})])
        change = book.save_trip("14 Aug", [haul("A1"), haul("A2", 5)])
        assert (change.name, change.trips) == ("entry of trip 14 Aug", ("14 Aug",))
    with Logbook.open(path) as book:
        assert traps(book) == [("A1", 1), ("A2", 5)]
    assert read_log(path, no_zone).hauls[1] == haul("A2", 5)


def test_saving_the_same_is_no_change(path: Path) -> None:
    """A save that changes nothing leaves nothing to undo."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        assert book.save_trip("14 Aug", [haul("A1")]).trips == ()
        assert book.delete_trip("no such trip").trips == ()
        book.undo()
        assert (book.undo_name, traps(book)) == (None, [])


def test_a_trip_keeps_what_belongs_to_it(path: Path) -> None:
    """Crew, weather and the trip's own water temperature are kept and reach the outcome."""
    details = Trip("14 Aug", "Sedge Hollow", crew=2, weather="wind", water_c=29.5, notes="late")
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")], details)
        book.save_trip("14 Aug", [haul("A1", 4)])
        log = book.read()
        assert log.trips == (details,)
        assert log.outcomes()[0].water_c == 29.5
        book.save_trip("14 Aug", [])
        assert book.read().trips == ()
        book.undo()
        assert book.read() == log


def test_undo_and_redo_by_name_after_restart(path: Path) -> None:
    """Changes are taken back newest first, by name, in a later session too."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1"), haul("A2")])
        book.delete_trip("14 Aug")
    with Logbook.open(path) as book:
        assert book.undo_name == "Undo delete of trip 14 Aug"
        undone = book.undo()
        assert undone is not None
        assert (undone.name, undone.trips) == ("Undo delete of trip 14 Aug", ("14 Aug",))
        assert traps(book) == [("A1", 1), ("A2", 1)]
        assert book.redo_name == "Redo delete of trip 14 Aug"
    with Logbook.open(path) as book:
        book.redo()
        assert (traps(book), book.redo_name) == ([], None)
        book.undo()
        book.save_trip("20 Aug", [haul("A1", trip="20 Aug")])
        assert (book.redo_name, book.redo()) == (None, None)


def test_undo_reaches_fifty_changes(path: Path) -> None:
    """The last fifty changes can be undone, and the book is then as it was before them."""
    with Logbook.open(path) as book:
        for keepers in range(KEPT_CHANGES + 6):
            book.save_trip("14 Aug", [haul("A1", keepers)])
        for _ in range(KEPT_CHANGES):
            assert book.undo() is not None
        assert book.undo() is None
        assert traps(book) == [("A1", 5)]
        for _ in range(KEPT_CHANGES):
            assert book.redo() is not None
        assert traps(book) == [("A1", KEPT_CHANGES + 5)]


class Sessions(RuleBasedStateMachine):
    """Random changes, undo, redo and restarts against a plain list of past states."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = Path(os.environ["FULLSHELL_HOME"]) / f"machine-{id(self)}"
        self.book = Logbook.open(self.folder / "hauls.logbook")
        self.states: list[dict[str, list[Haul]]] = [{}]
        self.at = 0

    @rule(name=st.sampled_from(["a", "b"]), drawn=st.lists(hauls(), max_size=3))
    def save(self, name: str, drawn: list[Haul]) -> None:
        new = [replace(haul, trip=name) for haul in drawn]
        if self.book.save_trip(name, new).trips:
            self._now({**self.states[self.at], name: new})

    @rule(name=st.sampled_from(["a", "b"]))
    def delete(self, name: str) -> None:
        if self.book.delete_trip(name).trips:
            self._now({**self.states[self.at], name: []})

    @rule(drawn=st.lists(hauls(), max_size=2))
    def add(self, drawn: list[Haul]) -> None:
        new = [replace(haul, trip="c") for haul in drawn]
        self.book.add_hauls(new, "import of x")
        change = self.book.add_hauls(new, "import of x")
        assert (change.trips, change.added) == ((), 0)
        now = {**self.states[self.at], "c": [h for h in self.book.read().hauls if h.trip == "c"]}
        if now["c"] != self.states[self.at].get("c", []):
            self._now(now)

    @rule()
    def undo(self) -> None:
        assert (self.book.undo() is None) == (self.at == 0)
        self.at = max(self.at - 1, 0)

    @rule()
    def redo(self) -> None:
        assert (self.book.redo() is None) == (self.at == len(self.states) - 1)
        self.at = min(self.at + 1, len(self.states) - 1)

    @rule()
    def restart(self) -> None:
        self.book.close()
        self.book = Logbook.open(self.folder / "hauls.logbook")

    def _now(self, state: dict[str, list[Haul]]) -> None:
        self.states = [*self.states[: self.at + 1], state]
        self.at += 1

    @invariant()
    def holds_the_state(self) -> None:
        expected = tuple(haul for hauls in self.states[self.at].values() for haul in hauls)
        assert Log(self.book.read().hauls).fingerprint == Log(expected).fingerprint

    def teardown(self) -> None:
        self.book.close()
        shutil.rmtree(self.folder)


Sessions.TestCase.settings = settings(
    max_examples=25, stateful_step_count=14, suppress_health_check=list(HealthCheck)
)
TestSessions = Sessions.TestCase
TestSessions.__doc__ = "The book equals a model of it after any run of changes and restarts."


@settings(max_examples=30)
@given(st.lists(hauls(), max_size=4))
def test_importing_twice_adds_nothing(
    tmp_path_factory: pytest.TempPathFactory, drawn: list[Haul]
) -> None:
    """A table enters whole once; the second time every haul is known."""
    folder = tmp_path_factory.mktemp("import")
    with Logbook.open(folder / "one.logbook") as source:
        source.add_hauls(drawn, "import")
        export_table(source.read(), folder / "hauls.csv")
        with Logbook.open(folder / "two.logbook") as book:
            assert book.import_table(folder / "hauls.csv", no_zone).added == len(drawn)
            assert book.import_table(folder / "hauls.csv", no_zone).added == 0
            assert book.read().fingerprint == source.read().fingerprint


def test_import_is_all_or_nothing(path: Path, tmp_path: Path) -> None:
    """One bad row and none is taken, unless the good ones are asked for."""
    table = tmp_path / "hauls.csv"
    table.write_text("trip,place,keepers\na,Sedge Hollow,3\na,Sedge Hollow,-3\na,Sedge Hollow,3\n")
    with Logbook.open(path) as book:
        with pytest.raises(LogError):
            book.import_table(table, no_zone)
        assert book.read().hauls == ()
        change = book.import_table(table, no_zone, skip_bad=True)
        assert (change.added, change.name) == (2, "import of hauls.csv")
        assert book.undo_name == "Undo import of hauls.csv"


def test_impossible_hauls_are_refused_whole(path: Path) -> None:
    """A save with one impossible haul changes nothing and names it."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        with pytest.raises(LogError) as caught:
            book.save_trip("14 Aug", [haul("A1", 2), haul("A2", judged=2, light=3)])
        assert [problem.where for problem in caught.value.problems] == ["haul 2, light"]
        assert traps(book) == [("A1", 1)]


def test_second_window_reads_only(path: Path) -> None:
    """While one window writes another reads, is told, and may not write; then it may."""
    first = Logbook.open(path)
    first.save_trip("14 Aug", [haul("A1")])
    with Logbook.open(path) as second:
        assert second.read_only
        assert isinstance(second.notice, LogbookInUse)
        assert traps(second) == [("A1", 1)]
        first.save_trip("14 Aug", [haul("A1", 2)])
        assert traps(second) == [("A1", 2)]
        with pytest.raises(LogbookInUse):
            second.delete_trip("14 Aug")
    first.close()
    first.close()
    with Logbook.open(path) as third:
        assert not third.read_only
        third.delete_trip("14 Aug")
    with Logbook.open(path, read_only=True) as reader, pytest.raises(LogbookError):
        reader.undo()


def test_a_killed_window_lets_go_and_loses_nothing(path: Path) -> None:
    """Killed between or within saves, the book opens for writing and holds whole trips only."""
    script = (
        "import sys; from planner.logbook import Haul, Logbook\n"
        "book = Logbook.open(sys.argv[1])\n"
        "for n in range(10**6):\n"
        "    book.save_trip(str(n), [Haul(str(n), 'x', trap=t) for t in 'ABC'])\n"
        "    print(n, flush=True)\n"
    )
    done = -1
    for saves in (1, 4, 9):
        path.unlink(missing_ok=True)
        child = subprocess.Popen(
            [sys.executable, "-c", script, str(path)], stdout=subprocess.PIPE, text=True
        )
        assert child.stdout is not None
        for _ in range(saves):
            done = int(child.stdout.readline())
        child.send_signal(signal.SIGKILL)
        child.wait()
        child.stdout.close()
        with Logbook.open(path) as book:
            assert not book.read_only
            trips = [outcome.hauls for outcome in book.read().outcomes()]
            assert set(trips) == {3}
            assert len(trips) >= done + 1


def test_interrupted_save_is_rolled_back_for_readers(path: Path) -> None:
    """A reader that finds a half-written save sees the state before it."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        connection = book._connection
        connection.execute("PRAGMA cache_size = 1")
        connection.execute("BEGIN IMMEDIATE")
        connection.execute("UPDATE hauls SET keepers = 9, notes = ?", ("x" * 100_000,))
        for suffix in ("", "-journal"):
            shutil.copy(f"{path}{suffix}", path.with_name(f"torn.logbook{suffix}"))
        connection.execute("ROLLBACK")
    assert read_log(path.with_name("torn.logbook"), no_zone).hauls[0].keepers == 1


def test_newer_and_foreign_files_are_left_untouched(path: Path) -> None:
    """A later version's file, another program's file and any other file stay as they are."""
    Logbook.open(path).close()
    raw = sqlite3.connect(path)
    raw.execute(f"PRAGMA user_version = {migrations.latest_version() + 1}")
    raw.close()
    foreign = path.with_name("foreign.db")
    raw = sqlite3.connect(foreign)
    raw.execute("CREATE TABLE t (x)")
    raw.close()
    picture = path.with_name("picture.png")
    picture.write_bytes(b"\x89PNG\r\n" + bytes(5000))
    for file, error in ((path, LogbookNewer), (foreign, LogbookError), (picture, LogbookError)):
        before = file.read_bytes()
        for read_only in (False, True):
            with pytest.raises(error):
                Logbook.open(file, read_only=read_only)
        assert file.read_bytes() == before


def test_damaged_files_are_never_written(path: Path) -> None:
    """A hole anywhere gives the book or a sentence, never a crash, and the file stays as it is."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul(f"A{n}", notes="n" * 200) for n in range(60)])
    whole = path.read_bytes()
    rng = random.Random(14)
    refused = 0
    holes = [*range(0, len(whole), 4096), *(rng.randrange(len(whole)) for _ in range(60))]
    for at in holes:
        raw = bytearray(whole)
        raw[at : at + 64] = rng.choice([b"\xa5", b"\0", b"\xff"]) * 64
        path.write_bytes(raw)
        for read_only in (False, True):
            try:
                with Logbook.open(path, read_only=read_only) as book:
                    book.read()
            except LogbookError:
                refused += 1
        assert path.read_bytes() == bytes(raw)
    assert refused >= 2 * len(range(0, len(whole), 4096))


def test_cut_file_is_refused(path: Path) -> None:
    """A file cut short at a page is refused as damaged."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul(f"A{n}", notes="n" * 200) for n in range(60)])
    path.write_bytes(path.read_bytes()[: 4096 * 3])
    with pytest.raises(LogbookDamaged):
        Logbook.open(path)


def test_full_disk_loses_nothing(path: Path) -> None:
    """When the disk is full the save is refused in a sentence and the book is as before."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        pages = book._connection.execute("PRAGMA page_count").fetchone()[0]
        book._connection.execute(f"PRAGMA max_page_count = {pages}")
        with pytest.raises(LogbookError, match="disk is full"):
            book.save_trip("14 Aug", [haul("A1", notes="x" * 50_000)])
        assert traps(book) == [("A1", 1)]
    with Logbook.open(path) as book:
        assert traps(book) == [("A1", 1)]


def test_locked_file_and_unreachable_folder(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file held by another program and a folder that cannot be made: a sentence each."""
    monkeypatch.setattr("planner.logbook.files._WAIT_S", 0.05)
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        other = sqlite3.connect(path, isolation_level=None)
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(LogbookError, match="locked"):
            book.delete_trip("14 Aug")
        other.execute("ROLLBACK")
        other.close()
        assert traps(book) == [("A1", 1)]
    with pytest.raises(LogbookError):
        Logbook.open(path / "below a file" / "hauls.logbook")
    with pytest.raises(LogbookError):
        Logbook.open(path.parent / "none.logbook", read_only=True)
    with pytest.raises(LogbookError):
        Logbook.open(path.parent)


@pytest.fixture
def next_schema(monkeypatch: pytest.MonkeyPatch) -> None:
    """Add a made-up step to the schema."""
    step = ("ALTER TABLE hauls ADD COLUMN colour TEXT NOT NULL DEFAULT ''",)
    monkeypatch.setattr(migrations, "MIGRATIONS", (*migrations.MIGRATIONS, step))


def _old_book(path: Path) -> None:
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        book.save_trip("14 Aug", [haul("A1", 2)])


def test_schema_step_behind_a_verified_backup(path: Path, request: pytest.FixtureRequest) -> None:
    """An older file is copied whole, then brought up to date; undo works across the step."""
    _old_book(path)
    before = path.read_bytes()
    version = migrations.latest_version()
    request.getfixturevalue("next_schema")
    assert read_log(path, no_zone).hauls[0].keepers == 2
    assert path.read_bytes() == before
    with Logbook.open(path) as book:
        assert traps(book) == [("A1", 2)]
        book.undo()
        assert traps(book) == [("A1", 1)]
    (backup,) = (each for each in backups_of(path) if each.why)
    assert backup.why == f"before schema {version + 1}"
    raw = sqlite3.connect(backup.path)
    assert raw.execute("PRAGMA user_version").fetchone()[0] == version
    assert raw.execute("SELECT keepers FROM hauls").fetchall() == [(2,)]
    raw.close()


def test_failed_schema_step_changes_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A step that fails half way leaves the file at its old schema, whole."""
    _old_book(path)
    step = ("ALTER TABLE hauls ADD COLUMN colour TEXT", "ALTER TABLE nothing ADD COLUMN x")
    with monkeypatch.context() as patch:
        patch.setattr(migrations, "MIGRATIONS", (*migrations.MIGRATIONS, step))
        with pytest.raises(sqlite3.OperationalError):
            Logbook.open(path)
    with Logbook.open(path) as book:
        assert traps(book) == [("A1", 2)]
        columns = list(book._connection.execute("SELECT * FROM hauls").fetchone().keys())
        assert "colour" not in columns


def test_calls_from_many_threads_take_turns(path: Path) -> None:
    """Saves from several threads at once all arrive."""
    from concurrent.futures import ThreadPoolExecutor

    with Logbook.open(path) as book, ThreadPoolExecutor(4) as pool:
        names = [str(number) for number in range(24)]
        list(pool.map(lambda name: book.save_trip(name, [haul("A1", trip=name)]), names))
        assert sorted(h.trip for h in book.read().hauls) == sorted(names)
