"""Constants pasted from pages of every make are understood, and said before they are taken."""

from __future__ import annotations

import csv
import random
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.constituents import canonical, find
from planner.constituents.pasting import Pasted, understand

CONSTANTS = Path(__file__).parents[1] / "reference" / "tides" / "constants"
STATIONS = ("8443970", "9447130", "8723970", "8720503")


def _rows(state: str) -> list[dict[str, str]]:
    with (CONSTANTS / f"constants_{state}.csv").open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


def _table(state: str, columns: str, separator: str, heading: str = "") -> str:
    """Return a page's table: columns by letter (# name, amplitude, lag, speed, description)."""
    lines = [heading] if heading else []
    for row in _rows(state):
        cells = {
            "#": row["number"], "n": row["name"], "a": row["amplitude_published"],
            "l": row["phase_lag_greenwich_deg"], "s": row["speed_deg_per_hour"],
            "d": "Principal constituent of the moon",
        }  # fmt: skip
        lines.append(separator.join(cells[letter] for letter in columns))
    return "\n".join(lines)


def _assert_taken(pasted: Pasted, state: str) -> None:
    expected = {
        canonical(row["name"]): (
            float(row["amplitude_published"]), float(row["phase_lag_greenwich_deg"])
        )
        for row in _rows(state)
    }  # fmt: skip
    taken = {each.name: (each.amplitude, each.phase_lag_deg) for each in pasted.constants}
    assert taken == expected
    assert pasted.left_out == ()


@pytest.mark.parametrize("state", STATIONS)
@pytest.mark.parametrize("separator", ["\t", ",", ";", "  ", " | "])
@pytest.mark.parametrize("columns", ["#nalsd", "nal", "nla", "nsal", "alns", "dnlas", "lan"])
def test_columns_in_any_order_are_told_apart(state: str, separator: str, columns: str) -> None:
    """Amplitude and lag are never exchanged, whatever surrounds them."""
    _assert_taken(understand(_table(state, columns, separator)), state)


@pytest.mark.parametrize(
    ("heading", "unit"),
    [
        ("Constituent\tAmplitude (feet)\tPhase (degrees GMT)", "ft"),
        ("Name\tAmplitude [m]\tPhase lag", "m"),
        ("naam\tamplitude cm\tphase", "cm"),
        ("", None),
    ],
)
def test_the_unit_is_the_headings_or_is_asked_for(heading: str, unit: str | None) -> None:
    """Feet are never assumed to be metres: where the page is silent the user must say."""
    pasted = understand(_table("8443970", "nal", "\t", heading))
    assert pasted.unit == unit
    _assert_taken(pasted, "8443970")


def test_greenwich_lags_are_chosen_beside_local_ones() -> None:
    """NOAA's page gives both; the heading decides, in either order."""
    rows = _rows("9447130_2026")
    for first, second in (
        ("greenwich", "local_standard_time"),
        ("local_standard_time", "greenwich"),
    ):
        titles = {"greenwich": "Phase GMT", "local_standard_time": "Phase local"}
        lines = [f"Name\tAmplitude ft\t{titles[first]}\t{titles[second]}\tSpeed"]
        lines += [
            "\t".join([
                row["name"], row["amplitude_published"], row[f"phase_lag_{first}_deg"],
                row[f"phase_lag_{second}_deg"], row["speed_deg_per_hour"],
            ])
            for row in rows
        ]  # fmt: skip
        taken = {each.name: each.phase_lag_deg for each in understand("\n".join(lines)).constants}
        assert taken == {
            canonical(row["name"]): float(row["phase_lag_greenwich_deg"]) for row in rows
        }


def test_two_columns_of_lags_without_headings_are_said() -> None:
    """Where nothing tells them apart, the choice is put before the user."""
    fields = (
        "name",
        "amplitude_published",
        "phase_lag_greenwich_deg",
        "phase_lag_local_standard_time_deg",
    )
    lines = ["\t".join(row[field] for field in fields) for row in _rows("9447130_2026")]
    pasted = understand("\n".join(lines))
    assert any("two columns of lags" in note for note in pasted.notes)


def test_a_decimal_comma_is_understood() -> None:
    """With tabs or semicolons between columns a comma is a point."""
    pasted = understand("M2;1,746;59,47\nS2;0,476;117,7\nM4;0,131;117,4\nO1;0,103;191,9")
    assert [each.amplitude for each in pasted.constants] == [1.746, 0.476, 0.131, 0.103]


def test_what_cannot_be_used_is_named_by_line() -> None:
    """An unknown name, a name twice, a missing number: left out, with the reason."""
    text = "M2\t1.0\t20\nXQ9\t0.1\t40\nS2\t0.3\t60\nM2\t0.9\t20\nK1\nO1\t0.2\t70\nM4\t0.02\t70"
    pasted = understand(text)
    assert [each.name for each in pasted.constants] == ["M2", "S2", "O1", "M4"]
    assert [reason.split(":")[0] for reason in pasted.left_out] == ["line 2", "line 5", "line 4"]


