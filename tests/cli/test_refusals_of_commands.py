"""A wrong command line gives status 2, wrong input 3; one message, nothing on standard output."""

from __future__ import annotations

import os
import re
import subprocess
import sys

import pytest

from planner.cli.entry import main

NOWHERE = "nowhere-at-all"
DEMO = "sedge-hollow"

WRONG_WORDS = [
    ("fly", "'fly'"),
    ("water", "PLACE"),
    (f"water {DEMO} --from 2026-02-30", "--from"),
    (f"water {DEMO} --from yesterday", "2026-08-14T06:30"),
    (f"water {DEMO} --from 2026-08-14 --to 2026-08-01", "exchange them"),
    (f"water {DEMO} --to 2001-01-01", "today, as it was left out"),
    (f"water {DEMO} --every 5x", "--every"),
    (f"water {DEMO} --every 0m", "--every"),
    (f"water {DEMO} --every 6", "--every"),
    (f"water {DEMO} --every -1h", "--every"),
    (f"water {DEMO} --every 1h --turns", "--turns"),
    (f"water {DEMO} --ramp", "--ramp goes with --turns"),
    (f"water {DEMO} --every 1h --slack", "--slack goes with --turns"),
    (f"water {DEMO} --every 1s --from 2026-01-01 --to 2027-01-01", "longer step"),
    (f"water {DEMO} --from 1800-01-01 --to 1800-01-02", "1900 to 2100"),
    (f"water {DEMO} --from 2090-12-31 --to 2102-01-01", "2102"),
    (f"water {DEMO} --format xml", "--format"),
    (f"water {DEMO} --units fathom", "--units"),
    (f"water {DEMO} --unit ft", "--unit"),
    (f"sky {DEMO} --from 2060-01-01", "2053"),
    (f"sky {DEMO} --from 2026-13-01", "--from"),
    (f"dates {DEMO} --from 0001-01-01", "calendar"),
    (f"dates {DEMO} --from 9999-12-31", "calendar"),
    (f"dates {DEMO} --from 2020-01-01 --to 2032-01-01", "4384 days"),
    (f"plans {DEMO} --from 2026-01-01 --to 2028-01-01", "at most 400"),
    (f"plans {DEMO} --most 0", "--most"),
    (f"learn {DEMO}", "--log"),
    ("trials", "--log"),
    ("trials --log x --worth 0.5", "--worth"),
    ("picture", "OUT.png"),
    ("picture a.jpg", ".png"),
    ("picture a.png --view stars", "--view"),
    ("picture a.png --size 1x1", "--size"),
    ("picture a.png --today never", "--today"),
]


@pytest.mark.parametrize(("words", "named"), WRONG_WORDS, ids=lambda text: text[:40])
def test_wrong_command_line(run, words, named):
    """Status 2, and the message names what was wrong."""
    ran = run(words)
    assert (ran.status, ran.out) == (2, "")
    assert named in ran.err
    assert "Traceback" not in ran.err


WRONG_INPUT = [
    (f"water {NOWHERE}", "no such place"),
    ("water sedge-holow", "did you mean Sedge Hollow"),
    (f"water {NOWHERE}.toml", "no such file"),
    (f"dates {DEMO} --log {NOWHERE}.csv", "no such file"),
    (f"plans {DEMO} --log {NOWHERE}.csv", "no such file"),
    (f"learn {DEMO} --log {NOWHERE}.csv", "no such file"),
    (f"trials --log {NOWHERE}.csv", "no such file"),
    ("water boston-ma --turns --ramp", "has no [ramp]"),
    ("water boston-ma --turns --slack", "has no [slack]"),
    (f"check {NOWHERE}", "no such place"),
    (f"check {DEMO} --observed {NOWHERE}.csv", f"{NOWHERE}.csv"),
]


@pytest.mark.parametrize(("words", "named"), WRONG_INPUT, ids=lambda text: text[:40])
def test_wrong_input(run, words, named):
    """Status 3, and the message names the file or the name."""
    ran = run(words)
    assert (ran.status, ran.out) == (3, "")
    assert named in ran.err
    assert "Traceback" not in ran.err


