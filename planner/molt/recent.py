"""A few results kept for the next call with the same content."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable
from threading import Lock
from typing import Generic, TypeVar

T = TypeVar("T")


class Recent(Generic[T]):
    """Keeps the newest few results by what they were made from; safe between threads."""

    def __init__(self, keep: int) -> None:
        self._keep = keep
        self._kept: OrderedDict[Hashable, T] = OrderedDict()
        self._lock = Lock()

    def get(self, key: Hashable, make: Callable[[], T]) -> T:
        """Return the result kept under a key, or make it and keep it."""
        with self._lock:
            if key in self._kept:
                self._kept.move_to_end(key)
                return self._kept[key]
        # Made outside the lock: two threads may make the same, which costs time but no harm.
        made = make()
        with self._lock:
            self._kept[key] = made
            while len(self._kept) > self._keep:
                self._kept.popitem(last=False)
        return made
