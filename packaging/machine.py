"""What the system below Python must have, and how to get what is missing.

On Linux, Qt loads shared libraries that a bare system lacks, and Debian leaves out the part of
Python that makes environments. Windows and macOS bring all of it.
"""

from __future__ import annotations

import ctypes
import importlib.util
import os
import shlex
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path


class SetUpError(Exception):
    """The machine cannot be made ready; the text says why and what to do."""


@dataclass(frozen=True)
class Library:
    """A shared library, and the package that carries it on each family of systems."""

    file: str
    apt: str
    dnf: str
    pacman: str


# The apt names were found on a bare Debian 12; the dnf and pacman names are from memory and
# only ever printed as a hint. fontconfig brings a font on Debian: without one all text is boxes.
TO_DRAW = (
    Library("libglib-2.0.so.0", "libglib2.0-0", "glib2", "glib2"),
    Library("libGL.so.1", "libgl1", "libglvnd-glx", "libglvnd"),
    Library("libEGL.so.1", "libegl1", "libglvnd-egl", "libglvnd"),
    Library("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon", "libxkbcommon"),
    Library("libfontconfig.so.1", "libfontconfig1", "fontconfig", "fontconfig"),
    Library("libdbus-1.so.3", "libdbus-1-3", "dbus-libs", "dbus"),
)
FOR_A_SCREEN = (
    Library("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor", "xcb-util-cursor"),
    Library("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm", "xcb-util-wm"),
    Library("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms", "xcb-util-keysyms"),
    Library("libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11", "libxkbcommon-x11"),
    Library("libxcb-shape.so.0", "libxcb-shape0", "libxcb", "libxcb"),
    Library("libxcb-xkb.so.1", "libxcb-xkb1", "libxcb", "libxcb"),
)

# What a phone page is tried in, under the names that systems give it.
BROWSERS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
BROWSER_APT = "chromium"
# The program that drives the browser comes with playwright, but for this library of the system.
TO_DRIVE = (Library("libatomic.so.1", "libatomic1", "libatomic", "gcc-libs"),)


def say(text: str) -> None:
    """Print a line of progress at once, so that it stands before what a command prints."""
    print(text, flush=True)


def run(
    command: Sequence[str | Path],
    *,
    folder: Path | None = None,
    variables: Mapping[str, str] | None = None,
    limit_s: float | None = None,
) -> bool:
    """Show a command, run it, and tell whether it ended well; one over its time limit has not."""
    words = [str(word) for word in command]
    say(f"  $ {shlex.join(words)}")
    try:
        finished = subprocess.run(
            words,
            cwd=folder,
            env={**os.environ, **(variables or {})},
            stdin=subprocess.DEVNULL,
            timeout=limit_s,
            check=False,
        )
    except subprocess.TimeoutExpired:
        say(f"  stopped: not finished after {limit_s} s")
        return False
    except OSError as error:
        say(f"  could not be started: {error}")
        return False
    if finished.returncode:
        say(f"  ended with status {finished.returncode}")
    return finished.returncode == 0


def has_screen(platform: str, variables: Mapping[str, str]) -> bool:
    """Tell whether a window can be shown; `platform` as in `sys.platform`."""
    if not platform.startswith("linux"):
        return True
    return bool(variables.get("DISPLAY") or variables.get("WAYLAND_DISPLAY"))


def parse_os_release(text: str) -> dict[str, str]:
    """Return the fields of an os-release file (shell assignments, one a line)."""
    fields = {}
    for line in text.splitlines():
        name, equals, value = line.strip().partition("=")
        if equals and not name.startswith("#"):
            fields[name] = "".join(shlex.split(value))
    return fields


def uses_apt(os_release: Mapping[str, str]) -> bool:
    """Tell whether the system is Debian or made from it."""
    family = [os_release.get("ID", ""), *os_release.get("ID_LIKE", "").split()]
    return "debian" in family


def can_load(file: str) -> bool:
    """Tell whether the system's loader finds a shared library."""
    try:
        ctypes.CDLL(file)
    except OSError:
        return False
    return True


def missing_libraries(
    wanted: Iterable[Library], loads: Callable[[str], bool] = can_load
) -> list[Library]:
    """Return the libraries that cannot be loaded, in the order given."""
    return [library for library in wanted if not loads(library.file)]


def environment_package(
    has_ensurepip: bool, python_prefix: str, version: tuple[int, int]
) -> str | None:
    """Return the apt package that lets this Python make environments; None when it can already.

    Debian splits `ensurepip` off its own Python, the one under /usr, into a package a version.
    """
    if has_ensurepip or python_prefix != "/usr":
        return None
    return f"python{version[0]}.{version[1]}-venv"


