"""A PDF file to print from, whole or not at all: what every printed page shares.

Needs Qt; a QGuiApplication must exist, for the fonts.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import Final, Literal

from PySide6.QtCore import QCoreApplication, QMarginsF
from PySide6.QtGui import QColor, QGuiApplication, QPageLayout, QPageSize, QPdfWriter

from planner.whole_file import whole_file

Paper = Literal["letter", "A4"]
Orientation = QPageLayout.Orientation

DPI: Final = 300
PT: Final = DPI / 72
MM: Final = DPI / 25.4
INK: Final = QColor("#111111")
GREY: Final = QColor("#666666")
PALE: Final = QColor("#bbbbbb")
SHADE: Final = QColor("#e2e2e6")  # grey, so that it prints without colour

_SIZES: Final = {
    "letter": QPageSize.PageSizeId.Letter,
    "A4": QPageSize.PageSizeId.A4,
}


def pdf_writer(
    path: Path,
    title: str,
    paper: Paper,
    *,
    margin_mm: float,
    orientation: Orientation = Orientation.Portrait,
) -> QPdfWriter:
    """Return what to draw pages on; lengths in dots of `DPI`."""
    writer = QPdfWriter(str(path))
    writer.setTitle(title)
    writer.setCreator("Fullshell")
    writer.setResolution(DPI)
    margins = QMarginsF(margin_mm, margin_mm, margin_mm, margin_mm)
    size = QPageSize(_SIZES[paper])
    writer.setPageLayout(QPageLayout(size, orientation, margins, QPageLayout.Unit.Millimeter))
    return writer


def fonts() -> QCoreApplication:
    """Return the application object that carries the fonts, made without a screen if need be.

    Whoever prints without a window keeps it until the printing is done.
    """
    found = QGuiApplication.instance()
    if found is not None:
        return found
    if "PYTEST_CURRENT_TEST" not in os.environ:
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
    return QGuiApplication([])


def write_pdf(path: Path, draw: Callable[[Path], None]) -> None:
    """Have a file drawn beside its place and moved there when done.

    PlannerError when it cannot be written.
    """
    with whole_file(path) as partial:
        # Qt tells of a failed write only on its console: find out before it starts.
        partial.open("wb").close()
        draw(partial)
