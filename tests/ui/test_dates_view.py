"""Choosing dates: what the view says agrees with what was worked out, and follows the user."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from itertools import chain
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget

from planner.assets import demo_place
from planner.clock import from_utc64
from planner.phrasing import Style, count_text, day_clock_text, day_text
from planner.trips import LIMIT_WORDS, soonest_as_good
from planner.trips.soak_water import soak_water
from planner.ui import theme
from planner.ui.dates.plan_panel import PlanPanel
from planner.ui.dates.soak_chart import soak_rows
from planner.ui.dates.view import DatesView
from planner.ui.sources import Source
from planner.ui.strip.legend import Legend
from planner.ui.workbench import Workbench

AMERICAN = Style("ft", "F", hours12=True)


def _show(qtbot: Any, bench: Workbench) -> DatesView:
    view = DatesView(bench)
    qtbot.addWidget(view)
    view.resize(1100, 700)
    view.show()
    return view


@pytest.fixture
def view(bench: Workbench, qtbot: Any, settle: Any) -> DatesView:
    """The view over the demo, with everything worked out."""
    made = _show(qtbot, bench)
    settle(bench)
    return made


def _rows(view: DatesView) -> list[list[str]]:
    model = view.plans.model
    return [
        [model.data(model.index(row, column)) for column in range(model.columnCount())]
        for row in range(model.rowCount())
    ]


def _words(widget: QWidget) -> str:
    return "\n".join(label.text() for label in widget.findChildren(QLabel) if not label.isHidden())


# -- what is said --------------------------------------------------------------------------------


def test_the_headline_is_the_soonest_plan_as_good_as_the_best(view: DatesView) -> None:
    """The question of the view is answered in its first line."""
    bench = view.bench
    assert bench.plans is not None
    assert bench.site is not None
    best, zone = soonest_as_good(bench.plans.plans), bench.site.zone
    assert view.headline.text() == (
        f"Set {day_clock_text(best.set_at, zone, Style())}, haul "
        f"{day_clock_text(best.haul_at, zone, Style())}, "
        f"{count_text(best.full_keepers)} full keepers"
    )
    assert view.state.plan == best.rank


def test_the_basis_says_what_the_forecast_rests_on(view: DatesView) -> None:
    """Biology alone and a log that was learned from are not the same."""
    outlook = view.bench.outlook
    assert outlook is not None
    said = view.basis.text()
    assert "ranges hold 8 times in 10" in said
    learned = f"learned from {outlook.forecast.trips} logged trips"
    assert (learned in said) == (outlook.forecast.basis == "log")
    assert ("published biology alone" in said) == (outlook.forecast.basis == "prior")
    other = "prior" if outlook.forecast.basis == "log" else "log"
    forecast = replace(outlook.forecast, basis=other, trips=7)
    view.bench.outlook = replace(outlook, forecast=forecast)
    view.bench.outlook_changed.emit()
    assert view.basis.text() != said


def test_the_table_shows_every_plan_in_its_order(view: DatesView) -> None:
    """Rank, set, haul, keepers and cover are those of the plans themselves."""
    bench = view.bench
    assert bench.plans is not None
    assert bench.site is not None
    rows = _rows(view)
    assert len(rows) == len(bench.plans.plans) > 3
    for row, plan in zip(rows, bench.plans.plans, strict=True):
        full = plan.full_keepers
        assert row[0] == str(plan.rank)
        assert row[1] == day_clock_text(plan.set_at, bench.site.zone, Style())
        assert row[2] == day_clock_text(plan.haul_at, bench.site.zone, Style())
        assert row[3] == f"{full.mean:.0f} ({full.low:.0f}–{full.high:.0f})"
        assert row[4]
        assert plan.lowest_cover_m is not None
        assert row[5].endswith(" m")
        assert abs(float(row[5].removesuffix(" m")) - plan.lowest_cover_m) <= 0.026


def test_what_the_limits_left_out_is_said(view: DatesView) -> None:
    """A user who misses a date can see which limit it fell to."""
    plans = view.bench.plans
    assert plans is not None
    said = view.plans.left_out.text()
    for limit, count in plans.rejected.items():
        assert (LIMIT_WORDS[limit] in said) == (count > 0)
    assert any(plans.rejected.values())


def test_past_trips_are_told_nearest_first(view: DatesView) -> None:
    """Outcomes of the log with how near they were, under the day they are compared with."""
    panel = view.like_it
    assert panel.heading.text() == f"Past trips like {day_text(view.state.day)}"
    said = _words(panel)
    assert "light: " in said
    assert "Moon " in said or "Same moon" in said
    assert said.count("not judged") == said.count("fullness not judged")


def test_the_chosen_plan_is_explained(view: DatesView) -> None:
    """When, why, what to mind, and that the tide is only astronomical."""
    plan, site = view.bench.plan, view.bench.site
    assert plan is not None
    assert site is not None
    said = _words(view.plan)
    assert view.plan.heading.text() == f"Chosen: plan {plan.rank}"
    assert day_clock_text(plan.haul_at, site.zone, Style()) in said
    assert all(reason in said for reason in plan.reasons)
    assert all(f"⚠ {warning}" in said for warning in plan.warnings)
    assert "Not for navigation" in said
    assert "water" in view.plan.chart.accessibleDescription()


# -- what the user does --------------------------------------------------------------------------


def test_choosing_a_row_chooses_its_plan_and_its_day(
    view: DatesView, qtbot: Any, settle: Any
) -> None:
    """Table, strip, panel and words follow one choice, made by key or by click."""
    bench = view.bench
    assert bench.plans is not None
    assert bench.site is not None
    table = view.plans.table
    row = bench.plans.plans.index(bench.plan)  # type: ignore[arg-type]
    assert table.currentIndex().row() == row
    key, step = (Qt.Key.Key_Down, 1) if row == 0 else (Qt.Key.Key_Up, -1)
    qtbot.keyClick(table, key)
    chosen = bench.plans.plans[row + step]
    assert bench.plan is chosen
    assert view.state.day == chosen.haul_at.astimezone(bench.site.zone).date()
    assert view.plan.heading.text() == f"Chosen: plan {chosen.rank}"
    assert view.strip.day == view.state.day
    assert view.strip._brackets.chosen == chosen.rank
    assert f"Plan {chosen.rank}: set" in view.day_line.text()
    cell = table.visualRect(view.plans.model.index(row, 1)).center()
    qtbot.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=cell)
    assert view.state.plan == bench.plans.plans[row].rank
    settle(bench)


def test_a_bracket_of_the_strip_chooses_the_row(view: DatesView, settle: Any) -> None:
    """The strip leads the table as the table leads the strip."""
    view.strip.plan_chosen.emit(4)
    assert view.plans.table.currentIndex().row() == 3
    assert view.bench.plan is not None
    assert view.bench.plan.rank == 4
    settle(view.bench)


def test_wishes_decide_between_plans_of_the_same_catch(
    view: DatesView, qtbot: Any, settle: Any
) -> None:
    """Late hauls come later in the day than early ones; the chosen days stay chosen."""
    bench = view.bench
    assert bench.site is not None
    zone = bench.site.zone

    def hours(option: str) -> list[int]:
        box = view.plans._boxes["haul_time"]
        box.setCurrentIndex(box.findData(option))
        box.activated.emit(box.currentIndex())
        settle(bench)
        assert bench.plans is not None
        assert len(_rows(view)) == len(bench.plans.plans)
        return [plan.haul_at.astimezone(zone).hour for plan in bench.plans.plans]

    view.state.change(plan=5)
    before = bench.plan
    assert before is not None
    early, late = hours("early"), hours("late")
    assert sum(late) / len(late) > sum(early) / len(early)
    after = bench.plan
    assert after is not None
    assert after.haul_at.astimezone(zone).date() == before.haul_at.astimezone(zone).date()
    assert after.set_at.astimezone(zone).date() == before.set_at.astimezone(zone).date()
    assert view.plans.table.currentIndex().row() == after.rank - 1


def test_units_and_clock_reach_everything_that_is_shown(view: DatesView, settle: Any) -> None:
    """Sentences that came with the plans are said again, not only the tables."""
    view.state.change(style=AMERICAN)
    settle(view.bench)
    shown = [
        view.headline.text(),
        view.day_line.text(),
        _words(view.plan),
        *chain.from_iterable(_rows(view)),
        view.plan.chart.accessibleDescription(),
        view.plan.chart.getAxis("left").labelText,
    ]
    said = "\n".join(shown)
    assert " ft" in said
    assert "°F" in said
    assert " am" in said
    for metric in (" m ", " m,", " m.", " m\n", "°C"):
        assert metric not in said, said


def test_the_day_in_words_follows_keys_and_the_mouse(
    view: DatesView, qtbot: Any, settle: Any
) -> None:
    """Pointing tells of a day without choosing it."""
    qtbot.keyClick(view.strip, Qt.Key.Key_Right)
    assert view.state.day == date(2026, 11, 26)
    assert view.day_line.text().startswith("Thu 26 Nov 2026")
    assert view.strip.accessibleDescription() == view.day_line.text()
    view.strip.day_pointed.emit(date(2026, 12, 3))
    assert view.day_line.text().startswith("Thu 3 Dec 2026")
    assert view.state.day == date(2026, 11, 26)
    view.strip.day_pointed.emit(None)
    assert view.day_line.text().startswith("Thu 26 Nov 2026")
    settle(view.bench)
    assert view.like_it.heading.text() == "Past trips like Thu 26 Nov"


def test_the_strip_as_a_table_has_the_same_days(view: DatesView, qtbot: Any, settle: Any) -> None:
    """Keys choose days there too, and the chosen one is in sight."""
    outlook = view.bench.outlook
    assert outlook is not None
    view.state.change(as_table=True)
    assert view.table.isVisible()
    assert not view.strip.isVisible()
    assert view.table.days.rowCount() == len(outlook.days)
    assert view.table.days.day(view.table.currentIndex().row()) == view.state.day
    qtbot.keyClick(view.table, Qt.Key.Key_Down)
    assert view.state.day == date(2026, 11, 26)
    logged = [view.table.days.data(view.table.days.index(r, 5)) for r in range(len(outlook.days))]
    trips = view.bench.log.outcomes("Sedge Hollow")
    assert sum(bool(cell) for cell in logged) == len(
        {t.when.date() for t in trips if t.when and t.when.date() >= outlook.days[0]}
    )
    view.state.change(as_table=False)
    assert view.strip.isVisible()
    settle(view.bench)


def test_wider_spans_are_worked_out_when_they_come_into_view(
    view: DatesView, qtbot: Any, settle: Any
) -> None:
    """The button shows a span; the days it lacks follow by themselves, with the plans kept."""
    bench = view.bench
    plans = bench.plans
    assert bench.outlook is not None
    assert bench.outlook.days[0] > date(2026, 5, 20)
    year = next(b for b in view.findChildren(QPushButton) if b.text() == "Year")
    year.click()
    first, _ = view.strip.days_in_view()
    assert first < date(2026, 5, 27)
    qtbot.waitUntil(
        lambda: bench.idle and bench.outlook is not None and bench.outlook.days[0] <= first,
        timeout=20_000,
    )
    assert bench.plans is plans
    assert view.plans.model.rowCount() == len(plans.plans)  # type: ignore[union-attr]
    next(b for b in view.findChildren(QPushButton) if b.text() == "Today").click()
    assert view.state.day == view.state.today


def test_load_up_leads_on(view: DatesView) -> None:
    """The chosen plan is one press from its checklist."""
    assert view.plan.load.isEnabled()
    view.plan.load.click()
    assert view.state.view == "load"


# -- room ----------------------------------------------------------------------------------------


@pytest.fixture(params=[8, 10, 16])
def text_pt(app: QApplication, request: pytest.FixtureRequest) -> Iterator[int]:
    """Small, usual and large text."""
    before, font = app.font(), QFont(app.font())
    font.setPointSize(request.param)
    app.setFont(font)
    theme.apply(app, "light")
    yield request.param
    app.setFont(before)
    theme.apply(app, "light")


@pytest.mark.parametrize("size", [(900, 600), (2300, 1300)])
def test_nothing_is_cut_or_covered(
    text_pt: int, size: tuple[int, int], bench: Workbench, qtbot: Any, settle: Any
) -> None:
    """What the view has in the smallest and a very large window, whatever the size of text."""
    view = _show(qtbot, bench)
    view.resize(*size)
    settle(bench)
    QApplication.processEvents()
    legend = view.findChild(Legend)
    strip_end = view.strip.mapTo(view, QPoint(0, view.strip.height())).y()
    legend_at = legend.mapTo(view, QPoint(0, 0)).y()
    assert legend_at >= strip_end
    assert view.day_line.mapTo(view, QPoint(0, 0)).y() >= legend_at + legend.height()
    assert legend.height() >= legend.heightForWidth(legend.width())
    for words in (view.headline, view.basis, view.day_line, view.plans.left_out, view.plan.when):
        assert words.height() >= words.heightForWidth(words.width()), words.text()
    rows = view.plans.table.viewport().height() // view.plans.table.rowHeight(0)
    assert rows >= 2
    assert view.headline.font().pointSize() > text_pt


# -- when there is nothing -----------------------------------------------------------------------


def test_before_a_place_is_open_nothing_is_promised(empty_bench: Workbench, qtbot: Any) -> None:
    """An empty window names what is missing, and offers no button that does nothing."""
    view = _show(qtbot, empty_bench)
    assert view.headline.text() == "No place is open yet"
    assert "place book" in view.basis.text()
    assert view.plans.model.rowCount() == 0
    assert not view.plan.load.isEnabled()
    assert "Pick a plan" in _words(view.plan)
    qtbot.keyClick(view.strip, Qt.Key.Key_Right)
    view.state.change(as_table=True, style=AMERICAN)
    assert view.table.days.rowCount() == 0


def test_no_plan_says_which_limits_are_in_the_way(
    empty_bench: Workbench, qtbot: Any, settle: Any, tmp_path: Path
) -> None:
    """A place closed for the whole season: why, and where limits are set."""
    text = demo_place().read_text(encoding="utf-8")
    shut = tmp_path / "shut.toml"
    shut.write_text(
        text + '\n[[closures]]\nfrom = "01-01"\nto = "12-31"\nreason = "all year"\n',
        encoding="utf-8",
    )
    view = _show(qtbot, empty_bench)
    empty_bench.open(Source(str(shut), keep=False))
    settle(empty_bench)
    assert view.headline.text() == "No set and haul in the next 12 weeks keeps every limit"
    said = view.plans.left_out.text()
    assert said.startswith("Set and haul times left out")
    assert LIMIT_WORDS["closed"] in said
    assert "place book" in said
    assert view.state.plan is None
    assert not view.plan.load.isEnabled()
    assert "So look at other days." in _words(view.plan)
    assert "No trips are logged here yet" in _words(view.like_it)
    assert view.day_line.text().count("all year") == 1


def test_plans_of_another_place_are_not_left_standing(
    view: DatesView, settle: Any, tmp_path: Path
) -> None:
    """What belongs to the place before goes at once, and the choice starts anew."""
    bench = view.bench
    view.state.change(plan=9)
    other = tmp_path / "other.toml"
    other.write_text(
        demo_place().read_text(encoding="utf-8").replace('"Sedge Hollow"', '"Otter Bight"'),
        encoding="utf-8",
    )
    seen: list[tuple[int, str, int | None]] = []
    bench.site_changed.connect(
        lambda: seen.append((view.plans.model.rowCount(), view.headline.text(), view.state.plan))
    )
    bench.open(Source(str(other), keep=False))
    settle(bench)
    assert seen == [(0, "Otter Bight", None)]
    assert view.headline.text().startswith("Set ")
    assert bench.plans is not None
    assert view.state.plan == soonest_as_good(bench.plans.plans).rank
    assert view.strip._catch.marks == []


# -- the workbench behind it ---------------------------------------------------------------------


def test_looking_far_while_plans_are_sought_does_not_lose_them(
    empty_bench: Workbench, settle: Any
) -> None:
    """The wider outlook takes the place of the first one, and the plans still follow."""
    bench, looked_before = empty_bench, []

    def look_far() -> None:
        looked_before.append(bench.outlook is None)
        bench.show_span(bench.state.today - timedelta(days=200), bench.state.today)

    bench.site_changed.connect(look_far)
    bench.open(Source(str(demo_place()), keep=False))
    settle(bench)
    assert looked_before == [True]
    assert bench.outlook is not None
    assert bench.outlook.days[0] <= bench.state.today - timedelta(days=200)
    assert bench.plans is not None


def test_a_place_that_cannot_be_read_leaves_everything_as_it_was(
    bench: Workbench, settle: Any, tmp_path: Path
) -> None:
    """Place, log and what the next start will open stay; the problems are told."""
    told: list[str] = []
    bench.trouble.connect(told.append)
    before = (bench.source, bench.site, bench.log.fingerprint, bench.plans)
    bench.open(Source(str(tmp_path / "none.toml")))
    settle(bench)
    assert (bench.source, bench.site, bench.log.fingerprint, bench.plans) == before
    assert len(told) == 1
    assert "none.toml" in told[0]


def test_a_log_that_cannot_be_read_leaves_the_place_without_one(
    bench: Workbench, settle: Any, tmp_path: Path
) -> None:
    """A broken table is told by line, and no other place's trips are shown in its stead."""
    told: list[str] = []
    bench.trouble.connect(told.append)
    table = tmp_path / "bad.csv"
    table.write_text("trip,place,trap,keepers\n1,Sedge Hollow,a,-3\n", encoding="utf-8")
    bench.open(Source(str(demo_place()), log=table))
    settle(bench)
    assert "line 2" in told[0]
    assert bench.site is not None
    assert bench.log.hauls == ()
    assert bench.plans is not None


