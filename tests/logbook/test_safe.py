"""The file is safe: backups, restoring, unclean stops, folders that refuse, damage set aside."""

from __future__ import annotations

import os
import random
import sqlite3
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.logbook import (
    Haul,
    Logbook,
    LogbookDamaged,
    LogbookError,
    LogbookInUse,
    backups,
    files,
    rescue,
)
from planner.logbook.backups import backups_of, obsolete

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
TIMES = st.lists(
    st.timedeltas(timedelta(days=-1), timedelta(days=2500)).map(lambda ago: NOW - ago), max_size=60
)


def haul(trap: str, trip: str = "14 Aug", **values: object) -> Haul:
    return Haul(trip, "Sedge Hollow", trap=trap, **values)  # type: ignore[arg-type]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "hauls.logbook"


@given(TIMES)
def test_which_backups_are_kept(made: list[datetime]) -> None:
    """The newest stays, so do all recent ones, and every day, month or year keeps its last."""
    gone = obsolete(made, NOW)
    kept = set(made) - gone
    assert not made or max(made) in kept
    assert all(NOW - at > timedelta(days=3) for at in gone)
    for at in gone:
        later = [k for k in kept if k > at and (k.year == at.year)]
        assert later
        if NOW - at <= timedelta(days=31):
            assert any(k.date() == at.date() for k in later)
    assert obsolete(kept, NOW) == frozenset()


def test_years_of_daily_backups_stay_few() -> None:
    """Ten years of use leave a folder that a person can look through."""
    made: set[datetime] = set()
    for day in range(3650):
        now = NOW + timedelta(days=day)
        made.add(now)
        made -= obsolete(made, now)
    assert len(made) < 31 + 38 + 10


def test_a_day_of_use_leaves_a_backup(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Yesterday's log can be had back; opening ten times a day makes one backup."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
        assert book.backups() == ()
    for _ in range(3):
        Logbook.open(path).close()
    assert len(backups_of(path)) == 1
    monkeypatch.setattr(backups, "EVERY", timedelta(0))
    Logbook.open(path).close()
    assert len(backups_of(path)) == 2


def test_restoring_brings_all_back_and_can_itself_be_taken_back(path: Path) -> None:
    """The book is what the backup holds, and what it held until then is a backup too."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1", keepers=3)])
    with Logbook.open(path) as book:
        before = book.read()
        (backup,) = book.backups()
        book.delete_trip("14 Aug")
        book.empty_bin()
        after = book.read()
        book.restore(backup.path)
        assert book.read() == before
        assert book.undo_name == "Undo entry of trip 14 Aug"
        book.save_trip("15 Aug", [haul("B1", "15 Aug")])
        assert len(book.read().hauls) == 2
        made = next(each for each in book.backups() if each.why == "before restoring")
        book.restore(made.path)
        assert book.read() == after
    with Logbook.open(path) as book:
        assert book.read() == after


def test_an_old_backup_is_restored_up_to_date(path: Path) -> None:
    """A backup of an earlier schema comes back at the schema of today, and is not changed."""
    old = Path(__file__).parents[1] / "reference" / "logbooks" / "schema1.logbook"
    copy = path.with_name("old.logbook")
    copy.write_bytes(old.read_bytes())
    with Logbook.open(path) as book:
        book.save_trip("x", [haul("A1", "x")])
        book.restore(copy)
        assert [h.trap for h in book.read().hauls] == ["A1", "A2", "A3"]
        book.save_trip("x", [haul("A1", "x", crabs=())])
    assert copy.read_bytes() == old.read_bytes()


def test_a_bad_backup_changes_nothing(path: Path) -> None:
    """A damaged, foreign or missing backup is refused in a sentence; the book stays."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul(f"A{n}", notes="n" * 300) for n in range(40)])
        whole = book.read()
        bad = path.with_name("bad.logbook")
        bad.write_bytes(path.read_bytes()[:8192])
        text = path.with_name("text.logbook")
        text.write_text("hello")
        for backup in (bad, text, path.with_name("none.logbook")):
            with pytest.raises(LogbookError):
                book.restore(backup)
        assert book.read() == whole


def test_a_backup_that_fails_does_not_close_the_log(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """No room for the day's backup: the log opens for writing and says so."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
    path.with_name("hauls-backups").write_text("a file where the folder should be")
    with Logbook.open(path) as book:
        assert not book.read_only
        assert "backup" in book.remark
        book.save_trip("14 Aug", [haul("A1", keepers=2)])
    assert not list(path.parent.glob("*.part*"))


def test_a_folder_that_cannot_be_written_is_read(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A log on a protected folder can still be looked at, and says why it is not written."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
    path.with_name("hauls.logbook.lock").unlink()
    path.with_name("hauls.logbook.lock").mkdir()
    with Logbook.open(path) as book:
        assert book.read_only
        assert book.notice is not None
        assert not isinstance(book.notice, LogbookInUse)
        assert [h.trap for h in book.read().hauls] == ["A1"]
        with pytest.raises(LogbookError):
            book.delete_trip("14 Aug")


def test_a_write_protected_file_is_read(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What cannot be saved must not look as if it could, cell after cell."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A")])
    monkeypatch.setattr(os, "access", lambda *_: False)  # as root, every file can be written
    with Logbook.open(path) as book:
        assert book.read_only
        assert "cannot be written" in str(book.notice)
        assert book.read().hauls == (haul("A"),)


def test_a_log_that_is_gone_is_told(path: Path) -> None:
    """An empty window where years of trips were would look like a loss, or like no matter."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A")])
    with Logbook.open(path) as book:  # which takes the day's backup
        assert book.remark == ""
    for make in (path.unlink, lambda: path.write_bytes(b"")):
        make()
        with Logbook.open(path) as book:
            assert "Backups of an earlier log" in book.remark
            book.restore(book.backups()[-1].path)


