"""The icon: one drawing, readable at every size that a system asks for."""

from __future__ import annotations

import xml.etree.ElementTree as ElementTree
from pathlib import Path

import icons
import pytest
from PySide6.QtGui import QColor, QIcon, QImage
from PySide6.QtWidgets import QApplication

from planner.assets import resource

# What Qt's renderer draws; anything else would show in other programs and be missing here.
DRAWN = {"svg", "title", "rect", "path"}


def test_the_drawing_holds_only_what_qt_draws() -> None:
    """Protects against an icon that looks right in an editor and wrong in the window."""
    tags = {each.tag.rpartition("}")[2] for each in ElementTree.parse(icons.DRAWING).iter()}
    assert tags <= DRAWN


def test_every_size_shows_shell_and_fill_on_its_ground(qapp: QApplication, tmp_path: Path) -> None:
    """Protects the smallest sizes, where the drawing must still be told from a blot."""
    files = icons.write_pngs(tmp_path)
    assert set(icons.SIZES) | set(icons.WINDOWS) | set(icons.MACOS) == set(files)
    for size, file in files.items():
        image = QImage(str(file))
        assert (image.width(), image.height()) == (size, size)
        assert image.pixelColor(0, 0).alpha() < 128  # round corners
        ground = image.pixelColor(size // 8, size // 8)
        shell = image.pixelColor(size // 2, round(size * 0.34))
        filled = image.pixelColor(round(size * 0.4), round(size * 0.76))
        assert ground.lightness() < filled.lightness() < shell.lightness()
        assert filled.blue() > filled.red() + 60


def test_a_drawing_that_cannot_be_read_is_named(qapp: QApplication, tmp_path: Path) -> None:
    """Protects a bundle from going out with an empty icon."""
    broken = tmp_path / "broken.svg"
    broken.write_text("<svg", encoding="utf-8")
    with pytest.raises(ValueError, match=r"broken\.svg"):
        icons.write_pngs(tmp_path / "out", broken)


def test_the_window_finds_the_same_drawing(qapp: QApplication) -> None:
    """Protects the icon of the window, which ships with the program as a resource."""
    assert resource("icon", "fullshell.svg") == icons.DRAWING
    image = QIcon(str(icons.DRAWING)).pixmap(64, 64).toImage()
    assert image.pixelColor(32, 22).lightness() > QColor("#c0c0c0").lightness()
