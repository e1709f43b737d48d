"""However the output ends, nobody is shown a traceback."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from pathlib import Path

import pytest

from planner.cli import main

WATER = ("water", "sedge-hollow", "--from", "2026-08-14", "--to", "2026-08-15")
DATES = ("dates", "sedge-hollow", "--from", "2026-08-14", "--to", "2026-08-14")


def test_output_closed_by_the_caller(monkeypatch):
    """A desktop starter may give a program no output at all; that is no fault of the input."""
    monkeypatch.setattr(sys, "stdout", None)
    assert main(WATER) == 0


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="the system has no device always full")
def test_a_full_disk_is_one_sentence():
    """Half an answer in a file must not look like success."""
    environment = {**os.environ, "PYTHONIOENCODING": "utf-8"}
    with open("/dev/full", "w") as full:
        ran = subprocess.run(
            [sys.executable, "-m", "planner", *WATER],
            stdout=full,
            stderr=subprocess.PIPE,
            text=True,
            env=environment,
            check=False,
        )
    assert ran.returncode == 1
    assert ran.stderr.startswith("fullshell: the output could not be written")
    assert len(ran.stderr.splitlines()) == 1


def test_a_terminal_that_knows_no_degree_sign(monkeypatch):
    """A question mark in place of a sign, rather than no forecast."""
    narrow = io.TextIOWrapper(io.BytesIO(), encoding="ascii")
    monkeypatch.setattr(sys, "stdout", narrow)
    assert main(DATES) == 0
    narrow.seek(0)
    assert " ?C" in narrow.read()
