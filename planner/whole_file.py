"""Files that leave the program, written whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from planner.errors import PlannerError
from planner.words import say


@contextmanager
def replacing(path: Path) -> Iterator[Path]:
    """Lend a name beside a file; what is written there takes the file's place at the end.

    A block that fails leaves nothing behind, and a file of that name as it was. OSError where
    the system refuses.
    """
    partial = path.with_name(f"{path.name}.partial")
    try:
        yield partial
        os.replace(partial, path)
    finally:
        with suppress(OSError):  # where the folder is none, there is nothing to take away either
            partial.unlink(missing_ok=True)


@contextmanager
def whole_file(path: Path, refusal: type[PlannerError] = PlannerError) -> Iterator[Path]:
    """Lend a name as `replacing` does; where the system refuses, `refusal` says so."""
    try:
        with replacing(path) as partial:
            yield partial
    except OSError as error:
        raise refusal(
            say(
                "{path} cannot be written ({strerror}); choose another folder or make room.",
                path=path,
                strerror=error.strerror,
            )
        ) from None


def write_whole(path: Path, content: bytes) -> None:
    """Write a file whole or not at all; PlannerError when it cannot be."""
    with whole_file(path) as partial:
        partial.write_bytes(content)
