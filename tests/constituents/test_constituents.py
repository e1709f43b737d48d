"""The table of constituents against the IHO list and NOAA's speeds."""

from __future__ import annotations

import csv
from functools import cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.constituents import (
    STANDARD_37,
    UnknownConstituent,
    canonical,
    find,
    near_names,
    table,
)

REFERENCE = Path(__file__).parents[1] / "reference" / "tides"
COUNTS = ("n_tau", "n_s", "n_h", "n_p", "n_N_prime", "n_p_prime")

# Two units of the list's last decimal; its ninth-diurnal speeds are sums of rounded parts.
PRINTED_SPEED_TOLERANCE = 2e-6
PRINTED_SPEED_TOLERANCE_9TH = 3e-6
# The list prints NOAA's M8 a unit and a half of the seventh decimal below four times M2.
NOAA_SPEED_TOLERANCE = {"M8": 3e-7}
# Where the two conventions of `lines.py` and `compounds.py` depart from the list, on purpose:
# M1C counted from midnight and 2MN2 as the plain sum, as the Dutch agency has them.
OWN_PHASE_CONSTANT = {"M1C", "2MN2"}


def _iho() -> list[dict[str, str]]:
    with (REFERENCE / "constituents_iho.csv").open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


@cache
def _listed() -> dict[str, list[dict[str, str]]]:
    found: dict[str, list[dict[str, str]]] = {}
    for row in _iho():
        try:
            found.setdefault(canonical(row["name"]), []).append(row)
        except UnknownConstituent:
            continue
    return found


def _counts(row: dict[str, str]) -> tuple[int, ...]:
    return tuple(int(row[count]) for count in COUNTS)


@pytest.mark.parametrize("name", sorted(table()))
def test_each_constituent_is_a_line_of_the_iho_list(name: str) -> None:
    """A wrong multiplier or phase constant predicts a tide that does not exist."""
    rows = _listed()[name]
    constituent = find(name)
    assert constituent.multipliers in {_counts(row) for row in rows}
    if name not in OWN_PHASE_CONSTANT:
        pairs = {(_counts(row), int(row["phase_constant_deg"]) % 360) for row in rows}
        assert (constituent.multipliers, constituent.phase_constant_deg) in pairs


def test_speeds_from_multipliers_are_those_printed_in_the_iho_list() -> None:
    """Speeds are computed, so a slip in a mean rate would move every constituent."""
    compared = 0
    for name, rows in _listed().items():
        for row in rows:
            if _counts(row) == find(name).multipliers and not row["remark"]:
                printed = float(row["speed_deg_per_hour_printed"])
                ninth = find(name).species == 9
                tolerance = PRINTED_SPEED_TOLERANCE_9TH if ninth else PRINTED_SPEED_TOLERANCE
                assert find(name).speed_deg_per_h == pytest.approx(printed, abs=tolerance), name
                compared += 1
    assert compared > 300


def test_speeds_of_the_37_match_noaa_to_seven_decimals() -> None:
    """Seven decimals keep the phase within a tenth of a degree over a century."""
    seen = set()
    for row in _iho():
        if row["noaa_speed_7_decimals"]:
            name = canonical(row["noaa_name"])
            printed = float(row["noaa_speed_7_decimals"])
            tolerance = NOAA_SPEED_TOLERANCE.get(name, 1e-7)
            assert find(name).speed_deg_per_h == pytest.approx(printed, abs=tolerance), name
            seen.add(name)
    assert set(STANDARD_37) - seen <= {"RHO"}


def test_the_table_is_wide_enough() -> None:
    """At least 120 constituents, all of the 37 among them."""
    assert len(table()) >= 120
    assert set(STANDARD_37) <= set(table())
    assert len(STANDARD_37) == len(set(STANDARD_37)) == 37


@pytest.mark.parametrize("file", sorted((REFERENCE / "constants").glob("*.csv")))
def test_every_published_set_of_constants_resolves(file: Path) -> None:
    """Agencies' names and speeds lead to the constituent they mean, Dutch ones included."""
    with file.open(encoding="utf-8") as lines:
        for row in csv.DictReader(lines):
            speed = float(row["speed_deg_per_hour"])
            assert find(row["name"]).speed_deg_per_h == pytest.approx(speed, abs=2e-6)


@pytest.mark.parametrize(
    ("given_name", "ours"),
    [
        ("RHO1", "RHO"), ("ro1", "RHO"), ("ρ1", "RHO"), ("LDA2", "LAM2"), ("Labda2", "LAM2"),
        ("lambda2", "LAM2"), ("MSf", "MSF"), ("Mm", "MM"), ("sa", "SA"), ("ν2", "NU2"),
        ("nu 2", "NU2"), ("µ2", "MU2"), ("2MS8", "2(MS)8"), ("Mtm", "MFM"),
        ("sigma1", "SIG1"), ("THETA1", "THE1"), ("3M2S2", "3MS2"),
    ],
)  # fmt: skip
def test_names_in_print_are_understood(given_name: str, ours: str) -> None:
    """A paste from any agency's page finds its constituents."""
    assert canonical(given_name) == ours


def test_four_things_near_m1_are_kept_apart() -> None:
    """M1, M1B, M1C and NO1 differ in speed, phase constant or modulation."""
    four = [find(name) for name in ("M1", "M1B", "M1C", "NO1")]
    kinds = {(c.multipliers, c.phase_constant_deg, c.nodal) for c in four}
    assert len(kinds) == 4


def test_2mk3_and_mo3_share_a_speed_but_not_a_modulation() -> None:
    """One of them cannot stand in for the other: f differs by 0.11, u by 4 degrees."""
    assert find("2MK3").speed_deg_per_h == find("MO3").speed_deg_per_h
    assert find("2MK3").nodal != find("MO3").nodal


def test_an_unknown_name_lists_near_ones() -> None:
    """The user sees what they may have meant, in one sentence."""
    with pytest.raises(UnknownConstituent, match="LAM2") as caught:
        find("LAMB2")
    assert isinstance(caught.value, KeyError)
    assert caught.value.near == near_names("LAMB2")


@given(st.text(max_size=12))
def test_any_text_is_a_constituent_or_a_clear_refusal(text: str) -> None:
    """No text, however odd, ends in another kind of error."""
    try:
        name = canonical(text)
    except UnknownConstituent as refusal:
        name, message = None, str(refusal)
    assert name in table() or repr(text) in message


@pytest.mark.parametrize("name", sorted(table()))
def test_canonical_names_are_stable(name: str) -> None:
    """A name we give out leads back to the same constituent."""
    assert canonical(name) == name
    assert canonical(name.lower()) == name