def test_a_drive_that_goes_away_is_a_sentence(path: Path) -> None:
    """The folder vanishes under an open log: every call is refused in words, none crashes."""
    book = Logbook.open(path)
    book.save_trip("14 Aug", [haul("A1")])
    gone = path.parent.with_name("gone")
    path.parent.rename(gone)
    try:
        with pytest.raises(LogbookError):
            book.save_trip("14 Aug", [haul("A1", keepers=3)])
    finally:
        gone.rename(path.parent)
    book.save_trip("14 Aug", [haul("A1", keepers=3)])
    assert [h.keepers for h in book.read().hauls] == [3]
    book.close()


def test_after_an_unclean_stop_the_whole_file_is_checked(path: Path) -> None:
    """An index that lost an entry passes the quick check, not the one after a crash."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1"), haul("A2")])
    raw = sqlite3.connect(path)
    raw.execute("PRAGMA writable_schema = ON")
    swap = ("hauls_of_trip", "rows_of_change")
    roots = dict(raw.execute("SELECT name, rootpage FROM sqlite_schema"))
    for name, other in (swap, swap[::-1]):
        sql = "UPDATE sqlite_schema SET rootpage = ? WHERE name = ?"
        raw.execute(sql, (roots[other], name))
    raw.commit()
    raw.close()
    Logbook.open(path, read_only=True).close()  # the quick check sees nothing
    files.mark_open(path)
    with pytest.raises(LogbookDamaged):
        Logbook.open(path)
    assert files.was_left_open(path)


def test_closing_cleanly_leaves_no_mark(path: Path) -> None:
    """Only a real crash costs the longer check."""
    book = Logbook.open(path)
    assert files.was_left_open(path)
    book.close()
    assert not files.was_left_open(path)


def _damaged(path: Path, seed: int) -> tuple[bytes, int]:
    """Write a log of thirty trips and damage one page; return the bytes and the hauls it had."""
    with Logbook.open(path) as book:
        for day in range(30):
            name = f"day {day}"
            rows = [haul(f"A{n}", name, keepers=n, notes="n" * 120) for n in range(12)]
            book.save_trip(name, rows)
    raw = bytearray(path.read_bytes())
    page = random.Random(seed).randrange(2, len(raw) // 4096)
    raw[page * 4096 : page * 4096 + 4096] = b"\xa5" * 4096
    path.write_bytes(raw)
    return bytes(raw), 360


@pytest.mark.parametrize("seed", range(6))
def test_what_can_be_read_of_a_damaged_log_is_taken_over(path: Path, seed: int) -> None:
    """One page gone costs at most that page's rows; the damaged file is kept byte for byte."""
    raw, hauls = _damaged(path, seed)
    try:
        Logbook.open(path).close()
    except LogbookDamaged:
        pass
    else:
        pytest.skip("the page was a free one: nothing was damaged")
    found = rescue(path, NOW)
    assert found.aside.read_bytes() == raw
    assert "set aside" in found.report.read_text() or "kept as it was" in found.report.read_text()
    assert str(found.aside.name) in found.sentence
    with Logbook.open(path) as book:
        log = book.read()
        # A damaged inner page hides the leaves below it; a leaf holds about twenty hauls.
        assert len(log.hauls) == found.taken["hauls"] >= hauls - 30 or found.lost
        for each in log.hauls:
            assert (each.trap, each.notes) == (f"A{each.keepers}", "n" * 120)
        book.save_trip("new", [haul("B1", "new")])


