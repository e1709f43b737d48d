"""Moving plans by hand: real drags and keys, times that keep every limit, and the way back."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any

import pyqtgraph as pg
import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from planner.clock import to_utc64
from planner.trips import Plan, compare_plans
from planner.ui.dates.compare_dialog import CompareDialog
from planner.ui.dates.own_plans import read_own, write_own
from planner.ui.dates.view import DatesView
from planner.ui.load.view import LoadView
from planner.ui.strip.days import place_of_instant
from planner.ui.workbench import OWN, Workbench

_STEP = timedelta(minutes=15)


@pytest.fixture
def view(bench: Workbench, qtbot: Any, settle: Any, monkeypatch: pytest.MonkeyPatch) -> DatesView:
    """The days of the demo, with everything worked out, and no movement of the mouse dropped."""
    monkeypatch.setitem(pg.CONFIG_OPTIONS, "mouseRateLimit", -1)
    made = DatesView(bench)
    qtbot.addWidget(made)
    made.resize(1280, 760)
    made.show()
    made._show_span(14)  # so wide that a pixel is some twenty minutes
    settle(bench)
    qtbot.waitUntil(lambda: not made._range_timer.isActive() and bench.idle, timeout=30_000)
    return made


def _place(view: DatesView, plan: Plan, at: str) -> QPointF:
    """Return the pixel of an end or the middle of a plan's bracket."""
    strip, site = view.strip, view.bench.site
    assert site is not None
    lane = strip._brackets
    bracket = next(each for each in lane.brackets if each.rank == plan.rank)
    x = {"set": bracket.begin, "haul": bracket.end, "whole": (bracket.begin + bracket.end) / 2}[at]
    y = lane.top + (bracket.row + 0.5) * lane.height / lane.rows
    return QPointF(strip._plot.mapFromScene(strip._box.mapViewToScene(QPointF(x, y))))


def _drag(view: DatesView, start: QPointF, days: float, *, let_go: bool = True) -> None:
    """Press, pull by so many days in small movements, and let go."""
    viewport = view.strip._plot.viewport()
    none, left = Qt.MouseButton.NoButton, Qt.MouseButton.LeftButton
    pixels = days / view.strip._box.viewPixelSize()[0]

    def send(kind: QEvent.Type, at: QPointF, button: Any, buttons: Any) -> None:
        where = QPointF(viewport.mapToGlobal(at))
        event = QMouseEvent(kind, at, where, button, buttons, Qt.KeyboardModifier.NoModifier)
        QApplication.sendEvent(viewport, event)

    send(QEvent.Type.MouseMove, start, none, none)
    send(QEvent.Type.MouseButtonPress, start, left, left)
    for share in (0.25, 0.5, 0.75, 1.0):
        send(QEvent.Type.MouseMove, start + QPointF(share * pixels, 0), none, left)
    if let_go:
        send(QEvent.Type.MouseButtonRelease, start + QPointF(pixels, 0), left, none)


def _is_allowed(view: DatesView, plan: Plan) -> bool:
    """Tell whether a plan's set and haul are on the grid and allowed together."""
    search = view.bench.search
    assert search is not None
    found = search.candidates
    first, last = ((to_utc64(at) - found.times[0]) / _STEP for at in (plan.set_at, plan.haul_at))
    assert first == int(first)
    assert last == int(last)
    one, other = int(first), int(last)
    apart = other - one
    return bool(
        found.may_set[one]
        and found.may_haul[other]
        and found.min_steps <= apart <= found.max_steps
        and other <= found.last_haul[one]
    )


def test_an_end_dragged_moves_that_end_and_snaps(view: DatesView, settle: Any) -> None:
    """The set goes where the hand took it, or to the nearest time that keeps every limit."""
    bench = view.bench
    plan = bench.plan
    assert plan is not None
    _drag(view, _place(view, plan, "set"), 0.1)
    own = bench.own_plan
    assert own is not None
    assert bench.plan is own
    assert own.haul_at == plan.haul_at
    # A quarter hour of the grid, and half a pixel at each end of the pull.
    assert abs(own.set_at - (plan.set_at + timedelta(days=0.1))) <= timedelta(minutes=40)
    assert _is_allowed(view, own)
    assert bench.plans is not None
    assert plan in bench.plans.plans
    settle(bench)


