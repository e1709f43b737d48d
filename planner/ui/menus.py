"""The menus: every command by name, with its keys, and the choice in force marked."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING, Any, Final

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from planner.ui.languages import languages
from planner.ui.sources import demo_source
from planner.words import say

if TYPE_CHECKING:
    from planner.ui.window import MainWindow

_COLOURS: Final = (
    (say("As the system"), "system"),
    (say("Light", sense="colours"), "light"),
    (say("Dark", sense="colours"), "dark"),
)
_HABITS: Final = (
    ("length", ((say("Metres"), "m"), (say("Feet"), "ft"))),
    ("temperature", ((say("Celsius"), "C"), (say("Fahrenheit"), "F"))),
    ("hours12", ((say("24-hour clock"), False), (say("12-hour clock"), True))),
)
Keys = QKeySequence.StandardKey


class Menus:
    """Fills the menu bar of a window and keeps its marks and names true."""

    def __init__(self, window: MainWindow, views: Sequence[tuple[Any, str]]) -> None:
        self._window = window
        self.bench, self.state = window.bench, window.state
        self._marks: list[tuple[QAction, Callable[[], bool]]] = []
        self._fill_file()
        edit = self._menu(say("&Edit"))
        self.undo = self._add(edit, say("&Undo"), self.bench.undo, Keys.Undo)
        self.redo = self._add(edit, say("&Redo"), self.bench.redo, Keys.Redo)
        self._fill_view(views)
        self._fill_help()
        self.bench.log_changed.connect(self.name_undo)
        self.state.listen(self._mark)
        self.name_undo()
        self._mark()

    def _menu(self, text: str) -> QMenu:
        menu = self._window.menuBar().addMenu(text)
        assert isinstance(menu, QMenu)
        return menu

    def _fill_file(self) -> None:
        file = self._menu(say("&File"))
        self._add(file, say("&Open place file…"), self._window.open_place_file, Keys.Open)
        self._add(file, say("Show the &demo place"), lambda: self.bench.open(demo_source()))
        file.addSeparator()
        self._add(file, say("&Backups of the log…"), self._window.show_backups)
        file.addSeparator()
        self._add(file, say("&Quit"), self._window.close, Keys.Quit)

    def _fill_view(self, views: Sequence[tuple[Any, str]]) -> None:
        state, menu = self.state, self._menu(say("&View"))
        for number, (name, label) in enumerate(views, start=1):
            self._add(menu, label, partial(state.change, view=name), f"Ctrl+{number}")
        menu.addSeparator()
        flip = self._add(menu, say("Strip as &table"), self._flip_table, "Ctrl+T")
        self._mark_when(flip, lambda: state.as_table)
        colours = QActionGroup(menu)
        inside = menu.addMenu(say("&Colours"))
        for label, choice in _COLOURS:
            action = self._add(inside, label, partial(state.change, theme=choice))
            colours.addAction(action)
            self._mark_when(action, partial(lambda choice: state.theme == choice, choice))
        self._fill_languages(menu)
        inside = menu.addMenu(say("&Units"))
        for name, options in _HABITS:
            group = QActionGroup(menu)
            for label, value in options:
                action = self._add(inside, label, partial(self._restyle, name, value))
                group.addAction(action)
                self._mark_when(action, partial(self._is_style, name, value))
            inside.addSeparator()

    def _fill_languages(self, menu: QMenu) -> None:
        group, inside = QActionGroup(menu), menu.addMenu(say("&Language"))
        for code, name in {"": say("As the system"), **languages()}.items():
            action = self._add(inside, name, partial(self._choose_language, code))
            group.addAction(action)
            self._mark_when(action, partial(lambda code: self.state.language == code, code))

    def _choose_language(self, code: str) -> None:
        self.state.change(language=code)
        self.bench.notice.emit(say("The language changes when Fullshell is started again."))

    def _fill_help(self) -> None:
        menu, help_ = self._menu(say("&Help")), self._window.help
        self._add(menu, say("&Help with this view"), help_.of_view, "F1")
        self._add(menu, say("&Contents of the guide"), help_.contents)
        self._add(menu, say("&Questions and answers"), help_.questions)
        menu.addSeparator()
        self._add(menu, say("Check this &installation…"), help_.check)
        self._add(menu, say("&About Fullshell"), self._window.about)

    def _add(
        self,
        menu: QMenu,
        text: str,
        act: Callable[[], object],
        shortcut: Keys | str | None = None,
    ) -> QAction:
        action = QAction(text, self._window)
        # Qt would pass whether the action is checked; the acts here take nothing.
        action.triggered.connect(lambda _=False: act())
        if shortcut is not None:
            action.setShortcut(QKeySequence(shortcut))
        menu.addAction(action)
        return action

    # -- what is in force ----------------------------------------------------------------------

    def _mark_when(self, action: QAction, true: Callable[[], bool]) -> None:
        action.setCheckable(True)
        self._marks.append((action, true))

    def _mark(self, _changed: frozenset[str] = frozenset()) -> None:
        for action, true in self._marks:
            action.setChecked(true())

    def name_undo(self) -> None:
        """Say what undo and redo would do; there is nothing to press when they would do nothing."""
        for action, name, plain in (
            (self.undo, self.bench.undo_name, say("Undo")),
            (self.redo, self.bench.redo_name, say("Redo")),
        ):
            action.setText((name or plain).replace("&", "&&"))
            action.setEnabled(name is not None)

    def _flip_table(self) -> None:
        self.state.change(as_table=not self.state.as_table)

    def _restyle(self, name: str, value: Any) -> None:
        self.state.change(style=replace(self.state.style, **{name: value}))

    def _is_style(self, name: str, value: Any) -> bool:
        return bool(getattr(self.state.style, name) == value)
