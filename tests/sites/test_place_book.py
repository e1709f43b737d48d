"""Places are found by path, by name in the user's book, then among the samples."""

from __future__ import annotations

from pathlib import Path

import pytest
from place_text import WHOLE

from planner.assets import demo_place
from planner.sites import SiteError, find_place, list_places


@pytest.fixture
def home(tmp_path, monkeypatch):
    """A user with one place in the book."""
    monkeypatch.setenv("FULLSHELL_HOME", str(tmp_path))
    (tmp_path / "places").mkdir()
    (tmp_path / "places" / "my-bight.toml").write_text(WHOLE, encoding="utf-8")
    return tmp_path


def test_by_name_stem_and_path(home):
    """All three ways of naming a place lead to its file."""
    path = home / "places" / "my-bight.toml"
    assert find_place("otter bight") == find_place("my-bight") == find_place(path) == path


def test_samples_come_after_the_users_own(home):
    """A user's copy of a sample place stands before the sample."""
    assert find_place("Sedge Hollow") == demo_place()
    own = home / "places" / "sedge-hollow.toml"
    own.write_text(demo_place().read_text(encoding="utf-8"), encoding="utf-8")
    assert find_place("Sedge Hollow") == own


def test_unknown_name_lists_near_ones(home):
    """A slip of the finger is met with the right name."""
    with pytest.raises(SiteError, match="did you mean Sedge Hollow"):
        find_place("sedge holow")


@pytest.mark.parametrize("name", ["", "x" * 5000, "a\0b", "?"])
def test_impossible_names(home, name):
    """Whatever is typed as a name, the answer is a clear refusal."""
    with pytest.raises(SiteError):
        find_place(name)


def test_something_that_looks_like_a_path_is_one(home):
    """A missing file is reported as a file, not as an unknown name."""
    assert find_place("nowhere/x.toml") == Path("nowhere/x.toml")
    assert find_place("nowhere.toml") == Path("nowhere.toml")


def test_a_broken_file_is_still_listed(home):
    """A place that cannot be read is in the list under its file's name, not lost."""
    (home / "places" / "broken.toml").write_text("name = [", encoding="utf-8")
    assert {entry.name for entry in list_places() if not entry.shipped} == {"Otter Bight", "broken"}


def test_no_book_yet(tmp_path, monkeypatch):
    """Before the first own place only the samples are listed."""
    monkeypatch.setenv("FULLSHELL_HOME", str(tmp_path / "none"))
    assert list_places()
    assert all(entry.shipped for entry in list_places())
