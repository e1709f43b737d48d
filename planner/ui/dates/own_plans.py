"""The set and haul that the user drew by hand for each place, in one small file."""

from __future__ import annotations

import json
import os
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from planner.assets import user_folder

Times = tuple[datetime, datetime]
_PLACES_KEPT: Final = 40


def own_plans_file() -> Path:
    """Return where they are kept; the file need not exist."""
    return user_folder() / "own-plans.json"


def read_own(place: str, path: Path | None = None) -> Times | None:
    """Return set and haul (aware, UTC) drawn for a place; None without, or when it is damaged."""
    written = _read(path or own_plans_file()).get(place)
    try:
        set_at, haul_at = (datetime.fromisoformat(text).astimezone(UTC) for text in written)  # type: ignore[union-attr]
    except (TypeError, ValueError, OverflowError):
        return None
    return set_at, haul_at


def write_own(place: str, times: Times | None, path: Path | None = None) -> None:
    """Remember set and haul for a place, or forget them; whole or not at all.

    A folder that cannot be written is no error: the plan on screen stands.
    """
    path = path or own_plans_file()
    places = _read(path)
    if places.pop(place, None) is None and times is None:
        return
    if times is not None:
        places[place] = [at.astimezone(UTC).isoformat() for at in times]
    kept = dict(list(places.items())[-_PLACES_KEPT:])
    part = path.with_suffix(".part")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        part.write_text(json.dumps(kept, indent=1, ensure_ascii=False), encoding="utf-8")
        os.replace(part, path)
    except OSError:
        return


def _read(path: Path) -> dict[str, list[str]]:
    try:
        written = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return written if isinstance(written, dict) else {}
