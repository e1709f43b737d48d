"""The help menu and F1: the guide at the right page, the check of the installation, and about."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QDialog

if TYPE_CHECKING:
    from planner.ui.guide.help_window import HelpWindow
    from planner.ui.window import MainWindow


_LENT: Final = "the guide"


class Help(QObject):
    """Opens the guide for a window; there is one window of it, made when first asked for."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.guide: HelpWindow | None = None
        # A key of the window is not heard while a dialog has the focus.
        QApplication.instance().focusChanged.connect(self._lend_f1)  # type: ignore[union-attr]

    def _lend_f1(self) -> None:
        """Let F1 work in the dialog that has the focus, unless it would hold up the guide too."""
        dialog = QApplication.activeWindow()
        owner = dialog.parentWidget() if isinstance(dialog, QDialog) else None
        if (
            dialog is None
            or owner is None
            or owner.window() is not self._window
            or dialog.windowModality() == Qt.WindowModality.ApplicationModal
            or dialog.findChild(QShortcut, _LENT)
        ):
            return
        key = QShortcut(QKeySequence(Qt.Key.Key_F1), dialog)
        key.setObjectName(_LENT)
        key.activated.connect(self.of_view)

    def open(self, page: str) -> None:
        """Show a page of the guide, "page.md" or "page.md#heading"."""
        from planner.ui.guide.help_window import HelpWindow

        if self.guide is None:
            self.guide = HelpWindow(self._window.state)
        self.guide.open_page(page)

    def of_view(self) -> None:
        """Show the page of the place of work on show."""
        from planner.ui.guide.help_pages import PAGES

        self.open(PAGES[self._window.state.view])

    def contents(self) -> None:
        """Show the first page."""
        from planner.ui.guide.help_pages import CONTENTS

        self.open(CONTENTS)

    def questions(self) -> None:
        """Show the questions with their answers."""
        from planner.ui.guide.help_pages import QUESTIONS

        self.open(QUESTIONS)

    def check(self) -> None:
        """Look whether anything is wrong with the installation."""
        from planner.ui.trouble.checkup_dialog import CheckupDialog

        CheckupDialog(self._window.bench, self._window).open()

    def close(self) -> None:
        """Close the guide along with its window."""
        if self.guide is not None:
            self.guide.let_go()
            self.guide = None
