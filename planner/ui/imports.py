"""Reading modules where several threads might, each of which would otherwise meet half of one.

Where one thread reads a package and another a part of it, Python sees that each would wait for
the other and gives one of them a module half read, which fails with an ImportError.
"""

from __future__ import annotations

from importlib import import_module
from threading import Event, RLock
from types import ModuleType
from typing import Final

# What jobs begin by importing; once these are read, what is left are leaves.
_CORE: Final = ("planner.sites.file_values", "planner.logbook", "planner.trips")
_one_at_a_time: Final = RLock()
_core_read: Final = Event()


def read_module(name: str) -> ModuleType:
    """Return a module, read by one thread at a time."""
    with _one_at_a_time:
        return import_module(name)


def read_core() -> None:
    """Read what is below the window, unless that is done; for threads that are about to use it."""
    if not _core_read.is_set():
        with _one_at_a_time:
            for name in _CORE:
                import_module(name)
            _core_read.set()
