"""What the bundler is asked for on each system, read from the spec where no bundler need be.

Fakes stand for the bundler: this holds the spec to what it asks for, not to what comes of it.
"""

from __future__ import annotations

import re
import runpy
import sys
from dataclasses import dataclass, field
from pathlib import Path
from types import ModuleType
from typing import Any

import bundle
import icons
import place_files
import pytest

import planner

SPEC = Path(bundle.__file__).with_name("fullshell.spec")


class Asked:
    """Keeps what one of the bundler's classes was called with."""

    def __init__(self, *args: Any, **named: Any) -> None:
        self.args, self.named = args, named
        self.pure: list[tuple[str, ...]] = []
        self.scripts: list[tuple[str, ...]] = []
        self.datas = [(f"fullshell-{planner.__version__}.dist-info/direct_url.json", "/x", "DATA")]
        self.binaries = [
            ("PySide6/Qt6Core.dll", "/site-packages/PySide6/Qt6Core.dll", "BINARY"),
            ("PySide6/Qt/plugins/platforms/libqoffscreen.so", "/site-packages/x", "BINARY"),
            ("PySide6/Qt/plugins/platforms/libqvnc.so", "/site-packages/x", "BINARY"),
            ("libstdc++.so.6", "/usr/lib/libstdc++.so.6", "BINARY"),
            ("libsqlite3.so.0", "/usr/lib/libsqlite3.so.0", "BINARY"),
        ]


@dataclass
class Spec:
    """The calls of one run of the spec, by class."""

    calls: dict[str, list[Asked]] = field(default_factory=dict)

    def one(self, name: str) -> Asked:
        (call,) = self.calls[name]
        return call


@pytest.fixture
def read(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Any:
    """Run the spec as on a system, which is named as in `sys.platform`."""

    def module(name: str, **inside: Any) -> None:
        made = ModuleType(name)
        vars(made).update(inside)
        monkeypatch.setitem(sys.modules, name, made)

    module("PyInstaller")
    module("PyInstaller.utils")
    module(
        "PyInstaller.utils.hooks",
        collect_data_files=lambda *_, **__: [],
        collect_submodules=lambda *_: [],
    )
    parts = ("VSVersionInfo", "FixedFileInfo", "StringFileInfo", "StringTable", "StringStruct")
    form = dict.fromkeys((*parts, "VarFileInfo", "VarStruct"), Asked)
    module("PyInstaller.utils.win32", versioninfo=ModuleType("versioninfo"))
    vars(sys.modules["PyInstaller.utils.win32"].versioninfo).update(form)
    for name in ("write_pngs", "write_ico", "write_icns"):
        monkeypatch.setattr(icons, name, lambda *_: {})

    def run(platform: str) -> Spec:
        spec = Spec()

        def keeper(name: str) -> Any:
            def keep(*args: Any, **named: Any) -> Asked:
                spec.calls.setdefault(name, []).append(Asked(*args, **named))
                return spec.calls[name][-1]

            return keep

        monkeypatch.setattr(sys, "platform", platform)
        named = {each: keeper(each) for each in ("Analysis", "PYZ", "EXE", "COLLECT", "BUNDLE")}
        named |= {"SPECPATH": str(SPEC.parent), "workpath": str(tmp_path)}
        runpy.run_path(str(SPEC), init_globals=named)
        return spec

    return run


def test_windows_has_a_program_for_the_window_and_one_for_jobs(read: Any) -> None:
    """Protects from a black box behind the window, and from jobs that print into nothing."""
    spec = read("win32")
    programs = {each.named["name"]: each.named for each in spec.calls["EXE"]}
    assert {name: each["console"] for name, each in programs.items()} == {
        "fullshell": True,
        "fullshellw": False,
    }
    # The set-up program starts, shows in the menu and opens files with the one without a console.
    script = bundle.WINDOWS_SCRIPT.read_text(encoding="utf-8")
    named = set(re.findall(r"\{app\}\\(\w+)\.exe", script))
    assert named == {"fullshellw"}
    for each in programs.values():
        assert each["icon"].endswith("fullshell.ico")
        fixed = each["version"].named["ffi"]
        numbers = tuple(int(part) for part in re.findall(r"\d+", planner.__version__))
        assert fixed.named["filevers"] == fixed.named["prodvers"] == (*numbers, 0)


def test_macos_has_an_app_that_shows_and_says_what_it_opens(read: Any) -> None:
    """Protects the app from being one of the background: the bundler makes it one that has no
    window when its program has a console."""
    spec = read("darwin")
    assert [each.named["console"] for each in spec.calls["EXE"]] == [False]
    app = spec.one("BUNDLE")
    assert app.args == (spec.one("COLLECT"),)
    assert app.named["name"] == bundle.built_in(Path("x")).name == "Fullshell.app"
    assert app.named["icon"].endswith("fullshell.icns")
    assert app.named["version"] == planner.__version__
    assert app.named["info_plist"] == place_files.macos_plist(planner.__version__)
    folder, name = bundle.program_of(Path("Fullshell.app")).parts[-2:]
    assert (folder, name) == ("MacOS", spec.calls["EXE"][0].named["name"])


def test_linux_has_no_app_and_leaves_to_the_system_what_must_fit_it(read: Any) -> None:
    """Protects the graphics driver of whoever installs it from the building system's libraries."""
    spec = read("linux")
    assert "BUNDLE" not in spec.calls
    kept = {Path(entry[0]).name for entry in spec.one("Analysis").binaries}
    assert kept == {"Qt6Core.dll", "libqoffscreen.so", "libsqlite3.so.0"}


@pytest.mark.parametrize("platform", ["win32", "darwin", "linux"])
def test_every_bundle_can_draw_without_a_screen_and_knows_its_own_files(
    read: Any, platform: str
) -> None:
    """Protects `picture`, and the doctor's look at damaged files, which goes by their sums."""
    found = read(platform).one("Analysis")
    assert any("offscreen" in entry[0] for entry in found.binaries)
    own = {Path(entry[0]).name for entry in found.datas if entry[0].startswith("fullshell-")}
    assert own == {"METADATA", "RECORD"}
    assert found.named["runtime_hooks"] == [str(SPEC.with_name("bundle_start.py"))]


def test_the_version_is_one_that_every_system_takes() -> None:
    """Protects the bundle of Windows, whose properties hold numbers only."""
    assert re.fullmatch(r"\d+\.\d+\.\d+", planner.__version__)
