"""The log of faults: bounded, never a fault of its own, and written also as a process goes down."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest

from planner import faults
from planner.assets import log_folder


def _raised(kind: type[Exception] = ValueError) -> Exception:
    try:
        raise kind("x" * 50)
    except kind as error:
        return error


def test_the_log_is_bounded_and_keeps_the_newest() -> None:
    """A fault a second for a year must not fill a disk."""
    one = faults.report(_raised()) + "x" * 5_000
    for number in range(300):
        assert faults.keep(f"{one}{number}")
    files = sorted(log_folder().glob("faults.log*"))
    assert len(files) == faults.FILES_KEPT + 1
    assert sum(file.stat().st_size for file in files) <= 4 * faults.MOST_BYTES
    assert faults.kept()[-1].rstrip().endswith("299")


def test_a_folder_that_cannot_be_written_is_no_second_fault() -> None:
    """A full or locked disk costs the entry and nothing else."""
    log_folder().write_text("in the way", encoding="utf-8")
    assert not faults.keep("a report")
    assert faults.kept() == []


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="a disk that is full, of Linux")
def test_a_disk_that_is_really_full_is_no_second_fault() -> None:
    """It refuses once as the entry is written and once more as the file is let go; the second
    refusal came through, and a window that met a fault then never showed it."""
    log_folder().mkdir(parents=True)
    faults.log_file().symlink_to("/dev/full")
    assert not faults.keep("a report")


def test_many_windows_at_once_keep_the_log_bounded() -> None:
    """Two that turn the same file over must not fail each other, nor mix two entries."""
    code = (
        "from planner import faults\n"
        "for number in range(120):\n"
        "    faults.keep('Fullshell 1: ' + 'x' * 5_000)\n"
    )
    others = [subprocess.Popen([sys.executable, "-c", code]) for _ in range(3)]
    assert [each.wait() for each in others] == [0, 0, 0]
    files = sorted(log_folder().glob("faults.log*"))
    assert len(files) <= faults.FILES_KEPT + 1
    # Each of them may write one entry more before it sees that another has filled the file.
    assert sum(file.stat().st_size for file in files) <= 4 * (faults.MOST_BYTES + 3 * 6_000)
    assert {len(line) for line in "\n".join(faults.kept()).split()} == {9, 2, 5_000}


def test_endless_recursion_makes_a_short_report() -> None:
    """A thousand frames say no more than forty."""

    def deeper() -> None:
        deeper()

    with pytest.raises(RecursionError) as caught:
        deeper()
    assert len(faults.report(caught.value)) < 10_000


def test_what_led_to_an_error_is_told_without_its_words() -> None:
    """Causes are named by kind and place; libraries by their own path."""

    def fail() -> None:
        try:
            np.linalg.inv(np.zeros((2, 2)))
        except np.linalg.LinAlgError as error:
            raise RuntimeError("secret words") from error

    with pytest.raises(RuntimeError) as caught:
        fail()
    text = faults.report(caught.value, {"View": "Load up"})
    assert "RuntimeError" in text
    assert "LinAlgError" in text
    assert "numpy/linalg/" in text
    assert "secret" not in text
    assert "Singular" not in text
    assert "View: Load up" in text
    assert str(Path.home()) not in text


@pytest.mark.parametrize(
    ("path", "short"),
    [
        (
            "/home/someone/x/lib/python3.11/site-packages/scipy/optimize/_a.py",
            "scipy/optimize/_a.py",
        ),
        ("C:\\Users\\Someone\\AppData\\Lib\\site-packages\\scipy\\a.py", "scipy/a.py"),
        ("/usr/lib/python3.11/json/decoder.py", "decoder.py"),
        (faults.__file__, "planner/faults.py"),
        ("<frozen importlib._bootstrap>", "<frozen importlib._bootstrap>"),
        ("", ""),
    ],
)
def test_paths_are_cut_to_their_package(path: str, short: str) -> None:
    """Folders above a package tell the name of a person."""
    assert faults.shortened(path) == short


def test_one_fault_twice_has_one_signature() -> None:
    """What differs only in its words is the same fault."""
    assert faults.signature(_raised()) == faults.signature(_raised())
    assert faults.signature(_raised()) != faults.signature(_raised(KeyError))


def test_a_process_that_goes_down_leaves_a_report_for_the_next(user_home: Path) -> None:
    """A crash inside a library is written by Python itself, and taken over once."""
    code = (
        "import faulthandler; from planner.faults import HardCrashes; it = HardCrashes();"
        "faulthandler._sigsegv()"
    )
    ended = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
    assert ended.returncode != 0
    code = (
        "from planner.faults import HardCrashes, kept; it = HardCrashes(); print(it.last);"
        "it.close(); assert len(kept()) == 1; assert HardCrashes().last == ''"
    )
    after = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=False
    )
    assert after.returncode == 0, after.stderr
    assert "Segmentation fault" in after.stdout or "access violation" in after.stdout
    assert str(user_home) not in after.stdout
