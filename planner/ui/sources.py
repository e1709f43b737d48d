"""Where a place and its log come from, and reading them; no Qt here."""

from __future__ import annotations

import gc
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from planner.assets import demo_log, demo_place, user_folder
from planner.words import say

if TYPE_CHECKING:
    from planner.logbook import Log, Logbook
    from planner.sites import Site


_LONG = 10_000  # hauls


@dataclass(frozen=True)
class Source:
    """Where the place and the log come from.

    place: file or name of a place. log: a haul table or logbook to show without changing it;
    None for the user's own logbook (the demo's own for the demo place), or, unless `keep`,
    for no log at all.
    """

    place: str
    log: Path | None = None
    demo: bool = False
    keep: bool = True


def demo_source() -> Source:
    """Return the invented demo place with its invented log."""
    return Source(str(demo_place()), demo=True)


def source_of(place: str) -> Source:
    """Return a place with the log that belongs to it: the demo's own, or the user's."""
    demo = demo_source()
    return demo if place == demo.place else Source(place)


def place_filter() -> str:
    """Return what a file dialog offers as place files."""
    from planner.sites import PLACE_ENDINGS

    return say("Places ({listed})", listed=" ".join(f"*{ending}" for ending in PLACE_ENDINGS))


def read_place(name: str) -> Site:
    """Return a place by file or name; SiteError with every problem."""
    from planner.sites import find_place, load_site

    return load_site(find_place(name))


def open_log(source: Source, opened: Logbook | None) -> tuple[Logbook | None, Log]:
    """Return the log of a source, with the book to change it in unless it is for reading only.

    opened: the book that is open, kept when it is the same file. The demo's copy of its log is
    made on the first asking. Raises PlannerError when a log cannot be read.
    """
    from planner.logbook import Log, LogbookError, book_zone, default_logbook, read_log

    if source.log is not None:
        return None, read_log(source.log, book_zone)
    if not source.keep:
        return None, Log(())
    # The demo's entries stay apart from the user's own.
    path = user_folder() / "demo.logbook" if source.demo else default_logbook()
    # One for reading only is opened again: the other window may be closed by now.
    if opened is not None and opened.path == path and not opened.read_only:
        return opened, read_whole(opened)
    fresh = source.demo and not path.exists()
    try:
        book = _open_whole(path)
    except LogbookError:
        if not source.demo:
            raise
        return None, read_log(demo_log(), book_zone)  # a look at the demo needs no folder
    if fresh:
        book.import_table(demo_log(), book_zone)
        book.forget_changes()  # undo takes back what the user does, not the demo itself
        book.remark = ""  # an older copy's backups are no news
    log = read_whole(book)
    if len(log.hauls) > _LONG:
        # Or every search for cycles would walk through the log, which holds none, and the
        # window would stand still for as long.
        gc.freeze()
    return book, log


def read_whole(book: Logbook) -> Log:
    """Return the log of a book with what views ask first worked out: a long log takes a while."""
    log = book.read()
    log.outcomes()
    return log


def read_hashed(book: Logbook) -> Log:
    """Return the log of a book with its hash worked out too, where nobody waits for it."""
    log = read_whole(book)
    _ = log.fingerprint
    return log


def _open_whole(path: Path) -> Logbook:
    """Open a logbook for writing; of a damaged one, what can be read, with a remark.

    LogbookError where its folder takes no log.
    """
    from planner.logbook import Logbook, LogbookDamaged, rescue

    try:
        book = Logbook.open(path)
        try:
            book.read()  # a value that no log ever held is met only here
        except LogbookDamaged:
            book.close()
            raise
        return book
    except LogbookDamaged:
        found = rescue(path)
        book = Logbook.open(path)
        book.remark = found.sentence
        return book
