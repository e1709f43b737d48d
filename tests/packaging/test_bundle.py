"""What is said of place files on every system, the one version, and how a bundle is tried."""

from __future__ import annotations

import plistlib
import re
import sys
from pathlib import Path

import bundle
import machine
import place_files
import pytest
import smoke

import planner
from planner.sites import PLACE_ENDINGS

ROOT = Path(__file__).parents[2]
SET_UP = bundle.WINDOWS_SCRIPT.read_text(encoding="utf-8")


def test_every_system_is_told_of_the_ending_that_the_program_opens() -> None:
    """Protects the double click from a system that was told of another ending."""
    assert place_files.ENDING in PLACE_ENDINGS
    assert rf"Software\Classes\{place_files.ENDING}" in SET_UP
    plist = place_files.macos_plist("1.2.3")
    (kind,) = plist["UTExportedTypeDeclarations"]
    endings = kind["UTTypeTagSpecification"]["public.filename-extension"]
    assert [f".{each}" for each in endings] == [place_files.ENDING]
    owned = next(each for each in plist["CFBundleDocumentTypes"] if "LSItemContentTypes" in each)
    assert owned["LSItemContentTypes"] == [kind["UTTypeIdentifier"]]


def test_no_system_takes_toml_from_other_programs() -> None:
    """Protects the user's editor: .toml is offered under "open with" and never taken."""
    lines = [line for line in SET_UP.splitlines() if r"Classes\.toml" in line]
    assert lines
    assert all("OpenWithProgids" in line for line in lines)
    plist = place_files.macos_plist("1.2.3")
    ranks = {
        each["LSHandlerRank"]
        for each in plist["CFBundleDocumentTypes"]
        if "toml" in each.get("CFBundleTypeExtensions", ())
    }
    assert ranks == {"Alternate"}
    xml = (bundle.LINUX / "fullshell-place.xml").read_text(encoding="utf-8")
    assert re.findall(r'pattern="(.*?)"', xml) == [f"*{place_files.ENDING}"]


def test_the_plist_can_be_written() -> None:
    """Protects the app of macOS from an entry that its file format cannot hold."""
    plist = place_files.macos_plist("1.2.3")
    assert plistlib.loads(plistlib.dumps(plist)) == plist


def test_the_version_stands_in_one_place() -> None:
    """Protects against a bundle that calls itself by an older version than the program."""
    files = [*(ROOT / "packaging").rglob("*"), ROOT / "pyproject.toml"]
    texts = {
        path.name: path.read_text(encoding="utf-8")
        for path in files
        if path.is_file() and path.suffix in (".py", ".spec", ".iss", ".sh", ".desktop", ".toml")
    }
    quoted = re.compile(rf"""["'=]{re.escape(planner.__version__)}["'\s]""")
    assert [name for name, text in texts.items() if quoted.search(text)] == []
    assert bundle.version_of(Path(sys.executable)) == planner.__version__


def test_the_set_up_program_needs_no_administrator_and_leaves_the_log() -> None:
    """Protects the log: it lies beside the program's folder, and only that one is removed."""
    assert "PrivilegesRequired=lowest" in SET_UP
    assert not re.search(r"Root: HK(LM|CR|A)\b", SET_UP)
    removed = re.findall(r'^Type: \w+; Name: "(.*?)"', SET_UP, re.MULTILINE)
    assert removed == [r"{app}\_internal"]
    # Where the user's folder is on Windows, by the library that decides it.
    assert r"{localappdata}\fullshell" in SET_UP


def test_the_set_up_program_waits_for_the_program_and_names_the_users_folder() -> None:
    """Protects what is open from losing its parts, and a log that FULLSHELL_HOME has moved from
    being looked for in vain."""
    given = set(re.findall(r"^#ifndef (\w+)", SET_UP, re.MULTILINE))
    handed = set(re.findall(r'"/D(\w+)=', Path(bundle.__file__).read_text(encoding="utf-8")))
    assert given == handed
    assert "AppMutex={#Mutex}" in SET_UP
    assert "GetEnv('FULLSHELL_HOME')" in SET_UP
    assert SET_UP.isascii()  # without a mark at its head it is read in the system's code page


@pytest.mark.parametrize(("machine_name", "word"), [("AMD64", "x64compatible"), ("ARM64", "arm64")])
def test_the_set_up_program_goes_where_the_bundle_runs(machine_name: str, word: str) -> None:
    """Protects from a bundle of one kind of machine that installs, and fails, on another."""
    assert bundle.setup_runs_on(machine_name) == word


@pytest.mark.parametrize(
    ("has_objdump", "has_library", "prefix", "wanted"),
    [
        (True, True, "/usr", []),
        (False, True, "/usr", ["binutils"]),
        (True, False, "/usr", ["libpython3.12"]),
        (False, False, "/opt/python", ["binutils"]),
    ],
)
def test_what_bundling_needs_of_debian(
    has_objdump: bool, has_library: bool, prefix: str, wanted: list[str]
) -> None:
    """Protects a bare machine from a bundler that stops for a missing tool."""
    assert machine.bundling_packages(has_objdump, has_library, prefix, (3, 12)) == wanted


def test_links_take_no_room(tmp_path: Path) -> None:
    """Protects the reported size from counting a library once for each of its names."""
    (tmp_path / "library").write_bytes(bytes(1_000_000))
    (tmp_path / "name").symlink_to("library")
    assert bundle.size_mb(tmp_path) == pytest.approx(1.0)


def _program(folder: Path, body: str) -> Path:
    program = folder / "program"
    program.write_text(f"#!/bin/sh\n{body}\n", encoding="utf-8")
    program.chmod(0o755)
    return program


@pytest.mark.skipif(sys.platform == "win32", reason="the stand-in program is a shell script")
def test_a_job_that_ends_well_but_complains_has_failed(tmp_path: Path) -> None:
    """Protects against work that went wrong on a thread: the picture is drawn all the same."""
    quiet = smoke.Trial(_program(tmp_path, "echo done"), tmp_path, tmp_path)
    assert quiet.run("picture") == "done\n"
    (tmp_path / "loud").mkdir()
    loud = smoke.Trial(_program(tmp_path / "loud", "echo oh >&2"), tmp_path, tmp_path)
    with pytest.raises(smoke.SmokeError, match="oh"):
        loud.run("picture")


@pytest.mark.skipif(sys.platform == "win32", reason="the stand-in program is a shell script")
def test_a_program_that_writes_in_a_code_page_is_still_understood(tmp_path: Path) -> None:
    """Protects the trial of Windows, whose pipes carry the letters of its code page."""
    spanish = smoke.Trial(_program(tmp_path, r"printf 'mi\351 25\n'"), tmp_path, tmp_path)
    assert spanish.run("sky") == "mi\ufffd 25\n"


@pytest.mark.skipif(sys.platform == "win32", reason="the stand-in program is a shell script")
def test_every_trial_fails_on_a_program_that_does_nothing(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Protects the trials themselves: none may pass without the program having done its job."""
    names = [name for name, _ in smoke.TRIALS]
    failed = smoke.try_all(_program(tmp_path, "exit 0"), tmp_path / "no-log.csv")
    assert set(names) - set(failed) <= {"evidence"}  # prints for people; judged by its status
    assert "FAILED" in capsys.readouterr().out
