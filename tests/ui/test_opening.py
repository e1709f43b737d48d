"""Which place a start opens: a file of a double click, a bad file, what the user left."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QUrl
from PySide6.QtGui import QFileOpenEvent

from planner.assets import demo_place
from planner.sites.book import list_places, user_places
from planner.ui.opening import Opening
from planner.ui.places.view import PlacesView
from planner.ui.sources import Source, demo_source, source_of
from planner.ui.workbench import Workbench


def _place(folder: Path, name: str) -> Path:
    """Write a place file with the ending that a double click opens."""
    text = demo_place().read_text(encoding="utf-8").replace('"Sedge Hollow"', f'"{name}"')
    file = folder / f"{name.lower().replace(' ', '-')}.fullshell"
    folder.mkdir(parents=True, exist_ok=True)
    file.write_text(text, encoding="utf-8")
    return file


@pytest.fixture
def left_off(tmp_path: Path) -> Source:
    """What the user had open last, without a log, which is read soonest."""
    return Source(str(_place(tmp_path, "Left Behind")), keep=False)


def test_a_file_is_opened_and_remembered_by_its_whole_path(
    empty_bench: Workbench,
    left_off: Source,
    settle: Any,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Protects the next start, which may have another working folder than the double click."""
    file = _place(tmp_path, "Otter Bight")
    monkeypatch.chdir(tmp_path)
    Opening(empty_bench, left_off, file.name).begin()
    settle(empty_bench)
    assert empty_bench.site is not None
    assert empty_bench.site.name == "Otter Bight"
    assert empty_bench.source == source_of(str(file))


def test_a_bad_file_is_reported_by_field_and_the_last_place_opens(
    empty_bench: Workbench, left_off: Source, settle: Any, tmp_path: Path
) -> None:
    """Protects whoever double-clicks a broken file from an empty window without a reason."""
    bad = tmp_path / "bad.fullshell"
    bad.write_text('format = 1\nname = "Bad"\nlatitude = 200\n', encoding="utf-8")
    said: list[str] = []
    empty_bench.trouble.connect(said.append)
    Opening(empty_bench, left_off, str(bad)).begin()
    settle(empty_bench)
    (words,) = said
    assert str(bad) in words
    assert "latitude" in words
    assert "timezone" in words
    assert empty_bench.site is not None
    assert empty_bench.site.name == "Left Behind"


def test_a_file_that_is_gone_is_named(
    empty_bench: Workbench, left_off: Source, settle: Any, tmp_path: Path
) -> None:
    """Protects against silence after a double click on a file of a stick that was pulled out."""
    said: list[str] = []
    empty_bench.trouble.connect(said.append)
    Opening(empty_bench, left_off, str(tmp_path / "gone.fullshell")).begin()
    settle(empty_bench)
    assert len(said) == 1
    assert "gone.fullshell" in said[0]


def test_a_file_handed_over_before_or_after_the_start_wins(
    empty_bench: Workbench, left_off: Source, settle: Any, tmp_path: Path
) -> None:
    """Protects the double click of macOS, where a file comes as an event at any time."""
    early, late = _place(tmp_path, "Early Gut"), _place(tmp_path, "Late Gut")
    opening = Opening(empty_bench, left_off)
    for file in (early, late):
        event = QFileOpenEvent(QUrl.fromLocalFile(str(file)))
        assert opening.eventFilter(empty_bench, event)
        if file == early:
            opening.begin()
        settle(empty_bench)
        assert empty_bench.source.place == str(file)


def test_the_place_book_lists_both_endings() -> None:
    """Protects a place of the book whose name ends in the program's own way."""
    file = _place(user_places(), "Otter Bight")
    assert file in [entry.path for entry in list_places()]


@pytest.fixture
def nowhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A home that cannot be made, as under a folder that may not be written."""
    (tmp_path / "taken").touch()
    home = tmp_path / "taken" / "home"
    monkeypatch.setenv("FULLSHELL_HOME", str(home))
    return home


def test_the_demo_can_be_looked_at_where_nothing_can_be_kept(
    empty_bench: Workbench, settle: Any, nowhere: Path, qtbot: Any
) -> None:
    """Protects a first look without rights: it ended in a fault and an empty window."""
    empty_bench.open(demo_source())
    settle(empty_bench)
    assert len(empty_bench.log.hauls) > 100
    assert empty_bench.plans is not None
    assert empty_bench.book is None
    book = PlacesView(empty_bench)
    qtbot.addWidget(book)
    book.folder.click()
    assert str(nowhere) in book.head.said.text()


def test_a_place_opens_without_a_log_where_none_can_be_kept(
    empty_bench: Workbench, settle: Any, nowhere: Path, tmp_path: Path
) -> None:
    """The water is there all the same, and what cannot be logged is said, with the file."""
    said: list[str] = []
    empty_bench.trouble.connect(said.append)
    empty_bench.open(source_of(str(_place(tmp_path, "Otter Bight"))))
    settle(empty_bench)
    assert empty_bench.site is not None
    assert empty_bench.site.name == "Otter Bight"
    assert str(nowhere / "hauls.logbook") in said[0]
