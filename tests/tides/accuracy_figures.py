"""The figures of the accuracy page, worked out as the tests do; run it to write the page.

python tests/tides/accuracy_figures.py
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
from accuracy_examples import (
    arguments_at_instants,
    dutch_turns,
    highest_tides,
    honolulu_fit,
    offset_examples,
)
from accuracy_table import Figure, table, worst_mm
from tide_reference import (
    HONOLULU_MEAN_M,
    STATIONS_2021,
    WINDOW_STATIONS,
    column,
    constants,
    instants,
    place,
    rows,
    station,
    utc,
    vlissingen,
)

from planner.clock import Instants
from planner.constituents import STANDARD_37, find
from planner.estimates import Floats
from planner.tides import Tide
from planner.tides.arguments import Constituents

PAGE = Path(__file__).parents[2] / "docs" / "accuracy.md"
NAMES = {
    "8654400": "Cape Hatteras", "8656483": "Beaufort", "8720357": "I-295 Bridge",
    "8720503": "Red Bay Point", "8726724": "Clearwater Beach", "8443970": "Boston",
    "9414290": "San Francisco", "9447130": "Seattle", "1612340": "Honolulu",
}  # fmt: skip
# UTide's names where it spells a constituent otherwise, or has only the like of it.
UTIDE_NAMES = {"RHO": "RHO1", "LAM2": "LDA2", "M1": "NO1", "2MK3": "MO3"}


def official_heights() -> list[Figure]:
    """Return differences from official predictions, in mm."""
    figures = []
    for number in STATIONS_2021:
        file = f"predictions/predictions_noaa_{number}_20210101.csv"
        times, official = instants(file), column(file, "height_m_above_mean_of_constants")
        figures.append(
            Figure(
                f"{NAMES[number]}, 1 January 2021, 24 hours",
                f"NOAA CO-OPS {number}",
                "mm",
                worst_mm(station(number, mean_level_m=0.0).heights(times) - official),
                3.0 if number == "8726724" else 2.0,
                worst_mm(_utide_as_it_comes(number, times, 0.0) - official),
                _pytmd_as_it_comes(file),
            )
        )
    for day in ("20230829", "20230830"):
        file = f"predictions/predictions_noaa_1612340_{day}.csv"
        times, official = instants(file), column(file, "height_m_above_MLLW")
        tide = Tide(place(constants("1612340_2023"), HONOLULU_MEAN_M))
        theirs = _utide_as_it_comes("1612340_2023", times, HONOLULU_MEAN_M)
        figures.append(
            Figure(
                f"Honolulu, {day[6:]} August 2023, every six minutes",
                "NOAA CO-OPS 1612340",
                "mm",
                worst_mm(tide.heights(times) - official),
                2.0,
                worst_mm(theirs - official),
                _pytmd_as_it_comes(file),
            )
        )
    for day in ("20190101", "20190320", "20190928"):
        file = f"predictions/predictions_rws_VLISSGN_{day}.csv"
        apart = vlissingen().heights(instants(file)) - column(file, "height_cm_above_NAP") / 100
        what = f"Vlissingen, three days from {day[:4]}-{day[4:6]}-{day[6:]}, ten minutes"
        figures.append(Figure(what, "Rijkswaterstaat", "mm", worst_mm(apart), 50.0))
    return figures


def computed_heights() -> list[Figure]:
    """Return differences from hatyan in windows of 2000-2050 by either rule, in mm."""
    fields = {
        "yearly": "h_m_MLLW_yearly_arguments",
        "continuous": "h_m_MLLW_instant_schureman_hatyan",
    }
    figures = []
    for number in WINDOW_STATIONS:
        file = f"predictions/predictions_computed_{number}_windows.csv"
        for rule, field in fields.items():
            apart = station(number, rule).heights(instants(file)) - column(file, field)
            what = f"{NAMES[number]}, {rule} rule, hours of 2000 to 2050"
            figures.append(Figure(what, "hatyan 2.14.0", "mm", worst_mm(apart), 3.0))
    return figures


def turn_times() -> list[Figure]:
    """Return differences of turning times from hatyan by either rule, in seconds."""
    figures = []
    fields = {"yearly": "time_utc_yearly_arguments", "continuous": "time_utc_instant_schureman"}
    hour = np.timedelta64(3_600_000, "ms")
    for number in WINDOW_STATIONS:
        for rule, field in fields.items():
            tide, worst = station(number, rule), 0.0
            for row in rows(f"predictions/turning_points_computed_{number}_windows.csv"):
                if not row[field]:
                    continue
                theirs = utc(row[field].rstrip("Z"))
                turns = tide.turns(theirs - hour, theirs + hour)
                mine = turns.times[turns.is_high == (row["type"] == "H")]
                if mine.size:  # the step of New Year makes two that are no turns
                    apart = np.abs(mine - theirs).min() / np.timedelta64(1000, "ms")
                    worst = max(worst, float(apart))
            what = f"{NAMES[number]}, {rule} rule, turns of 2000 to 2050"
            figures.append(Figure(what, "hatyan 2.14.0", "s", worst, 60.0))
    return figures


def node_factors() -> list[Figure]:
    """Return differences from the yearly tables of f and V0 + u."""
    members = Constituents([find(name) for name in STANDARD_37])
    figures = []
    for file, source in (
        ("node_factors_noaa_1900_2025.csv", "NOAA's yearly table, 1900 to 2025"),
        ("node_factors_computed_2026_2060.csv", "the same carried on by hatyan, 2026 to 2060"),
    ):
        of_f = of_v = 0.0
        for row in rows(file):
            f, argument = members.yearly(int(row["year"]))
            for index, name in enumerate(STANDARD_37):
                of_f = max(of_f, abs(f[index] - float(row[f"{name}_f"])))
                apart = argument[index] - float(row[f"{name}_V0plusu_deg"])
                if name != "M1":
                    of_v = max(of_v, abs((apart + 180) % 360 - 180))
        figures.append(Figure("f of the 37 constituents", source, "thousandths", of_f * 1e3, 2.5))
        what = "V0 + u of the 37 (M1 apart)"
        figures.append(Figure(what, source, "hundredths of a degree", of_v * 100, 15.0))
    return figures


@cache
def _utide_frame(names: tuple[str, ...], latitude: float) -> object:
    """Return UTide's coefficients of an arbitrary record, as a frame for other constants."""
    from utide import solve

    times = np.arange(utc("2020-01-01"), utc("2021-01-01"), np.timedelta64(3_600_000, "ms"))
    noise = np.random.default_rng(0).normal(size=times.size)
    return solve(
        times, noise, lat=latitude, constit=list(names), conf_int="none", trend=False,
        method="ols", verbose=False,
    )  # fmt: skip


