"""Editing a place file as text: what is named changes, what is not stays as it was written."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from place_text import OFFSETS, TABLED, WHOLE

from planner.assets import sample_sites
from planner.sites import SiteError, load_site
from planner.sites.editing import (
    changed_fields,
    edited,
    number_or_text,
    site_of_text,
    under_names_in_use,
)
from planner.sites.keeping import new_place
from planner.sites.saving import draft_of, keep_draft, put_back, read_text, save_place

REMARKS = {"clock": "# never summer time", "high_times": "# noon and midnight"}
SAMPLES = sorted(sample_sites().glob("*.toml"))

_numbers = st.one_of(
    st.integers(-400, 400), st.floats(-400, 400, allow_nan=False).map(lambda v: round(v, 3))
)
_words = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=12)
_spots = st.lists(
    st.fixed_dictionaries({"name": _words, "depth": _numbers, "trap_height": _numbers}),
    min_size=1,
    max_size=5,
)
_constituents = st.dictionaries(
    st.sampled_from(["M2", "S2", "K1", "O1", "SA", "2MK3", "MU2"]),
    st.fixed_dictionaries({"amplitude": _numbers, "phase": _numbers}),
    min_size=1,
)
_clocks = st.times().map(lambda t: f"{t:%H:%M}")


def _two(**columns: st.SearchStrategy[object]) -> st.SearchStrategy[list[dict[str, object]]]:
    """Two columns of tabled differences; half filled ones come up while somebody is typing."""
    return st.lists(st.fixed_dictionaries({}, optional=columns), min_size=2, max_size=2)


_tabled = st.fixed_dictionaries(
    {},
    optional={
        "clock": _words,
        "high_times": _two(at=_clocks, minutes=_numbers),
        "low_times": _two(at=_clocks, minutes=_numbers),
        "high_heights": _two(there=_numbers, add=_numbers),
        "low_heights": _two(there=_numbers, add=_numbers),
    },
)
_offsets = st.one_of(
    st.none(),
    st.fixed_dictionaries(
        {"reference": _words},
        optional={"high_minutes": _numbers, "low_minutes": _numbers, "high_factor": _numbers},
    ),
    st.fixed_dictionaries({"reference": _words, "tabled": _tabled}),
)
_LAGS = ("after_high_minutes", "after_low_minutes")
_lags = st.dictionaries(st.sampled_from(_LAGS), _numbers, min_size=1)
_edits = st.fixed_dictionaries(
    {},
    optional={
        ("name",): _words,
        ("latitude",): _numbers,
        ("timezone",): _words,
        ("water", "units"): st.sampled_from(["m", "ft"]),
        ("water", "mean_level"): st.none() | _numbers,
        ("water", "source"): st.none() | _words,
        ("water", "constituents"): st.none() | _constituents,
        ("water", "offsets"): _offsets,
        ("ramp",): st.none() | st.fixed_dictionaries({"lowest_level": _numbers}),
        ("slack",): st.none() | _lags,
        ("spots",): st.none() | _spots,
        ("temperature",): st.none()
        | st.fixed_dictionaries({"monthly": st.lists(_numbers, min_size=12, max_size=12)}),
    },
)


def _values(text: str, wanted: dict[tuple[str, ...], object]) -> dict[tuple[str, ...], object]:
    """Return what a text holds at the paths of an edit: the edit's inverse."""
    found: dict[tuple[str, ...], object] = {}
    for path in wanted:
        value: object = tomllib.loads(text)
        for step in path:
            value = value.get(step) if isinstance(value, dict) else None
        found[path] = value
    return found


@settings(max_examples=40)
@given(
    _edits,
    st.sampled_from([WHOLE, TABLED, OFFSETS, *(path.read_text("utf-8") for path in SAMPLES[:6])]),
)
def test_an_edit_changes_what_it_names_and_its_inverse_brings_all_back(
    wanted: dict[tuple[str, ...], object], text: str
) -> None:
    """The rest of the file means the same after any edit, and the inverse restores the whole."""
    made = edited(text, wanted)
    assert _values(made, wanted) == wanted
    others = tomllib.loads(text)
    for key, value in tomllib.loads(made).items():
        if not any(path[0] == key for path in wanted):
            assert others[key] == value
    back = edited(made, _values(text, wanted))
    assert tomllib.loads(back) == tomllib.loads(text)


