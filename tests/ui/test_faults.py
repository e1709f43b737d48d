"""Faults of the program: each reaches the user once, with a report that gives nothing away."""

from __future__ import annotations

import getpass
import sys
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QPushButton, QWidget

from planner import faults
from planner.assets import log_folder
from planner.ui.app import run as run_program
from planner.ui.settings import Settings, open_settings, read_settings, settings_file
from planner.ui.trouble.fault_dialog import FaultDialog
from planner.ui.trouble.faults import FaultCatcher
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench

PATIENCE_MS = 30_000
SECRET = "29.6123, -81.2456 at Heron Slough, 14 keepers"


class Fault(Exception):  # noqa: N818  (as the program calls it)
    """What no code expects."""


def _fail() -> None:
    raise Fault(SECRET)


@pytest.fixture
def window(empty_bench: Workbench, qtbot: Any, monkeypatch: Any) -> Iterator[MainWindow]:
    """A window whose faults are caught as the program catches them."""
    # pytest-qt has hooks of its own, which would fail the test for the very thing it is about.
    monkeypatch.setattr(sys, "excepthook", sys.__excepthook__)
    made = MainWindow(empty_bench)
    qtbot.addWidget(made)
    catcher = FaultCatcher()
    catcher.facts = made.faults.facts
    catcher.fault.connect(made.faults.show)
    catcher.again.connect(made.faults.again)
    catcher.install()
    made.show()
    yield made
    catcher.remove()


def _dialogs(window: MainWindow) -> list[FaultDialog]:
    return [each for each in window.findChildren(FaultDialog) if each.isVisible()]


def _shown(window: MainWindow, qtbot: Any) -> FaultDialog:
    qtbot.waitUntil(lambda: window.faults.dialog is not None, timeout=PATIENCE_MS)
    (dialog,) = _dialogs(window)
    return dialog


# -- every way in --------------------------------------------------------------------------------


def _on_this_thread(_: MainWindow) -> None:
    QTimer.singleShot(0, _fail)


def _in_a_job(window: MainWindow) -> None:
    window.bench.desk.start("job", "", lambda _: _fail(), lambda _: None)


def _in_what_follows_a_job(window: MainWindow) -> None:
    window.bench.clerk.start("job", "", lambda _: None, lambda _: _fail())


def _in_a_thread(_: MainWindow) -> None:
    threading.Thread(target=_fail).start()


@pytest.mark.parametrize("way", [_on_this_thread, _in_a_job, _in_what_follows_a_job, _in_a_thread])
def test_a_fault_is_shown_once_and_the_window_goes_on(
    window: MainWindow, qtbot: Any, settle: Any, way: Any, capsys: Any
) -> None:
    """Wherever it happens: one dialog, one entry in the log, and views still open."""
    way(window)
    dialog = _shown(window, qtbot)
    settle(window.bench)
    assert _dialogs(window) == [dialog]
    assert "went wrong while Choose dates was open" in dialog.sentence.text()
    assert "Next:" in dialog.next_step.text()
    assert "in _fail" in dialog.report.toPlainText()
    assert "View: dates" in dialog.report.toPlainText()
    assert len(faults.kept()) == 1
    assert not window.message_bar.isVisible()
    window.state.change(view="places")
    assert type(window._stack.currentWidget()).__name__ == "PlacesView"
    settle(window.bench)


def test_what_comes_with_every_repaint_does_not_trap_the_user(
    window: MainWindow, qtbot: Any
) -> None:
    """The same fault opens one dialog; later it is only said, and the log does not fill."""

    def again() -> None:
        QTimer.singleShot(0, _fail)

    again()
    dialog = _shown(window, qtbot)
    qtbot.mouseClick(dialog.go_on, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: window.faults.dialog is None, timeout=PATIENCE_MS)
    for _ in range(6):
        again()
    qtbot.waitUntil(window.message_bar.isVisible, timeout=PATIENCE_MS)
    QApplication.processEvents()
    assert "again" in window.message.text()
    assert window.faults.dialog is None
    assert len(faults.kept()) == 3


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="a disk that is full, of Linux")
def test_a_fault_is_shown_also_where_the_disk_is_full(window: MainWindow, qtbot: Any) -> None:
    """Writing it down fails; it is shown all the same, once, and no fault of its own follows."""
    log_folder().mkdir(parents=True)
    faults.log_file().symlink_to("/dev/full")
    _on_this_thread(window)
    dialog = _shown(window, qtbot)
    QApplication.processEvents()
    assert dialog.report.toPlainText().count("What went wrong") == 1
    assert "in _fail" in dialog.report.toPlainText()


