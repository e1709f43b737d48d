"""A window whose theme is changed while it is open looks as one that was opened in it."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from planner.ui import theme
from planner.ui.window import VIEWS, MainWindow
from planner.ui.workbench import Workbench

# Of 255: grounds and inks of the two themes are further apart; the shading that the style gives
# its buttons, which depends on when it was first painted, is not.
_KEPT = 60


def _pixels(window: MainWindow) -> Any:
    """Return what is painted once it rests: layouts settle over a few turns of the loop."""
    before = QImage()
    for _ in range(50):
        for _ in range(5):
            QApplication.processEvents()
        image = window.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
        if image == before:
            break
        before = image
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.width(), 4)
    return rows[:, :, :3].astype(int)


@pytest.mark.parametrize("view", [name for name, *_ in VIEWS])
def test_nothing_keeps_the_colours_of_the_theme_before(
    bench: Workbench, app: QApplication, qtbot: Any, settle: Any, view: Any
) -> None:
    """Whatever a rule, a chart or a painter kept would be dark on dark, or a hole of light."""
    bench.state.change(view=view)
    listeners = list(bench.state._listeners)
    shown = []
    for turned in (False, True):
        bench.state.theme = "light" if turned else "dark"
        theme.apply(app, bench.state.theme)
        window = MainWindow(bench)
        qtbot.addWidget(window)
        window.resize(1280, 800)
        window.show()
        settle(bench)
        if turned:
            bench.state.change(theme="dark")
        settle(bench)
        shown.append(_pixels(window))
        bench.state._listeners[:] = listeners  # the window goes, its bench stays
        window.hide()
    differ = np.abs(shown[0] - shown[1]).max(axis=2) > _KEPT
    rows, columns = np.nonzero(differ)
    assert not differ.any(), f"{differ.sum()} pixels from {columns.min()}, {rows.min()}"
