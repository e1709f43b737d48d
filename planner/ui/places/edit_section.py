"""What every part of the place editor does: show fields, tell them, and show what is wrong."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from planner.errors import Problem
from planner.phrasing import number_text
from planner.sites.editing import Wanted
from planner.ui.flow import label_of
from planner.ui.parts import caution
from planner.ui.theme import LINE_GAP
from planner.words import say


class Section(QWidget):
    """Some fields of a place file.

    changed: after every change by the user. `notes` holds the line under each field, by the
    field's path as problems give it.
    """

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.notes: dict[str, Any] = {}

    @abstractmethod
    def show_tables(self, tables: Mapping[str, Any]) -> None:
        """Fill the fields from the tables of a place file."""

    @abstractmethod
    def wanted(self) -> Wanted:
        """Return what the fields hold, by path."""

    def show_problems(self, problems: Sequence[Problem]) -> list[Problem]:
        """Show each problem under its field; return those that belong elsewhere."""
        mine: dict[str, list[str]] = {key: [] for key in self.notes}
        left = []
        for problem in problems:
            key = self._key(problem.where)
            if key is None:
                left.append(problem)
            else:
                inner = problem.where.removeprefix(key).strip(".,: ")
                found = say(" (found {value})", value=problem.value[:60]) if problem.value else ""
                name = f"{inner}: " if inner else ""
                mine[key].append(f"⚠ {name}{problem.what}{found}; {problem.remedy}")
        for key, texts in mine.items():
            self.notes[key].setText("\n".join(texts))
            self.notes[key].setVisible(bool(texts))
        return left

    def _key(self, where: str) -> str | None:
        """Return the field a problem belongs under: the longest path that leads to it."""
        fits = [
            key
            for key in self.notes
            if where == key or where.startswith((f"{key}.", f"{key}[", f"{key},"))
        ]
        return max(fits, key=len, default=None)

    def note(self, key: str) -> QWidget:
        """Return the line for what is wrong at a path; hidden while nothing is."""
        made = caution()
        made.hide()
        self.notes[key] = made
        return made

    def add_field(
        self, form: QFormLayout, label: str, field: QWidget, key: str, *beside: QWidget
    ) -> None:
        """Add a field to a form, what stands beside it, and the line for its problems under it."""
        words, column, line = label_of(label, field), QVBoxLayout(), QHBoxLayout()
        form.addRow(words, column)
        column.setSpacing(LINE_GAP)
        column.addLayout(line)
        line.setSpacing(form.horizontalSpacing())
        line.addWidget(field, 1)
        for each in beside:
            line.addWidget(each)
        column.addWidget(self.note(key))
        field.setAccessibleName(label.replace("&", ""))
        if isinstance(field, QLineEdit):
            field.textEdited.connect(lambda _: self.changed.emit())
        elif isinstance(field, QComboBox):
            field.activated.connect(lambda _: self.changed.emit())
            if field.isEditable():
                field.editTextChanged.connect(lambda _: self.changed.emit())


class Unit(QLabel):
    """The unit beside a field, as wide as the widest, so that fields end at one line."""

    def sizeHint(self) -> QSize:
        hint, metrics = super().sizeHint(), self.fontMetrics()
        widest = max(metrics.horizontalAdvance(unit) for unit in ("m", "ft", say("min")))
        return QSize(max(hint.width(), widest), hint.height())


def align_fields(*forms: QFormLayout, beside: Iterable[QWidget] = ()) -> None:
    """Let the fields of forms under one another begin at one line.

    beside: the labels of fields among them that are in no form.
    """
    labels = list(beside)
    for form in forms:
        for row in range(form.rowCount()):
            item = form.itemAt(row, QFormLayout.ItemRole.LabelRole)
            if item is not None and (label := item.widget()) is not None:
                labels.append(label)
    widest = max(max(label.sizeHint().width(), label.minimumWidth()) for label in labels)
    for label in labels:
        label.setMinimumWidth(widest)


def text_of(value: Any) -> str:
    """Return a value of a file as it stands in a field: numbers without empty decimals."""
    if value is None:
        return ""
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return number_text(value, ".10g")
    return str(value)


def table_in(tables: Mapping[str, Any], *path: str) -> Mapping[str, Any]:
    """Return a table inside tables; an empty one where there is none."""
    found: Any = tables
    for step in path:
        found = found.get(step) if isinstance(found, Mapping) else None
    return found if isinstance(found, Mapping) else {}
