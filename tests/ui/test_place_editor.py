"""Editing a place in the place book, with the keys and clicks of a user."""

from __future__ import annotations

import shutil
import tomllib
from collections.abc import Callable, Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QLabel, QWidget

from planner.assets import demo_place, sample_sites
from planner.clock import from_utc64
from planner.sites import load_site
from planner.sites.book import user_places
from planner.sites.editing import edited
from planner.sites.saving import draft_of
from planner.sites.site import SlackLags
from planner.tides import Tide
from planner.ui.places.observed_rows import seen_file, write_cells
from planner.ui.places.view import PlacesView
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench
from tests.ui.conftest import activate

TODAY = date(2026, 11, 25)


def agency_table(unit_line: str) -> str:
    """Return Seattle's published constants (the sample's source) as a made agency-like table."""
    sample = tomllib.loads((sample_sites() / "seattle-wa.toml").read_text("utf-8"))
    rows = ["Harmonic Constituents", unit_line, "Const. #\tName\tAmplitude\tPhase"]
    for number, (name, each) in enumerate(sample["water"]["constituents"].items(), start=1):
        rows.append(f"{number}\t{name}\t{each['amplitude']}\t{each['phase']}")
    return "\n".join([*rows, "38\tZZ9\t0.10\t12.0", ""])


class _Editing:
    """A place book with one place of the user's own, open in the editor."""

    def __init__(self, qtbot: Any, path: Path) -> None:
        self.qtbot, self.path = qtbot, path
        self.bench = Workbench(ViewState(today=TODAY, day=TODAY))
        self.view = PlacesView(self.bench)
        qtbot.addWidget(self.view)
        self.view.resize(1100, 700)
        self.view.show()
        self.settle()
        self.view.read_list(choose=path)
        self.settle()
        self.view.head.edit.click()
        self.settle()
        self.editor = self.view.editor

    def settle(self) -> None:
        """Wait until typing has rested and nothing is worked out any more."""
        self.qtbot.waitUntil(lambda: self.view.editor.at_rest, timeout=30_000)

    def type_in(self, field: QWidget, text: str) -> None:
        """Replace what a field holds, by keys."""
        field.setFocus()
        self.qtbot.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
        self.qtbot.keyClick(field, Qt.Key.Key_Delete)
        self.qtbot.keyClicks(field, text)
        self.settle()

    def paste(self, text: str) -> None:
        """Paste a text into the box for constants."""
        self.editor.water.begin_paste.click()
        QApplication.clipboard().setText(text)
        box = self.editor.water.paste.box
        self.qtbot.keyClick(box, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)

    def words(self, widget: QWidget) -> str:
        """Return every word that shows in a widget's labels."""
        labels = widget.findChildren(QLabel)
        return "\n".join(each.text() for each in labels if each.isVisibleTo(widget))


@pytest.fixture
def editing(qtbot: Any) -> Iterator[Callable[[Path], _Editing]]:
    """Open the editor on a place file."""
    opened: list[_Editing] = []

    def begin(path: Path) -> _Editing:
        opened.append(_Editing(qtbot, path))
        return opened[-1]

    yield begin
    for each in opened:
        each.bench.close()


@pytest.fixture
def own_place() -> Path:
    """A copy of the demo place, with a comment of the user's."""
    user_places().mkdir(parents=True)
    path = user_places() / "my-bight.toml"
    text = demo_place().read_text("utf-8").replace("Sedge Hollow", "My Bight")
    path.write_text(f"# sounded by me\n{text}", "utf-8")
    return path


