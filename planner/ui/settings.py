"""What the window remembers between starts, in one small file that may be lost or damaged."""

from __future__ import annotations

import json
import os
from dataclasses import asdict, dataclass, fields
from pathlib import Path
from typing import Any

from planner.assets import user_folder


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
    path = path or settings_file()
    try:
        written = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return Settings()
    if not isinstance(written, dict):
        return Settings()
    return Settings(**{f.name: written[f.name] for f in fields(Settings) if _fits(f.name, written)})


def write_settings(settings: Settings, path: Path | None = None) -> None:
    """Save the settings whole or not at all; a folder that cannot be written is no error."""
    path = path or settings_file()
    part = path.with_suffix(".part")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        part.write_text(json.dumps(asdict(settings), indent=2), encoding="utf-8")
        os.replace(part, path)
    except OSError:
        return


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
