"""How a window shows the faults of the program: one dialog, to which further ones are added."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from planner.ui import theme
from planner.ui.trouble.fault_dialog import FaultDialog
from planner.words import say, spoken

if TYPE_CHECKING:
    from planner.ui.window import MainWindow


class FaultFront(QObject):
    """Shows what a `FaultCatcher` catches over a window.

    dialog: the one on show, None when there is none.
    """

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.dialog: FaultDialog | None = None

    def facts(self) -> dict[str, str]:
        """Return what a report says of the window; nothing of the user's, and in English."""
        window, size = self._window, self._window.size()
        return {
            "View": window.state.view,
            "Colours": f"{window.state.theme}, {'dark' if theme.current().dark else 'light'} now",
            "Window": f"{size.width()}x{size.height()} at {window.devicePixelRatioF():g}",
            "Letters": f"{QApplication.font().pointSizeF():g} pt",
            "Language": spoken(),
        }

    def show(self, error: BaseException, text: str) -> None:
        """Show a fault of the program, or add it to the one that is on show."""
        if self.dialog is not None:
            self.dialog.add(error, text)
        else:
            label = self._window.label_of(self._window.state.view)
            self._open(FaultDialog.of_fault(self._window, error, text, label))

    def again(self, _error: BaseException) -> None:
        """Say that a fault came back; a dialog at each repaint could not be got rid of."""
        self._window.bench.notice.emit(
            say(
                "The same thing went wrong again inside Fullshell. Close it and start it anew; the "
                "report is kept, and Help, Check this installation tells where."
            )
        )

    def show_crash(self, text: str) -> None:
        """Show that the run before ended in the middle of its work."""
        self._open(FaultDialog.of_crash(self._window, text))

    def _open(self, dialog: FaultDialog) -> None:
        def gone(_: int) -> None:
            self.dialog = None

        self.dialog = dialog
        dialog.finished.connect(gone)
        dialog.show()
