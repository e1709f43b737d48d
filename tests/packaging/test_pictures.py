"""The pictures of the guides show the window as it is, and no folder of whoever drew them."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pictures
import pytest
from PySide6.QtGui import QImage

ROOT = Path(__file__).parents[2]


@pytest.mark.usefixtures("qapp")
def test_the_pictures_show_what_the_window_has(tmp_path: Path) -> None:
    """Protects a reader from looking for a button that is gone. When this fails, look at the
    views, then run packaging/pictures.py and look at the pictures."""
    shown = pictures.draw_all(tmp_path)
    assert shown == json.loads(pictures.SHOWN.read_text("utf-8"))
    for name, shot in pictures.shots().items():
        kept = QImage(str(pictures.FOLDER / f"{name}.png"))
        assert (kept.width(), kept.height()) == shot.size


@pytest.mark.usefixtures("qapp")
def test_no_picture_shows_a_path_of_the_machine(tmp_path: Path) -> None:
    """Protects whoever draws them: no folder of theirs stands on a view."""
    from planner.ui.picture import draw

    for name, shot in pictures.shots().items():
        said: list[str] = []
        draw(tmp_path / f"{name}.png", shot, lambda window, said=said: said.append(
            pictures.words(window)
        ))  # fmt: skip
        assert len(said[0]) > 200
        for folder in (Path.home(), ROOT, tmp_path):
            assert str(folder) not in said[0]


def test_every_picture_of_a_guide_is_there_and_every_one_is_used() -> None:
    """Protects from broken links, and from pictures that nobody sees."""
    linked = set()
    for guide in (ROOT / "README.md", *(ROOT / "docs").glob("*.md")):
        for link in re.findall(r"!\[[^\]]+\]\(([^)]+\.png)\)", guide.read_text("utf-8")):
            linked.add((guide.parent / link).resolve())
    assert linked == {path.resolve() for path in pictures.FOLDER.glob("*.png")}
    assert {f"{name}.png" for name in pictures.shots()} <= {path.name for path in linked}
