"""Help, Check this installation: what is wrong with it, and what to do."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPlainTextEdit, QVBoxLayout, QWidget

from planner.ui.parts import button, enter_presses_nothing, heading, open_at, quiet
from planner.ui.trouble.checkup import Finding, examine, report_of, text_of, verdict
from planner.ui.workbench import Workbench
from planner.words import say


class CheckupDialog(QDialog):
    """Looks at the installation in the background and shows what it finds."""

    def __init__(self, bench: Workbench, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Check this installation"))
        open_at(self, 640, 520)
        self.bench = bench
        self._found: list[Finding] = []
        self.verdict = heading(say("Looking at Python, Qt, files, folders and your log…"))
        self.findings = QPlainTextEdit()
        self.findings.setReadOnly(True)
        self.findings.setTabChangesFocus(True)
        self.findings.setAccessibleName(say("Findings"))
        self.copied = quiet()
        self.copy = button(
            say("Copy report"),
            self._copy,
            say("Versions and findings, without any folder, name or place of yours"),
        )
        self.copy.setEnabled(False)
        self.close_ = button(say("Close"), self.reject)
        row = QHBoxLayout()
        row.addWidget(self.copied, 1)
        row.addWidget(self.copy)
        row.addWidget(self.close_)
        column = QVBoxLayout(self)
        column.addWidget(self.verdict)
        column.addWidget(self.findings, 1)
        column.addLayout(row)
        enter_presses_nothing(self)
        label = say("Looking at the installation")
        bench.desk.start("checkup", label, lambda _: examine(), self._show)
        self.finished.connect(lambda _: bench.desk.stop("checkup"))

    def _show(self, found: list[Finding]) -> None:
        self._found = found
        self.verdict.setText(verdict(found))
        self.findings.setPlainText(text_of(found).partition("\n\n")[2])
        self.copy.setEnabled(True)

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(report_of(self._found))
        self.copied.setText(say("Copied."))
