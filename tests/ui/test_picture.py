"""Drawing a view to a file: every view, both themes, and nothing of the user's touched."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from planner.assets import demo_place, sample_sites
from planner.errors import PlannerError
from planner.ui import theme
from planner.ui.picture import Shot, draw
from planner.ui.window import VIEWS

TODAY = date(2026, 11, 25)
NAMES = [name for name, *_ in VIEWS]


def _colours(image: QImage) -> int:
    points = ((x, y) for x in range(0, image.width(), 7) for y in range(0, image.height(), 7))
    return len({image.pixel(x, y) for x, y in points})


@pytest.mark.parametrize("choice", ["light", "dark"])
@pytest.mark.parametrize("view", NAMES)
def test_every_view_is_drawn_in_both_themes_at_the_size_asked_for(
    app: QApplication, worked_out: None, user_home: Path, tmp_path: Path, view: Any, choice: Any
) -> None:
    """The file is a PNG of that size with something on it; the user's folder stays empty."""
    out = tmp_path / f"{view}.png"
    draw(out, Shot(view=view, theme=choice, size=(1110, 720), today=TODAY))
    assert out.read_bytes().startswith(b"\x89PNG\r\n\x1a\n")
    image = QImage(str(out))
    assert (image.width(), image.height()) == (1110, 720)
    # A corner of the page, under everything.
    colours = theme.DARK if choice == "dark" else theme.LIGHT
    assert image.pixelColor(1108, 710).name() == colours.ground
    assert _colours(image) > 30
    assert list(user_home.iterdir()) == []
    assert theme.current() is theme.LIGHT


def test_another_place_is_drawn_without_the_users_log(
    app: QApplication, worked_out: None, user_home: Path, tmp_path: Path
) -> None:
    """A picture of a place asks nothing of the logbook and makes none."""
    boston, demo = tmp_path / "boston.png", tmp_path / "demo.png"
    draw(boston, Shot(place=str(sample_sites() / "boston-ma.toml"), today=TODAY))
    draw(demo, Shot(place=str(demo_place()), today=TODAY))
    assert QImage(str(boston)) != QImage(str(demo))
    assert list(user_home.iterdir()) == []


def test_a_place_that_cannot_be_read_is_an_error_in_words(
    app: QApplication, user_home: Path, tmp_path: Path
) -> None:
    """Every problem with its field; no file is left behind."""
    bad = tmp_path / "bad.toml"
    text = demo_place().read_text(encoding="utf-8")
    bad.write_text(text.replace("latitude = 29.6", "latitude = 129.6", 1), encoding="utf-8")
    out = tmp_path / "out.png"
    with pytest.raises(PlannerError, match="latitude"):
        draw(out, Shot(place=str(bad), today=TODAY))
    assert not out.exists()
    with pytest.raises(PlannerError, match="no such file"):
        draw(out, Shot(place=str(tmp_path / "none.toml"), today=TODAY))
    assert not out.exists()
    assert list(user_home.iterdir()) == []


def test_a_log_that_cannot_be_read_is_an_error_by_line(
    app: QApplication, worked_out: None, tmp_path: Path
) -> None:
    """A picture that leaves the log out in silence would mislead."""
    table = tmp_path / "bad.csv"
    table.write_text("trip,place,trap,keepers\n1,Sedge Hollow,a,-3\n", encoding="utf-8")
    out = tmp_path / "out.png"
    with pytest.raises(PlannerError, match="line 2"):
        draw(out, Shot(log=table, today=TODAY))
    assert not out.exists()


@pytest.mark.parametrize("name", ["no-folder/out.png", "out.unknown"])
def test_a_file_that_cannot_be_written_is_an_error_in_words(
    app: QApplication, worked_out: None, tmp_path: Path, name: str
) -> None:
    """The message names the file and what to do."""
    with pytest.raises(PlannerError, match=r"could not be written; name a \.png file"):
        draw(tmp_path / name, Shot(today=TODAY))
