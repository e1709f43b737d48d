"""Draws the pictures of the guides, and says when they no longer show what the window has.

    .venv/bin/python packaging/pictures.py

Beside the pictures it writes `shown.json`: the name of every button, tab, choice and column on
each. A test draws the views again and compares, so that a changed window cannot keep an old
picture. Pixels are not compared: they differ with the fonts of a machine.
"""

from __future__ import annotations

import json
import os
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Final, TypeVar

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from planner.ui.picture import Shot

FOLDER: Final = Path(__file__).parents[1] / "docs" / "pictures"
SHOWN: Final = FOLDER / "shown.json"
TODAY: Final = date(2026, 11, 25)
PIXELS_A_POINT: Final = 1.5

Controls = dict[str, list[str]]
Kind = TypeVar("Kind", bound="QWidget")


def shots() -> dict[str, Shot]:
    """Return the views that the guides show, by the name of the picture."""
    from planner.ui.picture import Shot

    return {
        "window": Shot(view="dates", today=TODAY),
        "load-up": Shot(view="load", today=TODAY),
    }


def draw_all(folder: Path) -> dict[str, Controls]:
    """Draw every view into a folder and return what can be pressed, chosen and read on each."""
    from planner.ui.picture import draw

    shown: dict[str, Controls] = {}
    for name, shot in shots().items():

        def keep(window: QWidget, name: str = name) -> None:
            shown[name] = controls(window)

        draw(folder / f"{name}.png", shot, keep)
    return shown


def controls(window: QWidget) -> Controls:
    """Return the names on a window: buttons, tabs, choices and heads of columns."""
    from PySide6.QtCore import Qt
    from PySide6.QtWidgets import QComboBox, QPushButton, QTableView, QTabWidget

    def seen(kind: type[Kind]) -> list[Kind]:
        return [each for each in window.findChildren(kind) if each.isVisible()]

    heads = []
    for table in seen(QTableView):
        model = table.model()
        heads += [
            str(model.headerData(at, Qt.Orientation.Horizontal))
            for at in range(model.columnCount())
        ]
    return {
        "buttons": sorted(each.text().replace("&", "") for each in seen(QPushButton)),
        "tabs": sorted(tabs.tabText(at) for tabs in seen(QTabWidget) for at in range(tabs.count())),
        "choices": sorted(each.accessibleName() for each in seen(QComboBox)),
        "columns": sorted(heads),
    }


def words(window: QWidget) -> str:
    """Return every word that a window shows on labels."""
    from PySide6.QtWidgets import QLabel

    return "\n".join(each.text() for each in window.findChildren(QLabel) if each.isVisible())


def draw_sheet(out: Path) -> None:
    """Draw the trip sheet of the demo's first plan, as it is printed."""
    import pypdfium2
    from PySide6.QtGui import QImage

    from planner.cli import main

    pdf = out.with_suffix(".pdf")
    days = ["--from", "2026-11-25", "--to", "2026-12-09"]
    log = str(Path(__file__).parents[1] / "resources" / "demo" / "sedge-hollow-hauls.csv")
    try:
        if main(["take", "sedge-hollow", str(pdf), *days, "--log", log]) != 0:
            sys.exit("the trip sheet could not be written")
        pixels = pypdfium2.PdfDocument(pdf)[0].render(scale=PIXELS_A_POINT).to_numpy()
    finally:
        pdf.unlink(missing_ok=True)
    high, wide, _ = pixels.shape
    QImage(pixels.tobytes(), wide, high, 3 * wide, QImage.Format.Format_BGR888).save(str(out))


def main() -> None:
    """Draw everything into the guides' folder."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    shown = draw_all(FOLDER)
    draw_sheet(FOLDER / "trip-sheet.png")
    SHOWN.write_text(json.dumps(shown, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
