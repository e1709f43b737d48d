"""The pictures of the guides show the window as it is, and no folder of whoever drew them."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import pictures
import pytest
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication, QWidget

from planner.words import MINUS

ROOT = Path(__file__).parents[2]


class Drawn:
    """Every picture, drawn once: what is on each, every word of it, and the newcomer's reading."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.shown: dict[str, pictures.Controls] = {}
        self.words: dict[str, str] = {}
        pictures.draw_all(folder, self._look)
        self.read = pictures.draw_path(folder, self._look)

    def _look(self, name: str, window: QWidget) -> None:
        self.shown[name] = pictures.controls(window)
        self.words[name] = pictures.words(window)


@pytest.fixture(scope="module")
def drawn(qapp: QApplication, tmp_path_factory: pytest.TempPathFactory) -> Drawn:
    """Draw them into the folder that FULLSHELL_PICTURES names, else into one that is let go."""
    folder = Path(os.environ.get("FULLSHELL_PICTURES") or tmp_path_factory.mktemp("pictures"))
    folder.mkdir(parents=True, exist_ok=True)
    return Drawn(folder)


def test_the_pictures_show_what_the_window_has(drawn: Drawn) -> None:
    """Protects a reader from looking for a button that is gone, and from numbers and words that
    the window no longer says. When this fails, look at the views, then run packaging/pictures.py
    and look at the pictures."""
    assert drawn.shown == shown_on(pictures.FOLDERS["en"])
    assert_same_sizes(pictures.FOLDERS["en"], drawn.folder, list(drawn.shown))


@pytest.mark.parametrize("code", [code for code in pictures.FOLDERS if code != "en"])
def test_the_pictures_of_other_languages_show_what_their_window_has(
    code: str, tmp_path: Path
) -> None:
    """Protects their readers from the same, and the newcomer's path from a word of one language."""
    drawing = [sys.executable, pictures.__file__, code, str(tmp_path)]
    subprocess.run(drawing, check=True, cwd=ROOT, capture_output=True)
    assert shown_on(tmp_path) == shown_on(pictures.FOLDERS[code])
    assert_same_sizes(pictures.FOLDERS[code], tmp_path, [*shown_on(tmp_path), "trip-sheet"])


def test_every_language_has_the_same_pictures_and_they_are_small() -> None:
    """Protects a page from a picture that one language lacks, and everybody's disk: a picture of
    more than 150 kB was kept without being thinned out."""
    names = {path.name for path in pictures.FOLDERS["en"].iterdir()}
    for folder in pictures.FOLDERS.values():
        assert {path.name for path in folder.iterdir()} == names
        assert [path for path in folder.iterdir() if path.stat().st_size > 150_000] == []


def shown_on(folder: Path) -> dict[str, pictures.Controls]:
    """Return the names on each picture of a folder, as kept beside them."""
    return json.loads((folder / pictures.SHOWN).read_text("utf-8"))


def assert_same_sizes(kept: Path, drawn: Path, names: list[str]) -> None:
    for name in names:
        size = QImage(str(kept / f"{name}.png")).size()
        assert size == QImage(str(drawn / f"{name}.png")).size()


def test_no_picture_shows_a_path_of_the_machine(drawn: Drawn) -> None:
    """Protects whoever draws them: no folder of theirs stands on a view."""
    for name, said in drawn.words.items():
        assert len(said) > 200
        for folder in (Path.home(), ROOT, drawn.folder, Path(tempfile.gettempdir())):
            assert str(folder) not in said, name


def test_somebody_new_finds_out_why_the_crabs_were_light(drawn: Drawn) -> None:
    """Plans a trip, logs it, and reads the reason, by clicks and keys on what can be seen: the
    promise of the plan, the count that breaks it, the run of molting behind it, how long crabs
    take to fill, and the forecast that has learned of it. The guide's page says the same."""
    read = drawn.read
    assert read.plan.startswith("Set Fri 27 Nov")
    assert read.ticked.startswith("1 of ")
    assert "12 traps: 36 keepers, 36 judged, 16 light" in read.totals
    assert "The plan forecast" in read.totals
    assert "16 of 36 judged were light" in read.day
    assert "Against the year's average" in read.day
    assert "was about 4 in 10 light" in read.alike
    assert "light crabs fill in about" in read.alike
    assert "Past trips like Sun 29 Nov" in read.alike
    assert recent_trips(read.after) > 2 > 0 > recent_trips(read.before)
    assert "Recent trips: " in read.evidence
    assert "Moon: " in read.evidence
    guide = (ROOT / "docs" / "why-light.md").read_text("utf-8")
    for name in read.pictures:
        assert f"pictures/{name}.png" in guide
    for words in (read.totals, read.before, read.after):
        assert re.findall(r"light crabs about (1 in \d+)", words)[-1] in guide
    assert re.findall(r"fill in (about \d+ days)", read.alike)[0] in guide


def recent_trips(words: str) -> float:
    """Return the part of recent trips in the words of a day, in light crabs of 100."""
    found = re.search(rf"recent trips ([+{MINUS}][\d.]+)", words)
    assert found is not None
    return float(found[1].replace(MINUS, "-"))


def test_every_picture_of_a_guide_is_there_and_every_one_is_used() -> None:
    """Protects from broken links, and from pictures that nobody sees."""
    linked = set()
    for guide in (ROOT / "README.md", *(ROOT / "docs").rglob("*.md")):
        for link in re.findall(r"!\[[^\]]+\]\(([^)]+\.png)\)", guide.read_text("utf-8")):
            linked.add((guide.parent / link).resolve())
    there = [path for folder in pictures.FOLDERS.values() for path in folder.glob("*.png")]
    assert linked == {path.resolve() for path in there}
    for folder in pictures.FOLDERS.values():
        assert {f"{name}.png" for name in shown_on(folder)} <= {path.name for path in linked}


def test_fewer_colours_lose_none_to_the_eye(tmp_path: Path) -> None:
    """A few brown letters among hundreds of common greys stay brown: a warning looks like one."""
    path, picture = tmp_path / "few.png", QImage(300, 300, QImage.Format.Format_RGB32)
    for row in range(300):
        for column in range(300):
            blue = (row + column) % 20  # greys that are no two alike, some thousands of them
            picture.setPixelColor(column, row, QColor(row * 255 // 299, row * 255 // 299, blue))
    brown = QColor("#7a4a00")
    picture.setPixelColor(7, 150, brown)
    picture.save(str(path))
    pictures.thin_out(path)
    thin = QImage(str(path))
    assert thin.colorCount() <= pictures.MOST_COLOURS
    found = thin.pixelColor(7, 150)
    for part in (QColor.red, QColor.green, QColor.blue):
        assert abs(part(found) - part(brown)) <= 16
