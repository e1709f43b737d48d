"""The doctor: what it finds wrong, what it says to do, and what it keeps to itself."""

from __future__ import annotations

import getpass
import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from importlib import import_module, metadata
from pathlib import Path
from typing import Any, get_args

import pytest

import planner
from planner.assets import demo_log, log_folder, user_folder
from planner.faults import keep, kept
from planner.logbook import Logbook, book_zone, default_logbook
from planner.ui.settings import settings_file
from planner.ui.state import ViewName
from planner.ui.trouble import checkup
from planner.ui.trouble.checkup import Finding, files, libraries, own_files, screen
from planner.ui.trouble.checkup.finding import found_by, good, report_of, text_of, wrong
from planner.ui.trouble.checkup.own_files import broken_modules


def _states(found: Iterator[Finding]) -> dict[str, str]:
    return {each.what: each.state for each in found}


@pytest.fixture
def well(monkeypatch: pytest.MonkeyPatch) -> None:
    """Leave out Qt, which some machines of the tests have and some do not."""
    monkeypatch.setattr(checkup, "check_window", lambda: iter([good("window", "not asked")]))
    only = [each for each in metadata.requires("fullshell") or [] if "extra" not in each]
    monkeypatch.setattr(libraries.metadata, "requires", lambda _: only)


@pytest.mark.usefixtures("well")
def test_a_sound_installation_is_called_sound(run: Any) -> None:
    """The usual answer: nothing is wrong, and the exit status says so to a script."""
    ran = run("doctor")
    assert ran.status == 0, ran.out
    assert "Nothing is wrong" in ran.out
    assert str(user_folder()) in ran.out
    assert "numpy: " in ran.out
    data = run("doctor --format json").data
    assert data["well"]
    assert {"what", "state", "said", "remedy", "where"} == set(data["findings"][0])


@pytest.mark.usefixtures("well")
def test_the_report_can_be_passed_on(run: Any) -> None:
    """No folder, user name, place or log content, also where something is wrong with them."""
    with Logbook.open(default_logbook()) as book:
        book.import_table(demo_log(), book_zone)
    settings_file().write_text("{", encoding="utf-8")
    keep("Fullshell 0: a fault")
    for words in ("doctor --report", "doctor --report --format json"):
        said = run(words).out
        for private in (str(user_folder()), str(Path.home()), "Sedge", "keepers"):
            assert private not in said
        if len(getpass.getuser()) > 4:
            assert getpass.getuser() not in said
        assert "settings" in said


