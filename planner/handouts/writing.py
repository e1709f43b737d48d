"""Files that leave the program, written whole or not at all."""

from __future__ import annotations

from pathlib import Path

from planner.errors import PlannerError
from planner.words import say


def write_whole(path: Path, content: bytes) -> None:
    """Write a file whole or not at all; PlannerError when it cannot be."""
    partial = path.with_name(f"{path.name}.partial")
    try:
        partial.write_bytes(content)
        partial.replace(path)
    except OSError as error:
        partial.unlink(missing_ok=True)
        raise PlannerError(
            say(
                "{path} cannot be written ({strerror}); choose another folder or make room.",
                path=path,
                strerror=error.strerror,
            )
        ) from None
