"""What an edit does to files: read with its draft, saved whole, put back; no Qt here."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from planner.sites.editing import Wanted, changed_fields, edited
from planner.sites.reading import tables_of
from planner.sites.saving import draft_of, put_back, read_text, save_place
from planner.ui.places.edit_history import Step
from planner.ui.places.observed_rows import carry_over
from planner.words import say


@dataclass(frozen=True)
class PlaceText:
    """A place file as it was read, with the draft that was kept of it."""

    path: Path
    text: str
    draft: str | None


def read_to_edit(path: Path) -> PlaceText:
    """Return a place file's text; SiteError when it cannot be edited as TOML."""
    text = read_text(path)
    tables_of(text, str(path))
    draft = draft_of(path)
    return PlaceText(path, text, draft if draft != text else None)


def save_edit(path: Path, text: str, wanted: Wanted) -> Step:
    """Save a text with the wanted values, whole or not at all; return the step for undo."""
    made = edited(text, wanted)
    save_place(path, made, text)
    _follow_name(text, made)
    return Step(change_name(text, made), text, made)


def restore(path: Path, text: str, over: str) -> None:
    """Put a text back over the one that is there now."""
    put_back(path, text, over)
    _follow_name(over, text)


def change_name(before: str, after: str) -> str:
    """Return what differs between two texts of a place file, as undo names it."""
    return ", ".join(changed_fields(before, after)) or say("layout")


def _follow_name(before: str, after: str) -> None:
    """Let the waters seen at a place follow a change of its name."""
    one, other = (tables_of(text, "place file").get("name") for text in (before, after))
    if isinstance(one, str) and isinstance(other, str):
        carry_over(one.strip(), other.strip())