def test_every_wrong_finding_has_a_remedy_and_ends_with_status_1(
    run: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A doctor who only names the illness is no help."""
    bad = [wrong("disk", "3 MB free", "make room"), good("Python", "3.12")]
    monkeypatch.setattr(checkup, "examine", lambda: bad)
    ran = run("doctor")
    assert ran.status == 1
    assert "1 of 2 things are wrong" in ran.out
    assert "-> make room" in ran.out
    assert not run("doctor --format json").data["well"]


def test_a_check_that_fails_is_itself_a_finding() -> None:
    """On a broken machine anything may be raised; the other checks still run."""

    def check_the_moon() -> Iterator[Finding]:
        raise MemoryError("secret")

    found = found_by([check_the_moon, lambda: iter([good("Python", "3.12")])])
    assert [each.state for each in found] == ["wrong", "good"]
    assert "secret" not in text_of(found) + report_of(found)


# -- libraries -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("version", "needed", "holds"),
    [
        ("6.11.3", ">=6.7,<6.12", True),
        ("6.12.0", ">=6.7,<6.12", False),
        ("6.6", ">=6.7,<6.12", False),
        ("7.0.0", ">=7", True),
        ("2.10", ">=2.9", True),
        ("2024.2", ">=2024.2", True),
        ("1.0", "", True),
    ],
)
def test_versions_are_held_against_what_is_needed(version: str, needed: str, holds: bool) -> None:
    """Tenths are numbers, not text; bounds on both sides count."""
    assert libraries.fits(version, needed) is holds


def test_missing_old_and_broken_libraries_are_told_apart(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each has its own sentence; all have a way out."""
    monkeypatch.setattr(
        libraries.metadata,
        "requires",
        lambda _: [
            "no-such-library>=1",
            "numpy<1.0",
            "scipy>=1.0",
            'pytest>=1; extra == "dev"',
            'pandas>=1; extra == "window"',
        ],
    )

    def load(name: str) -> Any:
        if name == "scipy":
            raise ImportError("libopenblas.so.0: cannot open shared object file: /home/x")
        return import_module(name)

    monkeypatch.setattr(libraries, "import_module", load)
    found = {each.what: each for each in libraries.check_libraries()}
    assert set(found) == {"no-such-library", "numpy", "scipy", "pandas"}
    assert "is not installed" in found["no-such-library"].said
    assert "needed is <1.0" in found["numpy"].said
    assert "libopenblas.so.0" in found["scipy"].said
    assert "/home" not in found["scipy"].said
    assert found["pandas"].state == "good"
    assert all(each.remedy for each in found.values() if each.state == "wrong")


def test_the_doctor_answers_where_other_jobs_cannot_even_load(tmp_path: Path) -> None:
    """Without numpy nothing else runs; it is named, and so is the doctor to whoever asks else."""
    code = """
import sys
class Broken:
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] in ("numpy", "PySide6", "shiboken6", "pyqtgraph"):
            raise ModuleNotFoundError(f"no {name} here")
sys.meta_path.insert(0, Broken())
from planner.cli import main
sys.exit(main(sys.argv[1:]))
"""

    def ran(*words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-c", code, *words], capture_output=True, text=True, check=False
        )

    asked = ran("doctor", "--report")
    assert asked.returncode == 1, asked.stderr
    assert "WRONG  numpy: " in asked.stdout
    assert "ok     time zones" in asked.stdout
    other = ran("water", "sedge-hollow")
    assert (other.returncode, other.stdout) == (3, "")
    assert "fullshell doctor" in other.stderr
    assert "Traceback" not in other.stderr


# -- the screen ----------------------------------------------------------------------------------


class _Ended:
    def __init__(self, returncode: int, stdout: str = "", stderr: str = "") -> None:
        self.returncode, self.stdout, self.stderr = returncode, stdout, stderr


@pytest.mark.parametrize(
    ("ended", "state", "words"),
    [
        (_Ended(0, "letters 1 on offscreen"), "good", "offscreen"),
        (_Ended(0, "letters 0 on xcb"), "wrong", "fonts-dejavu-core"),
        (
            _Ended(1, "", "OSError: libxcb-cursor.so.0: cannot open shared object file: No such"),
            "wrong",
            "apt-get install libxcb-cursor0",
        ),
        (_Ended(-6, "", "qt.qpa.xcb: could not connect to display :9"), "wrong", "DISPLAY"),
        (_Ended(-6, "", "Failed to create wl_display (No such file)"), "wrong", "DISPLAY"),
        (_Ended(-6, "", "This application failed to start"), "wrong", "packaging/README.md"),
    ],
)
def test_what_qt_misses_is_named_with_its_package(
    monkeypatch: pytest.MonkeyPatch, ended: _Ended, state: str, words: str
) -> None:
    """The loader's own message is turned into one command."""
    monkeypatch.setattr(screen, "find_spec", lambda _: object())
    monkeypatch.setattr(screen.subprocess, "run", lambda *_, **__: ended)
    first = next(iter(screen.check_window()))
    assert first.state == state
    assert words in first.said + first.remedy


@pytest.mark.parametrize(
    ("ended", "remedy"),
    [
        (
            _Ended(3, "", "fullshell: ... libGL.so.1: cannot open shared object file: No such"),
            "apt-get install libgl1",
        ),
        (_Ended(3, "", "fullshell: no font: apt-get install fonts-dejavu-core"), "fonts-dejavu"),
        (_Ended(1, "", "Segmentation fault"), "install the program again"),
    ],
)
def test_what_the_system_lacks_is_not_blamed_on_the_bundle(
    monkeypatch: pytest.MonkeyPatch, ended: _Ended, remedy: str
) -> None:
    """Installing a sound bundle again and again brings no library of the system."""
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(screen.subprocess, "run", lambda *_, **__: ended)
    (only,) = screen.check_window()
    assert only.state == "wrong"
    assert remedy in only.remedy


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="displays named by variables")
def test_a_bundle_without_a_screen_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever waits for a window learns why there is none."""

    def draws(command: list[str], **_: object) -> _Ended:
        Path(command[2]).write_bytes(b"a picture")
        return _Ended(0)

    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(screen.subprocess, "run", draws)
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    assert _states(screen.check_window()) == {"window": "good", "screen": "mind"}
    monkeypatch.setenv("DISPLAY", ":0")
    assert _states(screen.check_window()) == {"window": "good"}


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="fonts chosen by fontconfig")
def test_without_a_font_there_is_no_picture_and_the_doctor_says_so(tmp_path: Path) -> None:
    """Qt names families also where there is no font, and draws a box for every letter."""
    pytest.importorskip("PySide6")
    (tmp_path / "fonts.conf").write_text(
        '<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">'
        f"<fontconfig><dir>{tmp_path}</dir><cachedir>{tmp_path}</cachedir></fontconfig>",
        encoding="utf-8",
    )
    variables = {**os.environ, "FONTCONFIG_FILE": str(tmp_path / "fonts.conf")}
    variables.pop("PYTEST_CURRENT_TEST", None)

    def ran(*words: str) -> subprocess.CompletedProcess[str]:
        command = [sys.executable, "-m", "planner", *words]
        return subprocess.run(command, capture_output=True, text=True, env=variables, check=False)

    drawn = ran("picture", str(tmp_path / "view.png"))
    assert drawn.returncode == 3
    for said in (drawn.stderr, ran("doctor").stdout):
        assert "no font" in said
        assert "fonts-dejavu-core" in said
    assert not (tmp_path / "view.png").exists()


def test_without_qt_the_way_to_get_it_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """The command line goes on working, and that is said too."""
    monkeypatch.setattr(screen, "find_spec", lambda _: None)
    (only,) = screen.check_window()
    assert (only.state, only.remedy) == ("wrong", 'pip install "fullshell[window]"')


# -- files ---------------------------------------------------------------------------------------


def test_a_file_that_is_missing_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Half an unpacked archive must not pass for an installation."""
    assert _states(files.check_own_files()) == {"its own files": "good"}
    monkeypatch.setattr(own_files, "demo_log", lambda: tmp_path / "hauls.csv")
    (found,) = files.check_own_files()
    assert found.state == "wrong"
    assert "hauls.csv" in found.said


