"""Faults of the program itself: a report without anything private, and a log of bounded size.

What the user can put right is a `PlannerError` and never comes here.
"""

from __future__ import annotations

import faulthandler
import re
import sys
import traceback
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from pathlib import Path, PurePath
from types import TracebackType
from typing import Final, TextIO

from planner import __version__
from planner.assets import log_folder

MOST_BYTES: Final = 200_000  # of one log file; some forty faults
FILES_KEPT: Final = 3  # older ones beside the newest
_MOST_REPORT: Final = 20_000  # letters; endless recursion has a thousand frames
_MOST_FRAMES: Final = 40
_MOST_CAUSES: Final = 5
_LIBRARIES: Final = (
    *("PySide6-Essentials", "pyqtgraph", "numpy", "scipy", "pydantic", "skyfield"),
    *("skyfield-data", "utide", "tzdata"),
)
_FILE_IN_DUMP: Final = re.compile(r'File "([^"]*)"')


def log_file() -> Path:
    """Return the newest file of the log of faults; it need not exist."""
    return log_folder() / "faults.log"


def report(error: BaseException, facts: Mapping[str, str] | None = None) -> str:
    """Return a report of a fault that may be shown to anybody.

    It holds versions, the kinds of the error and of what led to it, and where each was raised.
    It leaves out what an error says in its own words, and every value: they may hold a place, a
    file or something logged. facts: more of the same kind, such as the view that was open.
    """
    lines = [f"Fullshell {__version__}, {datetime.now(UTC):%Y-%m-%d %H:%M} UTC"]
    lines += [f"{name}: {value}" for name, value in {**versions(), **(facts or {})}.items()]
    for number, each in enumerate(_causes(error)):
        lines += ["", "which followed" if number else "What went wrong"]
        lines += [f"  {where}" for where in _frames(each.__traceback__)]
        lines.append(f"  {type(each).__module__}.{type(each).__qualname__}")
    return "\n".join(lines)[:_MOST_REPORT] + "\n"


def signature(error: BaseException) -> tuple[str, str]:
    """Return what two tellings of one fault have in common: its kind and where it was raised."""
    frames = list(_frames(error.__traceback__))
    return type(error).__qualname__, frames[-1] if frames else ""


def versions() -> dict[str, str]:
    """Return the versions of the system, Python and the libraries; no name of the machine."""
    import platform
    from importlib import metadata

    found = {
        "System": f"{platform.system()} {platform.release()}, {platform.machine()}",
        "Python": platform.python_version() + (" (bundle)" if hasattr(sys, "frozen") else ""),
    }
    for name in _LIBRARIES:
        try:
            found[name] = metadata.version(name)
        except metadata.PackageNotFoundError:
            found[name] = "not known here"
    return found


def shortened(path: str) -> str:
    """Return a file's path from its package on: nothing of where the user keeps things."""
    parts = PurePath(path.replace("\\", "/")).parts
    for mark in ("site-packages", "dist-packages"):
        if mark in parts:
            return "/".join(parts[len(parts) - parts[::-1].index(mark) :])
    ours = PurePath(__file__.replace("\\", "/")).parts[:-1]
    if parts[: len(ours)] == ours:
        return "/".join(("planner", *parts[len(ours) :]))
    return parts[-1] if parts else ""


def _causes(error: BaseException) -> Iterator[BaseException]:
    """Give an error and what led to it, the newest first."""
    each: BaseException | None = error
    for _ in range(_MOST_CAUSES):
        if each is None:
            return
        yield each
        each = each.__cause__ or (None if each.__suppress_context__ else each.__context__)


def _frames(trace: TracebackType | None) -> Iterator[str]:
    found = [*traceback.walk_tb(trace)]
    for frame, line in found[-_MOST_FRAMES:]:
        code = frame.f_code
        yield f"{shortened(code.co_filename)}:{line} in {code.co_qualname}"


# -- the log -------------------------------------------------------------------------------------


def keep(text: str) -> bool:
    """Put a report into the log; tell whether it is there. A full disk is no second fault."""
    from planner.fault_log import BoundedLog

    try:
        log = BoundedLog(log_file(), MOST_BYTES, FILES_KEPT)
    except OSError:
        return False
    try:
        log.put(f"{text.rstrip()}\n")
    except OSError:
        return False
    finally:
        log.close()
    return True


def kept() -> list[str]:
    """Return the reports of the newest log file, oldest first; none when it cannot be read."""
    try:
        text = log_file().read_text(encoding="utf-8", errors="replace")
    except OSError:
        return []
    return [each for each in re.split(r"(?m)^(?=Fullshell \d)", text) if each.strip()]


# -- crashes below Python ------------------------------------------------------------------------


class HardCrashes:
    """Has Python write where it stood when a library takes the whole process down.

    The next start takes what was written over into the log; `last` is that report, "" after a
    start that ended well.
    """

    def __init__(self) -> None:
        self.last = ""
        self._file: TextIO | None = None
        self._on = False
        path = log_folder() / "hard-crash.txt"
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            # Read, written and emptied as one file, which a second window may share.
            self._file = path.open("a+", encoding="utf-8", errors="replace")
            self._file.seek(0)
            written = self._file.read(_MOST_REPORT)
            self._file.truncate(0)
        except OSError:
            return
        if written.strip():
            self.last = _crash_report(written)
            keep(self.last)
        # Whoever has turned it on already, such as a run of tests, keeps it.
        self._on = not faulthandler.is_enabled()
        if self._on:
            faulthandler.enable(self._file)

    def close(self) -> None:
        """The process ends well: nothing is to be written any more."""
        if self._file is not None:
            if self._on:
                faulthandler.disable()
            self._file.close()
            self._file = None


def _crash_report(written: str) -> str:
    cut = _FILE_IN_DUMP.sub(lambda found: f'File "{shortened(found[1])}"', written.strip())
    lines = [f"Fullshell {__version__}, found {datetime.now(UTC):%Y-%m-%d %H:%M} UTC at a start"]
    lines += [f"{name}: {value}" for name, value in versions().items()]
    return "\n".join([*lines, "", "The process ended in the middle of its work", cut]) + "\n"
