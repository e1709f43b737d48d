"""Place book: is the water right here? The list of places, and all that is known of one."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Final

from PySide6.QtCore import QUrl
from PySide6.QtGui import QDesktopServices, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.errors import InputError, PlannerError, Problem
from planner.sites import find_place, list_places, load_site
from planner.sites.book import PlaceEntry, user_places
from planner.sites.keeping import copy_to_own
from planner.ui.parts import Empty, button, set_margins, title
from planner.ui.places.new_place import NewPlaceForm
from planner.ui.places.place_editor import PlaceEditor
from planner.ui.places.place_head import PlaceHead, PlaceProblems
from planner.ui.places.place_list import PlaceList
from planner.ui.places.place_panel import PlacePanel
from planner.ui.places.places_text import PlaceReport, place_report
from planner.ui.sources import place_filter, source_of
from planner.ui.theme import SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

_LIST_WIDTH: Final = 270
_LIST_SHARE: Final = 4  # the list takes a fourth of the view at most


@dataclass(frozen=True)
class _Opened:
    """What reading a chosen place gave: its report, or what is wrong with its file."""

    path: Path
    report: PlaceReport | None
    problems: tuple[Problem, ...] = ()


class PlacesView(QWidget):
    """The list on the left, the chosen place on the right."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.chosen: Path | None = None
        self._open_when_read = self._readable = False
        self._followed = self._open_path()
        self._build()
        bench.site_changed.connect(self._site_changed)
        self.state.listen(self._state_changed)
        self.read_list()

    # -- building ----------------------------------------------------------------------------

    def _build(self) -> None:
        # From the outside in: whatever is taken in takes all that it holds along, at a price.
        row, split = QHBoxLayout(self), QSplitter()
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(split)
        self._left, right = QWidget(), QWidget()
        for half in (self._left, right):
            split.addWidget(half)
        split.setChildrenCollapsible(False)
        self._fill_left()
        self._fill_right(right)
        split.setSizes([_LIST_WIDTH, 4 * _LIST_WIDTH])
        split.setStretchFactor(1, 1)
        self._split, self._list_moved = split, False
        split.splitterMoved.connect(self._moved)

    def _fill_right(self, right: QWidget) -> None:
        column = self._column = QVBoxLayout(right)
        set_margins(column, SPACE, SPACE, SPACE * 2, SPACE)
        self.name = title()
        self.head = PlaceHead(
            open_it=self.open_chosen,
            copy_it=self.copy_chosen,
            edit_it=self.edit_chosen,
            edit_file=self._edit,
            read_again=self.read_again,
        )
        self._right = QStackedWidget()
        column.addWidget(self.name)
        column.addWidget(self.head)
        column.addWidget(self._right, 1)
        self.panel = PlacePanel(self.bench)
        self.form = NewPlaceForm(self.bench)
        self.form.written.connect(self._place_written)
        self.form.cancelled.connect(self._show_chosen)
        self._right.addWidget(
            Empty(say("Choose a place on the left to see its water, its spots and its rules."))
        )
        self._right.addWidget(self.panel)
        self.problems = PlaceProblems()
        self._right.addWidget(self.problems)
        self._right.addWidget(self.form)

    @cached_property
    def editor(self) -> PlaceEditor:
        """The editor, made when somebody edits: its many fields would keep the view waiting."""
        made = PlaceEditor(self.bench)
        made.saved.connect(self._saved)
        made.left.connect(self._edited)
        self._right.addWidget(made)
        return made

    def _is_editing(self) -> bool:
        return isinstance(self._right.currentWidget(), PlaceEditor)

    def _fill_left(self) -> None:
        self.places = PlaceList()
        self.places.picked.connect(self._picked)
        self.places.activated.connect(self.open_chosen)
        self.new = button(
            say("New place"), self._new, say("Write the file of a new place to fill in")
        )
        self.pick = button(
            say("Open place file…"), self.pick_file, say("Open a place file from anywhere")
        )
        self.folder = button(
            say("Show the folder"), self._show_folder, say("Show your own place files")
        )
        column = QVBoxLayout(self._left)
        set_margins(column, SPACE * 2, SPACE, SPACE, SPACE)
        column.addWidget(title(say("Place book")))
        column.addWidget(self.places, 1)
        for each in (self.new, self.pick, self.folder):
            column.addWidget(each)
        # Its buttons are wider than that where letters are large.
        self._left.setMinimumWidth(max(210, column.minimumSize().width()))

    # -- the list ----------------------------------------------------------------------------

    def read_list(self, choose: Path | None = None) -> None:
        """Read the book anew; choose a place of it, else keep the choice or take the open one."""
        if choose is not None:
            self.chosen = choose

        def work(_: Checkpoint) -> tuple[list[PlaceEntry], Path | None]:
            return list_places(), _found(self.bench.source.place)

        self.bench.desk.start("place list", say("Reading the place book"), work, self._fill)

    def _fill(self, read: tuple[list[PlaceEntry], Path | None]) -> None:
        entries, opened = read
        wanted = self.chosen or opened
        listed = [entry.path for entry in entries]
        elsewhere = [p for p in dict.fromkeys((wanted, opened)) if p and p not in listed]
        self.places.fill(entries, elsewhere)
        self._mark_open()
        if wanted is not None:
            self.places.choose(wanted)

    def _mark_open(self) -> None:
        self.places.mark_open(self._open_path())
        self._name_open()
        self._fit_list()

    def _fit_list(self) -> None:
        """Widen the list to its longest name where there is room, until the user moves its edge."""
        if self._list_moved or not self._left.isVisible():
            return
        around = self._left.width() - self.places.width()
        whole = self.places.whole_width() + around
        width = max(_LIST_WIDTH, min(whole, self.width() // _LIST_SHARE))
        self._split.setSizes([width, self.width() - width])

    def _moved(self) -> None:
        self._list_moved = True

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_list()

    def _open_path(self) -> Path | None:
        return self.bench.site.path if self.bench.site is not None else None

    # -- the chosen place --------------------------------------------------------------------

    def _picked(self, entry: PlaceEntry) -> None:
        if entry.path != self.chosen:  # what is said of a place that was just made stays
            self.head.tell("")
        self.chosen = entry.path
        self._readable = False
        self._name_open()
        self._show_chosen()

    def _show_chosen(self) -> None:
        """Read the chosen place and show what was found."""
        self.head.setVisible(not self._is_editing())
        entry, today = self.places.entry(self.chosen), self.state.today
        if entry is None:
            if not self._is_editing():
                self._right.setCurrentIndex(0)
            return
        path = entry.path
        self.name.setText(entry.name)
        # Where a sample lies is of no use: its copy is what the user edits.
        self.head.show_entry(entry)
        if self._is_editing():
            return  # which shows the water itself; the place is read anew when it is left

        def work(checkpoint: Checkpoint) -> _Opened:
            try:
                site = load_site(path)
            except InputError as error:
                return _Opened(path, None, error.problems)
            checkpoint()
            return _Opened(path, place_report(site, today))

        self.bench.desk.start("place book", say("Working out the water there"), work, self._read)

    def _read(self, opened: _Opened) -> None:
        wanted, self._open_when_read = self._open_when_read, False
        self._readable = opened.report is not None
        self._name_open()
        if self._is_editing():
            return
        if opened.report is None:
            self.problems.show_problems(opened.path.name, opened.problems)
            self._right.setCurrentWidget(self.problems)
            return
        self.name.setText(opened.report.site.name)
        self.panel.show_report(opened.report)
        self._right.setCurrentWidget(self.panel)
        if wanted:
            self.open_chosen()

    def open_chosen(self) -> None:
        """Open the chosen place in every view; one with problems only shows them."""
        if self.chosen is None or not self._readable:
            return
        self.bench.open(source_of(str(self.chosen)))

    def _name_open(self) -> None:
        opened = self.chosen is not None and self.chosen == self._open_path()
        self.head.name_open(opened=opened, readable=self._readable)

    def copy_chosen(self) -> None:
        """Copy the chosen sample into the user's places and choose the copy."""
        source = self.chosen
        if source is None:
            return

        def done(path: Path) -> None:
            self.read_list(choose=path)
            self.head.tell(
                say("This is your copy: change what you like. The sample stays as it was.")
            )

        self.bench.clerk.start(
            "copy place",
            say("Copying the place"),
            lambda _: copy_to_own(source),
            done,
            self._refuse,
        )

    def read_again(self) -> None:
        """Read the chosen file anew, and open it anew when it is the open one."""
        self.head.tell("")
        self.read_list()
        self._open_when_read = self.chosen == self._open_path()
        self._show_chosen()

    def pick_file(self) -> None:
        """Let the user pick a place file from anywhere; it is opened when nothing is wrong."""
        path, _ = QFileDialog.getOpenFileName(self, say("Open a place file"), "", place_filter())
        if path:
            self._open_when_read = True
            self.read_list(choose=Path(path))

    def _new(self) -> None:
        self.name.setText(say("New place"))
        self.head.hide()  # its buttons are for the place chosen before
        self._right.setCurrentWidget(self.form)
        self.form.begin()

    def _place_written(self, path: Path) -> None:
        self.read_list(choose=path)
        self.edit_chosen()

    def edit_chosen(self) -> None:
        """Edit the chosen place here; the list steps aside so that there is room."""
        path = self.chosen
        if path is None:
            return

        def refused(error: PlannerError) -> None:
            self._edited()
            self._refuse(error)

        self._editing(True)
        self._right.setCurrentWidget(self.editor)
        self.editor.begin(path, refused)

    def _editing(self, on: bool) -> None:
        self._left.setVisible(not on)
        # Alone, it begins where every view begins.
        set_margins(self._column, SPACE * (1 + on), SPACE, SPACE * 2, SPACE)
        self.head.setVisible(not on)

    def _saved(self, path: Path) -> None:
        if path == self._open_path():
            self.bench.open(source_of(str(path)))
        self.read_list()

    def _edited(self) -> None:
        self._editing(False)
        self._right.setCurrentIndex(0)
        self._show_chosen()

    def _edit(self) -> None:
        if self.chosen is not None:
            show_outside(self.chosen)

    def _show_folder(self) -> None:
        folder = user_places()
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            self.head.tell(
                say(
                    "The folder {folder} cannot be made ({strerror}); allow that, or name another "
                    "in the variable FULLSHELL_HOME.",
                    folder=folder,
                    strerror=error.strerror,
                )
            )
        else:
            show_outside(folder)

    def _refuse(self, error: PlannerError) -> None:
        problems = error.problems if isinstance(error, InputError) else ()
        self.head.tell("; ".join(f"{p.what}: {p.remedy}" for p in problems) or str(error))

    # -- following ---------------------------------------------------------------------------

    def _site_changed(self) -> None:
        path = self._open_path()
        if path is not None and self.places.entry(path) is None:
            self.read_list()
        else:
            self._mark_open()
        if self.isVisible():
            self._follow_open()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._follow_open()

    def _follow_open(self) -> None:
        """Choose the place that was opened elsewhere; what is being written stays."""
        opened = self._open_path()
        if opened == self._followed or opened is None:
            return
        self._followed = opened
        if not self._is_editing() and self._right.currentWidget() is not self.form:
            self.chosen = opened
            self.places.choose(opened)

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "today" in changed:
            self._show_chosen()


def show_outside(path: Path) -> None:
    """Hand a file or folder to whatever program the system opens it with."""
    QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))


def _found(place: str) -> Path | None:
    try:
        return find_place(place)
    except InputError:
        return None
