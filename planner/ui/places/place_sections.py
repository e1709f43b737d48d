"""The plain fields of the place editor: the place itself, its spots and ramp, its temperature."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QGridLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
)

from planner.phrasing import SHORT_MONTHS
from planner.sites.editing import Wanted, number_or_text
from planner.ui.parts import heading, quiet
from planner.ui.places.edit_section import Section, Unit, table_in, text_of
from planner.ui.places.rows_editor import RowsEditor
from planner.ui.places.zone_field import ZoneField
from planner.ui.theme import SPACE
from planner.words import say


class PlaceSection(Section):
    """Name, position, clock, unit and source."""

    def __init__(self) -> None:
        super().__init__()
        self._written: frozenset[str] = frozenset()
        self.name, self.latitude, self.longitude = QLineEdit(), QLineEdit(), QLineEdit()
        self.zone, self.datum = ZoneField(), QLineEdit()
        self.state, self.source = QLineEdit(), QLineEdit()
        self.latitude.setPlaceholderText(say("38.2, north positive"))
        self.longitude.setPlaceholderText(say("-76.1, east positive"))
        self.datum.setPlaceholderText("MLLW")
        self.state.setPlaceholderText(say("2026: when the agency issued them"))
        self.zone.picked.connect(self.changed)
        self.units = QComboBox()
        self.units.addItem(say("metres"), "m")
        self.units.addItem(say("feet"), "ft")
        form = QFormLayout(self)
        form.setContentsMargins(0, SPACE, 0, 0)
        self.add_field(form, say("&Name"), self.name, "name")
        self.add_field(form, say("La&titude, degrees"), self.latitude, "latitude")
        self.add_field(form, say("L&ongitude, degrees"), self.longitude, "longitude")
        self.add_field(form, say("Time &zone"), self.zone, "timezone")
        self.add_field(form, say("Hei&ghts of this place in"), self.units, "water.units")
        self.add_field(form, say("&Datum (what zero means)"), self.datum, "water.datum")
        self.add_field(form, say("So&urce of the water"), self.source, "water.source")
        self.add_field(form, say("State of the &constants"), self.state, "water.constants_state")
        form.addRow(
            quiet(
                say(
                    "All heights of the place are in this one unit: mean level, amplitudes, "
                    "depths, ramp. Changing it here changes what the numbers mean, not the numbers."
                )
            )
        )

    @property
    def unit(self) -> str:
        """The unit of every height of the place, "m" or "ft"."""
        return str(self.units.currentData())

    def latitude_deg(self) -> float | None:
        """Return the latitude as typed, None where it is no latitude."""
        value = number_or_text(self.latitude.text())
        return float(value) if isinstance(value, (int, float)) and abs(value) <= 90 else None

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        water = table_in(tables, "water")
        for field, value in (
            (self.name, tables.get("name")),
            (self.latitude, tables.get("latitude")),
            (self.longitude, tables.get("longitude")),
            (self.zone, tables.get("timezone")),
            (self.datum, water.get("datum")),
            (self.source, water.get("source")),
            (self.state, water.get("constants_state")),
        ):
            field.setText(text_of(value))
            field.setCursorPosition(0)
        self.units.setCurrentIndex(1 if water.get("units") == "ft" else 0)
        self._written = frozenset(water)

    def wanted(self) -> Wanted:
        return {
            ("name",): self.name.text().strip() or None,
            ("latitude",): number_or_text(self.latitude.text()),
            ("longitude",): number_or_text(self.longitude.text()),
            ("timezone",): self.zone.text().strip() or None,
            ("water", "units"): self.unit,
            ("water", "datum"): self.datum.text().strip() or None,
            ("water", "source"): self._text("source", self.source),
            ("water", "constants_state"): self._text("constants_state", self.state),
        }

    def _text(self, key: str, field: QLineEdit) -> str | None:
        """Return a text that may be empty: a line that is there stays, none is added."""
        text = field.text().strip()
        return text if text or key in self._written else None


_SPOT_KEYS = ("name", "depth", "trap_height", "latitude", "longitude")


def _spot_columns(unit: str) -> tuple[str, ...]:
    return (
        say("Spot"),
        say("Depth, {unit}", unit=unit),
        say("Trap height, {unit}", unit=unit),
        say("Latitude, °"),
        say("Longitude, °"),
    )


class SpotsSection(Section):
    """Where traps stand, when the ramp works, and when the current rests."""

    def __init__(self) -> None:
        super().__init__()
        self.spots = RowsEditor(say("Spots"), say("Add a spot"), _spot_columns("m"))
        self.spots.changed.connect(self.changed)
        self.ramp, self._ramp_unit = QLineEdit(), Unit()
        self.ramp.setPlaceholderText(say("empty: launching never waits for water"))
        self.said = quiet()
        column, form = QVBoxLayout(self), QFormLayout()
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(self.said)
        column.addWidget(self.spots, 1)
        column.addWidget(self.note("spots"))
        column.addLayout(form)
        words = say("&Ramp works down to a water level of")
        self.add_field(form, words, self.ramp, "ramp", self._ramp_unit)
        self.after_high, self.after_low = QLineEdit(), QLineEdit()
        for key, label, field in (
            ("after_high_minutes", say("Slac&k after high water"), self.after_high),
            ("after_low_minutes", say("Slack after &low water"), self.after_low),
        ):
            field.setPlaceholderText(say("as you watched it; negative is before; may stay empty"))
            self.add_field(form, label, field, f"slack.{key}", Unit(say("min")))

    def show_unit(self, unit: str) -> None:
        """Name the unit that depths are in."""
        self.spots.set_columns(_spot_columns(unit))
        self._ramp_unit.setText(unit)
        self.said.setText(
            say(
                "Charted depths in {unit} below the datum; a bank that dries has a "
                "negative one. Crab traps stand about 0.3 to 0.6 m (1 to 2 ft) high "
                "(common practice). Positions in degrees, north and east positive, are "
                "only for the waypoints; they may stay empty.",
                unit=unit,
            )
        )

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        spots = tables.get("spots")
        rows = [each for each in spots if isinstance(each, Mapping)] if spots else []
        self.spots.show_rows([tuple(text_of(row.get(key)) for key in _SPOT_KEYS) for row in rows])
        self.ramp.setText(text_of(table_in(tables, "ramp").get("lowest_level")))
        slack = table_in(tables, "slack")
        self.after_high.setText(text_of(slack.get("after_high_minutes")))
        self.after_low.setText(text_of(slack.get("after_low_minutes")))

    def wanted(self) -> Wanted:
        spots = [
            {
                "name": name,
                **{
                    key: number_or_text(text)
                    for key, text in zip(_SPOT_KEYS[1:], texts, strict=True)
                },
            }
            for name, *texts in self.spots.rows()
        ]
        level = number_or_text(self.ramp.text())
        slack = {
            "after_high_minutes": number_or_text(self.after_high.text()),
            "after_low_minutes": number_or_text(self.after_low.text()),
        }
        return {
            ("spots",): spots or None,
            ("ramp",): None if level is None else {"lowest_level": level},
            ("slack",): None if set(slack.values()) == {None} else slack,
        }


class TemperatureSection(Section):
    """Twelve monthly means of the water."""

    def __init__(self) -> None:
        super().__init__()
        self.months = [QLineEdit() for _ in SHORT_MONTHS]
        grid = QGridLayout()
        for at, (name, field) in enumerate(zip(SHORT_MONTHS, self.months, strict=True)):
            label = QLabel(name)
            label.setBuddy(field)
            field.setAccessibleName(say("Water temperature in {name}, degrees Celsius", name=name))
            field.setMaximumWidth(90)
            field.textEdited.connect(lambda _: self.changed.emit())
            grid.addWidget(label, at % 6, 2 * (at // 6))
            grid.addWidget(field, at % 6, 2 * (at // 6) + 1)
        grid.setColumnStretch(4, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.addWidget(heading(say("Water temperature, °C")))
        column.addWidget(
            quiet(
                say(
                    "Monthly means of the water in degrees Celsius: all twelve, or none. Without "
                    "them the forecast goes by a typical year and is less sure."
                )
            )
        )
        column.addLayout(grid)
        column.addWidget(self.note("temperature"))
        column.addStretch(1)

    def show_tables(self, tables: Mapping[str, Any]) -> None:
        monthly = table_in(tables, "temperature").get("monthly")
        values: Sequence[Any] = monthly if isinstance(monthly, list) else ()
        for at, field in enumerate(self.months):
            field.setText(text_of(values[at]) if at < len(values) else "")

    def wanted(self) -> Wanted:
        values = [number_or_text(field.text()) for field in self.months]
        if not any(value is not None for value in values):
            return {("temperature",): None}
        return {("temperature", "monthly"): ["" if value is None else value for value in values]}
