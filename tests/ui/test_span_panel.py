"""High and low waters of any days in the place book: a leap day, a clock change, a century."""

from __future__ import annotations

import csv
from datetime import date
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import QDate, QTimer
from PySide6.QtWidgets import QLabel

from planner.assets import demo_place, sample_sites
from planner.clock import local_midnight
from planner.sites import load_site
from planner.sites.editing import edited
from planner.sites.keeping import new_place
from planner.tides import Tide
from planner.tides.events import Kind
from planner.ui.places.places_text import place_report
from planner.ui.places.span_panel import SpanPanel
from planner.ui.workbench import Workbench


class _Span:
    """The panel of a place, with days typed into it."""

    def __init__(self, qtbot: Any, bench: Workbench, place: Path) -> None:
        self.qtbot, self.bench = qtbot, bench
        self.site = load_site(place)
        self.panel = SpanPanel(bench)
        qtbot.addWidget(self.panel)
        self.panel.show()
        self.panel.show_site(self.site)

    def ask(self, first: date, last: date) -> None:
        """Set both days and begin."""
        self.panel.first.setDate(QDate(first.year, first.month, first.day))
        self.panel.last.setDate(QDate(last.year, last.month, last.day))
        self.panel.begin.click()

    def settle(self) -> None:
        """Wait until nothing is worked out any more."""
        self.qtbot.waitUntil(lambda: self.bench.idle, timeout=60_000)

    def rows(self) -> list[tuple[str, ...]]:
        """Return every row that the table shows."""
        model = self.panel.model
        return [
            tuple(model.data(model.index(row, column)) for column in range(3))
            for row in range(model.rowCount())
        ]

    def words(self) -> str:
        """Return what is said over the table."""
        column = self.panel.words
        labels = [column.itemAt(at).widget() for at in range(column.count())]
        return "\n".join(each.text() for each in labels if isinstance(each, QLabel))

    def direct(self, first: date, after: date) -> Any:
        """Return the turns of the same days asked for in one go."""
        zone = self.site.zone
        return Tide(self.site).turns(local_midnight(first, zone), local_midnight(after, zone))


@pytest.fixture
def demo(qtbot: Any, empty_bench: Workbench) -> _Span:
    """The demo place's panel."""
    return _Span(qtbot, empty_bench, demo_place())


def test_a_century_keeps_the_window_alive_shows_how_far_it_is_and_can_be_stopped(
    demo: _Span,
) -> None:
    """The event loop turns while 100 years are worked out; a stop keeps what was there."""
    beats: list[int] = []
    heart = QTimer(demo.panel, interval=10)
    heart.timeout.connect(lambda: beats.append(demo.panel.bar.value()))
    heart.start()
    demo.ask(date(1950, 1, 1), date(2049, 12, 31))
    demo.qtbot.waitUntil(lambda: 0 < demo.panel.bar.value() < 100, timeout=60_000)
    assert demo.panel.bar.isVisible()
    assert not demo.panel.begin.isEnabled()
    demo.panel.stop.click()
    assert demo.words() == "Stopped."
    assert demo.panel.found is None
    assert demo.panel.begin.isEnabled()
    demo.settle()
    beats.clear()
    demo.ask(date(1950, 1, 1), date(2049, 12, 31))
    demo.settle()
    assert demo.panel.found is not None
    # How often the bar is seen to move is a matter of the machine's speed; that it moves is not.
    assert len({beat for beat in beats if 0 < beat < 100}) > 1
    turns = demo.direct(date(1950, 1, 1), date(2050, 1, 1))
    found = demo.panel.found.events.only(ramp=False, slack=False)
    assert np.array_equal(found.times, turns.times)
    assert np.array_equal(found.kinds == Kind.HIGH, turns.is_high)
    # A crossing of the ramp's level for each that the century has, in the same go.
    assert demo.panel.model.rowCount() == len(demo.panel.found.events.times) > len(turns.times)
    assert "in 36,525 days" in demo.words()
    assert not demo.panel.bar.isVisible()


@pytest.mark.parametrize(
    ("first", "last"),
    [
        (date(1900, 1, 1), date(1900, 1, 31)),
        (date(2100, 12, 1), date(2100, 12, 31)),
        (date(2028, 1, 1), date(2028, 12, 31)),
    ],
    ids=["first month", "last month", "leap year"],
)
def test_the_ends_of_the_years_and_a_leap_year(demo: _Span, first: date, last: date) -> None:
    """Each is there, and asked for as one span gives the same waters."""
    demo.ask(first, last)
    demo.settle()
    days = (last - first).days + 1
    assert f"in {days} days" in demo.words()
    assert demo.panel.found is not None
    # Two tides in each lunar day of 24.84 hours.
    demo.panel.ramp.click()
    demo.panel.slack.click()
    assert abs(demo.panel.model.rowCount() - 4 * days / 1.035) < 6


def test_a_leap_day_and_the_day_the_clocks_change(demo: _Span) -> None:
    """29 February is there; the day of 25 hours names both clocks and loses no water."""
    demo.panel.ramp.click()
    demo.panel.slack.click()
    demo.ask(date(2028, 2, 29), date(2028, 2, 29))
    demo.settle()
    assert len(demo.rows()) in (3, 4)
    assert all(row[0].startswith("Tue 29 Feb 2028") for row in demo.rows())
    demo.ask(date(2026, 11, 1), date(2026, 11, 1))
    demo.settle()
    turns = demo.direct(date(2026, 11, 1), date(2026, 11, 2))
    assert len(demo.rows()) == len(turns.times)
    assert {row[0].split()[-1] for row in demo.rows()} <= {"EDT", "EST"}


