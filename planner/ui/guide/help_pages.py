"""The pages of the guide: their contents, the page of each view, and where a word stands.

A page goes by its name, such as "load-up.md", in every language. English pages are in `docs`, those
of another language in a folder of its code there; a page that it lacks is shown in English.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Final

from planner.assets import guide
from planner.ui.state import ViewName
from planner.words import spoken

CONTENTS: Final = "guide.md"
QUESTIONS: Final = "questions.md"
# The page of each place of work.
PAGES: Final[dict[ViewName, str]] = {
    "dates": "choose-dates.md",
    "load": "load-up.md",
    "hauls": "log-hauls.md",
    "evidence": "weigh-evidence.md",
    "places": "place-book.md",
}
_HEAD: Final = re.compile(r"#{1,6} +(.+)")
_LINK: Final = re.compile(r"\[([^\]]+)\]\(([^)\s]+)\)")


@dataclass(frozen=True)
class Entry:
    """A line of the contents: what it says and the page it leads to, "page.md#heading"."""

    text: str
    page: str


@dataclass(frozen=True)
class Group:
    """A heading of the contents and the lines under it."""

    text: str
    entries: tuple[Entry, ...]


def path_of(page: str) -> Path:
    """Return where a page is: in the language in use, or in English where that has none."""
    own = guide(spoken(), page)
    return own if own.is_file() else guide(page)


def contents() -> tuple[Group, ...]:
    """Return the groups of the contents, read from the first page of the guide."""
    groups: list[tuple[str, list[Entry]]] = []
    for line in _text(path_of(CONTENTS)).splitlines():
        if line.startswith("## "):
            groups.append((line[3:].strip(), []))
        elif groups and line.startswith("- ") and (found := _LINK.search(line)):
            # By its name alone: a page in English lies a folder higher than the others.
            groups[-1][1].append(Entry(found[1], found[2].rpartition("/")[2]))
    return tuple(Group(text, tuple(entries)) for text, entries in groups if entries)


def anchor(heading: str) -> str:
    """Return the name by which links reach a heading: lower case, words joined by dashes.

    As web pages make them from Markdown, so that one link works there and here.
    """
    plain = re.sub(r"[`*_]|\[([^\]]*)\]\([^)]*\)", r"\1", heading.strip().lower())
    return re.sub(r"[^\w\- ]", "", plain).replace(" ", "-")


def headings(path: Path) -> list[str]:
    """Return the headings of a page, in order; none where the page is not there."""
    kept, in_code = [], False
    for line in _text(path).splitlines():
        in_code ^= line.startswith("```")
        if not in_code and (found := _HEAD.fullmatch(line)):
            kept.append(found[1])
    return kept


def pages() -> list[str]:
    """Return every page of the contents once, in their order, the contents first."""
    names = [entry.page.partition("#")[0] for group in contents() for entry in group.entries]
    return list(dict.fromkeys((CONTENTS, *names)))


def pages_with(words: str, after: str, *, backwards: bool = False) -> list[str]:
    """Return the other pages that hold some words, beginning after one page and going round."""
    order = pages()
    if backwards:
        order.reverse()
    at = order.index(after) + 1 if after in order else 0
    wanted = words.casefold()
    return [
        page
        for page in (*order[at:], *order[:at])
        if page != after and wanted in _text(path_of(page)).casefold()
    ]


@cache
def _text(path: Path) -> str:
    try:
        return path.read_text(encoding="utf-8")
    except OSError:
        return ""
