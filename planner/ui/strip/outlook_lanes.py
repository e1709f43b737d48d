"""Lanes that show an outlook: water, fullness, free days; they only draw."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Any, Final

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPen, QPolygonF

from planner.ui import theme
from planner.ui.strip.canvas import Canvas
from planner.ui.strip.outlook_lane import THIN_PX, OutlookLane, line_of

if TYPE_CHECKING:
    from planner.trips import Outlook

_NUMBERS_FROM_PX: Final = 16  # narrower columns have no room for two digits
_HATCH: Final = Qt.BrushStyle.BDiagPattern


class WaterLane(OutlookLane):
    """From each day's lowest to its highest water; the ramp's level as a dashed line."""

    def draw(self, canvas: Canvas) -> None:
        span = self.span(canvas)
        if self.outlook is None or not span:
            return
        colours, painter, start = theme.current(), canvas.painter, self.start()
        low = float(np.min(self.outlook.lowest_m))
        high = float(np.max(self.outlook.highest_m))
        room = canvas.height - 8
        scale = room / max(high - low, 1e-6)

        def y(level_m: Any) -> Any:
            return 4 + (high - level_m) * scale

        at = slice(span.start, span.stop)
        tops = line_of(canvas, start, span, y(self.outlook.highest_m[at]), np.minimum)
        feet = line_of(canvas, start, span, y(self.outlook.lowest_m[at]), np.maximum)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.water_fill))
        painter.drawPolygon(QPolygonF(tops + feet[::-1]))
        painter.setPen(QPen(QColor(colours.water), 1.4 if canvas.width > THIN_PX else 1))
        painter.drawPolyline(QPolygonF(tops))
        painter.drawPolyline(QPolygonF(feet))
        ramp = self.outlook.site.lowest_ramp_level_m
        if ramp is not None:
            painter.setPen(QPen(QColor(colours.caution), 1, Qt.PenStyle.DashLine))
            painter.drawLine(
                QPointF(canvas.x(canvas.first), y(ramp)),
                QPointF(canvas.x(canvas.last + 1), y(ramp)),
            )


class FullnessLane(OutlookLane):
    """Expected fullness as colour, the number in the cell when there is room."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        self._image: QImage | None = None

    def show_outlook(self, outlook: Outlook | None) -> None:
        self._image = None
        if outlook is not None:
            fullness = np.clip(outlook.forecast.fullness.mean, 0, 1)
            table = np.array(theme.fullness_table(), dtype=np.uint32)
            cells = np.ascontiguousarray(table[np.rint(fullness * 100).astype(int)])
            self._image = QImage(
                cells.tobytes(), cells.size, 1, cells.size * 4, QImage.Format.Format_RGB32
            ).copy()
        super().show_outlook(outlook)

    def draw(self, canvas: Canvas) -> None:
        if self.outlook is None or self._image is None:
            return
        painter, start = canvas.painter, self.start()
        days = len(self.outlook.days)
        inner = canvas.height - 4
        painter.drawImage(
            QRectF(canvas.x(start), 2, days * canvas.width, inner),
            self._image,
            QRectF(0, 0, days, 1),
        )
        if canvas.width < 5:
            return
        fullness = self.outlook.forecast.fullness
        cells = [(index, canvas.cell(start + index, 2, inner)) for index in self.span(canvas)]
        numbers = [min(max(round(100 * float(fullness.mean[i])), 0), 100) for i, _ in cells]
        for (index, cell), number in zip(cells, numbers, strict=True):
            if fullness.high[index] - fullness.low[index] > theme.UNSURE_WIDTH:
                ink = theme.ink_of_fullness(number)
                painter.fillRect(cell, QBrush(theme.colour(ink.name(), 90), _HATCH))
        painter.setPen(QPen(QColor(theme.current().panel), 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRects([cell for _, cell in cells])
        if canvas.has_room(_NUMBERS_FROM_PX):
            canvas.font(0 if canvas.has_room(21) else -1.5)
            for (_, cell), number in zip(cells, numbers, strict=True):
                painter.setPen(theme.ink_of_fullness(number))
                painter.drawText(cell, Qt.AlignmentFlag.AlignCenter, str(number))


class DaysLane(OutlookLane):
    """The user's free days underlined, closed days crossed."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__(top, height)
        # Days that follow on each other, as (first index, index after the last).
        self._free: list[tuple[int, int]] = []
        self._closed: list[tuple[int, int]] = []

    def show_outlook(self, outlook: Outlook | None) -> None:
        if outlook is not None:
            closed = np.array([bool(why) for why in outlook.why_closed])
            busy = np.array([bool(why) for why in outlook.why_not_free])
            self._closed, self._free = _runs(closed), _runs(~closed & ~busy)
        super().show_outlook(outlook)

    def draw(self, canvas: Canvas) -> None:
        if self.outlook is None:
            return
        colours, painter, span = theme.current(), canvas.painter, self.span(canvas)
        painter.setPen(QPen(QColor(colours.closed), 1.4))
        for cell in self._cells(canvas, self._closed, span):
            inner = cell.adjusted(3, 4, -3, -4) if canvas.width > 12 else cell
            painter.drawLine(inner.topLeft(), inner.bottomRight())
            painter.drawLine(inner.bottomLeft(), inner.topRight())
        painter.setPen(QPen(QColor(colours.free), 3, c=Qt.PenCapStyle.FlatCap))
        y, gap = canvas.height - 4, 2 if canvas.width > 12 else 0
        # One call for all: there are thousands where ten years are in view.
        painter.drawLines(
            [
                QLineF(cell.left() + gap, y, cell.right() - gap, y)
                for cell in self._cells(canvas, self._free, span)
            ]
        )

    def _cells(
        self, canvas: Canvas, runs: Sequence[tuple[int, int]], span: range
    ) -> Iterator[QRectF]:
        """Yield each day in view; where days are narrow, each run of days as one."""
        for first, after in runs:
            if after <= span.start or first >= span.stop:
                continue
            if canvas.width > THIN_PX:
                for index in range(max(first, span.start), min(after, span.stop)):
                    yield canvas.cell(self.start() + index)
            else:
                left = canvas.cell(self.start() + first)
                yield left.united(canvas.cell(self.start() + after - 1))


def _runs(marked: NDArray[np.bool_]) -> list[tuple[int, int]]:
    """Return where marked days begin and end, each as (first index, index after the last)."""
    edges = np.flatnonzero(np.diff(np.concatenate([[False], marked, [False]]).astype(np.int8)))
    return [(int(first), int(after)) for first, after in edges.reshape(-1, 2)]
