"""Every trap by its label: what befell it, and what it gave."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.logbook import Trap, TrapEvent
from planner.logbook.entries import TRAP_EVENTS
from planner.ui.hauls.log_words import IN_WORDS
from planner.ui.hauls.trap_rows import (
    event_lines,
    haul_line,
    hauls_of_trap,
    sums_of_trap,
    trap_labels,
    trap_named,
)
from planner.ui.parts import body, button, enter_presses_nothing, heading, open_at, quiet
from planner.ui.tables import RowsModel, rows_table
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import say


class TrapsWindow(QDialog):
    """Follows the log; changes are saved at once and undone like any other."""

    def __init__(self, bench: Workbench, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Traps"))
        open_at(self, 900, 620)
        self.bench = bench
        self._trap: Trap | None = None
        self._wanted = ""  # a new trap, chosen as soon as the log has it
        self.list = QListWidget()
        self.list.setAccessibleName(say("Traps by label"))
        self.list.currentTextChanged.connect(lambda _: self._show())
        self.new = QLineEdit()
        self.new.setPlaceholderText(say("Label of a new trap"))
        self.new.setAccessibleName(say("Label of a new trap"))
        self.new.returnPressed.connect(self._add_trap)
        left = QVBoxLayout()
        left.addWidget(self.list, 1)
        left.addWidget(self.new)
        row = QHBoxLayout(self)
        row.addLayout(left, 1)
        row.addLayout(self._right(), 3)
        enter_presses_nothing(self)
        bench.log_changed.connect(self.refresh)
        self.refresh()

    def _right(self) -> QVBoxLayout:
        self.name = heading("")
        self.design, self.notes = QLineEdit(), QLineEdit()
        for line in (self.design, self.notes):
            line.editingFinished.connect(self._save_words)
        form = QFormLayout()
        form.addRow(say("Design"), self.design)
        form.addRow(say("Notes"), self.notes)
        self._events = RowsModel((say("Day"), say("What"), say("Notes")), parent=self)
        self.events: QTableView = rows_table(
            self._events,
            say("History of the trap"),
            wide=2,
            empty=say("Nothing noted. Say below what befell the trap, and add it."),
        )
        self.events.selectionModel().currentRowChanged.connect(lambda *_: self._enable_remove())
        self.kind = QComboBox()
        self.kind.setAccessibleName(say("What befell it"))
        for kind in TRAP_EVENTS:
            self.kind.addItem(IN_WORDS[kind], kind)
        today = self.bench.state.today
        self.on = QDateEdit(QDate(today.year, today.month, today.day))
        self.on.setDisplayFormat("d MMM yyyy")
        self.on.setAccessibleName(say("On which day"))
        self.event_notes = QLineEdit()
        self.event_notes.setPlaceholderText(say("what was done, what it cost"))
        self.event_notes.setAccessibleName(say("Notes to it"))
        self.event_notes.returnPressed.connect(self._add_event)
        self.add = button(
            say("Add to history"), self._add_event, say("Note it below the trap, with its day")
        )
        self.remove = button(say("Take out"), self._remove_event, say("Take the chosen line out"))
        entry = QHBoxLayout()
        for widget, share in (
            (self.kind, 0), (self.on, 0), (self.event_notes, 1), (self.add, 0), (self.remove, 0),
        ):  # fmt: skip
            entry.addWidget(widget, share)
        self.sums = body()
        self._hauls = RowsModel(
            (say("Trip"), say("Place"), say("Spot"), say("Bait"), say("Keepers"), say("Light")),
            numbers=(4, 5),
            parent=self,
        )
        self.hauls: QTableView = rows_table(
            self._hauls,
            say("Hauls of the trap, newest first"),
            wide=3,
            empty=say("No haul of this trap is logged."),
            wraps=False,
        )
        column = QVBoxLayout()
        column.setSpacing(SPACE // 2)
        column.addWidget(self.name)
        column.addLayout(form)
        column.addWidget(quiet(say("History")))
        column.addWidget(self.events, 1)
        column.addLayout(entry)
        column.addWidget(self.sums)
        column.addWidget(self.hauls, 2)
        return column

    # -- showing -----------------------------------------------------------------------------

    def refresh(self) -> None:
        """Show the traps of the log as it is."""
        labels = trap_labels(self.bench.log)
        if labels != [self.list.item(at).text() for at in range(self.list.count())]:
            chosen = self._wanted or (self._trap.label if self._trap else "")
            self._wanted = ""
            self.list.blockSignals(True)
            self.list.clear()
            self.list.addItems(labels)
            self.list.setCurrentRow(labels.index(chosen) if chosen in labels else 0)
            self.list.blockSignals(False)
        self._show()

    def _show(self) -> None:
        at = self.list.currentRow()
        log, book = self.bench.log, self.bench.book
        self._trap = None if at < 0 else trap_named(log, self.list.item(at).text())
        may = self._trap is not None and book is not None and not book.read_only
        for widget in (self.design, self.notes, self.event_notes, self.add):
            widget.setEnabled(may)
        self.new.setEnabled(book is not None and not book.read_only)
        self._enable_remove()
        if self._trap is None:
            self.name.setText(say("No trap yet"))
            self.sums.setText(say("Traps appear here with their first haul, or when you name one."))
            return
        hauls = hauls_of_trap(log, self._trap.label)
        self.name.setText(say("Trap {label}", label=self._trap.label))
        for line, text in ((self.design, self._trap.design), (self.notes, self._trap.notes)):
            if not (line.hasFocus() and line.isModified()):
                line.setText(text)
        self._events.show(event_lines(self._trap))
        self._enable_remove()  # other lines, and none of them chosen
        self.sums.setText(sums_of_trap(hauls))
        self._hauls.show([haul_line(haul) for haul in hauls[:500]])

    def _enable_remove(self) -> None:
        self.remove.setEnabled(self.add.isEnabled() and self.events.currentIndex().isValid())

    # -- changing ----------------------------------------------------------------------------

    def _save(self, trap: Trap, what: str) -> None:
        self._trap = trap
        self.bench.change_log(lambda book: book.save_trap(trap, change=f"{what} {trap.label}"))

    def _save_words(self) -> None:
        if self._trap is None:
            return
        made = replace(
            self._trap, design=self.design.text().strip(), notes=self.notes.text().strip()
        )
        if made != self._trap:
            self._save(made, say("description of trap"))

    def _add_event(self) -> None:
        if self._trap is None:
            return
        day = self.on.date()
        on = date(day.year(), day.month(), day.day())
        event = TrapEvent(self.kind.currentData(), on, self.event_notes.text().strip())
        self.event_notes.clear()
        self._save(replace(self._trap, events=(*self._trap.events, event)), say("history of trap"))

    def _remove_event(self) -> None:
        row = self.events.currentIndex().row()
        if self._trap is None or row < 0:
            return
        events = sorted(self._trap.events, key=lambda event: event.on)
        del events[row]
        self._save(replace(self._trap, events=tuple(events)), say("history of trap"))

    def _add_trap(self) -> None:
        label = self.new.text().strip()
        self.new.clear()
        if not label:
            return
        labels = trap_labels(self.bench.log)
        if label in labels:
            self.list.setCurrentRow(labels.index(label))
        else:
            self._wanted = label
            self.bench.change_log(lambda book: book.save_trap(Trap(label)))
