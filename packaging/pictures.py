"""Draws the pictures of the guides, and says when they no longer show what the window has.

    .venv/bin/python packaging/pictures.py [LANGUAGE [FOLDER]]

Each language that has a guide is drawn by a program of its own, as texts made at import keep the
language of the start. Beside the pictures it writes `shown.json`: the name of every button, tab,
choice and column on each, and every word and number of its labels and tables. A test draws the
views again and compares, so that a changed window, or a changed forecast, cannot keep an old
picture. Pixels are not compared: they differ with the fonts of a machine.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date, timedelta
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Final, TypeVar

if TYPE_CHECKING:
    import newcomer
    from PySide6.QtWidgets import QWidget

    from planner.ui.picture import Shot
    from planner.ui.state import ViewName
    from planner.ui.window import MainWindow

DOCS: Final = Path(__file__).parents[1] / "docs"
FOLDERS: Final = {
    "en": DOCS / "pictures",
    **{page.parent.name: page.parent / "pictures" for page in sorted(DOCS.glob("*/guide.md"))},
}
SHOWN: Final = "shown.json"
MOST_COLOURS: Final = 256
_KIND: Final = 0xF0F0F0  # colours that share these bits of red, green and blue are much alike
MOST_ROWS: Final = 20  # of a table; more is on no picture
TODAY: Final = date(2026, 11, 25)
PIXELS_A_POINT: Final = 1.5

Controls = dict[str, list[str]]
Kind = TypeVar("Kind", bound="QWidget")


@dataclass(frozen=True)
class Picture:
    """A view of the demo place as a guide shows it.

    tab: the tab to be in front, by its words. plan: the rank of the plan that is chosen.
    """

    view: ViewName
    tab: str = ""
    day: date | None = None
    plan: int | None = None

    def shot(self) -> Shot:
        """Return what to draw."""
        from planner.ui.picture import Shot

        return Shot(view=self.view, today=TODAY, own_log=True)

    def prepare(self, window: MainWindow) -> None:
        """Choose the plan and the day, and turn to the tab."""
        from PySide6.QtWidgets import QTabWidget

        from planner.words import say

        if self.plan is not None:
            window.state.change(plan=self.plan)
        if self.day is not None:
            window.state.change(day=self.day)
        for tabs in window.findChildren(QTabWidget):
            for at in range(tabs.count()):
                if self.tab and tabs.tabText(at) == say(self.tab) and tabs.isVisible():
                    tabs.setCurrentIndex(at)


# Every view that a guide shows, by the name of its picture.
PICTURES: Final = {
    "window": Picture("dates"),
    "another-weekend": Picture("dates", day=date(2026, 12, 6), plan=4),
    "past-trips": Picture("dates", "Past trips like it", date(2026, 11, 8)),
    "load-up": Picture("load"),
    "log-hauls": Picture("hauls"),
    "weigh-evidence": Picture("evidence"),
    "moon-and-season": Picture("evidence", "Moon and season"),
    "how-forecasts-did": Picture("evidence", "How forecasts did"),
    "traps-compared": Picture("evidence", "Traps compared"),
    "place-book": Picture("places"),
    "check-water": Picture("places", "Check against what you saw"),
}


def draw_all(folder: Path, look: Callable[[str, QWidget], None]) -> None:
    """Draw every view into a folder; `look` is called with each name and window.

    The log is a copy of the demo's in a home of its own, so that it can be written in.
    """
    from planner.ui.picture import draw

    with home_of_its_own():
        watch_the_water()
        for name, each in PICTURES.items():
            draw(folder / f"{name}.png", each.shot(), partial(look, name), each.prepare)


def draw_path(folder: Path, look: Callable[[str, QWidget], None]) -> newcomer.Read:
    """Draw the newcomer's path into a folder, and return what was read on it."""
    import newcomer

    from planner.ui import theme
    from planner.ui.app import make_app

    def show(name: str, window: QWidget) -> None:
        window.grab().save(str(folder / f"{name}.png"))
        look(name, window)

    theme.apply(make_app(), "light")
    with home_of_its_own():
        return newcomer.walk(show)


def watch_the_water() -> None:
    """Enter eight high and low waters as somebody saw them who lives 40 minutes further in."""
    import numpy as np

    from planner.assets import demo_place
    from planner.clock import from_utc64
    from planner.sites import load_site
    from planner.tides import Tide
    from planner.ui.places.observed_rows import seen_file, write_cells

    site = load_site(demo_place())
    start = np.datetime64(TODAY - timedelta(days=9), "ms")
    turns = Tide(site).turns(start, start + np.timedelta64(9, "D"))
    rows = []
    for number in range(1, 32, 4):
        strays_min = 40 + 6 * (number % 3 - 1)
        seen = turns.times[number] + np.timedelta64(strays_min, "m")
        at = from_utc64(seen).astimezone(site.zone)
        height = f"{turns.heights[number] + 0.03 * (number % 5 - 2):.2f}"
        rows.append((f"{at:%Y-%m-%d %H:%M}", height, "high" if turns.is_high[number] else "low"))
    write_cells(seen_file(site.name), rows)


