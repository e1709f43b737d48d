"""Place files on disk: read and saved whole, and drafts of edits that are not saved yet."""

from __future__ import annotations

import hashlib
import os
from contextlib import suppress
from pathlib import Path

from planner.assets import user_folder
from planner.errors import Problem
from planner.sites.editing import site_of_text
from planner.sites.reading import SiteError
from planner.whole_file import replacing
from planner.words import say


def read_text(path: Path) -> str:
    """Return the text of a place file, every line end as it is; SiteError when unreadable."""
    try:
        return path.read_bytes().decode("utf-8")
    except UnicodeDecodeError:
        what, remedy = say("is not UTF-8 text"), say("save it as UTF-8 in a text editor")
    except OSError as error:
        what = say("cannot be read: {value}", value=error.strerror or error)
        remedy = say("check the name and the permissions")
    raise SiteError(str(path), [Problem("file", path.name, what, remedy)])


def save_place(path: Path, text: str, over: str) -> None:
    """Save a text that describes a possible place, whole or not at all, and drop its draft.

    over: the text that the file is known to hold. SiteError, with nothing written, when the
    text has problems, the file has been changed meanwhile, or the folder refuses.
    """
    site_of_text(text, path)
    put_back(path, text, over)


def put_back(path: Path, text: str, over: str) -> None:
    """Write a text as it once was, without asking whether it describes a possible place."""
    if read_text(path) != over:
        what = say("has been changed by another program since it was read")
        remedy = say("read it again first; your edit is kept as a draft")
        raise SiteError(str(path), [Problem("file", path.name, what, remedy)])
    write_whole(path, text)
    drop_draft(path)


def draft_file(path: Path) -> Path:
    """Return where the draft of a place file is kept; it need not exist."""
    # Two files of one name in different folders are two places.
    mark = hashlib.sha256(os.path.abspath(path).encode("utf-8", "replace")).hexdigest()[:8]
    return user_folder() / "drafts" / f"{path.stem}-{mark}.toml"


def keep_draft(path: Path, text: str) -> None:
    """Keep an edit of a place file that is not saved yet; SiteError when it cannot be kept."""
    write_whole(draft_file(path), text)


def draft_of(path: Path) -> str | None:
    """Return the edit that was kept of a place file, None when there is none."""
    try:
        return read_text(draft_file(path))
    except SiteError:
        return None


def drop_draft(path: Path) -> None:
    """Forget the draft of a place file; one that cannot be deleted is offered once more."""
    with suppress(OSError):
        draft_file(path).unlink()


def write_whole(path: Path, text: str) -> None:
    """Write a file, whole or not at all; SiteError where the folder or the disk refuses."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with replacing(path) as partial, partial.open("wb") as file:
            file.write(text.encode("utf-8"))
            file.flush()
            os.fsync(file.fileno())  # else a loss of power could leave an empty place
    except OSError as error:
        what = say("cannot be written: {value}", value=error.strerror or error)
        remedy = say("check the folder's permissions and the room on the disk")
        problem = Problem("file", path.name, what, remedy)
        raise SiteError(str(path), [problem]) from None
