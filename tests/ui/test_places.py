"""The place book, driven as a user would."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QWidget

from planner.assets import demo_place, sample_sites
from planner.phrasing import Style
from planner.sites.book import user_places
from planner.ui.places import view as places
from planner.ui.places.observed_rows import check_observed, observed_file
from planner.ui.places.view import PlacesView
from planner.ui.sources import Source, demo_source
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench

TODAY = date(2026, 11, 25)


class _Book:
    """A view with its workbench, and what it handed to other programs."""

    def __init__(self, qtbot: Any, source: Source) -> None:
        self.qtbot = qtbot
        self.bench = Workbench(ViewState(today=TODAY, day=TODAY))
        self.bench.open(source)
        self.view = PlacesView(self.bench)
        qtbot.addWidget(self.view)
        self.view.resize(1100, 700)
        self.view.show()
        self.settle()

    def settle(self) -> None:
        """Wait until nothing is read or worked out."""
        self.qtbot.waitUntil(lambda: self.bench.idle, timeout=20_000)

    def names(self) -> list[str]:
        """Return the places that the list shows."""
        return [item.text(0) for item in self.view.places.items() if not item.isHidden()]

    def choose(self, text: str) -> None:
        """Click a place in the list."""
        item = next(item for item in self.view.places.items() if item.text(0).startswith(text))
        self.view.places.tree.setCurrentItem(item)
        self.settle()

    def words(self, widget: QWidget) -> str:
        """Return every word that a widget shows in labels."""
        from PySide6.QtWidgets import QLabel

        return "\n".join(label.text() for label in widget.findChildren(QLabel))


@pytest.fixture
def shown_outside(monkeypatch: pytest.MonkeyPatch) -> list[Path]:
    """Collect what would be opened in other programs."""
    paths: list[Path] = []
    monkeypatch.setattr(places, "show_outside", paths.append)
    return paths


@pytest.fixture
def book(qtbot: Any, shown_outside: list[Path]) -> Iterator[_Book]:
    """The demo place open, without a log."""
    made = _Book(qtbot, Source(str(demo_place()), keep=False))
    yield made
    made.bench.close()


def test_the_open_place_is_marked_and_shown(book: _Book) -> None:
    """The user sees at once which place every view shows, and that the demo is invented."""
    assert "Sedge Hollow · open · invented" in book.names()
    assert book.view.name.text() == "Sedge Hollow"
    facts = book.words(book.view.panel)
    assert "America/New_York (EST on Wed 25 Nov, UTC-05:00)" in facts
    assert "yearly: held at their mid-year values" in facts
    assert "mixed, mainly semidiurnal" in facts
    assert "Not for navigation" not in facts  # the foot of the window says it, once
    assert book.view.panel.turns.rowCount() > 100
    assert not book.view.head.open.isEnabled()


def test_the_search_box_narrows_the_list(book: _Book) -> None:
    """A long book is searched by name."""
    book.view.places.search.setText("bost")
    assert book.names() == ["Boston, Massachusetts"]
    book.view.places.search.clear()
    assert len(book.names()) > 20


def test_the_list_grows_to_its_longest_name(book: _Book) -> None:
    """Two stations that are alike at both ends are told apart only by whole names."""
    book.view.resize(2300, 900)
    book.settle()
    tree = book.view.places.tree
    assert tree.viewport().width() >= tree.sizeHintForColumn(0)
    book.view.resize(1000, 600)
    book.settle()
    assert book.view.places.width() < 300


def test_looking_at_a_place_does_not_open_it_but_enter_does(book: _Book) -> None:
    """Browsing must not throw away what the other views show."""
    book.choose("Boston")
    assert book.view.name.text() == "Boston, Massachusetts"
    assert book.bench.site is not None
    assert book.bench.site.name == "Sedge Hollow"
    book.qtbot.keyClick(book.view.places.tree, Qt.Key.Key_Return)
    book.settle()
    assert book.bench.site.name == "Boston, Massachusetts"
    assert "Boston, Massachusetts · open" in book.names()


@pytest.mark.parametrize("hidden", [False, True])
def test_the_book_follows_a_place_that_is_opened_elsewhere(book: _Book, hidden: bool) -> None:
    """Opened from the box at the top left, it is what the user has in mind; also a second later,
    when the book comes up. Browsing goes on from there; a new place being written stays."""
    book.choose("Honolulu")
    book.view.setVisible(not hidden)
    book.bench.open(Source(str(sample_sites() / "boston-ma.toml")))
    book.settle()
    book.view.show()
    book.settle()
    assert book.view.name.text() == "Boston, Massachusetts"
    book.choose("Honolulu")
    book.view.hide()
    book.view.show()
    book.settle()
    assert book.view.name.text().startswith("Honolulu")
    book.view.new.click()
    book.bench.open(demo_source())
    book.settle()
    assert book.view.name.text() == "New place"


def test_heights_follow_the_users_units_and_constants_are_largest_first(book: _Book) -> None:
    """The same constituent reads 0.470 in metres and 1.542 in feet (0.470 / 0.3048)."""
    book.view.panel.setCurrentIndex(2)
    book.settle()
    model = book.view.panel.constants
    first = [model.data(model.index(0, column)) for column in range(4)]
    assert first == ["M2", "0.470", "74.0", "12.42 h"]
    state = book.bench.state
    state.change(style=replace(state.style, length="ft"))
    book.settle()
    assert model.data(model.index(0, 1)) == "1.542"
    assert model.headerData(1, Qt.Orientation.Horizontal) == "Amplitude, ft"


def test_spots_are_told_in_a_table_too(book: _Book) -> None:
    """What the picture shows can be read: depth, cover, hours bare."""
    book.view.panel.setCurrentIndex(1)
    book.settle()
    rows = book.view.panel.spot_rows
    assert rows.rowCount() == 6
    assert rows.data(rows.index(0, 0)) == "ramp flat"
    assert rows.data(rows.index(0, 4)) == "never"
    assert "too low for about" in book.view.panel.spots_said.text()


def test_a_sample_is_copied_once_and_never_over_the_users_own(book: _Book) -> None:
    """A second copy is refused in words, and the first stays as the user left it."""
    book.choose("Boston")
    book.view.head.copy.click()
    book.settle()
    copy = user_places() / "boston-ma.toml"
    assert book.view.chosen == copy
    assert "your copy" in book.view.head.said.text()
    assert book.view.head.edit.isVisible()
    copy.write_text(copy.read_text(encoding="utf-8") + "# mine\n", encoding="utf-8")
    sample = sample_sites() / "boston-ma.toml"
    book.view.places.choose(sample)
    book.settle()
    book.view.head.copy.click()
    book.settle()
    assert "nothing was written over" in book.view.head.said.text()
    assert copy.read_text(encoding="utf-8").endswith("# mine\n")


def test_a_broken_file_shows_every_problem_and_is_not_opened(qtbot: Any) -> None:
    """Where, what was found, what is wrong and what to do: a sentence for each problem."""
    own = user_places()
    own.mkdir(parents=True)
    text = demo_place().read_text(encoding="utf-8")
    text = text.replace("latitude = 29.6", "latitude = 129.6", 1).replace(
        "depth = 1.5", 'depth = "x"'
    )
    (own / "broken.toml").write_text(text.replace('"Sedge Hollow"', '"Bent"'), encoding="utf-8")
    book = _Book(qtbot, Source(str(demo_place()), keep=False))
    try:
        book.choose("Bent")
        said = book.words(book.view.problems)
        assert "2 problems in broken.toml" in said
        assert "latitude: " in said
        assert "(found 129.6); give degrees from -90 to 90" in said
        assert "spots[2].depth: " in said
        assert not book.view.panel.isVisible()
        assert not book.view.head.open.isEnabled()
        book.qtbot.keyClick(book.view.places.tree, Qt.Key.Key_Return)
        book.settle()
        assert book.bench.site is not None
        assert book.bench.site.name == "Sedge Hollow"
        (own / "broken.toml").write_text(demo_place().read_text(encoding="utf-8"), encoding="utf-8")
        book.view.head.again.click()
        book.settle()
        assert book.view.panel.isVisible()
    finally:
        book.bench.close()


def test_a_new_place_can_be_filled_in_a_text_editor_and_read_again(
    book: _Book, shown_outside: list[Path]
) -> None:
    """From an empty form to a place that opens, by way of the user's own text editor."""
    view, form = book.view, book.view.form
    view.new.click()
    form.write.click()
    book.settle()
    assert form.wrong.text().count("⚠") == 4
    form.name.setText("Otter Bight")
    form.latitude.setText("38.2")
    form.longitude.setText("-76.1")
    form.zone.setText("America/New_York")
    form.write.click()
    book.settle()
    path = user_places() / "otter-bight.toml"
    assert view.editor.path == path
    view.editor.done.click()
    book.settle()
    view.head.file.click()
    assert shown_outside == [path]
    assert "1 problem in otter-bight.toml" in book.words(view.problems)
    text = path.read_text(encoding="utf-8")
    path.write_text(
        text.replace("# mean_level", "mean_level")
        .replace("# [water.constituents]", "[water.constituents]")
        .replace("# M2", "M2")
        .replace("# S2", "S2"),
        encoding="utf-8",
    )
    view.head.again.click()
    book.settle()
    assert view.panel.isVisible()
    view.head.open.click()
    book.settle()
    assert book.bench.site is not None
    assert book.bench.site.name == "Otter Bight"