def test_a_second_fault_joins_the_report_on_show(window: MainWindow, qtbot: Any) -> None:
    """Two at once are two entries in one dialog, not two dialogs over each other."""
    _on_this_thread(window)
    dialog = _shown(window, qtbot)

    def other() -> None:
        raise KeyError("elsewhere")

    QTimer.singleShot(0, other)
    qtbot.waitUntil(lambda: "KeyError" in dialog.report.toPlainText(), timeout=PATIENCE_MS)
    assert _dialogs(window) == [dialog]
    assert dialog.report.toPlainText().count("What went wrong") == 2


def test_a_report_that_fails_calls_for_no_other(window: MainWindow, qtbot: Any) -> None:
    """Facts that cannot be had leave the fault itself, and do not go round for ever."""

    def no_facts() -> dict[str, str]:
        raise Fault("of the facts")

    catcher = FaultCatcher()
    catcher.facts = no_facts
    told: list[str] = []
    catcher.fault.connect(lambda _, text: told.append(text))
    try:
        _fail()
    except Fault as error:
        catcher.meet(error)
    qtbot.waitUntil(lambda: bool(told), timeout=PATIENCE_MS)
    QApplication.processEvents()
    assert len(told) == 1
    assert "Fault at test_faults.py:" in told[0]
    assert window.faults.dialog is None


# -- the report ----------------------------------------------------------------------------------


def test_the_report_to_copy_gives_nothing_away(
    window: MainWindow, qtbot: Any, tmp_path: Path
) -> None:
    """No folder, user name, position or log content; the error's own words only when asked for."""
    _on_this_thread(window)
    dialog = _shown(window, qtbot)
    dialog.copy.click()
    text = QApplication.clipboard().text()
    assert text == dialog.report.toPlainText()
    assert "Copied" in dialog.copied.text()
    for private in (str(Path.home()), str(tmp_path.parent), "Heron", "29.6", "keepers"):
        assert private not in text
    if len(getpass.getuser()) > 4:  # "root" is also part of a word
        assert getpass.getuser() not in text
    for useful in ("Python: ", "numpy: ", "test_faults.py:", "Fault"):
        assert useful in text
    dialog.words.click()
    assert SECRET in dialog.report.toPlainText()
    assert SECRET not in "".join(faults.kept())


def test_the_report_is_saved_where_the_user_says(
    window: MainWindow, qtbot: Any, tmp_path: Path, monkeypatch: Any
) -> None:
    """A folder that cannot be written is said in the dialog; a good one takes the report."""
    _on_this_thread(window)
    dialog = _shown(window, qtbot)
    out = tmp_path / "none" / "r.txt"
    pick = "planner.ui.trouble.fault_dialog.QFileDialog.getSaveFileName"
    monkeypatch.setattr(pick, lambda *_: (str(out), ""))
    dialog.save.click()
    assert "Not saved" in dialog.copied.text()
    out.parent.mkdir()
    dialog.save.click()
    assert out.read_text(encoding="utf-8") == dialog.report.toPlainText()


def test_every_control_of_the_dialog_has_words_and_enter_presses_none(
    window: MainWindow, qtbot: Any
) -> None:
    """It may come up while somebody types counts."""
    _on_this_thread(window)
    dialog = _shown(window, qtbot)
    buttons = dialog.findChildren(QPushButton)
    assert all(each.text() and not each.isDefault() for each in buttons)
    assert dialog.report.accessibleName() == "Report"
    assert dialog.height() <= 640  # the least window that the program promises
    bounds = dialog.rect()
    for each in dialog.findChildren(QWidget):
        if each.isVisible() and each.parent() is dialog:
            assert bounds.contains(each.geometry())


