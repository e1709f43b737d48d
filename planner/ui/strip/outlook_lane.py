"""What the lanes of an outlook share: its days in view, and lines through them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import numpy as np
from PySide6.QtCore import QPointF

from planner.estimates import Floats
from planner.ui.strip.canvas import Canvas, Lane
from planner.ui.strip.days import place_of

if TYPE_CHECKING:
    from planner.trips import Outlook

THIN_PX: Final = 4  # narrower days are drawn with thin lines, which are drawn much faster
_APART_PX: Final = 2.0  # points of a line, at least


class OutlookLane(Lane):
    """A lane that shows an outlook."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self.outlook: Outlook | None = None

    def show_outlook(self, outlook: Outlook | None) -> None:
        """Show another outlook, or none."""
        self.outlook = outlook
        self.update()

    def span(self, canvas: Canvas) -> range:
        """Return the indices of the outlook's days in view."""
        if self.outlook is None:
            return range(0)
        start = place_of(self.outlook.days[0])
        return range(
            max(0, canvas.first - start), min(len(self.outlook.days), canvas.last - start + 1)
        )

    def start(self) -> int:
        """Return the place of the outlook's first day."""
        assert self.outlook is not None
        return place_of(self.outlook.days[0])


def line_of(canvas: Canvas, start: int, span: range, y: Floats, joined: np.ufunc) -> list[QPointF]:
    """Return a line through the middles of days; where days are narrow, through groups of them.

    y: pixels of every day of the span. joined: which of a group is drawn, the least or greatest;
    their mean for `np.add`. No two points are nearer than two pixels: the eye sees no more.
    """
    many = max(1, round(_APART_PX / canvas.width))
    begins = np.arange(0, len(span), many)
    ends = np.minimum(begins + many, len(span))
    found = joined.reduceat(y, begins)
    if joined is np.add:
        found = found / (ends - begins)
    x = (start + span.start + (begins + ends) / 2) * canvas.width
    return [QPointF(*point) for point in zip(x.tolist(), found.tolist(), strict=True)]
