"""Logbook files on disk: opening, one writer, schema steps behind a verified backup.

Errors of SQLite become sentences here; nothing in this module writes to a file that is
damaged, newer, or not a logbook.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from typing import Final

from planner.logbook.errors import LogbookDamaged, LogbookError, LogbookInUse, LogbookNewer
from planner.logbook.migrations import APPLICATION_ID, latest_version, migrate

SQLITE_HEADER: Final = b"SQLite format 3\0"
# How long to wait for another program (a backup, a virus scanner) to let go of the file.
_WAIT_S: Final = 2.0

_SENTENCES: Final = {
    sqlite3.SQLITE_BUSY: "is locked by another program; close that and try again",
    sqlite3.SQLITE_LOCKED: "is locked by another program; close that and try again",
    sqlite3.SQLITE_FULL: "cannot be written because the disk is full; make room and try again",
    sqlite3.SQLITE_READONLY: "cannot be written; check the permissions of the file and its folder",
    sqlite3.SQLITE_PERM: "cannot be opened; check the permissions of the file and its folder",
    sqlite3.SQLITE_CANTOPEN: "cannot be opened; check that its folder exists and can be written",
    sqlite3.SQLITE_IOERR: "cannot be reached; check the disk or network drive and try again",
}


@contextmanager
def told(path: Path) -> Iterator[None]:
    """Turn SQLite's and the system's refusals into a LogbookError with a next step."""
    try:
        yield
    except sqlite3.DatabaseError as error:
        if isinstance(error, sqlite3.ProgrammingError):
            raise
        # Text that is no UTF-8 any more is reported without a code.
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_CORRUPT) & 0xFF
        if code in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB):
            raise damaged(path) from error
        if code not in _SENTENCES:
            raise
        raise LogbookError(f"{path} {_SENTENCES[code]}. Nothing was changed.") from error
    except UnicodeDecodeError as error:  # a message about text that is no UTF-8 any more
        raise damaged(path) from error
    except OSError as error:
        reason = error.strerror or str(error)
        raise LogbookError(f"{path} cannot be opened ({reason}). Nothing was changed.") from error


def damaged(path: Path) -> LogbookDamaged:
    """Return the error of a file that is not whole."""
    return LogbookDamaged(
        f"{path} is damaged and was left exactly as it is. "
        "Keep a copy of it, and open a backup or import an exported haul table."
    )


def open_writer(path: Path) -> sqlite3.Connection:
    """Return the one connection that may write, on a new file or one brought up to date.

    LogbookInUse while another has it; the other LogbookErrors for an unusable file.
    """
    with told(path):
        path.parent.mkdir(parents=True, exist_ok=True)
        is_new = not path.exists() or path.stat().st_size == 0
        if not is_new:
            _require_sqlite(path)
        connection = _connect(path, "rwc" if is_new else "rw")
        try:
            version = _checked_version(connection, path)
            if 0 < version < latest_version():
                _back_up(connection, path, version)
            migrate(connection, version)
        except BaseException:
            connection.close()
            raise
        return connection


def open_reader(path: Path) -> sqlite3.Connection:
    """Return a connection that cannot change the file, at the latest schema.

    A file of an earlier schema is brought up to date in memory only.
    """
    with told(path):
        if not path.is_file():
            raise LogbookError(f"{path}: there is no such file; check the name and the folder.")
        _require_sqlite(path)
        # Not "ro": what an interrupted writer left half done must be rolled back first.
        connection = _connect(path, "rw")
        try:
            version = _checked_version(connection, path)
            if version < latest_version():
                connection = _copy_in_memory(connection)
                migrate(connection, version)
            connection.execute("PRAGMA query_only = ON")
        except BaseException:
            connection.close()
            raise
        return connection


def lock_writing(path: Path) -> sqlite3.Connection:
    """Return a held lock on writing, let go by `close()` or by any end of the process.

    A file beside the logbook carries it, locked by SQLite's own means, which are the same on
    every system. The file stays: removing it could let two writers in.
    """
    with told(path):
        path.parent.mkdir(parents=True, exist_ok=True)
        beside = path.with_name(f"{path.name}.lock")
        lock = sqlite3.connect(beside, isolation_level=None, timeout=0, check_same_thread=False)
        try:
            lock.execute("BEGIN EXCLUSIVE")
        except sqlite3.OperationalError as error:
            lock.close()
            if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY:
                raise
            raise LogbookInUse(
                f"{path} is open in another window, so it is shown here for reading only. "
                "Close the other window to write here."
            ) from None
        return lock


def _connect(path: Path, mode: str) -> sqlite3.Connection:
    uri = f"{path.absolute().as_uri()}?mode={mode}"
    connection = sqlite3.connect(
        uri, uri=True, isolation_level=None, timeout=_WAIT_S, check_same_thread=False
    )
    connection.row_factory = sqlite3.Row
    try:
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("PRAGMA synchronous = FULL")
    except BaseException:  # a damaged file may refuse here already
        connection.close()
        raise
    return connection


def _require_sqlite(path: Path) -> None:
    with path.open("rb") as file:
        if file.read(len(SQLITE_HEADER)) != SQLITE_HEADER:
            raise LogbookError(f"{path} is not a logbook and was left as it is; name another file.")


def _checked_version(connection: sqlite3.Connection, path: Path) -> int:
    """Return the file's schema number, 0 for an empty file, after checking that it is ours."""
    version = int(connection.execute("PRAGMA user_version").fetchone()[0])
    owner = connection.execute("PRAGMA application_id").fetchone()[0]
    tables = connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()[0]
    if (tables or version) and owner != APPLICATION_ID:
        raise LogbookError(f"{path} is not a logbook and was left as it is; name another file.")
    if version > latest_version():
        raise LogbookNewer(
            f"{path} was written by a later version of Fullshell and was left as it is; "
            "open it with that version."
        )
    if not _is_whole(connection):
        raise damaged(path)
    return version


def _is_whole(connection: sqlite3.Connection) -> bool:
    return bool(connection.execute("PRAGMA quick_check(1)").fetchone()[0] == "ok")


def _back_up(connection: sqlite3.Connection, path: Path, version: int) -> None:
    """Copy the file beside itself and make sure that the copy opens and is whole."""
    number = 1
    while (copy := _backup_name(path, version, number)).exists():
        number += 1
    with closing(sqlite3.connect(copy)) as backup:
        connection.backup(backup)
    with closing(_connect(copy, "ro")) as backup:
        if not _is_whole(backup) or _rows(backup) != _rows(connection):
            raise LogbookError(
                f"The backup {copy} could not be verified; {path} was left as it is. "
                "Check the disk and try again."
            )


def _backup_name(path: Path, version: int, number: int) -> Path:
    again = "" if number == 1 else f"-{number}"
    return path.with_name(f"{path.stem}-schema{version}{again}{path.suffix}")


def _rows(connection: sqlite3.Connection) -> list[tuple[str, int]]:
    """Return how many rows each table holds."""
    names = connection.execute(
        "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"
    ).fetchall()
    return [
        (row["name"], connection.execute(f'SELECT count(*) FROM "{row["name"]}"').fetchone()[0])
        for row in names
    ]


def _copy_in_memory(connection: sqlite3.Connection) -> sqlite3.Connection:
    copy = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
    copy.row_factory = sqlite3.Row
    try:
        with closing(connection):
            connection.backup(copy)
    except BaseException:
        copy.close()
        raise
    return copy