_in_place = st.fixed_dictionaries(
    {},
    optional={
        ("name",): _words,
        ("latitude",): _numbers,
        ("water", "mean_level"): _numbers,
        ("water", "source"): _words,
        ("water", "constituents"): st.fixed_dictionaries(
            {
                name: st.fixed_dictionaries({"amplitude": _numbers, "phase": _numbers})
                for name in ("M2", "K1")
            }
        ),
        ("ramp",): st.fixed_dictionaries({"lowest_level": _numbers}),
        ("slack",): st.fixed_dictionaries(dict.fromkeys(_LAGS, _numbers)),
        ("temperature",): st.fixed_dictionaries(
            {"monthly": st.lists(_numbers, min_size=12, max_size=12)}
        ),
    },
)


@settings(max_examples=40)
@given(_in_place)
def test_changed_values_and_back_give_the_same_file(wanted: dict[tuple[str, ...], object]) -> None:
    """Byte for byte, with every comment in between."""
    made = edited(WHOLE, wanted)
    assert "# invented" in made
    assert edited(made, _values(WHOLE, wanted)) == WHOLE


@settings(max_examples=60)
@given(_tabled, _tabled)
def test_tabled_differences_change_with_every_remark_kept(
    wanted: dict[str, object], then: dict[str, object]
) -> None:
    """Any table over any other: what re-reads is what was meant, the remarks stay, nothing else."""
    text = TABLED
    for tabled in (wanted, then):
        offsets = {"reference": "otter-bight.toml", "tabled": tabled}
        text = edited(text, {("water", "offsets"): offsets})
        assert tomllib.loads(text)["water"]["offsets"] == offsets
        assert "# from the almanac" in text
        for key in tabled:
            if key in wanted and key in then and key in REMARKS:
                assert REMARKS[key] in text
    back = tomllib.loads(TABLED)["water"]["offsets"]
    assert tomllib.loads(edited(text, {("water", "offsets"): back})) == tomllib.loads(TABLED)


def test_one_tabled_minute_is_one_line() -> None:
    """Of a table laid out with remarks over several lines only the number that changed differs."""
    offsets = tomllib.loads(TABLED)["water"]["offsets"]
    offsets["tabled"]["low_times"][1]["minutes"] = -7
    assert edited(TABLED, {("water", "offsets"): offsets}) == TABLED.replace("= -5", "= -7")


@settings(max_examples=40)
@given(_spots)
def test_spots_added_and_taken_out_again_leave_the_others_alone(
    more: list[dict[str, object]],
) -> None:
    """New spots before, between and after: the old ones' own lines and comments stay."""
    text = WHOLE.replace("depth = 1.8", "depth = 1.80   # sounded in May")
    old = tomllib.loads(text)["spots"]
    made = edited(text, {("spots",): [more[0], old[0], *more[1:], old[1]]})
    assert "depth = 1.80   # sounded in May" in made
    assert edited(made, {("spots",): old}) == text


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_the_same_values_leave_every_sample_as_it_is(path: Path) -> None:
    """Opening a form and saving it without a change writes nothing anew: 0.470 stays 0.470."""
    text = read_text(path)
    tables = tomllib.loads(text)
    wanted = {("name",): tables["name"], ("water",): tables["water"], ("spots",): None}
    wanted[("spots",)] = tables.get("spots")
    assert edited(text, wanted) == text
    assert changed_fields(text, text) == ()