def test_a_plan_dragged_as_a_whole_never_breaks_a_limit(view: DatesView, settle: Any) -> None:
    """Wherever a plan is pulled, over closed days, nights and working days."""
    bench = view.bench
    plan = bench.plan
    assert plan is not None
    for days in (-1.5, 0.3, 2.2, 4.4, 7.0):
        _drag(view, _place(view, plan, "whole"), days)
        own = bench.own_plan
        assert own is not None
        assert _is_allowed(view, own), days
    settle(bench)


def test_what_is_said_follows_the_hand(view: DatesView, settle: Any) -> None:
    """Keepers, light and cover are told while the plan is still held."""
    bench = view.bench
    plan = bench.plan
    assert plan is not None
    said = view.move_line.text()
    assert "drag it" in said
    _drag(view, _place(view, plan, "set"), 0.15, let_go=False)
    held = view.move_line.text()
    for word in ("Your own: set", "full keepers", "light crabs", "least cover", "Escape"):
        assert word in held
    assert view.plan.heading.text() == "Chosen: your own plan"
    assert view.plans.model.data(view.plans.model.index(0, 0)) == "own"
    view.moves.keep()
    settle(bench)


def _own(view: DatesView) -> Plan | None:
    return view.bench.own_plan


def test_the_way_back_is_named_and_works_by_key(view: DatesView, qtbot: Any, settle: Any) -> None:
    """Ctrl+Z at the strip takes back the move, not a change of the log, until none is left."""
    bench, strip = view.bench, view.strip
    plan = bench.plan
    assert plan is not None
    assert view.take_back.isHidden()
    for days in (0.1, 0.2):
        _drag(view, _place(view, bench.plan or plan, "haul"), days)
    assert not view.take_back.isHidden()
    assert view.focusWidget() is strip
    first = _own(view)
    key, control = Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier
    over = QKeyEvent(QEvent.Type.ShortcutOverride, key, control)
    over.ignore()
    QApplication.sendEvent(strip, over)
    assert over.isAccepted()
    qtbot.keyClick(strip, key, control)
    assert _own(view) is not None
    assert _own(view) is not first
    view.take_back.click()
    assert _own(view) is None
    assert bench.plan == plan
    over.ignore()
    QApplication.sendEvent(strip, over)
    assert not over.isAccepted()
    settle(bench)