def test_a_station_is_pasted_saved_and_undone(qtbot: Any, own_place: Path, editing: Any) -> None:
    """From an empty new place to a working one by keys alone, and back byte for byte."""
    made = editing(own_place)
    view = made.view
    made.editor.done.click()
    view.new.click()
    for field, text in (
        (view.form.name, "Pier"),
        (view.form.latitude, "47.6"),
        (view.form.longitude, "-122.34"),
        (view.form.zone, "America/Los_Angeles"),
    ):
        qtbot.keyClicks(field, text)
    view.form.write.click()
    path = user_places() / "pier.toml"
    qtbot.waitUntil(lambda: made.editor.path == path, timeout=20_000)
    made.settle()
    before = path.read_bytes()
    editor, paste = made.editor, made.editor.water.paste
    assert "No water yet" in made.words(editor.pane)
    assert not editor.save.isEnabled()
    made.paste(agency_table("Amplitudes are in feet. Phases are in degrees, referenced to GMT."))
    # Understood before it is taken: every line, its unit, and what was left out.
    assert paste.model.rowCount() == 33
    assert paste.model.data(paste.model.index(0, 1)) == "3.49"
    assert paste.unit.currentData() == "ft"
    assert "33 constituents understood" in paste.said.text()
    assert "ZZ9" in paste.left_out.text()
    assert editor.water.constants.rows() == []
    qtbot.keyClick(paste.take, Qt.Key.Key_Space)
    assert editor.water.constants.rows()[0] == ("M2", "1.0638", "10.8")
    assert view.focusWidget() is editor.water.level  # which is still to be filled in
    # 6.64 ft, the agency's mean sea level above MLLW, in metres.
    made.type_in(editor.water.level, "2.024")
    assert "mixed, mainly semidiurnal" in made.words(editor.pane)
    # To hold against the agency's table of the day: official times are within minutes of these.
    assert "First waters: high Wed 25 Nov 06:00 PST (3.80 m)" in made.words(editor.pane)
    assert editor.pane.month.isVisibleTo(editor)
    assert path.read_bytes() == before
    activate(qtbot, view)
    qtbot.keyClick(editor, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    made.settle()
    assert "Saved: mean level, constituents" in editor.said.text()
    assert b"# OR how much later" in path.read_bytes()
    there = Tide(load_site(sample_sites() / "seattle-wa.toml"))
    here = Tide(load_site(path))
    at = there.turns(*_span()).times
    assert abs(here.heights(at) - there.heights(at)).max() < 0.005
    editor.done.click()
    made.settle()
    view.head.open.click()
    made.settle()
    assert made.bench.site is not None
    assert made.bench.site.name == "Pier"
    view.head.edit.click()
    made.settle()
    assert editor.undo.text() == "Undo: mean level, constituents"
    editor.undo.click()
    made.settle()
    assert path.read_bytes() == before
    editor.redo.click()
    made.settle()
    assert load_site(path).water.constants[0].constituent == "M2"


def _span() -> tuple[Any, Any]:
    start = np.datetime64("2026-12-01", "ms")
    return start, start + np.timedelta64(20, "D")


def test_feet_taken_for_metres_are_refused_or_suspected_in_words(
    own_place: Path, editing: Any
) -> None:
    """The page does not say its unit; the wrong choice is seen before and after taking."""
    made = editing(own_place)
    editor, paste = made.editor, made.editor.water.paste
    made.paste(agency_table("Phases in degrees"))
    assert not paste.take.isEnabled()
    paste.unit.setCurrentIndex(paste.unit.findData("m"))
    assert "about 18.6 m" in paste.meaning.text()
    paste.take.click()
    made.settle()
    assert "are these feet?" in made.words(editor.water)
    assert editor.tabs.tabText(0).endswith("⚠")
    assert not editor.save.isEnabled()
    few = "M2 1.54 74.0\nS2 0.46 95.0\nN2 0.26 68.0\nK1 0.54 231\nO1 0.49 223"
    made.paste(few)  # the demo's constants in feet: possible as metres, but not at this datum
    paste.unit.setCurrentIndex(paste.unit.findData("m"))
    paste.take.click()
    made.settle()
    said = made.words(editor)
    assert "too low for a low-water datum" in said or "should be the zero" in said


def test_waters_seen_give_the_wrong_clock_away_and_stand_over_the_curve(
    own_place: Path, editing: Any
) -> None:
    """Lags read as UTC that were on local time: the observed waters say so beside the month."""
    tide = Tide(load_site(own_place))
    turns = tide.turns(*(_span()))
    rows = []
    for at, height, high in list(zip(turns.times, turns.heights, turns.is_high, strict=True))[:8]:
        when = from_utc64(at).strftime("%Y-%m-%dT%H:%M:%SZ")
        rows.append((when, f"{height:.2f}", "high" if high else "low"))
    write_cells(seen_file("My Bight"), rows)
    made = editing(own_place)
    clock = made.editor.water.clock
    assert made.editor._now.seen is not None
    clock.setCurrentIndex(clock.findData("UTC-05:00"))
    clock.activated.emit(clock.currentIndex())
    made.settle()
    said = made.words(made.editor.pane)
    assert "earlier than predicted" in said
    assert "Open marks: what you saw." in said
    assert made.editor._now.before is not None


def test_fields_name_their_problems_and_nothing_is_saved_meanwhile(
    own_place: Path, editing: Any
) -> None:
    """Each slip stands under its field, also in tables; the file stays as it was."""
    before = own_place.read_bytes()
    made = editing(own_place)
    editor = made.editor
    editor.tabs.setCurrentWidget(editor.tabs.widget(1))
    made.type_in(editor.place.latitude, "north")
    made.type_in(editor.place.zone, "America/New_Yrok")
    assert "must be a number" in editor.place.notes["latitude"].text()
    assert "America/New_York" in editor.place.notes["timezone"].text()
    editor.tabs.setCurrentWidget(editor.tabs.widget(2))
    editor.spots.spots.table.item(1, 1).setText("deep")
    made.settle()
    assert "[2].depth" in editor.spots.notes["spots"].text()
    assert [editor.tabs.tabText(at)[-1] == "⚠" for at in range(4)] == [False, True, True, False]
    editor.save_now()
    made.settle()
    assert own_place.read_bytes() == before


def test_an_unsaved_edit_outlives_leaving_and_is_offered_again(
    qtbot: Any, own_place: Path, editing: Any
) -> None:
    """Leaving by the button, then another start: what was typed is there, or put away."""
    made = editing(own_place)
    made.editor.tabs.setCurrentWidget(made.editor.tabs.widget(1))
    made.editor.place.source.setFocus()
    qtbot.keyClicks(made.editor.place.source, ", checked by me")
    made.editor.done.click()  # before typing has rested
    made.settle()
    draft = draft_of(own_place)
    assert draft is not None
    assert "checked by me" in draft
    again = editing(own_place)
    assert again.editor.offer.isVisibleTo(again.editor)
    assert "checked by me" in again.editor.place.source.text()
    again.editor.drop.click()
    again.settle()
    assert "checked by me" not in again.editor.place.source.text()
    assert draft_of(own_place) is None
    again.editor.redo.click()  # put away, not lost
    again.settle()
    assert "checked by me" in again.editor.place.source.text()


def test_spots_ramp_and_temperature_are_saved_with_comments_kept(
    own_place: Path, editing: Any
) -> None:
    """A new spot typed by keys; every line that was not touched is as it was."""
    before = own_place.read_text("utf-8")
    made = editing(own_place)
    editor = made.editor
    editor.tabs.setCurrentWidget(editor.tabs.widget(2))
    made.type_in(editor.spots.ramp, "-0.1")
    editor.spots.spots.add.click()
    row = editor.spots.spots.table.rowCount() - 1
    for column, text in enumerate(("far bar", "1,25", "0.4")):
        editor.spots.spots.table.item(row, column).setText(text)
    made.type_in(editor.temperature.months[0], "13.5")
    editor.save.click()
    made.settle()
    after = own_place.read_text("utf-8")
    site = load_site(own_place)
    assert site.spots[-1].depth_m == 1.25
    assert site.monthly_water_c is not None
    assert site.monthly_water_c[0] == 13.5
    assert "lowest_level = -0.1            # at lower water the trailer runs off" in after
    changed = set(before.splitlines()) - set(after.splitlines())
    assert len(changed) == 2  # the ramp's line and the temperatures'


def test_slack_lags_are_typed_refused_out_of_bounds_saved_and_undone(
    own_place: Path, editing: Any
) -> None:
    """One lag is enough; each problem stands under its own field; undo brings the file back."""
    lags = {("slack",): {"after_high_minutes": 35}}
    own_place.write_text(edited(own_place.read_text("utf-8"), lags), "utf-8")
    before = own_place.read_bytes()
    made = editing(own_place)
    editor = made.editor
    editor.tabs.setCurrentIndex(2)
    assert (editor.spots.after_high.text(), editor.spots.after_low.text()) == ("35", "")
    made.type_in(editor.spots.after_low, "-400")
    assert "-360 or more" in editor.spots.notes["slack.after_low_minutes"].text()
    assert editor.spots.notes["slack.after_high_minutes"].isHidden()
    assert not editor.save.isEnabled()
    made.type_in(editor.spots.after_low, "-20")
    made.type_in(editor.spots.after_high, "40")
    editor.save.click()
    made.settle()
    assert load_site(own_place).slack == SlackLags(40.0, -20.0)
    after = own_place.read_text("utf-8")
    assert "after_high_minutes = 40         # watched from the ramp" in after
    assert editor.undo.text() == "Undo: slack water"
    editor.undo.click()
    made.settle()
    assert own_place.read_bytes() == before
    made.type_in(editor.spots.after_high, "")
    editor.save.click()
    made.settle()
    assert load_site(own_place).slack is None


def test_offsets_are_fitted_said_taken_and_saved(own_place: Path, editing: Any) -> None:
    """Ten waters seen 40 min later at 0.9 of the height: that is what is said and written."""
    user_places().joinpath("base.toml").write_bytes(demo_place().read_bytes())
    tide = Tide(load_site(demo_place()))
    turns = tide.turns(*_span())
    rows = []
    for at, height, high in list(zip(turns.times, turns.heights, turns.is_high, strict=True))[:10]:
        when = (from_utc64(at) + timedelta(minutes=40)).strftime("%Y-%m-%dT%H:%M:%SZ")
        rows.append((when, f"{0.9 * height:.3f}", "high" if high else "low"))
    write_cells(seen_file("My Bight"), rows)
    made = editing(own_place)
    water = made.editor.water
    water.by_offsets.click()
    made.settle()
    assert "water.offsets" not in made.editor.general.text()
    assert water.offsets.wrong.isVisibleTo(made.editor)
    water.offsets.reference.setCurrentIndex(water.offsets.reference.findData("base.toml"))
    water.offsets.reference.activated.emit(water.offsets.reference.currentIndex())
    made.settle()
    assert "high water, minutes: is missing" in water.offsets.wrong.text()
    water.offsets.begin_fit.click()
    made.settle()
    said = made.words(water.offsets)
    assert "40 min later (80%:" in said
    assert "height times 0.90" in said
    assert "well known" in said
    water.offsets.take.click()
    made.settle()
    assert water.offsets.fields["high_minutes"].text() == "40"
    made.editor.save.click()
    made.settle()
    moved = load_site(own_place).water.offsets
    assert moved is not None
    assert (moved.high_minutes, round(moved.high_factor, 2)) == (40.0, 0.9)
    made.editor.undo.click()
    made.settle()
    assert load_site(own_place).water.offsets is None


def test_tabled_differences_are_typed_saved_with_comments_and_undone(
    qtbot: Any, own_place: Path, editing: Any
) -> None:
    """Differences by time of day and height, as secondary ports have them, all by fields."""
    user_places().joinpath("base.toml").write_bytes(demo_place().read_bytes())
    before = own_place.read_bytes()
    made = editing(own_place)
    water, tabled = made.editor.water, made.editor.water.offsets.tabled
    water.by_offsets.click()
    made.settle()
    water.offsets.reference.setCurrentIndex(water.offsets.reference.findData("base.toml"))
    water.offsets.by_table.click()
    assert tabled.isVisibleTo(made.editor)
    assert not water.offsets.grid.isVisibleTo(made.editor)
    made.settle()
    assert "High water, time: is missing; fill in both columns" in water.offsets.wrong.text()
    qtbot.keyClicks(tabled.clock, "UTC")
    columns = {
        "times": (("00:00", "35"), ("06:00", "23")),
        "heights": (("0.9", "0.1"), ("0.6", "0")),
    }
    for kind in ("high", "low"):
        for name, values in columns.items():
            keys = ("at", "minutes") if name == "times" else ("there", "add")
            for side in (0, 1):
                for key, text in zip(keys, values[side], strict=True):
                    qtbot.keyClicks(tabled.fields[f"{kind}_{name}", side, key], text)
    made.type_in(tabled.fields["low_times", 1, "minutes"], "soon")
    assert "Low water, time in column 2, minutes later: must be" in water.offsets.wrong.text()
    made.type_in(tabled.fields["low_times", 1, "minutes"], "-5")
    assert made.editor.pane.month.isVisibleTo(made.editor)
    made.editor.save.click()
    made.settle()
    offsets = load_site(own_place).water.offsets
    assert offsets is not None
    assert offsets.tabled is not None
    assert offsets.tabled.low_times.second_minutes == -5
    assert offsets.tabled.high_heights.springs_add_m == 0.1
    assert own_place.read_text("utf-8").startswith("# sounded by me\n")
    made.type_in(tabled.fields["high_times", 0, "minutes"], "36")
    made.editor.save.click()
    made.settle()
    assert made.editor.undo.text() == "Undo: offsets"
    for _ in (1, 2):
        made.editor.undo.click()
        made.settle()
    assert own_place.read_bytes() == before


def test_constants_are_fitted_to_a_gauges_record_with_intervals_and_taken(
    own_place: Path, editing: Any, tmp_path: Path
) -> None:
    """Forty days of a gauge in feet on standard time: the demo's own constants come back."""
    site = load_site(demo_place())
    start = np.datetime64("2026-03-01", "ms")
    times, levels = Tide(site).series(start, start + np.timedelta64(40, "D"), timedelta(hours=1))
    east = times + np.timedelta64(-5, "h")
    rows = [f"{t},{h / 0.3048:.4f},0.01" for t, h in zip(east.astype(str), levels, strict=True)]
    record = tmp_path / "gauge.csv"
    record.write_text("\n".join(["Date Time, Water Level, Sigma", *rows]), "utf-8")
    made = editing(own_place)
    water, form = made.editor.water, made.editor.water.record
    water.begin_record.click()
    assert not form.take.isVisibleTo(made.editor)
    form.unit.setCurrentIndex(form.unit.findData("ft"))
    form.clock.setCurrentIndex(form.clock.findData("UTC-05:00"))
    form.read(record)
    made.settle()
    assert "960 hourly levels over 40 days" in made.words(form)
    assert "moves the mean level" in made.words(form)
    name, amplitude, lag, use = (form.model.data(form.model.index(0, at)) for at in range(4))
    assert (name, use) == ("M2", "taken")
    assert " ± " in amplitude
    assert " ± " in lag
    form.take.click()
    made.settle()
    assert "Nothing is saved yet" in water.said.text()
    found = {row[0]: row for row in water.constants.rows()}
    truth = {each.constituent: each for each in site.water.constants}
    # Forty days cannot part K1 from P1: M2 and O1 stand alone.
    for each in ("M2", "O1"):
        assert abs(float(found[each][1]) - truth[each].amplitude_m) < 0.02
        assert abs(float(found[each][2]) - truth[each].phase_lag_deg) < 5
    # The season, SA and SSA, moves the mean of forty days by 12 cm at most.
    assert abs(float(water.level.text()) - site.water.mean_level_m) < 0.12
    record.write_text("time,height\n2026-01-01T00:00Z,x\n", "utf-8")
    water.begin_record.click()
    form.read(record)
    made.settle()
    assert "line 2, height" in made.words(form)
    form.leave.click()
    assert water.plain.isVisibleTo(made.editor)


def test_a_file_changed_by_another_hand_is_not_written_over(own_place: Path, editing: Any) -> None:
    """The edit waits as a draft; the other hand's words stay."""
    made = editing(own_place)
    made.editor.tabs.setCurrentWidget(made.editor.tabs.widget(1))
    made.type_in(made.editor.place.source, "mine")
    own_place.write_text(own_place.read_text("utf-8") + "# theirs\n", "utf-8")
    made.editor.save.click()
    made.settle()
    assert "changed by another program" in made.editor.said.text()
    assert own_place.read_text("utf-8").endswith("# theirs\n")
    assert "mine" in str(draft_of(own_place))


def test_a_file_that_is_not_toml_stays_with_the_text_editor(own_place: Path, editing: Any) -> None:
    """The editor says why and steps back."""
    own_place.write_text("name = = 3", "utf-8")
    made = editing(own_place)
    made.settle()
    assert made.view._right.currentWidget() is not made.editor
    assert made.view.places.isVisibleTo(made.view)


def test_every_control_of_the_editor_has_a_name(own_place: Path, editing: Any) -> None:
    """A screen reader can say what each control is for, on every tab."""
    made = editing(own_place)
    nameless = []
    for at in range(made.editor.tabs.count()):
        made.editor.tabs.setCurrentIndex(at)
        nameless += [
            widget
            for widget in made.editor.findChildren(QWidget)
            if widget.focusPolicy() != Qt.FocusPolicy.NoFocus
            and widget.isVisibleTo(made.editor)
            and not (widget.accessibleName() or getattr(widget, "text", str)())
            and not isinstance(widget.parent(), QAbstractScrollArea)
        ]
    assert nameless == []


def test_a_sample_is_copied_before_it_is_edited(qtbot: Any) -> None:
    """The program's own files offer a copy, no editing."""
    user_places().mkdir(parents=True)
    path = user_places() / "castine.toml"
    shutil.copy(sample_sites() / "castine-me.toml", path)
    made = _Editing(qtbot, path)
    made.editor.done.click()
    made.settle()
    made.view.places.choose(sample_sites() / "boston-ma.toml")
    made.settle()
    assert not made.view.head.edit.isVisibleTo(made.view)
    assert made.view.head.copy.isVisibleTo(made.view)
    made.bench.close()


def test_a_zone_is_offered_by_any_part_of_its_name(
    qtbot: Any, own_place: Path, editing: Any
) -> None:
    """Nobody knows the first half of a zone's name; one that is picked counts as an edit."""
    made = editing(own_place)
    activate(qtbot, made.view)
    made.editor.tabs.setCurrentIndex(1)
    field = made.editor.place.zone
    made.type_in(field, "halif")
    offered = field.completer().popup()
    assert offered.isVisible()
    assert offered.model().index(0, 0).data() == "America/Halifax"
    assert not made.editor.save.isEnabled()  # no zone has that name
    qtbot.keyClick(offered, Qt.Key.Key_Down)
    qtbot.keyClick(offered, Qt.Key.Key_Return)
    made.settle()
    assert field.text() == "America/Halifax"
    assert made.editor.save.isEnabled()


def test_the_underlined_letter_of_a_field_leads_to_it(
    qtbot: Any, own_place: Path, editing: Any
) -> None:
    """Alt and the letter put the cursor into the field beside the words."""
    made = editing(own_place)
    activate(qtbot, made.view)
    for tab, field, key in (
        (1, made.editor.place.zone, Qt.Key.Key_Z),
        (2, made.editor.spots.ramp, Qt.Key.Key_R),
        (2, made.editor.spots.after_low, Qt.Key.Key_L),
        (4, made.editor.rules.checked, Qt.Key.Key_K),
    ):
        made.editor.tabs.setCurrentIndex(tab)
        made.editor.tabs.tabBar().setFocus()
        qtbot.keyClick(made.editor.tabs.tabBar(), key, Qt.KeyboardModifier.AltModifier)
        assert field.hasFocus(), field.accessibleName()


def test_what_is_typed_while_a_place_is_saved_stays(
    qtbot: Any, own_place: Path, editing: Any
) -> None:
    """A slow disk must not swallow the digits that are typed in the meantime."""
    made = editing(own_place)
    editor = made.editor
    made.type_in(editor.water.level, "0.6")
    editor.save.click()
    qtbot.keyClick(editor.water.level, Qt.Key.Key_End)
    qtbot.keyClicks(editor.water.level, "2")
    made.settle()
    assert tomllib.loads(own_place.read_text("utf-8"))["water"]["mean_level"] == 0.6
    assert editor.water.level.text() == "0.62"
    assert editor.save.isEnabled()
    editor.save.click()
    made.settle()
    assert tomllib.loads(own_place.read_text("utf-8"))["water"]["mean_level"] == 0.62


def test_a_place_can_be_edited_where_no_draft_can_be_kept(own_place: Path, editing: Any) -> None:
    """The disk of the drafts may be full: that is said, and the place itself is saved all the
    same."""
    (user_places().parent / "drafts").write_text("no folder", "utf-8")
    made = editing(own_place)
    editor = made.editor
    made.type_in(editor.water.level, "0.6")
    assert "cannot be written" in editor.said.text()
    editor.save.click()
    made.settle()
    assert tomllib.loads(own_place.read_text("utf-8"))["water"]["mean_level"] == 0.6


@pytest.mark.parametrize("points", [10, 16])
@pytest.mark.parametrize("unit", ["m", "ft"])
def test_fields_with_units_end_at_one_line(
    own_place: Path, editing: Any, unit: str, points: int
) -> None:
    """Whatever the unit beside each, and however large the letters."""
    app = QApplication.instance()
    font = QFont(app.font())
    larger = QFont(font)
    larger.setPointSize(points)
    desk = editing(own_place)
    try:
        app.setFont(larger)
        tabs = desk.editor.tabs
        tabs.setCurrentIndex(2)
        tabs.spots.show_unit(unit)
        QApplication.processEvents()
        spots = tabs.spots
        ends = {
            field.mapTo(spots, field.rect().topRight()).x()
            for field in (spots.ramp, spots.after_high, spots.after_low)
        }
        assert len(ends) == 1
    finally:
        app.setFont(font)
