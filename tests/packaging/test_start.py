"""How the program is opened once everything is there."""

from __future__ import annotations

import ast
import subprocess
from pathlib import Path

import environment
import machine
import pytest
import start

SCRIPTS = Path(__file__).parents[2] / "packaging"


@pytest.fixture
def opened(monkeypatch: pytest.MonkeyPatch) -> dict[str, object]:
    """Replace the set-up and the program; return what the program was opened with."""
    seen: dict[str, object] = {}

    def open_program(command: list[object], env: dict[str, str]) -> int:
        seen.update(command=command[1:], platform=env.get("QT_QPA_PLATFORM"))
        return 7

    monkeypatch.setattr(machine, "prepare", lambda *, screen: seen.update(screen=screen))
    monkeypatch.setattr(environment, "prepare", lambda name, extras: Path("python"))
    monkeypatch.setattr(subprocess, "call", open_program)
    monkeypatch.delenv("QT_QPA_PLATFORM", raising=False)
    monkeypatch.setattr(start.sys, "platform", "linux")
    return seen


def test_without_a_screen_qt_is_told_to_draw_out_of_sight(
    opened: dict[str, object], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects the start on a server, where Qt ends the process when it finds no display."""
    monkeypatch.delenv("DISPLAY", raising=False)
    monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
    start.main([])
    assert opened == {"command": ["-m", "planner"], "platform": "offscreen", "screen": False}


def test_with_a_screen_qt_chooses_and_the_program_gets_the_arguments_and_gives_the_status(
    opened: dict[str, object], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects the desktop start, and scripts that start the program through the set-up."""
    monkeypatch.setenv("DISPLAY", ":0")
    assert start.main(["dates", "sedge-hollow"]) == 7
    assert opened["command"] == ["-m", "planner", "dates", "sedge-hollow"]
    assert opened["platform"] is None


def test_a_machine_that_cannot_be_made_ready_ends_with_a_message_and_status_one(
    opened: dict[str, object],
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Protects a user without rights from a traceback."""

    def refuse(*, screen: bool) -> None:
        raise machine.SetUpError("have an administrator run this")

    monkeypatch.setattr(machine, "prepare", refuse)
    assert start.main([]) == 1
    assert "have an administrator run this" in capsys.readouterr().err
    assert "command" not in opened


@pytest.mark.parametrize("name", ["start.py", "check.py"])
def test_an_older_python_gets_as_far_as_the_message(name: str) -> None:
    """Protects whoever has an old Python from a syntax error in place of the reason."""
    tree = ast.parse((SCRIPTS / name).read_text(encoding="utf-8"), feature_version=(3, 7))
    kinds = [type(node) for node in tree.body[:3]]
    assert kinds == [ast.Expr, ast.Import, ast.If]
