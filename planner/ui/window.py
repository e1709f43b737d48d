"""The window: a rail of five places of work, the chosen view, and what is being worked on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from importlib import import_module
from typing import Final

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtGui import QAction, QCloseEvent, QKeySequence
from PySide6.QtWidgets import (
    QApplication,
    QButtonGroup,
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QMessageBox,
    QProgressBar,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.phrasing import TIDE_CAUTION
from planner.ui import theme
from planner.ui.parts import body, quiet
from planner.ui.state import ViewName
from planner.ui.theme import SPACE
from planner.ui.workbench import Source, Workbench, demo_source

# name, label, the question it answers, module and class; a view is built when first shown.
VIEWS: Final[tuple[tuple[ViewName, str, str, str, str], ...]] = (
    ("dates", "Choose dates", "When should I set and pull?", "dates", "DatesView"),
    ("load", "Load up", "What goes aboard, and what are the rules here?", "load_up", "LoadView"),
    ("hauls", "Log hauls", "What did each trap give?", "hauls", "HaulsView"),
    ("evidence", "Weigh evidence", "What do I know, and how sure?", "evidence", "EvidenceView"),
    ("places", "Place book", "Is the water right here?", "places", "PlacesView"),
)
_BUSY_SHOWN_AFTER_MS: Final = 200
_STOP_SHOWN_AFTER_MS: Final = 2000


class MainWindow(QMainWindow):
    """Shows the workbench; owns nothing but widgets."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.state = bench.state
        self.setWindowTitle("Fullshell")
        self.setMinimumSize(QSize(1000, 640))
        self._views: dict[ViewName, QWidget] = {}
        self._buttons: dict[ViewName, QPushButton] = {}
        self._build()
        self._build_menus()
        self.state.listen(self._state_changed)
        bench.site_changed.connect(self._site_changed)
        bench.log_changed.connect(self._name_undo)
        bench.trouble.connect(self._say)
        bench.notice.connect(self._say)
        bench.desk.busy.connect(self._busy)
        self.show_view(self.state.view)

    # -- building ----------------------------------------------------------------------------

    def _build(self) -> None:
        self._stack = QStackedWidget()
        self._banner = self._make_banner()
        self._message = self._make_message()
        right = QVBoxLayout()
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(0)
        right.addWidget(self._banner)
        right.addWidget(self._message)
        right.addWidget(self._stack, 1)
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._make_rail())
        row.addLayout(right, 1)
        self.setCentralWidget(whole)
        self._build_status()

    def _make_rail(self) -> QFrame:
        rail = QFrame()
        rail.setObjectName("rail")
        column = QVBoxLayout(rail)
        column.setContentsMargins(0, SPACE, 0, SPACE)
        column.setSpacing(2)
        self.place_box = QComboBox()
        self.place_box.setAccessibleName("Place")
        self.place_box.setToolTip("The place that every view shows")
        self.place_box.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.place_box.setMinimumContentsLength(12)
        self.place_box.activated.connect(self._place_picked)
        holder = QHBoxLayout()
        holder.setContentsMargins(SPACE, 0, SPACE, SPACE)
        holder.addWidget(self.place_box)
        column.addLayout(holder)
        group = QButtonGroup(self)
        for number, (name, label, question, _, _) in enumerate(VIEWS, start=1):
            button = QPushButton(label)
            button.setCheckable(True)
            button.setToolTip(f"{question}  (Ctrl+{number})")
            button.setAccessibleDescription(question)
            button.setMinimumWidth(156)
            button.clicked.connect(partial(self._go, name))
            group.addButton(button)
            column.addWidget(button)
            self._buttons[name] = button
        column.addStretch(1)
        return rail

    def _make_banner(self) -> QFrame:
        banner = QFrame()
        banner.setObjectName("banner")
        row = QHBoxLayout(banner)
        row.setContentsMargins(SPACE * 2, SPACE // 2, SPACE * 2, SPACE // 2)
        words = body("This place, its water and its log are invented, to show what Fullshell does.")
        row.addWidget(words, 1)
        away = QPushButton("Put the demo away")
        away.setToolTip("Close the invented place and its log and start with your own")
        away.clicked.connect(self.put_demo_away)
        row.addWidget(away)
        return banner

    def _make_message(self) -> QFrame:
        frame = QFrame()
        frame.setObjectName("banner")
        row = QHBoxLayout(frame)
        row.setContentsMargins(SPACE * 2, SPACE // 2, SPACE * 2, SPACE // 2)
        self.message = body()
        row.addWidget(self.message, 1)
        close = QPushButton("Close")
        close.setAccessibleName("Close the message")
        close.clicked.connect(frame.hide)
        row.addWidget(close, alignment=Qt.AlignmentFlag.AlignTop)
        frame.hide()
        return frame

    def _build_status(self) -> None:
        bar = self.statusBar()
        bar.setSizeGripEnabled(False)
        self.where = QLabel()
        bar.addWidget(self.where)
        self.working = quiet()
        self.working.setWordWrap(False)
        self.working.setMinimumWidth(320)
        self.working.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._progress = QProgressBar()
        self._progress.setRange(0, 0)
        self._progress.setMaximumWidth(120)
        self._progress.setTextVisible(False)
        self._progress.setAccessibleName("Working")
        self._stop = QPushButton("Stop")
        self._stop.setToolTip("Give up what is being worked out")
        self._stop.clicked.connect(self._stop_work)
        for widget in (self.working, self._progress, self._stop):
            bar.addPermanentWidget(widget)
            widget.hide()
        self._busy_timer = QTimer(self, singleShot=True, interval=_BUSY_SHOWN_AFTER_MS)
        self._busy_timer.timeout.connect(lambda: self._show_busy(True))
        self._stop_timer = QTimer(self, singleShot=True, interval=_STOP_SHOWN_AFTER_MS)
        self._stop_timer.timeout.connect(self._stop.show)

    def _build_menus(self) -> None:
        bar = self.menuBar()
        file = bar.addMenu("&File")
        self._action(file, "&Open place file…", self.open_place_file, QKeySequence.StandardKey.Open)
        self._action(file, "Show the &demo place", lambda: self.bench.open(demo_source()))
        file.addSeparator()
        self._action(file, "&Quit", self.close, QKeySequence.StandardKey.Quit)
        edit = bar.addMenu("&Edit")
        self._undo = self._action(edit, "&Undo", self.bench.undo, QKeySequence.StandardKey.Undo)
        self._redo = self._action(edit, "&Redo", self.bench.redo, QKeySequence.StandardKey.Redo)
        self._name_undo()
        view = bar.addMenu("&View")
        for number, (name, label, _, _, _) in enumerate(VIEWS, start=1):
            self._action(view, label, partial(self.state.change, view=name), f"Ctrl+{number}")
        view.addSeparator()
        table = self._action(view, "Strip as &table", self._flip_table, "Ctrl+T")
        table.setCheckable(True)
        table.setChecked(self.state.as_table)
        look = view.addMenu("&Colours")
        for label, choice in (("As the system", "system"), ("Light", "light"), ("Dark", "dark")):
            self._action(look, label, partial(self.state.change, theme=choice))
        units = view.addMenu("&Units")
        for label, change in (
            ("Metres", {"length": "m"}),
            ("Feet", {"length": "ft"}),
            ("Celsius", {"temperature": "C"}),
            ("Fahrenheit", {"temperature": "F"}),
            ("12-hour clock", {"hours12": True}),
            ("24-hour clock", {"hours12": False}),
        ):
            self._action(units, label, partial(self._restyle, **change))
        self._action(bar.addMenu("&Help"), "&About Fullshell", self._about)

    def _action(
        self,
        menu: QWidget,
        text: str,
        act: Callable[[], object],
        shortcut: QKeySequence.StandardKey | str | None = None,
    ) -> QAction:
        action = QAction(text, self)
        # Qt would pass whether the action is checked; the acts here take nothing.
        action.triggered.connect(lambda _=False: act())
        if shortcut is not None:
            action.setShortcut(QKeySequence(shortcut))
        menu.addAction(action)
        return action

    # -- following ---------------------------------------------------------------------------

    def show_view(self, name: ViewName) -> None:
        """Show a view, built on its first showing."""
        if name not in self._views:
            module, kind = next((m, k) for n, _, _, m, k in VIEWS if n == name)
            view = getattr(import_module(f"planner.ui.{module}"), kind)(self.bench)
            self._views[name] = view
            self._stack.addWidget(view)
        self._stack.setCurrentWidget(self._views[name])
        self._buttons[name].setChecked(True)

    def _go(self, name: ViewName, _checked: bool = False) -> None:
        self.state.change(view=name)

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "view" in changed:
            self.show_view(self.state.view)
        if "theme" in changed:
            app = QApplication.instance()
            assert isinstance(app, QApplication)
            theme.apply(app, self.state.theme)

    def _site_changed(self) -> None:
        site = self.bench.site
        assert site is not None
        self.setWindowTitle(f"{site.name} - Fullshell")
        self._banner.setVisible(self.bench.source.demo)
        self._fill_places()
        self.where.setText(f"  {site.name} · {site.zone.key} · {TIDE_CAUTION}")

    def _fill_places(self) -> None:
        from planner.sites import list_places

        site = self.bench.site
        self.place_box.clear()
        for entry in list_places():
            self.place_box.addItem(entry.name, str(entry.path))
        path = str(site.path) if site and site.path else self.bench.source.place
        at = self.place_box.findData(path)
        if at < 0 and site is not None:
            self.place_box.insertItem(0, site.name, path)
            at = 0
        self.place_box.setCurrentIndex(at)

    def _place_picked(self, at: int) -> None:
        path = self.place_box.itemData(at)
        demo = demo_source()
        self.bench.open(demo if path == demo.place else Source(path))

    def open_place_file(self) -> None:
        """Let the user pick a place file and open it."""
        from PySide6.QtWidgets import QFileDialog

        path, _ = QFileDialog.getOpenFileName(self, "Open a place file", "", "Places (*.toml)")
        if path:
            self.bench.open(Source(path))

    def put_demo_away(self) -> None:
        """Leave the invented place for the user's own, in the place book."""
        from planner.sites import list_places

        own = next((entry for entry in list_places() if not entry.name.startswith("Sedge")), None)
        if own is not None:
            self.bench.open(Source(str(own.path)))
        self.state.change(view="places")

    # -- saying ------------------------------------------------------------------------------

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self._message.show()

    def _busy(self, label: str) -> None:
        self.working.setText(f"{label}…" if label else "")
        if not label:
            self._busy_timer.stop()
            self._stop_timer.stop()
            self._show_busy(False)
        elif not self._busy_timer.isActive() and not self.working.isVisible():
            self._busy_timer.start()
            self._stop_timer.start()

    def _show_busy(self, shown: bool) -> None:
        self.working.setVisible(shown)
        self._progress.setVisible(shown)
        if not shown:
            self._stop.hide()

    def _stop_work(self) -> None:
        for key in ("outlook", "search", "rank"):
            self.bench.desk.stop(key)
        self._say("Stopped. Pick the place again to work it out.")

    def _name_undo(self) -> None:
        for action, name, plain in (
            (self._undo, self.bench.undo_name, "Undo"),
            (self._redo, self.bench.redo_name, "Redo"),
        ):
            action.setText(name or plain)
            action.setEnabled(name is not None)

    def _flip_table(self) -> None:
        self.state.change(as_table=not self.state.as_table)

    def _restyle(self, **values: object) -> None:
        self.state.change(style=replace(self.state.style, **values))  # type: ignore[arg-type]

    def _about(self) -> None:
        from planner import __version__

        QMessageBox.about(
            self,
            "About Fullshell",
            f"Fullshell {__version__}\n\nPlans crab trapping trips around water, light and how "
            f"full the crabs should be.\n\n{TIDE_CAUTION}\nRules differ by place and change: "
            "check them with the agency. Wear a life jacket, check the weather, and leave a "
            "float plan ashore.",
        )

    def closeEvent(self, event: QCloseEvent) -> None:
        self.bench.close()
        super().closeEvent(event)
