"""Python and its libraries: which there are, against which are needed."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from importlib import import_module, metadata
from typing import Final

from planner.ui.trouble.checkup.finding import Finding, good, mind, wrong
from planner.words import say

_PYTHON: Final = (3, 11)
_NEWEST_TESTED: Final = (3, 13)
_AGAIN: Final = (
    say("install the program again")
    if hasattr(sys, "frozen")
    else say(
        'set the program up again: python3 packaging/start.py, or pip install "fullshell[window]"'
    )
)
# Where a library is imported by another name than it is installed by.
_MODULES: Final = {
    "pyside6-essentials": "PySide6.QtCore",
    "python-dateutil": "dateutil",
    "skyfield-data": "skyfield_data",
}
_NEED: Final = re.compile(r"([A-Za-z0-9._-]+?)((?:[<>=!~]=?[^;,\s]+,?)*)\s*(?:;(.*))?")


def check_python() -> Iterator[Finding]:
    """Hold the Python that runs this against what the program needs and was tried on."""
    version = ".".join(str(part) for part in sys.version_info[:3])
    least = ".".join(str(part) for part in _PYTHON)
    newest = ".".join(str(part) for part in _NEWEST_TESTED)
    if sys.version_info[:2] < _PYTHON:
        yield wrong(
            say("Python"),
            version,
            say("install Python {least} to {newest}", least=least, newest=newest),
        )
    elif sys.version_info[:2] > _NEWEST_TESTED:
        yield mind(
            say("Python"),
            version,
            say("tried up to {newest}; use that should something fail", newest=newest),
        )
    else:
        yield good(say("Python"), version)


def check_libraries() -> Iterator[Finding]:
    """Hold each library against the versions that the program asks for, and load it."""
    if hasattr(sys, "frozen"):
        yield from (_loaded(name, "") for name in ("numpy", "scipy", "skyfield", "utide"))
        return
    try:
        needed = metadata.requires("fullshell") or []
    except metadata.PackageNotFoundError:
        yield wrong(say("Fullshell"), say("is not installed here, only lies here"), _AGAIN)
        return
    for each in needed:
        found = _NEED.fullmatch(each)
        if found is None:
            continue
        name, versions, condition = found[1], found[2], found[3] or ""
        if "extra" not in condition or "window" in condition:
            yield _library(name, versions)


def _library(name: str, needed: str) -> Finding:
    try:
        version = metadata.version(name)
    except metadata.PackageNotFoundError:
        return wrong(name, say("is not installed"), _AGAIN)
    if not fits(version, needed):
        return wrong(
            name, say("{version}, needed is {needed}", version=version, needed=needed), _AGAIN
        )
    return _loaded(name, version)


def _loaded(name: str, version: str) -> Finding:
    try:
        import_module(_MODULES.get(name.lower(), name.replace("-", "_")))
    except Exception as error:  # noqa: BLE001  (whatever a broken library raises)
        lacking = missing_library(str(error))
        said = say(
            "{version} does not load ({kind}{value})",
            version=version,
            kind=type(error).__name__,
            value=lacking and f": {lacking}",
        )
        return wrong(name, said.strip(), _AGAIN)
    return good(name, version or say("loads"))


def fits(version: str, needed: str) -> bool:
    """Tell whether a version lies within bounds such as ">=6.7,<6.12"."""
    tests = {
        ">=": lambda a, b: a >= b,
        "<=": lambda a, b: a <= b,
        "==": lambda a, b: a == b,
        "!=": lambda a, b: a != b,
        "<": lambda a, b: a < b,
        ">": lambda a, b: a > b,
    }
    for sign, bound in re.findall(r"([<>=!]=?)([\d.]+)", needed):
        if not tests[sign](_parts(version), _parts(bound)):
            return False
    return True


def _parts(version: str) -> tuple[int, ...]:
    parts = [int(part) for part in re.findall(r"\d+", version.split("+")[0])[:4]]
    while parts and not parts[-1]:  # 7.0 is 7
        parts.pop()
    return tuple(parts)


def missing_library(said: str) -> str:
    """Return the shared library that a loader's message misses, "" when it names none."""
    found = re.search(r"([\w.+-]+\.so[.\d]*): cannot open shared object", said)
    return found[1] if found else ""


def debian_package(library: str) -> str:
    """Return the Debian package of a shared library, by the rule of its name and version.

    Debian Policy 8.1: the name, lower case, then the version, with a dash after a digit.
    """
    if library.startswith("libglib-2.0.so"):  # the exception among what Qt needs
        return "libglib2.0-0"
    name, _, version = library.lower().partition(".so.")
    name = name.replace("_", "-")
    dash = "-" if name[-1:].isdigit() or name.endswith("-x11") else ""
    return f"{name}{dash}{version.split('.')[0]}"
