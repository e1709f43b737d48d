"""What can go wrong on the command line itself."""

from __future__ import annotations

from planner.errors import PlannerError


class UsageError(Exception):
    """The command line is wrong; the text says what, where and what to do."""


class NoWindow(PlannerError):  # noqa: N818 - reads as the notice it is
    """The window's libraries are not here; everything else works."""
