"""Constants pasted from an agency's page: which column is what, said before it is taken.

A page may give a running number, the name, amplitude, one or two phase lags, the speed and a
description, in any order, parted by tabs, commas, semicolons or blanks. Names and speeds are
known, so they mark themselves; what remains is told apart by its heading, or else by its
values: the great constituents have great amplitudes, while lags are spread alike.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import fmean
from typing import Final, Literal

from planner.constituents.names import find
from planner.constituents.paste_lines import lines_of
from planner.words import say

PastedUnit = Literal["m", "ft", "cm"]
Role = Literal["number", "amplitude", "lag", "speed", "other lag", "other"]

_GREAT: Final = frozenset({"M2", "S2", "N2", "K1", "O1"})
_SPEED_TOLERANCE: Final = 0.01  # degrees an hour, as printed to two decimals
_MOSTLY: Final = 0.8
_UNITS: Final[tuple[tuple[str, PastedUnit], ...]] = (
    (r"\b(?:ft|foot|feet)\b", "ft"),
    (r"\b(?:cm|centimet(?:er|re)s?)\b", "cm"),
    (r"\b(?:m|met(?:er|re)s?)\b", "m"),
)
_HEADINGS: Final[tuple[tuple[str, Role], ...]] = (
    (r"err|snr|sigma|±|\bs\.?d\b|\bci\b|conf|uncert|period", "other"),
    (r"speed|frequency|deg(?:rees)?\s*/\s*h", "speed"),
    (r"ampl|\bamp\b|height", "amplitude"),
    (r"local|kappa", "other lag"),
    (r"phase|lag|epoch|greenwich|gmt|utc|\bg\b", "lag"),
    (r"^#$|\bno\.?$|number", "number"),
)


@dataclass(frozen=True)
class PastedConstant:
    """One line as understood: our name, amplitude in the page's unit, lag in degrees."""

    line: int
    name: str
    amplitude: float
    phase_lag_deg: float


@dataclass(frozen=True)
class Pasted:
    """What was understood of a paste, to be shown before it is taken.

    unit: as the page says, None where it does not and the user must. columns: the role of
    each column of numbers, in order. left_out: lines that hold numbers but could not be used,
    each with the reason. notes: sentences on what was chosen where more was offered.
    """

    constants: tuple[PastedConstant, ...]
    unit: PastedUnit | None
    columns: tuple[Role, ...]
    left_out: tuple[str, ...]
    notes: tuple[str, ...]


def understand(text: str) -> Pasted:
    """Return what a pasted table of constants says; no constants where it says nothing."""
    heading: list[str] = []
    units: list[str] = []
    rows: list[tuple[int, str, tuple[float, ...]]] = []
    left_out: list[str] = []
    for line in lines_of(text):
        if line.whole and line.name is not None:
            rows.append((line.number, line.name, line.values))
            units += line.units
        elif line.name is not None:
            left_out.append(
                say(
                    "line {number}: {name} has no amplitude and lag",
                    number=line.number,
                    name=line.name,
                )
            )
        elif len(line.values) < 2:
            heading += line.cells if not rows else ()
        else:
            said = " ".join(line.cells)[:40]
            mean = say("; that is the mean level") if re.match(r"(\d+ )?Z0\b", said) else ""
            left_out.append(
                say(
                    "line {number}: no constituent known in “{said}”{mean}",
                    number=line.number,
                    said=said,
                    mean=mean,
                )
            )
    width = max((len(numbers) for _, _, numbers in rows), default=0)
    whole = [row for row in rows if len(row[2]) == width]
    left_out += [
        say("line {number}: {name} has fewer numbers than the others", number=number, name=name)
        for number, name, numbers in rows
        if len(numbers) < width
    ]
    roles, notes = _roles(whole, width, heading)
    constants: dict[str, PastedConstant] = {}
    if "amplitude" in roles and "lag" in roles:
        amplitude, lag = roles.index("amplitude"), roles.index("lag")
        for number, name, numbers in whole:
            reason = _refusal(name, numbers[amplitude], numbers[lag], constants)
            if reason:
                left_out.append(say("line {number}: {reason}", number=number, reason=reason))
            else:
                constants[name] = PastedConstant(number, name, numbers[amplitude], numbers[lag])
    return Pasted(
        tuple(constants.values()), _unit(heading) or _unit(units), roles, tuple(left_out), notes
    )


