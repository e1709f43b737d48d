"""Backups of the logbook: verified copies in a folder beside it, thinned by a pure rule."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterable
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Final

from planner.logbook.errors import LogbookError
from planner.whole_file import replacing
from planner.words import say

_STAMP: Final = "%Y%m%d-%H%M%S"
# A backup a day of use is enough between: the journal takes back anything newer.
EVERY: Final = timedelta(hours=20)
_ALL_OF: Final = timedelta(days=3)
_DAILY_FOR: Final = timedelta(days=31)
_MONTHLY_FOR: Final = timedelta(days=3 * 366)


@dataclass(frozen=True)
class Backup:
    """A copy of the logbook. at: when it was made, UTC. why: "" for a daily one."""

    path: Path
    at: datetime
    why: str = ""


def backup_folder(logbook: Path) -> Path:
    """Return where the backups of a logbook are kept; it need not exist."""
    return logbook.with_name(f"{logbook.stem}-backups")


def backups_of(logbook: Path) -> tuple[Backup, ...]:
    """Return the backups of a logbook, newest first."""
    name = re.compile(
        rf"{re.escape(logbook.stem)}-(\d{{8}}-\d{{6}})(?:-(.+?))?{re.escape(logbook.suffix)}"
    )
    found = []
    with suppress(OSError):
        for path in backup_folder(logbook).iterdir():
            match = name.fullmatch(path.name)
            if match is not None:
                with suppress(ValueError):
                    at = datetime.strptime(match[1], _STAMP).replace(tzinfo=UTC)
                    found.append(Backup(path, at, (match[2] or "").replace("-", " ")))
    return tuple(sorted(found, key=lambda backup: (backup.at, backup.why), reverse=True))


def obsolete(made: Iterable[datetime], now: datetime) -> frozenset[datetime]:
    """Return which of these backups need not be kept.

    Kept are all of the last three days, the last of each day for a month, of each month for
    three years, of each year for ever, and always the newest. One from the future, as a wrong
    clock makes them, is kept.
    """
    dispensable = set()
    seen: set[tuple[int, ...]] = set()
    for at in sorted(set(made), reverse=True):
        age = now - at
        if age <= _ALL_OF:
            continue
        if age <= _DAILY_FOR:
            span: tuple[int, ...] = (at.year, at.month, at.day)
        elif age <= _MONTHLY_FOR:
            span = (at.year, at.month)
        else:
            span = (at.year,)
        if span in seen:
            dispensable.add(at)
        seen.add(span)
    return frozenset(dispensable)


def take_backup(
    connection: sqlite3.Connection, logbook: Path, now: datetime, why: str = ""
) -> Backup:
    """Copy an open logbook into its backup folder and make sure that the copy is whole.

    LogbookError when the copy does not hold what the file holds; sqlite3.Error and OSError when
    it cannot be written. A copy that failed leaves nothing behind.
    """
    folder = backup_folder(logbook)
    folder.mkdir(parents=True, exist_ok=True)
    reason = f"-{why.replace(' ', '-')}" if why else ""
    at = now.astimezone(UTC).replace(microsecond=0)
    while (path := folder / f"{logbook.stem}-{at:{_STAMP}}{reason}{logbook.suffix}").exists():
        at += timedelta(seconds=1)
    with replacing(path) as part:
        with closing(sqlite3.connect(part)) as copy:
            connection.backup(copy)
        with closing(sqlite3.connect(f"{part.absolute().as_uri()}?mode=ro", uri=True)) as copy:
            if not is_whole(copy) or _rows(copy) != _rows(connection):
                raise LogbookError(
                    say(
                        "The backup {path} could not be verified; {logbook} was left as it is. "
                        "Check the disk and try again.",
                        path=path,
                        logbook=logbook,
                    )
                )
    return Backup(path, at, why)


def keep_up(connection: sqlite3.Connection, logbook: Path, now: datetime) -> None:
    """Take the day's backup when it is due, and let go of those no longer needed.

    Backups with a reason, such as those before a schema step, are never let go of. Raises as
    `take_backup` does.
    """
    daily = [backup for backup in backups_of(logbook) if not backup.why]
    # A logbook without a haul, as a first start makes it, needs none.
    holds = connection.execute("SELECT EXISTS (SELECT 1 FROM hauls)").fetchone()[0]
    if holds and all(now - backup.at >= EVERY for backup in daily):
        daily.append(take_backup(connection, logbook, now))
    gone = obsolete((backup.at for backup in daily), now)
    for backup in daily:
        if backup.at in gone:
            backup.path.unlink(missing_ok=True)
    for part in backup_folder(logbook).glob(f"{logbook.stem}-*.part"):
        part.unlink(missing_ok=True)  # of a backup that a crash cut off


def is_whole(connection: sqlite3.Connection, thorough: bool = False) -> bool:
    """Tell whether SQLite finds nothing wrong; thorough: indexes against tables, too."""
    check = "integrity_check" if thorough else "quick_check"
    if connection.execute(f"PRAGMA {check}(1)").fetchone()[0] != "ok":
        return False
    return not (thorough and connection.execute("PRAGMA foreign_key_check").fetchone())


def _rows(connection: sqlite3.Connection) -> list[tuple[str, int]]:
    """Return how many rows each table holds."""
    names = connection.execute(
        "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"
    ).fetchall()
    return [
        (name, connection.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0])
        for (name,) in names
    ]
