"""A text file of bounded size: turned over when it is full, the oldest part let go.

Apart from `planner.faults`, since Python's own logging takes a while to load, and a start that
goes well has nothing to write.
"""

from __future__ import annotations

import logging
from contextlib import suppress
from logging.handlers import RotatingFileHandler
from pathlib import Path


class BoundedLog(RotatingFileHandler):
    """Writes texts to a file of `most_bytes`, and keeps so many older ones beside it.

    OSError when it cannot be written.
    """

    def __init__(self, path: Path, most_bytes: int, kept: int) -> None:
        path.parent.mkdir(parents=True, exist_ok=True)
        super().__init__(path, maxBytes=most_bytes, backupCount=kept, encoding="utf-8")

    def put(self, text: str) -> None:
        """Write one text."""
        self.emit(logging.makeLogRecord({"msg": text}))

    def handleError(self, record: logging.LogRecord) -> None:  # noqa: ARG002, N802
        raise

    def close(self) -> None:
        """Let go of the file; what a full disk has not taken is tried, and refused, once more."""
        with suppress(OSError):
            super().close()
