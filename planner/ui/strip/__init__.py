"""The heat strip: a calendar laid on one line, forecast and outcome one above the other."""

from planner.ui.strip.view import StripView

__all__ = ["StripView"]
