"""Work off the window's thread: what comes back, what is dropped, what goes wrong."""

from __future__ import annotations

import gc
import threading
from collections.abc import Iterator
from itertools import pairwise
from typing import Any
from weakref import ref

import pytest
from PySide6.QtCore import QTimer

from planner.errors import PlannerError
from planner.ui.work import Desk

PATIENCE_MS = 20_000
PATIENCE_S = PATIENCE_MS / 1000


class _Gate:
    """Work that begins, says so, and waits to be let through."""

    def __init__(self, result: object = None) -> None:
        self.begun, self.opened = threading.Event(), threading.Event()
        self.result = result
        self.stopped = False

    def __call__(self, checkpoint: Any) -> object:
        self.begun.set()
        assert self.opened.wait(PATIENCE_S)
        self.stopped = True
        checkpoint()
        self.stopped = False
        return self.result


@pytest.fixture
def desk(qapp: Any) -> Iterator[Desk]:
    """A desk of two threads, empty again after the test."""
    made = Desk()
    yield made
    made.stop_all()


def test_a_result_comes_back_on_the_thread_that_asked(desk: Desk, qtbot: Any) -> None:
    """Work runs elsewhere; widgets may only be touched from here."""
    threads: list[int] = []
    results: list[int] = []

    def work(_: Any) -> int:
        threads.append(threading.get_ident())
        return 42

    def done(result: int) -> None:
        threads.append(threading.get_ident())
        results.append(result)

    desk.start("sum", "Adding up", work, done)
    assert not desk.idle
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert results == [42]
    assert threads[0] != threading.get_ident() == threads[1]


def test_what_is_running_is_told_and_then_that_it_ended(desk: Desk, qtbot: Any) -> None:
    """The status line names the newest work with a name, and falls silent at the end."""
    labels: list[str] = []
    desk.busy.connect(labels.append)
    slow, quick = _Gate(), _Gate()
    desk.start("a", "Slow", slow, lambda _: None)
    desk.start("b", "", quick, lambda _: None)
    assert labels == ["Slow", "Slow"]
    quick.opened.set()
    qtbot.waitUntil(lambda: len(labels) == 3, timeout=PATIENCE_MS)
    slow.opened.set()
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert labels == ["Slow", "Slow", "Slow", ""]


def test_a_failure_is_a_sentence_for_the_user(desk: Desk, qtbot: Any) -> None:
    """A PlannerError goes to whoever asked, else to everybody who listens; nothing is done."""
    told: list[str] = []
    desk.failed.connect(told.append)

    def fails(_: Any) -> None:
        raise PlannerError("The file is gone; pick another.")

    def never(_: Any) -> None:
        pytest.fail("there was no result")

    desk.start("read", "", fails, never)
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert told == ["The file is gone; pick another."]
    own: list[PlannerError] = []
    desk.start("read", "", fails, never, own.append)
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert len(told) == 1
    assert [str(error) for error in own] == told