def test_a_picked_file_is_listed_shown_and_opened(
    book: _Book, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A place file need not lie in the book."""
    elsewhere = tmp_path / "castine.toml"
    shutil.copy(sample_sites() / "castine-me.toml", elsewhere)
    monkeypatch.setattr(places.QFileDialog, "getOpenFileName", lambda *_: (str(elsewhere), ""))
    book.view.pick.click()
    book.qtbot.waitUntil(
        lambda: (
            book.bench.idle and book.bench.site is not None and book.bench.site.path == elsewhere
        ),
        timeout=20_000,
    )
    assert book.view.chosen == elsewhere


def test_the_folder_is_made_and_shown(book: _Book, shown_outside: list[Path]) -> None:
    """The button works before the first place of one's own."""
    book.view.folder.click()
    assert shown_outside == [user_places()]
    assert user_places().is_dir()


# -- check against what you saw ----------------------------------------------------------------


def _type(book: _Book, row: int, time: str, height: str, kind: str) -> None:
    table = book.view.panel.observed.table
    table.item(row, 0).setText(time)
    table.item(row, 1).setText(height)
    table.cellWidget(row, 2).setCurrentText(kind)
    book.settle()


def test_observed_waters_are_compared_kept_and_put_back(book: _Book) -> None:
    """Bias and scatter come with their number; nothing entered is lost, nor what is removed."""
    panel = book.view.panel.observed
    turns = book.view.panel.report.turns  # type: ignore[union-attr]
    for row in range(5):
        # Each water seen 20 minutes late and 10 cm high: the bias to find, without scatter.
        late = (turns.times[row] + 20 * 60_000).astype("datetime64[s]")
        panel.add.click()
        kind = "high" if turns.is_high[row] else "low"
        _type(book, row, f"{late}Z", f"{turns.heights[row] + 0.10:.3f}", kind)
    said = book.words(panel)
    assert "5 of 5 observed waters found their predicted one." in said
    assert "on average 20 min later than predicted; single ones scatter about that by 0" in said
    assert "Heights: on average 10 cm higher than predicted" in said
    assert panel.differences.rowCount() == 5
    site = book.bench.site
    assert site is not None
    assert observed_file(site).read_text(encoding="utf-8").count("\n") == 6
    panel.table.selectRow(0)
    panel.remove.click()
    book.settle()
    assert "4 of 4" in book.words(panel)
    panel.back.click()
    book.settle()
    assert "5 of 5" in book.words(panel)
    assert len(check_observed(site, None).rows) == 5


def test_a_bad_water_is_named_by_its_row_and_others_stay(book: _Book) -> None:
    """A slip in one row is told by row; nothing is thrown away for it."""
    panel = book.view.panel.observed
    panel.add.click()
    _type(book, 0, "2026-11-20 08:12", "1.1", "high")
    panel.add.click()
    _type(book, 1, "yesterday", "wet", "low")
    said = book.words(panel)
    assert "Row 2, time: is not a time (found yesterday)" in said
    assert "Row 2, height: is not a height (found wet)" in said
    assert panel.rows()[0] == ("2026-11-20 08:12", "1.1", "high")


def test_waters_come_from_a_file_too(book: _Book, tmp_path: Path) -> None:
    """A table from a gauge is added to what is there; a bad one is refused by line."""
    good = tmp_path / "seen.csv"
    good.write_text("time,height,kind\n2026-11-20T08:12,1.1,high\n2026-11-20T14:40,,low\n")
    panel = book.view.panel.observed
    panel.load_file(good)
    book.settle()
    assert len(panel.rows()) == 2
    assert "2 of 2 observed waters" in book.words(panel)
    bad = tmp_path / "bad.csv"
    bad.write_text("time,height,kind\n2026-11-20T08:12,1.1,middling\n")
    panel.load_file(bad)
    book.settle()
    assert "line 2, kind: is neither (found middling)" in book.words(panel)
    assert len(panel.rows()) == 2


def test_few_waters_are_not_made_much_of(book: _Book) -> None:
    """One observed water is weather as much as tide, and the panel says so."""
    panel = book.view.panel.observed
    panel.add.click()
    _type(book, 0, "2026-11-20 08:12", "1.1", "high")
    assert "4 or more are needed" in book.words(panel)


def test_every_control_of_the_view_has_a_name(book: _Book) -> None:
    """A screen reader can say what each control is for."""
    # What lies inside a table, list or picture speaks through it.
    nameless = [
        widget
        for widget in book.view.findChildren(QWidget)
        if widget.focusPolicy() != Qt.FocusPolicy.NoFocus
        and widget.isVisibleTo(book.view)
        and not (widget.accessibleName() or getattr(widget, "text", str)())
        and not isinstance(widget.parent(), QAbstractScrollArea)
    ]
    assert nameless == []


def test_the_theme_reaches_the_charts(app: QApplication, book: _Book) -> None:
    """Charts recolour while they are open."""
    from planner.ui import theme

    theme.apply(app, "dark")
    book.bench.state.change(theme="dark")
    month = book.view.panel.month
    assert month.backgroundBrush().color().name() == theme.DARK.panel


def test_twelve_hour_clocks_reach_the_turns(qtbot: Any) -> None:
    """Times read as the user is used to."""
    bench = Workbench(ViewState(today=TODAY, day=TODAY, style=Style(hours12=True)))
    bench.open(Source(str(demo_place()), keep=False))
    view = PlacesView(bench)
    qtbot.addWidget(view)
    view.show()
    qtbot.waitUntil(lambda: bench.idle and view.panel.isVisible(), timeout=20_000)
    qtbot.waitUntil(lambda: bench.idle and view.panel.turns.rowCount() > 0, timeout=20_000)
    first = view.panel.turns.data(view.panel.turns.index(0, 0))
    assert first.endswith(("am", "pm"))
    bench.close()
