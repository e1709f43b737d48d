"""The tally sheet as a PDF, letter or A4 across: boxes that a wet hand hits with a pencil.

Needs Qt; a QGuiApplication must exist, for the fonts.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPen

from planner.handouts.pdf_file import (
    GREY,
    INK,
    MM,
    PALE,
    PT,
    SHADE,
    Orientation,
    Paper,
    pdf_writer,
    write_pdf,
)
from planner.handouts.tally import TallyLine, TallySheet, Tick
from planner.words import say

# A dozen traps and room for notes go on one page of either paper.
_MARGIN_MM: Final = 8.0
# What a cold hand fills with one stroke without touching the next; judgement.
_BOX: Final = 5.6 * MM
_ROW: Final = 13.2 * MM
_HEAD: Final = 22.0 * MM
_FOOT: Final = 12.0 * MM
_LABEL: Final = 36.0 * MM
_TIME: Final = 14.5 * MM
_TOTAL: Final = 6.0 * MM  # beside the boxes, for the number
_GAP: Final = 1.0 * MM
# Of a text's size; below the second, letters are small enough for two lines.
_SMALLER: Final = (1.0, 0.9, 0.8, 0.7, 0.6, 0.5)
_ONE_LINE: Final = 0.7
_LEAST_NAME: Final = 0.5
_Flag = Qt.AlignmentFlag


@dataclass(frozen=True)
class _Column:
    """Where one kind of crab is counted on the page."""

    tick: Tick
    left: float
    width: float


def write_tally(sheet: TallySheet, path: Path, paper: Paper = "letter") -> None:
    """Write the sheet as a PDF, a page for each dozen traps; PlannerError when it cannot be."""
    write_pdf(path, lambda partial: _draw(sheet, partial, paper))


def _draw(sheet: TallySheet, path: Path, paper: Paper) -> None:
    writer = pdf_writer(
        path, sheet.title, paper, margin_mm=_MARGIN_MM, orientation=Orientation.Landscape
    )
    width, height = float(writer.width()), float(writer.height())
    a_page = max(int((height - _HEAD - _FOOT) // _ROW), 1)
    # What is left of the last page is for traps that were added on deck.
    spare = [TallyLine("", "", "")] * (-len(sheet.lines) % a_page)
    lines = (*sheet.lines, *spare)
    pages = [lines[at : at + a_page] for at in range(0, len(lines), a_page)]
    painter = QPainter(writer)
    try:
        for number, page in enumerate(pages, start=1):
            if number > 1:
                writer.newPage()
            of = (
                say("Page {number} of {pages}. ", number=number, pages=len(pages))
                if len(pages) > 1
                else ""
            )
            _head(painter, sheet, of, width)
            _rows(painter, sheet, page, width)
            _foot(painter, sheet, width, height)
    finally:
        painter.end()


def _columns(ticks: tuple[Tick, ...]) -> list[_Column]:
    left = _LABEL + 2 * _TIME
    columns = []
    for tick in ticks:
        width = tick.across * _BOX + _TOTAL + 2 * _GAP
        columns.append(_Column(tick, left, width))
        left += width
    return columns


def _head(painter: QPainter, sheet: TallySheet, page: str, width: float) -> None:
    line = 6.5 * MM
    title = QRectF(0, 0, width * 0.44, line)
    _text(painter, title, sheet.title, 14, bold=True, least=_LEAST_NAME)
    said = " ".join(part for part in (sheet.invented, f"{page}{sheet.made}") if part)
    _text(
        painter,
        QRectF(0, line + 0.5 * MM, width, line * 0.7),
        said,
        8,
        colour_grey=not sheet.invented,
    )
    left = width * 0.45
    each = (width - left) / len(sheet.blanks)
    for at, blank in enumerate(sheet.blanks):
        box = QRectF(left + at * each, 0, each - 2 * MM, line)
        _text(painter, box, f"{blank}:", 9)
        painter.setPen(QPen(GREY, 0.6 * PT))
        painter.drawLine(box.bottomLeft(), box.bottomRight())
    top = _HEAD - 6 * MM
    headings = [
        (say("Trap"), 0.0, _LABEL),
        (say("Set"), _LABEL, _TIME),
        (say("Hauled"), _LABEL + _TIME, _TIME),
    ]
    columns = _columns(sheet.ticks)
    headings += [(column.tick.heading, column.left, column.width) for column in columns]
    end = columns[-1].left + columns[-1].width
    headings.append((say("Other kinds, notes"), end, width - end))
    for text, x, wide in headings:
        _text(painter, QRectF(x + _GAP, top, wide - _GAP, 6 * MM), text, 8.5, bold=True)


def _rows(painter: QPainter, sheet: TallySheet, lines: tuple[TallyLine, ...], width: float) -> None:
    columns = _columns(sheet.ticks)
    for number, line in enumerate(lines):
        top = _HEAD + number * _ROW
        if number % 2 == 0:
            painter.fillRect(QRectF(0, top, _LABEL + 2 * _TIME, _ROW), SHADE)
        label = QRectF(_GAP, top + 0.2 * MM, _LABEL - 2 * _GAP, 6.4 * MM)
        _text(painter, label, line.trap, 15, bold=True, least=_LEAST_NAME)
        about = QRectF(_GAP, top + 6.6 * MM, _LABEL - 2 * _GAP, 7 * MM)
        _text(painter, about, line.about, 7.5, wrap=True)
        planned = QRectF(_LABEL + _GAP, top + _GAP, _TIME - 2 * _GAP, 6 * MM)
        _text(painter, planned, line.set_at, 9, colour_grey=True)
        for column in columns:
            _boxes(painter, column, top)
        painter.setPen(QPen(INK, 0.6 * PT))
        painter.drawLine(QPointF(0, top), QPointF(width, top))
        for x in (_LABEL, _LABEL + _TIME, *(column.left for column in columns)):
            painter.drawLine(QPointF(x, top), QPointF(x, top + _ROW))
        end = columns[-1].left + columns[-1].width
        painter.drawLine(QPointF(end, top), QPointF(end, top + _ROW))
    bottom = _HEAD + len(lines) * _ROW
    painter.setPen(QPen(INK, 0.6 * PT))
    painter.drawLine(QPointF(0, bottom), QPointF(width, bottom))


def _boxes(painter: QPainter, column: _Column, top: float) -> None:
    """Draw two rows of boxes, and a line for the number."""
    painter.setPen(QPen(GREY, 0.7 * PT))
    gap = (_ROW - 2 * _BOX) / 2
    for row in range(2):
        for at in range(column.tick.across):
            corner = QPointF(column.left + _GAP + at * _BOX, top + gap + row * _BOX)
            painter.drawRect(QRectF(corner.x(), corner.y(), _BOX - 0.5 * MM, _BOX - 0.5 * MM))
    painter.setPen(QPen(PALE, 0.7 * PT))
    total_at = column.left + _GAP + column.tick.across * _BOX
    painter.drawLine(
        QPointF(total_at + 0.5 * MM, top + _ROW - 2 * MM),
        QPointF(total_at + _TOTAL, top + _ROW - 2 * MM),
    )


def _foot(painter: QPainter, sheet: TallySheet, width: float, height: float) -> None:
    line = _FOOT / len(sheet.notes) - 0.5 * MM
    top = height - _FOOT + 1 * MM
    for number, note in enumerate(sheet.notes):
        _text(painter, QRectF(0, top + number * line, width, line), note, 8.5)


def _text(
    painter: QPainter,
    box: QRectF,
    text: str,
    size_pt: float,
    *,
    bold: bool = False,
    wrap: bool = False,
    colour_grey: bool = False,
    least: float = 0.7,
) -> None:
    """Write a text into a box, in smaller letters where it would not fit, cut only at the last.

    least: of the size. Below 0.7 on two lines, and cut in the middle: a name's end tells as much.
    """
    flags = _Flag.AlignLeft | (_Flag.AlignTop if wrap else _Flag.AlignVCenter)
    font = QFont("sans-serif")
    font.setBold(bold)
    for smaller in (each for each in _SMALLER if each >= least):
        wrap = wrap or smaller < _ONE_LINE
        shown = int(flags) | (int(Qt.TextFlag.TextWordWrap) if wrap else 0)
        font.setPointSizeF(size_pt * smaller)
        painter.setFont(font)
        needs = painter.boundingRect(box, shown, text)
        if needs.width() <= box.width() and needs.height() <= box.height():
            break
    else:
        metrics = QFontMetricsF(font, painter.device())
        rows = max(int(box.height() // metrics.height()), 1) if wrap else 1
        cut = Qt.TextElideMode.ElideMiddle if least < _ONE_LINE else Qt.TextElideMode.ElideRight
        text = metrics.elidedText(text, cut, box.width() * rows * 0.95)
    painter.setPen(QPen(GREY if colour_grey else INK))
    painter.drawText(box, shown, text)
