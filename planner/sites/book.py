"""The place book: the user's own places, and the sample places that ship with the program."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path
from typing import Final

from planner.assets import sample_sites, user_folder
from planner.errors import Problem
from planner.sites.reading import SiteError, read_top
from planner.words import say

# How the name of a place file ends; the second is the program's own, for a double click.
PLACE_ENDINGS: Final = (".toml", ".fullshell")


@dataclass(frozen=True)
class PlaceEntry:
    """A place file of the book; its name is the file's stem when the file cannot be read.

    invented: whether the file says that its place was made up.
    """

    name: str
    path: Path
    shipped: bool
    invented: bool = False


def user_places() -> Path:
    """Return the folder of the user's own place files; it need not exist."""
    return user_folder() / "places"


def list_places() -> list[PlaceEntry]:
    """Return the places of the book: the user's own first, then the samples, by name."""
    return [
        *_entries(user_places(), shipped=False),
        *_entries(sample_sites(), shipped=True),
    ]


def find_place(name_or_path: str | Path) -> Path:
    """Return the file of a place given by its path, its name or the file's stem.

    SiteError, with the nearest names, when the book has no such place.
    """
    written = str(name_or_path).strip()
    if _is_path(written):
        return Path(written)
    entries = list_places()
    wanted = written.casefold()
    for entry in entries:
        if wanted in (entry.name.casefold(), entry.path.stem.casefold()):
            return entry.path
    names = {word.casefold(): entry.name for entry in entries for word in _words(entry)}
    near = dict.fromkeys(names[word] for word in get_close_matches(wanted[:80], names, n=3))
    hint = say("did you mean {near}? ", near=say(" or ").join(near)) if near else ""
    raise SiteError(
        "place",
        [
            Problem(
                "name",
                f'"{written}"',
                say("there is no such file and no such place in the book"),
                say("{hint}give a place file (.toml) or one of: ", hint=hint)
                + ", ".join(entry.path.stem for entry in entries),
            )
        ],
    )


def find_reference(name_or_path: str, folder: Path) -> Path:
    """Return the file of a reference place: beside the file that names it, else by the book."""
    beside = folder / name_or_path
    try:
        if beside.is_file():
            return beside
    except (OSError, ValueError):
        pass
    if Path(name_or_path).suffix == ".toml":
        # Shipped samples can be referred to by file name from anywhere.
        shipped = sample_sites() / Path(name_or_path).name
        return shipped if shipped.is_file() else beside
    return find_place(name_or_path)


def names_a_file(written: str) -> bool:
    """Tell whether what was written ends as place files do, in large or small letters."""
    return written.casefold().endswith(PLACE_ENDINGS)


def _is_path(written: str) -> bool:
    """Tell whether what was written means a file rather than a name of the book."""
    if not written:
        return False
    try:
        return Path(written).is_file() or names_a_file(written) or Path(written).parent != Path()
    except (OSError, ValueError):  # too long, or not a possible file name
        return False


def _entries(folder: Path, *, shipped: bool) -> list[PlaceEntry]:
    files = [path for ending in PLACE_ENDINGS for path in folder.glob(f"*{ending}")]
    entries = [_entry(path, shipped=shipped) for path in files]
    return sorted(entries, key=lambda entry: (entry.name.casefold(), entry.path.name))


def _entry(path: Path, *, shipped: bool) -> PlaceEntry:
    try:
        top = read_top(path)
    except SiteError:
        return PlaceEntry(path.stem, path, shipped)
    name = top.get("name")
    shown = name.strip() if isinstance(name, str) and name.strip() else path.stem
    return PlaceEntry(shown, path, shipped, invented=top.get("invented") is True)


def _words(entry: PlaceEntry) -> tuple[str, str]:
    return entry.name, entry.path.stem
