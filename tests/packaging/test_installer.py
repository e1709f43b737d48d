"""Installing the bundle of Linux for one user, and removing it without the log."""

from __future__ import annotations

import configparser
import os
import re
import shlex
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from dataclasses import dataclass
from pathlib import Path

import bundle
import icons
import place_files
import pytest

pytestmark = pytest.mark.skipif(
    not sys.platform.startswith("linux"), reason="the installer of Linux"
)

MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


@dataclass(frozen=True)
class Desk:
    """A user's home and an unpacked bundle, whose program only says its arguments."""

    home: Path
    unpacked: Path

    @property
    def target(self) -> Path:
        return self.home / ".local" / "lib" / "fullshell"

    @property
    def data(self) -> Path:
        return self.home / ".local" / "share"

    def run(self, script: Path, **more: str) -> subprocess.CompletedProcess[str]:
        variables = {"HOME": str(self.home), "PATH": os.defpath, **more}
        return subprocess.run(
            ["sh", script], env=variables, capture_output=True, text=True, check=False
        )


@pytest.fixture(scope="session")
def pngs(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The icon in all its sizes."""
    folder = tmp_path_factory.mktemp("icons")
    icons.write_pngs(folder)
    return folder


@pytest.fixture
def desk(pngs: Path, tmp_path: Path) -> Desk:
    """A home whose name has a space, accents and a quotation mark, with a log in it."""
    made = Desk(tmp_path / "Ann's hömé", tmp_path / "down loads" / "fullshell")
    made.unpacked.mkdir(parents=True)
    program = made.unpacked / "fullshell"
    program.write_text('#!/bin/sh\necho "$0" "$@"\n', encoding="utf-8")
    program.chmod(0o755)
    bundle.add_installer(made.unpacked, pngs)
    log = made.data / "fullshell" / "hauls.logbook"
    log.parent.mkdir(parents=True)
    log.write_bytes(b"every haul")
    return made


def _files(folder: Path) -> set[Path]:
    return {path.relative_to(folder) for path in folder.rglob("*") if not path.is_dir()}


def test_an_install_puts_the_program_in_the_menu_and_on_place_files(desk: Desk) -> None:
    """Protects the double click: entry, type, glob and icon must all speak of the same program."""
    ran = desk.run(desk.unpacked / "install.sh")
    assert (ran.returncode, ran.stderr) == (0, "")
    entry = configparser.ConfigParser(interpolation=None)
    entry.optionxform = str  # type: ignore[assignment,method-assign]
    entry.read(desk.data / "applications" / "fullshell.desktop", encoding="utf-8")
    fields = entry["Desktop Entry"]
    assert shlex.split(fields["Exec"]) == [str(desk.target / "fullshell"), "%f"]
    assert Path(fields["TryExec"]).is_file()
    (kind,) = ElementTree.parse(desk.data / "mime" / "packages" / "fullshell-place.xml").getroot()
    assert fields["MimeType"].rstrip(";") == kind.get("type")
    glob = kind.find(f"{MIME}glob")
    assert glob is not None
    assert glob.get("pattern") == f"*{place_files.ENDING}"
    for size in icons.SIZES:
        name = f"icons/hicolor/{size}x{size}/apps/{fields['Icon']}.png"
        assert (desk.data / name).is_file()
    command = desk.home / ".local" / "bin" / "fullshell"
    said = subprocess.run([command, "a place"], capture_output=True, text=True, check=True)
    assert said.stdout.strip().endswith("a place")
    # What is said can be pasted into a shell, spaces and quotation marks of the home and all.
    (way,) = re.findall(r"To remove it: (.*) \(", ran.stdout)
    assert shlex.split(way) == ["sh", str(desk.target / "uninstall.sh")]


def test_a_newer_release_replaces_every_file_of_the_older(desk: Desk) -> None:
    """Protects against a library of the old release that the new program finds first."""
    assert desk.run(desk.unpacked / "install.sh").returncode == 0
    (desk.target / "old-library.so").write_bytes(b"")
    assert desk.run(desk.unpacked / "install.sh").returncode == 0
    assert _files(desk.target) == _files(desk.unpacked)


def test_an_uninstall_leaves_the_log_and_nothing_else(desk: Desk) -> None:
    """Protects every haul ever logged, and other programs' files in the same folders."""
    foreign = desk.data / "applications" / "other.desktop"
    foreign.parent.mkdir(parents=True)
    foreign.write_text("", encoding="utf-8")
    before = _files(desk.home)
    assert desk.run(desk.unpacked / "install.sh").returncode == 0
    ran = desk.run(desk.target / "uninstall.sh")
    assert (ran.returncode, ran.stderr) == (0, "")
    # Where the system has them, its own tools keep lists of the kinds of files there are.
    left = _files(desk.home) - before
    lists = {path for path in left if "mime" in path.parts or path.name == "mimeinfo.cache"}
    assert _files(desk.home) == before | lists
    assert not any(b"fullshell" in (desk.home / path).read_bytes() for path in lists)
    assert not desk.target.exists()
    assert str(desk.data / "fullshell") in ran.stdout


def test_what_is_not_ours_is_not_overwritten(desk: Desk) -> None:
    """Protects another program of the same name, with a reason in place of the install."""
    desk.target.mkdir(parents=True)
    (desk.target / "mine.txt").write_text("", encoding="utf-8")
    ran = desk.run(desk.unpacked / "install.sh")
    assert ran.returncode == 1
    assert "move it away first" in ran.stderr
    assert _files(desk.target) == {Path("mine.txt")}


def test_an_uninstall_without_an_install_says_so(desk: Desk) -> None:
    """Protects against removing anything from a home where there is nothing of ours."""
    before = _files(desk.home)
    ran = desk.run(desk.unpacked / "uninstall.sh")
    assert ran.returncode == 1
    assert "not installed" in ran.stderr
    assert _files(desk.home) == before


def test_nothing_is_taken_from_under_a_program_that_is_open(desk: Desk) -> None:
    """Protects whoever is typing a trip: an open program reads its parts from there as it goes."""
    sleep = shutil.which("sleep")
    assert sleep
    shutil.copy(sleep, desk.unpacked / "fullshell")
    assert desk.run(desk.unpacked / "install.sh").returncode == 0
    before = _files(desk.home)
    with subprocess.Popen([desk.target / "fullshell", "600"]) as program:
        refused = [
            desk.run(desk.unpacked / "install.sh"),
            desk.run(desk.target / "uninstall.sh"),
        ]
        program.kill()
    for ran in refused:
        assert ran.returncode == 1
        assert "close it and run this again" in ran.stderr
    assert _files(desk.home) == before
    assert desk.run(desk.target / "uninstall.sh").returncode == 0


def test_a_log_in_the_programs_own_folder_is_not_removed_with_it(desk: Desk) -> None:
    """Protects every haul of whoever lets FULLSHELL_HOME point into the program's folder."""
    assert desk.run(desk.unpacked / "install.sh").returncode == 0
    log = desk.target / "my data" / "hauls.logbook"
    log.parent.mkdir()
    log.write_bytes(b"every haul")
    for script in (desk.unpacked / "install.sh", desk.target / "uninstall.sh"):
        ran = desk.run(script)
        assert ran.returncode == 1
        assert str(log) in ran.stderr
        assert log.read_bytes() == b"every haul"
        assert (desk.target / "fullshell").exists()


def test_an_uninstall_says_where_a_moved_log_and_written_faults_are(desk: Desk) -> None:
    """Protects from looking for the log in a folder where it never was."""
    assert desk.run(desk.unpacked / "install.sh").returncode == 0
    (desk.home / ".local" / "state" / "fullshell" / "log").mkdir(parents=True)
    ran = desk.run(desk.target / "uninstall.sh", FULLSHELL_HOME="/media/a stick/crabs")
    assert "stay in /media/a stick/crabs." in ran.stdout
    assert str(desk.home / ".local" / "state" / "fullshell") in ran.stdout


def test_without_a_home_the_installer_says_so_and_does_nothing(desk: Desk) -> None:
    """Protects the root of the file system, where an empty HOME would point."""
    before = _files(desk.home)
    ran = desk.run(desk.unpacked / "install.sh", HOME="")
    assert ran.returncode != 0
    assert "home folder" in ran.stderr
    assert _files(desk.home) == before
