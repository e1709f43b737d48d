"""The trip sheet as a PDF of one page, letter or A4: real text, and a chart drawn as lines.

Needs Qt; a QGuiApplication must exist, for the fonts.
"""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from pathlib import Path
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPdfWriter, QPen, QPolygonF, QTextDocument

from planner.errors import PlannerError
from planner.handouts.pdf_file import GREY, INK, PALE, PT, SHADE, Paper, pdf_writer, write_pdf
from planner.handouts.sheet import Curve, TripSheet
from planner.phrasing import number_text
from planner.words import say

_MARGIN_MM: Final = 12.0
_CHART_SHARE: Final = 0.17  # of the height of the page
_GAP: Final = 8 * PT
# From comfortable to the least that can be read in a wet sleeve.
_FONTS_PT: Final = (10.5, 10.0, 9.5, 9.0, 8.5, 8.0, 7.5, 7.0, 6.5, 6.0)
_GUTTER: Final = "&nbsp;&nbsp;"  # Qt gives a cell the same padding on every side


def write_sheet(sheet: TripSheet, path: Path, paper: Paper = "letter") -> None:
    """Write the sheet as a PDF of one page.

    PlannerError when the file cannot be written, or when even the smallest letters leave no
    room for all of it.
    """
    write_pdf(path, lambda partial: _draw(sheet, partial, paper))


def _draw(sheet: TripSheet, path: Path, paper: Paper) -> None:
    writer = pdf_writer(path, sheet.title, paper, margin_mm=_MARGIN_MM)
    width, height = float(writer.width()), float(writer.height())
    chart_height = height * _CHART_SHARE
    column = (width - _GAP) / 2
    for font_pt in _FONTS_PT:
        head = _document(_head(sheet), font_pt, width, writer)
        wide = _document(_wide(sheet), font_pt, width, writer)
        left = _document(_left(sheet), font_pt, column, writer)
        right = _document(_right(sheet), font_pt, column, writer)
        columns = max(left.size().height(), right.size().height())
        room = height - chart_height - 2 * _GAP
        if head.size().height() + wide.size().height() + columns <= room:
            break
    else:
        raise PlannerError(
            say("This trip does not fit on one page: shorten the rules or the names of the place.")
        )
    painter = QPainter(writer)
    try:
        y = _place(painter, head, 0, 0)
        _chart(painter, sheet.curve, QRectF(0, y, width, chart_height), font_pt)
        y = _place(painter, wide, 0, y + chart_height + _GAP)
        _place(painter, left, 0, y + _GAP)
        _place(painter, right, column + _GAP, y + _GAP)
    finally:
        painter.end()


def _document(html: str, font_pt: float, width: float, writer: QPdfWriter) -> QTextDocument:
    document = QTextDocument()
    document.documentLayout().setPaintDevice(writer)
    document.setDocumentMargin(0)
    font = QFont("sans-serif")
    font.setPointSizeF(font_pt)
    document.setDefaultFont(font)
    document.setDefaultStyleSheet(
        f"p, table, h1, h2 {{ color: {INK.name()}; margin: 0; }}"
        f"h1 {{ font-size: {font_pt + 5}pt; }}"
        f"h2 {{ font-size: {font_pt + 1}pt; margin-top: {round(font_pt / 2)}px; }}"
        f".quiet {{ color: {GREY.name()}; }}"
    )
    document.setHtml(html)
    document.setTextWidth(width)
    return document


def _place(painter: QPainter, document: QTextDocument, x: float, y: float) -> float:
    """Draw a document with its corner there; return where it ends below."""
    painter.save()
    painter.translate(x, y)
    document.drawContents(painter)
    painter.restore()
    return y + document.size().height()


def _head(sheet: TripSheet) -> str:
    invented = f"<p><b>{escape(sheet.invented)}</b></p>" if sheet.invented else ""
    return (
        f"<h1>{escape(sheet.title)}</h1>{invented}"
        f'<p class="quiet">{escape(sheet.made)}</p>{_table(sheet.times)}'
    )


def _wide(sheet: TripSheet) -> str:
    note = f'<p class="quiet">{escape(sheet.spots_note)}</p>'
    table = _table(sheet.spots, sheet.spot_head) if sheet.spots else ""
    head = say("Water at the spots")
    return f"<p>{escape(sheet.curve.in_words)}</p><h2>{head}</h2>{table}{note}"