def test_a_log_that_cannot_be_read_at_all_is_set_aside(path: Path) -> None:
    """With its first page gone the log is empty, the report says so and names the backup."""
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", [haul("A1")])
    Logbook.open(path).close()  # takes the day's backup
    raw = path.read_bytes()[:100] + b"\xa5" * 3996 + path.read_bytes()[4096:]
    path.write_bytes(raw)
    with pytest.raises(LogbookError):
        Logbook.open(path)
    found = rescue(path, NOW)
    assert found.aside.read_bytes() == raw
    assert found.newest_backup is not None
    with Logbook.open(path) as book:
        assert book.read().hauls == ()
        book.restore(book.backups()[0].path)
        assert [h.trap for h in book.read().hauls] == ["A1"]


def test_a_rescue_that_cannot_finish_changes_nothing(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """No room for the new file, or another window at it: the damaged file stays in its place."""
    raw, _ = _damaged(path, 0)
    before = {each.name for each in path.parent.iterdir()}

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patch:
        patch.setattr("planner.logbook.rescuing.open_writer", full)
        with pytest.raises(LogbookError):
            rescue(path, NOW)
    assert path.read_bytes() == raw
    assert {each.name for each in path.parent.iterdir()} == before


def test_a_file_cut_short_gives_back_what_is_left_of_it(path: Path) -> None:
    """Half a file holds about half of the hauls: SQLite alone would read none of it."""
    with Logbook.open(path) as book:
        for day in range(40):
            name = f"day {day}"
            book.save_trip(name, [haul(f"A{n}", name, notes="n" * 120) for n in range(12)])
    raw = path.read_bytes()
    path.write_bytes(raw[: len(raw) // 2 + 77])
    with pytest.raises(LogbookDamaged):
        Logbook.open(path)
    found = rescue(path, NOW)
    assert found.aside.stat().st_size == len(raw) // 2 + 77
    with Logbook.open(path) as book:
        hauls = book.read().hauls
        assert len(hauls) > 100
        assert {each.notes for each in hauls} == {"n" * 120}
    assert not list(path.parent.glob("*.scratch"))


def test_any_damage_ends_with_a_log_that_works(path: Path) -> None:
    """Holes, scribbles, cuts and pages in the wrong place: the log opens, is rescued and then
    opens, or is refused in a sentence; nothing else can come of it."""
    with Logbook.open(path) as book:
        for day in range(12):
            name = f"day {day}"
            book.save_trip(name, [haul(f"A{n}", name, notes="n" * 99) for n in range(12)])
    whole = path.read_bytes()
    rng = random.Random(3)
    pages = len(whole) // 4096
    rescued = 0
    for _ in range(24):
        raw = bytearray(whole)
        page, other = rng.randrange(pages) * 4096, rng.randrange(pages) * 4096
        match rng.randrange(4):
            case 0:
                raw[page : page + 4096] = bytes(4096)
            case 1:
                raw[page : page + 4096] = whole[other : other + 4096]
            case 2:
                raw = raw[: rng.randrange(4096, len(raw))]
            case _:
                for _ in range(20):
                    raw[rng.randrange(len(raw))] = rng.randrange(256)
        path.write_bytes(raw)
        files.mark_open(path)
        try:
            with Logbook.open(path) as book:
                book.read()
        except LogbookDamaged:
            found = rescue(path)
            rescued += 1
            with Logbook.open(path) as book:
                book.save_trip("new", [haul("B1", "new")])
                assert len(book.read().hauls) == found.taken["hauls"] + 1
            found.aside.unlink()
        except LogbookError as error:
            assert "not a logbook" in str(error)  # noqa: PT017  (one of three ends)
    assert rescued > 10
