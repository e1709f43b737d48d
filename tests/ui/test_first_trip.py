"""A new user's path: from the first window to a printed sheet, by pressing what is offered."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QDesktopServices
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog, QPushButton

from planner.phrasing import day_text
from planner.ui.dates.plans_panel import PlansPanel
from planner.ui.load.view import LoadView
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench


@pytest.mark.parametrize("other", [None, 4])
def test_two_presses_from_the_first_window_to_the_sheet(
    other: int | None,
    bench: Workbench,
    qtbot: Any,
    settle: Any,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """The first window answers when to go and offers the next step; that one offers the sheet.

    The sheet is of the plan in the headline, next weekend's, or of another whose row is pressed
    first; and what to print from is opened.
    """
    out = tmp_path / "trip.pdf"
    opened: list[str] = []
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(out), ""))
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: opened.append(url.toLocalFile()))
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.resize(1100, 700)
    window.show()
    settle(bench)

    def press(words: str) -> None:
        (button,) = (
            each
            for each in window.findChildren(QPushButton)
            if each.text() == words and each.isVisible() and each.isEnabled()
        )
        # by the mouse, on what can be seen of it
        seen = button.visibleRegion().boundingRect()
        assert not seen.isEmpty()
        QTest.mouseClick(button, Qt.MouseButton.LeftButton, pos=seen.center())

    if other is not None:
        table = window.findChild(PlansPanel).table
        at = table.visualRect(table.model().index(other - 1, 1)).center()
        QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=at)
        assert bench.plan is not None
        assert bench.plan.rank == other
    press("Load up for this plan")
    load = window.findChild(LoadView)
    qtbot.waitUntil(lambda: load.facts is not None and bench.idle, timeout=30_000)
    press("Print or save trip sheet…")
    qtbot.waitUntil(lambda: bool(opened), timeout=30_000)
    assert opened == [str(out)]
    plan, site = bench.plan, bench.site
    assert plan is not None
    assert site is not None
    (page,) = PdfReader(out).pages
    said = " ".join(page.extract_text().split())
    first_day = plan.set_at.astimezone(site.zone).date()
    assert f"set {day_text(first_day)}" in said
    ahead = first_day - bench.state.today
    assert (ahead < timedelta(days=7)) is (other is None)
    window.close()
