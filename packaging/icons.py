"""Make the icon files that each system wants from the one drawing in `resources/icon`."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from PySide6.QtSvg import QSvgRenderer

DRAWING = Path(__file__).parent.parent / "resources" / "icon" / "fullshell.svg"

# The sizes that hicolor themes are looked through for; the largest also serve Windows and macOS.
SIZES = (16, 22, 24, 32, 48, 64, 128, 256, 512)
WINDOWS = (16, 24, 32, 48, 64, 128, 256)
MACOS = (16, 32, 64, 128, 256, 512, 1024)


def write_pngs(folder: Path, drawing: Path = DRAWING) -> dict[int, Path]:
    """Draw the icon as `<size>.png` into a folder; return the files by size in pixels."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication
    from PySide6.QtSvg import QSvgRenderer

    app = QGuiApplication.instance() or QGuiApplication([])
    renderer = QSvgRenderer(str(drawing))
    if not renderer.isValid():
        raise ValueError(f"{drawing} cannot be drawn")
    folder.mkdir(parents=True, exist_ok=True)
    files = {size: folder / f"{size}.png" for size in sorted({*SIZES, *WINDOWS, *MACOS})}
    for size, file in files.items():
        _draw(renderer, size, file)
    del app
    return files


def _draw(renderer: QSvgRenderer, size: int, file: Path) -> None:
    from PySide6.QtGui import QImage, QPainter

    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(0)
    painter = QPainter(image)
    renderer.render(painter)
    painter.end()
    if not image.save(str(file)):
        raise OSError(f"{file} could not be written")


def write_ico(file: Path, pngs: dict[int, Path]) -> None:
    """Write the icon of Windows: each size drawn for itself."""
    _write_container(file, [pngs[size] for size in WINDOWS], sizes=[(s, s) for s in WINDOWS])


def write_icns(file: Path, pngs: dict[int, Path]) -> None:
    """Write the icon of macOS: each size drawn for itself."""
    _write_container(file, [pngs[size] for size in MACOS])


def _write_container(file: Path, pngs: list[Path], **options: Any) -> None:
    from PIL import Image

    images = [Image.open(png) for png in pngs]
    images[-1].save(file, append_images=images[:-1], **options)
