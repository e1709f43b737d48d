"""Every room of the window in turn: views, their tabs, charts as tables, forms and dialogs.

Shared by the tests of access and by the benchmarks, so that what is added here is looked at by
all of them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime
from functools import partial
from typing import Any

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QDialog, QTabWidget, QWidget

from planner.assets import demo_log
from planner.intake import read_grid
from planner.logbook import Log
from planner.logbook.merging import merge
from planner.ui.hauls.intake_dialog import IntakeDialog
from planner.ui.hauls.intake_text import Offer, first_offer
from planner.ui.hauls.merge_dialog import MergeDialog
from planner.ui.tables import ChartWithTable
from planner.ui.window import VIEWS, MainWindow

Act = Callable[[str, Callable[[], object]], None]
Room = tuple[str, QWidget]


class Rooms:
    """Walks through the window; `act` is given what each step is called and the call itself.

    Whoever walks has the demo open. The place book gets a copy of it.
    """

    def __init__(self, window: MainWindow, act: Act | None = None) -> None:
        self.window = window
        self.act = act or self._act

    def walk(self) -> Iterator[Room]:
        """Open each room, let it be filled, and give its name and the widget that holds it."""
        more = {"dates": self._dates, "load": self._load, "hauls": self._hauls}
        for name, label, *_ in VIEWS:
            self.act(f"show {label}", partial(self.window.state.change, view=name))
            yield label, self.window
            yield from self._tabs(label)
            yield from self._tables(label, self.window)
            yield from more.get(name, self._nothing)()
        yield from self._place_book()
        yield from self._dialog("Backups of the log", self.window.show_backups)

    @property
    def view(self) -> Any:
        """The view that is shown."""
        return self.window._stack.currentWidget()

    def _act(self, _step: str, call: Callable[[], object]) -> None:
        call()
        settle(self.window)

    # -- views ---------------------------------------------------------------------------------

    def _nothing(self) -> Iterator[Room]:
        yield from ()

    def _tabs(self, label: str) -> Iterator[Room]:
        for tabs in self.view.findChildren(QTabWidget):
            before = tabs.currentIndex()
            for at in range(tabs.count() if tabs.isVisible() else 0):
                if at != before:
                    name = f"{label}: {tabs.tabText(at)}"
                    self.act(f"open {name}", partial(tabs.setCurrentIndex, at))
                    yield name, self.window
                    yield from self._tables(name, self.window)
            tabs.setCurrentIndex(before)

    def _tables(self, label: str, inside: QWidget) -> Iterator[Room]:
        charts = [chart for chart in inside.findChildren(ChartWithTable) if chart.isVisible()]
        for chart in charts:
            self.act(f"{label}: {chart.button.accessibleName()}", chart.button.click)
        if charts:
            yield f"{label}, charts as tables", inside
        for chart in charts:
            chart.button.click()

    def _dates(self) -> Iterator[Room]:
        state = self.window.state
        self.act("days as a table", partial(state.change, as_table=True))
        yield "Choose dates, days as a table", self.window
        self.act("days as the strip", partial(state.change, as_table=False))
        yield from self._dialog("Compare two plans", self.view.plan.compare.click)

    def _load(self) -> Iterator[Room]:
        yield from self._dialog("Where the traps go", self.view.traps.move_traps.click)

    def _hauls(self) -> Iterator[Room]:
        view = self.view
        for name, call in (
            ("Traps", view.traps.click),
            ("Look back", view.look_back.click),
            ("Bin", view.bin.click),
            ("Single crabs", view.entry.crabs.click),
        ):
            yield from self._dialog(name, call)
        made = _offer(self.window)
        yield from self._dialog("Import a table", lambda: IntakeDialog(made, view).open())
        yield from self._dialog("Import a whole log", lambda: _merge_dialog(self.window).open())

    def _place_book(self) -> Iterator[Room]:
        view = self.view
        self.act("new place", view.new.click)
        yield "Place book: new place", self.window
        self.act("the chosen place again", view.form.cancelled.emit)
        self.act("copy a place", view.copy_chosen)
        self.act("edit a place", view.edit_chosen)
        yield "Place book: editing", self.window
        yield from self._tabs("Place book: editing")
        self.act("leave the editor", view.editor.leave)

    # -- dialogs -------------------------------------------------------------------------------

    def _dialog(self, name: str, call: Callable[[], object]) -> Iterator[Room]:
        self.act(f"open {name}", call)
        found = [d for d in self.window.findChildren(QDialog) if d.isVisible()]
        assert len(found) == 1, f"{name}: {len(found)} dialogs are open"
        yield name, found[0]
        yield from self._tables(name, found[0])
        self.act(f"close {name}", found[0].close)
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def settle(window: MainWindow) -> None:
    """Turn the event loop until nothing is worked out; what has arrived may ask for more."""
    for _ in range(3):
        while not window.bench.idle:
            QApplication.processEvents()
        for _ in range(3):
            QApplication.processEvents()


def _merge_dialog(window: MainWindow) -> MergeDialog:
    """Return the dialog on a log in which one trap of the open one has another count."""
    bench, view = window.bench, window._stack.currentWidget()
    first = bench.log.hauls[0]
    there = Log((replace(first, keepers=(first.keepers or 0) + 1), replace(first, trip="later")))
    return MergeDialog("boat.logbook", merge(bench.log, there), view.files._zone_of, view)


def _offer(window: MainWindow) -> Offer:
    bench, view = window.bench, window._stack.currentWidget()
    assert bench.site is not None
    return first_offer(
        lambda letters: read_grid(demo_log(), letters),
        bench.log, view.files._zone_of, datetime.now(UTC), bench.site.name, lambda: None,
    )  # fmt: skip
