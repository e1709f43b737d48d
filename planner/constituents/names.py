"""Finding a constituent by any of the names that agencies print."""

from __future__ import annotations

import re
from functools import cache
from types import MappingProxyType
from typing import Final

from planner.constituents.compounds import COMPOUNDS
from planner.constituents.constituent import Constituent, Multipliers
from planner.constituents.lines import ALIASES, LINES
from planner.errors import PlannerError
from planner.words import say

_GREEK: Final = {
    "α": "ALP", "β": "BET", "γ": "GAM", "δ": "DEL", "ε": "EPS", "η": "ETA", "θ": "THE",
    "λ": "LAM", "μ": "MU", "µ": "MU", "ν": "NU", "ξ": "XI", "π": "PI", "ρ": "RHO",
    "σ": "SIG", "τ": "TAU", "υ": "UPS", "φ": "PHI", "χ": "CHI", "ψ": "PSI",
}  # fmt: skip
_SPELT: Final = str.maketrans(_GREEK)
_TERM: Final = re.compile(r"([+-]?)\s*(?:(\d+)\*)?([A-Z0-9]+)")
_MOST_NEAR: Final = 4


class UnknownConstituent(PlannerError, KeyError):  # noqa: N818 (reads as what it says)
    """A name that is not in the table; the text lists names near it."""

    def __init__(self, name: str, near: tuple[str, ...]) -> None:
        self.name = name
        self.near = near
        super().__init__(name)

    def __str__(self) -> str:
        hint = say("; near it: {near}", near=", ".join(self.near)) if self.near else ""
        return say(
            "{name!r} is not a constituent this program knows{hint}", name=self.name, hint=hint
        )


def _nodal(rule: str) -> tuple[tuple[str, float], ...]:
    if rule == "M3":  # Schureman (1941), formula 149: f of M2 to the power 3/2
        return (("M2", 1.5),)
    if rule.startswith("-"):
        return ((rule[1:], -1.0),)
    return ((rule, 1.0),) if rule else ()


def _sum_of(name: str, expression: str, lines: dict[str, Constituent]) -> Constituent:
    multipliers = [0] * 6
    phase = 0
    nodal: list[tuple[str, float]] = []
    for sign, count, part_name in _TERM.findall(expression):
        times = int(count or 1) * (-1 if sign == "-" else 1)
        part = lines[part_name]
        multipliers = [m + times * n for m, n in zip(multipliers, part.multipliers, strict=True)]
        phase += times * part.phase_constant_deg
        nodal += [(rule, times * power) for rule, power in part.nodal]
    six: Multipliers = tuple(multipliers)  # type: ignore[assignment]
    return Constituent(name, six, phase % 360, tuple(nodal))


@cache
def table() -> MappingProxyType[str, Constituent]:
    """Return every constituent by its name here."""
    lines = {
        name: Constituent(name, multipliers, phase % 360, _nodal(rule))
        for name, multipliers, phase, rule in LINES
    }
    compounds = {name: _sum_of(name, text, lines) for name, text in COMPOUNDS.items()}
    return MappingProxyType(lines | compounds)


def _key(name: str) -> str:
    spelt = name.lower().translate(_SPELT)
    return re.sub(r"[\s_]", "", spelt).upper()


@cache
def _canonical_by_key() -> dict[str, str]:
    names = table()
    by_key = {name: name for name in names} | ALIASES
    # Agencies drop the brackets of names such as 2(MS)8 when nothing else has that name.
    plain = {re.sub(r"[()]", "", name): name for name in names if "(" in name}
    return plain | by_key


def canonical(name: str) -> str:
    """Return the name used here for a constituent; UnknownConstituent when there is none."""
    try:
        return _canonical_by_key()[_key(name)]
    except KeyError:
        raise UnknownConstituent(name, near_names(name)) from None


def find(name: str) -> Constituent:
    """Return the constituent of a name; UnknownConstituent when there is none."""
    return table()[canonical(name)]


def known(name: str) -> Constituent | None:
    """Return the constituent of a name, None when there is none; looks for no near names."""
    found = _canonical_by_key().get(_key(name))
    return table()[found] if found is not None else None


def near_names(name: str) -> tuple[str, ...]:
    """Return a few names that a person may have meant, nearest first."""
    from difflib import get_close_matches

    close = get_close_matches(_key(name), list(_canonical_by_key()), n=3 * _MOST_NEAR, cutoff=0.5)
    return tuple(dict.fromkeys(_canonical_by_key()[key] for key in close))[:_MOST_NEAR]