def test_the_waters_are_saved_for_a_spreadsheet(demo: _Span, tmp_path: Path) -> None:
    """Every row with its instant, its clock with offset, height and kind; never half a file."""
    demo.panel.ramp.click()
    demo.panel.slack.click()
    demo.ask(date(2026, 10, 31), date(2026, 11, 3))
    demo.settle()
    out = tmp_path / "waters.csv"
    demo.panel.save_to(out)
    demo.settle()
    assert "Saved as waters.csv." in demo.words()
    rows = list(csv.DictReader(out.read_text("utf-8").splitlines()))
    turns = demo.direct(date(2026, 10, 31), date(2026, 11, 4))
    assert len(rows) == len(turns.times)
    assert {row["local_time"][-6:] for row in rows} == {"-04:00", "-05:00"}
    assert float(rows[0]["height_m"]) == pytest.approx(turns.heights[0], abs=0.0006)
    demo.panel.save_to(tmp_path / "no folder" / "waters.csv")
    demo.settle()
    assert "cannot be written" in demo.words()
    demo.ask(date(2026, 11, 3), date(2026, 11, 1))
    demo.settle()
    assert "is before the first" in demo.words()
    assert len(demo.rows()) == len(rows)  # what was there stays


@pytest.mark.parametrize(
    ("latitude", "longitude", "zone"),
    [
        (-16.5, 179.9, "Pacific/Fiji"),
        (51.9, -179.9, "America/Adak"),
        (1.9, -157.4, "Pacific/Kiritimati"),
    ],
)
def test_places_on_each_side_of_the_date_line(
    qtbot: Any, empty_bench: Workbench, latitude: float, longitude: float, zone: str
) -> None:
    """Made in the place book's own way, they have their leap day on their own clock."""
    path = new_place("Far Bight", latitude, longitude, zone)
    water = {
        ("water", "mean_level"): 0.7,
        ("water", "constituents"): {
            "M2": {"amplitude": 0.58, "phase": 190},
            "K1": {"amplitude": 0.15, "phase": 85},
        },
    }
    path.write_text(edited(path.read_text("utf-8"), water), "utf-8")
    far = _Span(qtbot, empty_bench, path)
    far.ask(date(2028, 2, 29), date(2028, 2, 29))
    far.settle()
    assert len(far.rows()) in (3, 4)
    assert all(row[0].startswith("Tue 29 Feb 2028") for row in far.rows())
    place_report(far.site, date(2028, 2, 29))  # a year from a leap day, as the first tab shows it


def test_ramp_and_slack_are_shown_as_ticked_and_saved_as_shown(
    qtbot: Any, empty_bench: Workbench, tmp_path: Path
) -> None:
    """Both stand among the turns at first; a tick taken away takes them from table and file."""
    path = tmp_path / "own.toml"
    wanted = {("ramp",): {"lowest_level": 0.4}, ("slack",): {"after_high_minutes": 40}}
    path.write_text(edited(demo_place().read_text("utf-8"), wanted), "utf-8")
    own = _Span(qtbot, empty_bench, path)
    own.ask(date(2026, 11, 1), date(2026, 11, 2))
    own.settle()
    kinds = [row[2] for row in own.rows()]
    assert "ramp begins to work" in kinds
    assert kinds[kinds.index("high") + 1 :].index("slack (estimated) after high water") <= 1
    assert "about 40 min after high water: your own estimate" in own.words()
    own.panel.ramp.click()
    assert {row[2].split()[0] for row in own.rows()} == {"high", "low", "slack"}
    own.panel.save_to(tmp_path / "rows.csv")
    own.settle()
    saved = list(csv.DictReader((tmp_path / "rows.csv").read_text("utf-8").splitlines()))
    assert {row["kind"] for row in saved} == {"high", "low", "slack_estimated_high"}
    assert len(saved) == len(own.rows())
    own.panel.slack.click()
    assert {row[2] for row in own.rows()} == {"high", "low"}
    assert "estimate" not in own.words()


def test_a_place_that_says_nothing_of_ramp_and_slack_has_no_boxes_for_them(
    qtbot: Any, empty_bench: Workbench, demo: _Span
) -> None:
    """A box that would do nothing is not there; what was ticked holds for the next place."""
    boston = _Span(qtbot, empty_bench, sample_sites() / "boston-ma.toml")
    assert not boston.panel.ramp.isVisible()
    assert not boston.panel.slack.isVisible()
    assert demo.panel.ramp.isVisible()
    demo.panel.ramp.click()
    demo.panel.show_site(boston.site)
    demo.panel.show_site(load_site(demo_place()))
    assert demo.panel.ramp.isVisible()
    assert not demo.panel.ramp.isChecked()


def test_another_place_puts_the_waters_away(demo: _Span) -> None:
    """Waters never stand under the name of another place."""
    demo.ask(date(2026, 11, 1), date(2026, 11, 3))
    demo.settle()
    assert demo.panel.save.isEnabled()
    demo.panel.show_site(load_site(sample_sites() / "boston-ma.toml"))
    assert demo.panel.model.rowCount() == 0
    assert not demo.panel.save.isEnabled()
