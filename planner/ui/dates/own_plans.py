"""The set and haul that the user drew by hand for each place, in one small file."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from planner.assets import user_folder
from planner.kept import read_kept, write_kept

Times = tuple[datetime, datetime]
_PLACES_KEPT: Final = 40


def own_plans_file() -> Path:
    """Return where they are kept; the file need not exist."""
    return user_folder() / "own-plans.json"


def read_own(place: str, path: Path | None = None) -> Times | None:
    """Return set and haul (aware, UTC) drawn for a place; None without, or when it is damaged."""
    written = read_kept(path or own_plans_file()).get(place)
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
    places = read_kept(path)
    if places.pop(place, None) is None and times is None:
        return
    if times is not None:
        places[place] = [at.astimezone(UTC).isoformat() for at in times]
    write_kept(path, places, _PLACES_KEPT)
