"""The same jobs without a window: `fullshell water`, `sky`, `dates`, `plans` and the others."""

from planner.cli.entry import main

__all__ = ["main"]