@contextmanager
def home_of_its_own() -> Iterator[None]:
    """Put the user's data into a folder that is gone afterwards."""
    before = os.environ.get("FULLSHELL_HOME")
    with tempfile.TemporaryDirectory() as folder:
        os.environ["FULLSHELL_HOME"] = folder
        try:
            yield
        finally:
            if before is None:
                del os.environ["FULLSHELL_HOME"]
            else:
                os.environ["FULLSHELL_HOME"] = before


def controls(window: QWidget) -> Controls:
    """Return what a window says: buttons, tabs, choices, heads of columns, words and cells."""
    from PySide6.QtCore import QAbstractItemModel, Qt
    from PySide6.QtWidgets import QComboBox, QPushButton, QTableView, QTabWidget

    def seen(kind: type[Kind]) -> list[Kind]:
        return [each for each in window.findChildren(kind) if each.isVisible()]

    def cells(model: QAbstractItemModel) -> list[str]:
        rows, across = range(model.rowCount()), range(model.columnCount())
        return [" | ".join(str(model.index(row, at).data() or "") for at in across) for row in rows]

    heads, rows = [], []
    for table in seen(QTableView):
        model = table.model()
        heads += [
            str(model.headerData(at, Qt.Orientation.Horizontal))
            for at in range(model.columnCount())
        ]
        rows += cells(model)[:MOST_ROWS]
    return {
        "buttons": sorted(each.text().replace("&", "") for each in seen(QPushButton)),
        "tabs": sorted(tabs.tabText(at) for tabs in seen(QTabWidget) for at in range(tabs.count())),
        "choices": sorted(each.accessibleName() for each in seen(QComboBox)),
        "columns": sorted(heads),
        "words": sorted({text for text in words(window).splitlines() if text.strip()}),
        "cells": rows,
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


def thin_out(path: Path) -> None:
    """Keep as many colours of a picture as a byte can name, the others as the nearest of these: a
    third of the size, and the repository and every program that is installed hold them all.

    Of colours that are much alike only the commonest: the edges of black letters alone have more
    greys than would leave room for a warning's brown.
    """
    import numpy as np
    from PySide6.QtGui import QImage

    image = QImage(str(path)).convertToFormat(QImage.Format.Format_RGB32)
    high, wide = image.height(), image.width()
    pixels = np.frombuffer(image.constBits(), dtype="<u4").reshape(high, wide)
    colours, at, count = np.unique(pixels, return_inverse=True, return_counts=True)
    commonest = colours[np.argsort(-count, kind="stable")]
    _, first_of_kind = np.unique(commonest & _KIND, return_index=True)
    kept = commonest[np.sort(first_of_kind)[:MOST_COLOURS]]
    parts = [each.view(np.uint8).reshape(-1, 4).astype(int) for each in (colours, kept)]
    nearest = ((parts[0][:, None] - parts[1]) ** 2).sum(axis=2).argmin(axis=1)
    # Lines of such an image take a multiple of four bytes.
    lines = np.zeros((high, -(-wide // 4) * 4), dtype=np.uint8)
    lines[:, :wide] = nearest[at].reshape(high, wide)
    few = QImage(lines.tobytes(), wide, high, lines.shape[1], QImage.Format.Format_Indexed8)
    few.setColorTable([int(each) for each in kept])
    few.save(str(path))


def draw_language(code: str, folder: Path) -> None:
    """Draw everything in a language, of which nothing may have been said before."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    os.environ["FULLSHELL_LANGUAGE"] = code
    from planner.ui.languages import use

    use(code)
    shown: dict[str, Controls] = {}

    def look(name: str, window: QWidget) -> None:
        shown[name] = controls(window)

    folder.mkdir(exist_ok=True)
    draw_all(folder, look)
    draw_path(folder, look)
    draw_sheet(folder / "trip-sheet.png")
    text = json.dumps(shown, indent=1, ensure_ascii=False)
    (folder / SHOWN).write_text(f"{text}\n", encoding="utf-8")


def main() -> None:
    """Draw one language into any folder, or one or every language into the guides' own."""
    match sys.argv[1:]:
        case [code, folder]:
            draw_language(code, Path(folder))
        case [code]:
            draw_language(code, FOLDERS[code])
            for path in FOLDERS[code].glob("*.png"):
                thin_out(path)
        case _:
            for code in FOLDERS:
                subprocess.run([sys.executable, __file__, code], check=True)


if __name__ == "__main__":
    main()
