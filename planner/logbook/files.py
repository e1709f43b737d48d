"""Logbook files on disk: opening, one writer, schema steps behind a verified backup.

Errors of SQLite become sentences here; nothing in this module writes to a file that is
damaged, newer, or not a logbook.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from planner.logbook.backups import is_whole, take_backup
from planner.logbook.errors import LogbookDamaged, LogbookError, LogbookInUse, LogbookNewer
from planner.logbook.migrations import APPLICATION_ID, latest_version, migrate
from planner.words import say

SQLITE_HEADER: Final = b"SQLite format 3\0"
# How long to wait for another program (a backup, a virus scanner) to let go of the file.
_WAIT_S: Final = 2.0

_SENTENCES: Final = {
    sqlite3.SQLITE_BUSY: say("is locked by another program; close that and try again"),
    sqlite3.SQLITE_LOCKED: say("is locked by another program; close that and try again"),
    sqlite3.SQLITE_FULL: say("cannot be written because the disk is full; make room and try again"),
    sqlite3.SQLITE_READONLY: say(
        "cannot be written; check the permissions of the file and its folder"
    ),
    sqlite3.SQLITE_PERM: say("cannot be opened; check the permissions of the file and its folder"),
    sqlite3.SQLITE_CANTOPEN: say(
        "cannot be opened; check that its folder exists and can be written"
    ),
    sqlite3.SQLITE_IOERR: say("cannot be reached; check the disk or network drive and try again"),
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
        raise _refusal(path, code) from error
    except UnicodeDecodeError as error:  # a message about text that is no UTF-8 any more
        raise damaged(path) from error
    except OSError as error:
        reason = error.strerror or str(error)
        raise LogbookError(
            say(
                "{path} cannot be opened ({reason}). Nothing was changed.", path=path, reason=reason
            )
        ) from error


def _refusal(path: Path, code: int) -> LogbookError:
    return LogbookError(
        say("{path} {sentences}. Nothing was changed.", path=path, sentences=_SENTENCES[code])
    )


def damaged(path: Path) -> LogbookDamaged:
    """Return the error of a file that is not whole."""
    return LogbookDamaged(
        say(
            "{path} is damaged and was left exactly as it is. Keep a copy of it, and open "
            "a backup or import an exported haul table.",
            path=path,
        )
    )


def open_writer(path: Path, thorough: bool = False) -> sqlite3.Connection:
    """Return the one connection that may write, on a new file or one brought up to date.

    thorough: check the whole file, as after an unclean stop. LogbookInUse while another has
    it; the other LogbookErrors for an unusable file.
    """
    with told(path):
        path.parent.mkdir(parents=True, exist_ok=True)
        is_new = not path.exists() or path.stat().st_size == 0
        if not is_new:
            _require_sqlite(path)
        connection = _connect(path, "rwc" if is_new else "rw")
        try:
            version = _checked_version(connection, path, thorough)
            if 0 < version < latest_version():
                now = datetime.now(UTC)
                take_backup(
                    connection,
                    path,
                    now,
                    say("before schema {latest_version}", latest_version=latest_version()),
                )
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
            raise LogbookError(
                say("{path}: there is no such file; check the name and the folder.", path=path)
            )
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

    LogbookError for a file that is write-protected, LogbookInUse while another holds the lock.

    A file beside the logbook carries it, locked by SQLite's own means, which are the same on
    every system. The file stays: removing it could let two writers in.
    """
    with told(path):
        path.parent.mkdir(parents=True, exist_ok=True)
        if is_there(path) and not os.access(path, os.W_OK):
            raise _refusal(path, sqlite3.SQLITE_READONLY)
        beside = path.with_name(f"{path.name}.lock")
        lock = sqlite3.connect(beside, isolation_level=None, timeout=0, check_same_thread=False)
        try:
            lock.execute("BEGIN EXCLUSIVE")
        except sqlite3.OperationalError as error:
            lock.close()
            if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY:
                raise
            raise LogbookInUse(
                say(
                    "{path} is open in another window, so it is shown here for reading only. Close "
                    "the other window to write here.",
                    path=path,
                )
            ) from None
        return lock


def is_there(path: Path) -> bool:
    """Tell whether there is a file that can be reached."""
    try:
        return path.is_file()
    except OSError:  # a folder that may not be entered
        return False


def was_left_open(path: Path) -> bool:
    """Tell whether the last window that wrote was stopped before it could close the file."""
    return _open_mark(path).exists()


def mark_open(path: Path) -> None:
    """Note beside the file that a window writes to it; OSError when that cannot be."""
    _open_mark(path).touch()


def mark_closed(path: Path) -> None:
    """Take the note away again; a mark that stays costs a longer check and no more."""
    with suppress(OSError):
        _open_mark(path).unlink(missing_ok=True)


def _open_mark(path: Path) -> Path:
    return path.with_name(f"{path.name}.open")


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
            raise LogbookError(
                say("{path} is not a logbook and was left as it is; name another file.", path=path)
            )


def _checked_version(connection: sqlite3.Connection, path: Path, thorough: bool = False) -> int:
    """Return the file's schema number, 0 for an empty file, after checking that it is ours."""
    version = int(connection.execute("PRAGMA user_version").fetchone()[0])
    owner = connection.execute("PRAGMA application_id").fetchone()[0]
    tables = connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()[0]
    if (tables or version) and owner != APPLICATION_ID:
        raise LogbookError(
            say("{path} is not a logbook and was left as it is; name another file.", path=path)
        )
    if version > latest_version():
        raise LogbookNewer(
            say(
                "{path} was written by a later version of Fullshell and was left as it is; "
                "open it with that version.",
                path=path,
            )
        )
    if not is_whole(connection, thorough):
        raise damaged(path)
    return version


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