# -- starting ------------------------------------------------------------------------------------


@pytest.fixture
def start(app: QApplication, monkeypatch: Any, qtbot: Any) -> Iterator[Any]:
    """Start the program with somebody at it, who does one thing and closes the window."""
    font = app.font()
    windows: list[MainWindow] = []

    def made(bench: Workbench) -> MainWindow:
        windows.append(MainWindow(bench))
        qtbot.addWidget(windows[-1])
        return windows[-1]

    def run(act: Any) -> int:
        def user() -> int:
            app.processEvents()
            act(windows[-1])
            windows[-1].close()
            return 0

        monkeypatch.setattr("planner.ui.app.MainWindow", made)
        monkeypatch.setattr(QApplication, "exec", staticmethod(user))
        return run_program()

    yield run
    app.setFont(font)


def test_a_damaged_settings_file_is_set_aside_and_told_once(start: Any, settle: Any) -> None:
    """The window opens with defaults, says so, and not again at the next start."""
    path = settings_file()
    path.write_text('{"theme": "dark", "vi', encoding="utf-8")
    said: list[str] = []

    def look(window: MainWindow) -> None:
        settle(window.bench)
        said.append(window.message.text() if window.message_bar.isVisible() else "")

    assert start(look) == 0
    assert start(look) == 0
    assert "damaged" in said[0]
    assert "settings-damaged.json" in said[0]
    assert "damaged" not in said[1]
    assert path.with_name("settings-damaged.json").read_text("utf-8").startswith('{"theme"')
    assert read_settings() != Settings(theme="dark")


def test_a_setting_that_cannot_be_used_is_named() -> None:
    """The rest stays; what went back to its default is told."""
    settings_file().write_text('{"theme": "dark", "view": "harbour"}', encoding="utf-8")
    settings, remark = open_settings()
    assert (settings.theme, settings.view) == ("dark", "dates")
    assert "view" in remark
    assert "theme" not in remark


def test_a_window_that_cannot_be_made_says_so(
    app: QApplication, monkeypatch: Any, qtbot: Any
) -> None:
    """Without a window there is still the dialog, and the status of a fault."""
    seen: list[str] = []

    def broken(_: Workbench) -> MainWindow:
        raise Fault(SECRET)

    def user() -> int:
        (dialog,) = (w for w in app.topLevelWidgets() if isinstance(w, FaultDialog))
        seen.append(dialog.report.toPlainText())
        dialog.close()
        return 0

    font = app.font()
    monkeypatch.setattr("planner.ui.app.MainWindow", broken)
    monkeypatch.setattr(QApplication, "exec", staticmethod(user))
    assert run_program() == 1
    app.setFont(font)
    assert "Fault" in seen[0]
    assert len(faults.kept()) == 1


def test_a_start_after_a_hard_crash_says_so_once(start: Any, settle: Any) -> None:
    """What Python wrote as the process went down becomes a report with its paths cut."""
    log_folder().mkdir(parents=True)
    (log_folder() / "hard-crash.txt").write_text(
        "Fatal Python error: Segmentation fault\n\nCurrent thread 0x1 (most recent call first):\n"
        f'  File "{Path.home()}/somewhere/site-packages/numpy/core/x.py", line 12 in dot\n',
        encoding="utf-8",
    )
    seen: list[str] = []

    def look(window: MainWindow) -> None:
        settle(window.bench)
        dialog = window.faults.dialog
        seen.append(dialog.report.toPlainText() if dialog else "")

    assert start(look) == 0
    assert start(look) == 0
    assert 'File "numpy/core/x.py", line 12 in dot' in seen[0]
    assert str(Path.home()) not in seen[0]
    assert seen[1] == ""
    assert [each.strip() for each in faults.kept()] == [seen[0].strip()]
