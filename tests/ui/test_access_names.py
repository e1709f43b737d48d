"""Every room by keyboard and by screen reader: all is reached, in order, and has a name and role.

The tree is walked as a screen reader walks it, through `QAccessible` interfaces.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface, QKeySequence
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QMenuBar,
    QTabBar,
    QWidget,
)
from rooms import Rooms

from planner.ui.charts import Chart
from planner.ui.sources import demo_source
from planner.ui.tables import ChartWithTable
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench
from tests.ui.conftest import activate

_CONTROLS = (QAbstractButton, QComboBox, QLineEdit, QAbstractSpinBox, QAbstractItemView, QTabBar)
# A role that tells nothing of what a thing is for.
_DUMB = (QAccessible.Role.NoRole, QAccessible.Role.Client, QAccessible.Role.Pane)

# Their cells are what is in them, and none takes the focus by itself.
_CELLS = (QAccessible.Role.Table, QAccessible.Role.Tree, QAccessible.Role.List)


@pytest.fixture(params=[(1280, 800), (1920, 1080), (2560, 1440)], ids=lambda size: f"{size[0]}px")
def window(request: Any, empty_bench: Workbench, qtbot: Any) -> Iterator[MainWindow]:
    made = MainWindow(empty_bench)
    qtbot.addWidget(made)
    made.resize(*request.param)  # parts stand elsewhere in large windows
    made.show()
    activate(qtbot, made)
    empty_bench.open(demo_source())
    qtbot.waitUntil(lambda: empty_bench.idle, timeout=60_000)
    yield made
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def controls(root: QWidget) -> Iterator[QWidget]:
    """Give what is shown and can be used, whatever it is part of; not the parts of a control."""
    for widget in root.findChildren(QWidget):
        parent = widget.parentWidget()
        inside = parent is not None and isinstance(
            parent, QComboBox | QAbstractSpinBox | QTabBar | QAbstractItemView
        )
        if (
            isinstance(widget, _CONTROLS)
            and widget.isVisible()
            and widget.isEnabled()
            and widget.window() is root
            and not inside
            and not widget.objectName().startswith("qt_")
            and not (parent is not None and isinstance(parent.parent(), QAbstractItemView))
            and type(widget).__name__ not in ("QTableCornerButton", "QHeaderView")
        ):
            yield widget


def _interface(widget: QWidget) -> QAccessibleInterface:
    found = QAccessible.queryAccessibleInterface(widget)
    assert found is not None, f"no screen reader sees {_where(widget)}"
    return found


def _where(widget: Any) -> str:
    path = []
    while widget is not None:
        path.append(type(widget).__name__)
        widget = widget.parent()
    return " in ".join(path[:5])


def _name(interface: QAccessibleInterface) -> str:
    return str(interface.text(QAccessible.Text.Name)).strip()


def _tab_stops(root: QWidget) -> list[QWidget]:
    """Return what Tab stops at, in order, once around."""
    found: list[QWidget] = []
    for _ in range(1000):
        if not root.focusNextChild():
            return found
        stop = root.focusWidget()
        if stop in found[:1]:
            return found
        assert stop not in found, f"Tab never comes back to {_where(found[0])}"
        found.append(stop)
    raise AssertionError("Tab never comes around")


def unreachable(root: QWidget) -> list[str]:
    """Return the controls that no key leads to.

    Of buttons of which one is chosen Tab stops at that one, and arrows lead on; a focus
    proxy stands for what hands its focus on.
    """
    stops = set(_tab_stops(root))

    def in_group(control: QWidget) -> bool:
        group = control.group() if isinstance(control, QAbstractButton) else None
        return group is not None and any(each in stops for each in group.buttons())

    return [
        f"{_where(control)} “{_name(_interface(control))}”"
        for control in controls(root)
        if control not in stops
        and control.focusProxy() not in stops
        and not in_group(control)
        and not control.focusPolicy() & Qt.FocusPolicy.TabFocus
    ]


def nameless(root: QWidget) -> list[str]:
    found = []
    for control in {*controls(root), *_tab_stops(root)}:
        interface = _interface(control)
        scrolls_only = isinstance(control, QAbstractScrollArea) and not _name(interface)
        if not _name(interface) or (interface.role() in _DUMB and not _name(interface)):
            found.append(f"{_where(control)}{' (scrolls)' if scrolls_only else ''}")
    return found


def _jumps_up(root: QWidget) -> list[str]:
    """Return where Tab goes back up by more than the part of the window it is in.

    From top to bottom within the innermost scroll area or the like that both stops share; a
    step up is fine to the next column, which stands to the right.
    """
    stops = [s for s in _tab_stops(root) if not isinstance(s, QAbstractScrollArea)]
    corners = [s.mapTo(root, QPoint(0, 0)) for s in stops]
    first = min(range(len(stops)), key=lambda at: corners[at].x() + corners[at].y(), default=0)
    stops = stops[first:] + stops[:first]
    found = []
    for one, other in pairwise(stops):
        a, b = one.mapTo(root, QPoint(0, 0)), other.mapTo(root, QPoint(0, 0))
        above = b.y() + other.height() <= a.y()
        left = b.x() < a.x() + one.width()
        if above and left:
            found.append(
                f"{_where(one)} “{_name(_interface(one))}” to “{_name(_interface(other))}”"
            )
    return found


def letters_taken_twice(root: QWidget) -> list[str]:
    """Return what shares its letter with another: Alt with it would only step between the two."""
    words = [action.text() for bar in root.findChildren(QMenuBar) for action in bar.actions()]
    for widget in root.findChildren(QWidget):
        if not widget.isVisible() or not widget.isEnabled() or widget.window() is not root:
            continue
        if isinstance(widget, QTabBar):
            words += [widget.tabText(at) for at in range(widget.count())]
        elif isinstance(widget, QAbstractButton) or (isinstance(widget, QLabel) and widget.buddy()):
            words.append(widget.text())
    letters: dict[str, list[str]] = {}
    for word in words:
        letters.setdefault(QKeySequence.mnemonic(word).toString(), []).append(word)
    letters.pop("", None)
    return [" and ".join(sharing) for sharing in letters.values() if len(sharing) > 1]


def test_every_room_by_keyboard_and_screen_reader(window: MainWindow) -> None:
    """Protects whoever uses no mouse or no eyes: what can be pressed, chosen or typed into has a
    name and is led to by Tab, from top to bottom, in each view, tab, form and dialog."""
    wrong: dict[str, list[str]] = {}
    charts: set[str] = set()
    seen = 0
    for name, room in Rooms(window).walk():
        seen += 1
        charts |= {each.accessibleName() for each in room.findChildren(Chart)}
        for what, found in (
            ("nameless", nameless(room)),
            ("no key leads to", unreachable(room)),
            ("Tab jumps up", _jumps_up(room)),
            ("one letter for", letters_taken_twice(room)),
            ("chart without a table", charts_without_tables(room)),
        ):
            for each in found:
                wrong.setdefault(f"{what}: {each}", []).append(name)
    assert seen > 30
    assert len(charts) > 10  # or the look for their tables is at nothing
    assert not wrong, "\n".join(f"{what}  [{rooms[0]}]" for what, rooms in wrong.items())


def charts_without_tables(root: QWidget) -> list[str]:
    """Return the charts for whose facts there is no table in the same room."""
    tables = [t for t in root.findChildren(QAbstractItemView) if t.accessibleName()]
    return [
        _where(chart)
        for chart in root.findChildren(Chart)
        if chart.isVisible()
        and not any(isinstance(p, ChartWithTable) for p in _parents(chart))
        and not (chart.accessibleName() and any(t.isVisible() for t in tables))
    ]


def _parents(widget: Any) -> Iterator[Any]:
    while (widget := widget.parent()) is not None:
        yield widget


def test_a_screen_reader_hears_the_whole_tree(window: MainWindow) -> None:
    """From the window down each interface is valid, children know their parent, and what has a
    state of being focusable has a name."""

    def walk(interface: QAccessibleInterface, depth: int) -> Iterator[str]:
        assert depth < 40
        for at in range(interface.childCount() if interface.role() not in _CELLS else 0):
            child = interface.child(at)
            if child is None or not child.isValid():
                yield f"child {at} of “{_name(interface)}” is no interface"
                continue
            state = child.state()
            if state.focusable and not state.invisible and not state.disabled and not _name(child):
                yield f"{child.role().name} in “{_name(interface)}” ({_where(child.object())})"
            yield from walk(child, depth + 1)

    for view in window._buttons:
        window.state.change(view=view)
        while not window.bench.idle:
            QApplication.processEvents()
        for _ in range(5):
            QApplication.processEvents()
        assert list(walk(QAccessible.queryAccessibleInterface(window), 0)) == [], view
