"""Traps that the user has put elsewhere than proposed, kept for each place's next trip.

One small file; nothing is kept before the first move. A move is for one trip: once a trip has
been logged since, what was kept counts no more.
"""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from planner.assets import user_folder
from planner.kept import read_kept, write_kept
from planner.logbook import Log


def moves_file() -> Path:
    """Return where moves are kept; the file need not exist."""
    return user_folder() / "moved-traps.json"


def trips_so_far(place: str, log: Log | None) -> int:
    """Return how many trips to a place the log holds: the moves after so many are for the next."""
    return 0 if log is None else len({haul.trip for haul in log.hauls if haul.place == place})


def read_moves(place: str, log: Log | None) -> dict[str, str]:
    """Return the spots of the traps moved for the next trip; a damaged file has none."""
    kept = read_kept(moves_file()).get(place)
    if not isinstance(kept, dict) or kept.get("after_trips") != trips_so_far(place, log):
        return {}
    spots = kept.get("spots")
    if not isinstance(spots, dict):
        return {}
    return {trap: spot for trap, spot in spots.items() if isinstance(spot, str)}


def write_moves(place: str, log: Log | None, moves: Mapping[str, str]) -> None:
    """Keep the moves for the next trip, whole or not at all; none takes the place out.

    A folder that cannot be written is no error: the layout on screen stands.
    """
    path = moves_file()
    kept = read_kept(path)
    kept.pop(place, None)
    if moves:
        kept[place] = {"after_trips": trips_so_far(place, log), "spots": dict(moves)}
    write_kept(path, kept)
