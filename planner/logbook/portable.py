"""The whole log as one file to keep or to carry to another machine, and nothing left out."""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from pathlib import Path

from planner.logbook.backups import is_whole
from planner.logbook.errors import LogbookError
from planner.logbook.files import open_reader, told
from planner.words import say


def write_portable(logbook: Path, path: Path) -> None:
    """Write a copy of a logbook that may be open: trips, hauls, crabs, traps, bin and undo.

    The copy is looked through before it takes its name. LogbookError when it cannot be made.
    """
    if path.absolute() == logbook.absolute():
        raise LogbookError(
            say("{path} is the log itself; choose another name for the copy.", path=path)
        )
    partial = path.with_name(f"{path.name}.partial")
    try:
        partial.unlink(missing_ok=True)
        with closing(open_reader(logbook)) as source, told(partial):
            with closing(sqlite3.connect(partial)) as copy:
                source.backup(copy)
            with closing(open_reader(partial)) as copy:
                if not is_whole(copy, thorough=True):
                    raise LogbookError(
                        say("The copy {path} is not whole; check the disk.", path=path)
                    )
        os.replace(partial, path)
    except OSError as error:
        raise LogbookError(
            say(
                "{path} cannot be written ({strerror}); choose another folder or make room.",
                path=path,
                strerror=error.strerror,
            )
        ) from None
    finally:
        partial.unlink(missing_ok=True)
