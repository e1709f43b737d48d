"""When the user can be on the water: days of the week, hours, exceptions, a calendar file."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Any, Final
from zoneinfo import ZoneInfo

from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.phrasing import SHORT_DAYS
from planner.sites.editing import Wanted
from planner.sites.file_values import clock_time
from planner.sites.site import FreeTime
from planner.sites.zones import load_zone
from planner.ui.flow import Flow
from planner.ui.parts import body, button, heading, quiet
from planner.ui.places.edit_section import Section, table_in
from planner.ui.places.kept_fields import Kept, clock_of, dates_or_texts, dates_text
from planner.ui.theme import SPACE
from planner.ui.workbench import Workbench
from planner.words import counted, say

_WEEKDAYS: Final = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_AHEAD: Final = timedelta(days=366)
_CALENDARS: Final = say("Calendars (*.ics *.ical *.ifb);;All files (*)")


class FreeSection(Section):
    """Free days of the week and hours, with further free days and days that are not."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self._bench, self._kept = bench, Kept()
        self._zone = ""
        self.weekdays = [QCheckBox(day) for day in SHORT_DAYS]
        self.earliest, self.latest = QLineEdit(), QLineEdit()
        self.earliest.setPlaceholderText(say("05:30; empty: from midnight"))
        self.latest.setPlaceholderText(say("20:30; empty: to midnight"))
        self.also, self.never = QPlainTextEdit(), QPlainTextEdit()
        for field, name in (
            (self.also, say("Further free days")),
            (self.never, say("Days not free")),
        ):
            field.setAccessibleName(name)
            field.setPlaceholderText(say("such as 2026-05-25, 2026-07-03"))
            field.setTabChangesFocus(True)
            field.setFixedHeight(5 * self.fontMetrics().height())
            field.textChanged.connect(self.changed)
        self.busy = button(
            say("Take days from a calendar file…"),
            lambda: self._ask("never"),
            say("Days on which the calendar has something on in your hours are not free"),
        )
        self.open = button(
            say("Take days from a calendar file…"),
            lambda: self._ask("also"),
            say("Days on which the calendar has an entry in your hours are free"),
        )
        self.busy.setAccessibleName(say("Take days that are not free from a calendar file"))
        self.open.setAccessibleName(say("Take further free days from a calendar file"))
        self.said = body()
        self.said.hide()
        self._build()

    def _build(self) -> None:
        for box in self.weekdays:
            box.setAccessibleName(say("Free on {given}", given=box.text()))
            box.clicked.connect(lambda _=False: self.changed.emit())
        days = QWidget()
        days.setLayout(Flow(*self.weekdays))
        column, form = QVBoxLayout(self), QFormLayout()
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(heading(say("When you can be on the water")))
        column.addWidget(
            quiet(say("Plans set and haul only then, and leave you the time to fetch the bait."))
        )
        column.addLayout(form)
        self.add_field(form, say("Days of the week"), days, "free.weekdays")
        self.add_field(form, say("F&rom (time of day)"), self.earliest, "free.from")
        self.add_field(form, say("&To (time of day)"), self.latest, "free.to")
        for words, field, each, key in (
            (say("Not free after all"), self.never, self.busy, "free.never"),
            (say("Free besides"), self.also, self.open, "free.also"),
        ):
            column.addWidget(heading(words))
            column.addWidget(field)
            column.addWidget(self.note(key))
            line = QHBoxLayout()
            line.addWidget(each)
            line.addStretch(1)
            column.addLayout(line)
        column.addWidget(self.said)
        column.addWidget(self.note("free"))
        column.addStretch(1)

    def show_zone(self, zone: str) -> None:
        """Name the clock that a calendar's entries are read on."""
        self._zone = zone

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        free, kept = table_in(tables, "free"), self._kept
        written = free.get("weekdays")
        names = written if isinstance(written, list) else list(_WEEKDAYS)
        on = {str(name).strip()[:3].title() for name in names}
        for day, box in zip(_WEEKDAYS, self.weekdays, strict=True):
            box.setChecked(day in on)
        kept.show(("free", "weekdays"), written, self._days())
        for key, field in (("from", self.earliest), ("to", self.latest)):
            field.setText(clock_of(free.get(key)))
            kept.show(("free", key), free.get(key), field.text())
        for key, box_of_days in (("also", self.also), ("never", self.never)):
            box_of_days.setPlainText(dates_text(free.get(key)))
            kept.show(("free", key), free.get(key), box_of_days.toPlainText())
        self._say("")

    def wanted(self) -> Wanted:
        days, kept = self._days(), self._kept
        made = days if len(days) < len(_WEEKDAYS) else None
        fields: dict[tuple[str, ...], Any] = {
            ("free", "weekdays"): kept.value(("free", "weekdays"), days, made)
        }
        for key, field in (("from", self.earliest), ("to", self.latest)):
            text = field.text()
            fields["free", key] = kept.value(("free", key), text, text.strip() or None)
        for key, box in (("also", self.also), ("never", self.never)):
            text = box.toPlainText()
            fields["free", key] = kept.value(("free", key), text, dates_or_texts(text))
        return fields

    def _days(self) -> list[str]:
        """Return the ticked days as a place file names them, in whatever language they stand."""
        shown = zip(_WEEKDAYS, self.weekdays, strict=True)
        return [day for day, box in shown if box.isChecked()]

    # -- a calendar file -----------------------------------------------------------------------

    def _ask(self, key: str) -> None:
        path, _ = QFileDialog.getOpenFileName(
            self, say("Take days from a calendar"), "", _CALENDARS
        )
        if path:
            self.take_days(Path(path), key)

    def take_days(self, path: Path, key: str) -> None:
        """Add the days of a calendar file, a year ahead, to those free ("also") or not ("never").

        Only days that change something: none is marked not free that no week has free anyway.
        """
        today, free = self._bench.state.today, self._free()
        try:
            zone: ZoneInfo = load_zone(self._zone)
        except KeyError:
            self._say(say("Give the place a time zone first: a calendar's hours need it."))
            return

        def work(_: object) -> tuple[date, ...]:
            from planner.trips.calendar_days import calendar_days

            return calendar_days(path, zone, today, today + _AHEAD, free)

        def done(days: tuple[date, ...]) -> None:
            on = [_WEEKDAYS.index(name) for name in self._days()]
            tell = [day for day in days if (day.weekday() in on) == (key == "never")]
            self._add(path.name, key, tell)

        self._bench.desk.start("calendar", say("Reading the calendar"), work, done, self._refused)

    def _add(self, name: str, key: str, days: list[date]) -> None:
        box = self.never if key == "never" else self.also
        there = box.toPlainText()
        new = [day.isoformat() for day in days if day.isoformat() not in there]
        if new:
            # Through the cursor, so that the box itself can take it back.
            cursor = box.textCursor()
            cursor.movePosition(cursor.MoveOperation.End)
            cursor.insertText((", " if there.strip() else "") + ", ".join(new))
        more = counted(len(new), "more day")
        self._say(
            say("{name}: {more} marked as not free, in the year from today.", name=name, more=more)
            if key == "never"
            else say("{name}: {more} marked as free, in the year from today.", name=name, more=more)
        )

    def _free(self) -> FreeTime:
        whole = FreeTime()
        return FreeTime(
            earliest=clock_time(self.earliest.text().strip()) or whole.earliest,
            latest=clock_time(self.latest.text().strip()) or whole.latest,
        )

    def _refused(self, error: PlannerError) -> None:
        self._say(str(error))

    def _say(self, text: str) -> None:
        self.said.setText(text)
        self.said.setVisible(bool(text))
