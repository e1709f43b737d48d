"""From a file on disk to TOML tables, with a clear error for everything that can go wrong."""

from __future__ import annotations

import re
import stat
import tomllib
from pathlib import Path
from typing import Any

from planner.errors import InputError, Problem
from planner.words import say

# A place file with every table filled in has a few kilobytes.
MAX_FILE_BYTES = 1_000_000

_POSITION = re.compile(r"\s*\(at (?:line (\d+), column (\d+)|end of document)\)$")


class SiteError(InputError):
    """A place that cannot be used, with every problem found in it."""


def read_tables(path: Path) -> dict[str, Any]:
    """Return the TOML tables of a place file; SiteError when it cannot be read as TOML."""
    return tables_of(_read_text(path), str(path))


def read_top(path: Path) -> dict[str, Any]:
    """Return what stands above a place file's first table, such as its name.

    Takes a tenth of the time of the whole. SiteError when that much is not TOML.
    """
    top, *_ = re.split(r"^\s*\[", _read_text(path), maxsplit=1, flags=re.MULTILINE)
    return tables_of(top, str(path))


def tables_of(text: str, source: str) -> dict[str, Any]:
    """Return the TOML tables of a text; SiteError, naming the source, when it is not TOML."""
    try:
        # Some editors put a byte-order mark in front.
        return tomllib.loads(text.removeprefix("\ufeff"))
    except RecursionError:
        problem = Problem(
            "file",
            "",
            say("tables or lists are nested too deeply"),
            say("write it as docs/place-file.md shows"),
        )
    except ValueError as error:  # TOMLDecodeError, and numbers too long for Python
        problem = _syntax_problem(text, str(error))
    raise SiteError(source, [problem])


def _read_text(path: Path) -> str:
    try:
        status = path.stat()
        if stat.S_ISDIR(status.st_mode):
            raise _unreadable(path, say("is a folder, not a file"), say("name a place file in it"))
        if not stat.S_ISREG(status.st_mode):
            raise _unreadable(
                path, say("is not an ordinary file"), say("name a place file (.toml)")
            )
        if status.st_size > MAX_FILE_BYTES:
            raise _unreadable(
                path,
                say(
                    "is larger than a place file can be ({max_file_bytes} kB)",
                    max_file_bytes=MAX_FILE_BYTES // 1000,
                ),
                say("name a place file (.toml)"),
            )
        # Some editors put a byte-order mark in front; utf-8-sig takes it away.
        return path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = path.read_bytes()[: error.start].count(b"\n") + 1
        problem = Problem(
            say("line {line}", line=line),
            "",
            say("the file is not UTF-8 text"),
            say("save it as UTF-8 in a text editor"),
        )
        raise SiteError(str(path), [problem]) from None
    except FileNotFoundError:
        raise _unreadable(
            path, say("there is no such file"), say("check the name and the folder")
        ) from None
    except (OSError, ValueError) as error:  # ValueError: a null byte in the name
        reason = getattr(error, "strerror", None) or str(error)
        raise _unreadable(
            path,
            say("cannot be read: {reason}", reason=reason),
            say("check the name and the permissions"),
        ) from None


def _unreadable(path: Path, what: str, remedy: str) -> SiteError:
    return SiteError(str(path), [Problem("file", "", what, remedy)])


def _syntax_problem(text: str, message: str) -> Problem:
    position = _POSITION.search(message)
    what = _POSITION.sub("", message)
    remedy = say(
        "correct the line; text needs quotes, numbers a decimal point, tables are headed "
        "[like-this]"
    )
    what = say("is not TOML: {what}", what=what)
    if message.startswith("Cannot"):  # as all begin that tomllib says of a second one
        what, remedy = say("gives something a second time"), say("keep one of the two")
    if position is None:
        return Problem("file", "", what, remedy)
    lines = text.splitlines()
    number = int(position[1]) if position[1] else max(len(lines), 1)
    written = lines[number - 1].strip() if number <= len(lines) else ""
    column = say(", column {position}", position=position[2]) if position[2] else say(" (the last)")
    return Problem(
        say("line {number}{column}", number=number, column=column),
        written,
        what,
        remedy,
    )
