"""Offsets to a reference place fitted from waters that the user saw, in words; no Qt here."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from planner.estimates import Interval
from planner.phrasing import Style, height_text, number_text, numbers_text, range_text
from planner.sites import load_site
from planner.sites.book import find_reference
from planner.sites.zones import load_zone
from planner.tides import Tide
from planner.tides.offset_fit import FittedOffsets, fit_offsets
from planner.tides.reading import read_observed_turns
from planner.ui.places.observed_rows import seen_file
from planner.units import LengthUnit, metres_to
from planner.words import say

_PLACES: Final = 3


def fit_from_seen(
    name: str, reference: str, folder: Path, zone: str, unit: LengthUnit
) -> FittedOffsets:
    """Return the offsets that the waters kept for a place speak for.

    PlannerError when a value cannot be read, or too few are there.
    """
    tide = Tide(load_site(find_reference(reference, folder)))
    return fit_offsets(tide, read_observed_turns(seen_file(name), load_zone(zone), unit))


def fitted_fields(fit: FittedOffsets, unit: LengthUnit) -> dict[str, float]:
    """Return a fit as the file's fields: minutes, and factor or addition for each kind."""
    fields = {
        "high_minutes": float(round(fit.high_minutes.mean)),
        "low_minutes": float(round(fit.low_minutes.mean)),
    }
    for kind, height, is_factor in (
        ("high", fit.high_height, fit.high_is_factor),
        ("low", fit.low_height, fit.low_is_factor),
    ):
        key = f"{kind}_{'factor' if is_factor else 'add'}"
        fields[key] = round(height.mean if is_factor else metres_to(height.mean, unit), _PLACES)
    return fields


def fit_texts(fit: FittedOffsets, style: Style) -> list[str]:
    """Return a fit in words: each number with its 80% interval, then the verdict."""
    lines = [
        say(
            "{kind}: {minutes}; {height} (from {count} seen).",
            kind=kind,
            minutes=_minutes(minutes),
            height=_height(height, is_factor, style),
            count=count,
        )
        for kind, minutes, height, is_factor, count in (
            (say("High water"), fit.high_minutes, fit.high_height, fit.high_is_factor, fit.highs),
            (say("Low water"), fit.low_minutes, fit.low_height, fit.low_is_factor, fit.lows),
        )
    ]
    return [*lines, fit.verdict]


def _minutes(value: Interval) -> str:
    side = say("later") if value.mean >= 0 else say("earlier")
    low, high = sorted((value.low, value.high))
    return say(
        "{mean} min {side} (80%: {range} min)",
        mean=abs(round(value.mean)),
        side=side,
        range=numbers_text(low, high, "+.0f"),
    )


def _height(value: Interval, is_factor: bool, style: Style) -> str:
    if is_factor:
        return say(
            "height times {mean} (80%: {range})",
            mean=number_text(value.mean, ".2f"),
            range=numbers_text(value.low, value.high, ".2f"),
        )
    return say(
        "height plus {height} (80%: {range})",
        height=height_text(value.mean, style),
        range=range_text(height_text(value.low, style), height_text(value.high, style)),
    )
