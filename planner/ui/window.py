"""The window: a rail of five places of work, and the chosen view beside it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QCoreApplication, QEvent, QSize, Qt
from PySide6.QtGui import QCloseEvent, QGuiApplication
from PySide6.QtWidgets import (
    QApplication,
    QButtonGroup,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QMainWindow,
    QMessageBox,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.phrasing import TIDE_CAUTION
from planner.ui import theme
from planner.ui.guide.help_menu import Help
from planner.ui.imports import read_in_sips, read_module
from planner.ui.menus import Menus
from planner.ui.parts import body, button, on_ground
from planner.ui.place_box import PlaceBox
from planner.ui.rail_button import RailButton
from planner.ui.sources import Source, place_filter, source_of
from planner.ui.state import ViewName
from planner.ui.status_line import StatusLine
from planner.ui.theme import LINE_GAP, SPACE
from planner.ui.trouble.fault_front import FaultFront
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say

if TYPE_CHECKING:
    from planner.sites.book import PlaceEntry
    from planner.ui.hauls.kitchen_ask import KitchenAsk

# name, label, the question it answers, class; a view is the module `view` of the folder of its
# name, built when first shown.
VIEWS: Final[tuple[tuple[ViewName, str, str, str], ...]] = (
    ("dates", say("Choose dates"), say("When should I set and pull?"), "DatesView"),
    (
        "load",
        say("Load up"),
        say("What goes aboard, and what are the rules here?"),
        "LoadView",
    ),
    ("hauls", say("Log hauls"), say("What did each trap give?"), "HaulsView"),
    (
        "evidence",
        say("Weigh evidence"),
        say("What do I know, and how sure?"),
        "EvidenceView",
    ),
    ("places", say("Place book"), say("Is the water right here?"), "PlacesView"),
)


_PAINT: Final = QEvent.Type(QEvent.registerEventType())

_NO_PLACE_YET: Final = say(
    "No place of your own yet: make one here, or open a published one. The demo goes as soon as "
    "another place is open, and comes back only when you ask for it in the File menu."
)


class MainWindow(QMainWindow):
    """Shows the workbench; owns nothing but widgets."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench = bench
        self.state = bench.state
        self._paint_due = False
        self.setWindowTitle("Fullshell")
        self.setMinimumSize(QSize(1000, 640))
        self._views: dict[ViewName, QWidget] = {}
        self._buttons: dict[ViewName, QPushButton] = {}
        self._build()
        self.faults = FaultFront(self)
        self.help = Help(self)
        self.menus = Menus(self, [(name, label) for name, label, *_ in VIEWS])
        self.state.listen(self._state_changed)
        bench.site_changed.connect(self._site_changed)
        bench.plans_changed.connect(
            self._read_views_ahead, type=Qt.ConnectionType.SingleShotConnection
        )
        bench.trouble.connect(self._trouble)
        bench.notice.connect(self._say)
        self.status.stopped.connect(
            lambda: self._say(say("Stopped. Pick the place again to work it out."))
        )
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._system_turned)
        self.show_view(self.state.view)

    def event(self, event: QEvent) -> bool:
        # A chart that changed has Qt paint the window at once, before its words have their
        # places; they take them, and all is painted again. So painting waits for what is posted.
        if event.type() == QEvent.Type.UpdateRequest:
            if self._paint_due:
                return True
            self._paint_due = True
            QCoreApplication.postEvent(
                self, QEvent(_PAINT), Qt.EventPriority.LowEventPriority.value
            )
            return True
        if event.type() == _PAINT:
            self._paint_due = False
            self.bench.turns.give_way()
            return super().event(QEvent(QEvent.Type.UpdateRequest))
        return super().event(event)

    # -- building ----------------------------------------------------------------------------

    def _build(self) -> None:
        self._stack = QStackedWidget()
        self.banner = self._make_banner()
        self.message_bar = self._make_message()
        right = QVBoxLayout()
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(0)
        right.addWidget(self.banner)
        right.addWidget(self.message_bar)
        self._column = right
        self.kitchen: KitchenAsk | None = None
        right.addWidget(self._stack, 1)
        self.status = StatusLine(self.bench)
        right.addWidget(self.status)
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._make_rail())
        row.addLayout(right, 1)
        self.setCentralWidget(whole)

    def _make_rail(self) -> QFrame:
        rail = QFrame()
        on_ground(rail, "raised")
        column = QVBoxLayout(rail)
        column.setContentsMargins(0, SPACE, 0, SPACE)
        column.setSpacing(LINE_GAP)
        self.place_box = PlaceBox()
        self.place_box.activated.connect(
            lambda at: self.bench.open(source_of(self.place_box.itemData(at)))
        )
        holder = QHBoxLayout()
        holder.setContentsMargins(SPACE, 0, SPACE, SPACE)
        holder.addWidget(self.place_box)
        column.addLayout(holder)
        group = QButtonGroup(self)
        for number, (name, label, question, _) in enumerate(VIEWS, start=1):
            made = RailButton(label)
            made.setToolTip(f"{question}  (Ctrl+{number})")
            made.clicked.connect(lambda _=False, view=name: self.state.change(view=view))
            made.setAccessibleDescription(question)
            group.addButton(made)
            column.addWidget(made)
            self._buttons[name] = made
        column.addStretch(1)
        return rail

    def _make_banner(self) -> QFrame:
        words = body(
            say("This place, its water and its log are invented, to show what Fullshell does.")
        )
        away = button(
            say("Put the demo away"),
            self.put_demo_away,
            say("Close the invented place and its log and start with your own"),
        )
        return _banner(words, away)

    def _make_message(self) -> QFrame:
        self.message = body()
        self.message.setAccessibleName(say("Message"))
        close = button(say("Close"), lambda: self.message_bar.hide())
        close.setAccessibleName(say("Close the message"))
        return _banner(self.message, close)

    # -- following ---------------------------------------------------------------------------

    def show_view(self, name: ViewName) -> None:
        """Show a view, built on its first showing."""
        if name not in self._views:
            kind = next(each for known, _, _, each in VIEWS if known == name)
            view = getattr(read_module(f"planner.ui.{name}.view"), kind)(self.bench)
            self._views[name] = view
            self._stack.addWidget(view)
        self._stack.setCurrentWidget(self._views[name])
        self._buttons[name].setChecked(True)

    def _read_views_ahead(self) -> None:
        """Import the other views once there are plans to look at, so that none waits for it."""

        def work(checkpoint: Checkpoint) -> None:
            for name, *_ in VIEWS:
                read_in_sips(f"planner.ui.{name}", checkpoint)

        self.bench.desk.start("views", "", work, lambda _: None)

    @staticmethod
    def label_of(view: ViewName) -> str:
        """Return what a view is called on the rail."""
        return next(label for name, label, *_ in VIEWS if name == view)

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "view" in changed:
            self.show_view(self.state.view)
        if "theme" in changed:
            app = QApplication.instance()
            assert isinstance(app, QApplication)
            theme.apply(app, self.state.theme)

    def _system_turned(self) -> None:
        if self.state.theme == "system":
            self.state.tell("theme")

    def _site_changed(self) -> None:
        site = self.bench.site
        assert site is not None
        self.setWindowTitle(f"{site.name} - Fullshell")
        self.banner.setVisible(self.bench.source.demo)
        if not self.bench.source.demo and self.message.text() == _NO_PLACE_YET:
            self.message_bar.hide()  # there is one now
        self._fill_places()
        self._ask_kitchen()
        self.status.name_place(site)

    def _ask_kitchen(self) -> None:
        """Ask how the last trip's crabs were; made late, to keep the log out of the first paint."""
        from planner.ui.hauls.kitchen_ask import KitchenAsk

        if self.kitchen is None:
            self.kitchen = KitchenAsk(self.bench)
            self._column.insertWidget(2, self.kitchen)
        self.kitchen.ask()

    # -- places ------------------------------------------------------------------------------

    def _fill_places(self) -> None:
        self.bench.desk.start("places", "", lambda _: _places(), self._show_places)

    def _show_places(self, entries: list[PlaceEntry]) -> None:
        site = self.bench.site
        self.place_box.clear()
        for entry in entries:
            self.place_box.addItem(entry.name, str(entry.path))
        if site is not None:
            path = str(site.path or self.bench.source.place)
            if self.place_box.findData(path) < 0:
                self.place_box.insertItem(0, site.name, path)
            self.place_box.setCurrentIndex(self.place_box.findData(path))
        else:
            self.place_box.setCurrentIndex(-1)

    def open_place_file(self) -> None:
        """Let the user pick a place file and open it."""
        path, _ = QFileDialog.getOpenFileName(self, say("Open a place file"), "", place_filter())
        if path:
            self.bench.open(Source(path))

    def put_demo_away(self) -> None:
        """Leave the invented place for the user's own, or for the place book to get one."""

        def leave(entries: list[PlaceEntry]) -> None:
            own = next((entry for entry in entries if not entry.shipped), None)
            if own is not None:
                self.bench.open(Source(str(own.path)))
            else:
                self._say(_NO_PLACE_YET)
            self.state.change(view="places")

        self.bench.desk.start("own places", "", lambda _: _places(), leave)

    # -- saying ------------------------------------------------------------------------------

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message_bar.show()

    def _trouble(self, text: str) -> None:
        self._say(text)
        # The box may show a place that could not be opened, or nothing yet.
        self._fill_places()

    def about(self) -> None:
        """Say what the program is and what it is not."""
        from planner import __version__

        QMessageBox.about(
            self,
            say("About Fullshell"),
            say(
                "Fullshell {version}\n\nPlans crab trapping trips around water, light "
                "and how full the crabs should be.\n\n{tide_caution}\nRules differ by place "
                "and change: check them with the agency. Wear a life jacket, check the "
                "weather, and leave a float plan ashore.",
                version=__version__,
                tide_caution=TIDE_CAUTION,
            ),
        )

    def show_backups(self) -> None:
        """Show the backups of the log, and the way back to one."""
        from planner.ui.hauls.backups_dialog import BackupsDialog

        BackupsDialog(self.bench, self).open()

    def closeEvent(self, event: QCloseEvent) -> None:
        hauls = self._views.get("hauls")
        if hauls is not None and not hauls.may_close():  # type: ignore[attr-defined]
            event.ignore()
            return
        self.help.close()
        self.bench.close()
        super().closeEvent(event)


def _banner(words: QWidget, act: QPushButton) -> QFrame:
    """Return a hidden strip of words over the view, with one thing to do about them."""
    frame = QFrame()
    on_ground(frame, "caution")
    row = QHBoxLayout(frame)
    row.setContentsMargins(SPACE * 2, SPACE // 2, SPACE * 2, SPACE // 2)
    row.addWidget(words, 1)
    row.addWidget(act, alignment=Qt.AlignmentFlag.AlignTop)
    frame.hide()
    return frame


def _places() -> list[PlaceEntry]:
    from planner.sites import list_places

    return list_places()
