"""Editing one of the user's places: fields on the left, what they would mean on the right."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from pathlib import Path
from typing import Final

from PySide6.QtCore import QCoreApplication, QTimer, Signal
from PySide6.QtGui import QHideEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from planner.errors import InputError, PlannerError
from planner.sites.editing import edited
from planner.sites.reading import tables_of
from planner.sites.saving import drop_draft, keep_draft
from planner.ui.parts import Halves, body, button, caution
from planner.ui.places.edit_fields import EditFields
from planner.ui.places.edit_files import PlaceText, change_name, read_to_edit, restore, save_edit
from planner.ui.places.edit_history import SaveHistory, Step
from planner.ui.places.edit_pane import EditPane
from planner.ui.places.edit_preview import Preview, preview
from planner.ui.places.offsets_form import Whose
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say

_REST_MS: Final = 200  # typing rests this long before the water is worked out anew


class PlaceEditor(QWidget):
    """Tabs of fields over one place file; nothing is saved while it has problems.

    saved: the path of a file that was saved, undone or redone. left: the user is done.
    """

    saved = Signal(object)
    left = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.path: Path | None = None
        self._text = ""
        self._now: Preview | None = None
        self._histories: dict[Path, SaveHistory] = {}
        self._dirty = False
        self._rest = QTimer(self, singleShot=True, interval=_REST_MS)
        self._rest.timeout.connect(self._look)
        self._build()
        # Made in turns before the first place is read.
        self._unmade = deque((*self.tabs.steps(), self._make_pane))
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.keep)

    # -- building ----------------------------------------------------------------------------

    def _build(self) -> None:
        self.tabs = EditFields(self.bench)
        self.tabs.edited.connect(self._changed)
        left, self._right = QVBoxLayout(), QVBoxLayout()
        left.addWidget(self.tabs)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._make_buttons())
        column.addWidget(self._make_offer())
        self.said = body()
        self.said.hide()
        self.general = caution()
        self.general.hide()
        column.addWidget(self.said)
        column.addWidget(self.general)
        column.addWidget(Halves(left, self._right, (6, 5)), 1)

    def _make_next(self) -> None:
        self._unmade.popleft()()

    def _make_pane(self) -> None:
        """Make the pane, and name the sections, which are there by now."""
        fields = self.tabs
        self.place, self.water, self.spots = fields.place, fields.water, fields.spots
        self.temperature, self.rules, self.free = fields.temperature, fields.rules, fields.free
        self.water.offsets.whose = self._whose
        self.pane = EditPane(self.bench)
        self._right.addWidget(self.pane)

    def _make_buttons(self) -> QHBoxLayout:
        self.save = button(say("Save"), self.save_now, say("Save the place (Ctrl+S)"))
        self.undo = button(say("Undo"), self.undo_now)
        self.redo = button(say("Redo"), self.redo_now)
        self.done = button(
            say("Back to the place"), self.leave, say("What is not saved is kept as a draft")
        )
        row = QHBoxLayout()
        for each in (self.save, self.undo, self.redo, self.done):
            row.addWidget(each)
        row.addStretch(1)
        QShortcut(QKeySequence(QKeySequence.StandardKey.Save), self, self.save_now)
        return row

    def _make_offer(self) -> QWidget:
        self.offer = QWidget()
        self.offer.setObjectName("offer")
        row = QHBoxLayout(self.offer)
        row.setContentsMargins(0, SPACE // 2, 0, SPACE // 2)
        row.addWidget(
            body(say("An edit of this place was not saved. It is shown below as you left it.")), 1
        )
        self.drop = button(say("Start from the saved file"), self._drop_draft)
        row.addWidget(self.drop)
        self.offer.hide()
        return self.offer

    # -- opening and leaving -----------------------------------------------------------------

    def begin(self, path: Path, refused: Callable[[PlannerError], None]) -> None:
        """Read a place file and show it, or its draft; `refused` when it cannot be edited."""

        def read() -> None:
            self.bench.clerk.start(
                "edit place",
                say("Reading the place"),
                lambda _: read_to_edit(path),
                self._begun,
                refused,
            )

        self.bench.turns.take(self, *[self._make_next] * len(self._unmade), read)

    def _begun(self, read: PlaceText) -> None:
        self.path, self._text = read.path, read.text
        self._say("")
        self.offer.setVisible(read.draft is not None)
        shown = read.draft if read.draft is not None else read.text
        try:
            self._show(shown)
        except InputError:  # a draft that cannot be read as a place file is no use to anybody
            self.offer.hide()
            self._show(read.text)
        self.tabs.setCurrentIndex(0)

    def _show(self, text: str) -> None:
        """Fill every field from a text and work out what it means."""
        self.tabs.show_tables(tables_of(text, "place file"))
        name = tables_of(self._text, "place file").get("name")
        self.water.offsets.show_seen(name if isinstance(name, str) else "")
        self._dirty = text != self._text
        self._now = None
        self._name_buttons()
        self._look()

    def leave(self) -> None:
        """Go back to the place; what is not saved is kept."""
        self.bench.turns.drop(self)
        self.keep()
        self.left.emit()

    def keep(self) -> None:
        """Keep what is not saved as a draft, at once."""
        if self.path is None or not self._dirty:
            return
        try:
            text = edited(self._text, self.tabs.wanted())
            if text != self._text:
                keep_draft(self.path, text)
        except PlannerError as error:
            self._say(str(error))

    def hideEvent(self, event: QHideEvent) -> None:
        self.keep()
        super().hideEvent(event)

    def _drop_draft(self) -> None:
        if self.path is not None:
            self._put_aside()
            drop_draft(self.path)
            self.offer.hide()
            self._show(self._text)

    # -- editing -----------------------------------------------------------------------------

    def _whose(self) -> Whose:
        assert self.path is not None
        return Whose(self.path.parent, self.place.zone.text().strip(), self.tabs.unit)

    def _changed(self) -> None:
        self._dirty = True
        self._now = None
        self._say("")
        self._name_buttons()
        self._rest.start()

    def _look(self) -> None:
        """Work out the edited place and keep its draft, elsewhere than on this thread."""
        path, text, wanted, today = self.path, self._text, self.tabs.wanted(), self.state.today
        if path is None:
            return
        self._rest.stop()
        dirty = self._dirty

        def work(_: object) -> tuple[Preview, PlannerError | None]:
            found = preview(text, wanted, path, today)
            try:
                if dirty and found.changed:
                    keep_draft(path, found.text)
            except PlannerError as error:  # where no draft fits, the place itself may still
                return found, error
            return found, None

        def done(looked: tuple[Preview, PlannerError | None]) -> None:
            found, error = looked
            self._shown(found)
            if error is not None:
                self._no(error)

        self.bench.clerk.start("edit preview", say("Working out the water"), work, done, self._no)

    def _shown(self, found: Preview) -> None:
        self._now = found
        self._dirty = bool(found.changed)
        left = self.tabs.show_problems(found.problems)
        self.general.setText("\n".join(f"⚠ {problem}" for problem in left))
        self.general.setVisible(bool(left))
        self.pane.show_preview(found)
        self._name_buttons()

    def _no(self, error: PlannerError) -> None:
        self._say(str(error))

    @property
    def at_rest(self) -> bool:
        """Whether all that was typed has been looked at, worked out and shown."""
        return not self._rest.isActive() and self.bench.idle

    # -- saving ------------------------------------------------------------------------------

    @property
    def history(self) -> SaveHistory:
        """The saves of the place that is edited."""
        return self._histories.setdefault(self.path or Path(), SaveHistory())

    def save_now(self) -> None:
        """Save what the fields say, whole or not at all."""
        path, text, wanted = self.path, self._text, self.tabs.wanted()
        if path is None or not self.save.isEnabled():
            return

        def done(step: Step) -> None:
            self.history.add(step)
            typed_since = self.tabs.wanted() != wanted
            self._arrive(step.after, say("Saved: {name}.", name=step.name), typed_since)

        self.bench.clerk.start(
            "save place",
            say("Saving the place"),
            lambda _: save_edit(path, text, wanted),
            done,
            self._no,
        )

    def undo_now(self) -> None:
        """Put aside an edit that is not saved; else put back the file as it was before a save."""
        if self._dirty:
            self._put_aside()
            if self.path is not None:
                drop_draft(self.path)
            self.offer.hide()
            self._show(self._text)
        elif self.history.done:
            step = self.history.done[-1]
            self._write(
                step.before, step.after, self.history.undo, say("Undone: {name}.", name=step.name)
            )

    def redo_now(self) -> None:
        """Save again what was undone, or bring back the edit that was put aside."""
        if not self.history.undone or self._dirty:
            return
        step = self.history.undone[-1]
        if not step.saved:
            self.history.redo()
            self._show(step.after)
            return
        self._write(
            step.after, step.before, self.history.redo, say("Saved again: {name}.", name=step.name)
        )

    def _put_aside(self) -> None:
        try:
            edit = edited(self._text, self.tabs.wanted())
            if edit != self._text:
                name = change_name(self._text, edit)
                self.history.put_aside(self._text, edit, say("the edit of {name}", name=name))
        except InputError as error:
            self._say(str(error))

    def _write(self, text: str, over: str, then: Callable[[], Step], words: str) -> None:
        path = self.path
        if path is None:
            return

        def done(_: object) -> None:
            then()
            self._arrive(text, words)

        self.bench.clerk.start(
            "save place",
            say("Saving the place"),
            lambda _: restore(path, text, over),
            done,
            self._no,
        )

    def _arrive(self, text: str, words: str, typed_since: bool = False) -> None:
        self._text = text
        self.offer.hide()
        if typed_since:  # while it was being saved: that is an edit of its own
            self._changed()
        else:
            self._show(text)
        self._say(words)
        self.saved.emit(self.path)

    def _name_buttons(self) -> None:
        now, history = self._now, self.history
        self.save.setEnabled(now is not None and bool(now.changed) and not now.problems)
        self.save.setToolTip(
            say("Put right what is marked first: nothing is saved while there are problems")
            if now is not None and now.problems
            else say("Save the place (Ctrl+S)")
        )
        undo = say("the edit") if self._dirty else (history.done[-1].name if history.done else "")
        redo = history.undone[-1].name if history.undone and not self._dirty else ""
        for each, verb, name in ((self.undo, say("Undo"), undo), (self.redo, say("Redo"), redo)):
            short = name if len(name) <= 28 else f"{name[:27]}…"
            each.setText(f"{verb}: {short}" if name else verb)
            each.setToolTip(f"{verb}: {name}" if name else "")
            each.setEnabled(bool(name))

    def _say(self, text: str) -> None:
        self.said.setText(text)
        self.said.setVisible(bool(text))