def _left(sheet: TripSheet) -> str:
    return (
        f"<h2>{say('Traps')}</h2>{_table(sheet.layout)}"
        f"<h2>{say('Sun and moon')}</h2>{_paragraphs(sheet.sky, '')}"
        f"<h2>{say('Mind')}</h2>{_paragraphs(sheet.cautions)}"
    )


def _right(sheet: TripSheet) -> str:
    rules = sheet.rules or (say("None entered."),)
    note = f"<p><b>{escape(sheet.rules_note)}</b></p>"
    return f"<h2>{say('Rules here')}</h2>{note}{_paragraphs(rules)}"


def _paragraphs(lines: Iterable[str], box: str = "□ ") -> str:
    return "".join(f"<p>{box}{escape(line)}</p>" for line in lines)


def _table(rows: Iterable[tuple[str, ...]], head: tuple[str, ...] = ()) -> str:
    cells = "".join(f'<th align="left">{escape(text)}{_GUTTER}</th>' for text in head)
    lines = [f"<tr>{cells}</tr>"] if head else []
    for row in rows:
        first = f"<td><b>{escape(row[0])}</b>{_GUTTER}</td>"
        rest = "".join(f"<td>{escape(text)}{_GUTTER}</td>" for text in row[1:])
        lines.append(f"<tr>{first}{rest}</tr>")
    return f'<table cellspacing="0" cellpadding="2">{"".join(lines)}</table>'


def _chart(painter: QPainter, curve: Curve, where: QRectF, font_pt: float) -> None:
    """Draw the water, the nights and the two outings."""
    font = QFont("sans-serif")
    font.setPointSizeF(max(font_pt - 2, 6))
    painter.setFont(font)
    line = painter.fontMetrics().height()
    plot = where.adjusted(line * 3.2, line * 1.4, 0, -line * 2.2)
    low, high = min(curve.levels), max(curve.levels)
    pad = max((high - low) * 0.1, 0.05)
    low, high = low - pad, high + pad
    first, last = curve.seconds[0], curve.seconds[-1]

    def x(seconds: float) -> float:
        return plot.left() + (seconds - first) / (last - first) * plot.width()

    def y(level: float) -> float:
        return plot.bottom() - (level - low) / (high - low) * plot.height()

    for begin, end in curve.nights:
        painter.fillRect(QRectF(x(begin), plot.top(), x(end) - x(begin), plot.height()), SHADE)
    painter.setPen(QPen(GREY, 0.5 * PT))
    painter.drawRect(plot)
    for seconds, text in curve.hours:
        painter.drawLine(
            QPointF(x(seconds), plot.bottom()), QPointF(x(seconds), plot.bottom() + 3 * PT)
        )
        box = QRectF(x(seconds) - line * 4, plot.bottom() + 3 * PT, line * 8, line * 2.2)
        painter.drawText(box, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop, text)
    for level in _ticks(low, high):
        painter.setPen(QPen(PALE, 0.5 * PT))
        painter.drawLine(QPointF(plot.left() - 3 * PT, y(level)), QPointF(plot.right(), y(level)))
        painter.setPen(QPen(GREY, 0.5 * PT))
        box = QRectF(where.left(), y(level) - line, plot.left() - where.left() - 4 * PT, 2 * line)
        painter.drawText(
            box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, number_text(level)
        )
    painter.setPen(QPen(INK, 0.5 * PT))
    painter.drawText(
        QPointF(where.left(), where.top() + line),
        say("Water, {level_name}; grey: dark", level_name=curve.level_name),
    )
    painter.setPen(QPen(INK, 1.2 * PT))
    painter.drawPolyline(
        QPolygonF([QPointF(x(s), y(v)) for s, v in zip(curve.seconds, curve.levels, strict=True)])
    )
    for seconds, name in curve.marks:
        painter.setPen(QPen(INK, 1 * PT, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(x(seconds), plot.top()), QPointF(x(seconds), plot.bottom()))
        painter.drawText(QPointF(x(seconds) + 2 * PT, plot.top() + line), name)


def _ticks(low: float, high: float) -> list[float]:
    """Return three to six round levels between two."""
    step = next(step for step in (0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50) if (high - low) / step <= 6)
    first = int(-(-low // step))
    return [round(at * step, 6) for at in range(first, int(high // step) + 1)]