def test_damaged_modules_are_named_without_being_run(tmp_path: Path) -> None:
    """A checkout or an unpacked archive has no sums: its modules are held to each other."""
    package = tmp_path / "planner"
    shutil.copytree(Path(planner.__file__).parent, package)
    assert broken_modules(package) == []
    damaged = {
        "molt/belief.py": b"def (",
        "trials/scales.py": b"\0" * 4000,
        "logbook/rules.py": b"",
    }
    for name, content in damaged.items():
        (package / name).write_bytes(content)
    missing = ["sites/site.py", *(f"ui/{view}/view.py" for view in get_args(ViewName))]
    for name in missing:
        (package / name).unlink()
    assert broken_modules(package) == sorted(f"planner/{name}" for name in (*damaged, *missing))


def test_files_that_are_empty_or_cut_are_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A profile cut after a whole line is still TOML; it is held to what reads it."""
    from planner import assets
    from planner.molt import profile

    for folder in ("resources", "sample_sites", "docs"):
        shutil.copytree(assets._ROOT / folder, tmp_path / folder)
    monkeypatch.setattr(assets, "_ROOT", tmp_path)
    monkeypatch.setattr(profile, "_tables", profile._tables.__wrapped__)
    assert _states(files.check_own_files()) == {"its own files": "good"}
    crab = tmp_path / "resources" / "species" / "blue-crab.toml"
    crab.write_text(crab.read_text("utf-8").partition("[signs]")[0], encoding="utf-8")
    (tmp_path / "resources" / "languages" / "es.qm").write_bytes(b"")
    (tmp_path / "resources" / "tables" / "en.toml").write_text("x = [", encoding="utf-8")
    (found,) = files.check_own_files()
    assert found.said.endswith("es.qm, en.toml, blue-crab.toml")


def test_the_doctor_works_where_a_module_is_damaged(tmp_path: Path) -> None:
    """The one job that must run then: a damaged module is no library, and no traceback."""
    shutil.copytree(Path(planner.__file__).parent, tmp_path / "planner")
    (tmp_path / "planner" / "logbook" / "rules.py").write_text("def (", encoding="utf-8")
    entry = [sys.executable, "-P", "-m", "planner"]
    variables = {**os.environ, "PYTHONPATH": str(tmp_path)}
    for words, told in ((["water", "x"], "fullshell doctor"), (["doctor"], "logbook/rules.py")):
        ran = subprocess.run(
            [*entry, *words], capture_output=True, text=True, env=variables, check=False
        )
        assert told in ran.stdout + ran.stderr
        assert "Traceback" not in ran.stderr


def test_a_file_that_was_changed_since_installing_is_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The installer's own sums are the measure."""
    path = tmp_path / "a.toml"
    path.write_bytes(b"as it was")

    class Sum:
        mode, value = "sha256", "_Q2kcCvpO2wPvOAfYkXFTrIzGeQ_Xg0k0G2WzTkYkcQ"

    class File:
        hash, parts, name = Sum, ("planner", "a.toml"), "a.toml"

        @staticmethod
        def locate() -> Path:
            return path

    monkeypatch.setattr(files.metadata, "files", lambda _: [File])
    (found,) = files.check_own_files()
    assert "a.toml" in found.said


