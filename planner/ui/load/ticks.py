"""What was ticked off for each trip, in one small file; nothing is kept before the first tick."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from planner.assets import user_folder
from planner.kept import read_kept, write_kept

_TRIPS_KEPT: Final = 40


def ticks_file() -> Path:
    """Return where ticks are kept; the file need not exist."""
    return user_folder() / "ticks.json"


def read_ticks(trip: str, path: Path | None = None) -> frozenset[str]:
    """Return the keys ticked for a trip; a file that is lost or damaged has none."""
    keys = read_kept(path or ticks_file()).get(trip)
    return (
        frozenset(key for key in keys if isinstance(key, str))
        if isinstance(keys, list)
        else frozenset()
    )


def write_ticks(trip: str, keys: frozenset[str], path: Path | None = None) -> None:
    """Remember the keys ticked for a trip, whole or not at all; the oldest trips are forgotten.

    Without any tick left the file goes too. A folder that cannot be written is no error: the
    ticks on screen stand.
    """
    path = path or ticks_file()
    trips = read_kept(path)
    trips.pop(trip, None)
    if keys:
        trips[trip] = sorted(keys)
    write_kept(path, trips, _TRIPS_KEPT)
