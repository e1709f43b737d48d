"""The window's picture, the bare program without a screen, and the jobs without Qt."""

from __future__ import annotations

import subprocess
import sys
import types
from importlib.util import find_spec
from pathlib import Path

import pytest

from planner.assets import demo_place
from planner.cli import main, window_libraries
from planner.cli.commands import picture, start

needs_window = pytest.mark.skipif(
    find_spec("PySide6") is None, reason="draws the window, whose libraries are not installed here"
)

WITHOUT_QT = """
import sys
class NoQt:
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] in ("PySide6", "pyqtgraph", "shiboken6"):
            raise ModuleNotFoundError(f"no {name} here")
sys.meta_path.insert(0, NoQt())
from planner.assets import demo_place
from planner.cli import main, window_libraries
sys.exit(main(sys.argv[1:]))
"""


def _program(*words: str, folder: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *words], capture_output=True, text=True, cwd=folder, check=False
    )


def test_water_without_qt(tmp_path):
    """The core's jobs answer where Qt can not be imported at all."""
    words = ("water", "sedge-hollow", "--from", "2026-08-14", "--to", "2026-08-15")
    ran = _program("-c", WITHOUT_QT, *words, folder=tmp_path)
    assert (ran.returncode, ran.stderr) == (0, "")
    assert ran.stdout.startswith("Sedge Hollow (invented)")


def test_help_is_light(tmp_path):
    """Asking for help loads none of the heavy libraries."""
    code = (
        "import sys; from planner.cli import main; main(['--help']);"
        "heavy = {'pandas', 'scipy', 'skyfield', 'statsmodels', 'pydantic', 'PySide6'};"
        "print(sorted(heavy & set(sys.modules)), file=sys.stderr)"
    )
    assert _program("-c", code, folder=tmp_path).stderr.strip() == "[]"


def test_python_m_planner(tmp_path):
    """`python -m planner` is the same program, with its exit status."""
    assert _program("-m", "planner", "--version", folder=tmp_path).returncode == 0
    wrong = _program("-m", "planner", "water", "nowhere", folder=tmp_path)
    assert (wrong.returncode, wrong.stdout) == (3, "")


@needs_window
def test_picture_is_drawn(tmp_path):
    """The file is a PNG of the size asked for, drawn in a process without a screen."""
    words = ("picture", "w.png", "--size", "1100x700", "--today", "2026-08-14", "--theme", "dark")
    ran = _program("-m", "planner", *words, folder=tmp_path)
    assert ran.returncode == 0, ran.stderr
    data = (tmp_path / "w.png").read_bytes()
    assert data[:8] == b"\x89PNG\r\n\x1a\n"
    assert (int.from_bytes(data[16:20]), int.from_bytes(data[20:24])) == (1100, 700)


def test_picture_without_the_windows_libraries(monkeypatch, capsys, tmp_path):
    """A machine without Qt is told what to install, and no file is left."""
    monkeypatch.setattr(window_libraries, "find_spec", lambda _: None)
    assert main(["picture", str(tmp_path / "w.png")]) == 3
    assert "fullshell[window]" in capsys.readouterr().err
    assert not (tmp_path / "w.png").exists()


def test_picture_into_a_folder_that_is_not_there(run, monkeypatch, tmp_path):
    """The folder is named; nothing is made on the user's behalf."""
    monkeypatch.setattr(picture, "require_window", lambda: None)
    ran = run("picture", str(tmp_path / "none" / "w.png"))
    assert (ran.status, ran.out) == (2, "")
    assert "there is no folder" in ran.err


@pytest.mark.parametrize(
    ("platform", "environment", "screen"),
    [
        ("linux", {}, False),
        ("linux", {"DISPLAY": ""}, False),
        ("linux", {"DISPLAY": ":0"}, True),
        ("linux", {"WAYLAND_DISPLAY": "wayland-0"}, True),
        ("darwin", {}, True),
        ("win32", {}, True),
    ],
)
def test_has_screen(platform, environment, screen):
    """Protects a server from a window that cannot open, and a desk from getting none."""
    assert start.has_screen(platform, environment) is screen


