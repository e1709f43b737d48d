"""What the user sees of a fault: a sentence, the next step, and a report to pass on."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontDatabase, QGuiApplication
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from planner.ui.parts import body, button, enter_presses_nothing, open_at, quiet, title
from planner.ui.theme import SPACE
from planner.words import say

_SENTENCE: Final = say(
    "Fullshell itself went wrong{where}. You did nothing wrong, and what you logged is kept."
)
_NEXT: Final = say(
    "Next: close this and go on; the window still works. If it goes wrong again, close Fullshell "
    "and start it anew. To have it put right, copy the report and send it to whoever keeps "
    "your Fullshell up to date. Nothing is sent by itself."
)
_HOLDS: Final = say(
    "The report holds versions, the view that was open and where in the program it went wrong. "
    "It holds no name, no folder of yours, no place and nothing from your log."
)
_CRASHED: Final = say(
    "Fullshell stopped in the middle of its work the last time. What you logged until then is kept."
)
_AFTER_CRASH: Final = say(
    "Next: look at the last trip you were typing and go on. If it happens again, open Help, "
    "Check this installation. To have it put right, copy the report and send it to whoever "
    "keeps your Fullshell up to date. Nothing is sent by itself."
)
_LINE: Final = 560


class FaultDialog(QDialog):
    """Shows one fault; others met while it is open are added to its report.

    own_words: what the error itself says, added only when the user asks for it.
    """

    def __init__(
        self, parent: QWidget | None, sentence: str, next_step: str, text: str, own_words: str = ""
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Something went wrong"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        open_at(self, 620, 560)
        self._text, self._own_words = text, own_words
        self.sentence, self.next_step = body(sentence), body(next_step)
        self.report = QPlainTextEdit()
        self.report.setReadOnly(True)
        self.report.setTabChangesFocus(True)
        self.report.setAccessibleName(say("Report"))
        fixed = QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont)
        fixed.setPointSizeF(self.font().pointSizeF())
        self.report.setFont(fixed)
        self.report.setLineWrapMode(QPlainTextEdit.LineWrapMode.WidgetWidth)
        self.words = QCheckBox(say("Add the error's own words; read them first"))
        self.words.setVisible(bool(own_words))
        self.words.toggled.connect(lambda _: self._show())
        self.copied = quiet()
        self.copy = button(say("Copy report"), self._copy, say("Put the report on the clipboard"))
        self.save = button(say("Save report…"), self._save, say("Write the report to a text file"))
        self.go_on = button(say("Close"), self.close)
        column = QVBoxLayout(self)
        column.setSpacing(SPACE)
        column.addWidget(title(say("Something went wrong")))
        holds = quiet(_HOLDS)
        for label in (self.sentence, self.next_step, holds):
            label.setMinimumWidth(_LINE)  # a label claims the height of its narrowest width
        for each in (self.sentence, self.next_step, self.report, self.words, holds):
            column.addWidget(each, int(each is self.report))
        row = QHBoxLayout()
        row.addWidget(self.copied, 1)
        for made in (self.copy, self.save, self.go_on):
            row.addWidget(made)
        column.addLayout(row)
        # What is being typed in the window must not press anything here.
        enter_presses_nothing(self)
        self._show()
        self.go_on.setFocus()

    @classmethod
    def of_fault(
        cls, parent: QWidget | None, error: BaseException, text: str, view: str = ""
    ) -> FaultDialog:
        """Return the dialog for a fault met just now; view: the label of the view it was in."""
        where = say(" while {view} was open", view=view) if view else ""
        said = f"{type(error).__name__}: {error}"
        return cls(parent, _SENTENCE.format(where=where), _NEXT, text, said)

    @classmethod
    def of_crash(cls, parent: QWidget | None, text: str) -> FaultDialog:
        """Return the dialog for a hard crash of the run before."""
        return cls(parent, _CRASHED, _AFTER_CRASH, text)

    def add(self, error: BaseException, text: str) -> None:
        """Add another fault to the report that is on show."""
        self._text += f"\n{text}"
        self._own_words += f"\n{type(error).__name__}: {error}"
        self._show()

    def _show(self) -> None:
        own = (
            say("\nIn its own words\n{own_words}\n", own_words=self._own_words)
            if self.words.isChecked()
            else ""
        )
        self.report.setPlainText(self._text + own)

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.report.toPlainText())
        self.copied.setText(say("Copied."))

    def _save(self) -> None:
        path, _ = QFileDialog.getSaveFileName(
            self, say("Save the report"), "fullshell-report.txt", say("Text (*.txt)")
        )
        if not path:
            return
        try:
            with open(path, "w", encoding="utf-8") as file:
                file.write(self.report.toPlainText())
        except OSError as error:
            self.copied.setText(
                say("Not saved: {strerror}. Choose another folder.", strerror=error.strerror)
            )
        else:
            self.copied.setText(say("Saved."))
