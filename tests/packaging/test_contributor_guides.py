"""What the contributor's guides name is there: files, folders, benchmarks and commands."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest

from planner.cli.parser import parse

ROOT = Path(__file__).parents[2]
GUIDES = [ROOT / "README.md", ROOT / "DEVELOPERS.md", ROOT / "packaging" / "README.md"]
# Made by the commands that the guides tell of.
MADE = ("docs/<code>", ".venv")

each_guide = pytest.mark.parametrize("guide", GUIDES, ids=lambda path: path.parent.name)


@each_guide
def test_every_file_that_is_named_is_there(guide: Path) -> None:
    """Protects a newcomer from a path that was true before somebody moved it."""
    text = guide.read_text(encoding="utf-8")
    paths = re.findall(r"(?:packaging|tests|planner|resources|docs|sample_sites)/[\w./<>-]+", text)
    named = [path.rstrip("./") for path in paths if not path.startswith(MADE)]
    modules = [
        f"tests/benchmarks/{name}.py" for name in re.findall(r"tests\.benchmarks\.(\w+)", text)
    ]
    assert named
    missing = [path for path in (*named, *modules) if not (ROOT / path).exists()]
    assert [path for path in missing if "<code>" not in path] == []


@each_guide
def test_every_command_of_the_program_that_is_shown_is_understood(guide: Path) -> None:
    """Protects whoever copies one."""
    text = guide.read_text(encoding="utf-8")
    for line in re.findall(r"^(?:\| .*`)?\.venv/bin/fullshell ([^`\n]+)", text, re.MULTILINE):
        parse(shlex.split(line))
