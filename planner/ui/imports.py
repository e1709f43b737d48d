"""Reading modules where several threads might, each of which would otherwise meet half of one.

Where one thread reads a package and another a part of it, Python sees that each would wait for
the other and gives one of them a module half read, which fails with an ImportError.
"""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from pkgutil import iter_modules
from threading import Event, RLock
from time import sleep
from types import ModuleType
from typing import Final

# What jobs begin by importing; once these are read, what is left are leaves.
_CORE: Final = ("planner.sites.file_values", "planner.logbook", "planner.trips")
_PAUSE_S: Final = 0.01
_one_at_a_time: Final = RLock()
_core_read: Final = Event()


def read_module(name: str) -> ModuleType:
    """Return a module, read by one thread at a time."""
    with _one_at_a_time:
        return import_module(name)


def read_in_sips(package: str, checkpoint: Callable[[], None]) -> None:
    """Read the modules of a package ahead, one after the other, with a pause after each.

    Reading holds up every other thread; in one go it would hold up the window while it is used.
    checkpoint: called before each module; raises to stop.
    """
    folder = read_module(package).__path__
    for found in iter_modules(folder, f"{package}."):
        checkpoint()
        read_module(found.name)
        sleep(_PAUSE_S)


def read_core() -> None:
    """Read what is below the window, unless that is done; for threads that are about to use it."""
    if not _core_read.is_set():
        with _one_at_a_time:
            for name in _CORE:
                import_module(name)
            _core_read.set()
