"""Where the lanes of the strip draw: days across, pixels down."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Final

import pyqtgraph as pg
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QApplication

from planner.ui import theme

_TEXT_GROWS: Final = 0.6  # as much as the lanes do: wide days are not always to be had
_EVER: Final = 40_000  # days either side of the origin: wider than any outlook


def grown_text(lane_scale: float) -> float:
    """Return how large the strip's text is where its lanes are drawn at a scale."""
    usual = theme.text_scale()
    return usual * (1 + _TEXT_GROWS * (lane_scale / usual - 1))


@dataclass
class Canvas:
    """Where a lane draws: x in pixels is `day * width`, y runs down from 0 to `height`."""

    painter: QPainter
    width: float
    height: float
    first: int
    last: int
    scale: float = field(default_factory=theme.text_scale)
    _fonts: dict[tuple[float, bool], QFont] = field(default_factory=dict, init=False)
    _font: tuple[float, bool] | None = field(default=None, init=False)

    def x(self, place: float) -> float:
        """Return the pixel of a place on the strip."""
        return place * self.width

    def cell(self, place: int, top: float = 0.0, height: float | None = None) -> QRectF:
        """Return the rectangle of one day."""
        return QRectF(self.x(place), top, self.width, self.height if height is None else height)

    def has_room(self, for_px: float) -> bool:
        """Tell whether a day is wide enough for what takes some pixels with text of 10 points."""
        return self.width >= for_px * self.scale

    def font(self, points: float = 0.0, bold: bool = False) -> None:
        """Use the window's font, larger or smaller by some points."""
        key = (points, bold)
        if key not in self._fonts:
            font = QFont(QApplication.font())
            usual = font.pointSizeF() * self.scale / theme.text_scale()
            font.setPointSizeF(max(theme.LEAST_PT, usual + points))
            font.setBold(bold)
            self._fonts[key] = font
        if key != self._font:
            self._font = key
            self.painter.setFont(self._fonts[key])


class Lane(pg.GraphicsObject):  # type: ignore[misc]  # pyqtgraph has no types
    """A horizontal band of the strip; subclasses draw on a canvas."""

    def __init__(self, top: float, height: float) -> None:
        super().__init__()
        self.top, self.height = top, height
        self.setZValue(theme.Z_CURVE)

    def boundingRect(self) -> QRectF:
        return QRectF(-_EVER, self.top, 2 * _EVER, self.height)

    def paint(self, painter: QPainter, *_: Any) -> None:
        view = self.getViewBox()
        if view is None:
            return
        first, last = view.viewRange()[0]
        scale = painter.transform()
        painter.save()
        painter.scale(1 / scale.m11(), 1 / scale.m22())
        painter.translate(0, self.top * scale.m22())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        height = self.height * scale.m22()
        painter.setClipRect(QRectF(first * scale.m11(), 0, (last - first) * scale.m11(), height))
        text = grown_text(scale.m22())
        self.draw(Canvas(painter, scale.m11(), height, int(first) - 1, int(last) + 1, text))
        painter.restore()

    def draw(self, canvas: Canvas) -> None:
        """Draw the lane; the painter's state is restored afterwards."""
        raise TypeError(f"{type(self).__name__} draws nothing on {canvas}")
