"""Taking a table in: what it was understood to say, what is still to be answered, what is wrong."""

from __future__ import annotations

from datetime import time
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QPlainTextEdit,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.intake import Mapping, remember
from planner.intake.moments import NotAMoment, parse
from planner.ui.hauls.intake_text import (
    MEANING_CHOICES,
    Offer,
    button_text,
    found,
    made_of,
    problem_lines,
)
from planner.ui.parts import body, button, caution, enter_presses_nothing, open_at, quiet
from planner.words import say

_ORDERS = (("", "choose"), ("dmy", say("3/4 is 3 April")), ("mdy", say("3/4 is 4 March")))
_DEPTHS = (("m", say("metres")), ("ft", say("feet")))
_WATERS = (("C", say("Celsius")), ("F", say("Fahrenheit")))
_LETTERS = (
    ("", say("as they seem")),
    ("cp1252", say("Windows")),
    ("mac_roman", say("old Mac")),
    ("cp850", "DOS"),
)


class IntakeDialog(QDialog):
    """Shows an offer and asks for another when the mapping is changed.

    changed: emitted with the mapping as the user has it now. taken: emitted with the offer that
    the user took.
    """

    changed = Signal(object)
    taken = Signal(object)

    def __init__(self, offer: Offer, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Import a table"))
        open_at(self, 780, 620)
        self.offer = offer
        self.choices: list[QComboBox] = []
        self._chosen_last = -1
        self._lay_out()
        self._fill_columns()
        self.show_offer(offer)

    # -- building ----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self.made_of = quiet()
        self.columns = QTableWidget(0, 3)
        self.columns.setAccessibleName(say("Columns of the table, and what they mean"))
        self.columns.setHorizontalHeaderLabels(
            [say("In the table"), say("First values"), say("Means")]
        )
        self.columns.verticalHeader().hide()
        self.columns.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.columns.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.columns.setTabKeyNavigation(False)
        header = self.columns.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.place = self._line(say("Where a row names no place"))
        self.haul_clock = self._line(say("Such as 7:30, for rows that have only a date"))
        self.set_clock = self._line(say("Such as 17:00, for rows that have only a date"))
        self.order_box = self._box(_ORDERS, "order")
        self.depth_box = self._box(_DEPTHS, "depth")
        self.water_box = self._box(_WATERS, "water")
        self.encoding_box = self._box(_LETTERS, "encoding")
        self.form = QFormLayout()
        for label, widget in (
            (say("Place"), self.place),
            (say("Day and month"), self.order_box),
            (say("Usual time of hauling"), self.haul_clock),
            (say("Usual time of setting"), self.set_clock),
            (say("Depths are in"), self.depth_box),
            (say("Water is in"), self.water_box),
            (say("Letters are those of"), self.encoding_box),
        ):
            self.form.addRow(label, widget)
        self.found = body()
        self.wrong = caution()
        self.problems = QPlainTextEdit()
        self.problems.setReadOnly(True)
        self.problems.setAccessibleName(say("Every problem of the table"))
        self.problems.setTabChangesFocus(True)
        self.take = button("", self._take)
        self.leave = button(say("Take nothing"), self.reject, say("The log stays as it is"))
        row = QHBoxLayout()
        row.addStretch(1)
        for each in (self.take, self.leave):
            row.addWidget(each)
        column = QVBoxLayout(self)
        column.addWidget(self.made_of)
        column.addWidget(self.columns, 2)
        column.addLayout(self.form)
        column.addWidget(self.found)
        column.addWidget(self.wrong)
        column.addWidget(self.problems, 1)
        column.addLayout(row)
        for words in (self.made_of, self.found, self.wrong):
            words.setMinimumWidth(640)  # or a wrapping label asks for the height of a narrow column
        enter_presses_nothing(self)

    def _line(self, hint: str) -> QLineEdit:
        line = QLineEdit()
        line.setPlaceholderText(hint)
        line.editingFinished.connect(self._tell)
        return line

    def _box(self, options: tuple[tuple[str, str], ...], name: str) -> QComboBox:
        box = QComboBox()
        for value, words in options:
            box.addItem(words, value)
        box.setObjectName(name)
        box.activated.connect(lambda _: self._tell())
        return box

    def _fill_columns(self) -> None:
        meanings = QStandardItemModel(self)  # one for all: many columns have many meanings each
        for meaning, words in MEANING_CHOICES:
            choice = QStandardItem(words)
            choice.setData(meaning, Qt.ItemDataRole.UserRole)
            meanings.appendRow(choice)
        self.columns.setRowCount(len(self.offer.grid.heading))
        for at, name in enumerate(self.offer.grid.heading):
            for column, text in enumerate((name, self.offer.examples[at])):
                item = QTableWidgetItem(text)
                item.setToolTip(text)
                self.columns.setItem(at, column, item)
            box = QComboBox()
            box.setAccessibleName(say("What {name} means", name=name))
            box.setModel(meanings)
            box.activated.connect(lambda _, at=at: self._mean(at))
            self.columns.setCellWidget(at, 2, box)
            _choose(box, self.offer.mapping.columns.get(name, ""))
            self.choices.append(box)
        header = self.columns.horizontalHeader()
        # Once all is there: each box that comes would have the columns measured anew.
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)

    # -- showing -----------------------------------------------------------------------------

    def show_offer(self, offer: Offer) -> None:
        """Show what taking the table in would do now."""
        self.offer = offer
        mapping = offer.mapping
        self.made_of.setText(made_of(offer.grid))
        for at, values in enumerate(offer.examples):
            item = self.columns.item(at, 1)
            if item is not None:
                item.setText(values)
        self._fill(self.place, mapping.place)
        self._fill(self.haul_clock, _clock_text(mapping.haul_clock))
        self._fill(self.set_clock, _clock_text(mapping.set_clock))
        for box, value in (
            (self.order_box, mapping.order or ""),
            (self.depth_box, mapping.depth),
            (self.water_box, mapping.water),
            (self.encoding_box, mapping.encoding or ""),
        ):
            _choose(box, value)
        means = set(mapping.columns.values())
        for widget, needed in (
            (self.place, offer.needs_place),
            (self.order_box, offer.needs_order),
            (self.haul_clock, "haul_clock" in offer.clocks),
            (self.set_clock, "set_clock" in offer.clocks),
            (self.depth_box, "depth_m" in means and "depth_m" not in mapping.columns),
            (self.water_box, "water_c" in means and "water_c" not in mapping.columns),
            (self.encoding_box, offer.grid.guessed_letters or mapping.encoding is not None),
        ):
            self.form.setRowVisible(widget, needed)
        given_up = [
            say("{name} is kept as it is: another column has its meaning now.", name=name)
            for at, name in enumerate(offer.grid.heading)
            if self.choices[at].currentData() and self._given_up(at)
        ]
        self.found.setText("\n".join([found(offer), *given_up]))
        lines = problem_lines(offer)
        self.wrong.setText(
            say(
                "⚠ {problems} of its lines cannot be taken. Nothing is in the log yet: "
                "mend the table and import it again, or take the others alone.",
                problems=len(offer.intake.problems),
            )
        )
        self.wrong.setVisible(bool(lines))
        self.problems.setPlainText("\n".join(lines))
        self.problems.setVisible(bool(lines))
        self.take.setText(button_text(offer))
        self.take.setEnabled(bool(offer.new or offer.filled))

    def _fill(self, line: QLineEdit, text: str) -> None:
        if not line.hasFocus():
            line.setText(text)

    # -- answering ---------------------------------------------------------------------------

    def _mean(self, at: int) -> None:
        self._chosen_last = at
        self._tell()

    def _given_up(self, at: int) -> bool:
        """Tell whether a column's meaning went to the one that was chosen last.

        Its own choice stays: arrow keys pass over many meanings on their way to one.
        """
        meaning = self.choices[at].currentData()
        firsts = [i for i, box in enumerate(self.choices) if box.currentData() == meaning]
        keeper = self._chosen_last if self._chosen_last in firsts else firsts[0]
        return at != keeper

    def mapping(self) -> Mapping:
        """Return the mapping as the widgets have it."""
        columns = {
            name: box.currentData()
            for at, (name, box) in enumerate(
                zip(self.offer.grid.heading, self.choices, strict=True)
            )
            if box.currentData() and not self._given_up(at)
        }
        return Mapping(
            columns,
            order=self.order_box.currentData() or None,
            place=self.place.text().strip(),
            haul_clock=_clock(self.haul_clock.text()),
            set_clock=_clock(self.set_clock.text()),
            depth=self.depth_box.currentData(),
            water=self.water_box.currentData(),
            encoding=self.encoding_box.currentData() or None,
        )

    def _tell(self) -> None:
        made = self.mapping()
        if made != self.offer.mapping:
            self.take.setEnabled(False)  # until the new offer is there
            self.changed.emit(made)

    def _take(self) -> None:
        remember(self.offer.grid.heading, self.offer.mapping)
        self.taken.emit(self.offer)
        self.accept()


def _choose(box: QComboBox, value: Any) -> None:
    box.setCurrentIndex(max(box.findData(value), 0))


def _clock_text(clock: time | None) -> str:
    return "" if clock is None else f"{clock:%H:%M}"


def _clock(text: str) -> time | None:
    try:
        return parse(text, "dmy")[1] if text.strip() else None
    except NotAMoment:
        return None