def bundling_packages(
    has_objdump: bool, has_library: bool, python_prefix: str, version: tuple[int, int]
) -> list[str]:
    """Return the apt packages that PyInstaller needs and that are missing.

    It looks into libraries with objdump, and puts Python's own library into the bundle, which
    Debian splits off its Python, the one under /usr.
    """
    packages = [] if has_objdump else ["binutils"]
    if python_prefix == "/usr" and not has_library:
        packages.append(f"libpython{version[0]}.{version[1]}")
    return packages


def prepare_bundling() -> None:
    """Install what PyInstaller needs of a Debian system; elsewhere it says so itself.

    SetUpError when something is missing and cannot be installed from here.
    """
    if not uses_apt(_os_release()):
        return
    library = sysconfig.get_config_var("INSTSONAME")
    packages = bundling_packages(
        shutil.which("objdump") is not None,
        isinstance(library, str) and can_load(library),
        sys.base_prefix,
        sys.version_info[:2],
    )
    if packages:
        _install_with_apt(packages)


def apt_commands(packages: Sequence[str], *, root: bool, sudo: bool) -> list[list[str]]:
    """Return the commands that install Debian packages; empty when nobody here may."""
    if not root and not sudo:
        return []
    lead = [] if root else ["sudo"]
    install = ["apt-get", "install", "-y", "--no-install-recommends", *packages]
    return [[*lead, "apt-get", "update"], [*lead, *install]]


def hint_for_others(missing: Sequence[Library]) -> str:
    """Return what to install where there is no apt, with the names marked as from memory."""
    dnf = " ".join(dict.fromkeys(library.dnf for library in missing))
    pacman = " ".join(dict.fromkeys(library.pacman for library in missing))
    return (
        f"Qt will not find {', '.join(library.file for library in missing)}. "
        "The packages may be called (names from memory):\n"
        f"  with dnf:    sudo dnf install {dnf}\n"
        f"  with pacman: sudo pacman -S {pacman}"
    )


def has_browser(find: Callable[[str], str | None] = shutil.which) -> bool:
    """Tell whether a browser is there that tests can drive."""
    return any(find(name) is not None for name in BROWSERS)


def prepare_browser() -> None:
    """Fetch a browser for the tests of the phone page, and what drives it, where apt has them.

    Going without is not fatal: those tests then say why they are left out.
    """
    if not uses_apt(_os_release()):
        return
    wanted = [library.apt for library in missing_libraries(TO_DRIVE)]
    if not has_browser():
        wanted.append(BROWSER_APT)
    if not wanted:
        return
    try:
        _install_with_apt(wanted)
    except SetUpError as error:
        say(f"No browser, so the phone page goes untried here. {error}")


def prepare(*, screen: bool) -> None:
    """Install what the system lacks, asking for administrator rights only then.

    SetUpError when something is missing and cannot be installed from here.
    """
    has_ensurepip = importlib.util.find_spec("ensurepip") is not None
    wanted = (*TO_DRAW, *FOR_A_SCREEN) if screen else TO_DRAW
    missing = missing_libraries(wanted) if sys.platform.startswith("linux") else []
    if uses_apt(_os_release()):
        extra = environment_package(has_ensurepip, sys.base_prefix, sys.version_info[:2])
        packages = [*([extra] if extra else []), *(library.apt for library in missing)]
        if packages:
            _install_with_apt(packages)
            importlib.invalidate_caches()
            has_ensurepip = importlib.util.find_spec("ensurepip") is not None
    elif missing:
        say(hint_for_others(missing))
    if not has_ensurepip:
        raise SetUpError(
            f"This Python ({sys.executable}) has no ensurepip module and so cannot make an "
            "environment. Install your system's package for it (often python3-venv), or a "
            "Python that has it, and run this command again."
        )


def _os_release() -> dict[str, str]:
    try:
        return parse_os_release(Path("/etc/os-release").read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}


def _install_with_apt(packages: Sequence[str]) -> None:
    say(f"The system lacks: {' '.join(packages)}")
    root = hasattr(os, "geteuid") and os.geteuid() == 0
    commands = apt_commands(packages, root=root, sudo=shutil.which("sudo") is not None)
    by_hand = (
        "Have an administrator run this, then start again:\n"
        f"  apt-get update && apt-get install -y --no-install-recommends {' '.join(packages)}"
    )
    if not commands:
        raise SetUpError(f"Installing them needs administrator rights. {by_hand}")
    update, install = commands
    # A list that cannot be renewed may still be good enough: installing tells.
    run(update, variables={"DEBIAN_FRONTEND": "noninteractive"})
    if not run(install, variables={"DEBIAN_FRONTEND": "noninteractive"}):
        raise SetUpError(f"They could not be installed. {by_hand}")
