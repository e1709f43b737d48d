"""What lies on the disk: what ships with the program, and what is the user's own."""

from __future__ import annotations

import shutil
import sys
import tempfile
from base64 import urlsafe_b64encode
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, date, datetime
from hashlib import sha256
from importlib import metadata
from pathlib import Path
from typing import Final

from planner.assets import demo_place, log_folder, user_folder
from planner.errors import PlannerError, RangeError
from planner.faults import kept, log_file
from planner.ui.settings import open_settings, settings_file
from planner.ui.trouble.checkup.finding import Finding, good, mind, wrong
from planner.ui.trouble.checkup.own_files import (
    broken_modules,
    unreadable_files,
    unusable_files,
)
from planner.words import say

_AGAIN: Final = say("install the program again: a file of its own is missing or damaged")
_ZONES: Final = _AGAIN if hasattr(sys, "frozen") else say("install tzdata: pip install tzdata")
_LITTLE_BYTES: Final = 200e6  # a year of daily backups of a long log
_TOO_LITTLE_BYTES: Final = 20e6  # the log and its backup may no longer be saved whole


def check_own_files() -> Iterator[Finding]:
    """Look whether all that ships is there and whole, by its sums where the installer kept them."""
    modules = broken_modules()
    unusable = () if modules else unusable_files()
    found = (*_changed_since_installed(), *modules, *unreadable_files(), *unusable)
    damaged = list(dict.fromkeys(found))
    if damaged:
        yield wrong(
            say("its own files"),
            say("missing or damaged: {listed}", listed=", ".join(damaged[:5])),
            _AGAIN,
        )
    else:
        yield good(say("its own files"), say("there and whole"))


def _changed_since_installed() -> Iterator[str]:
    """Name the files of the package whose sum is not the one that the installer wrote down.

    A bundle keeps its code in one file that does not start when it is damaged; the others lie
    beside it as the wheel had them.
    """
    in_bundle = hasattr(sys, "frozen")
    try:
        files = metadata.files("fullshell") or []
    except metadata.PackageNotFoundError:
        return
    for file in files:
        if file.hash is None or file.hash.mode != "sha256" or file.parts[0] != "planner":
            continue
        if in_bundle and file.suffix == ".py":
            continue
        try:
            found = sha256(Path(file.locate()).read_bytes()).digest()
        except OSError:
            yield file.name
            continue
        if urlsafe_b64encode(found).rstrip(b"=").decode() != file.hash.value:
            yield file.name


def check_sun_and_moon() -> Iterator[Finding]:
    """Ask for the sun and moon of today at the demo place."""
    from planner.sites import load_site
    from planner.sky import sky_days

    today = date.today()  # noqa: DTZ011  (the user's own day)
    try:
        sky_days(load_site(demo_place()), today, today)
    except RangeError:
        yield wrong(
            say("sun and moon"),
            say("not known on {today}", today=today),
            say("set the clock of this machine; they are known from 1899 to 2053"),
        )
    except (OSError, ImportError, ValueError):
        yield wrong(say("sun and moon"), say("the ephemeris cannot be read"), _AGAIN)
    else:
        yield good(say("sun and moon"), say("known today"))


def check_time_zones() -> Iterator[Finding]:
    """Ask for a zone with summer time, and whether it changes its clocks."""
    from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

    try:
        zone = ZoneInfo("America/New_York")
    except (ZoneInfoNotFoundError, OSError):
        yield wrong(say("time zones"), say("not found"), _ZONES)
        return
    offsets = {
        datetime(2026, month, 15, tzinfo=UTC).astimezone(zone).utcoffset() for month in (1, 7)
    }
    if len(offsets) != 2:
        yield wrong(say("time zones"), say("without summer time"), _ZONES)
    else:
        yield good(say("time zones"), say("known"))


def check_folders() -> Iterator[Finding]:
    """Write and delete a file where the log is kept, and where faults are written down."""
    for what, folder, state in (
        (say("folder of your log"), user_folder(), wrong),
        (say("folder of the log of faults"), log_folder(), mind),
    ):
        try:
            folder.mkdir(parents=True, exist_ok=True)
            with tempfile.TemporaryFile(dir=folder) as file:
                file.write(b"x" * 4096)
        except OSError as error:
            said = say(
                "cannot be written ({kind}, number {errno})",
                kind=type(error).__name__,
                errno=error.errno,
            )
            remedy = say(
                "allow writing there, make room, or name another folder in the variable "
                "FULLSHELL_HOME"
            )
            yield state(what, said, remedy, str(folder))
        else:
            yield good(what, say("can be written"), str(folder))
    if not user_folder().is_dir():
        return
    free = shutil.disk_usage(user_folder()).free
    said = say("{free:,.0f} MB free", free=free / 1000000.0)
    if free < _TOO_LITTLE_BYTES:
        yield wrong(say("disk"), said, say("make room: what you log can no longer be saved"))
    elif free < _LITTLE_BYTES:
        yield mind(say("disk"), said, say("make room soon, for your log and its backups"))
    else:
        yield good(say("disk"), said)


def check_log() -> Iterator[Finding]:
    """Read the log through without changing it, and ask SQLite whether the file is whole."""
    import sqlite3

    from planner.logbook import Logbook, default_logbook
    from planner.logbook.backups import backups_of, is_whole

    path = default_logbook()
    if not path.exists():
        yield good(say("your log"), say("none yet; the first trip makes it"), str(path))
        return
    back = say(
        "start Fullshell: it sets a damaged log aside and takes over what can be read; or go "
    )
    back += say("back to a backup with File, Backups of the log")
    try:
        with Logbook.open(path, read_only=True) as book:
            book.read()
        with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as raw:
            whole = is_whole(raw, thorough=True)
    except (PlannerError, sqlite3.Error) as error:
        yield wrong(
            say("your log"),
            say("cannot be read ({kind})", kind=type(error).__name__),
            back,
            str(path),
        )
        return
    if not whole:
        yield wrong(say("your log"), say("is damaged"), back, str(path))
        return
    yield good(say("your log"), say("whole"), str(path))
    backups = backups_of(path)
    if backups:
        newest = max(backup.at for backup in backups)
        yield good(
            say("backups of your log"),
            say(
                "{backups}, the newest of {newest:%Y-%m-%d}",
                backups=len(backups),
                newest=newest,
            ),
        )
    else:
        yield mind(
            say("backups of your log"),
            say("none yet"),
            say("one is made on each day that you use it"),
        )


def check_settings() -> Iterator[Finding]:
    """Read the settings as a start does, without touching the file."""
    _, remark = open_settings()
    if remark:
        remedy = say("start Fullshell once: it sets the file aside; then choose in the View menu")
        yield mind(
            say("settings"), say("not all of them can be used"), remedy, str(settings_file())
        )
    else:
        yield good(say("settings"), say("can be read"))


def check_faults() -> Iterator[Finding]:
    """Count the faults that were written down."""
    found = kept()
    if found:
        remedy = say("send the newest to whoever keeps your Fullshell up to date")
        yield mind(
            say("faults"),
            say("{found} written down", found=len(found)),
            remedy,
            str(log_file()),
        )
    else:
        yield good(say("faults"), say("none written down"))
