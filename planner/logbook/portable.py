"""The whole log as one file to keep or to carry to another machine, and nothing left out."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from planner.logbook.backups import is_whole
from planner.logbook.errors import LogbookError
from planner.logbook.files import open_reader, told
from planner.whole_file import whole_file
from planner.words import say


def write_portable(logbook: Path, path: Path) -> None:
    """Write a copy of a logbook that may be open: trips, hauls, crabs, traps, bin and undo.

    The copy is looked through before it takes its name. LogbookError when it cannot be made.
    """
    if path.absolute() == logbook.absolute():
        raise LogbookError(
            say("{path} is the log itself; choose another name for the copy.", path=path)
        )
    with whole_file(path, LogbookError) as partial:
        partial.unlink(missing_ok=True)
        with closing(open_reader(logbook)) as source, told(partial):
            with closing(sqlite3.connect(partial)) as copy:
                source.backup(copy)
            with closing(open_reader(partial)) as copy:
                if not is_whole(copy, thorough=True):
                    raise LogbookError(
                        say("The copy {path} is not whole; check the disk.", path=path)
                    )
