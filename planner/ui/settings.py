"""What the window remembers between starts, in one small file that may be lost or damaged."""

from __future__ import annotations

import json
import os
from dataclasses import asdict, dataclass, fields
from pathlib import Path
from typing import Any

from planner.assets import user_folder
from planner.kept import write_kept
from planner.words import say


@dataclass(frozen=True)
class Settings:
    """The user's choices; every one has a default, so a missing file is a first start.

    place: name or file of the place last open, "" for the demo. demo: whether the invented
    demo is still on show.
    """

    place: str = ""
    demo: bool = True
    view: str = "dates"
    theme: str = "system"
    language: str = ""
    length: str = ""
    temperature: str = ""
    hours12: bool | None = None
    font_pt: int = 10
    care_points: int = 10


def settings_file() -> Path:
    """Return where the settings are kept; the file need not exist."""
    return user_folder() / "settings.json"


def read_settings(path: Path | None = None) -> Settings:
    """Return the saved settings; whatever cannot be used falls back to its default."""
    return open_settings(path)[0]


def open_settings(path: Path | None = None, *, set_aside: bool = False) -> tuple[Settings, str]:
    """Return the saved settings, and what to tell the user about them, "" when all is well.

    set_aside: move a damaged file out of the way, so that it is told once and can be looked at.
    """
    path = path or settings_file()
    try:
        written = json.loads(path.read_text(encoding="utf-8"))
        if not isinstance(written, dict):
            raise ValueError("no settings in it")
    except (FileNotFoundError, NotADirectoryError):
        return Settings(), ""
    except OSError as error:
        return Settings(), (
            say(
                "Your settings could not be read ({strerror}), so Fullshell starts with "
                "its own. Allow reading of {path}, or move it away.",
                strerror=error.strerror,
                path=path,
            )
        )
    except (ValueError, RecursionError):
        return Settings(), _damaged(path, set_aside)
    usable = {f.name: written[f.name] for f in fields(Settings) if _fits(f.name, written)}
    bad = [f.name for f in fields(Settings) if f.name in written and f.name not in usable]
    return Settings(**usable), _bad_values(bad)


def _damaged(path: Path, set_aside: bool) -> str:
    said = say("The file of your settings is damaged, so Fullshell starts with its own settings. ")
    aside = path.with_name(f"{path.stem}-damaged{path.suffix}")
    if set_aside:
        try:
            os.replace(path, aside)
        except OSError:
            return say("{said}Delete {path} when this comes again.", said=said, path=path)
        said += say("The damaged file was set aside as {name}. ", name=aside.name)
    return say(
        "{said}Choose colours and units anew in the View menu; your places and log are safe.",
        said=said,
    )


def _bad_values(names: list[str]) -> str:
    if not names:
        return ""
    return say(
        "Of your settings {names} could not be used and went back to what "
        "Fullshell begins with. Choose anew in the View menu where you want it "
        "otherwise.",
        names=", ".join(names),
    )


def write_settings(settings: Settings, path: Path | None = None) -> None:
    """Save the settings whole or not at all; a folder that cannot be written is no error.

    A file that could not be read stays: once it can be, the user's choices are there again.
    """
    path = path or settings_file()
    if os.access(path, os.R_OK) or not os.path.exists(path):
        write_kept(path, asdict(settings))


_CHOICES: dict[str, tuple[Any, ...]] = {
    "view": ("dates", "load", "hauls", "evidence", "places"),
    "theme": ("system", "light", "dark"),
    "length": ("", "m", "ft"),
    "temperature": ("", "C", "F"),
    "font_pt": tuple(range(8, 17)),
    "care_points": tuple(range(1, 51)),
}


def _fits(name: str, written: dict[str, Any]) -> bool:
    if name not in written:
        return False
    value = written[name]
    if name == "hours12":
        return value is None or isinstance(value, bool)
    # By type first: 10.0 and true equal whole numbers here, and Qt would refuse them later.
    return type(value) is type(getattr(Settings(), name)) and value in _CHOICES.get(name, (value,))
