"""The whole window: five places of work, places that open or do not, undo, colours, the end."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt
from PySide6.QtGui import QAccessible, QAction, QGuiApplication, QImage
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QLabel, QPushButton, QWidget

from planner.assets import demo_place, user_folder
from planner.sites.book import list_places, user_places
from planner.ui import theme
from planner.ui.app import run as run_program
from planner.ui.settings import Settings, read_settings, write_settings
from planner.ui.sources import Source, demo_source
from planner.ui.window import VIEWS, MainWindow
from planner.ui.work import Desk
from planner.ui.workbench import Workbench
from tests.ui.conftest import activate

NAMES = [name for name, *_ in VIEWS]
MakeWindow = Callable[..., MainWindow]


@pytest.fixture
def make_window(empty_bench: Workbench, qtbot: Any, settle: Any) -> MakeWindow:
    """Make a window over a source, shown at the least size it promises, with all worked out."""

    def make(source: Source | None = None, view: Any = "dates") -> MainWindow:
        empty_bench.state.view = view
        window = MainWindow(empty_bench)
        qtbot.addWidget(window)
        window.resize(1100, 700)
        window.show()
        activate(qtbot, window)
        if source is not None:
            empty_bench.open(source)
        settle(empty_bench)
        return window

    return make


@pytest.fixture
def bare() -> Source:
    """The demo place without a log, which is read soonest."""
    return Source(str(demo_place()), keep=False, demo=True)


def _own(name: str, change: Callable[[str], str] = str) -> Path:
    """Put a place of the user's own into the book."""
    text = demo_place().read_text(encoding="utf-8").replace('"Sedge Hollow"', f'"{name}"')
    path = user_places() / f"{name.lower().replace(' ', '-')}.toml"
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(change(text), encoding="utf-8")
    return path


def _shown(window: MainWindow) -> str:
    return type(window._stack.currentWidget()).__name__


def _action(window: MainWindow, text: str) -> QAction:
    return next(a for a in window.findChildren(QAction) if a.text().replace("&", "") == text)


# -- five places of work -------------------------------------------------------------------------


def test_every_place_of_work_is_reached_by_its_keys_and_by_the_rail(
    make_window: MakeWindow, bare: Source, qtbot: Any, settle: Any
) -> None:
    """Ctrl+1 to Ctrl+5 and the buttons lead to the same five views, built once each."""
    window = make_window(bare)
    for number, (name, label, question, kind) in reversed([*enumerate(VIEWS, start=1)]):
        qtbot.keyClick(window, Qt.Key(Qt.Key.Key_0 + number), Qt.KeyboardModifier.ControlModifier)
        assert _shown(window) == kind
        assert window.state.view == name
        button = window._buttons[name]
        assert button.isChecked()
        assert button.text() == label
        assert question in button.toolTip()
    views = dict(window._views)
    for name, _, _, kind in VIEWS:
        qtbot.mouseClick(window._buttons[name], Qt.MouseButton.LeftButton)
        assert _shown(window) == kind
        assert sum(b.isChecked() for b in window._buttons.values()) == 1
    assert window._views == views
    settle(window.bench)


def _reached(root: QWidget) -> list[QWidget]:
    """Return what Tab may stop at; what lies inside a table or box speaks through it."""
    return [
        widget
        for widget in root.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and not isinstance(widget.parent(), QAbstractScrollArea)
        and not widget.objectName().startswith("qt_")  # such as the line inside a spin box
        and widget.window() is root  # not the lists that boxes pop up
    ]


def _name(widget: QWidget) -> str:
    """Return what a screen reader says of a widget: its own name, its words or its label's."""
    interface = QAccessible.queryAccessibleInterface(widget)
    return str(interface.text(QAccessible.Text.Name)).strip() if interface else ""


def _where(widget: QObject | None) -> str:
    return f"{type(widget).__name__} in {_where(widget.parent())}" if widget else "the screen"


@pytest.mark.parametrize("view", NAMES)
def test_a_screen_reader_can_name_everything_the_keyboard_reaches(
    make_window: MakeWindow, bare: Source, view: str
) -> None:
    """No control is met as "button" or "edit" alone."""
    reached = _reached(make_window(bare, view))
    assert len(reached) > len(VIEWS) + 2
    assert [_where(widget) for widget in reached if not _name(widget)] == []


@pytest.mark.parametrize("view", ["dates", "hauls", "evidence"])
def test_nobody_is_asked_for_a_place_that_is_on_its_way(
    make_window: MakeWindow, bare: Source, view: Any, settle: Any
) -> None:
    """A window that has just opened reads for a second; it says so instead of "nothing yet"."""
    window = make_window(None, view)

    def said() -> str:
        labels = window._views[view].findChildren(QLabel)
        return "\n".join(each.text() for each in labels)

    assert "Opening the" not in said()
    window.bench.open(bare)
    assert "Opening the" in said()
    settle(window.bench)
    assert "Opening the" not in said()


