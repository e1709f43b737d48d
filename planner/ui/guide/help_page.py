"""A page of the guide: Markdown and pictures from the disk, and nothing from anywhere else."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Final

from PySide6.QtCore import Qt, QTimer, QUrl, Signal
from PySide6.QtGui import (
    QImage,
    QResizeEvent,
    QTextBlock,
    QTextBlockFormat,
    QTextCursor,
    QTextDocument,
    QTextTable,
)
from PySide6.QtWidgets import QTextBrowser

from planner.assets import guide
from planner.ui import theme
from planner.ui.guide.help_pages import anchor, path_of
from planner.ui.theme import SPACE
from planner.words import say

_WIDEST_EM: Final = 52  # letters are half an em on average: longer lines are hard to follow
_REST_MS: Final = 120
_LEADING: Final = 120.0  # percent
_SHARE_OF_LINE: Final = QTextBlockFormat.LineHeightTypes.ProportionalHeight.value
_PICTURE: Final = "\ufffc"  # stands for a picture in the text of its line


class HelpPage(QTextBrowser):
    """Shows pages of the guide; pictures are as wide as the text.

    outside: a link that leads out of the guide, which is not followed.
    """

    outside = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("Page of the guide"))
        self.setOpenExternalLinks(False)
        self.document().setDocumentMargin(SPACE * 2)
        self.setLineWrapMode(QTextBrowser.LineWrapMode.FixedPixelWidth)
        self.document().setUndoRedoEnabled(False)
        # Always, or pictures made for a page without it would be too wide as soon as it comes.
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self._pictures: set[str] = set()
        self.sourceChanged.connect(lambda _: self._space_out())
        # Scaling pictures takes a moment; it waits until the edge of the window is let go.
        self._rest = QTimer(self, singleShot=True, interval=_REST_MS)
        self._rest.timeout.connect(self._fit)

    @property
    def name(self) -> str:
        """The page on show, such as "load-up.md"."""
        return self.source().fileName()

    # Qt itself only ever passes a QUrl.
    def doSetSource(  # type: ignore[override]
        self,
        url: QUrl,
        kind: QTextDocument.ResourceType = QTextDocument.ResourceType.MarkdownResource,
    ) -> None:
        whole = self.source().resolved(url)
        path = Path(whole.toLocalFile()).resolve()
        # A page in English leads to pages in the reader's language where there are any.
        page = path_of(path.name)
        inside = whole.isLocalFile() and path.is_relative_to(guide().resolve())
        if not inside or not page.is_file():
            self.outside.emit(url.toString())
            return
        there = QUrl.fromLocalFile(str(page))
        there.setFragment(url.fragment())
        self._pictures.clear()
        super().doSetSource(there, kind or QTextDocument.ResourceType.MarkdownResource)
        self._go_to(url.fragment())

    def read_again(self) -> None:
        """Read the page anew, as after a change of colours, and stay where it was."""
        at = self.verticalScrollBar().value()
        self.reload()
        self._space_out()
        self.verticalScrollBar().setValue(at)

    def loadResource(self, kind: int, name: QUrl | str) -> Any:
        if kind != QTextDocument.ResourceType.ImageResource.value:
            return super().loadResource(kind, name)
        url = QUrl(name)
        self._pictures.add(url.toString())
        return self._scaled(url)

    def _scaled(self, url: QUrl) -> QImage:
        whole = self.source().resolved(url)
        image = QImage(whole.toLocalFile())
        sharp = self.devicePixelRatioF()
        wide = round(self._text_width() * sharp)
        if image.width() > wide > 0:
            image = image.scaledToWidth(wide, Qt.TransformationMode.SmoothTransformation)
            image.setDevicePixelRatio(sharp)
        return image

    def _text_width(self) -> int:
        widest = _WIDEST_EM * self.fontMetrics().height()
        return min(self.viewport().width(), widest) - 4 * SPACE

    def _fit(self) -> None:
        self.setLineWrapColumnOrWidth(self._text_width() + 4 * SPACE)
        for each in self._pictures:
            url = QUrl(each)
            kind = QTextDocument.ResourceType.ImageResource.value
            self.document().addResource(kind, url, self._scaled(url))
        self.document().markContentsDirty(0, self.document().characterCount())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.setLineWrapColumnOrWidth(self._text_width() + 4 * SPACE)
        self._rest.start()

    def _space_out(self) -> None:
        """Give headings, lines and cells room, which Qt does not, and tables quiet lines."""
        block: QTextBlock = self.document().begin()
        while block.isValid():
            form = block.blockFormat()
            level = form.headingLevel()
            if level > 1:
                form.setTopMargin(SPACE * (4 - min(level, 3)) + SPACE)
            # Code keeps its lines together; under a picture a share of its height would be a hole.
            if not form.nonBreakableLines() and _PICTURE not in block.text():
                form.setLineHeight(_LEADING, _SHARE_OF_LINE)
            QTextCursor(block).setBlockFormat(form)
            block = block.next()
        for frame in self.document().rootFrame().childFrames():
            if isinstance(frame, QTextTable):
                look = frame.format()
                look.setBorderBrush(theme.colour(theme.current().line))
                look.setCellPadding(SPACE / 2)
                frame.setFormat(look)

    def _go_to(self, heading: str) -> None:
        """Bring a heading to the top; Qt knows no names of headings in Markdown."""
        if not heading:
            return
        block: QTextBlock = self.document().begin()
        while block.isValid():
            if block.blockFormat().headingLevel() and anchor(block.text()) == heading:
                top = self.document().documentLayout().blockBoundingRect(block).top()
                self.verticalScrollBar().setValue(round(top) - SPACE)
                cursor = self.textCursor()
                cursor.setPosition(block.position())
                self.setTextCursor(cursor)
                self.verticalScrollBar().setValue(round(top) - SPACE)
                return
            block = block.next()
