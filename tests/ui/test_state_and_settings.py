"""The state that views follow, and the choices that outlive the window."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import asdict, replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.phrasing import Style
from planner.ui.app import system_style
from planner.ui.settings import Settings, read_settings, settings_file, write_settings
from planner.ui.state import ViewState

TODAY = date(2026, 11, 25)


@pytest.fixture
def state() -> ViewState:
    """A state with nothing listening."""
    return ViewState(today=TODAY, day=TODAY)


# -- what is looked at ---------------------------------------------------------------------------


def test_listeners_hear_of_what_really_changed_at_once(state: ViewState) -> None:
    """A view that redraws for nothing is slow, and one told twice flickers."""
    heard: list[frozenset[str]] = []
    state.listen(heard.append)
    state.change(plan=3, day=TODAY, view="load", style=Style())
    assert heard == [{"plan", "view"}]
    state.change(plan=3)
    assert len(heard) == 1


def test_a_listener_sees_every_new_value(state: ViewState) -> None:
    """Fields that change together are never seen half changed."""
    seen: list[tuple[Any, Any]] = []
    state.listen(lambda _: seen.append((state.plan, state.view)))
    state.change(plan=2, view="hauls")
    assert seen == [(2, "hauls")]


def test_a_wrong_name_changes_nothing(state: ViewState) -> None:
    """A slip in a field's name is our own fault and must not pass in silence."""
    with pytest.raises(TypeError, match="plam"):
        state.change(plan=2, plam=3)
    with pytest.raises(TypeError, match="_listeners"):
        state.change(_listeners=[])
    assert state.plan is None


def test_a_listener_may_leave_while_it_is_told(state: ViewState) -> None:
    """A closing view neither loses others their news nor is called again."""
    heard: list[str] = []

    def leaving(_: frozenset[str]) -> None:
        heard.append("leaving")
        state.forget(leaving)

    state.listen(leaving)
    state.listen(lambda _: heard.append("staying"))
    state.change(plan=1)
    state.change(plan=2)
    assert heard == ["leaving", "staying", "staying"]
    state.forget(leaving)


# -- what is remembered --------------------------------------------------------------------------

CHANGED = Settings(
    place="Otter Bight",
    demo=False,
    view="hauls",
    theme="dark",
    length="ft",
    temperature="F",
    hours12=True,
    font_pt=16,
    care_points=5,
)


def test_settings_come_back_as_they_were_left() -> None:
    """The next start is where the user left off, from the user's own folder."""
    assert read_settings() == Settings()
    write_settings(CHANGED)
    assert read_settings() == CHANGED
    assert settings_file().exists()


@pytest.mark.parametrize("written", ["", "{", "[1]", "null", '{"view": 1}', "\x00", "{}"])
def test_a_damaged_file_is_a_first_start(tmp_path: Path, written: str) -> None:
    """A file cut short by a full disc must not keep the window from opening."""
    path = tmp_path / "settings.json"
    path.write_text(written, encoding="utf-8")
    assert read_settings(path) == Settings()
    path.write_bytes(b"\xff\xfe{")
    assert read_settings(path) == Settings()


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("place", 3),
        ("demo", "no"),
        ("view", "harbour"),
        ("theme", None),
        ("length", "yd"),
        ("temperature", "K"),
        ("hours12", 1),
        ("font_pt", 40),
        ("font_pt", 10.0),
        ("font_pt", True),
        ("care_points", 0),
        ("care_points", [5]),
    ],
)
def test_one_bad_value_costs_no_other(tmp_path: Path, name: str, value: Any) -> None:
    """What cannot be used falls back to its default; the rest of the user's choices stay."""
    path = tmp_path / "settings.json"
    path.write_text(json.dumps({**asdict(CHANGED), name: value, "later": 1}), encoding="utf-8")
    assert read_settings(path) == replace(CHANGED, **{name: getattr(Settings(), name)})


@settings(max_examples=40)
@given(
    st.dictionaries(
        st.sampled_from([*asdict(Settings()), "unknown"]),
        st.recursive(
            st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
            lambda inner: st.lists(inner) | st.dictionaries(st.text(), inner),
            max_leaves=4,
        ),
    )
)
def test_whatever_the_file_holds_the_settings_can_be_used(
    tmp_path_factory: pytest.TempPathFactory, written: dict[str, Any]
) -> None:
    """Every value that is read is of the kind that the window hands to Qt."""
    path = tmp_path_factory.mktemp("settings") / "settings.json"
    path.write_text(json.dumps(written), encoding="utf-8")
    found = read_settings(path)
    write_settings(found, path)
    assert read_settings(path) == found
    assert type(found.font_pt) is int
    assert 8 <= found.font_pt <= 16
    assert isinstance(found.place, str)
    assert found.view in ("dates", "load", "hauls", "evidence", "places")
    assert found.hours12 in (None, True, False)


def test_saving_is_whole_or_not_at_all(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A save that fails half way leaves the file of before, and closing goes on."""
    path = tmp_path / "settings.json"
    write_settings(CHANGED, path)

    def full(*_: Any) -> None:
        raise OSError("no space left on the disc")

    monkeypatch.setattr("planner.whole_file.os.replace", full)
    write_settings(Settings(), path)
    assert read_settings(path) == CHANGED


def test_a_file_that_may_not_be_read_is_not_written_over(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The user is told to allow reading it; what they chose must still be in it then."""
    path = tmp_path / "settings.json"
    write_settings(CHANGED, path)
    with monkeypatch.context() as locked:
        # The rights of a file mean nothing to whoever administers the machine.
        locked.setattr("planner.ui.settings.os.access", lambda *_: False)
        write_settings(Settings(), path)
    assert read_settings(path) == CHANGED


def test_a_folder_that_cannot_be_written_is_no_error(tmp_path: Path) -> None:
    """The window closes on a stick that is full or locked as on any other."""
    in_the_way = tmp_path / "file"
    in_the_way.write_text("here is no folder")
    write_settings(CHANGED, in_the_way / "settings.json")
    assert in_the_way.read_text() == "here is no folder"


# -- the system's habits -------------------------------------------------------------------------


@pytest.fixture
def american() -> Iterator[None]:
    """A system of feet, Fahrenheit and half days."""
    from PySide6.QtCore import QLocale

    from planner.ui import app

    class American(QLocale):
        @staticmethod
        def system() -> QLocale:
            return QLocale(QLocale.Language.English, QLocale.Country.UnitedStates)

    before, app.QLocale = app.QLocale, American  # type: ignore[misc]
    yield
    app.QLocale = before  # type: ignore[misc]


def test_units_are_the_systems_until_the_user_chooses(american: None) -> None:
    """Feet and Fahrenheit where the system has them; a choice of the user's own goes before."""
    assert system_style(Settings()) == Style("ft", "F", hours12=True)
    chosen = Settings(length="m", temperature="C", hours12=False)
    assert system_style(chosen) == Style("m", "C", hours12=False)