def test_the_tides_caution_is_at_the_foot_before_a_place_is_open(make_window: MakeWindow) -> None:
    """The place book shows water without a place being open, and leaves the caution to the foot."""
    window = make_window(None)
    assert window.status.where.isVisible()
    assert window.status.where.text().endswith("Not for navigation.")


# -- places --------------------------------------------------------------------------------------


def test_the_place_box_shows_the_place_and_switches_it(
    make_window: MakeWindow, bare: Source, settle: Any
) -> None:
    """The user's own places come first; title, status line and banner follow."""
    _own("Otter Bight")
    window = make_window(bare)
    box, bench = window.place_box, window.bench
    assert box.currentText() == "Sedge Hollow"
    assert box.itemText(0) == "Otter Bight"
    assert window.banner.isVisible()
    assert "invented" in window.banner.findChild(QLabel).text()
    box.setCurrentIndex(0)
    box.activated.emit(0)
    settle(bench)
    assert bench.site is not None
    assert bench.site.name == box.currentText() == "Otter Bight"
    assert not window.banner.isVisible()
    assert window.windowTitle() == "Otter Bight - Fullshell"
    assert "Otter Bight · America/New_York" in window.status.where.text()
    assert "Not for navigation" in window.status.where.text()
    assert bench.book is not None
    assert bench.book.path.parent == user_folder()
    at = box.findText("Sedge Hollow")
    box.activated.emit(at)
    settle(bench)
    assert bench.source == demo_source()
    assert window.banner.isVisible()
    assert bench.log.hauls