def _utide_as_it_comes(state: str, times: Instants, mean_m: float) -> Floats:
    """Return UTide's reconstruct of the agency's constants without any repair."""
    from utide import reconstruct

    latitude = {row["station"]: float(row["lat"]) for row in rows("stations.csv")}
    present = [each for each in constants(state) if each.amplitude_m > 0]
    names = tuple(UTIDE_NAMES.get(each.constituent, each.constituent) for each in present)
    frame = _utide_frame(names, latitude.get(state, 21.3))
    place_of = {name: index for index, name in enumerate(frame.name)}  # type: ignore[attr-defined]
    for name, each in zip(names, present, strict=True):
        frame.A[place_of[name]] = each.amplitude_m  # type: ignore[attr-defined]
        frame.g[place_of[name]] = each.phase_lag_deg  # type: ignore[attr-defined]
    frame.mean = mean_m  # type: ignore[attr-defined]
    return np.asarray(reconstruct(times, frame, verbose=False, min_SNR=0).h)


def _pytmd_as_it_comes(file: str) -> float:
    """Return the least of pyTMD's three settings for a file of official heights, in mm."""
    name = file.rpartition("/")[2]
    mine = [row for row in rows("official_by_pytmd.csv") if row["file"] == name]
    return min(float(row["max_abs_mm"]) for row in mine)