def test_a_crash_is_told_apart_from_a_failure(desk: Desk, qtbot: Any) -> None:
    """What is our own fault is not passed off as the user's."""
    told: list[str] = []
    crashed: list[BaseException] = []
    desk.failed.connect(told.append)
    desk.crashed.connect(crashed.append)
    desk.start("divide", "", lambda _: 1 // 0, lambda _: None)
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert told == []
    assert [type(error) for error in crashed] == [ZeroDivisionError]


def test_the_late_result_of_a_replaced_job_is_dropped(desk: Desk, qtbot: Any) -> None:
    """Whoever clicks twice sees the second answer, whichever comes first."""
    results: list[object] = []
    first, second = _Gate("first"), _Gate("second")
    desk.start("plans", "", first, results.append)
    assert first.begun.wait(PATIENCE_S)
    desk.start("plans", "", second, results.append)
    second.opened.set()
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert results == ["second"]
    first.opened.set()
    desk.finish()
    # What the first job may have sent arrives before this, which is sent after it.
    desk.start("last", "", lambda _: "last", results.append)
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert results == ["second", "last"]


def test_a_result_already_on_its_way_is_dropped_too(desk: Desk, qtbot: Any) -> None:
    """The answer may lie in the queue of this thread when the question is changed."""
    results: list[object] = []
    desk.start("plans", "", lambda _: "first", results.append)
    desk.finish()
    desk.start("plans", "", lambda _: "second", results.append)
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert results == ["second"]


def test_a_stopped_job_ends_at_its_next_checkpoint(desk: Desk, qtbot: Any) -> None:
    """Stop is felt at once in the window and soon in the thread; no result, no error."""
    gate = _Gate()
    told: list[object] = []
    desk.failed.connect(told.append)
    desk.crashed.connect(told.append)
    desk.start("long", "Long", gate, told.append)
    assert gate.begun.wait(PATIENCE_S)
    desk.stop("long")
    assert desk.idle
    gate.opened.set()
    desk.stop_all()
    desk.start("last", "", lambda _: "last", told.append)
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert gate.stopped
    assert told == ["last"]
    desk.stop("never started")


def test_a_job_replaced_while_it_waits_is_never_worked_out(desk: Desk, qtbot: Any) -> None:
    """Holding an arrow key down asks for many days; only the last is worth the time."""
    gates = [_Gate(), _Gate()]
    for key, gate in zip("ab", gates, strict=True):
        desk.start(key, "", gate, lambda _: None)
    assert all(gate.begun.wait(PATIENCE_S) for gate in gates)
    ran: list[int] = []
    for day in range(200):
        desk.start("day", "", lambda _, day=day: ran.append(day), lambda _: None)
    for gate in gates:
        gate.opened.set()
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert ran == [199]


def test_a_job_that_rests_is_begun_only_if_it_is_still_wanted(desk: Desk, qtbot: Any) -> None:
    """Days passed over by arrow keys each ask why; only the one stayed at is worked out.

    The desk is not idle meanwhile: who waits for it gets what was asked for.
    """
    worked_out: list[str] = []
    results: list[str] = []

    def ask(day: str) -> None:
        def work(_: Any) -> str:
            worked_out.append(day)
            return day

        desk.start("why", "", work, results.append, rest_ms=30)

    for day in ("first", "second", "third"):
        ask(day)
    desk.start("other", "", lambda _: "other", results.append, rest_ms=30)
    desk.stop("other")
    assert not desk.idle
    desk.finish()
    desk.settle()
    assert results == [], "what has not begun has no result to hand over"
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert worked_out == results == ["third"]


def test_work_may_start_more_work_when_it_is_done(desk: Desk, qtbot: Any) -> None:
    """The outlook leads to plans; the status line does not flicker in between."""
    labels: list[str] = []
    desk.busy.connect(labels.append)
    results: list[object] = []
    desk.start(
        "one",
        "First",
        lambda _: 1,
        lambda one: desk.start("two", "Second", lambda _: one + 1, results.append),
    )
    qtbot.waitUntil(lambda: desk.idle, timeout=PATIENCE_MS)
    assert results == [2]
    assert labels[0] == "First"
    assert labels[-1] == ""
    assert "" not in labels[:-1]


def test_a_job_that_has_ended_is_let_go(qtbot: Any) -> None:
    """A thread pool keeps objects that it was given to run; each would hold its plans and days,
    megabytes with every place that is opened."""
    desk = Desk()
    held = []

    class Found:
        """What a job worked out."""

    for _ in range(3):
        found = Found()
        held.append(ref(found))
        desk.start("a", "", lambda _, found=found: found, lambda _: None)
        qtbot.waitUntil(lambda: desk.idle, timeout=20_000)
    del found
    gc.collect()
    assert [each() for each in held] == [None] * 3


def test_results_that_come_at_once_are_handed_over_one_a_turn(qtbot: Any) -> None:
    """Each makes views show something; all in one turn would hold the window for their sum."""
    desk, done = Desk(threads=3), []
    for key in "abc":
        desk.start(key, "", lambda _: None, lambda _, key=key: done.append(key))
    desk.finish()
    counts = []
    ticks = QTimer(interval=0)
    ticks.timeout.connect(lambda: counts.append(len(done)))
    ticks.start()
    qtbot.waitUntil(lambda: len(done) == 3)
    ticks.stop()
    steps = [after - before for before, after in pairwise([0, *counts, len(done)])]
    assert max(steps) == 1