def test_a_bad_place_file_shows_every_problem_and_the_place_before_stays(
    make_window: MakeWindow,
    bare: Source,
    qtbot: Any,
    settle: Any,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """All that is wrong is said at once, with the field; the box shows what is open."""
    bad = tmp_path / "bad.toml"
    text = demo_place().read_text(encoding="utf-8")
    bad.write_text(
        text.replace("latitude = 29.6", "latitude = 129.6", 1).replace(
            "depth = 1.5", 'depth = "x"'
        ),
        encoding="utf-8",
    )
    window = make_window(bare)
    assert not window.message_bar.isVisible()
    monkeypatch.setattr("planner.ui.window.QFileDialog.getOpenFileName", lambda *_: (str(bad), ""))
    qtbot.keyClick(window, Qt.Key.Key_O, Qt.KeyboardModifier.ControlModifier)
    settle(window.bench)
    said = window.message.text()
    assert window.message_bar.isVisible()
    assert str(bad) in said
    assert "2 problems" in said
    assert "latitude: " in said
    assert "spots[2].depth: " in said
    assert window.bench.site is not None
    assert window.bench.site.name == "Sedge Hollow" == window.place_box.currentText()
    close = next(b for b in window.message_bar.findChildren(QPushButton))
    qtbot.mouseClick(close, Qt.MouseButton.LeftButton)
    assert not window.message_bar.isVisible()


def test_what_to_do_without_a_place_is_said_until_there_is_one(
    bare: Source, make_window: MakeWindow, settle: Any
) -> None:
    """Advice that has been followed does not stay over every view."""
    window = make_window(bare)
    window.put_demo_away()
    settle(window.bench)
    assert "No place of your own yet" in window.message.text()
    assert window.message_bar.isVisible()
    published = next(each for each in list_places() if each.shipped and not each.invented)
    window.bench.open(Source(str(published.path), keep=False))
    settle(window.bench)
    assert not window.message_bar.isVisible()


def test_a_start_with_a_place_that_is_gone_leaves_a_way_on(
    make_window: MakeWindow, settle: Any, tmp_path: Path
) -> None:
    """The stick with the file is not in: other places can still be picked."""
    window = make_window(Source(str(tmp_path / "gone.toml")))
    assert "gone.toml" in window.message.text()
    assert window.bench.site is None
    assert not window.banner.isVisible()
    box = window.place_box
    assert box.currentIndex() == -1
    at = box.findText("Sedge Hollow")
    box.setCurrentIndex(at)
    box.activated.emit(at)
    settle(window.bench)
    assert window.bench.site is not None


def test_the_demo_is_put_away_for_a_place_of_ones_own(
    make_window: MakeWindow, qtbot: Any, settle: Any
) -> None:
    """One press; the published places that come with the program are not the user's."""
    window = make_window(demo_source())
    bench = window.bench
    away = window.banner.findChild(QPushButton)
    qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    settle(bench)
    assert window.state.view == "places"
    assert bench.source.demo
    assert "No place of your own yet" in window.message.text()
    own = _own("Otter Bight")
    qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    settle(bench)
    assert bench.source == Source(str(own))
    assert not window.banner.isVisible()
    assert bench.log.hauls == ()


# -- changes to the log --------------------------------------------------------------------------


def test_undo_and_redo_are_named_by_what_they_would_do(
    make_window: MakeWindow, qtbot: Any, settle: Any
) -> None:
    """The menu says what comes back, by its keys too, and is off when there is nothing."""
    window = make_window(demo_source())
    bench, menus = window.bench, window.menus
    trip = bench.log.hauls[0].trip
    hauls = len(bench.log.hauls)
    assert not menus.redo.isEnabled()
    assert menus.redo.text() == "Redo"
    bench.change_log(lambda book: book.delete_trip(trip))
    settle(bench)
    assert len(bench.log.hauls) < hauls
    assert menus.undo.isEnabled()
    assert menus.undo.text().startswith("Undo ")
    assert trip in menus.undo.text()
    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    settle(bench)
    assert len(bench.log.hauls) == hauls
    assert menus.redo.isEnabled()
    assert trip in menus.redo.text()
    menus.redo.trigger()
    settle(bench)
    assert len(bench.log.hauls) < hauls


def test_a_log_that_is_only_shown_refuses_changes_in_words(
    make_window: MakeWindow, bare: Source, settle: Any
) -> None:
    """What is open for reading is never written to."""
    window = make_window(bare)
    assert not window.menus.undo.isEnabled()
    window.bench.change_log(lambda book: book.delete_trip("any"))
    settle(window.bench)
    assert "reading only" in window.message.text()


# -- choices -------------------------------------------------------------------------------------


def _lightness(image: QImage, left: int, top: int) -> float:
    """Return the mean lightness of a quarter of the window."""
    points = [(x, y) for x in range(left, left + 550, 11) for y in range(top, top + 350, 11)]
    return sum(image.pixelColor(x, y).lightness() for x, y in points) / len(points)


def test_colours_change_while_the_window_is_open(make_window: MakeWindow, bare: Source) -> None:
    """By the menu, at once, with the choice in force marked; the view is painted anew."""
    window = make_window(bare)
    light = window.grab().toImage()
    dark = _action(window, "Dark")
    assert _action(window, "Light").isChecked()
    dark.trigger()
    assert theme.current() is theme.DARK
    assert dark.isChecked()
    assert not _action(window, "Light").isChecked()
    QApplication.processEvents()
    after = window.grab().toImage()
    for x, y in ((0, 0), (550, 0), (0, 350), (550, 350)):
        assert _lightness(after, x, y) < 0.6 * _lightness(light, x, y)


def test_the_window_turns_with_the_system_unless_told_otherwise(
    make_window: MakeWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    """At dusk some desktops go dark by themselves."""
    window = make_window()
    monkeypatch.setattr(theme, "system_is_dark", lambda: True)
    turned = QGuiApplication.styleHints().colorSchemeChanged
    turned.emit(Qt.ColorScheme.Dark)
    assert theme.current() is theme.LIGHT
    window.state.change(theme="system")
    assert theme.current() is theme.DARK
    monkeypatch.setattr(theme, "system_is_dark", lambda: False)
    turned.emit(Qt.ColorScheme.Light)
    assert theme.current() is theme.LIGHT


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("Feet", "length", "ft"),
        ("Fahrenheit", "temperature", "F"),
        ("12-hour clock", "hours12", True),
    ],
)
def test_units_are_chosen_in_the_menu(
    make_window: MakeWindow, text: str, field: str, value: Any
) -> None:
    """Each choice changes one habit and shows which is in force."""
    window = make_window()
    action = _action(window, text)
    assert not action.isChecked()
    before = window.state.style
    action.trigger()
    assert getattr(window.state.style, field) == value
    assert action.isChecked()
    others = {"length", "temperature", "hours12"} - {field}
    assert all(getattr(window.state.style, o) == getattr(before, o) for o in others)


def test_the_strip_turns_into_a_table_by_keys(
    make_window: MakeWindow, bare: Source, qtbot: Any
) -> None:
    """Ctrl+T there and back; the menu shows which it is."""
    window = make_window(bare)
    flip = _action(window, "Strip as table")
    for shown in (True, False):
        qtbot.keyClick(window, Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier)
        assert window.state.as_table == flip.isChecked() == shown


# -- being busy, and the end ---------------------------------------------------------------------


def test_long_work_is_shown_and_can_be_stopped(make_window: MakeWindow, qtbot: Any) -> None:
    """What takes long is named, with a way out; afterwards the line is quiet again."""
    window = make_window()
    status, desk = window.status, window.bench.desk
    assert isinstance(desk, Desk)
    held = threading.Event()
    desk.start("slow", "Counting crabs", lambda _: held.wait(20), lambda _: None)
    assert not status.working.isVisible()
    qtbot.waitUntil(status.working.isVisible, timeout=20_000)
    assert status.working.text() == "Counting crabs…"
    assert status.progress.isVisible()
    qtbot.waitUntil(status.stop.isVisible, timeout=20_000)
    qtbot.mouseClick(status.stop, Qt.MouseButton.LeftButton)
    assert desk.idle
    assert not status.working.isVisible()
    assert not status.stop.isVisible()
    assert "Stopped" in window.message.text()
    held.set()


