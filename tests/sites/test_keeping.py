"""Copies of samples and new places: nothing written over, every problem told."""

from __future__ import annotations

import errno
import math
import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.assets import sample_sites
from planner.sites import SiteError, list_places, load_site
from planner.sites.book import user_places
from planner.sites.keeping import copy_to_own, file_stem, new_place
from planner.sites.site import SlackLags


def test_a_copy_is_the_same_place_and_the_users_own() -> None:
    """What the user edits starts as what the sample says, byte for byte."""
    sample = sample_sites() / "boston-ma.toml"
    copy = copy_to_own(sample)
    assert copy.parent == user_places()
    assert copy.read_bytes() == sample.read_bytes()
    first = list_places()[0]
    assert (first.path, first.shipped) == (copy, False)


def test_a_copy_never_writes_over_what_is_there() -> None:
    """The user's own changes outlive a second copy."""
    copy = copy_to_own(sample_sites() / "boston-ma.toml")
    copy.write_text("mine", encoding="utf-8")
    with pytest.raises(SiteError, match="nothing was written over"):
        copy_to_own(sample_sites() / "boston-ma.toml")
    assert copy.read_text(encoding="utf-8") == "mine"


def test_a_new_place_lacks_nothing_but_its_water() -> None:
    """The template is sound: its only problem is the water that the user is asked to fill in."""
    path = new_place('Jo\'s "Bight" \\ é', 38.2, -76.1, "America/New_York")
    with pytest.raises(SiteError) as refused:
        load_site(path)
    assert [problem.where for problem in refused.value.problems] == ["water"]
    assert list_places()[0].name == 'Jo\'s "Bight" \\ é'


@pytest.mark.parametrize(
    ("latitude", "longitude", "zone", "near"),
    [
        # Off the Potomac, the nearest of the published samples is at the mouth of the bay.
        (38.2, -76.1, "America/New_York", "Chesapeake Bay Bridge Tunnel"),
        # Water that is warm in July is refused in the south, and was offered there.
        (-34.78, 138.48, "Australia/Adelaide", "Honolulu"),
    ],
)
def test_the_templates_remarks_are_sound_when_taken_up(
    latitude: float, longitude: float, zone: str, near: str
) -> None:
    """Every example line of the template can be used by taking its # away."""
    text = new_place("Otter Bight", latitude, longitude, zone).read_text(encoding="utf-8")
    constants, offsets = text.split("# OR ")
    head, given_constants = constants.split("# EITHER ")
    tail = offsets.split("# [ramp]")[1]
    uncommented = "\n".join(
        line.removeprefix("# ") for line in given_constants.splitlines()[1:] if line
    )
    rest = "\n".join(line.removeprefix("# ") for line in ("# [ramp]" + tail).splitlines())
    path = user_places() / "filled.toml"
    path.write_text(f"{head}\n{uncommented}\n{rest}\n", encoding="utf-8")
    site = load_site(path)
    assert [each.constituent for each in site.water.constants] == ["M2", "S2"]
    assert site.spots[0].name == "grass edge"
    assert site.slack == SlackLags(40.0, 25.0)
    lines = offsets.split("# [ramp]")[0].splitlines()[1:]
    moved = "\n".join(line.removeprefix("# ") for line in lines)
    path.write_text(f"{head}\n{moved}\n", encoding="utf-8")
    reference = load_site(path).water.offsets
    assert reference is not None
    assert reference.reference.name.startswith(near)


def test_every_problem_of_a_new_place_is_told_and_nothing_written() -> None:
    """A wrong form leaves no half-made file behind."""
    with pytest.raises(SiteError) as refused:
        new_place(" ", math.nan, 200.0, "America/New_Yrok")
    where = [problem.where for problem in refused.value.problems]
    assert where == ["name", "latitude", "longitude", "time zone"]
    assert "America/New_York" in refused.value.problems[-1].remedy
    assert "nan" not in str(refused.value), "what is no number is not told as one"
    assert not user_places().exists()


def test_the_longest_name_of_a_form_is_one_that_a_place_file_may_have() -> None:
    """A name that the form takes must not be refused by the file that it writes."""
    path = new_place("Å" * 80, 38.2, -76.1, "America/New_York")
    with pytest.raises(SiteError) as refused:
        load_site(path)
    assert [problem.where for problem in refused.value.problems] == ["water"]
    with pytest.raises(SiteError, match="1 to 80"):
        new_place("Å" * 81, 38.2, -76.1, "America/New_York")


def test_names_that_make_the_same_file_name_are_two_places() -> None:
    """Letters that no file name takes must not leave a user with one place for all."""
    paths = [new_place(name, 43.0, 132.0, "Asia/Vladivostok") for name in ("Бухта", "Залив")]
    assert [path.name for path in paths] == ["place.toml", "place-2.toml"]
    with pytest.raises(SiteError, match="nothing was written over"):
        new_place("Залив", 43.0, 132.0, "Asia/Vladivostok")


def test_a_full_disk_leaves_no_half_a_place(monkeypatch: pytest.MonkeyPatch) -> None:
    """What cannot be written whole is not there at all, so that the next try can succeed."""

    def full(_: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    for write in (
        lambda: new_place("Pier", 38.2, -76.1, "America/New_York"),
        lambda: copy_to_own(sample_sites() / "boston-ma.toml"),
    ):
        with pytest.raises(SiteError, match="room on the disk"):
            write()
    assert list(user_places().iterdir()) == []


def test_a_sample_that_has_gone_is_told(tmp_path: Path) -> None:
    """The program may have been removed or updated while its window is open."""
    with pytest.raises(SiteError, match="check the name"):
        copy_to_own(tmp_path / "gone.toml")


@given(st.text(max_size=200))
def test_file_names_are_plain(name: str) -> None:
    """Whatever a place is called, its file name works on every system."""
    stem = file_stem(name)
    assert stem
    assert set(stem) <= set("abcdefghijklmnopqrstuvwxyz0123456789-")
    assert Path(stem).name == stem
    assert len(stem) <= 60
