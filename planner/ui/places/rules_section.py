"""The rules of a place as the user read them: closed periods, limits, one line a heading."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

from PySide6.QtWidgets import QFormLayout, QLineEdit, QVBoxLayout

from planner.phrasing import RULES_CAUTION
from planner.sites.editing import Wanted, number_or_text
from planner.sites.rule_book import is_ahead, is_stale, missing_headings, months_since
from planner.sites.site import Rules
from planner.ui.parts import button, caution, heading, quiet
from planner.ui.places.edit_section import Section, table_in, text_of
from planner.ui.places.kept_fields import Kept, date_or_text, rows_of
from planner.ui.places.rows_editor import RowsEditor
from planner.ui.state import ViewState
from planner.ui.theme import SPACE
from planner.words import say

_CLOSURES = ("closures",)
_NOTES = ("rules", "notes")
_CLOSURE_KEYS = ("reason", "from", "to", "weekdays")


class RulesSection(Section):
    """When no trap may be in the water, how many and how long, and every other rule in words."""

    def __init__(self, state: ViewState) -> None:
        super().__init__()
        self._state, self._kept = state, Kept()
        self.checked, self.where = QLineEdit(), QLineEdit()
        self.most_traps, self.longest_soak = QLineEdit(), QLineEdit()
        self.checked.setPlaceholderText("2026-03-02")
        self.where.setPlaceholderText(say("the agency's leaflet, its page, its office"))
        self.most_traps.setPlaceholderText(say("empty: no limit entered"))
        self.longest_soak.setPlaceholderText(say("empty: no limit entered"))
        self.today = button(
            say("Checked today"), self._check_today, say("You have read the rules today")
        )
        self.old = caution()
        self.closures = RowsEditor(
            say("Closed periods"),
            say("Add a closed period"),
            (say("Why"), say("From"), say("To"), say("Only on")),
        )
        self.notes_table = RowsEditor(
            say("Rules"), say("Add a rule"), (say("Heading"), say("What the rule says")), True
        )
        self.notes_table.table.setMinimumHeight(14 * self.fontMetrics().height())
        self.closures.table.setFixedHeight(8 * self.fontMetrics().height())
        for rows in (self.closures, self.notes_table):
            rows.changed.connect(self.changed)
        self.changed.connect(self._show_age)
        self._build()

    def _build(self) -> None:
        column, form = QVBoxLayout(self), QFormLayout()
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(quiet(RULES_CAUTION))
        column.addWidget(self.old)
        column.addLayout(form)
        self.add_field(form, say("Rules chec&ked on"), self.checked, "rules.checked", self.today)
        self.add_field(form, say("&Where they were checked"), self.where, "rules.where")
        self.add_field(form, say("&Most traps allowed"), self.most_traps, "rules.max_traps")
        self.add_field(
            form, say("Longest &soak allowed, hours"), self.longest_soak, "rules.max_soak_hours"
        )
        column.addWidget(heading(say("No trap in the water")))
        column.addWidget(
            quiet(
                say(
                    "From and to as dates, 2026-07-04 for once or 07-04 for every year (over New "
                    "Year if need be); days of the week such as Sun, Wed, alone or within the "
                    "period."
                )
            )
        )
        column.addWidget(self.closures)
        column.addWidget(self.note("closures"))
        column.addWidget(heading(say("Every other rule")))
        column.addWidget(
            quiet(
                say(
                    "Agencies regulate what these headings name; the program knows no rule itself. "
                    "What you write becomes your checklist; a heading without words is left out."
                )
            )
        )
        column.addWidget(self.notes_table, 1)
        column.addWidget(self.note("rules.notes"))

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        rules, kept = table_in(tables, "rules"), self._kept
        for key, field in (
            ("checked", self.checked),
            ("where", self.where),
            ("max_traps", self.most_traps),
            ("max_soak_hours", self.longest_soak),
        ):
            field.setText(text_of(rules.get(key)))
            field.setCursorPosition(0)
            kept.show(("rules", key), rules.get(key), field.text())
        closures = rows_of(tables.get("closures"), _CLOSURE_KEYS)
        self.closures.show_rows(closures)
        kept.show(_CLOSURES, tables.get("closures"), self.closures.rows())
        notes = rows_of(rules.get("notes"), ("category", "text"))
        open_headings = missing_headings(category for category, _ in notes)
        self.notes_table.show_rows([*notes, *((heading, "") for heading in open_headings)])
        kept.show(_NOTES, rules.get("notes"), self._written_notes())
        self._show_age()

    def wanted(self) -> Wanted:
        kept = self._kept
        closures, notes = self.closures.rows(), self._written_notes()
        fields = (
            ("checked", self.checked, date_or_text),
            ("where", self.where, lambda text: text.strip() or None),
            ("max_traps", self.most_traps, number_or_text),
            ("max_soak_hours", self.longest_soak, number_or_text),
        )
        return {
            **{
                ("rules", key): kept.value(("rules", key), field.text(), meant(field.text()))
                for key, field, meant in fields
            },
            _NOTES: kept.value(
                _NOTES, notes, [{"category": name, "text": text} for name, text in notes] or None
            ),
            _CLOSURES: kept.value(_CLOSURES, closures, [_closure(row) for row in closures] or None),
        }

    def _written_notes(self) -> list[tuple[str, ...]]:
        return [row for row in self.notes_table.rows() if row[1]]

    def _check_today(self) -> None:
        self.checked.setText(self._state.today.isoformat())
        self.changed.emit()

    def _show_age(self) -> None:
        checked = date_or_text(self.checked.text())
        rules = Rules(checked=checked if isinstance(checked, date) else None)
        if rules.checked is None:
            words = say(
                "Enter when you checked the rules, so that you are told when that is too old."
            )
        elif is_ahead(rules, self._state.today):
            words = say("That day is still to come: correct it, and check with the agency.")
        else:
            months = months_since(rules.checked, self._state.today)
            words = say(
                "Checked {months} months ago, longer than a season: check with the agency.",
                months=months,
            )
        self.old.setText(f"⚠ {words}")
        shown = is_stale(rules, self._state.today) or is_ahead(rules, self._state.today)
        self.old.setVisible(shown)


def _closure(row: tuple[str, ...]) -> dict[str, Any]:
    reason, first, last, weekdays = row
    days = weekdays.replace(",", " ").split()
    made = {"reason": reason, "from": date_or_text(first), "to": date_or_text(last)}
    return {**made, "weekdays": days or None}
