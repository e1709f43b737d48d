"""What can go wrong with a log, in a way that the user can put right."""

from __future__ import annotations

from planner.errors import InputError, PlannerError


class LogError(InputError):
    """Hauls that cannot be taken, with every problem found in them."""


class LogbookError(PlannerError):
    """A logbook file that cannot be opened or written; nothing was saved, nothing was lost."""


class LogbookInUse(LogbookError):  # noqa: N818 - reads as the notice it is
    """Another window or program is writing to the logbook; it can still be read."""


class LogbookDamaged(LogbookError):  # noqa: N818
    """The file is not whole; it is left exactly as it is."""


class LogbookNewer(LogbookError):  # noqa: N818
    """A later version of the program wrote the file; it is left exactly as it is."""
