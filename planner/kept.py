"""Small files of what the user chose: read as far as they can be, written whole or not at all."""

from __future__ import annotations

import json
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from typing import Any

from planner.whole_file import replacing


def read_kept(path: Path) -> dict[str, Any]:
    """Return what a file keeps by name; nothing when it is lost or damaged."""
    try:
        kept = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    return kept if isinstance(kept, dict) else {}


def write_kept(path: Path, kept: Mapping[str, Any], most: int | None = None) -> None:
    """Keep what is given, of very much the last `most`; when there is nothing the file goes.

    A folder that cannot be written is no error: what is on screen stands.
    """
    with suppress(OSError):
        if not kept:
            path.unlink(missing_ok=True)
            return
        newest = dict(list(kept.items())[-most:]) if most else dict(kept)
        path.parent.mkdir(parents=True, exist_ok=True)
        with replacing(path) as partial:
            # Plain ASCII: the name of a file need not be text that UTF-8 can hold.
            partial.write_text(json.dumps(newest, indent=1), encoding="ascii")