def test_a_bundle_is_held_to_the_files_that_lie_beside_its_code(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The sums are the wheel's: its modules are in the bundle's one file, a language is not."""

    class Sum:
        mode, value = "sha256", "_Q2kcCvpO2wPvOAfYkXFTrIzGeQ_Xg0k0G2WzTkYkcQ"

    class File:
        hash = Sum

        def __init__(self, name: str) -> None:
            self.parts, self.name, self.suffix = ("planner", name), name, Path(name).suffix

        def locate(self) -> Path:
            return tmp_path / self.name

    monkeypatch.setattr(files.metadata, "files", lambda _: [File("words.py"), File("es.qm")])
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    (found,) = files.check_own_files()
    assert "es.qm" in found.said
    assert "words.py" not in found.said


def test_damage_to_the_log_is_found_and_nothing_is_changed() -> None:
    """A broken page in the middle; the file is as it was after the check."""
    with Logbook.open(default_logbook()) as book:
        book.import_table(demo_log(), book_zone)
    assert _states(files.check_log())["your log"] == "good"
    data = bytearray(default_logbook().read_bytes())
    data[4096 * 3 : 4096 * 5] = b"\xa5" * 8192
    default_logbook().write_bytes(data)
    (found,) = files.check_log()
    assert found.state == "wrong"
    assert "Backups" in found.remedy
    assert default_logbook().read_bytes() == bytes(data)


def test_a_full_disk_and_a_locked_folder_are_said(monkeypatch: pytest.MonkeyPatch) -> None:
    """Before an entry is lost, not after."""

    class Usage:
        free = 5e6

    monkeypatch.setattr(files.shutil, "disk_usage", lambda _: Usage)
    log_folder().write_text("a file in the way", encoding="utf-8")
    states = _states(files.check_folders())
    assert states == {
        "folder of your log": "good",
        "folder of the log of faults": "mind",
        "disk": "wrong",
    }


def test_settings_and_faults_are_looked_at_and_left(run: Any) -> None:
    """The doctor touches nothing: the window itself sets a damaged file aside."""
    settings_file().write_text("{", encoding="utf-8")
    keep("Fullshell 0: one")
    assert _states(files.check_settings()) == {"settings": "mind"}
    assert _states(files.check_faults()) == {"faults": "mind"}
    assert settings_file().read_text(encoding="utf-8") == "{"


def test_a_fault_of_a_job_is_written_down(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    """What went wrong on the command line is there to be passed on, without its words."""

    def broken(*_: object) -> None:
        raise ZeroDivisionError("Heron Slough")

    monkeypatch.setattr("planner.cli.commands.water.instant_span", broken)
    assert run("water sedge-hollow").status == 1
    (report,) = kept()
    assert "ZeroDivisionError" in report
    assert "planner/cli/entry.py" in report
    assert "Heron" not in report


def test_a_clock_beyond_the_ephemeris_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    """A machine whose clock fell back to its first day has wrong tides too."""
    from datetime import date

    class Lost(date):
        @classmethod
        def today(cls) -> date:
            return date(1890, 1, 1)

    monkeypatch.setattr(files, "date", Lost)
    (found,) = files.check_sun_and_moon()
    assert found.state == "wrong"
    assert "clock" in found.remedy


def test_json_is_for_programs(run: Any) -> None:
    """It can be read back, whatever was found."""
    assert json.loads(run("doctor --format json").out)["findings"]
