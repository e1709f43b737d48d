"""Files written whole or not at all; those of choices are lost without an error."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from planner.errors import PlannerError
from planner.kept import read_kept, write_kept
from planner.logbook import LogbookError
from planner.whole_file import whole_file, write_whole


def test_what_is_kept_is_read_again_and_the_oldest_is_forgotten(tmp_path: Path) -> None:
    path = tmp_path / "folder" / "kept.json"
    write_kept(path, {"a": [1], "b": "ñ", "c": None}, most=2)
    assert read_kept(path) == {"b": "ñ", "c": None}
    assert [each.name for each in path.parent.iterdir()] == ["kept.json"]


def test_a_file_name_that_is_no_text_is_kept(tmp_path: Path) -> None:
    """Names on a disk of long ago need not be UTF-8; at the end of a session they failed it."""
    path = tmp_path / "kept.json"
    place = os.fsdecode(b"/home/x/caf\xe9.toml")
    write_kept(path, {"place": place})
    assert read_kept(path) == {"place": place}


def test_keeping_nothing_leaves_no_file(tmp_path: Path) -> None:
    path = tmp_path / "kept.json"
    write_kept(path, {"a": 1})
    write_kept(path, {})
    write_kept(path, {})
    assert not path.exists()


@pytest.mark.parametrize("damage", [b"", b"[1]", b"{", b"\xff\xfe", b"[" * 100_000])
def test_a_damaged_file_keeps_nothing(tmp_path: Path, damage: bytes) -> None:
    path = tmp_path / "kept.json"
    path.write_bytes(damage)
    assert read_kept(path) == {}


def test_a_full_disk_leaves_what_was_there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Half a file would be a damaged one at the next start."""
    path = tmp_path / "kept.json"
    write_kept(path, {"a": 1})

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("planner.whole_file.os.replace", full)
    write_kept(path, {"a": 2})
    assert read_kept(path) == {"a": 1}
    assert [each.name for each in tmp_path.iterdir()] == ["kept.json"]


def test_a_file_that_fails_half_way_leaves_the_one_before(tmp_path: Path) -> None:
    """Protects what was exported last: a full disk must not cost it, nor leave a half file."""
    path = tmp_path / "hauls.csv"
    write_whole(path, b"before")

    def full() -> None:
        with whole_file(path, LogbookError) as partial:
            partial.write_bytes(b"ha")
            raise OSError(28, "No space left on device")

    with pytest.raises(LogbookError, match=r"cannot be written \(No space left on device\)"):
        full()
    assert path.read_bytes() == b"before"
    assert [each.name for each in tmp_path.iterdir()] == ["hauls.csv"]


@pytest.mark.parametrize("folder", ["no such folder", "a file"])
def test_a_folder_that_is_none_is_told(tmp_path: Path, folder: str) -> None:
    """Tidying up after the refusal must not put an error of its own in its place."""
    (tmp_path / "a file").touch()
    with pytest.raises(PlannerError, match="choose another folder"):
        write_whole(tmp_path / folder / "hauls.csv", b"1")
