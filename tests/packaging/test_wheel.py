"""What the wheel carries, and with it the bundle, which is made from a wheel."""

from __future__ import annotations

from pathlib import Path

from hatchling.builders.wheel import WheelBuilder

ROOT = Path(__file__).parents[2]


def test_every_page_and_picture_of_every_language_is_in_the_wheel() -> None:
    """Protects the reader of an installed program, whose guide is what the wheel brought."""
    carried = {
        Path(each.distribution_path).as_posix()
        for each in WheelBuilder(str(ROOT)).recurse_included_files()
    }
    pages = [path for path in (ROOT / "docs").rglob("*") if path.suffix in (".md", ".png")]
    assert any(path.parent.name == "es" for path in pages)
    inside = [f"planner/shipped/{path.relative_to(ROOT).as_posix()}" for path in pages]
    assert [each for each in inside if each not in carried] == []
