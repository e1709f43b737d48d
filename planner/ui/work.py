"""Work off the GUI thread: a plain function, what to do with its result, and a way to stop it."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal
from shiboken6 import isValid

from planner.errors import Cancelled, PlannerError
from planner.ui.imports import read_core
from planner.ui.turns import Turns

Checkpoint = Callable[[], None]


class Desk(QObject):
    """Runs jobs by key; a new job of a key replaces the old one, whose late result is dropped.

    turns: where results wait for their turn; several that come at once are handed over one a
    turn of the event loop, as each makes views show something.
    busy: emitted with the label of the work that is running, "" when none is.
    failed: emitted with the sentence of a PlannerError.
    crashed: emitted with any other exception, which is our own fault.
    """

    busy = Signal(str)
    failed = Signal(str)
    crashed = Signal(object)
    _ended = Signal(object)

    def __init__(
        self, parent: QObject | None = None, threads: int = 2, turns: Turns | None = None
    ) -> None:
        super().__init__(parent)
        self._turns = turns or Turns(self)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(threads)
        self._running: dict[str, _Job] = {}
        self._ended.connect(self._arrive)

    def start(
        self,
        key: str,
        label: str,
        work: Callable[[Checkpoint], Any],
        done: Callable[[Any], None],
        failed: Callable[[PlannerError], None] | None = None,
        rest_ms: int = 0,
    ) -> None:
        """Run `work(checkpoint)` elsewhere, then `done(result)` or `failed` on this thread.

        done: neither is called where this is a method of a widget that is gone by then.
        rest_ms: begin so much later, and not at all if it was asked for again or given up by
        then; for what nobody waits for, which would only slow down what they do wait for.
        """
        self.stop(key)
        job = _Job(key, label, work, done, failed, self._ended)
        self._running[key] = job
        if rest_ms:
            QTimer.singleShot(rest_ms, self, lambda: self._begin(job))
        else:
            self._begin(job)
        self._tell()

    def _begin(self, job: _Job) -> None:
        if self._running.get(job.key) is job:
            job.begun = True
            # Not the job itself: a pool never lets go of an object that it was given to run.
            self._pool.start(job.run)

    def stop(self, key: str) -> None:
        """Give up a job: it stops at its next checkpoint and its result is dropped."""
        job = self._running.pop(key, None)
        if job is not None:
            job.cancelled.set()
            self._tell()

    def give_up(self) -> None:
        """Give up every job, without waiting for it to notice."""
        for key in tuple(self._running):
            self.stop(key)

    def stop_all(self) -> None:
        """Give up every job and wait for the threads to end."""
        self.give_up()
        self._pool.waitForDone()

    def finish(self) -> None:
        """Wait for every job to end of itself; their results are dropped."""
        self._pool.waitForDone()

    def settle(self) -> None:
        """Wait for every job that has begun to end of itself, and hand over the results."""
        self._pool.waitForDone()
        for job in tuple(self._running.values()):
            if job.begun:
                self._finish(job)

    def has(self, key: str) -> bool:
        """Whether a job of a key is waiting or running."""
        return key in self._running

    @property
    def idle(self) -> bool:
        """Whether nothing is running."""
        return not self._running

    @property
    def label(self) -> str:
        """What is running, "" when nothing with a label is."""
        labels = [job.label for job in self._running.values() if job.label]
        return labels[-1] if labels else ""

    def _tell(self) -> None:
        self.busy.emit(self.label)

    def _arrive(self, job: _Job) -> None:
        self._turns.then(self, lambda: self._finish(job))

    def _finish(self, job: _Job) -> None:
        if self._running.get(job.key) is not job:
            return
        del self._running[job.key]
        error = job.error
        try:
            if error is not None and not isinstance(error, PlannerError):
                self.crashed.emit(error)
            elif not _is_gone(job.done):
                self._hand_over(job, error)
        finally:
            self._tell()

    def _hand_over(self, job: _Job, error: PlannerError | None) -> None:
        if error is None:
            job.done(job.result)
        elif job.failed is not None:
            job.failed(error)
        else:
            self.failed.emit(str(error))


def _is_gone(call: Callable[..., object]) -> bool:
    """Tell whether a call is a method of a widget that is no longer there."""
    owner = getattr(call, "__self__", None)
    return isinstance(owner, QObject) and not isValid(owner)


class _Job:
    def __init__(
        self,
        key: str,
        label: str,
        work: Callable[[Checkpoint], Any],
        done: Callable[[Any], None],
        failed: Callable[[PlannerError], None] | None,
        ended: Any,
    ) -> None:
        self.key, self.label, self.work, self.done, self.failed = key, label, work, done, failed
        self.begun = False
        self.cancelled = threading.Event()
        self.result: Any = None
        self.error: BaseException | None = None
        self._ended = ended

    def checkpoint(self) -> None:
        """Raise Cancelled once the job has been given up."""
        if self.cancelled.is_set():
            raise Cancelled

    def run(self) -> None:
        """Do the work, unless it was given up while it waited for a thread."""
        try:
            read_core()
            self.checkpoint()
            self.result = self.work(self.checkpoint)
        except Cancelled:
            return
        except Exception as error:  # noqa: BLE001  (handed to the GUI thread, which shows it)
            self.error = error
        if not self.cancelled.is_set():
            self._ended.emit(self)
