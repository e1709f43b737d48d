"""What was ticked off for each trip, in one small file; nothing is kept before the first tick."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Final

from planner.assets import user_folder

_TRIPS_KEPT: Final = 40


def ticks_file() -> Path:
    """Return where ticks are kept; the file need not exist."""
    return user_folder() / "ticks.json"


def read_ticks(trip: str, path: Path | None = None) -> frozenset[str]:
    """Return the keys ticked for a trip; a file that is lost or damaged has none."""
    return frozenset(_read(path or ticks_file()).get(trip, ()))


def write_ticks(trip: str, keys: frozenset[str], path: Path | None = None) -> None:
    """Remember the keys ticked for a trip, whole or not at all; the oldest trips are forgotten.

    Without any tick left the file goes too. A folder that cannot be written is no error: the
    ticks on screen stand.
    """
    path = path or ticks_file()
    trips = _read(path)
    trips.pop(trip, None)
    if keys:
        trips[trip] = sorted(keys)
    kept = dict(list(trips.items())[-_TRIPS_KEPT:])
    part = path.with_suffix(".part")
    try:
        if not kept:
            path.unlink(missing_ok=True)
            return
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
    if not isinstance(written, dict):
        return {}
    return {
        trip: [key for key in keys if isinstance(key, str)]
        for trip, keys in written.items()
        if isinstance(keys, list)
    }