def test_our_own_fault_comes_to_where_faults_are_shown(
    bench: Workbench, qtbot: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A crash in the background is raised on the window's thread, whole, and only once."""
    monkeypatch.setattr("planner.trips.outlook", lambda *_, **__: 1 // 0)
    with qtbot.captureExceptions() as exceptions:
        bench._refresh()
        qtbot.waitUntil(lambda: bool(exceptions), timeout=20_000)
    assert [kind for kind, *_ in exceptions] == [ZeroDivisionError]


def test_the_word_of_the_ramp_never_lies_on_that_of_the_haul(bench: Workbench, qtbot: Any) -> None:
    """In a narrow picture the ramp's word gives way; the legend has the same dashes."""
    panel = PlanPanel(bench)
    qtbot.addWidget(panel)
    panel.show()
    chart = panel.chart
    qtbot.waitUntil(lambda: chart._ramp_word is not None and bench.idle)
    said = []
    for width in range(150, 901, 50):
        chart.setFixedWidth(width)
        qtbot.waitUntil(lambda: abs(chart.box.width() - chart.width()) < 100)
        word = chart._ramp_word
        said.append(word.isVisible())
        boxes = [each.sceneBoundingRect() for each in chart._outing_words]
        here = word.sceneBoundingRect()
        assert not (word.isVisible() and any(here.intersects(box) for box in boxes)), width
    assert said == sorted(said), "the wider, the rather"
    assert said[-1], "there is room enough in a wide picture"


def test_the_sun_of_the_soak_begins_and_ends_as_in_the_sky(bench: Workbench) -> None:
    """Where the chart begins in full day the table said "sunlight begins", hours after sunrise."""
    assert bench.site is not None
    assert bench.plans is not None
    assert bench.outlook is not None
    site, sky = bench.site, bench.outlook.sky
    told = 0
    for plan in bench.plans.plans[:4]:
        rows = soak_rows(site, plan, soak_water(site, plan), Style())
        for words, of_days in (("sunlight begins", sky.sunrise), ("sunlight ends", sky.sunset)):
            known = {day_clock_text(from_utc64(at), site.zone, Style()) for at in of_days}
            said = {when for when, what, _ in rows if what == words}
            assert said <= known
            told += len(said)
    assert told >= 8


def test_the_soak_as_a_table_has_room_for_its_words(bench: Workbench, qtbot: Any) -> None:
    """Beside the reasons a table was so narrow that "low water" read "low wa..."."""
    panel = PlanPanel(bench)
    qtbot.addWidget(panel)
    panel.resize(360, 260)
    panel.show()
    qtbot.waitUntil(lambda: bench.idle and panel._rows.rowCount() > 0)
    panel.picture.button.click()
    table = panel.picture.table
    qtbot.waitUntil(lambda: table.columnWidth(1) >= table.sizeHintForColumn(1))
    panel.picture.button.click()
    assert panel._reasons.isVisible()
