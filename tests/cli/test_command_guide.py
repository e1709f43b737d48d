"""The guide to the command line is true: its examples run, and every job and option is in it."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest

from planner.cli import main
from planner.cli.parser import parse

ROOT = Path(__file__).parents[2]
GUIDE = (ROOT / "docs" / "command-line.md").read_text(encoding="utf-8")
EXAMPLES = [
    line
    for block in re.findall(r"```sh\n(.*?)```", GUIDE, re.S)
    for line in block.strip().splitlines()
]
JOBS = (
    *("water", "sky", "dates", "plans", "learn", "trials", "check"),
    *("take", "tally", "picture", "doctor"),
)


@pytest.mark.parametrize("line", EXAMPLES)
def test_example_runs(line, capsys, monkeypatch):
    """Whoever copies an example gets an answer."""
    monkeypatch.chdir(ROOT)
    program, *words = shlex.split(line)
    assert program == "fullshell"
    if words[0] in ("picture", "take", "tally"):  # written in tests of their own
        assert parse(words).out.stem in ("window", "trip", "tally")
        return
    status = main(words)
    # The doctor may find a test's machine wanting, such as one without Qt.
    assert status == 0 or words[0] == "doctor", capsys.readouterr().err
    assert capsys.readouterr().out.strip()


def test_every_job_has_an_example():
    """A job without an example is a job nobody finds."""
    assert {line.split()[1] for line in EXAMPLES} == set(JOBS)


def test_every_variable_that_the_program_reads_is_in_the_guide():
    """A log that a variable moves is looked for in vain by whoever never read of it."""
    code = [path.read_text(encoding="utf-8") for path in (ROOT / "planner").rglob("*.py")]
    read = {name for text in code for name in re.findall(r"\bFULLSHELL_[A-Z]+", text)}
    assert read == set(re.findall(r"\bFULLSHELL_[A-Z]+", GUIDE))


@pytest.mark.parametrize("job", JOBS)
def test_every_option_is_in_the_guide(job, capsys):
    """An option nobody can read about is an option nobody uses."""
    main([job, "--help"])
    for option in re.findall(r"(?<![\w-])--[a-z]+", capsys.readouterr().out):
        assert option in GUIDE, option
