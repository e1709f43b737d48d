"""Feet and metres, Celsius and Fahrenheit: conversions for the edges of the program."""

from __future__ import annotations

from typing import Final, Literal

LengthUnit = Literal["m", "ft"]
TemperatureUnit = Literal["C", "F"]

M_PER_FT: Final = 0.3048  # exact: international foot


def metres_to(value_m: float, unit: LengthUnit) -> float:
    """Return a length in metres in the unit asked for."""
    return value_m / M_PER_FT if unit == "ft" else value_m


def metres_from(value: float, unit: LengthUnit) -> float:
    """Return, in metres, a length given in the unit."""
    return value * M_PER_FT if unit == "ft" else value


def celsius_from(value: float, unit: TemperatureUnit) -> float:
    """Return, in degrees Celsius, a temperature given in the unit."""
    return (value - 32) * 5 / 9 if unit == "F" else value


def celsius_to(value_c: float, unit: TemperatureUnit) -> float:
    """Return a temperature in degrees Celsius in the unit asked for."""
    return value_c * 9 / 5 + 32 if unit == "F" else value_c
