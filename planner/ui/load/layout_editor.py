"""Which trap goes where, spot by spot; traps are moved with the mouse or the keyboard."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QDropEvent, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QGridLayout,
    QHeaderView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.handouts.layout import TrapLayout
from planner.ui.load.kept_column import line_gap
from planner.ui.load.layout_desk import LayoutDesk
from planner.ui.parts import button, quiet
from planner.ui.tables import Index
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import counted, say

_TALLEST_PX = 460
_HOW = say(
    "Drag a trap to another spot, or choose it and press Alt with the up or down arrow. "
    "Ctrl+Z takes a move back."
)
_STILL = say("No move to take back or make again")
_NONE = say(
    "Which trap goes where on the next trip will stand here. Give the place its spots in the "
    "place book, and log traps with their design and spot."
)
Keys = QKeySequence.StandardKey


class LayoutEditor(QWidget):
    """The layout of the next trip, with what it is worth for telling designs apart.

    roomy: whether there is air between the rows.
    """

    def __init__(self, bench: Workbench, roomy: bool = False) -> None:
        super().__init__()
        self.bench = bench
        self.layouts = LayoutDesk.of(bench)
        self.tree = LayoutTree(roomy)
        self.worth = quiet()
        self.how = quiet(_HOW)
        self.above = button(
            say("To the spot above"),
            lambda: self._step(-1),
            say("Move the chosen trap; Alt with the up arrow does the same"),
        )
        self.below = button(
            say("To the spot below"),
            lambda: self._step(1),
            say("Move the chosen trap; Alt with the down arrow does the same"),
        )
        self.undo = button(say("Undo move"), self.layouts.undo)
        self.redo = button(say("Redo move"), self.layouts.redo)
        self.proposed = button(
            say("As proposed"),
            self.layouts.as_proposed,
            say("Put every trap back where it was proposed"),
        )
        self.log = button(
            say("Start this trip in the log"),
            self.layouts.start_trip,
            say("Rows with the traps at these spots, to fill in as you haul"),
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addWidget(self.worth)
        column.addWidget(self.tree)
        column.addWidget(self.how)
        buttons = QGridLayout()
        for at, each in enumerate((self.above, self.undo, self.below, self.redo)):
            buttons.addWidget(each, at // 2, at % 2)
        buttons.addWidget(self.proposed, 2, 0)
        buttons.addWidget(self.log, 2, 1)
        if roomy:
            column.setSpacing(line_gap(roomy))
            buttons.setColumnStretch(2, 1)  # the buttons need no more than their words
        column.addLayout(buttons)
        self.tree.moved.connect(self.layouts.move)
        self.tree.stepped.connect(self._step)
        self.tree.undo_asked.connect(self.layouts.undo)
        self.tree.redo_asked.connect(self.layouts.redo)
        self.tree.currentItemChanged.connect(lambda *_: self._enable())
        self.layouts.changed.connect(self._show)
        bench.site_changed.connect(self._follow)
        bench.log_changed.connect(self._follow)
        self._show()

    @property
    def stops(self) -> list[QWidget]:
        """Where Tab stops, from the top."""
        buttons = (self.above, self.undo, self.below, self.redo, self.proposed, self.log)
        return [self.tree, *buttons]

    def tell_waters(self, waters: Mapping[str, str]) -> None:
        """Say beside each spot what is said of its water, instead of how many traps it has."""
        if waters != self.tree.waters:
            self.tree.waters = waters
            self.tree.setHeaderLabels([say("Spot and traps"), say("Design, water and line")])
            self._show()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.layouts.refresh()

    def _follow(self) -> None:
        if self.isVisible():
            self.layouts.refresh()

    def _show(self) -> None:
        layout = self.layouts.layout
        self.tree.show_layout(layout, set(self.layouts.moves))
        self.worth.setText(_NONE if layout is None else layout.sentence)
        self.worth.setVisible(bool(self.worth.text()))
        for each in (self.tree, self.how, self.above, self.below, self.undo, self.redo):
            each.setVisible(layout is not None)
        for each in (self.proposed, self.log):
            each.setVisible(layout is not None)
        self._enable()

    def _enable(self) -> None:
        trap, desk = self.tree.chosen, self.layouts
        self.above.setEnabled(self._beside(trap, -1) is not None)
        self.below.setEnabled(self._beside(trap, 1) is not None)
        for each, verb, name in (
            (self.undo, say("Undo"), desk.undo_name),
            (self.redo, say("Redo"), desk.redo_name),
        ):
            each.setEnabled(name is not None)
            each.setToolTip(f"{verb}: {name}" if name else _STILL)
        self.proposed.setEnabled(bool(desk.moves))
        self.log.setEnabled(desk.may_log)

    def _beside(self, trap: str | None, steps: int) -> str | None:
        """Return the spot above (-1) or below (1) that of a trap; None where there is none."""
        layout = self.layouts.layout
        spot = None if trap is None else self.layouts.spot_of(trap)
        if layout is None or spot not in layout.spots:
            return None
        at = layout.spots.index(spot) + steps
        return layout.spots[at] if 0 <= at < len(layout.spots) else None

    def _step(self, steps: int) -> None:
        trap = self.tree.chosen
        spot = self._beside(trap, steps)
        if trap is not None and spot is not None:
            self.layouts.move(trap, spot)


class LayoutTree(QTreeWidget):
    """Spots with their traps beneath; asks for moves, and makes none itself.

    waters: what is said beside a spot in place of how many traps it has.
    """

    moved = Signal(str, str)
    stepped = Signal(int)
    undo_asked = Signal()
    redo_asked = Signal()

    def __init__(self, roomy: bool) -> None:
        super().__init__()
        self.waters: Mapping[str, str] = {}
        self._tallest_px = _TALLEST_PX
        if roomy:
            self._tallest_px *= 2
            self.setItemDelegate(_AiryRows(self))
        self.setColumnCount(2)
        self.setHeaderLabels([say("Spot and traps"), say("Design")])
        self.setAccessibleName(say("Layout of the next trip"))
        self.setAccessibleDescription(_HOW)
        self.setDragDropMode(QAbstractItemView.DragDropMode.InternalMove)
        self.setItemsExpandable(False)
        self.setTabKeyNavigation(False)
        self.header().setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        self.header().setSectionsMovable(False)

    @property
    def chosen(self) -> str | None:
        """The label of the chosen trap."""
        item = self.currentItem()
        return None if item is None or item.parent() is None else _name(item)

    def show_layout(self, layout: TrapLayout | None, moved: set[str]) -> None:
        """Show where the traps go; the chosen one stays chosen. moved: marked as such."""
        chosen = self.chosen
        self.clear()
        if layout is None:
            return
        for spot in layout.spots:
            here = [each for each in layout.placed if each.spot == spot]
            count = counted(len(here), "trap") if here else say("no trap")
            top = QTreeWidgetItem(self, [spot, self.waters.get(spot, count)])
            top.setToolTip(1, self.waters.get(spot, ""))
            top.setData(0, Qt.ItemDataRole.UserRole, spot)
            top.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsDropEnabled)
            for each in here:
                mark = say(" (moved)") if each.trap in moved else ""
                item = QTreeWidgetItem(top, [f"{each.trap}{mark}", each.design])
                item.setData(0, Qt.ItemDataRole.UserRole, each.trap)
                item.setToolTip(1, each.design)
                item.setFlags(
                    Qt.ItemFlag.ItemIsEnabled
                    | Qt.ItemFlag.ItemIsSelectable
                    | Qt.ItemFlag.ItemIsDragEnabled
                    | Qt.ItemFlag.ItemIsDropEnabled
                )
                if each.trap == chosen:
                    self.setCurrentItem(item)
        self.expandAll()
        rows = len(layout.spots) + len(layout.placed)
        height = (rows + 1) * max(self.sizeHintForRow(0), 1) + self.header().sizeHint().height()
        self.setFixedHeight(min(height, self._tallest_px))

    def dropEvent(self, event: QDropEvent) -> None:
        trap, item = self.chosen, self.itemAt(event.position().toPoint())
        # The tree is filled anew: nothing is left for the drag to take away.
        event.setDropAction(Qt.DropAction.IgnoreAction)
        event.accept()
        if trap is not None and item is not None:
            self.moved.emit(trap, _name(item.parent() or item))

    def event(self, event: QEvent) -> bool:
        # Undo of the menu is the log's; here the key takes back a move.
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and (event.matches(Keys.Undo) or event.matches(Keys.Redo))
        ):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()))
        if steps is not None and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.stepped.emit(steps)
        elif event.matches(Keys.Undo):
            self.undo_asked.emit()
        elif event.matches(Keys.Redo):
            self.redo_asked.emit()
        else:
            super().keyPressEvent(event)


class _AiryRows(QStyledItemDelegate):
    """Rows with air between them."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return super().sizeHint(option, index) + QSize(0, line_gap(roomy=True))


def _name(item: QTreeWidgetItem) -> str:
    return str(item.data(0, Qt.ItemDataRole.UserRole))
