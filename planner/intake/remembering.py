"""How tables of one make were understood last time, in a small file that may be lost."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import time
from pathlib import Path
from typing import Any, Final

from planner.assets import user_folder
from planner.intake.mapping import Mapping, signature
from planner.intake.meanings import MEANINGS
from planner.kept import read_kept, write_kept

_KEPT: Final = 50  # makes of table; the oldest are forgotten


def remembered_file() -> Path:
    """Return where it is kept; the file need not exist."""
    return user_folder() / "tables.json"


def recall(heading: Sequence[str]) -> Mapping | None:
    """Return how a table with these columns was understood, None when none was."""
    kept = read_kept(remembered_file()).get(signature(heading))
    return None if kept is None else _mapping(kept, heading)


def remember(heading: Sequence[str], mapping: Mapping) -> None:
    """Keep how a table was understood; a folder that cannot be written is no error."""
    kept = read_kept(remembered_file())
    kept.pop(signature(heading), None)
    kept[signature(heading)] = {
        "columns": dict(mapping.columns),
        "order": mapping.order,
        "place": mapping.place,
        "haul_clock": None if mapping.haul_clock is None else mapping.haul_clock.isoformat(),
        "set_clock": None if mapping.set_clock is None else mapping.set_clock.isoformat(),
        "depth": mapping.depth,
        "water": mapping.water,
        "encoding": mapping.encoding,
    }
    write_kept(remembered_file(), kept, _KEPT)


def _mapping(kept: Any, heading: Sequence[str]) -> Mapping | None:
    """Return a mapping from what was kept; whatever cannot be used falls back."""
    if not isinstance(kept, dict) or not isinstance(kept.get("columns"), dict):
        return None
    columns = {
        name: meaning
        for name, meaning in kept["columns"].items()
        if name in heading and meaning in MEANINGS
    }
    place = kept.get("place")
    return Mapping(
        columns,
        order=_one_of(kept.get("order"), ("dmy", "mdy")),
        place=place if isinstance(place, str) else "",
        haul_clock=_time(kept.get("haul_clock")),
        set_clock=_time(kept.get("set_clock")),
        depth=_one_of(kept.get("depth"), ("m", "ft")) or "m",
        water=_one_of(kept.get("water"), ("C", "F")) or "C",
        encoding=_one_of(kept.get("encoding"), ("cp1252", "mac_roman", "cp850")),
    )


def _one_of(value: Any, choices: tuple[str, ...]) -> Any:
    return value if value in choices else None


def _time(value: Any) -> time | None:
    try:
        return time.fromisoformat(value)
    except (TypeError, ValueError):
        return None