@pytest.mark.parametrize("job", ["water", "sky", "dates", "plans", "check", "learn --log x"])
def test_bad_place_file(run, tmp_path, job):
    """Every job refuses a bad place with all its fields."""
    path = tmp_path / "bad.toml"
    path.write_text('format = 1\nname = "x"\nlatitude = 95\n[water]\nunits = "feet"\n', "utf-8")
    ran = run(job, str(path))
    assert (ran.status, ran.out) == (3, "")
    for field in ("latitude", "longitude", "timezone", "water.units", "water.datum"):
        assert f"  {field}: " in ran.err


@pytest.mark.parametrize("job", [f"dates {DEMO}", f"plans {DEMO}", f"learn {DEMO}", "trials"])
def test_bad_log(run, tmp_path, job):
    """A bad row is named by line and nothing is taken from the others."""
    path = tmp_path / "log.csv"
    path.write_text("trip,place,keepers\na,Sedge Hollow,2\nb,Sedge Hollow,-3\n", "utf-8")
    ran = run(f"{job} --log", str(path))
    assert (ran.status, ran.out) == (3, "")
    assert "line 3, keepers" in ran.err


@pytest.mark.parametrize("job", [f"learn {DEMO}", f"dates {DEMO}", "trials"])
def test_a_haul_yet_to_come_is_refused_by_line(run, tmp_path, job):
    """Nobody has judged the crabs of a day to come: such a row is a slip of the year."""
    path = tmp_path / "log.csv"
    rows = "a,Sedge Hollow,2025-06-02T09:00,3,12,1\nb,Sedge Hollow,2095-06-02T09:00,3,12,1\n"
    path.write_text(f"trip,place,hauled_at,keepers,judged,light\n{rows}", encoding="utf-8")
    ran = run(f"{job} --log", str(path))
    assert ran.status == 3
    assert ran.out == ""
    assert "line 3, hauled_at: is in the future" in ran.err
    assert "correct the date" in ran.err


def test_bad_grouping(run, tmp_path):
    """What to group by is a word of the command line."""
    path = tmp_path / "log.csv"
    path.write_text("trip,place,keepers\na,Sedge Hollow,2\n", "utf-8")
    ran = run("trials --by moon --log", str(path))
    assert (ran.status, ran.out) == (2, "")
    assert "moon" in ran.err


def test_a_fault_of_our_own_is_one_sentence(monkeypatch, capsys):
    """A programming error is owned up to, without a traceback, unless one is asked for."""

    def broken(*_: object) -> None:
        raise ZeroDivisionError("oh no")

    monkeypatch.setattr("planner.cli.commands.water.instant_span", broken)
    assert main(["water", DEMO]) == 1
    assert "fault in the program itself" in capsys.readouterr().err
    monkeypatch.setenv("FULLSHELL_TRACEBACK", "1")
    with pytest.raises(ZeroDivisionError):
        main(["water", DEMO])


@pytest.mark.parametrize(
    "job", ["", "water", "sky", "dates", "plans", "learn", "trials", "check", "picture"]
)
def test_help(run, job):
    """Every command takes --help and explains each of its options."""
    ran = run(f"{job} --help")
    assert ran.status == 0
    assert "usage: fullshell" in ran.out


def test_version(run):
    """The version is that of the package."""
    from planner import __version__

    assert run("--version").out == f"fullshell {__version__}\n"


def test_help_and_refusals_are_in_the_users_language_to_the_last_word():
    """Protects from half a sentence in each: much of it is the words of Python's own library."""
    pytest.importorskip("PySide6")
    code = """
import shlex, sys
from planner.cli import main
for line in sys.stdin.read().splitlines():
    main(shlex.split(line))
"""
    lines = [words for words, _ in WRONG_WORDS if len(words) < 90]
    helps = [f"{job} --help" for job in ("", "water", "sky", "dates", "plans", "take", "doctor")]
    ran = subprocess.run(
        [sys.executable, "-c", code],
        input="\n".join([*lines, *helps, "dates x --from", "doctor --report=3"]),
        env={**os.environ, "FULLSHELL_LANGUAGE": "es", "PYTHONUTF8": "1"},
        capture_output=True,
        encoding="utf-8",
        check=True,
    )
    said = ran.stdout + ran.stderr
    assert said.count("uso: fullshell") == len(helps)
    english = r"\b(the|of|is|are|one|see|with|from a|default|usage|options?|argument|weeks)\b"
    assert [line for line in said.splitlines() if re.search(rf"(?<![-{{]){english}", line)] == []