def test_without_a_screen(monkeypatch, capsys, tmp_path):
    """The bare program prints ranked plans of the demo place and draws the window to a file."""
    drawn: list[Path] = []
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(start, "has_screen", lambda *_: False)
    monkeypatch.setattr(start, "require_window", lambda: None)
    monkeypatch.setattr(start, "draw_view", lambda out, **_: drawn.append(out))
    assert main([]) == 0
    out = capsys.readouterr().out
    assert "Sedge Hollow (invented): set-and-haul plans" in out
    assert drawn == [tmp_path / start.PICTURE]
    assert str(drawn[0]) in out


def test_without_a_screen_and_without_qt(monkeypatch, tmp_path):
    """Where there is no Qt either, the plans still come, and the reason why no picture."""
    monkeypatch.setattr(window_libraries, "find_spec", lambda _: None)
    text = start.without_screen(tmp_path / start.PICTURE)
    assert "set-and-haul plans" in text
    assert "No picture of the window" in text


@pytest.mark.parametrize("name", ["otter-bight.fullshell", "Otter Bight.TOML"])
def test_a_place_file_alone_opens_the_window_on_it(name, monkeypatch):
    """Protects the double click: the file, however its ending is written, reaches the window."""
    opened: list[str | None] = []
    window = types.ModuleType("planner.ui.app")
    window.run = lambda place=None: opened.append(place) or 0
    monkeypatch.setitem(sys.modules, "planner.ui", types.ModuleType("planner.ui"))
    monkeypatch.setitem(sys.modules, "planner.ui.app", window)
    monkeypatch.setattr(start, "has_screen", lambda *_: True)
    monkeypatch.setattr(start, "require_window", lambda: None)
    assert main([name]) == 0
    assert main([]) == 0
    assert opened == [name, None]


def test_a_place_file_without_a_screen(monkeypatch, capsys, tmp_path):
    """The plans and the picture are those of the file, with its own log or none."""
    drawn: list[object] = []
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(start, "has_screen", lambda *_: False)
    monkeypatch.setattr(start, "require_window", lambda: None)
    monkeypatch.setattr(start, "draw_view", lambda out, **shot: drawn.append(shot["place"]))
    place = tmp_path / "otter-bight.fullshell"
    text = demo_place().read_text(encoding="utf-8").replace("Sedge Hollow", "Otter Bight")
    place.write_text(text, encoding="utf-8")
    assert main([str(place)]) == 0
    assert "Otter Bight (invented): set-and-haul plans" in capsys.readouterr().out
    assert drawn == [str(place)]


def test_a_bad_place_file_without_a_screen(run, monkeypatch, tmp_path):
    """Every problem of the file comes on standard error, and nothing else."""
    monkeypatch.setattr(start, "has_screen", lambda *_: False)
    place = tmp_path / "bad.fullshell"
    place.write_text("format = 1\nlatitude = 200\n", encoding="utf-8")
    ran = run(str(place))
    assert (ran.status, ran.out) == (3, "")
    assert "latitude" in ran.err
    assert "timezone" in ran.err


def test_two_place_files_are_one_too_many(run):
    """Two files that are opened together are not mistaken for a job that is unknown."""
    ran = run("otter-bight.toml", "heron-slough.toml")
    assert (ran.status, ran.out) == (2, "")
    assert "2 place files were given" in ran.err


def test_a_job_is_no_place_file(run):
    """A place file among other words is refused with the jobs there are."""
    ran = run("otter-bight.toml", "water")
    assert (ran.status, ran.out) == (2, "")
    assert "water" in ran.err


def test_a_reader_that_stops_early(tmp_path):
    """`fullshell water ... | head -1` ends quietly."""
    command = f"{sys.executable} -m planner water sedge-hollow --every 1m | head -1"
    ran = subprocess.run(
        command, shell=True, capture_output=True, text=True, cwd=tmp_path, check=False
    )
    assert ran.stderr == ""
    assert ran.stdout.startswith("Sedge Hollow")