def _unit(heading: Sequence[str]) -> PastedUnit | None:
    words = " ".join(heading).casefold()
    return next((unit for pattern, unit in _UNITS if re.search(pattern, words)), None)


def _roles(
    rows: Sequence[tuple[int, str, tuple[float, ...]]], width: int, heading: Sequence[str]
) -> tuple[tuple[Role, ...], tuple[str, ...]]:
    """Return the role of each column of numbers, and what was chosen among several."""
    columns = [[numbers[index] for _, _, numbers in rows] for index in range(width)]
    names = [name for _, name, _ in rows]
    roles: dict[int, Role] = {}
    for index, values in enumerate(columns):
        if _are_speeds(values, names):
            roles[index] = "speed"
        elif len(values) > 2 and all(b - a == 1 for a, b in pairwise(values)):
            roles[index] = "number"
    said = _said(heading, width, roles)
    for index in range(width):
        if index not in roles and index in said:
            roles[index] = said[index]
    left = [index for index in range(width) if index not in roles]
    if "amplitude" not in roles.values() and left:
        best = max(left, key=lambda index: _contrast(columns[index], names))
        roles[best] = "amplitude"
        left.remove(best)
    notes: list[str] = []
    for index in left:
        inside = all(-360 <= value <= 720 for value in columns[index])
        if not inside:
            roles[index] = "other"
        elif "lag" not in roles.values():
            roles[index] = "lag"
        else:
            roles[index] = "other lag"
            notes.append(say("There are two columns of lags; the first was taken."))
    if "other lag" in roles.values() and "lag" not in roles.values():
        index = next(i for i, role in roles.items() if role == "other lag")
        roles[index] = "lag"
        notes.append(say("The lags are headed as local: give the clock they were worked out in."))
    return tuple(roles[index] for index in range(width)), tuple(dict.fromkeys(notes))


def _said(heading: Sequence[str], width: int, known: Mapping[int, Role]) -> dict[int, Role]:
    """Return the roles that headings give, when they can be laid over the columns."""
    named: list[Role] = []
    for cell in heading:
        role = next((r for pattern, r in _HEADINGS if re.search(pattern, cell.casefold())), None)
        if role is not None:
            named.append(role)
    if len(named) != width or any(named[i] != role for i, role in known.items()):
        named = [role for role in named if role in ("amplitude", "lag", "other lag")]
        free = [index for index in range(width) if index not in known]
        return dict(zip(free, named, strict=True)) if len(named) == len(free) else {}
    return dict(enumerate(named))


def _contrast(values: Sequence[float], names: Sequence[str]) -> float:
    """Return how much greater a column is at the great constituents than at the others."""
    great = [v for v, n in zip(values, names, strict=True) if n in _GREAT]
    small = [v for v, n in zip(values, names, strict=True) if n not in _GREAT]
    if any(v < 0 for v in values) or not great:
        return -1.0
    if not small:
        return 1.0 / (1.0 + fmean(great))  # only great ones: amplitudes are the lesser numbers
    return fmean(great) / (fmean(small) + 1e-9)


def _refusal(
    name: str, amplitude: float, lag: float, taken: Mapping[str, PastedConstant]
) -> str | None:
    if name in taken:
        return say("{name} is there twice (also in line {line})", name=name, line=taken[name].line)
    if amplitude < 0:
        return say("{name} has a negative amplitude, {amplitude:g}", name=name, amplitude=amplitude)
    if not -360 <= lag <= 720:
        return say("{name} has a lag of {lag:g} degrees", name=name, lag=lag)
    return None


def _are_speeds(values: Sequence[float], names: Sequence[str]) -> bool:
    """Return whether most of a column are the speeds of its constituents."""
    near = [
        abs(value - find(name).speed_deg_per_h) < _SPEED_TOLERANCE
        for value, name in zip(values, names, strict=True)
    ]
    return sum(near) >= _MOSTLY * len(near) > 0
