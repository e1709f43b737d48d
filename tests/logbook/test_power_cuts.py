"""Stops of every kind in the middle of entry: what was saved is there, and no half of a row."""

from __future__ import annotations

import json
import struct
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from planner.logbook import Haul, Logbook

PAGE = 4096
SECTOR = 512
MAGIC = bytes.fromhex("d9d505f920a163d7")
HERE = Path(__file__).parent


def told(script: str, *words: str) -> Any:
    """Return what a script of this folder printed."""
    run = subprocess.run(
        [sys.executable, str(HERE / script), *words], capture_output=True, text=True, check=False
    )
    assert run.returncode == 0, run.stderr
    return json.loads(run.stdout)


@pytest.mark.slow
@pytest.mark.skipif(sys.platform == "win32", reason="Windows has neither fork nor SIGKILL")
def test_two_hundred_kills_lose_nothing(tmp_path: Path) -> None:
    """Killed at 200 random moments of a busy session, the log holds every cell that was saved,
    the one after it or not, and nothing in between: rows, crabs, deleted trips."""
    found = told("kill_session.py", str(tmp_path / "hauls.logbook"), "200", "5")
    assert found.get("kills") == 200, found
    # The session was really busy, and really cut within saves: a journal was left behind.
    assert found["steps"] > 400
    assert found["within"] > 5


@pytest.mark.skipif(sys.platform == "win32", reason="Windows cannot limit the size of files")
def test_a_disk_full_at_any_size_loses_nothing(tmp_path: Path) -> None:
    """At whatever byte the disk is full, the save is made whole or refused in a sentence, and
    goes through when there is room again."""
    found = told("full_disk.py", str(tmp_path / "hauls.logbook"))
    refusals = [refused for _, refused, _ in found["told"]]
    assert sum(bool(refused) for refused in refusals) > 10
    assert refusals[-1] == ""
    for limit, refused, held in found["told"]:
        assert held == bool(refused), limit
        if refused:
            assert "Nothing was changed" in refused
    assert found["after"] == 60


def journal(before: bytes, pages: list[int]) -> bytes:
    """Return the rollback journal of a save that changes these pages.

    As SQLite's file format page lays it down: a header of one sector, then for each page its
    number, its content before, and a checksum over every 200th byte.
    """
    nonce = 0x1234
    header = MAGIC + struct.pack(">5I", len(pages), nonce, len(before) // PAGE, SECTOR, PAGE)
    made = header.ljust(SECTOR, b"\0")
    for page in pages:
        content = before[(page - 1) * PAGE : page * PAGE]
        checksum = (nonce + sum(content[at] for at in range(PAGE - 200, 0, -200))) % 2**32
        made += struct.pack(">I", page) + content + struct.pack(">I", checksum)
    return made


def test_a_write_cut_at_every_page_boundary_is_taken_back(tmp_path: Path) -> None:
    """One cell is saved, and the power goes after each page of the journal, then after each page
    and each half page of the log: opened again, the log is as before the save, or after it."""
    path = tmp_path / "hauls.logbook"
    rows = [Haul("14 Aug", "x", trap=f"A{n}", notes="n" * 300) for n in range(40)]
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", rows)
        old = book.read()
        before = path.read_bytes()
        book.save_trip("14 Aug", [replace(old.hauls[0], keepers=7), *old.hauls[1:]])
        new = book.read()
        after = path.read_bytes()
    changed = [
        at // PAGE + 1
        for at in range(0, len(after), PAGE)
        if before[at : at + PAGE] != after[at : at + PAGE]
    ]
    kept = [page for page in changed if page * PAGE <= len(before)]
    assert len(kept) >= 4
    whole = journal(before, kept)
    record = PAGE + 8
    cut = tmp_path / "cut.logbook"

    def opened(content: bytes, beside: bytes | None) -> Any:
        beside_cut = cut.with_name(f"{cut.name}-journal")
        cut.write_bytes(content)
        if beside is not None:
            beside_cut.write_bytes(beside)
        for leftover in tmp_path.glob("cut.logbook.*"):
            leftover.unlink()
        (tmp_path / "cut.logbook.open").touch()
        with Logbook.open(cut) as book:
            assert not book.read_only
            return book.read()

    for number in range(len(kept) + 1):
        for extra in (0, record // 2):
            assert opened(before, whole[: SECTOR + number * record + extra]) == old
    for number in range(len(changed) + 1):
        for part in (0, PAGE // 2):
            mixed = bytearray(before)
            for page in changed[:number]:
                at = (page - 1) * PAGE
                mixed[at : at + PAGE] = after[at : at + PAGE]
            if part and number < len(changed):
                at = (changed[number] - 1) * PAGE
                mixed[at : at + part] = after[at : at + part]
            assert opened(bytes(mixed), whole) == old
    assert opened(after, None) == new