def test_keys_take_move_and_let_go(view: DatesView, qtbot: Any, settle: Any) -> None:
    """S, H and M with arrows do what a hand does; Escape in the middle leaves no trace."""
    bench, strip = view.bench, view.strip
    plan = bench.plan
    assert plan is not None
    qtbot.keyClick(strip, Qt.Key.Key_S)
    assert "Moving its set" in view.move_line.text()
    day = view.state.day
    for _ in range(3):
        qtbot.keyClick(strip, Qt.Key.Key_Right)
    assert view.state.day == day
    own = bench.own_plan
    assert own is not None
    assert own.set_at == plan.set_at + 3 * _STEP
    assert own.haul_at == plan.haul_at
    qtbot.keyClick(strip, Qt.Key.Key_Return)
    qtbot.keyClick(strip, Qt.Key.Key_Right)
    assert view.state.day == day + timedelta(days=1)
    qtbot.keyClick(strip, Qt.Key.Key_M)
    qtbot.keyClick(strip, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert bench.own_plan is not own
    qtbot.keyClick(strip, Qt.Key.Key_Escape)
    assert bench.own_plan is own
    settle(bench)


def test_the_moved_plan_is_loaded_up_for(view: DatesView, qtbot: Any, settle: Any) -> None:
    """The checklist and the sheet are those of the user's own times."""
    bench = view.bench
    plan = bench.plan
    assert plan is not None
    _drag(view, _place(view, plan, "haul"), 0.1)
    load = LoadView(bench)
    qtbot.addWidget(load)
    load.show()
    settle(bench)
    assert load.facts is not None
    assert load.facts.plan is bench.own_plan


def test_the_moved_plan_is_worked_out_anew_with_the_ranking(view: DatesView, settle: Any) -> None:
    """Other units or wishes leave the own times chosen, with sentences that fit."""
    bench = view.bench
    plan = bench.plan
    assert plan is not None
    _drag(view, _place(view, plan, "haul"), 0.1)
    own = bench.own_plan
    assert own is not None
    bench._rank()
    settle(bench)
    assert bench.state.plan == OWN
    assert bench.own_plan == own
    assert bench.own_plan is not own


def test_beside_the_brackets_the_strip_itself_is_dragged(view: DatesView, settle: Any) -> None:
    """Pulling an empty place pans the days, and no plan moves."""
    bench, before = view.bench, view.strip.days_in_view()
    plan, site = bench.plan, bench.site
    assert plan is not None
    assert site is not None
    start = _place(view, plan, "set")
    empty = place_of_instant(plan.set_at, site.zone) - view.strip._box.viewRange()[0][0]
    _drag(view, start - QPointF(empty / 2 / view.strip._box.viewPixelSize()[0], 0), 3.0)
    assert bench.own_plan is None
    assert view.strip.days_in_view() != before
    settle(bench)


# -- comparing and explaining --------------------------------------------------------------------


def test_two_plans_are_compared_side_by_side(view: DatesView, qtbot: Any, settle: Any) -> None:
    """The chosen plan and the best other, row by row, by a button that keys reach; any other two
    by the boxes."""
    assert view.plan.compare.text() == "Com&pare…"
    view.plan.compare.click()
    dialog = view.plan.findChild(CompareDialog)
    assert dialog is not None
    chosen, plans, site = view.state.plan, view.bench.plans, view.bench.site
    assert plans is not None
    assert site is not None
    best_other = next(plan.rank for plan in plans.plans if plan.rank != chosen)
    assert [box.currentData() for box in dialog.boxes] == [chosen, best_other]
    for box, rank in zip(dialog.boxes, (1, 5), strict=True):
        box.setCurrentIndex(box.findData(rank))
        box.activated.emit(box.currentIndex())
    found = compare_plans(plans.plans[0], plans.plans[4], site.zone, view.state.style)
    QApplication.processEvents()  # a layout shows what was added when the loop turns
    words = [label.text() for label in dialog.findChildren(QLabel) if not label.isHidden()]
    for row in found.rows:
        assert all(cell in words for cell in row), row
    shown = {what: of for what, *of in found.rows}
    assert all(shown[f"Daylight left after the {outing}"] for outing in ("set", "haul"))
    assert shown["Wish for 30 min of daylight after the haul"] == ["met", "met"]
    assert dialog.sentence.text() == found.sentence
    dialog.reject()
    settle(view.bench)


def test_the_chosen_plan_says_what_it_costs(view: DatesView, settle: Any) -> None:
    """The last of the ranking is held against the first, in the plan's own panel."""
    bench = view.bench
    assert bench.plans is not None
    assert bench.site is not None
    first, last = bench.plans.plans[0], bench.plans.plans[-1]
    view.state.change(plan=last.rank)
    settle(bench)
    said = [label.text() for label in view.plan.findChildren(QLabel)]
    assert compare_plans(first, last, bench.site.zone, view.state.style).sentence in said


def test_any_day_says_what_rules_it_out_or_what_it_gives(view: DatesView, settle: Any) -> None:
    """A working or a closed day gives its reason once; a free one its best haul."""
    view.strip.day_pointed.emit(date(2026, 12, 2))
    settle(view.bench)
    said = view.day_line.text()
    assert said.count("Wednesdays are not free") == 1
    assert "No set and no haul" in said
    view.strip.day_pointed.emit(date(2027, 2, 14))
    settle(view.bench)
    said = view.day_line.text()
    assert said.count("trap clean-up") == 1
    assert "No set and no haul: closed (trap clean-up" in said
    view.strip.day_pointed.emit(date(2026, 12, 4))
    settle(view.bench)
    assert "With a set on Fri 4 Dec the best haul is" in view.day_line.text()


def test_ranks_that_a_wish_moves_are_marked(view: DatesView, settle: Any) -> None:
    """Places gained and lost stand in the table until the next wish."""
    before = view.plans._ranks()
    box = view.plans._boxes["haul_time"]
    marks: list[str] = []
    for wish in ("late", "early"):
        box.setCurrentIndex(box.findData(wish))
        box.activated.emit(box.currentIndex())
        settle(view.bench)
        after = view.plans._ranks()
        model = view.plans.model
        for row in range(model.rowCount()):
            rank = model.plan(row).rank
            days = next((key for key, value in after.items() if value == rank), None)
            places = before.get(days, rank) - rank if days is not None else 0
            shown = model.data(model.index(row, 0))
            assert shown == (f"{'↑' if places > 0 else '↓'}{abs(places)} {rank}" if places else
                             str(rank))  # fmt: skip
            marks.append(shown)
        before = after
    assert any("↑" in mark for mark in marks)


def test_a_wish_for_a_short_soak_is_chosen_in_the_window(view: DatesView, settle: Any) -> None:
    """The box that says what plans are ranked for: soaks get shorter, ranks move, the price is
    said, and nothing is left of it when most keepers are wished for again."""
    bench, box = view.bench, view.plans._trade
    assert bench.plans is not None
    before = bench.plans.plans
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Down)
    assert box.currentData() == ("short", "any")
    box.activated.emit(box.currentIndex())
    settle(bench)
    short = bench.plans.plans
    assert short[0].soak_h < before[0].soak_h - 6
    assert "Wish for a short soak" in " ".join(short[0].reasons)
    first_column = [view.plans.model.data(view.plans.model.index(row, 0)) for row in range(6)]
    assert any("↑" in text or "↓" in text for text in first_column)
    box.setCurrentIndex(0)
    box.activated.emit(0)
    settle(bench)
    assert [plan.haul_at for plan in bench.plans.plans] == [plan.haul_at for plan in before]