def test_saving_is_shown_but_never_stopped_half_way(make_window: MakeWindow, qtbot: Any) -> None:
    """The clerk's work has its name in the line, and no button; the view above stays in place,
    or it would jump, and be drawn anew, with every cell that is typed."""
    window = make_window()
    QApplication.processEvents()
    before = window._stack.geometry()
    held = threading.Event()
    window.bench.clerk.start("slow", "Saving", lambda _: held.wait(20), lambda _: None)
    qtbot.waitUntil(window.status.working.isVisible, timeout=20_000)
    assert window.status.working.text() == "Saving…"
    assert window.status.progress.isVisible()
    QApplication.processEvents()
    assert window._stack.geometry() == before
    window.status._offer_stop()
    assert not window.status.stop.isVisible()
    held.set()
    qtbot.waitUntil(lambda: window.bench.idle, timeout=20_000)
    assert not window.status.working.isVisible()


def test_closing_saves_what_was_asked_for_and_closes_the_log(
    make_window: MakeWindow, settle: Any
) -> None:
    """An entry that was made a moment ago is in the file; another window can open it."""
    from planner.logbook import Logbook

    window = make_window(demo_source())
    bench = window.bench
    book = bench.book
    assert book is not None
    trip = bench.log.hauls[0].trip
    bench.change_log(lambda book: book.delete_trip(trip))
    assert window.close()
    assert bench.book is None
    with Logbook.open(book.path, read_only=True) as again:
        assert trip not in {haul.trip for haul in again.read().hauls}
    assert bench.desk.idle


def test_about_says_what_the_program_is_not(
    make_window: MakeWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The usual cautions stand in the one place everybody looks for them."""
    said: list[str] = []
    monkeypatch.setattr(
        "planner.ui.window.QMessageBox.about", lambda _parent, _title, text: said.append(text)
    )
    window = make_window()
    _action(window, "About Fullshell").trigger()
    for words in ("Not for navigation", "agency", "life jacket", "float plan"):
        assert words in said[0]


# -- starting ------------------------------------------------------------------------------------


@pytest.fixture
def run(app: QApplication, monkeypatch: pytest.MonkeyPatch) -> Iterator[Callable[..., Settings]]:
    """Start the program as a user would, do something in its window, close it.

    Gives the settings that were kept.
    """
    font = app.font()
    windows: list[MainWindow] = []

    def made(bench: Workbench) -> MainWindow:
        windows.append(MainWindow(bench))
        return windows[-1]

    def start(act: Callable[[MainWindow], object]) -> Settings:
        def user() -> int:
            app.processEvents()  # opening begins after the first paint
            act(windows[-1])
            windows[-1].close()
            return 0

        monkeypatch.setattr("planner.ui.app.MainWindow", made)
        monkeypatch.setattr(QApplication, "exec", staticmethod(user))
        assert run_program() == 0
        return read_settings()

    yield start
    for window in windows:
        window.deleteLater()
        QCoreApplication.sendPostedEvents(window, QEvent.Type.DeferredDelete)
    app.setFont(font)


def test_the_next_start_is_where_the_user_left_off(
    run: Callable[..., Settings], settle: Any
) -> None:
    """A first start shows the demo; view, colours and place come back on the second."""
    otter = _own("Otter Bight")

    def first(window: MainWindow) -> None:
        settle(window.bench)
        assert window.bench.source == demo_source()
        window.bench.open(Source(str(otter), keep=False))
        settle(window.bench)
        window.state.change(view="places", theme="dark")

    kept = run(first)
    assert (kept.place, kept.demo, kept.view, kept.theme) == (str(otter), False, "places", "dark")

    def second(window: MainWindow) -> None:
        settle(window.bench)
        assert window.windowTitle() == "Otter Bight - Fullshell"
        assert _shown(window) == "PlacesView"
        assert theme.current() is theme.DARK

    run(second)


def test_a_place_that_is_gone_is_asked_for_again_at_the_next_start(
    run: Callable[..., Settings], settle: Any
) -> None:
    """Leaving the stick out once does not make the program forget it."""
    write_settings(Settings(place="gone.toml", demo=False, font_pt=12))

    def look(window: MainWindow) -> None:
        settle(window.bench)
        assert "gone.toml" in window.message.text()
        assert window.font().pointSize() == 12

    kept = run(look)
    assert (kept.place, kept.demo, kept.font_pt) == ("gone.toml", False, 12)
