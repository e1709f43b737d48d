"""Whether the window can be had where the program is installed without its libraries."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from importlib.util import find_spec

from planner.cli.errors import NoWindow
from planner.words import say


def require_window() -> None:
    """NoWindow unless the libraries of the window are installed."""
    missing = [name for name in ("PySide6", "pyqtgraph") if find_spec(name) is None]
    if missing:
        raise NoWindow(
            say(
                "the window needs {missing}; install the program with its window: pip "
                'install "fullshell[window]"',
                missing=say(" and ").join(missing),
            )
        )


@contextmanager
def window_loading() -> Iterator[None]:
    """Around the imports of the window: NoWindow when Qt is there but cannot be loaded."""
    try:
        yield
    except ImportError as error:
        raise NoWindow(
            say(
                "the window's libraries do not load ({error}); find out what is missing: "
                "fullshell doctor",
                error=error,
            )
        ) from error