# -- the next start ------------------------------------------------------------------------------


def test_the_own_plan_is_there_at_the_next_start(view: DatesView, qtbot: Any, settle: Any) -> None:
    """Times drawn on Friday are the chosen plan on Saturday too; what was taken back is not, and
    days that are over are not."""
    bench, strip = view.bench, view.strip
    assert bench.site is not None
    bench.source = replace(bench.source, demo=False, keep=True)
    qtbot.keyClick(strip, Qt.Key.Key_S)
    qtbot.keyClick(strip, Qt.Key.Key_Right)
    qtbot.keyClick(strip, Qt.Key.Key_Return)
    own = _own(view)
    assert own is not None
    assert read_own(bench.site.name) == (own.set_at, own.haul_at)

    def start_again() -> Plan | None:
        bench.choose_own(None, 1)
        view.moves._forget()
        bench._rank()
        settle(bench)
        return bench.plan

    assert start_again() == own
    assert not view.take_back.isHidden()
    view.state.today += timedelta(days=9)
    assert start_again() != own
    view.state.today -= timedelta(days=9)
    qtbot.keyClick(strip, Qt.Key.Key_M)
    qtbot.keyClick(strip, Qt.Key.Key_Right)
    qtbot.keyClick(strip, Qt.Key.Key_Return)
    while view.moves.can_undo:
        view.moves.undo()
    assert read_own(bench.site.name) is None


def test_a_damaged_file_of_own_plans_is_no_end(tmp_path: Path) -> None:
    """What cannot be read is no plan, and the next one is kept."""
    path = tmp_path / "own.json"
    times = (datetime(2026, 11, 27, 12, tzinfo=UTC), datetime(2026, 11, 29, 14, tzinfo=UTC))
    for content in ("", "[1]", '{"place": 3}', '{"place": ["a", "b"]}', '{"place": ["2026"]}'):
        path.write_text(content, encoding="utf-8")
        assert read_own("place", path) is None
        write_own("place", times, path)
        assert read_own("place", path) == times