def _libraries() -> list[str]:
    """Return the published comparison of libraries over whole years, worst of six."""
    out = [
        "| place | range | UTide as it comes | pyTMD, three settings | Schureman at each instant |",
        "|---|---:|---:|---:|---:|",
    ]
    named = {"8443970": "Boston", "9447130": "Seattle", "8771450": "Galveston"}
    for number, name in named.items():
        mine = [row for row in rows("library_comparison.csv") if row["station"] == number]

        def worst(wanted: str, of: list[dict[str, str]] = mine) -> float:
            return max(float(row["max_abs_cm"]) for row in of if wanted in row["engine"])

        pytmd = [worst(f"pyTMD {setting} default") for setting in ("FES", "OTIS", "GOT")]
        spread = f"{min(pytmd):.1f} to {max(pytmd):.1f} cm"
        reach = max(float(row["range_cm"]) for row in mine if row["range_cm"]) / 100
        out.append(
            f"| {name} | {reach:.1f} m | {worst('utide as is'):.1f} cm | {spread} "
            f"| {worst('hatyan schureman instant'):.1f} cm |"
        )
    return out


def page() -> str:
    """Return the accuracy page."""
    return "\n".join(
        [
            "# How right is the water?",
            "",
            "Every figure here is the largest difference found by the tests, and is written by",
            "`python tests/tides/accuracy_figures.py` from the same published values; a test",
            "fails when the page and the figures part. Sources of the values, file by file:",
            "`tests/reference/tides/README.md`.",
            "",
            "These compare one prediction with another. Wind, rain and pressure move real water",
            "by 5 to 10 cm on an ordinary day and by far more in a storm: predictions are never",
            "for navigation.",
            "",
            "## Against official predictions",
            "",
            "The agencies' own heights from their own constants. UTide is fed the same constants",
            "and used without repair: it takes SA from the solar perigee, S1 and M1 with other",
            "phases, and knows no 2MK3. pyTMD 3.0.9 was fed them once (`official_by_pytmd.csv`);",
            "the best of its three settings is shown. The Dutch agency reduces f by a rule of its",
            "own.",
            "",
            *table(official_heights(), libraries=True),
            "",
            "## Against an independent library",
            "",
            "Windows over leap days, New Year and 19 January 2038.",
            "",
            *table(computed_heights()),
            "",
            *table(turn_times()),
            "",
            "## Highest tides, and turns by another agency",
            "",
            *table([*highest_tides(), *dutch_turns()]),
            "",
            "## Offsets from a reference place",
            "",
            "Worked examples of both conventions: minutes, ratio and addition; and differences",
            "tabled by time of day and height.",
            "",
            *table(offset_examples()),
            "",
            "## Constants from a record",
            "",
            *table(honolulu_fit()),
            "",
            "## Node factors and arguments",
            "",
            *table(node_factors()),
            "",
            "At instants; the libraries' own values stand in the same file. UTide follows Foreman,",
            "whose f and u of some constituents are of another kind; its MO3 stands for 2MK3.",
            "",
            *table(arguments_at_instants(), libraries=True),
            "",
            "## Other libraries over whole years",
            "",
            "Largest difference within a year from the agency's yearly rule, worst of 2000, 2017,",
            "2024, 2026, 2038 and 2050 (`library_comparison.csv`, computed once with UTide 0.4.0,",
            "pyTMD 3.0.9 and hatyan 2.14.0; not run again here). The last column is what the",
            "choice between the yearly and the continuous rule is worth.",
            "",
            *_libraries(),
            "",
            "## What is known to differ",
            "",
            "- Constants are renewed without a change of station number: two states of one",
            "  station can be 2 to 9 cm apart. Each sample place says which state it holds.",
            "- Under the yearly rule the level steps at New Year by up to 7 cm (Seattle), as the",
            "  agency's does. Turns are sought on slopes that pass from one year to the next over",
            "  an hour on either side, so that the step makes no turn of its own.",
            "- Constants published to 0.01 ft cost up to 1.4 cm in the worst hour.",
            "",
        ]
    )


if __name__ == "__main__":
    PAGE.parent.mkdir(exist_ok=True)
    PAGE.write_text(page(), encoding="utf-8")