@given(st.text(max_size=300))
def test_any_text_is_understood_or_gives_nothing(text: str) -> None:
    """A paste of something else altogether is no error."""
    for each in understand(text).constants:
        assert find(each.name).name == each.name
        assert each.amplitude >= 0


@given(st.integers(0, 2**32))
def test_lines_in_any_order_and_some_missing_are_understood(seed: int) -> None:
    """A part of the list, shuffled, still tells amplitude from lag."""
    rng = random.Random(seed)
    rows = _rows("8443970")
    great = [row for row in rows if row["name"] in ("M2", "S2", "N2", "K1", "O1")]
    others = rng.sample([row for row in rows if row not in great], rng.randint(3, 25))
    picked = great + others
    rng.shuffle(picked)
    text = "\n".join(
        f"{row['phase_lag_greenwich_deg']} {row['name']} {row['amplitude_m']}" for row in picked
    )
    taken = {each.name: each.amplitude for each in understand(text).constants}
    assert taken == {canonical(row["name"]): float(row["amplitude_m"]) for row in picked}


_DUTCH = [("M2", 79.3, 86.1), ("S2", 19.0, 147.0), ("O1", 11.2, 189.0)]


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("Amplitude (cm)  Phase\nM2 79,3 86,1\nS2 19,0 147,0\nO1 11,2 189", "cm"),
        ('Name,Amplitude,Phase\nM2,"79,3","86,1"\nS2,"19,0","147,0"\nO1,"11,2","189"', None),
        ("M2 79.3 cm 86.1°\nS2 19.0 cm 147,0°\nO1 11.2 cm 189º", "cm"),
        ("M₂\N{NO-BREAK SPACE}79.3 86.1\nS(2) 19 147\nO₁ 11.2 189", None),
        ("M2: amplitude 79.3, lag 86.1\nS2: amplitude 19, lag 147\nO1: 11.2, lag 189", None),
        ("M2=79.3,86.1\nS2=19.0,147.0\nO1=11.2,189.0", None),
        ("M2 79.3' 86.1°\nS2 19' 147°\nO1 11.2' 189°", "ft"),
        ("Name\nAmplitude (cm)\nPhase\nM2\n79.3\n86.1\nS2\n19\n147\nO1\n11.2\n189", "cm"),
        ("1\nM2\n79.3\n86.1\n2\nS2\n19\n147\n3\nO1\n11.2\n189", None),
        (
            "<table><tr><th>Name</th><th>Amplitude (cm)</th><th>Phase</th></tr><tr><td>M2</td>"
            "<td>79.3</td>\n<td>86.1</td></tr><tr><td>S2</td><td>19</td><td>147</td></tr>"
            "<tr><td>O1</td><td>11.2</td><td>189</td></tr></table>",
            "cm",
        ),
        (
            "const amp amp_err phase phase_err snr\nM2 79.3 0.1 86.1 0.5 5000\n"
            "S2 19 0.1 147 2 200\nO1 11.2 0.1 189 3 90",
            None,
        ),
        (
            "Name\tPeriod (h)\tAmplitude (cm)\tLag\nM2\t12.42\t79.3\t86.1\n"
            "S2\t12\t19\t147\nO1\t25.8\t11.2\t189",
            "cm",
        ),
        ("Name\tM2\tS2\tO1\nAmplitude (cm)\t79.3\t19\t11.2\nLag\t86.1\t147\t189", "cm"),
        ("| M2 | S2 | O1 |\n| 79.3 | 19 | 11.2 |\n| 86.1 | 147 | 189 |", None),
        (
            '{"units": "cm", "stations": [{"id": "0"}], "constituents": ['
            '{"number": 1, "name": "M2", "amplitude": 79.3, "phase_GMT": 86.1, "phase_local": 9},'
            '{"number": 2, "name": "S2", "amplitude": 19, "phase_GMT": 147, "phase_local": 8},'
            '{"number": 3, "name": "O1", "amplitude": 11.2, "phase_GMT": 189, "phase_local": 7}]}',
            "cm",
        ),
    ],
)
def test_tables_of_many_makes_are_understood(text: str, unit: str | None) -> None:
    """Decimal commas, HTML, a cell a line, errors beside, sideways, JSON: the same constants."""
    pasted = understand(text)
    found = [(each.name, each.amplitude, each.phase_lag_deg) for each in pasted.constants]
    assert found == _DUTCH
    assert (pasted.unit, pasted.left_out) == (unit, ())


def test_no_line_with_a_known_name_is_dropped_in_silence() -> None:
    """What stands on a page and is not taken is named, and the mean level is told apart."""
    pasted = understand("Z0 2.02 0\nM2 79.3 86.1\nS2 lost 147\nO1 11.2 -189")
    assert [each.name for each in pasted.constants] == ["M2", "O1"]
    assert len(pasted.left_out) == 2
    assert "that is the mean level" in pasted.left_out[0]
    assert "S2" in pasted.left_out[1]