def test_only_the_line_that_changed_differs_and_is_named() -> None:
    """A change of one amplitude is one line of the file, its comment and spaces kept."""
    text = WHOLE.replace("M2 = {", "M2 =  {").replace("61.0 }", "61.0 }  # renewed")
    tables = tomllib.loads(text)["water"]["constituents"]
    tables["M2"]["amplitude"] = 0.25
    made = edited(text, {("water", "constituents"): tables})
    assert made == text.replace("amplitude = 0.21", "amplitude = 0.25")
    assert changed_fields(text, made) == ("constituents",)


def test_changes_are_named_in_words() -> None:
    """What undo will say: fields of the form by name, other tables by their own."""
    made = edited(WHOLE, {("name",): "Bent", ("longitude",): -76.2, ("spots",): None})
    assert changed_fields(WHOLE, made) == ("name", "position", "spots")
    assert changed_fields(WHOLE, WHOLE.replace("traps = 12", "traps = 13")) == ("trip",)


def test_windows_line_ends_and_byte_order_marks_stay() -> None:
    """A file from another system is not turned into one of ours."""
    text = "\ufeff" + WHOLE.replace("\n", "\r\n")
    made = edited(text, {("water", "mean_level"): 0.3})
    assert made == text.replace("mean_level = 0.26", "mean_level = 0.3")


def test_a_new_place_gets_its_water_by_edits_alone() -> None:
    """The template with all its remarks becomes a working place."""
    path = new_place("Otter Bight", 38.2, -76.1, "America/New_York")
    text = edited(
        read_text(path),
        {
            ("water", "mean_level"): 0.26,
            ("water", "constituents"): {"M2": {"amplitude": 0.21, "phase": 61}},
            ("spots",): [{"name": "edge", "depth": 1.8, "trap_height": 0.35}],
        },
    )
    site = site_of_text(text, path)
    assert site.water.constants[0].amplitude_m == 0.21
    assert site.spots[0].name == "edge"
    assert "# OR how much later" in text
    assert "M2 = { amplitude = 0.21, phase = 61 }" in text


def test_a_layout_that_cannot_be_changed_safely_is_refused() -> None:
    """Better a refusal that says so than a damaged file."""
    with pytest.raises(SiteError, match="cannot be changed here"):
        edited('format = 1\nwater = "wet"\n', {("water", "datum"): "MLLW"})
    with pytest.raises(SiteError, match="line 1"):
        edited("format = = 1", {("name",): "x"})


def test_names_that_a_file_uses_for_a_constituent_stay() -> None:
    """RHO1 of a page goes to the line RHO of the file."""
    assert under_names_in_use({"RHO1": 1, "M2": 2}, {"RHO": 0, "M9x": 0}) == {"RHO": 1, "M2": 2}


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("", None), (" 3.49 ", 3.49), ("3,49", 3.49), ("-76", -76), ("−0.5", -0.5), (".5", 0.5),
        ("1e400", "1e400"), ("nan", "nan"), ("3 ft", "3 ft"), ("٣", "٣"),
    ],
)  # fmt: skip
def test_what_is_typed_is_a_number_or_is_kept_for_the_checks(written: str, meant: object) -> None:
    """Nothing typed is guessed at, and nothing is lost before the checks have seen it."""
    assert number_or_text(written) == meant


def test_saving_is_whole_or_not_at_all_and_never_over_another_hand(tmp_path: Path) -> None:
    """Problems and foreign changes both leave the file exactly as it was, and the draft too."""
    path = tmp_path / "otter-bight.toml"
    path.write_bytes(WHOLE.encode())
    keep_draft(path, "draft")
    bad = edited(WHOLE, {("latitude",): 99})
    with pytest.raises(SiteError, match="latitude"):
        save_place(path, bad, WHOLE)
    good = edited(WHOLE, {("latitude",): 39})
    with pytest.raises(SiteError, match="changed by another program"):
        save_place(path, good, bad)
    assert read_text(path) == WHOLE
    assert draft_of(path) == "draft"
    save_place(path, good, WHOLE)
    assert load_site(path).latitude_deg == 39
    assert draft_of(path) is None
    put_back(path, WHOLE, good)
    assert path.read_bytes() == WHOLE.encode()
    assert [each.name for each in tmp_path.iterdir()] == [path.name]
